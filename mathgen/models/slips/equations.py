"""Slips, section L of the catalogue. Expressions, equations and lines."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


def _shared(total: int, parts: int) -> Wrong:
    """A quotient, where it is whole: no pupil takes 3 2/5 {items} for an answer."""
    return whole(total // parts) if parts and total % parts == 0 else None


@slip("L01", "A number beside a letter means times.")
def number_beside_letter_added(a: int, m: int, b: int, n: int) -> Wrong:
    """5d - 2m with d = 7 and m = 5 as 5 + 7 - (2 + 5). Kuchemann 1981 from memory."""
    return whole(a + m + n + b if b > 0 else a + m - (n - b))


@slip("L02", "Look again at what each letter stands for.")
def letters_swapped(a: int, m: int, b: int, n: int) -> Wrong:
    return whole(a * m + b * n)


@slip("L03", "That is the first part of the rule. Go on to the second part.")
def first_term_only(a: int, m: int) -> Wrong:
    return whole(a * m)


@slip("L04", "The second letter counts the {items} left over, not all that were there.")
def whole_for_rest(a: int, m: int, b: int, n: int) -> Wrong:
    return whole(a * m - b * n)


@slip("L05", "The two kinds earn different points. Multiply each by its own number.")
def terms_joined(a: int, m: int) -> Wrong:
    """5m + 3n as 8(m + n). Kuchemann 1981 from memory: 2a + 5b as 7ab."""
    return whole(a * m)


@slip("L06", "The equation adds. Undo it by subtracting.")
def adds_again(a: int, b: int) -> Wrong:
    return whole(a + b)


@slip("L07", "That number stands in the equation. Which number goes with it?")
def number_of_the_equation(a: int) -> Wrong:
    return whole(a)


@slip("L08", "A number beside x means times. Undo it by dividing.")
def subtracts_the_factor(a: int, b: int) -> Wrong:
    """5x = 45 as x = 45 - 5. From memory."""
    return whole(b - a)


@slip("L09", "The equation multiplies. Undo it by dividing.")
def multiplies_again(a: int, b: int) -> Wrong:
    return whole(a * b)


@slip("L10", "Take away the bonus points first.")
def bonus_left_in(a: int, total: int) -> Wrong:
    return _shared(total, a)


@slip("L11", "The bonus is added. Undo it by subtracting.")
def bonus_added_again(a: int, bonus: int, total: int) -> Wrong:
    return _shared(total + bonus, a)


@slip("L12", "The bonus is given once, not for each of the {items}.")
def bonus_for_each(a: int, bonus: int, total: int) -> Wrong:
    """5x + 10 as 15x. From memory."""
    return _shared(total, a + bonus)
