"""Target-color accuracy: each model, and each that takes successes as a part of all trials, by hand on a small table."""

from __future__ import annotations

from dataclasses import replace

import pytest

from mathgen.asks.expression import Ask, Choice, Equation, Expr, Op, Quantity, Ratio, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import TrialTable
from tests.aimed import AIMED
from tests.models.asked import WORDS, every_draft, every_problem, problem, quantity, worked

TABLE = frozenset({"table"})
ANY, WHOLE, PERCENT = Demand("any"), Demand("whole"), Demand("percent")


def each(group: str, number: int) -> tuple[Quantity, ...]:
    return tuple(quantity("successes", group, (trial,)) for trial in range(1, number + 1))


def rest(group: str | None) -> Expr:
    return Op("-", (quantity("trials", group), quantity("successes", group)))


def share(group: str | None, negated: bool = False) -> Value:
    return Value(Op("/", (rest(group) if negated else quantity("successes", group), quantity("trials", group))))


def goal(group: str, percent: int) -> Ask:
    """How many more successes in a row make the percent of all trials."""
    hits, tries, wanted = quantity("successes", group), quantity("trials", group), Stated(percent, "goal percent", 100)
    in_all = Op("/", (Op("-", (tries, hits)), Op("-", (Stated(1, "whole"), wanted))))
    reached = Equation(Op("+", (hits, Unknown())), Op("*", (wanted, Op("+", (tries, Unknown())))))
    return Ask(Value(Op("-", (in_all, tries))), (reached,), WHOLE)


