"""Slips, section P: odd and even, what remains.

Those of odd and even are worked out from ``asked``, 1 where the question asks for pairs (even) and 0 where it asks for one over (odd).
"""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


def _said(number: int, asked: int) -> Wrong:
    return "true" if (number % 2 == 0) == bool(asked) else "false"


@slip("P01", "That looks at one number only. Put all the {items} together first.")
def one_part_only(asked: int, first: int, *_: int) -> Wrong:
    return _said(first, asked)


@slip("P04", "Even numbers make pairs with none alone. Odd numbers leave 1 alone. Draw the pairs.")
def takes_odd_for_even(asked: int, number: int) -> Wrong:
    return _said(number + 1, asked)


@slip("P05", "The {items} left over need one more box, bag or row.")
def forgets_the_rest(full: int) -> Wrong:
    return whole(full)


@slip("P06", "The last box, bag or row is not full. Count those that are full.")
def counts_the_rest_as_full(full: int) -> Wrong:
    return whole(full + 1)


@slip("P07", "That is how many {items} remain. Read the question again.")
def gives_what_is_over(over: int) -> Wrong:
    return whole(over)


@slip("P08", "That is how many boxes, bags or rows are full. Read the question again.")
def gives_the_full_ones(full: int) -> Wrong:
    return whole(full)


@slip("P09", "First say how many boxes, bags or rows are full, then how many {items} remain.")
def turns_round(full: int, over: int) -> Wrong:
    return f"{over} r {full}"


@slip("P10", "The {items} left over still fill one more box, bag or row.")
def stops_one_early(full: int, over: int, size: int) -> Wrong:
    return f"{full - 1} r {over + size}" if full > 1 else None


@slip("P11", "Take away the {items} in the full boxes, bags or rows. Count again how many remain.")
def one_too_few_over(full: int, over: int) -> Wrong:
    return f"{full} r {over - 1}" if over > 1 else None


@slip("P13", "That many more would fill the last box, bag or row. How many {items} are left over?")
def fills_the_last(over: int, size: int) -> Wrong:
    return whole(size - over)


@slip("P12", "There are not enough {items} for one more full box, bag or row.")
def one_group_too_many(full: int, over: int, size: int) -> Wrong:
    """Goes past the number, and calls what is missing the remainder."""
    return f"{full + 1} r {size - over}"


@slip("P14", "Divide. Are any {items} left over?")
def takes_over_for_none_over(size: int, number: int) -> Wrong:
    return "false" if number % size == 0 else "true"


def _pairs(number: int) -> list[str]:
    return [f"{one} * {number // one}" for one in range(1, number + 1) if one * one <= number and number % one == 0]


@slip("P17", "1 and the number itself are a factor pair, too.")
def forgets_one_times_the_number(number: int) -> Wrong:
    return ", ".join(_pairs(number)[1:])


@slip("P18", "Go on: try each next number until the two factors meet.")
def stops_too_early(number: int) -> Wrong:
    return ", ".join(_pairs(number)[:-1])


@slip("P19", "A pair has to multiply to the number. Do not add.")
def adds_the_pair(number: int) -> Wrong:
    return ", ".join(f"{one} + {number - one}" for one in (1, 2)) if number > 4 else None


@slip("P20", "Each row has that many {items}. Add the rows, not the two numbers.")
def adds_rows_and_size(rows: int, size: int) -> Wrong:
    return whole(rows + size)


@slip("P21", "Count the rows again. One row is missing.")
def leaves_a_row_out(rows: int, size: int) -> Wrong:
    return whole((rows - 1) * size)


@slip("P22", "Count the rows again. That is one row too many.")
def adds_a_row(rows: int, size: int) -> Wrong:
    return whole((rows + 1) * size)


@slip("P23", "Each row has that many {items}. Add the rows, not the two numbers.")
def judges_by_rows_and_size(rows: int, size: int, claimed: int) -> Wrong:
    """As P20, where a total is to be judged."""
    return "true" if rows + size == claimed else "false"


@slip("P24", "Count the rows again. One row is missing.")
def judges_without_a_row(rows: int, size: int, claimed: int) -> Wrong:
    """As P21, where a total is to be judged."""
    return "true" if (rows - 1) * size == claimed else "false"


@slip("P25", "That is all of them. Find half.")
def keeps_the_number(number: int) -> Wrong:
    """Common practice, no source, as are the two below."""
    return whole(number)


@slip("P26", "Add the number to itself again. The sum is 2 too many.")
def one_pair_too_many(number: int) -> Wrong:
    return whole(number // 2 + 1)


@slip("P27", "Find half. Do not take away 2.")
def takes_two_away(number: int) -> Wrong:
    return whole(number - 2)
