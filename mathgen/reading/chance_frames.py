"""Rules for sentences about chance: one picked at random, the next one, which is more likely, and how many outcomes there are."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.instructions import from_source
from mathgen.reading.meaning.chance import Choices, PickOne, Picks
from mathgen.reading.meaning.counts import Look
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.noun_phrases import always, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.chance import NextIs, Pairs, Picked, Sort, TimesPicked
from mathgen.reading.wanted.counts import Part
from mathgen.reading.wanted.parts import Which
from mathgen.trials.scope import Label, Measure

ANY = Demand("any")
THESE = "(these|those|the)"
_ONE = (PickOne(),)


def _part(colors: Labels, measure: Measure, who: Labels = None) -> Part:
    return Part(measure, what(colors, who), None, ANY)


def _which(likely: bool, measure: Measure, one: Label, other: Label) -> Which:
    if one == other:
        raise Clash
    return Which(measure, "colors", Np(None, None, (one, other)), None, likely)


def _bag(thing_colors: Labels, measure: Measure, _: object) -> Claims:
    return (PickOne(measure, thing_colors),)


def _kinds(first: Number, sort: str = "kinds") -> Claims:
    return (Choices(sort, first),)


def _two(first: Sort, second: Sort) -> Pairs:
    if first == second:
        raise Clash
    return Pairs(first, second)


PICKED: tuple[Rule, ...] = (
    rule("picked", "one of the ITEM is picked without looking", always(None)),
    rule("fact", f"one of {THESE} ITEM is picked at random", always(_ONE)),
    rule("fact", f"one of {THESE} ITEM is picked at random and put back", always(_ONE)),
    rule("fact", f"all of {THESE} ITEM go into a bag , and <picked> and put back", always(_ONE)),
    rule("fact", "this is done WHOLE times", lambda number: (Picks(number),)),
    rule("fact", "the ITEM is put back , and this is done WHOLE times", lambda _, number: (Picks(number),)),
    rule("ask", "about how many times should (a|an) COLOR ITEM be picked", lambda color, _: TimesPicked(color)),
    rule("fact", f"one ITEM is picked , and each of {THESE} ITEM is equally likely to be picked", always(_ONE)),
    rule("fact", f"all of {THESE} ITEM go into a bag , and <picked>", always(_ONE)),
    rule("fact", "all the? <things> <any_outcome> go into a bag , and <picked>", _bag),
    rule("any_outcome", "<that_outcome>", lambda measure: measure),
    rule("any_outcome", "that? (was|were)? SET", lambda measure: measure),
    rule("job", "see how many <things> <who> SET <when>?", lambda c, who, m, when: (Look(what(c, who, when), "table", None, m),)),
    rule("fact", "use all? (this|these) (result|results) to estimate a probability", always(())),
    rule("fact", "use (this|these) (result|results) to compare chances", always(())),
    rule("fact", "<at> to <job> , and use the counts to compare chances", lambda source, claims: from_source(source, claims)),
    rule("fact", "use the counts to estimate a probability", always(())),
    rule("fact", "<who> will do one more trial", lambda who: (Look(Np(who)),)),
)

A_COLOR = "(a|an) COLOR ITEM"

PROBABILITY: tuple[Rule, ...] = (
    rule("going_by", "going by all? (this|these) (result|results)", always(None)),
    rule("going_by", "based on all? (this|these) (result|results)", always(None)),
    rule("one_color", f"is {A_COLOR}", lambda color, _: (color, False)),
    rule("one_color", f"is not {A_COLOR}", lambda color, _: (color, True)),
    rule("probability", "(what|find) (is|was)? the estimated? probability that", always(None)),
    rule("ask", "<probability> the ITEM picked? <one_color>", lambda _, __, found: Picked(*found)),
    rule("be_done", "be <outcome>", lambda measure: measure),
    rule("be_done", "<outcome_base>", lambda measure: measure),
    rule("chance", "<probability> any one <thing> will <be_done>", lambda _, colors, m: _part(colors, m)),
    rule("chance", "<probability> (a|an) <thing> will <be_done>", lambda _, colors, m: _part(colors, m)),
    rule("chance", "<probability> the next ITEM to <be_done> <one_color>", lambda _, __, m, found: NextIs(m, *found)),
    rule("likely", "more likely", always(True)),
    rule("likely", "less likely", always(False)),
    rule(
        "chance",
        "which group is <likely> to <outcome_base> any one <thing>",
        lambda likely, m, colors: Which(m, "groups", what(colors), None, likely),
    ),
    rule("chance", f"which is <likely> to <be_done> , {A_COLOR} or {A_COLOR}", lambda s, m, a, _, b, __: _which(s, m, a, b)),
    rule("ask", "<chance>", lambda question: question),
    rule("ask", "<going_by> , <chance>", lambda _, question: question),
)

OUTCOMES: tuple[Rule, ...] = (
    rule("kinds_of", "WHOLE kinds of ITEM", lambda number, _: number),
    rule("fact", "a bag has ITEM of WHOLE kinds", lambda _, n: _kinds(n, "kinds")),
    rule("fact", "(a|an) ITEM is picked , the kind is written down , and the ITEM is put back", always(())),
    rule("fact", "then a second ITEM is picked", always((Choices("again"),))),
    rule("sorts_of", "<kinds_of>", lambda number: ("kinds", number)),
    rule("sorts_of", "WHOLE groups", lambda number: ("groups", number)),
    rule("sorts_of", "WHOLE trials", lambda number: ("trials", number)),
    rule("one_sort", "kind", always("kinds")),
    rule("one_sort", "group", always("groups")),
    rule("one_sort", "trial", always("trials")),
    rule("many_sorts", "kinds", always("kinds")),
    rule("many_sorts", "groups", always("groups")),
    rule("many_sorts", "trials", always("trials")),
    rule("fact", "each of <sorts_of> has a card of its own", lambda found: _kinds(found[1], found[0])),
    rule("fact", "a card is drawn , the <one_sort> is written down , and the card is put back", lambda sort: (Choices("", None, sort),)),
    rule("fact", "a bag has one card for each of <sorts_of>", lambda found: _kinds(found[1], found[0])),
    rule("fact", "a card is picked , the <one_sort> is written down , and the card is put back", lambda sort: (Choices("", None, sort),)),
    rule("fact", "then a second card is picked", always((Choices("again"),))),
    rule("fact", "one card is drawn and put back , and then a second card is drawn", always((Choices("again"),))),
    rule("fact", "then a second card is drawn", always((Choices("again"),))),
    rule("fact", "a spinner has one equal part for each of <sorts_of>", lambda found: _kinds(found[1], found[0])),
    rule(
        "fact",
        "the spinner is spun twice , and both <many_sorts> are written down in order",
        lambda sort: (Choices("again", None, sort),),
    ),
    rule(
        "fact",
        "one of <sorts_of> and one of <sorts_of> are drawn at random",
        lambda one, other: (*_kinds(one[1], one[0]), *_kinds(other[1], other[0])),
    ),
    rule("fact", "each of <sorts_of> has a card in one stack", lambda found: _kinds(found[1], found[0])),
    rule("fact", "each of <sorts_of> has a card in another stack", lambda found: _kinds(found[1], found[0])),
    rule("fact", "one card from each stack is drawn", always(())),
    rule("fact", "a tree diagram starts with <sorts_of>", lambda found: _kinds(found[1], found[0])),
    rule("fact", "each <one_sort> branches into <sorts_of>", lambda sort, found: (Choices("", None, sort), *_kinds(found[1], found[0]))),
    rule("fact", "one card is drawn and not put back", always((Choices("left"),))),
    rule("fact", "a stack has one card for each of <sorts_of>", lambda found: _kinds(found[1], found[0])),
    rule("fact", "one card is drawn , and then another one from the rest", always((Choices("left"), Choices("again")))),
    rule("fact", "the names of <sorts_of> are on cards , one on each card", lambda found: _kinds(found[1], found[0])),
    rule("fact", "one card is drawn , and then a second card is drawn from the rest", always((Choices("left"), Choices("again")))),
    rule("come_up", "are possible", always(None)),
    rule("come_up", "can come up", always(None)),
    rule("come_up", "does the tree diagram show", always(None)),
    rule("ask", "how many ordered pairs of <many_sorts> <come_up>", lambda one, _: Pairs(one, one)),
    rule("ask", "how many different pairs of a <one_sort> and a <one_sort> <come_up>", lambda one, other, _: _two(one, other)),
)

RULES: tuple[Rule, ...] = (*PICKED, *PROBABILITY, *OUTCOMES)
