"""What a told sentence means, before its gaps are filled: claims, places to look, a wish for the form of the answer.

A scope in the words may leave out who, when or which color; None stands for what was left out.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, NamedTuple

from mathgen.asks.expression import Money
from mathgen.exact.demand import Demand
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


@dataclass(frozen=True, slots=True)
class Mark:
    """A choice of labels that is not spelled out.

    ``all``: every label there is ("the class", "all 3 trials"). ``each``: one after another ("each group").
    ``these``: labels that the text has named before ("the two groups", "in 3 trials"). ``bare``: "pins" without a color.
    ``before``, ``through``: all trials before the one in ``of``; all up to it.
    """

    kind: Literal["all", "each", "these", "bare", "before", "through"]
    count: Number | None = None
    of: tuple[Label, ...] | None = None


Labels = tuple[Label, ...] | Mark | None


class Np(NamedTuple):
    """Whose pins, from which trials, of which colors, as far as the words say."""

    groups: Labels = None
    trials: Labels = None
    colors: Labels = None


class Count(NamedTuple):
    """ "The Owls knocked down 7 red pins in Trial 1." """

    measure: Measure
    np: Np
    number: Number


class EachTrial(NamedTuple):
    """ "The Owls set up 4 red pins for each trial, 8 in all." """

    measure: Measure
    np: Np
    number: Number
    total: Number | None


class Portion(NamedTuple):
    """ "The Owls knocked down 7 of the 8 red pins", "3/4 of the red pins were left standing": part, and whole where told."""

    measure: Measure
    np: Np
    part: Number
    whole: Number | None


class PartOf(NamedTuple):
    """ "Of the 12 pins, 3/12 were red pins knocked down", "of the 8 pins knocked down, 3 were red": some colors of a set."""

    measure: Measure | None  # of the part; None for that of the whole
    np: Np  # of the whole
    part: Number
    colors: Labels  # of the part
    whole: Number | None
    counted: Measure | None  # what the whole counts, where that is said
    again: bool = False  # "3/12 were red pins knocked down": of the same whole as before


class Series(NamedTuple):
    """ "The Owls knocked down 3, 1, and 4 pins in Trials 1, 2, and 3": one number for each label."""

    measure: Measure
    np: Np
    numbers: tuple[Number, ...]


class More(NamedTuple):
    """ "The Owls knocked down 2 more red pins than the Wrens." Of ``other``, what is left out is as in ``np``."""

    measure: Measure
    np: Np
    other: Np
    number: Number
    sign: int  # 1 for more, -1 for fewer


class Times(NamedTuple):
    """ "The Owls knocked down 3 times as many red pins as the Wrens." """

    measure: Measure
    np: Np
    other: Np
    number: Number


class NextSet(NamedTuple):
    """ "The Owls will set up 40 red pins next time." """

    np: Np
    number: Number


class NextGoal(NamedTuple):
    """ "The goal for next time is 40 red pins knocked down." """

    measure: Measure
    np: Np
    number: Number


class TheFraction(NamedTuple):
    """ "... to find the fraction knocked down": of what is set up, which is meant by "the fraction"."""

    measure: Measure


class EqualFraction(NamedTuple):
    """ "An equal fraction of the red pins has the bottom number 8." """

    place: Literal["top", "bottom"]
    number: Number
    np: Np = Np()
    measure: Measure | None = None


class InPairs(NamedTuple):
    """ "Put these red pins in pairs." """

    measure: Measure | None
    np: Np


class ScaledCount(NamedTuple):
    """ "In Trial 2, the Owls knocked down 5/4 × 8 red pins." """

    measure: Measure
    np: Np
    rate: Number
    first: Number


class CountOn(NamedTuple):
    """ "Count on by ones: 38, 39, __.", "Start at 38 and count back one.", "Count these pins by ones": by how many, and what is said."""

    by: int
    start: Number | None = None
    following: Number | None = None
    colors: Labels = None  # of "these pins"


class NumberLine(NamedTuple):
    """ "A number line from 0 to 1 has 8 equal parts." """

    parts: Number


class MeanWas(NamedTuple):
    """ "The mean number of pins knocked down per trial was 8." """

    measure: Measure
    np: Np
    number: Number


class Picks(NamedTuple):
    """ "This is done 40 times": the pick, each time from all."""

    number: Number


class ToChooseFrom(NamedTuple):
    """ "Look at (3 + 2) × 5, 3 + 2 × 5, and 3 × 5 + 2.": how each is built, and its numbers."""

    options: tuple[tuple[str, tuple[Number, ...]], ...]


class FromOne(NamedTuple):
    """ "The fraction knocked down is 3 parts from 1." """

    measure: Measure
    parts: Number


class SetIsWhole(NamedTuple):
    """ "One set is the whole": of which a fraction is told."""


class TopAndBottom(NamedTuple):
    """ "A fraction has the top number 24 and the bottom number 8." """

    top: Number
    bottom: Number


class InTwo(NamedTuple):
    """ "Put these pins in two equal rows.", "Both numbers are the same in __ + __ = 14." """

    of_two: Literal["rows", "blanks"]
    measure: Measure | None = None
    np: Np = Np()
    number: Number | None = None


class AsFraction(NamedTuple):
    """ "Write 3 as a fraction with the bottom number 4." """

    number: Number
    bottom: Number


class InRows(NamedTuple):
    """ "The Owls put all red pins knocked down in 3 rows.", "An array shows all pins the Owls knocked down in Trial 1." """

    measure: Measure | None
    np: Np
    rows: Number | None


class RowHolds(NamedTuple):
    """ "Each row has 4 red pins.", "The array has 3 rows of 4." """

    size: Number
    colors: Labels = None
    rows: Number | None = None


class InEqualRows(NamedTuple):
    """ "Put all of these pins in equal rows.", "Write the number of pins knocked down as a product of two factors." """

    measure: Measure | None
    np: Np


class OneChange(NamedTuple):
    """ "Change one number of pins knocked down to make the mean 10 pins." """

    name: Literal["total", "mean"]
    measure: Measure
    colors: Labels
    to: Number


class PartsOfSets(NamedTuple):
    """ "Each group knocked down 8/12, 5/12, 10/12, or 6/12 of the set": all the fractions that there were, each told once."""

    measure: Measure
    parts: tuple[Number, ...]


class SumOfSome(NamedTuple):
    """ "Find three of these fractions that have the sum 2." """

    size: int
    total: Number


class SplitInto(NamedTuple):
    """ "Split 5/8 into two fractions with the bottom number 8." """

    part: Number
    bottom: Number


class InBoxes(NamedTuple):
    """ "Put these red pins in boxes of 6.", "Each box holds 6 of these red pins." """

    measure: Measure | None
    np: Np
    number: Number
    box: str  # box, bag, row


class SameRate(NamedTuple):
    """ "Suppose the fraction stays the same." """

    np: Np = Np()
    measure: Measure | None = None


class Points(NamedTuple):
    """ "Each red pin knocked down earns a point." """

    measure: Measure
    np: Np


class PointsEarned(NamedTuple):
    """ "8 points in all" """

    number: Number


class SamePoints(NamedTuple):
    """ "Each red pin knocked down earned the same number of points"; of ``whole`` pins, where the words say so again."""

    measure: Measure | None
    np: Np
    whole: Number | None = None


class SameRacks(NamedTuple):
    """ "Each trial had the same number of red pins": set up, in so many trials where that is told."""

    np: Np
    number: Number | None = None


class OneSet(NamedTuple):
    """ "Each trial had one set": of those told of before."""


class Classes(NamedTuple):
    """ "Suppose 24 classes each set up the same number of red pins." """

    measure: Measure
    np: Np
    number: Number


class LetterEquation(NamedTuple):
    """ "n × 6 = 24": a factor beside the letter and the product; "n = 4 × 6": both factors and no product."""

    letter: str
    factor: Number
    product: Number | None
    other: Number | None = None


class LetterFor(NamedTuple):
    """ "Let n be the number of red pins the Owls knocked down": the question that the letter stands for."""

    letter: str
    asked: NamedTuple


class TheExpression(NamedTuple):
    """ "Use the expression (3 + 4) × 5." """

    symbol: Literal["+", "-"]
    numbers: tuple[Number, Number, Number]


class ShareOut(NamedTuple):
    """ "The 3 groups share the points equally." """

    among: Literal["groups", "trials"]
    number: Number | None
    points: Number | None
    np: Np = Np()


class GoalMean(NamedTuple):
    """ "The goal is a mean of 9 pins per trial for 4 trials." """

    np: Np
    number: Number
    trials: Number | None


class OneMoreTrial(NamedTuple):
    """ "One trial is still to come." """

    trials: Number | None = None


class TrialCount(NamedTuple):
    """ "There were 3 trials." """

    number: Number


class AllTheOthers(NamedTuple):
    """ "All the other red pins were left standing." """

    measure: Measure
    np: Np


class Some(NamedTuple):
    """ "... and some red pins": counted, but not told how many."""

    measure: Measure
    np: Np


class TheseWere(NamedTuple):
    """ "These were 3 red, 5 gold, and some blue pins": of those counted last."""

    numbers: tuple[Number, ...]
    colors: tuple[Label, ...]  # of the numbers, then of the rest


class TotalWas(NamedTuple):
    """ "The total was 15 pins": of all that was counted before, with the pins of ``np`` where it names some."""

    np: Np
    number: Number
    colors: Labels = None  # "15 red and blue pins": of which colors, where that is said once more


class PickOne(NamedTuple):
    """ "One of these pins is picked at random"; with a measure and colors, "all the pins knocked down go into a bag"."""

    measure: Measure | None = None
    colors: Labels = None


class BoxPlot(NamedTuple):
    """ "A box plot is drawn for these numbers": those told before, or counts of a measure."""

    np: Np = Np()
    measure: Measure | None = None
    by: Literal["groups", "trials", ""] = ""


class Wondered(NamedTuple):
    """ "Someone asks how many pins each group knocked down in Trial 1": a question that is itself asked about."""

    measure: Measure
    np: Np
    each: bool = False  # of each group


class TwoPlots(NamedTuple):
    """ "Make a dot plot of each list over one number line." """


class OneOfTwo(NamedTuple):
    """ "The first question is how many pins each group knocked down." """

    place: Literal["first", "second"]
    wondered: Wondered


class MeanTold(NamedTuple):
    """ "A mean of 4 was written down without a heading." """

    number: Number


class LeaveOut(NamedTuple):
    """ "Leave out Trial 3", "the number for the Owls is far from the others"."""

    part: Literal["groups", "trials"]
    labels: tuple[Label, ...]
    name: str = ""  # of the statistic, where it is told beside


class Sample(NamedTuple):
    """ "A sample of 3 of the 8 groups was drawn at random." """

    size: Number
    groups: Number


class SampleLike(NamedTuple):
    """ "A sample of 8 of these pins should represent the kinds of all 48 pins." """

    size: Number
    measure: Measure | None = None
    whole: Number | None = None


class NextTrial(NamedTuple):
    """ "Suppose the Owls knocked down 5 red pins in one more trial." """

    measure: Measure
    np: Np
    number: Number


class Drawn(NamedTuple):
    """ "The Owls, the Kites, and the Wrens were drawn at random from a population of 6 groups." """

    groups: tuple[Label, ...]
    number: Number


class UniformModel(NamedTuple):
    """ "In a model, each pin knocked down is equally likely to be any of 3 kinds." """

    number: Number
    measure: Measure


class Digits(NamedTuple):
    """ "A simulation uses 10 random digits." """

    number: Number


class SampleHas(NamedTuple):
    """ "A random sample of 8 of these pins has 2 red pins." """

    size: Number
    number: Number
    colors: Labels
    measure: Measure | None = None


class HitDigits(NamedTuple):
    """ "In a simulation, the digits 1 to 4 stand for a pin knocked down." """

    first: Number
    last: Number
    measure: Measure


class RunsAre(NamedTuple):
    """ "The 10 runs for two pins are 31, 58, ..." """

    number: Number
    runs: tuple[Number, ...]


class OtherRow(NamedTuple):
    """ "A two-way table has one row for red pins and one row for all the other pins." """

    colors: Labels


class Recorded(NamedTuple):
    """ "Each of 6 groups did 3 trials", "one result was written down for each trial of each group"."""

    groups: Number | None = None
    trials: Number | None = None
    kinds: Number | None = None
    one_for: Literal["", "trials", "kinds"] = ""


class Choices(NamedTuple):
    """ "One of 3 kinds of pins is picked": among how many; ``again`` without a number for "a second card is drawn"."""

    sort: str  # "kinds", "groups" or "again"
    number: Number | None = None


class Look(NamedTuple):
    """Where to look, and of whom the text speaks from here on."""

    np: Np
    source: Literal["table", "graph", ""] = ""
    whole: Number | None = None  # "of the 5 gold pins"
    measure: Measure | None = None  # what is to be counted there


class Against(NamedTuple):
    """Which two are compared: "Compare Trial 2 with Trial 1." """

    first: Np
    second: Np


class GreaterFraction(NamedTuple):
    """ "(that) a greater fraction of the red pins than of the blue pins was knocked down" """

    first: Labels
    second: Labels
    measure: Measure


class AgainstPart(NamedTuple):
    """ "(that) more than 1/2 of the 12 pins were knocked down" """

    sign: Literal[">", "<"]
    part: Number
    colors: Labels
    whole: Number | None
    measure: Measure


class TimesAsMany(NamedTuple):
    """ "(that) 3 times as many red pins as blue pins were knocked down" """

    times: Number
    first: Labels
    second: Labels
    measure: Measure


class MoreThanBoth(NamedTuple):
    """ "(that) more gold pins were knocked down than red and blue pins together" """

    first: Labels
    measure: Measure
    others: Labels


class PartTogether(NamedTuple):
    """ "(that) 6/16 of the 12 pins were red or gold pins knocked down"; of "these fractions", where nothing else is said."""

    part: Number
    colors: Labels = None
    whole: Number | None = None
    measure: Measure | None = None


class ChangedBy(NamedTuple):
    """ "(that) the number of red pins knocked down increased by 20%" """

    sign: int
    percent: Number
    colors: Labels = None
    measure: Measure | None = None
    trials: tuple[Labels, Labels] | None = None


class NextOne(NamedTuple):
    """ "(that) the next red pin will be knocked down with a probability of 3/8" """

    colors: Labels
    measure: Measure
    chance: Number


class LastOne(NamedTuple):
    """ "Suppose the last red pin was knocked down." """

    colors: Labels
    measure: Measure


class Stronger(NamedTuple):
    """ "(that) the Owls had the stronger result": which result is stronger, the question tells."""

    who: Labels
    than: Labels = None


Statement = GreaterFraction | AgainstPart | TimesAsMany | MoreThanBoth | PartTogether | ChangedBy | NextOne | Stronger


class Claimed(NamedTuple):
    """ "Someone says that more than 1/2 of the 12 pins were knocked down." """

    statement: Statement


class Explain(NamedTuple):
    """ "Tell why." """


class Rounding(NamedTuple):
    """ "Round the answer to the nearest tenth of a percent." """

    demand: Demand


class About(NamedTuple):
    """ "About what part of the 12 pins was knocked down?": the answer is to be rounded."""


class Term(NamedTuple):
    """A term of a rule or an equation: "5x", "x", or "10"."""

    number: Number | None  # None for a letter alone
    letter: str | None
    sign: int = 1


Terms = tuple[Term, ...]


class RuleIs(NamedTuple):
    """ "The rule 5d - 2m gives a score." """

    terms: Terms


class EquationIs(NamedTuple):
    """ "The equation is 5x + 10 = 45." """

    left: Terms
    right: Terms


class LetterIs(NamedTuple):
    """ "Let d be the number of pins knocked down." Without a measure, that of the letter before."""

    letter: str
    measure: Measure | None
    np: Np


class PointsEach(NamedTuple):
    """ "Each red pin knocked down earns 5 points", "... left standing loses 2 points". Of a group, where one is told."""

    measure: Measure
    np: Np
    number: Number
    sign: int = 1


class BonusPoints(NamedTuple):
    """ "A bonus of 10 points is added." """

    number: Number


class ScoreIs(NamedTuple):
    """ "The Owls earned 45 points in Trial 1", "45 points in all"."""

    np: Np
    number: Number


class StartingScores(NamedTuple):
    """ "Each of these pins earned a point": the counts told are the scores so far."""

    np: Np
    at_rates: bool = False  # "each pin knocked down earns 5 points for ...": the pins so far earned as much as those to come


class OneLine(NamedTuple):
    """ "A score is a start value plus the same number of points for each pin knocked down." """

    measure: Measure
    np: Np


class GoalScore(NamedTuple):
    """ "The goal is a total score of more than 50." """

    np: Np
    number: Number
    passes: bool  # more than; else at least


class SameRatio(NamedTuple):
    """ "Make a ratio table of red pins to gold pins": two colors whose counts grow together."""

    first: tuple[Label, ...]
    second: tuple[Label, ...]
    measure: Measure | None


class SameInTrials(NamedTuple):
    """ "Suppose the Owls knocked down the same fraction in each of 4 trials." """

    number: Number
    np: Np
    measure: Measure | None


class ShareFraction(NamedTuple):
    """ "Suppose the number knocked down was the same in each of the 2 trials": an equal share of the fraction told last."""

    number: Number


class Proportional(NamedTuple):
    """ "A score is proportional to the number of pins knocked down." """

    measure: Measure
    np: Np
    each: bool = False  # "for each group": each at its own rate


class Grid(NamedTuple):
    """ "Each point on a grid shows a number of pins knocked down and a score." """

    measure: Measure
    np: Np


class Growing(NamedTuple):
    """ "The equation p = 5d gives the points p for d pins knocked down." """

    measure: Measure
    np: Np
    number: Number
    letter: str  # of the points


class Apart(NamedTuple):
    """ "The Owls set the pins 2 1/4 inches apart in Trial 1." """

    np: Np
    number: Number


class ApartEach(NamedTuple):
    """ "The spaces were 1, 2, and 1 1/2 inches": of all groups in one trial."""

    numbers: tuple[Number, ...]


class LinePlot(NamedTuple):
    """ "Make a line plot of the spaces." """


class PlotToMake(NamedTuple):
    """ "Draw a dot plot of these numbers": those told before, or counts of a measure."""

    kind: Literal["dots", "histogram"]
    np: Np = Np()
    measure: Measure | None = None
    by: Literal["", "groups", "trials"] = ""


class Bars(NamedTuple):
    """ "Use bars for 0 to 2, 3 to 5, and 6 to 8." """

    ends: tuple[tuple[Number, Number], ...]


class GraphToMake(NamedTuple):
    """ "Draw a bar graph for Trial 1." """

    kind: Literal["bar", "picture"]


class PictureStandsFor(NamedTuple):
    """ "Each picture stands for 2 pins." """

    number: Number


class MadeEqual(NamedTuple):
    """ "Suppose all the spaces were made equal with the same total." """


class FootIs(NamedTuple):
    """ "One foot is 12 inches." """

    number: Number


class InFeet(NamedTuple):
    """ "Next time, the Owls will set the pins 2 feet apart", "a row with spaces of this size is 6 feet long"."""

    number: Number
    next_time: bool
    np: Np = Np()


class Axes(NamedTuple):
    """ "On a grid, first coordinates are inches between pins, and second coordinates are pins knocked down." """

    inches_first: bool
    of: Literal["both", "first", "second"] = "both"  # which coordinate the sentence tells of


class PointAt(NamedTuple):
    """ "The Owls plotted (5, 14) for Trial 3." """

    np: Np
    first: Number
    second: Number


class ScatterPlot(NamedTuple):
    """ "A scatter plot shows the space x in inches and the number y of pins knocked down." """

    x: str
    y: str
    np: Np


class OnDrawing(NamedTuple):
    """ "On a drawing, this space is 3/4 inch long." """

    number: Number


class PlotTells(NamedTuple):
    """ "Draw a scatter plot of the inches between pins and the number of red pins knocked down." """

    measure: Measure
    np: Np


class Plotted(NamedTuple):
    """ "The Owls had the points (2, 14), (3, 12), and (5, 9)": a point for each trial."""

    np: Np
    pairs: tuple[tuple[Number, Number], ...]


class PointsFor(NamedTuple):
    """ "The points for Trial 3 are (2, 14) for the Owls and (3, 12) for the Wrens." """

    np: Np
    points: tuple[tuple[Number, Number, Labels], ...]


class OncePoint(NamedTuple):
    """ "From each space to the next wider space, y goes down, except once." """

    sign: int
    np: Np | None = None


class LineCloseBy(NamedTuple):
    """ "The line y = 24 - 2x is close to the points." """

    y: str
    start: Number
    slope: Number
    x: str
    sign: Literal["+", "-"]


class Written(NamedTuple):
    """An expression as it is written: a number, a letter, a term such as 5n, or two parts with a sign between them."""

    sign: str
    parts: tuple[Any, ...]


class NextLetter(NamedTuple):
    """ "Next time, the Owls would like to knock down n pins, more than in Trial 1." """

    letter: str
    measure: Measure
    np: Np


class LetterAhead(NamedTuple):
    """ "Next time, the Owls will set up n pins." """

    letter: str
    np: Np


class Reduced(NamedTuple):
    """n − 0.4n, as it is written: the letter, the part of it, and the letter once more."""

    letter: str
    part: Number
    again: str


class LeftIs(NamedTuple):
    """ "At the same rate, n − 0.4n pins would be left standing." """

    measure: Measure
    written: Reduced
    colors: Labels = None


class OneTerm(NamedTuple):
    """ "The expression n − 0.4n can be written as one term." """

    written: Reduced


class Limit(NamedTuple):
    """n > 8, as it is written."""

    letter: str
    test: Literal[">", "<"]
    number: Number


class ResultLimit(NamedTuple):
    """ "A result of n pins reaches the goal where n > 8"; or what the letter stands for, and no limit yet."""

    letter: str
    colors: Labels
    limit: Limit | None = None
    means: str = ""
    measure: Measure | None = None
    by: Literal["", "groups", "trials"] = ""


class ExpressionsAre(NamedTuple):
    """ "Here are the expressions 12 − n, n − 12, and n + 12." """

    options: tuple[Written, ...]


class Bracket(NamedTuple):
    """ "5(8 + n)" """

    points: Number
    known: Number
    letter: str


class LetterCount(NamedTuple):
    """ "In Trial 2, the Owls knocked down n pins." """

    letter: str
    measure: Measure
    np: Np


class SumTimes(NamedTuple):
    """ "5(8 + n) gives the points in all." """

    bracket: Bracket


class LossLimit(NamedTuple):
    """ "The loss must be at most 20 points after one more trial." """

    np: Np
    number: Number
    strict: bool  # less than; else at most


class ScoreGrew(NamedTuple):
    """ "From Trial 1 to Trial 2, the score of the Owls grew by 20", "between these numbers, the line rises by 20"."""

    number: Number
    trials: tuple[tuple[Label, ...], tuple[Label, ...]] | None = None
    np: Np = Np()


class SomePart(NamedTuple):
    """ "The Owls knocked down a part of the red pins in Trial 1": how much is told after."""

    measure: Measure
    np: Np


class ShownPart(NamedTuple):
    """ "A calculator shows this part as 0.41666..., and the decimal does not end." """

    number: Number


class PutInBoxes(NamedTuple):
    """ "Put all of these pins in boxes": nothing is said of how many each holds."""

    measure: Measure | None
    np: Np
    box: str


class BoxesAlike(NamedTuple):
    """ "All the boxes are alike"."""

    box: str


class Repeated(NamedTuple):
    """ "Suppose every trial had the same result as Trial 1", "count on by each of these numbers"."""

    trials: tuple[Label, ...] = ()


class ZeroIs(NamedTuple):
    """ "Let zero stand for a goal of 8 red pins knocked down": what results are over or under."""

    number: Number
    colors: Labels
    measure: Measure | None


class ResultIs(NamedTuple):
    """ "The result of the Owls was -3 in Trial 1": so many over or under the goal."""

    np: Np
    number: Number


class ResultsAre(NamedTuple):
    """ "The results of the Owls in 3 trials were -3, 2, and -1." """

    np: Np
    numbers: tuple[Number, ...]


class Spaces(NamedTuple):
    """ "A row of pins has 3 spaces of this size." """

    number: Number


class PriceIs(NamedTuple):
    """ "The price of the paper tube is 25¢", "the tape costs $0.30"."""

    item: str
    number: Number
    unit: Money


class Bought(NamedTuple):
    """ "A group buys the paper tube and the roll of tape", "a group buys 4 paper tubes": how many of each, where that is said."""

    items: tuple[tuple[Number | None, str], ...]


class HasMoney(NamedTuple):
    """ "A group pays with a dollar bill", "the group has 2 dollars"."""

    dollars: Number | None  # None: a dollar


class SuccessRule(NamedTuple):
    """ "A trial is a success when only pins of the target color are knocked down." """

    measure: Measure


class TriesWere(NamedTuple):
    """ "The Seals had 5 trials." """

    np: Np
    number: Number


class SuccessesWere(NamedTuple):
    """ "4 of the 5 trials were successes." """

    np: Np
    number: Number
    tries: Number | None = None


class SuccessRate(NamedTuple):
    """ "Of the 5 trials, 4/5 were successes." """

    np: Np
    rate: Number
    tries: Number


class OtherTrials(NamedTuple):
    """ "The other trials were not successes." """


class NextTries(NamedTuple):
    """ "The Seals will do 20 more trials." """

    np: Np
    number: Number


class SuccessGoal(NamedTuple):
    """ "The goal is successes in 80% of all trials." """

    np: Np
    percent: Number


class NewSuccesses(NamedTuple):
    """ "Suppose every new trial is a success." """


class LookAtPrices(NamedTuple):
    """ "Look at the price list", "look at the prices of the paper tube and the tape"."""

    items: tuple[str, ...] = ()  # all where none is named


class PartPaid(NamedTuple):
    """ "The tape costs 0.35 of a dollar", "a group pays 3/10 of a dollar for the tape"."""

    item: str
    part: Number


class BuysBoth(NamedTuple):
    """ "A group buys the two items." """


class Spent(NamedTuple):
    """ "A group spends 24¢ on paper tubes", "a group has 24¢"."""

    number: Number
    item: str | None


class SharedBy(NamedTuple):
    """ "The price of the tape is shared equally by 4 groups." """

    number: Number
    item: str | None


class PercentOn(NamedTuple):
    """ "In a sale, every price is 20% less", "a tax of 10% is added", "every price went up by 20% this week"."""

    why: Literal["sale", "tax", "next week", "last week"]
    sign: Literal["+", "-"]
    percent: Number


class NewPrice(NamedTuple):
    """ "Next week, the price will be 50 cents." """

    number: Number
    item: str | None = None


Claim = (
    FromOne | Picks | MeanWas | ToChooseFrom | TopAndBottom | SetIsWhole | InTwo
    | Count | EachTrial | Portion | Series | More | Times | NextSet | SameRate | Points | PointsEarned | ShareOut | GoalMean
    | OneMoreTrial | TrialCount | Some | TheseWere | TotalWas | AllTheOthers | Look | Against | Rounding | RuleIs | EquationIs
    | LetterIs | PointsEach | BonusPoints | ScoreIs | StartingScores | OneLine | GoalScore | PartOf | NextGoal | TheFraction
    | EqualFraction | InPairs | PickOne | Choices | BoxPlot | Recorded | SameRatio | SameInTrials | ShareFraction | Proportional
    | Growing | Grid | Apart | Spaces | FootIs | InFeet | Axes | PointAt | ScatterPlot | LineCloseBy | ApartEach | LinePlot | MadeEqual
    | PlotToMake | Bars | GraphToMake | PictureStandsFor
    | OneMoreTrial | TrialCount | Some | TheseWere | TotalWas | AllTheOthers | Look | Against | Rounding
    | PartOf | NextGoal | TheFraction | EqualFraction
    | RuleIs | EquationIs | LetterIs | PointsEach | BonusPoints | ScoreIs
    | StartingScores | OneLine | GoalScore
    | OtherRow | TwoPlots | Wondered | OneOfTwo | LeaveOut | Sample | SampleLike | SampleHas | HitDigits | RunsAre | Digits | Drawn
    | MeanTold
    | UniformModel | NextTrial
    | ZeroIs | ResultIs | ResultsAre | PutInBoxes | BoxesAlike | Repeated | SomePart | ShownPart | ScoreGrew | LossLimit
    | LetterCount | SumTimes | ExpressionsAre | NextLetter | LetterAhead | LeftIs | OneTerm | ResultLimit
    | About
    | SamePoints | SameRacks | OneSet | Classes | LetterEquation | LetterFor | TheExpression | InBoxes
    | InEqualRows | SplitInto | PartsOfSets | SumOfSome | OneChange | Claimed | LastOne | Explain
    | ScaledCount | InRows | RowHolds | NumberLine | AsFraction | CountOn
    | PriceIs | Bought | HasMoney | LookAtPrices | PercentOn | NewPrice
    | PartPaid | BuysBoth | Spent | SharedBy
    | OnDrawing | PlotTells | Plotted | PointsFor | OncePoint
    | SuccessRule | TriesWere | SuccessesWere | SuccessRate | OtherTrials | NextTries | SuccessGoal | NewSuccesses
)  # fmt: skip
