"""Verdicts on pupils' answers."""

import json
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact.forms import decimal, fraction, fraction_over, mixed, percent
from mathgen.exact.judge import judge
from mathgen.exact.parse import NotANumber
from mathgen.exact.rounding import rounded_text

CASES = json.loads((Path(__file__).parent / "judge_cases.json").read_text(encoding="utf-8"))
DEMANDS = ["any", "simplest", "mixed", "mixed:any", "decimal", "percent", "ratio", "ratio:any", "whole", "decimal:1", "percent:1"]
RATIONALS = st.builds(Rational, st.integers(1, 300), st.integers(1, 60))


def name(case):
    return f"{case['expected']}, {case['demand']}, {case['typed']}"


@pytest.mark.parametrize("case", CASES, ids=name)
def test_the_table_of_verdicts_holds(case):
    """Each verdict worked out by hand from the contract's table; no published source."""
    verdict, why = judge(case["expected"], case["demand"], case["typed"])
    assert verdict == case["verdict"], why
    assert why


def test_every_demand_and_verdict_has_cases():
    assert {(case["demand"].rstrip("0123456789:"), case["verdict"]) for case in CASES} >= {
        (demand, verdict)
        for demand in ("any", "simplest", "mixed", "decimal", "percent", "ratio", "whole")
        for verdict in ("right", "right_value_wrong_form", "wrong")
    }
    assert len(CASES) >= 400


# How pupils write answers, each with the verdicts that its cases have to show.
WAYS = {
    "fraction": (r"\d+/\d+", {"right", "right_value_wrong_form", "wrong"}),
    "mixed number": (r"\d+ \d+/\d+", {"right", "right_value_wrong_form"}),
    "mixed number with a hyphen": (r"\d+-\d+/\d+", {"right"}),
    "decimal without a zero": (r"\.\d+", {"right"}),
    "decimal comma": (r"\d+,\d{1,2}", {"right_value_wrong_form"}),
    "percent": (r"[\d. /]+%", {"right", "right_value_wrong_form", "wrong"}),
    "out of": (r"\d+ out of \d+", {"right"}),
    "ratio with a colon": (r"\d+ ?: ?\d+", {"right", "right_value_wrong_form", "wrong"}),
    "ratio in words": (r"\d+ to \d+", {"right", "right_value_wrong_form"}),
    "fraction in words": (r"[a-z]+[ -](?:fourths|thirds|half|third)", {"right"}),
    "a count of parts": (r"\d+ [a-z]+(?:ths|rs|ds)", {"right", "right_value_wrong_form", "wrong"}),
    "one-character fraction": (r"\d* ?[¼½¾⅓⅔⅛]", {"right"}),
    "repeating": (r"[\d.]+ repeating", {"right"}),
    "dots": (r"\d*\.\d+(?:\.\.\.|…)", {"right"}),
    "unit": (r"[\d/. ]+ (?:pins?|points?|inches|in\.?)", {"right", "wrong"}),
    "dollar sign": (r"\$\d[\d.]*", {"right", "wrong"}),
    "cent sign": (r"\d+¢", {"right"}),
}


@pytest.mark.parametrize("way", WAYS)
def test_every_way_in_which_pupils_write_answers_has_cases(way):
    pattern, verdicts = WAYS[way]
    assert {case["verdict"] for case in CASES if re.fullmatch(pattern, case["typed"])} >= verdicts


@given(RATIONALS, st.integers(2, 9))
def test_an_equal_form_is_never_wrong(x, times):
    counted = fraction_over(x, x.denominator * times)
    for demand in DEMANDS:
        for typed in (fraction(x), counted, mixed(x), decimal(x), percent(x)):
            assert judge(str(x), demand, typed)[0] in ("right", "right_value_wrong_form"), (demand, typed)
    assert judge(str(x), "any", counted)[0] == "right"
    assert judge(str(x), "simplest", counted)[0] == "right_value_wrong_form"


@given(RATIONALS, RATIONALS)
def test_another_number_is_never_right_where_nothing_is_rounded(x, y):
    verdict, _ = judge(str(x), "any", str(y))
    assert (verdict == "right") == (x == y)
    assert judge(str(x), "ratio", f"{x.denominator}:{x.numerator}")[0] == ("right" if x == 1 else "wrong")


