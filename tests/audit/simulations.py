"""What the runs of a simulation come to, counted from the words alone."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.wording import Texts, sentences


def asked_of_runs(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The part of the runs in which both, or at least one, of two fall; None for any other question.

    The digits from 1 on that stand for one that falls are as many of 10 as the results bear out.
    """
    told = re.search(r"\bruns(?: for two \w+)?(?: are|:) ([\d, and]+)\.", line["text"])
    event = re.search(r"\bprobability that (both|at least one) of\b", sentences(line["text"])[-1])
    if told is None or event is None:
        return None
    digits = re.search(r"\b1 to (\d) stand for\b", line["text"])
    verb = re.escape(dict(texts.words.after)["down"].removeprefix("that "))
    share = re.search(rf"\b{verb} (\d+) of (\d+) ", line["text"])
    assert digits is not None
    assert share is not None
    assert 10 * int(share[1]) == int(digits[1]) * int(share[2]), "the digits are not as many of 10 as fell"
    runs = re.findall(r"\d+", told[1])
    hits = [sum(1 for digit in run if "1" <= digit <= digits[1]) for run in runs]
    return Rational(sum(1 for one in hits if one >= (2 if event[1] == "both" else 1)), len(runs))
