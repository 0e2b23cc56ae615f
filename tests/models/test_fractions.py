"""Fraction models on one small table; every value, step and slip worked by hand."""

from random import Random

import pytest

from mathgen.asks.expression import Choice, Stated
from mathgen.bank.builder import Builder, Candidate, Stopped
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.problems.draft import Draft
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS

SET_UP = {"red": 4, "blue": 3, "gold": 5}
DOWN = {
    ("Owls", 1): (3, 2, 4),
    ("Owls", 2): (1, 3, 2),
    ("Owls", 3): (3, 1, 3),
    ("Herons", 1): (4, 1, 3),
    ("Herons", 2): (2, 2, 5),
    ("Herons", 3): (2, 0, 1),
}
TABLE = TrialTable(
    tuple(
        Row(group, trial, color, SET_UP[color], down)
        for (group, trial), counts in DOWN.items()
        for color, down in zip(SET_UP, counts, strict=True)
    )
)
DESK = Desk(TABLE, scenario("ramp"))
MODELS = {model.name: model for model in problem_models()}
OWLS_1 = Scope(("Owls",), (1,), None)


def drafts(name: str) -> list[Draft]:
    space = MODELS[name].space(DESK.view)
    return [draft for draft in map(space.draft, range(space.size)) if draft is not None]


def built(name: str, draft: Draft, grade: int, source: str = "words") -> Problem:
    builder = Builder(DESK, load("ccss"), grade)
    found = builder.candidate(MODELS[name], draft, Random("1"), frozenset({source}))
    assert isinstance(found, Candidate), found
    problem = builder.finish(found)
    assert proved(problem), problem.proof
    return problem


def facts(problem: Problem) -> tuple[str, list[str], dict[str, str]]:
    return problem.answer.shown, [step.text for step in problem.steps], {slip.id: slip.value for slip in problem.slips}


def one(found: list[Draft]) -> Draft:
    assert len(found) == 1
    return found[0]


def test_fraction_down_is_the_part_over_its_own_set():
    """Owls, Trial 1: 3 of 4 red pins, of 12 pins in all."""
    draft = one([d for d in drafts("fraction_down") if d.roles["part"].scope == Scope(("Owls",), (1,), ("red",))])
    problem = built("fraction_down", draft, 3)
    assert facts(problem) == ("3/4", ["3 / 4 = 3/4"], {"A03": "1/4", "A05": "3", "A08": "3/12", "A02": "4/3"})
    assert problem.relation == "4*x = 3"
    assert problem.standards == ("3.NF.A.1",)


def test_fraction_down_over_two_trials_adds_what_the_table_shows():
    """Owls, Trials 1 and 2: 2 + 3 of 6 blue pins. Herons, Trials 2 and 3: 2 + 2 of 8 red pins, a half, which hides the likeliest slip."""
    asked = {d.roles["part"].scope for d in drafts("fraction_down")}
    assert Scope(("Herons",), (2, 3), ("red",)) not in asked
    draft = one([d for d in drafts("fraction_down") if d.roles["part"].scope == Scope(("Owls",), (1, 2), ("blue",))])
    assert facts(built("fraction_down", draft, 3, "table"))[:2] == ("5/6", ["2 + 3 = 5", "5 / 6 = 5/6"])


@pytest.mark.parametrize("color", ["gold", None])
def test_fives_and_twelfths_are_no_grade_3_fraction(color):
    """CCSS grade 3, footnote to 3.NF: denominators 2, 3, 4, 6, 8."""
    colors = None if color is None else (color,)
    draft = one([d for d in drafts("fraction_down") if d.roles["part"].scope == Scope(("Owls",), (1,), colors)])
    found = Builder(DESK, load("ccss"), 3).candidate(MODELS["fraction_down"], draft, Random("1"))
    assert isinstance(found, Stopped)
    assert "denominator" in found.reasons


def test_fraction_left_standing_is_the_rest_of_one_whole():
    """9 of 12 pins are down: 12/12 - 9/12."""
    draft = one([d for d in drafts("fraction_left_standing") if d.roles["given"].scope == OWLS_1 and d.roles["asked"] == "standing"])
    problem = built("fraction_left_standing", draft, 4)
    assert facts(problem) == ("3/12", ["12/12 - 9/12 = 3/12"], {"A03": "9/12", "A01": "3/9", "A05": "3", "C06": "8/12"})
    assert problem.relation == "9/12 + x = 1"
    assert "1/4" in problem.answer.accepted


