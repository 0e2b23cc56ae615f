"""Parts and what they make together: colors at one spot, trials of one group, or groups side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Label

_Build = Callable[..., Draft | None]  # of the parts, their whole, and one choice of each further axis


def put_together(
    view: TableView, build: _Build, *more: Sequence[Any], longest: int = 4, with_colors: Sequence[Sequence[Any]] | None = None
) -> AskSpace:
    """Drafts of parts and their whole: the colors at one spot, the trials of one group, or two and more groups.

    Args:
        build: makes a draft of parts, whole and one choice of each further axis.
        more: further axes.
        longest: how many trials or groups are put together at most.
        with_colors: further axes where colors are put together, if they are others.
    """
    table = view.table
    sizes = range(2, longest + 1)
    neighbors = [table.groups[start : start + size] for size in sizes for start in range(len(table.groups) - size + 1)]
    times = [span for span in (table.trials, *view.trial_spans) if span is not None and len(span) in sizes]

    def of_trials(groups: tuple[str, ...] | None, trials: tuple[Label, ...], color: str | None, *rest: Any) -> Draft | None:
        parts = tuple(view.quantity("down", Spot(groups, (trial,)), color) for trial in trials)
        return build(parts, view.quantity("down", Spot(groups, trials), color), *rest)

    def of_groups(groups: tuple[str, ...], trials: tuple[Label, ...] | None, color: str | None, *rest: Any) -> Draft | None:
        parts = tuple(view.quantity("down", Spot((group,), trials), color) for group in groups)
        return build(parts, view.quantity("down", Spot(groups, trials), color), *rest)

    sets = [colors for colors in view.color_sets if len(colors) > 1]
    return joined(
        AskSpace((view.spots, sets, *(more if with_colors is None else with_colors)), of_colors(view, build)),
        AskSpace((view.groups_or_class, list(dict.fromkeys(times)), view.colors_or_all, *more), of_trials),
        AskSpace((neighbors, view.trial_spans, view.colors_or_all, *more), of_groups),
    )


def of_colors(view: TableView, build: _Build) -> Callable[..., Draft | None]:
    """The rule that puts colors of one spot together: it takes spot, colors, and what else ``build`` takes."""

    def rule(spot: Spot, colors: tuple[str, ...], *rest: Any) -> Draft | None:
        return build(tuple(view.quantity("down", spot, color) for color in colors), view.quantity("down", spot, colors), *rest)

    return rule
