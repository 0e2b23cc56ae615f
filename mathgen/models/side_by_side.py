"""Two groups, two trials or two colors that a question holds side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations, pairwise
from typing import Any, NamedTuple

from mathgen.asks.expression import Quantity
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label


class Pair(NamedTuple):
    """Two labels of one kind, and the pins knocked down of each."""

    kind: str  # "groups", "trials" or "colors"
    first: Label
    second: Label
    one: Quantity
    other: Quantity


def side_by_side(view: TableView, build: Callable[..., Draft | None], *more: Sequence[Any]) -> AskSpace:
    """Drafts of every two groups, neighboring trials or colors whose results are complete, over any further axes.

    ``build`` is called with the pair and one choice of each further axis. Each kind has axes of its own: a product of all
    would be nearly empty.
    """
    table = view.table

    def at(kind: str, labels: tuple[Label, Label], scopes: tuple[Quantity, Quantity], *rest: Any) -> Draft | None:
        if not all(view.totals.complete(one.scope) for one in scopes):
            return None
        return build(Pair(kind, *labels, *scopes), *rest)

    def of_groups(labels: tuple[str, str], span: tuple[Label, ...] | None, color: str | None, *rest: Any) -> Draft | None:
        one, other = (view.quantity("down", Spot((label,), span), color) for label in labels)
        return at("groups", labels, (one, other), *rest)

    def of_trials(labels: tuple[Label, Label], groups: tuple[str, ...] | None, color: str | None, *rest: Any) -> Draft | None:
        one, other = (view.quantity("down", Spot(groups, (label,)), color) for label in labels)
        return at("trials", labels, (one, other), *rest)

    def of_colors(labels: tuple[str, str], spot: Spot, *rest: Any) -> Draft | None:
        one, other = (view.quantity("down", spot, label) for label in labels)
        return at("colors", labels, (one, other), *rest)

    return joined(
        AskSpace((list(combinations(table.groups, 2)), view.trial_spans, view.colors_or_all, *more), of_groups),
        AskSpace((list(pairwise(table.trials)), view.groups_or_class, view.colors_or_all, *more), of_trials),
        AskSpace((list(combinations(table.colors, 2)), view.spots, *more), of_colors),
    )
