"""One cell at a time: counts in every way that classes write them, and what is no count."""

from __future__ import annotations

import pytest

from mathgen.trials.cells import Absent, Blank, Count, Unreadable, read_cell


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("3", 3),
        ("0", 0),
        (" 12 ", 12),
        ("03", 3),
        ("３", 3),
        ("3.0", 3),
        ("3,0", 3),
        ("1,250", 1250),
        ("'3", 3),
        ("3 pins", 3),
        ("1 pin", 1),
        ("three", 3),
        ("Zero", 0),
        ("none", 0),
        ("twenty", 20),
        ("||||", 4),
        ("|||| |", 5),
        ("IIII", 4),
        ("I", 1),
        ("||||/", 5),
        ("||||\\ ||", 7),
        ("||||/ ||||/ |", 11),
        ("𝍸", 5),
        ("𝍸𝍷𝍷", 7),
        ("///", 3),
        ("10000", 10_000),
    ],
)
def test_a_count_is_read(text: str, value: int) -> None:
    """Tally marks in fives as classes draw them; code points of Unicode 11, block Counting Rod Numerals."""
    cell = read_cell(text)
    assert isinstance(cell, Count)
    assert (cell.value, cell.out_of) == (value, None)


@pytest.mark.parametrize(
    ("text", "value", "out_of"),
    [
        ("3/4", 3, 4),
        ("3 / 4", 3, 4),
        ("3 of 4", 3, 4),
        ("3 out of 4", 3, 4),
        ("0/3", 0, 3),
        ("¾", 3, 4),
        ("½", 1, 2),
        ("4 of 4 pins", 4, 4),
    ],
)
def test_a_count_out_of_a_set_is_read(text: str, value: int, out_of: int) -> None:
    cell = read_cell(text)
    assert isinstance(cell, Count)
    assert (cell.value, cell.out_of) == (value, out_of)


@pytest.mark.parametrize("text", ["absent", "Absent", "ABS", "abs.", "n/a", "N/A", "na", "-", "–", "—", "sick", "did not roll", "DNR"])
def test_a_mark_for_absent_is_read(text: str) -> None:
    assert isinstance(read_cell(text), Absent)


@pytest.mark.parametrize("text", ["", " ", "\u00a0", "\n"])
def test_an_empty_cell_is_blank_and_never_zero(text: str) -> None:
    assert read_cell(text) == Blank()


@pytest.mark.parametrize(
    ("text", "advice"),
    [
        ("1O", "type 10"),
        ("O", "type 0"),
        ("l", "type 1"),
        ("l2", "type 12"),
        ("2S", "type 25"),
        ("3.5", "counted whole"),
        ("1½", "counted whole"),
        (".5", "counted whole"),
        ("-2", "never below 0"),
        ("−2", "never below 0"),
        ("50%", "a percent"),
        ("#N/A", "formula failed"),
        ("####", "too narrow"),
        ("=A1", "a formula"),
        ("4-Mar", "into a date"),
        ("Mar-04", "into a date"),
        ("04/03/2025", "into a date"),
        ("2025-03-04 00:00:00", "into a date"),
        ("3 to 4", "Type one count"),
        ("all", "Type how many"),
        ("3?", "type 3 alone"),
        ("ten or so", "Type the count"),
        ("/", "Type the count"),
        ("||/", "Type the count"),
        ("10001", "up to 10000"),
        ("9" * 40, "up to 10000"),
    ],
)
def test_what_is_no_count_comes_with_advice(text: str, advice: str) -> None:
    cell = read_cell(text)
    assert isinstance(cell, Unreadable)
    assert advice in cell.advice


def test_a_cell_that_the_spreadsheet_holds_as_a_date_is_one_whatever_it_shows() -> None:
    assert isinstance(read_cell("3", is_date=True), Unreadable)


@pytest.mark.parametrize("text", ["three", "none", "||||", "¾", "-", "///"])
def test_a_guess_is_named(text: str) -> None:
    cell = read_cell(text)
    assert isinstance(cell, Count | Absent)
    assert " read as " in cell.guess
