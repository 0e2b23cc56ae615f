"""Rules for sentences about the space between pins: told in inches, compared, put end to end."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.meaning.counts import Count, Look
from mathgen.reading.meaning.lengths import Apart, ApartEach, LinePlot, MadeEqual, Spaces
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.lengths import AllEndToEnd, CrossesAbove, EachEqual, EndToEnd, Farther, MoreCrosses, SpacesBeyond, WidestGap


def _apart(number: Number, who: Labels = None, when: Labels = None) -> tuple[Apart]:
    return (Apart(Np(who, when), number),)


def _all_groups(when: Labels) -> tuple[Look]:
    return (Look(Np(Mark("all"), when)),)


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
    rule(
        "fact",
        "<when> , <who> <spaced> and DOWN <counted>",
        lambda when, who, number, measure, counted: (
            *_apart(number, who, when),
            Count(measure, Np(who, when, counted.colors), counted.number),
        ),
    ),
    rule("fact", "<when> , <who> <spaced>", lambda when, who, number: _apart(number, who, when)),
    rule("fact", "<who> measured the space between ITEM", lambda who, _: (Look(Np(who)),)),
    rule("fact", "the space was <inches> <when>", lambda number, when: _apart(number, None, when)),
    rule("fact", "the space was <inches> for <who>", lambda number, who: _apart(number, who)),
    rule("fact", "the space between ITEM was <inches> for <who>", lambda _, number, who: _apart(number, who)),
    rule("fact", "the space between ITEM was <inches> for <who> <when>", lambda _, number, who, when: _apart(number, who, when)),
    # told of all groups in one trial
    rule("nums", "NUM and NUM", lambda a, b: (a, b)),
    rule("nums", "NUM , <more_nums>", lambda a, rest: (a, *rest)),
    rule("more_nums", "NUM ,? and NUM", lambda a, b: (a, b)),
    rule("more_nums", "NUM , <more_nums>", lambda a, rest: (a, *rest)),
    rule("fact", "<when> , the groups measured the space between ITEM", lambda when, _: _all_groups(when)),
    rule("fact", "TRIALS had these spaces between ITEM", lambda when, _: _all_groups(when)),
    rule("fact", "look at the spaces between ITEM <when>", lambda _, when: _all_groups(when)),
    rule("fact", "the spaces were <nums> (inch|inches)", lambda numbers: (ApartEach(numbers),)),
    rule("fact", "in inches , the spaces were <nums>", lambda numbers: (ApartEach(numbers),)),
    rule("fact", "(make|draw) a line plot", always((LinePlot(),))),
    rule("fact", "(make|draw) a line plot of the spaces", always((LinePlot(),))),
    rule("fact", "draw one cross for each space on a line plot", always((LinePlot(),))),
    rule("fact", "suppose all the spaces were made equal with the same total", always((MadeEqual(),))),
    rule("fact", "share the total equally among the spaces", always((MadeEqual(),))),
    rule("fact", "(make|draw) a line plot , and share the total equally among the spaces", always((LinePlot(), MadeEqual()))),
    rule("crosses", "crosses", always(None)),
    rule("crosses", "crosses of the plot", always(None)),
    rule("ask", "how many <crosses> are stacked over the number NUM", lambda _, number: CrossesAbove(number)),
    rule("ask", "how many more crosses are stacked over NUM than over NUM", MoreCrosses),
    rule("beyond", "wider than <inches>", lambda number: SpacesBeyond(">", number)),
    rule("beyond", "narrower than <inches>", lambda number: SpacesBeyond("<", number)),
    rule("ask", "how many of the spaces are <beyond>", lambda question: question),
    rule("ask", "how many spaces are <beyond>", lambda question: question),
    rule("ask", "of the spaces , how many are <beyond>", lambda question: question),
    rule("ask", "what is the total length of all the spaces in inches", always(AllEndToEnd())),
    rule("ask", "how many inches long are all the spaces together", always(AllEndToEnd())),
    rule("ask", "what is the total of all the spaces in inches", always(AllEndToEnd())),
    rule("ask", "how many inches wider was the widest space than the narrowest space", always(WidestGap())),
    rule("ask", "by how many inches do the widest and the narrowest space differ", always(WidestGap())),
    rule("ask", "how many inches are between the first and the last cross", always(WidestGap(True))),
    rule("ask", "how many inches wide would each space be", always(EachEqual())),
    rule("ask", "how many inches wide is each equal space", always(EachEqual())),
    rule("ask", "at how many inches would all the crosses stand", always(EachEqual(True))),
    # compared
    rule("farther", "farther apart", always(1)),
    rule("farther", "closer together", always(-1)),
    rule("wider", "wider", always(1)),
    rule("wider", "narrower", always(-1)),
    rule("ask", "how many inches <farther> were the ITEM <when>", lambda sign, _, when: Farther(Np(None, when), sign)),
    rule(
        "ask",
        "how many inches <farther> were the ITEM <when> than <when>",
        lambda sign, _, when, than: Farther(Np(None, when), sign, Np(None, than)),
    ),
    rule("ask", "how many inches <farther> did <who> set the ITEM", lambda sign, who, _: Farther(Np(who), sign)),
    rule("ask", "how many inches <wider> was the space <when>", lambda sign, when: Farther(Np(None, when), sign)),
    rule("ask", "how many inches <wider> was the space for <who>", lambda sign, who: Farther(Np(who), sign)),
    rule("ask", "by how many inches do the WHOLE spaces differ", _differ),
    # end to end
    rule("fact", "a row of ITEM has WHOLE spaces of this size", lambda _, number: (Spaces(number),)),
    rule("fact", "suppose WHOLE of these spaces are laid end to end", lambda number: (Spaces(number),)),
    rule("ask", "how many inches do the WHOLE spaces make end to end", EndToEnd),
    rule("ask", "how many inches do WHOLE of these spaces make end to end", EndToEnd),
    rule("ask", "how many inches long are the WHOLE spaces (together|altogether)", EndToEnd),
    rule("ask", "how many inches long are the WHOLE spaces <in_all>", lambda number, _: EndToEnd(number)),
)
