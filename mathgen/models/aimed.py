"""Trials for which a color was called, the target: how many there were, and how many were successes."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from typing import NamedTuple

from mathgen.asks.expression import Expr, Op, Quantity
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

SUCCESS = frozenset({"success"})  # the mark of frames about successes
_IS_OR_NOT = (False, True)


class Record(NamedTuple):
    """The trials of a group, of two, or of the class."""

    spot: Spot
    tries: Quantity
    hits: Quantity  # successes: pins of the target color fell, and no others
    n: int
    k: int
    near: int  # trials in which pins of the target color fell, whatever else did
    pins: int  # of the target color that fell
    none: int  # trials in which nothing fell

    def meant(self, negated: bool) -> tuple[Expr, int]:
        """The successes, or the other trials, and how many they are."""
        return (Op("-", (self.tries, self.hits)), self.n - self.k) if negated else (self.hits, self.k)

    def roles(self, negated: bool) -> dict[str, Role]:
        """What templates may name; ``neg`` is "not " where the other trials are meant."""
        return {"hits": self.hits, "tries": self.tries, "neg": "not " if negated else ""}


def aimed(view: TableView, pairs: bool = True) -> list[Record]:
    """The records of each group, of every two neighbors, and of the class, where each trial has a target and all its results."""
    table = view.table
    lines: dict[tuple[str, object], list[str | None]] = {}
    for row in table.rows:
        lines.setdefault((row.group, row.trial), []).append(row.target if row.target in table.colors else None)
    spoiled = {
        group for (group, _), targets in lines.items() if len(targets) != len(table.colors) or None in targets or len({*targets}) > 1
    }
    groups = [group for group in table.groups if group not in spoiled]
    spots = [Spot((group,), None) for group in groups]
    if pairs and not spoiled:
        spots += [Spot(two, None) for two in pairwise(groups)] if len(groups) > 2 else []
        spots += [Spot(None, None)] if len(groups) > 1 else []
    return [_record(view, spot) for spot in spots]


def _record(view: TableView, spot: Spot) -> Record:
    tries, hits = view.quantity("trials", spot), view.quantity("successes", spot)
    fell = [row.down for row in view.table.rows if row.group in (spot.groups or view.table.groups) and row.color == row.target and row.down]
    n, k = view.number(tries), view.number(hits)
    some = {(row.group, row.trial) for row in view.table.rows if row.group in (spot.groups or view.table.groups) and row.down}
    return Record(spot, tries, hits, n, k, len(fell), sum(fell), n - len(some))


def of_successes(view: TableView, build: Callable[[Record, bool], Draft | None]) -> AskSpace:
    """Drafts about the successes, or the other trials, of each record in which there are both: neither none nor a half of many."""
    records = [one for one in aimed(view) if 0 < one.k < one.n and one.n > 2 and (2 * one.k != one.n or one.n == 4)]
    return AskSpace((records, _IS_OR_NOT), build)


def slips(record: Record, negated: bool) -> tuple[tuple[str, tuple[int | str, ...]], ...]:
    """Mistakes in a part of all trials: each trial that hit the target counts, the other part, part to part, the count alone."""
    n, k = record.n, record.n - record.k if negated else record.k
    near = n - record.near if negated else record.near
    with_none = k - record.none if negated else k + record.none
    return ("T01", (near, n)), ("T10", (with_none, n)), ("T05", (n - k, n)), ("T04", (k, n)), ("T06", (k,))
