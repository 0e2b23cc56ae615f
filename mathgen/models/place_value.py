"""Place value: which of two totals is greater, read off their digits."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Choice
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.side_by_side import Pair, side_by_side
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_NAME = Demand("name")
_TWO_DIGITS = 10


@problem_model(skill="compare totals")
def greater_total(view: TableView) -> AskSpace:
    """Which of two groups, trials or colors had more (or fewer) pins knocked down: two totals with as many digits."""

    def build(pair: Pair, word: str) -> Draft | None:
        a, b = view.number(pair.one), view.number(pair.other)
        # With more digits a number is greater at a glance.
        if a == b or min(a, b) < _TWO_DIGITS or len(str(a)) != len(str(b)):
            return None
        first, second = str(pair.first), str(pair.second)
        more, fewer = (first, second) if a > b else (second, first)
        return Draft(
            ask=Ask(Choice((first, second), (pair.one, pair.other), word == "more"), (), _NAME),
            roles={"pair": (pair.one, pair.other), "first": pair.one, "last": pair.other, "word": word},
            structure="which is greater",
            slips=(("H21", (first, second, a, b, word)), ("H22", (fewer if word == "more" else more,))),
            unit=False,
            fewer=word == "fewer",
            wanted=frozenset({pair.kind}),
        )

    return side_by_side(view, build, ("more", "fewer"))
