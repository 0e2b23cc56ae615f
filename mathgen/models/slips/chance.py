"""Slips, section K: chance."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, over, slip, whole


@slip("K01", "Two outcomes need not be equally likely. Use the results.")
def fifty_fifty(number: int) -> Wrong:
    return over(number, 2) if number % 2 == 0 else None


@slip("K06", "Multiply the part as many times as the whole has grown. Do not add.")
def expected_by_adding(k: int, n: int, number: int) -> Wrong:
    return whole(k + number - n)


@slip("K12", "That is how many to expect {standing}. Read the question again.")
def expects_the_rest(number: int, part: int) -> Wrong:
    """Ours: the part that the question does not ask for."""
    return whole(number - part)


@slip("K02", "The {items} are equally likely, not the kinds. Count the {items} of each kind.")
def one_for_each_kind(meant: int, kinds: int) -> Wrong:
    return over(meant, kinds)


@slip("K03", "A probability compares with all the {items}, not with the others.")
def odds_for_a_chance(k: int, n: int) -> Wrong:
    return over(k, n - k)


@slip("K04", "Compare parts of each set, not counts.")
def more_is_likelier(first: str, second: str, k: int, k2: int) -> Wrong:
    """More down is more likely; with both counts negated, fewer for "less likely"."""
    return None if k == k2 else (first if k > k2 else second)


@slip("K05", "Look at all the {items} of each set, not only at those {standing}.")
def fewer_misses_are_likelier(first: str, second: str, gap: int, gap2: int) -> Wrong:
    return None if gap == gap2 else (first if gap < gap2 else second)


@slip("K09", "Read the question again: which {items} does it ask about?")
def overlooks_not(k: int, n: int) -> Wrong:
    return over(k, n)


@slip("K44", "All the {items} {set_up} are in the bag. Their numbers stand in the headings.", sources=("table",))
def counts_what_happened(k: int, n: int) -> Wrong:
    """Ours: the rows of the table are counted, though the question is about what was there before."""
    return over(k, n)


@slip("K45", "That is what happened to one kind. The question asks about all the {items} {set_up}.", sources=("table",))
def part_of_its_own_color(k: int, n: int) -> Wrong:
    """Ours: what happened to the color that is asked for."""
    return over(k, n)


@slip("K13", "Two outcomes need not be equally likely. Count them.")
def even_chances() -> Wrong:
    """K01, for a probability."""
    return over(1, 2)


@slip("K41", "Two outcomes need not be equally likely. Use the results.")
def even_chances_of_results() -> Wrong:
    """K01, for a probability that is estimated from results."""
    return over(1, 2)


@slip("K42", "The kinds are not equally likely. Use the results.")
def one_for_each_kind_of_result(meant: int, kinds: int) -> Wrong:
    """K02, where results are the model: nothing in them is equally likely."""
    return over(meant, kinds)


@slip("K14", "That is the chance for {items} {down}. Read the question again.")
def chance_of_the_rest(k: int, n: int) -> Wrong:
    """K09 where the words say no "not"."""
    return over(k, n)


@slip("K15", "Read the question again: more likely or less likely?")
def other_way_round(label: str) -> Wrong:
    """Ours: the label that is left."""
    return label


@slip("K16", "Each first choice goes with every second choice. Multiply.")
def adds_choices(one: int, other: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(one + other)


@slip("K17", "The same one can be picked twice.")
def none_twice(kinds: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(kinds * (kinds - 1))


@slip("K18", "In an ordered pair, the order counts: two orders are two pairs.")
def order_left_out(kinds: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(kinds * (kinds + 1) // 2)


@slip("K20", "That is how many the sample has. The question asks about all the groups.")
def total_of_the_sample(total: int) -> Wrong:
    """Ours: H07, for a sample."""
    return whole(total)


@slip("K21", "That is for one group. The question asks about all the groups.")
def mean_of_the_sample(mean: int) -> Wrong:
    """Ours: H07, for a sample."""
    return whole(mean)


@slip("K22", "Find how many for one group first, then for all the groups.")
def sample_for_each_group(total: int, groups: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(total * groups)


@slip("K23", "Those digits stand for the {items} {standing}.")
def digits_for_the_rest(count: int) -> Wrong:
    """A03, for a simulation."""
    return whole(count)


@slip("K24", "That is how many {items} {were_down}. What part of all the {items} is that?")
def count_for_digits(count: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(count)


@slip("K25", "Compare how many {were_down} with how many {were_standing}.")
def the_other_is_likelier(verdict: str) -> Wrong:
    """Ours: common practice, no source."""
    return verdict


@slip("K26", "That is the mean of the sample. How far is that from the other mean?")
def mean_of_the_sample_only(total: int, size: int) -> Wrong:
    """Ours: H07, for a sample and a population."""
    return over(total, size)


@slip("K27", "That is the mean of the population. How far is that from the other mean?")
def mean_of_the_population_only(total: int, size: int) -> Wrong:
    """Ours: H07, for a sample and a population."""
    return over(total, size)


@slip("K28", "Compare the means, not the totals.")
def totals_for_means(gap: int) -> Wrong:
    """I02, where two means are compared."""
    return whole(gap)


@slip("K29", "That is what the model predicts. How far are the results from that?")
def model_only(count: int) -> Wrong:
    """Ours: H07, for a model and results."""
    return whole(count)


@slip("K30", "You compared with the other kinds. Compare with what the model predicts.")
def against_the_other_kinds(count: int) -> Wrong:
    """Ours: A01, for a model and results."""
    return whole(count)


@slip("K31", "The first card is not put back. How many cards are left for the second?")
def put_back_after_all(count: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(count * count)


@slip("K32", "The order counts: the same two cards the other way round are another pair.")
def order_does_not_count(count: int) -> Wrong:
    """Ours: common practice, no source."""
    return whole(count * (count - 1) // 2)


@slip("K33", "Each one of the {items} is equally likely. Count those that the question names.")
def shares_picks_among_kinds(number: int, kinds: int) -> Wrong:
    """Ours: common practice, no source, as are the two below."""
    return whole(number // kinds) if number % kinds == 0 else None


@slip("K34", "Those picks are of the other kinds. Which kind does the question ask for?")
def picks_of_the_others(number: int, k: int, n: int) -> Wrong:
    return whole(number * (n - k) // n)


@slip("K35", "That is how many there are of the color. How many of the picks should be of it?")
def keeps_the_count(k: int) -> Wrong:
    return whole(k)


@slip("K36", "That is the estimate for the class. How far is that from what the class did?")
def estimate_only(count: int) -> Wrong:
    """Ours: H07, for an estimate, as are the rest common practice."""
    return whole(count)


@slip("K37", "That compares the class with the sample. Make an estimate for the class first.")
def class_less_sample(gap: int) -> Wrong:
    return whole(gap)


@slip("K38", "Colors need not be equally many. Use the fraction that the color has of the population.")
def alike_for_each_color(size: int, colors: int) -> Wrong:
    return whole(size // colors) if size % colors == 0 else None


@slip("K39", "Those are the others. Which {items} does the question ask for?")
def other_colors_of_the_sample(size: int, k: int, n: int) -> Wrong:
    return whole(size * (n - k) // n)


@slip("K40", "That is how many the population has. How many belong in the sample?")
def count_of_the_population(count: int) -> Wrong:
    return whole(count)


@slip("K81", "Look at the event again: is it for both of the {items}, or for at least one?")
def other_event(found: int, runs: int) -> Wrong:
    """Ours: common practice, no source, as are the two below."""
    return over(found, runs)


@slip("K82", "That is the part for one of the {items}. Count the runs for two.")
def part_for_one(last: int, digits: int) -> Wrong:
    return over(last, digits)


@slip("K83", "That is how many runs have the event. What part of all the runs is that?")
def runs_for_a_part(found: int) -> Wrong:
    return whole(found)


@slip("K84", "Compare fractions: the part of the sample, and the part of the population.")
def counts_for_fractions(verdict: str) -> Wrong:
    """Ours: A01, for a sample and its population."""
    return verdict
