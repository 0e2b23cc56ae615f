"""Two-way tables."""

from __future__ import annotations

from mathgen.asks.expression import Op, Truth
from mathgen.sheets.figures.two_way_table import kinds_by_results, two_way_table
from tests.sheets.figures.scenes import down, over, scene, up


def test_a_count_that_is_not_given_leaves_its_cell_empty() -> None:
    """Zero is a count."""
    made = two_way_table("Pins", "Group", ["down", "standing"], [("Owls", [9, None]), ("Herons", [0, 12])])
    assert [row["cells"] for row in made["rows"]] == [["9", ""], ["0", "12"]]


def test_kinds_by_results_are_empty_for_the_pupil_and_counted_in_the_key() -> None:
    """The Owls knocked down 3 of 4 red, 2 of 3 blue and 4 of 5 gold pins."""
    made = kinds_by_results(scene(over(down(color="red"), up(color="red")), grade=8, skill="two-way relative frequency"))
    assert made is not None
    assert made.worked is not None
    assert {cell for row in made.blank["rows"] for cell in row["cells"]} == {""}
    assert [(row["head"], row["cells"]) for row in made.worked["rows"]] == [
        ("red", ["3", "1", "4"]),
        ("blue", ["2", "1", "3"]),
        ("gold", ["4", "1", "5"]),
        ("total", ["9", "3", "12"]),
    ]


def test_where_one_kind_is_told_the_others_share_a_row() -> None:
    asked = Op("-", (Op("-", (up(), down())), Op("-", (up(color="red"), down(color="red")))))
    made = kinds_by_results(scene(asked, grade=8, skill="missing cell of a two-way table", shown="2"))
    assert made is not None
    assert made.worked is not None
    assert [(row["head"], row["cells"]) for row in made.worked["rows"]] == [
        ("red", ["3", "1", "4"]),
        ("others", ["6", "2", "8"]),
        ("total", ["9", "3", "12"]),
    ]


def test_two_kinds_that_are_compared_have_a_row_each_and_a_total() -> None:
    """The Owls knocked down 3 of 4 red and 4 of 5 gold pins."""
    claimed = Truth(over(down(color="red"), up(color="red")), ">", over(down(color="gold"), up(color="gold")))
    made = kinds_by_results(scene(claimed, grade=8, skill="judge a claim by a two-way table"))
    assert made is not None
    assert made.worked is not None
    assert {cell for row in made.blank["rows"] for cell in row["cells"]} == {""}
    assert [(row["head"], row["cells"]) for row in made.worked["rows"]] == [
        ("red", ["3", "1", "4"]),
        ("gold", ["4", "1", "5"]),
        ("total", ["7", "2", "9"]),
    ]
