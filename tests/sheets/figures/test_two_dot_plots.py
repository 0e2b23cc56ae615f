"""Two dot plots over one number line."""

from __future__ import annotations

from mathgen.asks.expression import Expr, Op
from mathgen.sheets.figures.two_dot_plots import lists_plotted, plots_to_complete, two_dot_plots
from tests.sheets.figures.scenes import down, scene


def test_both_lists_have_their_dots_over_one_line_that_goes_one_number_further() -> None:
    """5, 7, 7 and 6, 8, 8: the line goes from 4 to 9."""
    made = two_dot_plots("Pins", "Number of pins", [("Owls", [7, 5, 7]), ("Herons", [8, 6, 8])])
    assert made["labels"] == ["4", "5", "6", "7", "8", "9"]
    assert [one["counts"] for one in made["plots"]] == [[0, 1, 0, 2, 0, 0], [0, 0, 1, 0, 2, 0]]
    assert made["most"] == 2
    assert made["alt"].endswith("Owls: 5: 1, 7: 2. Herons: 6: 1, 8: 2.")


def test_a_line_of_counts_does_not_go_below_0() -> None:
    assert two_dot_plots("Pins", "Number of pins", [("Owls", [0, 2]), ("Herons", [1, 3])])["labels"][0] == "0"


def test_plots_to_complete_show_no_dot_and_tell_of_none() -> None:
    made = plots_to_complete(two_dot_plots("Pins", "Number of pins", [("Owls", [7, 5]), ("Herons", [8, 6])]))
    assert {number for one in made["plots"] for number in one["counts"]} == {0}
    assert made["alt"].endswith("Number of pins: from 4 to 9; no dot is drawn for Owls and Herons.")


def test_the_two_lists_that_the_words_tell_are_plotted_in_the_key() -> None:
    """The Owls knocked down 9 pins in Trial 1; the rows of the key are named by what tells the lists apart."""
    trials = [(str(n), down(group, trial)) for n, (group, trial) in enumerate([("Owls", 1), ("Owls", 2), ("Herons", 1), ("Herons", 2)])]
    expr: Expr = Op("-", (trials[0][1], trials[2][1]))
    made = lists_plotted(scene(expr, printed=tuple(trials), grade=7, skill="overlap of two lists"))  # type: ignore[arg-type]
    assert made is not None
    assert made.worked is not None
    assert [one["label"] for one in made.worked["plots"]] == ["Owls", "Herons"]
    groups = [trials[place] for place in (0, 2, 1, 3)]
    made = lists_plotted(scene(expr, printed=tuple(groups), grade=7, skill="overlap of two lists"))  # type: ignore[arg-type]
    assert made is not None
    assert [one["label"] for one in made.blank["plots"]] == ["Trial 1", "Trial 2"]


def test_a_problem_of_one_list_gets_no_two_plots() -> None:
    assert lists_plotted(scene(down(), printed=(("9", down()),))) is None
