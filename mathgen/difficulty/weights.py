"""The weights of the score, read once."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import NamedTuple

from mathgen.errors import RequestFault

_FILE = Path(__file__).parent / "weights.toml"


class Weights(NamedTuple):
    """The weights of one grade, in quarter points."""

    structure: Mapping[str, int]
    clash: int
    fewer: int
    extra_number: int
    operation: int
    carry_or_borrow: int
    beyond_facts: int
    one_bottom_divides: int
    neither_bottom_divides: int
    not_whole_ratio: int
    hard_percent: int
    unequal_places: int
    result_repeats: int
    easy_percents: tuple[int, ...]
    display: Mapping[str, int]
    ten_words: int
    median_words: int
    explain: int


@cache
def weights(grade: int) -> Weights:
    """The weights of a grade from 1 to 8.

    Raises:
        RequestFault: there are no weights for the grade.
    """
    with _FILE.open("rb") as file:
        data = tomllib.load(file)
    medians = data["reading"]["median_words"]
    if str(grade) not in medians:
        raise RequestFault(f"There are no weights for grade {grade}; the grades are 1 to 8.")
    band = 0 if grade <= 2 else 1 if grade <= 5 else 2
    numbers = data["numbers"]
    return Weights(
        structure={name: row[band] for name, row in data["structure"].items()},
        clash=data["language"]["clash"][band],
        fewer=data["language"]["fewer"][band],
        extra_number=data["extra"]["number"][band],
        operation=data["steps"]["operation"][band],
        carry_or_borrow=numbers["carry_or_borrow"][band],
        beyond_facts=numbers["beyond_facts"][band],
        one_bottom_divides=numbers["one_bottom_divides"][band],
        neither_bottom_divides=numbers["neither_bottom_divides"][band],
        not_whole_ratio=numbers["not_whole_ratio"][band],
        hard_percent=numbers["hard_percent"][band],
        unequal_places=numbers["unequal_places"][band],
        result_repeats=numbers["result_repeats"][band],
        easy_percents=tuple(numbers["easy_percents"]),
        display={name: row[band] for name, row in data["display"].items()},
        ten_words=data["reading"]["ten_words"][band],
        median_words=medians[str(grade)],
        explain=data["answer"]["explain"][band],
    )
