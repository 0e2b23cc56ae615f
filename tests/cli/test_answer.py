"""``mathgen answer`` as a person and as a program call it."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

TABLE = "Pins knocked down\nGroup,Trial,Red (4),Blue (3)\nOwls,1,3,2\nOwls,2,4,1\nWrens,1,1,2\nWrens,2,2,0\n"
SEEDS = "Seeds sprouted\nTeam,Trial,Pea (4),Bean (3)\nFerns,1,3,2\nMallows,1,4,1\n"


@pytest.fixture
def table(tmp_path: Path) -> Path:
    path = tmp_path / "class.csv"
    path.write_text(TABLE, encoding="utf-8")
    return path


def run(*words: str | Path) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run([sys.executable, "-m", "mathgen", "answer", *map(str, words)], capture_output=True, check=False)


def test_an_answer_is_shown_with_what_was_understood(table: Path):
    done = run(table, "what fractoin of the red pins did the owls nock down on trial 1?")
    assert (done.returncode, done.stderr) == (0, b"")
    assert "red pins that the Owls knocked down in Trial 1" in done.stdout.decode()
    assert "Answer: 3/4" in done.stdout.decode()


@pytest.mark.parametrize(("question", "status", "verdict"), [("how many did they get", 3, "ask"), ("will the owls win", 1, "decline")])
def test_the_exit_status_tells_asking_back_from_declining(table: Path, question: str, status: int, verdict: str):
    done = run(table, question, "--json")
    assert done.returncode == status
    found = json.loads(done.stdout)
    assert found["verdict"] == verdict
    assert "answer" not in found
    assert found["why"]


def test_a_file_gets_a_line_for_each_line_empty_ones_too(table: Path, tmp_path: Path):
    questions = tmp_path / "questions.txt"
    questions.write_text("how many pins did the owls knock down in trial 1\n\nhow many\u2028more\n", encoding="utf-8")
    done = run(table, "--file", questions)
    found = [json.loads(line) for line in done.stdout.decode().splitlines()]
    assert done.returncode == 0
    assert [one["verdict"] for one in found] == ["answer", "ask", "ask"]
    assert found[0]["answer"]["value"] == "5"


def test_a_question_or_a_file_but_not_both(table: Path):
    assert run(table).returncode == 2


def test_the_head_of_a_table_tells_what_its_things_are_called(tmp_path: Path):
    path = tmp_path / "seeds.csv"
    path.write_text(SEEDS, encoding="utf-8")
    assert json.loads(run(path, "how many beans came up for the ferns", "--json").stdout)["answer"]["value"] == "2"
