"""Which of the fractions of a set that groups knocked down have a sum? All right choices are the answer."""

from __future__ import annotations

from functools import cache
from itertools import combinations
from math import gcd, lcm

from mathgen.asks.expression import Ask, Chosen, Op, Quantity, Stated
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.models.written_fractions import lowest
from mathgen.problems.draft import Draft

_FEWEST = {2: 4, 3: 5}  # numbers to choose from: of fewer there is little to try
_MOST = 6
_MOST_RIGHT = 3
_TOPS = tuple(range(3, 61))
_COMMON = 60  # the largest bottom number that fractions have to be brought to


def _chosen(view: TableView, like: bool) -> AskSpace:
    groups = view.table.groups
    trials = [trial for trial in view.table.trials if view.totals.complete(view.scope(Spot(None, (trial,))))]

    @cache
    def parts(trial: int | str, color: str | None) -> tuple[tuple[Quantity, ...], dict[int, tuple[Quantity, Quantity]]]:
        """Every group's set, and by how many pins fell: a part with its set; groups with as many are told of once.

        Nothing to choose from where the sets differ in size, or a part is empty or whole, or there are too many.
        """
        down, sets = (tuple(view.quantity(measure, Spot((group,), (trial,)), color) for group in groups) for measure in ("down", "set_up"))
        found: dict[int, tuple[Quantity, Quantity]] = {}
        for part, whole in zip(down, sets, strict=True):
            found.setdefault(view.number(part), (part, whole))
        n = view.number(sets[0])
        fit = len(set(map(view.number, sets))) == 1 and len(found) <= _MOST and not {0, n} & set(found)
        return sets, found if fit else {}

    def build(trial: int | str, color: str | None, size: int, total: int) -> Draft | None:
        sets, found = parts(trial, color)
        tops = tuple(found)
        if len(tops) < _FEWEST[size] or total in tops:
            return None
        n = view.number(sets[0])
        right = sum(sum(some) == total for some in combinations(tops, size))
        pairs = tuple((top, n) if like else lowest(top, n) for top in tops)
        bottom = lcm(*(one for _, one in pairs))
        if not 2 <= right <= _MOST_RIGHT or bottom > _COMMON or (not like and len({one for _, one in pairs}) < 2):
            return None
        rates = tuple(Op("/", found[top]) for top in tops)
        texts = tuple(f"{one}/{other}" for one, other in pairs)
        shared = gcd(total, n) if not like or total % n == 0 else 1
        to: Op | Stated = Stated(total // shared, "wanted sum", n // shared)
        printed = tuple(zip(rates, texts, strict=True))
        if like and shared == 1:  # 22/12, not 1 5/6: all parts are alike
            to = Op("/", (Stated(total, "wanted sum"), found[tops[0]][1]))
            printed = (*printed, (to, f"{total}/{n}"))
        numbers = (size, total, n, *(number for pair in pairs for number in pair))
        return Draft(
            ask=Ask(Chosen(texts, rates, size, to), (), Demand("list")),
            roles={"part": found[tops[0]][0], "sets": sets, "rates": rates, "to": to},
            structure="list",
            slips=(("C58", numbers), ("C59", numbers), ("C60", numbers)),
            features=frozenset() if like else frozenset({"unlike_denominators"}),
            rates=printed,
            sets=(n,),
            unit=False,
            unlike=None if like else "one divides" if bottom in {one for _, one in pairs} else "neither",
            wanted=frozenset({"two" if size == 2 else "three"}),
        )

    return AskSpace((trials if len(groups) >= _FEWEST[2] else [], view.colors_or_all, (2, 3), _TOPS), build)


@problem_model(skill="choose fractions with a sum")
def fractions_with_sum(view: TableView) -> AskSpace:
    """Which two or three of the groups' fractions, all with one bottom number, have a sum."""
    return _chosen(view, True)


@problem_model(skill="choose unlike fractions with a sum")
def unlike_fractions_with_sum(view: TableView) -> AskSpace:
    """Which two or three of the groups' fractions, each in lowest terms, have a sum."""
    return _chosen(view, False)
