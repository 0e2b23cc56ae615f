"""Claims to judge with a reason, on small tables; every verdict, step, reason and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Op, Stated, Truth
from mathgen.bank.line import as_line
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.trials.table import TrialTable
from tests.models.asked import every_problem, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

RUBRIC = Demand("rubric")
MANY = table({"red": 20, "blue": 20, "gold": 40}, {("Owls", 1): (12, 11, 23), ("Herons", 1): (9, 14, 25)})
GOLD = quantity("down", "Owls", (1,), "gold")


UNEVEN = table({"red": 20, "blue": 12}, {("Owls", 1): (9, 8)})
TWO_TRIALS = table({"red": 10}, {("Owls", 1): (8,), ("Owls", 2): (6,)})
FIRST, LAST = (quantity("down", "Owls", (trial,), "red") for trial in (1, 2))
FALL = Op("/", (Op("-", (FIRST, LAST)), FIRST))


def rate(group: str | None, trial: int | None, *colors: str) -> Op:
    trials = None if trial is None else (trial,)
    return Op("/", (quantity("down", group, trials, *colors), quantity("set_up", group, trials, *colors)))


def part(color: str) -> Op:
    """Of all the pins of the Owls in Trial 1."""
    return Op("/", (quantity("down", "Owls", (1,), color), quantity("set_up", "Owls", (1,))))


ROWS = {
    # model: table, grade, claim, verdict, relation, steps, slips, what a reason names
    "greater_fraction_claimed": (
        TWO_GROUPS, 6, Truth(rate(None, 2, "gold"), ">", rate(None, 2, "blue")),
        "No", "x = 7/10 - 5/6", ("7 / 10 = 7/10", "5 / 6 = 5/6", "7/10 = 21/30", "5/6 = 25/30"),
        {"V01": "Yes"}, ("7/10", "5/6"), "21/30 < 25/30",
    ),
    "part_claimed": (
        TWO_GROUPS, 4, Truth(rate("Owls", 2), ">", Stated(2, "claimed part", 3)),
        "No", "x = 6/12 - (2/3)", ("6 / 12 = 6/12", "2/3 = 8/12"), {"V03": "Yes"}, ("6/12", "2/3"), "6/12 < 8/12",
    ),
    "percent_claimed": (
        TWO_GROUPS, 6, Truth(rate("Owls", 1, "red"), "<", Stated(70, "claimed percent", 100)),
        "No", "x = 3/4 - (70/100)", ("3 / 4 = 3/4", "70% = 70/100", "3/4 = 75/100"), {"V10": "Yes"}, ("3/4", "70%"), "75/100 > 70/100",
    ),
    "times_claimed": (
        TWO_GROUPS, 4,
        Truth(quantity("down", "Herons", None, "red"), "=", Op("*", (Stated(2, "times"), quantity("down", "Herons", None, "blue")))),
        "Yes", "x = 6 - 2*3", ("2 * 3 = 6",), {"V06": "No"}, ("6", "6"), "6 = 6",
    ),
    "sum_claimed": (
        TWO_GROUPS, 5,
        Truth(Op("+", (part("red"), part("blue"))), "=", Stated(1, "claimed part", 5)),  # 2/10
        "No", "x = 3/12 + 2/12 - (1/5)", ("1/4 = 3/12", "1/6 = 2/12", "3/12 + 2/12 = 5/12", "5/12 = 25/60", "1/5 = 12/60"),
        {"V12": "Yes"}, ("5/12", "1/5"), "25/60 > 12/60",
    ),
    "change_claimed": (
        TWO_TRIALS, 7, Truth(FALL, "=", Stated(2, "claimed percent", 100)),
        "No", "x = (8 - 6)/8 - (2/100)", ("8 - 6 = 2", "2 / 8 = 2/8", "2/8 = 25%"),
        {"V13": "Yes"}, ("2/8", "2%"), "25% > 2%",
    ),
    "next_claimed": (
        TWO_GROUPS, 7, Truth(rate("Owls", None, "gold"), "=", Stated(2, "claimed part", 5)),
        "No", "x = 6/10 - (2/5)", ("6 / 10 = 6/10", "2/5 = 4/10"), {"K07": "Yes"}, ("6/10", "2/5"), "6/10 > 4/10",
    ),
    "association_claimed": (
        UNEVEN, 8, Truth(rate("Owls", 1, "red"), ">", rate("Owls", 1, "blue")),
        "No", "x = 9/20 - 8/12", ("9 / 20 = 9/20", "8 / 12 = 8/12", "9/20 = 27/60", "8/12 = 40/60"), {"V01": "Yes"},
        ("9/20", "8/12"), "27/60 < 40/60",
    ),
    "together_claimed": (
        MANY, 3,
        Truth(GOLD, ">", Op("+", (quantity("down", "Owls", (1,), "red"), quantity("down", "Owls", (1,), "blue")))),
        "No", "x = 23 - (12 + 11)", ("12 + 11 = 23",), {"V08": "Yes"}, ("23", "23"), "23 = 23",
    ),
}  # fmt: skip


@pytest.mark.parametrize("model", ROWS)
def test_a_row_worked_by_hand(model: str) -> None:
    results, grade, claim, *expected, reasons, compared = ROWS[model]
    one = problem(model, results, grade, Ask(claim, (), RUBRIC))
    assert worked(one) == tuple(expected)
    assert tuple(reason.shown for reason in one.answer.reasons) == reasons
    assert one.answer.because == compared


def test_a_bank_line_holds_the_verdict_and_what_a_reason_names() -> None:
    results, grade, claim, *_ = ROWS["part_claimed"]
    answer = as_line(problem("part_claimed", results, grade, Ask(claim, (), RUBRIC)))["answer"]
    assert (answer["kind"], answer["value"], answer["display"]) == ("rubric", "false", "No")
    assert answer["facts"] == [
        {"value": "6/12", "quantity": "pins knocked down out of pins set up"},
        {"value": "2/3", "quantity": "claimed part"},
    ]


@pytest.mark.parametrize(("results", "activity"), [(TWO_GROUPS, "ramp"), (TWO_GROUPS, "seeds"), (MANY, "ramp")])
def test_yes_and_no_come_up_both_and_each_has_a_likely_mistake(results: TrialTable, activity: str) -> None:
    found = [one for model, (_, grade, *_) in ROWS.items() for one in every_problem(model, results, grade, activity, draws=3)]
    assert {one.answer.exact for one in found} == {"true", "false"}
    assert [one.text for one in found if not proved(one) or not one.text.endswith("? Tell why.")] == []
    assert len([one for one in found if one.slips]) * 10 >= 9 * len(found)


def test_counts_alone_never_lead_to_the_right_verdict_on_fractions() -> None:
    for one in every_problem("greater_fraction_claimed", TWO_GROUPS, 6):
        assert "V01" in {slip.id for slip in one.slips}
