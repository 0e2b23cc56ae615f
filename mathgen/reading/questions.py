"""Rules for questions."""

from __future__ import annotations

from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning import (
    Change,
    Difference,
    HowMany,
    Labels,
    Mark,
    Meaning,
    MeanOf,
    Multiple,
    Needed,
    NextCount,
    Np,
    OneShare,
    Part,
    Question,
    Which,
)
from mathgen.reading.noun_phrases import Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure

ANY, DECIMAL, PERCENT, MIXED = Demand("any"), Demand("decimal"), Demand("percent"), Demand("mixed")


def _how_many(colors: Labels, who: Labels, measure: Measure, tail: Tail | None, whole: Number | None = None) -> HowMany:
    tail = tail or Tail()
    return HowMany(measure, what(colors, who, tail.trials), whole, tail.total)


def _part(whole: Number | None, colors: Labels, who: Labels, measure: Measure, demand: Demand) -> Part:
    return Part(measured(measure, "down", "standing"), what(colors, who), whole, demand)


def _two_colors(measure: Measure, one: Label, other: Label) -> Which:
    if one == other:
        raise Clash
    return Which(measure, "colors", Np(None, None, (one, other)))


def _formed(question: Question, demand: Demand | None) -> Meaning:
    """The question with the form that the sentence asks for; a form told twice makes no sense."""
    if demand is not None and getattr(question, "demand", ANY) != ANY:
        raise Clash
    return Meaning((), question, demand)


