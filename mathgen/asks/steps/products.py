"""Steps of products and quotients: fractions, full groups and what is over, what two numbers share."""

from __future__ import annotations

from math import gcd, lcm

from mathgen.asks.expression import Want
from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.written_number import Number, lowest, mixed, over, through_mixed, whole

_QUOTIENTS = 5  # the grade in which a quotient is a fraction: 5.NF.B.3
_TOO_LONG = 1000  # 3120/12 is no help on the way


def product(lines: Lines, numbers: list[Number]) -> Number:
    """The numbers multiplied: ``4 * 21/8 = 10 1/2``."""
    top, bottom = 1, 1
    numbers = [_improper(lines, one) for one in numbers]
    for one in numbers:
        top, bottom = top * one.top, bottom * one.bottom
    left = " * ".join(one.text for one in numbers)
    if lines.money and any("." in one.text for one in numbers) and (decimal := lines.decimal(top, bottom)) is not None:
        lines.line(left, decimal)
        return Number(top, bottom, decimal)
    result = mixed(*lowest(top, bottom))
    lines.line(left, result.text, *_in_one_fraction(left, top, bottom))
    return result


def _in_one_fraction(left: str, top: int, bottom: int) -> list[str]:
    """A product over one bottom number first: 4 * 21/8 = 84/8, 84/8 = 10 4/8, 10 4/8 = 10 1/2."""
    helps = 0 < top < _TOO_LONG or bottom == 100
    return [f"{left} = {top}/{bottom}", *through_mixed(top, bottom)] if bottom > 1 and helps and "." not in left else []


def _improper(lines: Lines, number: Number) -> Number:
    """A mixed number as one fraction: 2 1/4 becomes 9/4."""
    if " " not in number.text:
        return number
    fraction = over(number.top, number.bottom)
    lines.line(number.text, fraction.text)
    return fraction


def quotient(lines: Lines, part: Number, by: Number, named: str = "") -> Number:
    """The first number divided by the second; ``named`` is how that is told where it is a fraction only put down."""
    if not by.top:  # no line: the proof finds that the working does not end in the answer
        return part
    if part.bottom > 1 or by.bottom > 1:
        if by.bottom > 1 and "." not in part.text + by.text:
            part, by = _improper(lines, part), _improper(lines, by)
        result = mixed(*lowest(part.top * by.bottom, part.bottom * by.top))
        left = f"{part.text} / {by.text}"
        lines.line(left, result.text, *_turned_over(left, part, by))
        return result
    whole_result = abs(part.top) >= by.top > 0 and part.top % by.top == 0
    result = whole(part.top // by.top) if whole_result else over(part.top, by.top)
    lines.line(f"{part.text} / {by.text}", result.text, *([named] if named else []))
    return result


def _turned_over(left: str, part: Number, by: Number) -> list[str]:
    """To divide by a fraction is to multiply by it turned over: 1/6 / 5/12 = 1/6 * 12/5."""
    if any("." in one.text or " " in one.text for one in (part, by)) or part.top <= 0 or by.top <= 0:
        return []
    top, bottom = part.top * by.bottom, part.bottom * by.top
    times = f"{part.text} * {over(by.bottom, by.top).text}"
    return [f"{left} = {times}", f"{times} = {over(top, bottom).text}", *(through_mixed(top, bottom) if bottom > 1 else [])]


def part_of_whole(lines: Lines, part: Number, of: Number) -> Number:
    """A part and its whole put down as a fraction. Dividing 5 by 8 is not known before grade 5."""
    if part.top >= of.top or (part.bottom, of.bottom) != (1, 1):
        return quotient(lines, part, of)
    among = f"of {of.text} equal parts" if lines.grade < _QUOTIENTS else f"out of {of.text}"
    return quotient(lines, part, of, f"{part.text} {among}: {part.text}/{of.text}")


def ratio(lines: Lines, first: Number, second: Number) -> None:
    """Puts down two numbers as a ratio. Nothing is divided: 18 to 6 stays 18/6."""
    if second.top:  # a ratio to nothing has no line: the proof finds that the working does not end
        told = f"{first.text} to {second.text}: {first.text}:{second.text}"
        lines.line(f"{first.text} / {second.text}", f"{first.text}/{second.text}", told)


def shared_factor(lines: Lines, one: Number, other: Number) -> Number:
    """The greatest factor that two whole numbers share: ``24 / 2 = 12``, ``36 / 3 = 12``."""
    shared = gcd(one.top, other.top)
    for number in (one, other):
        lines.line(f"{number.text} / {number.top // shared}", str(shared))
    return whole(shared)


def shared_multiple(lines: Lines, one: Number, other: Number) -> Number:
    """The least multiple that two whole numbers share: ``4 * 3 = 12``, ``6 * 2 = 12``."""
    shared = lcm(one.top, other.top)
    for number in (one, other):
        lines.line(f"{number.text} * {shared // number.top}", str(shared))
    return whole(shared)


def pairs(lines: Lines, number: int) -> None:
    """A number as a double, or a double and one more: 3 + 3 + 1 = 7. Nothing is divided before grade 3."""
    half, rest = divmod(number, 2)
    lines.line(f"{half} + {half}{' + 1' if rest else ''}", str(number))


def groups(lines: Lines, number: int, size: int, want: Want = "both") -> None:
    """The most full groups, and what is over: 3 * 5 = 15, 17 - 15 = 2; then what is wanted of it."""
    count, rest = divmod(number, size)
    lines.line(f"{count} * {size}", str(count * size))
    if rest:
        lines.line(f"{number} - {count * size}", str(rest))
    if want == "full":
        lines.line(f"{count * size} / {size}", str(count))
    elif want == "needed" and rest:
        lines.line(f"{count} + 1", str(count + 1))
    elif want == "needed":
        lines.tell(f"{number} / {size} = {count}")
    elif want == "over" and not rest:
        lines.tell(f"{number} - {count * size} = 0")
