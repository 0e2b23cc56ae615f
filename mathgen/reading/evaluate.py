"""The reading room's own arithmetic: what an expression comes to on the raw rows of a table."""

from __future__ import annotations

from itertools import product, takewhile

from sympy import Integer, Rational

from mathgen.asks.expression import (
    Changes,
    Choice,
    Chosen,
    Deviation,
    Expr,
    Goal,
    Listing,
    Measured,
    Op,
    Ordered,
    Price,
    Quantity,
    QuotientRemainder,
    Same,
    Stat,
    Stated,
    Tally,
    Truth,
    with_number,
)
from mathgen.reading.tokens import NotRead
from mathgen.trials.scope import BY_TRIAL, Label, Measure, Scope
from mathgen.trials.table import TrialTable

Cell = tuple[str, Label, str]


class Tie(NotRead):
    """No one label beats every other."""

    def __init__(self, labels: tuple[str, ...]) -> None:
        self.labels = labels
        super().__init__(f"{' and '.join(labels)} are equal")


class Missing(NotRead):
    """Results that are asked for were never taken."""

    def __init__(self, cells: list[Cell]) -> None:
        self.cells = tuple(cells)
        super().__init__("the table has no result there" if len(cells) == 1 else "the table does not have all results there")


class Counts:
    """The rows of one table by group, trial and color, and what has been added up from them."""

    def __init__(self, table: TrialTable, whole: bool = False) -> None:
        """Args:
        table: the results.
        whole: whether a count over results of which one was never taken is refused, and not made from the rest.
        """
        self.table, self.whole = table, whole
        self._cells: dict[Cell, tuple[int, int]] = {}
        for row in table.rows:
            set_up, down = self._cells.get((row.group, row.trial, row.color), (0, 0))
            self._cells[row.group, row.trial, row.color] = (set_up + row.set_up, down + row.down)
        self._taken, self._absent = {cell[:2] for cell in self._cells}, frozenset(table.absent)
        self._targets = {(row.group, row.trial): row.target for row in table.rows}
        self._gaps = {(row.group, row.trial, row.gap_inches) for row in table.rows}
        self._numbers: dict[Quantity, Integer] = {}
        self._cells_of: dict[Scope, frozenset[Cell]] = {}
        self._prices: dict[str, int] = {}
        for line in table.prices:
            self._prices[line.item] = line.cents

    def cells(self, scope: Scope) -> list[Cell]:
        """The cells of a scope that the table has."""
        table = self.table
        return [
            cell
            for cell in product(scope.groups or table.groups, scope.trials or table.trials, scope.colors or table.colors)
            if cell in self._cells
        ]

    def covered(self, scope: Scope) -> frozenset[Cell]:
        """As ``cells``, in no order."""
        found = self._cells_of.get(scope)
        if found is None:
            found = self._cells_of[scope] = frozenset(self.cells(scope))
        return found

    def missing(self, scope: Scope) -> list[Cell]:
        """The cells of a scope whose result was never taken: told as absent, or of a trial in which the group has no row at all."""
        table = self.table
        return [
            cell
            for cell in product(scope.groups or table.groups, scope.trials or table.trials, scope.colors or table.colors)
            if cell not in self._cells and (cell in self._absent or cell[:2] not in self._taken)
        ]

    def total(self, measure: Measure, scope: Scope) -> int:
        """The count over a scope.

        Raises:
            Missing: a result there was never taken, and counts are to be whole.
            NotRead: the table has no result there.
        """
        if measure in BY_TRIAL:  # of the trials that there were
            return self._by_trial(measure, scope)
        if self.whole and (missing := self.missing(scope)):
            raise Missing(missing)
        rows = [self._cells[cell] for cell in self.cells(scope)]
        if not rows:
            raise NotRead("the table has no result there")
        set_up, down = sum(row[0] for row in rows), sum(row[1] for row in rows)
        return set_up if measure == "set_up" else down if measure == "down" else set_up - down

    def number(self, quantity: Quantity) -> Integer:
        """The count over a quantity's scope, as ``total`` has it."""
        found = self._numbers.get(quantity)
        if found is None:
            found = self._numbers[quantity] = Integer(self.total(*quantity))
        return found

    def _by_trial(self, measure: Measure, scope: Scope) -> int:
        """How many trials there were, or in how many of them pins of the target color fell, and no others."""
        cells = self.cells(scope._replace(colors=None))
        fallen: dict[tuple[str, Label], list[str]] = {cell[:2]: [] for cell in cells}
        for cell in cells:
            if self._cells[cell][1]:
                fallen[cell[:2]].append(cell[2])
        if not fallen:
            raise NotRead("the table has no trial there")
        return len(fallen) if measure == "trials" else sum(1 for spot, colors in fallen.items() if colors == [self._targets[spot]])

    def length(self, measured: Measured) -> Rational:
        """The space between pins in one trial of a group.

        Raises:
            NotRead: the table has none there, or several.
        """
        found = [gap for group, trial, gap in self._gaps if (group, trial) == (measured.group, measured.trial)]
        if len(found) != 1 or found[0] is None:
            raise NotRead("the table has no space between pins there")
        return found[0]

    def price(self, price: Price) -> Rational:
        """What an item costs.

        Raises:
            NotRead: it is not on the price list.
        """
        cents = self._prices.get(price.item)
        if cents is None:
            raise NotRead(f"{price.item} is not on the price list")
        return Integer(cents) if price.unit == "cents" else Rational(cents, 100)


