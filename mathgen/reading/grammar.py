"""The grammar made ready, and sentences read by it."""

from __future__ import annotations

from mathgen.reading import facts, instructions, noun_phrases, questions
from mathgen.reading.chart import Clash, Grammar, build
from mathgen.reading.meaning import Meaning
from mathgen.reading.tokens import NotRead, Sentence

GRAMMAR = Grammar((*noun_phrases.RULES, *facts.RULES, *instructions.RULES, *questions.RULES))


def parse(sentence: Sentence) -> list[Meaning]:
    """Every meaning of a sentence, without repeats.

    Args:
        sentence: typed tokens of one sentence.
    Returns:
        At least one meaning.
    Raises:
        NotRead: no rules span the whole sentence.
    """
    found: list[Meaning] = []
    for node in GRAMMAR.parse("question", sentence.kinds):
        try:
            meaning = build(node, sentence.values)
        except Clash:
            continue
        assert isinstance(meaning, Meaning)  # rules for "question" make nothing else
        found.append(meaning)
    if sentence.end != "?":
        for node in GRAMMAR.parse("fact", sentence.kinds):
            try:
                claims = build(node, sentence.values)
            except Clash:
                continue
            assert isinstance(claims, tuple)  # rules for "fact" make nothing else
            found.append(Meaning(claims))
    if not found:
        raise NotRead(f'"{sentence.text}" is no sentence that this program understands')
    if len(found) > 1:
        found = list({repr(meaning): meaning for meaning in found}.values())
    return found
