"""What a question about a graph to make asks for, read from its words alone and worked out from the raw rows."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

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
