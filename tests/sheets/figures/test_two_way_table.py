"""Two-way tables."""

from __future__ import annotations

from mathgen.sheets.figures.two_way_table import two_way_table


def test_a_count_that_is_not_given_leaves_its_cell_empty() -> None:
    """Zero is a count."""
    made = two_way_table("Pins", "Group", ["down", "standing"], [("Owls", [9, None]), ("Herons", [0, 12])])
    assert [row["cells"] for row in made["rows"]] == [["9", ""], ["0", "12"]]
