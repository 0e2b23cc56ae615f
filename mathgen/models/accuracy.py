"""Target-color accuracy: trials sorted into successes and others, and how many successes a goal takes."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.models.aimed import Record, aimed
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import Spot, TableView
from mathgen.problems.draft import Draft

_WHOLE = Demand("whole")
_ONE = Stated(1, "whole")


def _each(view: TableView, record: Record) -> tuple[Quantity, ...]:
    """Whether each trial was a success, as 1 or 0."""
    taken = dict.fromkeys(row.trial for row in view.table.rows if row.group in (record.spot.groups or ()))
    return tuple(view.quantity("successes", Spot(record.spot.groups, (trial,))) for trial in taken)


@problem_model(skill="successes counted")
def successes_counted(view: TableView) -> AskSpace:
    """How many trials of a group were successes: each trial of the table is judged."""

    def build(record: Record) -> Draft | None:
        if not 0 < record.k < record.n:
            return None
        return Draft(
            ask=Ask(Value(Op("+", _each(view, record))), (), _WHOLE, record.hits),
            roles=record.roles(False),
            structure="whole unknown",
            slips=(("T02", (record.near,)), ("T11", (record.k + record.none,)), ("T03", (record.pins,)), ("T07", (record.n - record.k,))),
            unit="successes",
            must_not_show=(),
        )

    return AskSpace(([one for one in aimed(view, pairs=False) if one.n > 2],), build)


@problem_model(skill="trials that are not successes")
def other_trials_counted(view: TableView) -> AskSpace:
    """How many trials of a group were not successes: the successes are counted and taken from all trials."""

    def build(record: Record) -> Draft | None:
        if not 0 < record.k < record.n:
            return None
        return Draft(
            ask=Ask(Value(Op("-", (record.tries, Op("+", _each(view, record))))), (), _WHOLE),
            roles=record.roles(True),
            structure="part unknown",
            slips=(("T02", (record.n - record.near,)), ("T11", (record.n - record.k - record.none,)), ("T07", (record.k,))),
            unit="trials",
        )

    return AskSpace(([one for one in aimed(view, pairs=False) if one.n > 2],), build)


@problem_model(skill="successes for a goal")
def successes_for_goal(view: TableView) -> AskSpace:
    """How many more trials, each of them a success, bring the successes to a percent of all trials."""

    def build(record: Record, goal: int) -> Draft | None:
        k, n = record.k, record.n
        missed = 100 * (n - k)  # these stay, and are 100% - goal in the end
        if not 0 < k < n or 100 * k >= goal * n or missed % (100 - goal):
            return None
        more = missed // (100 - goal) - n
        if more < 2 or more > 3 * n or more in (k, n, n - k):
            return None
        wanted = Stated(goal, "goal percent", 100)
        share = Op("/", (Op("-", (record.tries, record.hits)), Op("-", (_ONE, wanted))))
        reached = Equation(Op("+", (record.hits, Unknown())), Op("*", (wanted, Op("+", (record.tries, Unknown())))))
        return Draft(
            ask=Ask(Value(Op("-", (share, record.tries))), (reached,), _WHOLE),
            roles=record.roles(False) | {"goal": wanted},
            structure="whole from part",
            slips=(("T08", (k, n, goal)), ("T09", (n + more,)), ("T07", (n - k,))),
            features=frozenset({"percent"}),
            sets=(n,),
            unit="trials",
        )

    records = [one for one in aimed(view) if len(one.spot.groups or ("class",)) == 1]
    return AskSpace((records, (50, 60, 70, 75, 80, 90)), build)
