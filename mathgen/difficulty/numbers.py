"""What makes the numbers of a problem hard, found from its printed steps."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from mathgen.exact.printed_step import Operation, Printed, PrintedStep, lowest, printed_number, printed_step, repeat_length


class Hardness(NamedTuple):
    """What the steps of one problem ask of a pupil's arithmetic."""

    carry_or_borrow: bool
    beyond_facts: bool
    not_whole_ratio: bool
    unequal_places: bool
    result_repeats: bool
    percents: tuple[tuple[int, int], ...]  # top and bottom of each number before a % sign


@lru_cache(maxsize=65536)
def hardness(steps: tuple[str, ...], answer: str) -> Hardness:
    """What the steps and the answer ask.

    Raises:
        UnreadableStepError: a step is no equality of printed numbers.

    >>> hardness(("15 + 17 = 32",), "32").carry_or_borrow
    True
    """
    read = tuple(map(printed_step, steps))
    operations = tuple(operation for step in read for operation in step.operations)
    shown = printed_number(answer)
    numbers = [number for step in read for number in step.numbers] + ([shown] if shown is not None else [])
    exact = read[-1].end if read else shown
    decimal = shown is not None and (shown.percent or shown.kind == "decimal")
    return Hardness(
        carry_or_borrow=any(map(_carries_or_borrows, operations)),
        beyond_facts=any(map(_beyond_facts, operations)),
        not_whole_ratio=any(
            _not_whole(operation) for step in read for operation in step.operations if not _names_part(step, operation, ":" in answer)
        ),
        unequal_places=any(map(_unequal_places, operations)),
        result_repeats=decimal and exact is not None and repeat_length(exact.top, exact.bottom) > 0,
        percents=tuple(dict.fromkeys((number.top * 100, number.bottom) for number in numbers if number.percent)),
    )


def carries(one: int, other: int) -> bool:
    """Whether adding needs a new ten, hundred ...

    >>> carries(15, 17), carries(12, 17)
    (True, False)
    """
    while one and other:
        if one % 10 + other % 10 > 9:
            return True
        # Only the first carry is looked for, so none has come in from the right.
        one, other = one // 10, other // 10
    return False


def borrows(one: int, other: int) -> bool:
    """Whether taking away breaks up a ten, hundred ...

    >>> borrows(32, 17), borrows(38, 17)
    (True, False)
    """
    while other:
        if one % 10 < other % 10:
            return True
        one, other = one // 10, other // 10
    return False


def _tops(operation: Operation) -> tuple[int, int] | None:
    """The whole numbers that a sum or difference really works on: counts, or the tops of like fractions."""
    left, right = operation.left, operation.right
    if left.bottom == right.bottom:
        return left.top, right.top
    if left.is_whole and not right.is_whole:
        return left.top // left.bottom * right.bottom, right.top  # 1 - 9/12 is 12/12 - 9/12
    return None


def _carries_or_borrows(operation: Operation) -> bool:
    tops = _tops(operation)
    if tops is None or min(tops) < 0:
        return False
    if operation.symbol == "+":
        # A pupil who can add 8 and 5 mentally still makes a new ten: fluency within 20 comes late in grade 2.
        return carries(*tops)
    # From 11 to 18 minus one digit is a fact, but a borrow all the same.
    return operation.symbol == "-" and borrows(*tops)


def _beyond_facts(operation: Operation) -> bool:
    left, right, result = operation.left, operation.right, operation.result
    if operation.symbol == "*":
        return left.is_whole and right.is_whole and max(_whole(left), _whole(right)) > 10 and min(_whole(left), _whole(right)) > 1
    if operation.symbol == "/" and left.is_whole and right.is_whole:
        return max(_whole(right), result.top // result.bottom) > 10
    return False


def _names_part(step: PrintedStep, operation: Operation, ratio: bool) -> bool:
    """Whether a division only says a part of a set, as in ``3 / 8 = 3/8``, or a ratio: nothing has to be worked out."""
    end = step.end
    named = end.kind == "fraction" and (end.written_top, end.written_bottom) == (operation.left.top, operation.right.top)
    return operation.symbol == "/" and named and (ratio or operation.left.top <= operation.right.top)


def _not_whole(operation: Operation) -> bool:
    """A quotient of whole numbers that is not whole; a part of a number that does not divide by the bottom."""
    left, right = operation.left, operation.right
    if operation.symbol == "/":
        return left.is_whole and right.is_whole and not operation.result.is_whole
    if operation.symbol == "*":
        for part, number in ((left, right), (right, left)):
            # 75/100 of 40 goes as easily as 3/4 of 40.
            if part.kind == "fraction" and number.is_whole and _whole(number) % lowest(part.top, part.bottom)[1]:
                return True
    return False


def _unequal_places(operation: Operation) -> bool:
    left, right = operation.left, operation.right
    return operation.symbol in "+-" and "decimal" in (left.kind, right.kind) and left.places != right.places


def _whole(number: Printed) -> int:
    return abs(number.top // number.bottom)
