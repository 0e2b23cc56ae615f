"""The number line from 0 to 1."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op
from mathgen.sheets.figures.number_line import number_line
from tests.sheets.figures.scenes import down, over, scene, up

RED, BLUE = over(down(color="red"), up(color="red")), over(down(color="blue"), up())


def test_decimals_are_named_for_the_pupil_and_stand_on_the_line_in_the_key() -> None:
    """0.75 and 0.5."""
    made = number_line(scene(Choice(("red", "blue"), (RED, BLUE)), printed=(("0.75", RED), ("0.5", BLUE))))
    assert made is not None
    assert made.worked is not None
    assert made.blank["points"] == []
    assert made.blank["alt"] == "Number line from 0 to 1 in 10 equal parts, only 0 and 1 named, to mark 0.75 and 0.5 on."
    assert [(point["top"], point["bottom"]) for point in made.worked["points"]] == [(3, 4), (1, 2)]
    assert made.worked["alt"].endswith("with points at 0.5 and 0.75.")


def test_no_line_without_printed_decimals() -> None:
    """Counts of the table, and a percent."""
    assert number_line(scene(RED)) is None
    assert number_line(scene(RED, printed=(("75%", RED),))) is None


def test_a_fraction_has_a_line_in_as_many_parts_as_its_set() -> None:
    made = number_line(scene(Op("-", (up(color="red"), down(color="red")))))
    assert made is not None
    assert made.worked is not None
    cut = made.blank["cut"]
    assert made.blank["points"] == []
    assert made.blank["alt"] == f"Number line from 0 to 1 in {cut} equal parts, only 0 and 1 named, to mark the fraction on."
    [point] = made.worked["points"]
    assert point["label"].endswith(f"/{cut}")
    assert made.worked["alt"].endswith(f"with a point at {point['label']}.")


def test_a_fraction_that_is_asked_for_stands_where_the_rest_begins():
    asked = number_line(scene(over(Op("-", (up(color="red"), down(color="red", measure="standing"))), up(color="red"))))
    told = number_line(scene(Op("-", (up(color="red"), down(color="red")))))
    assert asked is not None
    assert asked == told
