"""Rules for sentences about what one more trial would do to a mean."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.statistics import NextTrial
from mathgen.reading.noun_phrases import what
from mathgen.reading.wanted.statistics import MeanThen

RULES: tuple[Rule, ...] = (
    *(
        rule(
            "fact",
            f"suppose <who> <outcome> <counted> in {which} trial",
            lambda who, m, thing: (NextTrial(m, what(thing.colors, who), thing.number),),
        )
        for which in ("one more", "the next")
    ),
    rule(
        "ask",
        "what would be the mean number of <things> <that_outcome> in the WHOLE trials",
        lambda colors, m, n: MeanThen(m, what(colors), n),
    ),
)
