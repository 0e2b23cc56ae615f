"""Graphs that pupils make: a bar or picture graph of the colors at one spot, read once it is done; pictures that stand for several pins."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Quantity, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_SINGLE = 20  # the tallest bar that a scale of ones has room for
_PICTURES = 10  # so many pictures a row has room for
_AT_A_GLANCE = 3
_KEYS = (2, 5, 10)  # 3.MD.B.3: pictures that stand for several things
_BARS = (2, 6)  # so many colors a graph has


def _all_colors(view: TableView, spot: Spot) -> tuple[Quantity, ...] | None:
    """A count for each color, at a spot of one group or one trial; None where there is nothing to draw for one of them."""
    one = 1 in (len(spot.groups or view.table.groups), len(spot.trials or view.table.trials))
    parts = tuple(view.quantity("down", spot, color) for color in view.table.colors)
    return parts if one and _BARS[0] <= len(parts) <= _BARS[1] and all(map(view.number, parts)) else None


@problem_model(skill="graph to make")
def graph_to_make(view: TableView) -> AskSpace:
    """How many more (or fewer) pins of one color than of another, of a bar graph or picture graph that the pupil makes."""
    colors = range(len(view.table.colors))

    def build(spot: Spot, one: int, other: int, word: str, graph: str) -> Draft | None:
        parts = _all_colors(view, spot) if one != other else None
        if parts is None:
            return None
        bigger, smaller = parts[one], parts[other]
        most, least, tallest = view.number(bigger), view.number(smaller), max(map(view.number, parts))
        # 8 and 4: the answer would stand in the words, and "I took the smaller number" would be right.
        if most - least < 2 or most == 2 * least or most <= _AT_A_GLANCE or (graph == "picture graph" and tallest > _PICTURES):
            return None
        return Draft(
            ask=Ask(Value(Op("-", (bigger, smaller))), (), _WHOLE),
            roles={"parts": parts, "asked": (bigger, smaller) if word == "more" else (smaller, bigger), "word": word, "graph": graph},
            structure="difference unknown",
            slips=(
                ("H01", (most, least)),
                ("H02", (most, least)),
                ("H10", (most, least)),
                *off_by_one(most - least, most - least + 1),
            ),
            fewer=word == "fewer",
            drawn=parts,
            features=frozenset({"graph", "scaled_graph"} if tallest > _SINGLE else {"graph"}),
        )

    return AskSpace((view.spots, colors, colors, ("more", "fewer"), ("bar graph", "picture graph")), build)


@problem_model(skill="picture graph with a key")
def pictures_in_row(view: TableView) -> AskSpace:
    """How many pictures stand for one color's pins, in a picture graph whose pictures stand for several pins each."""

    def build(spot: Spot, place: int, each: int) -> Draft | None:
        parts = _all_colors(view, spot)
        if parts is None:
            return None
        numbers = tuple(map(view.number, parts))
        pins = numbers[place]
        # Each row is made of whole pictures and at most one half.
        if max(numbers) > each * _PICTURES or any(number % each not in (0, each // 2 if each % 2 == 0 else 0) for number in numbers):
            return None
        if pins % each or pins // each < 2 or pins // each == each:
            return None
        stands_for = Stated(each, "pins for each picture")
        return Draft(
            ask=Ask(Value(Op("/", (parts[place], stands_for))), (), _WHOLE),
            roles={"parts": parts, "asked": parts[place], "each": stands_for},
            structure="times",
            slips=(("J04", (pins,)), ("W29", (pins, each)), ("W30", (pins, each))),
            features=frozenset({"graph", "scaled_graph"}),
            unit="pictures",
        )

    return AskSpace((view.spots, range(len(view.table.colors)), _KEYS), build)