HOW_MANY: tuple[Rule, ...] = (
    rule("ask", "how many <things> did <who> <base> <tail>?", _how_many),
    rule("ask", "how many <things> <fell> <tail>?", lambda c, m, tail: _how_many(c, None, m, tail)),
    rule("ask", "how many of the WHOLE <things> <fell> <tail>?", lambda n, c, m, tail: _how_many(c, None, m, tail, n)),
    rule("ask", "how many of the WHOLE <things> did <who> <base> <tail>?", lambda n, c, w, m, tail: _how_many(c, w, m, tail, n)),
    rule("ask", "how many of (the|these) <things> did <who> <base> <tail>?", _how_many),
    rule("ask", "how many of (the|these) <things> <fell> <tail>?", lambda c, m, tail: _how_many(c, None, m, tail)),
    rule(
        "ask",
        "what is the total number of <things> <that_outcome> <tail>?",
        lambda c, m, tail: _how_many(c, None, m, tail)._replace(total=True),
    ),
    # how many more, how many times as many
    rule("ask", "how many <sign> <things> did <who> <base> <when>?", lambda s, c, w, m, when: Difference(m, what(c, w, when), None, s)),
    rule("ask", "how many <sign> <things> did <who> <base> than <who> <when>?", lambda s, c, w, m, o, t: Difference(m, what(c, w, t), Np(o), s)),
    rule("ask", "how many <sign> <things> did <who> <base> <when> than <who>", lambda s, c, w, m, t, o: Difference(m, what(c, w, t), Np(o), s)),
    rule("ask", "how many <sign> <things> did <who> <base> <when> than <when>", lambda s, c, w, m, t, u: Difference(m, what(c, w, t), Np(None, u), s)),
    rule("ask", "how many <sign> <versus> did <who> <base> <tail>?", lambda s, v, w, m, tail: _colors(m, v, w, tail, s)),
    rule("ask", "how many <sign> <versus> <fell> <tail>?", lambda s, v, m, tail: _colors(m, v, None, tail, s)),
    rule("ask", "how many <sign> <things> <fell> <when>", lambda s, c, m, when: Difference(m, what(c, None, when), None, s)),
    rule("ask", "how many <sign> <things> <fell> <when> than <when>", lambda s, c, m, a, b: Difference(m, what(c, None, a), Np(None, b), s)),
    rule("ask", "how many <sign> ITEM does the COLOR bar show", lambda s, _, color: Difference("down", what((color,)), None, s)),
    rule("versus", "COLOR than COLOR ITEM", lambda a, b, _: (a, b)),
    rule("versus", "COLOR ITEM than COLOR ITEM", lambda a, _, b, __: (a, b)),
    rule("ask", "how many times as many <things> did <who> <base> <when>?", lambda c, w, m, when: Multiple(m, what(c, w, when), None)),
    rule("ask", "how many times as many <things> did <who> <base> as <who> <when>?", lambda c, w, m, o, t: Multiple(m, what(c, w, t), Np(o))),
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
    rule("whole", "of the WHOLE <things> SET?", lambda n, colors, _: (n, colors)),
    rule("whole", "of (the|these) <things> SET?", lambda colors, _: (None, colors)),
    rule("whole", "of all (the|these) <things> SET?", lambda colors, _: (None, colors)),
    rule("share", "<whole> did <who> <base> <tail>?", lambda w, who, m, tail: (*w, who, m, tail)),
    rule("share", "<whole> <fell> <tail>?", lambda w, m, tail: (*w, None, m, tail)),
    rule("ask", "what (fraction|part) <share>", lambda share: _shared(share, ANY)),
    rule("ask", "what decimal part <share>", lambda share: _shared(share, DECIMAL)),
    rule("ask", "what percent <share>", lambda share: _shared(share, PERCENT)),
    rule("ask", "which repeating? decimal shows what part <share>", lambda share: _shared(share, DECIMAL)),
    rule("ask", "which percent shows what part <share>", lambda share: _shared(share, PERCENT)),
    rule("ask", "which group <outcome> the greater fraction of its WHOLE <things>", lambda m, n, c: Which(m, "groups", what(c), n)),
    rule("ask", "which group <outcome> the greater fraction of its <things>", lambda m, c: Which(m, "groups", what(c))),
    rule("ask", "which trial had the greater fraction of its <things> <fall>", lambda c, m: Which(m, "trials", what(c))),
    rule("ask", "which ITEM had the greater fraction <fall> , COLOR or COLOR", lambda _, m, a, b: _two_colors(m, a, b)),
    rule(
        "ask",
        "which had the greater fraction <fall> , the COLOR ITEM or the COLOR ITEM",
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
    rule("next", "how many of the next? WHOLE <things> would <who> <base> NEXT?", lambda n, c, w, m, _: NextCount(m, what(c, w), n)),
    rule("ask", "<next>", lambda question: question),
    rule("ask", "at the same (rate|percent) , <next>", lambda question: question._replace(same=True)),
    rule("ask", "about how many of the WHOLE <things> should <who> expect to <base>", lambda n, c, w, m: NextCount(m, what(c, w), n)),
    rule("ask", "how many <things> must <who> <base> NEXT", lambda c, w, m, _: NextCount(m, what(c, w))),
    # a goal for the mean
    rule("ask", "how many <things> must <who> <base> in (the|that) (last|next)? trial", lambda c, w, m: Needed(m, what(c, w))),
    # equal shares
    rule("ask", "what is the share of one group", always(OneShare("groups", ANY))),
    rule("ask", "what is the share of one trial", always(OneShare("trials", ANY))),
    rule("ask", "which mixed number is one equal share of the points", always(OneShare("", MIXED))),
    # the mean
    rule("ask", "what is the mean number of <things> <that_outcome> per group <when>?", lambda c, m, t: MeanOf(m, what(c, None, t), "groups", ANY)),
    rule("ask", "what is the mean number of <things> <that_outcome> per trial", lambda c, m: MeanOf(m, what(c), "trials", ANY)),
    rule("ask", "what is the mean of these numbers of <things>", lambda c: MeanOf(None, what(c), "", ANY)),
    # percent of change
    rule("ask", "by what percent did the number of <things> <that_outcome> <change>", lambda c, m, s: Change(m, what(c), s)),
    rule(
        "ask",
        "from TRIALS to TRIALS , by what percent did the number of <things> <that_outcome> <change>",
        lambda a, b, c, m, s: Change(m, what(c), s, a, b),
    ),
    rule("ask", "what is the percent <change> in <number_of> <from_to>?", lambda s, of, trials: Change(of[0], of[1], s, *(trials or ()))),
    rule("number_of", "<things> <that_outcome>", lambda c, m: (m, what(c))),
    rule("number_of", "the number of <things> <that_outcome>", lambda c, m: (m, what(c))),
    rule("from_to", "from TRIALS to TRIALS", lambda a, b: (a, b)),
)


RULES: tuple[Rule, ...] = (
    *HOW_MANY,
    *PARTS,
    *OTHERS,
    rule("question", "<ask>", lambda question: _formed(question, None)),
    rule("question", "<form> , <ask>", lambda form, question: _formed(question, form)),
    rule("question", "<ask> ,? <form>", _formed),
    rule("question", "<when> , <ask>", lambda when, question: _formed(_asked_at(when, question), None)),
)


def _asked_at(when: Labels, question: Question) -> Question:
    np = getattr(question, "np", None)
    if np is None or np.trials is not None:
        raise Clash
    return question._replace(np=np._replace(trials=when))  # type: ignore[call-arg]


