"""Rules for sentences that tell something."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning import Claim
from mathgen.reading.meaning.counts import (
    AllTheOthers,
    Count,
    EachTrial,
    GoalMean,
    Look,
    More,
    NextSet,
    OneMoreTrial,
    Points,
    PointsEarned,
    Portion,
    SameRate,
    Series,
    ShareOut,
    Some,
    TheseWere,
    Times,
    TotalWas,
    TrialCount,
)
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import Counted, Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure

Claims = tuple[Claim, ...]
Whole = tuple[Number | None, Labels]  # how many, where told, and of which colors


def _filled(claims: Claims, part: str, labels: Labels) -> Claims:
    """The claims with a part of their scope that they left out; a part told twice makes no sense."""
    out = []
    for claim in claims:
        np = getattr(claim, "np", None)
        if np is not None:
            if getattr(np, part) is not None:
                raise Clash
            claim = claim._replace(np=np._replace(**{part: labels}))  # type: ignore[attr-defined]
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


def _portion(measure: Measure, part: Number, whole: Whole, tail: Tail | None) -> Claims:
    number, colors = whole
    measured(measure, "down", "standing")
    return (Portion(measure, what(colors, None, None if tail is None else tail.trials), part, number),)


def _these_were(some: tuple[tuple[Counted, ...], Label]) -> Claims:
    things, rest = some
    colors = tuple(label for thing in things if isinstance(thing.colors, tuple) for label in thing.colors)
    return (TheseWere(tuple(thing.number for thing in things), (*colors, rest)),)


def _portion_of(whole: Number, colors: Labels, who: Labels, _: Measure, when: Labels, part: Number, measure: Measure) -> Claims:
    return of(who, _portion(measure, part, (whole, colors), None if when is None else Tail(when)))


def _more(measure: Measure, number: Number, sign: int, colors: Labels, other: Np, when: Labels) -> Claims:
    return (More(measure, what(colors, None, when), other, number, sign),)


def _in_two_trials(measure: Measure, first: Counted, one: Labels, second: Counted, other: Labels) -> Claims:
    return (Count(measure, what(first.colors, None, one), first.number), Count(measure, what(second.colors, None, other), second.number))


def _set_and_down(set_up: Measure, thing: Counted, down: Measure, number: Number) -> Claims:
    measured(set_up, "set_up")
    measured(down, "down", "standing")
    return (Count(set_up, what(thing.colors), thing.number), Count(down, what(thing.colors), number))


def _each(groups: Labels, measure: Measure, thing: Counted, tail: Tail | None) -> Claims:
    each = (
        groups if isinstance(groups, Mark) and groups.kind == "each" else Mark("each", None, groups if isinstance(groups, tuple) else None)
    )
    return (Count(measure, what(thing.colors, each, None if tail is None else tail.trials), thing.number),)


def _points(colors: Labels, measure: Measure) -> Claims:
    return (Points(measured(measure, "down", "standing"), Np(None, None, colors)),)


def _equal_points(who: Labels) -> Claims:
    return (ShareOut("trials", None, None, Np(who)),)


def _next(groups: Labels, thing: Counted) -> Claims:
    return (NextSet(what(thing.colors, groups), thing.number),)


def _next_same(groups: Labels, thing: Counted, measure: Measure | None = None) -> Claims:
    return (NextSet(what(thing.colors, groups), thing.number), SameRate(what(thing.colors, groups), measure))


def _mean(thing: Counted, trials: Number | None, groups: Labels = None) -> Claims:
    return (GoalMean(what(thing.colors, groups), thing.number, trials),)


RATE = "relative? (fraction|part|percent|rate|frequency)"

VERB_PHRASES: tuple[Rule, ...] = (
    rule("vp", "<past> <counted> <tail>?", lambda measure, thing, tail: _counted(measure, (thing,), tail)),
    rule("vp", "<past> <counts> <tail>?", _counted),
    rule("vp", "<past> <counted> <each_trial>", lambda m, thing, each: _each_trial(m, thing, each, None, None)),
    rule("vp", "<past> <counted> <each_trial> , WHOLE <in_all>", lambda m, thing, each, n, _: _each_trial(m, thing, each, n, None)),
    rule("vp", "<past> <counted> <each_trial> , WHOLE <things> <in_all>", lambda m, t, each, n, c, _: _each_trial(m, t, each, n, c)),
    rule("vp", "<past> <counted> <each_trial> , a total of WHOLE <things>", _each_trial),
    rule("vp", "<past> NUM <whole> <tail>?", lambda m, n, whole, tail: _portion(m, n, whole, tail)),
    rule("vp", "<past> NUM <whole> and NUM <whole>", lambda m, n, a, k, b: (*_portion(m, n, a, None), *_portion(m, k, b, None))),
    rule("vp", "<past> WHOLE <sign> <things> than <who>", lambda m, n, s, c, who: _more(m, n, s, c, Np(who), None)),
    rule("vp", "<past> WHOLE <sign> <things> than <who> <when>", lambda m, n, s, c, who, when: _more(m, n, s, c, Np(who), when)),
    rule("vp", "<past> WHOLE <sign> <things> than <things>", lambda m, n, s, c, other: _more(m, n, s, c, Np(None, None, other), None)),
    rule("vp", "<past> WHOLE <sign> <things> than <things> <when>", lambda m, n, s, c, o, when: _more(m, n, s, c, Np(None, None, o), when)),
    rule("vp", "<past> WHOLE <sign> <things> <when> than <when>", lambda m, n, s, c, a, b: _more(m, n, s, c, Np(None, b), a)),
    rule("vp", "<past> <multiple> <things> as <who>", lambda m, n, c, who: (Times(m, what(c), Np(who), n),)),
    rule("vp", "<past> <multiple> <things> as <things>", lambda m, n, c, o: (Times(m, what(c), Np(None, None, o), n),)),
    rule(
        "vp",
        "<past> <multiple> ITEM <in_all> as <things>",
        lambda m, n, _, __, other: (Times(m, Np(None, None, Mark("all")), Np(None, None, other), n),),
    ),
    rule("vp", "<past> <numbers> <things> <when>?", lambda m, numbers, colors, when: (Series(m, what(colors, None, when), numbers),)),
    rule("vp", "<past> <counted> <when> and <counted> <when>", _in_two_trials),
    rule("vp", "<past> all the other <things>", lambda measure, colors: (AllTheOthers(measure, what(colors)),)),
    rule("vp", "<past> <some>", lambda m, some: (*_counted(m, some[0], None), Some(m, what((some[1],))))),
    rule("fact", "(these|those) were <some>", _these_were),
    rule("some", "WHOLE COLOR and some COLOR ITEM", lambda n, a, b, _: ((Counted(n, (a,)),), b)),
    rule("some", "WHOLE COLOR , <some_more>", lambda n, a, more: ((Counted(n, (a,)), *more[0]), more[1])),
    rule("some_more", "WHOLE COLOR ,? and some COLOR ITEM", lambda n, a, b, _: ((Counted(n, (a,)),), b)),
    rule("some_more", "WHOLE COLOR , <some_more>", lambda n, a, more: ((Counted(n, (a,)), *more[0]), more[1])),
    rule("set_and_down", "<past> <counted> and <past> WHOLE", _set_and_down),
    rule("set_and_down", "<past> <counted> <in_all> and <past> WHOLE", lambda s, thing, _, m, n: _set_and_down(s, thing, m, n)),
)

RULES: tuple[Rule, ...] = (
    *VERB_PHRASES,
    rule("clause", "<who> <vp>", of),
    rule("clause", "<who> <set_and_down>", of),
    rule("clause", "<who> each <past> <counted> <tail>?", _each),
    rule("clause", "<each_group> <past> <counted> <tail>?", _each),
    rule("fact", "<clause>", lambda claims: claims),
    rule("fact", "<clause> ,? and <clause>", lambda first, second: first + second),
    rule("fact", "<when> ,? <clause>", at),
    # passive
    rule("fact", "<passive>", lambda claims: claims),
    rule("fact", "<when> ,? <passive>", at),
    rule("passive", "NUM <whole> <fell> <tail>?", lambda n, whole, m, tail: _portion(m, n, whole, tail)),
    rule("passive", "WHOLE <things> (was|were)? <past> <tail>?", lambda n, c, m, tail: _counted(m, (Counted(n, c),), tail)),
    rule("clause", "<who> had <counted> <past> <tail>?", lambda who, thing, m, tail: of(who, _counted(m, (thing,), tail))),
    rule("clause", "<who> had NUM <whole> <past> <tail>?", lambda who, n, whole, m, tail: of(who, _portion(m, n, whole, tail))),
    rule("passive", "WHOLE <things> (was|were) <past> by <who> <tail>?", lambda n, c, m, w, t: of(w, _counted(m, (Counted(n, c),), t))),
    rule("passive", "NUM <whole> <fell> by <who> <tail>?", lambda n, whole, m, who, tail: of(who, _portion(m, n, whole, tail))),
    rule("fact", "<whole> , NUM <fell> <tail>?", lambda whole, n, m, tail: _portion(m, n, whole, tail)),
    rule("fact", "of the WHOLE <things> <who> SET <when>? , NUM <fell>", _portion_of),
    rule("fact", "of WHOLE <things> , <who> <past> NUM <tail>?", lambda n, c, who, m, part, tail: of(who, _portion(m, part, (n, c), tail))),
    rule("passive", "the other WHOLE <things> <fell>", lambda n, c, m: _counted(m, (Counted(n, c),), None)),
    rule("fact", "for <who> <when> ,? <passive>", lambda who, when, claims: of(who, at(when, claims))),
    rule("fact", "the total was <counted>", lambda thing: (TotalWas(Np(), thing.number, thing.colors),)),
    rule(
        "fact", "with the <things> , the total was <counted>", lambda colors, thing: (TotalWas(what(colors), thing.number, thing.colors),)
    ),
    rule("fact", "with <who> , the total was <counted>", lambda who, thing: (TotalWas(what(thing.colors, who), thing.number),)),
    rule("fact", "with TRIALS , the total was <counted>", lambda when, thing: (TotalWas(what(thing.colors, None, when), thing.number),)),
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
    rule("fact", "suppose <who> earned the same number of points in each trial", _equal_points),
    rule("fact", "share the points equally among the WHOLE trials", lambda n: (ShareOut("trials", n, None),)),
    rule("fact", "there were WHOLE trials", lambda n: (TrialCount(n),)),
    # a next set
    rule("fact", "<who> will SETB <counted> NEXT", lambda who, _, thing, __: _next(who, thing)),
    rule("fact", "NEXT , <who> will SETB <counted>", lambda _, who, __, thing: _next(who, thing)),
    rule("fact", "<who> will SETB <more_things>", lambda who, _, thing: _next(who, thing)),
    rule("more_things", "WHOLE more <things>", Counted),
    rule(
        "fact", f"<who> would like to <outcome_base> the same {RATE} of <counted> NEXT", lambda who, m, thing, _: _next_same(who, thing, m)
    ),
    rule(
        "fact",
        f"suppose <who> SETB <counted> NEXT and <outcome_base> the same {RATE}",
        lambda who, _, thing, __, m: _next_same(who, thing, m),
    ),
    rule("fact", f"suppose <who> <outcome> the same {RATE} of the next <counted>", lambda who, m, thing: _next_same(who, thing, m)),
    rule("same", f"suppose the {RATE} stays the same", always(None)),
    rule("fact", "<same>", always((SameRate(),))),
    rule("fact", "<same> for <counted> NEXT", lambda _, thing, __: _next_same(None, thing)),
    rule("fact", "<same> for <more_things>", lambda _, thing: _next_same(None, thing)),
    rule("fact", "<same> NEXT , with <counted>", lambda _, __, thing: _next_same(None, thing)),
    rule("fact", f"use the {RATE} of <things> <that_outcome> as the probability", lambda c, m: (SameRate(what(c), m),)),
    rule(
        "fact",
        "use this result to estimate the probability that <who> will <outcome_base> any one <thing>",
        lambda who, m, colors: (SameRate(what(colors, who), m),),
    ),
    rule(
        "fact",
        "make a prediction from this result for <more_things>",
        lambda thing: _next_same(None, thing),
    ),
    # a goal for the mean
    rule("wish", "the goal is a mean of <counted>", lambda thing: (None, thing)),
    rule("wish", "<who> (want|wants) a mean of <counted>", lambda who, thing: (who, thing)),
    rule("wish", "<who> would like a mean of <counted>", lambda who, thing: (who, thing)),
    rule("span", "for all? WHOLE trials", lambda count: count),
    rule("goal", "<wish>", lambda wish: _mean(wish[1], None, wish[0])),
    rule("goal", "<wish> per trial", lambda wish: _mean(wish[1], None, wish[0])),
    rule("goal", "<wish> <span>", lambda wish, count: _mean(wish[1], count, wish[0])),
    rule("goal", "<wish> per trial <span>", lambda wish, count: _mean(wish[1], count, wish[0])),
    rule("goal", "the mean <span> should be <counted>", lambda count, thing: _mean(thing, count)),
    rule("fact", "<goal>", lambda claims: claims),
    rule("fact", "(with|after) one more trial ,? <goal>", lambda claims: (*claims, OneMoreTrial())),
    rule("fact", "one trial is still to come", always((OneMoreTrial(),))),
    rule("fact", "<who> will do one more trial , WHOLE trials in all", lambda who, n: (Look(Np(who)), OneMoreTrial(n))),
)
