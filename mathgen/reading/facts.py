"""Rules for sentences that tell something."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning import (
    AllTheOthers,
    Claim,
    Count,
    EachTrial,
    GoalMean,
    Labels,
    Look,
    Mark,
    More,
    NextSet,
    Np,
    OneMoreTrial,
    Points,
    PointsEarned,
    Portion,
    SameRate,
    Series,
    ShareOut,
    Times,
    TrialCount,
)
from mathgen.reading.noun_phrases import Counted, Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Measure

Claims = tuple[Claim, ...]


def _filled(claims: Claims, part: str, labels: Labels) -> Claims:
    """The claims with a part of their scope that they left out; a part told twice makes no sense."""
    out = []
    for claim in claims:
        np = getattr(claim, "np", None)
        if np is not None:
            if getattr(np, part) is not None:
                raise Clash
            claim = claim._replace(np=np._replace(**{part: labels}))  # type: ignore[call-arg]
        out.append(claim)
    return tuple(out)


def at(trials: Labels, claims: Claims) -> Claims:
    """The claims, told of these trials."""
    return _filled(claims, "trials", trials)


def of(groups: Labels, claims: Claims) -> Claims:
    """The claims, told of these groups."""
    return _filled(claims, "groups", groups)


def _counted(measure: Measure, things: tuple[Counted, ...], tail: Tail | None) -> Claims:
    when = None if tail is None else tail.trials
    return tuple(Count(measure, what(thing.colors, None, when), thing.number) for thing in things)


def _each_trial(measure: Measure, thing: Counted, each: Mark, total: Number | None, colors: Labels) -> Claims:
    if colors is not None and colors != thing.colors:
        raise Clash
    return (EachTrial(measure, what(thing.colors, None, each), thing.number, total),)


def _portion(measure: Measure, part: Number, whole: Number | None, colors: Labels, tail: Tail | None) -> Claims:
    measured(measure, "down", "standing")
    return (Portion(measure, what(colors, None, None if tail is None else tail.trials), part, whole),)


def _portions(measure: Measure, *parts: object) -> Claims:
    claims: list[Claim] = []
    for part, whole, colors in zip(parts[::3], parts[1::3], parts[2::3], strict=True):
        claims.extend(_portion(measure, part, whole, colors, None))  # type: ignore[arg-type]
    return tuple(claims)


def _more(measure: Measure, number: Number, sign: int, colors: Labels, other: Np, when: Labels) -> Claims:
    return (More(measure, what(colors, None, when), other, number, sign),)


def _in_two_trials(measure: Measure, first: Counted, one: Labels, second: Counted, other: Labels) -> Claims:
    return (Count(measure, what(first.colors, None, one), first.number), Count(measure, what(second.colors, None, other), second.number))


def _set_and_down(set_up: Measure, thing: Counted, down: Measure, number: Number) -> Claims:
    measured(set_up, "set_up")
    measured(down, "down", "standing")
    return (Count(set_up, what(thing.colors), thing.number), Count(down, what(thing.colors), number))


def _each(groups: Labels, measure: Measure, thing: Counted, tail: Tail | None) -> Claims:
    each = groups if isinstance(groups, Mark) and groups.kind == "each" else Mark("each", None, groups if isinstance(groups, tuple) else None)
    return (Count(measure, what(thing.colors, each, None if tail is None else tail.trials), thing.number),)


def _points(colors: Labels, measure: Measure) -> Claims:
    return (Points(measured(measure, "down", "standing"), Np(None, None, colors)),)


def _next(groups: Labels, thing: Counted) -> Claims:
    return (NextSet(what(thing.colors, groups), thing.number),)


def _next_same(groups: Labels, thing: Counted, same: bool = True) -> Claims:
    return (NextSet(what(thing.colors, groups), thing.number), SameRate(what(thing.colors, groups)))


def _mean(thing: Counted, trials: Number | None, groups: Labels = None) -> Claims:
    return (GoalMean(what(thing.colors, groups), thing.number, trials),)


RATE = "relative? (fraction|percent|rate|frequency)"

VERB_PHRASES: tuple[Rule, ...] = (
    rule("vp", "<past> <counted> <tail>?", lambda measure, thing, tail: _counted(measure, (thing,), tail)),
    rule("vp", "<past> <counts> <tail>?", _counted),
    rule("vp", "<past> <counted> <each_trial>", lambda m, thing, each: _each_trial(m, thing, each, None, None)),
    rule("vp", "<past> <counted> <each_trial> , WHOLE in all", lambda m, thing, each, n: _each_trial(m, thing, each, n, None)),
    rule("vp", "<past> <counted> <each_trial> , WHOLE <things> in all", _each_trial),
    rule("vp", "<past> NUM of the WHOLE <things> <tail>?", _portion),
    rule("vp", "<past> NUM of the WHOLE <things> SET <tail>?", lambda m, n, whole, colors, _, tail: _portion(m, n, whole, colors, tail)),
    rule("vp", "<past> NUM of the <things> <tail>?", lambda m, n, colors, tail: _portion(m, n, None, colors, tail)),
    rule("vp", "<past> NUM of the <things> SET <tail>?", lambda m, n, colors, _, tail: _portion(m, n, None, colors, tail)),
    rule("vp", "<past> NUM of the? WHOLE <things> and NUM of the? WHOLE <things>", _portions),
    rule(
        "vp",
        "<past> NUM of the <things> and NUM of the <things>",
        lambda m, n, colors, k, others: (*_portion(m, n, None, colors, None), *_portion(m, k, None, others, None)),
    ),
    rule("vp", "<past> WHOLE <sign> <things> than <who>", lambda m, n, s, c, who: _more(m, n, s, c, Np(who), None)),
    rule("vp", "<past> WHOLE <sign> <things> than <who> <when>", lambda m, n, s, c, who, when: _more(m, n, s, c, Np(who), when)),
    rule("vp", "<past> WHOLE <sign> <things> than <things>", lambda m, n, s, c, other: _more(m, n, s, c, Np(None, None, other), None)),
    rule("vp", "<past> WHOLE <sign> <things> than <things> <when>", lambda m, n, s, c, o, when: _more(m, n, s, c, Np(None, None, o), when)),
    rule("vp", "<past> WHOLE <sign> <things> <when> than <when>", lambda m, n, s, c, a, b: _more(m, n, s, c, Np(None, b), a)),
    rule("vp", "<past> WHOLE times as many <things> as <who>", lambda m, n, c, who: (Times(m, what(c), Np(who), n),)),
    rule("vp", "<past> WHOLE times as many <things> as <things>", lambda m, n, c, o: (Times(m, what(c), Np(None, None, o), n),)),
    rule(
        "vp",
        "<past> WHOLE times as many ITEM in all as <things>",
        lambda m, n, _, other: (Times(m, Np(None, None, Mark("all")), Np(None, None, other), n),),
    ),
    rule(
        "vp", "<past> <numbers> <things> <when>?", lambda m, numbers, colors, when: (Series(m, what(colors, None, when), numbers),)
    ),
    rule("vp", "<past> <counted> <when> and <counted> <when>", _in_two_trials),
    rule("vp", "<past> all the other <things>", lambda measure, colors: (AllTheOthers(measure, what(colors)),)),
    rule("set_and_down", "<past> <counted> and <past> WHOLE", _set_and_down),
    rule("set_and_down", "<past> <counted> in all and <past> WHOLE", _set_and_down),
)

RULES: tuple[Rule, ...] = (
    *VERB_PHRASES,
    rule("clause", "<who> <vp>", of),
    rule("clause", "<who> <set_and_down>", of),
    rule("clause", "<who> each <past> <counted> <tail>?", _each),
    rule("clause", "<each_group> <past> <counted> <tail>?", _each),
    rule("fact", "<clause>", lambda claims: claims),
    rule("fact", "<clause> and <clause>", lambda first, second: first + second),
    rule("fact", "<when> ,? <clause>", at),
    # passive
    rule("fact", "<passive>", lambda claims: claims),
    rule("fact", "<when> ,? <passive>", at),
    rule("passive", "NUM of the <things> (was|were)? <outcome>", lambda n, colors, m: _portion(m, n, None, colors, None)),
    rule("passive", "NUM of the WHOLE <things> (was|were)? <outcome>", lambda n, whole, colors, m: _portion(m, n, whole, colors, None)),
    rule("passive", "WHOLE <things> (was|were)? <outcome>", lambda n, colors, m: (Count(m, what(colors), n),)),
    rule("fact", "of the WHOLE <things> , NUM (was|were)? <outcome>", lambda whole, colors, n, m: _portion(m, n, whole, colors, None)),
    rule(
        "fact",
        "of the WHOLE <things> <who> SET <when> , NUM (was|were)? <outcome>",
        lambda whole, colors, who, _, when, n, m: of(who, _portion(m, n, whole, colors, Tail(when))),
    ),
    rule("fact", "all the other <things> (was|were)? <outcome>", lambda colors, m: (AllTheOthers(m, what(colors)),)),
    rule(
        "fact",
        "the fraction <that_outcome> was NUM for <who> and NUM for <who>",
        lambda m, n, who, k, other: (Portion(m, Np(who), n, None), Portion(m, Np(other), k, None)),
    ),
    # points to share
    rule("fact", "each <thing> <that_outcome> earns a point", _points),
    rule(
        "scored",
        "<who> earned a point for each <thing> <that_outcome> , WHOLE points in all",
        lambda who, colors, m, n: (*of(who, _points(colors, m)), PointsEarned(n)),
    ),
    rule("fact", "<scored>", lambda claims: claims),
    rule("fact", "<when> ,? <scored>", at),
    rule("fact", "the WHOLE groups share the points equally", lambda count: (ShareOut("groups", count, None),)),
    rule("fact", "share the WHOLE points equally among the WHOLE groups", lambda n, count: (ShareOut("groups", count, n),)),
    rule("fact", "share the WHOLE points equally among the WHOLE trials", lambda n, count: (ShareOut("trials", count, n),)),
    rule("fact", "suppose each trial earned an equal share of the points", always((ShareOut("trials", None, None),))),
    rule("fact", "suppose each of the WHOLE trials earned an equal share of the points", lambda n: (ShareOut("trials", n, None),)),
    rule("fact", "there were WHOLE trials", lambda n: (TrialCount(n),)),
    # a next set
    rule("fact", "<who> will SETB <counted> NEXT", lambda who, _, thing, __: _next(who, thing)),
    rule("fact", "NEXT , <who> will SETB <counted>", lambda _, who, __, thing: _next(who, thing)),
    rule("fact", "<who> will SETB <more_things>", lambda who, _, thing: _next(who, thing)),
    rule("more_things", "WHOLE more <things>", Counted),
    rule("fact", f"<who> would like to <outcome_base> the same {RATE} of <counted> NEXT", lambda who, m, thing, _: _next_same(who, thing)),
    rule(
        "fact",
        f"suppose <who> SET <counted> NEXT and <outcome> the same {RATE}",
        lambda who, _, thing, __, m: _next_same(who, thing),
    ),
    rule("fact", f"suppose <who> <outcome> the same {RATE} of the next <counted>", lambda who, m, thing: _next_same(who, thing)),
    rule("same", f"suppose the {RATE} stays the same", always(None)),
    rule("fact", "<same>", always((SameRate(),))),
    rule("fact", "<same> for <counted> NEXT", lambda _, thing, __: _next_same(None, thing)),
    rule("fact", "<same> for <more_things>", lambda _, thing: _next_same(None, thing)),
    rule("fact", "<same> NEXT , with <counted>", lambda _, __, thing: _next_same(None, thing)),
    rule("fact", f"use the {RATE} of <things> <that_outcome> as the probability", lambda c, m: (SameRate(what(c)),)),
    rule(
        "fact",
        "use this result to estimate the probability that <who> will <outcome_base> any one <thing>",
        lambda who, m, colors: (SameRate(what(colors, who)),),
    ),
    rule(
        "fact",
        "use this result to make a prediction for <more_things>",
        lambda thing: _next_same(None, thing),
    ),
    # a goal for the mean
    rule("fact", "the goal is a mean of <counted> per trial", lambda thing: _mean(thing, None)),
    rule("fact", "the goal is a mean of <counted> per trial for WHOLE trials", _mean),
    rule("fact", "with one more trial , the goal is a mean of <counted> for all WHOLE trials", lambda t, n: (*_mean(t, n), OneMoreTrial())),
    rule(
        "fact",
        "with one more trial , <who> would like a mean of <counted> for all WHOLE trials",
        lambda who, thing, n: (*_mean(thing, n, who), OneMoreTrial()),
    ),
    rule(
        "fact",
        "after one more trial , the mean for all WHOLE trials should be <counted>",
        lambda n, thing: (*_mean(thing, n), OneMoreTrial()),
    ),
    rule("fact", "one trial is still to come", always((OneMoreTrial(),))),
    rule("fact", "<who> will do one more trial , WHOLE trials in all", lambda who, n: (Look(Np(who)), OneMoreTrial(n))),
)
