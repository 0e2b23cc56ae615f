"""Slips, section X: positive and negative numbers. The sign is forgotten, turned round or not heeded."""

from __future__ import annotations

from mathgen.models.slips.rule import Pair, Wrong, slip


@slip("X01", "The count went down. A change down is a negative number.")
def forgets_that_it_fell(number: int) -> Wrong:
    return -number, 1


@slip("X02", "The count went up. A change up is a positive number.")
def turns_a_rise_round(number: int) -> Wrong:
    return -number, 1


@slip("X03", "That adds both counts. A change is a difference.")
def adds_both_counts(earlier: int, later: int) -> Wrong:
    return earlier + later, 1


@slip("X04", "The result is under the goal. It is below zero.")
def forgets_that_it_is_under(number: int) -> Wrong:
    return -number, 1


@slip("X05", "The result is over the goal. It is above zero.")
def puts_it_under(number: int) -> Wrong:
    return -number, 1


@slip("X06", "That adds the goal. Which way, and how far, is the result from it?")
def adds_the_goal(count: int, goal: int) -> Wrong:
    return count + goal, 1


@slip("X07", "A distance is never below zero.")
def keeps_the_sign(number: int) -> Wrong:
    return number, 1


@slip("X08", "That is the count itself. How far is it from the goal?")
def gives_the_count(goal: int, number: int) -> Wrong:
    return goal + number, 1


@slip("X09", "The result is told already. How far is it from zero?")
def takes_it_from_the_goal(goal: int, number: int) -> Wrong:
    return goal - number, 1


@slip("X10", "Compare how far each number is from zero. Leave its sign out.")
def compares_with_signs(label: str) -> Wrong:
    return label


@slip("X11", "A negative number takes away. Do not leave out its sign.")
def adds_without_signs(first: int, second: int) -> Wrong:
    return abs(first) + abs(second), 1


@slip("X12", "The number is right. On which side of zero is it?")
def turns_the_sign(top: int, bottom: int = 1) -> Wrong:
    return -top, bottom


@slip("X13", "That takes one result from the other. Add the results.")
def subtracts_the_results(first: int, second: int) -> Wrong:
    return first - second, 1


@slip("X14", "That is the sum so far. What brings it back to zero?")
def gives_the_sum(number: int) -> Wrong:
    return number, 1


@slip("X15", "That is the sum. Divide it by how many results there are.")
def gives_the_sum_for_the_mean(number: int) -> Wrong:
    return number, 1


@slip("X16", "A negative number takes away. Do not leave out its sign.")
def mean_without_signs(*numbers: int) -> Pair:
    return sum(map(abs, numbers)), len(numbers)


@slip("X17", "The signs count. How far is it from one result to zero, and on to the other?")
def difference_without_signs(first: int, second: int) -> Wrong:
    return abs(abs(first) - abs(second)), 1


@slip("X18", "That is the sum. Take the smaller result from the greater one.")
def adds_for_the_difference(first: int, second: int) -> Wrong:
    return first + second, 1


@slip("X19", "That takes the greater result from the smaller one. Turn it round.")
def turns_the_difference_round(number: int) -> Wrong:
    return -number, 1
