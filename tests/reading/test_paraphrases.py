"""Problems put in other words by people who saw the table, the question as a formula and its answer, and nothing of the program.

They show whether the reader reads, or only mirrors the sentences that the program writes: each is read right or asked about.
"""

from __future__ import annotations

import json
from functools import cache
from typing import Any

import pytest
from sympy import Rational

from mathgen.exact.rounding import rounded
from mathgen.reading.tokens import NotRead
from tests.reading.score_corpus import CORPUS, listener

PARAPHRASES = [json.loads(line) for line in (CORPUS / "paraphrases.jsonl").read_text(encoding="utf-8").splitlines()]


def _right(found: str, line: dict[str, Any]) -> bool:
    """A ratio is compared by its value, a rounded answer with the rounded key."""
    wanted = str(line["value"])
    if not found[:1].isdigit():
        return sorted(found.split(" and ")) == sorted(wanted.split(" and "))
    value, exact = Rational(found.replace(":", "/")), Rational(wanted.replace(":", "/"))
    places = None if line["places"] is None else line["places"] + 2 * (line["form"] == "percent")
    return value == exact or (places is not None and value == rounded(exact, places))


@cache
def outcomes() -> tuple[tuple[str, str], ...]:
    """Of each paraphrase, what came of it (``right``, ``wrong``, ``asked``) and what was said."""
    found = []
    for line in PARAPHRASES:
        outcome = listener(line["table"]).outcome(line["text"])
        came = "asked" if outcome.verdict != "answer" else "right" if _right(outcome.value, line) else "wrong"
        found.append((came, f"{line['id']} {line['text']} | {outcome.value} {outcome.why} | {line['value']}"))
    return tuple(found)


def test_there_are_two_hundred() -> None:
    assert len({line["text"] for line in PARAPHRASES}) >= 200


def test_none_is_read_wrongly() -> None:
    assert [said for came, said in outcomes() if came == "wrong"] == []


def test_the_strict_reader_of_printed_problems_reads_none_wrongly() -> None:
    wrong = []
    for line in PARAPHRASES:
        try:
            reading = listener(line["table"])._reader.read(line["text"])
        except NotRead:
            continue
        if not _right(str(reading.value), line):
            wrong.append((line["text"], reading.value))
    assert wrong == []


@pytest.mark.parametrize(("found", "right"), [("1/4", True), ("1:4", True), ("0.25", True), ("3/4", False), ("Owls", False)])
def test_a_wrong_reading_would_show(found: str, right: bool) -> None:
    assert _right(found, {"value": "1/4", "form": "any", "places": None}) == right
