"""How varied a set of texts is: corpus lexicon diversity, self-BLEU and distinct n-grams.

Sources: corpus lexicon diversity after Miao, Liang and Su 2020 (each text against its nearest other, BLEU both ways); self-BLEU
after Zhu et al. 2018; distinct n-grams after Li et al. 2016. BLEU-4 with uniform weights, no smoothing and the usual brevity penalty,
after Papineni et al. 2002. The list of stop words is our own.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from math import exp, log

Tokens = tuple[str, ...]

_WORD = re.compile(r"[A-Za-z]+(?:'[a-z]+)?|\$?\d[\d.,/]*%?")
_NUMBERS = frozenset(re.findall(r"\w+", "one two three four five six seven eight nine ten eleven twelve twice half third fourth"))
_STOP = frozenset(
    re.findall(
        r"\w+",
        "a about after again all also am an and any are as at be been before being below between both but by can could did do does doing"
        " down during each few for from further had has have having he her here hers him his how i if in into is it its itself just me more"
        " most my no nor not now of off on once only or other our ours out over own s same she should so some such t than that the their"
        " theirs them then there these they this those through to too under until up very was we were what when where which while who whom"
        " why will with would you your yours many much must let us",
    )
)
_ORDER = 4


def words_of(text: str) -> Tokens:
    """Words and numerals, in lower case.

    >>> words_of("The Owls set up 12 pins.")
    ('the', 'owls', 'set', 'up', '12', 'pins')
    """
    return tuple(word.lower().rstrip(".,") for word in _WORD.findall(text))


def prepared(texts: Sequence[str]) -> list[Tokens]:
    """Texts without numbers, names and stop words, words without their endings.

    >>> prepared(["The Owls knocked down 3 pins. The pins were red.", "Red pins stood."])
    [('NAME', 'knock', 'NUM', 'pin', 'pin', 'red'), ('red', 'pin', 'stood')]
    """
    found = [_WORD.findall(text) for text in texts]
    small = {word for words in found for word in words if word[0].islower()}
    # A capital at the start of a sentence is no name: the word is known in small letters, or begins sentences only.
    return [tuple(_mark(word, small) for word in words if word.lower() not in _STOP) for words in found]


def _mark(word: str, small: set[str]) -> str:
    if word[0].isdigit() or word[0] == "$" or word.lower() in _NUMBERS:
        return "NUM"
    if word[0].isupper() and word.lower() not in small:
        return "NAME"
    return _stem(word.lower())


def _stem(word: str) -> str:
    for ending in ("ing", "ed", "es", "s"):
        if word.endswith(ending) and len(word) - len(ending) >= 3:
            return word.removesuffix(ending)
    return word


def _grams(words: Tokens, size: int) -> Counter[Tokens]:
    return Counter(words[start : start + size] for start in range(len(words) - size + 1))


class Counted:
    """A text's n-grams, counted once."""

    def __init__(self, words: Tokens) -> None:
        self.length = len(words)
        self.grams = [_grams(words, size) for size in range(1, _ORDER + 1)]


def bleu(text: Counted, other: Counted) -> float:
    """BLEU of a text against one reference."""
    total = 0.0
    for mine, theirs in zip(text.grams, other.grams, strict=True):
        common = sum(min(count, theirs[gram]) for gram, count in mine.items() if gram in theirs)
        if not common:
            return 0.0
        total += log(common / sum(mine.values()))
    return _brief(text.length, other.length) * exp(total / _ORDER)


def _brief(length: int, reference: int) -> float:
    return 1.0 if length > reference else exp(1 - reference / length)


def diversities(texts: Sequence[Tokens]) -> list[float]:
    """Of each text, 1 less its likeness to the nearest other: the mean of BLEU both ways."""
    counted = [Counted(words) for words in texts]
    nearest = [0.0] * len(counted)
    for first, one in enumerate(counted):
        for second in range(first + 1, len(counted)):
            other = counted[second]
            if nearest[first] == nearest[second] == 1.0:
                continue
            alike = 1.0 if texts[first] == texts[second] else (bleu(one, other) + bleu(other, one)) / 2
            nearest[first], nearest[second] = max(nearest[first], alike), max(nearest[second], alike)
    return [1 - alike for alike in nearest]


def self_bleu(texts: Sequence[Tokens]) -> float:
    """The mean BLEU of each text against all others as references."""
    counted = [Counted(words) for words in texts]
    # The greatest and the next greatest count of each n-gram, and whose the greatest is.
    best: list[dict[Tokens, tuple[int, int, int]]] = [{} for _ in range(_ORDER)]
    for number, one in enumerate(counted):
        for size, grams in enumerate(one.grams):
            for gram, count in grams.items():
                most, owner, second = best[size].get(gram, (0, -1, 0))
                best[size][gram] = (count, number, most) if count > most else (most, owner, max(second, count))
    lengths = sorted(one.length for one in counted)
    scores = []
    for number, one in enumerate(counted):
        total, zero = 0.0, False
        for size, grams in enumerate(one.grams):
            common = 0
            for gram, count in grams.items():
                most, owner, second = best[size][gram]
                common += min(count, second if owner == number else most)
            zero = zero or not common
            total += log(common / sum(grams.values())) if common else 0.0
        closest = min((abs(length - one.length), length) for length in lengths)[1]
        scores.append(0.0 if zero else _brief(one.length, closest) * exp(total / _ORDER) if one.length < closest else exp(total / _ORDER))
    return sum(scores) / len(scores)


def distinct(texts: Sequence[Tokens], size: int) -> float:
    """Different n-grams out of all n-grams."""
    grams = [gram for words in texts for gram in _grams(words, size).elements()]
    return len(set(grams)) / len(grams)
