"""How a board ends in a number: the key's as it is written there, rounded where it is to be, with no operation left out."""

from __future__ import annotations

import re

from mathgen.problems.record import Problem
from mathgen.proof.by_board.in_x import speaks_of_x
from mathgen.proof.by_board.line_numbers import NUMBER, is_cut
from mathgen.proof.by_board.line_reader import BOUND, COUNT, LineReader
from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number

_BETWEEN = re.compile(rf"{NUMBER} is between {NUMBER} and {NUMBER}")
_NEARER = re.compile(rf"{NUMBER} is nearer to {NUMBER}")
_HALFWAY = re.compile(rf"{NUMBER} is halfway between {NUMBER} and {NUMBER}")
_UP = re.compile(rf"halfway: round up to {NUMBER}")
_STAYS = re.compile(rf"{NUMBER} stays {NUMBER}")


def check_end(problem: Problem, reader: LineReader, exact: Pair) -> None:
    """The last line ends in the number of the key, written as it is there."""
    answer = problem.answer
    if answer.kind == "quotient_remainder":
        return  # the equalities are those of the steps, which tell how many are full and what is over
    if isinstance(answer.exact, str):
        raise NotTrue(f"the board of a {answer.kind} was not read")
    if reader.end != exact:
        raise NotTrue("the board does not end in the answer")
    if reader.text != answer.shown:
        raise NotTrue(f"the board ends in {reader.text}, the key in {answer.shown}")


def check_nothing_left_out(problem: Problem) -> None:
    """Each operation of the steps stands on the board; a part of a set is told there in words, and a loss the other way round."""
    last = problem.board[-1]
    if problem.ask.given and any(map(speaks_of_x, problem.board)) and not (last.startswith("x = ") or BOUND.fullmatch(last)):
        raise NotTrue("the board does not say what x is")
    loss = any(step.text.startswith("-(") for step in problem.steps)
    begun = {line.replace("(-", "-").replace(")", "").partition(" = ")[0] for line in problem.board}
    counts = any(map(COUNT.fullmatch, problem.board))
    repeating = any(line.startswith("x = ") and line.endswith("...") for line in problem.board)
    for step in problem.steps:
        left, _, right = step.text.partition(" = ")
        if repeating or (counts and {*left.split(" + ")} == {"1"}):
            continue
        if not re.search(" [+*/] " if loss else " [-+*/] ", left):
            continue
        if left not in begun and left.replace(" / ", "/") != right:
            raise NotTrue(f"{step.text!r} is left out on the board")


def check_rounding(problem: Problem, reader: LineReader, exact: Pair) -> None:
    """The last lines name the two numbers that it is rounded to at most, and the one that the key has."""
    answer, board = problem.answer, problem.board
    stays = _STAYS.fullmatch(board[-1])
    if not stays and len(board) < 2:
        raise NotTrue("the board does not say what is rounded to what")
    for line in board[: -1 if stays else -2]:
        reader.read(line)
    places = answer.demand.places or 0
    scale_top, scale_bottom = (10**places, 1) if places >= 0 else (1, 10**-places)
    if answer.demand.form == "percent":
        scale_top *= 100
    ends: tuple[str, str] | None
    steps, rest = divmod(exact[0] * scale_top, exact[1] * scale_bottom)
    low, high = (lowest(one * scale_bottom, scale_top) for one in (steps, steps + 1))
    twice, whole = 2 * rest, exact[1] * scale_bottom
    if stays:
        told, ends, nearer = stays[1], None, stays[2]
        wanted = low if rest == 0 else None
    elif (between := _BETWEEN.fullmatch(board[-2])) and (near := _NEARER.fullmatch(board[-1])) and near[1] == between[1]:
        told, ends, nearer = between[1], (between[2], between[3]), near[2]
        wanted = None if rest == 0 or twice == whole else low if twice < whole else high
    elif (between := _HALFWAY.fullmatch(board[-2])) and (near := _UP.fullmatch(board[-1])):
        told, ends, nearer = between[1], (between[2], between[3]), near[1]
        wanted = high if twice == whole else None
    else:
        raise NotTrue("the board does not say what is rounded to what")
    if ends is not None and (number(ends[0]), number(ends[1])) != (low, high):
        raise NotTrue(f"{board[-2]!r} is not true")
    if wanted is None or number(nearer) != wanted or nearer != answer.shown:
        raise NotTrue(f"{board[-1]!r} is not the rounding")
    if "..." in told:
        if not is_cut(told, exact) or told != reader.text:
            raise NotTrue(f"{told} is not what is rounded")
    elif number(told) != exact:
        raise NotTrue(f"{told} is not what is rounded")
    elif reader.end is not None and told != reader.text:
        raise NotTrue(f"{told} is not how the board came by it")
