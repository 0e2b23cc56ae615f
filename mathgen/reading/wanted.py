"""What a question asks, before its gaps are filled: one record for each kind of question."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Money, StatName, Want
from mathgen.exact.demand import Demand
from mathgen.reading.meaning import Bracket, Claim, Labels, LetterEquation, Limit, Np, Reduced, Statement, Terms, TheExpression
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class HowMany(NamedTuple):
    """How many pins; ``whole`` where the words name a set of them by its number, ``total`` where several are to be added."""

    measure: Measure
    np: Np
    whole: Number | None = None
    total: bool = False


class HowManyOfTotal(NamedTuple):
    """ "How many of the 15 pins were red pins?": of a total told before."""

    np: Np
    whole: Number
    colors: Labels = None  # of the whole, where they are named


class Difference(NamedTuple):
    """How many more or fewer."""

    measure: Measure
    np: Np
    other: Np | None
    sign: int
    bars: bool = False  # asked of the bars of a graph


class Multiple(NamedTuple):
    """How many times as many."""

    measure: Measure
    np: Np
    other: Np | None


class Part(NamedTuple):
    """Which part of a set, as a fraction, decimal or percent."""

    measure: Measure
    np: Np
    whole: Number | None
    demand: Demand


class Which(NamedTuple):
    """Which group, trial or color had the greater part of its pins knocked down."""

    measure: Measure
    by: Literal["groups", "trials", "colors"]
    np: Np
    whole: Number | None = None
    greater: bool = True


class Most(NamedTuple):
    """Which group, trial or color had the most or the fewest pins."""

    measure: Measure
    by: Literal["groups", "trials", "colors"]
    np: Np
    most: bool
    two: bool = False  # "more" of two, not "the most" of any number


class RatioOf(NamedTuple):
    """The ratio of one count to another, in that order."""

    first: tuple[Measure | None, Labels]  # measure and colors; without a measure, that of the second
    second: tuple[Measure, Labels]
    np: Np
    demand: Demand


class ColorPart(NamedTuple):
    """Which part of the pins knocked down were of some colors."""

    measure: Measure
    np: Np  # of all that are counted
    whole: Number | None
    colors: Labels  # of those asked about
    demand: Demand


class PartOfSet(NamedTuple):
    """ "What fraction of the 12 pins were red pins knocked down?": which part of a set was of some colors, knocked down or not."""

    measure: Measure | None  # of the part; None for that of the whole
    np: Np  # of the whole
    whole: Number | None
    counted: Measure | None  # what the whole counts, where that is said
    colors: Labels  # of the part
    demand: Demand


class Blank(NamedTuple):
    """ "What number is missing in 8 + __ = 18?": the sum or difference as printed, None for the blank."""

    symbol: Literal["+", "-"]
    first: Number | None
    second: Number | None
    result: Number


class IsTrue(NamedTuple):
    """ "Is 3 + 2 = 5 true?", "Is 5 = 3 + 2 true?", "Is 27 > 31 true?": the numbers as printed, those of a side to be added."""

    left: tuple[Number, ...]
    test: Literal["=", ">", "<"]
    right: tuple[Number, ...]


class IsDifference(NamedTuple):
    """ "Is 12 - 5 = 4 + 3 true?": the numbers of both sides as printed."""

    counts: tuple[Number, Number]
    claimed: tuple[Number, Number]


class IsTotal(NamedTuple):
    """ "Did the Owls knock down 12 pins in all?", "Is 12 the total number of pins knocked down?": the number as printed."""

    number: Number
    measure: Measure
    np: Np


class OtherNumber(NamedTuple):
    """ "What is the top number of the equal fraction?" """

    place: Literal["top", "bottom"]


class Paired(NamedTuple):
    """ "Can all of these red pins be put in pairs?", "Is the number of red pins knocked down an odd number?" """

    measure: Measure | None  # None where "these" says it
    np: Np
    even: bool


class Partners(NamedTuple):
    """ "Does every pin have a partner?": of those that were put in pairs."""

    all_have: bool


class Shared(NamedTuple):
    """ "Can all of these red pins be put in equal rows of 4?", "Is the number of red pins knocked down a multiple of 4?" """

    measure: Measure | None  # None where "these" says it
    np: Np
    number: Number


class AllFull(NamedTuple):
    """ "Is every box full?": of those that something was put in."""

    box: str


class IsSplit(NamedTuple):
    """ "Is 5/8 = 1/8 + 2/8 + 2/8 true?": the numbers as printed."""

    part: Number
    claimed: tuple[Number, ...]


class LongerThan(NamedTuple):
    """ "Are 5 of these spaces longer than 3 feet end to end?" """

    feet: Number
    spaces: Number | None = None


class ProductOrFactor(NamedTuple):
    """ "Which is greater, the product 5/4 × 8 or the factor 8?" """

    greater: bool
    factor: Number
    rate: Number | None = None
    second: Number | None = None


class FactorPairs(NamedTuple):
    """ "What are all factor pairs of the number of red pins knocked down?" """

    measure: Measure | None
    np: Np


class Splits(NamedTuple):
    """ "Which pairs of fractions with the bottom number 8 have the sum 5/8?" """

    part: Number
    bottom: Number


class JudgeClaim(NamedTuple):
    """ "Is this claim true?"; "Is it true that more than 1/2 of the 12 pins were knocked down?", where the question itself says it."""

    statement: Statement | None = None


class AllPairs(NamedTuple):
    """ "Which factor pairs show all the ways?", "What are all the ways?": of what was to be written in every way."""

    symbol: Literal["*"] | None = None  # where factors are asked for


class WhichSums(NamedTuple):
    """ "Which choices of three of these fractions have the sum 2?" """

    size: int
    total: Number


class IsFair(NamedTuple):
    """ "Going by the means, is this claim fair?": by fractions ("fraction"), "mean"s, or counts "per trial"."""

    by: Literal["fraction", "mean", "per trial"]
    measure: Measure | None = None
    colors: Labels = None


class NextNumber(NamedTuple):
    """ "Which number comes next?", "Which number comes right before 40?": by how many it was counted."""

    by: int
    start: Number | None = None  # from which number, where the question says it
    blank: bool = False


class PartsFromOne(NamedTuple):
    """ "How many parts are between the fraction knocked down and 1?" """

    measure: Measure | None


class Doubled(NamedTuple):
    """ "How many pairs are there?", "How many pins are in each row?": half of what is put in pairs, or in two rows."""

    of_two: Literal["pairs", "rows", "blanks"]
    colors: Labels = None


class WholeOfFraction(NamedTuple):
    """ "Which whole number is equal to the fraction?" """


class TopOfSets(NamedTuple):
    """ "What is the top number of the fraction?": of one that equals so many sets."""


class AgainstFactor(NamedTuple):
    """ "Is 5/4 × 8 greater than 8?", "Did the Owls knock down more pins in Trial 2 than in Trial 1?": one count is told by the other."""

    sign: int
    rate: Number | None = None
    factor: Number | None = None
    second: Number | None = None
    later: Np | None = None
    first: Np | None = None
    measure: Measure | None = None


class AnyExpression(NamedTuple):
    """An expression of numbers, right or not: how it is built, and its numbers in order."""

    built: Literal["(a + b) × c", "a × (b + c)", "a + b × c", "a × b + c × d", "a × b + c"]
    numbers: tuple[Number, ...]


class RightExpression(NamedTuple):
    """ "Does (3 + 2) × 5 give the number of points the Owls earned?" """

    np: Np
    expression: AnyExpression


class Boxed(NamedTuple):
    """ "How many boxes are full, and how many pins remain?": of those that were put in boxes."""

    want: Want
    box: str | None  # None where only what is left over is asked for
    colors: Labels = None  # of what remains, where that is named


class NextSetUp(NamedTuple):
    """How many must be set up for the next goal; ``same`` where the question itself says that the rate stays the same."""

    np: Np
    same: bool = False


class NextCount(NamedTuple):
    """How many of a next set at the same rate; ``same`` where the question itself says so."""

    measure: Measure
    np: Np
    whole: Number | None = None
    same: bool = False


class Needed(NamedTuple):
    """How many are needed in one more trial for a goal."""

    measure: Measure
    np: Np


class HowManyPoints(NamedTuple):
    """ "How many points did the Owls earn for the red pins?" """

    np: Np
    whole: Number | None = None  # "the 7 red pins"
    measure: Measure | None = None  # "... knocked down", where the question says so again
    expression: TheExpression | None = None  # where the question itself says it
    by_expression: bool = False  # whether the expression told before is asked about


class PointsOfOne(NamedTuple):
    """ "How many points did each red pin knocked down earn?" """

    measure: Measure | None
    np: Np


class OneRack(NamedTuple):
    """ "How many pins did the Owls set up for each trial?" """

    np: Np


class OfClasses(NamedTuple):
    """ "How many red pins would the 24 classes set up in all?" """

    measure: Measure
    np: Np
    number: Number


class WhatIsLetter(NamedTuple):
    """ "What is n, the number of red pins the Owls knocked down?"; None where a sentence before says what n is."""

    letter: str
    asked: HowMany | PointsOfOne | None
    equation: LetterEquation | None = None  # where the question itself says it


class OneShare(NamedTuple):
    """How much one equal share is."""

    among: Literal["groups", "trials", ""]
    demand: Demand
    np: Np = Np()


class MeanOf(NamedTuple):
    """The mean or median for each group, for each trial, or of a row of numbers."""

    measure: Measure | None
    np: Np
    by: Literal["groups", "trials", ""]
    demand: Demand
    statistic: StatName = "mean"


class Change(NamedTuple):
    """By what percent a count rose (sign 1) or fell (sign -1) from one trial to another."""

    measure: Measure
    np: Np
    sign: int
    first: Labels = None
    last: Labels = None


class PercentMore(NamedTuple):
    """What percent more (sign 1) or fewer (sign -1) one count is than the other."""

    measure: Measure
    np: Np
    other: Np
    sign: int


class Score(NamedTuple):
    """ "What is the score of the Owls?": by a rule told before."""

    np: Np


class ValueOf(NamedTuple):
    """ "What is the value of 5d - 2m?", "What is the value of x?" """

    terms: Terms


class LevelWith(NamedTuple):
    """ "How many pins must each group knock down next time for the two scores to be equal?" """

    measure: Measure
    np: Np


class OfLine(NamedTuple):
    """ "How many points does each pin earn?", "What is the start value?" """

    part: Literal["slope", "start"]
    np: Np | None = None


class FewestNeeded(NamedTuple):
    """ "What is the least number of pins the Owls must knock down next time?" """

    measure: Measure
    np: Np


class Picked(NamedTuple):
    """ "What is the probability that the pin is (not) a red pin?" """

    color: Label
    negated: bool


class NextIs(NamedTuple):
    """ "What is the probability that the next pin to be knocked down is (not) a red pin?" """

    measure: Measure
    color: Label
    negated: bool


class BoxPart(NamedTuple):
    """ "At what number is the right end of the box?", "How long is the box?" """

    statistic: StatName


class AllGroups(NamedTuple):
    """ "About how many pins did all the groups knock down?": going by a sample."""

    measure: Measure
    np: Np


class EstimateOff(NamedTuple):
    """ "How many pins too high is the estimate that this sample gives for the class?" """

    colors: Labels
    who: Labels
    high: bool


class InSample(NamedTuple):
    """ "How many red pins should be in the sample?" """

    colors: Labels


class SampleAlike(NamedTuple):
    """ "Does the sample have the same fraction of red pins as all 48 pins?" """

    colors: Labels
    whole: Number | None = None


class RunChance(NamedTuple):
    """ "What is the estimated probability that both of the pins will be knocked down?": by the runs of a simulation."""

    need: int
    measure: Measure


class StandFor(NamedTuple):
    """ "How many of the 10 digits should stand for a pin knocked down?" """

    measure: Measure
    np: Np
    digits: Number


class LikelierThan(NamedTuple):
    """ "Is a pin more likely to be knocked down than to be left standing?" """

    one: Measure
    other: Measure
    np: Np


class MeanThen(NamedTuple):
    """ "What would be the mean number of pins knocked down in the 4 trials?" """

    measure: Measure
    np: Np
    trials: Number


class MeanGap(NamedTuple):
    """ "How much greater is the mean of the sample than the mean of the population?" """

    greater: bool


class ThanModel(NamedTuple):
    """ "How many more red pins were knocked down than the model predicts for these pins?" """

    measure: Measure
    color: Labels
    sign: int
    whole: Labels


class WhichList(NamedTuple):
    """ "Which group had the greater range?": of two lists, one for each group or trial."""

    statistic: StatName
    by: Literal["groups", "trials"]
    greater: bool


class MeanOrMedian(NamedTuple):
    """ "Which is greater, the mean or the median of these numbers?" """

    measure: Measure | None
    np: Np
    by: Literal["groups", "trials", ""]
    greater: bool


class Overlap(NamedTuple):
    """ "How long is the overlap of the dot plots?" """


class WhichStatistical(NamedTuple):
    """ "Which is a statistical question, the first or the second?" """


class MeanCounts(NamedTuple):
    """ "Is that the mean number of pins left standing?" """

    measure: Measure
    np: Np


class CenterWithout(NamedTuple):
    """ "Without this number, how much greater is the mean?" """

    name: StatName
    greater: bool
    measure: Measure | None
    np: Np
    by: Literal["", "groups", "trials"] = ""


class IsStatistical(NamedTuple):
    """ "Is that a statistical question?" """


class OtherThan(NamedTuple):
    """ "How many pins other than the red pins were left standing?"; None where a row for the other pins was told of."""

    measure: Measure
    colors: Labels


class HowManyRecorded(NamedTuple):
    """ "How many results were written down in all?": for each trial, or for each kind in each trial."""

    one_for: Literal["trials", "kinds"]


class Pairs(NamedTuple):
    """How many ordered pairs of kinds, or of groups (``same``), or pairs of a group and a kind, there are."""

    same: bool
    sort: Literal["kinds", "groups"] = "kinds"


class UnitRate(NamedTuple):
    """How many were knocked down per trial."""

    measure: Measure
    np: Np


class ForEach(NamedTuple):
    """How many were knocked down for each one that was left standing, or the other way round."""

    measure: Measure
    other: Measure
    np: Np


class CountAhead(NamedTuple):
    """How many in so many trials at the same rate; ``same`` where the question itself says so."""

    measure: Measure
    np: Np
    trials: Number
    same: bool = False


class TrialsAhead(NamedTuple):
    """In how many trials so many would be knocked down at the same rate; ``same`` as above."""

    measure: Measure
    np: Np
    number: Number
    same: bool = False


class InRow(NamedTuple):
    """ "How many gold pins go with 12 red pins?": in another row of a ratio table."""

    np: Np  # of what is asked for
    others: Np
    number: Number


class GreaterPart(NamedTuple):
    """Which of two colors was the greater part of the same whole."""

    measure: Measure
    one: str
    other: str


class FractionGap(NamedTuple):
    """How much greater the fraction for one trial is than for the other."""

    first: Labels
    other: Labels
    demand: Demand


class SetsInAll(NamedTuple):
    """ "How many sets of 12 pins would the Owls knock down in all?" """

    measure: Measure
    np: Np
    whole: Number


class SetsDown(NamedTuple):
    """ "How many sets of 12 pins do 30 pins make?": of the pins of one trial; those knocked down."""

    np: Np
    whole: Number
    total: Number
    demand: Demand


class FractionShare(NamedTuple):
    """ "What fraction of the 24 pins would that be for one trial?" """

    np: Np
    whole: Number


class Constant(NamedTuple):
    """ "What is the constant of proportionality?" """


class Steeper(NamedTuple):
    """ "Which group has the steeper line?"; with what is counted, "the steeper graph of the score against the number of pins"."""

    np: Np | None = None


class InProportion(NamedTuple):
    """ "Are these scores proportional to the numbers of pins knocked down?"; of points on a grid, whether they lie on one line."""

    measure: Measure | None = None
    np: Np | None = None


class Farther(NamedTuple):
    """ "How many inches farther apart did the Owls set the pins?": of two spaces that were told; without ``np`` how far these differ."""

    np: Np | None
    sign: int  # 1 for farther apart, -1 for closer together
    than: Np | None = None  # the other one, where that is said


class EndToEnd(NamedTuple):
    """ "How many inches long are 3 of these spaces in all?" """

    number: Number


class Predicted(NamedTuple):
    """ "How many pins does the line predict for a space of 5 inches?" """

    number: Number
    np: Np


class OffLine(NamedTuple):
    """ "How many more pins did the Owls knock down than the line predicts?" """

    measure: Measure
    np: Np
    sign: int


class LineChange(NamedTuple):
    """ "How many fewer pins does the line predict when the space is 3 inches wider?" """

    sign: int
    number: Number
    np: Np


class NextWider(NamedTuple):
    """ "How many inches wider will the space be?": the next one, told in feet."""


class EndToEndFeet(NamedTuple):
    """ "How many feet do 6 of these spaces make end to end?" """

    number: Number


class SpacesIn(NamedTuple):
    """ "How many of these spaces make 6 feet end to end?"; without a number, of the row that was told."""

    number: Number | None = None


class CrossesAbove(NamedTuple):
    """ "How many crosses are stacked over the number 1 1/4?" """

    number: Number


class SpacesBeyond(NamedTuple):
    """ "How many of the spaces are wider than 1 1/2 inches?" """

    test: Literal[">", "<"]
    number: Number


class MoreCrosses(NamedTuple):
    """ "How many more crosses are stacked over 3 than over 5?" """

    number: Number
    than: Number


class Dots(NamedTuple):
    """How many dots are stacked over a number, or stand for greater or lesser numbers."""

    test: Literal["=", ">", "<"]
    number: Number


class InBar(NamedTuple):
    """How many numbers a bar of a histogram takes in."""

    low: Number
    high: Number


class PicturesFor(NamedTuple):
    """How many pictures of a picture graph stand for the pins of one color."""

    color: Label


class WidestGap(NamedTuple):
    """ "How many inches wider was the widest space than the narrowest space?"; of a line plot, from the first cross to the last."""

    plotted: bool = False


class AllEndToEnd(NamedTuple):
    """ "What is the total length of all the spaces in inches?": those of a line plot."""


class EachEqual(NamedTuple):
    """ "How many inches wide would each space be?": of all made equal."""

    plotted: bool = False


class Growth(NamedTuple):
    """ "How much greater is p for Trial 2 than for Trial 1?" """

    letter: str
    first: Labels
    last: Labels


class ChangeFrom(NamedTuple):
    """Which number tells the change from one trial to another."""

    first: tuple[Label, ...]
    second: tuple[Label, ...]
    colors: Labels = None
    measure: Measure | None = None


class StandsForResult(NamedTuple):
    """Which number stands for a count, where zero stands for a goal."""

    np: Np = Np()


class FromZero(NamedTuple):
    """How far a result is from the goal: its absolute value."""


class FartherFromZero(NamedTuple):
    """Which group was farther from the goal, or closer to it."""

    farther: bool


class TimesLetter(NamedTuple):
    """ "What number times n is the same as n − 0.4n?": None where the expression is told of before."""

    letter: str
    written: Reduced | None = None


class HowManyFit(NamedTuple):
    """How many results fit a limit: "reach the goal", or make an inequality true."""

    limit: Limit | None = None
    means: str = ""


class WhichInequality(NamedTuple):
    """Which inequality tells a goal; its letter, where it is said."""

    letter: str | None = None


class WhichExpression(NamedTuple):
    """Which expression gives a rest, a total, or is the same as the points in all."""

    kind: str  # "rest", "total" or "same"
    measure: Measure | None = None
    colors: Labels = None
    letter: str | None = None
    bracket: Bracket | None = None


class MostAllowed(NamedTuple):
    """ "What is the greatest number of pins that may be left standing next time?" """

    measure: Measure
    np: Np


class ScoreWanted(NamedTuple):
    """The score of a group that makes both scores proportional; what of, where that is said."""

    np: Np
    colors: Labels = None
    measure: Measure | None = None
    on_line: bool = False


class SlopesApart(NamedTuple):
    """How much greater the slope of one group's line is than that of another's."""

    np: Np
    other: Np


class MeansApart(NamedTuple):
    """How many times the mean absolute deviation of one of two lists their means are apart."""

    by: Literal["groups", "trials"]
    np: Np


class AsFraction(NamedTuple):
    """Which fraction a repeating decimal that was told is."""

    colors: Labels


class BehindMean(NamedTuple):
    """ "How many trials did the Owls have?": as often as the mean goes into the total."""

    np: Np = Np()


class SameValue(NamedTuple):
    """ "Is 5/12 equal to this repeating decimal?": the fraction as printed."""

    claimed: Number


class TimesPicked(NamedTuple):
    """ "About how many times should a red pin be picked?": of so many picks, each put back."""

    color: Label


class WhichRecords(NamedTuple):
    """ "Which expression gives the points?": of those to choose from."""

    np: Np


class GreatestBoxes(NamedTuple):
    """The greatest number of boxes that are all alike."""

    box: str


class LeastBoth(NamedTuple):
    """The least total that two groups both reach."""

    measure: Measure | None = None
    colors: Labels = None


class ResultsApart(NamedTuple):
    """How much greater one result is than another; the trials of both, where they are said."""

    greater: Labels = None
    less: Labels = None


class OfResults(NamedTuple):
    """The sum of the results, their mean, or what brings their sum back to zero."""

    what: Literal["sum", "mean", "opposite"]


class Pays(NamedTuple):
    """ "How many cents does the group pay in all?" """

    unit: Money


class CostTogether(NamedTuple):
    """ "How many cents do the two items cost in all?" """

    unit: Money


class CostOf(NamedTuple):
    """ "How many cents do 4 paper tubes cost?" """

    number: Number
    item: str
    unit: Money


class GetsBack(NamedTuple):
    """ "How many cents does the group get back?" """

    unit: Money


class CostsMore(NamedTuple):
    """ "How many cents more does the paper tube cost?", "how many cents apart are the two prices?" """

    item: str | None  # the dearer one, where it is named
    unit: Money


class PriceAs(NamedTuple):
    """ "What fraction of a dollar does the paper tube cost?" """

    demand: Demand
    item: str | None = None


class PriceOfPrice(NamedTuple):
    """ "The price of a paper tube is what percent of the price of a marker?", "what percent of the higher price is the lower price?" """

    part: str | None = None  # None: the lower of the two that are told
    whole: str | None = None


class HowManyToBuy(NamedTuple):
    """ "How many paper tubes can the group buy, and how many cents are left?" """

    item: str


class WhichCosts(NamedTuple):
    """ "Which costs more, a marker or a box?", "which item has the lower price?" """

    more: bool
    items: tuple[str, str] | None = None  # where they are named again


class CostsMoreThan(NamedTuple):
    """ "Does a marker cost more than a box?", "is the first price lower than the second price?" """

    more: bool
    items: tuple[str, str] | None = None  # None: in the order in which they are told


class PartsTogether(NamedTuple):
    """ "What fraction of a dollar do the two items cost in all?" """


class PartLeft(NamedTuple):
    """ "What fraction of the dollar is left?" """


class HowManyBought(NamedTuple):
    """ "How many paper tubes does the group buy?" """

    item: str


class EachPays(NamedTuple):
    """ "How many cents does each group pay?" """


class TimesAsMuch(NamedTuple):
    """ "How many times as much does a box cost?" """

    item: str | None = None  # the dearer one, where it is named


class BillsNeeded(NamedTuple):
    """ "How many dollar bills are needed to buy 7 boxes?" """

    number: Number | None = None
    item: str | None = None


class PriceThen(NamedTuple):
    """ "How many cents does the tape cost in the sale?", "what was the price last week in cents?" """

    why: Literal["sale", "tax", "next week", "last week"]
    item: str | None = None


class PercentPart(NamedTuple):
    """ "How many cents is the tax?", "how many cents does the store take off?" """

    why: Literal["sale", "tax"]
    item: str | None = None


class PriceMoves(NamedTuple):
    """ "By what percent will the price go up?" """

    up: bool


class PercentApart(NamedTuple):
    """ "What percent more does the tape cost than the box?", "by what percent is the lower price below the higher price?" """

    more: bool
    asked: str | None = None  # None: one of the two that are told
    base: str | None = None


class ForDrawnInch(NamedTuple):
    """ "How many inches of space does each inch on the drawing stand for?" """


class ForEachInch(NamedTuple):
    """ "How many inches for the Owls go with each inch for the Wrens?" """

    asked: Labels
    base: Labels


class Goes(NamedTuple):
    """ "Is the association positive or negative?" """


class OddPoint(NamedTuple):
    """ "In which trial does y go up instead?" """

    sign: int


class FartherPoint(NamedTuple):
    """ "Whose point is farther from the line, up or down?" """

    np: Np | None = None


class SuccessCount(NamedTuple):
    """ "How many of the 5 trials were (not) successes?" """

    np: Np
    negated: bool
    tries: Number | None = None


class SuccessShare(NamedTuple):
    """ "What fraction of the 5 trials were (not) successes?" """

    negated: bool
    tries: Number
    demand: Demand


class SuccessRatio(NamedTuple):
    """ "What is the ratio of successes to other trials?" """

    negated: bool  # the other trials first


class SuccessWhich(NamedTuple):
    """ "Which group had successes in the greater fraction of its trials?" """


class ExpectSuccesses(NamedTuple):
    """ "About how many of the 20 trials should the Seals expect to be successes?" """

    np: Np
    tries: Number


class NewTrials(NamedTuple):
    """ "How many new trials are needed to reach the goal exactly?" """


class NextSuccess(NamedTuple):
    """ "What is the estimated probability that the next trial will (not) be a success?" """

    negated: bool


Question = (
    HowMany
    | PriceThen
    | HowManyBought
    | EachPays
    | TimesAsMuch
    | BillsNeeded
    | WhichCosts
    | CostsMoreThan
    | PartsTogether
    | PartLeft
    | PercentPart
    | PriceMoves
    | PercentApart
    | Pays
    | CostTogether
    | CostOf
    | GetsBack
    | CostsMore
    | PriceAs
    | PriceOfPrice
    | HowManyToBuy
    | HowManyOfTotal
    | Difference
    | Multiple
    | Part
    | Which
    | Most
    | RatioOf
    | ColorPart
    | UnitRate
    | ForEach
    | CountAhead
    | TrialsAhead
    | InRow
    | GreaterPart
    | FractionGap
    | SetsInAll
    | SetsDown
    | FractionShare
    | PartOfSet
    | OtherNumber
    | Blank
    | IsTrue
    | IsDifference
    | IsTotal
    | Doubled
    | IsSplit
    | BehindMean
    | SameValue
    | TimesPicked
    | WhichRecords
    | LongerThan
    | ProductOrFactor
    | WholeOfFraction
    | MoreCrosses
    | SpacesBeyond
    | AllEndToEnd
    | NextSetUp
    | Boxed
    | AgainstFactor
    | NextNumber
    | PartsFromOne
    | TopOfSets
    | RightExpression
    | AllPairs
    | JudgeClaim
    | FactorPairs
    | Splits
    | Paired
    | Partners
    | NextCount
    | Needed
    | HowManyPoints
    | PointsOfOne
    | OneRack
    | WhatIsLetter
    | OfClasses
    | OneShare
    | MeanOf
    | Change
    | PercentMore
    | Score
    | ValueOf
    | LevelWith
    | OfLine
    | FewestNeeded
    | Picked
    | NextIs
    | Pairs
    | BoxPart
    | OtherThan
    | WhichList
    | MeanGap
    | MeanThen
    | ThanModel
    | AllGroups
    | EstimateOff
    | InSample
    | SampleAlike
    | RunChance
    | StandFor
    | LikelierThan
    | MeanOrMedian
    | IsStatistical
    | WhichStatistical
    | Overlap
    | CenterWithout
    | MeanCounts
    | HowManyRecorded
    | Constant
    | Steeper
    | InProportion
    | Growth
    | Farther
    | ForDrawnInch
    | ForEachInch
    | EndToEnd
    | Predicted
    | OffLine
    | LineChange
    | NextWider
    | EndToEndFeet
    | SpacesIn
    | CrossesAbove
    | WidestGap
    | PicturesFor
    | Dots
    | InBar
    | EachEqual
    | ChangeFrom
    | StandsForResult
    | FromZero
    | FartherFromZero
    | OfResults
    | ResultsApart
    | GreatestBoxes
    | AsFraction
    | MeansApart
    | MostAllowed
    | WhichExpression
    | WhichInequality
    | TimesLetter
    | HowManyFit
    | ScoreWanted
    | SlopesApart
    | LeastBoth
    | Goes
    | OddPoint
    | FartherPoint
    | WhichSums
    | SuccessCount
    | SuccessShare
    | NextSuccess
    | IsFair
    | SuccessRatio
    | SuccessWhich
    | ExpectSuccesses
    | NewTrials
)


class Meaning(NamedTuple):
    """One way to read a sentence."""

    claims: tuple[Claim, ...] = ()
    question: Question | None = None
    demand: Demand | None = None  # a form that the question's sentence asks for by itself
