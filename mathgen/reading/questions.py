"""Rules for questions."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.counts import About
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import Meaning, Question
from mathgen.reading.wanted.counts import (
    Change,
    Difference,
    HowMany,
    HowManyOfTotal,
    MeanOf,
    Most,
    Multiple,
    Needed,
    NextCount,
    OneShare,
    Part,
    PercentMore,
)
from mathgen.reading.wanted.parts import RatioOf, Which
from mathgen.trials.scope import Label, Measure

GREATER = "(greater|larger|bigger|higher) (fraction|part)"
ANY, DECIMAL, PERCENT, MIXED = Demand("any"), Demand("decimal"), Demand("percent"), Demand("mixed:any")
RATIO = Demand("ratio:any")


def _how_many(colors: Labels, who: Labels, measure: Measure, tail: Tail | None, whole: Number | None = None) -> HowMany:
    tail = tail or Tail()
    return HowMany(measure, what(colors, who, tail.trials), whole, tail.total)


def _total(colors: Labels, who: Labels, measure: Measure, tail: Tail | None) -> HowMany:
    return _how_many(colors, who, measure, tail)._replace(total=True)


def _part(whole: Number | None, colors: Labels, who: Labels, measure: Measure, demand: Demand) -> Part:
    return Part(measured(measure, "down", "standing"), what(colors, who), whole, demand)


def _two_colors(measure: Measure, one: Label, other: Label) -> Which:
    if one == other:
        raise Clash
    return Which(measure, "colors", Np(None, None, (one, other)))


def _formed(question: Question, demand: Demand | None) -> Meaning:
    """The question with the form that the sentence asks for; a form told twice makes no sense."""
    own = getattr(question, "demand", ANY)
    if own == RATIO and demand == Demand("simplest"):
        return Meaning((), question, Demand("ratio"))
    if demand is not None and own != ANY:
        raise Clash
    return Meaning((), question, demand)


def _about(meaning: Meaning) -> Meaning:
    return meaning._replace(claims=(About(),))


def _ratio(first: tuple[Measure | None, Labels], second: tuple[Measure, Labels], np: Np | None) -> RatioOf:
    if first == second or (first[0] is None and first[1] == second[1]):
        raise Clash
    return RatioOf(first, second, np or Np(), RATIO)


def _ratio_of_colors(first: Labels, second: Labels, who: Labels, measure: Measure, when: Labels) -> RatioOf:
    return _ratio((None, first), (measure, second), Np(who, when))


def _relative_frequency(colors: Labels, measure: Measure, who: Labels, when: Labels) -> Part:
    part = _part(None, colors, who, measure, ANY)
    return part._replace(np=part.np._replace(trials=when))


HOW_MANY: tuple[Rule, ...] = (
    rule("ask", "how many <things> did <who> <base> <tail>?", _how_many),
    rule("ask", "how many <things> <fell> <tail>?", lambda c, m, tail: _how_many(c, None, m, tail)),
    rule("ask", "how many of the <counted> were <colors> ITEM?", lambda t, colors, _: HowManyOfTotal(what(colors), t.number, t.colors)),
    rule("ask", "how many <things> <fell> by <who> <tail>?", lambda c, m, w, tail: _how_many(c, w, m, tail)),
    rule("ask", "how many <whole> <fell> by <who> <tail>?", lambda whole, m, w, tail: _how_many(whole[1], w, m, tail, whole[0])),
    rule(
        "ask",
        "(what|find) (is|was)? the total? number of <things> <that_outcome> by <who> <tail>?",
        lambda c, m, who, tail: _total(c, who, m, tail),
    ),
    rule("ask", "how many <whole> <fell> <tail>?", lambda whole, m, tail: _how_many(whole[1], None, m, tail, whole[0])),
    rule("ask", "how many <whole> did <who> <base> <tail>?", lambda whole, w, m, tail: _how_many(whole[1], w, m, tail, whole[0])),
    rule("ask", "(what|find) (is|was)? the total? number of <things> <that_outcome> <tail>?", lambda c, m, tail: _total(c, None, m, tail)),
    rule("ask", "(what|find) (is|was)? the total? number of <things> that? <who> <outcome> <tail>?", _total),
    # how many more, how many times as many
    rule("ask", "how many <sign> <things> did <who> <base> <when>?", lambda s, c, w, m, when: Difference(m, what(c, w, when), None, s)),
    rule(
        "ask",
        "how many <sign> <things> did <who> <base> than <who> <when>?",
        lambda s, c, w, m, o, t: Difference(m, what(c, w, t), Np(o), s),
    ),
    rule(
        "ask",
        "how many <sign> <things> did <who> <base> <when> than <who>",
        lambda s, c, w, m, t, o: Difference(m, what(c, w, t), Np(o), s),
    ),
    rule(
        "ask",
        "how many <sign> <things> did <who> <base> <when> than <when>",
        lambda s, c, w, m, t, u: Difference(m, what(c, w, t), Np(None, u), s),
    ),
    rule("ask", "how many <sign> <versus> did <who> <base> <tail>?", lambda s, v, w, m, tail: _colors(m, v, w, tail, s)),
    rule("ask", "how many <sign> <versus> <fell> <tail>?", lambda s, v, m, tail: _colors(m, v, None, tail, s)),
    rule("ask", "how many <sign> <things> <fell> <when>", lambda s, c, m, when: Difference(m, what(c, None, when), None, s)),
    rule(
        "ask", "how many <sign> <things> <fell> <when> than <when>", lambda s, c, m, a, b: Difference(m, what(c, None, a), Np(None, b), s)
    ),
    rule("ask", "how many <sign> ITEM does the COLOR bar show", lambda s, _, color: Difference("down", what((color,)), None, s, True)),
    rule("versus", "COLOR than COLOR ITEM", lambda a, b, _: (a, b)),
    rule("versus", "COLOR ITEM than COLOR ITEM", lambda a, _, b, __: (a, b)),
    rule("ask", "how many times as many <things> did <who> <base> <when>?", lambda c, w, m, when: Multiple(m, what(c, w, when), None)),
    rule(
        "ask", "how many times as many <things> did <who> <base> as <who> <when>?", lambda c, w, m, o, t: Multiple(m, what(c, w, t), Np(o))
    ),
    rule("ask", "how many times as many <things> <fell> <when>", lambda c, m, when: Multiple(m, what(c, None, when), None)),
    rule("ask", "how many times as many <times> did <who> <base> <tail>?", lambda v, w, m, tail: _colors(m, v, w, tail, 0)),
    rule("ask", "how many times as many <times> <fell> <tail>?", lambda v, m, tail: _colors(m, v, None, tail, 0)),
    rule("times", "COLOR as COLOR ITEM", lambda a, b, _: (a, b)),
    rule("times", "COLOR ITEM as COLOR ITEM", lambda a, _, b, __: (a, b)),
)


def _colors(measure: Measure, pair: tuple[Label, Label], who: Labels, tail: Tail | None, sign: int) -> Question:
    first, other = pair
    if first == other:
        raise Clash
    np = what((first,), who, None if tail is None else tail.trials)
    return Difference(measure, np, what((other,)), sign) if sign else Multiple(measure, np, what((other,)))


PARTS: tuple[Rule, ...] = (
    rule("share", "<whole> did <who> <base> <tail>?", lambda w, who, m, tail: (*w, who, m, tail)),
    rule("share", "<whole> <fell> by <who> <tail>?", lambda w, m, who, tail: (*w, who, m, tail)),
    rule("share", "<whole> <fell> <tail>?", lambda w, m, tail: (*w, None, m, tail)),
    rule("share", "<whole> <who> <outcome> <tail>?", lambda w, who, m, tail: (*w, who, m, tail)),
    rule("form_of_part", "what (fraction|part)", always(ANY)),
    rule("form_of_part", "what decimal part", always(DECIMAL)),
    rule("form_of_part", "what (percent|percentage)", always(PERCENT)),
    rule("form_of_part", "which fraction shows what part", always(ANY)),
    rule("form_of_part", "which repeating? decimal shows what part", always(DECIMAL)),
    rule("form_of_part", "which percent shows what part", always(PERCENT)),
    rule("ask", "<form_of_part> <share>", lambda demand, share: _shared(share, demand)),
    rule("ask", "<whole> , <form_of_part> did <who> <base> <tail>?", lambda w, d, who, m, tail: _shared((*w, who, m, tail), d)),
    rule("ask", "<whole> , <form_of_part> <fell> <tail>?", lambda w, d, m, tail: _shared((*w, None, m, tail), d)),
    rule(
        "ask",
        "of the WHOLE? <things> that? <who> SET <when>? , <form_of_part> <fell>",
        lambda n, c, who, _, when, d, m: _shared((n, c, who, m, Tail(when)), d),
    ),
    rule("ask", "(what|find) (is|was)? the fraction <share>", lambda share: _shared(share, ANY)),
    rule("ask", "find the percent <share>", lambda share: _shared(share, PERCENT)),
    rule("ask", f"which group <outcome> (the|a) {GREATER} of (its|their) WHOLE <things>", lambda m, n, c: Which(m, "groups", what(c), n)),
    rule("ask", f"which group <outcome> (the|a) {GREATER} of (its|their) <things>", lambda m, c: Which(m, "groups", what(c))),
    rule("ask", f"which group had (the|a) {GREATER} of (its|their) <things> <fall>", lambda c, m: Which(m, "groups", what(c))),
    rule("ask", f"which trial had (the|a) {GREATER} of (its|their|the) <things> <fall>", lambda c, m: Which(m, "trials", what(c))),
    rule("ask", f"which ITEM had (the|a) {GREATER} <fall> , COLOR or COLOR", lambda _, m, a, b: _two_colors(m, a, b)),
    rule(
        "ask",
        f"which had (the|a) {GREATER} <fall> , the COLOR ITEM or the COLOR ITEM",
        lambda m, a, _, b, __: _two_colors(m, a, b),
    ),
    rule("fall", "<outcome>", lambda measure: measure),
    rule("fall", "<outcome_base>", lambda measure: measure),
)


def _shared(share: tuple[Number | None, Labels, Labels, Measure, Tail | None], demand: Demand) -> Part:
    whole, colors, who, measure, tail = share
    part = _part(whole, colors, who, measure, demand)
    return part if tail is None else part._replace(np=part.np._replace(trials=tail.trials))


OTHERS: tuple[Rule, ...] = (
    # a next set
    rule("next", "how many <things> would <who> <base> NEXT?", lambda c, w, m, _: NextCount(m, what(c, w))),
    rule(
        "next",
        "how many of (the|these|those) next? WHOLE <things> would <who> <base> NEXT?",
        lambda n, c, w, m, _: NextCount(m, what(c, w), n),
    ),
    rule("ask", "<next>", lambda question: question),
    rule("ask", "at the same (rate|percent) , <next>", lambda question: question._replace(same=True)),
    rule("ask", "about how many of the WHOLE <things> should <who> expect to <base>", lambda n, c, w, m: NextCount(m, what(c, w), n, True)),
    rule("ask", "how many <things> must <who> <outcome_base> NEXT", lambda c, w, m, _: NextCount(m, what(c, w))),
    # a goal for the mean
    rule("ask", "how many <things> must <who> <base> in (the|that) (last|next)? trial", lambda c, w, m: Needed(m, what(c, w))),
    # equal shares
    rule("ask", "(what|find) (is|was)? the share of one group", always(OneShare("groups", ANY))),
    rule("ask", "how many points is that for one trial", always(OneShare("trials", ANY))),
    rule("ask", "how many points would <who> earn in one trial", lambda who: OneShare("trials", ANY, Np(who))),
    rule("ask", "which mixed number is one equal share of the points", always(OneShare("", MIXED))),
    # the mean
    rule("statistic", "the mean", always("mean")),
    rule("statistic", "the median", always("median")),
    rule(
        "ask",
        "(what|find) (is|was)? <statistic> number of <things> <that_outcome> per group <when>?",
        lambda s, c, m, t: MeanOf(m, what(c, None, t), "groups", ANY, s),
    ),
    rule(
        "ask",
        "(what|find) (is|was)? <statistic> number of <things> <that_outcome> per group for these groups",
        lambda s, c, m: MeanOf(m, what(c, Mark("these")), "groups", ANY, s),
    ),
    rule(
        "ask",
        "(what|find) (is|was)? <statistic> number of <things> <that_outcome> per trial",
        lambda s, c, m: MeanOf(m, what(c), "trials", ANY, s),
    ),
    rule(
        "ask",
        "(what|find) (is|was)? <statistic> number of <things> <that_outcome>",
        lambda s, c, m: MeanOf(m, what(c), "", ANY, s),
    ),
    rule("ask", "(what|find) (is|was)? <statistic> of these numbers of <things>", lambda s, c: MeanOf(None, what(c), "", ANY, s)),
    # percent of change
    rule("ask", "by what percent did the number of <things> <that_outcome> <change>", lambda c, m, s: Change(m, what(c), s)),
    rule(
        "ask",
        "from TRIALS to TRIALS , by what percent did the number of <things> <that_outcome> <change>",
        lambda a, b, c, m, s: Change(m, what(c), s, a, b),
    ),
    rule(
        "ask",
        "(what|find) (is|was)? the percent <change> in <number_of> <from_to>?",
        lambda s, of, trials: Change(of[0], of[1], s, *(trials or ())),
    ),
    rule("ask", "what percent <sign> <things> did <who> <base> than <who>", lambda s, c, w, m, o: PercentMore(m, what(c, w), Np(o), s)),
    rule(
        "ask",
        "by what percent is the number of <things> <that_outcome> <greater> for <who> than for <who>",
        lambda c, m, s, w, o: PercentMore(m, what(c, w), Np(o), s),
    ),
    rule("greater", "greater", always(1)),
    rule("greater", "less", always(-1)),
    rule("number_of", "<things> <that_outcome>", lambda c, m: (m, what(c))),
    rule("number_of", "the number of <things> <that_outcome>", lambda c, m: (m, what(c))),
    rule("from_to", "from TRIALS to TRIALS", lambda a, b: (a, b)),
)


LABELS: tuple[Rule, ...] = (
    rule("most", "the most", always(True)),
    rule("most", "the (fewest|least)", always(False)),
    rule("ask", "which group <outcome> <most> <things> <when>?", lambda m, most, c, t: Most(m, "groups", what(c, None, t), most)),
    rule("ask", "which group had <most> <things> <outcome> <when>?", lambda most, c, m, t: Most(m, "groups", what(c, None, t), most)),
    rule("ask", "which group <outcome> <sign> <things> <when>?", lambda m, s, c, t: Most(m, "groups", what(c, None, t), s > 0, True)),
    rule("ask", "in? which trial did <who> <base> <sign> <things>", lambda w, m, s, c: Most(m, "trials", what(c, w), s > 0, True)),
    rule("ask", "which trial had <sign> <things> <that_outcome>", lambda s, c, m: Most(m, "trials", what(c), s > 0, True)),
    rule("ask", "which color had <sign> ITEM <that_outcome> <when>?", lambda s, _, m, t: Most(m, "colors", Np(None, t, None), s > 0, True)),
    rule("ask", "in? which trial did <who> <base> <most> <things>", lambda w, m, most, c: Most(m, "trials", what(c, w), most)),
    rule("ask", "which trial had <most> <things> <outcome>", lambda most, c, m: Most(m, "trials", what(c), most)),
    rule("ask", "which color had <most> ITEM <outcome> <when>?", lambda most, _, m, t: Most(m, "colors", Np(None, t, None), most)),
    rule("ask", "which color of ITEM did <who> <base> <most> of <when>?", lambda _, w, m, most, t: Most(m, "colors", Np(w, t, None), most)),
)

RATIOS: tuple[Rule, ...] = (
    rule("amount", "<all_things> <that_outcome>", lambda colors, measure: (measure, colors)),
    rule("amount", "<all_things> that? (was|were)? SET", lambda colors, measure: (measure, colors)),
    rule("all_things", "<things>", lambda colors: colors),
    rule("all_things", "all the? <colors> ITEM", lambda colors, _: colors),
    rule("all_things", "all the? ITEM", always(Mark("all"))),
    rule("ask", "(what|find) (is|was)? the ratio of <amount> to <amount> <of_whom>?", _ratio),
    rule("ask", "(what|find) (is|was)? the ratio of <things> to <amount> <of_whom>?", lambda c, b, np: _ratio((None, c), b, np)),
    rule("ask", "(what|find) (is|was)? the ratio of COLOR to <amount> <of_whom>?", lambda c, b, np: _ratio((None, (c,)), b, np)),
    rule("ask", "(what|find) (is|was)? the ratio of <things> to <things> that? <who> <outcome> <when>?", _ratio_of_colors),
    rule("of_whom", "for <who> <when>?", lambda who, when: Np(who, when)),
    rule(
        "ask",
        "(what|find) (is|was)? the relative frequency of <things> <that_outcome> for <who> <when>?",
        lambda c, m, w, t: _relative_frequency(c, m, w, t),
    ),
)


RULES: tuple[Rule, ...] = (
    *HOW_MANY,
    *PARTS,
    *OTHERS,
    *LABELS,
    *RATIOS,
    rule("question", "<ask>", lambda question: _formed(question, None)),
    rule("question", "<form> , <ask>", lambda form, question: _formed(question, form)),
    rule("question", "<ask> ,? <form>", _formed),
    rule("question", "<form> , about <ask>", lambda form, question: _about(_formed(question, form))),
    rule("question", "about <ask> ,? <form>", lambda question, form: _about(_formed(question, form))),
    rule("question", "about <decimal_ask>", lambda question: _about(_formed(question, None))),
    rule("question", "<about_ask>", lambda question: _about(_formed(question, None))),
    rule("question", "<when> , <ask>", lambda when, question: _formed(_asked_at(when, question), None)),
)


def _asked_at(when: Labels, question: Question) -> Question:
    np = getattr(question, "np", None)
    if np is None or np.trials is not None:
        raise Clash
    return question._replace(np=np._replace(trials=when))  # type: ignore[attr-defined, no-any-return]