GOAL = goal("Owls", 90)
ROWS = {
    # model: (grade, where the numbers stand, ask, answer, relation, steps, slips), each worked by hand
    "successes_counted": (
        2,
        TABLE,
        Ask(Value(Op("+", each("Kites", 4))), (), WHOLE),
        "3",
        "1 + 1 + 0 + 1 = x",
        ("1 + 1 + 0 + 1 = 3",),
        # In all 4 trials pins of the target color fell, 2 + 1 + 1 + 2 of them.
        {"T02": "4", "T03": "6", "T07": "1"},
    ),
    "other_trials_counted": (
        3,
        TABLE,
        Ask(Value(Op("-", (quantity("trials", "Kites"), Op("+", each("Kites", 4))))), (), WHOLE),
        "1",
        "1 + 1 + 0 + 1 + x = 4",
        ("1 + 1 + 0 + 1 = 3", "4 - 3 = 1"),
        {"T02": "0", "T07": "3"},
    ),
    "fraction_down, successes": (
        3,
        WORDS,
        Ask(share("Kites"), (), ANY),
        "3/4",
        "4*x = 3",
        ("3 / 4 = 3/4",),
        {"T05": "1/4", "T06": "3"},
    ),
    "percent_of_set, not successes": (
        6,
        TABLE,
        Ask(share("Owls", True), (), PERCENT),
        "40%",
        "5*x = 5 - 3",
        ("1 + 0 + 1 + 1 + 0 = 3", "5 - 3 = 2", "2 / 5 = 2/5", "2/5 = 40/100", "40/100 = 40%"),
        # Pins of the target color fell in 4 of the 5 trials.
        {"T01": "20%", "T05": "60%", "T12": "2%"},
    ),
    "part_as_decimal, successes": (
        4,
        TABLE,
        Ask(share("Wrens"), (), Demand("decimal")),
        "0.4",
        "5*x = 2",
        ("1 + 0 + 0 + 1 + 0 = 2", "2 / 5 = 2/5", "2/5 = 4/10", "4/10 = 0.4"),
        # Pins of the target color fell in Trials 1, 2, 4 and 5.
        {"T01": "0.8", "T05": "0.6", "D02": "0.25", "D01": "2.5", "T06": "2"},
    ),
    "fraction_left_standing, not successes": (
        4,
        WORDS,
        Ask(Value(Op("-", (Stated(1, "whole"), share("Owls").expr))), (), ANY),
        "2/5",
        "3/5 + x = 1",
        ("5/5 - 3/5 = 2/5",),
        {"T10": "1/5", "T05": "3/5", "T04": "2/3", "T06": "2"},
    ),
    "compare_fractions, successes": (
        6,
        WORDS,
        Ask(Choice(("Owls", "Kites"), (share("Owls").expr, share("Kites").expr)), (), Demand("name")),
        "Kites",
        "x = Max(3/5, 3/4)",
        ("3 / 5 = 3/5", "3 / 4 = 3/4", "3/5 = 12/20", "3/4 = 15/20"),
        {"B10": "Owls"},
    ),
    "ratio_part_to_part, successes": (
        6,
        WORDS,
        Ask(Ratio(rest("Owls"), quantity("successes", "Owls")), (), Demand("ratio:any")),
        "2:3",
        "3*x = 5 - 3",
        ("5 - 3 = 2", "2 / 3 = 2/3"),
        {"T13": "2:5", "G03": "3:2"},
    ),
    "expected_count, successes": (
        7,
        WORDS,
        Ask(Value(Op("*", (share("Wrens").expr, Stated(30, "trials to come")))), (), WHOLE),
        "12",
        "5*x = 2*30",
        ("2 / 5 = 2/5", "2/5 * 30 = 12"),
        {"K06": "27", "K01": "15", "T07": "18"},
    ),
    # 2 of the 5 trials are not successes. They are 10% of 20 trials.
    "successes_for_goal": (
        7,
        WORDS,
        GOAL,
        "15",
        "3 + x = (90/100)*(5 + x)",
        ("5 - 3 = 2", "100/100 - 90/100 = 10/100", "2 / 10/100 = 20", "20 - 5 = 15"),
        {"T09": "20", "T07": "2"},
    ),
    "estimated_probability, successes": (
        7,
        WORDS,
        Ask(share(None), (), ANY),
        "8/14",
        "14*x = 8",
        ("8 / 14 = 8/14",),
        {"T05": "6/14", "T04": "8/6", "K13": "1/2"},
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    grade, sources, ask, *expected = ROWS[row]
    one = problem(row.partition(",")[0], AIMED, grade, ask, sources)
    assert worked(one) == tuple(expected)


def test_a_table_without_targets_has_no_successes() -> None:
    plain = TrialTable(tuple(replace(row, target=None) for row in AIMED.rows))
    assert not list(every_draft("successes_counted", plain))
    assert not [draft for draft in every_draft("fraction_down", plain) if "success" in draft.wanted]


def test_a_group_with_a_trial_that_has_no_target_is_left_out() -> None:
    spoiled = TrialTable(tuple(replace(row, target=None) if (row.group, row.trial) == ("Owls", 2) else row for row in AIMED.rows))
    parts = [draft.roles["hits"] for draft in every_draft("fraction_down", spoiled) if "success" in draft.wanted]
    assert {part.scope.groups for part in parts} == {("Wrens",), ("Kites",)}  # type: ignore[union-attr]


def test_a_trial_is_one_place_to_read_whatever_the_colors() -> None:
    """4 places in grade 3: the Kites with their 4 trials, no group with 5."""
    found = every_problem("other_trials_counted", AIMED, 3)
    assert {one.givens[-1].scope.groups for one in found if one.givens[-1].scope} == {("Kites",)}
    assert {len(one.cells) for one in found} == {12}


def test_a_goal_is_reached_exactly_and_not_before() -> None:
    for draft in every_draft("successes_for_goal", AIMED):
        record, wanted = draft.roles["hits"], draft.roles["goal"]
        trials = [row for row in AIMED.rows if record.scope.groups in (None, (row.group,))]  # type: ignore[union-attr]
        n = len({(row.group, row.trial) for row in trials})
        k = {("Owls",): 3, ("Wrens",): 2, ("Kites",): 3, None: 8}[record.scope.groups]  # type: ignore[union-attr,index]
        percent = wanted.number  # type: ignore[union-attr]
        reached = [new for new in range(100) if 100 * (k + new) >= percent * (n + new)]
        assert 100 * (k + reached[0]) == percent * (n + reached[0])