def test_the_fraction_down_may_be_the_rest():
    draft = one([d for d in drafts("fraction_left_standing") if d.roles["given"].scope == OWLS_1 and d.roles["asked"] == "down"])
    assert facts(built("fraction_left_standing", draft, 4)) == (
        "9/12",
        ["12/12 - 3/12 = 9/12"],
        {"A03": "3/12", "A01": "9/3", "A05": "9", "C06": "2/12"},
    )
    assert draft.must_not_show == (OWLS_1,)


def comparisons(*labels: str) -> list[Draft]:
    return [d for d in drafts("compare_fractions") if isinstance(d.ask.goal, Choice) and d.ask.goal.labels == labels]


def test_one_bottom_number_compares_tops_in_grade_3():
    """Red pins, Trial 2: Owls 1 of 4, Herons 2 of 4."""
    draft = one(
        [d for d in comparisons("Owls", "Herons") if d.roles["first"].scope == Scope(("Owls",), (2,), ("red",)) and d.unlike is None]
    )
    assert [text for _, text in draft.rates] == ["1/4", "2/4"]
    assert facts(built("compare_fractions", draft, 3)) == ("Herons", [], {"B10": "Owls"})
    assert facts(built("compare_fractions", draft, 3, "table")) == ("Herons", ["1 / 4 = 1/4", "2 / 4 = 2/4"], {"B10": "Owls"})


def test_two_bottom_numbers_are_made_one_in_grade_4():
    """Owls, all colors: 9 of 12 in Trial 1, 6 of 12 in Trial 2."""
    draft = one([d for d in comparisons("1", "2") if d.roles["first"].scope == OWLS_1 and d.unlike])
    problem = built("compare_fractions", draft, 4)
    texts = [text for _, text in draft.rates]
    # 3/4 with 6/12 shows "more pins wins", 9/12 with 1/2 "fewer left wins" (1 < 3), 3/4 with 1/2 nothing; 9 + 6 is odd: the second.
    assert texts == ["9/12", "1/2"]
    assert facts(problem) == ("Trial 1", ["1/2 = 6/12"], {"B12": "Trial 2"})


def test_unequal_sets_are_compared_by_counts_in_grade_6_only():
    """Owls, all trials: 7 of 12 red, 6 of 9 blue. Owls, Trials 2 and 3: 4 of 8 red and 5 of 10 gold tie."""
    found = [d for d in comparisons("red", "blue") if d.roles["first"].scope == Scope(("Owls",), None, ("red",))]
    # 7 of 12 red, 6 of 9 blue: 7 is more, and 21/36 < 24/36.
    draft = one(found)
    problem = built("compare_fractions", draft, 6)
    assert facts(problem) == ("blue", ["7 / 12 = 7/12", "6 / 9 = 6/9", "7/12 = 21/36", "6/9 = 24/36"], {"B05": "red"})
    lower = Builder(DESK, load("ccss"), 4).candidate(MODELS["compare_fractions"], draft, Random("1"))
    assert isinstance(lower, Stopped)
    assert "unequal_sets" in lower.reasons
    assert not [d for d in comparisons("red", "gold") if d.roles["first"].scope == Scope(("Owls",), (2, 3), ("red",))]


def test_a_comparison_read_from_several_cells_is_proved():
    draft = one([d for d in comparisons("red", "blue") if d.roles["first"].scope == Scope(("Owls",), None, ("red",))])
    steps = facts(built("compare_fractions", draft, 6, "table"))[1]
    assert steps[:2] == ["3 + 1 + 3 = 7", "7 / 12 = 7/12"]


