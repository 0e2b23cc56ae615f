"""Roles as a wording template sees them. What prints a number records that it was printed, and how.

Templates choose among these phrases; they never count. ``q.count`` reads "3 red pins", ``q.kind`` "red pins",
``q.who`` "the Owls", ``q.when`` "in Trial 1", ``q.did`` "The Owls knocked down 3 red pins", ``q.how_many`` the question.
"""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op, Quantity, Stated
from mathgen.scenario.naming import group_name, listed, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope
from mathgen.trials.table import TrialTable


class Speaker:
    """The voice of one table and scenario; remembers names, which recur in every problem."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table = table
        self.scenario = scenario
        self._who: dict[tuple[str, ...] | None, str] = {}
        self._when: dict[tuple[object, ...] | None, str] = {}
        self._kind: dict[tuple[str, ...] | None, str] = {}

    def who(self, scope: Scope) -> str:
        """Whose results, in mid-sentence: "the Owls", "the Owls and the Herons", "the class"."""
        groups = scope.groups
        if groups not in self._who:
            if groups is None:
                groups_named = self.table.groups if len(self.table.groups) == 1 else ()
            else:
                groups_named = groups
            names = [group_name(label, self.scenario) for label in groups_named]
            self._who[groups] = listed(names) if names else self.scenario.the_class
        return self._who[groups]

    def when(self, scope: Scope) -> str:
        """In which trials: "in Trial 1", "in Trials 1 and 2", "in all 3 trials"."""
        trials = scope.trials
        if trials not in self._when:
            labels = trials or self.table.trials
            plural = self.scenario.trials
            if len(labels) == 1:
                phrase = trial_name(labels[0], self.scenario)
            elif trials is None:
                phrase = f"{'all ' if len(labels) > 2 else 'the '}{len(labels)} {plural}"
            elif all(isinstance(label, int) for label in labels):
                phrase = f"{plural.capitalize()} {listed([str(label) for label in labels])}"
            else:
                phrase = listed([trial_name(label, self.scenario) for label in labels])
            self._when[trials] = f"in {phrase}"
        return self._when[trials]

    def kind(self, scope: Scope) -> str:
        """Which pins, in front of the noun: "red ", "red and gold ", or nothing."""
        colors = scope.colors
        if colors not in self._kind:
            self._kind[colors] = f"{listed(list(colors))} " if colors is not None else ""
        return self._kind[colors]

    def items(self, number: int) -> str:
        """The noun for a number: 1 pin, 2 pins, 0 pins."""
        return self.scenario.item if number == 1 else self.scenario.items


class Printed:
    """What one problem's words printed: each expression with its text, in the order of printing."""

    def __init__(self) -> None:
        self.texts: dict[Expr, str] = {}

    def note(self, expr: Expr, text: str) -> str:
        self.texts[expr] = text
        return text


