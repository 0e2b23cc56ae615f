"""What questions about equal boxes, and about totals that two groups both reach, ask for: found by trying, from the raw rows."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.results import Reach
from tests.audit.wording import Texts, sentences


def asked_shared(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The greatest number of boxes, or the least total of both; None for any other question."""
    question = sentences(line["text"])[-1]
    named = texts.named(line["text"])
    if re.search(r"greatest number of (boxes|bags)\b", question):
        one, other = (texts.results.total("down", Reach(named.groups or None, named.trials or None, (color,))) for color in named.colors)
        return Rational(next(size for size in range(min(one, other), 0, -1) if one % size == other % size == 0))
    if "least total" in question or "both counts reach" in question:
        one, other = (texts.results.total("down", Reach((group,), named.trials or None, named.colors or None)) for group in named.groups)
        return Rational(next(total for total in range(one, one * other + 1, one) if total % other == 0))
    return None
