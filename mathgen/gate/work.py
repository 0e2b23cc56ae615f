"""A signature, read: its numbers as printed, its operations, and the features that its steps show by themselves."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from mathgen.exact.printed_step import Operation, Printed, PrintedStep, lowest, printed_number, printed_step
from mathgen.gate.signature import Signature


class Work(NamedTuple):
    """What a signature's texts hold."""

    givens: tuple[Printed, ...]
    steps: tuple[PrintedStep, ...]
    answer: Printed | None  # None for a name
    exact: Printed | None  # the end of the last step; the answer where there is none
    operations: int
    numbers: tuple[Printed, ...]  # of givens, steps and answer

    @property
    def rounded(self) -> bool:
        """Whether the shown answer is not the exact one."""
        if self.answer is None or self.exact is None or self.answer.repeats:
            return False
        return not same(self.answer, self.exact)


def work(signature: Signature) -> Work:
    """A signature, read.

    Raises:
        UnreadableStepError: a step is no equality.
    """
    givens = tuple(number for number in map(printed_number, signature.givens) if number is not None)
    steps = tuple(map(printed_step, signature.steps))
    answer = printed_number(signature.answer)
    exact = _end(steps, answer)
    numbers = [*givens, *(number for step in steps for number in step.numbers)]
    if answer is not None:
        numbers.append(answer)
    return Work(givens, steps, answer, exact, operations(steps), tuple(numbers))


def _end(steps: tuple[PrintedStep, ...], answer: Printed | None) -> Printed | None:
    """What the steps come to: the end of the last; of a double, 7 + 7 = 14, the number that is doubled, where that is asked for."""
    if not steps:
        return answer
    last = steps[-1]
    doubles = len(last.operations) == 1 and last.operations[0].symbol == "+"
    if answer is not None and doubles and same(last.operations[0].left, answer) and same(last.operations[0].right, answer):
        return answer
    return last.end


def largest_of(read: Work) -> int:
    """The largest number of a problem, its whole part."""
    return max((number.top // number.bottom for number in read.numbers), default=0)


def operations(steps: tuple[PrintedStep, ...]) -> int:
    """How many operations a problem takes. A sum of several parts is one, in one line or in a chain of lines."""
    count = 0
    last: PrintedStep | None = None
    for step in steps:
        for place, operation in enumerate(step.operations):
            goes_on = place == 0 and last is not None and operation.symbol == "+" and _ends_in_sum(last) and same(step.first, last.end)
            # 1 + 0 = 1 and 1 + 1 = 2: two equal parts, of which one was worked out, are added; no sum goes on.
            if goes_on and last is not None and same(operation.right, last.end):
                goes_on = False
            if not operation.sums_on and not goes_on:
                count += 1
        last = step
    return count


def longest_sum(steps: tuple[PrintedStep, ...]) -> tuple[int, tuple[Printed, ...]]:
    """How many numbers the longest sum adds, and those that are printed as such (not sums on the way)."""
    longest: tuple[Printed, ...] = ()
    chain: tuple[Printed, ...] = ()
    last: PrintedStep | None = None
    for step in steps:
        if step.longest_sum and all(operation.symbol == "+" for operation in step.operations):
            # The first side: one number more than operations.
            addends = step.numbers[: len(step.operations) + 1]
            goes_on = last is not None and _ends_in_sum(last) and same(step.first, last.end)
            chain = (*chain, *addends[1:]) if goes_on else addends
            longest = max(longest, chain, key=len)
        last = step
    return max(len(longest), max((step.longest_sum for step in steps), default=0)), longest


def shown_features(read: Work, sets: tuple[int, ...]) -> Iterator[str]:
    """The features that the printed numbers and steps show, whatever the model says of itself."""
    for number in read.numbers:
        if number.percent:
            yield "percent"
        elif number.kind == "decimal":
            yield "decimal_notation"
        if number.kind == "fraction":
            yield "fraction_notation"
        elif number.kind == "mixed" and not number.percent:
            yield "mixed_number"
        if number.repeats:
            yield "repeating_decimal"
        if number.negative:
            yield "negative"
    for step in read.steps:
        for operation in step.operations:
            if _names_a_part(operation, sets):
                yield "fraction_notation"
            else:
                yield from _operation_features(operation)
    if read.operations > 1:
        yield "two_step"
    if read.rounded and read.answer is not None and not read.answer.percent and read.answer.kind == "decimal":
        yield "round_decimal"


def same(one: Printed, other: Printed) -> bool:
    """Whether two printed numbers are equal."""
    return one.top * other.bottom == other.top * one.bottom


def _ends_in_sum(step: PrintedStep) -> bool:
    return bool(step.operations) and step.operations[-1].symbol == "+"


def _names_a_part(operation: Operation, sets: tuple[int, ...]) -> bool:
    """Whether a division only names a part of a set: 5 of 8 pins is 5/8. Nothing is shared out."""
    left, right = operation.left, operation.right
    if operation.symbol != "/" or left.kind != "whole" or right.kind != "whole" or left.percent or right.percent:
        return False
    return right.top in sets and 0 <= left.top <= right.top


def _operation_features(operation: Operation) -> Iterator[str]:
    symbol, left, right, result = operation.symbol, operation.left, operation.right, operation.result
    if left.negative or right.negative or result.negative:
        yield "negative_arithmetic"
    if left.percent or right.percent:
        return
    if "decimal" in (left.kind, right.kind):
        yield "decimal_compute"
        return
    left_part, right_part = _is_part(left), _is_part(right)
    if symbol in "+-":
        if left_part or right_part:
            # A whole number takes the bottom of the fraction: 1 - 9/12.
            like = not (left_part and right_part) or left.written_bottom == right.written_bottom
            yield "fraction_add_like" if like else "fraction_add_unlike"
    elif symbol == "*":
        if left_part and right_part:
            yield "fraction_times_fraction"
        elif left_part:
            yield "fraction_of_quantity"
        elif right_part:
            yield "n_times_fraction"
        else:
            yield "multiply_divide"
    elif left_part or right_part:
        unit = lowest(left.top, left.bottom)[0] == 1 if left_part else lowest(right.top, right.bottom)[0] == 1
        yield "unit_fraction_division" if unit and not (left_part and right_part) else "fraction_division"
    else:
        yield "multiply_divide" if result.is_whole else "fraction_as_quotient"


def _is_part(number: Printed) -> bool:
    return number.kind in ("fraction", "mixed")
