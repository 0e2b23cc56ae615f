"""Slips, section G: unit rates, a rate carried on, equal ratios in a table. All are ours."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("G31", "Which number is divided? Ask: how many for one?")
def rate_turned_round(first: int, second: int) -> Wrong:
    return over(second, first)


@slip("G32", "A rate is a quotient. Divide; do not multiply.")
def multiplies_for_a_rate(first: int, second: int) -> Wrong:
    return whole(first * second)


@slip("G33", "That is the number in all trials. A unit rate is for one.")
def total_for_a_rate(total: int) -> Wrong:
    return whole(total)


@slip("G34", "That is how many more. A unit rate tells how many for each one.")
def difference_for_a_rate(first: int, second: int) -> Wrong:
    return whole(abs(first - second))


@slip("G35", "Compare with the other part only, not with all the {items}.")
def part_over_the_whole(part: int, total: int) -> Wrong:
    return over(part, total)


@slip("G36", "That is the number for all of them. Find the number for one.")
def first_number_for_a_rate(first: int, second: int) -> Wrong:
    return whole(first) if second > 1 else None


@slip("G37", "That many {were_down} in several trials. Find the number for one trial first.")
def total_times_trials(total: int, ahead: int) -> Wrong:
    return whole(total * ahead)


@slip("G38", "At this rate, more trials mean several times as many {items}. Do not add.")
def total_plus_trials(total: int, ahead: int) -> Wrong:
    return whole(total + ahead)


@slip("G39", "Divide by the number for one trial.")
def divides_by_the_trials(goal: int, trials: int) -> Wrong:
    return whole(goal // trials) if goal % trials == 0 else None


@slip("G40", "At this rate, more {items} take several times as many trials. Do not add.")
def adds_what_is_missing(trials: int, goal: int, total: int) -> Wrong:
    return whole(trials + goal - total)


@slip("G41", "That is how many times as many {items}. How many trials is it?")
def stops_at_the_factor_of_a_rate(goal: int, total: int) -> Wrong:
    return whole(goal // total) if goal % total == 0 else None


@slip("G42", "Multiply both numbers by the same number. Do not add.")
def adds_in_a_ratio_table(first: int, second: int, row: int) -> Wrong:
    return whole(second + row - first)


@slip("G43", "Both counts are multiplied by that number. Use it on the other count.")
def stops_at_the_factor_of_the_rows(times: int) -> Wrong:
    return whole(times)


@slip("G44", "The first number grew. The other number must grow in the same way.")
def keeps_the_other_number(second: int) -> Wrong:
    return whole(second)
