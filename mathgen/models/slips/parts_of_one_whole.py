"""Slips, section C: adding fractions of one whole, and taking them away."""

from __future__ import annotations

from itertools import combinations, combinations_with_replacement
from math import lcm

from mathgen.models.slips.rule import Wrong, over, slip


@slip("C06", "Write 1 as a fraction with the same bottom number first.")
def one_minus_top(top: int, bottom: int) -> Wrong:
    return over(abs(1 - top), bottom)


@slip("C01", "The bottom number says how big the parts are. Do not add the bottom numbers.")
def adds_across(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a + c, b + d)


@slip("C02", "When you change the bottom number, change the top number to match.")
def keeps_bigger_bottom(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a + c, max(b, d))


@slip("C03", "The top numbers must grow with the bottom numbers.")
def multiplies_bottoms_only(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a + c, b * d) if b * d < 100 else None  # nobody leaves 12/1152 standing


@slip("C04", "The parts have a new size. Change each top number as well.")
def tops_untouched(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a + c, lcm(b, d))


@slip("C05", "Make the parts the same size first. Then take away the top numbers only.")
def takes_across(a: int, b: int, c: int, d: int) -> Wrong:
    return over(abs(a - c), abs(b - d)) if (a - c) * (b - d) > 0 and abs(b - d) > 1 else None  # both in one order


@slip("C07", "Put the two sets together first. Then count again.")
def sum_of_two_sets(k: int, n: int, k2: int, n2: int) -> Wrong:
    """Only of sets of one size: who can add unlike parts makes no such mistake."""
    return over(k + k2, n) if n == n2 else None


@slip("C11", "One part is inside the other. Take away; do not add.")
def adds_for_rest(a: int, b: int, c: int, d: int) -> Wrong:
    """Ours: the other operation."""
    bottom = lcm(b, d)
    return over(a * (bottom // b) + c * (bottom // d), bottom)


@slip("C12", "The question asks for both parts together. Add.")
def takes_away_for_sum(a: int, b: int, c: int, d: int) -> Wrong:
    """Ours: the other operation."""
    bottom = lcm(b, d)
    top = abs(a * (bottom // b) - c * (bottom // d))
    return over(top, bottom) if top else None


@slip("C13", "That is only one of the parts. The question asks for both together.")
def one_part_only(top: int, bottom: int) -> Wrong:
    """Ours: stops before the second part."""
    return over(top, bottom)


@slip("C14", "When you change the bottom number, change the top number to match.")
def takes_tops_only(a: int, b: int, c: int, d: int) -> Wrong:
    """Ours: C04 of a difference."""
    return over(a - c, lcm(b, d)) if a > c else None


def _splits(top: int, bottom: int) -> list[str]:
    return [f"{one}/{bottom} + {top - one}/{bottom}" for one in range(1, top // 2 + 1)]


@slip("C53", "The bottom number says how big the parts are. Split the top number only.")
def splits_the_bottom_too(top: int, bottom: int) -> Wrong:
    """Common practice, no source: C01 the other way round."""
    return None if bottom % 2 else ", ".join(_splits(top, bottom // 2))


@slip("C54", "Go on: there are more pairs of top numbers with this sum.")
def finds_one_split(top: int, bottom: int) -> Wrong:
    """Common practice, no source."""
    return _splits(top, bottom)[-1]


@slip("C55", "That is the fraction {standing}. Read again which fraction is split.")
def splits_the_rest(top: int, bottom: int) -> Wrong:
    """A03 of a list."""
    return ", ".join(_splits(bottom - top, bottom)) or None


@slip("C56", "The bottom number says how big the parts are. Add the top numbers only.")
def judges_by_adding_bottoms() -> Wrong:
    """As C01, where a sum is to be judged: 1/8 + 2/8 + 2/8 passes for 5/24."""
    return "false"


@slip("C57", "The sum is one part off. Add the top numbers again.")
def takes_a_near_sum_for_equal(total: int, k: int) -> Wrong:
    """As H41, of fractions."""
    return "true" if abs(total - k) == 1 else None


def _sums(size: int, total: int, n: int, parts: tuple[int, ...], again: bool = False) -> list[str]:
    """Sums of so many of the parts (top and bottom in turn), each sum in the order of the parts."""
    pairs = list(zip(parts[::2], parts[1::2], strict=True))
    ways = combinations_with_replacement(pairs, size) if again else combinations(pairs, size)
    right = [some for some in ways if sum(top * n // bottom for top, bottom in some) == total]
    return [" + ".join(f"{top}/{bottom}" for top, bottom in some) for some in right]


@slip("C58", "There is more than one way. Go on trying.")
def finds_one_sum(size: int, total: int, n: int, *parts: int) -> Wrong:
    """Common practice, no source."""
    return _sums(size, total, n, parts)[0]


@slip("C59", "Use each fraction only once.")
def takes_a_part_again(size: int, total: int, n: int, *parts: int) -> Wrong:
    """Common practice, no source."""
    found = _sums(size, total, n, parts, True)
    return ", ".join(found) if len(found) <= 3 else None  # nobody finds more


@slip("C60", "Count how many fractions you are asked to choose.")
def takes_one_more(size: int, total: int, n: int, *parts: int) -> Wrong:
    """Common practice, no source."""
    return ", ".join(_sums(size + 1, total, n, parts)) or None
