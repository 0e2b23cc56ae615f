"""Positive and negative numbers: changes from trial to trial, results over and under a goal."""

from __future__ import annotations

from itertools import combinations, pairwise

from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Expr, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.lists import MOST_NUMBERS
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label, Scope

_ANY, _NAME = Demand("any"), Demand("name")
_NEGATIVE = frozenset({"negative"})
_COMPUTED = frozenset({"negative", "negative_arithmetic"})
_STEPS = (-5, -4, -3, -2, 2, 3, 4, 5)  # from the first count to the goal
_LEAST_GOAL = 3


def _counts(view: TableView, groups: tuple[str, ...] | None, trials: tuple[Label, ...], color: str | None) -> tuple[Quantity, ...] | None:
    """The counts of some trials, one by one; None where a result is missing or no pin fell."""
    if not view.totals.complete(Scope(groups, trials)):
        return None
    found = tuple(view.quantity("down", Spot(groups, (trial,)), color) for trial in trials)
    return found if all(map(view.number, found)) else None


def _goal(view: TableView, counts: tuple[Quantity, ...], step: int) -> Stated | None:
    """A goal that each of the counts could have reached, and that none of them is."""
    goal = view.number(counts[0]) + step
    racks = [view.number(Quantity("set_up", one.scope)) for one in counts]
    possible = _LEAST_GOAL <= goal <= min(racks) and goal not in map(view.number, counts)
    return Stated(goal, "goal") if possible else None


def _against_goal(
    view: TableView, groups: tuple[str, ...] | None, trials: tuple[Label, ...], color: str | None, step: int
) -> tuple[tuple[Quantity, ...], Stated, tuple[Op, ...]] | None:
    """The counts of some trials, a goal for each of them, and the results over and under it; None where there is none."""
    counts = _counts(view, groups, trials, color)
    goal = None if counts is None else _goal(view, counts, step)
    return None if counts is None or goal is None else (counts, goal, tuple(_result(one, goal) for one in counts))


def _result(count: Quantity, goal: Stated) -> Op:
    return Op("-", (count, goal))


def _printed(view: TableView, results: tuple[Op, ...]) -> tuple[tuple[Op, str], ...]:
    return tuple((one, str(_number(view, one))) for one in results)


def _number(view: TableView, result: Op) -> int:
    count, goal = result.args
    assert isinstance(count, Quantity)  # results are made so above
    assert isinstance(goal, Stated)
    return view.number(count) - goal.number


def _over_or_under(view: TableView, count: Quantity, level: Quantity | Stated) -> tuple[Expr, int]:
    """How far a count is over a level, worked out as before numbers below 0 are added or taken away: -(9 - 6) where it is under."""
    number = view.number(count) - (level.number if isinstance(level, Stated) else view.number(level))
    return (Op("-", (count, level)) if number > 0 else Op("opposite", (Op("-", (level, count)),))), number


@problem_model(skill="signed change")
def change_between_trials(view: TableView) -> AskSpace:
    """The number, positive or negative, that tells how a count changed from one trial to a later one."""
    pairs = list(combinations(view.table.trials, 2))

    def build(groups: tuple[str, ...] | None, pair: tuple[Label, Label], color: str | None) -> Draft | None:
        found = _counts(view, groups, pair, color)
        if found is None:
            return None
        earlier, later = found
        change, number = _over_or_under(view, later, earlier)
        a, b = map(view.number, found)
        if min(a, b) < 2 or abs(number) < 2 or abs(number) in (a, b):
            return None
        return Draft(
            ask=Ask(Value(change), (), _ANY),
            roles={"earlier": earlier, "later": later},
            structure="difference unknown",
            slips=(("X01" if number < 0 else "X02", (number,)), ("X03", (a, b))),
            features=_NEGATIVE,
            unit=True,
        )

    return AskSpace((view.groups_or_class, pairs, view.colors_or_all), build)


