"""Two-way tables of colors by results: relative frequencies of a row, of a column and of all; the cell that is missing."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_PERCENT, _WHOLE_PERCENT = Demand("percent"), Demand("percent", 0)
_WHOLE = Demand("whole")
_FEW_COLORS = 3  # rows, so that no more than six counts are told
_KINDS = ("row", "column", "all")
_OUT_OF = {"row": "J23", "column": "J24", "all": "J25"}  # the slip that takes a total of this kind


def _demand(top: int, bottom: int) -> Demand | None:
    """A whole percent, exact or rounded; None where it lies half way between two."""
    if 100 * top % bottom == 0:
        return _PERCENT
    return None if 200 * top % bottom == 0 else _WHOLE_PERCENT


@problem_model(skill="two-way relative frequency")
def two_way_frequency(view: TableView) -> AskSpace:
    """What percent of a color fell (of its row), of those that fell are of the color (of their column), or of all are both."""
    colors = view.table.colors if 2 <= len(view.table.colors) <= _FEW_COLORS else ()
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str, kind: str) -> Draft | None:
        downs = tuple(view.quantity("down", spot, one) for one in colors)
        set_ups = tuple(view.quantity("set_up", spot, one) for one in colors)
        fell, stood = tuple(map(view.number, downs)), tuple(map(view.number, set_ups))
        place = colors.index(color)
        part = downs[place]
        wholes: dict[str, Expr] = {"row": set_ups[place], "column": Op("+", downs), "all": Op("+", set_ups)}
        sizes = {"row": stood[place], "column": sum(fell), "all": sum(stood)}
        k, n = fell[place], sizes[kind]
        apart = [size - one for one, size in zip(fell, stood, strict=True)]
        # Too few to speak of in a cell, or an empty column.
        demand = _demand(k, n) if min(*fell, *apart) >= 2 else None
        if demand is None or 2 * k == n or n == 100 or len(set(sizes.values())) < len(sizes):
            return None
        return Draft(
            ask=Ask(Value(Op("/", (part, wholes[kind]))), (), demand),
            roles={
                "downs": downs,
                "set_ups": set_ups,
                "part": part,
                "own": set_ups[place],
                "whole": view.quantity("down", spot),
                "all": view.quantity("set_up", spot),
                "kind": kind,
                "rounded": "" if demand is _PERCENT else "yes",
            },
            structure="what fraction",
            drawn=downs,
            slips=tuple((_OUT_OF[name], (k, size)) for name, size in sizes.items() if name != kind),
            features=frozenset({"percent"}),
            sets=(n,),
            over=n,
            unit=False,
        )

    return AskSpace((spots, colors, _KINDS), build)


@problem_model(skill="missing cell of a two-way table")
def two_way_missing(view: TableView) -> AskSpace:
    """How many of all the other kinds were left standing: the cell that the totals and the row of one kind leave."""
    colors = view.table.colors if len(view.table.colors) > 2 else ()

    def build(spot: Spot, color: str) -> Draft | None:
        everything, down = view.quantity("set_up", spot), view.quantity("down", spot)
        own, part = view.quantity("set_up", spot, color), view.quantity("down", spot, color)
        n, fell, size, k = map(view.number, (everything, down, own, part))
        missing = n - fell - (size - k)
        # No cell is empty, and no two are the same: nobody can tell which cell a number was meant for.
        cells = {k, size - k, fell - k, missing}
        if min(cells) < 2 or len(cells) < 4 or missing in (n, fell, size):
            return None
        return Draft(
            ask=Ask(Value(Op("-", (Op("-", (everything, down)), Op("-", (own, part))))), (), _WHOLE),
            roles={"all": everything, "down": down, "own": own, "part": part, "rest": Quantity("standing", everything.scope)},
            structure="part unknown",
            slips=(("J20", (n - fell,)), ("J21", (fell - k,)), ("J22", (n - size,))),
            features=frozenset(),
        )

    return AskSpace((view.spots, colors), build)
