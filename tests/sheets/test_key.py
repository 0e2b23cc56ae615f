"""The teacher's pages as data."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

from sympy import Rational

import mathgen.scenario
from mathgen.asks.expression import Ask, Choice, Equation, Op, Quantity, Truth, Unknown
from mathgen.exact.demand import Demand
from mathgen.grades.curriculum import load
from mathgen.problems.record import Answer
from mathgen.scenario.words import scenario
from mathgen.sheets.key import OWN_RULES, cautions, key_data, table_head, table_line, worked_answer, worked_lines
from mathgen.sheets.page_words import page_words
from mathgen.trials.scope import Scope
from mathgen.trials.table import Priced, Row, TrialTable
from tests.models.asked import problem as asked_problem
from tests.sheets.by_hand import TABLE, problem, sheet, sheet_of, words
from tests.tables import TWO_GROUPS


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


def test_a_price_list_is_told_whole_or_says_how_many_more_it_has() -> None:
    """12 items fit; of 20 the last 4 are counted."""
    assert table_head(TABLE) == "Results table"
    for number, end in ((12, "item 12 12¢"), (20, "item 16 16¢ and 4 more")):
        prices = replace(TABLE, prices=tuple(Priced(f"item {n}", n) for n in range(1, number + 1)))
        assert table_head(prices) == "Price list"
        assert table_line(prices, words(4)).endswith(end)


def test_the_schools_own_rules_are_named_even_where_a_scenario_forgets_them() -> None:
    """A scenario file is a teacher's to write."""
    assert cautions(["Use a soft ball."]) == ["Use a soft ball.", OWN_RULES]
    assert cautions([OWN_RULES + " They come first."]) == [OWN_RULES + " They come first."]


def test_the_key_is_plain_data_and_says_how_it_was_checked() -> None:
    """JSON there and back changes nothing."""
    data = key_data(sheet(7), TABLE, words(7))
    assert json.loads(json.dumps(data)) == data
    assert data["proof_line"] == "Every answer was checked three ways."
    assert data["grade"] == "Grade 7"


def test_forms_that_come_in_later_grades_are_not_listed() -> None:
    """Percents come in grade 6, decimals in grade 4; they stay right in marking."""
    made = problem("What fraction?", "1/4", accepted=("2/8", "0.25", "25%"))
    listed = {grade: [plain(form) for form in worked_answer(made, 1, grade)["accepted"]] for grade in (3, 5, 6)}
    assert listed == {3: ["2/8"], 5: ["2/8", "0.25"], 6: ["2/8", "0.25", "25%"]}


def test_an_exact_value_that_was_rounded_is_no_other_right_answer() -> None:
    """11 of 18 pins to the nearest tenth of a percent: the exact value stands in the steps alone."""
    made = problem("What percent?", "61.1%", form="percent")
    answer = made.answer._replace(exact=Rational(11, 18), demand=Demand("percent", 1))
    worked = worked_answer(made._replace(answer=answer), 1, 7)
    assert worked["accepted"] == worked["demand"] == worked["because"] == []


def test_a_product_held_against_a_factor_is_told_by_the_fraction_and_not_multiplied_out() -> None:
    """2/3 × 9: 2/3 is less than 1."""
    first, later = (Quantity("down", Scope(("Owls",), (trial,))) for trial in (1, 2))
    product = Op("*", (Op("/", (later, first)), first))
    for goal in (Truth(product, ">", first), Choice(("product", "factor"), (product, first), True)):
        made = asked_problem(
            "product_against_factor" if isinstance(goal, Truth) else "product_or_factor",
            TWO_GROUPS,
            5,
            Ask(goal, (), Demand("truth" if isinstance(goal, Truth) else "name")),
        )
        assert worked_lines(made) == ["2/3 < 1", f"2/3 * 9 < 9, so {'no' if isinstance(goal, Truth) else 'factor'}"]
        assert [plain(one) for one in worked_answer(made, 1, 5)["accepted"]] == ([] if isinstance(goal, Truth) else ["9"])


def test_what_grade_8_solves_starts_with_its_equation() -> None:
    """9 + 4x = 5 + 6x."""
    made = problem("How many pins?", "2")
    solved = made._replace(grade=8, board=("9 - 5 = 4", "6 - 4 = 2", "4 / 2 = 2", "9 + 4x = 5 + 6x", "2x = 4", "x = 2"))
    equation = Equation(Unknown(), Unknown())
    assert worked_lines(solved._replace(ask=made.ask._replace(given=(equation,)))) == [
        "9 + 4x = 5 + 6x", "2x = 4", "x = 2",
    ]  # fmt: skip
    assert worked_lines(solved)[0] == "9 - 5 = 4"


def test_forms_of_different_length_are_counted_one_by_one() -> None:
    """Form B lacks the last problem."""
    whole = sheet(4, forms=2)
    first, second = whole.forms
    shorter = replace(whole, forms=(first, replace(second, problems=second.problems[:-1])))
    about = {part["head"]: part["lines"] for part in key_data(shorter, TABLE, words(4))["teacher"]["about"]}
    assert about["Problems"] == ["Form A 8, Form B 7"]


def test_a_group_named_like_a_fraction_is_printed_as_typed_and_the_answer_is_not() -> None:
    """Data is data: group "1/2" knocked down 3/4 of its pins."""
    table = TrialTable((Row("1/2", 1, "red", 4, 3), Row("Owls", 1, "red", 4, 1)))
    made = (problem("1/2 knocked down 3/4 of the pins. What fraction?", "1/2"), problem("Which group?", "1/2", labels=("1/2", "Owls")))
    data = key_data(sheet_of(made, 4), table, words(4, table))
    fraction, name = data["forms"][0]["problems"]
    assert [part.get("top", part.get("text")) for part in fraction["text"]][:2] == ["1/2", " knocked down "]
    assert [part["top"] for part in fraction["text"] if "top" in part] == ["3"]
    assert fraction["answer"][0]["alt"] == "one half"
    assert name["answer"] == data["strip"][1]["answers"][0] == [{"text": "1/2"}]


def test_the_head_above_the_cautions_is_the_scenarios(tmp_path: Path) -> None:
    """A file of a teacher's own may leave it out."""
    assert key_data(sheet(4), TABLE, words(4))["teacher"]["cautions_head"] == "Before anything rolls"
    ramp = (Path(mathgen.scenario.__file__).parent / "ramp.toml").read_text(encoding="utf-8")
    own = tmp_path / "own.toml"
    own.write_text(ramp.replace('head = "Before anything rolls"\n', ""), encoding="utf-8")
    heads = [page_words(scenario(name), load("ccss"), TABLE, 4)["cautions_head"] for name in ("seeds", str(own))]
    assert heads == ["Before you plant", "Before you start"]


def test_a_ratio_is_written_in_its_order() -> None:
    """17:7 for 17 to 7."""
    ratio = problem("Q?", "17", steps=("24 - 17 = 7", "17 to 7: 17:7"))
    ratio = ratio._replace(answer=Answer("ratio", Rational(17, 7), "17:7", "17:7", ("17:7", "17 to 7", "17/7"), Demand("ratio:any")))
    one = worked_answer(ratio, 1, 6)
    assert plain(one["answer"]) == "17:7"
    assert [plain(step) for step in one["steps"]] == ["24 − 17 = 7", "17 to 7: 17:7"]
    assert plain(one["demand"]) == "Any equal ratio in this order is right."
