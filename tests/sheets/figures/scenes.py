"""Scenes by hand: an ask over the table of ``by_hand``, with the numbers that its words print."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Ask, Equation, Expr, Goal, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.problems.record import Given
from mathgen.sheets.figures.scene import Scene
from mathgen.trials.scope import Label, Measure, Scope
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from tests.sheets.by_hand import TABLE, problem, words


def down(group: str | None = "Owls", trial: Label | None = 1, color: str | None = None, measure: Measure = "down") -> Quantity:
    """A quantity of the table: by default all pins that the Owls knocked down in Trial 1, which are 3 red, 2 blue and 4 gold."""
    groups, colors = None if group is None else (group,), None if color is None else (color,)
    return Quantity(measure, Scope(groups, None if trial is None else (trial,), colors))


def up(group: str | None = "Owls", trial: Label | None = 1, color: str | None = None) -> Quantity:
    """The same of the pins set up: 4 red, 3 blue and 5 gold for each group and trial."""
    return down(group, trial, color, "set_up")


def over(top: Expr, bottom: Expr) -> Op:
    """A fraction."""
    return Op("/", (top, bottom))


def scene(
    goal: Goal | Expr,
    *given: Equation,
    printed: tuple[tuple[str, Expr], ...] = (),
    table: TrialTable = TABLE,
    grade: int = 2,
    skill: str = "total of parts",
    level: str = "on grade",
    shown: str = "9",
) -> Scene:
    """A scene of the goal; ``printed`` are numbers in the words, with what they are numbers of."""
    goal = goal if not isinstance(goal, Quantity | Op) else Value(goal)
    made = problem("How many?", shown, grade=grade, skill=skill, level=level)
    givens = tuple(Given(number, Rational(0), expr, "", None, "words") for number, expr in printed)
    asked = made._replace(ask=Ask(goal, given, Demand("any")), givens=givens)  # type: ignore[arg-type]
    return Scene(asked, table, Totals(table), words(grade, table))
