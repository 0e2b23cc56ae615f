"""Time per proved problem against the floor of a problem: ``python tests/bench/bench_problem.py [ROUNDS]``.

A problem's time runs from the draft's words to the proof (``Builder.candidate`` and ``Builder.finish``) over a bank of all grades.
Every round starts at a new desk, so that nothing is remembered of a draft but what the process keeps of any text or number. The
main sample is the same in each round; beside it goes a table of the same shape with other counts in each round, of which the
process has seen nothing. Time for drafts that are stopped is shown apart, and so is that of the whole bank, drawing included.

The floor: one ``linsolve([a*x - b], [x])`` with fresh integers, the expression built inside the loop, plus one Jinja2 render of a
template of three sentences. Both are warm, rounds take turns, and the best round of each counts. Garbage is looked for as seldom
as in every command, for the floor as well.
"""

from __future__ import annotations

import gc
import os
import sys
from dataclasses import replace
from pathlib import Path
from random import Random
from time import perf_counter
from typing import NamedTuple

os.environ["SYMPY_GROUND_TYPES"] = "python"  # as mathgen sets them, for the floor as well; before sympy is imported
sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from jinja2 import Environment
from sympy import Integer, linsolve, symbols

from mathgen.bank.builder import Builder, Stopped
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.cli import SELDOM
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import TrialTable
from tests.bench.tables import MAIN

PER_MODEL = 40
_X = symbols("x")
_TEMPLATE = Environment(autoescape=False).from_string(
    "{{ group }} set up {{ whole }} {{ color }} pins.\n"
    "{{ group }} knocked down {{ part }} of the pins.\n"
    "How many {{ color }} pins were left standing?"
)


def floor_seconds(rng: Random, times: int = 400) -> float:
    """Seconds of one floor: one equation and one render."""
    numbers = [(rng.randint(2, 10**4), rng.randint(2, 10**4)) for _ in range(times)]
    start = perf_counter()
    for a, b in numbers:
        linsolve([Integer(a) * _X - Integer(b)], [_X])
        _TEMPLATE.render(group="The Owls", whole=a, part=b, color="red")
    return (perf_counter() - start) / times


class Spent(NamedTuple):
    """Seconds of one bank, and how many drafts were kept and stopped."""

    on_kept: float
    on_stopped: float
    whole: float
    kept: int
    stopped: int


def one_bank(table: TrialTable) -> Spent:
    """A bank of all grades, drawn as ``build_bank`` draws it, with a watch on each draft."""
    begin = perf_counter()
    desk, curriculum = Desk(table, scenario("ramp")), load("ccss")
    on_kept = on_stopped = 0.0
    kept = stopped = 0
    for grade in range(1, 8):
        builder = Builder(desk, curriculum, grade)
        for model in problem_models():
            if curriculum.entry(model.skill, grade) is None:
                continue
            rng = stream(1, "bank", grade, model.name)
            of_model: set[str] = set()
            for draft in drafts(model.space(desk.view), rng):
                start = perf_counter()
                one = builder.candidate(model, draft, rng)
                if isinstance(one, Stopped):
                    on_stopped += perf_counter() - start
                    stopped += 1
                    continue
                problem = builder.finish(one)
                on_kept += perf_counter() - start
                kept += 1
                if not proved(problem):
                    sys.exit(f"not proved: {problem.text} {problem.proof}")
                of_model.add(problem.id)
                if len(of_model) == PER_MODEL:
                    break
    return Spent(on_kept, on_stopped, perf_counter() - begin, kept, stopped)


def other_counts(table: TrialTable, rng: Random) -> TrialTable:
    """The same groups, trials, colors and set-up counts, with other results."""
    return TrialTable(tuple(replace(row, down=rng.randint(0, row.set_up)) for row in table.rows))


def show(name: str, spent: list[Spent], floor: float) -> None:
    """One line a measure: microseconds a kept problem, and the ratio to the floor."""
    measures = {
        "kept problems": min(one.on_kept / one.kept for one in spent),
        "and stopped drafts": min((one.on_kept + one.on_stopped) / one.kept for one in spent),
        "whole bank": min(one.whole / one.kept for one in spent),
    }
    print(f"{name}: {spent[-1].kept} kept, {spent[-1].stopped} stopped")
    for measure, seconds in measures.items():
        print(f"  {measure:20} {seconds * 1e6:7.1f} us   {seconds / floor:5.2f} floors")


def main(rounds: int) -> None:
    """Floor and banks in turn."""
    gc.set_threshold(*SELDOM)
    table = read_table(str(MAIN), ReadOptions()).table
    rng = Random(1)
    floor_seconds(rng)
    one_bank(table)  # templates compiled
    floors: list[float] = []
    again: list[Spent] = []
    fresh: list[Spent] = []
    for _ in range(rounds):
        floors.append(floor_seconds(rng))
        again.append(one_bank(table))
        floors.append(floor_seconds(rng))
        fresh.append(one_bank(other_counts(table, rng)))
    floor = min(floors)
    print(f"floor {floor * 1e6:.1f} us, best of {len(floors)}   (wanted for kept problems: at most 4 floors with all four routes)")
    show("main sample", again, floor)
    show("other counts in each round", fresh, floor)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 7)
