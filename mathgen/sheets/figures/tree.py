"""Trees for lists: every first choice branches to every second one."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.sheets.figures.scene import FigureData


def tree(first: Sequence[str], second: Sequence[str], written: bool = False) -> FigureData:
    """A tree of pairs: blank at its ends for the pupil, with the pairs in the key.

    Args:
        first: what is chosen first.
        second: what may follow each of them.
        written: whether the ends are filled in.
    """
    branches = [{"label": one, "ends": list(second) if written else [""] * len(second)} for one in first]
    if written:
        told = "; ".join(f"{one}, then {', '.join(second)}" for one in first)
        alt = f"Tree, filled in: {told}."
    else:
        alt = f"Tree to fill in: {', '.join(first)}, each with {len(second)} empty branches."
    return {"kind": "tree", "branches": branches, "alt": alt}
