"""The raw rows of a class's results, added up afresh, and the words of its activity: all that the audit knows beside a bank line."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from sympy import Rational

Label = str | int


class RawRow(NamedTuple):
    """One result as the table prints it."""

    group: str
    trial: Label
    color: str
    set_up: int
    down: int
    gap: Rational | None = None  # space between pins in inches
    target: str | None = None  # the color called before the trial


class Reach(NamedTuple):
    """Which groups, trials and colors a number covers; None for all."""

    groups: tuple[Label, ...] | None
    trials: tuple[Label, ...] | None
    colors: tuple[Label, ...] | None


@dataclass(frozen=True)
class Words:
    """The nouns and verb forms of one activity that the audit has to know."""

    item: str = "pin"
    items: str = "pins"
    trial: str = "trial"
    trials: str = "trials"
    group: str = "Group"
    the_class: str = "the class"
    after: tuple[tuple[str, str], ...] = (("down", "knocked down"), ("set_up", "set up"), ("standing", "left standing"))
    base: tuple[tuple[str, str], ...] = (("down", "knock down"), ("set_up", "set up"), ("standing", "leave standing"))

    def measure(self, quantity: str) -> str | None:
        """Which of the three measures a quantity in words is."""
        return next((name for name, phrase in self.after if quantity.endswith(phrase)), None)


SEEDS = Words(
    "seed",
    "seeds",
    after=(("down", "that sprouted"), ("set_up", "planted"), ("standing", "left in the soil")),
    base=(("down", "sprout"), ("set_up", "plant"), ("standing", "leave in the soil")),
)


@dataclass(frozen=True)
class Results:
    """All rows, and their labels in order of appearance."""

    rows: tuple[RawRow, ...]
    prices: tuple[tuple[str, int], ...] = ()  # of a price list, which has no rows: item and cents
    groups: tuple[str, ...] = field(init=False)
    trials: tuple[Label, ...] = field(init=False)
    colors: tuple[str, ...] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "groups", tuple(dict.fromkeys(row.group for row in self.rows)))
        object.__setattr__(self, "trials", tuple(dict.fromkeys(row.trial for row in self.rows)))
        object.__setattr__(self, "colors", tuple(dict.fromkeys(row.color for row in self.rows)))

    @staticmethod
    def of(rows: Iterable[object]) -> Results:
        """From any records that have the five fields; lines of a price list have an item and cents."""
        rows = list(rows)
        if rows and hasattr(rows[0], "cents"):
            return Results((), tuple((r.item, r.cents) for r in rows))  # type: ignore[attr-defined]
        kept = ((getattr(r, "gap_inches", None), getattr(r, "target", None)) for r in rows)
        return Results(tuple(RawRow(r.group, r.trial, r.color, r.set_up, r.down, *more) for r, more in zip(rows, kept, strict=True)))  # type: ignore[attr-defined]

    def inside(self, reach: Reach) -> list[RawRow]:
        return [
            row
            for row in self.rows
            if (reach.groups is None or row.group in reach.groups)
            and (reach.trials is None or row.trial in reach.trials)
            and (reach.colors is None or row.color in reach.colors)
        ]

    def gaps(self, reach: Reach) -> set[Rational | None]:
        """Every space between pins that stands in a reach."""
        return {row.gap for row in self.inside(reach)}

    def total(self, measure: str, reach: Reach) -> int:
        """The count of one measure, row by row."""
        rows = self.inside(reach)
        if measure == "down":
            return sum(row.down for row in rows)
        if measure == "set_up":
            return sum(row.set_up for row in rows)
        return sum(row.set_up - row.down for row in rows)

    def cell_count(self, reach: Reach) -> int:
        """How many cells of the table a reach covers."""
        return len(self.inside(reach))

    def complete(self, reach: Reach) -> bool:
        """Whether no result is missing in a reach."""
        sizes = (
            len(self.groups if reach.groups is None else reach.groups),
            len(self.trials if reach.trials is None else reach.trials),
            len(self.colors if reach.colors is None else reach.colors),
        )
        return self.cell_count(reach) == sizes[0] * sizes[1] * sizes[2]


def reach_of(scope: dict[str, Sequence[Label] | str]) -> Reach:
    """The scope of a bank line."""
    return Reach(*(None if scope[name] == "all" else tuple(scope[name]) for name in ("groups", "trials", "colors")))
