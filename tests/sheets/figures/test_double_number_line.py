"""The double number line of counts and percents."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated
from mathgen.sheets.figures.double_number_line import double_number_line
from tests.sheets.figures.scenes import down, over, scene, up

GOLD = over(down(color="gold"), up(color="gold"))  # 4 of 5


def test_a_part_of_a_whole_that_is_told_stands_under_the_whole() -> None:
    """80% of 40 is 32."""
    made = double_number_line(scene(Op("*", (GOLD, Stated(40, "set up next time"))), printed=(("80%", GOLD),), shown="32"))
    assert made is not None
    assert made.worked is not None
    assert (made.blank["whole"], made.blank["marks"]) == ("40", [])
    assert "32" not in made.blank["alt"]
    assert made.worked["marks"] == [{"top": 4, "bottom": 5, "upper": "32", "lower": "80%"}]


def test_a_whole_that_is_asked_for_is_left_blank() -> None:
    """20 is 80% of 25."""
    made = double_number_line(scene(Op("/", (Stated(20, "goal next time"), GOLD)), printed=(("80%", GOLD),), shown="25"))
    assert made is not None
    assert made.worked is not None
    assert made.blank["whole"] == ""
    assert "25" not in made.blank["alt"]
    assert (made.worked["whole"], made.worked["marks"][0]["upper"]) == ("25", "20")


def test_a_percent_that_is_asked_for_is_on_no_line_of_the_pupil() -> None:
    """4 of 5 is 80%."""
    made = double_number_line(scene(GOLD, printed=(("5", up(color="gold")),), shown="80%"))
    assert made is not None
    assert made.worked is not None
    assert (made.blank["whole"], "80" in made.blank["alt"]) == ("5", False)
    assert made.worked["alt"].endswith("4 stands over 80%, 5 over 100%.")


def test_without_a_rate_there_is_none() -> None:
    """A total."""
    assert double_number_line(scene(Op("+", (down(trial=1), down(trial=2))))) is None