@problem_model(skill="signed change")
def result_against_goal(view: TableView) -> AskSpace:
    """The number that stands for a count, where 0 stands for a goal."""

    def build(groups: tuple[str, ...] | None, trial: Label, color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, (trial,), color, step)
        if against is None:
            return None
        (down,), goal, _ = against
        result, number = _over_or_under(view, down, goal)
        k = view.number(down)
        if k < 2 or abs(number) in (k, goal.number):
            return None
        return Draft(
            ask=Ask(Value(result), (), _ANY),
            roles={"down": down, "goal": goal},
            structure="difference unknown",
            slips=(("X04" if number < 0 else "X05", (number,)), ("X06", (k, goal.number))),
            features=_NEGATIVE,
            unit=False,
        )

    return AskSpace((view.groups_or_class, view.table.trials, view.colors_or_all, _STEPS), build)


@problem_model(skill="absolute value")
def distance_from_goal(view: TableView) -> AskSpace:
    """How far a negative result is from the goal that 0 stands for."""

    def build(groups: tuple[str, ...] | None, trial: Label, color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, (trial,), color, step)
        if against is None:
            return None
        found, goal, (result,) = against
        number = _number(view, result)
        return Draft(
            ask=Ask(Value(Op("abs", (result,))), (), _ANY),
            roles={"down": found[0], "goal": goal, "result": result},
            structure="difference unknown",
            slips=(("X07", (number,)), ("X08", (goal.number, number)), ("X09", (goal.number, number))),
            features=_NEGATIVE,
            rates=_printed(view, (result,)),
            unit=False,
        )

    return AskSpace((view.groups_or_class, view.table.trials, view.colors_or_all, [step for step in _STEPS if step > 0]), build)


@problem_model(skill="absolute value")
def farther_from_goal(view: TableView) -> AskSpace:
    """Which of two groups was farther from the goal (or closer to it), where the greater number is not the one."""
    pairs = list(combinations(view.table.groups, 2))

    def build(pair: tuple[str, str], trial: Label, color: str | None, step: int, farther: bool) -> Draft | None:
        both = [_counts(view, (group,), (trial,), color) for group in pair]
        if both[0] is None or both[1] is None:
            return None
        counts = both[0][0], both[1][0]
        goal = _goal(view, counts, step)
        if goal is None:
            return None
        results = _result(counts[0], goal), _result(counts[1], goal)
        a, b = (_number(view, one) for one in results)
        right, greater = (abs(a) > abs(b)) == farther, (a > b) == farther
        # Where the sign is no trap, no absolute value is needed.
        if abs(a) == abs(b) or right == greater:
            return None
        return Draft(
            ask=Ask(Choice(pair, (Op("abs", results[:1]), Op("abs", results[1:])), farther), (), _NAME),
            roles={
                "one": counts[0],
                "other": counts[1],
                "goal": goal,
                "first": results[0],
                "second": results[1],
                "farther": "farther from" if farther else "closer to",
                "greater": "greater" if farther else "smaller",
            },
            structure="which is greater",
            slips=(("X10", (pair[1] if right else pair[0],)),),
            features=_NEGATIVE,
            rates=_printed(view, results),
            unit=False,
            wanted=frozenset({"groups"}),
        )

    return AskSpace((pairs, view.table.trials, view.colors_or_all, _STEPS, (True, False)), build)


@problem_model(skill="sum of signed numbers")
def sum_of_results(view: TableView) -> AskSpace:
    """The sum of two results, over or under a goal, of which one at least is below 0."""
    pairs = list(combinations(view.table.trials, 2))

    def build(groups: tuple[str, ...] | None, pair: tuple[Label, Label], color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, pair, color, step)
        if against is None:
            return None
        found, goal, results = against
        a, b = (_number(view, one) for one in results)
        if a + b == 0 or min(a, b) > 0:
            return None
        return Draft(
            ask=Ask(Value(Op("+", results)), (), _ANY),
            roles={"one": found[0], "other": found[1], "goal": goal, "first": results[0], "second": results[1]},
            structure="whole unknown",
            slips=(("X11", (a, b)), ("X12", (a + b,)), ("X13", (a, b))),
            features=_COMPUTED,
            rates=_printed(view, results),
            unit=False,
        )

    return AskSpace((view.groups_or_class, pairs, view.colors_or_all, _STEPS), build)


