"""The problem models that count, on a table of two groups and two trials."""

from __future__ import annotations

import re

import pytest

from mathgen.asks.expression import Ask, Equation, Op, Quantity, Stated, Truth, Value
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import Row, TrialTable
from mathgen.wording.frames import frames
from tests.models.asked import every_draft, every_problem, problem, quantity, worked
from tests.tables import TWO_GROUPS, table

WHOLE = Demand("whole")
TRUTH = Demand("truth")
MODELS = ("put_together_total", "take_apart", "two_step_left_standing", "left_standing_over_trials")
GRADES = {"put_together_total": (1, 2, 3), "take_apart": (1, 2), "two_step_left_standing": (2, 3, 4), "left_standing_over_trials": (3, 4)}
BIG = table({"red": 30, "blue": 30, "gold": 30}, {("Owls", 1): (24, 12, 7), ("Owls", 2): (18, 9, 11), ("Herons", 1): (13, 28, 26)})


def colors(group: str, trial: int) -> tuple[Quantity, ...]:
    return tuple(quantity("down", group, (trial,), color) for color in ("red", "blue", "gold"))


OWLS = tuple(quantity("down", "Owls", None, color) for color in ("red", "blue", "gold"))
BOTH = quantity("down", "Owls"), quantity("down", "Herons")

