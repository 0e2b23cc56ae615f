"""Prices as tenths and hundredths of a dollar: compared as decimals, added as fractions."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Ask, Choice, Op, Price, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_NAME, _TRUTH, _ANY = Demand("name"), Demand("truth"), Demand("any")
_DECIMALS = frozenset({"decimal_notation"})
_DOLLAR = Stated(1, "whole")


def _of_dollar(price: Price) -> Op:
    return Op("/", (price, DOLLAR))


@problem_model(skill="compare decimal parts of a dollar", table="price list")
def greater_part_of_dollar(view: TableView) -> AskSpace:
    """Which of two items costs more, or less: decimals of two lengths, of one dollar."""

    def build(tenths: Price, hundredths: Price, turned: bool, way: str) -> Draft | None:
        told = _told(view, tenths, hundredths, turned)
        if told is None:
            return None
        one, other, (text, text2) = told
        rates = _of_dollar(one), _of_dollar(other)
        thought = (one.item, other.item) if way == "more" else (other.item, one.item)
        return Draft(
            ask=Ask(Choice((one.item, other.item), rates, way == "more"), (), _NAME),
            roles={"one": one, "other": other, "rate": rates[0], "rate2": rates[1]},
            structure="which is greater",
            slips=(("E01", (*thought, text, text2)), ("E02", (*thought, text, text2))),
            features=_DECIMALS,
            rates=((rates[0], text), (rates[1], text2)),
            unit=False,
            wanted=frozenset({way}),
        )

    prices = view.prices("cents")
    return AskSpace((prices, prices, (True, False), ("more", "less")), build)


@problem_model(skill="judge which part of a dollar is more", table="price list")
def part_of_dollar_is_more(view: TableView) -> AskSpace:
    """Whether one item costs more, or less, than another: decimals of two lengths, of one dollar."""

    def build(tenths: Price, hundredths: Price, turned: bool, way: str) -> Draft | None:
        told = _told(view, tenths, hundredths, turned)
        if told is None:
            return None
        one, other, (text, text2) = told
        rates = _of_dollar(one), _of_dollar(other)
        more = way == "more"
        said = ("true", "false") if more else ("false", "true")
        return Draft(
            ask=Ask(Truth(rates[0], ">" if more else "<", rates[1]), (), _TRUTH),
            roles={"one": one, "other": other, "rate": rates[0], "rate2": rates[1], "way": way, "side": "higher" if more else "lower"},
            structure="is it so",
            slips=(("E01", (*said, text, text2)), ("E02", (*said, text, text2))),
            features=_DECIMALS,
            rates=((rates[0], text), (rates[1], text2)),
            unit=False,
        )

    prices = view.prices("cents")
    return AskSpace((prices, prices, (True, False), ("more", "less")), build)


def _told(view: TableView, tenths: Price, hundredths: Price, turned: bool) -> tuple[Price, Price, tuple[str, str]] | None:
    """Two prices as decimals of a dollar, in the order of telling: 0.4 and 0.35. None for prices that are no such pair."""
    a, b = view.cents(tenths), view.cents(hundredths)
    if a >= 100 or b >= 100 or a % 10 or b % 10 == 0:
        return None
    texts = f"0.{a // 10}", f"0.{b:02}"
    return (hundredths, tenths, (texts[1], texts[0])) if turned else (tenths, hundredths, texts)


def _added(view: TableView, one: Price, other: Price) -> tuple[tuple[Op, Op], tuple[str, str], tuple[int, int, int, int]] | None:
    """Two prices as fractions of a dollar, one of tenths and one of hundredths, with their tops and bottoms. None for others."""
    a, b = view.cents(one), view.cents(other)
    if a + b >= 100 or (a % 10 == 0) == (b % 10 == 0):
        return None
    forms = [(cents // 10, 10) if cents % 10 == 0 else (cents, 100) for cents in (a, b)]
    texts = tuple(f"{top}/{bottom}" for top, bottom in forms)
    return (_of_dollar(one), _of_dollar(other)), (texts[0], texts[1]), (*forms[0], *forms[1])


@problem_model(skill="add parts of a dollar", table="price list")
def add_parts_of_dollar(view: TableView) -> AskSpace:
    """What fraction of a dollar two items cost together, one price in tenths and one in hundredths."""

    def build(one: Price, other: Price) -> Draft | None:
        found = _added(view, one, other)
        if found is None:
            return None
        rates, texts, forms = found
        return Draft(
            ask=Ask(Value(Op("+", rates)), (), _ANY),
            roles={"one": one, "other": other, "rate": rates[0], "rate2": rates[1]},
            structure="whole unknown",
            slips=(("C02", forms), ("C01", forms), ("C12", forms)),
            rates=tuple(zip(rates, texts, strict=True)),
            sets=(100,),
            over=100,
            unit=False,
            unlike="one divides",
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)


@problem_model(skill="rest of a dollar", table="price list")
def rest_of_dollar(view: TableView) -> AskSpace:
    """What fraction of a dollar is left when two items are bought, one price in tenths and one in hundredths."""

    def build(one: Price, other: Price) -> Draft | None:
        found = _added(view, one, other)
        spent = view.cents(one) + view.cents(other)
        if found is None or spent == 50:
            return None
        rates, texts, (a, b, c, d) = found
        return Draft(
            ask=Ask(Value(Op("-", (_DOLLAR, Op("+", rates)))), (), _ANY),
            roles={"one": one, "other": other, "rate": rates[0], "rate2": rates[1]},
            structure="result unknown",
            slips=(("Y44", (spent,)), ("Y45", (a, b)), ("Y45", (c, d)), ("Y46", (a + c,))),
            features=frozenset({"two_step"}),
            rates=tuple(zip(rates, texts, strict=True)),
            sets=(100,),
            over=100,
            unit=False,
            unlike="one divides",
        )

    return AskSpace((view.prices("cents"), view.prices("cents")), build)
