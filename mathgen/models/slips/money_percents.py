"""Slips, section Y: percents of prices. After those of percents (F)."""

from __future__ import annotations

from mathgen.models.slips.percents import asked_number_as_base
from mathgen.models.slips.rule import Wrong, over, slip, whole


def _changed(cents: int, percent: int) -> int | None:
    """A price with a percent added, or taken off where the percent is below 0; None where that is no whole number of cents."""
    new, rest = divmod(cents * (100 + percent), 100)
    return None if rest else new


@slip("Y31", "That is the new price. The question asks only for what the percent comes to.")
def gives_the_new_price(new: int) -> Wrong:
    return whole(new)


@slip("Y32", "A percent is a number out of 100. This price is not 100 cents.")
def percent_as_cents(percent: int) -> Wrong:
    return whole(percent)


@slip("Y33", "That is only what is taken off. What is left of the price?")
def stops_at_what_is_taken_off(amount: int) -> Wrong:
    return whole(amount)


@slip("Y34", "A percent is not a number of cents. First find that percent of the price.")
def moves_by_cents(cents: int, percent: int) -> Wrong:
    return whole(cents + percent)


@slip("Y35", "A sale makes a price lower. Take away, do not add.")
def adds_in_a_sale(cents: int, amount: int) -> Wrong:
    return whole(cents + amount)


@slip("Y36", "That is only what is added. Add it to the price.")
def stops_at_what_is_added(amount: int) -> Wrong:
    return whole(amount)


@slip("Y37", "The price gets higher. Add, do not take away.")
def takes_away_what_is_added(cents: int, amount: int) -> Wrong:
    return whole(cents - amount)


@slip("Y38", "The percent is of last week's price, not of this week's.")
def percent_of_the_new_price(cents: int, percent: int) -> Wrong:
    new = _changed(cents, percent)
    return None if new is None else whole(new)


@slip("Y39", "That changes the price once more. What was it before the change?")
def changes_once_more(cents: int, percent: int) -> Wrong:
    new = _changed(cents, percent)
    return None if new is None else whole(new)


@slip("Y40", "That is a number of cents. What percent is it of the price compared with?")
def bare_cents(change: int) -> Wrong:
    return over(change, 100)


@slip("Y41", "That is only what is taken off. What is left of the total?")
def stops_at_what_is_taken_off_the_total(amount: int) -> Wrong:
    return over(amount, 100)


@slip("Y42", "That is what one costs in the sale. How many are bought?")
def one_in_the_sale(cents: int, percent: int) -> Wrong:
    new = _changed(cents, -percent)
    return None if new is None else over(new, 100)


@slip("Y43", "That is the total before the sale. Take the percent off.")
def total_before_the_sale(total: int) -> Wrong:
    return over(total, 100)


@slip("Y60", "A percent is not a number of cents. What percent of last week's price is this week's price?")
def moves_back_by_cents(cents: int, percent: int) -> Wrong:
    """Y34 where the percent is of a price that is not known."""
    return moves_by_cents(cents, percent)


@slip("Y61", "The percent is of the price compared with. Divide by that price.")
def asked_price_as_base(base: int, cents: int) -> Wrong:
    """F15 where two prices are compared."""
    return asked_number_as_base(base, cents)
