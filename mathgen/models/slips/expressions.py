"""Slips, section O: equations and expressions with parentheses."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("O01", "Work out the part in parentheses first.")
def multiplies_only_the_last(a: int, b: int, each: int) -> Wrong:
    return whole(a + b * each)


@slip("O02", "The parentheses hold both numbers. Multiply the sum, not the first number only.")
def multiplies_only_the_first(a: int, b: int, each: int) -> Wrong:
    return whole(a * each + b)


@slip("O03", "The parentheses hold both numbers. Multiply the difference, not the first number only.")
def multiplies_before_taking_away(a: int, b: int, each: int) -> Wrong:
    return whole(a * each - b)


@slip("O04", "The points are for the {items} {standing}.")
def scores_the_other_part(k: int, each: int) -> Wrong:
    return whole(k * each)


@slip("O05", "The sign says multiply. Which number times the known number makes the product?")
def takes_away_for_missing_factor(product: int, factor: int) -> Wrong:
    return whole(product - factor)


@slip("O06", "The product is known. Do not multiply again.")
def multiplies_the_product(product: int, factor: int) -> Wrong:
    return whole(product * factor) if product <= 100 else None


@slip("O07", "Without parentheses, multiplication comes first, so only one number is multiplied.")
def adds_before_multiplying(form: str) -> Wrong:
    """Works from left to right, and takes a sum first that is not in parentheses."""
    return "true" if form in ("no brackets", "first only") else None


@slip("O08", "Multiplying each part and adding comes to the same as multiplying the sum.")
def knows_brackets_only(form: str) -> Wrong:
    return "false" if form == "each by itself" else None


@slip("O09", "The parentheses hold both numbers. Multiplying the sum multiplies each of the parts.")
def knows_parts_only(form: str) -> Wrong:
    return "false" if form == "sum first" else None


@slip("O10", "Without parentheses, multiplication comes first, so only one number is multiplied.")
def leaves_the_brackets_out(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label


@slip("O11", "The points of both kinds count. The second number has to be multiplied as well.")
def multiplies_the_first_only(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label


@slip("O12", "The parentheses hold the {items}, not the points. Add the {items} first.")
def adds_points_to_items(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label


@slip("O13", "The bonus comes once, not for each one. Multiply first, then add it.")
def gives_each_the_bonus(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label


@slip("O14", "The bonus is points already. Only the {items} are multiplied.")
def takes_the_bonus_for_items(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label


@slip("O15", "Which number is multiplied by the points for each? The bonus is only added.")
def multiplies_the_bonus(label: str) -> Wrong:
    """As O07, where an expression is to be chosen."""
    return label
