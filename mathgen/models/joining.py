"""Adding to a count and taking from it: something is there, something happens, and one of the three numbers is asked for.

Adding to: the pins knocked down so far, and those of one more trial. Taking from: the pins set up, knocked down, left standing.
"""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.stories import Story, adding, taking
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft, Role

_WHOLE = Demand("whole")


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
            slips=(("H14", (a, b)), ("H11", (a, b)), ("H15", (a, b)), *off_by_one(min(a, b), total - 1)),
            must_not_show=(story.result.scope,),
        )

    return adding(view, build)


@problem_model(skill="add to, what is missing")
def add_to_change(view: TableView) -> AskSpace:
    """How many pins a trial added, from the counts before and after it."""

    def build(story: Story) -> Draft | None:
        before, added, after = story.numbers
        if view.is_cell(story.change):
            return None
        slips = (("H19", (after, before)), ("H10", (after, before)), *off_by_one(min(added, before), added + 1))
        return _missing(story, story.change, slips, "change unknown", "+")

    return adding(view, build)


@problem_model(skill="add to, what is missing")
def add_to_start(view: TableView) -> AskSpace:
    """How many pins there were before a trial, from what it added and the count after it."""

    def build(story: Story) -> Draft | None:
        before, added, after = story.numbers
        if view.is_cell(story.start):
            return None
        slips = (("H19", (after, added)), ("H10", (after, added)), *off_by_one(min(added, before), before + 1))
        return _missing(story, story.start, slips, "start unknown", "+")

    return adding(view, build)


@problem_model(skill="take from, what is left")
def take_from_result(view: TableView) -> AskSpace:
    """How many pins were left standing, from those set up and those knocked down."""

    def build(story: Story) -> Draft:
        set_up, down, left = story.numbers
        return Draft(
            ask=Ask(Value(Op("-", (story.start, story.change))), (), _WHOLE, story.result),
            roles={**_roles(story), "rest": story.result},
            structure="result unknown",
            slips=(("H18", (down,)), ("H06", (set_up, down)), ("H10", (set_up, down)), *off_by_one(min(down, left), left + 1)),
            # No table prints what is left standing: it prints what fell, which is given here.
        )

    return taking(view, build)


@problem_model(skill="take from, what is missing")
def take_from_change(view: TableView) -> AskSpace:
    """How many pins were knocked down, from those set up and those left standing."""

    def build(story: Story) -> Draft | None:
        set_up, down, left = story.numbers
        if view.is_cell(story.change):
            return None
        slips = (("H06", (set_up, left)), ("H10", (set_up, left)), *off_by_one(min(down, left), down + 1))
        return _missing(story, story.change, slips, "change unknown", "-")

    return taking(view, build)


@problem_model(skill="take from, what is missing")
def take_from_start(view: TableView) -> AskSpace:
    """How many pins were set up, from those knocked down and those left standing."""

    def build(story: Story) -> Draft | None:
        set_up, down, left = story.numbers
        if view.is_cell(story.start):
            return None
        slips = (("H20", (down, left)), ("H11", (down, left)), *off_by_one(min(down, left), set_up - 1))
        return _missing(story, story.start, slips, "start unknown", "-")

    return taking(view, build)
