"""Slips, section Q: expressions with a letter. Each is the expression that the mistake would write."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("Q01", "Take those {down} from those {set_up}, not the other way round.")
def takes_the_whole_from_a_part(text: str) -> Wrong:
    return text


@slip("Q02", "Those {down} are not {standing}. Take away.")
def adds_the_part(text: str) -> Wrong:
    return text


@slip("Q03", "A number beside a letter means times. Both trials are added.")
def multiplies_for_a_total(text: str) -> Wrong:
    return text


@slip("Q04", "That is how much more the second trial was. Both trials are added.")
def takes_away_for_a_total(text: str) -> Wrong:
    return text


@slip("Q05", "The points are earned in both trials. Multiply both numbers.")
def multiplies_the_first_only(text: str) -> Wrong:
    return text


@slip("Q06", "The first trial earned points, too. Multiply both numbers.")
def multiplies_the_second_only(text: str) -> Wrong:
    return text


@slip("Q07", "The open side of the sign is at the greater number. More is wanted.")
def turns_the_sign_round(text: str) -> Wrong:
    return text


@slip("Q08", "That is more than {were_set_up}. Compare with how many {were_down}.")
def compares_with_the_whole(text: str) -> Wrong:
    return text


@slip("Q09", "That is the part {down}. n is 1 times n: take the part away from 1.")
def keeps_the_rate(k: int, n: int) -> Wrong:
    return over(k, n)


@slip("Q10", "The part {down} is taken away from n, not added.")
def adds_the_rate(top: int, n: int) -> Wrong:
    return over(top, n)


@slip("Q11", "A number is neither greater nor less than itself. Leave out the ones that are equal.")
def with_the_limit(count: int) -> Wrong:
    return whole(count)


@slip("Q12", "The open side of the sign is at the greater number. Read the inequality again.")
def on_the_other_side(count: int) -> Wrong:
    return whole(count) if count else None


@slip("Q13", "That is the number in the inequality. Count the results that make the inequality true.")
def limit_for_a_count(than: int) -> Wrong:
    return whole(than)


@slip("Q14", "The points of both {trials} are put together. Add, do not take away.")
def takes_away_for_both(label: str) -> Wrong:
    """As Q04, where an expression is multiplied out."""
    return label
