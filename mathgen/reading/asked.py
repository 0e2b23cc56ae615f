"""A question worked out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.asks.expression import Choice, Expr, Goal, Op, Quantity, Stated, Tally
from mathgen.exact.demand import Demand
from mathgen.reading.tokens import Number
from mathgen.reading.told import Told
from mathgen.trials.scope import Scope

Kind = Literal[
    "count",
    "difference",
    "times",
    "part",
    "which",
    "most",
    "ratio",
    "color part",
    "next",
    "needed",
    "share",
    "points",
    "mean",
    "change",
    "next set up",
    "equal fraction",
    "blank",
    "is true",
    "behind a mean",
    "same value",
    "picks",
    "split claimed",
    "product or factor named",
    "fraction of a line",
    "fraction as sets",
    "doubled",
    "total claimed",
    "rate",
    "rate carried on",
    "ratio table",
    "gap",
    "pictures",
    "tally",
    "sets",
    "product or factor",
    "expression",
    "array",
    "counted on",
    "counted back",
    "parts of a line",
    "sets as a fraction",
    "full sets",
    "fraction share",
    "score",
    "equation",
    "level",
    "line",
    "goal",
    "in pairs",
    "chance",
    "pairs",
    "recorded",
    "in boxes",
    "in equal groups",
    "pairs listed",
    "is statistical",
    "sample",
    "simulation",
    "runs",
    "sample gap",
    "sample off",
    "sample like",
    "sample alike",
    "mean then",
    "model gap",
    "likelier",
    "which list",
    "mean or median",
    "mean of a count",
    "length",
    "as fraction",
    "expression",
    "signed",
    "common",
    "claim",
    "money",
    "changes listed",
    "sums listed",
]


class Asked(NamedTuple):
    """A question worked out: what to work out, in what form, and the quantities that it speaks of."""

    kind: Kind
    goal: Goal
    demand: Demand
    subjects: tuple[Quantity, ...]  # what a sentence about the question names
    uses: tuple[str, ...] = ()  # of the open things, those that play a part
    direct: Expr | None = None  # where the table holds the answer itself: what must come to the same there
    sign: int = 1
    looked_at: tuple[Quantity, ...] = ()  # what only the table tells, where that is less than all that is worked with

    def stated(self) -> list[Stated]:
        """The numbers in the goal that only the words give."""
        return [] if isinstance(self.goal, Choice) else [stated for expr in self.goal.exprs for stated in _stated(expr)]


def _stated(expr: Expr) -> list[Stated]:
    if isinstance(expr, Stated):
        return [expr]
    if isinstance(expr, Tally):
        return list(expr.bounds)
    return [stated for part in expr.args for stated in _stated(part)] if isinstance(expr, Op) else []


FRACTION = Demand("fraction")
WHOLE, ANY, PERCENT, NAME, TRUTH = Demand("whole"), Demand("any"), Demand("percent"), Demand("name"), Demand("truth")


def check_whole(told: Told, scope: Scope, whole: Number | None) -> None:
    """Keep the number of a set that a question names, if it does.

    Raises:
        NotRead: the table has another.
    """
    if whole is not None:
        told.referred(Quantity("set_up", scope), whole)


def whole_number(value: Rational | str) -> bool:
    """Whether an answer can be given as a whole number."""
    return not isinstance(value, str) and bool(value.is_integer)


# For each kind of question, the function that turns it, what was told and the scenario into what is asked.
Answers = Mapping[type, Callable[..., Asked]]
