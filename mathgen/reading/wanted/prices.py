"""What a question asks, before its gaps are filled: a price list."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.asks.expression import Money
from mathgen.exact.demand import Demand
from mathgen.reading.tokens import Number


class Pays(NamedTuple):
    """ "How many cents does the group pay in all?" """

    unit: Money


class CostTogether(NamedTuple):
    """ "How many cents do the two items cost in all?" """

    unit: Money


class CostOf(NamedTuple):
    """ "How many cents do 4 paper tubes cost?" """

    number: Number
    item: str
    unit: Money


class GetsBack(NamedTuple):
    """ "How many cents does the group get back?" """

    unit: Money


class CostsMore(NamedTuple):
    """ "How many cents more does the paper tube cost?", "how many cents apart are the two prices?" """

    item: str | None  # the dearer one, where it is named
    unit: Money


class PriceAs(NamedTuple):
    """ "What fraction of a dollar does the paper tube cost?" """

    demand: Demand
    item: str | None = None


class PriceOfPrice(NamedTuple):
    """ "The price of a paper tube is what percent of the price of a marker?", "what percent of the higher price is the lower price?" """

    part: str | None = None  # None: the lower of the two that are told
    whole: str | None = None


class HowManyToBuy(NamedTuple):
    """ "How many paper tubes can the group buy, and how many cents are left?" """

    item: str


class WhichCosts(NamedTuple):
    """ "Which costs more, a marker or a box?", "which item has the lower price?" """

    more: bool
    items: tuple[str, str] | None = None  # where they are named again


class CostsMoreThan(NamedTuple):
    """ "Does a marker cost more than a box?", "is the first price lower than the second price?" """

    more: bool
    items: tuple[str, str] | None = None  # None: in the order in which they are told


class PartsTogether(NamedTuple):
    """ "What fraction of a dollar do the two items cost in all?" """


class PartLeft(NamedTuple):
    """ "What fraction of the dollar is left?" """


class HowManyBought(NamedTuple):
    """ "How many paper tubes does the group buy?" """

    item: str


class EachPays(NamedTuple):
    """ "How many cents does each group pay?" """


class TimesAsMuch(NamedTuple):
    """ "How many times as much does a box cost as a marker?" """

    item: str | None = None  # the dearer one, where it is named
    other: str | None = None


class BillsNeeded(NamedTuple):
    """ "How many dollar bills are needed to buy 7 boxes?" """

    number: Number | None = None
    item: str | None = None


class PriceThen(NamedTuple):
    """ "How many cents does the tape cost in the sale?", "what was the price last week in cents?" """

    why: Literal["sale", "tax", "next week", "last week"]
    item: str | None = None


class PercentPart(NamedTuple):
    """ "How many cents is the tax?", "how many cents does the store take off?" """

    why: Literal["sale", "tax"]
    item: str | None = None


class PriceMoves(NamedTuple):
    """ "By what percent will the price go up?" """

    up: bool


class PercentApart(NamedTuple):
    """ "What percent more does the tape cost than the box?", "by what percent is the lower price below the higher price?" """

    more: bool
    asked: str | None = None  # None: one of the two that are told
    base: str | None = None
