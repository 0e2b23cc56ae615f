"""Steps of sums and differences: what is added is first put over one bottom number, or told with as many places."""

from __future__ import annotations

from math import lcm

from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.written_number import Number, lowest, over, side_by_side, terminating


def sum_or_difference(lines: Lines, symbol: str, numbers: list[Number]) -> Number:
    """All of the numbers added, or the others taken from the first: ``12/12 - 9/12 = 3/12``."""
    numbers = _alike(lines, numbers)
    tops, bottom = [one.top for one in numbers], numbers[0].bottom
    top = sum(tops) if symbol == "+" else tops[0] - sum(tops[1:])
    decimal = lines.decimal(top, bottom) if any("." in one.text for one in numbers) else None
    result = over(top, bottom) if decimal is None else Number(top, bottom, decimal)
    left = f" {symbol} ".join(one.text for one in numbers)
    first, *rest = (one.text for one in numbers)
    told = f" {symbol} ".join([first, *(f"({one})" if one[0] == "-" else one for one in rest)])
    lines.line(left, result.text, *([f"{told} = {result.text}"] if told != left else []))
    return result


def _alike(lines: Lines, numbers: list[Number]) -> list[Number]:
    """Numbers over one bottom, ready to be added: 1/4 becomes 3/12, and beside a decimal 0.25; 1 is taken as 12/12."""
    bottom = lcm(*(one.bottom for one in numbers))
    decimals = any("." in one.text for one in numbers)
    mixed_numbers = any(" " in one.text for one in numbers)  # 7 - 2 1/4: 7 is told as 28/4 as well
    alike = []
    for one in numbers:
        same = over(one.top * (bottom // one.bottom), bottom)
        decimal = lines.decimal(one.top, one.bottom) if decimals else None
        if decimal is not None:
            same = same._replace(text=decimal)
        if same.text != one.text and (mixed_numbers or (one.bottom > 1 and (decimals or one.bottom != bottom))):
            lines.line(one.text, same.text)
        elif same.text != one.text and (text := f"{one.text} = {same.text}") not in lines.board:
            lines.tell(text)
        alike.append(same)
    return alike


def apart(lines: Lines, greater: Number, less: Number) -> Number:
    """How far two numbers are apart, as a decimal where that ends: ``8.5 - 6 = 2.5``."""
    top, bottom = greater.top * less.bottom - less.top * greater.bottom, greater.bottom * less.bottom
    decimal = terminating(top, bottom)
    top, bottom = lowest(top, bottom)
    text = decimal if decimal is not None else over(top, bottom).text
    lines.line(f"{greater.text} - {less.text}", text)
    return Number(top, bottom, text)


def same_bottoms(lines: Lines, numbers: list[Number]) -> list[Number]:
    """Rewrites fractions to one bottom number, so that tops can be compared; decimals to as many places."""
    alike = side_by_side(numbers)
    for one, same in zip(numbers, alike, strict=True):
        lines.line(one.text, same.text)
    return alike
