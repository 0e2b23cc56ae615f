"""Rules for sentences about prices, and about what is bought and paid."""

from __future__ import annotations

from mathgen.asks.expression import Money
from mathgen.exact.demand import Demand
from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.prices import Bought, HasMoney, LookAtPrices, PriceIs
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.prices import CostOf, CostsMore, CostTogether, GetsBack, HowManyToBuy, Pays, PriceAs, PriceOfPrice

Amount = tuple[Number, Money]
_FRACTION, _DECIMAL, _PERCENT = Demand("fraction"), Demand("decimal"), Demand("percent")


def _price(item: str, amount: Amount) -> Claims:
    return (PriceIs(item, *amount),)


def _bought_for(item: str, amount: Amount) -> Claims:
    return (*_price(item, amount), Bought(((None, item),)))


def _two(one: str, other: str) -> tuple[str, str]:
    if one == other:
        raise Clash
    return one, other


TOLD: tuple[Rule, ...] = (
    rule("amount_of_money", "NUM (¢|cent|cents)", lambda number: (number, "cents")),
    rule("amount_of_money", "MONEY", lambda number: (number, "dollars")),
    rule("ware", "(the|a|an) WARE", lambda item: item),
    rule("one_ware", "one WARE", lambda item: item),
    rule("two_wares", "<ware> and <ware>", _two),
    rule("fact", "the price of <ware> is <amount_of_money>", _price),
    rule("fact", "the price of <one_ware> is <amount_of_money>", _price),
    rule("fact", "<ware> (costs|cost) <amount_of_money>", _price),
    rule("fact", "<one_ware> costs <amount_of_money>", _price),
    rule("fact", "the price list says <amount_of_money> for <ware>", lambda amount, item: _price(item, amount)),
    rule("fact", "the price list says <amount_of_money> for <one_ware>", lambda amount, item: _price(item, amount)),
    rule("fact", "(a|the) store sells <ware> for <amount_of_money>", _price),
    rule("fact", "(a|the) store sells <one_ware> for <amount_of_money>", _price),
    rule("buyer", "(a|the) group", always(True)),
    rule("fact", "<buyer> buys <ware> for <amount_of_money>", lambda _, item, amount: _bought_for(item, amount)),
    rule("fact", "<buyer> buys <ware>", lambda _, item: (Bought(((None, item),)),)),
    rule("fact", "<buyer> buys <two_wares>", lambda _, items: (Bought(tuple((None, item) for item in items)),)),
    rule("fact", "<buyer> buys WHOLE WARES", lambda _, number, item: (Bought(((number, item),)),)),
    rule("fact", "<buyer> pays with a dollar bill", lambda _: (HasMoney(None),)),
    rule("fact", "<buyer> has a dollar", lambda _: (HasMoney(None),)),
    rule("fact", "<buyer> (has|pays) WHOLE dollars", lambda _, number: (HasMoney(number),)),
    rule("fact", "look at the new? price list", always((LookAtPrices(),))),
    rule("fact", "look at the price of <ware>", lambda item: (LookAtPrices((item,)),)),
    rule("fact", "look at the prices of <two_wares>", lambda items: (LookAtPrices(items),)),
)

ASKED: tuple[Rule, ...] = (
    rule("money_unit", "cents", always("cents")),
    rule("money_unit", "dollars", always("dollars")),
    rule("much", "how many <money_unit>", lambda unit: unit),
    rule("ask", "<much> does the group pay <in_all>?", lambda unit, _: Pays(unit)),
    rule("ask", "<much> do the two items cost <in_all>", lambda unit, _: CostTogether(unit)),
    rule("ask", "what is the total price of the two items in <money_unit>", CostTogether),
    rule("ask", "<much> do WHOLE WARES cost <in_all>?", lambda unit, number, item, _: CostOf(number, item, unit)),
    rule("ask", "<much> does the group get back", GetsBack),
    rule("ask", "<much> does the group have left", GetsBack),
    rule("ask", "<much> of change does the group get", GetsBack),
    rule("ask", "<much> more (does|do) <ware> cost", lambda unit, item: CostsMore(item, unit)),
    rule("ask", "<much> apart are the two prices", lambda unit: CostsMore(None, unit)),
    rule("ask", "what fraction of a dollar (does|do) <ware> cost", lambda item: PriceAs(_FRACTION, item)),
    rule("ask", "what fraction of a dollar is the price of <ware>", lambda item: PriceAs(_FRACTION, item)),
    rule("ask", "what is the price of <ware> , as a fraction of a dollar", lambda item: PriceAs(_FRACTION, item)),
    rule("ask", "what is the price in dollars , as a decimal", always(PriceAs(_DECIMAL))),
    rule("ask", "what is the price of <ware> in dollars , as a decimal", lambda item: PriceAs(_DECIMAL, item)),
    rule("ask", "how many dollars (does|do) <ware> cost , as a decimal", lambda item: PriceAs(_DECIMAL, item)),
    rule("ask", "what percent of a dollar (does|do) <ware> cost", lambda item: PriceAs(_PERCENT, item)),
    rule("ask", "what percent of a dollar is the price of <ware>", lambda item: PriceAs(_PERCENT, item)),
    rule("ask", "what is the price of <ware> , as a percent of a dollar", lambda item: PriceAs(_PERCENT, item)),
    rule("ask", "what percent of the price of <ware> is the price of <ware>", lambda whole, part: PriceOfPrice(part, whole)),
    rule("ask", "the price of <ware> is what percent of the price of <ware>", PriceOfPrice),
    rule("ask", "the lower price is what percent of the higher price", always(PriceOfPrice())),
    rule("ask", "what percent of the higher price is the lower price", always(PriceOfPrice())),
    rule("ask", "how many WARES can be bought , and how many cents are left", HowManyToBuy),
    rule("ask", "how many WARES can be bought , and how many cents are left over", HowManyToBuy),
    rule("ask", "how many WARES can the group buy , and how many cents are left", HowManyToBuy),
)

RULES: tuple[Rule, ...] = (*TOLD, *ASKED)
