"""Which cells a total may be the sum of: a totals row sums rows above it, a totals column sums columns beside it."""

from __future__ import annotations

from dataclasses import dataclass

from mathgen.trials.column_uses import Columns
from mathgen.trials.headed_columns import HeadedColumn
from mathgen.trials.labels import spelling_key, total_label, total_of
from mathgen.trials.scope import Label


@dataclass(frozen=True, slots=True)
class ResultRow:
    """A row of results above a total, with its keys."""

    number: int
    group: str
    trial: Label | None
    color: str | None


@dataclass(frozen=True, slots=True)
class TotalKeys:
    """What stands in the key cells of a totals row; "" where nothing does."""

    group: str
    trial: str
    color: str
    totalled: str | None  # the group that a label such as "Owls total" names
    running: str | None  # the group that the rows above are of


def rows_summed(keys: TotalKeys, trial: Label | None, results: list[ResultRow], last_total: int) -> list[list[int]]:
    """Each set of rows that a totals row may be the sum of, the likeliest first.

    Args:
        keys: the key cells of the totals row.
        trial: the trial that it names, if any.
        results: the rows of results above it.
        last_total: the totals row before it, 0 for none.
    """
    group = keys.totalled
    if group is None and keys.group and total_label(keys.group) is None:
        group = keys.group
    since = [row for row in results if row.number > last_total]
    if group is not None:
        choices = [[row for row in results if spelling_key(row.group) == spelling_key(group)]]
    elif not keys.group and total_label(keys.trial) and keys.running is not None:
        choices = [[row for row in results if spelling_key(row.group) == spelling_key(keys.running)], results, since]
    else:
        choices = [results, since]
    if trial is not None:
        choices = [[row for row in rows if row.trial == trial] for rows in choices]
    if keys.color and total_label(keys.color) is None and total_of(keys.color) is None:
        choices = [[row for row in rows if row.color == keys.color] for rows in choices]
    return [[row.number for row in rows] for rows in choices]


def summed_columns(total: HeadedColumn, columns: Columns) -> list[list[int]]:
    """Each set of columns that a total column may be the sum of, the likeliest first."""
    heading = total.heading
    values = [column for column in columns.values if heading.measure is None or column.heading.measure in (None, heading.measure)]
    if heading.color:
        values = [column for column in values if column.heading.color == heading.color]
    before = max((other.number for other in columns.totals if other.number < total.number), default=0)
    choices = [values, [column for column in values if before < column.number < total.number]]
    choices += [[column for column in values if column.heading.measure == measure] for measure in ("down", "standing", "set_up")]
    if heading.trial is not None:
        of_trial = [column for column in values if column.heading.trial == heading.trial]
        # A second total under the last trial's heading is the grand total, reached over by that heading.
        second = any(other.heading.trial == heading.trial and other.number < total.number for other in columns.totals)
        choices = [of_trial, *choices] if second else [of_trial]
    return [numbers for choice in choices if (numbers := [column.number for column in choice])]
