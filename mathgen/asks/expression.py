"""The expression language of asks.

    leaf   = Quantity(measure, scope) | Measured(column, group, trial) | Price(item, unit) | Stated(number) | Unknown
    expr   = leaf | Op(symbol, exprs) | Stat(name, series) | Ordered(series, place) | Deviation(series, place)
           | Tally(series, test, than, to)
    Fact   = Equation(left, right)
    Goal   = Value(expr) | Ratio(first, second) | Choice(labels, exprs, most) | Truth(left, test, right)
           | QuotientRemainder(amount, size, want) | Listing(amount, symbol, whole)
           | Changes(series, name, to, most) | Chosen(labels, options, size, total) | Same(labels, options, target)
    Ask(goal, given, demand)

Named tuples: a bank builds thousands, and equal expressions must be equal, hashable and cheap.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.exact.demand import Demand
from mathgen.trials.scope import Column, Label, Measure, Scope


class Quantity(NamedTuple):
    """A count that is read or added up from the table."""

    measure: Measure
    scope: Scope


class Measured(NamedTuple):
    """A length that the table has for one trial of one group: the space between pins, in inches."""

    column: Column
    group: str
    trial: Label

    @property
    def scope(self) -> Scope:
        """The results that the length belongs to."""
        return Scope((self.group,), (self.trial,))


Money = Literal["cents", "dollars"]


class Price(NamedTuple):
    """What an item of a price list costs: a number of cents, or of dollars with two places (0.25)."""

    item: str
    unit: Money


class Stated(NamedTuple):
    """A number that only the words give ("Next time the Owls will set up 40 pins"): a whole one, or a length such as 9/4 inches."""

    number: int
    meaning: str  # what it counts: "set up next time", "more than", "goal mean", "trials", "times"
    bottom: int = 1


PAIR = Stated(2, "pair")  # the word says the number
DOLLAR = Stated(100, "cents in a dollar")  # everybody knows it: no word says the number
PERCENTS = frozenset({"percent", "claimed percent", "goal percent"})  # meanings of hundredths that are printed as 20%
NOTHING = Stated(0, "nothing")  # no word says it: what is over is told apart from it


class Unknown(NamedTuple):
    """The number asked for, where it is no quantity of the table."""

    name: str = "x"


class Op(NamedTuple):
    """Arithmetic on two or more expressions, left to right; of one: its absolute value, or its opposite.

    ``gcf`` and ``lcm`` are the greatest common factor and the least common multiple of two whole numbers.
    """

    symbol: Literal["+", "-", "*", "/", "abs", "opposite", "gcf", "lcm"]
    args: tuple[Expr, ...]


StatName = Literal["mean", "median", "range", "lower quartile", "upper quartile", "interquartile range", "mean absolute deviation"]


class Stat(NamedTuple):
    """A statistic of a list of quantities.

    A quartile is the median of the lower or the upper half; of an odd number of values, the median belongs to neither half.
    """

    name: StatName
    series: tuple[Quantity | Measured, ...]


class Ordered(NamedTuple):
    """The number at one place of a list in order: what the relation of a median is about."""

    series: tuple[Quantity | Measured, ...]
    place: int  # from 0, the least first


class Deviation(NamedTuple):
    """How far one number of a list is from the mean of the list: what the relation of a mean absolute deviation is about."""

    series: tuple[Quantity | Measured, ...]
    place: int  # from 0, as the list stands


class Tally(NamedTuple):
    """How many lengths or counts of a list are equal to a number, greater or less: the marks over a place of a plot, or on one side.

    "from" counts those from ``than`` to ``to``, both ends included: a bar of a histogram.
    "digits" counts the numbers, told in the words, that have at least ``to`` digits from 1 to ``than``: runs of a simulation.
    """

    series: tuple[Measured | Quantity | Stated, ...]
    test: Literal["=", ">", "<", "from", "digits"]
    than: Stated
    to: Stated | None = None

    @property
    def bounds(self) -> tuple[Stated, ...]:
        """The numbers that the list is held against."""
        return (self.than,) if self.to is None else (self.than, self.to)


Leaf = Quantity | Measured | Price | Stated | Unknown
Expr = Leaf | Op | Stat | Ordered | Deviation | Tally


class Equation(NamedTuple):
    """What the words assert: left and right are equal."""

    left: Expr
    right: Expr


class Value(NamedTuple):
    """How much is it?"""

    expr: Expr

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """All that has to be worked out, as every goal tells it."""
        return (self.expr,)


class Ratio(NamedTuple):
    """How does one compare with the other, as a ratio in this order?"""

    first: Expr
    second: Expr

    @property
    def expr(self) -> Op:
        """Its value: how many of the first there are for each one of the second."""
        return Op("/", (self.first, self.second))

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (self.expr,)


class Choice(NamedTuple):
    """Which label has the greatest (or least) value?"""

    labels: tuple[str, ...]
    exprs: tuple[Expr, ...]
    most: bool = True


Test = Literal["=", ">", "<", "multiple", "no multiple"]


class Truth(NamedTuple):
    """Is it so? ``multiple``: whether the left goes into groups of the right with none over; ``no multiple``: with some over."""

    left: Expr
    test: Test
    right: Expr

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (self.left, self.right)

    @property
    def divides(self) -> bool:
        """Whether something is shared out, rather than two sides compared."""
        return self.test in ("multiple", "no multiple")


Want = Literal["both", "full", "needed", "over"]


class QuotientRemainder(NamedTuple):
    """An amount put in groups of a size: how many are full and what is over, or one of them, or how many are needed for all."""

    amount: Expr
    size: Expr
    want: Want = "both"

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (self.amount, self.size)


class Listing(NamedTuple):
    """Which pairs of whole numbers from 1 on come to an amount? All of them are the answer, the smaller number of each first.

    By ``*`` the factor pairs of a count. By ``+`` the ways to split a part of a ``whole``: the numbers are counts out of it.
    """

    amount: Expr
    symbol: Literal["*", "+"]
    whole: Expr | None = None

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (self.amount,) if self.whole is None else (self.amount, self.whole)


class Changes(NamedTuple):
    """Which one number of a list may change, and to what, so that the list has a total or a mean? All such changes are the answer.

    A count can be any from 0 to ``most``, the pins set up.
    """

    series: tuple[Quantity, ...]
    name: Literal["total", "mean"]
    to: Stated
    most: Quantity

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (*self.series, self.to, self.most)

    @property
    def wanted(self) -> Expr:
        """The total that the list is to have."""
        return Op("*", (Stated(len(self.series), "how many"), self.to)) if self.name == "mean" else self.to


class Chosen(NamedTuple):
    """Which so many of some written numbers have a sum, each used once? All such sums are the answer, its numbers as they are written."""

    labels: tuple[str, ...]
    options: tuple[Expr, ...]  # the number of each label
    size: int
    total: Expr

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (*self.options, self.total)


class Same(NamedTuple):
    """Which written expression is the one that the story makes, whatever number the letter in it stands for?"""

    labels: tuple[str, ...]
    options: tuple[Expr, ...]  # of each label, with an Unknown for the letter
    target: Expr
    letter: Quantity  # the count that the letter stands for

    @property
    def exprs(self) -> tuple[Expr, ...]:
        """As of ``Value``."""
        return (self.target, *self.options)


def with_number(expr: Expr, number: int) -> Expr:
    """An expression with a number in its letter's place."""
    if isinstance(expr, Unknown):
        return Stated(number, "letter")
    return Op(expr.symbol, tuple(with_number(arg, number) for arg in expr.args)) if isinstance(expr, Op) else expr


