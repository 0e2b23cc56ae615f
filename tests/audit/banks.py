"""Banks for whole-bank tests: built by the program, handed on as bank lines and raw rows."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.bank.line import as_line
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.scenario.words import scenario
from mathgen.trials.reading import ReadOptions, read_table
from mathgen.trials.table import TrialTable
from tests.audit.results import SEEDS, Words

SAMPLES = Path(__file__).parents[2] / "samples"
GRADES = (1, 2, 3, 4, 5, 6, 7, 8)
NAMES = ("main", "small-sets", "tens", "target", "seeds", "spaces", "accuracy")  # results
EVERY_NAME = (*NAMES, "prices")


@cache
def sample(name: str) -> TrialTable:
    """A sample table."""
    return read_table(str(SAMPLES / f"{name}.csv"), ReadOptions(counts="down")).table


def activity(name: str) -> str:
    """The scenario of a sample."""
    return "seeds" if name == "seeds" else "ramp"


def words(name: str) -> Words:
    """The audit's words for a sample."""
    return SEEDS if name == "seeds" else Words()


def problems(
    table: TrialTable, per_model: int, scenario_name: str = "ramp", grades: tuple[int, ...] = GRADES, seed: int = 1
) -> tuple[list[Problem], Report]:
    """The bank of a table, and the report on it."""
    report = Report()
    return list(build_bank(Desk(table, scenario(scenario_name)), load("ccss"), grades, seed, per_model, report)), report


@cache
def sample_problems(name: str, per_model: int = 40) -> tuple[Problem, ...]:
    """The bank of a sample."""
    return tuple(problems(sample(name), per_model, activity(name))[0])


def lines(bank: list[Problem] | tuple[Problem, ...]) -> list[dict[str, Any]]:
    """Problems as a bank file holds them, by way of its JSON."""
    return [json.loads(json.dumps(as_line(problem))) for problem in bank]
