"""Steps from the last number to the form that the words demand: a percent, a decimal, a mixed number, lowest terms."""

from __future__ import annotations

from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.written_number import Number, lowest, mixed, over, percent, terminating, through_mixed
from mathgen.exact.demand import Demand

_MIXED = ("mixed", "mixed:any")


def in_form(lines: Lines, number: Number, demand: Demand) -> None:
    """Turns the last number into the form that the words demand."""
    top, bottom = number.top, number.bottom
    if demand.form == "percent":
        _percent(lines, number)
    elif demand.form == "decimal":
        _decimal(lines, number)
    elif demand.form in _MIXED:
        lines.line(number.text, mixed(*lowest(top, bottom)).text, *(through_mixed(top, bottom) if "/" in number.text else []))
    elif demand.form in ("simplest", "fraction"):
        lines.line(number.text, over(*lowest(top, bottom)).text)


def _decimal(lines: Lines, number: Number) -> None:
    """Over ten, a hundred or a thousand first: 3/4 = 75/100, 75/100 = 0.75."""
    top, bottom = number.top, number.bottom
    decimal = lines.decimal(top, bottom)
    if decimal is not None and number.text != decimal:
        if lines.money and bottom == 100:
            lines.line(number.text, decimal)
            return
        if all(ten % bottom for ten in (10, 100, 1000)):  # 3/24 has to become 1/8 before it becomes 125/1000
            top, bottom = lowest(top, bottom)
            lines.line(number.text, f"{top}/{bottom}")
            number = over(top, bottom)
        # The first that does: 2/4 becomes 5/10, not 50/100.
        tenths = next((ten for ten in (10, 100, 1000) if top * ten % bottom == 0), bottom)
        scaled = over(top * tenths // bottom, tenths)
        lines.line(number.text, scaled.text)
        lines.line(scaled.text, decimal)
    elif not lines.lines:  # a decimal that the words print and that is only to be rounded: 375 thousandths
        lines.lines.append(f"{number.text} = {over(top, bottom).text}")


def _percent(lines: Lines, number: Number) -> None:
    """Out of 100 where that is a whole number, by a decimal where it ends, else straight to the mixed percent."""
    top, bottom = lowest(number.top, number.bottom)
    result, decimal = percent(top, bottom), terminating(top, bottom)
    if "." in number.text:
        lines.line(number.text, result)
    elif 100 % bottom == 0:
        reduced, hundredths = over(top, bottom), over(top * 100 // bottom, 100)
        if 100 % number.bottom:  # 9/12 has to become 3/4 before it becomes 75/100
            lines.line(number.text, reduced.text)
            number = reduced
        lines.line(number.text, hundredths.text)
        lines.line(hundredths.text, result)
    elif decimal is None:
        lines.line(number.text, result)
    else:
        lines.line(number.text, decimal)
        lines.line(decimal, result)