def leaves(expr: Expr) -> list[Expr]:
    """Every leaf of an expression, those of its lists too."""
    kind = type(expr)
    if kind is Op:
        return [leaf for part in expr.args for leaf in leaves(part)]  # type: ignore[union-attr]
    if kind is Stat or kind is Ordered or kind is Deviation or kind is Tally:
        return list(expr.series)  # type: ignore[union-attr]
    return [expr]


def quantities(expr: Expr) -> list[Quantity]:
    """Every quantity of the table in an expression."""
    return [leaf for leaf in leaves(expr) if type(leaf) is Quantity]


def evaluate(expr: Expr, counts: Counts) -> Rational:
    """What an expression comes to.

    Raises:
        NotRead: it divides by zero, or speaks of results that the table has not.
    """
    kind = type(expr)
    if kind is Quantity:
        return counts.number(expr)  # type: ignore[arg-type]
    if kind is Measured:
        return counts.length(expr)  # type: ignore[arg-type]
    if kind is Price:
        return counts.price(expr)  # type: ignore[arg-type]
    if kind is Stated:
        return Rational(expr.number, expr.bottom)  # type: ignore[union-attr]
    if kind is Tally:
        return _tally([evaluate(one, counts) for one in expr.series], expr)  # type: ignore[union-attr, arg-type]
    if kind is Deviation:
        raise NotRead("a question asks for no single distance from a mean")
    if kind is Stat or kind is Ordered:
        return _of_list(expr, sorted([evaluate(part, counts) for part in expr.series]))  # type: ignore[union-attr, arg-type]
    if kind is not Op:
        raise NotRead("the question leaves a number unknown")
    return _operation(expr.symbol, [evaluate(part, counts) for part in expr.args])  # type: ignore[union-attr]


