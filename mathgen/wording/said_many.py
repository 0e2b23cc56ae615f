"""Several quantities side by side, as a wording template sees them: lists, comparisons, what they share and what differs."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.exact.number_words import cardinal
from mathgen.scenario.naming import listed, upper_first
from mathgen.trials.scope import Scope
from mathgen.wording.said_count import SaidCount
from mathgen.wording.said_number import Printed, SaidNumber
from mathgen.wording.speaker import Speaker


class SaidMany:
    """Several quantities that differ in one thing: color, trial or group."""

    __slots__ = ("_each", "_quantities", "_speaker")

    def __init__(self, speaker: Speaker, printed: Printed, quantities: tuple[Quantity, ...], numbers: tuple[int, ...]) -> None:
        self._speaker, self._quantities = speaker, quantities
        self._each = [SaidCount(speaker, printed, one, number) for one, number in zip(quantities, numbers, strict=True)]

    def __iter__(self):  # type: ignore[no-untyped-def]
        return iter(self._each)

    @property
    def first(self) -> SaidCount:
        """The first of them."""
        return self._each[0]

    @property
    def last(self) -> SaidCount:
        """The last of them."""
        return self._each[-1]

    @property
    def how_many(self) -> int:
        """How many quantities there are, for choosing words."""
        return len(self._each)

    @property
    def by(self) -> str:
        """What differs: "colors", "trials" or "groups"."""
        scopes = [one.scope for one in self._quantities]
        for field in ("colors", "trials", "groups"):
            if getattr(scopes[0], field) != getattr(scopes[1], field):
                return field
        raise ValueError("the same quantity twice")

    @property
    def listed(self) -> str:
        """All of them in one phrase: "3 red, 2 blue, and 4 gold pins", "8 pins in Trial 1 and 9 pins in Trial 2"."""
        by = self.by
        if by == "colors":
            noun = self._speaker.scenario.items if self._each[-1].n != "1" else self._speaker.scenario.item
            return f"{listed([f'{one.n} {one.color}' for one in self._each])} {noun}"
        if by == "trials":
            return listed([f"{one.count} {one.when}" for one in self._each])
        return listed([f"{one.count} by {one.who}" for one in self._each])

    @property
    def labelled(self) -> str:
        """Colors with their numbers, as a table has them: "red 4, blue 3, and gold 5"."""
        return listed([f"{one.color} {one.n}" for one in self._each])

    @property
    def sentences(self) -> str:
        """One short sentence each."""
        if self.by == "colors":
            return " ".join(f"{one.did}." for one in self._each)
        return " ".join(f"{one.did} {one.when}." for one in self._each)

    @property
    def numbers(self) -> str:
        """The bare numbers as a list: "8, 9, and 7"."""
        return listed([one.n for one in self._each])

    @property
    def counts(self) -> str:
        """The numbers with what they count: "8, 9, and 7 red pins", "2, 3, and 1 red pins"."""
        return f"{self.numbers} {self._each[-1].kind}"

    @property
    def alike(self) -> str:
        """One count for all of them, where all are equal: "8 red pins" of "each set up 8 red pins"."""
        texts = [one.count for one in self._each]  # each is noted as printed
        return texts[0]

    @property
    def names(self) -> str:
        """What they are called: "red, blue, and gold", "Trials 1 and 2", "the Owls and the Herons"."""
        by = self.by
        if by == "colors":
            return listed([one.color for one in self._each])
        if by == "groups":
            return listed([one.who for one in self._each])
        trials = tuple(trial for one in self._quantities for trial in one.scope.trials or ())
        return self._speaker.when(Scope(None, trials)).removeprefix("in ")

    @property
    def either(self) -> str:
        """Colors of which each will do: "red or gold pins", "red, blue, or gold pins"."""
        return f"{listed([one.color for one in self._each], 'or')} {self._speaker.scenario.items}"

    @property
    def kinds(self) -> str:
        """Colors that are taken together: "red and gold pins"."""
        return f"{self.names} {self._speaker.scenario.items}"

    @property
    def Kinds(self) -> str:  # noqa: N802 - the capital says that it starts a sentence
        return upper_first(self.kinds)

    @property
    def told(self) -> str:
        """All of them in one sentence: "The Owls knocked down 3 red, 2 blue, and 4 gold pins"."""
        if self.by != "groups":
            return f"{self.first.Who} {self.first.past} {self.listed}"
        return upper_first(listed([f"{one.who} {one.past} {one.count}" for one in self._each]))

    @property
    def and_some(self) -> str:
        """Some colors, before the one whose number is not told: "3 red, 4 blue, and some (gold pins)", "3 red and some (gold pins)"."""
        return listed([*(f"{one.n} {one.color}" for one in self._each), "some"])

    @property
    def all_told(self) -> str:
        """``told`` of one or more: "The Owls knocked down 3 red and 4 blue pins", "The Owls knocked down 3 red pins"."""
        return self.told if len(self._each) > 1 else self.first.did

    @property
    def together(self) -> str:
        """Who did it: "the Owls", or "the two groups" where the groups differ."""
        return self.who_differ if self.by == "groups" else self.first.who

    @property
    def who_differ(self) -> str:
        """What differs, counted: "the two groups", "the three trials", "the two kinds"."""
        scenario = self._speaker.scenario
        noun = {"groups": f"{scenario.group.lower()}s", "trials": scenario.trials, "colors": "kinds"}[self.by]
        return f"the {cardinal(len(self._each))} {noun}"

    @property
    def look(self) -> str:
        """Where to look, as a sentence without its period: "Look at Trial 1", "Look at Trials 1 and 2"."""
        return f"Look at {self.names}" if self.by == "trials" else self.first.look

    @property
    def think(self) -> str:
        """What the words tell of: "Think about Trials 1 and 2"."""
        return f"Think about {self.names}" if self.by == "trials" else self.first.think

    @property
    def place(self) -> str:
        """What they share, for looking it up: "the Owls in Trial 1", "Trial 1", "the Owls"."""
        return {"groups": self.first.span, "trials": self.first.who, "colors": f"{self.first.who} {self.first.when}"}[self.by]

    @property
    def side_by_side(self) -> str:
        """Two of them, the first held against the second: "the Owls with the Herons", "Trial 2 with Trial 1"."""
        one, other = self.first, self.last
        if self.by == "colors":
            return f"the {one.kind} with the {other.kind}"
        return f"{one.who} with {other.who}" if self.by == "groups" else f"{one.span} with {other.span}"

    def compared(self, number: SaidNumber, word: str) -> str:
        """How the first stands to the second: "The Owls knocked down 2 more red pins than the Herons".

        ``word`` is "more", "fewer" or "times as many".
        """
        one, other = self.first, self.last
        much = f"{number.n} {word}"
        than = "as" if word.endswith("as many") else "than"
        kind = one.one_kind if number.one and than == "than" else one.kind
        who = f"{one.Who} {one.past} {much} {kind}"
        if self.by == "groups":
            return f"{who} {than} {other.who}"
        if self.by == "trials":
            return f"{who} {one.when} {than} {other.when}"
        return f"{who}{'' if one.color else ' in all'} {than} {other.kind}"

    def asked(self, word: str) -> str:
        """The question: "How many more pins did the Owls knock down than the Herons"; for colors without saying who."""
        one, other = self.first, self.last
        than = "as" if word.endswith("as many") else "than"
        if self.by == "groups":
            return f"How many {word} {one.kind} did {one.who} {one.base} {than} {other.who}"
        if self.by == "trials":
            return f"How many {word} {one.kind} {one.were_done} {one.when} {than} {other.when}"
        # "5 times as many gold as blue pins": the noun twice would pass the longest question of grade 2.
        return f"How many {word} {one.color if than == 'as' else one.kind} {than} {other.kind} {one.were_done}"

    def asked_after_comparing(self, word: str) -> str:
        """The question after a sentence that says what to compare: "How many more pins did the Owls knock down"."""
        one = self.first
        if self.by == "groups":
            return f"How many {word} {one.kind} did {one.who} {one.base}"
        if self.by == "trials":
            return f"How many {word} {one.kind} {one.were_done} {one.when}"
        return self.asked(word)

    @property
    def Names(self) -> str:  # noqa: N802 - as above
        return upper_first(self.names)
