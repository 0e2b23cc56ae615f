"""What a question about a graph or plot to make asks for, read from its words alone and worked out from the raw rows."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.asked import listed
from tests.audit.results import Reach
from tests.audit.wording import Texts, sentences

_MAKE = re.compile(r"\b(?:draw|make) an? (?:bar|picture) graph\b|\bin a picture graph\b", re.IGNORECASE)
_KEY = re.compile(r"\bpicture stands? for (\d+)\b")


def makes_graph(text: str) -> bool:
    """Whether pupils draw a bar graph or picture graph."""
    return _MAKE.search(text) is not None


def asked_of_graph(line: dict[str, Any], texts: Texts) -> Rational | None:
    """Pictures in a row, or how far apart two bars are; None where no graph is to be made."""
    text = line["text"]
    if not makes_graph(text):
        return None
    question, named = sentences(text)[-1], texts.named(text)
    colors = [found[0].lower() for found in re.finditer("|".join(map(re.escape, texts.results.colors)), question, re.IGNORECASE)]

    def down(color: str) -> int:
        return texts.results.total("down", Reach(named.groups or None, named.trials or None, (color,)))

    key = _KEY.search(text)
    if key is not None:
        [color] = colors
        return Rational(down(color), int(key[1]))
    one, other = colors
    return Rational(down(one) - down(other)) * (1 if "more" in question else -1)


def asked_of_plot(line: dict[str, Any], texts: Texts) -> Rational | None:
    """Dots above a number or beside it, or the numbers that a bar of a histogram takes in; None for any other question."""
    question = sentences(line["text"])[-1]
    dots = re.search(r"\bdots\b.* (over the number|for numbers greater than|for numbers less than) (\d+)\?", question)
    if dots is not None:
        place, numbers = int(dots[2]), listed(line, texts)
        over, left = numbers.count(place), sum(1 for one in numbers if one < place)
        return Rational({"over": over, "for": left if "less" in dots[1] else len(numbers) - over - left}[dots[1].split()[0]])
    limit = re.search(r"\bn ([<>]) (\d+)\b", line["text"])
    if limit is not None and re.search(r"\bhow many of the(se)? (results|numbers)\b", question, re.IGNORECASE):
        return Rational(sum(1 for one in listed(line, texts) if (one > int(limit[2])) == (limit[1] == ">") and one != int(limit[2])))
    bar = re.search(r"\bbar for (\d+) to (\d+)\b", question)
    if bar is None:
        return None
    return Rational(sum(1 for one in listed(line, texts) if one in range(int(bar[1]), int(bar[2]) + 1)))
