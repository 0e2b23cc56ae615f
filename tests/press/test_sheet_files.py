"""Sheets made from a sample: pages, and room to work on them."""

from __future__ import annotations

import io
import itertools
import json
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from mathgen.bank.plan import SheetPlan
from mathgen.press.sheet_files import SheetFiles, sheet_files
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from tests.press.pdf_structure import elements, lines

MAIN = Path(__file__).parents[2] / "samples" / "main.csv"
MM = 72 / 25.4


@cache
def made(grade: int, **wishes: object) -> SheetFiles:
    """A sheet of the main sample."""
    return sheet_files(read_table(str(MAIN), ReadOptions()).table, SheetPlan(grade, **wishes), "ramp")  # type: ignore[arg-type]


def worksheet(grade: int, **wishes: object) -> PdfReader:
    """Its pupils' pages."""
    return PdfReader(io.BytesIO(made(grade, **wishes).contents[f"grade{grade}-worksheet.pdf"]))


def rooms(document: PdfReader) -> list[float]:
    """Millimeters from the last base line of each problem's words to the top of the words at its answer place.

    Words in a figure are smaller than the page's own and are passed over: a figure stands beside the room to work, in part of it.
    """
    found = []
    body = next(size for *_, size, word in lines(document.pages[0]) if word.startswith("Name"))
    for page in document.pages:
        for (above, *_, before), (below, _, size, word) in itertools.pairwise(line for line in lines(page) if line[2] >= body - 0.1):
            if word.startswith(("Answer:", "Number sentence:")) or (word == "+" and before not in ("+", "=")):
                found.append((above - below - 0.7 * size) / MM)
    return found


@pytest.mark.parametrize("grade", [2, 3, 4, 5, 6, 7])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_default_sheet_is_one_leaf_with_room_to_work_at_every_problem(grade: int, paper: str) -> None:
    """12 mm at least; in grade 2 the number sentence has its own line of 13 mm besides."""
    document = worksheet(grade, paper=paper)
    assert len(document.pages) <= 2
    assert len(rooms(document)) >= 4
    assert min(rooms(document)) >= 12


@pytest.mark.parametrize(("grade", "wish"), [(4, {"count": 3}), (5, {"minutes": 15})])
def test_few_problems_stay_on_one_side(grade: int, wish: dict[str, int]) -> None:
    """One side holds three of them with room to work."""
    document = worksheet(grade, **wish)
    assert len(document.pages) == 1
    problems = json.loads(made(grade, **wish).contents[f"grade{grade}-key.json"])["forms"][0]["problems"]
    assert len(problems) == 3
    # Yes and no are ringed: such a problem has no answer line.
    assert len(rooms(document)) == sum(problem["answer"]["kind"] != "truth" for problem in problems)


@pytest.mark.parametrize("grade", [3, 4, 7])
def test_room_is_never_more_than_is_of_use(grade: int) -> None:
    """Eight problems: at most some 60 mm each; the one to show how has 30 of a hundred more."""
    assert max(rooms(worksheet(grade, count=8))) < 60 * 1.3


def test_saving_paper_takes_no_more_sides_and_in_most_grades_fewer_for_some_sheet_of_four() -> None:
    """The same eight problems, grade by grade and seed by seed: how long they are changes with every new model."""
    fewer = 0
    for grade in range(1, 9):
        saved = []
        for seed in range(1, 5):
            usual, dense = (worksheet(grade, count=8, layout=layout, seed=seed) for layout in ("more-room", "save-paper"))
            assert len(rooms(usual)) == len(rooms(dense))
            saved.append(len(usual.pages) - len(dense.pages))
        assert min(saved) >= 0
        fewer += max(saved) > 0
    assert fewer >= 5


def test_pages_that_hold_one_problem_are_said() -> None:
    """Grade 4 in large print on one side; which problems a seed draws, and so how many a side holds, changes with every new model."""
    for seed in range(1, 17):
        said = any("1 page holds" in change for change in made(4, large_print=True, pages=1, seed=seed).changes)
        if said:
            assert len(rooms(worksheet(4, large_print=True, pages=1, seed=seed))) <= 1
            return
    raise AssertionError("no sheet of one problem")


@pytest.mark.parametrize("wish", [{}, {"layout": "save-paper"}, {"large_print": True}, {"choices": True}, {"paper": "a4"}], ids=str)
@pytest.mark.parametrize("grade", [2, 3, 6])
def test_a_figure_that_words_ask_for_is_printed_in_every_layout(grade: int, wish: dict[str, Any]) -> None:
    """Graphs and plots to draw: as many frames to complete as problems, and a finished one for each in the key."""
    skills = ("graph to make", "picture graph with a key", "dot plot to make", "histogram to make", "box plot")
    files = made(grade, skills=skills[:1] if grade < 3 else skills[:2] if grade < 6 else skills[2:], count=3, **wish)
    sheet, key = (PdfReader(io.BytesIO(files.contents[f"grade{grade}-{name}.pdf"])) for name in ("worksheet", "key"))
    blank = [alt for name, alt in elements(sheet) if name == "/Figure" and "to complete. " in alt]
    finished = [alt for name, alt in elements(key) if name == "/Figure" and " to complete. " not in alt]
    assert len(blank) == len(finished) >= 2