class SaidCount:
    """A quantity in a sentence."""

    __slots__ = ("_number", "_printed", "_quantity", "_speaker")

    def __init__(self, speaker: Speaker, printed: Printed, quantity: Quantity, number: int) -> None:
        self._speaker, self._printed, self._quantity, self._number = speaker, printed, quantity, number

    @property
    def n(self) -> str:
        """The bare number."""
        return self._printed.note(self._quantity, str(self._number))

    @property
    def one(self) -> bool:
        """Whether the number is 1, for was and were."""
        return self._number == 1

    @property
    def was(self) -> str:
        return "was" if self._number == 1 else "were"

    @property
    def count(self) -> str:
        """Number and noun: "3 red pins"."""
        speaker = self._speaker
        return f"{self.n} {speaker.kind(self._quantity.scope)}{speaker.items(self._number)}"

    @property
    def kind(self) -> str:
        """Noun without number: "red pins"."""
        speaker = self._speaker
        return f"{speaker.kind(self._quantity.scope)}{speaker.scenario.items}"

    @property
    def color(self) -> str:
        return self._speaker.kind(self._quantity.scope).strip()

    @property
    def who(self) -> str:
        return self._speaker.who(self._quantity.scope)

    @property
    def Who(self) -> str:  # noqa: N802 - the capital says that it starts a sentence
        return upper_first(self.who)

    @property
    def when(self) -> str:
        return self._speaker.when(self._quantity.scope)

    @property
    def When(self) -> str:  # noqa: N802 - as above
        return upper_first(self.when)

    @property
    def look(self) -> str:
        """Where to look, as a sentence without its period: "Look at Trial 1"."""
        return f"Look at {self.when.removeprefix('in ')}"

    @property
    def past(self) -> str:
        """What happened: "knocked down"."""
        return self._speaker.scenario.past[self._quantity.measure]

    @property
    def base(self) -> str:
        """What is asked: "(did ...) knock down"."""
        return self._speaker.scenario.base[self._quantity.measure]

    @property
    def after(self) -> str:
        """After the noun: "pins knocked down"."""
        return self._speaker.scenario.after_noun[self._quantity.measure]

    @property
    def did(self) -> str:
        """"The Owls knocked down 3 red pins"; "3 red pins were left standing"."""
        if self._quantity.measure == "standing":
            return f"{self.count} {self.was} {self.after}"
        return f"{self.Who} {self.past} {self.count}"

    @property
    def how_many(self) -> str:
        """The question, without a time: "How many red pins did the Owls knock down"."""
        if self._quantity.measure == "standing":
            return f"How many {self.kind} were {self.after}"
        return f"How many {self.kind} did {self.who} {self.base}"

    @property
    def trials(self) -> int:
        """How many trials the quantity covers, for choosing words."""
        return len(self._quantity.scope.trials or self._speaker.table.trials)

    @property
    def set_up_each(self) -> str:
        """The set-up as a fact: "The Owls set up 12 pins for each of 2 trials, 24 pins in all" or "... set up 12 pins for Trial 1".

        The same pins stand again in each trial; a child must not look for 24 pins in the room.
        """
        speaker, quantity = self._speaker, self._quantity
        labels = quantity.scope.trials or speaker.table.trials
        past = speaker.scenario.past["set_up"]
        if len(labels) == 1:
            return f"{self.Who} {past} {self.count} for {trial_name(labels[0], speaker.scenario)}"
        each = self._per_trial(labels)
        if each is None:
            return f"{self.Who} {past} {self.count} {self.when}"
        kind = f"{speaker.kind(quantity.scope)}{speaker.items(each)}"
        number = Stated(len(labels), "trials")
        per_trial = self._printed.note(Op("/", (quantity, number)), str(each))
        if quantity.scope.trials is not None:
            return f"{self.Who} {past} {per_trial} {kind} for each of {self.when.removeprefix('in ')}, {self.count} in all"
        trials = self._printed.note(number, str(len(labels)))
        return f"{self.Who} {past} {per_trial} {kind} for each of {trials} {speaker.scenario.trials}, {self.count} in all"

    def _per_trial(self, labels: tuple[object, ...]) -> int | None:
        """The set-up of one trial, where every trial had the same."""
        counts = dict.fromkeys(labels, 0)
        groups, _, colors = self._quantity.scope
        for row in self._speaker.table.rows:
            if row.trial in counts and (groups is None or row.group in groups) and (colors is None or row.color in colors):
                counts[row.trial] += row.set_up
        sizes = set(counts.values())
        return sizes.pop() if len(sizes) == 1 else None


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
        return self._each[0]

    @property
    def last(self) -> SaidCount:
        return self._each[-1]

    @property
    def how_many(self) -> int:
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
    def sentences(self) -> str:
        """One short sentence each."""
        if self.by == "colors":
            return " ".join(f"{one.did}." for one in self._each)
        return " ".join(f"{one.did} {one.when}." for one in self._each)

    @property
    def names(self) -> str:
        """What they are called: "red, blue, and gold", "Trials 1 and 2", "the Owls and the Herons"."""
        by = self.by
        if by == "colors":
            return listed([one.color for one in self._each])
        if by == "groups":
            return listed([one.who for one in self._each])
        return listed([one.when.removeprefix("in ") for one in self._each])


class SaidNumber:
    """A number that only the words give."""

    __slots__ = ("_printed", "_stated")

    def __init__(self, printed: Printed, stated: Stated) -> None:
        self._printed, self._stated = printed, stated

    @property
    def n(self) -> str:
        return self._printed.note(self._stated, str(self._stated.number))

    @property
    def one(self) -> bool:
        return self._stated.number == 1


class SaidRate:
    """A rate of one set, printed in the form that the draft chose: "9/12", "75%"."""

    __slots__ = ("_printed", "_rate", "_text")

    def __init__(self, printed: Printed, rate: Op, text: str) -> None:
        self._printed, self._rate, self._text = printed, rate, text

    @property
    def n(self) -> str:
        return self._printed.note(self._rate, self._text)
