"""Simulations: which digits stand for what was counted, the runs, and in how many of them an event happens."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Tally, Value
from mathgen.reading.asked import ANY, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.chance import HitDigits, RunsAre
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.chance import RunChance
from mathgen.scenario.words import Scenario

_TEN = 10  # digits


def hit_digits(told: Told, claim: HitDigits) -> None:
    """Keep which digits stand for what was counted.

    Raises:
        NotRead: told twice, or not from 1 on.
    """
    if told.hit_digits is not None or claim.first.value != 1 or not 1 < claim.last.value < _TEN:
        raise NotRead("it is not clear which digits are meant")
    told.hit_digits = claim
    told.open["hit digits"] = "the digits"
    told.facts.append(Fact(Stated(1, "first digit"), claim.first.text))
    told.facts.append(Fact(Stated(int(claim.last.value), "last digit"), claim.last.text))


def runs_are(told: Told, claim: RunsAre) -> None:
    """Keep the runs, of two digits each.

    Raises:
        NotRead: told twice, or there are more or fewer, or of other lengths.
    """
    if told.runs is not None or claim.number.value != len(claim.runs) or any(len(run.text) != 2 for run in claim.runs):
        raise NotRead(f"there are not {claim.number.text} runs of two digits")
    told.runs = claim
    told.open["runs"] = "the runs"
    told.facts.append(Fact(Stated(len(claim.runs), "runs"), claim.number.text))
    told.facts.extend(Fact(Stated(int(run.value), "run"), run.text) for run in claim.runs)


def run_chance(question: RunChance, told: Told, _: Scenario) -> Asked:
    hits, runs, portion = told.hit_digits, told.runs, told.last_portion
    if hits is None or runs is None or portion is None or {hits.measure, question.measure} != {portion[0]}:
        raise NotRead("it is not said what the simulation is of")
    part, whole = Quantity(portion[0], portion[1]), Quantity("set_up", portion[1])
    if evaluate(Op("/", (part, whole)), told.counts) * _TEN != hits.last.value:
        raise NotRead("the digits are not as many of 10 as fell")
    series = tuple(Stated(int(run.value), "run") for run in runs.runs)
    tally = Tally(series, "digits", Stated(int(hits.last.value), "last digit"), Stated(question.need, "whole"))
    goal = Op("/", (tally, Stated(len(series), "runs")))
    return Asked("runs", Value(goal), ANY, (part, whole), ("hit digits", "runs"))


ASKED: Answers = {
    RunChance: run_chance,
}


TAKEN: Takers = {
    HitDigits: hit_digits,
    RunsAre: runs_are,
}
