"""What one heading says."""

from __future__ import annotations

import pytest

from mathgen.trials.heading_words import measure_words, read_heading, tidy


@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("Group", "group"),
        ("TEAM", "group"),
        ("Grp #", "group"),
        ("Grp.", "group"),
        ("Table", "group"),
        ("Name of group", "group"),
        ("What is your group name?", "group"),
        ("Trial", "trial"),
        ("Try", "trial"),
        ("Attempt", "trial"),
        ("Roll", "trial"),
        ("Turn", "trial"),
        ("Run #", "trial"),
        ("Which trial is this?", "trial"),
        ("Color", "color"),
        ("colour", "color"),
        ("Pin color", "color"),
        ("Knocked down", "down"),
        ("down", "down"),
        ("Pins that fell", "down"),
        ("Hits", "down"),
        ("# knocked over", "down"),
        ("Left standing", "standing"),
        ("still up", "standing"),
        ("Not knocked down", "standing"),
        ("standing", "standing"),
        ("Set up", "set_up"),
        ("Set-up", "set_up"),
        ("Start", "set_up"),
        ("Stood", "set_up"),
        ("out of", "set_up"),
        ("Pins at start", "set_up"),
        ("Count", "count"),
        ("Pins", "count"),
        ("How many?", "count"),
        ("Target", "target"),
        ("Called color", "target"),
        ("Color called", "target"),
        ("Gap (in)", "gap"),
        ("Space between pins (inches)", "gap"),
        ("Spacing", "gap"),
        ("Release height", "height"),
        ("Round", "round"),
        ("Design round", "round"),
        ("Version", "round"),
        ("Notes", "notes"),
        ("Comments", "notes"),
        ("Timestamp", "timestamp"),
        ("Start time", "timestamp"),
        ("Total", "total"),
        ("Total pins", "total"),
        ("SUM", "total"),
        ("Average", "derived"),
        ("%", "derived"),
    ],
)
def test_a_heading_names_its_role(text: str, role: str) -> None:
    """Common practice, from memory; no published list."""
    assert read_heading(text).role == role


@pytest.mark.parametrize(
    ("text", "color", "set_up", "trial", "measure"),
    [
        ("Red", "red", None, None, None),
        ("RED (4)", "red", 4, None, None),
        ("Red [4]", "red", 4, None, None),
        ("Red (4 pins)", "red", 4, None, None),
        ("Red (out of 4)", "red", 4, None, None),
        ("Red (set up: 4)", "red", 4, None, None),
        ("Red /4", "red", 4, None, None),
        ("Red: 4", "red", 4, None, None),
        ("Red - 4", "red", 4, None, None),
        ("Red pins out of 4", "red", 4, None, None),
        ("Dark Blue", "dark blue", None, None, None),
        ("Red pins knocked down", "red", None, None, "down"),
        ("red_down", "red", None, None, "down"),
        ("Red (knocked down)", "red", None, None, "down"),
        ("Blue left standing", "blue", None, None, "standing"),
        ("Gold set up", "gold", None, None, "set_up"),
        ("Trial 2 Red", "red", None, 2, None),
        ("Red T3", "red", None, 3, None),
        ("2nd roll, gold, fell", "gold", None, 2, "down"),
        ("How many red pins did you knock down?", "red", None, None, "down"),
        ("Cone (6)", "cone", 6, None, None),
        ("Bean sprouted", "bean", None, None, "down"),
        ("Pea planted", "pea", None, None, "set_up"),
    ],
)
def test_a_heading_names_color_set_trial_and_measure(
    text: str, color: str, set_up: int | None, trial: int | None, measure: str | None
) -> None:
    heading = read_heading(text)
    assert (heading.color, heading.set_up, heading.trial, heading.measure) == (color, set_up, trial, measure)


@pytest.mark.parametrize(
    ("text", "trial"), [("Trial 1", 1), ("T2", 2), ("Try #3", 3), ("Attempt two", 2), ("first roll", 1), ("Trial (2)", None)]
)
def test_a_trial_label_is_its_number(text: str, trial: int | None) -> None:
    assert read_heading(text).trial == trial


@pytest.mark.parametrize("text", ["Owls", "Weather", "Zoë", "1", "", "The Most"])
def test_words_that_nobody_has_met_are_left_unknown(text: str) -> None:
    assert not read_heading(text).known


@pytest.mark.parametrize(
    ("text", "measures"),
    [
        ("Pins knocked down", {"down"}),
        ("How many were left standing?", {"standing"}),
        ("Pins NOT knocked down", {"standing"}),
        ("Pins set up and knocked down", {"set_up", "down"}),
        ("Knocked down or left standing", {"down", "standing"}),
        ("Sock ball results", set()),
    ],
)
def test_a_title_speaks_of_its_measures(text: str, measures: set[str]) -> None:
    assert measure_words(text) == measures


def test_a_mixed_number_keeps_its_parts_apart() -> None:
    assert tidy(" 1½  in ") == "1 1⁄2 in"


def test_raised_and_lowered_figures_are_no_figures() -> None:
    assert [tidy(text) for text in ("X²", "3²", "H₂", "４")] == ["X²", "3²", "H₂", "4"]


@pytest.mark.parametrize(
    ("text", "group"), [("Group ①", "Group ①"), ("Team A", "Team A"), ("TEAM A (4)", "TEAM A"), ("Group 1 knocked down", "Group 1")]
)
def test_a_numbered_group_across_keeps_its_spelling(text: str, group: str) -> None:
    assert read_heading(text).group == group


def test_a_heading_keeps_its_text_as_typed() -> None:
    assert read_heading("  Zoë’s  x² ").text == "Zoë’s x²"
