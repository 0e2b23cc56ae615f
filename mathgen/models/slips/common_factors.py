"""Slips, section Z: common factors and multiples. The smaller factor, the product, one for the other."""

from __future__ import annotations

from math import gcd, lcm

from mathgen.models.slips.rule import Wrong, slip


@slip("Z01", "That number goes into both, but a greater one does, too.")
def stops_at_a_smaller_factor(one: int, other: int) -> Wrong:
    smaller = [size for size in range(2, gcd(one, other)) if gcd(one, other) % size == 0]
    return (smaller[-1], 1) if smaller else None


@slip("Z02", "That is the least common multiple. Equal boxes need a common factor.")
def multiple_for_factor(one: int, other: int) -> Wrong:
    return lcm(one, other), 1


@slip("Z03", "That many do not go evenly into both numbers.")
def takes_the_difference(one: int, other: int) -> Wrong:
    return abs(one - other), 1


@slip("Z04", "Both totals reach the product, but they meet before.")
def takes_the_product(one: int, other: int) -> Wrong:
    return one * other, 1


@slip("Z05", "That is the greatest common factor. A total grows: look for a multiple.")
def factor_for_multiple(one: int, other: int) -> Wrong:
    return gcd(one, other), 1


@slip("Z06", "That adds the two numbers. Count on by each of them.")
def adds_for_the_multiple(one: int, other: int) -> Wrong:
    return one + other, 1
