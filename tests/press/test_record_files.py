"""Recording sheets: what was asked for is on them, the workbook survives another spreadsheet program, and it reads as it is."""

from __future__ import annotations

import io
import re
import subprocess
from pathlib import Path
from typing import Any, Literal

import openpyxl
import pytest
from click.testing import CliRunner
from pypdf import PageObject, PdfReader

from mathgen.cli import main
from mathgen.press.record_files import record_files
from mathgen.scenario.words import scenario
from mathgen.sheets.record_plan import RecordPlan
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from tests.browser import program

PLAN = RecordPlan(("Owls", "=1+1", "<b>Zoë"), (("red", 4), ("blue", 3), ("gold", 15)), 2, target=True, spaces=True)
WHERE = {"red": 5, "blue": 6, "gold": 7}


def made(plan: RecordPlan = PLAN) -> dict[str, bytes]:
    return record_files(plan, scenario("ramp"))


def filled(content: bytes) -> tuple[bytes, dict[tuple[str, int, str], int | None]]:
    """The workbook with counts typed in, and what they are."""
    book = openpyxl.load_workbook(io.BytesIO(content))
    sheet = book.active
    typed: dict[tuple[str, int, str], int | None] = {}
    for row in range(3, 3 + len(PLAN.groups) * PLAN.trials):
        sheet.cell(row, 3).value, sheet.cell(row, 4).value = "red", 1.25
        for color, size in PLAN.colors:
            count = None if (row, color) == (4, "red") else (row * WHERE[color]) % (size + 1)
            sheet.cell(row, WHERE[color]).value = "absent" if count is None else count
            typed[sheet.cell(row, 1).value, sheet.cell(row, 2).value, color] = count
    out = io.BytesIO()
    book.save(out)
    return out.getvalue(), typed


@pytest.fixture(scope="module")
def through_another_program(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path, dict[tuple[str, int, str], int | None]]:
    """The filled workbook, kept by LibreOffice as ODS, and from there as XLSX again."""
    soffice = program("soffice", "libreoffice")
    folder = tmp_path_factory.mktemp("record")
    content, typed = filled(made()["record.xlsx"])
    (folder / "record.xlsx").write_bytes(content)
    for kind, source in (("ods", "record.xlsx"), ("xlsx", "one/record.ods")):
        out = folder / {"ods": "one", "xlsx": "two"}[kind]
        profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
        command = [soffice, profile, "--headless", "--convert-to", kind, "--outdir", str(out), str(folder / source)]
        subprocess.run(command, check=True, capture_output=True, timeout=180)
    return folder / "one" / "record.ods", folder / "two" / "record.xlsx", typed


def test_a_filled_workbook_reads_without_a_question_after_a_trip_through_another_program(
    through_another_program: tuple[Path, Path, dict[tuple[str, int, str], int | None]],
) -> None:
    *paths, typed = through_another_program
    for path in paths:
        result = read_table(str(path), ReadOptions())  # a question or a fault would be raised
        read = {(row.group, row.trial, row.color): row.down for row in result.table.rows}
        assert read == {key: count for key, count in typed.items() if count is not None}
        assert set(result.table.absent) == {key for key, count in typed.items() if count is None}
        assert {(row.color, row.set_up) for row in result.table.rows} == set(PLAN.colors)
        assert all(row.target == "red" and str(row.gap_inches) == "5/4" for row in result.table.rows)


def test_lists_and_limits_stand_in_the_workbook_and_names_are_text() -> None:
    sheet = openpyxl.load_workbook(io.BytesIO(made()["record.xlsx"])).active
    rules = {str(rule.sqref): rule for rule in sheet.data_validations.dataValidation}
    assert rules["E3:E8"].formula1 == '"0,1,2,3,4,absent"'
    assert rules["G3:G8"].type == "custom"
    assert all(part in rules["G3:G8"].formula1 for part in ('G3="absent"', "G3=INT(G3)", "G3>=0", "G3<=15"))
    assert "red,blue,gold" in rules["C3:C8"].error
    assert rules["C3:C8"].formula1 == '"red,blue,gold"'
    assert [sheet.cell(row, 1).data_type for row in (5, 6)] == ["s", "s"]
    assert sheet.cell(5, 1).value == "=1+1"
    assert sheet["H3"].value == '=IF(COUNT(E3:G3)=0,"",SUM(E3:G3))'


