"""Rules for sentences about what is bought for some cents, shared, or paid with dollar bills."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.prices import Bought, SharedBy, Spent
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.prices import BillsNeeded, EachPays, HowManyBought, TimesAsMuch


def _several_and_one(number: Number, several: str, one: str) -> Claims:
    if several == one:
        raise Clash
    return (Bought(((number, several), (None, one))),)


RULES: tuple[Rule, ...] = (
    rule("fact", "<buyer> buys WHOLE WARES and <ware>", lambda _, number, several, one: _several_and_one(number, several, one)),
    rule("fact", "<buyer> buys WHOLE WARES and pays with dollar bills", lambda _, number, item: (Bought(((number, item),)),)),
    rule("fact", "<buyer> spends WHOLE (¢|cents) on WARES", lambda _, number, item: (Spent(number, item),)),
    rule("fact", "<buyer> pays WHOLE (¢|cents) <in_all> for WARES", lambda _, number, _all, item: (Spent(number, item),)),
    rule("fact", "<buyer> has WHOLE (¢|cents)", lambda _, number: (Spent(number, None),)),
    rule("fact", "the price is shared equally by WHOLE groups", lambda number: (SharedBy(number, None),)),
    rule("fact", "the price of <ware> is shared equally by WHOLE groups", lambda item, number: (SharedBy(number, item),)),
    rule("fact", "there are WHOLE groups that share the price equally", lambda number: (SharedBy(number, None),)),
    rule("fact", "a class of WHOLE groups shares the price equally", lambda number: (SharedBy(number, None),)),
    rule("ask", "how many WARES does the group buy", HowManyBought),
    rule("ask", "how many WARES can the group buy", HowManyBought),
    rule("ask", "how many cents does each group pay", always(EachPays())),
    rule("ask", "what is the share of each group in cents", always(EachPays())),
    rule("ask", "how many times as much (does|do) <ware> cost as <ware>", TimesAsMuch),
    rule("ask", "<ware> (costs|cost) how many times as much as <ware>", TimesAsMuch),
    rule("ask", "the higher price is how many times the lower price", always(TimesAsMuch())),
    rule("ask", "how many dollar bills does the group need", always(BillsNeeded())),
    rule("ask", "how many dollar bills are needed to buy WHOLE WARES", BillsNeeded),
)
