"""What stands against a command is told first, at once, and alone."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from mathgen.cli import main
from mathgen.press.card_files import card_names
from mathgen.press.today_files import today_names

SAMPLE = str(Path(__file__).parents[2] / "samples" / "main.csv")


def told(*words: str) -> tuple[int, str]:
    done = CliRunner().invoke(main, list(words))
    return done.exit_code, done.output


@pytest.mark.parametrize(
    ("command", "names"),
    [
        (["today", SAMPLE, "--grade", "4"], today_names(4)),
        (["worksheet", SAMPLE, "--grade", "4"], today_names(4)[:3]),
        (["cards", SAMPLE, "--grades", "3-5"], card_names((3, 4, 5))),
        (["record", "--groups", "Owls,Wrens", "--set-up", "red=4"], ("record.pdf", "record.xlsx")),
    ],
)
def test_files_that_are_there_are_told_alone(tmp_path: Path, command: list[str], names: tuple[str, ...]) -> None:
    for name in names:
        (tmp_path / name).write_text("kept", encoding="utf-8")
    status, said = told(*command, "--out", str(tmp_path))
    assert status == 1
    assert said.startswith("already there: ")
    assert said.count("\n") == 1
    assert all(name in said for name in names)
    assert all((tmp_path / name).read_text(encoding="utf-8") == "kept" for name in names)


@pytest.mark.parametrize("command", [["pick", SAMPLE, "--grade", "4"], ["bank", SAMPLE, "--grade", "4"]])
def test_a_file_that_is_there_is_told_alone(tmp_path: Path, command: list[str]) -> None:
    out = tmp_path / "out.jsonl"
    out.write_text("kept", encoding="utf-8")
    status, said = told(*command, "--out", str(out))
    assert (status, said.count("\n")) == (1, 1)
    assert said.startswith("already there: ")


@pytest.mark.parametrize("command", ["worksheet", "cards", "pick"])
def test_unknown_words_are_told_together_with_their_neighbors_and_without_the_table(tmp_path: Path, command: str) -> None:
    status, said = told(
        command, SAMPLE, "--grade", "4", "--topic", "fractons", "--standard", "4.NF.A.9", "--skill", "totals", "--out", str(tmp_path / "o")
    )
    assert status == 1
    assert len(said.splitlines()) == 3
    assert '--topic: there is no "fractons"; did you mean "fractions"' in said
    assert '--standard: there is no "4.NF.A.9"; did you mean "4.NF.A.1"' in said
    assert "mathgen list standards prints them all." in said
    assert "mathgen list skills prints them all." in said
    assert "6 groups" not in said


def test_an_option_of_the_wrong_kind_and_an_unknown_word_are_told_together() -> None:
    status, said = told("worksheet", SAMPLE, "--grade", "4", "--level", "hard", "--topic", "fractons", "--out", "out")
    assert status == 2
    told_of = [line.split(":")[0] for line in said.splitlines() if line.startswith("  - ")]
    assert told_of == ["  - Invalid value for '--level'", "  - --topic"]


def test_the_longest_sheet_is_told_by_the_option_as_by_its_help() -> None:
    assert "1<=x<=20" in told("worksheet", "--help")[1]
    assert "is not in the range 1<=x<=20" in told("worksheet", SAMPLE, "--grade", "4", "--count", "5000", "--out", "out")[1]


@pytest.mark.parametrize("command", ["worksheet", "cards", "pick", "today"])
def test_grade_and_grades_together_are_refused(command: str) -> None:
    status, said = told(command, SAMPLE, "--grade", "4", "--grades", "2,3", "--out", "out")
    assert status == 2
    assert "Give one of them." in said


def test_an_unknown_command_gets_its_neighbor() -> None:
    assert "Did you mean 'worksheet'?" in told("workshet", SAMPLE)[1]
    assert told("bananas")[0] == 2
