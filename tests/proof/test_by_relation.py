"""Route 2 alone: exactly one solution, from the raw rows, and everything asserted true to them."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Equation, Op, Quantity, Ratio, Stat, Stated, Unknown, Value
from mathgen.exact.demand import Demand
from mathgen.problems.record import Given
from mathgen.proof.by_relation import NoSolution, solve, true_to_table
from mathgen.proof.raw import RawRows
from mathgen.trials.scope import Scope
from tests.tables import TWO_GROUPS

ROWS = RawRows(TWO_GROUPS)
WHOLE = Demand("whole")


def down(group: str, trial: int | None = None, color: str | None = None) -> Quantity:
    return Quantity("down", Scope((group,), None if trial is None else (trial,), None if color is None else (color,)))


def test_raw_rows_add_up_every_measure() -> None:
    """Owls, Trial 1: 3, 2 and 4 of 4, 3 and 5 pins."""
    scope = Scope(("Owls",), (1,))
    assert [ROWS.count(Quantity(measure, scope)) for measure in ("down", "set_up", "standing")] == [9, 12, 3]  # type: ignore[arg-type]
    assert ROWS.count(Quantity("down", Scope())) == 32


def test_a_question_is_solved() -> None:
    assert solve(Ask(Value(Op("/", (down("Owls", 1), down("Herons", 1)))), (), WHOLE), ROWS) == Rational(9, 8)


def test_a_statement_about_the_asked_quantity_is_its_equation() -> None:
    fact = Equation(down("Herons"), Op("+", (down("Owls"), Stated(2, "more than"))))
    assert solve(Ask(Value(down("Owls")), (fact,), WHOLE), ROWS) == 15


@pytest.mark.parametrize(
    "fact",
    [
        Equation(Op("-", (Unknown(), Unknown())), Stated(0, "none")),  # any number
        Equation(Op("-", (Unknown(), Unknown())), Stated(3, "three")),  # no number
        Equation(Op("*", (Unknown(), Unknown())), Stated(4, "four")),  # two numbers
        Equation(Op("/", (Stated(4, "four"), Unknown())), Stated(2, "two")),  # x below the line
        Equation(Op("/", (Unknown(), Op("-", (Stated(2, "two"), Stated(2, "two"))))), Stated(2, "two")),
    ],
)
def test_not_exactly_one_solution_is_a_failure(fact: Equation) -> None:
    with pytest.raises(NoSolution):
        solve(Ask(Value(down("Owls")), (fact,), WHOLE), ROWS)


def test_which_is_the_one_that_beats_every_other() -> None:
    two = (down("Owls", 1), down("Herons", 1))
    assert solve(Ask(Choice(("Owls", "Herons"), two), (), Demand("name")), ROWS) == "Owls"
    assert solve(Ask(Choice(("Owls", "Herons"), two, most=False), (), Demand("name")), ROWS) == "Herons"


def test_a_tie_has_no_winner() -> None:
    tie = (down("Owls", 1, "red"), down("Herons", 1, "gold"))
    with pytest.raises(NoSolution):
        solve(Ask(Choice(("Owls", "Herons"), tie), (), Demand("name")), ROWS)


@pytest.mark.parametrize(("number", "value", "true"), [("9", 9, True), ("9", 8, False), ("8", 9, False), ("8", 8, False)])
def test_a_given_has_to_be_true_in_text_and_value(number: str, value: int, true: bool) -> None:
    given = Given(number, Rational(value), down("Owls", 1), "pins knocked down", Scope(("Owls",), (1,)), "words")
    assert true_to_table(given, ROWS) is true


def test_a_rate_has_to_be_true_in_text_and_value() -> None:
    rate = Op("/", (down("Owls", 1), Quantity("set_up", Scope(("Owls",), (1,)))))
    true = Given("9/12", Rational(3, 4), rate, "pins knocked down out of pins set up", None, "words")
    assert true_to_table(true, ROWS)
    assert not true_to_table(true._replace(number="8/12"), ROWS)
    assert not true_to_table(true._replace(value=Rational(2, 3)), ROWS)


def test_a_mean_is_of_its_own_numbers() -> None:
    """9, 6, 8: (9 + 6 + 8) / 3."""
    series = (down("Owls", 1), down("Owls", 2), down("Herons", 1))
    assert solve(Ask(Value(Stat("mean", series)), (), Demand()), ROWS) == Rational(23, 3)


@pytest.mark.parametrize(
    ("places", "median"),
    [
        ((("Owls", 1), ("Owls", 2), ("Herons", 1)), Rational(8)),  # 9, 6, 8
        ((("Owls", 1), ("Owls", 2), ("Herons", 1), ("Herons", 2)), Rational(17, 2)),  # 9, 6, 8, 9
        ((("Owls", 1), ("Herons", 2), ("Owls", 2)), Rational(9)),  # 9, 9, 6: one number twice
    ],
)
def test_a_median_is_the_middle_of_its_own_numbers(places: tuple[tuple[str, int], ...], median: Rational) -> None:
    assert solve(Ask(Value(Stat("median", tuple(down(*place) for place in places))), (), Demand()), ROWS) == median


def test_a_median_may_stand_within_an_equation() -> None:
    """9 and 6 pins: halfway is 7.5, and twice that is 15."""
    two = Op("*", (Stated(2, "times"), Stat("median", (down("Owls", 1), down("Owls", 2)))))
    assert solve(Ask(Value(two), (), Demand()), ROWS) == 15


def test_a_ratio_is_solved_in_its_order() -> None:
    """17 down and 7 standing."""
    standing = Op("-", (Quantity("set_up", Scope(("Herons",))), down("Herons")))
    assert solve(Ask(Ratio(down("Herons"), standing), (), Demand("ratio:any")), ROWS) == Rational(17, 7)
    assert solve(Ask(Ratio(standing, down("Herons")), (), Demand("ratio:any")), ROWS) == Rational(7, 17)
