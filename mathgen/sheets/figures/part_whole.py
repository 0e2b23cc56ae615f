"""Part-whole boxes: a long box for the whole over one for each part, with a frame for the number sentence."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.asks.expression import Op, Quantity, Value
from mathgen.sheets.figures.scene import FigureData, Scene, Support, summed

_MOST_PARTS = 4  # more boxes would be too narrow to write in


class Parted(NamedTuple):
    """A whole and its parts, whichever of them is asked for."""

    whole: Quantity | None  # None where the question is what the parts come to
    parts: tuple[Quantity, ...]


def parted(scene: Scene) -> Parted | None:
    """How a problem cuts a whole into parts; None where it tells of something else."""
    ask = scene.problem.ask
    if not isinstance(ask.goal, Value):
        return None
    goal = ask.goal.expr
    if isinstance(goal, Op) and goal.symbol == "+" and not ask.given:
        parts = summed(goal)
        return None if parts is None else Parted(None, parts)
    if isinstance(goal, Quantity) and len(ask.given) == 1 and isinstance(ask.given[0].right, Quantity):
        left, right = ask.given[0].left, ask.given[0].right
        if isinstance(left, Op) and left.symbol == "-" and len(left.args) == 2 and right.measure == "standing":
            start, change = left.args
            return Parted(start, (change, right)) if isinstance(start, Quantity) and isinstance(change, Quantity) else None
        parts = summed(left)
        return Parted(right, parts) if parts is not None and goal in parts else None
    if isinstance(goal, Op) and goal.symbol == "-" and isinstance(goal.args[0], Quantity) and len(goal.args) == 2:
        whole, gone = goal.args[0], summed(goal.args[1])
        if gone is not None and whole.measure == "set_up" and {part.measure for part in gone} == {"down"}:
            return Parted(whole, (*gone, Quantity("standing", whole.scope)))
    return None


def part_whole(scene: Scene) -> Support | None:
    """The boxes of a problem on parts of a whole number."""
    found = parted(scene)
    if found is None or not 2 <= len(found.parts) <= _MOST_PARTS:
        return None
    parts = found.parts
    rest = parts[-1].measure != parts[0].measure
    names = [*scene.names(parts[:-1]), str(scene.words["standing"])] if rest and len(parts) > 2 else scene.names(parts)
    names = [name or f"part {place}" for place, name in enumerate(names, start=1)]
    top = str(scene.words["set_up"]) if rest else "in all"
    numbers = [scene.count(part) for part in parts]
    frame = " plus ".join(["blank"] * len(parts)) + " equals blank"
    empty = f"Part-whole boxes to fill in. Top box, the whole: {top}. Boxes under it, the parts: {', '.join(names)}. Frame: {frame}."
    told = ", ".join(f"{name} {number}" for name, number in zip(names, numbers, strict=True))
    filled = f"Part-whole boxes, filled in. Top box, the whole: {top} {sum(numbers)}. Boxes under it: {told}."
    return Support(_boxes(top, names, None, empty), _boxes(top, names, numbers, filled))


def _boxes(top: str, names: list[str], numbers: list[int] | None, alt: str) -> FigureData:
    written = [""] * (len(names) + 1) if numbers is None else [str(sum(numbers)), *map(str, numbers)]
    return {
        "kind": "part-whole",
        "whole": {"label": top, "number": written[0]},
        "parts": [{"label": name, "number": number} for name, number in zip(names, written[1:], strict=True)],
        "alt": alt,
    }
