"""Lines about a letter: equations in x, and an expression told in words. A number is put in for it: 6(14 + x) with 2 for x is 96."""

from __future__ import annotations

import re
from collections.abc import Sequence

from mathgen.proof.step_numbers import NotTrue, Pair, compared, lowest, number

_TOKEN = re.compile(r"\s*(\d+/\d+|\d+\.\d+(?:\.\.\.)?|\d+|[x()+*-])")
_SIGNS = re.compile(r" (<=|>=|[<>=]) ")
LETTERS = ((3, 1), (50, 1))  # tried for the letter of an expression


def speaks_of_x(line: str) -> bool:
    """Whether a line is about x."""
    return re.search(r"(?<![a-z])x(?![a-z])", line) is not None


def sides_of(line: str) -> tuple[str, str, str]:
    """The left side of an equation or inequality, its sign and its right side.

    Raises:
        NotTrue: it is none.
    """
    left, *others = _SIGNS.split(line)
    if len(others) != 2:
        raise NotTrue(f"{line!r} is no equation")
    sign, right = others
    return left, sign, right


def check_tells_x(line: str, x: Pair) -> None:
    """
    Raises:
        NotTrue: a line is not true for the number that x is, or is true for the next one too.
    """
    left, sign, right = sides_of(line)
    step = -1 if sign in (">", ">=") else 1
    beyond = (x[0] + step * x[1], x[1])
    if not _holds(value_at(left, x), sign, value_at(right, x)):
        raise NotTrue(f"{line!r} is not true")
    if _holds(value_at(left, beyond), sign, value_at(right, beyond)):
        raise NotTrue(f"{line!r} does not tell what x is")
    edge = beyond if sign in "<>" else x
    if value_at(left, edge) != value_at(right, edge):
        raise NotTrue(f"{line!r} has its bound elsewhere")


def _holds(one: Pair, sign: str, other: Pair) -> bool:
    return compared(one, other) in sign


def check_expression(board: Sequence[str], shown: str, sides: Sequence[Pair]) -> None:
    """3 plus 10 first, then times 5: (3 + 10) × 5.

    Args:
        board: its lines.
        shown: the answer as the key has it.
        sides: what the expression comes to with each of ``LETTERS`` for its letter.
    Raises:
        NotTrue: the words say another expression.
    """
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


def value_at(side: str, x: Pair) -> Pair:
    """The value of a side.

    Raises:
        NotTrue: it cannot be read.
    """
    tokens: list[str] = []
    place = 0
    while place < len(side):
        found = _TOKEN.match(side, place)
        if found is None:
            raise NotTrue(f"{side!r} cannot be read")
        tokens.append(found[1])
        place = found.end()
    value, rest = _sum(tokens, x)
    if rest:
        raise NotTrue(f"{side!r} goes on after its end")
    return value


def _sum(tokens: list[str], x: Pair) -> tuple[Pair, list[str]]:
    negative = tokens[:1] == ["-"]
    (top, bottom), tokens = _product(tokens[negative:], x)
    top = -top if negative else top
    while tokens and tokens[0] in "+-":
        (a, b), after = _product(tokens[1:], x)
        top, bottom = top * b + (a if tokens[0] == "+" else -a) * bottom, bottom * b
        tokens = after
    return lowest(top, bottom), tokens


def _product(tokens: list[str], x: Pair) -> tuple[Pair, list[str]]:
    (top, bottom), tokens = _factor(tokens, x)
    while tokens and tokens[0] not in ("+", "-", ")"):
        (a, b), tokens = _factor(tokens[1:] if tokens[0] == "*" else tokens, x)
        top, bottom = top * a, bottom * b
    return (top, bottom), tokens


def _factor(tokens: list[str], x: Pair) -> tuple[Pair, list[str]]:
    if not tokens:
        raise NotTrue("a side stops short")
    first, *after = tokens
    if first == "x":
        return x, after
    if first == "(":
        inside, after = _sum(after, x)
        if after[:1] != [")"]:
            raise NotTrue("a bracket stays open")
        return inside, after[1:]
    return number(first), after
