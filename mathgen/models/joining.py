"""Adding to a count and taking from it: something is there, something happens, and one of the three numbers is asked for.

Adding to: the pins knocked down so far, and those of one more trial. Taking from: the pins set up, knocked down, left standing.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft, Role

_WHOLE = Demand("whole")
_BY_HEART = 5  # sums and differences within 5 are known before school stories ask for them
_COUNTED_ON = 10  # further than this nobody counts on one by one


class Story(NamedTuple):
    """Three quantities and their numbers: ``start`` and ``change`` make ``result``, or ``result`` is left of ``start``."""

    start: Quantity
    change: Quantity
    result: Quantity
    numbers: tuple[int, int, int]


def _one_off(counted: int, wrong: int) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """The slip of counting the start as a step, where few enough are counted."""
    return (("H13", (wrong,)),) if counted <= _COUNTED_ON else ()


def _adding(view: TableView, build: Callable[[Story], Draft | None]) -> AskSpace:
    """Drafts of every group's (and the class's) count before a trial, in it, and after it; of one color or all."""
    table = view.table
    whose: list[tuple[str, ...] | None] = [(group,) for group in table.groups]
    if len(table.groups) > 1:
        whose.append(None)

    def told(groups: tuple[str, ...] | None, place: int, color: str | None) -> Draft | None:
        trials = table.trials
        spans = trials[:place], trials[place : place + 1], trials[: place + 1]
        start, change, result = (view.quantity("down", Spot(groups, span), color) for span in spans)
        if not view.totals.complete(result.scope):
            return None
        a, b, c = view.number(start), view.number(change), view.number(result)
        # As many again as before: the answer would stand in the words.
        if 0 in (a, b) or a == b or c <= _BY_HEART:
            return None
        return build(Story(start, change, result, (a, b, c)))

    return AskSpace((whose, range(1, len(table.trials)), view.colors_or_all), told)


def _taking(view: TableView, build: Callable[[Story], Draft | None]) -> AskSpace:
    """Drafts of every rack of one trial: set up, knocked down and left standing; of one color or all."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) == 1]

    def told(spot: Spot, color: str | None) -> Draft | None:
        start, change, result = (view.quantity(measure, spot, color) for measure in ("set_up", "down", "standing"))
        a, b, c = view.number(start), view.number(change), view.number(result)
        # Half of the pins: the answer would stand in the words.
        if 0 in (b, c) or b == c or a <= _BY_HEART:
            return None
        return build(Story(start, change, result, (a, b, c)))

    return AskSpace((spots, view.colors_or_all), told)


def _roles(story: Story) -> dict[str, Role]:
    return {"start": story.start, "change": story.change, "result": story.result}


def _missing(story: Story, asked: Quantity, slips: tuple[tuple[str, tuple[int, ...]], ...], unknown: str, symbol: str) -> Draft:
    """One of the first two numbers is asked for: the story is an equation."""
    parts = (story.start, story.change)
    return Draft(
        ask=Ask(Value(asked), (Equation(Op("+" if symbol == "+" else "-", parts), story.result),), _WHOLE),
        roles={**_roles(story), "asked": asked},
        structure=unknown,
        slips=slips,
        must_not_show=(asked.scope,),
    )


@problem_model(skill="add to, how many in all")
def add_to_result(view: TableView) -> AskSpace:
    """How many pins so far: those before a trial, and those that the trial adds."""

    def build(story: Story) -> Draft:
        a, b, total = story.numbers
        return Draft(
            ask=Ask(Value(Op("+", (story.start, story.change))), (), _WHOLE, story.result),
            roles=_roles(story),
            structure="result unknown",
            slips=(("H14", (a, b)), ("H11", (a, b)), ("H15", (a, b)), *_one_off(min(a, b), total - 1)),
            must_not_show=(story.result.scope,),
        )

    return _adding(view, build)


@problem_model(skill="add to, what is missing")
def add_to_change(view: TableView) -> AskSpace:
    """How many pins a trial added, from the counts before and after it."""

    def build(story: Story) -> Draft | None:
        before, added, after = story.numbers
        if view.is_cell(story.change):
            return None
        slips = (("H19", (after, before)), ("H10", (after, before)), *_one_off(min(added, before), added + 1))
        return _missing(story, story.change, slips, "change unknown", "+")

    return _adding(view, build)


@problem_model(skill="add to, what is missing")
def add_to_start(view: TableView) -> AskSpace:
    """How many pins there were before a trial, from what it added and the count after it."""

    def build(story: Story) -> Draft | None:
        before, added, after = story.numbers
        if view.is_cell(story.start):
            return None
        slips = (("H19", (after, added)), ("H10", (after, added)), *_one_off(min(added, before), before + 1))
        return _missing(story, story.start, slips, "start unknown", "+")

    return _adding(view, build)


@problem_model(skill="take from, what is left")
def take_from_result(view: TableView) -> AskSpace:
    """How many pins were left standing, from those set up and those knocked down."""

    def build(story: Story) -> Draft:
        set_up, down, left = story.numbers
        return Draft(
            ask=Ask(Value(Op("-", (story.start, story.change))), (), _WHOLE, story.result),
            roles={**_roles(story), "rest": story.result},
            structure="result unknown",
            slips=(("H18", (down,)), ("H06", (set_up, down)), ("H10", (set_up, down)), *_one_off(min(down, left), left + 1)),
            must_not_show=(story.result.scope,),
        )

    return _taking(view, build)


@problem_model(skill="take from, what is missing")
def take_from_change(view: TableView) -> AskSpace:
    """How many pins were knocked down, from those set up and those left standing."""

    def build(story: Story) -> Draft | None:
        set_up, down, left = story.numbers
        if view.is_cell(story.change):
            return None
        slips = (("H06", (set_up, left)), ("H10", (set_up, left)), *_one_off(min(down, left), down + 1))
        return _missing(story, story.change, slips, "change unknown", "-")

    return _taking(view, build)


@problem_model(skill="take from, what is missing")
def take_from_start(view: TableView) -> AskSpace:
    """How many pins were set up, from those knocked down and those left standing."""

    def build(story: Story) -> Draft | None:
        set_up, down, left = story.numbers
        if view.is_cell(story.start):
            return None
        slips = (("H20", (down, left)), ("H11", (down, left)), *_one_off(min(down, left), set_up - 1))
        return _missing(story, story.start, slips, "start unknown", "-")

    return _taking(view, build)
