"""What the board of the key is held against: the numbers of the steps, what is compared, and lists in order."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Goal, Quantity, Same, Tally, Truth
from mathgen.problems.record import Problem
from mathgen.proof.by_board.in_x import LETTERS
from mathgen.proof.by_board.lists_shown import Lists, lists_of
from mathgen.proof.by_steps.comparisons import letters_in
from mathgen.proof.by_steps.equalities import read_step
from mathgen.proof.by_steps.given_numbers import GivenNumbers, stats_in, tallies_in
from mathgen.proof.step_numbers import Pair, number


def known(problem: Problem, given: GivenNumbers) -> set[Pair]:
    """The numbers that are given, and those of the steps on the way."""
    found = set(map(number, given.texts))
    for step in problem.steps:
        numbers, result = read_step(step.text)
        found |= {*numbers, result}
    return found


def sides(goal: Goal, given: GivenNumbers) -> tuple[Pair, ...]:
    """What a choice or a statement compares; what an expression comes to with each of ``LETTERS`` for its letter."""
    if isinstance(goal, Same):
        return tuple(given.with_letters(goal.target, letters_in(goal.target), tried) for tried in LETTERS)
    return given.values(goal.exprs) if isinstance(goal, Choice | Truth) else ()


def lists(goal: Goal, given: GivenNumbers) -> Lists:
    """The lists of the goal's statistics, in the order in which they are worked out."""
    if isinstance(goal, Same):
        return Lists((), (), ())
    stats = [stat for expr in goal.exprs for stat in stats_in(expr) if isinstance(stat.series[0], Quantity)]
    tallies = [tally for expr in goal.exprs for tally in tallies_in(expr) if tally not in given.numbers]
    return lists_of(((stat.name, given.values(stat.series)) for stat in stats), (_meant(tally, given) for tally in tallies))


def _meant(tally: Tally, given: GivenNumbers) -> tuple[Pair, ...]:
    """The numbers of a list that a tally counts."""
    bounds = [(one.number, one.bottom) for one in tally.bounds]
    return tuple(one for one in given.values(tally.series) if _is_meant(tally.test, one, bounds))


def _is_meant(test: str, one: Pair, bounds: list[Pair]) -> bool:
    if test == "digits":
        (last, _), (need, _) = bounds
        return sum(str(one[0]).count(str(digit)) for digit in range(1, last + 1)) >= need
    first, *further = (one[0] * than[1] - than[0] * one[1] for than in bounds)
    if test == "from":
        return first >= 0 >= further[0]
    return first == 0 if test == "=" else first > 0 if test == ">" else first < 0