OF_TWO = ("first", "second")  # labels of two questions to choose from
ASSOCIATIONS = ("positive", "negative")  # of two ways in which points can go
LETTER_VALUES = (2, 1001)  # linear expressions that are equal at two numbers are equal at all


Goal = Value | Ratio | Choice | Truth | QuotientRemainder | Listing | Changes | Chosen | Same


def parts_to_share(goal: Goal) -> tuple[str, tuple[Expr, ...]]:
    """What two goals must have in common beside their values, where those are often equal by luck, and of what kind they are.

    Of a statement that is both its sides, of groups the amount and the size, of a common factor both numbers,
    of marks counted all that they are for; else "" and nothing.
    """
    if isinstance(goal, Truth):
        return goal.test, goal.exprs
    if isinstance(goal, QuotientRemainder):
        return goal.want, goal.exprs
    if isinstance(goal, Listing):
        return f"list by {goal.symbol}", goal.exprs
    if isinstance(goal, Changes):
        return f"change the {goal.name}", goal.exprs
    if isinstance(goal, Chosen):
        return f"{goal.size} of {', '.join(goal.labels)}", goal.exprs
    if isinstance(goal, Same):
        return " | ".join(goal.labels), (goal.letter, *(with_number(expr, LETTER_VALUES[0]) for expr in goal.exprs))
    if isinstance(goal, Choice) and goal.labels == OF_TWO:  # one count varies as little as any other
        return "two questions", tuple(Op("+", expr.series) if isinstance(expr, Stat) else expr for expr in goal.exprs)
    if isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol in ("gcf", "lcm"):
        return goal.expr.symbol, goal.expr.args
    if isinstance(goal, Value) and isinstance(goal.expr, Tally):
        return f"tally {goal.expr.test}", (*goal.expr.series, *goal.expr.bounds)
    if isinstance(goal, Value) and isinstance(goal.expr, Op) and isinstance(goal.expr.args[0], Tally) and goal.expr.symbol == "/":
        runs = goal.expr.args[0]
        return f"tally {runs.test}", (*runs.series, *runs.bounds, *goal.expr.args[1:])
    return "", ()


class Ask(NamedTuple):
    """One question: its goal, what its words assert, and the form that the words demand."""

    goal: Goal
    given: tuple[Equation, ...]
    demand: Demand
    equals: Quantity | None = None  # the count of the table that the answer has to be, where it is one