@given(RATIONALS, st.integers(0, 4))
def test_the_rounded_answer_is_right_and_its_neighbors_wrong(x, places):
    step = Rational(1, 10**places)
    assert judge(str(x), f"decimal:{places}", rounded_text(x, places))[0] == "right"
    assert judge(str(x), f"percent:{places}", rounded_text(100 * x, places) + "%")[0] == "right"
    for off in (step, -step):
        assert judge(str(x), f"decimal:{places}", rounded_text(x + off, places))[0] == "wrong"


@given(RATIONALS, st.integers(0, 2), st.integers(1, 3))
def test_more_places_than_asked_are_a_matter_of_form(x, places, more):
    typed = rounded_text(x, places + more)
    assert judge(str(x), f"decimal:{places}", typed)[0] == "right_value_wrong_form"


@given(st.text(alphabet="0123456789.,/:%$¢()- …½¾\u0305x=pinsofthe", max_size=14), st.sampled_from([*DEMANDS, "name"]))
def test_any_text_gets_a_verdict(typed, demand):
    verdict, why = judge("3/4", demand, typed)
    assert verdict in ("right", "right_value_wrong_form", "wrong", "unreadable")
    assert why


def test_reversed_ratios_and_careless_rounding_are_named():
    assert judge("3:4", "ratio", "4:3") == ("wrong", "the order of the ratio is reversed")
    assert judge("0.3746", "decimal:2", "0.38") == ("wrong", "rounded twice; check your rounding")
    assert judge("2/3", "decimal:2", "0.7") == ("wrong", "rounded to fewer places than asked")


def test_another_scenario_brings_its_own_units():
    assert judge("12", "whole", "12 seeds", units=("seed", "trial"))[0] == "right"
    assert judge("12", "whole", "12 pins", units=("seed", "trial"))[0] == "wrong"
    assert judge("12", "whole", "12 seeds")[0] == "wrong"


def test_a_key_that_is_no_number_and_an_unknown_demand_are_refused():
    with pytest.raises(NotANumber):
        judge("a lot", "any", "3")
    with pytest.raises(ValueError, match="no demand"):
        judge("3", "roughly", "3")


def test_a_thing_that_is_sold_may_be_named_with_its_article():
    assert [judge("roll of tape", "name", typed)[0] for typed in ("a roll of tape", "the roll of tape", "A roll of tape.")] == ["right"] * 3
    assert judge("eraser", "name", "an eraser")[0] == "right"
    assert judge("marker", "name", "a box")[0] == "wrong"


def test_a_wrong_name_is_told_without_the_answer():
    for typed in ("Sharkes", "Tigers"):
        verdict, why = judge("Sharks", "name", typed)
        assert verdict == "wrong"
        assert "sharks" not in why.casefold()
    assert "check the spelling" in judge("Sharks", "name", "Sharkes")[1]
    assert "8" not in judge("n > 8", "expression", "n < 8")[1]


def test_more_places_than_asked_that_come_to_the_key_are_told_as_not_rounded():
    assert judge("57.1%", "percent:1", "57.14%") == ("wrong", "not rounded as asked")
    assert judge("4/7", "percent:1", "57.14%") == ("right_value_wrong_form", "rounded correctly, but to more places than asked")


@pytest.mark.parametrize(
    ("typed", "verdict"),
    [
        ("60", "right"),
        ("60¢", "right"),
        ("60 cents", "right"),
        ("$0.60", "right_value_wrong_form"),
        ("$60", "wrong"),
        ("6 cents", "wrong"),
        ("60 dollars", "wrong"),
    ],
)
def test_where_cents_are_asked_for_an_answer_may_say_cents(typed, verdict):
    """Common practice, no source: 100 cents in a dollar. Where pins are counted, cents stay the wrong unit."""
    assert judge("60", "whole", typed, ("pin", "cent"))[0] == verdict
    if typed != "60":
        assert judge("60", "whole", typed)[0] == "wrong"
