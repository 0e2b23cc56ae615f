"""A double number line: counts above, percents below, in tenths of the whole."""

from __future__ import annotations

import re
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.asks.expression import Expr, Op, Quantity, Stated, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support, summed

_PERCENT = re.compile(r"(\d+(?:\.\d+)?)%")


class Rate(NamedTuple):
    """A part, its whole and its percent, and whether the words print the whole."""

    part: Rational
    whole: Rational
    percent: Rational
    whole_printed: bool
    of_trials: bool = False


def rate(scene: Scene) -> Rate | None:
    """The percent that a problem is about; None where it tells of something else."""
    goal = scene.problem.ask.goal
    if not (isinstance(goal, Value) and isinstance(goal.expr, Op) and len(goal.expr.args) == 2):
        return None
    symbol, (first, second) = goal.expr
    exact = scene.problem.answer.exact
    if not isinstance(exact, Rational):
        return None
    if symbol == "*" and isinstance(second, Stated) and (percent := _printed_percent(scene, first)) is not None:
        return Rate(exact, Integer(second.number), percent, True)
    if symbol == "/" and isinstance(first, Stated) and (percent := _printed_percent(scene, second)) is not None:
        return Rate(Integer(first.number), exact, percent, False)
    counted = summed(first)
    if symbol == "/" and counted is not None and isinstance(second, Quantity) and scene.count(second):
        part, whole = Integer(sum(map(scene.count, counted))), Integer(scene.count(second))
        printed = any(given.expr == second and given.where == "words" for given in scene.problem.givens)
        return Rate(part, whole, part / whole * 100, printed, second.measure == "trials")
    return None


def _printed_percent(scene: Scene, expr: Expr) -> Rational | None:
    numbers = (_PERCENT.fullmatch(given.number) for given in scene.problem.givens if given.expr == expr)
    return next((Rational(found[1]) for found in numbers if found), None)


def double_number_line(scene: Scene) -> Support | None:
    """The two lines of a problem on a percent of at most the whole."""
    found = rate(scene)
    if found is None or not 0 < found.percent <= 100 or found.part.q != 1 or found.whole.q != 1:
        return None
    name = str(scene.words["trials" if found.of_trials else "things"])
    known = str(found.whole) if found.whole_printed else ""
    lines = f"upper line {name}, lower line percent, both in 10 equal parts from 0 to 100%"
    told = f"the 100% stands under {known}" if known else "no number is above 100%"
    place = f"{found.percent}%" if found.percent.q == 1 else f"{found.percent.p}/{found.percent.q}%"
    return Support(
        _lines(name, known, None, "", f"Double number line to fill in: {lines}; {told}."),
        _lines(
            name,
            str(found.whole),
            found,
            place,
            f"Double number line, filled in: {lines}; {found.part} stands over {place}, {found.whole} over 100%.",
        ),
    )


def _lines(name: str, whole: str, found: Rate | None, place: str, alt: str) -> FigureData:
    marks = []
    if found is not None and found.percent != 100:
        at = found.percent / 100
        # A percent that is not whole has no room under its point; the alt text and the steps say it.
        marks.append({"top": at.p, "bottom": at.q, "upper": str(found.part), "lower": "" if "/" in place else place})
    return {"kind": "double-number-line", "upper": name, "lower": "percent", "whole": whole, "marks": marks, "alt": alt}
