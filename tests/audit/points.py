"""Points that the words ask for, worked out from the raw rows: a rule with letters, evaluated at the results."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.results import Reach
from tests.audit.wording import Texts

_RULE = re.compile(r"\b(\d+)([a-z]) ([-+]) (\d+)([a-z])\b(?! = )")


def asked_points(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The value of a rule such as 5d - 2m; None where the words have no such rule; an equation is none.

    Each letter is the count whose words stand right behind it: "m red pins", "m is the number left standing".
    """
    masked = texts.masked(line["text"])
    rule = _RULE.search(masked)
    if rule is None:
        return None
    a, one, sign, b, other = rule.groups()
    first, second = (_count(letter, line["text"], masked, texts) for letter in (one, other))
    return Rational(int(a) * first + (int(b) if sign == "+" else -int(b)) * second)


def _count(letter: str, text: str, masked: str, texts: Texts) -> int:
    said = re.search(rf"\b{letter} (?:(?:is|be) the number )?([^.,?]*?)(?:,|\.|\?| and [a-z] )", masked)
    assert said is not None, f"what is {letter}?"
    named = texts.named(text)
    phrase = said[1]
    colors = tuple(color for color in texts.results.colors if re.search(rf"\b{re.escape(color)}\b", phrase))
    if not colors and re.search(rf"\b{re.escape(texts.words.items)}\b", phrase) is None:
        colors = named.colors  # "m is the number left standing": of the pins spoken of
    measure = "standing" if dict(texts.words.after)["standing"] in phrase else "down"
    return texts.results.total(measure, Reach(named.groups or None, named.trials or None, colors or None))
