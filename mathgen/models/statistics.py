"""Statistics and chance: the mean, the median, a goal for the mean, and a count to expect."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stat, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.models.aimed import SUCCESS, Record, aimed
from mathgen.models.lists import MOST_NUMBERS, list_choices, listed
from mathgen.models.next_sets import may_be_next
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace, joined
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft
from mathgen.trials.scope import Scope

_WHOLE = Demand("whole")
_ANY = Demand("any")
_DECIMAL = Demand("decimal")
_NEXT = (0, 20, 30, 40, 50, 60, 80, 120)  # more pins in friendly numbers; 0: a multiple of the set so far
_TIMES = (2, 3, 5)
_NEXT_TRIALS = (10, 15, 20, 25, 30, 40, 44, 50)
_MOST_NEXT = 240


@problem_model(skill="mean")
def mean_down(view: TableView) -> AskSpace:
    """The mean count, over all trials of a group or over groups in one trial: whole, or a decimal of at most two places."""

    def build(spot: Spot, way: tuple[str, ...] | None, color: str | None) -> Draft | None:
        found = listed(view, spot, way, color)
        if found is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        total, count = sum(numbers), len(numbers)
        ordered = sorted(numbers)
        middles = ordered[(count - 1) // 2] + ordered[count // 2]
        # A mean that is in the list, or that is the median, would hide the mistakes that this problem is there to find.
        if total <= count or 100 * total % count or middles * count == 2 * total or total in [count * number for number in numbers]:
            return None
        even = total % count == 0
        slips: list[tuple[str, tuple[int | str, ...]]] = [("I02", numbers)]
        if way is None:
            slips.insert(0, ("I01", numbers))
        # Where the mean is whole, a half stands out: these slips count only where they are whole, too.
        if not even or middles % 2 == 0:
            slips.append(("I13", ("mean", *numbers)))
        if not even or total % 2 == 0:
            slips.append(("I04", numbers))
        return Draft(
            ask=Ask(Value(Stat("mean", series)), (), _ANY if even else _DECIMAL),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups", "form": "" if even else "decimal"},
            structure="statistic",
            slips=tuple(slips),
            features=frozenset({"mean_median_iqr_mad"}),
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all), build)


@problem_model(skill="median")
def median_down(view: TableView) -> AskSpace:
    """The median count, over all trials of a group or over groups in one trial: a number of the list, or halfway between two."""

    def build(spot: Spot, way: tuple[str, ...] | None, color: str | None) -> Draft | None:
        found = listed(view, spot, way, color)
        if found is None:
            return None
        series, whole = found
        numbers = tuple(map(view.number, series))
        ordered, middle = sorted(numbers), len(numbers) // 2
        low, high = ordered[-middle - 1], ordered[middle]
        # In order already, or with the same middle as it stands: nobody would see whether the list was put in order. Two equal
        # numbers in the middle would hide that there are two.
        # A median of 1 or less: so few pins are no list worth putting in order.
        if low + high <= 2 or numbers[middle] + numbers[-middle - 1] == low + high or (low == high and len(numbers) % 2 == 0):
            return None
        return Draft(
            ask=Ask(Value(Stat("median", series)), (), _ANY),
            roles={"series": series, "whole": whole, "over": "trials" if way is None else "groups"},
            structure="statistic",
            slips=(
                ("I06", numbers),
                *((("I07", numbers),) if len(numbers) % 2 == 0 else ()),
                ("I08", numbers),
                ("I13", ("median", *numbers)),
            ),
            features=frozenset({"mean_median_iqr_mad"}),
            shown_as=_DECIMAL,
        )

    return AskSpace((view.spots, list_choices(view.table.groups), view.colors_or_all), build)


@problem_model(skill="goal mean")
def goal_mean(view: TableView) -> AskSpace:
    """How many pins the next trial must bring for a mean that the group wants: never more than stand in one trial."""
    table = view.table
    trials = table.trials
    spots = [Spot((group,), None) for group in table.groups] + ([Spot(None, None)] if len(table.groups) > 1 else [])
    spots = [spot for spot in spots if view.totals.complete(Scope(spot.groups))] if 2 <= len(trials) < MOST_NUMBERS else []

    def build(spot: Spot, color: str | None, step: int) -> Draft | None:
        each = [Spot(spot.groups, (trial,)) for trial in trials]
        racks = {view.count("set_up", one, color) for one in each}
        if len(racks) != 1:
            return None
        parts = tuple(view.quantity("down", one, color) for one in each)
        numbers = tuple(map(view.number, parts))
        total, count = sum(numbers), len(numbers) + 1
        goal = total // len(numbers) + step
        if goal < 2:
            return None  # no "mean of 1 pins"
        needed = count * goal - total
        # The goal is above the mean so far, "one more" is no good guess, and the number is not yet in the text.
        if not goal + 1 < needed <= racks.pop() or needed in (*numbers, count):
            return None
        count_, goal_ = Stated(count, "trials"), Stated(goal, "goal mean")
        whole = view.quantity("down", spot, color)
        return Draft(
            ask=Ask(
                Value(Op("-", (Op("*", (count_, goal_)), Op("+", parts)))),
                (Equation(Op("+", (*parts, Unknown())), Op("*", (count_, goal_))),),
                _WHOLE,
            ),
            roles={"parts": parts, "whole": whole, "count": count_, "goal": goal_},
            structure="statistic",
            slips=(("I14", (goal,)), ("I15", (goal, *numbers)), ("I16", (count * goal,))),
            features=frozenset({"mean_median_iqr_mad"}),
        )

    return AskSpace((spots, view.colors_or_all, (1, 2, 3)), build)


@problem_model(skill="expected count")
def expected_count(view: TableView) -> AskSpace:
    """About how many of the next pins to expect: the results of several trials as an estimate of the probability."""
    spots = [spot for spot in view.spots if len(spot.trials or view.table.trials) > 1]

    def build(spot: Spot, color: str | None, number: int, times: int) -> Draft | None:
        whole: Quantity = view.quantity("set_up", spot, color)
        part = view.quantity("down", spot, color)
        n, k = view.number(whole), view.number(part)
        if number == 0:
            number = times * n
        elif times != _TIMES[0]:
            return None
        if n < 5 or k in (0, n) or 2 * k == n or not n < number <= min(10 * n, _MOST_NEXT) or number * k % n:
            return None
        expected = number * k // n
        if expected in (k, n):
            return None
        next_set = Stated(number, "set up next time")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (part, whole)), next_set))), (), _WHOLE),
            roles={"part": part, "whole": whole, "next": next_set},
            structure="part from rate",
            slips=(("K06", (k, n, number)), ("K01", (number,)), ("K12", (number, expected))),
            features=frozenset({"probability"}),
            sets=(n,),
        )

    def of_trials(record: Record, number: int) -> Draft | None:
        k, n = record.k, record.n
        if n < 5 or k in (0, n) or 2 * k == n or not may_be_next(number, n) or number * k % n:
            return None
        expected = number * k // n
        if expected in (k, n):
            return None
        more = Stated(number, "trials to come")
        return Draft(
            ask=Ask(Value(Op("*", (Op("/", (record.hits, record.tries)), more))), (), _WHOLE),
            roles=record.roles(False) | {"next": more},
            structure="part from rate",
            slips=(("K06", (k, n, number)), ("K01", (number,)), ("T07", (number - expected,))),
            features=frozenset({"probability"}),
            sets=(n,),
            unit="successes",
            wanted=SUCCESS,
        )

    # Whose next trials? Those of one group, or of the class.
    records = [one for one in aimed(view) if len(one.spot.groups or ("class",)) == 1]
    return joined(AskSpace((spots, view.colors_or_all, _NEXT, _TIMES), build), AskSpace((records, _NEXT_TRIALS), of_trials))