def test_part_from_fraction_takes_the_rate_to_the_next_set():
    """3/4 of 40: a fourth is 10. 25 is no set for fourths, 4 stands in the table."""
    found = [d for d in drafts("part_from_fraction") if d.roles["part"].scope == Scope(("Owls",), (1,), ("red",))]
    sizes = [d.roles["next"].number for d in found]
    assert 40 in sizes
    assert all(size % 4 == 0 and size > 4 for size in sizes)
    problem = built("part_from_fraction", one([d for d in found if d.roles["next"].number == 40]), 5)
    # 10 is one share, and the rest as well; 3 and 36 more.
    assert facts(problem) == ("30", ["3/4 * 40 = 30"], {"A12": "10", "G05": "39", "A13": "3"})
    assert problem.relation == "4*x = 3*40"
    assert problem.answer.display == "30 pins"


def test_fair_share_of_three_trials_is_a_mixed_number():
    """Owls, red: 3 + 1 + 3 = 7, in 3 trials. The remainder is 1."""
    draft = one([d for d in drafts("fair_share") if d.roles["total"].scope == Scope(("Owls",), None, ("red",))])
    problem = built("fair_share", draft, 5, "table")
    assert facts(problem) == (
        "2 1/3",
        ["3 + 1 + 3 = 7", "7 / 3 = 7/3", "7/3 = 2 1/3"],
        {"D17": "2", "D19": "3", "D20": "3/7", "I02": "7"},
    )
    assert problem.relation == "3*x = 7"


def test_what_shares_out_evenly_is_no_fair_share():
    """Owls, blue: 2 + 3 + 1 = 6, in 3 trials."""
    assert not [d for d in drafts("fair_share") if d.roles["total"].scope == Scope(("Owls",), None, ("blue",))]


def test_of_a_half_the_rest_is_not_asked_for():
    """2 of 4 knocked down: the rest is 1/2 as well, the number that the text prints."""
    halves = {
        d.roles["given"].scope
        for d in drafts("fraction_left_standing")
        if DESK.view.number(d.roles["given"]) * 2 == DESK.view.number(d.roles["whole"])
    }
    assert not halves
    assert len(drafts("fraction_left_standing")) > 0


def test_the_next_set_is_no_more_than_ten_times_the_last():
    """A group with 4 red pins does not set up 80."""
    sizes = [(d.roles["next"].number, DESK.view.number(d.roles["whole"])) for d in drafts("part_from_fraction")]
    assert sizes
    assert all(size <= 10 * whole for size, whole in sizes)


@pytest.mark.parametrize("name", ["fraction_down", "fraction_left_standing", "part_from_fraction"])
def test_nothing_and_everything_are_not_asked_for(name):
    """Herons: 4 of 4 red pins in Trial 1, 0 of 3 blue pins in Trial 3."""
    asked = {(d.roles.get("part") or d.roles["given"]).scope for d in drafts(name)}
    assert not asked & {Scope(("Herons",), (1,), ("red",)), Scope(("Herons",), (3,), ("blue",))}


GIVEN = {
    # model: (whose part, number that only the words give, first rate, grade, answer, relation, steps, slips)
    "whole_from_part": (("Owls", "red"), 30, "3/4", 6, "40", "3/4*x = 30", ("30 / 3/4 = 40",), {"A20": "10", "G13": "31"}),
    "whole_from_part, one part of several": (
        ("Herons", "blue"), 8, "1/3", 5, "24", "1/3*x = 8", ("8 / 1/3 = 24",), {"G13": "10", "A21": "16"},
    ),
    "equivalent_fraction": (("Owls", None), 4, None, 4, "3", "12/4*x = 9", ("12 / 4 = 3", "9 / 3 = 3"), {"B01": "1", "B02": "9"}),
    "equivalent_fraction, more parts": (
        ("Owls", "red"), 12, None, 4, "9", "x = 3*12/4", ("12 / 4 = 3", "3 * 3 = 9"), {"B01": "11", "B02": "3"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", GIVEN)
def test_each_model_with_a_given_number_by_hand(row: str) -> None:
    (group, color), number, rate, grade, *expected = GIVEN[row]
    name, scope = row.partition(",")[0], Scope((group,), (1,), (color,) if color else None)
    draft = one(
        [
            draft
            for draft in every_draft(name, TWO_GROUPS)
            if draft.roles["part"].scope == scope
            and number in [given.number for given in draft.roles.values() if isinstance(given, Stated)]
            and rate in (None, *(text for _, text in draft.rates[:1]))
        ]
    )
    assert worked(said(name, TWO_GROUPS, grade, draft)) == tuple(expected)
