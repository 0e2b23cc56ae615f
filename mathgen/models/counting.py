"""Counting: totals, and what is left."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.put_together import put_together
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_BY_HEART = 5  # sums within 5 are known before school word problems have sums of their own
_WORTH_MULTIPLYING = 8  # 2 racks of 3 are seen without a product
_ONE_DIGIT = 10  # two-step stories add one-digit numbers first: the progressions keep both steps small


@problem_model(skill="total of parts")
def put_together_total(view: TableView) -> AskSpace:
    """How many pins in all: the colors at one spot, the trials of one group, or two to four groups at one time."""

    def build(parts: tuple[Quantity, ...], whole: Quantity) -> Draft | None:
        numbers = tuple(map(view.number, parts))
        total = sum(numbers)
        if min(numbers) == 0 or total <= _BY_HEART or not view.totals.complete(whole.scope):
            return None
        counted_on = min(numbers) if len(numbers) == 2 else total - numbers[0]
        return Draft(
            ask=Ask(Value(Op("+", parts)), (), _WHOLE, whole),
            roles={"parts": parts, "whole": whole},
            structure="whole unknown",
            slips=(
                ("H14", numbers),
                ("H11", numbers),
                *((("H15", numbers),) if len(numbers) == 2 else ()),
                *off_by_one(counted_on, total - 1),
            ),
            must_not_show=(whole.scope,),
        )

    return put_together(view, build)


@problem_model(skill="check a total")
def is_that_the_total(view: TableView) -> AskSpace:
    """Whether a number is the total of three or four parts; where it is not, 1 is missing, or a ten."""

    def build(parts: tuple[Quantity, ...], whole: Quantity, right: bool) -> Draft | None:
        numbers = tuple(map(view.number, parts))
        total = sum(numbers)
        if len(parts) < 3 or min(numbers) == 0 or not view.totals.complete(whole.scope):
            return None
        in_tens = min(numbers) >= _ONE_DIGIT
        # Without a new ten there is none to lose.
        if in_tens and sum(number % 10 for number in numbers) < 10:
            return None
        number = total if right else total - 10 if in_tens else total - 1
        if number in numbers:
            return None
        claim = Stated(number, "claimed")
        return Draft(
            ask=Ask(Truth(Op("+", parts), "=", claim), (), Demand("truth")),
            roles={"parts": parts, "whole": whole, "claim": claim},
            structure="is it so",
            slips=(("H48", (number, total)),)
            if in_tens
            else (("H41", (sum(numbers[:-1]), numbers[-1], number)), ("H42", (sum(numbers[:-1]), numbers[-1], number))),
            must_not_show=(whole.scope,),
        )

    return put_together(view, build, (True, False))


@problem_model(skill="missing part of a total")
def take_apart(view: TableView) -> AskSpace:
    """The part that is not told, from the total and every other part: colors, trials of one group, or two or three groups."""
    places = (0, 1, 2, 3)  # of the missing part among the parts

    def build(parts: tuple[Quantity, ...], whole: Quantity, place: int) -> Draft | None:
        if place >= len(parts) or view.is_cell(parts[place]) or not view.totals.complete(whole.scope):
            return None
        asked, known = parts[place], parts[:place] + parts[place + 1 :]
        numbers = tuple(map(view.number, known))
        total, missing, told = view.number(whole), view.number(asked), sum(numbers)
        # As many as all the others: stopping half way would be right. As many as one of them: the answer would stand in the words.
        if min(numbers) < 2 or missing == 0 or missing == told or missing in numbers or total <= _BY_HEART:
            return None
        if len(known) > 1 and max(numbers) >= _ONE_DIGIT:
            return None
        return Draft(
            ask=Ask(Value(asked), (Equation(Op("+", (*known, asked)), whole),), _WHOLE),
            roles={"parts": parts, "known": known, "asked": asked, "whole": whole},
            structure="part unknown",
            slips=(
                *((("H07", (told,)), ("H16", (total, *numbers))) if len(known) > 1 else ()),
                ("H19", (total, *numbers)),
                ("H10", (total, told)),
                *off_by_one(min(missing, told), missing + 1),
            ),
            features=frozenset({"two_step"}) if len(known) > 1 else frozenset(),
            must_not_show=(asked.scope,),
        )

    return put_together(view, build, places[:3], longest=3, with_colors=(places,))


@problem_model(skill="two steps, what is left")
def two_step_left_standing(view: TableView) -> AskSpace:
    """How many pins were left standing: add what was knocked down, color by color, then take it from what was set up."""

    def build(spot: Spot, colors: tuple[str, ...]) -> Draft | None:
        whole = view.quantity("set_up", spot, colors)
        parts = tuple(view.quantity("down", spot, color) for color in colors)
        numbers = tuple(map(view.number, parts))
        set_up, down = view.number(whole), sum(numbers)
        # Half of the pins: then stopping half way gives the answer. As many left as of one color: the answer would stand in the words.
        if len(parts) < 2 or min(numbers) == 0 or set_up in (down, 2 * down) or set_up - down in numbers or set_up <= _BY_HEART:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (whole, Op("+", parts)))), (), _WHOLE, Quantity("standing", whole.scope)),
            roles={"whole": whole, "parts": parts, "rest": Quantity("standing", whole.scope)},
            structure="part unknown",
            slips=(("H07", (down,)), ("H06", (set_up, *numbers)), ("H16", (set_up, *numbers))),
            features=frozenset({"two_step"}),
            must_not_show=(whole.scope,),
        )

    colors = view.table.colors
    # Two colors as well as all: the sums stay small where racks are large.
    sets = dict.fromkeys((*view.color_sets, *(colors[start : start + 2] for start in range(len(colors) - 1))))
    return AskSpace((view.spots, tuple(sets)), build)


@problem_model(skill="two steps, what is left")
def left_standing_over_trials(view: TableView) -> AskSpace:
    """How many pins were left standing in several trials with equal racks: multiply, then take away."""
    several = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None) -> Draft | None:
        trials = spot.trials or view.table.trials
        each = [view.quantity("set_up", Spot(spot.groups, (trial,)), color) for trial in trials]
        sizes = set(map(view.number, each))
        if len(sizes) != 1:
            return None
        down = view.quantity("down", spot, color)
        size, knocked_down = sizes.pop(), view.number(down)
        set_up = size * len(trials)
        # Half of the pins: then the knocked down would be as many as the left standing. A rack of one needs no multiplying, and
        # one rack or one pin a trial left standing would stand in the words.
        left = set_up - knocked_down
        if set_up < _WORTH_MULTIPLYING or knocked_down == 0 or left in (0, size, len(trials), knocked_down) or size == 1:
            return None
        count = Stated(len(trials), "trials")
        return Draft(
            ask=Ask(Value(Op("-", (Op("*", (count, each[0])), down))), (), _WHOLE, Quantity("standing", down.scope)),
            roles={"each": each[0], "count": count, "down": down, "rest": Quantity("standing", down.scope)},
            structure="part unknown",
            slips=(("H07", (set_up,)), ("H17", (size, knocked_down)), ("H18", (knocked_down,))),
            features=frozenset({"two_step", "multiply_divide"}),
            must_not_show=(down.scope,),
        )

    return AskSpace((several, view.colors_or_all), build)
