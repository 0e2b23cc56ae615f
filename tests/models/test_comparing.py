"""The problem models that compare, on a table of two groups and two trials."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.problems.record import Problem
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import Row, TrialTable
from mathgen.wording.frames import frames
from mathgen.wording.said_many import SaidMany
from mathgen.wording.said_number import Printed, SaidNumber
from mathgen.wording.speaker import Speaker
from tests.models.asked import every_draft, every_problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
MODELS = ("how_many_more", "compare_smaller_unknown", "compare_bigger_unknown", "times_as_many", "times_smaller_unknown", "how_many_times")
GRADES = {
    "how_many_more": (1, 2, 3),
    "compare_smaller_unknown": (1, 2, 3),
    "compare_bigger_unknown": (1, 2, 3),
    "times_as_many": (4,),
    "times_smaller_unknown": (4,),
    "how_many_times": (4,),
}
# Counts of three digits' reach: racks of 30, so that grade 3 finds numbers above 20.
BIG = table({"red": 30, "blue": 30, "gold": 30}, {("Owls", 1): (24, 12, 7), ("Owls", 2): (18, 9, 11), ("Herons", 1): (13, 28, 26)})


BLUE, GOLD = quantity("down", None, None, "blue"), quantity("down", None, None, "gold")  # of the class: 8 and 14
OWLS_RED, HERONS_RED = quantity("down", "Owls", None, "red"), quantity("down", "Herons", None, "red")  # 3 + 1 and 4 + 2
HERONS_BLUE = quantity("down", "Herons", None, "blue")  # 1 + 2
ALL = quantity("down")  # 10 + 8 + 14

ROWS = {
    # model: grade, ask, answer, relation, steps, slips; each worked by hand, the first three numbers those of the model problems
    "how_many_more": (
        2,
        "more",
        Ask(Value(Op("-", (GOLD, BLUE))), (), WHOLE),
        "6",
        "8 + x = 14",
        ("14 - 8 = 6",),
        {"H01": "22", "H02": "14", "H13": "7", "H05": "2"},
    ),
    "compare_smaller_unknown": (
        2,
        "more",
        Ask(Value(OWLS_RED), (Equation(HERONS_RED, Op("+", (OWLS_RED, Stated(2, "more than")))),), WHOLE),
        "4",
        "6 = x + 2",
        ("6 - 2 = 4",),
        {"H03": "8", "H13": "5"},
    ),
    "compare_smaller_unknown, fewer": (
        2,
        "fewer",
        Ask(Value(OWLS_RED), (Equation(HERONS_RED, Op("+", (OWLS_RED, Stated(2, "more than")))),), WHOLE),
        "4",
        "6 = x + 2",
        ("6 - 2 = 4",),
        {"H03": "8", "H13": "5"},
    ),
    "compare_bigger_unknown": (
        2,
        "more",
        Ask(Value(HERONS_RED), (Equation(HERONS_RED, Op("+", (OWLS_RED, Stated(2, "more than")))),), WHOLE),
        "6",
        "x = 4 + 2",
        ("4 + 2 = 6",),
        {"H03": "2", "H13": "5"},
    ),
    "compare_bigger_unknown, fewer": (
        2,
        "fewer",
        Ask(Value(GOLD), (Equation(GOLD, Op("+", (BLUE, Stated(6, "more than")))),), WHOLE),
        "14",
        "x = 8 + 6",
        ("8 + 6 = 14",),
        {"H03": "2", "H13": "13"},
    ),
    "times_as_many": (
        4,
        None,
        Ask(Value(ALL), (Equation(ALL, Op("*", (Stated(4, "times"), BLUE))),), WHOLE),
        "32",
        "x = 4*8",
        ("4 * 8 = 32",),
        {"G08": "12", "G10": "40", "G09": "2"},
    ),
    "times_smaller_unknown": (
        4,
        None,
        Ask(Value(HERONS_BLUE), (Equation(HERONS_RED, Op("*", (Stated(2, "times"), HERONS_BLUE))),), WHOLE),
        "3",
        "6 = 2*x",
        ("6 / 2 = 3",),
        {"G14": "12", "G15": "4"},
    ),
    "how_many_times": (
        4,
        None,
        Ask(Value(Op("/", (HERONS_RED, HERONS_BLUE))), (), WHOLE),
        "2",
        "3*x = 6",
        ("6 / 3 = 2",),
        {"G11": "3", "G12": "1"},
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str):
    grade, word, ask, *expected = ROWS[name]
    model = name.partition(",")[0]
    (draft,) = [draft for draft in every_draft(model, TWO_GROUPS) if draft.ask == ask and draft.roles.get("word") == word]
    assert worked(said(model, TWO_GROUPS, grade, draft)) == tuple(expected)


@pytest.mark.parametrize("model", MODELS)
@pytest.mark.parametrize("results", [TWO_GROUPS, BIG], ids=["two groups", "big racks"])
@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_problem_is_proved_and_shows_a_likely_mistake(model: str, results: TrialTable, activity: str):
    problems = [problem for grade in GRADES[model] for problem in every_problem(model, results, grade, activity)]
    assert problems
    assert [problem.proof for problem in problems if not proved(problem)] == []
    assert [problem.text for problem in problems if not problem.slips] == []


@pytest.mark.parametrize("model", MODELS)
def test_at_least_three_frames_are_used_over_the_grades(model: str):
    used = {
        problem.frame
        for grade in GRADES[model]
        for results in (TWO_GROUPS, BIG)
        for problem in every_problem(model, results, grade, draws=12)
    }
    assert len(used) >= 3
    assert used <= {frame.name for frame in frames("comparing", model)}


@pytest.mark.parametrize(("model", "grade"), [(model, grade) for model in MODELS for grade in GRADES[model]])
def test_two_frames_fit_each_grade(model: str, grade: int):
    assert len({problem.frame for results in (TWO_GROUPS, BIG) for problem in every_problem(model, results, grade, draws=4)}) >= 2


def _kind(problem: Problem) -> str:
    scopes = [given.scope for given in problem.givens if given.scope is not None]
    return next((field for field in ("groups", "trials", "colors") if len({getattr(scope, field) for scope in scopes}) > 1), "")


def test_groups_trials_and_colors_take_turns():
    assert {_kind(problem) for problem in every_problem("how_many_more", TWO_GROUPS, 2)} >= {"groups", "trials", "colors"}


def test_more_is_asked_of_the_greater_count_and_fewer_of_the_lesser():
    desk = Desk(TWO_GROUPS, scenario())
    for draft in every_draft("how_many_more", TWO_GROUPS):
        first, second = map(desk.view.number, draft.roles["asked"])
        assert (first > second) == (draft.roles["word"] == "more")


def test_ties_zeros_and_doubles_are_not_asked():
    """A tie has no "more"; with 0 the answer is one of the numbers; with a double the answer stands in the words."""
    flat = table({"red": 8, "blue": 8, "gold": 8}, {("Owls", 1): (4, 4, 0), ("Herons", 1): (2, 0, 6)})
    values = []
    for draft in every_draft("how_many_more", flat):
        goal = draft.ask.goal.expr
        assert isinstance(goal, Op)
        values.append(tuple(map(Desk(flat, scenario()).view.number, goal.args)))
    # Owls 8, Herons 8: a tie. Red 4 and 2: a double; class: red 6, blue 4, gold 6. Herons' gold 6 and red 2.
    assert set(values) == {(6, 4), (6, 2)}


@pytest.mark.parametrize("model", ["compare_smaller_unknown", "compare_bigger_unknown", "times_as_many", "times_smaller_unknown"])
def test_the_asked_count_is_never_one_cell_of_the_table(model: str):
    view = Desk(TWO_GROUPS, scenario()).view
    asked = [draft.ask.goal.expr for draft in every_draft(model, TWO_GROUPS)]
    assert asked
    assert not any(isinstance(one, Quantity) and view.is_cell(one) for one in asked)


@pytest.mark.parametrize("model", ["compare_smaller_unknown", "compare_bigger_unknown", "times_as_many", "times_smaller_unknown"])
def test_no_bar_of_the_graph_is_the_answer(model: str):
    for grade in GRADES[model]:
        for problem in every_problem(model, TWO_GROUPS, grade, draws=6):
            bars = [given.scope for given in problem.givens if given.where == "graph"]
            for bar in bars:
                assert not any(hidden.colors is not None and hidden[:2] == bar[:2] for hidden in problem.must_not_show)


def test_the_word_that_points_to_the_other_operation_clashes():
    assert {(draft.roles["word"], draft.clash, draft.fewer) for draft in every_draft("compare_bigger_unknown", TWO_GROUPS)} == {
        ("more", False, False),
        ("fewer", True, True),
    }
    assert {(draft.roles["word"], draft.clash, draft.fewer) for draft in every_draft("compare_smaller_unknown", TWO_GROUPS)} == {
        ("more", True, False),
        ("fewer", False, True),
    }


def test_grade_three_compares_from_a_bar_graph_only():
    """3.MD.B.3 asks "how many more" of a scaled bar graph; without one it is grade 2 work (2.OA.A.1)."""
    problems = every_problem("how_many_more", TWO_GROUPS, 3, draws=3)
    assert problems
    assert all(given.where == "graph" for problem in problems for given in problem.givens)
    assert all(problem.standards == ("3.MD.B.3",) for problem in problems)


def test_grade_two_reads_no_graph_with_a_scale():
    """2.MD.D.10: a bar graph with a single-unit scale. Bars over 20 need steps."""
    assert not any(given.where == "graph" for problem in every_problem("how_many_more", BIG, 2, draws=6) for given in problem.givens)
    assert any(problem.givens[0].where == "graph" for problem in every_problem("how_many_more", BIG, 3))


def test_a_missing_result_is_never_part_of_a_comparison():
    rows = tuple(row for row in TWO_GROUPS.rows if (row.group, row.trial, row.color) != ("Herons", 2, "gold"))
    holed = TrialTable(rows, absent=(("Herons", 2, "gold"),))
    view = Desk(holed, scenario()).view
    for model in MODELS:
        for draft in every_draft(model, holed):
            assert all(view.totals.complete(leaf.scope) for leaf in draft.leaves() if isinstance(leaf, Quantity))


@pytest.mark.parametrize("model", ["how_many_more", "compare_smaller_unknown", "compare_bigger_unknown"])
def test_neighbors_are_not_compared(model: str):
    """9 and 10, or 3 and 1: seen without counting, and "1 more" leaves nothing to work out."""
    view = Desk(TWO_GROUPS, scenario()).view
    for draft in every_draft(model, TWO_GROUPS):
        less, more = sorted(map(view.number, draft.roles["pair"]))
        assert more - less > 1
        assert more > 3


def test_one_pin_more_would_be_said_in_the_singular():
    two = (OWLS_RED, HERONS_RED)
    printed = Printed()
    pair = SaidMany(Speaker(TWO_GROUPS, scenario()), printed, two, (4, 5))
    assert pair.compared(SaidNumber(printed, Stated(1, "more than")), "fewer") == "The Owls knocked down 1 fewer red pin than the Herons"
    assert pair.compared(SaidNumber(printed, Stated(2, "more than")), "fewer") == "The Owls knocked down 2 fewer red pins than the Herons"


def test_one_off_is_a_slip_of_small_differences_only():
    """Counting on by ones: nobody counts 28 steps."""
    view = Desk(BIG, scenario()).view
    for draft in every_draft("how_many_more", BIG):
        less, more = sorted(map(view.number, draft.roles["pair"]))
        assert ("H13" in dict(draft.slips)) == (more - less <= 10)


def test_one_group_and_one_trial_leave_only_colors():
    alone = TrialTable((Row("Owls", 1, "red", 9, 3), Row("Owls", 1, "blue", 9, 8)))
    assert len(list(every_draft("how_many_more", alone))) == 2  # more and fewer