ROWS = {
    # model: grade, ask, answer, relation, steps, slips; each worked by hand, the first three numbers those of the model problems
    "put_together_total": (
        2,
        Ask(Value(Op("+", colors("Owls", 1))), (), WHOLE),
        "9",
        "3 + 2 + 4 = x",
        ("3 + 2 + 4 = 9",),
        {"H14": "5", "H13": "8"},
    ),
    "put_together_total, groups": (
        2,
        Ask(Value(Op("+", (quantity("down", "Owls"), quantity("down", "Herons")))), (), WHOLE),
        "32",
        "15 + 17 = x",
        ("15 + 17 = 32",),
        {"H14": "15", "H11": "22", "H15": "2"},  # one number left out, the lost ten, the other operation
    ),
    "is_that_the_total": (
        1,
        Ask(Truth(Op("+", colors("Owls", 1)), "=", Stated(8, "claimed")), (), TRUTH),
        "No",
        "x = 3 + 2 + 4 - 8",
        ("3 + 2 + 4 = 9",),
        {"H41": "Yes"},
    ),
    "is_that_the_total, right": (
        1,
        Ask(Truth(Op("+", colors("Owls", 1)), "=", Stated(9, "claimed")), (), TRUTH),
        "Yes",
        "x = 3 + 2 + 4 - 9",
        ("3 + 2 + 4 = 9",),
        {"H42": "No"},
    ),
    "take_apart": (  # 4 red, 5 blue, and some gold, 15 in all
        2,
        Ask(Value(OWLS[2]), (Equation(Op("+", OWLS), quantity("down", "Owls")),), WHOLE),
        "6",
        "4 + 5 + x = 15",
        ("4 + 5 = 9", "15 - 9 = 6"),
        {"H07": "9", "H16": "11", "H19": "24", "H13": "7"},
    ),
    "take_apart, groups": (
        2,
        Ask(Value(BOTH[1]), (Equation(Op("+", BOTH), quantity("down")),), WHOLE),
        "17",
        "15 + x = 32",
        ("32 - 15 = 17",),
        {"H19": "47", "H10": "23"},  # more than ten are counted on either way
    ),
    "two_step_left_standing": (
        2,
        Ask(Value(Op("-", (quantity("set_up", "Herons", (2,)), Op("+", colors("Herons", 2))))), (), WHOLE),
        "3",
        "2 + 2 + 5 + x = 12",
        ("2 + 2 + 5 = 9", "12 - 9 = 3"),
        {"H07": "9", "H06": "21", "H16": "8"},
    ),
    "left_standing_over_trials": (
        4,
        Ask(
            Value(
                Op("-", (Op("*", (Stated(2, "trials"), quantity("set_up", "Owls", (1,), "gold"))), quantity("down", "Owls", None, "gold")))
            ),
            (),
            WHOLE,
        ),
        "4",
        "6 + x = 2*5",
        ("2 * 5 = 10", "10 - 6 = 4"),
        {"H07": "10", "H18": "6"},  # one rack alone, 5 - 6, is no count
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_the_key_relation_steps_and_slips_worked_by_hand(name: str):
    grade, ask, *expected = ROWS[name]
    assert worked(problem(name.partition(",")[0], TWO_GROUPS, grade, ask)) == tuple(expected)


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
        for problem in every_problem(model, results, grade, draws=4)
    }
    assert len(used) >= 3
    assert used <= {frame.name for frame in frames("counting", model)}


@pytest.mark.parametrize(("model", "grade"), [(model, grade) for model in MODELS for grade in GRADES[model]])
def test_two_frames_fit_each_grade(model: str, grade: int):
    assert len({problem.frame for results in (TWO_GROUPS, BIG) for problem in every_problem(model, results, grade, draws=4)}) >= 2


def test_every_problem_says_which_trials_it_is_about():
    for model in MODELS:
        for grade in GRADES[model]:
            for one in every_problem(model, TWO_GROUPS, grade, draws=3):
                assert re.search(r"\b(Trials? \d|2 trials|two trials)", one.text), one.text


def test_totals_are_put_together_from_colors_trials_and_groups():
    kinds = set()
    for draft in every_draft("put_together_total", TWO_GROUPS):
        first, second = (part.scope for part in draft.roles["parts"][:2])
        kinds |= {field for field in ("groups", "trials", "colors") if getattr(first, field) != getattr(second, field)}
    assert kinds == {"groups", "trials", "colors"}


def test_a_part_of_zero_is_not_added():
    """Owls 4 red, 0 blue: their colors make no sum, the two groups' red pins do."""
    bare = table({"red": 8, "blue": 8}, {("Owls", 1): (4, 0), ("Herons", 1): (2, 5)})
    view = Desk(bare, scenario()).view
    sums = [tuple(map(view.number, draft.roles["parts"])) for draft in every_draft("put_together_total", bare)]
    assert sorted(sums) == [(2, 5), (4, 2), (4, 7), (6, 5)]


def test_sums_within_five_are_not_asked():
    """Add within 5 fluently: kindergarten, K.OA.A.5."""
    few = table({"red": 8, "blue": 8}, {("Owls", 1): (3, 2), ("Herons", 1): (1, 1)})
    view = Desk(few, scenario()).view
    sums = [tuple(map(view.number, draft.roles["parts"])) for draft in every_draft("put_together_total", few)]
    assert sums == [(4, 3), (5, 2)]  # by color, by group; not 3 and 2, 1 and 1, 3 and 1, or 2 and 1


def test_half_of_the_pins_is_not_asked():
    """3 of 6 down: "I stopped half way" would give the right answer."""
    half = TrialTable((Row("Owls", 1, "red", 3, 1), Row("Owls", 1, "blue", 3, 2)))
    assert list(every_draft("two_step_left_standing", half)) == []


def test_what_is_left_is_no_number_of_the_words():
    """9 of 12 down, 3 + 2 + 4: 3 are left, as many as the red ones; a pupil who copies the 3 would be right. One more is fine."""
    alike = TrialTable((Row("Owls", 1, "red", 4, 3), Row("Owls", 1, "blue", 3, 2), Row("Owls", 1, "gold", 5, 4)))
    assert [draft for draft in every_draft("two_step_left_standing", alike) if len(draft.roles["parts"]) == 3] == []
    other = TrialTable((*alike.rows[:2], Row("Owls", 1, "gold", 5, 2)))
    assert len([draft for draft in every_draft("two_step_left_standing", other) if len(draft.roles["parts"]) == 3]) == 1


def test_racks_that_differ_between_trials_are_not_multiplied():
    """Equal groups need equal sets: 4 red pins, then 6, are not twice 4."""
    rows = (Row("Owls", 1, "red", 4, 1), Row("Owls", 2, "red", 6, 1))
    assert list(every_draft("left_standing_over_trials", TrialTable(rows))) == []
    alike = TrialTable((rows[0], Row("Owls", 2, "red", 4, 2)))
    assert len(list(every_draft("left_standing_over_trials", alike))) == 1


def test_a_missing_result_is_never_part_of_a_total():
    rows = tuple(row for row in TWO_GROUPS.rows if (row.group, row.trial, row.color) != ("Herons", 2, "gold"))
    holed = TrialTable(rows, absent=(("Herons", 2, "gold"),))
    view = Desk(holed, scenario()).view
    for model in MODELS:
        for draft in every_draft(model, holed):
            assert all(view.totals.complete(leaf.scope) for leaf in draft.leaves() if isinstance(leaf, Quantity))


def test_the_total_that_is_asked_must_not_be_shown():
    for draft in every_draft("put_together_total", TWO_GROUPS):
        assert draft.must_not_show == (draft.roles["whole"].scope,)


def test_a_missing_part_is_never_one_cell_of_the_table_nor_a_number_of_the_words() -> None:
    view = Desk(TWO_GROUPS, scenario()).view
    drafts = list(every_draft("take_apart", TWO_GROUPS))
    assert drafts
    for draft in drafts:
        asked, known = draft.roles["asked"], draft.roles["known"]
        numbers = [view.number(one) for one in known]
        assert not view.is_cell(asked)
        assert view.number(asked) not in (0, sum(numbers), *numbers)
        assert sum(numbers) + view.number(asked) == view.number(draft.roles["whole"])


def test_two_step_stories_about_a_missing_part_add_one_digit_numbers() -> None:
    """Progressions: two-step problems of grade 2 have mostly one-digit addends."""
    view = Desk(BIG, scenario()).view
    known = [[view.number(one) for one in draft.roles["known"]] for draft in every_draft("take_apart", BIG)]
    assert known
    assert all(len(numbers) == 1 or max(numbers) < 10 for numbers in known)


def test_the_facts_name_the_color_that_is_asked_for() -> None:
    """A pupil cannot know that a table has no fourth color."""
    problems = [one for one in every_problem("take_apart", TWO_GROUPS, 2, draws=4) if "blue" in one.question and "blue" not in one.facts]
    told = [one for one in problems if re.search("red|gold", one.facts)]
    assert [one.text for one in told] == []


def test_a_ten_is_missing_from_a_total_of_two_digit_numbers():
    """2.NBT.B.6: 42 + 21 + 18 is 81, not 71."""
    one = problem("is_that_the_total", BIG, 2, Ask(Truth(Op("+", OWLS), "=", Stated(71, "claimed")), (), TRUTH))
    assert (one.answer.shown, {slip.id: slip.value for slip in one.slips}) == ("No", {"H48": "Yes"})
    assert one.standards == ("2.OA.A.1", "2.NBT.B.6")
