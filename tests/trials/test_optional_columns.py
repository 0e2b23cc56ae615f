"""Target colors and spaces between pins."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.errors import Place
from mathgen.trials.optional_columns import gap_inches, kept_of_row, target_color


@pytest.mark.parametrize(
    ("text", "unit", "inches"),
    [
        ("2", None, "2"),
        ("2 1/4", "in", "9/4"),
        ("2-1/4", None, "9/4"),
        ("2 and 1/4 in", None, "9/4"),
        ('1 1/2"', None, "3/2"),
        ("1½ inches", None, "3/2"),
        ("¾", None, "3/4"),
        ("3/4", None, "3/4"),
        ("2.5", None, "5/2"),
        (".5", None, "1/2"),
        ("0", None, "0"),
        ("two", None, "2"),
        ("5.08 cm", None, "2"),
        ("2.54", "cm", "1"),
        ("1 in", "cm", "1"),
    ],
)
def test_a_space_is_exact_in_inches(text: str, unit: str | None, inches: str) -> None:
    """2.54 cm to the inch: the international yard and pound agreement of 1959."""
    assert gap_inches(text, unit) == Rational(inches)


@pytest.mark.parametrize("text", ["", "-", "n/a"])
def test_no_space_is_none(text: str) -> None:
    assert gap_inches(text, None) is None


@pytest.mark.parametrize("text", ["wide", "1/0", "2 5/4", "-1", "1 1", "2 ft"])
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="a length in inches"):
        gap_inches(text, None)


def test_a_target_is_a_color_in_lower_case() -> None:
    assert [target_color(text) for text in ("Red", "GOLD pins", "", "-")] == ["red", "gold", None, None]


def test_a_wrong_space_is_a_fault_at_its_cell_and_the_rest_is_kept() -> None:
    kept = kept_of_row({"gap": ("wide", Place(3, 4), None, False), "notes": ("fine", Place(3, 5), None, False)})
    assert (kept.gap_inches, kept.notes, [fault.place.cell for fault in kept.faults]) == (None, "fine", ["D3"])


def test_centimeters_are_said() -> None:
    assert kept_of_row({"gap": ("2.54", Place(3, 4), "cm", False)}).notes_said == (
        "Centimeters between pins are turned into inches (1 inch is 2.54 cm)",
    )


@pytest.mark.parametrize(("text", "is_date"), [("2-Jan", False), ("1/2/2025", False), ("45659", True)])
def test_a_half_that_became_a_date_is_said(text: str, is_date: bool) -> None:
    (fault,) = kept_of_row({"gap": (text, Place(3, 4), None, is_date)}).faults
    assert "into a date" in fault.advice
