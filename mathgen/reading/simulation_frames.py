"""Rules for sentences about simulations by runs of random digits."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.chance import HitDigits, RunsAre
from mathgen.reading.noun_phrases import always, measured
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.chance import RunChance
from mathgen.trials.scope import Measure


def _digits(first: Number, last: Number, _: object, measure: Measure) -> Claims:
    return (HitDigits(first, last, measured(measure, "down", "standing")),)


def _runs(count: Number, *rest: object) -> Claims:
    runs = rest[-1]
    assert isinstance(runs, tuple)  # the rules below end in a list
    return (RunsAre(count, runs),)


def _chance(need: int, _: object, measure: Measure) -> RunChance:
    return RunChance(need, measured(measure, "down", "standing"))


RULES: tuple[Rule, ...] = (
    rule("fact", "in a simulation , the digits WHOLE to WHOLE stand for (a|an) ITEM <that_outcome>", _digits),
    rule("fact", "the digits WHOLE to WHOLE stand for (a|an) ITEM <that_outcome>", _digits),
    rule("fact", "a simulation draws two random digits , and WHOLE to WHOLE stand for (a|an) ITEM <that_outcome>", _digits),
    rule("fact", "the WHOLE runs for two ITEM are <numbers>", _runs),
    rule("fact", "the WHOLE runs are <numbers>", _runs),
    rule("fact", "a simulation with random digits gave these WHOLE runs : <numbers>", _runs),
    rule("need", "both", always(2)),
    rule("need", "at least one", always(1)),
    rule("event", "<need> of the ITEM will <be_done>", _chance),
    rule("event", "<need> of two ITEM will <be_done>", _chance),
    rule("ask", "what is the estimated probability that <event>", lambda event: event),
    rule("ask", "by these runs , what is the probability that <event>", lambda event: event),
    rule("ask", "by this simulation , what is the probability that <event>", lambda event: event),
)
