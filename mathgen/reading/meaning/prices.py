"""What a told sentence means, before its gaps are filled: a price list."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Money
from mathgen.reading.tokens import Number


class PriceIs(NamedTuple):
    """ "The price of the paper tube is 25¢", "the tape costs $0.30"."""

    item: str
    number: Number
    unit: Money


class Bought(NamedTuple):
    """ "A group buys the paper tube and the roll of tape", "a group buys 4 paper tubes": how many of each, where that is said."""

    items: tuple[tuple[Number | None, str], ...]


class HasMoney(NamedTuple):
    """ "A group pays with a dollar bill", "the group has 2 dollars"."""

    dollars: Number | None  # None: a dollar


class LookAtPrices(NamedTuple):
    """ "Look at the price list", "look at the prices of the paper tube and the tape"."""

    items: tuple[str, ...] = ()  # all where none is named


class PartPaid(NamedTuple):
    """ "The tape costs 0.35 of a dollar", "a group pays 3/10 of a dollar for the tape"."""

    item: str
    part: Number


class BuysBoth(NamedTuple):
    """ "A group buys the two items." """


class Spent(NamedTuple):
    """ "A group spends 24¢ on paper tubes", "a group has 24¢"."""

    number: Number
    item: str | None


class SharedBy(NamedTuple):
    """ "The price of the tape is shared equally by 4 groups." """

    number: Number
    item: str | None


class PercentOn(NamedTuple):
    """ "In a sale, every price is 20% less", "a tax of 10% is added", "every price went up by 20% this week"."""

    why: Literal["sale", "tax", "next week", "last week"]
    sign: Literal["+", "-"]
    percent: Number


class NewPrice(NamedTuple):
    """ "Next week, the price will be 50 cents." """

    number: Number
    item: str | None = None
