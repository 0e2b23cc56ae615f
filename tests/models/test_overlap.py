"""How far two dot plots overlap: by hand on small tables."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Op, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import TrialTable
from tests.models.asked import every_draft, problem, quantity, worked
from tests.tables import table


def two_groups(owls: tuple[int, ...], herons: tuple[int, ...]) -> TrialTable:
    return table({"red": 12}, {(g, n): (d,) for g, row in (("Owls", owls), ("Herons", herons)) for n, d in enumerate(row, 1)})


def test_from_the_least_of_the_higher_list_to_the_greatest_of_the_lower_one() -> None:
    """5, 7, 9 and 6, 8, 11 lie together from 6 to 9; both of them from 5 to 11."""
    ask = Ask(Value(Op("-", (quantity("down", "Owls", (3,), "red"), quantity("down", "Herons", (2,), "red")))), (), Demand("whole"))
    made = problem("dot_plots_overlap", two_groups((5, 7, 9), (8, 6, 11)), 7, ask)
    assert worked(made) == ("3", "6 + x = 9", ("9 - 6 = 3",), {"I61": "6", "I62": "2", "I63": "4"})


def test_lists_apart_or_one_within_the_other_have_no_such_question() -> None:
    assert list(every_draft("dot_plots_overlap", two_groups((1, 2, 4), (6, 8, 9)))) == []
    assert list(every_draft("dot_plots_overlap", two_groups((2, 5, 11), (4, 6, 8)))) == []


def test_an_end_that_comes_twice_is_no_end_to_ask_for() -> None:
    assert list(every_draft("dot_plots_overlap", two_groups((5, 9, 9), (8, 6, 11)))) == []
