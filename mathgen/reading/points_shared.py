"""Points that are earned together and shared out: what earns one, how many there are, and among whom."""

from __future__ import annotations

from mathgen.reading.meaning.counts import Points, PointsEarned, ShareOut
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told


def points(told: Told, claim: Points) -> None:
    told.points_claim = claim
    told.open["points"] = "what earns a point"
    for part in DIMENSIONS:
        labels = getattr(claim.np, part)
        if isinstance(labels, tuple) or (isinstance(labels, Mark) and part != "colors"):
            told.mentions.resolve(part, labels)


def points_earned(told: Told, claim: PointsEarned) -> None:
    if told.points_claim is None:
        raise NotRead("nothing says what earns a point")
    told.points_said.append(claim.number)


def share_out(told: Told, claim: ShareOut) -> None:
    if told.share_out is not None:
        raise NotRead("points are shared twice")
    told.share_out = claim
    told.open["share"] = "the sharing"
    if claim.points is not None:
        told.points_said.append(claim.points)


TAKEN: Takers = {
    Points: points,
    PointsEarned: points_earned,
    ShareOut: share_out,
}
