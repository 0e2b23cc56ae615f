"""Recording sheets: what was asked for is on them, the workbook survives another spreadsheet program, and it reads as it is."""

from __future__ import annotations

import io
import subprocess
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner
from pypdf import PdfReader

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
    assert "A pin that leans on something" in pages[0]
    assert "Follow your school's own safety rules" in pages[0].replace("\n", " ")
    assert "no pupils' names" in pages[0]
    assert all(group in pages[1] + pages[2] for group in PLAN.groups)


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_many_groups_and_large_print_keep_their_slips_two_to_a_page(paper: str, large: bool) -> None:
    groups = tuple(f"Group {number}" for number in range(1, 13))
    plan = RecordPlan(groups, (("red", 4), ("blue", 3)), 4, paper=paper, large_print=large)  # type: ignore[arg-type]
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(made(plan)["record.pdf"])).pages]
    slips = [page for page in pages if "What we changed" in page]
    assert len(slips) == 6
    assert all(page.count("What we changed") == 2 for page in slips)


def test_the_same_sheet_has_the_same_bytes() -> None:
    assert made() == made()
