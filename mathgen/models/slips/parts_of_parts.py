"""Slips, section C: two parts of one whole, and parts of parts. All are ours."""

from __future__ import annotations

from math import gcd, lcm

from mathgen.models.slips.rule import Wrong, over, slip


def _lowest(top: int, bottom: int) -> Wrong:
    shared = gcd(top, bottom)
    return over(top // shared, bottom // shared)


@slip("C31", "Those are the two parts that are told. The question asks for the rest.")
def adds_the_told_parts(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(a * (bottom // b) + c * (bottom // d), bottom)


@slip("C32", "One more part is told. Take away that part, too.")
def takes_only_the_first(a: int, b: int) -> Wrong:
    return over(b - a, b)


@slip("C33", "The question does not ask for the {items} {standing}. Take away that part, too.")
def takes_only_the_second(a: int, b: int) -> Wrong:
    return over(b - a, b)


@slip("C34", "When you change the bottom number, change the top number to match.")
def tops_untouched_twice(a: int, b: int, c: int, d: int) -> Wrong:
    """C04 of a rest after two parts."""
    bottom = lcm(b, d)
    return over(bottom - a - c, bottom)


@slip("A31", "That is a part of the {items} {down}. Here the whole is all the {items}.")
def part_of_the_nearer_whole(a: int, b: int) -> Wrong:
    return over(a, b)


@slip("C35", "A part of a part is smaller than each of them. Multiply; do not add.")
def adds_a_part_of_a_part(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(a * (bottom // b) + c * (bottom // d), bottom)


@slip("C36", "Multiply the bottom numbers as well.")
def keeps_one_bottom(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a * c, max(b, d))


@slip("C37", "One part is inside the other. Do not take away.")
def takes_away_a_nested_part(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(abs(a * (bottom // b) - c * (bottom // d)), bottom)


@slip("C38", "Both parts are of all the {items}. Divide; do not multiply.")
def multiplies_for_a_share(a: int, b: int, c: int, d: int) -> Wrong:
    return _lowest(a * c, b * d)


@slip("C39", "Which part is inside the other? Divide that one by the bigger part.")
def divides_backwards(a: int, b: int, c: int, d: int) -> Wrong:
    return _lowest(b * c, a * d)
