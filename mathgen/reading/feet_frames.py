"""Rules for sentences about feet and inches."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.lengths import FootIs, InFeet
from mathgen.reading.meaning.scope import Np
from mathgen.reading.noun_phrases import always
from mathgen.reading.wanted.lengths import EndToEndFeet, LongerThan, NextWider, SpacesIn

RULES: tuple[Rule, ...] = (
    rule("feet", "NUM (foot|feet)", lambda number: number),
    rule("fact", "one foot is NUM inches", lambda number: (FootIs(number),)),
    rule("fact", "NEXT , <who> will set the ITEM <feet> apart", lambda _, who, __, number: (InFeet(number, True, Np(who)),)),
    rule("fact", "NEXT , the space will be <feet>", lambda _, number: (InFeet(number, True),)),
    rule("fact", "<who> plan to put <feet> between ITEM NEXT", lambda who, number, *_: (InFeet(number, True, Np(who)),)),
    rule("fact", "a row with spaces of this size is <feet> long", lambda number: (InFeet(number, False),)),
    rule("ask", "how many inches farther apart will the ITEM be", always(NextWider())),
    rule("ask", "how many inches wider will the space be", always(NextWider())),
    rule("ask", "how many feet do WHOLE of these spaces make end to end", EndToEndFeet),
    rule("ask", "how many feet long are the WHOLE spaces together", EndToEndFeet),
    rule("ask", "how many feet long are the WHOLE spaces <in_all>", lambda number, _: EndToEndFeet(number)),
    rule("ask", "laid end to end , are WHOLE of these spaces longer than <feet>", lambda number, feet: LongerThan(feet, number)),
    rule("ask", "are the WHOLE spaces together longer than <feet>", lambda number, feet: LongerThan(feet, number)),
    rule("ask", "are WHOLE of these spaces end to end longer than <feet>", lambda number, feet: LongerThan(feet, number)),
    rule("ask", "how many of these spaces make NUM feet end to end", SpacesIn),
    rule("ask", "how many spaces of this size fit in NUM feet", SpacesIn),
    rule("ask", "how many spaces does the row have", always(SpacesIn())),
)
