"""One sentence's tokens, looked at by place and kind."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.reading.pupils.hearing import Token
from mathgen.trials.scope import Label

PREPOSITIONS = frozenset(
    [
        "in",
        "on",
        "at",
        "by",
        "for",
        "of",
        "from",
        "with",
        "during",
        "over",
        "across",
        "after",
        "through",
        "throughout",
        "about",
        "until",
        "till",
        "into",
        "among",
        "between",
        "per",
    ]
)
_DETERMINERS = frozenset([
    "the", "a", "an", "all", "any", "every", "those", "these", "their", "its", "there", "his", "her", "both", "just", "only",
    "that", "each",
])  # fmt: skip
THEIR = frozenset(("their", "its", "his", "her"))


class Sentence:
    """The tokens of one sentence, and the trials of the table that it speaks of."""

    def __init__(self, tokens: Sequence[Token], trials: tuple[Label, ...]) -> None:
        """Args:
        tokens: as heard.
        trials: the table's, in order.
        """
        self.tokens, self.trials = tokens, trials
        everything = {kind for token in tokens for kind in token.kinds}
        self._one_is_article = "CHANCE" in everything or "PICK" in everything

    def has(self, place: int, *kinds: str) -> bool:
        """Whether the token at a place can be one of the kinds; no token is there beyond either end."""
        return 0 <= place < len(self.tokens) and any(kind in kinds for kind in self.tokens[place].kinds)

    def value(self, place: int, kind: str) -> object:
        """What the token at a place stands for as that kind."""
        token = self.tokens[place]
        return token.values[token.kinds.index(kind)]

    def skip(self, place: int, *kinds: str) -> int:
        """The first place from there on that is none of the kinds."""
        while self.has(place, *kinds):
            place += 1
        return place

    def led_in(self, place: int) -> tuple[int, frozenset[str]]:
        """The place past prepositions and articles, and these."""
        words: set[str] = set()
        while place < len(self.tokens):
            word = next((kind for kind in self.tokens[place].kinds if kind in PREPOSITIONS or kind in _DETERMINERS), None)
            if word is None and self.has(place, "out") and self.has(place + 1, "of"):
                word = "out"
            if word is None and self.has(place, "one") and (self.has(place + 1, "of") or self._one_is_article) and words <= {"that"}:
                word = "one"
            if word is None:
                break
            words.add(word)
            place += 1
        return place, frozenset(words)
