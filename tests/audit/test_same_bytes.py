"""The same table, options and seed give the same bank, byte for byte, whatever the process's hash seed."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.audit.banks import SAMPLES


def bank_file(table: Path, out: Path, hash_seed: str, *options: str) -> bytes:
    """The bytes of a bank made by the command in a process of its own."""
    command = [sys.executable, "-m", "mathgen", "bank", str(table), "--grades", "2-7", "--per-model", "10", "--out", str(out), *options]
    environment = {**os.environ, "PYTHONHASHSEED": hash_seed}
    subprocess.run(command, check=True, capture_output=True, env=environment, cwd=SAMPLES.parent)
    return out.read_bytes()


@pytest.mark.parametrize("name", ["main", "small-sets"])
def test_two_hash_seeds_give_the_same_bank(name: str, tmp_path: Path) -> None:
    first, second = (bank_file(SAMPLES / f"{name}.csv", tmp_path / f"{hash_seed}.jsonl", hash_seed) for hash_seed in ("1", "271828"))
    assert first
    assert first == second


def test_another_seed_gives_another_bank(tmp_path: Path) -> None:
    first = bank_file(SAMPLES / "main.csv", tmp_path / "one.jsonl", "1")
    other = bank_file(SAMPLES / "main.csv", tmp_path / "two.jsonl", "1", "--seed", "2")
    assert first != other
