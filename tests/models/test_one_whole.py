"""Parts of one whole on small tables; every value, step and slip worked by hand."""

from __future__ import annotations

from random import Random

import pytest

from mathgen.asks.expression import Ask, Op, Stated, Truth
from mathgen.bank.builder import Builder, Stopped
from mathgen.bank.desk import Desk
from mathgen.exact.demand import Demand
from mathgen.grades.curriculum import load
from mathgen.problems.draft import Draft
from mathgen.scenario.words import scenario
from mathgen.trials.scope import Scope
from mathgen.trials.table import TrialTable
from tests.models.asked import every_draft, model, problem, quantity, said, worked
from tests.tables import TWO_GROUPS, table

EIGHT = table({"red": 3, "gold": 5}, {("Owls", 1): (2, 4), ("Owls", 2): (1, 2)})
MODELS = ("fraction_of_all", "share_of_down", "add_parts_of_one_whole", "subtract_parts_of_one_whole")


def draft_of(name: str, results: TrialTable, group: str, trial: int, colors: tuple[str, ...], mark: str) -> Draft:
    """The one draft about some colors of one group in one trial; ``mark`` is what it wants, or the first rate it prints."""
    found = [
        draft
        for draft in every_draft(name, results)
        if draft.roles["whole"].scope[:2] == ((group,), (trial,))
        and colors == tuple(color for quantity in _parts(draft) for color in quantity.scope.colors)
        and mark in (*draft.wanted, *(text for _, text in draft.rates[:1]))
    ]
    assert len(found) == 1, found
    return found[0]


def _parts(draft: Draft) -> tuple:
    return draft.roles["parts"] if "parts" in draft.roles else (draft.roles["part"],)


ROWS = {
    # model: (table, whose and which, grade, answer, relation, steps, slips)
    "fraction_of_all": (
        EIGHT,
        ("Owls", 1, ("red",), "one"),
        3,
        "2/8",
        "8*x = 2",
        ("2 / 8 = 2/8",),
        {"A18": "2/3", "A17": "6/8", "A05": "2"},  # the other part is 6/8 as well
    ),
    "fraction_of_all, two colors": (
        TWO_GROUPS,
        ("Owls", 1, ("red", "blue"), "two"),
        4,
        "5/12",
        "12*x = 3 + 2",
        ("3 + 2 = 5", "5 / 12 = 5/12"),
        {"A18": "5/7", "C13": "3/12", "A17": "9/12", "A05": "5"},
    ),
    "share_of_down": (
        EIGHT,
        ("Owls", 1, ("red",), "one"),
        3,
        "2/6",
        "6*x = 2",
        ("2 / 6 = 2/6",),
        {"A19": "2/3", "A03": "4/6", "A22": "2/8", "A05": "2"},
    ),
    "share_of_down, two colors": (
        TWO_GROUPS,
        ("Owls", 2, ("red", "blue"), "two"),
        4,
        "4/6",
        "6*x = 1 + 3",
        ("1 + 3 = 4", "4 / 6 = 4/6"),
        {"A19": "4/7", "A03": "2/6", "C13": "1/6", "A22": "4/12", "A05": "4"},
    ),
    "share_of_down, percent": (
        TWO_GROUPS,
        ("Herons", 1, ("gold",), "percent"),
        6,
        "37.5%",
        "8*x = 3",
        ("3 / 8 = 3/8", "3/8 = 0.375", "0.375 = 37.5%"),
        {"A19": "60%", "A03": "62.5%", "D07": "3%"},
    ),
    "add_parts_of_one_whole": (
        TWO_GROUPS,
        ("Owls", 1, ("red", "gold"), "3/12"),
        4,
        "7/12",
        "3/12 + 4/12 = x",
        ("3/12 + 4/12 = 7/12",),
        {"C01": "7/24", "C12": "1/12", "A05": "7", "C13": "3/12"},
    ),
    "add_parts_of_one_whole, unlike": (
        TWO_GROUPS,
        ("Owls", 1, ("red", "gold"), "1/4"),
        5,
        "7/12",
        "3/12 + 4/12 = x",
        ("1/4 = 3/12", "1/3 = 4/12", "3/12 + 4/12 = 7/12"),
        {"C01": "2/7", "C12": "1/12", "C02": "2/4", "C03": "2/12", "C13": "1/4"},
    ),
    "subtract_parts_of_one_whole": (
        TWO_GROUPS,
        ("Owls", 1, ("red",), "9/12"),
        4,
        "6/12",
        "3/12 + x = 9/12",
        ("9/12 - 3/12 = 6/12",),
        {"A03": "3/12", "C11": "12/12", "A05": "6"},
    ),
    "subtract_parts_of_one_whole, unlike": (
        TWO_GROUPS,
        ("Owls", 1, ("gold",), "3/4"),
        5,
        "5/12",
        "4/12 + x = 9/12",
        ("3/4 = 9/12", "1/3 = 4/12", "9/12 - 4/12 = 5/12"),
        {"A03": "3/12", "C11": "13/12", "C14": "2/12"},  # across, (3 - 1)/(4 - 3), is no fraction
    ),
}


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    results, which, grade, *expected = ROWS[row]
    name = row.partition(",")[0]
    one = said(name, results, grade, draft_of(name, results, *which))
    assert worked(one) == tuple(expected)


