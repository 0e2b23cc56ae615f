"""The worked steps of an ask: one true equality a line, and beside them the lines that a teacher writes on the board.

Numbers are pairs of whole numbers (top, bottom) as they are written, so 9/12 stays 9/12. Counts are read cell by cell here;
nothing is taken from ``trials.totals`` or from ``asks.evaluate``.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import combinations, pairwise
from math import gcd, lcm
from typing import NamedTuple

from mathgen.asks.expression import (
    DOLLAR,
    PAIR,
    Ask,
    Changes,
    Choice,
    Chosen,
    Equation,
    Expr,
    Listing,
    Measured,
    Op,
    Price,
    Quantity,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    Tally,
    Truth,
    Value,
    Want,
)
from mathgen.asks.relation import relation
from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal, period
from mathgen.exact.parse import written
from mathgen.trials.scope import BY_TRIAL, Measure
from mathgen.trials.table import Row, TrialTable

_QUOTIENTS = 5  # the grade in which a quotient is a fraction: 5.NF.B.3
_BELOW_ZERO = 7  # in which 11 - 16 is worked out: 7.NS.A.1
_MIXED = ("mixed", "mixed:any")
_TOO_LONG = 1000  # 3120/12 is no help on the way


class Number(NamedTuple):
    """A number as written: its value top/bottom, and its text."""

    top: int
    bottom: int
    text: str


def _whole(number: int) -> Number:
    return Number(number, 1, str(number))


def _over(top: int, bottom: int) -> Number:
    return Number(top, bottom, f"{top}/{bottom}" if bottom != 1 else str(top))


class CellReader:
    """Reads counts cell by cell from one table."""

    def __init__(self, table: TrialTable) -> None:
        self._table = table
        self._cells = {(row.group, row.trial, row.color): row for row in table.rows}
        self._known: dict[Quantity, tuple[int, ...]] = {}
        self.money = bool(table.prices)  # decimals are dollars, with two places

    def parts(self, quantity: Quantity) -> tuple[int, ...]:
        """The count in each cell of the quantity's scope, in table order; of successes 1 or 0 for each trial, of trials 1."""
        if quantity not in self._known:
            groups, trials, colors = quantity.scope
            table = self._table
            if quantity.measure in BY_TRIAL:
                self._known[quantity] = self._trials(quantity)
                return self._known[quantity]
            spots = (
                self._cells.get((g, t, c)) for g in groups or table.groups for t in trials or table.trials for c in colors or table.colors
            )
            self._known[quantity] = tuple(_count(row, quantity.measure) for row in spots if row is not None)
        return self._known[quantity]

    def _trials(self, quantity: Quantity) -> tuple[int, ...]:
        marks = []
        for group in quantity.scope.groups or self._table.groups:
            for trial in quantity.scope.trials or self._table.trials:
                rows = [row for color in self._table.colors if (row := self._cells.get((group, trial, color))) is not None]
                fallen = [row.color for row in rows if row.down]
                if rows:
                    marks.append(int(quantity.measure == "trials" or fallen == [rows[0].target]))
        return tuple(marks)

    def price(self, price: Price) -> Number:
        """The price on the list: 25, or 0.25."""
        [cents] = [one.cents for one in self._table.prices if one.item == price.item]
        return _whole(cents) if price.unit == "cents" else Number(cents, 100, f"{cents // 100}.{cents % 100:02}")

    def length(self, measured: Measured) -> Number:
        """The length that stands in the rows of one trial of a group, as a mixed number."""
        found = {row.gap_inches for (group, trial, _), row in self._cells.items() if (group, trial) == (measured.group, measured.trial)}
        [inches] = found
        if inches is None:
            raise TypeError(f"nothing was measured for {measured}")
        return mixed(int(inches.p), int(inches.q))


def _count(row: Row, measure: Measure) -> int:
    if measure == "down":
        return row.down
    return row.set_up if measure == "set_up" else row.set_up - row.down


