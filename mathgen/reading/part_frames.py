"""Rules for sentences about parts of one whole, equal fractions and goals for a next time: those that tell and those that ask."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import RATE, Claims
from mathgen.reading.meaning.counts import NextGoal, SameRate
from mathgen.reading.meaning.parts import EqualFraction, PartOf
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import Counted, Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.counts import NextSetUp
from mathgen.reading.wanted.parts import ColorPart, OtherNumber, PartOfSet
from mathgen.trials.scope import Label, Measure

Place = Literal["top", "bottom"]


class Known(NamedTuple):
    """A set that is spoken of: how many, where told, of which colors, whose, when, and what it counts, where that is said."""

    number: Number | None
    colors: Labels
    counted: Measure | None = None
    who: Labels = None
    when: Labels = None

    @property
    def np(self) -> Np:
        """Its scope, as far as the words say."""
        return what(self.colors, self.who, self.when)


def _outcome_of(known: Known, measure: Measure, who: Labels, tail: Tail | None) -> Known:
    return _placed(known, who, tail)._replace(counted=measure)


def _placed(known: Known, who: Labels, tail: Tail | None) -> Known:
    return known._replace(who=who, when=None if tail is None else tail.trials)


def _part(number: Number, known: Known, colors: Labels, measure: Measure | None = None, tail: Tail | None = None) -> Claims:
    if measure is not None:
        measured(measure, "down", "standing")
        known = _placed(known, None, tail)
    return (PartOf(measure, known.np, number, colors, known.number, known.counted),)


def _two_parts(known: Known, one: Number, color: Label, two: Number, other: Label, *measures: Measure) -> Claims:
    """ "Of the 50 pins, 0.12 were red pins knocked down and 0.26 were blue pins knocked down." """
    measure = measures[0]
    if color == other or measures.count(measure) < len(measures):
        raise Clash
    return (*_part(one, known, (color,), measure), *_part(two, known, (other,), measure))


def _part_set_up(number: Number, known: Known, colors: Labels, measure: Measure) -> Claims:
    return (PartOf(measured(measure, "down", "standing"), known.np, number, colors, known.number, known.counted),)


def _again(number: Number, colors: Labels, measure: Measure | None = None) -> Claims:
    return (PartOf(measure, Np(), number, colors, None, None, True),)


def _asked_of_set(
    demand: Demand, known: Known, colors: Labels, measure: Measure | None = None, who: Labels = None, tail: Tail | None = None
) -> PartOfSet:
    return PartOfSet(measure, _placed(known, who, tail).np, known.number, known.counted, colors, demand)


def _asked_of_outcome(demand: Demand, known: Known, colors: Labels) -> ColorPart:
    assert known.counted is not None  # the rules for <outcome_of> always tell it
    return ColorPart(known.counted, known.np, known.number, colors, demand)


def _goal(thing: Counted, measure: Measure, who: Labels = None) -> Claims:
    return (NextGoal(measured(measure, "down", "standing"), what(thing.colors, who), thing.number),)


def _goal_same(claims: Claims, colors: Labels) -> Claims:
    [goal] = claims
    assert isinstance(goal, NextGoal)  # <next_goal> makes nothing else
    if colors != goal.np.colors:
        raise Clash
    return (goal, SameRate(goal.np, goal.measure))


def _other(place: Place) -> OtherNumber:
    return OtherNumber(place)


def _equal(np: Np | None, number: tuple[Place, Number], measure: Measure | None = None) -> Claims:
    place, value = number
    if value.value == 0:
        raise Clash
    return (EqualFraction(place, value, np or Np(), measure),)


SETS: tuple[Rule, ...] = (
    rule("known", "out? of all? the WHOLE? <things>", Known),
    rule("known", "out? of all? (its|their|these|those) WHOLE? <things>", Known),
    rule("known", "out? of all? WHOLE <things>", Known),
    rule("known", "out? of all <things>", lambda colors: Known(None, colors)),
    rule("set", "<known> SET?", lambda known, measure: known._replace(counted=measure)),
    rule("by_whom", "by <who>", lambda who: who),
    rule("outcome_of", "<known> <that_outcome> <by_whom>? <tail>?", _outcome_of),
    rule("outcome_of", "<known> that? <who> <outcome> <tail>?", lambda k, who, m, tail: _outcome_of(k, m, who, tail)),
)

TOLD: tuple[Rule, ...] = (
    rule("passive", "<set> , NUM (was|were) <sort_things> <that_outcome> <tail>?", lambda k, n, c, m, tail: _part(n, k, c, m, tail)),
    rule(
        "passive",
        "<set> , NUM (was|were) COLOR ITEM <that_outcome> and NUM (was|were) COLOR ITEM <that_outcome>",
        lambda known, n, a, _, m, k, b, __, m2: _two_parts(known, n, a, k, b, m, m2),
    ),
    rule("passive", "<set> , NUM (was|were) <sorts>", lambda k, n, c: _part(n, k, c)),
    rule("passive", "NUM <set> (was|were) <sort_things> <that_outcome> <tail>?", _part),
    rule("passive", "NUM <set> (was|were) <sorts>", _part),
    rule("passive", "<outcome_of> , NUM (was|were) <sorts>", lambda k, n, c: _part(n, k, c)),
    rule("passive", "NUM <outcome_of> (was|were) <sorts>", _part),
    rule("passive", "the? <sort_things> <that_outcome> (was|were) NUM <set> <tail>?", lambda c, m, n, k, tail: _part(n, k, c, m, tail)),
    rule(
        "fact",
        "the? <sort_things> <that_outcome> (was|were) NUM <known> <who> SET <when>",
        lambda c, m, n, known, who, set_up, when: _part_set_up(n, known._replace(counted=set_up, who=who, when=when), c, m),
    ),
    rule("fact", "NUM (was|were) <sort_things> <that_outcome>", _again),
    rule("fact", "NUM (was|were) <sorts>", _again),
    rule("fact", "<in_all> , <clause>", lambda _, claims: claims),
    # a goal for the next time
    rule("next_goal", "the goal for NEXT is <counted> <that_outcome>", lambda _, thing, m: _goal(thing, m)),
    rule("next_goal", "NEXT , the goal is <counted> <that_outcome>", lambda _, thing, m: _goal(thing, m)),
    rule("next_goal", "<who> (want|wants) to <outcome_base> <counted> NEXT", lambda who, m, thing, _: _goal(thing, m, who)),
    rule("next_goal", "<who> would like to <outcome_base> <counted> NEXT", lambda who, m, thing, _: _goal(thing, m, who)),
    rule("next_goal", "NEXT , <who> would like to <outcome_base> <counted>", lambda _, who, m, thing: _goal(thing, m, who)),
    rule("fact", "<next_goal>", lambda claims: claims),
    rule("fact", f"<next_goal> , the same {RATE} of the <things>", _goal_same),
    # equal fractions
    rule("number_place", "bottom number", always("bottom")),
    rule("number_place", "top number", always("top")),
    rule("place_number", "(the|a) <number_place> of? WHOLE", lambda place, number: (place, number)),
    rule("equal", "(an|the) (equal|equivalent) fraction", always(None)),
    rule("equal", "(an|the) (equal|equivalent) fraction of the <things>", lambda colors: what(colors)),
    rule("fact", "<equal> has <place_number>", _equal),
    rule(
        "fact",
        "(name|find|write) <equal> with <place_number> for the fraction <that_outcome>",
        lambda np, number, m: _equal(np, number, m),
    ),
    rule("fact", "(name|find|write) <equal> with <place_number>", _equal),
)

ASKED: tuple[Rule, ...] = (
    rule(
        "decimal_ask",
        "what decimal part <set> (was|were) <sort_things> <that_outcome>",
        lambda known, colors, measure: _asked_of_set(Demand("decimal"), known, colors, measure),
    ),
    rule(
        "about_ask",
        "the? <things> <that_outcome> (was|were) about what decimal part <set>",
        lambda c, m, known: _asked_of_set(Demand("decimal"), known, c, m),
    ),
    rule(
        "ask",
        "the? <things> <that_outcome> (was|were) <form_of_part> <set>",
        lambda c, m, demand, known: _asked_of_set(demand, known, c, m),
    ),
    rule("ask", "<form_of_part> <outcome_of> (was|were) <sorts>", _asked_of_outcome),
    rule("ask", "<outcome_of> , <form_of_part> (was|were) <sorts>", lambda known, demand, c: _asked_of_outcome(demand, known, c)),
    rule("ask", "<form_of_part> <set> (was|were) <sorts>", _asked_of_set),
    rule("ask", "<form_of_part> <set> (was|were) <sort_things> <that_outcome> <by_whom>? <tail>?", _asked_of_set),
    rule("ask", "<set> , <form_of_part> (was|were) <sorts>", lambda known, demand, c: _asked_of_set(demand, known, c)),
    rule(
        "ask",
        "<set> , <form_of_part> (was|were) <sort_things> <that_outcome> <by_whom>? <tail>?",
        lambda known, demand, c, m, who, tail: _asked_of_set(demand, known, c, m, who, tail),
    ),
    rule("next_set", "how many <things> must <who> SETB NEXT?", lambda c, who, _, __: NextSetUp(what(c, who))),
    rule("ask", "<next_set>", lambda question: question),
    rule("ask", f"at the same {RATE} , <next_set>", lambda question: question._replace(same=True)),
    rule("ask", "(what|find) (is|was)? the <number_place> of the (equal|equivalent) fraction", _other),
)

RULES: tuple[Rule, ...] = (*SETS, *TOLD, *ASKED)
