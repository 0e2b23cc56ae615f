"""Rules for sentences that ask for all there are: factor pairs, and ways to split a fraction."""

from __future__ import annotations

from typing import Literal

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.sets import InEqualRows, OneChange, SplitInto
from mathgen.reading.noun_phrases import Tail, always, measured, what
from mathgen.reading.pair_frames import Together
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.sets import AllPairs, FactorPairs, IsSplit, Splits
from mathgen.trials.scope import Measure


def _number_of(colors: Labels, measure: Measure, who: Labels, tail: Tail | None) -> InEqualRows:
    measured(measure, "down", "standing")
    return InEqualRows(measure, what(colors, who, None if tail is None else tail.trials))


def _in_rows(together: Together) -> Claims:
    colors, measure = together
    return (InEqualRows(measure, what(colors)),)


def _split(part: Number, bottom: Number) -> Claims:
    return (SplitInto(part, bottom),)


def _one_change(one: tuple[Measure, Labels], name: Literal["total", "mean"], to: Number, _: object = None) -> Claims:
    return (OneChange(name, *one, to),)


def _no_zero(zero: Number) -> Claims:
    """All ways are those without nothing, each told once: it is what the question means, and tells nothing more."""
    if zero.text != "0":
        raise Clash
    return ()


_OVER = "fractions with the? bottom number WHOLE"

RULES: tuple[Rule, ...] = (
    rule("the_number", "the number of <things> <that_outcome> <by_whom>? <tail>?", _number_of),
    rule("ask", "what are all the? factor pairs of <the_number>", lambda claim: FactorPairs(*claim)),
    rule("fact", "write <the_number> as a product of two factors", lambda claim: (claim,)),
    rule("fact", "put <together> in equal rows", _in_rows),
    rule("ask", "which factor pairs show all the ways", always(AllPairs("*"))),
    rule("fact", f"split NUM into two {_OVER}", _split),
    rule("fact", f"write NUM as a sum of two {_OVER}", _split),
    rule("fact", f"two {_OVER} have the sum NUM", lambda bottom, part: _split(part, bottom)),
    rule("fact", "do not use WHOLE , and count each pair once", _no_zero),
    rule("ask", f"which pairs of {_OVER} have the sum NUM", lambda bottom, part: Splits(part, bottom)),
    rule("ask", "is FRACTION = FRACTION + FRACTION + FRACTION true", lambda part, *claimed: IsSplit(part, claimed)),
    rule("ask", "can FRACTION be split into FRACTION , FRACTION , and FRACTION", lambda part, *claimed: IsSplit(part, claimed)),
    rule("ask", "do FRACTION , FRACTION , and FRACTION have the sum FRACTION", lambda a, b, c, part: IsSplit(part, (a, b, c))),
    rule("ask", "what are all the (ways|pairs)", always(AllPairs())),
    rule("total_or_mean", "total", always("total")),
    rule("total_or_mean", "mean", always("mean")),
    rule("one_number", "one number of <things> <that_outcome>", lambda colors, m: (measured(m, "down", "standing"), colors)),
    rule("fact", "change <one_number> to make the <total_or_mean> WHOLE ITEM?", _one_change),
    rule("fact", "suppose <one_number> changes and the <total_or_mean> becomes WHOLE ITEM?", _one_change),
    rule("ask", "which changes are possible", always(AllPairs())),
)
