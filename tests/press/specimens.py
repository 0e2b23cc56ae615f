"""A specimen of every figure, from the table of ``by_hand``; run as a module, it writes them all as one contact sheet.

python -m tests.press.specimens out/figures.pdf
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

from sympy import Integer, Rational

from mathgen.asks.expression import Choice, Equation, Op, Stated
from mathgen.press.files import write_files
from mathgen.press.pdf import pdf_bytes
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.bar_model import bar_model
from mathgen.sheets.figures.blank_graph import blank_graph
from mathgen.sheets.figures.box_plot import FiveNumbers, box_plot, plot_to_complete
from mathgen.sheets.figures.coordinate_grid import coordinate_grid
from mathgen.sheets.figures.dot_plot import dot_plot, line_plot
from mathgen.sheets.figures.dot_plot import plot_to_complete as dots_to_complete
from mathgen.sheets.figures.double_number_line import double_number_line
from mathgen.sheets.figures.fraction_bars import fraction_bars
from mathgen.sheets.figures.histogram import histogram, histogram_to_complete
from mathgen.sheets.figures.hundred_grid import hundred_grid
from mathgen.sheets.figures.number_line import number_line
from mathgen.sheets.figures.part_whole import part_whole
from mathgen.sheets.figures.pins import pins
from mathgen.sheets.figures.plane import Point
from mathgen.sheets.figures.ratio_table import ratio_table
from mathgen.sheets.figures.scatter_plot import Line, scatter_plot
from mathgen.sheets.figures.scene import FigureData, Support
from mathgen.sheets.figures.tree import tree
from mathgen.sheets.figures.two_dot_plots import plots_to_complete, two_dot_plots
from mathgen.sheets.figures.two_way_table import two_way_table
from mathgen.trials.table import Row, TrialTable
from tests.sheets.by_hand import GRAPHS, TABLE, words
from tests.sheets.figures.scenes import down, over, scene, up

TWELVE = ("red", "blue", "gold", "black", "brown", "green", "gray", "pink", "purple", "white", "orange", "yellow")
MANY_COLORS = TrialTable(tuple(Row("Owls", 1, color, 1, 1) for color in TWELVE))
RED, BLUE, GOLD = (over(down(color=color), up(color=color)) for color in ("red", "blue", "gold"))
OF_ALL = tuple(over(down(color=color), up()) for color in ("red", "blue"))
SUPPORTS: dict[str, Support | None] = {
    "part-whole boxes": part_whole(scene(Op("+", tuple(down(color=color) for color in ("red", "blue", "gold"))))),
    "pins": pins(scene(Op("-", (up(), down())))),
    "pins of twelve colors": pins(scene(Op("-", (up(), down())), table=MANY_COLORS)),
    "fraction bar": fraction_bars(scene(Op("+", OF_ALL))),
    "fraction bars": fraction_bars(scene(Choice(("Owls", "Herons"), tuple(over(down(group), up(group)) for group in ("Owls", "Herons"))))),
    "bar model, more": bar_model(scene(Op("-", (down("Owls"), down("Herons"))))),
    "bar model, times": bar_model(
        scene(down(color="gold"), Equation(down(color="gold"), Op("*", (Stated(2, "times"), down(color="blue")))))
    ),
    "number line": number_line(scene(Choice(("red", "gold"), (RED, GOLD)), printed=(("0.75", RED), ("0.8", GOLD)))),
    "double number line": double_number_line(scene(Op("*", (GOLD, Stated(40, "set up next time"))), printed=(("80%", GOLD),), shown="32")),
    "hundred grid": hundred_grid(scene(over(down(trial=None, color="gold"), up(trial=None, color="gold")))),
    "ratio table": ratio_table(scene(Op("*", (GOLD, Stated(30, "set up next time"))), shown="24")),
}
LINE = Line(24, -2, "y = 24 - 2x")
WAY = [Point(Integer(3), Integer(0)), Point(Integer(3), Integer(18)), Point(Integer(0), Integer(18))]
FIVE = FiveNumbers(*map(Rational, ("2", "5/2", "4", "6", "9")))


def displays() -> dict[str, FigureData]:
    """Every figure that shows data."""
    graph = GRAPHS[4]
    assert graph is not None
    bars = graph_data(graph, TABLE, words(4), 4)
    pictures = graph_data(graph, TABLE, {**words(4), "graph_kind": "picture"}, 4)
    title = "Pins knocked down"
    dots = dot_plot(title, "Pins in a trial", [9, 6, 8, 9, 6, 9, 5])
    both = two_dot_plots(title, "Pins in a trial", [("Owls", [9, 6, 8, 9]), ("Herons", [5, 6, 9, 7])])
    bins = histogram(title, "Pins in a trial", "Number of trials", [1, 2, 4, 5, 6, 9, 9, 11], 0, 4)
    boxes = box_plot(title, "Pins in a trial", [("Owls", FIVE), ("Herons", FIVE._replace(least=Rational(1)))])
    return {
        "bar graph": bars,
        "bar graph to complete": blank_graph(bars),
        "picture graph": pictures,
        "picture graph to complete": blank_graph(pictures),
        "dot plot": dots,
        "dot plot to complete": dots_to_complete(dots),
        "line plot": line_plot("How far the ball rolled", "Feet", [Rational(3, 2), Rational(7, 4), Rational(3, 2), Rational(5, 2)]),
        "two dot plots": both,
        "two dot plots to complete": plots_to_complete(both),
        "histogram": bins,
        "histogram to complete": histogram_to_complete(bins),
        "box plot": boxes,
        "box plot to complete": plot_to_complete(boxes),
        "scatter plot": scatter_plot("Two trials of each group", "Pins in Trial 1", "Pins in Trial 2", [(9, 6), (8, 9), (6, 9), (5, 5)]),
        "scatter plot with a line": scatter_plot(title, "Inches", "Pins", [(2, 20), (Rational(9, 2), 14)], LINE, WAY),
        "coordinate grid": coordinate_grid("Inches", "Pins", [Point(Integer(4), Integer(17), "Trial 1")], True),
        "coordinate grid to plot on": coordinate_grid("Inches", "Pins", [Point(Integer(4), Integer(17), "Trial 1")], False),
        "two-way table": two_way_table(title, "Group", ["down", "standing"], [("Owls", [9, 3]), ("Herons", [8, None])]),
        "tree": tree(["red", "blue"], ["red", "blue", "gold"]),
        "tree, filled in": tree(["red", "blue"], ["red", "blue", "gold"], written=True),
    }


def contact_sheet(points: str = "12.5") -> dict[str, Any]:
    """The data of the contact sheet: figures to work on, empty and filled in, then those that show data."""
    found: dict[str, FigureData] = {}
    for name, support in SUPPORTS.items():
        assert support is not None, name
        found[f"{name}, for the pupil"] = support.blank
        if support.worked is not None:
            found[f"{name}, in the key"] = support.worked
    return {
        "title": "Figures",
        "points": points,
        "specimens": [{"name": name, "figure": figure} for name, figure in {**found, **displays()}.items()],
    }


if __name__ == "__main__":
    write_files({Path(sys.argv[1]): pdf_bytes("specimens", contact_sheet())}, force=True)
