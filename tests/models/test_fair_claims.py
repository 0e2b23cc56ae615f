"""Claims about groups with unlike numbers of pins or trials, on a small table; every verdict, step and reason worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Expr, Op, Quantity, Stat, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from tests.models.asked import every_draft, every_problem, problem, quantity, worked
from tests.tables import table

# 10 pins for each trial: the Owls knocked down 5, 8 and 3 of them, 16 in all, the Herons 7, 8 and 9, the Jays 6, 2 and 10, 18 in all.
DOWN = {"Owls": (5, 8, 3), "Herons": (7, 8, 9), "Jays": (6, 2, 10)}
RESULTS = table({"red": 10}, {(group, trial): (downs[trial - 1],) for group, downs in DOWN.items() for trial in (1, 2, 3)})
OWLS, HERONS = (quantity("down", "Owls", None, "red"), quantity("down", "Herons", (1, 2), "red"))
LAST = quantity("down", "Herons", (3,), "red")


def per_trial(down: Expr, trials: int) -> Op:
    return Op("/", (down, Stated(trials, "how many")))


def mean(group: str, *trials: int) -> Stat:
    return Stat("mean", tuple(quantity("down", group, (trial,), "red") for trial in trials))


ROWS = {
    # model: grade, claim, verdict, relation, steps, slips, what a reason names
    "fair_per_trial": (
        5, Truth(per_trial(OWLS, 3), ">", per_trial(HERONS, 2)),
        "No", "x = 16/3 - 15/2", ("16 / 3 = 16/3", "15 / 2 = 15/2", "16/3 = 32/6", "15/2 = 45/6"), {"V16": "Yes"},
        ("16/3", "15/2"), "32/6 < 45/6",
    ),
    "fair_by_fraction": (
        6, Truth(Op("/", (LAST, LAST._replace(measure="set_up"))), ">", Op("/", (OWLS, OWLS._replace(measure="set_up")))),
        "Yes", "x = 9/10 - 16/30", ("9 / 10 = 9/10", "16 / 30 = 16/30", "9/10 = 27/30"), {"V01": "No"}, ("9/10", "16/30"), "27/30 > 16/30",
    ),
    "fair_by_mean": (
        7, Truth(mean("Jays", 1, 2, 3), ">", mean("Herons", 1, 2)),
        "No", "x = (6 + 2 + 10)/3 - (7 + 8)/2", ("6 + 2 + 10 = 18", "18 / 3 = 6", "7 + 8 = 15", "15 / 2 = 7.5"), {"V16": "Yes"},
        ("6", "7.5"), "6 < 7.5",
    ),
}  # fmt: skip


@pytest.mark.parametrize("model", ROWS)
def test_a_row_worked_by_hand(model: str) -> None:
    grade, claim, *expected, reasons, compared = ROWS[model]
    one = problem(model, RESULTS, grade, Ask(claim, (), Demand("rubric")))
    assert worked(one) == tuple(expected)
    assert tuple(reason.shown for reason in one.answer.reasons) == reasons
    assert one.answer.because == compared


@pytest.mark.parametrize(("model", "grade"), [(name, grade) for name, (grade, *_) in ROWS.items()])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_counts_in_all_never_lead_to_the_right_verdict(model: str, grade: int, activity: str) -> None:
    found = every_problem(model, RESULTS, grade, activity, draws=2)
    assert {one.answer.exact for one in found} == {"true", "false"}
    assert [one.text for one in found if not proved(one) or len(one.slips) != 1] == []
    assert {"said", "writes", "claim"} == {one.frame for one in found}


def test_a_trial_that_is_left_out_does_not_turn_the_verdict() -> None:
    """The Owls have 8, 10 and 9, the Herons 8, 11 and 5: in Trials 1 and 2 the Herons did better, 9.5 against 9; in all, the Owls."""
    turned = {"Owls": (8, 10, 9), "Herons": (8, 11, 5)}
    results = table({"red": 12}, {(group, trial): (downs[trial - 1],) for group, downs in turned.items() for trial in (1, 2, 3)})
    for model in ROWS:
        firsts = [draft.roles["first"] for draft in every_draft(model, results)]
        # Told first is who knocked down more in all the trials told of, and did worse.
        assert {first.scope.groups for first in firsts if isinstance(first, Quantity)} == {("Herons",)}, model
