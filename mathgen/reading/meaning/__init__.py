"""What a told sentence means, before its gaps are filled: one record for each kind, a file a strand."""

from __future__ import annotations

from mathgen.reading.meaning.chance import (
    Choices,
    Digits,
    Drawn,
    HitDigits,
    PickOne,
    Picks,
    RunsAre,
    Sample,
    SampleHas,
    SampleLike,
    UniformModel,
)
from mathgen.reading.meaning.counts import (
    About,
    Against,
    AllTheOthers,
    Count,
    CountOn,
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
from mathgen.reading.meaning.hits import (
    NewSuccesses,
    NextTries,
    OtherTrials,
    SuccessesWere,
    SuccessGoal,
    SuccessRate,
    SuccessRule,
    TriesWere,
)
from mathgen.reading.meaning.judged import Claimed, Explain, LastOne
from mathgen.reading.meaning.lengths import (
    Apart,
    ApartEach,
    Axes,
    FootIs,
    InFeet,
    LineCloseBy,
    LinePlot,
    MadeEqual,
    OncePoint,
    OnDrawing,
    Plotted,
    PlotTells,
    PointAt,
    PointsFor,
    ScatterPlot,
    Spaces,
)
from mathgen.reading.meaning.letters import (
    ExpressionsAre,
    LetterCount,
    LetterEquation,
    LetterFor,
    LossLimit,
    NextLetter,
    SumTimes,
    TheExpression,
    ToChooseFrom,
)
from mathgen.reading.meaning.parts import (
    AsFraction,
    EqualFraction,
    FromOne,
    NumberLine,
    PartOf,
    PartsOfSets,
    SameInTrials,
    ScaledCount,
    SetIsWhole,
    ShareFraction,
    ShownPart,
    SomePart,
    TheFraction,
    TopAndBottom,
)
from mathgen.reading.meaning.prices import Bought, BuysBoth, HasMoney, LookAtPrices, NewPrice, PartPaid, PercentOn, PriceIs, SharedBy, Spent
from mathgen.reading.meaning.rates import (
    BonusPoints,
    Classes,
    EquationIs,
    GoalScore,
    Grid,
    Growing,
    LetterIs,
    OneLine,
    OneSet,
    PointsEach,
    Proportional,
    RuleIs,
    SamePoints,
    SameRacks,
    SameRatio,
    ScoreGrew,
    ScoreIs,
    StartingScores,
)
from mathgen.reading.meaning.results import ResultIs, ResultsAre, ZeroIs
from mathgen.reading.meaning.sets import (
    BoxesAlike,
    InBoxes,
    InEqualRows,
    InPairs,
    InRows,
    InTwo,
    LeftIs,
    LetterAhead,
    OneChange,
    OneTerm,
    PutInBoxes,
    Repeated,
    ResultLimit,
    RowHolds,
    SplitInto,
    SumOfSome,
)
from mathgen.reading.meaning.statistics import (
    Bars,
    BoxPlot,
    GraphToMake,
    LeaveOut,
    MeanTold,
    MeanWas,
    NextTrial,
    OneOfTwo,
    OtherRow,
    PictureStandsFor,
    PlotToMake,
    Recorded,
    TwoPlots,
    Wondered,
)

Claim = (
    Picks | PickOne | Sample | SampleLike | Drawn | UniformModel | Digits | SampleHas | HitDigits | RunsAre | Choices | Count
    | EachTrial | Portion | Series | More | Times | NextSet | NextGoal | CountOn | SameRate | Points | PointsEarned | ShareOut
    | GoalMean | OneMoreTrial | TrialCount | AllTheOthers | Some | TheseWere | TotalWas | Look | Against | Rounding | About
    | SuccessRule | TriesWere | SuccessesWere | SuccessRate | OtherTrials | NextTries | SuccessGoal | NewSuccesses | LastOne
    | Claimed | Explain | Apart | ApartEach | LinePlot | MadeEqual | FootIs | InFeet | Axes | PointAt | ScatterPlot | OnDrawing
    | PlotTells | Plotted | PointsFor | OncePoint | LineCloseBy | Spaces | ToChooseFrom | LetterEquation | LetterFor
    | TheExpression | NextLetter | ExpressionsAre | LetterCount | SumTimes | LossLimit | PartOf | TheFraction | EqualFraction
    | ScaledCount | NumberLine | FromOne | SetIsWhole | TopAndBottom | AsFraction | PartsOfSets | SameInTrials | ShareFraction
    | SomePart | ShownPart | PriceIs | Bought | HasMoney | LookAtPrices | PartPaid | BuysBoth | Spent | SharedBy | PercentOn
    | NewPrice | SamePoints | SameRacks | OneSet | Classes | RuleIs | EquationIs | LetterIs | PointsEach | BonusPoints | ScoreIs
    | StartingScores | OneLine | GoalScore | SameRatio | Proportional | Grid | Growing | ScoreGrew | ZeroIs | ResultIs
    | ResultsAre | InPairs | InTwo | InRows | RowHolds | InEqualRows | OneChange | SumOfSome | SplitInto | InBoxes | LetterAhead
    | LeftIs | OneTerm | ResultLimit | PutInBoxes | BoxesAlike | Repeated | MeanWas | BoxPlot | Wondered | TwoPlots | OneOfTwo
    | MeanTold | LeaveOut | NextTrial | OtherRow | Recorded | PlotToMake | Bars | GraphToMake | PictureStandsFor
)
