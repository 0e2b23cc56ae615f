"""The catalogue of slips: common pupil errors, each with the wrong answer it leads to and a line of feedback.

Every wrong value is worked out from the numbers that the pupil sees, as (top, bottom); None where it is undefined or no
possible answer (a count that is not whole, a negative). A slip that equals the key is dropped later, in every accepted form.

Source: the project's catalogue of pupil errors (sections A to K); the research behind each is named there. Ids are its ids.
"""

from __future__ import annotations

from collections.abc import Callable
from math import gcd, lcm
from typing import NamedTuple

Pair = tuple[int, int]
Wrong = Pair | str | None


class SlipRule(NamedTuple):
    """How a slip comes about, and what to say to the pupil; names in braces come from the scenario."""

    id: str
    wrong: Callable[..., Wrong]
    line: str


_RULES: dict[str, SlipRule] = {}


def _slip(slip_id: str, line: str) -> Callable[[Callable[..., Wrong]], Callable[..., Wrong]]:
    def file(wrong: Callable[..., Wrong]) -> Callable[..., Wrong]:
        if slip_id in _RULES:
            raise ValueError(f"two slips are named {slip_id}")
        _RULES[slip_id] = SlipRule(slip_id, wrong, line)
        return wrong

    return file


def slip_rule(slip_id: str) -> SlipRule:
    """The rule of a slip id."""
    return _RULES[slip_id]


def slip_ids() -> tuple[str, ...]:
    """Every id of the catalogue, in order."""
    return tuple(sorted(_RULES))


def _over(top: int, bottom: int) -> Wrong:
    return (top, bottom) if bottom > 0 and top >= 0 else None


def _whole(number: int) -> Wrong:
    return (number, 1) if number >= 0 else None


# A. Naming and using a fraction of a set: k of n.


@_slip("A01", "The bottom number counts all the {items} {set_up}, not only the rest.")
def rest_below(k: int, n: int) -> Wrong:
    return _over(k, n - k) if n - k > 1 else None  # a pupil writes k, not k/1: that is A05


@_slip("A02", "A part of the set cannot be more than the whole set.")
def upside_down(k: int, n: int) -> Wrong:
    return _over(n, k)


@_slip("A03", "That is the other part of the set. Read the question again.")
def other_part(k: int, n: int) -> Wrong:
    return _over(n - k, n)


@_slip("A04", "Compare the part with the whole set, not one part with the other.")
def rest_above(k: int, n: int) -> Wrong:
    return _over(n - k, k)


@_slip("A05", "You counted the part. Now say: out of how many?")
def just_the_count(k: int) -> Wrong:
    return _whole(k)


@_slip("A08", "Use only the {items} of the color in the question.")
def whole_table_bottom(k: int, all_set_up: int) -> Wrong:
    return _over(k, all_set_up)


