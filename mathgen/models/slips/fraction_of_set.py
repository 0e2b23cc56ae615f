"""Slips, section A: naming and using a fraction of a set, k of n."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("A01", "The bottom number counts all the {items} {set_up}, not only the rest.")
def rest_below(k: int, n: int) -> Wrong:
    return over(k, n - k) if n - k > 1 else None  # a pupil writes k, not k/1: that is A05


@slip("A02", "A part of the set cannot be more than the whole set.")
def upside_down(k: int, n: int) -> Wrong:
    return over(n, k) if n % k else None  # 3/1 would be shown as 3, which nobody writes for 1/3


@slip("A03", "That is the other part of the set. Read the question again.")
def other_part(k: int, n: int) -> Wrong:
    return over(n - k, n)


@slip("A05", "You counted the part. Now say: out of how many?")
def just_the_count(k: int) -> Wrong:
    return whole(k)


@slip("A08", "Use only the {items} that the question names.")
def whole_table_bottom(k: int, all_set_up: int) -> Wrong:
    return over(k, all_set_up)


@slip("A12", "You found one part. Look at the top number: how many parts?")
def one_share_only(number: int, bottom: int) -> Wrong:
    return whole(number // bottom) if number % bottom == 0 else None


@slip("A13", "The top number counts parts, and each part has several {items}.")
def top_is_answer(top: int) -> Wrong:
    return whole(top)


@slip("A15", "That is the rest of the {items}. The question asks for the {items} {down}.")
def left_over_share(number: int, part: int) -> Wrong:
    return whole(number - part)


@slip("A16", "The number in the question is the part. The whole is bigger.")
def part_as_whole(part: int, a: int, b: int) -> Wrong:
    return whole(part * a // b) if part * a % b == 0 else None


@slip("A17", "That counts every color. Read the question again.")
def every_color(all_down: int, n: int) -> Wrong:
    """Ours: all that were knocked down, where one color is asked for."""
    return over(all_down, n)


@slip("A18", "The whole is all the {items} {set_up}, of every color.")
def own_set_bottom(k: int, own: int) -> Wrong:
    """Ours: A08 the other way round."""
    return over(k, own)


@slip("A19", "The whole is the {items} {down}, not the {items} {set_up}.")
def set_up_bottom(k: int, n: int) -> Wrong:
    """Ours: the other whole."""
    return over(k, n)


@slip("A20", "You found one part. The bottom number tells how many parts make the whole.")
def one_part_of_whole(part: int, a: int) -> Wrong:
    """Ours: A12 where the whole is asked for."""
    return whole(part // a) if a > 1 and part % a == 0 else None


@slip("A21", "Those are the {items} {standing}. The question asks for all the {items}.")
def rest_of_the_whole(total: int, part: int) -> Wrong:
    """Ours: A15 where the whole is asked for. Of a half, the rest is the number that is told."""
    return None if total == 2 * part else whole(total - part)


@slip("A22", "The whole is only the {items} {down}, not all the {items}.")
def all_set_up_bottom(k: int, n: int) -> Wrong:
    """Ours: the other whole, of every color."""
    return over(k, n)
