"""Faults planted in the words of problems about prices are caught: other items, other signs of money, other numbers."""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import replace

from sympy import Integer

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.judge import Judge, proved
from mathgen.proof.raw import RawRows
from mathgen.scenario.words import scenario
from mathgen.trials.reading import read_table

DESK = Desk(read_table("samples/prices.csv").table, scenario())
OTHER_WORDS = (
    ("cents", "dollars"), ("¢", " dollars"), ("$", ""), ("dollar bill", "penny"), ("a dollar", "2 dollars"), ("more", "fewer"),
    ("first", "second"), ("%", ""), ("%", " cents"), ("tax", "sale"), ("sale", "tax"), ("next week", "last week"), ("off", "more"),
    ("last week", "next week"), (" up ", " down "), (" down ", " up "), ("less", "more"), ("higher", "lower"), ("lower", "higher"),
    (" of a dollar", ""), (" of a dollar", " of a group"), ("two items", "three items"), ("left", "in all"), ("costs more", "costs less"),
    ("spends", "has"), ("shared equally", "paid"), ("groups", "group"), ("dollar bills", "dollars"), (" and a ", " and another "),
    ("percent", "fraction"), ("in all", "each"), ("The group pays", "The group also pays 3 dollars and"),
)  # fmt: skip


def problems() -> list[Problem]:
    """Two of every wording of every model and grade."""
    ways: dict[tuple[str, int, str], list[Problem]] = defaultdict(list)
    for problem in build_bank(DESK, load("ccss"), (2, 3, 4, 5, 6, 7), seed=9, per_model=12, report=Report()):
        ways[problem.model, problem.grade, problem.frame].append(problem)
    return [problem for found in ways.values() for problem in found[:2]]


def faults(text: str) -> Iterator[tuple[str, str]]:
    names = [one.item for one in DESK.table.prices]
    for name in (name for name in names if name in text):
        for other in (one for one in names[:4] if one != name):
            yield "another item", text.replace(name, other)
            yield "another item in one place", text.replace(name, other, 1)
    for word, other in OTHER_WORDS:
        yield f"{other} for {word}", text.replace(word, other, 1)
    for number in re.finditer(r"\d+", text):
        yield "another number", f"{text[: number.start()]}{int(number[0]) + 1}{text[number.end() :]}"
    *facts, question = re.split(r"(?<=[.?]) ", text)
    for place in range(len(facts)):
        yield "a fact dropped", " ".join([*facts[:place], *facts[place + 1 :], question])


def test_every_planted_fault_is_caught() -> None:
    tried, slipped = Counter[str](), []
    for problem in problems():
        assert proved(problem)
        for kind, text in faults(problem.text):
            if text != problem.text:
                tried[kind] += 1
                if proved(DESK.judge.prove(problem._replace(facts="", question=text))):
                    slipped.append((kind, problem.text, text))
    assert len(tried) > 10
    assert sum(tried.values()) > 1000
    assert not slipped


def test_a_price_list_that_says_otherwise_is_caught_by_the_routes_that_look_at_it() -> None:
    """Each price a dollar and a cent more: the words then say what the list does not, and the relation has another solution."""
    dearer = replace(DESK.table, prices=tuple(replace(one, cents=one.cents + 101) for one in DESK.table.prices))
    judge = Judge(dearer, scenario())
    for problem in problems():
        verdicts = dict(judge.prove(problem).proof)
        assert "agrees" not in (verdicts["relation"], verdicts["reading"]), problem.text


def test_another_key_is_caught_by_every_route_that_finds_one() -> None:
    for problem in (one for one in problems() if one.answer.kind == "number"):
        wrong = problem._replace(answer=problem.answer._replace(exact=problem.answer.exact + Integer(1)))
        verdicts = dict(DESK.judge.prove(wrong).proof)
        assert "agrees" not in (verdicts["steps"], verdicts["relation"], verdicts["reading"]), problem.text


def test_an_item_that_is_listed_twice_has_no_price() -> None:
    twice = replace(DESK.table, prices=(*DESK.table.prices, DESK.table.prices[0]))
    [price] = [one for one in DESK.view.prices("cents") if one.item == twice.prices[0].item]
    assert RawRows(DESK.table).price(price) == 8
    assert RawRows(twice).price(price) is None
