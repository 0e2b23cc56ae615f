"""``mathgen cards``: what the command says, and what it refuses."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from mathgen.cli import main

SAMPLE = str(Path(__file__).parents[2] / "samples" / "main.csv")


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("cards")
    done = CliRunner().invoke(main, ["cards", SAMPLE, "--grades", "3,4", "--count", "9", "--per-page", "4", "--out", str(out)])
    assert done.exit_code == 0, done.output
    assert [Path(line).name for line in done.stdout.splitlines()] == [path.name for path in sorted(out.iterdir(), key=order)]
    return out


def order(path: Path) -> int:
    return ["grades3-4-cards.pdf", "grades3-4-cards-key.pdf", "grades3-4-cards-key.json"].index(path.name)


def test_cards_are_printed_again_from_their_key_file_alone(folder: Path, tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["reprint", str(folder / "grades3-4-cards-key.json"), "--out", str(tmp_path)])
    assert done.exit_code == 0, done.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["grades3-4-cards-key.pdf", "grades3-4-cards.pdf"]
    assert all(path.read_bytes() == (folder / path.name).read_bytes() for path in tmp_path.iterdir())


def test_a_key_file_that_was_changed_prints_with_a_warning(folder: Path, tmp_path: Path) -> None:
    kept = json.loads((folder / "grades3-4-cards-key.json").read_text(encoding="utf-8"))
    kept["pages"]["cards"]["cards"][0]["answer"] = [{"text": "77"}]
    changed = tmp_path / "changed.json"
    changed.write_text(json.dumps(kept), encoding="utf-8")
    done = CliRunner().invoke(main, ["reprint", str(changed), "--out", str(tmp_path / "out")])
    assert done.exit_code == 4
    assert "changed after it was checked" in done.output


def test_copies_of_cards_are_refused(folder: Path, tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["reprint", str(folder / "grades3-4-cards-key.json"), "--copies", "2", "--out", str(tmp_path)])
    assert done.exit_code == 1
    assert list(tmp_path.iterdir()) == []


def test_all_faults_of_a_wish_are_said_at_once_and_nothing_is_written(tmp_path: Path) -> None:
    wishes = ["--topic", "weather,clouds", "--standard", "9.X", "--skill", "juggling", "--not-yet", "snow"]
    done = CliRunner().invoke(main, ["cards", SAMPLE, "--grade", "4", *wishes, "--out", str(tmp_path)])
    assert done.exit_code == 1
    assert all(f'"{word}"' in done.output for word in ("weather", "clouds", "9.X", "juggling", "snow"))
    assert "Traceback" not in done.output
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("arguments", ["", "--grade 4 --per-page 5", "--grade 4 --count 0", "--grade 4 --backs pictures", "--grade 9"])
def test_what_no_deck_can_be_is_a_usage_fault(arguments: str, tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["cards", SAMPLE, *arguments.split(), "--out", str(tmp_path)])
    assert done.exit_code == 2
    assert list(tmp_path.iterdir()) == []


def test_nothing_is_replaced_without_force(folder: Path) -> None:
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    again = ["cards", SAMPLE, "--grades", "3,4", "--count", "8", "--out", str(folder)]
    done = CliRunner().invoke(main, again)
    assert done.exit_code == 1
    assert all(name in done.output for name in before)
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before


def test_a_deck_with_fewer_cards_than_asked_for_says_so_on_screen_and_in_the_key(tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["cards", SAMPLE, "--grade", "2", "--skill", "odd and even", "--out", str(tmp_path)])
    assert done.exit_code == 4
    said = re.search(r"24 cards were wanted, .*", done.output)
    assert said is not None
    kept = json.loads((tmp_path / "grade2-cards-key.json").read_text(encoding="utf-8"))
    assert said[0] in kept["changes"]
