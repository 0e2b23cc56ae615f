"""A table as problem models look at it: where complete results stand, and what they add up to."""

from __future__ import annotations

from functools import cached_property
from itertools import pairwise
from typing import Any, NamedTuple

from sympy import Rational

from mathgen.asks.expression import Measured, Money, Price, Quantity
from mathgen.scenario.naming import several_of
from mathgen.trials.scope import Label, Measure, Scope
from mathgen.trials.totals import Totals


class Spot(NamedTuple):
    """Whose results, and in which trials. None means all: the class, every trial."""

    groups: tuple[str, ...] | None
    trials: tuple[Label, ...] | None


class TableView:
    """The totals of a table, and the axes that problem models share."""

    def __init__(self, totals: Totals) -> None:
        self.totals = totals
        self.table = totals.table
        self._quantities: dict[tuple[Measure, Spot, str | tuple[str, ...] | None], Quantity] = {}  # the same ones come up again and again

    def count(self, measure: Measure, spot: Spot, color: str | tuple[str, ...] | None = None) -> int:
        """Pins of a measure at a spot, of one color, some colors, or all."""
        return self.totals.total(measure, self.scope(spot, color))

    def number(self, quantity: Quantity) -> int:
        """The value of a quantity."""
        return self.totals.total(quantity.measure, quantity.scope)

    def length(self, measured: Measured) -> Rational:
        """The value of a length, in inches.

        Raises:
            ValueError: there is none.
        """
        found = self.totals.gap(measured.group, measured.trial)
        if found is None:
            raise ValueError(f"nothing was measured for {measured}")
        return found

    def cents(self, price: Price) -> int:
        """A price in cents, whatever unit it is told in."""
        return self.totals.cents(price.item)

    def prices(self, unit: Money) -> tuple[Price, ...]:
        """Every price of the list, to be told in one unit, in list order."""
        return tuple(Price(one.item, unit) for one in self.table.prices)

    def countable_prices(self, unit: Money) -> tuple[Price, ...]:
        """As ``prices``, of items of which several can be said: 4 paper tubes."""
        return tuple(price for price in self.prices(unit) if several_of(price.item) is not None)

    def value(self, leaf: Quantity | Measured | Price) -> Any:
        """The count, the length or the price."""
        if isinstance(leaf, Price):
            return Rational(self.cents(leaf), 100 if leaf.unit == "dollars" else 1)
        return self.length(leaf) if isinstance(leaf, Measured) else self.number(leaf)

    @cached_property
    def lengths(self) -> tuple[Measured, ...]:
        """Every length that a ruler of halves, quarters and eighths shows, in table order."""
        found = []
        for group, trial in dict.fromkeys((row.group, row.trial) for row in self.table.rows):
            gap = self.totals.gap(group, trial)
            if gap is not None and gap > 0 and 8 % gap.q == 0:
                found.append(Measured("gap", group, trial))
        return tuple(found)

    def scope(self, spot: Spot, color: str | tuple[str, ...] | None = None) -> Scope:
        """The scope of a spot and color, with None wherever it covers everything."""
        colors = (color,) if isinstance(color, str) else color
        table = self.table
        return Scope(
            None if spot.groups is None or len(spot.groups) == len(table.groups) > 1 else spot.groups,
            None if spot.trials is None or len(spot.trials) == len(table.trials) > 1 else spot.trials,
            None if colors is None or len(colors) == len(table.colors) > 1 else colors,
        )

    def quantity(self, measure: Measure, spot: Spot, color: str | tuple[str, ...] | None = None) -> Quantity:
        """The quantity of a measure at a spot."""
        known = self._quantities.get((measure, spot, color))
        if known is None:
            known = self._quantities[measure, spot, color] = Quantity(measure, self.scope(spot, color))
        return known

    @cached_property
    def trial_spans(self) -> tuple[tuple[Label, ...] | None, ...]:
        """Each trial, each two neighbors, and all."""
        trials = self.table.trials
        ones = [(trial,) for trial in trials]
        twos = list(pairwise(trials)) if len(trials) > 2 else []
        return (*ones, *twos, None) if len(trials) > 1 else tuple(ones)

    @cached_property
    def groups_or_class(self) -> tuple[tuple[str, ...] | None, ...]:
        """Each group, and None for the class; a single group is the class."""
        ones = tuple((group,) for group in self.table.groups)
        return (*ones, None) if len(ones) > 1 else ones

    @cached_property
    def spots(self) -> tuple[Spot, ...]:
        """Every group and the class, over every span of trials, wherever no result is missing."""
        spots = [Spot(groups, span) for groups in self.groups_or_class for span in self.trial_spans]
        return tuple(spot for spot in spots if self.totals.complete(Scope(spot.groups, spot.trials)))

    @cached_property
    def one_trial_spots(self) -> tuple[Spot, ...]:
        """Every spot of one trial: each pin was set up once; the same pins stand again in the next trial."""
        return tuple(spot for spot in self.spots if len(spot.trials or self.table.trials) == 1)

    @cached_property
    def group_trials(self) -> tuple[Spot, ...]:
        """Every spot of one group in one trial."""
        return tuple(spot for spot in self.spots if spot.groups is not None and spot.trials is not None and len(spot.trials) == 1)

    @cached_property
    def group_pairs(self) -> tuple[Spot, ...]:
        """Every two neighbors in one trial, where they are not the class: sets of a size that one group does not have."""
        groups = self.table.groups
        twos = list(pairwise(groups)) if len(groups) > 2 else []
        spots = [Spot(two, (trial,)) for two in twos for trial in self.table.trials]
        return tuple(spot for spot in spots if self.totals.complete(Scope(spot.groups, spot.trials)))

    @cached_property
    def colors_or_all(self) -> tuple[str | None, ...]:
        """Each color, and None for all of them together."""
        return (*self.table.colors, None) if len(self.table.colors) > 1 else self.table.colors

    @cached_property
    def color_sets(self) -> tuple[tuple[str, ...], ...]:
        """Sets of two to four colors that one sentence can list: all where they are few, else neighbors."""
        colors = self.table.colors
        if 2 <= len(colors) <= 4:
            return (colors,)
        return tuple(colors[start : start + size] for size in (2, 3) for start in range(len(colors) - size + 1))

    def is_cell(self, quantity: Quantity) -> bool:
        """Whether the table prints this very count in one cell."""
        groups, trials, colors = quantity.scope
        table = self.table
        sizes = (len(groups or table.groups), len(trials or table.trials), len(colors or table.colors))
        return sizes == (1, 1, 1)
