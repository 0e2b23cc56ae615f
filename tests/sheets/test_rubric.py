"""What a reason is marked by: each example worked by hand on the small tables of the claims."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask
from mathgen.exact.demand import Demand
from mathgen.sheets.rubric import rubric
from tests.models import test_claims, test_fair_claims
from tests.models.asked import every_problem, problem
from tests.tables import TWO_GROUPS

REASONS = {
    "greater_fraction_claimed": "No, with a reason such as 21/30 < 25/30; or 70% is less than about 83%",
    "association_claimed": "No, with a reason such as 27/60 < 40/60; or 9/20 is less than half and 8/12 is more than half",
    "part_claimed": "No, with a reason such as 6/12 < 8/12; 2/3 of 12 is 8, and 6 is less than 8; or a drawing that shows it",
    "percent_claimed": "No, with a reason such as 75/100 > 70/100; or 3 of 4 is 75%",
    "times_claimed": "Yes, with a reason such as 2 × 3 = 6; or a drawing that shows it",
    "together_claimed": (
        "No, with a reason such as red and blue are 23 together, and 23 gold is the same, not more; or a drawing that shows it"
    ),
    "sum_claimed": "No, with a reason such as 3/12 + 2/12 = 5/12; 25/60 > 12/60; 1/5 is less than 1/4 alone; or a drawing that shows it",
    "change_claimed": "No, with a reason such as 2 out of 8 is 25%",
    "next_claimed": "No, with a reason such as 6/10 > 4/10; or the last one changes nothing, and all the results say 6/10",
    "fair_per_trial": "No, with a reason such as 32/6 < 45/6; 16/3 for each trial against 15/2 for each trial; or a drawing that shows it",
    "fair_by_fraction": "Yes, with a reason such as 27/30 > 16/30; or 90% is more than about 53%",
    "fair_by_mean": "No, with a reason such as 6 < 7.5; or 6 for each trial against 7.5 for each trial",
}


@pytest.mark.parametrize("model", REASONS)
def test_full_credit_takes_any_good_reason_and_part_credit_the_verdict_alone(model: str) -> None:
    if model in test_claims.ROWS:
        results, grade, claim, *_ = test_claims.ROWS[model]
    else:
        results, (grade, claim, *_) = test_fair_claims.RESULTS, test_fair_claims.ROWS[model]
    one = problem(model, results, grade, Ask(claim, (), Demand("rubric")))
    verdict = one.answer.display
    assert rubric(one) == f"Full credit: {REASONS[model]}. Part credit: {verdict} alone."


def test_every_claim_has_its_rubric() -> None:
    assert set(REASONS) == {*test_claims.ROWS, *test_fair_claims.ROWS}


def test_so_many_more_is_told_apart_from_so_many_times() -> None:
    for one in every_problem("times_claimed", TWO_GROUPS, 4):
        added = {slip.id: slip.value for slip in one.slips}.get("V06") == "Yes"
        assert ("more is not" in rubric(one)) == added
