"""Steps that list every way to do something, a line a way: to multiply to a number, to split a part, to change or choose counts."""

from __future__ import annotations

from itertools import combinations
from math import lcm

from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.sums import same_bottoms
from mathgen.asks.steps.written_number import Number


def factor_pairs(lines: Lines, number: int) -> None:
    """Each pair that a number is the product of: 1 * 12 = 12, 2 * 6 = 12, 3 * 4 = 12."""
    for one in range(1, number + 1):
        if one * one <= number and number % one == 0:
            lines.line(f"{one} * {number // one}", str(number))


def splits(lines: Lines, amount: Number, whole: Number) -> None:
    """Each way to split a part of a whole in two: 1/8 + 4/8 = 5/8, 2/8 + 3/8 = 5/8."""
    top = amount.top * whole.top // amount.bottom
    for one in range(1, top // 2 + 1):
        lines.line(f"{one}/{whole.text} + {top - one}/{whole.text}", f"{top}/{whole.text}")


def changes(lines: Lines, numbers: list[int], wanted: int, most: int) -> None:
    """The total that is wanted, how far it is from the one there is, and each number that can change by as much: 8 + 3 = 11."""
    total = sum(numbers)
    lines.line(" + ".join(map(str, numbers)), str(total))
    more = wanted > total
    sign, change = ("+", wanted - total) if more else ("-", total - wanted)
    lines.line(f"{wanted} - {total}" if more else f"{total} - {wanted}", str(change))
    for one in numbers:
        new = one + wanted - total
        if 0 <= new <= most:
            lines.line(f"{one} {sign} {change}", str(new))


def chosen(lines: Lines, numbers: list[Number], total: Number, size: int) -> None:
    """All over one bottom number, then each sum that is right: 2/3 = 8/12, 8/12 + 5/12 + 7/12 = 20/12."""
    same_bottoms(lines, [*numbers, total])
    bottom = lcm(total.bottom, *(one.bottom for one in numbers))
    tops = [one.top * (bottom // one.bottom) for one in numbers]
    wanted = total.top * (bottom // total.bottom)
    for some in combinations(tops, size):
        if sum(some) == wanted:
            lines.line(" + ".join(f"{top}/{bottom}" for top in some), f"{wanted}/{bottom}")
