"""Points on a grid: what their coordinates tell."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.reading.lengths import measured_at
from mathgen.reading.meaning.lengths import Axes, PointAt
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told


def axes(told: Told, claim: Axes) -> None:
    """Keep which coordinate tells inches.

    Raises:
        NotRead: the sentences do not go together, or one of them is missing or comes twice.
    """
    before = told.axes
    if before is None and claim.of in ("both", "first"):
        told.axes = claim
    elif before is not None and (before.of, claim.of) == ("first", "second") and before.inches_first == claim.inches_first:
        told.axes = Axes(claim.inches_first)
    else:
        raise NotRead("it is not clear what the coordinates tell")


def point_at(told: Told, claim: PointAt) -> None:
    """Keep both coordinates of a point.

    Raises:
        NotRead: it is not said what they tell, or the table says otherwise.
    """
    if told.axes is None or told.axes.of != "both":
        raise NotRead("it is not said what the coordinates tell")
    inches, pins = (claim.first, claim.second) if told.axes.inches_first else (claim.second, claim.first)
    measured = measured_at(told, claim.np)
    told.said(measured, inches)
    told.coordinates.append(told.facts[-1])
    told.lengths.append(measured)
    told.said(Quantity("down", told.scope(claim.np)), pins)
    told.coordinates.append(told.facts[-1])


TAKEN: Takers = {
    Axes: axes,
    PointAt: point_at,
}
