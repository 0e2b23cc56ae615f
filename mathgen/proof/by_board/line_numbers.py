"""What stands in a line of the board, as pairs of whole numbers: lists, sides of an equality, decimals that are cut off."""

from __future__ import annotations

import re

from mathgen.proof.step_numbers import NotTrue, Pair, in_turn, number

NUMBER = r"(-?\d+(?: \d+/\d+|/\d+|\.\d+(?:\.\.\.)?)?%?)"
LIST = rf"({NUMBER}(?:, {NUMBER})*)"
_CUT = re.compile(r"(\d+)\.(\d+)\.\.\.(%?)")
_SIGN = re.compile(r" ([-+*/]) ")


def numbers_in(text: str) -> tuple[Pair, ...]:
    """The numbers of a list: ``6, 8, 9``."""
    return tuple(map(number, text.split(", ")))


def side_of(text: str) -> tuple[Pair, list[Pair]]:
    """The value of one side of an equality, and the numbers in it."""
    if text[:1] == "|" and text[-1:] == "|":
        top, bottom = number(text[1:-1])
        return (abs(top), bottom), [(top, bottom)]
    pieces = _SIGN.split(text)
    numbers = [number(one[1:-1] if one[:2] == "(-" else one) for one in pieces[::2]]
    if len(set(pieces[1::2])) > 1:
        raise NotTrue(f"{text!r} mixes operations")
    return (in_turn(pieces[1], numbers) if len(pieces) > 1 else numbers[0]), numbers


def is_cut(text: str, value: Pair) -> bool:
    """Whether the digits are those that the decimal of a value begins with."""
    found = _CUT.fullmatch(text)
    if found is None:
        return False
    scale = 10 ** len(found[2]) * (100 if found[3] else 1)
    digits, rest = divmod(scale * value[0], value[1])
    return bool(int(found[1] + found[2]) == digits and rest > 0)
