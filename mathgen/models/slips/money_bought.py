"""Slips, section Y: what is bought. After those of counting (H) and of equal groups (M)."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("Y47", "That pays for only one of each. How many are bought?")
def pays_for_one_of_each(cents: int) -> Wrong:
    return whole(cents)


@slip("Y48", "Only one kind of thing is bought several times. Multiply that price, then add the other.")
def all_bought_several_times(cents: int) -> Wrong:
    return whole(cents)


@slip("Y49", "Two things are bought. Take both prices from the dollar.")
def takes_one_price(cents: int) -> Wrong:
    return whole(100 - cents)


@slip("Y50", "Each one costs that much. How many times does the price go into what is paid?")
def takes_the_price_once(spent: int, cents: int) -> Wrong:
    return whole(spent - cents)


@slip("Y51", "Skip-count by the price again, up to what is paid.")
def one_off_in_skip_counting(number: int) -> Wrong:
    return whole(number)


@slip("Y52", "Sharing equally means to divide, not to take away.")
def takes_the_number_away(cents: int, number: int) -> Wrong:
    return whole(cents - number)


@slip("Y53", "Check by multiplying: all shares together are the price.")
def share_one_off(share: int) -> Wrong:
    return whole(share)


@slip("Y54", "These bills do not pay for all. What about the cents that are over?")
def drops_the_cents_over(full: int) -> Wrong:
    return whole(full)


@slip("Y55", "Those are the cents over. How many bills pay for all?")
def gives_the_cents_over(over: int) -> Wrong:
    return whole(over)


@slip("Y56", "That is the cost in cents. How many dollars pay for it?")
def stops_at_the_cents(cents: int) -> Wrong:
    return whole(cents)


@slip("Y57", '"How many times" means to divide. Do not take away.')
def takes_away_the_lower(gap: int) -> Wrong:
    return whole(gap)


@slip("Y58", "Count again. How many times does the lower price fit into the higher price?")
def lower_price_not_counted(times: int) -> Wrong:
    return whole(times)
