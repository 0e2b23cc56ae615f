"""Number sentences with a blank: the story of adding to a count or taking from it, and its equation with one number missing."""

from __future__ import annotations

from itertools import permutations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.stories import Story, adding, taking
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_TRUTH = Demand("truth")
_PLACES = ("first", "second")  # of the blank
_WORTH_SPLITTING = 4
_MOST = 20  # of a sum that is to be judged


def _draft(story: Story, blank: str, symbol: str, slips: tuple[tuple[str, tuple[int, ...]], ...]) -> Draft:
    asked, known = (story.start, story.change) if blank == "first" else (story.change, story.start)
    return Draft(
        ask=Ask(Value(asked), (Equation(Op("+" if symbol == "+" else "-", (story.start, story.change)), story.result),), _WHOLE),
        roles={"start": story.start, "change": story.change, "result": story.result, "asked": asked, "known": known, "blank": blank},
        structure="start unknown" if blank == "first" else "change unknown",
        slips=slips,
        unit=False,
        must_not_show=(asked.scope,),
    )


def _hidden(view: TableView, story: Story, blank: str) -> bool:
    """Whether the missing number is no single cell of the table."""
    asked: Quantity = story.start if blank == "first" else story.change
    return not view.is_cell(asked)


@problem_model(skill="missing number of a number sentence")
def missing_addend(view: TableView) -> AskSpace:
    """The blank of 8 + __ = 18 or __ + 10 = 18: the pins before a trial, those that it adds, and all so far."""

    def build(story: Story, blank: str) -> Draft | None:
        if not _hidden(view, story, blank):
            return None
        before, added, total = story.numbers
        known, missing = (added, before) if blank == "first" else (before, added)
        slips = (("H19", (total, known)), ("H10", (total, known)), *off_by_one(min(known, missing), missing + 1))
        return _draft(story, blank, "+", slips)

    return adding(view, build, _PLACES)


@problem_model(skill="missing number of a number sentence")
def missing_in_difference(view: TableView) -> AskSpace:
    """The blank of 12 - __ = 7 or __ - 5 = 7: the pins set up, knocked down and left standing."""

    def build(story: Story, blank: str) -> Draft | None:
        if not _hidden(view, story, blank):
            return None
        set_up, down, left = story.numbers
        if blank == "first":
            slips = (("H20", (down, left)), ("H11", (down, left)), *off_by_one(min(down, left), set_up - 1))
        else:
            slips = (("H06", (set_up, left)), ("H10", (set_up, left)), *off_by_one(min(down, left), down + 1))
        return _draft(story, blank, "-", slips)

    return taking(view, build, _PLACES)


@problem_model(skill="true number sentences")
def true_or_false(view: TableView) -> AskSpace:
    """Whether 3 + 2 = 5, or 5 = 3 + 2, of three colors of one group in one trial."""

    def build(spot: Spot, colors: tuple[str, str, str], sum_first: bool) -> Draft | None:
        parts = tuple(view.quantity("down", spot, color) for color in colors)
        numbers = tuple(map(view.number, parts))
        a, b, whole = numbers if sum_first else (*numbers[1:], numbers[0])
        # Near enough that the sum has to be found; one kind of what is false: yes and no come about as often.
        apart = a + b - whole
        if 0 in numbers or a == b or abs(apart) > 1 or (apart and (apart > 0) != sum_first):
            return None
        addends, other = (parts[:2], parts[2]) if sum_first else (parts[1:], parts[0])
        sides = (Op("+", addends), other) if sum_first else (other, Op("+", addends))
        return Draft(
            ask=Ask(Truth(sides[0], "=", sides[1]), (), _TRUTH),
            roles={"parts": parts, "one": parts[0], "two": parts[1], "three": parts[2]},
            structure="is it so",
            slips=(*(() if sum_first else (("H40", ()),)), ("H41", (a, b, whole)), ("H42", (a, b, whole))),
            wanted=frozenset({"sum-first" if sum_first else "sum-last"}),
        )

    return AskSpace((view.group_trials, tuple(permutations(view.table.colors, 3)), (True, False)), build)


@problem_model(skill="true number sentences")
def difference_and_sum(view: TableView) -> AskSpace:
    """Whether 12 - 5 = 4 + 3: the pins left of those set up, and two numbers that are to come to as many."""

    def build(story: Story, first: int, right: bool) -> Draft | None:
        set_up, down, left = story.numbers
        # What is wrong, in turn: the first number is what was left standing, as if the answer came now; or the sum is 1 off.
        answer_first = not right and (left + first) % 2 == 0
        one, other = (left, first) if answer_first else (first, left - first + (not right))
        if left < _WORTH_SPLITTING or other < 1 or one == other or one + other > _MOST or {one, other} & {set_up, down}:
            return None
        claimed = Stated(one, "claimed"), Stated(other, "claimed")
        return Draft(
            ask=Ask(Truth(Op("-", (story.start, story.change)), "=", Op("+", claimed)), (), _TRUTH),
            roles={"set_up": story.start, "down": story.change, "one": claimed[0], "other": claimed[1]},
            structure="is it so",
            slips=(("H47", (left, one)), ("H41", (one, other, left))),
        )

    return taking(view, build, (1, 2, 3, 4, 5), (True, False))
