"""The problem models of lengths, on a table whose spaces between pins were measured."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.asks.expression import Ask, Measured, Op, Stat, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, every_problem, problem, said, worked

ANY = Demand("any")


def spaced(gaps: dict[tuple[str, int], str | None]) -> TrialTable:
    """One red and one blue pin knocked down of 4 each in every trial, the pins as far apart as is said."""
    rows = [
        Row(group, trial, color, 4, 1, gap_inches=None if gap is None else Rational(gap))
        for (group, trial), gap in gaps.items()
        for color in ("red", "blue")
    ]
    return TrialTable(tuple(rows))


EIGHTHS = spaced({("Owls", 1): "9/4", ("Owls", 2): "7/4", ("Wrens", 1): "14", ("Wrens", 2): "19/8", ("Kites", 1): "9", ("Kites", 2): None})
OWLS_1, OWLS_2 = Measured("gap", "Owls", 1), Measured("gap", "Owls", 2)
WRENS_1, KITES_1 = Measured("gap", "Wrens", 1), Measured("gap", "Kites", 1)
WRENS_2 = Measured("gap", "Wrens", 2)

NAMES = ("Owls", "Wrens", "Kites", "Terns", "Gulls")
IN_INCHES = {
    1: ("5/4", "7/4", "5/4", "2", "3/4"),
    2: ("3", "5", "4", "4", "5"),
    3: ("5/4", "7/4", "1/2", "5/2", "4"),
    4: ("3", "5", "4", "5", "5"),
}
LISTED = spaced({(name, trial): gap for trial, gaps in IN_INCHES.items() for name, gap in zip(NAMES, gaps, strict=True)})
FIRST, SECOND, THIRD, FOURTH = (tuple(Measured("gap", name, trial) for name in NAMES) for trial in (1, 2, 3, 4))
LISTED_ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "crosses_above",
        2,
        Ask(Value(Tally(SECOND, "=", Stated(5, "inches"))), (), Demand("whole")),
        ("2", "x = 1 + 1", ("1 + 1 = 2",), {"J08": "5", "W09": "3"}),
    ),
    (
        "crosses_above",
        3,
        Ask(Value(Tally(FIRST, "=", Stated(5, "inches", 4))), (), Demand("whole")),
        ("2", "x = 1 + 1", ("1 + 1 = 2",), {"W09": "4", "W12": "5"}),
    ),
    (
        "spaces_beyond",
        2,
        Ask(Value(Tally(FOURTH, ">", Stated(4, "inches"))), (), Demand("whole")),
        ("3", "x = 1 + 1 + 1", ("1 + 1 + 1 = 3",), {"W54": "4", "W55": "1"}),
    ),
    (
        "spaces_beyond",
        3,
        Ask(Value(Tally(FIRST, ">", Stated(5, "inches", 4))), (), Demand("whole")),
        ("2", "x = 1 + 1", ("1 + 1 = 2",), {"W54": "4", "W55": "1"}),
    ),
    (
        "more_crosses_above",
        2,
        Ask(Value(Op("-", (Tally(FOURTH, "=", Stated(5, "inches")), Tally(FOURTH, "=", Stated(3, "inches"))))), (), Demand("whole")),
        ("2", "1 + x = 1 + 1 + 1", ("1 + 1 + 1 = 3", "3 - 1 = 2"), {"H02": "3", "W12": "5"}),
    ),
    (
        "all_spaces_together",
        5,
        Ask(Value(Op("+", THIRD)), (), ANY),
        (
            "10",
            "5/4 + 7/4 + 1/2 + 5/2 + 4 = x",
            (
                "1 1/4 = 5/4",
                "1 3/4 = 7/4",
                "1/2 = 2/4",
                "2 1/2 = 10/4",
                "4 = 16/4",
                "5/4 + 7/4 + 2/4 + 10/4 + 16/4 = 40/4",
                "40/4 = 10",
            ),
            {"W43": "6", "W44": "8"},
        ),
    ),
    (
        "widest_and_narrowest",
        4,
        Ask(Value(Stat("range", FIRST)), (), ANY),
        ("1 1/4", "3/4 + x = 2", ("8/4 - 3/4 = 5/4", "5/4 = 1 1/4"), {"W02": "2 3/4", "W03": "2", "W10": "1/2"}),
    ),
    (
        "spaces_made_equal",
        5,
        Ask(Value(Stat("mean", THIRD)), (), ANY),
        (
            "2",
            "5*x = 5/4 + 7/4 + 1/2 + 5/2 + 4",
            (
                "1 1/4 = 5/4",
                "1 3/4 = 7/4",
                "1/2 = 2/4",
                "2 1/2 = 10/4",
                "4 = 16/4",
                "5/4 + 7/4 + 2/4 + 10/4 + 16/4 = 40/4",
                "40/4 = 10",
                "10 / 5 = 2",
            ),
            {"W07": "10", "W08": "2 1/4", "W11": "1 3/4"},
        ),
    ),
]
ROWS = [
    # model, grade, ask, answer, relation, steps, slips; each worked by hand
    (
        "how_much_farther",
        2,
        Ask(Value(Op("-", (WRENS_1, KITES_1))), (), ANY),
        ("5", "9 + x = 14", ("14 - 9 = 5",), {"H01": "23", "H02": "14", "H13": "6"}),
    ),
    (
        "how_much_farther",
        4,
        Ask(Value(Op("-", (OWLS_1, OWLS_2))), (), ANY),
        (
            "1/2",
            "7/4 + x = 9/4",
            ("2 1/4 = 9/4", "1 3/4 = 7/4", "9/4 - 7/4 = 2/4", "2/4 = 1/2"),
            {"W01": "4", "W02": "1 1/2", "W03": "1"},
        ),
    ),
    (
        "how_much_farther",
        5,
        Ask(Value(Op("-", (WRENS_2, OWLS_2))), (), ANY),
        (
            "5/8",
            "7/4 + x = 19/8",
            ("2 3/8 = 19/8", "1 3/4 = 14/8", "19/8 - 14/8 = 5/8"),
            {"W01": "4 1/8", "W02": "1 3/8", "W03": "1", "C14": "1 1/2"},
        ),
    ),
    (
        "two_spaces_together",
        2,
        Ask(Value(Op("+", (WRENS_1, KITES_1))), (), ANY),
        ("23", "14 + 9 = x", ("14 + 9 = 23",), {"W53": "5"}),
    ),
    (
        "two_spaces_together",
        4,
        Ask(Value(Op("+", (OWLS_1, OWLS_2))), (), ANY),
        (
            "4",
            "9/4 + 7/4 = x",
            ("2 1/4 = 9/4", "1 3/4 = 7/4", "9/4 + 7/4 = 16/4", "16/4 = 4"),
            {"W51": "3 1/2", "W52": "3", "W53": "1/2"},
        ),
    ),
    (
        "two_spaces_together",
        5,
        Ask(Value(Op("+", (OWLS_2, WRENS_2))), (), ANY),
        (
            "4 1/8",
            "7/4 + 19/8 = x",
            ("1 3/4 = 14/8", "2 3/8 = 19/8", "14/8 + 19/8 = 33/8", "33/8 = 4 1/8"),
            {"W51": "3 1/2", "W52": "3", "W53": "5/8"},
        ),
    ),
    (
        "spaces_end_to_end",
        3,
        Ask(Value(Op("*", (Stated(4, "spaces"), KITES_1))), (), ANY),
        ("36", "x = 4*9", ("4 * 9 = 36",), {"W05": "13", "W06": "9"}),
    ),
    (
        "spaces_end_to_end",
        4,
        Ask(Value(Op("*", (Stated(3, "spaces"), OWLS_1))), (), ANY),
        ("6 3/4", "x = 3*(9/4)", ("2 1/4 = 9/4", "3 * 9/4 = 6 3/4"), {"W04": "6 1/4", "W05": "5 1/4", "W06": "2 1/4"}),
    ),
]


@pytest.mark.parametrize(("name", "grade", "ask", "row"), ROWS)
def test_each_row_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, EIGHTHS) if draft.ask == ask)
    made = said(name, EIGHTHS, grade, draft)
    assert worked(made) == row


def test_a_length_is_told_in_inches() -> None:
    made = problem("spaces_end_to_end", EIGHTHS, 4, Ask(Value(Op("*", (Stated(3, "spaces"), OWLS_2))), (), ANY))
    assert "1 3/4 inches" in made.text
    assert made.answer.display == "5 1/4 inches"
    assert made.answer.accepted == ("5 1/4", "21/4", "5.25")


def test_up_to_one_inch_the_unit_is_inch() -> None:
    table = spaced({("Owls", 1): "3/4", ("Owls", 2): "1/4"})
    made = every_problem("how_much_farther", table, 4)
    assert {one.answer.display for one in made} == {"1/2 inch"}
    assert all("3/4 inch " in one.text or "3/4 inch." in one.text for one in made)


def test_trials_without_a_space_and_spaces_off_the_ruler_are_not_asked_about() -> None:
    table = spaced({("Owls", 1): None, ("Owls", 2): "7/3", ("Owls", 3): "5"})
    assert {draft.roles["space"] for draft in every_draft("spaces_end_to_end", table)} == {Measured("gap", "Owls", 3)}


def test_spaces_of_two_groups_in_two_trials_are_not_compared() -> None:
    for draft in every_draft("how_much_farther", EIGHTHS):
        first, second = draft.roles["first"], draft.roles["second"]
        assert isinstance(first, Measured)
        assert isinstance(second, Measured)
        assert (first.group == second.group) != (first.trial == second.trial)


@pytest.mark.parametrize(("name", "grade", "ask", "row"), LISTED_ROWS)
def test_each_row_of_listed_spaces_worked_by_hand(name: str, grade: int, ask: Ask, row: tuple[object, ...]) -> None:
    draft = next(draft for draft in every_draft(name, LISTED) if draft.ask == ask)
    made = said(name, LISTED, grade, draft)
    assert worked(made) == row


def test_a_list_that_lacks_a_group_is_no_line_plot() -> None:
    assert list(every_draft("crosses_above", EIGHTHS)) == []
