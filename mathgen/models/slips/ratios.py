"""Slips, section G: ratio and rate. A ratio is (first, second), as it is counted."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("G01", "The question compares two parts. Do not count all the {items}.")
def whole_slipped_in(part: int, whole: int) -> Wrong:
    return over(part, whole)


@slip("G02", '"All" means every part together, not only the rest.')
def part_slipped_in(part: int, whole: int) -> Wrong:
    return over(part, whole - part)


@slip("G03", "Say the ratio in the order of the words.")
def order_swapped(first: int, second: int) -> Wrong:
    return over(second, first)


@slip("G04", "The ratio compares two parts. How many are there in all?")
def ratio_as_fraction(part: int, other: int) -> Wrong:
    return over(part, other) if other > 1 else None


@slip("G05", "Multiply the part as many times as the whole has grown. Do not add.")
def add_same_scaling(k: int, n: int, number: int) -> Wrong:
    return whole(k + number - n)


@slip("G08", '"Times as many" means multiply.')
def times_as_more(small: int, times: int) -> Wrong:
    return whole(small + times)


@slip("G09", "The question asks for the bigger number. Multiply.")
def times_the_wrong_way(small: int, times: int) -> Wrong:
    """Ours: the smaller number divided instead of multiplied."""
    return whole(small // times) if small % times == 0 else None


@slip("G10", '"Times as many" counts the first set already. You have one set too many.')
def one_set_too_many(small: int, times: int) -> Wrong:
    """Ours: "3 times as many" read as 3 times more."""
    return whole(small * (times + 1))


@slip("G11", '"How many times as many" means divide. Do not take away.')
def takes_away_for_times(big: int, small: int) -> Wrong:
    """Ours: compared by adding on, as in G08."""
    return whole(big - small)


@slip("G12", "Count the first set too. How many sets fit into the bigger number?")
def first_set_not_counted(big: int, small: int) -> Wrong:
    """Ours: only the sets that are more."""
    return whole(big // small - 1) if small and big % small == 0 else None


@slip("G13", "Multiply the whole as many times as the part has grown. Do not add.")
def adds_to_the_whole(k: int, n: int, part: int) -> Wrong:
    """Ours: G05 where the whole is asked for."""
    return whole(n + part - k)


@slip("G14", "Which number is the bigger one? Divide to find the smaller one.")
def multiplies_the_bigger(big: int, times: int) -> Wrong:
    """Ours: "times as many" points to multiplying."""
    return whole(big * times)


@slip("G15", '"Times as many" does not mean "more". Divide, do not take away.')
def takes_away_the_times(big: int, times: int) -> Wrong:
    """Ours: G08 the other way round."""
    return whole(big - times)
