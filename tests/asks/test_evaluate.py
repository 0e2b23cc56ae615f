"""An ask is evaluated forwards: by hand on one small table."""

from __future__ import annotations

import pytest

from mathgen.asks.evaluate import NoAnswer, answer
from mathgen.asks.expression import Ask, Choice, Op, Value
from mathgen.exact.demand import Demand
from mathgen.trials.totals import Totals
from tests.asks.cases import ANY, CASES, DOWN, down
from tests.tables import TWO_GROUPS


@pytest.mark.parametrize("name", CASES)
def test_each_kind_of_ask_by_hand(name: str) -> None:
    ask, _, value, _, _ = CASES[name]
    assert answer(ask, Totals(TWO_GROUPS)) == value


def test_which_takes_the_one_that_beats_every_other() -> None:
    choice = Choice(("Owls", "Herons"), (down("Owls", 1), down("Herons", 1)))
    assert answer(Ask(choice, (), Demand("name")), Totals(TWO_GROUPS)) == "Owls"


def test_a_tie_has_no_answer() -> None:
    tie = Choice(("Owls", "Herons"), (down("Owls", 1, "red"), down("Herons", 1, "gold")))
    with pytest.raises(NoAnswer):
        answer(Ask(tie, (), Demand("name")), Totals(TWO_GROUPS))


def test_division_by_zero_has_no_answer() -> None:
    nothing = Op("-", (DOWN, DOWN))
    with pytest.raises(NoAnswer):
        answer(Ask(Value(Op("/", (DOWN, nothing))), (), ANY), Totals(TWO_GROUPS))
