"""The numbers of a table, read cell by cell: counts, prices and lengths."""

from __future__ import annotations

from mathgen.asks.expression import Measured, Price, Quantity
from mathgen.asks.steps.written_number import Number, dollars, mixed, whole
from mathgen.trials.scope import BY_TRIAL, Measure
from mathgen.trials.table import Row, TrialTable


class CellReader:
    """Reads counts cell by cell from one table."""

    def __init__(self, table: TrialTable) -> None:
        self._table = table
        self._cells = {(row.group, row.trial, row.color): row for row in table.rows}
        self._known: dict[Quantity, tuple[int, ...]] = {}
        self.money = bool(table.prices)  # decimals are dollars, with two places

    def parts(self, quantity: Quantity) -> tuple[int, ...]:
        """The count in each cell of the quantity's scope, in table order; of successes 1 or 0 for each trial, of trials 1."""
        known = self._known.get(quantity)
        if known is None:
            known = self._known[quantity] = self._trials(quantity) if quantity.measure in BY_TRIAL else self._pins(quantity)
        return known

    def _pins(self, quantity: Quantity) -> tuple[int, ...]:
        groups, trials, colors = quantity.scope
        table = self._table
        spots = (self._cells.get((g, t, c)) for g in groups or table.groups for t in trials or table.trials for c in colors or table.colors)
        return tuple(_count(row, quantity.measure) for row in spots if row is not None)

    def _trials(self, quantity: Quantity) -> tuple[int, ...]:
        marks = []
        for group in quantity.scope.groups or self._table.groups:
            for trial in quantity.scope.trials or self._table.trials:
                rows = [row for color in self._table.colors if (row := self._cells.get((group, trial, color))) is not None]
                fallen = [row.color for row in rows if row.down]
                if rows:
                    marks.append(int(quantity.measure == "trials" or fallen == [rows[0].target]))
        return tuple(marks)

    def price(self, price: Price) -> Number:
        """The price on the list: 25, or 0.25."""
        [cents] = [one.cents for one in self._table.prices if one.item == price.item]
        return whole(cents) if price.unit == "cents" else Number(cents, 100, dollars(cents))

    def length(self, measured: Measured) -> Number:
        """The length that stands in the rows of one trial of a group, as a mixed number."""
        found = {row.gap_inches for (group, trial, _), row in self._cells.items() if (group, trial) == (measured.group, measured.trial)}
        [inches] = found
        if inches is None:
            raise TypeError(f"nothing was measured for {measured}")
        return mixed(int(inches.p), int(inches.q))


def _count(row: Row, measure: Measure) -> int:
    if measure == "down":
        return row.down
    return row.set_up if measure == "set_up" else row.set_up - row.down
