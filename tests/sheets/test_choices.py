"""Answers to choose from, on the page and in the key."""

from __future__ import annotations

from mathgen.bank.options import Option
from mathgen.bank.plan import SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.sheets.choices import HOW_TO_CHOOSE, choice_list, right_letter
from mathgen.sheets.key import key_data
from mathgen.sheets.worksheet import worksheet_data
from tests.sheets.by_hand import TABLE, sheet, words
from tests.sheets.test_key import plain


def test_each_answer_has_the_unit_of_the_key() -> None:
    """Grade 4, problem 1, after the model problems: 32 pins; one pin is no pins."""
    total = next(one for one in sheet(4).forms[0].problems if one.answer.display == "32 pins")
    options = (Option("A", "22", total.slips[0]), Option("B", "32", None), Option("C", "1", total.slips[0]))
    listed = choice_list(total, options, words(4))
    assert [(one["letter"], plain(one["parts"])) for one in listed] == [("A", "22 pins"), ("B", "32 pins"), ("C", "1 pin")]
    assert right_letter(options) == "B"


def test_a_sheet_with_choices_has_no_line_to_write_on_and_says_what_to_do() -> None:
    chosen = make_sheet(TABLE, SheetPlan(2, choices=True))
    [form] = worksheet_data(chosen, TABLE, words(2))["forms"]
    assert form["how_to_answer"] == HOW_TO_CHOOSE
    assert all(len(problem["choices"]) in (3, 4) and not problem["number_sentence"] for problem in form["problems"])


def test_the_key_marks_each_mistake_by_the_letter_that_stands_on_the_page() -> None:
    chosen = make_sheet(TABLE, SheetPlan(4, choices=True))
    page = worksheet_data(chosen, TABLE, words(4))["forms"][0]["problems"]
    key = key_data(chosen, TABLE, words(4))
    for on_page, worked, row in zip(page, key["forms"][0]["problems"], key["strip"], strict=True):
        shown = {one["letter"]: plain(one["parts"]) for one in on_page["choices"]}
        assert shown[worked["right"]].split(" ")[0] == plain(worked["answer"]).split(" ")[0]
        assert plain(row["answers"][0]).startswith(worked["right"] + " ")
        assert {worked["right"], *(slip["letter"] for slip in worked["slips"])} == set(shown)
        assert all((shown[slip["letter"]] + " ").startswith(plain(slip["value"]) + " ") for slip in worked["slips"])


def test_without_choices_mistakes_are_lettered_in_order_of_likelihood() -> None:
    worked = key_data(sheet(4), TABLE, words(4))["forms"][0]["problems"][1]
    assert [slip["letter"] for slip in worked["slips"]] == ["a", "b"]
    assert worked["right"] == ""
