"""Rules for the parts that all sentences share: who, when, which things, how many, which verb, in what form."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class Tail(NamedTuple):
    """What follows the things: when, and whether "in all" was said."""

    trials: Labels = None
    total: bool = False


class Counted(NamedTuple):
    """A number of things of some colors."""

    number: Number
    colors: Labels


def one(label: Label) -> tuple[Label, ...]:
    """The label alone."""
    return (label,)


def joined(first: Label, rest: tuple[Label, ...]) -> tuple[Label, ...]:
    """The label in front of others; a label named twice makes no list."""
    if first in rest:
        raise Clash
    return (first, *rest)


def always(value: object) -> Callable[..., object]:
    """A rule's make that does not depend on the parts."""
    return lambda *_: value


def _each(of: Labels) -> Mark:
    if isinstance(of, Mark):
        return Mark("each", of.count)
    return Mark("each", None, of)


def _one_thing(color: Label | None, number: int) -> Labels:
    if number:
        raise Clash  # "each red pins"
    return Mark("bare") if color is None else (color,)


BOTH = Number("both", Rational(2))
TENS = {"ten": -1, "hundred": -2, "thousand": -3}
PLACES = {"tenth": 1, "hundredth": 2, "thousandth": 3}


def both_lists(some: tuple[Label, ...], more: tuple[Label, ...]) -> tuple[Label, ...]:
    """Trials that are named one by one."""
    if set(some) & set(more):
        raise Clash("a trial is named twice")
    return (*some, *more)


