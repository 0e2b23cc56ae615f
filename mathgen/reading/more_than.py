"""Two counts of which the words tell how many more, or how many times as many."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated
from mathgen.reading.meaning.counts import More, Times
from mathgen.reading.meaning.scope import Np
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Comparison, Fact, Takers, Told
from mathgen.trials.scope import Measure


def more(told: Told, claim: More) -> None:
    first, other = _compared(told, claim.measure, claim.np, claim.other)
    told.said(Op("-", (first, other) if claim.sign > 0 else (other, first)), claim.number)
    stated = Stated(int(claim.number.value), "more than")
    _keep_comparison(told, Comparison(first, other, stated, "+" if claim.sign > 0 else "-"), claim.number)


def times(told: Told, claim: Times) -> None:
    first, other = _compared(told, claim.measure, claim.np, claim.other)
    told.said(Op("/", (first, other)), claim.number)
    stated = Stated(int(claim.number.value), "times")
    _keep_comparison(told, Comparison(first, other, stated, "*"), claim.number)


def _compared(told: Told, measure: Measure, np: Np, other: Np) -> tuple[Quantity, Quantity]:
    # In "2 more than the Wrens", what is left out of the second part is as in the first.
    groups, trials, colors = (told.mentions.resolve(part, getattr(np, part)) for part in DIMENSIONS)
    first = told.mentions.scope(groups, trials, colors)
    filled = Np(*(mine if own is None else own for mine, own in zip((groups, trials, colors), other, strict=True)))
    second = told.scope(filled)
    if first == second:
        raise NotRead("something is compared with itself")
    return Quantity(measure, first), Quantity(measure, second)


def _keep_comparison(told: Told, comparison: Comparison, number: Number) -> None:
    if comparison in told.comparisons:
        raise NotRead(f"{number.text} is said twice")
    told.facts[-1] = Fact(comparison.stated, number.text)  # a number of the words, which stands in no table
    told.comparisons.append(comparison)
    told.open[f"comparison {len(told.comparisons)}"] = number.text


TAKEN: Takers = {
    More: more,
    Times: times,
}
