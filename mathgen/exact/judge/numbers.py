"""One number judged: its value, how it is rounded, and whether it is in the form that the words demand."""

from __future__ import annotations

from typing import NamedTuple

from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.exact.forms import decimal_places
from mathgen.exact.judge.verdict import FORM, RIGHT, WRONG, Judged
from mathgen.exact.parse import Written, tidy
from mathgen.exact.rounding import rounded

_BARE = ("whole", "fraction", "mixed", "decimal", "repeating", "comma")


def judge_number(key: Written, demand: Demand, number: Written, unit: str) -> Judged:
    """The verdict on a number beside the key's. An equal one may still not be in the form that is asked for.

    Args:
        key: the exact answer.
        demand: its form, and how it is rounded.
        number: as typed.
        unit: that was typed with it, "" for none.
    """
    exact = key.value
    if demand.form == "whole" and demand.places is not None:
        return _judge_whole(exact, demand.places, number)
    if demand.places is not None:
        verdict, why = _judge_rounded(exact, demand, number, unit)
        return (FORM, "a decimal comma; here a point is written") if verdict == RIGHT and number.form == "comma" else (verdict, why)
    if demand.form == "percent" and number.form in _BARE and not unit and number.value == exact * 100:
        return (FORM, "a decimal comma; here a point is written") if number.form == "comma" else (RIGHT, "the percent, its sign left out")
    if number.value != exact:
        if demand.form in ("ratio", "ratio:any") and exact != 0 and number.value == 1 / exact:
            return WRONG, "the order of the ratio is reversed"
        if number.value == -exact:
            return WRONG, "the other sign"
        if number.form in _BARE and number.value == exact * 100:
            if key.form == "money":
                return WRONG, "that is cents; the question asks for dollars"
            return WRONG, "100 times the answer; a percent is written with its sign"
        return WRONG, "another value"
    fault = _form_fault(demand, exact, key, number)
    return (FORM, fault) if fault else (RIGHT, "equal, in a form that is right here")


def _judge_whole(exact: Rational, places: int, number: Written) -> Judged:
    """A whole number that is to be rounded to tens, hundreds ... A number that is left as it was is not rounded."""
    value = number.value
    if value == rounded(exact, places):
        whole = number.form == "whole" or (number.form == "money" and number.places == 0)
        return (RIGHT, "rounded as asked") if whole else (FORM, "the right value, not written as a whole number")
    if value == exact:
        return WRONG, "not rounded"
    if value in [rounded(exact, place) for place in range(-5, 0)]:
        return WRONG, "rounded to another place"
    return WRONG, "another value"


def _judge_rounded(exact: Rational, demand: Demand, number: Written, unit: str) -> Judged:
    size = exact * 100 if demand.form == "percent" else exact
    order = (RIGHT, FORM, WRONG)
    found = [_judge_reading(size, demand.places or 0, reading) for reading in _readings(demand, number, unit)]
    # A reading as a percent comes first and keeps its place among equals.
    return min(found, key=lambda verdict: order.index(verdict[0]))


class _Reading(NamedTuple):
    """One way to take a typed number, counted in the demanded unit (percents for percent:N)."""

    value: Rational
    places: int | None
    own_form: bool


def _readings(demand: Demand, number: Written, unit: str) -> list[_Reading]:
    plain = number.form in ("decimal", "whole", "money")
    value, places = number.value, number.places
    if demand.form == "decimal":
        if number.form == "percent" and places is not None:
            places += 2
        return [_Reading(value, places, plain)]
    if number.form == "percent":
        return [_Reading(value * 100, places, True)]
    as_decimal = _Reading(value * 100, None if places is None else places - 2, False)
    # Without a sign "66.7" is taken as 66.7%, since a percent is asked for; with a unit it is a count.
    return [_Reading(value, places, plain), as_decimal] if number.form in _BARE and not unit else [as_decimal]


def _judge_reading(size: Rational, places: int, reading: _Reading) -> Judged:
    target = rounded(size, places)
    value = reading.value
    if reading.own_form and reading.places is not None:
        own = decimal_places(size)
        if value == target and reading.places == places:
            return RIGHT, "rounded as asked"
        if own is not None and own < places and value == size and reading.places == own:
            return RIGHT, "exact, and shorter than the place asked for"
    if value == size:
        return FORM, "the exact value, not written as the question asks"
    if value == target:
        return FORM, f"the right value, not written with {places} places" if reading.own_form else "the right value in another form"
    if reading.places is not None and reading.places > places and value == rounded(size, reading.places):
        return FORM, "rounded correctly, but to more places than asked"
    if reading.places is not None and 0 <= reading.places < places and value == rounded(size, reading.places):
        return WRONG, "rounded to fewer places than asked"
    if value == rounded(rounded(size, places + 1), places):
        return WRONG, "rounded twice; check your rounding"
    if reading.places is not None and reading.places > places and rounded(value, places) == target:
        return WRONG, "not rounded as asked"
    return WRONG, "another value"


def _form_fault(demand: Demand, exact: Rational, key: Written, number: Written) -> str:
    """What is wrong with the form of an equal number; "" if nothing."""
    form, lowest = number.form, number.lowest
    if form == "comma":
        return "a decimal comma; here a point is written"
    if form == "ratio" and demand.form not in ("ratio", "ratio:any") and key.form != "ratio":
        return "a ratio, where a number is asked for"
    decimal_like = form in ("decimal", "repeating") or (form == "money" and number.places is not None)
    whole = exact.denominator == 1
    match demand.form:
        case "simplest" | "mixed" | "mixed:any":
            if whole:
                return "" if form in ("whole", "money") and number.places == 0 else "a whole number is written as such"
            if form not in ("fraction", "mixed"):
                return "another form than a fraction or mixed number"
            if not lowest and demand.form != "mixed:any":
                return "not in lowest terms"
            if not number.proper:
                return "a mixed number with another whole in its fraction"
            return "an improper fraction, not a mixed number" if demand.form != "simplest" and form == "fraction" and abs(exact) > 1 else ""
        case "fraction":
            return "" if form in ("fraction", "mixed") or (whole and form == "whole") else "not a fraction"
        case "decimal":
            return "" if decimal_like or (whole and form == "whole") else "not a decimal"
        case "percent":
            return "" if form == "percent" else "not a percent"
        case "ratio" | "ratio:any":
            if form not in ("ratio", "fraction"):
                return "not a ratio"
            scaled = not lowest and not (form == "fraction" and _denominator_one(number))
            return "a scaled copy, not in lowest terms" if scaled and demand.form == "ratio" else ""
        case "whole":
            return "" if form == "whole" or (form == "money" and number.places == 0) else "not written as a whole number"
    return ""


def _denominator_one(number: Written) -> bool:
    """Whether a fraction is written over 1: as a ratio, 3/1 is in lowest terms."""
    return tidy(number.text).replace(" ", "").endswith(("/1", "of1"))
