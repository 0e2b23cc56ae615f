"""From a question and all that was told to what has to be worked out."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.reading import (
    blanks,
    chance,
    comparing,
    distributions,
    equations,
    fraction_questions,
    going_on,
    lengths,
    one_more,
    one_whole,
    pairs,
    parting,
    points,
    proportional,
    rates,
    samples,
    score_lines,
    scoring,
    spread,
    two_way,
)
from mathgen.reading.asked import Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning import Np
from mathgen.reading.told import Told, settled
from mathgen.reading.wanted import (
    AllFull,
    AllGroups,
    Blank,
    Boxed,
    BoxPart,
    Change,
    ColorPart,
    Constant,
    CountAhead,
    CrossesAbove,
    Difference,
    EachEqual,
    EndToEnd,
    Farther,
    FewestNeeded,
    ForEach,
    FractionGap,
    FractionShare,
    GreaterPart,
    Growth,
    HowMany,
    HowManyOfTotal,
    HowManyPoints,
    HowManyRecorded,
    InProportion,
    InRow,
    IsStatistical,
    IsTrue,
    LevelWith,
    LikelierThan,
    MeanGap,
    MeanOf,
    MeanOrMedian,
    MeanThen,
    Most,
    Multiple,
    Needed,
    NextCount,
    NextIs,
    NextSetUp,
    OfClasses,
    OfLine,
    OneRack,
    OneShare,
    OtherNumber,
    OtherThan,
    Paired,
    Pairs,
    Part,
    Partners,
    PartOfSet,
    PercentMore,
    Picked,
    PointsOfOne,
    Question,
    RatioOf,
    Score,
    SetsDown,
    SetsInAll,
    Shared,
    StandFor,
    Steeper,
    ThanModel,
    TrialsAhead,
    UnitRate,
    ValueOf,
    WhatIsLetter,
    Which,
    WhichList,
    WidestGap,
)
from mathgen.scenario.words import Scenario


def asked(question: Question, told: Told, scenario: Scenario) -> list[Asked]:
    """Every way to understand the question after what was told; "pins" may mean all pins, or those of the colors spoken of.

    Raises:
        NotRead: something that the question needs was not told.
    """
    np = getattr(question, "np", None)
    choices: list[Np | None] = [None] if np is None or isinstance(question, InRow | PartOfSet) else [*settled(told, np)]
    if isinstance(question, HowMany) and isinstance(np, Np) and len(choices) > 1 and question.whole is not None:
        choices = [
            one
            for one in choices
            if one is not None and evaluate(Quantity("set_up", told.scope(one, True)), told.counts) == question.whole.value
        ]
    found = []
    for choice in choices:
        one = question if choice is None else question._replace(np=choice)  # type: ignore[call-arg]
        found.append(_ASKED[type(question)](one, told, scenario))  # type: ignore[operator]
    return found


_ASKED = {
    HowMany: scoring.how_many,
    HowManyOfTotal: comparing.how_many_of_total,
    Difference: comparing.difference,
    Multiple: comparing.multiple,
    Part: parting.part,
    Which: parting.which,
    Most: comparing.most,
    RatioOf: parting.ratio,
    ColorPart: parting.color_part,
    UnitRate: rates.unit_rate,
    ForEach: rates.for_each,
    CountAhead: rates.count_ahead,
    TrialsAhead: rates.trials_ahead,
    InRow: rates.in_row,
    GreaterPart: fraction_questions.greater_part,
    FractionGap: fraction_questions.fraction_gap,
    SetsInAll: fraction_questions.sets_in_all,
    SetsDown: fraction_questions.sets_down,
    FractionShare: fraction_questions.fraction_share,
    PartOfSet: one_whole.part_of_set,
    OtherNumber: one_whole.other_number,
    Blank: blanks.blank,
    IsTrue: blanks.is_true,
    Paired: pairs.paired,
    Boxed: pairs.boxed,
    Shared: pairs.shared,
    AllFull: pairs.all_full,
    Partners: pairs.partners,
    NextCount: going_on.next_count,
    NextSetUp: going_on.next_set_up,
    Needed: going_on.needed,
    OneShare: going_on.one_share,
    HowManyPoints: equations.points_by_expression,
    WhatIsLetter: equations.what_is_letter,
    PointsOfOne: points.points_of_one,
    OneRack: points.one_rack,
    OfClasses: points.of_classes,
    MeanOf: going_on.mean,
    Change: comparing.change,
    PercentMore: comparing.percent_more,
    Score: scoring.score,
    ValueOf: scoring.value_of,
    LevelWith: score_lines.level_with,
    OfLine: score_lines.of_line,
    Constant: proportional.constant,
    Growth: proportional.growth,
    Steeper: proportional.steeper,
    InProportion: proportional.in_proportion,
    FewestNeeded: score_lines.fewest_needed,
    Picked: chance.picked,
    NextIs: chance.next_is,
    Pairs: chance.pairs,
    BoxPart: spread.box_part,
    OtherThan: two_way.other_than,
    WhichList: distributions.which_list,
    AllGroups: samples.all_groups,
    MeanGap: samples.mean_gap,
    MeanThen: one_more.mean_then,
    ThanModel: samples.than_model,
    StandFor: samples.stand_for,
    LikelierThan: samples.likelier_than,
    MeanOrMedian: distributions.mean_or_median,
    IsStatistical: distributions.is_statistical,
    HowManyRecorded: spread.how_many_recorded,
    Farther: lengths.farther,
    EndToEnd: lengths.end_to_end,
    CrossesAbove: lengths.crosses_above,
    WidestGap: lengths.widest_gap,
    EachEqual: lengths.each_equal,
}
