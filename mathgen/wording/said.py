"""Roles as a wording template sees them. What prints a number records that it was printed, and how.

Templates choose among these phrases; they never count. ``q.count`` reads "3 red pins", ``q.kind`` "red pins",
``q.who`` "the Owls", ``q.when`` "in Trial 1", ``q.did`` "The Owls knocked down 3 red pins", ``q.how_many`` the question.
"""

from __future__ import annotations

from collections.abc import Iterable

from sympy import Rational

from mathgen.asks.expression import PERCENTS, Expr, Measured, Op, Price, Quantity, Stated
from mathgen.exact.forms import mixed
from mathgen.exact.number_words import cardinal
from mathgen.problems.draft import Role
from mathgen.scenario.naming import group_name, listed, several_of, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL, Measure, Scope
from mathgen.trials.table import TrialTable


class Speaker:
    """The voice of one table and scenario; remembers names, which recur in every problem."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table = table
        self.scenario = scenario
        self._who: dict[tuple[str, ...] | None, str] = {}
        self._when: dict[tuple[object, ...] | None, str] = {}
        self._kind: dict[tuple[str, ...] | None, str] = {}
        self._names: dict[Scope, tuple[str, ...]] = {}
        self._shape: dict[Scope, tuple[int, ...]] = {}

    def who(self, scope: Scope) -> str:
        """Whose results, in mid-sentence: "the Owls", "the Owls and the Herons", "the class"."""
        groups = scope.groups
        if groups not in self._who:
            everybody = self.table.groups if len(self.table.groups) == 1 else ()
            groups_named = everybody if groups is None else groups
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

    def happened(self, measure: Measure) -> str:
        """What happened to several items, as a verb: "were knocked down", "sprouted"."""
        return self.scenario.done(measure, "were")

    def shape(self, role: Role) -> tuple[int, ...]:
        """How many words a role takes, and over how many cells it goes: what decides whether a frame is short enough."""
        if isinstance(role, Price):
            return (role.item.count(" "),)
        if isinstance(role, Quantity | Measured):
            scope = role.scope
        elif isinstance(role, tuple) and role and isinstance(role[0], Quantity | Measured):
            return (len(role), *self.shape(role[0]))
        elif isinstance(role, tuple) and role and isinstance(role[0], Stated):
            return (len(role),)
        else:
            return ()
        measure = role.measure if isinstance(role, Quantity) else None
        if measure in BY_TRIAL:
            taken = dict.fromkeys((row.group, row.trial) for row in self.table.rows if scope.groups is None or row.group in scope.groups)
            return (self.who(scope).count(" "), len(taken))
        known = self._shape.get(scope)
        if known is None:
            table = self.table
            cells = len(scope.groups or table.groups) * len(scope.trials or table.trials) * len(scope.colors or table.colors)
            known = (*(text.count(" ") for text in (self.who(scope), self.when(scope), self.kind(scope))), cells, scope.trials is None)
            self._shape[scope] = known
        return known

    def names(self, roles: Iterable[Role]) -> tuple[str, ...]:
        """Every phrase that names a group, trials or a color of the roles, longest first, as it may stand in a sentence."""
        found: dict[str, None] = {}
        for role in roles:
            several = role if isinstance(role, tuple) and not isinstance(role, Quantity | Measured | Price | Stated | Op) else (role,)
            if isinstance(role, Price):
                names = role.item, several_of(role.item)
                found.update(dict.fromkeys(name for name in names if name is not None and " " in name))
            quantities = [one for one in several if isinstance(one, Quantity | Measured)]
            for one in quantities:
                found.update(dict.fromkeys(self._names_of(one.scope)))
            trials = tuple(dict.fromkeys(trial for one in quantities for trial in one.scope.trials or ()))
            if len(trials) > 1:
                found[self.when(Scope(None, trials)).removeprefix("in ")] = None
        return tuple(sorted(found, key=len, reverse=True))

    def _names_of(self, scope: Scope) -> tuple[str, ...]:
        known = self._names.get(scope)
        if known is None:
            names = [group_name(label, self.scenario) for label in scope.groups or self.table.groups]
            trials = [trial_name(label, self.scenario) for label in scope.trials or self.table.trials]
            together = [self.when(scope).removeprefix("in ")] if scope.trials is not None else []
            phrases = [*names, *map(upper_first, names), *trials, *together, *(scope.colors or self.table.colors)]
            known = self._names[scope] = tuple(one for one in dict.fromkeys(phrases) if " " in one)
        return known

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
    def kind_of_one(self) -> str:
        """Noun without number, for one of them: "red pin"."""
        speaker = self._speaker
        return f"{speaker.kind(self._quantity.scope)}{speaker.items(1)}"

    @property
    def kind_counted(self) -> str:
        """Noun without number, one or several as the number has it: "red pin", "red pins"."""
        return self.kind_of_one if self.one else self.kind

    @property
    def a_kind(self) -> str:
        """One of them with its article: "a red pin", "an orange pin"."""
        return f"{'an' if self.one_kind[0] in 'aeiouAEIOU' else 'a'} {self.one_kind}"

    @property
    def be_done(self) -> str:
        """After "will" or "to": "be knocked down"; "sprout"."""
        return self._speaker.scenario.done(self._quantity.measure, "be")

    @property
    def Kind(self) -> str:  # noqa: N802 - as below
        return upper_first(self.kind)

    @property
    def either(self) -> str:
        """As ``kind``: what a single color is beside ``SaidMany.either``."""
        return self.kind

    @property
    def kinds(self) -> str:
        """As ``kind``: what a single color is beside ``SaidMany.kinds``."""
        return self.kind

    @property
    def Kinds(self) -> str:  # noqa: N802 - as below
        return upper_first(self.kinds)

    @property
    def that_were(self) -> str:
        """What was done to them, as a clause after the noun: "that were knocked down", "that sprouted"."""
        return f"that {self.were_done}"

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
    def In(self) -> str:  # noqa: N802 - as above
        """``When`` of a sentence that ends in ``altogether``: "In 3 trials, ... 14 red pins in all"."""
        return f"In {self.trials} {self._speaker.scenario.trials}" if self._quantity.scope.trials is None and self.trials > 1 else self.When

    @property
    def look(self) -> str:
        """Where to look, as a sentence without its period: "Look at Trial 1"."""
        return f"Look at {self.when.removeprefix('in ')}"

    @property
    def span(self) -> str:
        """The trials without "in": "Trial 1", "Trials 1 and 2", "all 3 trials"."""
        return self.when.removeprefix("in ")

    @property
    def Span(self) -> str:  # noqa: N802 - as above
        return upper_first(self.span)

    @property
    def one_kind(self) -> str:
        """One of them, without article or number: "red pin"."""
        speaker = self._speaker
        return f"{speaker.kind(self._quantity.scope)}{speaker.items(1)}"

    @property
    def past(self) -> str:
        """What happened: "knocked down"."""
        return self._speaker.scenario.past[self._quantity.measure]

    @property
    def base(self) -> str:
        """What is asked: "(did ...) knock down"."""
        return self._speaker.scenario.base[self._quantity.measure]

    @property
    def happened(self) -> str:
        """What happened to them, without saying who did it: "(pins) were knocked down", "(seeds) sprouted"."""
        return self._speaker.happened(self._quantity.measure)

    @property
    def after(self) -> str:
        """After the noun: "pins knocked down"."""
        return self._speaker.scenario.after_noun[self._quantity.measure]

    @property
    def were_done(self) -> str:
        """What was done to them, after a plural: "were knocked down"; "sprouted"."""
        return self._speaker.scenario.done(self._quantity.measure, "were")

    @property
    def was_done(self) -> str:
        """The same after a singular such as "what part": "was knocked down"; "sprouted"."""
        return self._speaker.scenario.done(self._quantity.measure, "was")

    @property
    def stayed(self) -> str:
        """What became of just so many of them: "(1 pin) was left standing", "(7 seeds) were left in the soil"."""
        return f"{self.was} {self.after}"

    @property
    def did(self) -> str:
        """ "The Owls knocked down 3 red pins"; "3 red pins were left standing"."""
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
            return f"{self.Who} {past} {self.count}{self.in_all} for {trial_name(labels[0], speaker.scenario)}"
        each = self._per_trial(labels)
        if each is None:
            return f"{self.Who} {past} {self.count} {self.when}"
        kind = f"{speaker.kind(quantity.scope)}{speaker.items(each)}"
        number = Stated(len(labels), "trials")
        per_trial = self._printed.note(Op("/", (quantity, number)), str(each))
        if quantity.scope.trials is not None:
            # No number directly after those of the trials.
            return f"{self.Who} {past} {per_trial} {kind} for each of {self.when.removeprefix('in ')}, a total of {self.count}"
        trials = self._printed.note(number, str(len(labels)))
        return f"{self.Who} {past} {per_trial} {kind} for each of {trials} {speaker.scenario.trials}, {self.count} in all"

    @property
    def times(self) -> str:
        """Number and noun of what is counted by trials: "5 trials", "1 success"."""
        scenario = self._speaker.scenario
        one, many = (scenario.trial, scenario.trials) if self._quantity.measure == "trials" else ("success", "successes")
        return f"{self.n} {one if self.one else many}"

    @property
    def rule(self) -> str:
        """What a success is: "A trial is a success when target-color pins and no others are knocked down"."""
        return f"A {self._speaker.scenario.trial} is a success when {self._target}"

    @property
    def _target(self) -> str:
        """What comes of a success: "target-color pins and no others are knocked down"; a trial with none down is not one."""
        scenario = self._speaker.scenario
        after = scenario.after_noun["down"]
        falls = scenario.base["down"] if after.startswith("that ") else f"are {after}"
        return f"target-color {scenario.items} and no others {falls}"

    @property
    def short_rule(self) -> str:
        """The same in fewer words: "In a success, target-color pins and no others are knocked down"."""
        return f"In a success, {self._target}"

    @property
    def in_all(self) -> str:
        """ " in all" after a count of two or more named groups or colors, which could be read as a count of each."""
        groups, _, colors = self._quantity.scope
        return " in all" if len(groups or ()) > 1 or len(colors or ()) > 1 else ""

    @property
    def altogether(self) -> str:
        """ " in all" after a count that several trials add up to as well: no 24 pins stand in the room at once."""
        return " in all" if self.trials > 1 else self.in_all

    @property
    def fared(self) -> str:
        """What was done to them, after "had ... of its pins": "knocked down"; "sprout"."""
        return self.base if self.after.startswith("that ") else self.after

    @property
    def set_up_here(self) -> str:
        """The set-up after a sentence that says in which trials: "The Owls set up 4 red pins for each trial, 8 in all"."""
        speaker, quantity = self._speaker, self._quantity
        labels = quantity.scope.trials or speaker.table.trials
        past = speaker.scenario.past["set_up"]
        each = self._per_trial(labels) if len(labels) > 1 else None
        if each is None:
            return f"{self.Who} {past} {self.count}{' in all' if len(labels) > 1 else self.in_all}"
        kind = f"{speaker.kind(quantity.scope)}{speaker.items(each)}"
        per_trial = self._printed.note(Op("/", (quantity, Stated(len(labels), "trials"))), str(each))
        return f"{self.Who} {past} {per_trial} {kind} for each {speaker.scenario.trial}, {self.n} in all"

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
    def Kinds(self) -> str:  # noqa: N802 - as above
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
        kind = one.kind_of_one if number.one and than == "than" else one.kind
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
            return f"How many {word} {one.kind} {one.happened} {one.when} {than} {other.when}"
        # "5 times as many gold as blue pins": the noun twice would pass the longest question of grade 2.
        return f"How many {word} {one.color if than == 'as' else one.kind} {than} {other.kind} {one.happened}"

    def asked_after_comparing(self, word: str) -> str:
        """The question after a sentence that says what to compare: "How many more pins did the Owls knock down"."""
        one = self.first
        if self.by == "groups":
            return f"How many {word} {one.kind} did {one.who} {one.base}"
        if self.by == "trials":
            return f"How many {word} {one.kind} {one.happened} {one.when}"
        return self.asked(word)

    @property
    def Names(self) -> str:  # noqa: N802 - as above
        return upper_first(self.names)


class SaidNumber:
    """A number that only the words give."""

    __slots__ = ("_printed", "_stated")

    def __init__(self, printed: Printed, stated: Stated) -> None:
        self._printed, self._stated = printed, stated

    @property
    def n(self) -> str:
        number, meaning, bottom = self._stated
        return self._printed.note(self._stated, f"{number}%" if meaning in PERCENTS else mixed(Rational(number, bottom)))

    @property
    def one(self) -> bool:
        return self._stated.number == 1

    @property
    def inches(self) -> str:
        """Number and unit of a length; up to 1 inch the unit is "inch"."""
        return f"{self.n} {'inch' if self._stated.number <= self._stated.bottom else 'inches'}"


class SaidRuns:
    """Runs of whole numbers, each told by its first and its last: "0 to 2, 3 to 5, and 6 to 8"."""

    __slots__ = ("_ends",)

    def __init__(self, printed: Printed, ends: tuple[Stated, ...]) -> None:
        self._ends = [SaidNumber(printed, end) for end in ends]

    @property
    def n(self) -> str:
        return listed([f"{low.n} to {high.n}" for low, high in zip(self._ends[::2], self._ends[1::2], strict=True)])

    @property
    def listed(self) -> str:
        """Each number by itself: "31, 58, and 72"."""
        return listed([one.n for one in self._ends])


class SaidRate:
    """A rate of one set, printed in the form that the draft chose: "9/12", "75%"."""

    __slots__ = ("_printed", "_rate", "_text")

    def __init__(self, printed: Printed, rate: Op, text: str) -> None:
        self._printed, self._rate, self._text = printed, rate, text

    @property
    def n(self) -> str:
        return self._printed.note(self._rate, self._text)


class SaidRates:
    """Several that are printed one after another: "-3, 2, and -1"."""

    __slots__ = ("_each",)

    def __init__(self, printed: Printed, rates: tuple[Op, ...], texts: tuple[str, ...]) -> None:
        self._each = [SaidRate(printed, one, text) for one, text in zip(rates, texts, strict=True)]

    @property
    def listed(self) -> str:
        return listed([one.n for one in self._each])

    @property
    def either(self) -> str:
        """As ``listed``, of each of which it was one: "8/12, 4/12, or 6/12"."""
        return listed([one.n for one in self._each], "or")
