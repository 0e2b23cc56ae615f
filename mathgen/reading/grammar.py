"""The grammar made ready, and sentences read by it.

To add a frame: one ``rule`` in the frames file of its subject, made of the shared parts of ``noun_phrases``: ``<who>``, ``<when>``,
``<tail>``, ``<things>``, ``<counted>``, ``<whole>``. Files are cut by what the sentences are about, not by the strands of the models:
``grep`` some words of a like sentence in ``*.py`` here, and take the file that has them. ``facts``, ``instructions`` and ``questions``
hold what all strands say. A rule makes one of the records of ``meaning`` (what is told) or ``wanted`` (what is asked), a file for each
subject. A new record needs one function more in a room of its subject, such as ``rates``, and a line in that room's table ``TAKEN``
(what takes in a claim) or ``ASKED`` (what answers a question); ``claims`` and ``goals`` name the rooms. Words that a rule names are
known from then on. Add to a part rather than write a second frame, and add the sentences to ``tests/reading/sentences.toml``, those
that must not be read, too.
"""

from __future__ import annotations

from mathgen.reading import (
    array_frames,
    association_frames,
    center_frames,
    chance_frames,
    choosing_frames,
    common_factor_frames,
    counting_on_frames,
    distribution_frames,
    equation_frames,
    facts,
    feet_frames,
    fraction_frames,
    graph_frames,
    instructions,
    joining_frames,
    judging_frames,
    length_frames,
    limit_frames,
    listing_frames,
    money_bought_frames,
    money_frames,
    money_percent_frames,
    money_tenth_frames,
    multiple_frames,
    noun_phrases,
    number_line_frames,
    one_more_frames,
    pair_frames,
    part_frames,
    plane_frames,
    plot_frames,
    points_frames,
    proportional_frames,
    questions,
    rate_frames,
    sample_frames,
    scaling_frames,
    scatter_frames,
    score_frames,
    score_line_frames,
    signed_frames,
    simulation_frames,
    spread_frames,
    success_frames,
    total_frames,
    two_way_frames,
    unit_ratio_frames,
    variable_frames,
)
from mathgen.reading.chart import Clash, Grammar, build
from mathgen.reading.tokens import NotRead, Sentence
from mathgen.reading.wanted import Meaning

GRAMMAR = Grammar(
    (
        *noun_phrases.RULES,
        *facts.RULES,
        *instructions.RULES,
        *questions.RULES,
        *part_frames.RULES,
        *proportional_frames.RULES,
        *chance_frames.RULES,
        *spread_frames.RULES,
        *array_frames.RULES,
        *counting_on_frames.RULES,
        *number_line_frames.RULES,
        *scaling_frames.RULES,
        *two_way_frames.RULES,
        *distribution_frames.RULES,
        *center_frames.RULES,
        *sample_frames.RULES,
        *one_more_frames.RULES,
        *fraction_frames.RULES,
        *rate_frames.RULES,
        *joining_frames.RULES,
        *total_frames.RULES,
        *score_frames.RULES,
        *score_line_frames.RULES,
        *pair_frames.RULES,
        *points_frames.RULES,
        *equation_frames.RULES,
        *length_frames.RULES,
        *feet_frames.RULES,
        *unit_ratio_frames.RULES,
        *plane_frames.RULES,
        *graph_frames.RULES,
        *plot_frames.RULES,
        *scatter_frames.RULES,
        *association_frames.RULES,
        *signed_frames.RULES,
        *simulation_frames.RULES,
        *listing_frames.RULES,
        *choosing_frames.RULES,
        *judging_frames.RULES,
        *common_factor_frames.RULES,
        *limit_frames.RULES,
        *success_frames.RULES,
        *variable_frames.RULES,
        *multiple_frames.RULES,
        *money_frames.RULES,
        *money_percent_frames.RULES,
        *money_bought_frames.RULES,
        *money_tenth_frames.RULES,
    )
)
LONGEST = 80  # words and signs; the longest that is printed has some 35


def parse(sentence: Sentence) -> list[Meaning]:
    """Every meaning of a sentence, without repeats.

    Args:
        sentence: typed tokens of one sentence.
    Returns:
        At least one meaning.
    Raises:
        NotRead: no rules span the whole sentence.
    """
    if len(sentence.kinds) > LONGEST:
        raise NotRead(f"a sentence of {len(sentence.kinds)} words is too long")
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