def _operation(symbol: str, values: list[Rational]) -> Rational:
    """Left to right, tops and bottoms by themselves."""
    value, *others = values
    if symbol == "opposite":
        return Integer(0) - value
    if symbol == "abs":
        return value if value > 0 else Integer(0) - value
    top, bottom = value.p, value.q
    for other in others:
        if symbol in ("gcf", "lcm"):
            shared = _shared_factor(int(value), int(other))
            return Integer(shared if symbol == "gcf" else int(value) * int(other) // shared)
        if symbol == "/":
            if other.p == 0:
                raise NotRead("there is no part of none")
            top, bottom = top * other.q, bottom * other.p
        elif symbol == "*":
            top, bottom = top * other.p, bottom * other.q
        else:
            more = other.p * bottom
            top, bottom = top * other.q + (more if symbol == "+" else -more), bottom * other.q
    return Rational(top, bottom)


def _shared_factor(one: int, other: int) -> int:
    if one == 0 and other == 0:
        raise NotRead("none and none have no greatest common factor")
    while other:
        one, other = other, one % other
    return one


def _tally(numbers: list[Rational], tally: Tally) -> Rational:
    if tally.test == "digits":
        last, need = (bound.number for bound in tally.bounds)
        return Integer(len([one for one in map(str, numbers) if len([digit for digit in one if digit in "123456789"[:last]]) >= need]))
    signs, *to = [[_side(number, bound) for number in numbers] for bound in tally.bounds]
    if to:
        return Integer(sum(1 for low, high in zip(signs, to[0], strict=True) if low >= 0 >= high))
    return Integer(signs.count({"=": 0, ">": 1, "<": -1}[tally.test]))


def _side(number: Rational, bound: Stated) -> int:
    gap = int(number.p) * bound.bottom - bound.number * int(number.q)
    return (gap > 0) - (gap < 0)


def _of_list(expr: Stat | Ordered, ordered: list[Rational]) -> Rational:
    size = len(ordered)
    if isinstance(expr, Ordered):
        return ordered[expr.place]
    if expr.name == "median":
        return _middle(ordered)
    if expr.name == "range":
        return ordered[-1] - ordered[0]
    if expr.name == "mean":
        return sum(ordered, Integer(0)) / size
    if expr.name == "mean absolute deviation":
        return sum((abs(size * one - sum(ordered)) for one in ordered), Integer(0)) / (size * size)
    below, above = _middle(ordered[: size // 2]), _middle(ordered[(size + 1) // 2 :])
    return {"lower quartile": below, "upper quartile": above, "interquartile range": above - below}[expr.name]


def _middle(ordered: list[Rational]) -> Rational:
    size = len(ordered)
    return (ordered[(size - 1) // 2] + ordered[size // 2]) / Integer(2)


def answer(goal: Goal, counts: Counts) -> Rational | str:
    """A number, the label whose value beats every other, "true" or "false", "7 r 1", or "1 * 12, 2 * 6".

    Raises:
        NotRead: as ``evaluate``, or two labels tie.
    """
    if isinstance(goal, Same):
        return _same_expression(goal, counts)
    if isinstance(goal, Truth):
        return "true" if _is_true(goal, counts) else "false"
    if isinstance(goal, QuotientRemainder):
        return _in_groups(goal, counts)
    if isinstance(goal, Listing):
        return _all_pairs(goal, counts)
    if isinstance(goal, Changes):
        return _changes(goal, counts)
    if isinstance(goal, Chosen):
        return ", ".join(_sums(goal, counts)) or "none"
    if not isinstance(goal, Choice):
        return evaluate(goal.expr, counts)
    values = [evaluate(expr, counts) for expr in goal.exprs]
    best = max(values) if goal.most else min(values)
    labels = [label for label, value in zip(goal.labels, values, strict=True) if value == best]
    if len(labels) != 1:
        raise Tie(tuple(labels))
    return labels[0]


def _same_expression(goal: Same, counts: Counts) -> str:
    """Tried with a small and a large number for the letter: straight lines that meet twice are one."""
    fitting = []
    for label, option in zip(goal.labels, goal.options, strict=True):
        gap = Op("-", (option, goal.target))
        if all(evaluate(with_number(gap, number), counts) == 0 for number in (5, 400)):
            fitting.append(label)
    if len(fitting) != 1:
        raise NotRead("no single expression fits the story")
    return fitting[0]


def _is_true(goal: Truth, counts: Counts) -> bool:
    left, right = evaluate(goal.left, counts), evaluate(goal.right, counts)
    match goal.test:
        case "=":
            return bool(left == right)
        case ">":
            return bool(left > right)
        case "<":
            return bool(left < right)
    if not left.is_integer or left <= 0 or right <= 0:
        raise NotRead("only whole numbers can be put in equal groups")
    return bool((left / right).is_integer) == (goal.test == "multiple")


def _in_groups(goal: QuotientRemainder, counts: Counts) -> Rational | str:
    amount, size = evaluate(goal.amount, counts), evaluate(goal.size, counts)
    if not amount.is_integer or not size.is_integer or amount <= 0 or size <= 0:
        raise NotRead("only whole numbers can be put in equal groups")
    full = int(amount) // int(size)
    over = int(amount) - full * int(size)
    if goal.want == "both":
        return f"{full} r {over}"
    return Integer(over if goal.want == "over" else full if goal.want == "full" or not over else full + 1)


def _all_pairs(goal: Listing, counts: Counts) -> str:
    whole = Integer(1) if goal.whole is None else evaluate(goal.whole, counts)
    number = evaluate(goal.amount, counts) * whole
    if not number.is_integer or number < 1:
        raise NotRead("only the pairs of a whole number can be listed")
    pairs = ((one, number / one if goal.symbol == "*" else number - one) for one in range(1, int(number) + 1))
    kept = [(one, other) for one, other in takewhile(lambda pair: pair[0] <= pair[1], pairs) if other.is_integer]
    return ", ".join(f"{one} * {other}" if goal.whole is None else f"{one}/{whole} + {other}/{whole}" for one, other in kept)


def _changes(goal: Changes, counts: Counts) -> str:
    """By trying: each number is put one up or down until the total or the mean is right, or no count is left; "none" where none will do."""
    numbers = [int(evaluate(one, counts)) for one in goal.series]
    most, wanted = int(evaluate(goal.most, counts)), int(evaluate(goal.to, counts)) * (len(numbers) if goal.name == "mean" else 1)
    step = 1 if sum(numbers) < wanted else -1
    found = []
    for old in numbers:
        new, rest = old, sum(numbers) - old
        while 0 <= new <= most and rest + new != wanted:
            new += step
        if 0 <= new <= most and new != old:
            found.append(f"{old} to {new}")
    return ", ".join(found) or "none"


def _sums(goal: Chosen, counts: Counts) -> list[str]:
    """Each number in turn is taken or left, as long as too many are not taken."""
    numbers = [evaluate(one, counts) for one in goal.options]
    found: list[str] = []

    def go_on(place: int, taken: tuple[str, ...], rest: Rational) -> None:
        if len(taken) == goal.size:
            if rest == 0:
                found.append(" + ".join(taken))
        elif place < len(numbers):
            go_on(place + 1, (*taken, goal.labels[place]), rest - numbers[place])
            go_on(place + 1, taken, rest)

    go_on(0, (), evaluate(goal.total, counts))
    return found