RULES: tuple[Rule, ...] = (
    # who
    rule("group", "the? GROUP", one),
    rule("groups", "the? GROUP and the? GROUP", lambda a, b: joined(a, (b,))),
    rule("groups", "the? GROUP , <more_groups>", joined),
    rule("more_groups", "the? GROUP ,? and the? GROUP", lambda a, b: joined(a, (b,))),
    rule("more_groups", "the? GROUP , <more_groups>", joined),
    rule("who", "<group>", lambda groups: groups),
    rule("who", "<groups>", lambda groups: groups),
    rule("who", "CLASS", always(Mark("all"))),
    rule("who", "the groups", always(Mark("these"))),
    rule("who", "the WHOLE groups", lambda count: Mark("these", count)),
    rule("who", "both groups", always(Mark("these", BOTH))),
    rule("each_group", "each group", always(Mark("each"))),
    # when
    rule("trials", "TRIALS", lambda labels: labels),
    rule("trials", "TRIALS and TRIALS", both_lists),  # "Trial A and Trial B"
    rule("trials", "TRIALS , <more_trials>", both_lists),
    rule("more_trials", "TRIALS ,? and TRIALS", both_lists),
    rule("more_trials", "TRIALS , <more_trials>", both_lists),
    rule("trials", "the? WHOLE trials", lambda count: Mark("these", count)),
    rule("trials", "all WHOLE trials", lambda count: Mark("all", count)),
    rule("trials", "all trials", always(Mark("all"))),
    rule("trials", "both trials", always(Mark("these", BOTH))),
    rule("when", "(in|for) <trials>", lambda trials: trials),
    rule("each_trial", "(for|in) each trial", always(Mark("each"))),
    rule("each_trial", "(for|in) each of <trials>", _each),
    rule("tail", "<when>", lambda trials: Tail(trials)),
    rule("tail", "<in_all>", lambda _: Tail(None, True)),
    rule("tail", "<when> <in_all>", lambda trials, _: Tail(trials, True)),
    rule("tail", "<in_all> <when>", lambda _, trials: Tail(trials, True)),
    *(rule("in_all", words, always(True)) for words in ("in all", "in total", "altogether", "all together")),
    # which things
    rule("things", "ITEM", always(Mark("bare"))),
    rule("things", "<colors> ITEM", lambda colors, _: colors),
    rule("colors", "COLOR", one),
    rule("colors", "COLOR and <more_colors>", joined),
    rule("colors", "COLOR , <listed_colors>", joined),
    rule("more_colors", "COLOR", one),
    rule("listed_colors", "COLOR ,? and COLOR", lambda a, b: joined(a, (b,))),
    rule("listed_colors", "COLOR , <listed_colors>", joined),
    rule("thing", "COLOR? ITEM", _one_thing),
    # how many
    rule("counted", "WHOLE <things>", Counted),
    rule("counts", "WHOLE COLOR and WHOLE COLOR ITEM", lambda n, a, m, b, _: (Counted(n, (a,)), Counted(m, (b,)))),
    rule("counts", "WHOLE COLOR , <more_counts>", lambda n, a, rest: (Counted(n, (a,)), *rest)),
    rule("more_counts", "WHOLE COLOR ,? and WHOLE COLOR ITEM", lambda n, a, m, b, _: (Counted(n, (a,)), Counted(m, (b,)))),
    rule("more_counts", "WHOLE COLOR , <more_counts>", lambda n, a, rest: (Counted(n, (a,)), *rest)),
    rule("counts", "<counted> and <counted>", lambda a, b: (a, b)),
    rule("whole", "out? of (the|its|their)? WHOLE <things> SET?", lambda number, colors, _: (number, colors)),
    rule("whole", "of (the|its|their|these|those) <things> SET?", lambda colors, _: (None, colors)),
    rule("whole", "of all (the|its|their|these|those) <things> SET?", lambda colors, _: (None, colors)),
    rule("whole", "of all of (the|its|their|these|those) <things> SET?", lambda colors, _: (None, colors)),
    # "red or blue pins": of either color
    rule("either", "COLOR or COLOR", lambda a, b: joined(a, (b,))),
    rule("either", "COLOR , <more_either>", joined),
    rule("more_either", "COLOR ,? or COLOR", lambda a, b: joined(a, (b,))),
    rule("more_either", "COLOR , <more_either>", joined),
    rule("sort_things", "<colors> ITEM", lambda colors, _: colors),
    rule("sort_things", "<either> ITEM", lambda colors, _: colors),
    rule("sort_things", "COLOR ITEM or COLOR ITEM", lambda a, _, b, __: joined(a, (b,))),
    rule("sort_things", "(a|an) COLOR ITEM", lambda color, _: (color,)),
    rule("sorts", "<sort_things>", lambda colors: colors),
    rule("sorts", "<colors>", lambda colors: colors),
    rule("sorts", "<either>", lambda colors: colors),
    rule("multiple", "WHOLE times as many", lambda number: number),
    rule("multiple", "twice as many", always(Number("twice", Rational(2)))),
    rule("numbers", "WHOLE and WHOLE", lambda a, b: (a, b)),
    rule("numbers", "WHOLE , <more_numbers>", lambda a, rest: (a, *rest)),
    rule("more_numbers", "WHOLE ,? and WHOLE", lambda a, b: (a, b)),
    rule("more_numbers", "WHOLE , <more_numbers>", lambda a, rest: (a, *rest)),
    rule("sign", "more", always(1)),
    rule("sign", "fewer", always(-1)),
    rule("change", "increase", always(1)),
    rule("change", "decrease", always(-1)),
    # verbs
    rule("past", "DOWN", lambda measure: measure),
    rule("past", "SET", lambda measure: measure),
    rule("past", "STAND", lambda measure: measure),
    rule("base", "DOWNB", lambda measure: measure),
    rule("base", "SETB", lambda measure: measure),
    rule("base", "STANDB", lambda measure: measure),
    rule("outcome", "DOWN", lambda measure: measure),
    rule("outcome", "STAND", lambda measure: measure),
    rule("outcome_base", "DOWNB", lambda measure: measure),
    rule("outcome_base", "STANDB", lambda measure: measure),
    rule("that_outcome", "that? (was|were)? <outcome>", lambda measure: measure),
    rule("fell", "(was|were)? <outcome>", lambda measure: measure),
    # the form of an answer
    rule("form", "as a fraction", always(Demand("any"))),
    rule("form", "in simplest form", always(Demand("simplest"))),
    rule("form", "as a fraction in simplest form", always(Demand("simplest"))),
    rule("form", "as a repeating? decimal", always(Demand("decimal"))),
    rule("form", "as a percent", always(Demand("percent"))),
    rule("form", "as a mixed number", always(Demand("mixed:any"))),
    rule("form", "as a decimal rounded to the nearest <place>", lambda place: Demand("decimal", place)),
    rule("form", "as a percent rounded to the nearest whole percent", always(Demand("percent", 0))),
    rule("form", "as a percent rounded to the nearest <place> of a percent", lambda place: Demand("percent", place)),
    rule("form", "rounded? to the nearest <tens>", lambda places: Demand("whole", places)),
    *(rule("tens", word, always(places)) for word, places in TENS.items()),
    *(rule("place", word, always(places)) for word, places in PLACES.items()),
)


def what(colors: Labels, who: Labels = None, when: Labels = None) -> Np:
    """The scope that colors, who and when make."""
    return Np(who, when, colors)


def measured(measure: Measure, *allowed: Measure) -> Measure:
    """The measure, where it is one of those that make sense here."""
    if measure not in allowed:
        raise Clash
    return measure
