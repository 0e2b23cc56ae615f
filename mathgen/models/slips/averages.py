"""Slips, section I: mean, median, range, spread."""

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
    """Ours: the total is found for the trials so far."""
    return whole(mean * len(numbers) - sum(numbers))


@slip("I16", "That is the total for all the {trials}. Take away the {items} so far.")
def stops_at_the_total(total: int) -> Wrong:
    """Ours: H07, for a goal."""
    return whole(total)


@slip("I20", "That adds up the distances. Now share the sum equally.")
def adds_distances(apart: int) -> Wrong:
    """Ours: I02, for a mean absolute deviation."""
    return whole(apart)


@slip("I21", "That is the mean. How far is each number from the mean?")
def stops_at_the_mean(mean: int) -> Wrong:
    """Ours: H07, for a mean absolute deviation."""
    return whole(mean)


@slip("I22", "A number equal to the mean still counts: its distance is 0.")
def zero_distance_does_not_count(*numbers: int) -> Wrong:
    """I01, for a mean absolute deviation."""
    size, total = len(numbers), sum(numbers)
    far = [abs(size * one - total) for one in numbers]
    others = sum(1 for one in far if one)
    return _shared(sum(far) // size, others) if 0 in far and others else None


@slip("I23", "Take all the distances, not just the greatest and the least.")
def half_of_the_spread(*numbers: int) -> Wrong:
    """From memory."""
    return _shared(max(numbers) - min(numbers), 2)


@slip("I24", "That is the distance from the least to the greatest. Find the middles of both halves.")
def all_the_spread(*numbers: int) -> Wrong:
    """Ours: all of the range where the middle half is asked for."""
    return whole(max(numbers) - min(numbers))


@slip("I25", "Put the numbers in order before you take halves.")
def halves_of_the_row(*numbers: int) -> Wrong:
    """I06, for quartiles."""
    half = len(numbers) // 2
    low, high = numbers[:half], numbers[-half:]
    twice = high[(half - 1) // 2] + high[half // 2] - low[(half - 1) // 2] - low[half // 2]
    return _shared(twice, 2) if twice > 0 else None


@slip("I26", "That is the upper quartile. Take away the lower quartile.")
def stops_at_the_upper_quartile(twice: int) -> Wrong:
    """Ours: H07, for an interquartile range."""
    return _shared(twice, 2)


@slip("I27", "The box does not reach as far as that. That is where the whisker ends.")
def end_of_the_whisker(number: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(number)


@slip("I28", "That is the line inside the box, the median.")
def line_in_the_box(twice: int) -> Wrong:
    """Ours: common practice, no source."""
    return _shared(twice, 2)


@slip("I29", "That is the other end of the box.")
def other_end_of_the_box(twice: int) -> Wrong:
    """Ours: common practice, no source."""
    return _shared(twice, 2)


@slip("I30", "Each has as many {trials} as any other. Multiply, do not add.")
def adds_how_many(*counts: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(sum(counts))


@slip("I31", "That is for one only. How many are there in all?")
def counts_for_one(count: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(count)


@slip("I32", "The greatest number alone does not tell. Take away the least number, too.")
def greatest_for_range(label: str) -> Wrong:
    """Ours: of two ranges, only the greatest numbers are looked at."""
    return label


@slip("I33", "You compared the totals. How far apart are the least and the greatest?")
def total_for_range(label: str) -> Wrong:
    """Ours: common practice, no source."""
    return label


@slip("I34", "You compared the totals. The median is the middle of the list in order.")
def total_for_median(label: str) -> Wrong:
    """I13, where two medians are compared: lists as long have means that go with their totals."""
    return label


@slip("I35", "Put the numbers in order before you look for the middle.")
def middle_of_the_row_compared(label: str) -> Wrong:
    """I06, where medians are compared."""
    return label


@slip("I36", "The median is the middle number of the list, not the middle between its ends.")
def half_way_ends_compared(label: str) -> Wrong:
    """I08, where a mean and a median are compared."""
    return label


@slip("I37", "The answers differ from group to group. That is what makes it a statistical question.")
def answers_differ(verdict: str) -> Wrong:
    """Ours: common practice, no source."""
    return verdict


@slip("I38", "There is only one answer. The answers to a statistical question differ.")
def numbers_make_it_statistical(verdict: str) -> Wrong:
    """Ours: common practice, no source."""
    return verdict


@slip("I40", "Count the new {trial}, too, when you divide.")
def new_trial_not_counted(total: int, count: int) -> Wrong:
    """I15 of this list, where the new number is known."""
    return over(total, count)


@slip("I41", "The mean so far stands for several {trials}. Go back to the total.")
def mean_of_mean_and_new(total: int, count: int, new: int) -> Wrong:
    """The mean of two means, whatever they are the means of. Pollatsek, Lima and Well 1981, from memory."""
    return over(total + new * count, 2 * count)


@slip("I42", "That is the mean so far. Add the new {trial}, too.")
def mean_so_far(total: int, count: int) -> Wrong:
    """Ours: H07, for one more number."""
    return over(total, count)


@slip("I43", "That is the difference of the means. How many deviations is it?")
def gives_the_gap(gap: int) -> Wrong:
    return whole(gap)


@slip("I44", "That is the deviation of the other list.")
def divides_by_the_other_deviation(gap: int, deviation: int) -> Wrong:
    return over(gap, deviation)


@slip("I45", "That is the difference of the totals. Find both means first.")
def takes_totals_for_means(gap: int, deviation: int) -> Wrong:
    return over(gap, deviation)


@slip("I46", "How many times does the mean go into the total? Divide; do not take away.")
def takes_the_mean_away(total: int, mean: int) -> Wrong:
    """Ours: common practice, no source, as are the two below."""
    return whole(total - mean)


@slip("I47", "The total is what all trials have together. Divide the total by the mean.")
def multiplies_by_the_mean(total: int, mean: int) -> Wrong:
    return whole(total * mean)


@slip("I48", "That is the number of {items} in all. How many trials share them?")
def keeps_the_total(total: int) -> Wrong:
    return whole(total)


@slip("I71", "Find the mean number of {items} {down}. How many of those {set_up} are {standing}?")
def other_count(verdict: str) -> Wrong:
    """Ours: the part for the rest."""
    return verdict


@slip("I61", "That is how far the two plots reach together. Which stretch do both cover?")
def both_plots_together(span: int) -> Wrong:
    """From memory."""
    return whole(span)


@slip("I62", "Those are the two greatest numbers. Start at the greater of the two least numbers.")
def from_end_to_end(gap: int) -> Wrong:
    """From memory."""
    return whole(gap)


@slip("I63", "Count the steps from number to number, not the numbers.")
def numbers_for_steps(count: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(count)


@slip("I51", "Which question can have different answers for different groups? That one is statistical.")
def one_answer_for_several(label: str) -> Wrong:
    """I38, where one of two questions is chosen."""
    return label


@slip("I52", "That is the new number. How far is it from the one with all numbers?")
def new_center_for_the_change(top: int, bottom: int) -> Wrong:
    """H07, for a change of a mean or a median."""
    return _shared(top, bottom)


@slip("I53", "Find the mean or the median again without that number. Do not just compare that number with it.")
def distance_of_the_number(number: int, top: int, bottom: int) -> Wrong:
    """From memory."""
    return _shared(abs(number * bottom - top), bottom)


@slip("I54", "One number is left out. How many numbers share the total now?")
def shared_among_all_as_before(total: int, count: int, rest: int) -> Wrong:
    """I04, where a number is left out."""
    return _shared(abs(total - rest), count)
