"""The working of an expression: its value, and a line for every operation on the way."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from mathgen.asks.expression import DOLLAR, Expr, Measured, Op, Price, Quantity, Stat, Stated, Tally
from mathgen.asks.steps import products
from mathgen.asks.steps.cell_reader import CellReader
from mathgen.asks.steps.centers import statistic, statistic_of_lengths
from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.rates import rate
from mathgen.asks.steps.sums import sum_or_difference
from mathgen.asks.steps.written_number import Number, listed, mixed, over, whole

_BELOW_ZERO = 7  # the grade in which 11 - 16 is worked out: 7.NS.A.1


class Working(Lines):
    """The lines of one ask's working. ``printed`` holds what the words print, and how: ``{rate: "75%"}``.

    ``lines`` are equalities only, as short as can be; ``board`` is the same working as a teacher writes it for a grade.
    """

    def __init__(self, reader: CellReader, printed: dict[Expr, str], grade: int = 8) -> None:
        super().__init__(reader.money, grade)
        self.ends: list[Number] = []  # what the goal compares, as it was written last
        self.reader = reader
        self.printed = printed

    def number(self, expr: Expr) -> Number:
        """The value of an expression; every operation on the way writes its line."""
        work = _BY_KIND.get(type(expr))
        if work is None:
            raise TypeError(f"no working for {expr}")
        return work(self, expr)


def _count(working: Working, quantity: Quantity) -> Number:
    parts = working.reader.parts(quantity)
    total = whole(sum(parts))
    if quantity not in working.printed and quantity.measure not in ("set_up", "trials") and len(parts) > 1:
        working.line(" + ".join(map(str, parts)), total.text)
    return total


def _stated(working: Working, stated: Stated) -> Number:
    if stated.meaning == "percent":
        working.line(f"{stated.number}%", f"{stated.number}/{stated.bottom}")
    return mixed(stated.number, stated.bottom)


def _tally(working: Working, tally: Tally) -> Number:
    """Ticks off the lengths, counts or runs that are meant, one by one: 1 + 1 + 1 = 3."""
    numbers = list(map(working.number, tally.series))
    bounds = list(map(working.number, tally.bounds))
    if tally.test == "digits":
        last, need = (bound.top for bound in bounds)
        meant = [sum(1 for digit in one.text if 0 < int(digit) <= last) >= need for one in numbers]
    else:
        apart, *over_it = [[one.top * than.bottom - than.top * one.bottom for one in numbers] for than in bounds]
        meant = [gap == 0 if tally.test == "=" else gap < 0 if tally.test == "<" else gap > 0 for gap in apart]
        if over_it:
            meant = [gap >= 0 >= beyond for gap, beyond in zip(apart, over_it[0], strict=True)]
    found = sum(meant)
    if tally not in working.printed and found > 1:
        counted = listed([one for one, it_is in zip(numbers, meant, strict=True) if it_is])
        working.line(" + ".join(["1"] * found), str(found), f"count {counted}: {found}")
    return whole(found)


def _statistic(working: Working, stat: Stat) -> Number:
    work = statistic_of_lengths if isinstance(stat.series[0], Measured) else statistic
    return work(working, stat.name, [working.number(one) for one in stat.series])


def _op(working: Working, expr: Op) -> Number:
    symbol = expr.symbol
    if symbol in "-/" and expr in working.printed:
        return rate(working, working.printed[expr])
    if symbol == "opposite":
        return _opposite(working, expr.args[0])
    numbers = [working.number(arg) for arg in expr.args]
    if symbol == "/":
        part, by = numbers
        return products.part_of_whole(working, part, by) if _counted_out_of(expr.args[1]) else products.quotient(working, part, by)
    if symbol == "*":
        return products.product(working, numbers)
    if symbol in "+-":
        return sum_or_difference(working, symbol, numbers)
    return _OF_NUMBERS[symbol](working, *numbers)


def _size(working: Working, number: Number) -> Number:
    """The absolute value: ``|-3| = 3``."""
    result = over(abs(number.top), number.bottom)
    working.line(f"|{number.text}|", result.text)
    return result


def _opposite(working: Working, expr: Expr) -> Number:
    """The opposite, ``-(3) = -3``. Of a difference a teacher takes the greater number from the less, where the grade knows how."""
    number = working.number(expr)
    result = over(-number.top, number.bottom)
    told = f"the opposite of {number.text} is {result.text}"
    if isinstance(expr, Op) and expr.symbol == "-" and len(expr.args) == 2 and number.top > 0 and working.board:
        turned, _, _ = working.board[-1].partition(" = ")
        greater, _, less = turned.partition(" - ")
        if working.grade >= _BELOW_ZERO:
            working.board.pop()
            told = f"{less.strip('()')} - {f'({greater})' if greater[0] == '-' else greater} = {result.text}"
        else:
            told = f"{less} is {number.text} less than {greater}, so {result.text}"
    working.line(f"-({number.text})", result.text, told)
    return result


def _counted_out_of(among: Expr) -> bool:
    """Whether it is a set that a part is counted out of, and not a number of sharers."""
    return isinstance(among, Quantity | Price) or among == DOLLAR or (isinstance(among, Op) and all(map(_counted_out_of, among.args)))


_BY_KIND: dict[type, Callable[[Working, Any], Number]] = {
    Quantity: _count,
    Measured: lambda working, measured: working.reader.length(measured),
    Price: lambda working, price: working.reader.price(price),
    Stated: _stated,
    Tally: _tally,
    Stat: _statistic,
    Op: _op,
}
_OF_NUMBERS: dict[str, Callable[..., Number]] = {"abs": _size, "gcf": products.shared_factor, "lcm": products.shared_multiple}
