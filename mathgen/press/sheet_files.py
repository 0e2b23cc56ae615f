"""A sheet with all its files: worksheet, key, and the key file."""

from __future__ import annotations

from pathlib import Path
from typing import NamedTuple

from mathgen.bank.leaf import leaf
from mathgen.bank.plan import SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.grades.curriculum import load
from mathgen.press.pdf import pdfs
from mathgen.scenario.words import scenario
from mathgen.sheets.key import key_data
from mathgen.sheets.key_file import key_file, pages_of
from mathgen.sheets.page_words import page_words
from mathgen.sheets.worksheet import worksheet_data
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
    chosen = make_sheet(table, plan, scenario_name)
    words = page_words(scenario(scenario_name), load(plan.curriculum), table, plan.grade)
    minutes = plan.minutes or leaf(plan.grade).minutes_each * len(chosen.forms[0].problems)
    worksheet, key = worksheet_data(chosen, table, words), key_data(chosen, table, words, minutes)
    printed = pdfs([("worksheet", worksheet), ("key", key)])
    stem = f"grade{plan.grade}"
    contents = {
        f"{stem}-worksheet.pdf": printed[0],
        f"{stem}-key.pdf": printed[1],
        f"{stem}-key.json": key_file(chosen, table, scenario_name, notes, worksheet, key),
    }
    return SheetFiles(contents, chosen.code, chosen.changes)


def files_from_key(path: Path) -> dict[str, bytes]:
    """The same pages again, from a key file alone.

    Raises:
        RequestFault: no key file.
    """
    grade, worksheet, key = pages_of(path.read_bytes(), path.name)
    printed = pdfs([("worksheet", worksheet), ("key", key)])
    return {f"grade{grade}-worksheet.pdf": printed[0], f"grade{grade}-key.pdf": printed[1]}
