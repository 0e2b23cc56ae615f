"""Yes and no in balance, in a bank and on a sheet."""

from collections import Counter

from mathgen.bank.balance import tips
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table


def test_only_what_already_leads_tips():
    assert not tips("true", Counter())
    assert tips("true", Counter(["true"]))
    assert not tips("false", Counter(["true"]))
    assert not tips("Owls", Counter(["Owls"] * 3))
    assert not tips(4, Counter([4]))


def test_a_bank_says_yes_and_no_in_turns():
    desk = Desk(read_table("samples/main.csv", ReadOptions()).table, scenario())
    answers = Counter(
        (problem.grade, problem.model, problem.answer.exact)
        for problem in build_bank(desk, load("ccss"), (1, 2, 4), 1, 20, Report())
        if problem.answer.kind == "truth"
    )
    models = {spot[:2] for spot in answers}
    assert models
    assert all(abs(answers[*spot, "true"] - answers[*spot, "false"]) <= 1 for spot in models)
