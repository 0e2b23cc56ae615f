"""A sheet with all its files: worksheet, key, and the key file."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, NamedTuple

import typst

from mathgen import __version__
from mathgen.bank.leaf import leaf
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.press.pdf import page_count, pdf_bytes, pdfs
from mathgen.scenario.words import scenario
from mathgen.sheets.key import key_data
from mathgen.sheets.key_file import key_file, pages_of
from mathgen.sheets.page_words import page_words
from mathgen.sheets.worksheet import page_change, wanted_pages, worksheet_data
from mathgen.trials.table import TrialTable


class SheetFiles(NamedTuple):
    """Files by name, the sheet's code, and what was changed against the plan."""

    contents: dict[str, bytes]
    code: str
    changes: tuple[str, ...]


def sheet_files(table: TrialTable, plan: SheetPlan, scenario_name: str, notes: tuple[str, ...] = ()) -> SheetFiles:
    """The files of one sheet: ``grade4-worksheet.pdf``, ``grade4-key.pdf``, ``grade4-key.json``.

    Raises:
        RequestFault: the plan cannot be met.
    """
    words = page_words(scenario(scenario_name), load(plan.curriculum), table, plan.grade)
    chosen, worksheet, printed = _fitted(table, plan, scenario_name, words)
    change = page_change(worksheet, page_count(printed))
    if change is not None:
        chosen = replace(chosen, changes=(*chosen.changes, change))
    minutes = plan.minutes or leaf(plan.grade).minutes_each * len(chosen.forms[0].problems)
    key = key_data(chosen, table, words, minutes)
    stem = f"grade{plan.grade}"
    contents = {
        f"{stem}-worksheet.pdf": printed,
        f"{stem}-key.pdf": pdf_bytes("key", key),
        f"{stem}-key.json": key_file(chosen, table, scenario_name, notes, worksheet, key),
    }
    return SheetFiles(contents, chosen.code, chosen.changes)


def _fitted(table: TrialTable, plan: SheetPlan, scenario_name: str, words: dict[str, Any]) -> tuple[ChosenSheet, dict[str, Any], bytes]:
    """The sheet with its pages. Where pages decide, problems are left out until they fit."""
    pages, fewer = wanted_pages(plan), 0
    while True:
        chosen = make_sheet(table, plan, scenario_name, fewer)
        worksheet = worksheet_data(chosen, table, words)
        printed = pdf_bytes("worksheet", worksheet)
        if pages is None or len(chosen.forms[0].problems) == 1 or page_count(printed) <= pages * len(chosen.forms):
            return chosen, worksheet, printed
        fewer += 1


def files_from_key(path: Path) -> dict[str, bytes]:
    """The same pages again, from a key file alone.

    Raises:
        RequestFault: no key file, or one whose pages cannot be set.
    """
    grade, worksheet, key = pages_of(path.read_bytes(), path.name)
    try:
        printed = pdfs([("worksheet", worksheet), ("key", key)])
    except typst.TypstError as err:  # key files may be edited by hand, or come from another release
        raise RequestFault(f"{path.name} cannot be printed: {err}. Expected the pages as mathgen {__version__} writes them.") from err
    return {f"grade{grade}-worksheet.pdf": printed[0], f"grade{grade}-key.pdf": printed[1]}
