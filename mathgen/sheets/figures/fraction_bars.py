"""Fraction bars: one whole as a bar in equal parts, for the pupil to shade."""

from __future__ import annotations

from typing import Any

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.sheets.figures.printed_fractions import Part, Parts, parts_of
from mathgen.sheets.figures.scene import FigureData, Scene, Support, summed

MOST_PARTS = 12  # more cannot be counted at a glance, nor shaded
_MOST_BARS = 3


def fraction_bars(scene: Scene) -> Support | None:
    """One bar where all is of one whole in the same parts; a bar for each fraction that is compared."""
    equal = _equal(scene)
    if equal is not None:
        return equal
    found = parts_of(scene)
    if found is None or not all(part.top <= part.bottom and 2 <= part.bottom <= MOST_PARTS for part in found.parts):
        return None
    wholes = list(dict.fromkeys(part.expr.args[1] for part in found.parts))
    if found.way == "compared":
        return _each(_labels(scene), found)
    if found.way == "gap" and len(wholes) > 1:
        return _each(scene.names([whole for whole in wholes if isinstance(whole, Quantity)]), found)
    if len(wholes) > 1:
        return None
    bottoms = {part.bottom for part in found.parts}
    if len(bottoms) > 1:
        return None
    cut = bottoms.pop()
    runs = _runs(found)
    if runs is None or sum(runs) > cut:
        return None
    rest = [(run, pattern) for pattern, run in enumerate(runs)]
    shaded = " and then ".join(str(run) for run in runs)
    return Support(
        _figure([_bar("", cut, [])], f"Fraction bar to shade: one whole in {cut} equal parts, none shaded."),
        _figure([_bar("", cut, rest)], f"Fraction bar: one whole in {cut} equal parts, {shaded} shaded, {cut - sum(runs)} not."),
    )


def _runs(found: Parts) -> list[int] | None:
    """How many parts are shaded in each pattern, from the left."""
    tops = [part.top for part in found.parts]
    if found.way == "gap":
        return [tops[1], tops[0] - tops[1]] if tops[0] >= tops[1] else None
    return tops


def _each(labels: list[str], found: Parts) -> Support | None:
    """A bar of its own for each fraction."""
    if not 2 <= len(found.parts) == len(labels) <= _MOST_BARS:
        return None
    pairs: list[tuple[str, Part]] = list(zip(labels, found.parts, strict=True))
    blank = ", ".join(f"{label} in {part.bottom} equal parts" for label, part in pairs)
    filled = ", ".join(f"{label} {part.top} of {part.bottom} parts shaded" for label, part in pairs)
    return Support(
        _figure([_bar(label, part.bottom, []) for label, part in pairs], f"Fraction bars of one length to shade: {blank}."),
        _figure([_bar(label, part.bottom, [(part.top, 0)]) for label, part in pairs], f"Fraction bars of one length: {filled}."),
    )


def _equal(scene: Scene) -> Support | None:
    """Two bars of one length for a fraction and its equal with another bottom number."""
    goal = scene.problem.ask.goal
    if not (isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "*" and isinstance(goal.expr.args[1], Op)):
        return None
    counted, times = summed(goal.expr.args[0]), goal.expr.args[1]
    new, old = times.args[0], times.args[-1]
    if counted is None or times.symbol != "/" or not isinstance(new, Stated) or not isinstance(old, Quantity):
        return None
    top, bottom = sum(map(scene.count, counted)), scene.count(old)
    if not (0 < top <= bottom and max(bottom, new.number) <= MOST_PARTS) or top * new.number % bottom:
        return None
    then = top * new.number // bottom
    lengths = f"one in {bottom} equal parts, one in {new.number}"
    return Support(
        _figure([_bar("", bottom, []), _bar("", new.number, [])], f"Fraction bars of one length to shade: {lengths}."),
        _figure(
            [_bar("", bottom, [(top, 0)]), _bar("", new.number, [(then, 0)])],
            f"Fraction bars of one length: {top} of {bottom} parts shaded, {then} of {new.number} parts shaded.",
        ),
    )


def _labels(scene: Scene) -> list[str]:
    """The labels of a choice, as pages show them."""
    words = scene.words
    shown = {**{str(label): name for label, name in words["trial_labels"].items()}, **words["group_labels"]}
    labels = getattr(scene.problem.ask.goal, "labels", ())
    return [str(shown.get(label, label)) for label in labels]


def _bar(label: str, cut: int, runs: list[tuple[int, int]]) -> dict[str, Any]:
    return {"label": label, "cut": cut, "shaded": [{"count": count, "pattern": pattern} for count, pattern in runs]}


def _figure(bars: list[dict[str, Any]], alt: str) -> FigureData:
    return {"kind": "fraction-bars", "bars": bars, "alt": alt}
