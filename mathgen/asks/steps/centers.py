"""Steps of a list's center and spread: mean, median, quartiles, range, and how far numbers are from their mean."""

from __future__ import annotations

from math import lcm

from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.products import quotient
from mathgen.asks.steps.sums import apart, sum_or_difference
from mathgen.asks.steps.written_number import Number, by_size, listed, lowest, mixed, terminating, through_mixed, whole


def statistic(lines: Lines, name: str, numbers: list[Number]) -> Number:
    """The statistic of that name, of counts or of other statistics."""
    if name == "mean":
        return _mean(lines, numbers)
    if name == "mean absolute deviation":
        return _mean_deviation(lines, numbers)
    rising = sorted(numbers, key=by_size(numbers))
    if name == "range":
        return apart(lines, rising[-1], rising[0])
    lines.tell(f"in order: {listed(rising)}")
    if name == "median":
        return median(lines, numbers, True)
    half = len(rising) // 2
    lower, upper = rising[:half], rising[-half:]
    if name != "interquartile range":
        return _of_half(lines, lower, "lower", True) if name == "lower quartile" else _of_half(lines, upper, "upper", True)
    ends = _of_half(lines, upper, "upper", False), _of_half(lines, lower, "lower", False)
    return apart(lines, *ends)


def statistic_of_lengths(lines: Lines, name: str, numbers: list[Number]) -> Number:
    """The widest less the narrowest, or an equal share of all, in fractions of an inch."""
    if name == "range":
        rising = sorted(numbers, key=by_size(numbers))
        return sum_or_difference(lines, "-", [rising[-1], rising[0]])
    total = sum_or_difference(lines, "+", numbers)
    shared = mixed(*lowest(total.top, total.bottom))
    lines.line(total.text, shared.text, *through_mixed(total.top, total.bottom))
    return quotient(lines, shared, whole(len(numbers)))


def _of_half(lines: Lines, numbers: list[Number], which: str, told: bool) -> Number:
    lines.tell(f"{which} half: {listed(numbers)}")
    return median(lines, numbers, told)


def _mean_deviation(lines: Lines, numbers: list[Number]) -> Number:
    """How far each number is from the mean, and the mean of that. A distance that comes twice is worked out once."""
    mean = _mean(lines, numbers)
    far = [apart(lines, *((mean, one) if one.top * mean.bottom < mean.top * one.bottom else (one, mean))) for one in numbers]
    lines.tell(f"distances from {mean.text}: {listed(far)}")
    return _mean(lines, far)


def _mean(lines: Lines, numbers: list[Number]) -> Number:
    bottom = lcm(*(one.bottom for one in numbers))
    if bottom > 1:
        return _mean_of_parts(lines, numbers, bottom)
    total = sum(one.top for one in numbers)
    lines.line(" + ".join(one.text for one in numbers), str(total))
    count = len(numbers)
    decimal = terminating(total, count)
    if decimal is None:
        return quotient(lines, whole(total), whole(count))
    # By the grade that asks for a mean, pupils divide on into tenths: 13 / 4 = 3.25, not 13/4 first.
    lines.line(f"{total} / {count}", decimal)
    return whole(total // count) if total % count == 0 else Number(total, count, decimal)


def _mean_of_parts(lines: Lines, numbers: list[Number], bottom: int) -> Number:
    """The mean of decimals."""
    top, count = sum(one.top * (bottom // one.bottom) for one in numbers), len(numbers)
    total, mean = terminating(top, bottom), terminating(top, bottom * count)
    if total is None or mean is None:
        raise TypeError("no working for the mean of numbers that do not end")
    lines.line(" + ".join(one.text for one in numbers), total)
    lines.line(f"{total} / {count}", mean)
    return Number(top, bottom * count, mean)


def median(lines: Lines, numbers: list[Number], told: bool) -> Number:
    """Crosses off the least and the greatest, pair by pair, as a pupil does, until one or two numbers stay.

    ``told``: whether a single number in the middle is put down as the answer.
    """
    numbers = list(numbers)
    while len(numbers) > 2:
        numbers.remove(min(numbers))
        numbers.remove(max(numbers))
    if len(numbers) == 1:
        if told:  # nothing is worked out: the one number in the middle is the median
            lines.lines.append(f"{numbers[0].text} = {numbers[0].text}")
        lines.tell(f"the middle number is {numbers[0].text}")
        return numbers[0]
    numbers.sort()
    total = sum(one.top for one in numbers)
    lines.line(" + ".join(one.text for one in numbers), str(total))
    halfway = terminating(total, 2)
    assert halfway is not None
    lines.line(f"{total} / 2", halfway)
    return whole(total // 2) if total % 2 == 0 else Number(total, 2, halfway)
