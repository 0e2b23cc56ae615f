"""Plans of recording sheets: options in any order, all faults at once, and no name that the filled sheet would lose."""

from __future__ import annotations

import pytest

from mathgen.errors import MathgenError, RequestFault
from mathgen.sheets.record_plan import RecordPlan, checked, plan_of
from mathgen.trials.grid import Grid
from mathgen.trials.reading import interpret

READ_AS_SOMETHING_ELSE = (
    "Total", "all", "Totals", "Sum", "Group", "Trial", "Team", "Average", "Mean", "Percent", "Set up", "Total pins", "Pins in all",
    "Class total", "Everyone", "Whole class", "Owls total", "Total for Owls", "Color", "Out of", "grand total:", "Max", "The Group",
)  # fmt: skip
GROUPS = (
    "The Most", "Trial 2", "red", "1", "Group 1", "Team A", "The Totals", "The Average", "Zoë", "=1+1", "All Stars", "Meanies", "Sum Fun",
    "3/4", "Knocked down", "Absent", "<b>", "Herons total",
)  # fmt: skip
COUNTS = ((1, 2), (0, 0), (2, 1), (3, 3), (2, 2), (2, 3))


def groups_read(name: str, counts: tuple[int, int], first: bool) -> list[str]:
    """The groups that the reader finds in a filled recording sheet of the Owls, the Kites and one more; none where it refuses."""
    others = {"Owls": (2, 1), "Kites": (0, 3)}
    groups = {name: counts, **others} if first else {**others, name: counts}
    rows = [("Pins knocked down", "", "", ""), ("Group", "Trial", "Red (4)", "Blue (3)")]
    rows += [(group, str(trial), *map(str, own)) for group, own in groups.items() for trial in (1, 2)]
    try:
        return list(interpret([Grid(tuple(rows), "Results")]).table.groups)
    except MathgenError:
        return []


@pytest.mark.parametrize("name", READ_AS_SOMETHING_ELSE)
def test_a_name_that_read_may_lose_is_refused_and_another_is_offered(name: str) -> None:
    assert any(name not in groups_read(name, counts, first) for counts in COUNTS for first in (True, False))
    with pytest.raises(RequestFault, match="would be read as") as refused:
        plan_of(f"Owls,{name},Kites", "red,blue", "red=4,blue=3")
    assert name in str(refused.value)


@pytest.mark.parametrize("name", GROUPS)
def test_a_name_that_is_accepted_is_read_as_a_group_whatever_its_counts(name: str) -> None:
    plan_of(f"Owls,{name},Kites", "red,blue", "red=4,blue=3")
    for counts in COUNTS:
        for first in (True, False):
            assert sorted(groups_read(name, counts, first)) == sorted(["Owls", "Kites", name])


def test_two_spellings_that_read_takes_for_one_name_are_refused() -> None:
    with pytest.raises(RequestFault, match='"Blue Jays" and "blue_jays" would be read as one'):
        plan_of("Blue Jays,Owls,blue_jays", "red", "red=4")


@pytest.mark.parametrize(
    ("colors", "set_up"),
    [(None, "red=4,blue=3"), ("red,blue", "blue=3,red=4"), ("red=4,blue=3", None), ("red:4, blue: 3", None), ("red=4,blue=3", "blue=3")],
)
def test_counts_may_stand_with_the_colors_or_by_themselves(colors: str | None, set_up: str | None) -> None:
    assert plan_of("Owls", colors, set_up) == RecordPlan(("Owls",), (("red", 4), ("blue", 3)))


def test_counts_that_do_not_agree_are_refused() -> None:
    with pytest.raises(RequestFault, match="red has two counts, 5 and 4"):
        plan_of("Owls", "red=4,blue=3", "red=5")


def test_colors_without_counts_are_told_the_option_that_gives_them() -> None:
    with pytest.raises(RequestFault, match="Add --set-up red=N,blue=N"):
        plan_of("Owls", "red,blue", None)


def test_all_that_is_wrong_in_every_option_is_said_at_once() -> None:
    with pytest.raises(RequestFault) as refused:
        plan_of("Owls,owls,,Total", "red,blue,sum", "red=0,gold=x,green=2", trials=99)
    said = str(refused.value).splitlines()
    parts = (
        "twice|would be read as one", "name 3 is empty", '"Total"', 'found "gold=x"', "count for green", "how many of blue, sum are set up",
        "red=0", '"sum" is no color', "--trials: 99",
    )  # fmt: skip
    assert all(any(option in line for line in said for option in part.split("|")) for part in parts), said


def test_a_plan_made_by_hand_is_held_to_the_same() -> None:
    with pytest.raises(RequestFault) as refused:
        checked(RecordPlan(("Owls", "owls", "Totals", "x" * 41), (("red", 0), ("total", 3)), 99))
    said = str(refused.value)
    assert all(part in said for part in ("read as one", '"Totals"', "41 characters", "red=0", '"total" is no color', "--trials: 99"))
