"""How varied the problems of one grade are, at 100 and 500 problems, beside the figures of a published collection.

Run: ``python tests/bench/bench_variety.py [GRADE ...]``. The figures beside ours were computed with the same recipe on random samples
of ASDiv (2,305 school problems, Miao, Liang and Su 2020): sets of one size only may be compared, and a bank about one activity
has to lie below them.
"""

from __future__ import annotations

import sys
from collections import Counter, defaultdict
from pathlib import Path
from random import Random

sys.path.insert(0, str(Path(__file__).parents[2]))

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from tests.bench.variety import distinct, diversities, prepared, self_bleu, words_of

ASDIV = {100: (0.976, 0.0, 0.08, 0.03, 0.27, 0.77, 0.93), 500: (0.921, 0.003, 0.21, 0.13, 0.15, 0.63, 0.87)}
_NEAR = 0.2  # a text nearer than this to another is almost a copy


def problems_of(grade: int, number: int) -> list[Problem]:
    """As many problems of a grade, of all models by turns."""
    desk = Desk(read_table("samples/main.csv", ReadOptions()).table, scenario())
    by_model: dict[str, list[Problem]] = defaultdict(list)
    for problem in build_bank(desk, load("ccss"), (grade,), 5, 120, Report()):
        by_model[problem.model].append(problem)
    for kept in by_model.values():
        Random(f"variety {grade}").shuffle(kept)
    turns = [kept[turn] for turn in range(120) for kept in by_model.values() if turn < len(kept)]
    return turns[:number]


def row(problems: list[Problem]) -> str:
    """The house recipe for one set of problems."""
    texts = [problem.text for problem in problems]
    raw, ready = [words_of(text) for text in texts], prepared(texts)
    near = diversities(ready)
    within, firsts = [], []
    models = defaultdict(list)
    for problem, words in zip(problems, ready, strict=True):
        models[problem.model].append(words)
    for kept in models.values():
        firsts.append(kept[0])
        within.extend(diversities(kept) if len(kept) > 1 else [])
    openings = Counter(words_of(problem.question)[:3] for problem in problems)
    shapes = {(problem.model, problem.frame, str(problem.ask.demand)) for problem in problems}
    figures = [
        f"CLD {sum(near) / len(near):.3f}",
        f"LD<0.2 {sum(one < _NEAR for one in near) / len(near):.3f}",
        f"self-BLEU raw {self_bleu(raw):.2f} prepared {self_bleu(ready):.2f}",
        "distinct-1/2/3 " + " ".join(f"{distinct(raw, size):.2f}" for size in (1, 2, 3)),
        f"between models {sum(diversities(firsts)) / len(firsts):.3f}",
        f"within one {sum(within) / max(len(within), 1):.3f}",
        f"different texts {len(set(ready))}",
        f"models {len(models)}, wordings {len(shapes)}",
        f"openings {len(openings)} (commonest {max(openings.values()) / len(problems):.0%})",
    ]
    return "; ".join(figures)


def main() -> None:
    """Print the figures of each grade."""
    for size, figures in ASDIV.items():
        cld, near, raw, ready, *ones = figures
        shares = " ".join(f"{one:.2f}" for one in ones)
        likeness = f"self-BLEU raw {raw:.2f} prepared {ready:.2f}"
        print(f"ASDiv, {size} of it: CLD {cld:.3f}; LD<0.2 {near:.3f}; {likeness}; distinct-1/2/3 {shares}")
    for grade in map(int, sys.argv[1:] or (2, 3, 4, 5, 6, 7)):
        for size in ASDIV:
            problems = problems_of(grade, size)
            print(f"grade {grade}, {len(problems)} problems: {row(problems)}", flush=True)


if __name__ == "__main__":
    main()
