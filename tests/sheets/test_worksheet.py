"""The pupils' pages as data."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

import pytest

from mathgen.asks.expression import Ask, Changes, Quantity, Stated
from mathgen.bank.plan import SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.exact.demand import Demand
from mathgen.sheets.worksheet import CHANGES, POINTS, few_on_pages, how_to_answer, page_change, worksheet_data
from mathgen.trials.scope import Scope
from tests.sheets.by_hand import GRADE_4, TABLE, sheet, sheet_of, words


@pytest.mark.parametrize("grade", [2, 4, 7])
def test_pages_are_plain_data(grade: int) -> None:
    """Any press can read them: JSON there and back changes nothing."""
    data = worksheet_data(sheet(grade), TABLE, words(grade))
    assert json.loads(json.dumps(data)) == data


@pytest.mark.parametrize("grade", [2, 4, 7])
def test_pupils_pages_show_no_grade_level_standard_or_key(grade: int) -> None:
    """A sheet must not tell a pupil that she works below her grade."""
    printed = json.dumps(worksheet_data(sheet(grade), TABLE, words(grade))).lower()
    assert not [word for word in ("grade", "support", "challenge", "review", ".oa.", ".nf.", ".rp.") if word in printed]


def test_one_problem_in_each_form_asks_to_show_and_it_is_the_same_one() -> None:
    """Forms are parallel."""
    data = worksheet_data(sheet(4, forms=2), TABLE, words(4))
    shows = [[problem["number"] for problem in form["problems"] if problem["show"]] for form in data["forms"]]
    assert shows == [[3], [3]]


def test_forms_are_marked_only_where_there_are_several() -> None:
    """Form A alone would make pupils look for form B."""
    assert [form["mark"] for form in worksheet_data(sheet(4), TABLE, words(4))["forms"]] == [""]
    assert [form["mark"] for form in worksheet_data(sheet(4, forms=2), TABLE, words(4))["forms"]] == ["Form A", "Form B"]


@pytest.mark.parametrize(
    ("grade", "large", "points"),
    [(2, False, "16"), (3, False, "14"), (4, False, "12.5"), (7, False, "12.5"), (2, True, "20"), (7, True, "18")],
)
def test_type_is_as_large_as_the_age_needs(grade: int, large: bool, points: str) -> None:
    """Large print is 18 points at least (American Printing House guidelines); grade 2 has more in its ordinary sheet already."""
    made = worksheet_data(sheet_of(GRADE_4, grade, large_print=large), TABLE, words(grade))
    assert made["type"]["points"] == points


def test_a_number_sentence_is_for_grade_2_only() -> None:
    """Grade 2 problems have one, later ones room to work."""
    assert all(problem["number_sentence"] for problem in worksheet_data(sheet(2), TABLE, words(2))["forms"][0]["problems"])
    assert not any(problem["number_sentence"] for problem in worksheet_data(sheet(4), TABLE, words(4))["forms"][0]["problems"])


def test_i_can_lines_come_from_the_sheets_own_grade() -> None:
    """The review problem of grade 1 does not name the aim."""
    assert worksheet_data(sheet(2), TABLE, words(2))["forms"][0]["i_can"] == [
        "add to find how many in all",
        "find how many more and how many fewer",
    ]


def test_a_leaf_is_the_default_and_a_demand_overrides_it() -> None:
    """Two sides, unless pages, count, minutes or saving paper decide."""
    assert [
        worksheet_data(sheet(4, **wish), TABLE, words(4))["pages"] for wish in ({}, {"pages": 4}, {"count": 8}, {"layout": "save-paper"})
    ] == [2, 4, None, None]


@pytest.mark.parametrize(
    ("wish", "printed", "said"),
    [
        ({}, 2, None),
        ({}, 1, None),
        ({}, 3, "2 pages were wanted; the worksheet has 3, for its problems need the space."),
        ({"pages": 1}, 2, "1 page was wanted; the worksheet has 2, for its problems need the space."),
        ({"pages": 4}, 3, "4 pages were wanted; the worksheet has 3, for it has too few problems for more."),
        ({"count": 8}, 3, None),
        ({"layout": "save-paper"}, 1, None),
    ],
)
def test_pages_that_differ_from_the_plan_are_said(wish: dict[str, Any], printed: int, said: str | None) -> None:
    """A default leaf may take less; a number that was asked for is met or said."""
    assert page_change(worksheet_data(sheet(4, **wish), TABLE, words(4)), printed) == said


@pytest.mark.parametrize(
    ("pages", "here", "usual", "said"),
    [
        (1, 1, 3, "1 page holds 1 problem of these with room to work; 3 are usual."),
        (2, 2, 6, "2 pages hold 2 problems of these with room to work; 6 are usual."),
        (1, 2, 4, None),
        (None, 1, 6, None),
    ],
)
def test_pages_that_hold_few_problems_are_said(pages: int | None, here: int, usual: int, said: str | None) -> None:
    """Where the teacher named the pages, and not even half of the usual number fits."""
    assert few_on_pages(SheetPlan(2, pages=pages), here, usual) == said


def test_two_columns_are_for_saving_paper_with_small_type() -> None:
    """Younger pupils and large print keep the width of the page."""
    wishes: list[tuple[int, dict[str, Any]]] = [
        (2, {"layout": "save-paper"}),
        (4, {}),
        (4, {"layout": "save-paper"}),
        (7, {"layout": "save-paper", "large_print": True}),
    ]
    assert [worksheet_data(sheet(grade, **wish), TABLE, words(grade))["columns"] for grade, wish in wishes] == [1, 1, 2, 1]


def test_where_several_problems_give_points_each_is_said_to_be_a_game_of_its_own() -> None:
    """Else a red pin would earn 8 points in one problem and 3 in the next."""
    [form] = make_sheet(TABLE, SheetPlan(3, skills=("equal groups, product unknown", "missing factor"))).forms
    games = [one for one in form.problems if "points" in one.text]
    assert len(games) > 1
    assert how_to_answer(form) == POINTS
    assert how_to_answer(replace(form, problems=(games[0],))) == ""


def test_how_to_write_a_change_is_said_where_a_problem_asks_for_one() -> None:
    [form] = make_sheet(TABLE, SheetPlan(6)).forms
    others = tuple(one for one in form.problems if not isinstance(one.ask.goal, Changes))
    count = Quantity("down", Scope(None, None, None))
    asked = others[0]._replace(ask=Ask(Changes((count,), "mean", Stated(9, "wanted mean"), count), (), Demand("list")))
    assert CHANGES not in how_to_answer(replace(form, problems=others))
    assert CHANGES in how_to_answer(replace(form, problems=(*others, asked)))
