"""A sheet's own problems, put to the table as a pupil's question: each is answered as its key has it, in a sentence of its own."""

from __future__ import annotations

import pytest

from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.problems.record import Problem
from mathgen.reading.pupils.verdict import Listener, ask_the_table
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

_TRIED = 40  # drafts of a model and grade


def problems(desk: Desk, grade: int) -> list[Problem]:
    """One problem of each model that the grade has on this table."""
    builder, found = Builder(desk, load("ccss"), grade), []
    for model in problem_models():
        if load("ccss").entry(model.skill, grade) is None:
            continue
        rng = stream(3, model.name, grade)
        tried = (builder.candidate(model, draft, rng) for draft in drafts(model.space(desk.view), rng, _TRIED))
        candidate = next((one for one in tried if isinstance(one, Candidate)), None)
        if candidate is not None:
            found.append(builder.finish(candidate))
    return found


@pytest.mark.parametrize("sample", ["main", "accuracy", "spaces", "tens"])
def test_a_printed_problem_is_answered_as_in_its_key(sample: str) -> None:
    desk = Desk(read_table(f"samples/{sample}.csv", ReadOptions(counts="down")).table, scenario("ramp"))
    listener = Listener(desk.table, desk.scenario)
    wrong = []
    for grade in range(1, 9):
        for one in problems(desk, grade):
            outcome = listener.outcome(one.text)
            written = {outcome.value, outcome.display, *outcome.forms}
            if outcome.verdict != "answer" or not outcome.read_as or written.isdisjoint(one.answer.accepted):
                wrong.append((one.model, one.text, outcome, one.answer.display))
    assert wrong == []


def test_whether_something_is_so_is_answered_with_yes_or_no() -> None:
    table = read_table("samples/tens.csv", ReadOptions(counts="down")).table
    told = "Look at Trial 1. The Foxes knocked down 2 red and 4 gold pins."
    asked = (f"{told} Is the total number of red and gold pins knocked down {way}?" for way in ("even", "odd"))
    even, odd = (ask_the_table(one, table, scenario("ramp")) for one in asked)
    assert (even.verdict, even.value, even.display) == ("answer", "true", "Yes")
    assert (odd.verdict, odd.value, odd.display) == ("answer", "false", "No")
