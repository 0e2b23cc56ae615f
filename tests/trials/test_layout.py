"""One table laid out in each way that classes use is read as the same table; any cells at all end in a table, faults or questions."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.grid import Grid
from mathgen.trials.reading import ReadOptions, interpret
from mathgen.trials.shown_back import as_json, understood
from mathgen.trials.table import Row, TrialTable

Rows = list[list[str]]
TITLE = ["Pins knocked down"]


def square(rows: Rows) -> Grid:
    width = max(map(len, rows))
    return Grid(tuple(tuple(row) + ("",) * (width - len(row)) for row in rows))


def cells(table: TrialTable) -> dict[tuple[object, object, str], Row]:
    return {(row.group, row.trial, row.color): row for row in table.rows}


def heads(table: TrialTable) -> list[str]:
    sets = {row.color: row.set_up for row in table.rows}
    return [f"{color.title()} ({sets[color]})" for color in table.colors]


def wide(table: TrialTable) -> Rows:
    at = cells(table)
    body = [[g, str(t), *(str(at[g, t, c].down) for c in table.colors)] for g in table.groups for t in table.trials]
    return [TITLE, ["Group", "Trial", *heads(table)], *body]


def wide_standing_with_totals(table: TrialTable) -> Rows:
    at = cells(table)
    rows: Rows = [["Pins left standing"], ["Team", "Try", *table.colors, "Total"]]
    rows.append(["Set up", "", *(str(at[table.groups[0], table.trials[0], c].set_up) for c in table.colors), ""])
    left = {key: row.set_up - row.down for key, row in at.items()}
    for g in table.groups:
        for t in table.trials:
            counts = [left[g, t, c] for c in table.colors]
            rows.append([g, f"Trial {t}", *map(str, counts), str(sum(counts))])
    sums = [sum(left[g, t, c] for g in table.groups for t in table.trials) for c in table.colors]
    return [*rows, ["Totals", "", *map(str, sums), str(sum(sums))]]


def long(table: TrialTable) -> Rows:
    head = ["Group", "Trial", "Color", "Set up", "Knocked down"]
    return [head, *([r.group, str(r.trial), r.color, str(r.set_up), str(r.down)] for r in table.rows)]


def long_with_fractions(table: TrialTable) -> Rows:
    return [["Group", "Trial", "Color", "Fell"], *([r.group, f"T{r.trial}", r.color.upper(), f"{r.down}/{r.set_up}"] for r in table.rows)]


def trials_across(table: TrialTable) -> Rows:
    at = cells(table)
    body = [
        [g, head, *(str(at[g, t, c].down) for t in table.trials)]
        for g in table.groups
        for c, head in zip(table.colors, heads(table), strict=True)
    ]
    return [TITLE, ["Group", "Color", *(f"Trial {t}" for t in table.trials)], *body]


def groups_across(table: TrialTable) -> Rows:
    at = cells(table)
    body = [
        [str(t), head, *(str(at[g, t, c].down) for g in table.groups)]
        for t in table.trials
        for c, head in zip(table.colors, heads(table), strict=True)
    ]
    return [TITLE, ["Trial", "Color", *table.groups], *body]


def two_heading_rows(table: TrialTable) -> Rows:
    at = cells(table)
    upper = ["Group", *(label for t in table.trials for label in (f"Trial {t}", *[""] * (len(table.colors) - 1)))]
    body = [[g, *(str(at[g, t, c].down) for t in table.trials for c in table.colors)] for g in table.groups]
    return [TITLE, upper, ["", *heads(table) * len(table.trials)], *body]


def on_its_side(table: TrialTable) -> Rows:
    at = cells(table)
    upper = ["Group", *(g for g in table.groups for _ in table.trials)]
    lower = ["Trial", *(str(t) for _ in table.groups for t in table.trials)]
    body = [
        [head, *(str(at[g, t, c].down) for g in table.groups for t in table.trials)]
        for c, head in zip(table.colors, heads(table), strict=True)
    ]
    return [TITLE, upper, lower, *body]


LAYOUTS = (wide, wide_standing_with_totals, long, long_with_fractions, trials_across, groups_across, two_heading_rows, on_its_side)


@st.composite
def tables(draw: st.DrawFn) -> TrialTable:
    groups = draw(
        st.lists(st.sampled_from(["Owls", "Herons", "7", "Zoë", "The Most", "Group 3", "Kites"]), min_size=1, max_size=4, unique=True)
    )
    trials = list(range(1, draw(st.integers(1, 4)) + 1))
    colors = draw(st.lists(st.sampled_from(["red", "blue", "gold", "green", "dark blue"]), min_size=1, max_size=4, unique=True))
    sets = [draw(st.integers(1, 12)) for _ in colors]
    return TrialTable(
        tuple(
            Row(g, t, c, set_up, draw(st.integers(0, set_up)))
            for g in groups
            for t in trials
            for c, set_up in zip(colors, sets, strict=True)
        )
    )


@pytest.mark.parametrize("layout", LAYOUTS, ids=lambda layout: layout.__name__)
@settings(max_examples=40, deadline=None)
@given(table=tables())
def test_each_layout_is_read_as_the_same_table(layout: Callable[[TrialTable], Rows], table: TrialTable) -> None:
    assert cells(interpret([square(layout(table))]).table) == cells(table)


HEADINGS = st.sampled_from(
    [
        "Group",
        "Trial",
        "Color",
        "Set up",
        "Knocked down",
        "Red (4)",
        "Blue (3)",
        "Red",
        "Total",
        "Notes",
        "Round",
        "Trial 1",
        "Owls",
        "",
        "1",
        "Cone",
        "Gap",
        "%",
    ]
)
CELLS = st.sampled_from(
    [
        "Owls",
        "1",
        "2",
        "3",
        "0",
        "Trial 1",
        "red",
        "Red (4)",
        "absent",
        "",
        "3/4",
        "Total",
        "Set up",
        "Down",
        "1O",
        "4-Mar",
        "Owls total",
        "||||",
    ]
)


@settings(max_examples=150, deadline=None)
@given(st.data())
def test_any_cells_end_in_a_table_faults_or_questions(data: st.DataObject) -> None:
    width = data.draw(st.integers(1, 6))
    head = data.draw(st.lists(st.lists(HEADINGS, min_size=width, max_size=width), max_size=2))
    body = data.draw(st.lists(st.lists(CELLS, min_size=width, max_size=width), max_size=5))
    options = ReadOptions(data.draw(st.sampled_from([None, "down", "standing"])), data.draw(st.sampled_from([None, "absent", "none"])))
    try:
        result = interpret([Grid(tuple(map(tuple, [*head, *body])))], options)
    except (TableFaults, TableQuestions) as error:
        shown = as_json(error)
        assert shown["faults"] or shown["questions"]
        return
    labels = [*cells(result.table), *result.table.absent]
    assert labels
    assert len(set(labels)) == len(labels)
    assert all(0 <= row.down <= row.set_up for row in result.table.rows)
    assert understood(result)