def test_a_share_read_from_the_table_adds_its_whole_up_first() -> None:
    """Owls, Trial 2: 1 red, 3 blue and 2 gold pins."""
    draft = draft_of("share_of_down", TWO_GROUPS, "Owls", 2, ("red", "blue"), "two")
    one = said("share_of_down", TWO_GROUPS, 4, draft, frozenset({"table"}))
    assert [step.text for step in one.steps] == ["1 + 3 = 4", "1 + 3 + 2 = 6", "4 / 6 = 4/6"]
    assert len(one.cells) == 3


@pytest.mark.parametrize(("name", "mark", "grade"), [("fraction_of_all", "one", 4), ("share_of_down", "one", 6)])
def test_one_color_alone_is_grade_3(name: str, mark: str, grade: int) -> None:
    """CCSS 3.NF.A.1; later grades join parts (4.NF.B.3a) or ask for a percent (6.RP.A.3c)."""
    draft = draft_of(name, EIGHT, "Owls", 1, ("red",), mark)
    found = Builder(Desk(EIGHT, scenario("ramp")), load("ccss"), grade).candidate(model(name), draft, Random("1"))
    assert isinstance(found, Stopped)
    assert "feature" in found.reasons


@pytest.mark.parametrize("name", MODELS[2:])
def test_like_and_unlike_bottoms_have_their_grades(name: str) -> None:
    """CCSS 4.NF.B.3d like denominators, 5.NF.A.2 unlike denominators."""
    for grade, like in ((4, False), (5, True)):
        builder = Builder(Desk(TWO_GROUPS, scenario("ramp")), load("ccss"), grade)
        tried = [draft for draft in every_draft(name, TWO_GROUPS) if (draft.unlike is None) == like]
        assert tried
        assert all(isinstance(builder.candidate(model(name), draft, Random("1")), Stopped) for draft in tried)


def test_the_answer_is_never_a_fraction_of_the_text() -> None:
    for name in MODELS[2:]:
        for draft in every_draft(name, TWO_GROUPS):
            rates = [text for _, text in draft.rates]
            assert draft.roles["whole"].scope.colors is None
            assert len(rates) == 2
            if name == "subtract_parts_of_one_whole" and draft.unlike is None:
                tops = [int(text.partition("/")[0]) for text in rates]
                assert tops[0] != 2 * tops[1]


def test_sets_of_one_color_have_no_parts() -> None:
    single = table({"red": 8}, {("Owls", 1): (3,)})
    assert not [draft for name in MODELS for draft in every_draft(name, single)]


def test_what_is_asked_is_not_printed_beside_the_problem() -> None:
    draft = draft_of("subtract_parts_of_one_whole", TWO_GROUPS, "Owls", 1, ("red",), "9/12")
    assert draft.must_not_show == (Scope(("Owls",), (1,), ("blue", "gold")),)


def test_a_row_of_splits_worked_by_hand() -> None:
    """6 of the 8 pins that the Owls set up for Trial 1."""
    [draft] = [one for one in every_draft("split_into_two", EIGHT) if one.roles["part"].scope == Scope(("Owls",), (1,), None)]
    one = said("split_into_two", EIGHT, 4, draft)
    assert worked(one) == (
        "1/8 + 5/8, 2/8 + 4/8, 3/8 + 3/8",
        "2*x = 8*6/8 - 1 + Mod(8*6/8 - 1, 2)",
        ("1/8 + 5/8 = 6/8", "2/8 + 4/8 = 6/8", "3/8 + 3/8 = 6/8"),
        {"C53": "1/4 + 5/4, 2/4 + 4/4, 3/4 + 3/4", "C54": "3/8 + 3/8", "C55": "1/8 + 1/8"},
    )
    assert one.standards == ("4.NF.B.3b",)


@pytest.mark.parametrize(("three", "answer", "slips"), [(5, "Yes", {"C56": "No"}), (6, "No", {"C57": "Yes"})])
def test_three_fractions_judged_by_hand(three: int, answer: str, slips: dict[str, str]) -> None:
    """The Herons knocked down 8 of 12 pins in Trial 1: 1/12 + 2/12 + 5/12, but not 1/12 + 2/12 + 6/12."""
    down, set_up = quantity("down", "Herons", (1,)), quantity("set_up", "Herons", (1,))
    claimed = tuple(Op("/", (Stated(top, "claimed"), set_up)) for top in (1, 2, three))
    ask = Ask(Truth(Op("/", (down, set_up)), "=", Op("+", claimed)), (), Demand("truth"))
    one = problem("is_that_a_split", TWO_GROUPS, 4, ask)
    total = 3 + three
    assert worked(one) == (answer, f"x = 8/12 - (1/12 + 2/12 + {three}/12)", (f"1/12 + 2/12 + {three}/12 = {total}/12",), slips)
    assert one.standards == ("4.NF.B.3b",)
