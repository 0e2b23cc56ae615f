"""What the told sentences of a problem come to: each claim's gaps filled, each number checked against the table."""

from __future__ import annotations

from collections.abc import Iterable

from mathgen.asks.expression import Stated
from mathgen.reading import (
    arrays,
    association,
    centers,
    chance,
    choosing,
    common_factors,
    counted,
    counting_on,
    directions,
    distributions,
    equations,
    feet,
    fraction_questions,
    graphs,
    judging,
    lengths,
    limits,
    listing,
    money,
    money_bought,
    money_percents,
    money_tenths,
    more_than,
    multiples,
    next_time,
    number_lines,
    one_more,
    one_whole,
    pairs,
    plane,
    plots,
    points,
    points_shared,
    portions,
    proportional,
    rates,
    samples,
    scaling,
    scatter,
    score_lines,
    scoring,
    signed,
    simulations,
    spread,
    successes,
    two_way,
    unit_ratios,
    variables,
)
from mathgen.reading.meaning import Claim
from mathgen.reading.meaning.counts import GoalMean, NextGoal, NextSet, SameRate
from mathgen.reading.meaning.scope import Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told

_ROOMS = (
    arrays, association, centers, chance, choosing, common_factors, counted, counting_on, directions, distributions,
    equations, feet, fraction_questions, graphs, judging, lengths, limits, listing, money, money_bought, money_percents,
    money_tenths, more_than, multiples, next_time, number_lines, one_more, one_whole, pairs, plane, plots, points,
    points_shared, portions, proportional, rates, samples, scaling, scatter, score_lines, scoring, signed, simulations,
    spread, successes, two_way, unit_ratios, variables,
)
_TAKE: Takers = {kind: take for room in _ROOMS for kind, take in room.TAKEN.items()}

_TO_COME = (NextSet, NextGoal, GoalMean, SameRate)  # what these name is no mention


def take_in(sentences: Iterable[Iterable[Claim]], told: Told) -> None:
    """Take in every claim of every sentence, facts that look ahead included.

    Raises:
        NotRead: something is false, said twice or not settled.
    """
    sentences = [list(claims) for claims in sentences]
    for claims in sentences:
        for claim in claims:
            for np in claim:
                if isinstance(np, Np) and not isinstance(claim, _TO_COME):
                    told.mentions.note_later(np)
    for number, claims in enumerate(sentences):
        for claim in claims:
            _TAKE[type(claim)](told, claim)
            told.flush_counted()
        told.sentence_of.extend([number] * (len(told.facts) - len(told.sentence_of)))
    seen = [fact for fact in told.facts if not isinstance(fact.expr, Stated)]
    if len(set(seen)) < len(seen):
        raise NotRead("the same is said twice")
