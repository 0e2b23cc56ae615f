"""What the told sentences of a problem come to: each claim's gaps filled, each number checked against the table."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from mathgen.asks.expression import Expr, Op, Quantity, Stated
from mathgen.exact.parse import written
from mathgen.reading.arrays import in_rows, row_holds
from mathgen.reading.association import once_point, plot_tells, plotted, points_for
from mathgen.reading.centers import leave_out, mean_told, one_of_two
from mathgen.reading.chance import choices, pick_one, picks
from mathgen.reading.choosing import parts_of_sets
from mathgen.reading.common_factors import boxes_alike, put_in_boxes, repeated
from mathgen.reading.counting_on import count_on
from mathgen.reading.distributions import two_plots, wondered
from mathgen.reading.equations import letter_equation, letter_for, the_expression, to_choose_from
from mathgen.reading.evaluate import evaluate
from mathgen.reading.feet import foot_is, in_feet
from mathgen.reading.fraction_questions import same_in_trials, share_fraction, shown_part, some_part
from mathgen.reading.going_on import next_goal
from mathgen.reading.graphs import graph_to_make, picture_stands_for
from mathgen.reading.judging import claimed, explain, last_one
from mathgen.reading.lengths import apart, apart_each, line_plot, made_equal, spaces
from mathgen.reading.limits import loss_limit
from mathgen.reading.listing import to_list
from mathgen.reading.meaning import (
    About,
    Against,
    AllTheOthers,
    Apart,
    ApartEach,
    AsFraction,
    Axes,
    Bars,
    BonusPoints,
    Bought,
    BoxesAlike,
    BoxPlot,
    BuysBoth,
    Choices,
    Claim,
    Claimed,
    Classes,
    Count,
    CountOn,
    Digits,
    Drawn,
    EachTrial,
    EqualFraction,
    EquationIs,
    Explain,
    ExpressionsAre,
    FootIs,
    FromOne,
    GoalMean,
    GoalScore,
    GraphToMake,
    Grid,
    Growing,
    HasMoney,
    HitDigits,
    InBoxes,
    InEqualRows,
    InFeet,
    InPairs,
    InRows,
    InTwo,
    Labels,
    LastOne,
    LeaveOut,
    LeftIs,
    LetterAhead,
    LetterCount,
    LetterEquation,
    LetterFor,
    LetterIs,
    LineCloseBy,
    LinePlot,
    Look,
    LookAtPrices,
    LossLimit,
    MadeEqual,
    Mark,
    MeanTold,
    MeanWas,
    More,
    NewPrice,
    NewSuccesses,
    NextGoal,
    NextLetter,
    NextSet,
    NextTrial,
    NextTries,
    Np,
    NumberLine,
    OncePoint,
    OnDrawing,
    OneChange,
    OneLine,
    OneMoreTrial,
    OneOfTwo,
    OneSet,
    OneTerm,
    OtherRow,
    OtherTrials,
    PartOf,
    PartPaid,
    PartsOfSets,
    PercentOn,
    PickOne,
    Picks,
    PictureStandsFor,
    Plotted,
    PlotTells,
    PlotToMake,
    PointAt,
    Points,
    PointsEach,
    PointsEarned,
    PointsFor,
    Portion,
    PriceIs,
    Proportional,
    PutInBoxes,
    Recorded,
    Repeated,
    ResultIs,
    ResultLimit,
    ResultsAre,
    Rounding,
    RowHolds,
    RuleIs,
    RunsAre,
    SameInTrials,
    SamePoints,
    SameRacks,
    SameRate,
    SameRatio,
    Sample,
    SampleHas,
    SampleLike,
    ScaledCount,
    ScatterPlot,
    ScoreGrew,
    ScoreIs,
    Series,
    SetIsWhole,
    SharedBy,
    ShareFraction,
    ShareOut,
    ShownPart,
    Some,
    SomePart,
    Spaces,
    Spent,
    SplitInto,
    StartingScores,
    SuccessesWere,
    SuccessGoal,
    SuccessRate,
    SuccessRule,
    SumOfSome,
    SumTimes,
    TheExpression,
    TheFraction,
    TheseWere,
    Times,
    ToChooseFrom,
    TopAndBottom,
    TotalWas,
    TrialCount,
    TriesWere,
    TwoPlots,
    UniformModel,
    Wondered,
    ZeroIs,
)
from mathgen.reading.mentions import DIMENSIONS, Dimension
from mathgen.reading.money import bought, has_money, look_at_prices, price_is
from mathgen.reading.money_bought import shared_by, spent
from mathgen.reading.money_percents import new_price, percent_on
from mathgen.reading.money_tenths import buys_both, part_paid
from mathgen.reading.multiples import left_is, letter_ahead, one_term, result_limit
from mathgen.reading.number_lines import as_fraction, from_one, number_line, set_is_whole, top_and_bottom
from mathgen.reading.one_more import next_trial
from mathgen.reading.one_whole import equal_fraction, part_of, the_fraction
from mathgen.reading.pairs import in_boxes, in_pairs, in_two
from mathgen.reading.plane import axes, point_at
from mathgen.reading.plots import bars_told, plot_to_make
from mathgen.reading.points import classes, one_set, same_points, same_racks
from mathgen.reading.proportional import grid, growing, proportional, score_grew
from mathgen.reading.rates import same_ratio
from mathgen.reading.samples import digits, drawn, sample, sample_has, sample_like, uniform_model
from mathgen.reading.scaling import scaled_count
from mathgen.reading.scatter import line_close_by, scatter_plot
from mathgen.reading.score_lines import goal_score, one_line, starting_scores
from mathgen.reading.scoring import bonus_points, equation_is, letter_is, points_each, rule_is, score_is
from mathgen.reading.signed import result_is, results_are, zero_is
from mathgen.reading.simulations import hit_digits, runs_are
from mathgen.reading.spread import box_plot, mean_was, recorded
from mathgen.reading.successes import (
    new_successes,
    next_tries,
    other_trials,
    success_goal,
    success_rate,
    success_rule,
    successes_were,
    tries_were,
)
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Comparison, Fact, Told, settled
from mathgen.reading.two_way import other_row
from mathgen.reading.unit_ratios import on_drawing
from mathgen.reading.variables import expressions_are, letter_count, next_letter, sum_times
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


_TAKE = {
    Count: _count,
    EachTrial: _each_trial,
    Portion: _portion,
    PartOf: part_of,
    PickOne: pick_one,
    Choices: choices,
    BoxPlot: box_plot,
    OtherRow: other_row,
    Wondered: wondered,
    OneOfTwo: one_of_two,
    TwoPlots: two_plots,
    LeaveOut: leave_out,
    MeanTold: mean_told,
    Sample: sample,
    SampleLike: sample_like,
    SampleHas: sample_has,
    Digits: digits,
    HitDigits: hit_digits,
    RunsAre: runs_are,
    Drawn: drawn,
    NextTrial: next_trial,
    UniformModel: uniform_model,
    Recorded: recorded,
    Series: _series,
    More: _more,
    Times: _times,
    NextSet: _next_set,
    NextGoal: next_goal,
    TheFraction: the_fraction,
    EqualFraction: equal_fraction,
    InPairs: in_pairs,
    InBoxes: in_boxes,
    InEqualRows: to_list,
    SplitInto: to_list,
    SumOfSome: to_list,
    PartsOfSets: parts_of_sets,
    OneChange: to_list,
    InRows: in_rows,
    CountOn: count_on,
    NumberLine: number_line,
    FromOne: from_one,
    Picks: picks,
    MeanWas: mean_was,
    ToChooseFrom: to_choose_from,
    TopAndBottom: top_and_bottom,
    SetIsWhole: set_is_whole,
    InTwo: in_two,
    AsFraction: as_fraction,
    RowHolds: row_holds,
    ScaledCount: scaled_count,
    SameRate: _same_rate,
    SameRatio: same_ratio,
    SameInTrials: same_in_trials,
    ShareFraction: share_fraction,
    Points: _points,
    PointsEarned: _points_earned,
    SamePoints: same_points,
    SameRacks: same_racks,
    OneSet: one_set,
    Classes: classes,
    LetterEquation: letter_equation,
    LetterFor: letter_for,
    TheExpression: the_expression,
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
    RuleIs: rule_is,
    EquationIs: equation_is,
    LetterIs: letter_is,
    PointsEach: points_each,
    BonusPoints: bonus_points,
    ScoreIs: score_is,
    StartingScores: starting_scores,
    OneLine: one_line,
    GoalScore: goal_score,
    Proportional: proportional,
    Growing: growing,
    Grid: grid,
    Apart: apart,
    Spaces: spaces,
    ApartEach: apart_each,
    FootIs: foot_is,
    Axes: axes,
    PointAt: point_at,
    ScatterPlot: scatter_plot,
    LineCloseBy: line_close_by,
    InFeet: in_feet,
    OnDrawing: on_drawing,
    LinePlot: line_plot,
    PlotToMake: plot_to_make,
    Bars: bars_told,
    GraphToMake: graph_to_make,
    PictureStandsFor: picture_stands_for,
    MadeEqual: made_equal,
    ZeroIs: zero_is,
    ScoreGrew: score_grew,
    LossLimit: loss_limit,
    LetterCount: letter_count,
    SumTimes: sum_times,
    ExpressionsAre: expressions_are,
    NextLetter: next_letter,
    LetterAhead: letter_ahead,
    LeftIs: left_is,
    OneTerm: one_term,
    ResultLimit: result_limit,
    SomePart: some_part,
    ShownPart: shown_part,
    PutInBoxes: put_in_boxes,
    BoxesAlike: boxes_alike,
    Repeated: repeated,
    ResultIs: result_is,
    ResultsAre: results_are,
    Claimed: claimed,
    LastOne: last_one,
    Explain: explain,
    SuccessRule: success_rule,
    TriesWere: tries_were,
    SuccessesWere: successes_were,
    SuccessRate: success_rate,
    OtherTrials: other_trials,
    NextTries: next_tries,
    SuccessGoal: success_goal,
    NewSuccesses: new_successes,
    PriceIs: price_is,
    Bought: bought,
    HasMoney: has_money,
    LookAtPrices: look_at_prices,
    PercentOn: percent_on,
    NewPrice: new_price,
    Spent: spent,
    SharedBy: shared_by,
    PartPaid: part_paid,
    BuysBoth: buys_both,
    PlotTells: plot_tells,
    Plotted: plotted,
    PointsFor: points_for,
    OncePoint: once_point,
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
            _TAKE[type(claim)](told, claim)  # type: ignore[operator]
            told.flush_counted()
        told.sentence_of.extend([number] * (len(told.facts) - len(told.sentence_of)))
    seen = [fact for fact in told.facts if not isinstance(fact.expr, Stated)]
    if len(set(seen)) < len(seen):
        raise NotRead("the same is said twice")
