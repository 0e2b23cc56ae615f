"""What a figure is made from: one problem with its table, and what pages call the things in it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from mathgen.asks.expression import Expr, Op, Quantity
from mathgen.problems.record import Problem
from mathgen.scenario.naming import listed
from mathgen.trials.scope import Label
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals

FigureData = dict[str, Any]


class Support(NamedTuple):
    """A figure to work on: empty as on the pupils' page; filled in for the key, or None where that shows nothing more.

    ``asked`` where the problem's words ask pupils to "read" or to "draw" it, so that it may not be left out.
    """

    blank: FigureData
    worked: FigureData | None = None
    asked: str = ""


class Scene(NamedTuple):
    """A problem, the table that it is about, and the pages' words."""

    problem: Problem
    table: TrialTable
    totals: Totals
    words: dict[str, Any]

    def count(self, quantity: Quantity) -> int:
        """What the table says of a quantity."""
        return self.totals.total(quantity.measure, quantity.scope)

    def names(self, quantities: Sequence[Quantity]) -> list[str]:
        """Short names by what tells quantities apart: their colors, groups, trials, or what is counted; empty where nothing does."""
        words = self.words
        for place, shown, everything in (
            ("colors", {color: color for color in self.table.colors}, "all colors"),
            ("groups", words["group_labels"], "all groups"),
            ("trials", words["trial_labels"], f"all {words['trials']}"),
        ):
            scopes = [getattr(quantity.scope, place) for quantity in quantities]
            if len(set(scopes)) == len(scopes) > 1:
                return [everything if labels is None else _together(labels, shown, words) for labels in scopes]
        measures = [quantity.measure for quantity in quantities]
        if len(set(measures)) == len(measures):
            return [str(words[measure]) for measure in measures]
        return [""] * len(quantities)


def _together(labels: tuple[Label, ...], shown: Mapping[Any, str], words: dict[str, Any]) -> str:
    if len(labels) > 1 and all(isinstance(label, int) for label in labels):
        return f"{str(words['trials']).capitalize()} {listed([str(label) for label in labels])}"
    return listed([str(shown[label]) for label in labels])


def summed(expr: Expr) -> tuple[Quantity, ...] | None:
    """The quantities of a sum, one of them alone too; None for anything else."""
    args = expr.args if isinstance(expr, Op) and expr.symbol == "+" else (expr,)
    found = tuple(one for one in args if isinstance(one, Quantity))
    return found if len(found) == len(args) else None
