"""Each limit has a case on each side."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from mathgen.exact.printed_step import UnreadableStepError
from mathgen.gate.gate import Gate
from mathgen.gate.signature import Signature, Stop
from mathgen.grades.curriculum import load

CCSS = load("ccss")
GATES = {grade: Gate(CCSS, grade) for grade in CCSS.grades}
ENGLAND = {grade: Gate(load("england"), grade) for grade in load("england").grades}


def names(grade, signature, gates=GATES):
    """The names of the limits that stop a signature in a grade."""
    return {stop.limit for stop in gates[grade].stops(signature)}


def part(down, size, **more):
    """ "What fraction of the 8 red pins fell?" """
    return Signature(
        "fraction of a set", frozenset({"fraction_notation"}), (str(down), str(size)), (f"{down} / {size} = {down}/{size}",),
        f"{down}/{size}", (size,), **more,
    )  # fmt: skip


def rest(down, size):
    """ "9/12 of the 12 pins fell; what fraction was left standing?" """
    return Signature(
        "rest of one whole", frozenset({"fraction_notation", "fraction_add_like"}), (f"{down}/{size}",),
        (f"{size}/{size} - {down}/{size} = {size - down}/{size}",), f"{size - down}/{size}", (size,),
    )  # fmt: skip


def compare(one, other, sets, *features):
    return Signature("compare fractions", frozenset({"fraction_notation", *features}), (one, other), (), "Owls", sets)


def total(*counts, **more):
    return Signature(
        "total of parts",
        frozenset(),
        tuple(map(str, counts)),
        (f"{' + '.join(map(str, counts))} = {sum(counts)}",),
        str(sum(counts)),
        **more,
    )


def decimal(down, size, answer, *steps):
    return Signature("part of a set as a decimal", frozenset({"decimal_notation"}), (str(down), str(size)), steps, answer, (size,))


# --- denominators and wholes ---


@pytest.mark.parametrize("size", range(2, 13))
def test_grade_3_names_fractions_of_the_listed_sets_only(size):
    """CCSS-M 2010, footnote on 3.NF: denominators 2, 3, 4, 6, 8. Ten pins are out, even where 5 of 10 is a half."""
    stops = names(3, part(1, size))
    assert stops == (set() if size in {2, 3, 4, 6, 8} else {"denominator", "set size"})


@pytest.mark.parametrize("size", range(2, 102))
def test_grade_4_writes_the_listed_denominators_only(size):
    """CCSS-M 2010, footnote on 4.NF: denominators 2, 3, 4, 5, 6, 8, 10, 12, 100."""
    stops = names(4, rest(1, size))
    assert stops == (set() if size in {2, 3, 4, 5, 6, 8, 10, 12, 100} else {"denominator", "set size"})


def test_a_simplified_answer_does_not_rescue_ten_pins_in_grade_3():
    halved = part(5, 10)._replace(answer="1/2", steps=("5/10 = 1/2",))
    assert "denominator" in names(3, halved)
    assert "set size" in names(3, halved._replace(steps=(), givens=("5", "10")))


def test_the_stop_says_what_was_found_and_expected():
    found = GATES[3].stops(part(3, 5))
    assert found[0] == Stop("denominator", "5", "one of 2, 3, 4, 6, 8 in Grade 3")
    assert str(found[0]) == "denominator: found 5, expected one of 2, 3, 4, 6, 8 in Grade 3"


def test_one_whole_in_grades_3_to_5_and_unequal_sets_from_grade_6():
    """CCSS-M 2010, 4.NF.A.2: valid only when both fractions refer to the same whole; 6.RP.A.3a compares ratios."""
    assert names(4, compare("3/4", "5/8", (8, 8))) == set()
    assert names(4, compare("3/4", "5/8", (4, 8))) == {"same whole"}
    assert names(6, compare("3/4", "5/8", (4, 8), "unequal_sets")) == set()
    assert names(6, compare("3/4", "5/8", (8, 8))) == {"unequal sets"}
    assert "unequal_sets" in names(4, compare("3/4", "5/8", (8, 8), "unequal_sets"))


def test_grade_3_compares_one_denominator_and_grade_4_two():
    """CCSS-M 2010, 3.NF.A.3d and 4.NF.A.2."""
    assert names(3, compare("3/8", "5/8", (8, 8))) == set()
    assert names(3, compare("1/2", "5/8", (8, 8))) == {"same denominator"}
    assert names(4, compare("3/8", "5/8", (8, 8))) == {"different denominators"}
    assert names(4, compare("1/2", "5/8", (8, 8), "unlike_denominators")) == set()
    assert "unlike_denominators" in names(3, compare("1/2", "5/8", (8, 8), "unlike_denominators"))


def test_a_common_denominator_stays_in_the_grade_4_list():
    """5/8 with 7/12 needs 24. Equal numerators, or 1/2 between the two, need no common denominator."""
    assert "common denominator" in names(4, compare("5/8", "7/12", (8, 8)))
    assert "common denominator" in names(4, compare("5/8", "11/12", (8, 8)))
    assert "common denominator" not in names(4, compare("5/8", "5/12", (8, 8)))
    assert "common denominator" not in names(4, compare("3/8", "7/12", (8, 8)))
    assert "common denominator" not in names(4, compare("2/3", "3/4", (12, 12)))


def test_parts_of_different_sets_have_no_sum_in_any_grade():
    """3 of 4 and 2 of 3 pins are no 17/12 of anything."""
    added = Signature("percent of a set", frozenset({"unequal_sets"}), ("3/4", "2/3"), ("3/4 + 2/3 = 17/12",), "70.8%", (4, 3))
    assert "sum of different wholes" in names(7, added)
    assert "sum of different wholes" not in names(7, added._replace(sets=(12, 12)))


def test_a_difference_of_rates_of_different_sets_waits_for_grade_7():
    taken = Signature("compare fractions", frozenset({"unequal_sets"}), ("3/4", "2/3"), ("3/4 - 2/3 = 1/12",), "1/12", (4, 3))
    assert "difference of different wholes" in names(6, taken)
    seventh = replace(CCSS, _by_skill_and_grade=MappingProxyType({("compare fractions", 7): CCSS.entry("compare fractions", 6)}))
    assert Gate(seventh, 7).stops(taken) == ()


@pytest.mark.parametrize(("size", "stopped"), [(1, True), (0, True), (2, False)])
def test_a_set_of_one_is_no_set(size, stopped):
    signature = Signature("part from a percent", frozenset({"percent"}), ("50%", "2"), ("50% * 2 = 1",), "1", (size,))
    assert ("set of one" in names(6, signature)) is stopped


# --- whole numbers ---


def test_grade_2_stays_within_100():
    """CCSS-M 2010, 2.OA.A.1."""
    assert names(2, total(48, 52)) == set()
    assert names(2, total(48, 53)) == {"largest number"}


def test_grade_3_stays_within_1000():
    """CCSS-M 2010, 3.NBT.A.2."""
    assert names(3, total(400, 600)) == set()
    assert names(3, total(400, 601)) == {"largest number"}


def test_grade_4_stays_within_a_million():
    """CCSS-M 2010, footnote on 4.NBT."""
    left = Signature("two steps, what is left", frozenset(), ("1,000,000", "2"), ("1,000,000 - 2 = 999,998",), "999,998")
    assert names(4, left) == set()
    assert names(4, left._replace(givens=("1,000,001", "2"))) == {"largest number"}


def test_grade_2_adds_up_to_four_numbers_of_two_digits():
    """CCSS-M 2010, 2.NBT.B.6."""
    assert names(2, total(21, 22, 23, 24)) == set()
    assert names(2, total(11, 12, 13, 14, 15)) == {"addends"}
    chain = total(11, 12, 13, 14, 15)._replace(steps=("11 + 12 = 23", "23 + 13 = 36", "36 + 14 = 50", "50 + 15 = 65"))
    assert names(2, chain) == {"addends"}
    assert "addend" in names(2, total(100, 2, 3))
    assert "addend" not in names(2, total(100, 2))


def test_sums_within_20_are_no_grade_3_work():
    """CCSS-M 2010, 2.OA.B.2: sums within 20 are known from memory by the end of grade 2."""
    assert names(3, total(9, 11)) == {"numbers too small"}
    assert names(3, total(9, 12)) == set()


def test_operations_by_grade():
    """CCSS-M 2010: two-step stories start in 2.OA.A.1; two steps in 3.OA.D.8."""
    two = Signature("two steps, what is left", frozenset({"two_step"}), ("12", "2", "2", "5"), ("2 + 2 + 5 = 9", "12 - 9 = 3"), "3")
    three = two._replace(steps=("2 + 2 + 5 = 9", "12 - 9 = 3", "3 - 1 = 2"), answer="2")
    assert names(2, two) == set()
    assert names(2, three) == {"operations"}
    assert names(4, three) == set()
    assert names(2, two._replace(skill="total of parts")) == {"operations"}


def test_a_sum_in_one_line_or_in_a_chain_is_one_operation():
    chain = Signature("two steps, what is left", frozenset(), ("12",), ("2 + 2 = 4", "4 + 5 = 9", "12 - 9 = 3"), "3")
    assert names(2, chain) == set()


def test_products_within_100_in_grade_3_or_a_digit_times_tens():
    """CCSS-M 2010, 3.OA.A.3 and 3.NBT.A.3."""

    def stops(product, down):
        text = f"{product} = {(value := int(product.split(' * ')[0]) * int(product.split(' * ')[1]))}"
        return names(
            3, Signature("two steps, what is left", frozenset(), (), (text, f"{value} - {down} = {value - down}"), str(value - down))
        )

    assert stops("10 * 10", 1) == set()
    assert stops("8 * 12", 1) == set()
    assert stops("9 * 12", 1) == {"product"}
    assert stops("3 * 40", 1) == set()
    assert stops("90 * 6", 1) == set()
    assert stops("2 * 100", 1) == {"product"}


def test_grade_3_multiplies_numbers_up_to_a_dozen_but_for_doubles_and_tens():
    """CCSS-M 2010, 3.OA.C.7: products of one-digit numbers are known by heart; a dozen and doubles are our own, no source."""

    def stops(*steps):
        return names(3, Signature("two steps, what is left", frozenset(), (), steps, steps[-1].split(" = ")[1]))

    assert stops("3 * 25 = 75", "75 - 1 = 74") == stops("13 * 7 = 91", "91 - 1 = 90") == stops("91 / 7 = 13", "13 - 1 = 12") == {"factors"}
    assert stops("3 * 12 = 36", "36 - 1 = 35") == stops("2 * 45 = 90", "90 - 1 = 89") == stops("90 / 3 = 30", "30 - 1 = 29") == set()


def test_multiplication_waits_for_grade_3_even_where_the_model_does_not_say_so():
    """CCSS-M 2010, 3.OA.A."""
    racks = Signature("two steps, what is left", frozenset(), ("4", "6"), ("4 * 6 = 24", "24 - 9 = 15"), "15")
    assert {"multiply_divide", "product"} <= names(2, racks)
    assert names(3, racks) == set()


def test_times_as_many_is_grade_4_and_needs_real_factors():
    """CCSS-M 2010, 4.OA.A.2; out of grade 3 by the footnote on 3.MD.A.2."""
    times = Signature("times as many", frozenset({"times_as_many", "multiply_divide"}), ("4", "8"), ("4 * 8 = 32",), "32")
    assert names(4, times) == set()
    assert names(3, times) == {"skill"}
    assert "factor" in names(4, times._replace(steps=("1 * 8 = 8",), answer="8"))
    assert "factor" in names(4, times._replace(steps=("8 / 8 = 1",), answer="1"))
    assert "whole answer" in names(4, times._replace(steps=("9 / 2 = 9/2",), answer="4 1/2"))


def test_negative_numbers_wait_for_grade_6_and_their_arithmetic_for_grade_7():
    """CCSS-M 2010, 6.NS.C.5 and 7.NS.A.1."""
    below = Signature("two steps, what is left", frozenset(), ("3", "5"), ("3 - 5 = -2",), "-2")
    assert {"negative", "negative_arithmetic"} <= names(4, below)
    goal = Signature("goal mean", frozenset({"mean_median_iqr_mad"}), ("3", "5"), ("3 - 5 = -2",), "-2")
    assert names(6, goal) == {"negative_arithmetic"}
    assert names(7, goal) == set()
    assert names(7, goal._replace(steps=("5 - 3 = 2",), answer="2")) == set()


def test_counts_are_whole():
    sum_ = total(4, 5)
    assert names(2, sum_) == set()
    assert "whole answer" in names(2, sum_._replace(answer="9/2", steps=()))


# --- fractions by grade ---


def test_fraction_sums_wait_for_grade_4_and_unlike_ones_for_grade_5():
    """CCSS-M 2010, 4.NF.B.3 and 5.NF.A.1."""
    signature = part(5, 8)
    assert "fraction_add_like" in names(3, signature._replace(steps=("2/8 + 3/8 = 5/8",)))
    assert names(4, rest(9, 12)) == set()
    assert "fraction_add_unlike" in names(4, rest(9, 12)._replace(steps=("1/4 + 3/8 = 5/8",)))
    assert "fraction_add_unlike" not in names(5, rest(9, 12)._replace(skill="part from a fraction", steps=("1/4 + 3/8 = 5/8",)))


def test_a_fraction_of_a_number_is_grade_5():
    """CCSS-M 2010, 5.NF.B.4a; in England fractions of a set from Year 2 on."""
    three_fourths = Signature("part from a fraction", frozenset({"fraction_of_quantity"}), ("3/4", "12"), ("3/4 * 12 = 9",), "9", (12,))
    assert names(5, three_fourths) == set()
    assert names(4, three_fourths) == {"skill"}
    assert "fraction_of_quantity" in names(4, rest(9, 12)._replace(steps=("3/4 * 12 = 9",)))
    assert "whole answer" in names(5, three_fourths._replace(steps=("3/4 * 10 = 7 1/2",), answer="7 1/2", sets=(10,)))
    eighths = three_fourths._replace(givens=("3/8", "16"), steps=("3/8 * 16 = 6",), answer="6", sets=(8,))
    assert names(2, eighths, ENGLAND) == set()


def test_naming_a_part_of_a_set_is_no_division_but_sharing_is_grade_5():
    """CCSS-M 2010, 3.NF.A.1 names; 5.NF.B.3 divides."""
    assert names(3, part(5, 8)) == set()
    assert "fraction_as_quotient" in names(3, part(5, 8)._replace(steps=("5 / 6 = 5/6", "5/8 = 5/8")))
    assert "fraction_as_quotient" in names(3, part(5, 8)._replace(steps=("9 / 8 = 9/8",)))
    shared = Signature("fraction as a quotient", frozenset(), ("17", "4"), ("17 / 4 = 17/4", "17/4 = 4 1/4"), "4 1/4")
    assert names(5, shared) == set()
    assert names(5, shared._replace(steps=("16 / 4 = 4",), answer="4")) == {"whole answer"}


def test_mixed_numbers_wait_for_grade_4():
    """CCSS-M 2010, 4.NF.B.3c."""
    assert "mixed_number" in names(3, part(5, 8)._replace(answer="1 1/8"))
    assert "mixed_number" not in names(4, rest(5, 8)._replace(answer="1 1/8"))


def test_the_whole_set_and_none_of_it_are_no_questions():
    assert names(3, part(7, 8)) == set()
    assert "whole set" in names(3, part(8, 8))
    assert {"zero answer", "empty share"} <= names(3, part(0, 8))
    assert "zero answer" in names(2, total(0, 0))
    allowed = replace(CCSS.entry("fraction of a set", 3), allow_zero=True, allow_whole_set=True, whole_answer=None)
    gate = Gate(replace(CCSS, _by_skill_and_grade=MappingProxyType({("fraction of a set", 3): allowed})), 3)
    assert gate.stops(part(8, 8)) == gate.stops(part(0, 8)) == ()


# --- decimals ---


def test_eighths_have_no_decimal_in_grade_4():
    """CCSS-M 2010, 4.NF.C.6 stops at hundredths; 5.NBT.A.3a reads thousandths, so that sets of ten are grade 4."""
    tenths = decimal(7, 10, "0.7", "7 / 10 = 7/10", "7/10 = 0.7")
    eighths = decimal(5, 8, "0.625", "5 / 8 = 5/8", "5/8 = 625/1000", "625/1000 = 0.625")
    assert names(4, tenths) == set()
    assert names(4, eighths) == {"decimal places", "answer places", "set size", "denominator"}
    assert names(5, eighths) == set()
    assert names(5, tenths) == {"answer places", "set size"}
    assert names(5, decimal(5, 40, "0.125", "5 / 40 = 5/40", "5/40 = 125/1000", "125/1000 = 0.125")) == set()
    assert names(5, decimal(10, 40, "0.25", "10 / 40 = 10/40", "10/40 = 25/100", "25/100 = 0.25")) == {"answer places"}
    assert "answer places" in names(5, decimal(5, 16, "0.3125", "5/16 = 0.3125"))


@pytest.mark.parametrize(
    ("size", "stopped"), [(2, False), (4, False), (5, False), (10, False), (100, False), (3, True), (6, True), (12, True)]
)
def test_grade_4_turns_only_some_sets_into_decimals(size, stopped):
    """CCSS-M 2010, 4.NF.C.6: denominators 10 or 100, and those that are equal to some."""
    assert ("set size" in names(4, decimal(1, size, "0.5"))) is stopped


def test_decimals_wait_for_grade_4():
    assert "decimal_notation" in names(3, part(5, 8)._replace(answer="0.6"))


def test_decimal_arithmetic_waits_for_grade_5_and_stops_at_hundredths_there():
    """CCSS-M 2010, 5.NBT.B.7."""
    added = decimal(7, 10, "0.7", "0.3 + 0.4 = 0.7")
    assert {"decimal_compute", "decimal places in a step"} <= names(4, added)
    assert "decimal places in a step" not in names(5, decimal(7, 10, "0.75", "0.35 + 0.4 = 0.75"))
    assert "decimal places in a step" in names(5, decimal(7, 8, "0.875", "0.375 + 0.5 = 0.875"))
    assert "decimal places in a step" in names(5, decimal(5, 8, "0.625", "5 / 8 = 0.625"))


def test_repeating_decimals_are_grade_7_with_short_blocks():
    """CCSS-M 2010, 7.NS.A.2d."""
    twelfths = decimal(5, 12, "0.42", "5 / 12 = 5/12")
    assert names(7, twelfths) == set()
    assert names(7, twelfths._replace(answer="0.41(6)")) == set()
    assert names(7, decimal(5, 8, "0.625", "5 / 8 = 5/8")) == {"repeating"}
    assert names(7, decimal(5, 7, "0.71", "5 / 7 = 5/7")) == {"repeating block"}
    assert names(7, decimal(5, 11, "0.45", "5 / 11 = 5/11")) == set()
    assert "repeating_decimal" in names(5, twelfths._replace(answer="0.41(6)"))


def test_a_rounded_answer_needs_a_place_that_the_entry_allows():
    assert "rounded answer" in names(7, decimal(5, 12, "0.4", "5 / 12 = 5/12"))
    assert "rounded answer" in names(5, decimal(5, 12, "0.417", "5 / 12 = 5/12"))


# --- percents, statistics, chance ---


def test_percents_wait_for_grade_6():
    """CCSS-M 2010, 6.RP.A.3c; England: Year 5."""
    asked = Signature("percent of a set", frozenset({"percent"}), ("3", "4"), ("3 / 4 = 3/4", "3/4 = 0.75", "0.75 = 75%"), "75%", (4,))
    assert names(6, asked) == set()
    assert names(5, asked) == {"skill"}
    assert "percent" in names(5, decimal(3, 8, "0.375", "37.5% = 0.375"))
    assert names(4, asked, ENGLAND) == set()
    assert "set size" in names(4, asked._replace(sets=(8,)), ENGLAND)


def test_percent_change_and_chance_wait_for_grade_7():
    """CCSS-M 2010, 7.RP.A.3 and 7.SP.C."""
    change = Signature(
        "percent change", frozenset({"percent", "percent_change"}), ("8", "9"), ("9 - 8 = 1", "1 / 8 = 1/8", "1/8 = 12.5%"), "12.5%"
    )
    assert names(7, change) == set()
    assert names(6, change) == {"skill"}
    mean = Signature("mean", frozenset({"mean_median_iqr_mad"}), ("8", "9"), ("8 + 9 = 17", "17 / 2 = 17/2", "17/2 = 8.5"), "8.5")
    assert names(6, mean) == set()
    assert names(6, mean._replace(features=mean.features | {"percent_change"})) == {"percent_change"}
    assert names(6, mean._replace(features=mean.features | {"probability"})) == {"probability"}


def test_a_change_of_100_percent_or_more_is_a_change():
    change = Signature("percent change", frozenset({"percent_change"}), ("4", "8"), ("8 - 4 = 4", "4 / 4 = 1", "1 = 100%"), "100%")
    assert names(7, change) == set()
    assert names(7, change._replace(answer="0%", steps=("0 / 4 = 0", "0 = 0%"))) == {"zero answer", "empty share"}


@pytest.mark.parametrize(
    ("down", "size", "answer", "tie"),
    [
        (3, 8, "38%", True),  # 37.5
        (5, 8, "63%", True),  # 62.5
        (1, 40, "3%", True),  # 2.5
        (5, 12, "42%", False),  # 41.6...
        (7, 24, "29%", False),
        (1, 3, "33%", False),
    ],
)
def test_values_that_tie_at_the_asked_place_are_refused(down, size, answer, tie):
    """A fraction in lowest terms ties at whole percents where its bottom is 8, 40 or 200: worked out for bottoms to 100."""
    asked = Signature(
        "percent of a set", frozenset({"percent"}), (str(down), str(size)), (f"{down} / {size} = {down}/{size}",), answer, (size,)
    )
    assert names(6, asked) == ({"rounding tie"} if tie else set())


def test_the_rule_for_ties_holds_for_every_bottom_to_200():
    """At tenths of a percent exactly the bottoms 16, 80, 400 and 2000 tie; at whole percents 8, 40 and 200."""
    for places, bottoms in ((0, {8, 40, 200}), (1, {16, 80})):
        tied = set()
        for size in range(3, 201):
            units = f"{100 * 10**places // size}"
            answer = (units if not places else f"{units[:-1] or '0'}.{units[-1]}") + "%"
            signature = Signature("percent change", frozenset(), ("1", str(size)), (f"1/{size} = 1/{size}",), answer)
            tied |= {size} if "rounding tie" in names(7, signature) else set()
        assert tied == bottoms


def test_pooled_percents_take_two_sets():
    steps = ("3 + 2 = 5", "3 + 5 = 8")
    pooled = Signature(
        "percent of a set", frozenset({"percent", "unequal_sets"}), ("100%", "3", "40%", "5"), (*steps, "5 / 8 = 5/8"), "62.5%", (3, 5)
    )
    assert names(7, pooled) == set()
    assert names(7, pooled._replace(sets=(8,))) == {"number of sets"}
    assert names(6, pooled) == {"number of sets", "whole set"}
    assert names(7, pooled._replace(givens=("3", "5"), steps=("8 / 8 = 1",), answer="100%")) == {"whole set"}


def test_a_mean_ends_within_two_places_or_is_rounded_to_tenths():
    def mean(total, count, answer):
        return Signature("mean", frozenset({"mean_median_iqr_mad"}), (), (f"{total} / {count} = {total}/{count}",), answer)

    assert names(6, mean(33, 4, "8.25")) == set()
    assert names(6, mean(33, 8, "4.125")) == {"answer places"}
    assert names(6, mean(7, 3, "2.3")) == set()
    assert names(6, mean(7, 3, "2.33")) == {"rounded answer"}
    assert names(6, mean(33, 4, "8.3")) == {"rounding tie"}


def test_an_expected_count_is_whole_and_may_be_rounded_unless_it_ties():
    def expected(step, answer):
        return Signature("expected count", frozenset({"probability"}), ("10", "16", "40"), (step,), answer, (16,))

    assert names(7, expected("5/8 * 40 = 25", "25")) == set()
    assert names(7, expected("5/8 * 30 = 18 3/4", "19")) == set()
    assert names(7, expected("5/8 * 20 = 12 1/2", "13")) == {"rounding tie"}
    assert names(7, expected("5/8 * 30 = 18 3/4", "18.75")) == {"whole answer"}


# --- table and graph ---


@pytest.mark.parametrize(("grade", "cap"), [(2, 4), (3, 4), (4, 6), (5, 6), (6, 9), (7, 9)])
def test_cells_to_read_have_a_cap(grade, cap):
    """Own rule: four in grades 2-3, six in 4-5, nine later."""
    skill = CCSS.skills(grade)[0]
    assert "cells to read" not in names(grade, Signature(skill, cells=cap))
    assert "cells to read" in names(grade, Signature(skill, cells=cap + 1))


def test_grade_2_graphs_have_four_bars_at_most():
    """CCSS-M 2010, 2.MD.D.10."""
    more = Signature("compare, difference unknown", frozenset({"graph"}), ("14", "8"), ("14 - 8 = 6",), "6", categories=4)
    assert names(2, more) == set()
    assert names(2, more._replace(categories=5)) == {"graph categories"}
    assert names(3, more._replace(categories=5)) == set()


def test_grade_3_compares_from_a_graph():
    """CCSS-M 2010, 3.MD.B.3."""
    more = Signature("compare, difference unknown", frozenset(), ("14", "8"), ("14 - 8 = 6",), "6")
    assert names(3, more) == {"graph"}
    assert names(3, more._replace(categories=3)) == set()


# --- standards ---


def test_the_standard_follows_what_the_problem_does():
    """CCSS-M 2010: 2.MD.D.10 reads a graph; 2.NBT.B.6 adds three or four two-digit numbers."""
    gate = GATES[2]
    assert gate.standards(total(3, 4)) == ("2.OA.A.1",)
    assert gate.standards(total(15, 17)) == ("2.OA.A.1",)
    assert gate.standards(total(15, 17, 20)) == ("2.OA.A.1", "2.NBT.B.6")
    assert gate.standards(total(15, 17, 2)) == ("2.OA.A.1",)
    assert gate.standards(total(3, 4, categories=3)) == ("2.MD.D.10",)
    assert gate.standards(Signature("mean")) == ()


def test_every_condition_of_the_files_is_known_to_the_gate():
    for curriculum in (CCSS, load("england")):
        for skill in curriculum.all_skills():
            for entry in curriculum.entries(skill):
                assert Gate(curriculum, entry.grade).standards(Signature(skill)) == entry.standards


# --- England ---


def test_england_compares_unlike_fractions_in_year_5_where_one_bottom_divides_the_other():
    """DfE 2013, Year 5: denominators that are all multiples of the same number; Year 6: any."""
    assert names(4, compare("1/2", "5/8", (8, 8)), ENGLAND) == set()
    assert names(4, compare("2/3", "3/4", (12, 12)), ENGLAND) == {"nested denominators"}
    assert names(5, compare("2/3", "3/4", (12, 12)), ENGLAND) == set()


# --- the gate itself ---


def test_an_answer_cap_of_an_entry_is_kept():
    capped = replace(CCSS.entry("total of parts", 2), answer_max=20)
    gate = Gate(replace(CCSS, _by_skill_and_grade=MappingProxyType({("total of parts", 2): capped})), 2)
    assert gate.stops(total(9, 11)) == ()
    assert [stop.limit for stop in gate.stops(total(10, 11))] == ["largest answer"]


def test_a_verdict_is_remembered():
    gate = Gate(CCSS, 2)
    assert gate.stops(total(3, 4)) is gate.stops(total(3, 4))


def test_each_stop_is_told_once_and_in_the_same_order():
    signature = part(5, 10)
    assert len(set(GATES[3].stops(signature))) == len(GATES[3].stops(signature))
    assert Gate(CCSS, 3).stops(signature) == GATES[3].stops(signature)


def test_a_feature_without_a_first_grade_is_our_fault():
    with pytest.raises(ValueError, match="no first grade is known for percnt"):
        GATES[2].stops(total(3, 4)._replace(features=frozenset({"percnt"})))


def test_a_step_that_is_no_equality_is_our_fault():
    with pytest.raises(UnreadableStepError):
        Gate(CCSS, 2).stops(total(3, 4)._replace(steps=("9 > 8",)))


@pytest.mark.parametrize(("grade", "divisor", "stops"), [(4, 9, False), (4, 11, True), (5, 11, False)])
def test_divisors_of_grade_4_have_one_digit(grade: int, divisor: int, stops: bool) -> None:
    """4.NBT.B.6: up to four digits divided by one digit; 5.NBT.B.6: by two. Source: CC1 in the curriculum reference."""
    steps = (f"{2 * divisor} / {divisor} = 2",)
    skill = {4: "times as many", 5: "part from a fraction"}[grade]
    found = Gate(load("ccss"), grade).stops(Signature(skill, givens=(str(2 * divisor), str(divisor)), steps=steps, answer="2"))
    assert ("divisor" in {stop.limit for stop in found}) is stops


def test_a_hundred_is_ten_tens_in_grade_4() -> None:
    """CCSS 4.NBT.A.1: a digit is worth ten times as much one place to the left; 4.NF.C.5 needs the step from tenths to hundredths."""
    signature = Signature("equal fractions", givens=("3", "10", "100"), steps=("100 / 10 = 10", "3 * 10 = 30"), answer="30", sets=(10,))
    assert Gate(load("ccss"), 4).stops(signature) == ()
    assert Gate(load("ccss"), 4).standards(signature) == ("4.NF.C.5",)
    assert Gate(load("ccss"), 4).standards(signature._replace(givens=("3", "10", "5"))) == ("4.NF.A.1",)


# --- tens and ones ---


@pytest.mark.parametrize(
    ("counts", "stopped"),
    [((12, 8), False), ((34, 7), False), ((34, 20), False), ((34, 17), True), ((60, 40), False), ((94, 7), True), ((21, 2, 3), True)],
)
def test_above_20_grade_1_adds_ones_or_tens_to_two_digits_within_100(counts, stopped):
    """CCSS-M 2010, 1.NBT.C.4; stories stay within 20, 1.OA.A.1."""
    assert bool(names(1, total(*counts)) & {"tens and ones", "largest number"}) == stopped


@pytest.mark.parametrize(("most", "least", "stopped"), [(19, 7, False), (60, 40, False), (30, 20, False), (34, 7, True), (60, 47, True)])
def test_above_20_grade_1_takes_tens_from_tens_only(most, least, stopped):
    """CCSS-M 2010, 1.NBT.C.6: multiples of 10 in the range 10-90."""
    asked = Signature("compare, difference unknown", frozenset(), (str(most), str(least)), (f"{most} - {least} = {most - least}",), "1")
    assert ("tens and ones" in names(1, asked._replace(answer=str(most - least)))) == stopped


def test_standards_of_grade_1_follow_the_numbers():
    """CCSS-M 2010: 1.OA.A.2 three addends, 1.NBT.C.4 within 100, 1.NBT.C.6 tens from tens."""
    difference = Signature("compare, difference unknown", frozenset(), ("40", "60"), ("60 - 40 = 20",), "20")
    served = [GATES[1].standards(each) for each in (total(8, 6), total(3, 4, 6), total(34, 7), difference)]
    assert served == [("1.OA.A.1", "1.OA.C.6"), ("1.OA.A.2",), ("1.NBT.C.4",), ("1.NBT.C.6",)]


def test_a_sum_of_sums_is_too_much_for_grade_1():
    chain = total(2, 2, 3)._replace(steps=("2 + 2 = 4", "4 + 3 = 7"))
    assert "operations" in names(1, chain)
    assert "operations" not in names(2, chain)
