"""Boards that end in a comparison, and in what follows from it: 17 < 27, so Owls."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from mathgen.asks.expression import ASSOCIATIONS, NOTHING, OF_TWO, Choice, Op, Stat, Truth
from mathgen.problems.record import Problem
from mathgen.proof.by_board.line_numbers import numbers_in
from mathgen.proof.by_board.line_reader import SO, LineReader
from mathgen.proof.by_board.point_order import check_point_order, tells_points
from mathgen.proof.step_numbers import NotTrue, Pair, compared, in_turn, number

_ALONG = re.compile(r"y for the (narrowest|widest) spaces: (.+)")


def check_verdict(problem: Problem, goal: Choice | Truth, reader: LineReader, sides: Sequence[Pair]) -> None:
    """The last line compares, and says what follows."""
    answer, board = problem.answer, problem.board
    told, so, verdict = board[-1].partition(SO)
    wanted = answer.shown if isinstance(goal, Choice) else "yes" if answer.exact == "true" else "no"
    if not so or verdict != wanted:
        raise NotTrue(f"the board says {verdict!r}, the key {wanted!r}")
    if told in ("the answers vary", "there is only one answer"):
        one_answer = sides[0] == (0, 1)
        if not isinstance(goal, Truth) or goal.right != NOTHING or not isinstance(goal.left, Stat) or len(board) > 1:
            raise NotTrue(f"nobody asks whether {told}")
        if one_answer != told.startswith("there") or one_answer != (answer.exact == "false"):
            raise NotTrue(f"{told!r} is not so")
        return
    if isinstance(goal, Choice) and goal.labels == OF_TWO:
        varying = [label for label, side in zip(goal.labels, sides, strict=True) if side != (0, 1)]
        if [told] != [f"the answers to the {label} question vary" for label in varying] or varying != [wanted] or len(board) > 1:
            raise NotTrue(f"{told!r} is not so")
        return
    if isinstance(goal, Choice) and goal.labels == ASSOCIATIONS:
        _check_association(board, told, reader, sides)
        return
    if isinstance(goal, Choice) and tells_points(board):
        reader.need(*check_point_order(board, told, goal, str(answer.exact), sides))
        return
    if len(sides) == 2 and isinstance(goal.exprs[0], Op) and goal.exprs[0].symbol == "*" and goal.exprs[0].args[1:] == goal.exprs[1:]:
        _check_scaling(board, told, reader, sides)
        return
    steps = {step.text for step in problem.steps}
    for line in board[:-1]:
        reader.read(line)
        rewritten = answer.kind == "rubric" and re.fullmatch(r"\d+(?:/\d+|%) = \d+/\d+", line)
        if (rewritten or re.fullmatch(r"\d+(?: [-+/] \d+)+ = [\d.]+", line)) and line not in steps:
            raise NotTrue(f"{line!r} is not among the steps")
    if isinstance(goal, Truth) and goal.divides:
        _check_sharing(told, sides)
        return
    pieces = told.split(" ")
    numbers, signs = [number(one) for one in pieces[::2]], pieces[1::2]
    reader.need(*numbers)
    if len(numbers) < 2 or any(compared(one, other) != sign for (one, other), sign in zip(pairwise(numbers), signs, strict=True)):
        raise NotTrue(f"{told!r} is not true")
    if isinstance(goal, Truth):
        if tuple(numbers) != tuple(sides):
            raise NotTrue(f"{told!r} compares something else")
        return
    if sorted(numbers) != sorted(sides) or sides[goal.labels.index(str(answer.exact))] != numbers[0]:
        raise NotTrue(f"{told!r} compares something else")
    if set(signs) - {"=", ">" if goal.most else "<"} or signs[0] == "=":
        raise NotTrue(f"{told!r} does not put the greatest first")


def _check_association(board: Sequence[str], told: str, reader: LineReader, sides: Sequence[Pair]) -> None:
    """As many points on the left as on the right, with the sums that the choice compares; the one in words is the greater one."""
    found = [_ALONG.fullmatch(line) for line in board[:-1]]
    listed = {one[1]: numbers_in(one[2]) for one in found if one is not None}
    if None in found or list(listed) != ["narrowest", "widest"] or len(listed["narrowest"]) != len(listed["widest"]):
        raise NotTrue(f"{' | '.join(board)} does not show which way the points go")
    for numbers, side in zip((listed["widest"], listed["narrowest"]), sides, strict=True):
        reader.need(*numbers)
        if in_turn("+", list(numbers)) != side:
            raise NotTrue(f"{numbers} are not the points on this side")
    wide, near = sides
    if told != f"y is {'greater' if compared(wide, near) == '>' else 'less'} for wider spaces":
        raise NotTrue(f"{told!r} is not so")


def _check_scaling(board: Sequence[str], told: str, reader: LineReader, sides: Sequence[Pair]) -> None:
    """4/3 > 1, so the product with a number is more than the number."""
    product, factor = sides
    first, _, after = board[0].rpartition(" ")
    rate, _, sign = first.rpartition(" ")
    by, signs, than = told.rpartition(f" {sign} ")
    fraction, _, times = by.partition(" * ")
    if len(board) != 2 or after != "1" or fraction != rate or not signs or times != than:
        raise NotTrue(f"{' | '.join(board)} does not hold a fraction against 1")
    reader.need(number(rate), number(than))
    if number(than) != factor or in_turn("*", [number(rate), factor]) != product or sign != compared(number(rate), (1, 1)):
        raise NotTrue(f"{told!r} is not true")


def _check_sharing(told: str, sides: Sequence[Pair]) -> None:
    (amount, _), (size, _) = sides
    over = amount % size
    ways = {f"{amount} is {'odd' if over else 'even'}"} if size == 2 else set()
    ways.add(f"{over} {'is' if over == 1 else 'are'} left over" if over else "nothing is left over")
    if told not in ways:
        raise NotTrue(f"{told!r} is not so")
