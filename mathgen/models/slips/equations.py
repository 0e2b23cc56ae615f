"""Slips, section L: expressions, equations and lines."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


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


@slip("L62", "Divide the score by the number of {items}.")
def subtracts_for_the_constant(a: int, b: int) -> Wrong:
    """L08, where no equation stands."""
    return whole(b - a)


@slip("L63", "Divide the score by the number of {items}. Do not multiply.")
def multiplies_for_the_constant(a: int, b: int) -> Wrong:
    """L09, where no equation stands."""
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


@slip("L13", "Both scores grow. How much faster does one of them grow?")
def rates_added(behind: int, rates: int) -> Wrong:
    return _shared(behind, rates)


@slip("L14", "How far apart are the scores at the start?")
def starts_added(a: int, b: int, rates: int) -> Wrong:
    return _shared(a + b, rates)


@slip("L15", "The {group} in front earns points, too.")
def one_stands_still(behind: int, rate: int) -> Wrong:
    return _shared(behind, rate)


@slip("L16", "That is the number of the other {items}. Look at what is asked.")
def the_other_unknown(other: int) -> Wrong:
    return whole(other)


@slip("L18", "Not all of the points come from these {items}.")
def all_points_of_one(total: int, rate: int) -> Wrong:
    return _shared(total, rate)


@slip("L19", "One more {down} is one less {standing}. The score changes by both.")
def rates_subtracted(total: int, rates: int) -> Wrong:
    return _shared(total, rates)


@slip("L20", "That is the start. How much does the score grow for one more?")
def start_for_slope(start: int) -> Wrong:
    return whole(start)


@slip("L21", "That is how much the score grows. Where does it start?")
def slope_for_start(slope: int) -> Wrong:
    return whole(slope)


@slip("L22", "That is what the {items} earned. Take it away from the score.")
def grown_for_start(grown: int) -> Wrong:
    return whole(grown)


@slip("L23", "Each of the {items} earns more than one point.")
def one_point_each(score: int, count: int) -> Wrong:
    return whole(score - count)


@slip("L24", "That many only reaches the goal. The score has to be more.")
def reaches_only(count: int) -> Wrong:
    """More than read as at least. From memory."""
    return whole(count)


@slip("L25", "At least means that the goal itself is enough.")
def passes_the_goal(count: int) -> Wrong:
    return whole(count)


@slip("L26", "Count the points that were earned already.")
def from_nothing(count: int) -> Wrong:
    return whole(count)


@slip("L27", "That is the score. The question asks for the number of {items}.")
def score_for_count(score: int) -> Wrong:
    return whole(score)


@slip("L28", "That is the score. How many points go with just one?")
def score_for_constant(score: int) -> Wrong:
    return whole(score)


@slip("L29", "That is how much the number of {items} grew. How much did the points grow?")
def other_quantity(growth: int) -> Wrong:
    return whole(growth)


@slip("L30", "That is the later value. How much greater is that than the earlier one?")
def later_value(value: int) -> Wrong:
    return whole(value)


@slip("L31", "How much greater means a difference.")
def values_added(value: int) -> Wrong:
    return whole(value)


@slip("L32", "A greater score is not enough. How many points go with just one?")
def greater_score_is_steeper(first: str, second: str, score: int, score2: int) -> Wrong:
    """Ours: the height of a point is taken for the slope of its line."""
    return None if score == score2 else (first if score > score2 else second)


@slip("L33", "Both grow, but do not have to grow at the same rate. Divide each score.")
def growing_is_proportional(same: int) -> Wrong:
    """Ours: common practice, no source."""
    return None if same else "true"


@slip("L34", "Do not compare by taking away. Divide each score.")
def compares_differences(counts: int, scores: int) -> Wrong:
    """Ours: the additive error of ratios, held against a score and its count."""
    return "false" if counts != scores else None


@slip("L35", "That is how much the score grew. How many {items} more earned it?")
def gives_the_rise(rise: int) -> Wrong:
    return whole(rise)


@slip("L36", "The score grew by that much for the {items} more, not for all of them.")
def divides_the_rise_by_all(rise: int, count: int) -> Wrong:
    return over(rise, count)


@slip("L37", "That is how many {items} more there were. How many points go with just one?")
def gives_the_run(run: int) -> Wrong:
    return whole(run)


@slip("L38", "That is how much the points grew in all. How much do they grow for one more?")
def gives_the_growth_in_all(rise: int) -> Wrong:
    return whole(rise)


@slip("L39", "That is a score. How much does the score grow for one more?")
def gives_the_later_score(score: int) -> Wrong:
    return whole(score)


@slip("L40", "Both numbers do not grow by the same amount. How many points go with just one?")
def adds_the_same_to_both(score: int) -> Wrong:
    return whole(score)


@slip("L41", "That is for just one. How many {items} are there?")
def gives_the_rate(rate: int) -> Wrong:
    return whole(rate)


@slip("L42", "That is the other score. The numbers of {items} differ.")
def gives_the_other_score(score: int) -> Wrong:
    return whole(score)


@slip("L43", "That is how far the scores are apart. How many points go with just one?")
def takes_scores_for_slopes(gap: int) -> Wrong:
    return whole(gap)


@slip("L44", "That is the greater of the two. How much greater is it than the other?")
def gives_the_greater_slope(slope: int) -> Wrong:
    return whole(slope)


@slip("L45", "How much greater means a difference.")
def adds_the_slopes(total: int) -> Wrong:
    return whole(total)


@slip("L46", "That many only reaches the limit. The loss has to be less.")
def reaches_the_limit(number: int) -> Wrong:
    return whole(number)


@slip("L47", "At most means that the limit itself is allowed.")
def leaves_the_limit_out(number: int) -> Wrong:
    return whole(number)


@slip("L48", "Count the points that were lost already.")
def forgets_what_was_lost(number: int) -> Wrong:
    return whole(number)


@slip("L49", "That is a number of points. How many {items} is that?")
def points_for_items(points: int) -> Wrong:
    return whole(points)


@slip("L60", "Each of the {items} earns only one of the two numbers of points.")
def both_rates_for_each(rates: int, total: int) -> Wrong:
    """5x + 3y = 63 as 8x = 63. Ours: L05, undone."""
    return _shared(total, rates)


@slip("L61", "The score does not start at 0. Compare the two scores.")
def start_left_in(count: int, score: int) -> Wrong:
    """Ours: L10 where the start is not told."""
    return _shared(score, count)
