"""The audit passes problems that a teacher would pass, and names each fault that is planted in one."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.audit.audit import audit, audit_bank
from tests.audit.good_problems import GOOD, READ, ROWS, STANDING, told


@pytest.mark.parametrize("name", GOOD)
def test_a_good_problem_has_no_fault(name: str) -> None:
    assert audit(GOOD[name], ROWS) == []


def _set(*path: Any) -> Any:
    """Plants a value at a path of keys."""
    *steps, last, planted = path

    def plant(line: dict[str, Any]) -> None:
        inside: Any = line
        for step in steps:
            inside = inside[step]
        inside[last] = planted

    return plant


def _say(old: str, new: str) -> Any:
    def plant(line: dict[str, Any]) -> None:
        assert old in line["text"]
        line["text"] = line["text"].replace(old, new)

    return plant


def _together(*plants: Any) -> Any:
    def plant(line: dict[str, Any]) -> None:
        for one in plants:
            one(line)

    return plant


FAULTS: dict[str, tuple[str, Any, str]] = {
    # numbers and where they come from
    "a given that the rows do not bear out": ("STANDING", _set("givens", 3, "scope", "trials", [1]), "the rows add up to 3"),
    "a number said of another color": ("STANDING", _say("2 red, 2 blue, and 5 gold", "2 red, 2 gold, and 5 blue"), "something else"),
    "a number said of another group": ("STANDING", _say("The Herons knocked down", "The Owls knocked down"), "something else"),
    "a number said of another trial": ("STANDING", _say("12 pins for Trial 2", "12 pins for Trial 1"), "something else"),
    "a number that is no given": ("STANDING", _say("12 pins", "13 pins"), 'the text\'s "13"'),
    "a given that is not printed": ("STANDING", _say("2 red, 2 blue, and 5 gold", "all the"), "is not printed in the text"),
    "a rate that no rows bear out": ("REST", _together(_say("9/12", "7/12"), _set("givens", 1, "number", "7/12")), "bear it out"),
    "a colored scope under colorless words": ("STANDING", _set("givens", 1, "quantity", "pins knocked down"), "the scope's colors"),
    "a table given that is no cell": ("READ", _set("givens", 0, "scope", "trials", [1, 2]), "is no single cell"),
    "a cell too few": ("READ", _set("cells", [{"group": "Owls", "trial": 1, "color": "red"}]), "the cells to be read"),
    "a table that nobody needs": ("STANDING", _set("needs_table", True), "needs_table"),
    # working
    "an untrue step": ("STANDING", _set("steps", 1, "12 - 9 = 4"), "is not true"),
    "steps that end elsewhere": ("STANDING", _set("steps", ["2 + 2 + 5 = 9"]), "the exact answer is 3"),
    "steps that cannot be read": ("STANDING", _set("steps", 1, "12 minus 9 = 3"), "unreadable"),
    "no steps": ("STANDING", _set("steps", []), "no steps"),
    "a relation with another solution": ("STANDING", _set("relation", "2 + 2 + x = 12"), "has the solutions (8,)"),
    "a relation with every solution": ("STANDING", _set("relation", "x = x"), "has the solutions"),
    "a relation with a number from nowhere": ("STANDING", _set("relation", "x = 97 - 94"), "where does 97 come from"),
    "the other name wins": ("WHICH", _set("relation", "x = Max(6/10, 5/10)"), "does not have the greatest"),
    "a name that loses": (
        "WHICH",
        _together(
            _set("answer", "exact", "Owls"), _set("answer", "value", "Owls"), _set("answer", "accepted", ["Owls"]), _set("slips", [])
        ),
        "Owls does not have the greatest",
    ),
    "an untrue comparison on show": ("WHICH", _set("answer", "display", "Herons (6/10 > 8/10)"), "is not true"),
    # the key
    "value and exact apart": ("STANDING", _set("answer", "value", "4"), "value 4, exact 3"),
    "an accepted form that is wrong": ("REST", _set("answer", "accepted", ["3/12", "1/3"]), "accepted form 1/3 is 1/3"),
    "an accepted form against the demand": ("STANDING", _set("answer", "accepted", ["3", "6/2"]), "accepted form 6/2 is no whole"),
    "rounded to even": (
        "POOLED",
        _together(_set("answer", "exact", "3/8"), _set("answer", "demands", "percent:0")),
        "ties at the asked place",
    ),
    "rounded down": ("POOLED", _set("answer", "value", "777/1000"), "rounded half up"),
    "a display without its unit": ("STANDING", _set("answer", "display", "3"), 'should end in "pins"'),
    "a display in the singular": ("STANDING", _set("answer", "display", "3 pin"), 'should end in "pins"'),
    "a display with a unit too many": ("REST", _set("answer", "display", "3/12 pins"), "does not ask for"),
    "a slip that is right": ("REST", _set("slips", 0, "value", "2/8"), "slip A03 2/8 is right"),
    "a slip that names the winner": ("WHICH", _set("slips", 0, "value", "Herons"), "is right"),
    "a slip that is no count": ("STANDING", _set("slips", 0, "value", "9/2"), "is no count"),
    "simplest form": ("REST", _set("answer", "demands", "simplest"), "no standard demands"),
    "an unknown demand": ("STANDING", _set("answer", "demands", "roman"), "an unknown demand"),
    "an unknown kind": ("STANDING", _set("answer", "kind", "riddle"), "knows no answers of the kind riddle"),
    "not proved": ("STANDING", _set("proof", {"steps": "3 and 4"}), "not proved"),
    "the words ask for another total": ("READ", _say("How many red", "How many gold"), "the words ask for [6]"),
    "the words ask for the other share": ("REST", _say("left standing", "knocked down"), "the words ask for 3/4"),
    "copied from a cell": (
        "READ",
        _together(
            _say("Trials 1 and 2", "Trial 1"),
            _set("answer", {**READ["answer"], "value": "3", "exact": "3", "display": "3 pins", "accepted": ["3"]}),
        ),
        "copied from one cell",
    ),
    # the published limits
    "a fraction in grade 2": ("REST", _together(_set("grade", 2), _set("standards", ["2.OA.A.1"])), "denominator 12 in grade 2"),
    "twelfths in grade 3": ("REST", _together(_set("grade", 3), _set("standards", ["3.NF.A.1"])), "denominator 12 in grade 3"),
    "fractions taken away in grade 3": (
        "REST",
        _together(_set("grade", 3), _set("standards", ["3.NF.A.1"])),
        "fractions added before grade 4",
    ),
    "percent in grade 5": ("POOLED", _together(_set("grade", 5), _set("standards", ["5.NF.B.3"])), "percent before grade 6"),
    "over 100 in grade 2": ("STANDING", _set("steps", ["2 + 2 + 5 = 9", "112 - 109 = 3"]), "over 100"),
    "three steps in grade 2": ("STANDING", _set("steps", ["2 + 2 = 4", "4 + 5 = 9", "12 - 9 = 3"]), "3 steps in grade 2"),
    "a product in grade 2": ("STANDING", _set("steps", ["3 * 3 = 9", "12 - 9 = 3"]), "* before grade 3"),
    "five addends in grade 2": ("STANDING", _set("steps", ["2 + 2 + 3 + 1 + 1 = 9", "12 - 9 = 3"]), "5 addends"),
    "below zero in grade 2": ("STANDING", _set("steps", ["2 + 2 + 5 = 9", "9 - 12 = -3", "12 - 9 = 3"]), "below 0"),
    "a probability in grade 2": ("STANDING", _say("How many pins were", "What is the chance that pins were"), "probability before grade 7"),
    "five cells in grade 2": ("READ", _set("cells", [{"group": "Owls", "trial": n, "color": "red"} for n in range(5)]), "5 cells to read"),
    "a ninth in grade 4": ("REST", _set("steps", ["9/9 - 6/9 = 3/9", "12/12 - 9/12 = 3/12"]), "denominator 9 in grade 4"),
    "sets of two sizes in grade 4": ("WHICH", _set("givens", 0, "number", "8"), "compared in grade 4"),
    "a code of another grade": ("STANDING", _set("standards", ["3.OA.D.8"]), "3.OA.D.8 in grade 2"),
    "a code that is not published": ("STANDING", _set("standards", ["2.OA.A.9"]), "not among the published codes"),
    "a code that the problem does not show": ("STANDING", _set("standards", ["2.NBT.B.6"]), "does not show 2.NBT.B.6"),
    # words
    "no question mark": ("STANDING", _say("standing?", "standing."), "does not end in a question mark"),
    "two questions": ("STANDING", _say("gold pins.", "gold pins?"), "2 question marks"),
    "a pronoun": ("STANDING", _say("The Herons knocked", "They knocked"), 'the pronoun "They"'),
    "an if-clause": ("STANDING", _say("The Herons knocked", "If so, the Herons knocked"), "an if-clause"),
    "left alone": ("STANDING", _say("left standing", "left"), 'a bare "left"'),
    "two spaces": ("STANDING", _say("Trial 2. ", "Trial 2.  "), "stray spaces"),
    "numbers run together": (
        "STANDING",
        _say("The Herons set up 12 pins for Trial 2.", "For Trial 2, 12 pins were set up."),
        "number of a trial",
    ),
    "a small letter": ("STANDING", _say("The Herons set", "the Herons set"), 'starts with "the"'),
    "an open bracket": ("STANDING", _say("12 pins", "12 {{ pins"), "marks that no page should print"),
    "a long sentence": ("STANDING", _say("set up 12 pins", "set up 12 pins, all of them very neatly in a long row,"), "a sentence of"),
    "too many sentences": ("STANDING", _say("How many", "Look. Count. Think. How many"), "sentences, at most 4"),
    "one pins": ("STANDING", _say("12 pins", "1 pins"), "does not agree in number"),
    "twelve pin": ("STANDING", _say("12 pins", "12 pin"), "does not agree in number"),
    "one trials": ("STANDING", _say("Trial 2", "1 trials"), "does not agree in number"),
    "no whole": ("REST", _say("fraction of the 12 pins were", "fraction were"), "does not name its whole"),
    "the answer in the text": (
        "REST",
        _together(
            _say("knocked down 9/12", "left standing 3/12"), _set("givens", 1, told("3/12", "pins left standing out of pins set up"))
        ),
        "is printed in the text",
    ),
}


@pytest.mark.parametrize("fault", FAULTS)
def test_a_planted_fault_is_named(fault: str) -> None:
    good, plant, named = FAULTS[fault]
    line = copy.deepcopy(GOOD[good])
    plant(line)
    found = audit(line, ROWS)
    assert any(named in one for one in found), found


def test_an_id_that_stands_twice_is_named() -> None:
    assert audit_bank([STANDING, STANDING], ROWS) == ["the id a stands twice"]


def test_a_line_without_a_field_is_named() -> None:
    line = {name: field for name, field in STANDING.items() if name != "relation"}
    assert audit(line, ROWS) == ["the line lacks relation"]
