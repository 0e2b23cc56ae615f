"""Counts that differ in one thing only, said as one: "each group" and not the same clause for each of six groups."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from mathgen.asks.expression import Choice, Expr, Op, Quantity
from mathgen.reading.pupils.plan import Picked
from mathgen.reading.say_back import things_of, when_of, who_of
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL, Label, Measure, Scope
from mathgen.trials.table import TrialTable

_NOUN = {"groups": "group", "trials": "trial", "colors": "color"}


class Series(NamedTuple):
    """One count for each of some labels: ``scope`` is what they share, and ``by`` the part that differs."""

    measure: Measure
    scope: Scope
    by: str
    labels: tuple[Label, ...]


def series_of(exprs: Sequence[Expr]) -> Series | None:
    """What the counts have in common; None where they differ in more than one label each."""
    found = [expr for expr in exprs if isinstance(expr, Quantity)]
    if len(found) < 2 or len(found) != len(exprs):
        return None
    measure = found[0].measure
    if measure in BY_TRIAL or any(one.measure != measure for one in found):
        return None
    apart = [part for part in Scope._fields if len({getattr(one.scope, part) for one in found}) > 1]
    if len(apart) != 1:
        return None
    [by] = apart
    labels = [getattr(one.scope, by) for one in found]
    if any(label is None or len(label) != 1 for label in labels):
        return None
    return Series(measure, found[0].scope._replace(**{by: None}), by, tuple(label[0] for label in labels))


class SaySeries:
    """Says such counts of one table."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        """Args:
        table: its labels are named as "each group".
        scenario: nouns and verbs of the activity.
        """
        self._table, self._scenario = table, scenario

    def choice(self, goal: Choice) -> str | None:
        """ "Find which group knocked down the most pins in Trial 1"; None where the counts have too little in common."""
        parts = [expr.args for expr in goal.exprs if isinstance(expr, Op) and expr.symbol == "/"]
        rate = len(parts) == len(goal.exprs)
        series = series_of([part[0] for part in parts] if rate else goal.exprs)
        if series is None:
            return None
        if rate and any(not isinstance(whole, Quantity) or whole != Quantity("set_up", part.scope) for part, whole in parts):  # type: ignore[union-attr]
            return None
        two = len(series.labels) == 2
        things = things_of(series.scope, self._scenario)
        most = ("more" if two else "the most") if goal.most else ("fewer" if two else "the fewest")
        what = f"{most} {things}"
        if rate:
            size = ("greater" if two else "greatest") if goal.most else ("smaller" if two else "smallest")
            what = f"the {size} fraction of {'its' if series.by == 'groups' else 'the'} {things}"
        past = self._scenario.past[series.measure]
        when = "" if series.by == "trials" else f" {when_of(series.scope, self._table, self._scenario)}"
        which = self._which(series)
        if series.by == "groups":
            return f"Find which {which} {past} {what}{when}"
        who = who_of(series.scope, self._scenario, self._table)
        return f"Find {'in' if series.by == 'trials' else 'of'} which {which} {who} {past} {what}{when}"

    def picked(self, goal: Picked, tested: str) -> str | None:
        """ "Find each group for which the number of pins knocked down in Trial 1 is more than 5"."""
        series = series_of(goal.exprs)
        if series is None:
            return None
        noun = _NOUN[series.by]
        of = f"those of {self._labels(series)}"
        if goal.counted:
            what = f"Count {f'the {noun}s' if self._all(series) else of} for which"
        else:
            what = f"Find {f'each {noun}' if self._all(series) else of} for which"
        return f"{what} the number of {self._counted(series)} is {tested} {goal.number}"

    def statistic(self, counts: Sequence[Expr], name: str) -> str | None:
        """ "The mean of the numbers of pins that the Owls knocked down in each trial"."""
        series = series_of(counts)
        if series is None:
            return None
        past = self._scenario.past[series.measure]
        things = things_of(series.scope, self._scenario)
        when = when_of(series.scope, self._table, self._scenario)
        if series.by == "groups":
            each = "each group" if self._all(series) else f"each of {self._labels(series)}"
            return f"{name} of the numbers of {things} that {each} {past} {when}"
        who = who_of(series.scope, self._scenario, self._table)
        if series.by == "trials":
            each = "each trial" if self._all(series) else f"each of {self._labels(series)}"
            return f"{name} of the numbers of {things} that {who} {past} in {each}"
        return None

    def _counted(self, series: Series) -> str:
        past = self._scenario.past[series.measure]
        things = things_of(series.scope, self._scenario)
        when = "" if series.by == "trials" else f" {when_of(series.scope, self._table, self._scenario)}"
        who = "" if series.by == "groups" else f"that {who_of(series.scope, self._scenario, self._table)} "
        return f"{things} {who}{past}{when}"

    def _all(self, series: Series) -> bool:
        return set(series.labels) == set(getattr(self._table, series.by))

    def _which(self, series: Series) -> str:
        if series.by == "groups" and len(series.labels) == len(self._table.groups) - 1 >= 3:
            return f"of {who_of(Scope(tuple(map(str, series.labels))), self._scenario, self._table)}"
        return _NOUN[series.by] if self._all(series) and len(series.labels) > 2 else f"of {self._labels(series)}"

    def _labels(self, series: Series) -> str:
        labels = series.labels
        if series.by == "trials" and all(isinstance(label, int) for label in labels):
            return f"{self._scenario.trials.capitalize()} {listed([str(label) for label in labels])}"
        if series.by == "trials":
            return listed([trial_name(label, self._scenario) for label in labels])
        return listed([group_name(str(label), self._scenario) if series.by == "groups" else str(label) for label in labels])
