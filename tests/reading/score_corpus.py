"""How well pupils' own questions are answered: the corpus asked line by line.

Run: ``python -m tests.reading.score_corpus [--shown]``
"""

from __future__ import annotations

import json
import sys
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

from mathgen.reading.pupils.verdict import Listener, Outcome
from mathgen.scenario.words import scenario
from mathgen.trials.reading import read_table

CORPUS = Path(__file__).with_name("corpus")
ROOT = Path(__file__).parents[2]


class Score(NamedTuple):
    """Lines by what came of them; ``clear`` are those that have to be answered, ``barred`` those that must not be."""

    clear: int
    clear_right: int
    barred: int
    barred_kept: int
    answered: int
    wrong: tuple[str, ...]
    missed: tuple[str, ...]

    def __str__(self) -> str:
        return (
            f"clear {self.clear_right}/{self.clear} answered right, must not be answered {self.barred_kept}/{self.barred} kept,"
            f" {self.answered} answered, {len(self.wrong)} of them wrong"
        )


@cache
def listener(table: str) -> Listener:
    """The listener for a table of the corpus; the seeds have a scenario of their own."""
    return Listener(read_table(str(ROOT / table)).table, scenario("seeds" if "seeds" in table else "ramp"))


def _same(value: str, expected: str) -> bool:
    return sorted(value.split(" and ")) == sorted(expected.split(" and "))


def score(lines: list[dict[str, Any]]) -> Score:
    """The score of corpus lines."""
    clear = clear_right = barred = kept = answered = 0
    wrong, missed = [], []
    for line in lines:
        expect = [line["expect"]] if isinstance(line["expect"], str) else line["expect"]
        outcome: Outcome = listener(line["table"]).outcome(line["question"])
        is_answer = outcome.verdict == "answer"
        right = (
            is_answer
            and line.get("value") is not None
            and any(_same(said, str(line["value"])) for said in (outcome.value, outcome.display))
        )
        answered += is_answer
        shown = (
            f"{line['id']} {line['question']} | {line.get('value')} | {outcome.verdict} {outcome.value} | {outcome.read_as} {outcome.why}"
        )
        if "answer" not in expect:
            barred += 1
            kept += not is_answer
        if expect == ["answer"]:
            clear += 1
            clear_right += right
        if is_answer and not right:
            wrong.append(shown)
        elif not is_answer and expect == ["answer"]:
            missed.append(shown)
    return Score(clear, clear_right, barred, kept, answered, tuple(wrong), tuple(missed))


def lines_of(name: str) -> list[dict[str, Any]]:
    """The lines of one part of the corpus."""
    return [json.loads(line) for line in (CORPUS / name).read_text(encoding="utf-8").splitlines()]


if __name__ == "__main__":
    for part in ("plain.jsonl", "hostile.jsonl"):
        found = score(lines_of(part))
        print(part, found)
        for kind, some in (("WRONG", found.wrong), ("missed", found.missed)):
            for one in some if "--shown" in sys.argv else ():
                print("  ", kind, one[:330])
