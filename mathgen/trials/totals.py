"""Totals over a scope, worked out once each and remembered."""

from __future__ import annotations

from sympy import Rational

from mathgen.trials.scope import BY_TRIAL, Label, Measure, Scope
from mathgen.trials.table import TrialTable


class Totals:
    """The totals of one table.

    The proof adds up afresh from the raw rows and never comes here: an import contract bars it.
    """

    def __init__(self, table: TrialTable) -> None:
        self.table = table
        self._cells = {(row.group, row.trial, row.color): (row.set_up, row.down) for row in table.rows}
        self._known: dict[Scope, tuple[int, int, bool]] = {}
        self._known_trials: dict[tuple[Measure, Scope], int] = {}
        self._gaps: dict[tuple[str, Label], set[Rational | None]] = {}
        self._cents = {one.item: one.cents for one in table.prices}
        for row in table.rows:
            self._gaps.setdefault((row.group, row.trial), set()).add(row.gap_inches)

    def _sums(self, scope: Scope) -> tuple[int, int, bool]:
        known = self._known.get(scope)
        if known is not None:
            return known
        table, cells = self.table, self._cells
        set_up, down, complete = 0, 0, True
        for group in scope.groups or table.groups:
            for trial in scope.trials or table.trials:
                for color in scope.colors or table.colors:
                    cell = cells.get((group, trial, color))
                    if cell is None:
                        complete = False
                    else:
                        set_up += cell[0]
                        down += cell[1]
        self._known[scope] = set_up, down, complete
        return set_up, down, complete

    def total(self, measure: Measure, scope: Scope) -> int:
        """Pins set up, knocked down or left standing, or trials or successes, over every row in the scope.

        >>> from mathgen.trials.table import Row
        >>> Totals(TrialTable((Row("Owls", 1, "red", 4, 3), Row("Owls", 2, "red", 4, 1)))).total("standing", Scope())
        4
        """
        if measure in BY_TRIAL:
            return self._of_trials(measure, scope)
        set_up, down, _ = self._sums(scope)
        if measure == "down":
            return down
        return set_up if measure == "set_up" else set_up - down

    def _of_trials(self, measure: Measure, scope: Scope) -> int:
        """How many trials there were, or how many of them were successes: pins of the target color fell, and no others."""
        if (measure, scope) in self._known_trials:
            return self._known_trials[measure, scope]
        fallen: dict[tuple[str, Label], set[bool]] = {}  # of each trial: whether what fell was of the target color
        for row in self.table.rows:
            if row.group in (scope.groups or self.table.groups) and row.trial in (scope.trials or self.table.trials):
                fallen.setdefault((row.group, row.trial), set()).update({row.color == row.target} if row.down else ())
        found = len(fallen) if measure == "trials" else sum(1 for colors in fallen.values() if colors == {True})
        self._known_trials[measure, scope] = found
        return found

    def gap(self, group: str, trial: Label) -> Rational | None:
        """The space between pins in inches; None where it was not measured, or differs within the trial."""
        found = self._gaps.get((group, trial), set())
        return next(iter(found)) if len(found) == 1 else None

    def cents(self, item: str) -> int:
        """The price of an item of a price list."""
        return self._cents[item]

    def complete(self, scope: Scope) -> bool:
        """Whether every result in the scope was taken; words such as "in 3 trials" are true only then."""
        return self._sums(scope)[2]
