"""The part of the class's results table that a sheet prints: only the rows and colors that its problems use."""

from __future__ import annotations

from typing import Any

from mathgen.asks.expression import Price, Quantity
from mathgen.problems.draft import leaves_of
from mathgen.problems.record import Cell, Problem
from mathgen.scenario.naming import upper_first
from mathgen.trials.scope import BY_TRIAL, Label, Scope
from mathgen.trials.table import TrialTable

COVERED = "?"
ABSENT = "–"
MOST_COLUMNS = 6  # as many as fit a page with their words


class GivenAwayError(ValueError):
    """Two problems that may not share a sheet: one needs a cell that answers the other."""


def cells_in(table: TrialTable, scope: Scope) -> list[Cell]:
    """The results that a scope covers, in table order."""
    return [
        (row.group, row.trial, row.color)
        for row in table.rows
        if (scope.groups is None or row.group in scope.groups)
        and (scope.trials is None or row.trial in scope.trials)
        and (scope.colors is None or row.color in scope.colors)
    ]


def cells_read(table: TrialTable, problems: tuple[Problem, ...]) -> set[Cell]:
    """The cells that pupils must read in the table; what the words or the graph tell needs no cell."""
    used: set[Cell] = set()
    for problem in problems:
        places = {given.where for given in problem.givens}
        if "table" in places:
            if "graph" not in places:
                used.update(problem.cells)
            for given in problem.givens:
                if given.where == "table" and given.scope is not None:
                    used.update(cells_in(table, given.scope))
    return used


def covered_cells(table: TrialTable, problems: tuple[Problem, ...]) -> set[Cell]:
    """Single cells that would answer a problem on the sheet."""
    hidden: set[Cell] = set()
    for problem in problems:
        for scope in problem.must_not_show:
            covered = cells_in(table, scope)
            if len(covered) == 1:
                hidden.update(covered)
    return hidden


def _judges_trials(problems: tuple[Problem, ...]) -> bool:
    """Whether pupils have to find in the table which trials were successes: then it shows the target colors."""
    read = (given.expr for problem in problems for given in problem.givens if given.where == "table")
    return any(isinstance(expr, Quantity) and expr.measure in BY_TRIAL for expr in read)


def row_label(group: str, trial: Label, words: dict[str, Any], several_trials: bool) -> str:
    """How a row is called: ``Owls, Trial 1``; only ``Owls`` where all rows are of one trial."""
    name = str(words["group_labels"][group])
    return f"{name}, {words['trial_labels'][trial]}" if several_trials else name


