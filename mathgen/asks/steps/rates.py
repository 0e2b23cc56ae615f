"""Steps from a rate that the words print to a number that can be worked with: 75% is 75/100, 0.333... is 1/3."""

from __future__ import annotations

from mathgen.asks.steps.lines import Lines
from mathgen.asks.steps.products import quotient
from mathgen.asks.steps.written_number import Number, over, whole
from mathgen.exact.forms import decimal, period
from mathgen.exact.parse import written


def rate(lines: Lines, text: str) -> Number:
    """A percent becomes a fraction over 100, a decimal stays as it is, one that repeats becomes a fraction."""
    if text.endswith("..."):
        return _from_repeating(lines, text)
    if "." in text and not text.endswith("%"):
        wholes, _, decimals = text.partition(".")
        return Number(int(wholes + decimals), 10 ** len(decimals), text)
    if not text.endswith("%"):
        top, _, bottom = text.partition("/")
        return over(int(top), int(bottom or "1"))
    wholes, _, decimals = text[:-1].partition(".")
    fraction = over(int(wholes + decimals), 100 * 10 ** len(decimals))
    lines.line(text, fraction.text)
    return fraction


def _from_repeating(lines: Lines, text: str) -> Number:
    """0.41666...: 1000 times less 100 times leaves no repeating digits, and is 900 times the number."""
    exact = written(text).value
    before, length = period(int(exact.q))
    high, low = 10 ** (before + length), 10**before
    more, less = decimal(high * exact), decimal(low * exact)
    left, times = int(high * exact - low * exact), high - low
    lines.line_if_new(f"{high} * {text} = {more}", f"x = {text}", f"{high}x = {more}")
    if low > 1:
        lines.line_if_new(f"{low} * {text} = {less}", f"{low}x = {less}")
    lines.line_if_new(f"{more} - {less} = {left}", f"{times}x = {left}")
    lines.line_if_new(f"{high} - {low} = {times}")
    return quotient(lines, whole(left), whole(times), f"x = {left}/{times}")
