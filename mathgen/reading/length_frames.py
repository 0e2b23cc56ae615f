"""Rules for sentences about the space between pins: told in inches, compared, put end to end."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning import Apart, Labels, Look, Np, Spaces
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted import EndToEnd, Farther


def _apart(number: Number, who: Labels = None, when: Labels = None) -> tuple[Apart]:
    return (Apart(Np(who, when), number),)


def _differ(number: Number) -> Farther:
    if number.value != 2:
        raise Clash
    return Farther(None, 0)


RULES: tuple[Rule, ...] = (
    rule("inches", "NUM (inch|inches)", lambda number: number),
    # told
    rule("spaced", "set the ITEM <inches> apart", lambda _, number: number),
    rule("spaced", "put <inches> between ITEM", lambda number, _: number),
    rule("fact", "<who> <spaced>", lambda who, number: _apart(number, who)),
    rule("fact", "<who> <spaced> <when>", lambda who, number, when: _apart(number, who, when)),
    rule("fact", "<when> , <who> <spaced>", lambda when, who, number: _apart(number, who, when)),
    rule("fact", "<who> measured the space between ITEM", lambda who, _: (Look(Np(who)),)),
    rule("fact", "the space was <inches> <when>", lambda number, when: _apart(number, None, when)),
    rule("fact", "the space was <inches> for <who>", lambda number, who: _apart(number, who)),
    rule("fact", "the space between ITEM was <inches> for <who>", lambda _, number, who: _apart(number, who)),
    # compared
    rule("farther", "farther apart", always(1)),
    rule("farther", "closer together", always(-1)),
    rule("wider", "wider", always(1)),
    rule("wider", "narrower", always(-1)),
    rule("ask", "how many inches <farther> were the ITEM <when>", lambda sign, _, when: Farther(Np(None, when), sign)),
    rule("ask", "how many inches <farther> did <who> set the ITEM", lambda sign, who, _: Farther(Np(who), sign)),
    rule("ask", "how many inches <wider> was the space <when>", lambda sign, when: Farther(Np(None, when), sign)),
    rule("ask", "how many inches <wider> was the space for <who>", lambda sign, who: Farther(Np(who), sign)),
    rule("ask", "by how many inches do the WHOLE spaces differ", _differ),
    # end to end
    rule("fact", "a row of ITEM has WHOLE spaces of this size", lambda _, number: (Spaces(number),)),
    rule("fact", "suppose WHOLE of these spaces are laid end to end", lambda number: (Spaces(number),)),
    rule("ask", "how many inches do WHOLE of these spaces make end to end", EndToEnd),
    rule("ask", "how many inches long are the WHOLE spaces (together|altogether)", EndToEnd),
    rule("ask", "how many inches long are the WHOLE spaces <in_all>", lambda number, _: EndToEnd(number)),
)