@pytest.mark.parametrize("wish", [[], ["--blank", "absent"], ["--blank", "none"]])
def test_an_untouched_workbook_holds_no_results_and_is_not_taken_for_a_class_that_hit_nothing(tmp_path: Path, wish: list[str]) -> None:
    path = tmp_path / "record.xlsx"
    path.write_bytes(made()["record.xlsx"])
    done = CliRunner().invoke(main, ["read", str(path), *wish])
    assert done.exit_code == 1
    assert "no results yet" in done.output
    assert "E3 to G8" in done.output


def test_a_workbook_that_a_program_filled_reads_without_being_opened_in_a_spreadsheet(tmp_path: Path) -> None:
    """The program drops the results of the totals' formulas."""
    content, typed = filled(made()["record.xlsx"])
    path = tmp_path / "record.xlsx"
    path.write_bytes(content)
    result = read_table(str(path), ReadOptions())
    assert {(row.group, row.trial, row.color): row.down for row in result.table.rows} == {
        key: count for key, count in typed.items() if count is not None
    }
    assert any("formulas without a result" in note for note in result.notes)


def test_every_list_and_limit_says_what_may_be_written_and_spreadsheet_files_have_room_for_it() -> None:
    colors = tuple((f"{shade} {color}", 40) for shade in ("very dark", "very light", "dark") for color in ("purple", "orange", "silver"))
    for plan in (PLAN, RecordPlan(("Owls",), (*colors, ("extremely dark turquoise", 99)), target=True, spaces=True)):
        sheet = openpyxl.load_workbook(io.BytesIO(made(plan)["record.xlsx"])).active
        for rule in sheet.data_validations.dataValidation:
            assert rule.showErrorMessage
            assert rule.error
            assert len(rule.error) <= 225
            assert len(rule.formula1) <= 257


def test_the_pdf_has_the_rules_the_cautions_and_a_slip_for_each_group() -> None:
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(made()["record.pdf"])).pages]
    assert len(pages) == 3
    assert pages[2].count("What we changed") == 2  # the second is a spare, without a name
    assert "A pin that leans on something" in pages[0]
    assert "Follow your school's own safety rules" in pages[0].replace("\n", " ")
    assert "no pupils' names" in pages[0]
    assert all(group in pages[1] + pages[2] for group in PLAN.groups)


COLORS = ("red", "blue", "gold", "green", "orange", "purple", "white", "silver", "dark blue", "light green", "brown", "turquoise")
SIZES = [  # groups, trials, colors, columns for target and space
    (2, 1, 2, False), (4, 3, 3, False), (7, 3, 3, False), (8, 3, 3, True), (30, 1, 3, False), (11, 6, 2, True), (12, 4, 8, False),
    (5, 6, 8, True), (3, 2, 5, True), (3, 12, 12, True), (17, 2, 6, False), (1, 1, 1, False),
]  # fmt: skip
MILLIMETER = 72 / 25.4
CUT_MARGIN = 10 * MILLIMETER


