"""Spellings of one name."""

from __future__ import annotations

import pytest

from mathgen.errors import Place
from mathgen.trials.names import misspelled_colors, near_colors, near_groups, one_spelling, unclear_groups
from mathgen.trials.readings import Reading


def reading(group: str, color: str = "red", row: int = 2, color_cell: bool = True) -> Reading:
    return Reading(Place(row, 4), "3", False, group, 1, color, "down", ("", row), Place(row, 3) if color_cell else None)


def test_case_and_spaces_make_no_new_group() -> None:
    notes: list[str] = []
    renamed = one_spelling([reading("The Owls"), reading("the owls"), reading("THE  OWLS"), reading("Hawks")], notes)
    assert [one.group for one in renamed] == ["The Owls"] * 3 + ["Hawks"]
    assert notes == ['"the owls", "THE  OWLS" are read as the group "The Owls".']


@pytest.mark.parametrize(("one", "other"), [("Owls", "Owl"), ("Olws", "Owls"), ("Herons", "Herone"), ("The Most", "The Mosts")])
def test_names_a_slip_apart_are_said(one: str, other: str) -> None:
    assert near_groups([reading(one), reading(other)]) == [
        f'"{one}" and "{other}" are read as two groups. If they are one, give them one spelling.'
    ]


@pytest.mark.parametrize(
    ("one", "other"),
    [("Owls", "Hawks"), ("Group 1", "Group 2"), ("Group 1", "Group 11"), ("Team A", "Team B"), ("7", "8"), ("A", "AB"), ("12", "21")],
)
def test_names_that_are_meant_to_differ_are_not(one: str, other: str) -> None:
    assert near_groups([reading(one), reading(other)]) == []


def test_a_color_cell_a_slip_away_from_a_usual_color_is_a_fault_and_a_kind_of_its_own_is_not() -> None:
    readings = [reading("Owls", "blue", 2), reading("Owls", "blue", 3), reading("Owls", "bleu", 4), reading("Owls", "cone", 5)]
    (fault,) = misspelled_colors(readings)
    assert (fault.place.cell, fault.found, fault.advice) == ("C4", "bleu", 'Did you mean "blue"?')


def test_colors_in_a_list_of_colors_are_never_misspelled() -> None:
    assert misspelled_colors([reading("Owls", "gray", 2), reading("Owls", "gray", 3), reading("Owls", "grey", 4)]) == []


def test_a_group_called_like_a_color_or_a_trial_is_said_and_others_are_not() -> None:
    assert unclear_groups([reading("Cone", "cone"), reading("GOLD"), reading("Trial 1"), reading("The Reds"), reading("7")]) == [
        'A group is called "Cone", like a color: questions may be hard to understand.',
        'A group is called "GOLD", like a color: questions may be hard to understand.',
        'A group is called "Trial 1", like a trial: questions may be hard to understand.',
    ]


@pytest.mark.parametrize(("typed", "meant"), [("yelow", '"yellow"'), ("bleu", '"blue"'), ("rde", '"red"'), ("gren", '"green" or "grey"')])
def test_a_color_in_a_heading_that_is_a_slip_away_from_a_known_one_is_said_and_stays(typed: str, meant: str) -> None:
    assert near_colors([reading("Owls", color=typed, color_cell=False)]) == [
        f'A heading names the color "{typed}", which stays as typed. If {meant} is meant, correct the heading.'
    ]


@pytest.mark.parametrize("color", ["yellow", "cone", "glow-in-the-dark", "dark blue", "tall", "bottle"])
def test_colors_and_kinds_that_are_meant_are_not(color: str) -> None:
    assert near_colors([reading("Owls", color=color, color_cell=False)]) == []
