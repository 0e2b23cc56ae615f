"""Trees for lists."""

from __future__ import annotations

from mathgen.sheets.figures.tree import tree


def test_ends_are_blank_for_the_pupil_and_told_in_the_key() -> None:
    """Two colors, then one of two."""
    blank, full = tree(["red", "blue"], ["red", "gold"]), tree(["red", "blue"], ["red", "gold"], written=True)
    assert [branch["ends"] for branch in blank["branches"]] == [["", ""], ["", ""]]
    assert "gold" not in blank["alt"]
    assert full["alt"] == "Tree, filled in: red, then red, gold; blue, then red, gold."
