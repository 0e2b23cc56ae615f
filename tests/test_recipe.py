"""DEVELOPERS.md shows a new problem model in three pieces; a copy of the project that takes them has the model, proved and audited."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.audit.audit import audit_bank
from tests.audit.banks import sample, words
from tests.audit.results import Results

ROOT = Path(__file__).resolve().parents[1]
MODEL = "standing_in_two_trials"
PIECES = dict(re.findall(r"<!-- recipe: (\S+) -->\n```\w+\n(.*?)```", (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8"), re.DOTALL))


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The project with the three pieces where the guide says they belong."""
    top = tmp_path_factory.mktemp("recipe")
    for folder in ("mathgen", "templates", "tests", "samples"):
        shutil.copytree(ROOT / folder, top / folder, ignore=shutil.ignore_patterns("__pycache__", "corpus", "pages", "pictures"))
    shutil.copy(ROOT / "pyproject.toml", top)
    function, wording, row = PIECES
    with (top / function).open("a", encoding="utf-8") as strand:
        strand.write(f"\n\n{PIECES[function]}")
    assert not (top / wording).exists()
    (top / wording).write_text(PIECES[wording], encoding="utf-8")
    rows = (top / row).read_text(encoding="utf-8")
    (top / row).write_text(rows.replace("\nROWS = {\n", f"\nROWS = {{\n{PIECES[row]}", 1), encoding="utf-8")
    return top


def run(top: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """A Python program in the copy, which imports the copy's own files."""
    env = {**os.environ, "PYTHONPATH": str(top)}
    return subprocess.run([sys.executable, *arguments], cwd=top, env=env, capture_output=True, text=True, check=False)


def test_the_function_is_short() -> None:
    body = PIECES["mathgen/models/counting.py"].strip().splitlines()
    assert len([line for line in body if line.strip()]) <= 13


def test_the_bank_has_proved_problems_of_the_model_in_each_frame_and_the_audit_agrees(copy: Path) -> None:
    done = run(copy, "-m", "mathgen", "bank", "samples/main.csv", "--grades", "2", "--out", "bank.jsonl")
    assert done.returncode == 0, done.stderr
    bank = [json.loads(line) for line in (copy / "bank.jsonl").read_text(encoding="utf-8").splitlines()]
    made = [line for line in bank if line["model"] == MODEL]

    assert len(made) > 5
    assert all(verdict == "agrees" for line in made for verdict in line["proof"].values())
    assert {line["text"].split()[0] for line in made} > {"In", "Look", "The"} - {"The"}
    assert not audit_bank(made, Results.of(sample("main").rows), words("main"))


def test_the_row_worked_by_hand_agrees(copy: Path) -> None:
    done = run(copy, "-m", "pytest", "-q", "-p", "no:cacheprovider", "tests/models/test_counting.py", "-k", f"worked_by_hand and {MODEL}")
    assert done.returncode == 0, done.stdout
    assert "1 passed" in done.stdout
