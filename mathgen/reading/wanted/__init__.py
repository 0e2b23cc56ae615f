"""What a question asks, before its gaps are filled: one record for each kind, a file a strand."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.meaning import Claim
from mathgen.reading.wanted.chance import (
    AllGroups,
    EstimateOff,
    InSample,
    LikelierThan,
    MeanGap,
    NextIs,
    Pairs,
    Picked,
    RunChance,
    SampleAlike,
    StandFor,
    ThanModel,
    TimesPicked,
)
from mathgen.reading.wanted.counts import (
    Blank,
    Change,
    Difference,
    HowMany,
    HowManyOfTotal,
    IsDifference,
    IsTotal,
    IsTrue,
    MeanOf,
    Most,
    Multiple,
    Needed,
    NextCount,
    NextNumber,
    NextSetUp,
    OneShare,
    Part,
    PercentMore,
)
from mathgen.reading.wanted.hits import ExpectSuccesses, NewTrials, NextSuccess, SuccessCount, SuccessRatio, SuccessShare, SuccessWhich
from mathgen.reading.wanted.judged import IsFair, JudgeClaim
from mathgen.reading.wanted.lengths import (
    AllEndToEnd,
    CrossesAbove,
    EachEqual,
    EndToEnd,
    EndToEndFeet,
    Farther,
    FartherPoint,
    ForDrawnInch,
    ForEachInch,
    Goes,
    LineChange,
    LongerThan,
    MoreCrosses,
    NextWider,
    OddPoint,
    OffLine,
    Predicted,
    SpacesBeyond,
    SpacesIn,
    WidestGap,
)
from mathgen.reading.wanted.letters import (
    HowManyPoints,
    MostAllowed,
    RightExpression,
    WhatIsLetter,
    WhichExpression,
    WhichInequality,
    WhichRecords,
)
from mathgen.reading.wanted.parts import (
    AgainstFactor,
    AsFraction,
    ColorPart,
    FractionGap,
    FractionShare,
    GreaterPart,
    OtherNumber,
    PartOfSet,
    PartsFromOne,
    ProductOrFactor,
    RatioOf,
    SameValue,
    SetsDown,
    SetsInAll,
    TopOfSets,
    Which,
    WhichSums,
    WholeOfFraction,
)
from mathgen.reading.wanted.prices import (
    BillsNeeded,
    CostOf,
    CostsMore,
    CostsMoreThan,
    CostTogether,
    EachPays,
    GetsBack,
    HowManyBought,
    HowManyToBuy,
    PartLeft,
    PartsTogether,
    Pays,
    PercentApart,
    PercentPart,
    PriceAs,
    PriceMoves,
    PriceOfPrice,
    PriceThen,
    TimesAsMuch,
    WhichCosts,
)
from mathgen.reading.wanted.rates import (
    Constant,
    CountAhead,
    FewestNeeded,
    ForEach,
    Growth,
    InProportion,
    InRow,
    LevelWith,
    OfClasses,
    OfLine,
    OneRack,
    PointsOfOne,
    Score,
    ScoreWanted,
    SlopesApart,
    Steeper,
    TrialsAhead,
    UnitRate,
    ValueOf,
)
from mathgen.reading.wanted.results import ChangeFrom, FartherFromZero, FromZero, OfResults, ResultsApart, StandsForResult
from mathgen.reading.wanted.sets import (
    AllPairs,
    Boxed,
    Doubled,
    FactorPairs,
    GreatestBoxes,
    HowManyFit,
    IsSplit,
    LeastBoth,
    Paired,
    Partners,
    Splits,
    TimesLetter,
)
from mathgen.reading.wanted.statistics import (
    BehindMean,
    BoxPart,
    CenterWithout,
    Dots,
    HowManyRecorded,
    InBar,
    IsStatistical,
    MeanCounts,
    MeanOrMedian,
    MeansApart,
    MeanThen,
    OtherThan,
    Overlap,
    PicturesFor,
    WhichList,
    WhichStatistical,
)

Question = (
    Picked | NextIs | AllGroups | EstimateOff | InSample | SampleAlike | RunChance | StandFor | LikelierThan | MeanGap
    | ThanModel | Pairs | TimesPicked | HowMany | HowManyOfTotal | Difference | Multiple | Part | Most | Blank | IsTrue
    | IsDifference | IsTotal | NextNumber | NextSetUp | NextCount | Needed | OneShare | MeanOf | Change | PercentMore
    | SuccessCount | SuccessShare | SuccessRatio | SuccessWhich | ExpectSuccesses | NewTrials | NextSuccess | JudgeClaim | IsFair
    | LongerThan | Farther | EndToEnd | Predicted | OffLine | LineChange | NextWider | EndToEndFeet | SpacesIn | CrossesAbove
    | SpacesBeyond | MoreCrosses | WidestGap | AllEndToEnd | EachEqual | ForDrawnInch | ForEachInch | Goes | OddPoint
    | FartherPoint | RightExpression | HowManyPoints | WhatIsLetter | WhichInequality | WhichExpression | MostAllowed
    | WhichRecords | Which | RatioOf | ColorPart | PartOfSet | OtherNumber | ProductOrFactor | WhichSums | PartsFromOne
    | WholeOfFraction | TopOfSets | AgainstFactor | GreaterPart | FractionGap | SetsInAll | SetsDown | FractionShare | AsFraction
    | SameValue | Pays | CostTogether | CostOf | GetsBack | CostsMore | PriceAs | PriceOfPrice | HowManyToBuy | WhichCosts
    | CostsMoreThan | PartsTogether | PartLeft | HowManyBought | EachPays | TimesAsMuch | BillsNeeded | PriceThen | PercentPart
    | PriceMoves | PercentApart | PointsOfOne | OneRack | OfClasses | Score | ValueOf | LevelWith | OfLine | FewestNeeded
    | UnitRate | ForEach | CountAhead | TrialsAhead | InRow | Constant | Steeper | InProportion | Growth | ScoreWanted
    | SlopesApart | ChangeFrom | StandsForResult | FromZero | FartherFromZero | ResultsApart | OfResults | Paired | Partners
    | IsSplit | FactorPairs | Splits | AllPairs | Doubled | Boxed | TimesLetter | HowManyFit | GreatestBoxes | LeastBoth | BoxPart
    | MeanThen | WhichList | MeanOrMedian | Overlap | WhichStatistical | MeanCounts | CenterWithout | IsStatistical | OtherThan
    | HowManyRecorded | Dots | InBar | PicturesFor | MeansApart | BehindMean
)


class Meaning(NamedTuple):
    """One way to read a sentence."""

    claims: tuple[Claim, ...] = ()
    question: Question | None = None
    demand: Demand | None = None  # a form that the question's sentence asks for by itself
