"""Rules for sentences about prices as tenths and hundredths of a dollar."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.prices import BuysBoth, HasMoney, PartPaid
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.prices import CostsMoreThan, PartLeft, PartsTogether, WhichCosts


def _part(item: str, part: Number) -> Claims:
    return (PartPaid(item, part),)


_BOTH_FROM_A_DOLLAR = (BuysBoth(), HasMoney(None))

RULES: tuple[Rule, ...] = (
    rule("part_of_dollar", "FRACTION of a dollar", lambda part: part),
    rule("fact", "<ware> (costs|cost) <part_of_dollar>", _part),
    rule("fact", "the price of <ware> is <part_of_dollar>", _part),
    rule("fact", "<buyer> pays <part_of_dollar> for <ware>", lambda _, part, item: _part(item, part)),
    rule("fact", "<buyer> buys the two items and pays with a dollar bill", always(_BOTH_FROM_A_DOLLAR)),
    rule("fact", "<buyer> has a dollar and buys the two items", always(_BOTH_FROM_A_DOLLAR)),
    rule("costing", "costs more", always(True)),
    rule("costing", "costs less", always(False)),
    rule("side", "higher", always(True)),
    rule("side", "lower", always(False)),
    rule("ask", "which <costing> , <ware> or <ware>", lambda more, one, other: WhichCosts(more, (one, other))),
    rule("ask", "which of the two items <costing>", WhichCosts),
    rule("ask", "which item has the <side> price", WhichCosts),
    rule("ask", "(does|do) <ware> cost more than <ware>", lambda one, other: CostsMoreThan(True, (one, other))),
    rule("ask", "(does|do) <ware> cost less than <ware>", lambda one, other: CostsMoreThan(False, (one, other))),
    rule("ask", "is the first price <side> than the second price", CostsMoreThan),
    rule("ask", "what fraction of a dollar do the two items cost <in_all>", always(PartsTogether())),
    rule("ask", "what fraction of a dollar does the group pay <in_all>", always(PartsTogether())),
    rule("ask", "what is the total price of the two items , as a fraction of a dollar", always(PartsTogether())),
    rule("ask", "what fraction of (a|the) dollar does the group have left", always(PartLeft())),
    rule("ask", "what fraction of (a|the) dollar does the group get back", always(PartLeft())),
    rule("ask", "what fraction of the dollar is left", always(PartLeft())),
)
