"""Rules for sentences about pairs and boxes: those that tell and those that ask."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.meaning.sets import InBoxes, InPairs, InTwo
from mathgen.reading.noun_phrases import Tail, always, measured, what
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.sets import AllFull, Boxed, Doubled, Paired, Partners, Shared
from mathgen.trials.scope import Measure

Together = tuple[Labels, Measure | None]


def _put(together: Together) -> Claims:
    colors, measure = together
    return (InPairs(measure, what(colors)),)


def _can(together: Together, who: Labels = None, tail: Tail | None = None) -> Paired:
    colors, measure = together
    return Paired(measure, what(colors, who, None if tail is None else tail.trials), True)


def _is(colors: Labels, measure: Measure, who: Labels, tail: Tail | None, even: bool) -> Paired:
    measured(measure, "down", "standing")
    return Paired(measure, what(colors, who, None if tail is None else tail.trials), even)


def _partners(thing: Labels, all_have: bool) -> Partners:
    if not isinstance(thing, Mark):
        raise Clash  # all that are in pairs are meant
    return Partners(all_have)


def _boxes(together: Together, box: str, number: Number) -> Claims:
    colors, measure = together
    return (InBoxes(measure, what(colors), number, box),)


def _share(together: Together, box: str, number: Number) -> Shared:
    colors, measure = together
    return Shared(measure, what(colors), number)


def _multiple(colors: Labels, measure: Measure, who: Labels, tail: Tail | None, number: Number) -> Shared:
    measured(measure, "down", "standing")
    return Shared(measure, what(colors, who, None if tail is None else tail.trials), number)


_BOXES = {"box": "boxes", "bag": "bags", "row": "rows"}

RULES: tuple[Rule, ...] = (
    rule("together", "all? of? (these|those) <things>", lambda colors: (colors, None)),
    rule("together", "all? of? the? <things> <that_outcome>", lambda colors, m: (colors, measured(m, "down", "standing"))),
    rule("fact", "put <together> in pairs", _put),
    rule("ask", "can <together> <by_whom>? <tail>? be put in pairs", _can),
    rule("even_or_odd", "an? even number?", always(True)),
    rule("even_or_odd", "an? odd number?", always(False)),
    rule("ask", "is the total? number of <things> <that_outcome> <by_whom>? <tail>? <even_or_odd>", _is),
    *(rule("box", box, always(box)) for box in _BOXES),
    *(rule("boxes", boxes, always(box)) for box, boxes in _BOXES.items()),
    rule("fact", "put <together> in <boxes> of WHOLE", _boxes),
    rule("fact", "each <box> holds WHOLE <together>", lambda box, number, together: _boxes(together, box, number)),
    rule("full", "how many <boxes> are full", lambda box: box),
    rule("full", "how many full <boxes> are there", lambda box: box),
    rule("ask", "<full>", lambda box: Boxed("full", box)),
    rule("ask", "<full> , and how many <things> remain", lambda box, colors: Boxed("both", box, colors)),
    rule("ask", "how many <things> are not in a full <box>", lambda colors, box: Boxed("over", box, colors)),
    rule("ask", "how many <things> are left over", lambda colors: Boxed("over", None, colors)),
    rule("ask", "how many <things> are left over after the full <boxes>", lambda colors, box: Boxed("over", box, colors)),
    rule("ask", "how many <boxes> are needed for (these|all) <things>", lambda box, colors: Boxed("needed", box, colors)),
    rule("ask", "how many <boxes> are needed for all of these <things>", lambda box, colors: Boxed("needed", box, colors)),
    rule("ask", "can <together> be put in equal <boxes> of WHOLE", _share),
    rule("ask", "is every <box> full", AllFull),
    rule("ask", "is every <box> full , with no <things> left over", lambda box, _: AllFull(box)),
    rule("ask", "is the number of <things> <that_outcome> <by_whom>? <tail>? a multiple of WHOLE", _multiple),
    rule(
        "ask",
        "is WHOLE a factor of the number of <things> <that_outcome> <by_whom>? <tail>?",
        lambda number, colors, measure, who, tail: _multiple(colors, measure, who, tail, number),
    ),
    rule("fact", "make pairs of <together>", _put),
    rule("fact", "make two equal rows of <together>", lambda together: (InTwo("rows", together[1], what(together[0])),)),
    rule("fact", "put <together> in two equal rows", lambda together: (InTwo("rows", together[1], what(together[0])),)),
    rule("fact", "both numbers are the same in _ _ + _ _ = WHOLE", lambda number: (InTwo("blanks", None, Np(), number),)),
    rule("ask", "how many pairs are there", always(Doubled("pairs"))),
    rule("ask", "how many <things> are in each row", lambda colors: Doubled("rows", colors)),
    rule("ask", "what is the missing number", always(Doubled("blanks"))),
    rule("ask", "does every <thing> have a partner", lambda thing: _partners(thing, True)),
    rule("ask", "is one <thing> without a partner", lambda thing: _partners(thing, False)),
)
