import pytest
from sympy import Rational

from mathgen.asks.expression import Choice, Op, Quantity, Stat, Stated, Unknown, Value
from mathgen.reading.evaluate import Counts, Tie, answer, evaluate
from mathgen.reading.tokens import NotRead
from mathgen.trials.scope import Scope
from tests.reading.small_class import TABLE

COUNTS = Counts(TABLE)
OWLS = Scope(("Owls",), (1,), ("red",))


@pytest.mark.parametrize(("measure", "count"), [("set_up", 4), ("down", 3), ("standing", 1)])
def test_each_measure_is_read_off_its_cell(measure: str, count: int):
    assert evaluate(Quantity(measure, OWLS), COUNTS) == count  # type: ignore[arg-type]


def test_a_scope_left_open_takes_all():
    assert evaluate(Quantity("down", Scope()), COUNTS) == 66


def test_arithmetic_is_exact_and_goes_left_to_right():
    two, three = Stated(2, "times"), Stated(3, "times")
    assert evaluate(Op("/", (Op("-", (two, three, three)), three)), COUNTS) == Rational(-4, 3)
    owls = tuple(Quantity("down", Scope(("Owls",), (trial,))) for trial in (1, 2, 3))
    assert evaluate(Stat("mean", owls), COUNTS) == 9
    wrens = tuple(Quantity("down", Scope(("Wrens",), (trial,))) for trial in (1, 2, 3))
    assert evaluate(Stat("median", wrens), COUNTS) == 5
    assert evaluate(Stat("median", wrens[:2]), COUNTS) == 6


def test_what_has_no_value_is_refused():
    with pytest.raises(NotRead, match="none"):
        evaluate(Op("/", (Stated(2, "times"), Stated(0, "times"))), COUNTS)
    with pytest.raises(NotRead, match="no result"):
        evaluate(Quantity("down", Scope(("Nobody",))), COUNTS)
    with pytest.raises(NotRead, match="unknown"):
        answer(Value(Unknown()), COUNTS)


def test_labels_that_tie_are_named():
    reds = tuple(Quantity("down", Scope((group,), (1,), ("red",))) for group in TABLE.groups)
    with pytest.raises(Tie) as tied:
        answer(Choice(TABLE.groups, reds), COUNTS)
    assert tied.value.labels == ("Owls", "Kites")
    assert answer(Choice(TABLE.groups, reds, most=False), COUNTS) == "Wrens"
