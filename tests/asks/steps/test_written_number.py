"""Numbers as they are written in steps."""

from __future__ import annotations

from mathgen.asks.steps.written_number import percent, terminating


def test_percent_and_decimal_of_the_equivalents_table() -> None:
    """ICS Building Trades Pocketbook and the table of number equivalents: 3/16 = .1875, 1/12 = 8 1/3%, 2/3 does not end."""
    assert terminating(3, 16) == "0.1875"
    assert terminating(2, 3) is None
    assert percent(1, 12) == "8 1/3%"
    assert percent(5, 8) == "62.5%"
