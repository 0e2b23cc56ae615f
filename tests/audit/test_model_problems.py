"""Model problems of grades 1, 3, 5 and 8, written by hand: good wording passes the audit, and the reader comes to the same answer."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from sympy import Max, Rational, floor, sympify

from mathgen.exact.rounding import rounded
from mathgen.grades.curriculum import load
from mathgen.reading.read_problem import read_problem
from mathgen.scenario.words import scenario
from tests.audit.banks import sample, words
from tests.audit.readability import is_easy, words_of
from tests.audit.results import Results
from tests.audit.test_words import known
from tests.audit.wording import Texts, faults

PROBLEMS = tomllib.loads((Path(__file__).parent / "model_problems.toml").read_text(encoding="utf-8"))["problems"]
ASKED = pytest.mark.parametrize(("grade", "standard", "text", "answer", "worked"), PROBLEMS)


@ASKED
def test_the_wording_rules_hold(grade: int, standard: str, text: str, answer: str, worked: str) -> None:
    table = sample("main")
    assert not list(faults(text, grade, Texts(Results.of(table.rows), words("main"))))
    names = {word for label in (*table.groups, *table.colors) for word in words_of(label)}
    assert not {word for word in words_of(text) if word not in names | known(grade) and not is_easy(word, grade)}
    assert standard in load("ccss").standards()
    assert standard.startswith(f"{grade}.")


@ASKED
def test_the_reader_comes_to_the_answer_worked_by_hand(grade: int, standard: str, text: str, answer: str, worked: str) -> None:
    reading = read_problem(text, sample("main"), scenario("ramp"))
    value, places = reading.value, reading.demand.places
    assert str(value if isinstance(value, str) or places is None else rounded(value, places)) == answer


@ASKED
def test_the_answer_worked_again_is_the_same(grade: int, standard: str, text: str, answer: str, worked: str) -> None:
    terms = worked.removeprefix("Max(").removesuffix(")").split(", ") if worked.startswith("Max(") else [worked]
    values = [sympify(term, locals={"Max": Max, "floor": floor}, rational=True) for term in terms]
    if len(values) == 1:
        assert values[0] == Rational(answer)
    else:  # the name told of with the greater value
        greater = max(range(len(values)), key=lambda place: values[place])
        first, second = sorted((name for name in sample("main").groups if name in text), key=text.index)
        assert (first, second)[greater] == answer
