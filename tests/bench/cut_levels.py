"""Writes mathgen/difficulty/levels.toml: for each grade, thirds of the scores of all sample banks taken together.

Run after a change of models, wording or weights: python tests/bench/cut_levels.py 2026-11-25
"""

from __future__ import annotations

import sys
from collections import defaultdict
from datetime import date
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.difficulty.levels import levels_text
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table

SAMPLES = ("main", "small-sets", "tens", "target", "seeds")
LEVELS = Path("mathgen/difficulty/levels.toml")


def main(day: str) -> None:
    by_grade: dict[int, list[int]] = defaultdict(list)
    for sample in SAMPLES:
        table = read_table(f"samples/{sample}.csv", ReadOptions()).table
        desk = Desk(table, scenario("seeds" if sample == "seeds" else "ramp"))
        for problem in build_bank(desk, load("ccss"), tuple(range(1, 9)), seed=1, per_model=40, report=Report()):
            by_grade[problem.grade].append(problem.difficulty)
    source = f"thirds of the pooled banks of the samples {', '.join(SAMPLES)}"
    LEVELS.write_text(levels_text(dict(sorted(by_grade.items())), day, source), encoding="utf-8")
    print(LEVELS.read_text(encoding="utf-8"))


if __name__ == "__main__":
    main(date.fromisoformat(sys.argv[1]).isoformat())
