"""``mathgen read`` as a person and as a program call it."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

CLEAR = "Pins knocked down\nGroup,Trial,Red (4),Blue (3)\nZoë's Owls,1,3,2\nZoë's Owls,2,4,absent\n"
OPEN = "Group,Trial,Red,Blue\nOwls,1,3,\n"
FAULTY = "Pins knocked down\nGroup,Trial,Red (4),Blue (3)\nOwls,1,1O,9\n"


def run(*words: str, typed: str = "", **env: str) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run(
        [sys.executable, "-m", "mathgen", *words], input=typed.encode(), capture_output=True, env=os.environ | env, check=False
    )


def test_a_clear_table_is_shown_back_on_standard_output() -> None:
    done = run("read", "-", typed=CLEAR)
    assert (done.returncode, done.stderr) == (0, b"")
    assert done.stdout.decode().splitlines()[:4] == [
        "1 group: Zoë's Owls",
        "2 trials: 1, 2",
        "2 colors: red (4 set up), blue (3 set up)",
        "3 results: 9 of 11 pins knocked down",
    ]


def test_questions_go_to_standard_error_with_status_3() -> None:
    done = run("read", "-", typed=OPEN)
    assert (done.returncode, done.stdout) == (3, b"")
    assert b"--counts down" in done.stderr
    assert b"--blank absent" in done.stderr
    assert b"--set-up red=N,blue=N" in done.stderr


def test_the_options_answer_the_questions() -> None:
    done = run("read", "-", "--json", "--counts", "standing", "--blank", "none", "--set-up", "red=4, Blue=3", typed=OPEN)
    assert done.returncode == 0
    assert json.loads(done.stdout)["rows"] == [
        {"group": "Owls", "trial": 1, "color": "red", "set_up": 4, "down": 1},
        {"group": "Owls", "trial": 1, "color": "blue", "set_up": 3, "down": 3},
    ]


def test_faults_go_to_standard_error_all_at_once_with_status_1() -> None:
    done = run("read", "-", typed=FAULTY)
    assert (done.returncode, done.stdout) == (1, b"")
    assert [line.split(b":")[0] for line in done.stderr.splitlines()] == [
        b'row 3, column "Red (4)", cell C3',
        b'row 3, column "Blue (3)", cell D3',
    ]


@pytest.mark.parametrize(("typed", "status", "filled"), [(CLEAR, 0, "rows"), (FAULTY, 1, "faults"), (OPEN, 3, "questions")])
def test_json_has_the_same_keys_whatever_the_outcome(typed: str, status: int, filled: str) -> None:
    done = run("read", "-", "--json", typed=typed, PYTHONIOENCODING="ascii")
    shown = json.loads(done.stdout.decode("utf-8"))
    assert (done.returncode, done.stderr) == (status, b"")
    assert list(shown) == ["rows", "absent", "notes", "questions", "faults"]
    assert [key for key in ("rows", "questions", "faults") if shown[key]] == [filled]


def test_a_file_is_read_as_standard_input_is(tmp_path: Path) -> None:
    path = tmp_path / "class.csv"
    path.write_text(CLEAR, encoding="utf-8")
    assert run("read", str(path), "--json").stdout == run("read", "-", "--json", typed=CLEAR).stdout


def test_a_missing_file_is_a_fault_and_no_traceback(tmp_path: Path) -> None:
    done = run("read", str(tmp_path / "none.csv"))
    assert done.returncode == 1
    assert b"Traceback" not in done.stderr


@pytest.mark.parametrize("given", ["red", "red=0", "red=4,red=5", "=4", "red=four", ""])
def test_a_set_up_option_that_cannot_be_read_is_wrong_usage(given: str) -> None:
    done = run("read", "-", "--set-up", given, typed=CLEAR)
    assert done.returncode == 2
    assert b"--set-up" in done.stderr


def test_reading_a_clear_table_loads_no_spreadsheet_reader_and_no_spelling() -> None:
    """Import time is part of what a teacher waits for."""
    code = "import sys; from mathgen.cli import main; main(['read', '-'], standalone_mode=False); print(*sorted(sys.modules))"
    done = subprocess.run([sys.executable, "-c", code], input=CLEAR.encode(), capture_output=True, check=True)
    loaded = set(done.stdout.decode().splitlines()[-1].split())
    assert not loaded & {"pandas", "rapidfuzz", "openpyxl", "python_calamine", "typst", "jinja2"}


def test_a_title_in_which_a_ball_goes_down_leaves_the_question_open() -> None:
    done = run("read", "-", "--json", typed="Sock ball down the cardboard ramp\nGroup,Trial,Red (4)\nOwls,1,3\n")
    assert done.returncode == 3
    assert [question["id"] for question in json.loads(done.stdout)["questions"]] == ["counts"]


def test_names_come_back_as_typed() -> None:
    typed = 'Pins knocked down\nGroup\tTrial\tGlow-in-the-dark (4)\nX²\t1\t3\n"Q"\t1\t2\n😀 Cats\t1\t1\n'
    shown = json.loads(run("read", "-", "--json", typed=typed).stdout)
    assert [(row["group"], row["color"]) for row in shown["rows"]] == [
        ("X²", "glow-in-the-dark"), ('"Q"', "glow-in-the-dark"), ("😀 Cats", "glow-in-the-dark"),
    ]  # fmt: skip
    assert shown["notes"] == ['The counts are of pins knocked down, as "Pins knocked down" says.']


def test_a_control_character_is_a_fault_that_says_where() -> None:
    done = run("read", "-", typed=CLEAR.replace("Owls,2", "Ow\x07ls,2"))
    assert (done.returncode, done.stdout) == (1, b"")
    assert done.stderr.decode().startswith('row 4, column 1, cell A4: found "Zoë\'s Ow[U+0007]ls"')


def test_no_row_of_a_group_called_means_is_lost() -> None:
    done = run("read", "-", "--json", typed=CLEAR + "Means,1,1,3\n")
    shown = json.loads(done.stdout)
    assert shown["rows"][-2:] == [
        {"group": "Means", "trial": 1, "color": "red", "set_up": 4, "down": 1},
        {"group": "Means", "trial": 1, "color": "blue", "set_up": 3, "down": 3},
    ]
    assert shown["notes"][0] == '"Means" (row 5) is read as a group: its counts do not sum up the rows above it.'
