"""The reading grade of sheets: Flesch-Kincaid over all the problems of a sheet, and of a bank, beside published school problems.

Run: ``python tests/bench/bench_reading.py [TABLE]``. The column beside ours was computed by the same recipe over 2,305 school problems
(ASDiv, Miao, Liang and Su 2020), which has no grades 7 and 8. One short problem is too short for the formula: only whole sheets are
scored.
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.bank.plan import SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from tests.audit.readability import reading_grade

ASDIV = {1: 3.4, 2: 3.3, 3: 4.7, 4: 4.4, 5: 5.2, 6: 5.3}
SEEDS = range(1, 6)


def main(path: str) -> None:
    table = read_table(path, ReadOptions()).table
    desk = Desk(table, scenario())
    print("grade  sheets (5 seeds)               bank   ASDiv")
    for grade in range(1, 9):
        sheets = [[problem.text for problem in make_sheet(table, SheetPlan(grade=grade, seed=seed)).forms[0].problems] for seed in SEEDS]
        scores = " ".join(f"{reading_grade(texts):5.1f}" for texts in sheets)
        bank = [problem.text for problem in build_bank(desk, load("ccss"), (grade,), 1, 20, Report())]
        print(f"{grade}      {scores}  {reading_grade(bank):5.1f}   {ASDIV.get(grade, '-')}")


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else "samples/main.csv")
