"""An ask is stated as an equation: by hand on one small table."""

from __future__ import annotations

import pytest
from sympy import solve, sympify

from mathgen.asks.expression import Ask, Op, Stated, Value
from mathgen.asks.relation import relation, written
from mathgen.proof.raw import RawRows
from tests.asks.cases import CASES, OWLS_1, SET_UP, WHOLE
from tests.tables import TWO_GROUPS


@pytest.mark.parametrize("name", CASES)
def test_sympy_reads_the_written_relation_and_finds_the_answer(name: str) -> None:
    """sympy's own parser and solver, a general-purpose reference."""
    ask, _, value, equation, _ = CASES[name]
    left, _, right = equation.partition(" = ")
    assert written(relation(ask), RawRows(TWO_GROUPS).count) == equation
    assert solve(sympify(f"({left}) - ({right})", rational=True)) == [value]


def test_brackets_keep_the_meaning_of_the_relation() -> None:
    """12 - (3 + 4) is not 12 - 3 + 4."""
    ask = Ask(Value(Op("*", (Stated(2, "times"), Op("-", (SET_UP, Op("+", OWLS_1[:2])))))), (), WHOLE)
    assert written(relation(ask), RawRows(TWO_GROUPS).count) == "x = 2*(12 - (3 + 2))"
