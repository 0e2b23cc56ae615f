"""The lines of the board, read from their text: what they state is true, made from what is known, and ends in the key.

The equalities that the board is made from are checked by ``by_steps``. Here each printed line is read again, those in words too.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import NamedTuple

from mathgen.asks.expression import ASSOCIATIONS, NOTHING, OF_TWO, Changes, Choice, Chosen, Listing, Op, Same, Stat, Truth
from mathgen.problems.record import Problem
from mathgen.proof.by_point_order import check_point_order, tells_points
from mathgen.proof.in_x import SIGNS, speaks_of_x, value_at
from mathgen.proof.lists import distances, statistic
from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number

_N = r"(-?\d+(?: \d+/\d+|/\d+|\.\d+(?:\.\.\.)?)?%?)"
_LIST = rf"({_N}(?:, {_N})*)"
_ORDER = re.compile(rf"in order: {_LIST}")
_ALONG = re.compile(r"y for the (narrowest|widest) spaces: (.+)")
_HALF = re.compile(rf"(upper|lower) half: {_LIST}")
_MIDDLE = re.compile(rf"the middle number is {_N}")
_DISTANCES = re.compile(rf"distances from {_N}: {_LIST}")
_COUNT = re.compile(rf"count {_LIST}: \d+")
_PART = re.compile(r"(\d+) (?:of (\d+) equal parts|out of (\d+)): ((\d+)/(\d+))")
_RATIO = re.compile(r"(\d+) to (\d+): ((\d+):(\d+))")
_OPPOSITE = re.compile(rf"the opposite of {_N} is {_N}")
_LESS = re.compile(rf"{_N} is {_N} less than {_N}, so {_N}")
_BETWEEN = re.compile(rf"{_N} is between {_N} and {_N}")
_NEARER = re.compile(rf"{_N} is nearer to {_N}")
_HALFWAY = re.compile(rf"{_N} is halfway between {_N} and {_N}")
_UP = re.compile(rf"halfway: round up to {_N}")
_STAYS = re.compile(rf"{_N} stays {_N}")
_CUT = re.compile(r"(\d+)\.(\d+)\.\.\.(%?)")
_SIGN = re.compile(r" ([-+*/]) ")
_BOUND = re.compile(r"the (least|greatest) number is (\d+)")
_SO = ", so "
LETTERS = ((3, 1), (50, 1))  # tried for the letter of an expression


class Lists(NamedTuple):
    """The lists that a goal has statistics of: those to be put in order, and the distances of each number from a mean."""

    rising: tuple[tuple[Pair, ...], ...]
    distances: tuple[tuple[Pair, ...], ...]  # the mean first
    counted: tuple[tuple[Pair, ...], ...]  # the numbers that a tally means, where they are more than one


def check_board(problem: Problem, known: Iterable[Pair], sides: Sequence[Pair], lists: Lists) -> None:
    """
    Args:
        problem: with its board.
        known: numbers that the pupil has, and those that the equalities lead to on the way.
        sides: what a choice or a statement compares; what an expression is with each of ``LETTERS`` for its letter.
        lists: of the statistics.
    Raises:
        NotTrue: a line states what is not so, works with a number from nowhere, or the board ends elsewhere than the key.
    """
    goal, board = problem.ask.goal, problem.board
    if not board:
        raise NotTrue("nothing stands on the board")
    if isinstance(goal, Same):
        _check_words(board, problem.answer.shown, sides)
        return
    if isinstance(goal, Listing | Changes | Chosen):
        if board != tuple(step.text for step in problem.steps):
            raise NotTrue("the board has other lines than the steps")
        return
    exact = problem.answer.exact
    x = (0, 1) if isinstance(exact, str) else (int(exact.numerator), int(exact.denominator))
    reader = _Reader(set(known), lists, x)
    if isinstance(goal, Choice | Truth):
        _check_verdict(problem, goal, reader, sides)
    elif problem.answer.demand.places is not None and not isinstance(problem.answer.exact, str):
        _check_rounding(problem, reader)
    else:
        for line in board:
            reader.read(line)
        _check_end(problem, reader)
        _check_whole(problem)
    if reader.ordered != list(lists.rising):
        raise NotTrue("a list is not put in order on the board")
    if reader.apart != list(lists.distances):
        raise NotTrue("the distances from a mean are not listed on the board")
    if reader.counted != list(lists.counted):
        raise NotTrue("the board does not count what is meant")


def _check_words(board: Sequence[str], shown: str, sides: Sequence[Pair]) -> None:
    """3 plus 10 first, then times 5: (3 + 10) × 5."""
    words, _, label = board[0].partition(": ")
    if len(board) != 1 or label != shown:
        raise NotTrue(f"{' | '.join(board)} does not lead to {shown}")
    sign, than, number_told = words.rpartition(" than ")
    if than and sign in ("more", "less"):
        words = f"n - {number_told}" if sign == "more" else f"{number_told} - n"
    added, first, times = words.partition(" first, then times ")
    words = f"({added}) times {times}" if first else words
    for name, symbol in ((", ", " "), ("plus", "+"), ("minus", "-"), ("times", "*"), ("n", "x")):
        words = words.replace(name, symbol)
    if [value_at(words, letter) for letter in LETTERS] != list(sides):
        raise NotTrue(f"{board[0]!r} says something else than the story")


def _check_whole(problem: Problem) -> None:
    """Each operation of the steps stands on the board; a part of a set is told there in words, and a loss the other way round."""
    last = problem.board[-1]
    if problem.ask.given and any(map(speaks_of_x, problem.board)) and not (last.startswith("x = ") or _BOUND.fullmatch(last)):
        raise NotTrue("the board does not say what x is")
    loss = any(step.text.startswith("-(") for step in problem.steps)
    begun = {line.replace("(-", "-").replace(")", "").partition(" = ")[0] for line in problem.board}
    counts = any(map(_COUNT.fullmatch, problem.board))
    repeating = any(line.startswith("x = ") and line.endswith("...") for line in problem.board)
    for step in problem.steps:
        left, _, right = step.text.partition(" = ")
        if repeating or (counts and {*left.split(" + ")} == {"1"}):
            continue
        if not re.search(" [+*/] " if loss else " [-+*/] ", left):
            continue
        if left not in begun and left.replace(" / ", "/") != right:
            raise NotTrue(f"{step.text!r} is left out on the board")


class _Reader:
    """Reads lines one after another; ``known`` grows, ``end`` is what the last line led to, ``text`` how it is written there."""

    def __init__(self, known: set[Pair], lists: Lists, x: Pair) -> None:
        self._x = x
        self.known = known | {(1, 1)}
        self.end: Pair | None = None
        self.text = ""
        self.ordered: list[tuple[Pair, ...]] = []
        self.apart: list[tuple[Pair, ...]] = []
        self.counted: list[tuple[Pair, ...]] = []
        self._listed: tuple[Pair, ...] = ()
        self._lists = lists

    def need(self, *numbers: Pair) -> None:
        for one in numbers:
            if one not in self.known:
                raise NotTrue(f"the board works with {one[0]}/{one[1]}, which nobody gave")

    def led_to(self, result: Pair, text: str) -> None:
        self.known.add(result)
        self.end, self.text = result, text

    def read(self, line: str) -> None:
        """One line that is no verdict and no rounding."""
        if found := _ORDER.fullmatch(line):
            self._listed = _numbers(found[1])
            if any(one[0] * other[1] > other[0] * one[1] for one, other in pairwise(self._listed)):
                raise NotTrue(f"{line!r} is not in order")
            self.ordered.append(self._listed)
        elif found := _HALF.fullmatch(line):
            whole, half = self.ordered[-1] if self.ordered else (), _numbers(found[2])
            size = len(whole) // 2
            if half != (whole[:size] if found[1] == "lower" else whole[len(whole) - size :]):
                raise NotTrue(f"{line!r} is no half of the list")
            self._listed = half
        elif found := _MIDDLE.fullmatch(line):
            middle = number(found[1])
            if len(self._listed) % 2 == 0 or self._listed[len(self._listed) // 2] != middle:
                raise NotTrue(f"{line!r} does not tell the middle of the list")
            self.led_to(middle, found[1])
        elif found := _DISTANCES.fullmatch(line):
            far = (number(found[1]), *_numbers(found[2]))
            self.need(*far)
            self.apart.append(far)
        elif found := _COUNT.fullmatch(line):
            counted, last = _numbers(found[1]), line.rpartition(": ")[2]
            if (len(counted), 1) != number(last):
                raise NotTrue(f"{line!r} counts wrong")
            self.counted.append(counted)
            self.led_to(number(last), last)
        elif found := _PART.fullmatch(line):
            if (found[1], found[2] or found[3]) != (found[5], found[6]):
                raise NotTrue(f"{line!r} is not true")
            self.need(number(found[5]), number(found[6]))
            self.led_to(number(found[4]), found[4])
        elif found := _RATIO.fullmatch(line):
            if (found[1], found[2]) != (found[4], found[5]):
                raise NotTrue(f"{line!r} is not true")
            self.need(number(found[1]), number(found[2]))
            self.led_to(number(f"{found[1]}/{found[2]}"), found[3])
        elif found := _OPPOSITE.fullmatch(line):
            top, bottom = number(found[1])
            self.need((top, bottom))
            if number(found[2]) != (-top, bottom):
                raise NotTrue(f"{line!r} is not true")
            self.led_to((-top, bottom), found[2])
        elif found := _LESS.fullmatch(line):
            less, apart, greater, result = map(number, found.groups())
            self.need(less, apart, greater)
            if _sum("-", [greater, less]) != apart or result != (-apart[0], apart[1]):
                raise NotTrue(f"{line!r} is not true")
            self.led_to(result, found[4])
        elif speaks_of_x(line):
            self._in_x(line)
        elif found := _BOUND.fullmatch(line):
            self._bound(found[1], found[2])
        elif _SO in line:
            self._halves(*line.split(_SO))
        else:
            self._equality(line)

    def _in_x(self, line: str) -> None:
        """True for the number that x is, and not for the next one."""
        left, *others = SIGNS.split(line)
        if len(others) != 2:
            raise NotTrue(f"{line!r} is no equation")
        sign, right = others
        if left == "x" and right.endswith("..."):
            self.need(number(right))
            self._x = number(right)
        step = -1 if sign in (">", ">=") else 1
        beyond = (self._x[0] + step * self._x[1], self._x[1])
        if not _holds(value_at(left, self._x), sign, value_at(right, self._x)):
            raise NotTrue(f"{line!r} is not true")
        if _holds(value_at(left, beyond), sign, value_at(right, beyond)):
            raise NotTrue(f"{line!r} does not tell what x is")
        edge = beyond if sign in "<>" else self._x
        if value_at(left, edge) != value_at(right, edge):
            raise NotTrue(f"{line!r} has its bound elsewhere")
        if left == "x" and sign == "=":
            self.led_to(self._x, right)

    def _bound(self, which: str, text: str) -> None:
        if number(text) != self._x:
            raise NotTrue(f"{text} is not the {which} number")
        self.led_to(self._x, text)

    def _halves(self, told: str, result: str) -> None:
        """6 + 6 = 12, so 6."""
        left, _, total = told.partition(" = ")
        if left != f"{result} + {result}" or _sum("+", [number(result)] * 2) != number(total):
            raise NotTrue(f"{told!r} does not lead to {result}")
        self.need(number(total))
        self.led_to(number(result), result)

    def _equality(self, line: str) -> None:
        first, *others = line.split(" = ")
        if not others:
            raise NotTrue(f"{line!r} is no equality")
        if first in others:
            raise NotTrue(f"{line!r} says nothing")
        value, numbers = _side(first)
        self.need(*numbers)
        turned = {(one[1], one[0]) for one in numbers if one[0] > 0} if " / " in first else set()
        for side in others:
            if "..." in side and "..." not in first:
                if not _is_cut(side, value):
                    raise NotTrue(f"{side} does not begin {first}")
                continue
            other, used = _side(side)
            if other != value:
                raise NotTrue(f"{line!r} is not true")
            if len(used) > 1:  # to divide by a fraction is to multiply by it turned over
                self.known |= turned
                self.need(*used)
        self.led_to(value, others[-1])


def _numbers(text: str) -> tuple[Pair, ...]:
    return tuple(map(number, text.split(", ")))


def _side(text: str) -> tuple[Pair, list[Pair]]:
    """The value of one side of an equality, and the numbers in it."""
    if text[:1] == "|" and text[-1:] == "|":
        top, bottom = number(text[1:-1])
        return (abs(top), bottom), [(top, bottom)]
    pieces = _SIGN.split(text)
    numbers = [number(one[1:-1] if one[:2] == "(-" else one) for one in pieces[::2]]
    if len(set(pieces[1::2])) > 1:
        raise NotTrue(f"{text!r} mixes operations")
    return (_sum(pieces[1], numbers) if len(pieces) > 1 else numbers[0]), numbers


def _sum(sign: str, numbers: list[Pair]) -> Pair:
    """What numbers come to by one sign, from left to right."""
    top, bottom = numbers[0]
    for a, b in numbers[1:]:
        if sign in "+-":
            top, bottom = top * b + (a if sign == "+" else -a) * bottom, bottom * b
        elif sign == "*":
            top, bottom = top * a, bottom * b
        elif a == 0:
            raise NotTrue("divides by zero")
        else:
            top, bottom = top * b, bottom * a
    return lowest(top, bottom)


def _is_cut(text: str, value: Pair) -> bool:
    """Whether the digits are those that the decimal of a value begins with."""
    found = _CUT.fullmatch(text)
    if found is None:
        return False
    scale = 10 ** len(found[2]) * (100 if found[3] else 1)
    digits, rest = divmod(scale * value[0], value[1])
    return bool(int(found[1] + found[2]) == digits and rest > 0)


def _check_end(problem: Problem, reader: _Reader) -> None:
    """The last line ends in the number of the key, written as it is there."""
    answer = problem.answer
    if answer.kind == "quotient_remainder":
        return  # the equalities are those of the steps, which tell how many are full and what is over
    if isinstance(answer.exact, str):
        raise NotTrue(f"the board of a {answer.kind} was not read")
    exact = (int(answer.exact.numerator), int(answer.exact.denominator))
    if reader.end != exact:
        raise NotTrue("the board does not end in the answer")
    if reader.text != answer.shown:
        raise NotTrue(f"the board ends in {reader.text}, the key in {answer.shown}")


def _check_rounding(problem: Problem, reader: _Reader) -> None:
    """The last lines name the two numbers that it is rounded to at most, and the one that the key has."""
    answer, board = problem.answer, problem.board
    assert not isinstance(answer.exact, str)
    exact = (int(answer.exact.numerator), int(answer.exact.denominator))
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
        if not _is_cut(told, exact) or told != reader.text:
            raise NotTrue(f"{told} is not what is rounded")
    elif number(told) != exact:
        raise NotTrue(f"{told} is not what is rounded")
    elif reader.end is not None and told != reader.text:
        raise NotTrue(f"{told} is not how the board came by it")


def _check_verdict(problem: Problem, goal: Choice | Truth, reader: _Reader, sides: Sequence[Pair]) -> None:
    """The last line compares, and says what follows."""
    answer, board = problem.answer, problem.board
    told, so, verdict = board[-1].partition(_SO)
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
    if len(numbers) < 2 or any(_compared(one, other) != sign for (one, other), sign in zip(pairwise(numbers), signs, strict=True)):
        raise NotTrue(f"{told!r} is not true")
    if isinstance(goal, Truth):
        if tuple(numbers) != tuple(sides):
            raise NotTrue(f"{told!r} compares something else")
        return
    if sorted(numbers) != sorted(sides) or sides[goal.labels.index(str(answer.exact))] != numbers[0]:
        raise NotTrue(f"{told!r} compares something else")
    if set(signs) - {"=", ">" if goal.most else "<"} or signs[0] == "=":
        raise NotTrue(f"{told!r} does not put the greatest first")


def _check_association(board: Sequence[str], told: str, reader: _Reader, sides: Sequence[Pair]) -> None:
    """As many points on the left as on the right, with the sums that the choice compares; the one in words is the greater one."""
    found = [_ALONG.fullmatch(line) for line in board[:-1]]
    listed = {one[1]: _numbers(one[2]) for one in found if one is not None}
    if None in found or list(listed) != ["narrowest", "widest"] or len(listed["narrowest"]) != len(listed["widest"]):
        raise NotTrue(f"{' | '.join(board)} does not show which way the points go")
    for numbers, side in zip((listed["widest"], listed["narrowest"]), sides, strict=True):
        reader.need(*numbers)
        if _sum("+", list(numbers)) != side:
            raise NotTrue(f"{numbers} are not the points on this side")
    wide, near = sides
    if told != f"y is {'greater' if _compared(wide, near) == '>' else 'less'} for wider spaces":
        raise NotTrue(f"{told!r} is not so")


def _check_scaling(board: Sequence[str], told: str, reader: _Reader, sides: Sequence[Pair]) -> None:
    """4/3 > 1, so the product with a number is more than the number."""
    product, factor = sides
    first, _, after = board[0].rpartition(" ")
    rate, _, sign = first.rpartition(" ")
    by, signs, than = told.rpartition(f" {sign} ")
    fraction, _, times = by.partition(" * ")
    if len(board) != 2 or after != "1" or fraction != rate or not signs or times != than:
        raise NotTrue(f"{' | '.join(board)} does not hold a fraction against 1")
    reader.need(number(rate), number(than))
    if number(than) != factor or _sum("*", [number(rate), factor]) != product or sign != _compared(number(rate), (1, 1)):
        raise NotTrue(f"{told!r} is not true")


def _check_sharing(told: str, sides: Sequence[Pair]) -> None:
    (amount, _), (size, _) = sides
    over = amount % size
    ways = {f"{amount} is {'odd' if over else 'even'}"} if size == 2 else set()
    ways.add(f"{over} {'is' if over == 1 else 'are'} left over" if over else "nothing is left over")
    if told not in ways:
        raise NotTrue(f"{told!r} is not so")


def _holds(one: Pair, sign: str, other: Pair) -> bool:
    return _compared(one, other) in sign


def _compared(one: Pair, other: Pair) -> str:
    apart = one[0] * other[1] - other[0] * one[1]
    return ">" if apart > 0 else "<" if apart < 0 else "="


def lists_of(statistics: Iterable[tuple[str, tuple[Pair, ...]]], counted: Iterable[tuple[Pair, ...]]) -> Lists:
    """What a board has to list of each statistic, its name first, and of what is counted."""
    rising, apart = [], []
    for name, numbers in statistics:
        if name == "mean absolute deviation":
            apart.append((lowest(*statistic("mean", numbers)), *distances(numbers)))
        elif name not in ("mean", "range"):
            rising.append(_rising(numbers))
    return Lists(tuple(rising), tuple(apart), tuple(one for one in counted if len(one) > 1))


def _rising(numbers: tuple[Pair, ...]) -> tuple[Pair, ...]:
    """The numbers in order: the least is taken out, again and again."""
    left, rising = list(numbers), []
    while left:
        least = next(one for one in left if all(_compared(one, other) != ">" for other in left))
        left.remove(least)
        rising.append(least)
    return tuple(rising)