def results_table(
    table: TrialTable, problems: tuple[Problem, ...], words: dict[str, Any], beside: tuple[Problem, ...] = ()
) -> dict[str, Any] | None:
    """Head, rows and caption, or None where no problem reads the table.

    Set-up counts stand once, in the head. Where they differ between the printed rows, the color gets two columns.

    Args:
        table: the class's results.
        problems: those that read this print of the table.
        words: as ``page_words`` gathers them.
        beside: problems on other cards, whose answers this print must not show either.
    Raises:
        GivenAwayError: a problem needs a cell that answers another; such a pair was never to be chosen.
    """
    used = cells_read(table, problems)
    if not used:
        return None
    if table.prices:
        givens = [given.expr for problem in problems for given in problem.givens]
        told = {expr.item for expr in givens if isinstance(expr, Price)}
        # "0.4 of a dollar and 0.35 of a dollar: which costs more?" The list would tell it in cents.
        parts = {leaf.item for expr in givens if not isinstance(expr, Price) for leaf in leaves_of(expr) if isinstance(leaf, Price)}
        return price_table(table, told.union(item for item, _, _ in used), words, parts)
    hidden = covered_cells(table, (*problems, *beside))
    if used & hidden:
        raise GivenAwayError(f"cells both needed and given away: {sorted(map(str, used & hidden))}")
    lines = list(dict.fromkeys((row.group, row.trial) for row in table.rows if (row.group, row.trial) in {cell[:2] for cell in used}))
    colors = [color for color in table.colors if color in {cell[2] for cell in used}]
    counts = {(row.group, row.trial, row.color): row for row in table.rows}
    columns: list[dict[str, str]] = []
    values: list[list[str]] = [[] for _ in lines]
    unneeded = False
    if _judges_trials(problems):
        columns.append({"head": words["target_heading"], "note": ""})
        targets = {(row.group, row.trial): row.target for row in table.rows}
        for line, spot in zip(values, lines, strict=True):
            line.append(targets[spot] or ABSENT)
    for color in colors:
        rows = [counts.get((group, trial, color)) for group, trial in lines]
        set_up = sorted({row.set_up for row in rows if row is not None})
        if len(set_up) == 1:
            columns.append({"head": color, "note": f"({set_up[0]} {words['set_up']})"})
        else:
            columns.append({"head": color, "note": words["set_up"]})
            columns.append({"head": color, "note": words["down"]})
        for line, row in zip(values, rows, strict=True):
            if len(set_up) > 1:
                line.append(ABSENT if row is None else str(row.set_up))
            cell = None if row is None else (row.group, row.trial, row.color)
            line.append(ABSENT if row is None else COVERED if cell in hidden else str(row.down))
            unneeded = unneeded or (cell is not None and cell not in used and cell not in hidden)
    several = len({trial for _, trial in lines}) > 1
    only = "" if several or len(table.trials) == 1 else f", {words['trial_labels'][lines[0][1]]}"
    rows_shown = [
        {"head": row_label(group, trial, words, several), "cells": line} for (group, trial), line in zip(lines, values, strict=True)
    ]
    printed = {
        "caption": words["table_caption"] + only,
        "corner": words["row_heading"] if several else words["group_heading"],
        "columns": columns,
        "rows": rows_shown,
        "covered": any(COVERED in line for line in values),
        "absent": any(ABSENT in line for line in values),
        "unneeded": unneeded,
    }
    return turned(printed, words) if len(columns) > MOST_COLUMNS and len(columns) > len(rows_shown) else printed


_FEWEST_ITEMS = 6  # on a printed price list: pupils have to look for theirs
_MOST_IN_ONE_ROW = 4  # items below one another; more stand in two halves side by side


def price_table(table: TrialTable, used: set[str], words: dict[str, Any], kept_back: set[str]) -> dict[str, Any]:
    """The items that problems read or tell of, and some beside them: a price list in cents, in the order of the file.

    Args:
        table: the whole price list.
        used: items that have to be there.
        words: as ``page_words`` gathers them.
        kept_back: items that are none of those beside them.
    """
    fill = [one.item for one in table.prices if one.item not in used | kept_back][: max(_FEWEST_ITEMS - len(used), 0)]
    lines = [(upper_first(one.item), f"{one.cents}¢") for one in table.prices if one.item in used or one.item in fill]
    half = -(-len(lines) // 2) if len(lines) > _MOST_IN_ONE_ROW else len(lines)
    beside = [*lines[half:], *[("", "")] * (2 * half - len(lines))] if half < len(lines) else [()] * half
    columns = ["Price", "Item", "Price"] if half < len(lines) else ["Price"]
    return {
        "caption": words["table_caption"],
        "corner": "Item",
        "columns": [{"head": head, "note": ""} for head in columns],
        "rows": [{"head": item, "cells": [price, *other]} for (item, price), other in zip(lines[:half], beside, strict=True)],
        "covered": False,
        "absent": False,
        "unneeded": bool(fill),
    }


def turned(printed: dict[str, Any], words: dict[str, Any]) -> dict[str, Any]:
    """The same table with a row a color: many colors stand better below one another than side by side."""
    return {
        **printed,
        "corner": words["color_heading"],
        "columns": [{"head": row["head"], "note": ""} for row in printed["rows"]],
        "rows": [
            {"head": f"{column['head']} {column['note']}", "cells": [row["cells"][index] for row in printed["rows"]]}
            for index, column in enumerate(printed["columns"])
        ],
    }
