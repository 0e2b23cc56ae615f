"""Which rows of a table a quantity covers."""

from __future__ import annotations

from typing import Literal, NamedTuple

OfPins = Literal["set_up", "down", "standing"]  # what a table's cells count
Measure = Literal["set_up", "down", "standing", "successes", "trials"]  # pins, but for the last two, which count trials
BY_TRIAL: frozenset[Measure] = frozenset({"successes", "trials"})  # read a whole trial at a time, whatever the color
Column = Literal["gap"]  # what is measured once for each trial of a group: the space between pins
Label = str | int  # a trial is a number where it was typed as one


class Scope(NamedTuple):
    """Groups, trials and colors in table order; None means all of them.

    >>> Scope(groups=("Owls",), trials=(1,))
    Scope(groups=('Owls',), trials=(1,), colors=None)
    """

    groups: tuple[str, ...] | None = None
    trials: tuple[Label, ...] | None = None
    colors: tuple[str, ...] | None = None
