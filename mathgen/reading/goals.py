"""From a question and all that was told to what has to be worked out."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.reading import (
    arrays,
    association,
    blanks,
    centers,
    chance,
    common_factors,
    comparing,
    counting,
    counting_on,
    distributions,
    equations,
    fairness,
    feet,
    fraction_questions,
    graphs,
    judging,
    lengths,
    limits,
    listing,
    means,
    money,
    money_bought,
    money_percents,
    money_tenths,
    multiples,
    next_time,
    number_lines,
    one_more,
    one_whole,
    pairs,
    parting,
    plots,
    points,
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
from mathgen.reading.asked import Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.scope import Np
from mathgen.reading.told import Told, settled
from mathgen.reading.wanted import Question
from mathgen.reading.wanted.counts import HowMany, Part
from mathgen.reading.wanted.parts import PartOfSet
from mathgen.reading.wanted.rates import InRow
from mathgen.scenario.words import Scenario


def asked(question: Question, told: Told, scenario: Scenario) -> list[Asked]:
    """Every way to understand the question after what was told; "pins" may mean all pins, or those of the colors spoken of.

    Raises:
        NotRead: something that the question needs was not told.
    """
    np = getattr(question, "np", None)
    choices: list[Np | None] = [None] if np is None or isinstance(question, InRow | PartOfSet) else [*settled(told, np)]
    if isinstance(question, HowMany) and isinstance(np, Np) and len(choices) > 1 and question.whole is not None:
        choices = [
            one
            for one in choices
            if one is not None and evaluate(Quantity("set_up", told.scope(one, True)), told.counts) == question.whole.value
        ]
    found = []
    for choice in choices:
        one = question if choice is None or choice is np else question._replace(np=choice)  # type: ignore[attr-defined]
        found.append(_ASKED[type(question)](one, told, scenario))
    return found


def _how_many(question: HowMany, told: Told, scenario: Scenario) -> Asked:
    return scoring.how_many(question, told, scenario) if told.in_rows is None else arrays.array_total(question, told)


def _part(question: Part, told: Told, scenario: Scenario) -> Asked:
    return parting.part(question, told, scenario) if told.from_one is None else number_lines.fraction_on_line(question, told, scenario)


_ROOMS = (
    association, blanks, centers, chance, common_factors, comparing, counting, counting_on, distributions,
    equations, fairness, feet, fraction_questions, graphs, judging, lengths, limits, listing, means, money, money_bought,
    money_percents, money_tenths, multiples, next_time, number_lines, one_more, one_whole, pairs, parting, plots, points,
    proportional, rates, samples, scaling, scatter, score_lines, scoring, signed, simulations, spread, successes, two_way,
    unit_ratios, variables,
)
_ASKED: Answers = {
    HowMany: _how_many,
    Part: _part,
    **{kind: do for room in _ROOMS for kind, do in room.ASKED.items()},
}
