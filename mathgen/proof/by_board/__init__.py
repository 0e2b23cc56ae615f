"""The lines of the board, read from their text: what they state is true, made from what is known, and ends in the key.

The equalities that the board is made from are checked by ``by_steps``. Here each printed line is read again, those in words too.

- ``line_numbers``: what stands in a line, as pairs of whole numbers;
- ``line_reader``: what each kind of line states;
- ``in_x``: one side of an equation in x, with a number for x;
- ``lists_shown``: the lists that a board has to put in order, to measure and to count in;
- ``last_lines``: ending in the number of the key, and rounding to it;
- ``verdicts``, ``point_order``: ending in a comparison, and what follows from it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from mathgen.asks.expression import Changes, Choice, Chosen, Listing, Same, Truth
from mathgen.problems.record import Problem
from mathgen.proof.by_board.in_x import check_expression
from mathgen.proof.by_board.last_lines import check_end, check_nothing_left_out, check_rounding
from mathgen.proof.by_board.line_reader import LineReader
from mathgen.proof.by_board.lists_shown import Lists
from mathgen.proof.by_board.verdicts import check_verdict
from mathgen.proof.step_numbers import NotTrue, Pair


def check_board(problem: Problem, known: Iterable[Pair], sides: Sequence[Pair], lists: Lists) -> None:
    """
    Args:
        problem: with its board.
        known: numbers that the pupil has, and those that the equalities lead to on the way.
        sides: what a choice or a statement compares; what an expression is with each of ``in_x.LETTERS`` for its letter.
        lists: of the statistics.
    Raises:
        NotTrue: a line states what is not so, works with a number from nowhere, or the board ends elsewhere than the key.
    """
    goal, board = problem.ask.goal, problem.board
    if not board:
        raise NotTrue("nothing stands on the board")
    if isinstance(goal, Same):
        check_expression(board, problem.answer.shown, sides)
        return
    if isinstance(goal, Listing | Changes | Chosen):
        if board != tuple(step.text for step in problem.steps):
            raise NotTrue("the board has other lines than the steps")
        return
    exact = problem.answer.exact
    x = (0, 1) if isinstance(exact, str) else (int(exact.numerator), int(exact.denominator))
    reader = LineReader(set(known), x)
    if isinstance(goal, Choice | Truth):
        check_verdict(problem, goal, reader, sides)
    elif problem.answer.demand.places is not None and not isinstance(exact, str):
        check_rounding(problem, reader, x)
    else:
        for line in board:
            reader.read(line)
        check_end(problem, reader, x)
        check_nothing_left_out(problem)
    if reader.ordered != list(lists.rising):
        raise NotTrue("a list is not put in order on the board")
    if reader.apart != list(lists.distances):
        raise NotTrue("the distances from a mean are not listed on the board")
    if reader.counted != list(lists.counted):
        raise NotTrue("the board does not count what is meant")
