"""Two questions of which one is statistical, and a number that is left out: by hand on small tables."""

from __future__ import annotations

import pytest

from mathgen.asks.expression import Ask, Choice, Op, Stat, Stated, Truth, Value
from mathgen.exact.demand import Demand
from tests.models.asked import every_draft, every_problem, problem, quantity, said, worked
from tests.tables import table

NAME, ANY = Demand("name"), Demand("any")
GROUPS = ("Owls", "Herons", "Kites", "Wrens")
# In Trial 1 the groups knocked down 8, 7, 9 and 2: the mean is 26/4 = 6.5, without the Wrens 24/3 = 8; medians 7.5 and 8.
CLASS = table({"red": 9}, {(group, 1): (down,) for group, down in zip(GROUPS, (8, 7, 9, 2), strict=True)})
THREE = table(
    {"red": 9}, {("Owls", 1): (4,), ("Owls", 2): (5,), ("Owls", 3): (3,), ("Herons", 1): (1,), ("Herons", 2): (1,), ("Herons", 3): (1,)}
)
LIST = tuple(quantity("down", "Owls", (trial,), "red") for trial in (1, 2, 3))
FIRST = tuple(quantity("down", group, (1,), "red") for group in GROUPS)

ROWS = [
    # model, ask, answer, relation, steps, slips; each worked by hand
    (
        "which_is_statistical",
        Ask(Choice(("first", "second"), (Stat("range", (FIRST[0],)), Stat("range", FIRST))), (), NAME),
        ("second", "x = Max(8 - 8, 9 - 2)", ("8 - 8 = 0", "9 - 2 = 7"), {"I51": "first"}),
    ),
    (
        "mean_of_which_count",
        # 4, 5 and 3 of 9 in three trials: a mean of 4, and of 9 - 4 = 5 left standing.
        Ask(
            Truth(Op("-", (quantity("set_up", "Owls", (1,), "red"), Stat("mean", LIST))), "=", Stated(4, "mean told")), (), Demand("truth")
        ),
        ("No", "x = 9 - (4 + 5 + 3)/3 - 4", ("4 + 5 + 3 = 12", "12 / 3 = 4", "9 - 4 = 5"), {"I71": "Yes"}),
    ),
    (
        "center_without",
        Ask(Value(Op("-", (Stat("mean", FIRST[:3]), Stat("mean", FIRST)))), (), ANY),
        (
            "1.5",
            "(8 + 7 + 9 + 2)/4 + x = (8 + 7 + 9)/3",
            ("8 + 7 + 9 = 24", "24 / 3 = 8", "8 + 7 + 9 + 2 = 26", "26 / 4 = 6.5", "8 - 6.5 = 1.5"),
            {"I52": "8", "I53": "4.5", "I54": "0.5"},
        ),
    ),
    (
        "center_without",
        Ask(Value(Op("-", (Stat("median", FIRST[:3]), Stat("median", FIRST)))), (), ANY),
        ("0.5", "(7 + 8)/2 + x = 8", ("8 = 8", "7 + 8 = 15", "15 / 2 = 7.5", "8 - 7.5 = 0.5"), {"I52": "8", "I53": "5.5"}),
    ),
]


@pytest.mark.parametrize(("name", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, ask: Ask, row: tuple[object, ...]) -> None:
    results = THREE if name == "mean_of_which_count" else CLASS
    made = said(name, results, 6, next(draft for draft in every_draft(name, results) if draft.ask == ask), frozenset({"words", "table"}))
    assert worked(made) == row


def test_only_the_one_number_far_from_all_others_is_left_out() -> None:
    assert {draft.roles["out"] for draft in every_draft("center_without", CLASS)} == {FIRST[3]}
    # 3 less than the nearest is near enough where the others are spread over 2: twice 2 would be far.
    near = table({"red": 9}, {(group, 1): (down,) for group, down in zip(GROUPS, (8, 7, 9, 4), strict=True)})
    assert list(every_draft("center_without", near)) == []


def test_a_median_that_is_whole_is_worked_with_as_a_whole_number() -> None:
    """Of 5, 7, 5 and 7 the median is 12 / 2 = 6; with 0 as well it is 5. Nobody takes 10/2 from 12/2."""
    results = table({"red": 9}, {(group, 1): (down,) for group, down in zip((*GROUPS, "Jays"), (5, 7, 5, 7, 0), strict=True)})
    series = tuple(quantity("down", group, (1,), "red") for group in (*GROUPS, "Jays"))
    ask = Ask(Value(Op("-", (Stat("median", series[:4]), Stat("median", series)))), (), ANY)
    made = problem("center_without", results, 6, ask)
    assert [step.text for step in made.steps] == ["5 + 7 = 12", "12 / 2 = 6", "5 = 5", "6 - 5 = 1"]


def test_the_second_question_can_be_named_in_a_pupils_ways() -> None:
    [made, *_] = [one for one in every_problem("which_is_statistical", CLASS, 6) if one.answer.shown == "second"]
    assert made.answer.accepted == ("second", "second question", "the second question", "2nd")


def test_groups_that_all_knocked_down_as_many_make_no_statistical_question() -> None:
    alike = table({"red": 9}, {(group, 1): (4,) for group in GROUPS})
    assert list(every_draft("which_is_statistical", alike)) == []


def test_a_set_of_several_colors_is_not_asked_about_beside_the_count() -> None:
    # 4 red and 8 blue pins: the table holds no set of 12, and the words print none.
    counts = {(group, 1): (down, 0) for group, down in zip(GROUPS, (0, 2, 3, 4), strict=True)}
    drafts = list(every_draft("which_is_statistical", table({"red": 4, "blue": 8}, counts)))
    beside = {draft.roles["whole"].scope.colors for draft in drafts if draft.wanted == {"same"}}  # type: ignore[union-attr]
    assert beside == {("red",)}


def test_the_question_about_each_group_stands_first_as_often_as_second() -> None:
    shown = [one.answer.shown for one in every_problem("which_is_statistical", CLASS, 6)]
    assert shown.count("first") == shown.count("second") > 0


def test_no_word_of_the_two_questions_tells_which_is_statistical() -> None:
    """A pupil who looks for "each group" finds it in both questions of every second problem."""
    drafts = list(every_draft("which_is_statistical", CLASS))
    about_sets = [draft for draft in drafts if draft.wanted == {"same"}]
    assert 2 * len(about_sets) >= len(drafts) > 0
    told = [one.text for one in every_problem("which_is_statistical", CLASS, 6)]
    assert {text.count("each group") for text in told} == {1, 2}
    assert not any("a group" in text for text in told)


def test_a_list_of_one_number_again_and_again_has_no_mean_to_name() -> None:
    assert {draft.roles["whole"].scope.groups for draft in every_draft("mean_of_which_count", THREE)} == {("Owls",)}  # type: ignore[union-attr]
