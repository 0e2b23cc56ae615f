"""Counts added up afresh from a table's raw rows, for the proof alone."""

from __future__ import annotations

from typing import Any

from sympy import QQ

from mathgen.asks.expression import Measured, Price, Quantity, Stated, Tally
from mathgen.trials.scope import BY_TRIAL, Label
from mathgen.trials.table import Row, TrialTable


class RawRows:
    """The rows of one table. Shares nothing with ``trials.totals``: a fault there must show here."""

    def __init__(self, table: TrialTable) -> None:
        self._rows_of: dict[str, list[Row]] = {}
        for row in table.rows:
            self._rows_of.setdefault(row.group, []).append(row)
        self._counts: dict[Quantity, int] = {}
        self._prices = table.prices

    def count(self, quantity: Quantity) -> int:
        """Pins of a measure over a scope, row by row."""
        found = self._counts.get(quantity)
        if found is None:
            found = self._counts[quantity] = self._add_up(quantity)
        return found

    def length(self, measured: Measured) -> Any:
        """A length in inches, as an element of QQ; None where no row or rows that differ hold it."""
        lengths = [row.gap_inches for row in self._rows_of.get(measured.group, ()) if row.trial == measured.trial]
        first = lengths[0] if lengths else None
        if first is None or any(one != first for one in lengths):
            return None
        return QQ(int(first.p), int(first.q))

    def price(self, price: Price) -> Any:
        """Cents, or hundredths of a dollar as an element of QQ; None where no line of the list, or more than one, has the item."""
        found = [one.cents for one in self._prices if one.item == price.item]
        if len(found) != 1:
            return None
        return found[0] if price.unit == "cents" else QQ(found[0], 100)

    def tally(self, tally: Tally) -> int | None:
        """How many lengths or counts pass the test; None where one was not measured."""
        if tally.test == "digits":
            return _digits(tally)
        found, than = 0, QQ(tally.than.number, tally.than.bottom)
        to = than if tally.to is None else QQ(tally.to.number, tally.to.bottom)
        for one in tally.series:
            assert not isinstance(one, Stated)  # only of runs are the numbers told
            number = self.number(one)
            if number is None:
                return None
            found += {"=": number == than, ">": number > than, "<": number < than, "from": than <= number <= to}[tally.test]
        return found

    def number(self, leaf: Quantity | Measured | Price | Tally) -> Any:
        """The count, the length, the price, or how many lengths."""
        if isinstance(leaf, Price):
            return self.price(leaf)
        return self.length(leaf) if isinstance(leaf, Measured) else self.tally(leaf) if isinstance(leaf, Tally) else self.count(leaf)

    def _add_up(self, quantity: Quantity) -> int:
        groups, trials, colors = quantity.scope
        if quantity.measure in BY_TRIAL:
            return self._by_trial(quantity)
        rows = [row for group in (self._rows_of if groups is None else groups) for row in self._rows_of.get(group, ())]
        chosen = [row for row in rows if (trials is None or row.trial in trials) and (colors is None or row.color in colors)]
        if quantity.measure == "set_up":
            return sum(row.set_up for row in chosen)
        if quantity.measure == "down":
            return sum(row.down for row in chosen)
        return sum(row.set_up - row.down for row in chosen)

    def _by_trial(self, quantity: Quantity) -> int:
        """Trials, one by one; a success has a count of the target color that is not 0, and no other such count."""
        groups, trials, _ = quantity.scope
        found = 0
        for group in self._rows_of if groups is None else groups:
            labels: list[Label] = []
            for row in self._rows_of.get(group, ()):
                if row.trial not in labels and (trials is None or row.trial in trials):
                    labels.append(row.trial)
            for label in labels:
                rows = [row for row in self._rows_of[group] if row.trial == label]
                on_target = any(row.down > 0 for row in rows if row.target == row.color)
                others = any(row.down > 0 for row in rows if row.target != row.color)
                found += quantity.measure == "trials" or (on_target and not others)
        return found


def _digits(tally: Tally) -> int:
    """How many of the numbers have enough digits from 1 to the last that is meant; digits are taken off from the right."""
    assert tally.to is not None  # how many are enough
    found = 0
    for run in tally.series:
        assert isinstance(run, Stated)  # runs are told in the words
        rest, enough = run.number, tally.to.number
        while rest and enough:
            rest, digit = divmod(rest, 10)
            enough -= 1 <= digit <= tally.than.number
        found += not enough
    return found
