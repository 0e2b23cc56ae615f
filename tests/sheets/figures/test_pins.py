"""The picture of the pins that were set up."""

from __future__ import annotations

from mathgen.asks.expression import Equation, Op
from mathgen.sheets.figures.pins import pins
from tests.sheets.figures.scenes import down, over, scene, up


def test_the_whole_set_is_drawn_by_color() -> None:
    """4 red, 3 blue and 5 gold pins are set up for a trial."""
    made = pins(scene(Op("-", (up(), down()))))
    assert made is not None
    assert [(one["mark"], one["count"], one["pattern"]) for one in made.blank["groups"]] == [("R", 4, 0), ("B", 3, 1), ("G", 5, 2)]
    assert made.blank["alt"] == "Picture of the 12 pins set up, to cross off: 4 red, 3 blue, 5 gold."


def test_only_the_colors_of_the_problem_are_drawn() -> None:
    """A fraction of the gold pins is of 5 pins."""
    made = pins(scene(over(down(color="gold"), up(color="gold"))))
    assert made is not None
    assert [(one["label"], one["count"], one["pattern"]) for one in made.blank["groups"]] == [("gold", 5, 2)]


def test_no_picture_of_a_set_that_is_asked_for() -> None:
    """x - 9 = 3: the picture would be the answer."""
    fact = Equation(Op("-", (up(), down())), down(measure="standing"))
    assert pins(scene(down(), fact)) is not None
    assert pins(scene(up(), fact)) is None


def test_sets_too_large_to_cross_off_and_problems_without_a_set_have_no_picture() -> None:
    """24 pins in two trials; a total of pins knocked down."""
    assert pins(scene(Op("-", (up(trial=None), down(trial=None))))) is None
    assert pins(scene(Op("+", (down(trial=1), down(trial=2))))) is None
