"""The figures library, set as a contact sheet."""

from __future__ import annotations

import pytest

from mathgen.press.pdf import pdf_bytes
from tests.press.pdf_structure import elements, fonts, reader, text
from tests.press.specimens import contact_sheet


@pytest.mark.parametrize("points", ["12.5", "16", "18", "20"])
def test_every_figure_is_set_with_its_alt_text_and_stays_in_its_space(points: str) -> None:
    """PDF/UA-1, clause 7.3; the document itself refuses a figure to work on that grows out of the height it was given."""
    data = contact_sheet(points)
    document = reader(pdf_bytes("specimens", data))
    wanted = [one["figure"]["alt"] for one in data["specimens"] if one["figure"]["alt"]]
    assert [alt for name, alt in elements(document) if name == "/Figure"] == wanted
    assert all(fonts(document).values())


def test_no_two_figures_have_the_same_alt_text() -> None:
    """Each tells its own data, and the empty figure other things than the one that is filled in."""
    alts = [one["figure"]["alt"] for one in contact_sheet()["specimens"] if one["figure"]["alt"]]
    assert len(set(alts)) == len(alts)


def test_a_two_way_table_is_a_table_with_head_cells() -> None:
    """PDF/UA-1, clause 7.5."""
    names = [name for name, _ in elements(reader(pdf_bytes("specimens", contact_sheet())))]
    assert names.count("/Table") == 1
    assert "/TH" in names


def test_marks_of_twelve_colors_are_printed() -> None:
    """Blue, black and brown among them."""
    printed = text(pdf_bytes("specimens", contact_sheet()))
    assert all(mark in printed for mark in ("Bu blue", "Ba black", "Br brown"))
