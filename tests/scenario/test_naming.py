"""Groups, trials and colors read right in a sentence, whatever a class calls them."""

from __future__ import annotations

from pathlib import Path

import pytest

from mathgen.errors import RequestFault
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import scenario

RAMP = scenario("ramp")


@pytest.mark.parametrize(
    ("label", "name"),
    [
        ("Owls", "the Owls"),
        ("7", "Group 7"),
        ("B", "Group B"),
        ("Group 3", "Group 3"),
        ("Team Red", "Team Red"),
        ("The Most", "The Most"),
        ("Zoë", "Zoë"),
        ("Boss", "Boss"),
        ("Ball Rollers", "the Ball Rollers"),
        ("Owls 2", "Owls 2"),
        ("<img onerror>", "<img onerror>"),
    ],
)
def test_a_group_is_named_as_a_teacher_would(label: str, name: str) -> None:
    assert group_name(label, RAMP) == name


@pytest.mark.parametrize(
    ("label", "name"),
    [(1, "Trial 1"), ("A", "Trial A"), ("Round 2", "Round 2"), ("Trial 3", "Trial 3"), ("Monday", "Monday trial")],
)
def test_a_trial_is_named_once(label: int | str, name: str) -> None:
    assert trial_name(label, RAMP) == name


def test_lists_have_the_serial_comma() -> None:
    assert listed(["red"]) == "red"
    assert listed(["red", "blue"]) == "red and blue"
    assert listed(["red", "blue", "gold"]) == "red, blue, and gold"


def test_a_scenario_may_be_a_file(tmp_path: Path) -> None:
    own = Path("mathgen/scenario/ramp.toml").read_text(encoding="utf-8").replace('["pin", "pins"]', '["bottle", "bottles"]', 1)
    (tmp_path / "mine.toml").write_text(own, encoding="utf-8")
    assert scenario(str(tmp_path / "mine.toml")).items == "bottles"


@pytest.mark.parametrize("text", [None, "name = ", 'name = "x"', "\x00"])
def test_a_scenario_that_cannot_be_used_is_refused(tmp_path: Path, text: str | None) -> None:
    path = tmp_path / "bad.toml"
    if text is not None:
        path.write_text(text, encoding="utf-8")
    with pytest.raises(RequestFault, match="scenario"):
        scenario(str(path))


@pytest.mark.parametrize(
    ("entry", "spoilt"),
    [
        ('title = "Knocking down pins"', "title = 3"),
        ('item = ["pin", "pins"]', 'item = ["pin"]'),
        ('trial = ["trial", "trials"]', 'trial = "trial"'),
    ],
)
def test_an_entry_of_another_shape_is_named(tmp_path: Path, entry: str, spoilt: str) -> None:
    text = Path("mathgen/scenario/ramp.toml").read_text(encoding="utf-8")
    assert entry in text
    (tmp_path / "own.toml").write_text(text.replace(entry, spoilt, 1), encoding="utf-8")
    with pytest.raises(RequestFault, match=f"entry {entry.partition(' ')[0]}: expected"):
        scenario(str(tmp_path / "own.toml"))
