"""Slips, section V: judging a claim by less than it takes."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


def _verdict(says_so: int) -> Wrong:
    return "true" if says_so else "false"


@slip("V01", "More {items} {down} is not enough. How many {were_set_up}?")
def by_counts(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V02", "Fewer {items} {standing} is not enough. How many {were_set_up}?")
def by_gaps(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V03", "A bigger top number is not enough. Are the parts the same size?")
def by_top_numbers(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V04", "Many smaller parts can make more. Give both fractions the same bottom number.")
def by_bottom_numbers(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V05", "Read again which {items} are meant: those {down}.")
def by_what_is_left(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V06", "Times as many means to multiply, not to add.")
def adds_the_times(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V07", "More is not enough. Multiply to see how many that would be.")
def more_will_do(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V08", "More than each one is not enough. Add the two numbers first.")
def beats_each(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V09", "As many is not more.")
def equal_is_more(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V10", "A number of {items} is not a percent. Write the fraction with 100 as the bottom number.")
def counts_for_percent(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V11", "7 {items} are 70% only where 10 {were_set_up}. How many {were_set_up} here?")
def counts_for_tenths(says_so: int) -> Wrong:
    return _verdict(says_so)


@slip("V12", "Do not add the bottom numbers. Give both fractions the same bottom number, then add.")
def adds_tops_and_bottoms(says_so: int) -> Wrong:
    """As C01, where a sum is claimed."""
    return _verdict(says_so)


@slip("V15", "When you change the bottom number, change the top number to match.")
def adds_tops_only(says_so: int) -> Wrong:
    """As C04, where a sum is claimed."""
    return _verdict(says_so)


@slip("V13", "A difference is not a percent. How much is the change out of the first number?")
def difference_for_percent(says_so: int) -> Wrong:
    """As F09, where a percent change is claimed."""
    return _verdict(says_so)


@slip("V14", "A percent change is out of the first number, not the last.")
def percent_of_the_later(says_so: int) -> Wrong:
    """As F07, where a percent change is claimed."""
    return _verdict(says_so)


@slip("K07", "The {items} do not remember the last one. Use all the results.")
def it_is_due(says_so: int) -> Wrong:
    """Fischbein and Schnarch 1997, from memory."""
    return _verdict(says_so)


@slip("V16", "More {items} in all is not enough. How many {trials} were there?")
def by_totals(says_so: int) -> Wrong:
    """As V01, where trials are counted."""
    return _verdict(says_so)
