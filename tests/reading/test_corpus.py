"""Pupils' own questions, asked line by line."""

from __future__ import annotations

import pytest

from tests.reading.score_corpus import Score, lines_of, score

PLAIN, HOSTILE = "plain.jsonl", "hostile.jsonl"
ALL = [PLAIN, HOSTILE, "opened.jsonl", "fresh.jsonl", "second.jsonl", "third.jsonl", "fourth.jsonl", "fifth.jsonl", "sixth.jsonl"]


@pytest.fixture(scope="module")
def scores() -> dict[str, Score]:
    return {name: score(lines_of(name)) for name in ALL}


@pytest.mark.parametrize("name", ALL)
def test_no_answer_is_wrong(scores: dict[str, Score], name: str):
    assert scores[name].wrong == ()


def test_clear_plain_questions_are_answered(scores: dict[str, Score]):
    assert scores[PLAIN].clear > 100
    assert scores[PLAIN].clear_right * 100 >= scores[PLAIN].clear * 85, scores[PLAIN].missed


@pytest.mark.parametrize("name", ALL)
def test_what_must_not_be_answered_is_not(scores: dict[str, Score], name: str):
    assert scores[name].barred >= 20
    assert scores[name].barred_kept * 100 >= scores[name].barred * 95


def test_the_score_tells_a_wrong_answer_from_a_right_one():
    line = {"id": "x", "table": "samples/main.csv", "question": "how many pins did the owls knock down in trial 1", "expect": "answer"}
    assert score([{**line, "value": "8"}]).clear_right == 1
    assert len(score([{**line, "value": "9"}]).wrong) == 1
    assert score([{**line, "expect": ["ask"], "value": None}]).barred_kept == 0
