"""The hundred grid."""

from __future__ import annotations

from mathgen.sheets.figures.hundred_grid import hundred_grid
from tests.sheets.figures.scenes import down, over, scene, up


def test_each_of_ten_pins_is_ten_squares() -> None:
    """6 of the Owls' 10 gold pins in two trials: 60 squares."""
    made = hundred_grid(scene(over(down(trial=None, color="gold"), up(trial=None, color="gold"))))
    assert made is not None
    assert made.worked is not None
    assert (made.blank["shaded"], made.worked["shaded"]) == (0, 60)
    assert made.blank["alt"] == "Hundred grid to shade: the 10 pins as 100 equal squares in 10 rows of 10, none shaded."


def test_a_set_that_no_squares_can_share_has_none() -> None:
    """12 pins."""
    assert hundred_grid(scene(over(down(), up()))) is None
