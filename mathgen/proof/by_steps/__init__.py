"""Route 1: the printed steps, read from their text and checked in pairs of whole numbers.

Each step has to be a true equality; every number it works with has to be a printed or counted given, an earlier result, or
one whole; no step may be idle; and the last one has to end in the answer, in the form that the words demand. Givens that
stand in the words are looked for in the words.

- ``equalities``: each step by itself, and whether one leads to the other;
- ``given_numbers``: what the givens make of an expression;
- ``operations``: how many operations the words leave to the pupil;
- ``work``: the steps of one problem, beside what they are checked against;
- ``one_number``, ``comparisons``, ``groups``, ``ways``: where the steps of each kind of goal have to lead;
- ``for_board``: what the board of the key has to work with.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from mathgen.asks.expression import Changes, Choice, Chosen, Listing, QuotientRemainder, Ratio, Same, Truth, Value
from mathgen.problems.record import Problem
from mathgen.proof.by_board import check_board
from mathgen.proof.by_steps import comparisons, for_board, groups, one_number, ways
from mathgen.proof.by_steps.given_numbers import GivenNumbers
from mathgen.proof.by_steps.work import Work, work_of
from mathgen.proof.step_numbers import NotTrue
from mathgen.proof.verdict import AGREES

_MIXED = re.compile(r"\d+ \d+/\d+")
# A digit, or a minus sign that stands behind no word, number or bracket, and what goes on from there.
_PRINTED = re.compile(r"[-\d](?:(?<=\d)|(?<![\w)]-)(?=\d))\d*(?:/\d+|\.\d+(?:\.\.\.)?)?%?")
_CHECKS: dict[type, Callable[[Work, Any], None]] = {
    Same: comparisons.check_expression,
    Choice: comparisons.check_winner,
    Truth: comparisons.check_statement,
    QuotientRemainder: groups.check_groups,
    Listing: ways.check_list,
    Changes: ways.check_changes,
    Chosen: ways.check_chosen,
    Value: one_number.check_value,
    Ratio: one_number.check_end,
}


def verdict(problem: Problem) -> str:
    """``agrees``, or what is wrong."""
    try:
        _check_words(problem)
        goal, given = problem.ask.goal, GivenNumbers(problem)
        _CHECKS[type(goal)](work_of(problem, given), goal)
        check_board(problem, for_board.known(problem, given), for_board.sides(goal, given), for_board.lists(goal, given))
    except NotTrue as err:
        return str(err)
    return AGREES


def _check_words(problem: Problem) -> None:
    told = [given.number for given in problem.givens if given.where == "words"]
    if told:
        in_words = {*_PRINTED.findall(problem.text), *_MIXED.findall(problem.text)}
        for one in told:
            if one not in in_words:
                raise NotTrue(f"{one} does not stand in the words")
