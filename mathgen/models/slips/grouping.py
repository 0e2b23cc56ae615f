"""Slips, section P: odd and even. Not in the research catalogue, which has no section for yes and no; common practice, no source.

Each is worked out from ``asked``, 1 where the question asks for pairs (even) and 0 where it asks for one over (odd).
"""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip


def _said(number: int, asked: int) -> Wrong:
    return "true" if (number % 2 == 0) == bool(asked) else "false"


@slip("P01", "That looks at one number only. Put all the {items} together first.")
def one_part_only(asked: int, first: int, *_: int) -> Wrong:
    return _said(first, asked)


@slip("P02", "The ones tell. Do not look at the tens.")
def looks_at_the_tens(asked: int, number: int) -> Wrong:
    return _said(number // 10, asked) if number > 9 else None


@slip("P03", "Pairs of the {items} {down} count, not of the {items} {standing}.")
def pairs_up_the_standing(asked: int, standing: int) -> Wrong:
    return _said(standing, asked) if standing else None


@slip("P04", "Even numbers make pairs, with none over. Odd numbers have 1 over. Draw the pairs.")
def takes_odd_for_even(asked: int, number: int) -> Wrong:
    return _said(number + 1, asked)
