"""The teacher's pages as data."""

from __future__ import annotations

import json

from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.sheets.key import OWN_RULES, cautions, key_data, worked_answer
from tests.sheets.by_hand import TABLE, problem, sheet, words


def plain(parts: list[dict[str, str]]) -> str:
    """Parts as text."""
    return "".join(part.get("text") or part.get("kept") or f"{part['top']}/{part['bottom']}" for part in parts)


def test_the_strip_is_in_sheet_order_with_forms_side_by_side() -> None:
    """Form B has the first two problems exchanged."""
    strip = key_data(sheet(4, forms=2), TABLE, words(4))["strip"]
    assert [row["number"] for row in strip] == [1, 2, 3, 4, 5, 6, 7, 8]
    assert [[plain(answer) for answer in row["answers"]] for row in strip[:3]] == [
        ["32 pins", "3/12"],
        ["3/12", "32 pins"],
        ["Herons", "Herons"],
    ]


def test_worked_answers_hold_all_that_marking_needs() -> None:
    """Grade 4, problem 2, after the model problems."""
    worked = key_data(sheet(4), TABLE, words(4))["forms"][0]["problems"][1]
    assert plain(worked["answer"]) == "3/12"
    assert [plain(step) for step in worked["steps"]] == ["12/12 − 9/12 = 3/12"]
    assert [plain(form) for form in worked["accepted"]] == ["1/4"]
    assert plain(worked["demand"]) == "Any equal form is right."
    assert [(plain(slip["value"]), plain(slip["line"])) for slip in worked["slips"]] == [
        ("9/12", "That is the part that fell."),
        ("3/9", "The whole is the 12 pins."),
    ]
    assert worked["standards"] == ["4.NF.B.3d"]
    assert (worked["level"], worked["review"]) == ("on grade", False)


def test_problems_of_an_earlier_grade_are_marked_as_review() -> None:
    """Grade 4's problems 6 and 7 are of grade 3."""
    problems = key_data(sheet(4), TABLE, words(4))["forms"][0]["problems"]
    assert [problem["number"] for problem in problems if problem["review"]] == [6, 7]


def test_the_teachers_page_says_what_changed_what_is_on_it_and_how_to_be_safe() -> None:
    """Two forms come with a change; the cautions are the scenario's, the school's own rules among them."""
    teacher = key_data(sheet(4, forms=2), TABLE, words(4), minutes=35)["teacher"]
    assert len(teacher["changes"]) == 1
    about = {part["head"]: part["lines"] for part in teacher["about"]}
    assert about["Problems"] == ["8 on each form"]
    assert about["Time"] == ["about 35 minutes"]
    assert about["Review"] == ["2 of an earlier grade"]
    assert about["Standards"] == ["3.MD.B.3, 3.OA.D.8, 4.NF.A.2, 4.NF.B.3d, 4.NF.C.6, 4.OA.A.2"]
    assert sum(OWN_RULES in line for line in teacher["cautions"]) == 1
    assert teacher["standards_note"] == "Standards are guides: check your state's own."
    assert teacher["table"] == "Owls, Herons, Swifts; 2 trials; red, blue, gold"


def test_the_schools_own_rules_are_named_even_where_a_scenario_forgets_them() -> None:
    """A scenario file is a teacher's to write."""
    assert cautions(["Use a soft ball."]) == ["Use a soft ball.", OWN_RULES]
    assert cautions([OWN_RULES + " They come first."]) == [OWN_RULES + " They come first."]


def test_the_key_is_plain_data_and_says_how_it_was_checked() -> None:
    """JSON there and back changes nothing."""
    data = key_data(sheet(7), TABLE, words(7))
    assert json.loads(json.dumps(data)) == data
    assert data["proof_line"] == "Every answer was checked two ways."
    assert data["grade"] == "Grade 7"


def test_forms_that_come_in_later_grades_are_not_listed() -> None:
    """Percents come in grade 6, decimals in grade 4; they stay right in marking."""
    made = problem("What fraction?", "1/4", accepted=("2/8", "0.25", "25%"))
    listed = {grade: [plain(form) for form in worked_answer(made, 1, grade)["accepted"]] for grade in (3, 5, 6)}
    assert listed == {3: ["2/8"], 5: ["2/8", "0.25"], 6: ["2/8", "0.25", "25%"]}


def test_a_rounded_answer_comes_with_its_exact_value() -> None:
    """11 of 18 pins to the nearest tenth of a percent."""
    made = problem("What percent?", "61.1%", form="percent")
    rounded = made._replace(answer=made.answer._replace(exact=Rational(11, 18), demand=Demand("percent", 1)))
    assert plain(worked_answer(rounded, 1, 7)["demand"]) == "Rounded as asked; the exact value is 11/18."
