"""Slips, section Y: money. After those of place value (H) and of counting."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("Y01", "The price is taken from the dollar. Do not add.")
def adds_to_the_dollar(cents: int) -> Wrong:
    return whole(100 + cents)


@slip("Y02", "Check by adding: price and change must make 100 cents.")
def ten_too_much_back(cents: int) -> Wrong:
    """Tens and ones are each filled up to ten: 73 for 100 - 37."""
    tens, ones = divmod(cents, 10)
    return whole(10 * (10 - tens) + 10 - ones) if ones and 0 < tens < 10 else None


@slip("Y03", "A dollar is 100 cents.", unless_printed=True)
def dollar_of_ten(cents: int) -> Wrong:
    """A dollar taken for 10 cents."""
    return whole(10 - cents) if 0 < cents < 10 else None


@slip("Y04", "Each one costs that much. Multiply, do not add.")
def adds_number_and_price(number: int, cents: int) -> Wrong:
    return whole(number + cents)


@slip("Y05", "One is missing. Skip-count again: once for each one that is bought.")
def one_too_few(number: int, cents: int) -> Wrong:
    return whole((number - 1) * cents)


@slip("Y06", "That takes away the price of only one. How many are bought?")
def pays_for_one(cents: int) -> Wrong:
    return whole(100 - cents)


@slip("Y07", "First say how many can be bought, then how many cents are left.")
def turns_the_two_round(full: int, rest: int) -> Wrong:
    return f"{rest} r {full}"


@slip("Y08", "The cents that are left still pay for one more.")
def one_more_could_be_bought(full: int, rest: int, cents: int) -> Wrong:
    return f"{full - 1} r {rest + cents}"


@slip("Y09", "Check: one more costs more than a dollar in all.")
def one_too_many_bought(full: int, rest: int, cents: int) -> Wrong:
    """Goes past the dollar, and calls what is missing the rest."""
    return f"{full + 1} r {cents - rest}"


@slip("Y10", "A dollar is 100 cents, not 10.")
def dollars_of_ten(dollars: int, cents: int) -> Wrong:
    return whole(10 * dollars - cents) if 10 * dollars > cents else None


@slip("Y11", "The last digit stands for hundredths. How many cents make a dollar?")
def over_ten(cents: int) -> Wrong:
    return over(cents, 10)


@slip("Y12", "The dollar is the whole: its 100 cents go on the bottom.")
def dollar_on_top(cents: int) -> Wrong:
    return over(100, cents)


@slip("Y13", "Compare with all 100 cents of the dollar, not with the other cents.")
def over_the_rest(cents: int) -> Wrong:
    return over(cents, 100 - cents)


@slip("Y14", "Cents are hundredths of a dollar: ones of cents stand in the second place after the point.")
def tenths_for_cents(cents: int) -> Wrong:
    """0.5 for 5 cents, 3.5 for 35 cents."""
    return over(cents, 10)


@slip("Y15", "That many dollars would be far more. Cents are hundredths of a dollar.")
def cents_as_dollars(cents: int) -> Wrong:
    return over(cents, 1)


@slip("Y16", "That is the percent of the dollar that is left.")
def rest_of_the_dollar(cents: int) -> Wrong:
    return over(100 - cents, 100)


@slip("Y17", "Which price is the whole? Compare with that one.")
def whole_over_part(part: int, price: int) -> Wrong:
    return over(price, part)


@slip("Y18", "That is the price in cents. A percent compares it with the other price.")
def cents_as_percent(cents: int) -> Wrong:
    return over(cents, 100)


@slip("Y19", "That compares the difference of the prices. Compare the price itself.")
def percent_of_the_difference(part: int, price: int) -> Wrong:
    return over(price - part, price)


@slip("Y20", "Ten hundredths make 1 tenth. Did you add the new tenth?")
def drops_a_new_ten(one: int, other: int) -> Wrong:
    """Ten hundredths are not traded for a tenth."""
    ones = one % 10 + other % 10
    return over(one + other - 10, 100) if ones >= 10 else None


@slip("Y21", "The question asks what the two cost together. Add.")
def takes_the_difference(one: int, other: int) -> Wrong:
    return over(abs(one - other), 100)


@slip("Y22", "Where is the point? Two places after it are cents.")
def loses_a_place(one: int, other: int) -> Wrong:
    return over(one + other, 10)


@slip("Y23", "Find how far apart the prices are. Do not add.")
def adds_the_prices(more: int, less: int) -> Wrong:
    return over(more + less, 100)


@slip("Y24", "You cannot switch the digits. Trade 1 tenth for 10 hundredths.")
def small_from_large_cents(more: int, less: int) -> Wrong:
    return over(10 * abs(more // 10 - less // 10) + abs(more % 10 - less % 10), 100) if more % 10 < less % 10 else None


@slip("Y25", "Two places after the point in the price make two in the product.")
def one_place_in_the_product(number: int, cents: int) -> Wrong:
    return over(number * cents, 10)


@slip("Y26", "Each one costs that much. Multiply, do not add.")
def adds_number_to_dollars(number: int, cents: int) -> Wrong:
    return over(100 * number + cents, 100)


@slip("Y27", "One is missing. How many are bought?")
def one_too_few_in_dollars(number: int, cents: int) -> Wrong:
    return over((number - 1) * cents, 100)


@slip("Y28", "That is what they cost. How much is left?")
def stops_at_the_cost(cost: int) -> Wrong:
    return over(cost, 100)


@slip("Y29", "That takes away the price of only one. How many are bought?")
def pays_for_one_in_dollars(dollars: int, cents: int) -> Wrong:
    return over(100 * dollars - cents, 100)


@slip("Y30", "That is more than there was to pay with. Take the cost away.")
def adds_the_cost(dollars: int, cost: int) -> Wrong:
    return over(100 * dollars + cost, 100)
