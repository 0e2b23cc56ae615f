"""Rules for sentences about percents of prices: a sale, a tax, a price that goes up or down."""

from __future__ import annotations

from typing import Literal

from mathgen.reading.chart import Rule, rule
from mathgen.reading.facts import Claims
from mathgen.reading.meaning.prices import Bought, NewPrice, PercentOn, PriceIs
from mathgen.reading.money_frames import Amount
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.reading.wanted.prices import PercentApart, PercentPart, PriceMoves, PriceThen

Sign = Literal["+", "-"]


def _this_week(item: str, amount: Amount) -> Claims:
    return (PriceIs(item, *amount),)


def _sale(percent: Number) -> Claims:
    return (PercentOn("sale", "-", percent),)


def _tax(percent: Number) -> Claims:
    return (PercentOn("tax", "+", percent),)


def _next_week(sign: Sign, percent: Number) -> Claims:
    return (PercentOn("next week", sign, percent),)


def _last_week(sign: Sign, percent: Number) -> Claims:
    return (PercentOn("last week", sign, percent),)


TOLD: tuple[Rule, ...] = (
    rule("moved", "up", always("+")),
    rule("moved", "down", always("-")),
    rule("some_price", "(the|every) price", always(True)),
    rule("off_what", "off", always(True)),
    rule("off_what", "off (the|this) price", always(True)),
    rule("off_what", "off the total", always(True)),
    rule("fact", "<ware> (costs|cost) <amount_of_money> this week", _this_week),
    rule("fact", "<buyer> buys <ware> in a sale", lambda _, item: (Bought(((None, item),)),)),
    rule("fact", "<buyer> buys WHOLE WARES in (a|the) sale", lambda _, number, item: (Bought(((number, item),)),)),
    rule("fact", "the store takes PERCENT <off_what>", lambda percent, _: _sale(percent)),
    rule("fact", "in a sale , the store takes PERCENT <off_what>", lambda percent, _: _sale(percent)),
    rule("fact", "in a sale , every price is PERCENT less", _sale),
    rule("fact", "the store adds a tax of PERCENT", _tax),
    rule("fact", "a tax of PERCENT is added", _tax),
    rule("fact", "the tax is PERCENT of the price", _tax),
    rule("fact", "next week , <some_price> goes <moved> by PERCENT", lambda _, sign, percent: _next_week(sign, percent)),
    rule("fact", "<some_price> went <moved> by PERCENT this week", lambda _, sign, percent: _last_week(sign, percent)),
    rule("fact", "the price is PERCENT more than last week", lambda percent: _last_week("+", percent)),
    rule("fact", "the price is PERCENT less than last week", lambda percent: _last_week("-", percent)),
    rule("fact", "next week , the price will be NUM (¢|cent|cents)", lambda number: (NewPrice(number),)),
    rule("fact", "the new price next week will be NUM (¢|cent|cents)", lambda number: (NewPrice(number),)),
    rule("fact", "next week , <ware> will cost NUM (¢|cent|cents)", lambda item, number: (NewPrice(number, item),)),
)

ASKED: tuple[Rule, ...] = (
    rule("ask", "what is the sale price in cents", always(PriceThen("sale"))),
    rule("ask", "how many cents (does|do) <ware> cost in the sale", lambda item: PriceThen("sale", item)),
    rule("ask", "how many cents (does|do) <ware> cost with the tax", lambda item: PriceThen("tax", item)),
    rule("ask", "how many cents will <ware> cost next week", lambda item: PriceThen("next week", item)),
    rule("ask", "what is the new price in cents", always(PriceThen("next week"))),
    rule("ask", "how many cents did <ware> cost last week", lambda item: PriceThen("last week", item)),
    rule("ask", "what was the price last week in cents", always(PriceThen("last week"))),
    rule("ask", "how many cents is the tax", always(PercentPart("tax"))),
    rule("ask", "what is the tax in cents", always(PercentPart("tax"))),
    rule("ask", "how many cents is the tax on <ware>", lambda item: PercentPart("tax", item)),
    rule("ask", "how many cents does the store take off", always(PercentPart("sale"))),
    rule("ask", "how many cents less (does|do) <ware> cost in the sale", lambda item: PercentPart("sale", item)),
    rule("ask", "by what percent will the price go <moved>", lambda sign: PriceMoves(sign == "+")),
    rule("ask", "by what percent will the price increase", always(PriceMoves(True))),
    rule("ask", "by what percent will the price decrease", always(PriceMoves(False))),
    rule("ask", "what will be the percent increase in the price", always(PriceMoves(True))),
    rule("ask", "what will be the percent decrease in the price", always(PriceMoves(False))),
    rule("ask", "what percent more (does|do) <ware> cost than <ware>", lambda asked, base: PercentApart(True, asked, base)),
    rule("ask", "what percent less (does|do) <ware> cost than <ware>", lambda asked, base: PercentApart(False, asked, base)),
    rule("by_what_percent", "by what percent is the price of <ware>", lambda item: item),
    rule("ask", "<by_what_percent> higher than the price of <ware>", lambda asked, base: PercentApart(True, asked, base)),
    rule("ask", "<by_what_percent> lower than the price of <ware>", lambda asked, base: PercentApart(False, asked, base)),
    rule("ask", "by what percent is the higher price above the lower price", always(PercentApart(True))),
    rule("ask", "by what percent is the lower price below the higher price", always(PercentApart(False))),
)

RULES: tuple[Rule, ...] = (*TOLD, *ASKED)
