"""Which problems of a sheet get a figure to work on, and which figure."""

from __future__ import annotations

import tomllib
from collections import Counter
from collections.abc import Callable
from functools import cache
from itertools import product
from pathlib import Path
from typing import Any, NamedTuple

from mathgen.problems.record import Problem
from mathgen.sheets.figures.bar_model import bar_model
from mathgen.sheets.figures.blank_graph import graph_to_make
from mathgen.sheets.figures.box_plot import counts_boxed
from mathgen.sheets.figures.coordinate_grid import points_plotted
from mathgen.sheets.figures.dot_plot import counts_plotted, spaces_plotted
from mathgen.sheets.figures.double_number_line import double_number_line
from mathgen.sheets.figures.fraction_bars import fraction_bars
from mathgen.sheets.figures.histogram import counts_in_bars
from mathgen.sheets.figures.hundred_grid import hundred_grid
from mathgen.sheets.figures.number_line import number_line
from mathgen.sheets.figures.part_whole import part_whole
from mathgen.sheets.figures.pins import pins
from mathgen.sheets.figures.ratio_table import ratio_table
from mathgen.sheets.figures.scatter_plot import points_told, spaces_and_pins
from mathgen.sheets.figures.scene import Scene, Support
from mathgen.sheets.figures.two_dot_plots import lists_plotted
from mathgen.sheets.figures.two_way_table import kinds_by_results
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals

_MAKERS: dict[str, Callable[[Scene], Support | None]] = {
    "bar-model": bar_model,
    "box-plot": counts_boxed,
    "coordinate-grid": points_plotted,
    "dot-plot": counts_plotted,
    "dot-plots": lists_plotted,
    "double-number-line": double_number_line,
    "fraction-bars": fraction_bars,
    "graph": graph_to_make,
    "histogram": counts_in_bars,
    "hundred-grid": hundred_grid,
    "line-plot": spaces_plotted,
    "number-line": number_line,
    "part-whole": part_whole,
    "pins": pins,
    "ratio-table": ratio_table,
    "scatter-plot": spaces_and_pins,
    "scatter-plot-to-make": points_told,
    "two-way-table": kinds_by_results,
}
_YOUNG = 3  # up to here a challenge has its figure too
_LATER = 2  # on a sheet of a grade that the table does not name


class Rules(NamedTuple):
    """The table of supports: figures by skill and grade in their order, those that words ask for, and how many others a sheet may have."""

    figures: dict[tuple[str, int], list[str]]
    asked: dict[tuple[str, int], str]
    most: dict[int, int]


def makers() -> dict[str, Callable[[Scene], Support | None]]:
    """The figures that problems may get, by the name under which the table has them."""
    return dict(_MAKERS)


@cache
def rules() -> Rules:
    """The table that stands beside this file."""
    data = tomllib.loads((Path(__file__).parent / "supports.toml").read_text(encoding="utf-8"))
    figures: dict[tuple[str, int], list[str]] = {}
    asked = {}
    for entry in data["supports"]:
        for pair in product(entry["skills"], entry["grades"]):
            figures.setdefault(pair, []).append(entry["figure"])
            if "asked" in entry:
                asked[pair] = entry["asked"]
    return Rules(figures, asked, {int(grade): most for grade, most in data["most"].items()})


def asked_figure(problem: Problem) -> str:
    """What a problem's words ask pupils to do with a figure: ``read`` it, ``draw`` it, or "" where they ask nothing."""
    return rules().asked.get((problem.skill, problem.grade), "")


def support(scene: Scene, grade: int) -> Support | None:
    """The figure for a problem on a sheet of a grade; None for an older pupil's challenge, which is to be met without.

    One that the words ask for is there on every sheet and at every level.
    """
    problem = scene.problem
    asked = asked_figure(problem)
    if problem.level == "challenge" and grade > _YOUNG and not asked:
        return None
    made = (_MAKERS[figure](scene) for figure in rules().figures.get((problem.skill, problem.grade if asked else grade), ()))
    found = next((one for one in made if one is not None), None)
    return found._replace(asked=asked) if found is not None else None


def form_supports(
    problems: tuple[Problem, ...], table: TrialTable, words: dict[str, Any], grade: int, drawn: int | None = None
) -> list[Support | None]:
    """A figure or None for each problem: in print order, but each kind of figure once before any comes again.

    Figures that words ask for are all kept, but for one to read that stands on the sheet already.

    Args:
        problems: of one form.
        table: the class's results.
        words: as ``page_words`` gathers them.
        grade: of the sheet.
        drawn: the problem, counted from 0, that asks pupils for a drawing of their own.
    """
    totals = Totals(table)
    made = [support(Scene(one, table, totals, words), grade) for one in problems]
    turns: list[tuple[int, int]] = []
    seen: Counter[str] = Counter()
    kept = set()
    for place, one in enumerate(made):
        if one is None:
            continue
        if one.asked:
            if one.asked == "draw" or one.blank not in [before.blank for before in made[:place] if before is not None]:
                kept.add(place)
        elif place != drawn:
            turns.append((seen[one.blank["kind"]], place))
            seen[one.blank["kind"]] += 1
    kept |= {place for _, place in sorted(turns)[: rules().most.get(grade, _LATER)]}
    return [one if place in kept else None for place, one in enumerate(made)]
