"""Rules for sentences about samples drawn at random, simulations by digits, and what is more likely than not."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.chance import Digits, Drawn, Sample, SampleHas, SampleLike, UniformModel
from mathgen.reading.meaning.scope import Labels, Mark
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.chance import AllGroups, EstimateOff, InSample, LikelierThan, MeanGap, SampleAlike, StandFor, ThanModel
from mathgen.trials.scope import Measure


def _sample(size: Number, groups: Number) -> Claims:
    return (Sample(size, groups),)


def _like_all(size: Number, colors: Labels, whole: Number | None, again: Labels, measure: Measure | None = None) -> Claims:
    if {colors, again} != {Mark("bare")}:
        raise Clash  # "of these red pins"
    return (SampleLike(size, None if measure is None else measured(measure, "down", "standing"), whole),)


def _has(size: Number, colors: Labels, number: Number, color: Labels, measure: Measure | None = None) -> Claims:
    if colors != Mark("bare"):
        raise Clash  # "of these red pins"
    return (SampleHas(size, number, color, None if measure is None else measured(measure, "down", "standing")),)


def _both_has(colors: Labels, size: Number, again: Labels, number: Number, color: Labels, measure: Measure | None = None) -> Claims:
    if again != Mark("bare"):
        raise Clash
    return _has(size, colors, number, color, measure)


def _alike(colors: Labels, whole: Number, things: Labels) -> SampleAlike:
    if things != Mark("bare"):
        raise Clash
    return SampleAlike(colors, whole)


def _model(colors: Labels, measure: Measure, kinds: Number) -> Claims:
    if colors != Mark("bare"):
        raise Clash
    return (UniformModel(kinds, measured(measure, "down", "standing")),)


RULES: tuple[Rule, ...] = (
    rule("fact", "a sample of WHOLE of the WHOLE groups was drawn at random", _sample),
    rule("fact", "these WHOLE groups were drawn at random from WHOLE groups", _sample),
    rule(
        "fact",
        "the WHOLE groups are a population , and WHOLE of the groups are a random sample",
        lambda groups, size: _sample(size, groups),
    ),
    rule("fact", "in the sample , <clause>", lambda claims: claims),
    rule("by_sample", "going by this sample", always(None)),
    rule("by_sample", "based on this sample", always(None)),
    rule("all_groups", "about how many <things> did all the groups <outcome_base>", lambda c, m: AllGroups(m, what(c))),
    rule("ask", "<by_sample> , <all_groups>", lambda _, question: question),
    rule("ask", "<all_groups> , <by_sample>", lambda question, _: question),
    rule("too", "too high", always(True)),
    rule("too", "too low", always(False)),
    rule("ask", "how many <things> <too> is the estimate that this sample gives for <who>", lambda c, high, who: EstimateOff(c, who, high)),
    rule(
        "ask", "how many <things> <too> is an estimate for <who> that goes by this sample", lambda c, high, who: EstimateOff(c, who, high)
    ),
    rule("ask", "<by_sample> , how many <things> <too> is an estimate for <who>", lambda _, c, high, who: EstimateOff(c, who, high)),
    # a sample that is like its population
    rule("fact", "a sample of WHOLE of these <things> should represent the kinds of all WHOLE <things>", _like_all),
    rule(
        "fact",
        "these <things> are a population , and WHOLE of these <things> are a sample that represents the kinds",
        lambda c, size, again: _like_all(size, c, None, again),
    ),
    rule(
        "fact",
        "the <things> <that_outcome> are a population , and a sample of WHOLE <things> should represent the kinds",
        lambda c, m, size, again: _like_all(size, c, None, again, m),
    ),
    rule("fact", "a sample of WHOLE of these <things> has WHOLE <things>", _has),
    rule(
        "fact",
        "these <things> are a population , and a sample of WHOLE <things> has WHOLE <things>",
        _both_has,
    ),
    rule(
        "fact",
        "the <things> <that_outcome> are a population , and a sample of WHOLE <things> has WHOLE <things>",
        lambda c, m, size, again, n, color: _both_has(c, size, again, n, color, m),
    ),
    rule("ask", "does the sample have the same fraction of <things> as all WHOLE <things>", _alike),
    rule("ask", "does the sample have the same fraction of <things> as the population", SampleAlike),
    rule("ask", "is the fraction of <things> in the sample the same as in the population", SampleAlike),
    rule("ask", "how many <things> should be in the sample", InSample),
    rule("ask", "how many of the sample should be <things>", InSample),
    rule("ask", "how many <things> should the sample have", InSample),
    rule(
        "fact",
        "<groups> were drawn at random from a population of WHOLE groups",
        lambda groups, number: (Drawn(groups, number),),
    ),
    rule(
        "fact",
        "the WHOLE groups are a population , and <groups> were drawn at random as a sample",
        lambda number, groups: (Drawn(groups, number),),
    ),
    rule("more_or_less", "greater", always(True)),
    rule("more_or_less", "less", always(False)),
    rule("ask", "how much <more_or_less> is the mean of the sample than the mean of the population", MeanGap),
    rule("ask", "by how much is the mean of the sample <more_or_less> than the mean of the population", MeanGap),
    # a model in which all kinds are equally likely
    rule("fact", "in a model , each <thing> <that_outcome> is equally likely to be any of WHOLE kinds", _model),
    rule("fact", "a model has WHOLE kinds of ITEM , each as likely to <be_done> as the others", lambda n, _, m: _model(Mark("bare"), m, n)),
    rule(
        "ask",
        "how many <sign> <things> <fell> than the model predicts for these <things>",
        lambda sign, c, m, whole: ThanModel(m, c, sign, whole),
    ),
    # simulations
    rule("fact", "a simulation draws one of WHOLE digits at random for each ITEM", lambda number, _: (Digits(number),)),
    rule("fact", "in a simulation , one of WHOLE digits comes up at random for each ITEM", lambda number, _: (Digits(number),)),
    rule(
        "stand_for",
        "how many of the WHOLE digits should stand for (a|an) <thing> <that_outcome>",
        lambda number, c, m: StandFor(measured(m, "down", "standing"), what(c), number),
    ),
    rule("ask", "<stand_for>", lambda question: question),
    rule("ask", "<going_by> , <stand_for>", lambda _, question: question),
    # more likely than not
    rule(
        "chance",
        "is (a|an) <thing> more likely to <be_done> than to <be_done>",
        lambda c, one, other: LikelierThan(measured(one, "down", "standing"), measured(other, "down", "standing"), what(c)),
    ),
)
