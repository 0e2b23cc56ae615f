"""Which problem gets which figure."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stat, Stated, Value
from mathgen.grades.curriculum import load
from mathgen.sheets.figures.choice import form_supports, makers, rules, support
from tests.sheets.by_hand import TABLE, words
from tests.sheets.figures.scenes import down, over, scene, up
from tests.sheets.figures.test_scatter_plot import SLOPE, told

COLORS = tuple(down(color=color) for color in ("red", "blue", "gold"))
TOTAL = scene(Op("+", COLORS), skill="total of parts")
LEFT = scene(Op("-", (up(), down())), skill="two steps, what is left")


def test_the_table_names_skills_and_figures_that_exist() -> None:
    """A slip of the pen would leave a figure unused."""
    skills = set(load("ccss").all_skills())
    assert {skill for skill, _ in rules().figures} <= skills
    assert {figure for figures in rules().figures.values() for figure in figures} == set(makers())


def test_the_first_figure_that_can_be_made_is_taken() -> None:
    """Pins to cross off before part-whole boxes."""
    kinds = [None if one is None else one.blank["kind"] for one in (support(LEFT, 2), support(TOTAL, 2), support(TOTAL, 7))]
    assert kinds == ["pins", "part-whole", None]


def test_a_challenge_and_a_drawing_of_ones_own_get_none() -> None:
    """There the pupil chooses the model; a challenge of young pupils keeps its figure."""
    half = scene(over(down(color="gold"), up(color="gold")), skill="fraction of a set", level="challenge")
    found = form_supports((TOTAL.problem, LEFT.problem, half.problem), TABLE, words(3), 3, drawn=0)
    assert [one is None for one in found] == [True, False, False]
    assert support(half, 4) is None


def test_a_sheet_has_no_more_figures_than_its_grade_is_given_and_each_kind_before_any_twice() -> None:
    """Two totals and one set of pins, where two figures are allowed."""
    rules().most[2], kept = 2, rules().most[2]
    try:
        found = form_supports((TOTAL.problem, TOTAL.problem, LEFT.problem), TABLE, words(2), 2)
    finally:
        rules().most[2] = kept
    assert [one is None for one in found] == [False, True, False]


def test_a_figure_that_words_ask_for_is_on_every_sheet_and_at_every_level() -> None:
    """A box plot to draw in a challenge of grade 6, on a sheet of grade 7, in the problem that asks for a drawing of one's own."""
    numbers = Stat("upper quartile", tuple(down(group, trial) for group in ("Owls", "Herons") for trial in (1, 2)))
    boxed = scene(Value(numbers), grade=6, skill="box plot", level="challenge").problem
    found = form_supports((boxed, boxed, boxed), TABLE, words(7), 7, drawn=0)
    assert [one is not None and one.asked for one in found] == ["draw"] * 3


def test_a_plot_to_read_stands_on_a_sheet_once() -> None:
    """Two questions on the same scatter plot."""
    one = told(Op("*", (SLOPE, Stated(4, "inches wider"))))
    other = told(Op("*", (SLOPE, Stated(3, "inches wider"))))
    found = form_supports((one.problem, other.problem), one.table, one.words, 8)
    assert [one is not None and one.asked for one in found] == ["read", False]