@_slip("A12", "You found one part. Look at the top number: how many parts?")
def one_share_only(number: int, bottom: int) -> Wrong:
    return _whole(number // bottom) if number % bottom == 0 else None


@_slip("A13", "The top number counts parts, and each part has several {items}.")
def top_is_answer(top: int) -> Wrong:
    return _whole(top)


@_slip("A15", "That is the rest of the {items}. The question asks for the {items} {down}.")
def left_over_share(number: int, part: int) -> Wrong:
    return _whole(number - part)


@_slip("A16", "The number in the question is the part. The whole is bigger.")
def part_as_whole(part: int, a: int, b: int) -> Wrong:
    return _whole(part * a // b) if part * a % b == 0 else None


@_slip("A17", "That counts every color. Read the question again.")
def every_color(all_down: int, n: int) -> Wrong:
    """Not in the research catalogue: A09 over the whole set."""
    return _over(all_down, n)


@_slip("A18", "The whole is all the {items}, not only the {items} of one color.")
def own_set_bottom(k: int, own: int) -> Wrong:
    """Not in the research catalogue: A08 the other way round."""
    return _over(k, own)


@_slip("A19", "The whole is the {items} {down}, not the {items} {set_up}.")
def set_up_bottom(k: int, n: int) -> Wrong:
    """Not in the research catalogue: the other whole."""
    return _over(k, n)


@_slip("A20", "You found one part. The bottom number tells how many parts make the whole.")
def one_part_of_whole(part: int, a: int) -> Wrong:
    """Not in the research catalogue: A12 where the whole is asked for."""
    return _whole(part // a) if a > 1 and part % a == 0 else None


@_slip("A21", "Those are the {items} {standing}. The question asks for all the {items}.")
def rest_of_the_whole(whole: int, part: int) -> Wrong:
    """Not in the research catalogue: A15 where the whole is asked for."""
    return _whole(whole - part)


@_slip("A22", "The whole is only the {items} {down}, not all the {items}.")
def all_set_up_bottom(k: int, n: int) -> Wrong:
    """Not in the research catalogue: the other whole, of every color."""
    return _over(k, n)


# B. Equal fractions.


@_slip("B01", "Multiply or divide the top and the bottom by the same number. Do not add.")
def adds_the_same(top: int, bottom: int, new_bottom: int) -> Wrong:
    found = top + new_bottom - bottom
    return _whole(found) if found > 0 else None


@_slip("B02", "The bottom number changed. The top number must change in the same way.")
def keeps_the_top(top: int) -> Wrong:
    return _whole(top)


@_slip("B13", "That number leads from one bottom number to the other. Use that number on the top.")
def stops_at_the_factor(factor: int) -> Wrong:
    """Not in the research catalogue: the step for the bottom number is the answer."""
    return _whole(factor)


# B. Comparing fractions: the wrong one is chosen.


@_slip("B05", "Look at how many were {set_up} as well.")
def more_pins_wins(first: str, second: str, k: int, k2: int) -> Wrong:
    return None if k == k2 else (first if k > k2 else second)


@_slip("B06", "Fewer {items} {standing} is not enough. Look at how many were {set_up}.")
def fewer_left_wins(first: str, second: str, gap: int, gap2: int) -> Wrong:
    return None if gap == gap2 else (first if gap < gap2 else second)


@_slip("B04", "A bigger bottom number means smaller parts, not a greater fraction.")
def bigger_bottom_wins(first: str, second: str, bottom: int, bottom2: int) -> Wrong:
    return None if bottom == bottom2 else (first if bottom > bottom2 else second)


@_slip("B11", "A bigger top number is not enough. Are the parts the same size?")
def bigger_top_wins(first: str, second: str, top: int, top2: int) -> Wrong:
    """B05 where fractions of one whole are seen, not counts: what to look at is the size of the parts."""
    return more_pins_wins(first, second, top, top2)


@_slip("B12", "Missing parts can differ in size. Write both fractions with the same bottom number.")
def smaller_gap_wins(first: str, second: str, gap: int, gap2: int) -> Wrong:
    """B06 where fractions of one whole are seen, not counts."""
    return fewer_left_wins(first, second, gap, gap2)


@_slip("B10", "Read the question again: which one is greater?")
def smaller_is_chosen(smaller: str) -> Wrong:
    """Not in the research catalogue: the label that is left when the question is read the wrong way round."""
    return smaller


# C. Adding fractions of one whole, and taking them away.


@_slip("C06", "Write 1 as a fraction with the same bottom number first.")
def one_minus_top(top: int, bottom: int) -> Wrong:
    return _over(abs(1 - top), bottom)


@_slip("C01", "The bottom number says how big the parts are. Do not add the bottom numbers.")
def adds_across(a: int, b: int, c: int, d: int) -> Wrong:
    return _over(a + c, b + d)


@_slip("C02", "When you change the bottom number, change the top number to match.")
def keeps_bigger_bottom(a: int, b: int, c: int, d: int) -> Wrong:
    return _over(a + c, max(b, d))


@_slip("C03", "The top numbers must grow with the bottom numbers.")
def multiplies_bottoms_only(a: int, b: int, c: int, d: int) -> Wrong:
    return _over(a + c, b * d)


@_slip("C04", "The parts have a new size. Change each top number as well.")
def tops_untouched(a: int, b: int, c: int, d: int) -> Wrong:
    return _over(a + c, lcm(b, d))


@_slip("C05", "Make the parts the same size first. Then take away the top numbers only.")
def takes_across(a: int, b: int, c: int, d: int) -> Wrong:
    return _over(abs(a - c), abs(b - d)) if a != c and abs(b - d) > 1 else None


@_slip("C07", "Put the two sets together first. Then count again.")
def sum_of_two_sets(k: int, n: int, k2: int, n2: int) -> Wrong:
    bottom = lcm(n, n2)
    return _over(k * (bottom // n) + k2 * (bottom // n2), bottom)


@_slip("C11", "One part is inside the other. Take away; do not add.")
def adds_for_rest(a: int, b: int, c: int, d: int) -> Wrong:
    """Not in the research catalogue: the other operation."""
    bottom = lcm(b, d)
    return _over(a * (bottom // b) + c * (bottom // d), bottom)


@_slip("C12", "The question asks for both parts together. Add.")
def takes_away_for_sum(a: int, b: int, c: int, d: int) -> Wrong:
    """Not in the research catalogue: the other operation."""
    bottom = lcm(b, d)
    top = abs(a * (bottom // b) - c * (bottom // d))
    return _over(top, bottom) if top else None


@_slip("C13", "That is only one of the parts. The question asks for both together.")
def one_part_only(top: int, bottom: int) -> Wrong:
    """Not in the research catalogue: stops before the second part."""
    return _over(top, bottom)


@_slip("C14", "When you change the bottom number, change the top number to match.")
def takes_tops_only(a: int, b: int, c: int, d: int) -> Wrong:
    """Not in the research catalogue: C04 of a difference."""
    return _over(a - c, lcm(b, d)) if a > c else None


# D. Between fractions, decimals and percents.


@_slip("D01", "The part is less than the whole, so the decimal is less than 1.")
def point_for_bar(a: int, b: int) -> Wrong:
    return _over(a * 10 ** len(str(b)) + b, 10 ** len(str(b)))


@_slip("D02", "Do not copy the digits. A decimal shows tenths and hundredths.")
def glued_digits(a: int, b: int) -> Wrong:
    if b % 10 == 0:
        return None  # 0.610 would be shown as 0.61, which nobody writes for 6/10
    digits = f"{a}{b}"
    return _over(int(digits), 10 ** len(digits))


@_slip("D04", "Look at the bottom number: are the parts tenths?")
def top_as_decimal(a: int) -> Wrong:
    return _over(a, 10) if a < 10 else None


@_slip("D05", "Divide the top number by the bottom number.")
def divide_backwards(a: int, b: int) -> Wrong:
    return _over(b, a)


@_slip("D07", "That is a number of {items}. A percent tells how many out of 100.")
def top_as_percent(k: int) -> Wrong:
    return _over(k, 100)


@_slip("D09", "Divide by all the {items} {set_up}.")
def rest_percent(k: int, n: int) -> Wrong:
    return _over(k, n - k)


@_slip("D17", "There is a remainder. Share the remainder, too.")
def drops_the_remainder(a: int, b: int) -> Wrong:
    """Not in the research catalogue: only the whole number of a quotient."""
    return _whole(a // b)


@_slip("D18", "Tenths stand in the first place after the point.")
def tenths_one_place_late(k: int, n: int) -> Wrong:
    """Not in the research catalogue: 7 tenths written as 0.07."""
    return (10 * k // n, 100) if 10 * k % n == 0 and 10 * k < 10 * n else None


@_slip("D19", "That shares out more than there is. Share only the remainder.")
def rounds_the_share_up(a: int, b: int) -> Wrong:
    """Not in the research catalogue: the whole number after a quotient."""
    return _whole(a // b + 1)


@_slip("D20", "Which number is shared? Divide that number.")
def shares_backwards(a: int, b: int) -> Wrong:
    """D05 of a story about sharing. Only where the fraction is shown as the pupil writes it."""
    return _over(b, a) if gcd(a, b) == 1 else None


@_slip("D08", "A percent tells how many out of 100. The bottom number is no percent.")
def bottom_as_percent(b: int) -> Wrong:
    return _over(b, 100)


@_slip("D10", "A percent counts hundredths. Is the part really less than 1%?")
def sign_stuck_on(k: int, n: int) -> Wrong:
    return _over(k, 100 * n)


@_slip("D11", "A percent counts hundredths, not tenths or thousandths. Look at the places again.")
def one_place_off(k: int, n: int) -> Wrong:
    return _over(k, 10 * n)


@_slip("D12", "Look at the places: the first two places after the point are the percent.")
def digits_as_percent(digits: int) -> Wrong:
    return _over(digits, 100)


@_slip("D13", "Percent means hundredths. The first place after the point is tenths.")
def percent_behind_point(p: int) -> Wrong:
    return _over(p, 10) if p < 10 else None


@_slip("D15", "Look at the next digit before you stop.")
def chopped(k: int, n: int) -> Wrong:
    return _over(10 * k // n, 10)


@_slip("D21", "The part is less than the whole, so the decimal is less than 1.")
def sign_left_off(k: int, n: int) -> Wrong:
    """Not in the research catalogue: 75% written as 75."""
    return _over(100 * k, n)


# E. Decimals: comparing and rounding.


def _digits(text: str) -> int:
    return int(text.partition(".")[2])


@_slip("E01", "More digits do not make a decimal greater. Compare the tenths first.")
def longer_is_larger(first: str, second: str, one: str, other: str) -> Wrong:
    return more_pins_wins(first, second, _digits(one), _digits(other))


@_slip("E02", "More digits do not make a decimal smaller. Compare the tenths first.")
def shorter_is_larger(first: str, second: str, one: str, other: str) -> Wrong:
    return fewer_left_wins(first, second, len(one), len(other))


@_slip("E11", "Which place did the question ask for?")
def wrong_place(k: int, n: int) -> Wrong:
    """The neighboring place of tenths: ones. To hundredths a pupil would be right, but for the place."""
    return _whole((2 * k + n) // (2 * n))


@_slip("E12", "Round up only where the next digit is 5 or more.")
def always_up(k: int, n: int) -> Wrong:
    """Not in the research catalogue: D15 the other way round."""
    return _over(10 * k // n + 1, 10)


# F. Percent of a number, and percent change. Percents are rates: 25% is (25, 100).


@_slip("F01", "The percent is not a number of {items} to take away.")
def takes_away_percent(p: int, n: int) -> Wrong:
    return _whole(n - p)


@_slip("F02", "Dividing by 10 gives 10%. That trick is only for 10%.")
def divide_by_percent(p: int, n: int) -> Wrong:
    return _whole(n // p) if p and n % p == 0 else None


@_slip("F03", "That is the percent. The whole here is not 100 {items}.")
def percent_is_answer(p: int) -> Wrong:
    return _whole(p)


@_slip("F04", "A part of the {items} cannot be more than all the {items}.")
def no_hundred(p: int, n: int) -> Wrong:
    return _whole(p * n)


@_slip("F05", "That is the rest. The question asks for the part that the percent gives.")
def other_share(n: int, part: int) -> Wrong:
    return _whole(n - part)


@_slip("F06", "A part of the set is less than 100%.")
def whole_over_part(k: int, n: int) -> Wrong:
    return _over(n, k)


@_slip("F07", "Compare the change with where it started.")
def new_as_base(old: int, new: int) -> Wrong:
    return _over(abs(new - old), new)


@_slip("F08", "That is a number of {items}, not a percent. What part of the start is it?")
def bare_difference(old: int, new: int) -> Wrong:
    return _over(abs(new - old), 100)


@_slip("F09", "That is the new amount as a percent of the old. How much is the change?")
def forgot_to_take_100(old: int, new: int) -> Wrong:
    return _over(new, old)


@_slip("F12", "The bigger set counts more. Add the {items} first.")
def averages_the_percents(k: int, n: int, k2: int, n2: int) -> Wrong:
    return _over(k * n2 + k2 * n, 2 * n * n2)


@_slip("F13", "The percents are of two different sets. Add the {items}, not the percents.")
def adds_the_percents(k: int, n: int, k2: int, n2: int) -> Wrong:
    return _over(k * n2 + k2 * n, n * n2)


@_slip("F14", "The number in the question is only the part. The whole is bigger.")
def percent_of_the_part(p: int, part: int) -> Wrong:
    return _whole(p * part // 100) if p * part % 100 == 0 else None


# G. Ratio and rate. A ratio is (first, second), as it is counted.


@_slip("G01", "The question compares two parts. Do not count all the {items}.")
def whole_slipped_in(part: int, whole: int) -> Wrong:
    return _over(part, whole)


@_slip("G02", '"All" means every part together, not only the rest.')
def part_slipped_in(part: int, whole: int) -> Wrong:
    return _over(part, whole - part)


@_slip("G03", "Say the ratio in the order of the words.")
def order_swapped(first: int, second: int) -> Wrong:
    return _over(second, first)


@_slip("G05", "Multiply the part as many times as the whole has grown. Do not add.")
def add_same_scaling(k: int, n: int, number: int) -> Wrong:
    return _whole(k + number - n)


@_slip("G08", '"Times as many" means multiply.')
def times_as_more(small: int, times: int) -> Wrong:
    return _whole(small + times)


@_slip("G09", "Which number is the bigger one? Multiply or divide to get there.")
def times_the_wrong_way(small: int, times: int) -> Wrong:
    """Not in the research catalogue: the smaller number divided instead of multiplied."""
    return _whole(small // times) if small % times == 0 else None


@_slip("G10", '"Times as many" counts the first set already. You have one set too many.')
def one_set_too_many(small: int, times: int) -> Wrong:
    """Not in the research catalogue: "3 times as many" read as 3 times more."""
    return _whole(small * (times + 1))


@_slip("G11", '"How many times as many" means divide. Do not take away.')
def takes_away_for_times(big: int, small: int) -> Wrong:
    """Not in the research catalogue: compared by adding on, as in G08."""
    return _whole(big - small)


@_slip("G12", "Count the first set too. How many sets fit into the bigger number?")
def first_set_not_counted(big: int, small: int) -> Wrong:
    """Not in the research catalogue: only the sets that are more."""
    return _whole(big // small - 1) if small and big % small == 0 else None


@_slip("G13", "Multiply the whole as many times as the part has grown. Do not add.")
def adds_to_the_whole(k: int, n: int, part: int) -> Wrong:
    """Not in the research catalogue: G05 where the whole is asked for."""
    return _whole(n + part - k)


# H. How many more or fewer, and other questions of counting.


@_slip("H01", "The question asks how far apart the two numbers are. Do not add.")
def more_means_add(a: int, b: int) -> Wrong:
    return _whole(a + b)


@_slip("H02", "That is the bigger number. How far apart are the two numbers?")
def bigger_number(a: int, b: int) -> Wrong:
    return _whole(max(a, b))


@_slip("H03", "Which number is the bigger one? Read the sentence again.")
def word_picks_sign(given: int, difference: int) -> Wrong:
    return _whole(given + difference)


@_slip("H04", "Count the {items} {down}, not the {items} {set_up}.")
def set_up_instead(n: int, n2: int) -> Wrong:
    return _whole(abs(n - n2))


@_slip("H05", "Count the {items} {down}, not the {items} {standing}.")
def standing_instead(u: int, u2: int) -> Wrong:
    return _whole(abs(u - u2))


@_slip("H06", "That is more {items} than were {set_up}. Which step takes away?")
def adds_everything(*numbers: int) -> Wrong:
    return _whole(sum(numbers))


@_slip("H07", "Read the question again. Is there one more step?")
def stops_half_way(first_result: int) -> Wrong:
    return _whole(first_result)


@_slip("H19", "The total has the parts in it already. Take the parts away from the total.")
def adds_the_total(total: int, *parts: int) -> Wrong:
    """Not in the research catalogue: H12 of a story, where a total and its known parts are all added."""
    return _whole(total + sum(parts))


@_slip("H10", "You cannot switch the digits. Trade 1 ten for 10 ones.")
def small_from_large_digit(a: int, b: int) -> Wrong:
    if max(a, b) <= 20:  # known by heart or counted, not worked in columns
        return None
    width = max(len(str(a)), len(str(b)))
    digits = [abs(int(x) - int(y)) for x, y in zip(str(a).zfill(width), str(b).zfill(width), strict=True)]
    return _whole(int("".join(map(str, digits))))


@_slip("H11", "Ten ones make 1 ten. Did you add the new ten?")
def lost_carry(*numbers: int) -> Wrong:
    width = max(len(str(number)) for number in numbers)
    columns = [sum(int(str(number).zfill(width)[place]) for number in numbers) for place in range(width)]
    # The first column is written out whole: 62 and 58 come to 110, not to 10; 6, 4 and 7 have no ten to lose.
    return _whole(int("".join([str(columns[0]), *(str(column % 10) for column in columns[1:])])))


@_slip("H13", "You are 1 away. Do not count the number that you start on.")
def one_off(counted: int) -> Wrong:
    return _whole(counted)


@_slip("H14", "One number is missing from your sum. Did you add every number?")
def stops_early(*numbers: int) -> Wrong:
    """Not in the research catalogue: the last number is left out of a sum."""
    return _whole(sum(numbers[:-1]))


@_slip("H15", "The question asks how many in all. Add.")
def takes_away_for_total(a: int, b: int) -> Wrong:
    """Not in the research catalogue: the other operation. Nobody answers 0 to "how many in all"."""
    return _whole(abs(a - b)) if a != b else None


@_slip("H16", "One number is missing. Did you add all the {items} {down} first?")
def leaves_one_out(whole: int, *numbers: int) -> Wrong:
    """Not in the research catalogue: the last number is left out, then the sum is taken away."""
    return _whole(whole - sum(numbers[:-1]))


@_slip("H17", "That counts the {items} {set_up} for one {trial} only. How many {trials} were there?")
def one_trial_set_up(each: int, down: int) -> Wrong:
    """Not in the research catalogue: the step that multiplies is left out."""
    return _whole(each - down)


@_slip("H18", "That is the number of {items} {down}. The question asks for the {items} {standing}.")
def other_part_of_count(k: int) -> Wrong:
    """Not in the research catalogue: the part that the question does not ask for."""
    return _whole(k)


# I. Mean.


def _shared(total: int, count: int) -> Wrong:
    """A total shared out, whole where it comes out whole: a pupil writes 12, not 24/2."""
    return _whole(total // count) if count and total % count == 0 else _over(total, count)


@_slip("I01", "The {trial} with 0 was still a {trial}.")
def zero_does_not_count(*numbers: int) -> Wrong:
    return _shared(sum(numbers), sum(1 for number in numbers if number)) if 0 in numbers else None


@_slip("I02", "That is the total. Now share the total equally.")
def no_divide(*numbers: int) -> Wrong:
    return _whole(sum(numbers))


@_slip("I04", "How many numbers did you add? Divide by that many.")
def halve_it(*numbers: int) -> Wrong:
    return _shared(sum(numbers), 2)


def _middle(numbers: tuple[int, ...]) -> Wrong:
    """What stands in the middle of a list as it is: one number, or halfway between two."""
    half = len(numbers) // 2
    return (numbers[half], 1) if len(numbers) % 2 else _shared(numbers[half - 1] + numbers[half], 2)


@_slip("I06", "Put the numbers in order first.")
def middle_of_the_row(*numbers: int) -> Wrong:
    return _middle(numbers)


@_slip("I07", "Two numbers are in the middle. Go halfway between the two.")
def picks_one_middle(*numbers: int) -> Wrong:
    return (sorted(numbers)[len(numbers) // 2 - 1], 1) if len(numbers) % 2 == 0 else None


@_slip("I08", "The median is the middle number of the list, not the middle between its ends.")
def half_way_ends(*numbers: int) -> Wrong:
    return _shared(min(numbers) + max(numbers), 2)


@_slip("I13", "The mean shares the total equally. The median is the middle of the list in order.")
def swaps_mean_and_median(asked: str, *numbers: int) -> Wrong:
    """The median where the mean is asked for, or the other way round."""
    return _middle(tuple(sorted(numbers))) if asked == "mean" else _shared(sum(numbers), len(numbers))


@_slip("I14", "Find the total that all the {trials} together must have.")
def mean_fills_gap(mean: int) -> Wrong:
    return _whole(mean)


@_slip("I15", "Count the next {trial}, too. How many {trials} will there be?")
def next_trial_not_counted(mean: int, *numbers: int) -> Wrong:
    """Not in the research catalogue: the total is found for the trials so far."""
    return _whole(mean * len(numbers) - sum(numbers))


@_slip("I16", "That is the total for all the {trials}. Take away the {items} so far.")
def stops_at_the_total(total: int) -> Wrong:
    """Not in the research catalogue: H07, for a goal."""
    return _whole(total)


# K. Chance.


@_slip("K01", "Two outcomes need not be equally likely. Use the results.")
def fifty_fifty(number: int) -> Wrong:
    return _over(number, 2) if number % 2 == 0 else None


@_slip("K06", "Multiply the part as many times as the whole has grown. Do not add.")
def expected_by_adding(k: int, n: int, number: int) -> Wrong:
    return _whole(k + number - n)


@_slip("K12", "That is how many to expect {standing}. Read the question again.")
def expects_the_rest(number: int, part: int) -> Wrong:
    """Not in the research catalogue: the part that the question does not ask for."""
    return _whole(number - part)
