"""Pins in boxes, bags and rows: how many are full and what is over, counted one by one from the raw rows."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Rational

from tests.audit.results import Reach
from tests.audit.wording import Texts, sentences
from tests.audit.working import solutions

_SIZE = r"(?<!\d )\b(?:(?:boxes|bags|rows) of|(?:box|bag|row) holds) (\d+)\b"


def filled(line: dict[str, Any], texts: Texts) -> tuple[int, int] | None:
    """How many groups are full, and how many pins are over, filling one after the other; None where nothing is put in groups."""
    size = re.search(_SIZE, texts.masked(line["text"]))
    if size is None:
        return None
    named = texts.named(line["text"])
    full, inside = 0, 0
    for _ in range(texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None))):
        inside += 1
        if inside == int(size[1]):
            full, inside = full + 1, 0
    return full, inside


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a quotient and remainder, but for its slips."""
    answer, found = line["answer"], filled(line, texts)
    if found is None or not re.search(r"how many .+, and how many \w+ remain\?", line["text"], re.IGNORECASE):
        yield "the words do not ask how many are full and how many remain"
        return
    text = f"{found[0]} r {found[1]}"
    if answer["value"] != text or answer["exact"] != text:
        yield f"the rows give {text}, the answer is {answer['value']}"
    if answer["display"] != text.replace("r", "R") or {re.sub("r(emainder)?|R", "r", form) for form in answer["accepted"]} != {text}:
        yield f"{answer['display']} is displayed, {answer['accepted']} are accepted"
    if answer["demands"] != "quotient_remainder":
        yield f"a quotient and remainder that demands {answer['demands']}"
    if found[1] == 0:
        yield "nothing is over"
    if solutions(line["relation"]) != (found[0],):
        yield f'relation "{line["relation"]}" does not give {found[0]}'


def number_faults(line: dict[str, Any], exact: Rational, texts: Texts) -> Iterator[str]:
    """One number of it: how many are full, how many are needed for all, or how many pins are in none that is full."""
    if re.search(r"\bin pairs\.|\bMake pairs of\b|\btwo equal rows\.|\bMake two equal rows of\b|\bnumbers are the same\b", line["text"]):
        named = texts.named(line["text"])
        if 2 * exact != texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None)):
            yield f"{exact} is not half of the rows' count"
        return
    found = filled(line, texts)
    if found is None:
        return
    full, over = found
    question = sentences(line["text"])[-1]
    for pattern, wanted in ((r"\bneeded\b", full + (over > 0)), (r"\bleft over\b", over), (r"\bfull\b", full)):
        if re.search(pattern, question):
            if exact != wanted:
                yield f"the rows give {wanted}, the answer is {exact}"
            return
    yield "the words do not say what of the groups is asked for"
