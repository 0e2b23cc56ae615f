"""A sheet with all its files: worksheet, key, and the key file."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, NamedTuple

import typst

from mathgen import __version__
from mathgen.asks.expression import Ask
from mathgen.bank.code import table_digest
from mathgen.bank.length import usual, wanted_count
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import SheetMaker
from mathgen.bank.story import StoryMaker
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.press.pdf import page_count, pdf_bytes, pdfs
from mathgen.press.signs import check_labels, said, unprintable, without
from mathgen.scenario.words import scenario
from mathgen.sheets.key import key_data
from mathgen.sheets.key_file import key_file, pages_of
from mathgen.sheets.page_words import page_words, table_names
from mathgen.sheets.worksheet import few_on_pages, page_change, wanted_pages, worksheet_data
from mathgen.trials.table import TrialTable


class SheetFiles(NamedTuple):
    """Files by name, the sheet's code, what was changed against the plan, and what is asked on it."""

    contents: dict[str, bytes]
    code: str
    changes: tuple[str, ...]
    asked: frozenset[Ask]


def sheet_files(table: TrialTable, plan: SheetPlan, scenario_name: str, notes: tuple[str, ...] = ()) -> SheetFiles:
    """The files of one sheet: ``grade4-worksheet.pdf``, ``grade4-key.pdf``, ``grade4-key.json``.

    Raises:
        RequestFault: the plan cannot be met, or a name in the table cannot be printed.
    """
    said_as = _said_as(table, plan, scenario_name)
    pages, fewer, maker = wanted_pages(plan), 0, SheetMaker(table, plan, scenario_name)
    while True:
        leaf_made = _printed(maker.make(fewer), table, said_as)
        if leaf_made.fits(pages):
            return _with_key(leaf_made, table, scenario_name, said_as, notes, fewer)
        fewer += 1


def story_files(table: TrialTable, plan: SheetPlan, scenario_name: str, notes: tuple[str, ...] = ()) -> list[SheetFiles]:
    """The files of a sheet for each grade in ``plan.same_story``, which tell one story; where one has too little room, all have less.

    Raises:
        RequestFault: the plan cannot be met, or a name in the table cannot be printed.
    """
    said_as = [_said_as(table, replace(plan, grade=grade), scenario_name) for grade in plan.same_story]
    pages, fewer, maker = wanted_pages(plan), 0, StoryMaker(table, plan, scenario_name)
    while True:
        made = [_printed(chosen, table, words) for chosen, words in zip(maker.make(fewer), said_as, strict=True)]
        if all(one.fits(pages) for one in made):
            return [_with_key(one, table, scenario_name, words, notes, fewer) for one, words in zip(made, said_as, strict=True)]
        fewer += 1


def sheet_names(grade: int) -> tuple[str, ...]:
    """The names of a sheet's files: worksheet, key, key file."""
    return f"grade{grade}-worksheet.pdf", f"grade{grade}-key.pdf", f"grade{grade}-key.json"


class _SaidAs(NamedTuple):
    """The words of a grade's pages, and the signs in them that no font has."""

    words: dict[str, Any]
    signs: tuple[str, ...]


class _Printed(NamedTuple):
    """A sheet and its pupils' pages."""

    chosen: ChosenSheet
    worksheet: dict[str, Any]
    pdf: bytes

    def fits(self, pages: int | None) -> bool:
        """Whether the pages hold it, or it can get no shorter."""
        sheets = len(self.chosen.forms) * self.chosen.plan.copies
        return pages is None or len(self.chosen.forms[0].problems) == 1 or page_count(self.pdf) <= pages * sheets


def _said_as(table: TrialTable, plan: SheetPlan, scenario_name: str) -> _SaidAs:
    words = page_words(scenario(scenario_name), load(plan.curriculum), table, plan.grade)
    signs = unprintable([words, table_names(table, words)])
    check_labels(table.groups, signs)
    check_labels(map(str, table.trials), signs)
    check_labels(table.colors, signs)
    return _SaidAs(words, signs)


def _printed(chosen: ChosenSheet, table: TrialTable, said_as: _SaidAs) -> _Printed:
    worksheet = without(worksheet_data(chosen, table, said_as.words), said_as.signs)
    return _Printed(chosen, worksheet, pdf_bytes("worksheet", worksheet))


def _with_key(made: _Printed, table: TrialTable, scenario_name: str, said_as: _SaidAs, notes: tuple[str, ...], left_out: int) -> SheetFiles:
    """All files of a sheet, of which ``left_out`` problems had no room on the pages."""
    (words, signs), (chosen, worksheet, printed), plan = said_as, made, made.chosen.plan
    few = few_on_pages(plan, len(chosen.forms[0].problems), wanted_count(plan)) if left_out else None
    changed = (page_change(worksheet, page_count(printed)), few, *said(signs))
    chosen = replace(chosen, changes=(*chosen.changes, *(change for change in changed if change is not None)))
    minutes = plan.minutes or usual(plan.grade).minutes_each * len(chosen.forms[0].problems)
    key = without(key_data(chosen, table, words, minutes), signs)
    made_files = (printed, pdf_bytes("key", key), key_file(chosen, table, scenario_name, notes, worksheet, key))
    contents = dict(zip(sheet_names(plan.grade), made_files, strict=True))
    asked = frozenset(problem.ask for form in chosen.forms for problem in form.problems)
    return SheetFiles(contents, chosen.code, chosen.changes, asked)


class Reprinted(NamedTuple):
    """The pages of a key file by name, and whether it was changed since its answers were checked."""

    contents: dict[str, bytes]
    changed: bool


def files_from_key(path: Path, table: TrialTable | None = None, copies: int | None = None) -> Reprinted:
    """The same pages again, from a key file alone.

    Args:
        path: the key file.
        table: the table that the sheet is said to be made from; where given, it is compared.
        copies: how many times each form is printed; as often as the key file says where it is left out.
    Raises:
        RequestFault: no key file, one whose pages cannot be set, or another table.
    """
    kept = pages_of(path.read_bytes(), path.name)
    if table is not None and table_digest(table) != kept.table_digest:
        raise RequestFault(
            f"This table is not the one that {path.name} was made from: some count, label or order differs. "
            "Give the table as it was that day, or the key file alone."
        )
    if copies is not None and kept.kind == "cards":
        raise RequestFault("--copies is for worksheets; a deck of cards is printed once. Leave it out.")
    pages = kept.pupils if copies is None else {**kept.pupils, "copies": copies}
    try:
        printed = pdfs([(kept.kind, pages), ("key", kept.key)])
    except (typst.TypstError, UnicodeEncodeError) as err:  # key files may be edited by hand, or come from another release
        raise RequestFault(f"{path.name} cannot be printed: {err}. Expected the pages as mathgen {__version__} writes them.") from err
    pupils, key = f"{kept.stem}-{kept.kind}.pdf", f"{kept.stem}-{'cards-' if kept.kind == 'cards' else ''}key.pdf"
    return Reprinted({pupils: printed[0], key: printed[1]}, kept.changed)