def words(page: PageObject) -> list[tuple[str, float, float]]:
    """The texts of a page, each with its place from the left and from the bottom in points."""
    found: list[tuple[str, float, float]] = []

    def visit(text: str, place: list[float], *rest: Any) -> None:
        if text.strip():
            found.append((text.strip(), place[4], place[5]))

    page.extract_text(visitor_text=visit)
    return found


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(("groups", "trials", "colors", "more"), SIZES)
def test_no_page_holds_a_lone_row_or_a_lone_caution_and_all_groups_are_whole(
    groups: int, trials: int, colors: int, more: bool, paper: Literal["letter", "a4"], large: bool
) -> None:
    names = tuple(f"Group {number}" for number in range(1, groups + 1))
    sizes = tuple((color, 3 + at % 4) for at, color in enumerate(COLORS[:colors]))
    pdf = PdfReader(io.BytesIO(made(RecordPlan(names, sizes, trials, more, more, paper, large))["record.pdf"]))
    texts = [page.extract_text() for page in pdf.pages]
    of_class = [text for text in texts if "What we changed" not in text]
    slips = [text for text in texts if "What we changed" in text]
    assert all(text.startswith("Knocking down pins") for text in of_class)  # none runs over onto a page without a head
    assert "agree on" in of_class[0]
    assert "Before anything rolls" in of_class[0]
    rows = [len(re.findall(r"\bTrial \d", text)) for text in of_class]
    assert sum(rows) == groups * trials
    assert all(count % trials == 0 for count in rows)
    tables = [count for count in rows if count]
    assert max(tables) - min(tables) <= trials
    assert len(tables) == 1 or min(tables) > 1
    assert len(tables) >= len(rows) - 1
    assert sum(text.count("What we changed") for text in slips) in (groups, groups + groups % 2)
    for page, text in zip(pdf.pages, texts, strict=True):
        placed = words(page)
        assert all(x > 17 * MILLIMETER and y > CUT_MARGIN for _, x, y in placed)
        if text.count("What we changed") == 2:
            middle = float(page.mediabox.height) / 2
            assert all(abs(y - middle) > CUT_MARGIN for _, _, y in placed)


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_class_of_common_size_has_two_slips_to_a_page_and_its_table_on_one_or_two(paper: Literal["letter", "a4"], large: bool) -> None:
    names = tuple(f"Group {number}" for number in range(1, 8))
    plan = RecordPlan(names, (("red", 4), ("blue", 3), ("gold", 5)), 3, paper=paper, large_print=large)
    texts = [page.extract_text() for page in PdfReader(io.BytesIO(made(plan)["record.pdf"])).pages]
    assert [text.count("What we changed") for text in texts] == [0] * (3 if large else 2) + [2] * 4
    assert "How the pins stand" in texts[0] or large


def test_boxes_to_tick_stand_on_one_line_in_large_print() -> None:
    page = PdfReader(io.BytesIO(made(RecordPlan(("Owls",), (("red", 4),), large_print=True))["record.pdf"])).pages[0]
    heights = {text: y for text, _, y in words(page) if text in ("down", "standing")}
    assert len(set(heights.values())) == 1
    assert len(heights) == 2


@pytest.mark.parametrize("large", [False, True])
def test_another_activity_has_its_own_rules_and_none_of_the_pins(large: bool) -> None:
    plan = RecordPlan(("Ferns", "Clovers", "Thistles"), (("bean", 6), ("pea", 8)), large_print=large)
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(record_files(plan, scenario("seeds"))["record.pdf"])).pages]
    assert "Before you plant, agree on" in pages[0]
    assert "not sprouted" in pages[0]
    assert not re.search(r"\b(?:pins?|roll|rolls|down)\b", " ".join(pages))


def test_an_activity_without_rules_of_its_own_leaves_lines_to_write_them_on(tmp_path: Path) -> None:
    text = (Path(__file__).parents[2] / "mathgen" / "scenario" / "seeds.toml").read_text(encoding="utf-8")
    (tmp_path / "own.toml").write_text(text.partition("[record]")[0], encoding="utf-8")
    made = record_files(RecordPlan(("Ferns",), (("bean", 6),)), scenario(str(tmp_path / "own.toml")))
    page = PdfReader(io.BytesIO(made["record.pdf"])).pages[0].extract_text()
    assert "Before the first trial, agree on" in page
    assert "What counts as seeds that sprouted:" in page
    assert "Who counts, who writes:" in page


def test_the_same_sheet_has_the_same_bytes() -> None:
    assert made() == made()
