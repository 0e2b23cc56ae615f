"""Printed words changed by rule: the change is noticed, as words that are not read or as another reading."""

import re
import tomllib
from pathlib import Path
from random import Random

import pytest

from mathgen.reading.evaluate import Counts
from mathgen.reading.read_problem import Reader, Reading
from mathgen.reading.tokens import NotRead
from mathgen.trials.shadow import shadow
from tests.reading.small_class import RAMP, TABLE

TEXTS = [entry[0] for entry in tomllib.loads(Path(__file__).with_name("sentences.toml").read_text(encoding="utf-8"))["read"]]
READER, SHADOW = Reader(TABLE, RAMP), Counts(shadow(TABLE, Random(8)))


def what_is_read(text: str) -> object:
    """All that tells two readings apart, or None where there is none."""
    try:
        reading: Reading = READER.read(text)
        return reading.goal, reading.value, reading.demand, sorted(map(str, reading.facts)), reading.value_on(SHADOW)
    except NotRead:
        return None


def each_changed(text: str, pattern: str, others: list[str]) -> list[str]:
    return [
        text[: found.start()] + other + text[found.end() :] for found in re.finditer(pattern, text) for other in others if other != found[0]
    ]


@pytest.mark.parametrize("text", TEXTS)
def test_a_changed_number_is_noticed(text: str):
    for found in re.finditer(r"[0-9]+", text):
        for other in (int(found[0]) + 1, int(found[0]) + 10, max(0, int(found[0]) - 1)):
            changed = text[: found.start()] + str(other) + text[found.end() :]
            assert changed == text or what_is_read(changed) != what_is_read(text), changed


@pytest.mark.parametrize("text", TEXTS)
def test_a_changed_color_or_group_is_noticed(text: str):
    for changed in each_changed(text, r"\b(red|blue|gold)\b", ["red", "blue", "gold"]) + each_changed(
        text, r"\b(Owls|Wrens|Kites)\b", ["Owls", "Wrens", "Kites"]
    ):
        assert what_is_read(changed) != what_is_read(text), changed


@pytest.mark.parametrize("text", TEXTS)
def test_not_is_noticed_wherever_it_stands(text: str):
    words = text.split(" ")
    for place in range(len(words) + 1):
        # Not read, or read as the opposite: "the probability that the pin is not a red pin".
        assert what_is_read(" ".join([*words[:place], "not", *words[place:]])) != what_is_read(text)


@pytest.mark.parametrize("text", TEXTS)
def test_a_second_question_is_noticed(text: str):
    assert what_is_read(f"{text} How many gold pins did the Wrens knock down in Trial 2?") is None


@pytest.mark.parametrize("text", TEXTS)
def test_more_for_fewer_and_down_for_standing_are_noticed(text: str):
    for one, other in (
        ("more", "fewer"),
        ("increase", "decrease"),
        ("most", "fewest"),
        ("knocked down", "left standing"),
        ("percent", "fraction"),
    ):
        for changed in each_changed(text, rf"\b{one}\b", [other]) + each_changed(text, rf"\b{other}\b", [one]):
            if re.search(r"one (more|fewer) trial|same (percent|fraction)|Suppose the|this result|for [0-9]+ (more|fewer)", changed):
                continue  # of one meaning, or covered by the reasons of test_read_problem
            assert what_is_read(changed) != what_is_read(text), changed
