"""What the told sentences of a problem come to: each claim's gaps filled, each number checked against the table."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from mathgen.asks.expression import Expr, Op, Quantity, Stated
from mathgen.exact.parse import written
from mathgen.reading import (
    arrays,
    association,
    centers,
    chance,
    choosing,
    common_factors,
    counting_on,
    distributions,
    equations,
    feet,
    fraction_questions,
    going_on,
    graphs,
    judging,
    lengths,
    limits,
    listing,
    money,
    money_bought,
    money_percents,
    money_tenths,
    multiples,
    number_lines,
    one_more,
    one_whole,
    pairs,
    plane,
    plots,
    points,
    proportional,
    rates,
    samples,
    scaling,
    scatter,
    score_lines,
    scoring,
    signed,
    simulations,
    spread,
    successes,
    two_way,
    unit_ratios,
    variables,
)
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning import Claim
from mathgen.reading.meaning.counts import (
    About,
    Against,
    AllTheOthers,
    Count,
    EachTrial,
    GoalMean,
    Look,
    More,
    NextGoal,
    NextSet,
    OneMoreTrial,
    Points,
    PointsEarned,
    Portion,
    Rounding,
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
from mathgen.reading.mentions import DIMENSIONS, Dimension
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Comparison, Fact, Takers, Told, settled
from mathgen.trials.scope import Label, Measure


def _count(told: Told, claim: Count) -> None:
    for scope in told.scopes(claim.np):
        told.said(Quantity(claim.measure, scope), claim.number)
        told.last_count = Quantity(claim.measure, scope)


def _some(told: Told, claim: Some) -> None:
    if told.last_count is None or told.last_count.measure != claim.measure:
        raise NotRead("it is not said what some are added to")
    told.scope(claim.np)


def _these_were(told: Told, claim: TheseWere) -> None:
    last = told.last_count
    if last is None:
        raise NotRead('it is not said what "these" are')
    if set(claim.colors) != set(last.scope.colors or told.mentions.every("colors")) or len(set(claim.colors)) < len(claim.colors):
        raise NotRead('"these" are of other colors')
    for color, number in zip(claim.colors, claim.numbers, strict=False):  # the last color has no number
        told.said(Quantity(last.measure, last.scope._replace(colors=told.mentions.scope((), (), (str(color),)).colors)), number)
        told.mentions.note("colors", (color,))


def _total_was(told: Told, claim: TotalWas) -> None:
    if told.total is not None:
        raise NotRead("it is not said what the total is of")
    if claim.np.groups is not None or claim.np.trials is not None:
        told.total = _with_another(told, claim.np)
    elif told.last_count is None:
        raise NotRead("it is not said what the total is of")
    else:
        if isinstance(claim.np.colors, tuple):
            told.mentions.note("colors", claim.np.colors)
        scope = told.last_count.scope
        trials, groups = scope.trials or told.mentions.every("trials"), scope.groups or told.mentions.every("groups")
        colors = told.mentions.named("colors")
        if isinstance(claim.colors, tuple) and set(claim.colors) != set(colors):
            raise NotRead("the total is of other colors")
        told.total = Quantity(told.last_count.measure, told.mentions.scope(groups, trials, colors))
    told.said(told.total, claim.number)


def _with_another(told: Told, np: Np) -> Quantity:
    """All that was counted before, or looked at in the graph, with another group or trial: "With the Herons, the total was 9 pins".

    Raises:
        NotRead: that group or trial was counted before, or what was counted before differs in something else.
    """
    part: Dimension = "groups" if np.groups is not None else "trials"
    added = getattr(np, part)
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if not counts and any(look.source == "graph" for look in told.seen):
        counts = [told.quantity("down", Np(colors=np.colors))]
    before = {label for count in counts for label in getattr(count.scope, part) or told.mentions.every(part)}
    alike = {count._replace(scope=count.scope._replace(**{part: None})) for count in counts}
    if not isinstance(added, tuple) or before & set(added) or len(alike) != 1:
        raise NotRead("it is not said what the total is of")
    told.mentions.note(part, added)
    [(measure, scope)] = alike
    found = {name: getattr(scope, name) or told.mentions.every(name) for name in DIMENSIONS}
    if isinstance(np.colors, tuple) and set(np.colors) != set(found["colors"]):
        raise NotRead("the total is of other colors")
    found[part] = told.mentions.ordered(part, (*before, *added))
    return Quantity(measure, told.mentions.scope(found["groups"], found["trials"], found["colors"]))


def _each_trial(told: Told, claim: EachTrial) -> None:
    mark = claim.np.trials
    assert isinstance(mark, Mark)  # the grammar makes no other
    before = [len(told.mentions.before["trials"])]
    trials = told.mentions.resolve("trials", mark)
    if mark.of is None and mark.count is None and before == [0]:
        told.mentions.before["trials"].clear()  # "for each trial" alone names none
    whole = told.scope(claim.np._replace(trials=trials))
    for trial in trials:
        part = whole._replace(trials=told.mentions.scope((), (trial,), ()).trials)
        if evaluate(Quantity(claim.measure, part), told.counts) != claim.number.value:
            raise NotRead(f"the table does not say {claim.number.text} for each trial")
    told.facts.append(Fact(Op("/", (Quantity(claim.measure, whole), Stated(len(trials), "trials"))), claim.number.text))
    if mark.of is None and mark.count is None and before == [0]:
        told.mentions.before["trials"].clear()
    if claim.total is not None:
        told.said(Quantity(claim.measure, whole), claim.total)


def _portion(told: Told, claim: Portion) -> None:
    colors_before = list(told.mentions.before["colors"])
    choices = settled(told, claim.np)
    scopes = [told.scope(np) for np in choices]
    if len(choices) > 1:
        told.mentions.before["colors"] = colors_before
    fitting = []
    for scope in scopes:
        part, whole = Quantity(claim.measure, scope), Quantity("set_up", scope)
        counted = written(claim.part.text).form == "whole"
        expr: Expr = part if counted else Op("/", (part, whole))
        if evaluate(expr, told.counts) == claim.part.value and (claim.whole is None or evaluate(whole, told.counts) == claim.whole.value):
            fitting.append((expr, whole, scope))
    if not fitting:
        raise NotRead(f"the table does not say {claim.part.text}")
    if len(fitting) > 1:
        raise NotRead("it is not said which color")
    expr, whole, scope = fitting[0]
    told.said(expr, claim.part)
    if claim.whole is not None:
        told.referred(whole, claim.whole)
    told.last_portion = (claim.measure, scope)


def _series(told: Told, claim: Series) -> None:
    np, size = claim.np, len(claim.numbers)
    groups = told.mentions.resolve("groups", np.groups)
    trials = told.mentions.resolve("trials", np.trials)
    over: Literal["groups", "trials"]
    if len(groups) == size and (len(trials) != size or (len(groups) > 1 and isinstance(np.groups, tuple))):
        over, labels = "groups", groups
    elif len(trials) == size:
        over, labels = "trials", trials
    else:
        raise NotRead(f"it is not clear what the {size} numbers belong to")
    made = []
    for label, number in zip(labels, claim.numbers, strict=True):
        quantity = told.quantity(claim.measure, Np(groups, trials, np.colors)._replace(**{over: (label,)}))
        told.said(quantity, number)
        made.append(quantity)
    _forget_parts(told, over, labels)
    told.series = tuple(made)
    told.lists.append(told.series)


def _forget_parts(told: Told, over: Literal["groups", "trials"], labels: tuple[Label, ...]) -> None:
    """One by one the labels of a series are no mentions of their own."""
    before = told.mentions.before[over]
    told.mentions.before[over] = [
        kept for kept in before if kept == labels or not (len(kept) == 1 and kept[0] in labels and labels in before)
    ]


def _compared(told: Told, measure: Measure, np: Np, other: Np) -> tuple[Quantity, Quantity]:
    # In "2 more than the Wrens", what is left out of the second part is as in the first.
    groups, trials, colors = (told.mentions.resolve(part, getattr(np, part)) for part in DIMENSIONS)
    first = told.mentions.scope(groups, trials, colors)
    filled = Np(*(mine if own is None else own for mine, own in zip((groups, trials, colors), other, strict=True)))
    second = told.scope(filled)
    if first == second:
        raise NotRead("something is compared with itself")
    return Quantity(measure, first), Quantity(measure, second)


def _more(told: Told, claim: More) -> None:
    first, other = _compared(told, claim.measure, claim.np, claim.other)
    told.said(Op("-", (first, other) if claim.sign > 0 else (other, first)), claim.number)
    stated = Stated(int(claim.number.value), "more than")
    told.facts[-1] = Fact(stated, claim.number.text)
    _keep_comparison(told, Comparison(first, other, stated, "+" if claim.sign > 0 else "-"), claim.number)


def _times(told: Told, claim: Times) -> None:
    first, other = _compared(told, claim.measure, claim.np, claim.other)
    told.said(Op("/", (first, other)), claim.number)
    stated = Stated(int(claim.number.value), "times")
    told.facts[-1] = Fact(stated, claim.number.text)
    _keep_comparison(told, Comparison(first, other, stated, "*"), claim.number)


def _keep_comparison(told: Told, comparison: Comparison, number: Number) -> None:
    if comparison in told.comparisons:
        raise NotRead(f"{number.text} is said twice")
    told.comparisons.append(comparison)
    told.open[f"comparison {len(told.comparisons)}"] = number.text


def _next_set(told: Told, claim: NextSet) -> None:
    if told.next_set is not None:
        raise NotRead("two next sets are told of")
    told.next_set = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "set up next time"), claim.number.text))
    told.open["next set"] = claim.number.text
    for part in ("groups", "colors"):
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple):
            told.mentions.note(part, labels)
        elif part == "groups" and isinstance(labels, Mark):
            told.mentions.resolve("groups", labels)


def _same_rate(told: Told, claim: SameRate) -> None:
    told.same_rate.append(claim)
    told.open["same rate"] = "that something stays the same"


def _points(told: Told, claim: Points) -> None:
    told.points_claim = claim
    told.open["points"] = "what earns a point"
    for part in DIMENSIONS:
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple) or (isinstance(labels, Mark) and part != "colors"):
            told.mentions.resolve(part, labels)


def _points_earned(told: Told, claim: PointsEarned) -> None:
    if told.points_claim is None:
        raise NotRead("nothing says what earns a point")
    told.points_said.append(claim.number)


def _share_out(told: Told, claim: ShareOut) -> None:
    if told.share_out is not None:
        raise NotRead("points are shared twice")
    told.share_out = claim
    told.open["share"] = "the sharing"
    if claim.points is not None:
        told.points_said.append(claim.points)


def _goal_mean(told: Told, claim: GoalMean) -> None:
    if told.goal_mean is not None:
        raise NotRead("two goals are told of")
    told.goal_mean = claim
    told.open["goal"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "goal mean"), claim.number.text))
    for part in ("groups", "colors"):
        labels = getattr(claim.np, part)
        if labels is not None:
            told.mentions.resolve(part, labels)


def _one_more(told: Told, claim: OneMoreTrial) -> None:
    told.one_more = claim
    told.open["one more trial"] = "one more trial"


def _trial_count(told: Told, claim: TrialCount) -> None:
    every = told.mentions.every("trials")
    if claim.number.value != len(every):
        raise NotRead(f"the table has {len(every)} trials, not {claim.number.text}")
    told.mentions.note("trials", every)
    told.facts.append(Fact(Stated(len(every), "trials"), claim.number.text))


def _all_the_others(told: Told, claim: AllTheOthers) -> None:
    if told.last_portion is None or {told.last_portion[0], claim.measure} != {"down", "standing"}:
        raise NotRead('nothing says what "the other" are other than')
    scope = told.last_portion[1]
    for part in DIMENSIONS:
        labels: Labels = getattr(claim.np, part)
        if labels is None or (part == "colors" and isinstance(labels, Mark)):
            continue
        every = told.mentions.every(part)
        if set(told.mentions.resolve(part, labels)) != set(getattr(scope, part) or every):
            raise NotRead(f'"the other" are of other {part}')


def _look(told: Told, claim: Look) -> None:
    told.seen.append(claim)
    for part in DIMENSIONS:
        labels: Labels = getattr(claim.np, part)
        if labels is None or (part == "colors" and isinstance(labels, Mark)):
            continue
        found = told.mentions.resolve(part, labels)
        told.looks.append((part, found))
    if claim.whole is not None:
        told.referred(told.quantity("set_up", claim.np), claim.whole)


def _against(told: Told, claim: Against) -> None:
    told.pair = claim
    for part in DIMENSIONS:
        named: list[Label] = []
        for np in claim:
            labels: Labels = getattr(np, part)
            if labels is not None:
                found = told.mentions.resolve(part, labels)
                if isinstance(labels, tuple) and set(found) & set(named) and getattr(claim.first, part) != getattr(claim.second, part):
                    raise NotRead("something is compared with itself")
                named.extend(found)
        if named:
            told.looks.append((part, told.mentions.ordered(part, tuple(named))))


def _rounding(told: Told, claim: Rounding) -> None:
    if told.rounding is not None:
        raise NotRead("rounding is asked for twice")
    told.rounding = claim.demand
    told.open.pop("about", None)


def _about(told: Told, _: About) -> None:
    told.open["about"] = '"about"'


_ROOMS = (
    arrays, association, centers, chance, choosing, common_factors, counting_on, distributions, equations, feet,
    fraction_questions, going_on, graphs, judging, lengths, limits, listing, money, money_bought, money_percents, money_tenths,
    multiples, number_lines, one_more, one_whole, pairs, plane, plots, points, proportional, rates, samples, scaling, scatter,
    score_lines, scoring, signed, simulations, spread, successes, two_way, unit_ratios, variables,
)
_TAKE: Takers = {
    Count: _count,
    EachTrial: _each_trial,
    Portion: _portion,
    Series: _series,
    More: _more,
    Times: _times,
    NextSet: _next_set,
    SameRate: _same_rate,
    Points: _points,
    PointsEarned: _points_earned,
    ShareOut: _share_out,
    GoalMean: _goal_mean,
    OneMoreTrial: _one_more,
    TrialCount: _trial_count,
    Some: _some,
    TheseWere: _these_were,
    TotalWas: _total_was,
    AllTheOthers: _all_the_others,
    Look: _look,
    Against: _against,
    Rounding: _rounding,
    About: _about,
    **{kind: do for room in _ROOMS for kind, do in room.TAKEN.items()},
}


def take_in(sentences: Iterable[Iterable[Claim]], told: Told) -> None:
    """Take in every claim of every sentence, facts that look ahead included.

    Raises:
        NotRead: something is false, said twice or not settled.
    """
    sentences = [list(claims) for claims in sentences]
    for claims in sentences:
        for claim in claims:
            for np in claim:
                if isinstance(np, Np) and not isinstance(claim, NextSet | NextGoal | GoalMean | SameRate):
                    told.mentions.note_later(np)
    for number, claims in enumerate(sentences):
        for claim in claims:
            _TAKE[type(claim)](told, claim)
            told.flush_counted()
        told.sentence_of.extend([number] * (len(told.facts) - len(told.sentence_of)))
    seen = [fact for fact in told.facts if not isinstance(fact.expr, Stated)]
    if len(set(seen)) < len(seen):
        raise NotRead("the same is said twice")
