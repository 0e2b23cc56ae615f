"""Time per proved problem against the floor of a problem: ``python tests/bench/bench_problem.py [ROUNDS]``.

A problem's time runs from the draft's words to the proof (``Builder.candidate`` and ``Builder.finish``) over a bank of the main
sample, all grades; drafts that are stopped on the way are timed apart and named. The floor: one ``linsolve([a*x - b], [x])`` with
fresh integers, the expression built inside the loop, plus one Jinja2 render of a template of three sentences. Both are warm.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from pathlib import Path
from random import Random
from time import perf_counter

os.environ["SYMPY_GROUND_TYPES"] = "python"  # as mathgen sets them, for the floor as well; before sympy is imported
sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from jinja2 import Environment
from sympy import Integer, linsolve, symbols

from mathgen.bank.builder import Builder, Stopped
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.grades.curriculum import load
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.problems.draft import Draft
from mathgen.proof.record import proved
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
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


def to_build(desk: Desk) -> Iterator[tuple[Builder, ProblemModel, Draft, Random]]:
    """The drafts that a bank of all grades meets, as ``build_bank`` meets them."""
    curriculum = load("ccss")
    for grade in range(2, 8):
        builder = Builder(desk, curriculum, grade)
        for model in problem_models():
            if curriculum.entry(model.skill, grade) is None:
                continue
            rng = stream(1, "bank", grade, model.name)
            kept = 0
            for draft in drafts(model.space(desk.view), rng):
                yield builder, model, draft, rng
                kept += not isinstance(builder.candidate(model, draft, Random(rng.random())), Stopped)
                if kept == PER_MODEL:
                    break


def problem_seconds(work: list[tuple[Builder, ProblemModel, Draft, Random]]) -> tuple[float, float, int, int]:
    """Seconds spent on kept and on stopped drafts, and how many of each."""
    spent_kept = spent_stopped = 0.0
    kept = stopped = 0
    for builder, model, draft, rng in work:
        start = perf_counter()
        one = builder.candidate(model, draft, rng)
        if isinstance(one, Stopped):
            spent_stopped += perf_counter() - start
            stopped += 1
            continue
        problem = builder.finish(one)
        spent_kept += perf_counter() - start
        kept += 1
        if not proved(problem):
            sys.exit(f"not proved: {problem.text} {problem.proof}")
    return spent_kept, spent_stopped, kept, stopped


def main(rounds: int) -> None:
    """Floor and problems in turn; the best round of each counts."""
    desk = Desk(read_table(str(MAIN), ReadOptions()).table, scenario("ramp"))
    work = list(to_build(desk))
    rng = Random(1)
    floor_seconds(rng)
    problem_seconds(work)  # templates compiled, parses cached
    floors, problems = [], []
    for _ in range(rounds):
        floors.append(floor_seconds(rng))
        problems.append(problem_seconds(work))
    floor = min(floors)
    kept = min(spent / number for spent, _, number, _ in problems)
    whole = min((spent + lost) / number for spent, lost, number, _ in problems)
    print(f"floor                        {floor * 1e6:7.1f} us   best of {rounds}")
    print(f"kept problem                 {kept * 1e6:7.1f} us   {problems[-1][2]} problems")
    print(f"kept, with the stopped ones  {whole * 1e6:7.1f} us   {problems[-1][3]} stopped")
    print(f"kept / floor                 {kept / floor:7.2f}      (wanted: at most 1.5)")
    print(f"with the stopped / floor     {whole / floor:7.2f}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 7)
