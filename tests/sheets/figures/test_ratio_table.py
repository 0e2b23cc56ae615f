"""The ratio table."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated
from mathgen.sheets.figures.ratio_table import ratio_table
from tests.sheets.figures.scenes import down, over, scene, up

GOLD = over(down(color="gold"), up(color="gold"))  # 4 of 5


def test_rows_are_empty_for_the_pupil_and_go_from_the_results_to_next_time_in_the_key() -> None:
    """4 of 5, so 24 of 30."""
    made = ratio_table(scene(Op("*", (GOLD, Stated(30, "set up next time"))), shown="24"))
    assert made is not None
    assert made.worked is not None
    assert {cell for row in made.blank["rows"] for cell in row["cells"]} == {""}
    assert made.blank["alt"] == "Ratio table to fill in: rows knocked down and set up, 4 empty columns."
    assert [(row["head"], row["cells"]) for row in made.worked["rows"]] == [
        ("knocked down", ["4", "", "", "24"]),
        ("set up", ["5", "", "", "30"]),
    ]


def test_a_goal_of_pins_knocked_down_stands_in_its_own_row() -> None:
    """20 at the rate of 4 of 5: 25 set up."""
    made = ratio_table(scene(Op("/", (Stated(20, "goal next time"), GOLD)), shown="25"))
    assert made is not None
    assert made.worked is not None
    assert [row["cells"][-1] for row in made.worked["rows"]] == ["20", "25"]


def test_a_ratio_and_a_rate_are_carried_on_in_the_same_way() -> None:
    """2 blue for 4 gold pins, so 10 for 20; 9 pins in 1 trial, so 27 in 3."""
    blue, gold = down(color="blue"), down(color="gold")
    made = ratio_table(scene(Op("*", (blue, Op("/", (Stated(20, "in another row"), gold)))), shown="10"))
    assert made is not None
    assert made.worked is not None
    assert [(row["head"], row["cells"][0], row["cells"][-1]) for row in made.worked["rows"]] == [("blue", "2", "10"), ("gold", "4", "20")]
    made = ratio_table(scene(Op("*", (over(down(), Stated(1, "trials")), Stated(3, "trials at this rate"))), shown="27"))
    assert made is not None
    assert made.worked is not None
    assert [(row["head"], row["cells"][0], row["cells"][-1]) for row in made.worked["rows"]] == [("pins", "9", "27"), ("trials", "1", "3")]


def test_the_kind_that_the_words_name_first_stands_on_top() -> None:
    """The ratio of gold pins to blue pins, though the blue pins for 20 gold pins are asked for."""
    blue, gold = down(color="blue"), down(color="gold")
    asked = scene(Op("*", (blue, Op("/", (Stated(20, "in another row"), gold)))), shown="10")
    facts = "The Owls knocked down 2 blue and 4 gold pins. Suppose the ratio of gold pins to blue pins stays the same."
    made = ratio_table(asked._replace(problem=asked.problem._replace(facts=facts)))
    assert made is not None
    assert made.worked is not None
    assert [(row["head"], row["cells"][0], row["cells"][-1]) for row in made.worked["rows"]] == [("gold", "4", "20"), ("blue", "2", "10")]


def test_no_table_without_a_number_of_next_time() -> None:
    """A fraction alone."""
    assert ratio_table(scene(GOLD)) is None