@problem_model(skill="sum of signed numbers")
def result_for_zero(view: TableView) -> AskSpace:
    """The result that one more trial must have, so that its result and those of two trials in a row make 0."""
    pairs = list(pairwise(view.table.trials))

    def build(groups: tuple[str, ...] | None, pair: tuple[Label, Label], color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, pair, color, step)
        if against is None:
            return None
        found, goal, results = against
        a, b = (_number(view, one) for one in results)
        rack = min(view.number(Quantity("set_up", one.scope)) for one in found)
        # The result has to be one that a trial can have.
        if min(a, b) > 0 or a + b == 0 or not 0 <= goal.number - a - b <= rack or -a - b in (a, b):
            return None
        return Draft(
            ask=Ask(Value(Op("opposite", (Op("+", results),))), (), _ANY),
            roles={"one": found[0], "other": found[1], "goal": goal, "first": results[0], "second": results[1]},
            structure="part unknown",
            slips=(("X14", (a + b,)), ("X11", (a, b)), ("X13", (a, b))),
            features=_COMPUTED,
            rates=_printed(view, results),
            unit=False,
        )

    return AskSpace((view.groups_or_class, pairs, view.colors_or_all, _STEPS), build)


@problem_model(skill="signed numbers in stories")
def mean_of_results(view: TableView) -> AskSpace:
    """The mean of the results of all trials, over and under a goal; not 0, with at most one place."""
    trials = view.table.trials if 3 <= len(view.table.trials) <= MOST_NUMBERS else ()

    def build(groups: tuple[str, ...] | None, color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, trials, color, step)
        if against is None:
            return None
        found, goal, results = against
        numbers = [_number(view, one) for one in results]
        total, count = sum(numbers), len(numbers)
        if min(numbers) > 0 or max(numbers) < 0 or total == 0 or 2 * total % count or Rational(total, count) in numbers:
            return None
        return Draft(
            ask=Ask(Value(Op("/", (Op("+", results), Stated(count, "trials")))), (), _ANY),
            roles={
                "down": found[0],
                "whole": view.quantity("down", Spot(groups, None), color),
                "goal": goal,
                "count": Stated(count, "trials"),
                "results": results,
            },
            structure="statistic",
            slips=(("X15", (total,)), ("X16", tuple(numbers)), ("X12", (total, count))),
            features=_COMPUTED | {"mean_median_iqr_mad"},
            rates=_printed(view, results),
            shown_as=Demand("decimal"),
            unit=False,
        )

    return AskSpace((view.groups_or_class if trials else [], view.colors_or_all, _STEPS), build)


@problem_model(skill="difference of results")
def difference_of_results(view: TableView) -> AskSpace:
    """How much greater one result is than another, of which one at least is below 0."""
    pairs = list(combinations(view.table.trials, 2))

    def build(groups: tuple[str, ...] | None, pair: tuple[Label, Label], color: str | None, step: int) -> Draft | None:
        against = _against_goal(view, groups, pair, color, step)
        if against is None:
            return None
        found, goal, results = against
        a, b = (_number(view, one) for one in results)
        high = 0 if a > b else 1
        # One step apart is no difference to work out.
        if min(a, b) > 0 or abs(a - b) < 2 or abs(a - b) in (abs(a), abs(b)):
            return None
        return Draft(
            ask=Ask(Value(Op("-", (results[high], results[1 - high]))), (), _ANY),
            roles={
                "one": found[0],
                "other": found[1],
                "goal": goal,
                "first": results[0],
                "second": results[1],
                "greater": found[high],
                "less": found[1 - high],
            },
            structure="difference unknown",
            slips=(("X17", (a, b)), ("X18", (a, b)), ("X19", (abs(a - b),))),
            features=_COMPUTED,
            rates=_printed(view, results),
            unit=False,
        )

    return AskSpace((view.groups_or_class, pairs, view.colors_or_all, _STEPS), build)
