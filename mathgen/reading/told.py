"""What a problem has told so far: facts, where to look, and what has still to play a part."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import product
from typing import Literal, NamedTuple

from mathgen.asks.expression import Expr, Measured, Op, Price, Quantity, Stated
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.reading.meaning.chance import Digits, Drawn, HitDigits, Picks, RunsAre, Sample, SampleHas, SampleLike, UniformModel
from mathgen.reading.meaning.counts import Against, CountOn, GoalMean, Look, NextGoal, NextSet, OneMoreTrial, Points, SameRate, ShareOut
from mathgen.reading.meaning.judged import Claimed, LastOne
from mathgen.reading.meaning.lengths import Axes, InFeet, LineCloseBy, OncePoint, PlotTells, ScatterPlot
from mathgen.reading.meaning.letters import (
    Bracket,
    ExpressionsAre,
    LetterCount,
    LetterEquation,
    LetterFor,
    LossLimit,
    NextLetter,
    TheExpression,
    ToChooseFrom,
)
from mathgen.reading.meaning.parts import (
    AsFraction,
    EqualFraction,
    FromOne,
    NumberLine,
    SameInTrials,
    ScaledCount,
    ShareFraction,
    SomePart,
    TopAndBottom,
)
from mathgen.reading.meaning.prices import PercentOn
from mathgen.reading.meaning.rates import (
    Classes,
    EquationIs,
    GoalScore,
    Grid,
    Growing,
    LetterIs,
    OneLine,
    PointsEach,
    Proportional,
    SamePoints,
    SameRacks,
    SameRatio,
    ScoreGrew,
    ScoreIs,
    Terms,
)
from mathgen.reading.meaning.results import ZeroIs
from mathgen.reading.meaning.scope import Mark, Np
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
from mathgen.reading.meaning.statistics import Bars, BoxPlot, LeaveOut, NextTrial, OtherRow, PlotToMake, Wondered
from mathgen.reading.mentions import DIMENSIONS, Dimension, Mentions
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label, Measure, Scope


class Fact(NamedTuple):
    """A number that the words give and what it is the number of."""

    expr: Expr
    text: str


class Comparison(NamedTuple):
    """ "2 more than" or "3 times as many as" between two quantities."""

    first: Quantity
    other: Quantity
    stated: Stated
    symbol: Literal["+", "-", "*"]  # first = other symbol stated


class Scoring:
    """What is told of points: a rule or an equation with its letters, what earns points, and what was earned."""

    rule: Terms = ()
    equations: list[EquationIs]
    letters: list[LetterIs]
    each: list[PointsEach]
    bonus: Number | None = None
    scores: list[ScoreIs]
    starting: bool = False  # whether the counts told are scores already
    at_rates: bool = False  # or lead to scores as the counts to come do
    line: OneLine | None = None
    goal: GoalScore | None = None
    proportional: Proportional | None = None
    growing: Growing | None = None
    grid: Grid | None = None
    grew: ScoreGrew | None = None

    def __init__(self) -> None:
        self.equations = []
        self.letters = []
        self.each = []
        self.scores = []


class Buying:
    """What is told of prices, of what is bought and of what there is to pay with."""

    prices: dict[str, Price]
    listed: tuple[str, ...] | None = None  # items to be looked at on the price list; () for all
    bought: list[tuple[Stated | None, str]]
    money: Expr | None = None
    percent: PercentOn | None = None
    rate: Stated | None = None  # of that percent
    new: Stated | None = None  # the price next week
    new_item: str | None = None  # of what
    both: bool = False  # whether the two items told of are bought
    spent: tuple[Stated, str | None] | None = None  # how many cents, and on what
    shared: tuple[Stated, str | None] | None = None  # by how many groups, and what
    parts: dict[str, Op]  # prices as parts of a dollar, in the order in which they are told

    def __init__(self) -> None:
        self.prices = {}
        self.bought = []
        self.parts = {}


class Told:
    """All that the told sentences say, claim by claim.

    ``open`` names what has to play a part in the answer: a number that only the words give must not be left over.
    """

    counts: Counts
    mentions: Mentions
    facts: list[Fact]
    sentence_of: list[int]  # of each fact, the number of its sentence
    seen: list[Look]
    looks: list[tuple[Dimension, tuple[Label, ...]]]
    comparisons: list[Comparison]
    pair: Against | None = None
    series: tuple[Quantity, ...] = ()  # told last
    lists: list[tuple[Quantity, ...]]  # every series told
    next_set: NextSet | None = None
    next_goal: NextGoal | None = None
    same_rate: list[SameRate]
    points: Quantity | None = None
    points_claim: Points | None = None
    points_said: list[Number]
    share_out: ShareOut | None = None
    same_points: SamePoints | None = None
    same_racks: SameRacks | None = None
    classes: Classes | None = None
    equation: LetterEquation | None = None
    letter: LetterFor | None = None
    expression: TheExpression | None = None
    goal_mean: GoalMean | None = None
    one_more: OneMoreTrial | None = None
    rounding: Demand | None = None
    last_count: Quantity | None = None
    total: Quantity | None = None  # "the total was 15 pins"
    last_portion: tuple[Measure, Scope] | None = None
    last_whole: Quantity | None = None  # of which "3/12 were red pins knocked down" goes on to tell
    the_fraction: Measure | None = None  # "find the fraction knocked down"
    equal_fraction: EqualFraction | None = None
    scoring: Scoring
    in_pairs: InPairs | None = None
    box_plot: BoxPlot | None = None
    other_row: OtherRow | None = None
    wondered: Wondered | None = None
    questions: list[Wondered]  # of which one is asked for
    left_out: LeaveOut | None = None
    mean_told: Stated | None = None  # of which it is not said what was counted
    sample: Sample | None = None
    sample_like: SampleLike | None = None
    sample_has: SampleHas | None = None
    digits: Digits | None = None
    hit_digits: HitDigits | None = None
    runs: RunsAre | None = None
    drawn: Drawn | None = None
    next_trial: NextTrial | None = None
    uniform: UniformModel | None = None
    recorded: dict[str, Stated]  # how many groups, trials and kinds results were written down for
    one_for: list[str]
    picked: Quantity | None = None  # from which one is picked at random
    choices: list[tuple[str, int]]  # between how many kinds or groups one is chosen
    same_ratio: SameRatio | None = None
    same_in_trials: SameInTrials | None = None
    share_fraction: ShareFraction | None = None
    in_boxes: InBoxes | None = None
    scaled: tuple[ScaledCount, Quantity, Quantity] | None = None  # with the later count and the first
    in_rows: InRows | None = None
    count_on: CountOn | None = None
    number_line: NumberLine | None = None
    from_one: FromOne | None = None
    picks: Picks | None = None
    mean_was: Op | None = None
    to_choose_from: ToChooseFrom | None = None
    top_and_bottom: TopAndBottom | None = None
    set_is_whole: bool = False  # "one set is the whole"
    in_two: InTwo | None = None
    as_fraction: AsFraction | None = None
    row: RowHolds | None = None
    claimed: Claimed | None = None
    last_one: LastOne | None = None
    explain: bool = False  # whether a reason is asked for
    to_list: InEqualRows | SplitInto | SumOfSome | OneChange | None = None
    parts: tuple[tuple[str, Expr], ...] = ()  # fractions of a set, all that groups had, as they are written
    parts_of: tuple[Quantity, ...] = ()  # the sets, one a group
    lengths: list[Measured]  # spaces between pins that are told
    axes: Axes | None = None
    coordinates: list[Fact]  # of points: of each one number may not be needed
    scatter_plot: ScatterPlot | None = None
    line: LineCloseBy | None = None
    plot_tells: PlotTells | None = None
    plotted: list[tuple[str, Label, Number, Number]]  # group, trial and both coordinates
    once: OncePoint | None = None
    success_rule: bool = False  # whether it is said what a success is
    next_tries: Number | None = None
    success_goal: Number | None = None
    to_come: Scope | None = None  # whose trials are to come
    new_successes: bool = False  # whether every trial to come is a success
    foot: Number | None = None  # "one foot is 12 inches"
    feet: InFeet | None = None
    drawn_space: Stated | None = None  # inches on a drawing
    listed: tuple[Measured, ...] = ()  # the spaces of all groups in one trial
    line_plot: bool = False
    letter_count: LetterCount | None = None
    bracket: Bracket | None = None
    next_letter: NextLetter | None = None
    letter_ahead: LetterAhead | None = None
    left_is: LeftIs | None = None
    one_term: OneTerm | None = None
    result_limit: ResultLimit | None = None
    expressions: ExpressionsAre | None = None
    loss_limit: LossLimit | None = None
    some_part: SomePart | None = None
    put_in_boxes: PutInBoxes | None = None
    boxes_alike: BoxesAlike | None = None
    repeated: Repeated | None = None
    zero: ZeroIs | None = None
    results: list[Op]  # over or under the goal
    plot: PlotToMake | None = None
    bars: Bars | None = None
    graph: str = ""  # that is to be made: "bar" or "picture"
    picture: Number | None = None  # how many pins a picture stands for
    spaces: Number | None = None  # how many of them are put end to end
    buying: Buying
    open: dict[str, str]

    def __init__(self, counts: Counts, mentions: Mentions) -> None:
        self.counts = counts
        self.mentions = mentions
        self.facts = []
        self.sentence_of = []
        self.seen = []
        self.looks = []
        self.comparisons = []
        self.lists = []
        self.same_rate = []
        self.points_said = []
        self.scoring = Scoring()
        self.questions = []
        self.recorded = {}
        self.one_for = []
        self.choices = []
        self.lengths = []
        self.coordinates = []
        self.plotted = []
        self.results = []
        self.buying = Buying()
        self.open = {}

    def scopes(self, np: Np, together: bool = False) -> list[Scope]:
        """The scopes that a phrase stands for: one, or several where it says "each"."""
        found = [self.mentions.resolve(part, labels, together) for part, labels in zip(DIMENSIONS, np, strict=True)]
        each = [isinstance(labels, Mark) and labels.kind == "each" for labels in np]
        if not any(each):
            return [self.mentions.scope(*found)]
        choices = [[(label,) for label in labels] if one else [labels] for labels, one in zip(found, each, strict=True)]
        return [self.mentions.scope(*chosen) for chosen in product(*choices)]

    def scope(self, np: Np, together: bool = False) -> Scope:
        """The one scope that a phrase stands for."""
        found = self.scopes(np, together)
        if len(found) != 1:
            raise NotRead('"each" does not fit here')
        return found[0]

    def quantity(self, measure: Measure, np: Np) -> Quantity:
        """The one quantity that a phrase stands for."""
        return Quantity(measure, self.scope(np))

    def said(self, expr: Expr, number: Number) -> None:
        """Keep a fact, once it is seen to be true.

        Raises:
            NotRead: the table says otherwise, or the same has been said before.
        """
        value = evaluate(expr, self.counts)
        if value != number.value:
            raise NotRead(f"the table does not say {number.text}")
        self.facts.append(Fact(expr, number.text))

    def referred(self, expr: Expr, number: Number) -> None:
        """As ``said``, for a number that only points to a set told of before ("of the 8 red pins")."""
        if Fact(expr, number.text) not in self.facts:
            self.said(expr, number)

    def flush_counted(self) -> None:
        """Turn numbers such as that of "the 2 trials" into facts; they were checked when the labels were found."""
        for part, size, number in self.mentions.counted:
            fact = Fact(Stated(size, part), number.text)
            if number.text != "both" and fact not in self.facts:
                self.facts.append(fact)
        self.mentions.counted.clear()


def settled(told: Told, np: Np) -> list[Np]:
    """The phrase with bare "pins" taken for all pins, and for those of the colors named before, if no others were spoken of."""
    named = told.mentions.named("colors")
    if isinstance(np.colors, Mark) and np.colors.kind == "bare" and named and not told.mentions.all_colors:
        # The shorter reading first, so that looking at "all pins" does not count as having spoken of them.
        return [np._replace(colors=named), np._replace(colors=told.mentions.every("colors"))]
    return [np]


# For each kind of claim, the function that takes it into what was told.
Takers = Mapping[type, Callable[..., None]]
