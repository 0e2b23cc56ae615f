"""What a reason for a verdict is marked by: full and part credit, and reasons that show it, each of them from the proved numbers."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Op, Quantity, Stat, Stated, Truth
from mathgen.exact.forms import decimal_places, percent
from mathgen.exact.rounding import rounded
from mathgen.problems.record import Problem

_DRAWN = 5  # the last grade in which a drawing is a reason among others
_PERCENTS = 6  # the first grade that writes percents
_HALF = Rational(1, 2)


def rubric(problem: Problem) -> str:
    """Full credit with some reasons that show it, part credit: one line for the teacher."""
    verdict = problem.answer.display
    reasons = [*_compared(problem), *_others(problem)]
    if problem.grade <= _DRAWN:
        reasons.append("a drawing that shows it")
    *first, last = reasons
    told = "; ".join([*first, f"or {last}"] if first else [last])
    return f"Full credit: {verdict}, with a reason such as {told}. Part credit: {verdict} alone."


def _compared(problem: Problem) -> list[str]:
    """Both sides over one bottom number; of two that are equal, what the other side is as well; the sum itself where one is judged."""
    sums = [step.text for step in problem.steps if " + " in step.text and "/" in step.text]
    one, sign, other = problem.answer.because.split(" ")
    if isinstance(problem.ask.goal, Truth) and _is_change(problem.ask.goal):
        return []  # 2 out of 8 is 25% says it
    if one != other:
        return [*sums, f"{one} {sign} {other}"]
    shown = problem.answer.reasons[1].shown
    return [*sums, *([f"{shown} = {other}"] if shown != other else [])]


def _others(problem: Problem) -> list[str]:
    goal = problem.ask.goal
    assert isinstance(goal, Truth)  # a rubric judges a statement
    left, right = problem.answer.reasons
    stated = goal.right if isinstance(goal.right, Stated) else None
    if isinstance(goal.left, Stat) or (isinstance(goal.left, Op) and isinstance(goal.left.args[-1], Stated)):
        return [f"{left.shown} for each trial against {right.shown} for each trial"]
    if _is_change(goal):
        return [_changed(left.shown)]
    if isinstance(goal.left, Op) and goal.left.symbol == "+":
        parts = [given.number for given in problem.givens if isinstance(given.expr, Op)]
        return [f"{right.shown} is less than {part} alone" for part in parts if Rational(part) > right.value][:1]
    if stated is not None and goal.test == "=":
        return [f"the last one changes nothing, and all the results say {left.shown}"]
    if stated is not None:
        return _against(left.shown, stated, right.shown)
    if isinstance(goal.right, Op) and goal.right.symbol == "*":
        return _times(left.value, goal.right, right.value)
    if isinstance(goal.right, Op) and goal.right.symbol == "+":
        return _together(goal, left.value, right.value)
    return _two_fractions(problem.grade, left.value, right.value, (left.shown, right.shown))


def _is_change(goal: Truth) -> bool:
    return isinstance(goal.left, Op) and goal.left.symbol == "/" and isinstance(goal.left.args[0], Op)


def _more(one: Rational, other: Rational) -> str:
    return "more" if one > other else "less"


def _changed(shown: str) -> str:
    gap, first = shown.split("/")
    return f"{gap} out of {first} is {percent(Rational(int(gap), int(first)))}"


def _against(shown: str, claimed: Stated, text: str) -> list[str]:
    """ "half of 12 is 6, and 7 is more than 6": where that part is a whole number."""
    count, whole = map(int, shown.split("/"))
    part = Rational(whole * claimed.number, claimed.bottom)
    if part.q != 1:
        return [f"{count} of {whole} is {percent(Rational(count, whole))}"] if "%" in text else []
    name = "half" if Rational(claimed.number, claimed.bottom) == _HALF and "%" not in text else text
    return [f"{name} of {whole} is {part}, and {count} is {_more(Rational(count), part)} than {part}"]


def _times(count: Rational, product: Op, value: Rational) -> list[str]:
    times = product.args[0]
    assert isinstance(times, Stated)  # "3 times as many"
    other = value / times.number
    found = [f"{times.number} × {other} = {value}"]
    if count == other + times.number != value:
        found.append(f"{times.number} more is not {times.number} times as many")
    return found


def _together(goal: Truth, count: Rational, total: Rational) -> list[str]:
    counts = (goal.left, *(goal.right.args if isinstance(goal.right, Op) else ()))
    names = [one.scope.colors[0] for one in counts if isinstance(one, Quantity) and one.scope.colors is not None]
    how = "the same, not more" if count == total else _more(count, total)
    return [f"{' and '.join(names[1:])} are {total} together, and {count} {names[0]} is {how}"]


def _two_fractions(grade: int, one: Rational, other: Rational, shown: tuple[str, str]) -> list[str]:
    if (one - _HALF) * (other - _HALF) < 0:
        less, greater = shown if one < other else shown[::-1]
        return [f"{less} is less than half and {greater} is more than half"]
    whole = [rounded(100 * value, 0) for value in (one, other)]
    if grade < _PERCENTS or whole[0] == whole[1]:
        return []
    about = ["" if decimal_places(100 * value) == 0 else "about " for value in (one, other)]
    return [f"{about[0]}{whole[0]}% is {_more(one, other)} than {about[1]}{whole[1]}%"]
