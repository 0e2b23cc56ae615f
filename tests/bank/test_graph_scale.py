"""The scale of a graph, and the mistake of counting its lines as ones."""

from __future__ import annotations

from sympy import Integer, Rational

from mathgen.bank.graph_scale import lines_as_ones, scale_step, scale_top


def test_a_line_counted_as_one_needs_bars_that_end_at_numbered_lines() -> None:
    """Bars of 14, 10 and 6 on a scale by twos: 14 - 6 = 8 is four lines."""
    assert scale_step(14, 4) == 2
    assert lines_as_ones((14, 6), 14, 4, Integer(8)) == (("J01", (8, 2)),)
    assert lines_as_ones((14, 7), 14, 4, Integer(7)) == ()


def test_where_lines_are_ones_or_bars_carry_numbers_nobody_counts_lines_wrongly() -> None:
    assert scale_step(14, 2) == 1
    assert lines_as_ones((14, 6), 14, 2, Integer(8)) == ()
    assert scale_top(40, scale_step(40, 4)) > 30
    assert lines_as_ones((40, 30), 40, 4, Integer(10)) == ()


def test_names_and_parts_are_not_counted_in_lines() -> None:
    assert lines_as_ones((14, 6), 14, 4, "red") == ()
    assert lines_as_ones((14, 6), 14, 4, Rational(3, 2)) == ()
