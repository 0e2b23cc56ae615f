"""The steps as a teacher writes them on the board: the working, and then how it ends in the answer.

A rounding names the two numbers between which a number lies, and the nearer one; a choice and a verdict end in a comparison.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise
from math import lcm

from sympy import Rational

from mathgen.asks.algebra import in_words, solved
from mathgen.asks.expression import ASSOCIATIONS, NOTHING, OF_TWO, PAIR, Ask, Choice, Expr, Op, QuotientRemainder, Same, Stat, Truth, Value
from mathgen.asks.point_order import order_lines, points_in_order
from mathgen.asks.relation import relation
from mathgen.asks.steps.by_goal import worked
from mathgen.asks.steps.cell_reader import CellReader
from mathgen.asks.steps.working import Working
from mathgen.asks.steps.written_number import Number, lowest, over, side_by_side
from mathgen.exact.demand import Demand
from mathgen.exact.forms import cut_decimal, fraction
from mathgen.exact.rounding import rounded_text

_EQUATIONS = 6  # the grade of 6.EE.B.7
_END = re.compile(" = |, so |: | is ")  # what stands before the result of a line


def board_lines(ask: Ask, reader: CellReader, printed: dict[Expr, str], grade: int, exact: Rational | str, shown: str) -> tuple[str, ...]:
    """Each line of the board, the last one ending in the answer.

    Args:
        ask: what is asked.
        reader: of the table.
        printed: expressions that the words print, with the text they print; other counts are read from the table.
        grade: how much the lines may take for known.
        exact: the answer, not rounded; or the name as the table has it.
        shown: the answer as the key prints it.
    """
    goal = ask.goal
    if isinstance(goal, Same):
        told = in_words(goal.target, _whole(reader, printed), bool(re.search("[<>]", shown)))
        return (f"{told}: {shown}",) if told else ()
    if isinstance(goal, Choice | Truth) and (scaled := scaled_by(goal)) is not None:
        return _scaling(printed[scaled], _printed(goal.exprs[1], reader, printed), _verdict(goal, shown))
    if isinstance(goal, Truth) and goal.right == NOTHING and isinstance(goal.left, Stat):
        told = "the answers vary" if exact == "true" else "there is only one answer"
        return (f"{told}, so {_verdict(goal, shown)}",)
    if isinstance(goal, Choice) and goal.labels == OF_TWO:
        return (f"the answers to the {exact} question vary, so {_verdict(goal, shown)}",)
    if isinstance(goal, Choice) and goal.labels == ASSOCIATIONS:
        return (*_along(goal, reader, printed), f"y is {'greater' if exact == 'positive' else 'less'} for wider spaces, so {shown}")
    if isinstance(goal, Choice) and (points := points_in_order(goal)):
        return order_lines(tuple(_printed(one, reader, printed) for one in points), goal.most, shown)
    working = worked(ask, reader, printed, grade)
    if isinstance(goal, Truth) and goal.divides:
        _shared_out(working, goal)
        working.board[-1] += f", so {_verdict(goal, shown)}"
    elif isinstance(goal, Choice | Truth):
        repeating = any(text.endswith("...") for text in printed.values())
        _compare(working, goal, _verdict(goal, shown), lowest=repeating and isinstance(goal, Truth))
    elif isinstance(goal, QuotientRemainder) and goal.size == PAIR and goal.want == "full":
        working.board[-1] += f", so {shown}"
    elif isinstance(exact, Rational) and isinstance(goal, Value):
        _finish(working, ask, exact, shown)
        if ask.given and grade >= _EQUATIONS and ask.demand.places is None:
            _in_x(working, ask, reader, printed, grade)
    return tuple(working.board)


def _in_x(working: Working, ask: Ask, reader: CellReader, printed: dict[Expr, str], grade: int) -> None:
    """The equation that the words tell, and x; from grade 7 on it is solved step by step, after what was worked out in numbers."""
    lines = solved(relation(ask), _whole(reader, printed))
    if lines and grade > _EQUATIONS:
        working.board += lines
    elif lines and lines[-1].startswith("x = "):
        working.board = [lines[0], *working.board, lines[-1]]


def _whole(reader: CellReader, printed: dict[Expr, str]) -> Callable[[Expr], int | None]:
    def whole(expr: Expr) -> int | None:
        number = Working(reader, printed).number(expr)
        return number.top if number.bottom == 1 else None

    return whole


def scaled_by(goal: Choice | Truth) -> Expr | None:
    """The fraction of a product that is held against its factor: it tells which is more, and nothing is multiplied."""
    if len(goal.exprs) != 2:
        return None
    product, factor = goal.exprs
    scales = isinstance(product, Op) and product.symbol == "*" and product.args[1:] == (factor,)
    return product.args[0] if scales and isinstance(product, Op) else None


def _along(goal: Choice, reader: CellReader, printed: dict[Expr, str]) -> tuple[str, ...]:
    """The second coordinates of the points on the left and on the right, which the choice adds up."""
    wide, near = (one.args for one in goal.exprs if isinstance(one, Op))
    ends = (("narrowest", near), ("widest", wide))
    return tuple(f"y for the {side} spaces: {', '.join(_printed(one, reader, printed) for one in counts)}" for side, counts in ends)


def _verdict(goal: Choice | Truth, shown: str) -> str:
    return shown.lower() if isinstance(goal, Truth) else shown


def _printed(expr: Expr, reader: CellReader, printed: dict[Expr, str]) -> str:
    return printed.get(expr) or Working(reader, printed).number(expr).text


def _scaling(rate: str, factor: str, verdict: str) -> tuple[str, ...]:
    top, _, bottom = rate.partition("/")
    sign = _sign(int(top) - int(bottom or "1"))
    return f"{rate} {sign} 1", f"{rate} * {factor} {sign} {factor}, so {verdict}"


def _sign(apart: int) -> str:
    return ">" if apart > 0 else "<" if apart < 0 else "="


def _shared_out(working: Working, goal: Truth) -> None:
    """What is over once a number is put in groups."""
    amount, size = (one.top for one in working.ends)
    over = amount % size
    if goal.right == PAIR:
        working.tell(f"{amount} is {'odd' if over else 'even'}")
    elif over:
        working.tell(f"{over} {'is' if over == 1 else 'are'} left over")
    else:
        working.tell("nothing is left over")


def _compare(working: Working, goal: Choice | Truth, verdict: str, lowest: bool) -> None:
    """17 < 27: the one that wins first; of a statement the left side first."""
    ready = [_in_lowest(one) for one in working.ends] if lowest else side_by_side(working.ends)
    for one, same in zip(working.ends, ready, strict=True):
        if one.text != same.text and f"{one.text} = {same.text}" not in working.board:
            working.tell(f"{one.text} = {same.text}")
    bottom = lcm(*(one.bottom for one in ready))
    sizes = [(one.top * (bottom // one.bottom), one.text) for one in ready]
    if isinstance(goal, Choice):
        sizes.sort(key=lambda one: one[0], reverse=goal.most)
    line = sizes[0][1]
    for (before, _), (size, text) in pairwise(sizes):
        line += f" {_sign(before - size)} {text}"
    working.tell(f"{line}, so {verdict}")


def _in_lowest(number: Number) -> Number:
    return over(*lowest(number.top, number.bottom)) if "/" in number.text else number


def _finish(working: Working, ask: Ask, exact: Rational, shown: str) -> None:
    """From the exact number to what is written: a decimal without end, or a rounding."""
    demand = ask.demand
    end = _END.split(working.board[-1])[-1] if working.board else ""
    if shown.endswith("..."):
        if end != fraction(exact):
            working.tell(f"{end} = {fraction(exact)}")
        working.tell(f"{fraction(exact)} = {shown}")
    elif demand.places is not None:
        _round(working, end or _given(ask, working), exact, demand, shown)
    elif end != shown:
        working.tell(f"{end} = {shown}")  # a mean as a decimal: -18/4 = -4.5


def _given(ask: Ask, working: Working) -> str:
    """The number of the words that is only to be rounded."""
    assert isinstance(ask.goal, Value)
    return working.number(ask.goal.expr).text


def _round(working: Working, number: str, exact: Rational, demand: Demand, shown: str) -> None:
    """36 is between 30 and 40, and nearer to 40."""
    places = demand.places or 0
    percent = demand.form == "percent"
    if "/" in number and demand.form != "whole":  # 3/13 = 23 1/13% is what nobody writes
        left = working.board.pop().rpartition(" = ")[0] if percent else number
        sides = [left, cut_decimal(exact, places + 4 if percent else places + 3)]
        number = sides[-1]
        if percent:
            number = f"{cut_decimal(100 * exact, places + 2)}%"
            sides.append(number)
        working.tell(" = ".join(sides))
    unit = Rational(1, 100 if percent else 1) / Rational(10) ** places
    low = exact // unit * unit
    ends = [_bound(low, demand), _bound(low + unit, demand)]
    half = 2 * (exact - low) - unit
    if exact == low:
        working.tell(f"{number} stays {shown}")
    elif half == 0:
        working.tell(f"{number} is halfway between {ends[0]} and {ends[1]}")
        working.tell(f"halfway: round up to {shown}")
    else:
        working.tell(f"{number} is between {ends[0]} and {ends[1]}")
        working.tell(f"{number} is nearer to {shown}")


def _bound(number: Rational, demand: Demand) -> str:
    """An end of the stretch that a number is rounded in, with as many places."""
    places = max(demand.places or 0, 0)
    return f"{rounded_text(100 * number, places)}%" if demand.form == "percent" else rounded_text(number, places)
