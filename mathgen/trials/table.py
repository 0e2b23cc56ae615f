"""The class's table: for each group, trial and color, pins set up and knocked down; or the price list of the class store."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from sympy import Rational

from mathgen.trials.scope import Label

TableKind = Literal["results", "price list"]


@dataclass(frozen=True, slots=True)
class Row:
    """One group's result for one color in one trial. Counts are whole pins, ``0 <= down <= set_up``."""

    group: str
    trial: Label
    color: str
    set_up: int
    down: int
    target: str | None = None  # the color that the group called
    gap_inches: Rational | None = None  # space between pins
    height: str | None = None  # release height as typed, with its unit
    round: str | None = None  # design round
    notes: str | None = None


@dataclass(frozen=True, slots=True)
class Priced:
    """One line of a price list: what is sold, and for how many cents, 1 to 100."""

    item: str
    cents: int


@dataclass(frozen=True, slots=True)
class TrialTable:
    """Rows in the order of the file. Labels keep the order in which they first appear.

    ``absent`` names the results that the class did not take: no row, never a zero.
    ``prices`` makes it the other kind of table, a price list: then it has no results, and problems are about money.
    """

    rows: tuple[Row, ...]
    absent: tuple[tuple[str, Label, str], ...] = ()
    prices: tuple[Priced, ...] = ()
    groups: tuple[str, ...] = field(init=False)
    trials: tuple[Label, ...] = field(init=False)
    colors: tuple[str, ...] = field(init=False)

    @property
    def kind(self) -> TableKind:
        """Which of the two kinds of table it is."""
        return "price list" if self.prices else "results"

    def __post_init__(self) -> None:
        object.__setattr__(self, "groups", tuple(dict.fromkeys(row.group for row in self.rows)))
        object.__setattr__(self, "trials", tuple(dict.fromkeys(row.trial for row in self.rows)))
        object.__setattr__(self, "colors", tuple(dict.fromkeys(row.color for row in self.rows)))
