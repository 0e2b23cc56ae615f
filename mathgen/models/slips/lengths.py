"""Slips, section W: lengths in inches and parts of an inch. Errors of whole numbers, met in mixed numbers."""

from __future__ import annotations

from math import lcm

from mathgen.models.slips.rule import Wrong, over, slip, whole


def _split(top: int, bottom: int) -> tuple[int, int]:
    """Whole inches, and what is left over the bottom number."""
    return divmod(top, bottom)


@slip("W01", "The question asks how far apart the two lengths are. Do not add.")
def adds_for_difference(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(a * (bottom // b) + c * (bottom // d), bottom)


@slip("W02", "You cannot switch the two parts of an inch. Trade 1 inch for parts first.")
def small_from_large_part(a: int, b: int, c: int, d: int) -> Wrong:
    """H10 of mixed numbers: 5 1/4 - 2 3/4 as 3 2/4."""
    (inches, part), (less, other) = _split(a, b), _split(c, d)
    bottom = lcm(b, d)
    gap = part * (bottom // b) - other * (bottom // d)
    return over((inches - less) * bottom + abs(gap), bottom) if gap < 0 else None


@slip("W03", "Those are the whole inches. Take away the parts of an inch, too.")
def whole_inches_only(a: int, b: int, c: int, d: int) -> Wrong:
    gap = a // b - c // d
    return (gap, 1) if gap > 0 else None


@slip("W04", "Multiply the part of an inch as well as the whole inches.")
def part_not_multiplied(count: int, top: int, bottom: int) -> Wrong:
    inches, part = _split(top, bottom)
    return over(count * inches * bottom + part, bottom) if inches and part else None


@slip("W05", "There are equal spaces. Multiply; do not add the number of spaces.")
def adds_the_count(count: int, top: int, bottom: int) -> Wrong:
    return over(count * bottom + top, bottom)


@slip("W06", "That is the length of one space. How many spaces are there?")
def one_space_only(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("J08", "That is a place on the line. Count the crosses above that place.")
def place_for_count(top: int, bottom: int) -> Wrong:
    return over(top, bottom) if bottom == 1 else None


@slip("W09", "Count the crosses above one place only.")
def places_counted(places: int) -> Wrong:
    return whole(places)


@slip("W10", "The list is not in order. Find the widest and the narrowest space first.")
def last_less_first(top: int, bottom: int) -> Wrong:
    return over(top, bottom) if top else None


@slip("W07", "That is the total of all the spaces. Share the total equally.")
def total_not_shared(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W08", "Every space counts, not only the widest and the narrowest. Find the total of all.")
def halfway_between_ends(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W11", "That is one of the spaces. Find the total of all, then share the total equally.")
def one_of_them(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W12", "That counts every cross. Count those above one place only.")
def every_cross(count: int) -> Wrong:
    return whole(count)


@slip("W51", "The bottom number says how big the parts of an inch are. Do not add the bottom numbers.")
def adds_bottoms_of_inches(a: int, b: int, c: int, d: int) -> Wrong:
    """C01 of mixed numbers: 2 1/4 + 1 3/4 as 3 4/8."""
    (inches, part), (more, other) = _split(a, b), _split(c, d)
    return over((inches + more) * (b + d) + part + other, b + d) if part and other else None


@slip("W52", "Those are the whole inches. Add the parts of an inch, too.")
def adds_whole_inches_only(a: int, b: int, c: int, d: int) -> Wrong:
    return whole(a // b + c // d) if a % b or c % d else None


@slip("W53", "Both spaces together are longer than each of them. Add.")
def takes_away_for_both(a: int, b: int, c: int, d: int) -> Wrong:
    bottom = lcm(b, d)
    return over(abs(a * (bottom // b) - c * (bottom // d)), bottom)


@slip("W41", "That is how far apart the two places are. Count the crosses above each place.")
def places_apart(top: int, bottom: int) -> Wrong:
    """Common practice, no source, as are the three below."""
    return over(top, bottom)


@slip("W42", "Every cross is a space. Add each length once for every cross above it.")
def each_place_once(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W43", "One space is missing from your sum. Did you add every space?")
def leaves_the_last_out(top: int, bottom: int) -> Wrong:
    return over(top, bottom)


@slip("W44", "Those are the whole inches only. Add the parts of an inch as well.")
def parts_of_inches_left_out(inches: int) -> Wrong:
    return whole(inches) if inches else None


@slip("W71", "Which length is 1 inch? Divide by that one.")
def lengths_turned_round(a: int, b: int, c: int, d: int) -> Wrong:
    return over(b * c, a * d)


@slip("W72", "A unit rate is a quotient. Divide; do not multiply.")
def lengths_multiplied(a: int, b: int, c: int, d: int) -> Wrong:
    return over(a * c, b * d)


@slip("W73", "That is how much longer. A unit rate tells how many inches for each inch.")
def lengths_subtracted(a: int, b: int, c: int, d: int) -> Wrong:
    return over(abs(a * d - b * c), b * d)


@slip("W54", "A space is not wider or narrower than itself. Leave out the crosses above that place.")
def with_the_length_itself(count: int) -> Wrong:
    """Common practice, no source, as are the two below."""
    return whole(count)


@slip("W55", "Those are on the other side. Greater lengths are to the right on the line.")
def on_the_other_side_of_a_length(count: int) -> Wrong:
    return whole(count) if count else None


@slip("W56", "Those crosses are above that place. Which crosses are to the side that is asked for?")
def above_the_length_itself(count: int) -> Wrong:
    return whole(count)
