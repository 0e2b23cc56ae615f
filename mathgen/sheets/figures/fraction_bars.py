"""Fraction bars: one whole as a bar in equal parts, for the pupil to shade."""

from __future__ import annotations

from typing import Any

from mathgen.sheets.figures.printed_fractions import Part, Parts, parts_of
from mathgen.sheets.figures.scene import FigureData, Scene, Support

MOST_PARTS = 12  # more can not be counted at a glance, nor shaded
_MOST_BARS = 3


def fraction_bars(scene: Scene) -> Support | None:
    """One bar where all is of one whole in the same parts; a bar for each fraction that is compared."""
    found = parts_of(scene)
    if found is None or not all(part.top <= part.bottom and 2 <= part.bottom <= MOST_PARTS for part in found.parts):
        return None
    if found.way == "compared":
        return _compared(scene, found)
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


def _compared(scene: Scene, found: Parts) -> Support | None:
    labels = _labels(scene)
    if not 2 <= len(found.parts) == len(labels) <= _MOST_BARS:
        return None
    pairs: list[tuple[str, Part]] = list(zip(labels, found.parts, strict=True))
    blank = ", ".join(f"{label} in {part.bottom} equal parts" for label, part in pairs)
    filled = ", ".join(f"{label} {part.top} of {part.bottom} parts shaded" for label, part in pairs)
    return Support(
        _figure([_bar(label, part.bottom, []) for label, part in pairs], f"Fraction bars of one length to shade: {blank}."),
        _figure([_bar(label, part.bottom, [(part.top, 0)]) for label, part in pairs], f"Fraction bars of one length: {filled}."),
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
