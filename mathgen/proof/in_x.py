"""One side of an equation in x, worked out with a number for x: 6(14 + x) with 2 for x is 96."""

from __future__ import annotations

import re

from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number

_TOKEN = re.compile(r"\s*(\d+/\d+|\d+\.\d+(?:\.\.\.)?|\d+|[x()+*-])")
SIGNS = re.compile(r" (<=|>=|[<>=]) ")


def speaks_of_x(line: str) -> bool:
    """Whether a line is about x."""
    return re.search(r"(?<![a-z])x(?![a-z])", line) is not None


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
