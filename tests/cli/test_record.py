"""``mathgen record`` from the command line: files, faults, exit status."""

from __future__ import annotations

from pathlib import Path

from click.testing import CliRunner, Result

from mathgen.cli import main


def record(folder: Path, *arguments: str) -> Result:
    return CliRunner().invoke(main, ["record", *arguments, "--out", str(folder)])


def test_the_two_files_are_made_and_named(tmp_path: Path) -> None:
    done = record(tmp_path, "--groups", "Owls,Herons", "--colors", "red=4,blue=3")
    assert done.exit_code == 0, done.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["record.pdf", "record.xlsx"]
    assert [Path(line).name for line in done.stdout.splitlines()] == ["record.pdf", "record.xlsx"]


def test_faults_of_all_options_come_at_once_and_nothing_is_written(tmp_path: Path) -> None:
    done = record(tmp_path, "--groups", "Owls,Totals", "--colors", "red,blue", "--set-up", "red=4,gold=x,green=2")
    assert done.exit_code == 1
    assert all(part in done.output for part in ('found "gold=x"', '"Totals"', "how many of blue", "count for green"))
    assert list(tmp_path.iterdir()) == []


def test_without_any_counts_the_usage_says_how_they_are_written(tmp_path: Path) -> None:
    done = record(tmp_path, "--groups", "Owls")
    assert done.exit_code == 2
    assert "--set-up red=4,blue=3,gold=5" in done.output
