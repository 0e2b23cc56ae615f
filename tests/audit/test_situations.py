"""Each kind of story we claim has the equation that the published tables of situations give it.

Source: Common Core State Standards for Mathematics, glossary, Tables 1 and 2 (add and subtract; multiply and divide); in the
line of Riley, Greeno & Heller 1983 and of Carpenter et al. The types' names are the standards' own.
"""

from __future__ import annotations

import re
from typing import NamedTuple

import pytest

from mathgen.problems.record import Problem
from tests.audit.banks import NAMES, sample, sample_problems, words
from tests.audit.results import Results
from tests.audit.wording import Texts, sentences

NUMBER = r"(\d+)"
SUM = r"(\d+(?: \+ \d+)+)"


class Situation(NamedTuple):
    """A row of the published tables: its equation with the unknown in its place, and what a pupil does to solve it."""

    name: str
    equation: str
    solved: str


SITUATIONS = {
    "put_together_total": Situation("Put together, total unknown: 2 + 5 = ?", rf"{SUM} = x", "{0}"),
    "take_apart": Situation("Take apart, addend unknown: 3 + ? = 5", rf"(\d+(?: \+ \d+)*) \+ x = {NUMBER}", "{1} - ({0})"),
    "compare_bigger_unknown": Situation("Compare, bigger unknown: 2 + 3 = ?", rf"x = {NUMBER} \+ {NUMBER}", "{0} + {1}"),
    "compare_smaller_unknown": Situation("Compare, smaller unknown: ? + 5 = 8", rf"{NUMBER} = x \+ {NUMBER}", "{0} - {1}"),
    "how_many_more": Situation("Compare, difference unknown: 3 + ? = 8", rf"{NUMBER} \+ x = {NUMBER}", "{1} - {0}"),
    "two_step_left_standing": Situation(
        "Take from, result unknown, after put together: 12 - (2 + 2 + 5) = ?", rf"{SUM} \+ x = {NUMBER}", "{1} - ({0})"
    ),
    "left_standing_over_trials": Situation(
        "Equal groups, product unknown, then take from: 2 x 12 - 17 = ?", rf"{NUMBER} \+ x = (\d+\*\d+)", "{1} - {0}"
    ),
    "times_as_many": Situation("Compare, unknown product: 3 x 6 = ?", rf"x = {NUMBER}\*{NUMBER}", "{0} * {1}"),
    "how_many_times": Situation("Compare, number of groups unknown: ? x 6 = 18", rf"{NUMBER}\*x = {NUMBER}", "{1} // {0}"),
}


def told(model: str) -> list[tuple[str, Problem]]:
    return [(name, problem) for name in NAMES for problem in sample_problems(name) if problem.model == model]


@pytest.mark.parametrize("model", SITUATIONS)
def test_a_story_has_the_equation_of_its_situation(model: str) -> None:
    situation = SITUATIONS[model]
    found = told(model)
    assert found, situation.name
    for _, problem in found:
        equation = re.fullmatch(situation.equation, problem.relation)
        assert equation is not None, (situation.name, problem.relation, problem.text)
        # The pattern lets nothing but whole numbers and + * through, so that this is arithmetic and no more.
        by_hand = eval(situation.solved.format(*equation.groups()))
        assert str(by_hand) == problem.answer.shown, problem.text


def compared(problem: Problem, texts: Texts) -> tuple[str, str, str] | None:
    """Who has more or fewer than whom, as the comparing sentence says it; None where it compares colors or trials."""
    for sentence in sentences(problem.text)[:-1]:
        word = re.search(r"\b(more|fewer|times as many)\b", sentence)
        groups = texts.named(sentence).groups
        if word and len(groups) == 2 and " than " in sentence + " than ":
            return groups[0], word[1], groups[1]
    return None


@pytest.mark.parametrize("model", ["compare_smaller_unknown", "compare_bigger_unknown", "times_as_many"])
def test_the_comparing_sentence_puts_the_unknown_where_its_type_has_it(model: str) -> None:
    """Compare, smaller unknown: "A fewer than B" asks for A, "A more than B" asks for B; bigger unknown the other way round.

    Times as many, unknown product: asks for A.
    """
    seen = set()
    for name, problem in told(model):
        texts = Texts(Results.of(sample(name).rows), words(name))
        said = compared(problem, texts)
        asked = texts.named(problem.question).groups
        if said is None or len(asked) != 1:
            continue
        first, word, second = said
        seen.add(word)
        asks_second = word == ("fewer" if model == "compare_bigger_unknown" else "more")
        assert asked[0] == (second if asks_second else first), problem.text
    assert seen == ({"times as many"} if model == "times_as_many" else {"more", "fewer"})


def test_how_many_more_asks_it_of_the_one_that_has_more() -> None:
    """Compare, difference unknown, "more" and "fewer": "How many more did A ... than B" is true of the counts."""
    seen = set()
    for name, problem in told("how_many_more"):
        texts = Texts(Results.of(sample(name).rows), words(name))
        groups = texts.named(problem.question).groups
        word = re.search(r"\b(more|fewer)\b", problem.question)
        counts = {given.scope.groups[0]: int(given.value) for given in problem.givens if given.scope is not None and given.scope.groups}
        if len(groups) != 2 or word is None or len(counts) != 2:
            continue
        seen.add(word[1])
        assert (counts[groups[0]] > counts[groups[1]]) == (word[1] == "more"), problem.text
    assert seen == {"more", "fewer"}
