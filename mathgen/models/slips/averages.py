"""Slips, section I of the catalogue. Mean."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


def _shared(total: int, count: int) -> Wrong:
    """A total shared out, whole where it comes out whole: a pupil writes 12, not 24/2."""
    return whole(total // count) if count and total % count == 0 else over(total, count)


@slip("I01", "The {trial} with 0 was still a {trial}.")
def zero_does_not_count(*numbers: int) -> Wrong:
    return _shared(sum(numbers), sum(1 for number in numbers if number)) if 0 in numbers else None


@slip("I02", "That is the total. Now share the total equally.")
def no_divide(*numbers: int) -> Wrong:
    return whole(sum(numbers))


@slip("I04", "How many numbers did you add? Divide by that many.")
def halve_it(*numbers: int) -> Wrong:
    return _shared(sum(numbers), 2)


def _middle(numbers: tuple[int, ...]) -> Wrong:
    """What stands in the middle of a list as it is: one number, or halfway between two."""
    half = len(numbers) // 2
    return (numbers[half], 1) if len(numbers) % 2 else _shared(numbers[half - 1] + numbers[half], 2)


@slip("I06", "Put the numbers in order first.")
def middle_of_the_row(*numbers: int) -> Wrong:
    return _middle(numbers)


@slip("I07", "Two numbers are in the middle. Go halfway between the two.")
def picks_one_middle(*numbers: int) -> Wrong:
    return (sorted(numbers)[len(numbers) // 2 - 1], 1) if len(numbers) % 2 == 0 else None


@slip("I08", "The median is the middle number of the list, not the middle between its ends.")
def half_way_ends(*numbers: int) -> Wrong:
    return _shared(min(numbers) + max(numbers), 2)


@slip("I13", "The mean shares the total equally. The median is the middle of the list in order.")
def swaps_mean_and_median(asked: str, *numbers: int) -> Wrong:
    """The median where the mean is asked for, or the other way round."""
    return _middle(tuple(sorted(numbers))) if asked == "mean" else _shared(sum(numbers), len(numbers))


@slip("I14", "Find the total that all the {trials} together must have.")
def mean_fills_gap(mean: int) -> Wrong:
    return whole(mean)


@slip("I15", "Count the next {trial}, too. How many {trials} will there be?")
def next_trial_not_counted(mean: int, *numbers: int) -> Wrong:
    """Not in the research catalogue: the total is found for the trials so far."""
    return whole(mean * len(numbers) - sum(numbers))


@slip("I16", "That is the total for all the {trials}. Take away the {items} so far.")
def stops_at_the_total(total: int) -> Wrong:
    """Not in the research catalogue: H07, for a goal."""
    return whole(total)