class Working:
    """The lines of one ask's working. ``printed`` holds what the words print, and how: ``{rate: "75%"}``.

    ``lines`` are equalities only, as short as can be; ``board`` is the same working as a teacher writes it for a grade.
    """

    def __init__(self, reader: CellReader, printed: dict[Expr, str], grade: int = 8) -> None:
        self.lines: list[str] = []
        self.board: list[str] = []
        self.ends: list[Number] = []  # what the goal compares, as it was written last
        self.money = reader.money
        self._reader = reader
        self._printed = printed
        self._grade = grade

    def line(self, left: str, right: str, *on_board: str) -> None:
        """An equality; ``on_board`` is how a teacher writes it, where not in the same way."""
        text = f"{left} = {right}"
        if left != right and text not in self.lines:
            self.lines.append(text)
            self.board += on_board or (text,)

    def tell(self, text: str) -> None:
        """A line for the board alone."""
        self.board.append(text)

    def number(self, expr: Expr) -> Number:
        """The value of an expression; every operation on the way writes its line."""
        kind = type(expr)
        if kind is Quantity:
            return self._count(expr)  # type: ignore[arg-type]
        if kind is Measured:
            return self._reader.length(expr)  # type: ignore[arg-type]
        if kind is Price:
            return self._reader.price(expr)  # type: ignore[arg-type]
        if kind is Stated:
            if expr.meaning == "percent":  # type: ignore[union-attr]
                self.line(f"{expr.number}%", f"{expr.number}/{expr.bottom}")  # type: ignore[union-attr]
            return mixed(expr.number, expr.bottom)  # type: ignore[union-attr]
        if kind is Tally:
            return self._tally(expr)  # type: ignore[arg-type]
        if kind is Stat:
            return self._statistic(expr)  # type: ignore[arg-type]
        if kind is not Op:
            raise TypeError(f"no working for {expr}")
        return self._op(expr)  # type: ignore[arg-type]

    def _count(self, quantity: Quantity) -> Number:
        parts = self._reader.parts(quantity)
        total = _whole(sum(parts))
        if quantity not in self._printed and quantity.measure not in ("set_up", "trials") and len(parts) > 1:
            self.line(" + ".join(map(str, parts)), total.text)
        return total

    def _tally(self, tally: Tally) -> Number:
        """Ticks off the lengths, counts or runs that are meant, one by one: 1 + 1 + 1 = 3."""
        numbers = list(map(self.number, tally.series))
        bounds = list(map(self.number, tally.bounds))
        if tally.test == "digits":
            last, need = (bound.top for bound in bounds)
            meant = [sum(1 for digit in one.text if 0 < int(digit) <= last) >= need for one in numbers]
        else:
            apart, *over = [[one.top * than.bottom - than.top * one.bottom for one in numbers] for than in bounds]
            meant = [gap == 0 if tally.test == "=" else gap < 0 if tally.test == "<" else gap > 0 for gap in apart]
            if over:
                meant = [gap >= 0 >= beyond for gap, beyond in zip(apart, over[0], strict=True)]
        found = sum(meant)
        if tally not in self._printed and found > 1:
            counted = _listed([one for one, it_is in zip(numbers, meant, strict=True) if it_is])
            self.line(" + ".join(["1"] * found), str(found), f"count {counted}: {found}")
        return _whole(found)

    def _statistic(self, stat: Stat) -> Number:
        numbers = [self.number(one) for one in stat.series]
        if isinstance(stat.series[0], Measured):
            return self._of_lengths(stat.name, numbers)
        if stat.name == "mean":
            return self._mean(numbers)
        if stat.name == "mean absolute deviation":
            return self._mean_deviation(numbers)
        rising = sorted(numbers, key=_by_size(numbers))
        if stat.name == "range":
            return self._apart(rising[-1], rising[0])
        self.tell(f"in order: {_listed(rising)}")
        if stat.name == "median":
            return self._median(numbers, True)
        half = len(rising) // 2
        lower, upper = rising[:half], rising[-half:]
        if stat.name != "interquartile range":
            return self._of_half(lower, "lower", True) if stat.name == "lower quartile" else self._of_half(upper, "upper", True)
        ends = self._of_half(upper, "upper", False), self._of_half(lower, "lower", False)
        return self._apart(*ends)

    def _of_half(self, numbers: list[Number], which: str, told: bool) -> Number:
        self.tell(f"{which} half: {_listed(numbers)}")
        return self._median(numbers, told)

    def _of_lengths(self, name: str, numbers: list[Number]) -> Number:
        """The widest less the narrowest, or an equal share of all, in fractions of an inch."""
        if name == "range":
            bottom = lcm(*(one.bottom for one in numbers))
            rising = sorted(numbers, key=lambda one: one.top * (bottom // one.bottom))
            return self._sum_or_difference("-", [rising[-1], rising[0]])
        total = self._sum_or_difference("+", numbers)
        whole = mixed(total.top // gcd(total.top, total.bottom), total.bottom // gcd(total.top, total.bottom))
        self.line(total.text, whole.text, *_apiece(total.top, total.bottom))
        return self._quotient(whole, _whole(len(numbers)))

    def _mean_deviation(self, numbers: list[Number]) -> Number:
        """How far each number is from the mean, and the mean of that. A distance that comes twice is worked out once."""
        mean = self._mean(numbers)
        far = [self._apart(*((mean, one) if one.top * mean.bottom < mean.top * one.bottom else (one, mean))) for one in numbers]
        self.tell(f"distances from {mean.text}: {_listed(far)}")
        return self._mean(far)

    def _apart(self, greater: Number, less: Number) -> Number:
        top, bottom = greater.top * less.bottom - less.top * greater.bottom, greater.bottom * less.bottom
        shared = gcd(top, bottom)
        decimal = terminating(top, bottom)
        text = decimal if decimal is not None else _over(top // shared, bottom // shared).text
        self.line(f"{greater.text} - {less.text}", text)
        return Number(top // shared, bottom // shared, text)

    def _mean(self, numbers: list[Number]) -> Number:
        bottom = lcm(*(one.bottom for one in numbers))
        if bottom > 1:
            return self._mean_of_parts(numbers, bottom)
        total = sum(one.top for one in numbers)
        self.line(" + ".join(one.text for one in numbers), str(total))
        count = len(numbers)
        decimal = terminating(total, count)
        if decimal is None:
            return self._quotient(_whole(total), _whole(count))
        # By the grade that asks for a mean, pupils divide on into tenths: 13 / 4 = 3.25, not 13/4 first.
        self.line(f"{total} / {count}", decimal)
        return _whole(total // count) if total % count == 0 else Number(total, count, decimal)

    def _mean_of_parts(self, numbers: list[Number], bottom: int) -> Number:
        """The mean of decimals."""
        top, count = sum(one.top * (bottom // one.bottom) for one in numbers), len(numbers)
        total, mean = terminating(top, bottom), terminating(top, bottom * count)
        if total is None or mean is None:
            raise TypeError("no working for the mean of numbers that do not end")
        self.line(" + ".join(one.text for one in numbers), total)
        self.line(f"{total} / {count}", mean)
        return Number(top, bottom * count, mean)

    def _median(self, numbers: list[Number], told: bool) -> Number:
        """Crosses off the least and the greatest, pair by pair, as a pupil does, until one or two numbers stay.

        ``told``: whether a single number in the middle is put down as the answer.
        """
        numbers = list(numbers)
        while len(numbers) > 2:
            numbers.remove(min(numbers))
            numbers.remove(max(numbers))
        if len(numbers) == 1:
            if told:  # nothing is worked out: the one number in the middle is the median
                self.lines.append(f"{numbers[0].text} = {numbers[0].text}")
            self.tell(f"the middle number is {numbers[0].text}")
            return numbers[0]
        numbers.sort()
        total = sum(one.top for one in numbers)
        self.line(" + ".join(one.text for one in numbers), str(total))
        halfway = terminating(total, 2)
        assert halfway is not None
        self.line(f"{total} / 2", halfway)
        return _whole(total // 2) if total % 2 == 0 else Number(total, 2, halfway)

    def pairs(self, number: int) -> None:
        """A number as a double, or a double and one more: 3 + 3 + 1 = 7. Nothing is divided before grade 3."""
        half, over = divmod(number, 2)
        self.line(f"{half} + {half}{' + 1' if over else ''}", str(number))

    def groups(self, number: int, size: int, want: Want = "both") -> None:
        """The most full groups, and what is over: 3 * 5 = 15, 17 - 15 = 2; then what is wanted of it."""
        count, over = divmod(number, size)
        self.line(f"{count} * {size}", str(count * size))
        if over:
            self.line(f"{number} - {count * size}", str(over))
        if want == "full":
            self.line(f"{count * size} / {size}", str(count))
        elif want == "needed" and over:
            self.line(f"{count} + 1", str(count + 1))
        elif want == "needed":
            self.tell(f"{number} / {size} = {count}")
        elif want == "over" and not over:
            self.tell(f"{number} - {count * size} = 0")

    def factor_pairs(self, number: int) -> None:
        """Each pair that a number is the product of: 1 * 12 = 12, 2 * 6 = 12, 3 * 4 = 12."""
        for one in range(1, number + 1):
            if one * one <= number and number % one == 0:
                self.line(f"{one} * {number // one}", str(number))

    def changes(self, goal: Changes) -> None:
        """The total that is wanted, how far it is from the one there is, and each number that can change by as much: 8 + 3 = 11."""
        numbers = [self.number(one).top for one in goal.series]
        total, wanted, most = sum(numbers), self.number(goal.wanted).top, self.number(goal.most).top
        self.line(" + ".join(map(str, numbers)), str(total))
        more = wanted > total
        sign, change = ("+", wanted - total) if more else ("-", total - wanted)
        self.line(f"{wanted} - {total}" if more else f"{total} - {wanted}", str(change))
        for one in numbers:
            new = one + wanted - total
            if 0 <= new <= most:
                self.line(f"{one} {sign} {change}", str(new))

    def chosen(self, goal: Chosen) -> None:
        """All over one bottom number, then each sum that is right: 2/3 = 8/12, 8/12 + 5/12 + 7/12 = 20/12."""
        *numbers, total = map(self.number, goal.exprs)
        _same_bottoms(self, [*numbers, total])
        bottom = lcm(total.bottom, *(one.bottom for one in numbers))
        tops = [one.top * (bottom // one.bottom) for one in numbers]
        wanted = total.top * (bottom // total.bottom)
        for some in combinations(tops, goal.size):
            if sum(some) == wanted:
                self.line(" + ".join(f"{top}/{bottom}" for top in some), f"{wanted}/{bottom}")

    def splits(self, amount: Number, whole: Number) -> None:
        """Each way to split a part of a whole in two: 1/8 + 4/8 = 5/8, 2/8 + 3/8 = 5/8."""
        top = amount.top * whole.top // amount.bottom
        for one in range(1, top // 2 + 1):
            self.line(f"{one}/{whole.text} + {top - one}/{whole.text}", f"{top}/{whole.text}")

    def ratio(self, first: Expr, second: Expr) -> None:
        """Puts down two numbers as a ratio. Nothing is divided: 18 to 6 stays 18/6."""
        a, b = self.number(first), self.number(second)
        if b.top:  # a ratio to nothing has no line: the proof finds that the working does not end
            self.line(f"{a.text} / {b.text}", f"{a.text}/{b.text}", f"{a.text} to {b.text}: {a.text}:{b.text}")

    def _op(self, expr: Op) -> Number:
        symbol = expr.symbol
        if expr in self._printed and symbol in "-/":
            return self._rate(expr, self._printed[expr])
        if symbol == "opposite":
            return self._opposite(expr.args[0])
        if symbol == "abs":
            return self._size(self.number(expr.args[0]))
        if symbol in ("gcf", "lcm"):
            return self._common(symbol, *map(self.number, expr.args))
        if symbol == "/":
            part, whole = map(self.number, expr.args)
            return self._quotient(part, whole, self._named(part, whole) if _counted_out_of(expr.args[1]) else "")
        numbers = [self.number(arg) for arg in expr.args]
        if symbol == "*":
            return self._product(numbers)
        return self._sum_or_difference(symbol, numbers)

    def _size(self, number: Number) -> Number:
        """The absolute value: ``|-3| = 3``."""
        result = _over(abs(number.top), number.bottom)
        self.line(f"|{number.text}|", result.text)
        return result

    def _opposite(self, expr: Expr) -> Number:
        """The opposite, ``-(3) = -3``. Of a difference a teacher takes the greater number from the less, where the grade knows how."""
        number = self.number(expr)
        result = _over(-number.top, number.bottom)
        told = f"the opposite of {number.text} is {result.text}"
        if isinstance(expr, Op) and expr.symbol == "-" and len(expr.args) == 2 and number.top > 0 and self.board:
            turned, _, _ = self.board[-1].partition(" = ")
            greater, _, less = turned.partition(" - ")
            if self._grade >= _BELOW_ZERO:
                self.board.pop()
                told = f"{less.strip('()')} - {f'({greater})' if greater[0] == '-' else greater} = {result.text}"
            else:
                told = f"{less} is {number.text} less than {greater}, so {result.text}"
        self.line(f"-({number.text})", result.text, told)
        return result

    def _named(self, part: Number, whole: Number) -> str:
        """A part and its whole put down as a fraction. Dividing 5 by 8 is not known before grade 5."""
        if part.top >= whole.top or (part.bottom, whole.bottom) != (1, 1):
            return ""
        among = f"of {whole.text} equal parts" if self._grade < _QUOTIENTS else f"out of {whole.text}"
        return f"{part.text} {among}: {part.text}/{whole.text}"

    def _common(self, symbol: str, one: Number, other: Number) -> Number:
        """What two whole numbers share: ``24 / 2 = 12``, ``36 / 3 = 12``; or what both lead to: ``4 * 3 = 12``, ``6 * 2 = 12``."""
        shared = gcd(one.top, other.top)
        result = _whole(shared if symbol == "gcf" else lcm(one.top, other.top))
        left, right = one.top // shared, other.top // shared
        sign, pair = ("/", (left, right)) if symbol == "gcf" else ("*", (right, left))
        for number, by in zip((one, other), pair, strict=True):
            self.line(f"{number.text} {sign} {by}", result.text)
        return result

    def _sum_or_difference(self, symbol: str, numbers: list[Number]) -> Number:
        numbers = self._alike(numbers)
        tops, bottom = [one.top for one in numbers], numbers[0].bottom
        top = sum(tops) if symbol == "+" else tops[0] - sum(tops[1:])
        decimal = self._decimal(top, bottom) if any("." in one.text for one in numbers) else None
        result = _over(top, bottom) if decimal is None else Number(top, bottom, decimal)
        left = f" {symbol} ".join(one.text for one in numbers)
        first, *rest = (one.text for one in numbers)
        told = f" {symbol} ".join([first, *(f"({one})" if one[0] == "-" else one for one in rest)])
        self.line(left, result.text, *([f"{told} = {result.text}"] if told != left else []))
        return result

    def _alike(self, numbers: list[Number]) -> list[Number]:
        """Numbers over one bottom, ready to be added: 1/4 becomes 3/12, and beside a decimal 0.25; 1 is taken as 12/12."""
        bottom = lcm(*(one.bottom for one in numbers))
        decimals = any("." in one.text for one in numbers)
        mixed_numbers = any(" " in one.text for one in numbers)  # 7 - 2 1/4: 7 is told as 28/4 as well
        alike = []
        for one in numbers:
            same = _over(one.top * (bottom // one.bottom), bottom)
            decimal = self._decimal(one.top, one.bottom) if decimals else None
            if decimal is not None:
                same = same._replace(text=decimal)
            if same.text != one.text and (mixed_numbers or (one.bottom > 1 and (decimals or one.bottom != bottom))):
                self.line(one.text, same.text)
            elif same.text != one.text and (text := f"{one.text} = {same.text}") not in self.board:
                self.tell(text)
            alike.append(same)
        return alike

    def _improper(self, number: Number) -> Number:
        """A mixed number as one fraction: 2 1/4 becomes 9/4."""
        if " " not in number.text:
            return number
        fraction = _over(number.top, number.bottom)
        self.line(number.text, fraction.text)
        return fraction

    def _rate(self, expr: Op, text: str) -> Number:
        """A rate that the words print: 75% becomes the fraction 75/100, a decimal stays as it is, one that repeats becomes a fraction."""
        if text.endswith("..."):
            return self._from_repeating(text)
        if "." in text and not text.endswith("%"):
            whole, _, decimals = text.partition(".")
            return Number(int(whole + decimals), 10 ** len(decimals), text)
        if not text.endswith("%"):
            top, _, bottom = text.partition("/")
            return _over(int(top), int(bottom or "1"))
        whole, _, decimals = text[:-1].partition(".")
        rate = _over(int(whole + decimals), 100 * 10 ** len(decimals))
        self.line(text, rate.text)
        return rate

    def _from_repeating(self, text: str) -> Number:
        """0.41666...: 1000 times less 100 times leaves no repeating digits, and is 900 times the number."""
        exact = written(text).value
        before, length = period(int(exact.q))
        high, low = 10 ** (before + length), 10**before
        more, less = decimal(high * exact), decimal(low * exact)
        whole, times = int(high * exact - low * exact), high - low
        self._unless_there(f"{high} * {text} = {more}", f"x = {text}", f"{high}x = {more}")
        if low > 1:
            self._unless_there(f"{low} * {text} = {less}", f"{low}x = {less}")
        self._unless_there(f"{more} - {less} = {whole}", f"{times}x = {whole}")
        self._unless_there(f"{high} - {low} = {times}")
        return self._quotient(_whole(whole), _whole(times), f"x = {whole}/{times}")

    def _unless_there(self, text: str, *on_board: str) -> None:
        """An equality that a teacher writes with x, or not at all."""
        if text not in self.lines:
            self.lines.append(text)
            self.board += on_board

    def _product(self, numbers: list[Number]) -> Number:
        top, bottom = 1, 1
        numbers = [self._improper(one) for one in numbers]
        for one in numbers:
            top, bottom = top * one.top, bottom * one.bottom
        if any("." in one.text for one in numbers) and (decimal := self._decimal(top, bottom)) is not None and self._reader.money:
            self.line(" * ".join(one.text for one in numbers), decimal)
            return Number(top, bottom, decimal)
        shared = gcd(top, bottom)
        result = mixed(top // shared, bottom // shared)
        left = " * ".join(one.text for one in numbers)
        self.line(left, result.text, *_in_one_fraction(left, top, bottom))
        return result

    def _quotient(self, part: Number, whole: Number, named: str = "") -> Number:
        """``named`` is how the quotient is told where it is a fraction only put down."""
        if not whole.top:  # no line: the proof finds that the working does not end in the answer
            return part
        if part.bottom > 1 or whole.bottom > 1:
            if whole.bottom > 1 and "." not in part.text + whole.text:
                part, whole = self._improper(part), self._improper(whole)
            top, bottom = part.top * whole.bottom, part.bottom * whole.top
            shared = gcd(top, bottom)
            result = mixed(top // shared, bottom // shared)
            left = f"{part.text} / {whole.text}"
            self.line(left, result.text, *self._turned_over(left, part, whole))
            return result
        whole_result = abs(part.top) >= whole.top > 0 and part.top % whole.top == 0
        result = _whole(part.top // whole.top) if whole_result else _over(part.top, whole.top)
        self.line(f"{part.text} / {whole.text}", result.text, *([named] if named else []))
        return result

    def _turned_over(self, left: str, part: Number, whole: Number) -> list[str]:
        """To divide by a fraction is to multiply by it turned over: 1/6 / 5/12 = 1/6 * 12/5."""
        if any("." in one.text or " " in one.text for one in (part, whole)) or part.top <= 0 or whole.top <= 0:
            return []
        top, bottom = part.top * whole.bottom, part.bottom * whole.top
        product = f"{part.text} * {_over(whole.bottom, whole.top).text}"
        return [f"{left} = {product}", f"{product} = {_over(top, bottom).text}", *(_apiece(top, bottom) if bottom > 1 else [])]

    def _decimal(self, top: int, bottom: int) -> str | None:
        """The decimal where it ends; dollars with two places: 0.60."""
        if self._reader.money and 100 * top % bottom == 0:
            cents = 100 * top // bottom
            return f"{cents // 100}.{cents % 100:02}"
        return terminating(top, bottom)

    def finish(self, number: Number, demand: Demand) -> None:
        """Turns the last number into the form that the words demand."""
        top, bottom = number.top, number.bottom
        if demand.form == "percent":
            self._percent(number)
        elif demand.form == "decimal":
            decimal = self._decimal(top, bottom)
            if decimal is not None and number.text != decimal:
                if self._reader.money and bottom == 100:
                    self.line(number.text, decimal)
                    return
                if all(ten % bottom for ten in (10, 100, 1000)):  # 3/24 has to become 1/8 before it becomes 125/1000
                    shared = gcd(top, bottom)
                    top, bottom = top // shared, bottom // shared
                    self.line(number.text, f"{top}/{bottom}")
                    number = _over(top, bottom)
                # The first that does: 2/4 becomes 5/10, not 50/100.
                tenths = next((ten for ten in (10, 100, 1000) if top * ten % bottom == 0), bottom)
                scaled = _over(top * tenths // bottom, tenths)
                self.line(number.text, scaled.text)
                self.line(scaled.text, decimal)
            elif not self.lines:  # a decimal that the words print and that is only to be rounded: 375 thousandths
                self.lines.append(f"{number.text} = {_over(top, bottom).text}")
        elif demand.form in (*_MIXED, "simplest", "fraction"):
            shared = gcd(top, bottom)
            plain = mixed(top // shared, bottom // shared) if demand.form in _MIXED else _over(top // shared, bottom // shared)
            self.line(number.text, plain.text, *(_apiece(top, bottom) if demand.form in _MIXED and "/" in number.text else []))

    def _percent(self, number: Number) -> None:
        """Out of 100 where that is a whole number, by a decimal where it ends, else straight to the mixed percent."""
        shared = gcd(number.top, number.bottom)
        top, bottom = number.top // shared, number.bottom // shared
        result, decimal = percent(top, bottom), terminating(top, bottom)
        if "." in number.text:
            self.line(number.text, result)
        elif 100 % bottom == 0:
            lowest, hundredths = _over(top, bottom), _over(top * 100 // bottom, 100)
            if 100 % number.bottom:  # 9/12 has to become 3/4 before it becomes 75/100
                self.line(number.text, lowest.text)
                number = lowest
            self.line(number.text, hundredths.text)
            self.line(hundredths.text, result)
        elif decimal is None:
            self.line(number.text, result)
        else:
            self.line(number.text, decimal)
            self.line(decimal, result)


def _listed(numbers: list[Number]) -> str:
    return ", ".join(one.text for one in numbers)


def _by_size(numbers: list[Number]) -> Callable[[Number], int]:
    """What to sort numbers by: their tops over one bottom number."""
    bottom = lcm(*(one.bottom for one in numbers))
    return lambda one: one.top * (bottom // one.bottom)


def _counted_out_of(whole: Expr) -> bool:
    """Whether it is a set that a part is counted out of, and not a number of sharers."""
    return isinstance(whole, Quantity | Price) or whole == DOLLAR or (isinstance(whole, Op) and all(map(_counted_out_of, whole.args)))


def _in_one_fraction(left: str, top: int, bottom: int) -> list[str]:
    """A product over one bottom number first: 4 * 21/8 = 84/8, 84/8 = 10 4/8, 10 4/8 = 10 1/2."""
    helps = 0 < top < _TOO_LONG or bottom == 100
    return [f"{left} = {top}/{bottom}", *_apiece(top, bottom)] if bottom > 1 and helps and "." not in left else []


def _apiece(top: int, bottom: int) -> list[str]:
    """A fraction as a mixed number, then that in lowest terms: 84/8 = 10 4/8, 10 4/8 = 10 1/2."""
    whole, rest = divmod(top, bottom)
    forms = [f"{top}/{bottom}"]
    if whole and rest:
        forms.append(f"{whole} {rest}/{bottom}")
    shared = gcd(top, bottom)
    forms.append(mixed(top // shared, bottom // shared).text)
    return [f"{one} = {other}" for one, other in pairwise(forms) if one != other]


def mixed(top: int, bottom: int) -> Number:
    """A fraction in lowest terms as a mixed number where it passes 1."""
    whole, rest = divmod(top, bottom)
    if rest == 0:
        return _whole(whole)
    return Number(top, bottom, f"{whole} {rest}/{bottom}" if whole else f"{rest}/{bottom}")


def terminating(top: int, bottom: int) -> str | None:
    """The decimal of top/bottom where it ends within four places, else None."""
    for places in range(5):
        scaled, rest = divmod(top * 10**places, bottom)
        if rest == 0:
            digits = str(scaled).rjust(places + 1, "0")
            return f"{digits[:-places]}.{digits[-places:]}" if places else digits
    return None


def percent(top: int, bottom: int) -> str:
    """The exact percent of top/bottom: ``62.5%``, or ``41 2/3%`` where the decimal does not end."""
    decimal = terminating(100 * top, bottom)
    if decimal is not None:
        return f"{decimal}%"
    shared = gcd(100 * top, bottom)
    return f"{mixed(100 * top // shared, bottom // shared).text}%"


def school_steps(ask: Ask, reader: CellReader, printed: dict[Expr, str]) -> tuple[str, ...]:
    """Each line of the working, the last one ending in the exact answer.

    Args:
        ask: what is asked.
        reader: of the table.
        printed: expressions that the words print, with the text they print; other counts are read from the table.
    """
    return tuple(worked(ask, reader, printed).lines)


def worked(ask: Ask, reader: CellReader, printed: dict[Expr, str], grade: int = 8) -> Working:
    """The whole working of an ask, with the lines for the board of a grade and the numbers that are compared."""
    working = Working(reader, printed, grade)
    if isinstance(ask.goal, Same):
        return working  # nothing is worked out: the story is put in signs
    if isinstance(ask.goal, Choice):
        numbers = [working.number(expr) for expr in ask.goal.exprs]
        # The one number in the middle of a list is found, not worked out: the comparison says it.
        working.lines = [line for line in working.lines if len(set(line.split(" = "))) > 1]
        working.ends = _same_bottoms(working, numbers)
    elif isinstance(ask.goal, Truth):
        left, right = working.ends = [working.number(expr) for expr in ask.goal.exprs]
        if ask.goal.divides and ask.goal.right == PAIR:
            working.pairs(left.top)
        elif ask.goal.divides:
            working.groups(left.top, right.top)
        elif ask.demand.form == "rubric":  # a reason is to be given: both sides are made ready to compare
            stated = ask.goal.right if isinstance(ask.goal.right, Stated) and ask.goal.right.meaning == "claimed percent" else None
            if stated is not None and isinstance(ask.goal.left, Op) and isinstance(ask.goal.left.args[0], Op):
                told = percent(left.top, left.bottom)  # a change is told as a percent
                working.line(left.text, told)
                working.ends = [left._replace(text=told), right._replace(text=f"{stated.number}%")]
            else:
                if stated is not None:
                    working.line(f"{stated.number}%", right.text)
                working.ends = _same_bottoms(working, [left, right])
        elif "." in left.text and "." in right.text:
            working.ends = _same_bottoms(working, [left, right])
    elif isinstance(ask.goal, QuotientRemainder):
        amount, size = working.ends = [working.number(expr) for expr in ask.goal.exprs]
        if ask.goal.size == PAIR:
            working.pairs(amount.top)
        else:
            working.groups(amount.top, size.top, ask.goal.want)
    elif isinstance(ask.goal, Listing):
        amount, *rest = (working.number(expr) for expr in ask.goal.exprs)
        if rest:
            working.splits(amount, rest[0])
        else:
            working.factor_pairs(amount.top)
    elif isinstance(ask.goal, Changes):
        working.changes(ask.goal)
    elif isinstance(ask.goal, Chosen):
        working.chosen(ask.goal)
    elif isinstance(ask.goal, Ratio):
        working.ratio(ask.goal.first, ask.goal.second)
    elif isinstance(ask.goal.expr, Quantity) or (ask.given and _by_undoing(relation(ask))):
        _isolate(working, relation(ask))
    elif isinstance(ask.goal.expr, Price):
        price = working.number(ask.goal.expr)  # "What fraction of a dollar is $0.35?"
        working.line(price.text, f"{price.top}/{price.bottom}")
    else:
        # A length is told as a ruler shows it: 2 2/4 inches are 2 1/2 inches.
        working.finish(working.number(ask.goal.expr), Demand("mixed") if _of_lengths(ask.goal.expr) else ask.demand)
    if ask.demand.form == "whole" and ask.demand.places is not None and not working.lines and isinstance(ask.goal, Value):
        # A number that the words give and that is only to be rounded: nothing is worked out.
        given = working.number(ask.goal.expr).text
        working.lines.append(f"{given} = {given}")
    return working


def _of_lengths(expr: Expr) -> bool:
    if isinstance(expr, Stat):
        return isinstance(expr.series[0], Measured)
    return isinstance(expr, Measured) or (isinstance(expr, Op) and any(map(_of_lengths, expr.args)))


def _same_bottoms(working: Working, numbers: list[Number]) -> list[Number]:
    """Rewrites fractions to one bottom number, so that tops can be compared; decimals to as many places."""
    alike = side_by_side(numbers)
    for one, same in zip(numbers, alike, strict=True):
        working.line(one.text, same.text)
    return alike


def side_by_side(numbers: list[Number]) -> list[Number]:
    """The numbers over one bottom number, or with as many places."""
    places = max(len(one.text.partition(".")[2]) for one in numbers)
    if places:
        padded = [one.text + "0" * (places - len(one.text.partition(".")[2])) for one in numbers]
        return [one._replace(text=text) if "." in text else one for one, text in zip(numbers, padded, strict=True)]
    ready = [one for one in numbers if "/" in one.text or one.bottom == 1]  # a mean that comes out whole is ready
    bottom = lcm(*(one.bottom for one in ready))
    return [_over(one.top * (bottom // one.bottom), bottom) if one in ready and one.bottom != bottom else one for one in numbers]


def _by_undoing(equation: Equation) -> bool:
    """Whether the unknown stands in one place, with nothing but sums and products around it: what is done to it can be undone."""
    sides = [side for side in equation if _unknown(side)]
    if len(sides) != 1:
        return False  # x on both sides is collected first: the goal says how
    side = sides[0]
    while isinstance(side, Op):
        inner = [arg for arg in side.args if _unknown(arg)]
        if len(inner) != 1 or side.symbol not in "+*":
            return False
        side = inner[0]
    return True


def _isolate(working: Working, equation: Equation) -> None:
    """Solves ``known = unknown side`` as a pupil would: work out the known side, then undo what is done to the unknown."""
    left, right = equation
    unknown, known = (left, right) if _unknown(left) else (right, left)
    result = working.number(known)
    while isinstance(unknown, Op):
        others = [arg for arg in unknown.args if not _unknown(arg)]
        inner = next(arg for arg in unknown.args if _unknown(arg))
        other = working.number(others[0] if len(others) == 1 else Op(unknown.symbol, tuple(others)))
        if unknown.symbol == "+":
            result_next = _whole(result.top - other.top)
            working.line(f"{result.text} - {other.text}", result_next.text)
        elif unknown.symbol == "-" and _unknown(unknown.args[0]):
            result_next = _whole(result.top + other.top)
            working.line(f"{result.text} + {other.text}", result_next.text)
        elif unknown.symbol == "-":
            result_next = _whole(other.top - result.top)
            working.line(f"{other.text} - {result.text}", result_next.text)
        elif unknown.symbol == "*":
            result_next = _over(result.top // other.top, 1) if result.top % other.top == 0 else _over(result.top, other.top)
            working.line(f"{result.text} / {other.text}", result_next.text)
        else:
            raise TypeError(f"cannot undo {unknown.symbol}")
        result, unknown = result_next, inner


def _unknown(expr: Expr) -> bool:
    if isinstance(expr, Op):
        return any(map(_unknown, expr.args))
    return not isinstance(expr, Quantity | Measured | Price | Stated | Stat | Tally)
