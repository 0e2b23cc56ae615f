"""What the key prints and lists."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sympy import Rational

from mathgen.exact.accepted import accepted, shown
from mathgen.exact.demand import parse_demand
from mathgen.exact.judge import judge
from mathgen.exact.parse import written
from mathgen.exact.rounding import rounded

PARTS = st.integers(1, 40).flatmap(lambda over: st.tuples(st.integers(0, over), st.just(over)))
DEMANDS = ["any", "simplest", "mixed", "mixed:any", "decimal", "percent", "ratio", "ratio:any", "decimal:0", "decimal:1", "decimal:2"]
DEMANDS += ["percent:0", "percent:1"]


@pytest.mark.parametrize(
    ("x", "demand", "over", "forms"),
    [
        ("1/4", "any", 12, ("3/12", "1/4", "0.25", "25%")),
        ("3/8", "any", 16, ("6/16", "3/8", "0.375", "37.5%", "37 1/2%")),
        ("3/4", "any", None, ("3/4", "0.75", "75%")),
        ("5/12", "any", None, ("5/12", "41 2/3%")),
        ("9/4", "any", None, ("9/4", "2 1/4", "2.25")),
        ("5/4", "any", 12, ("15/12", "5/4", "1 1/4", "1.25")),
        ("12", "any", None, ("12",)),
        ("1", "any", 12, ("1", "12/12", "100%")),
        ("3/4", "simplest", 12, ("3/4",)),
        ("9/4", "simplest", None, ("9/4", "2 1/4")),
        ("9/4", "mixed", None, ("2 1/4",)),
        ("3/4", "decimal", None, ("0.75",)),
        ("5/12", "decimal", None, ("0.41666...",)),
        ("5/8", "percent", None, ("62.5%", "62 1/2%")),
        ("5/12", "percent", None, ("41 2/3%",)),
        ("2/3", "percent:1", None, ("66.7%",)),
        ("3/4", "percent:1", None, ("75.0%", "75%")),
        ("4/5", "decimal:2", None, ("0.80", "0.8")),
        ("199/500", "decimal:2", None, ("0.40",)),
        ("12", "whole", None, ("12",)),
        ("17/7", "ratio", None, ("17:7", "17 to 7", "17/7")),
        ("3/4", "ratio:any", 8, ("6:8", "6 to 8", "6/8", "3:4")),
    ],
)
def test_the_key_lists(x, demand, over, forms):
    assert accepted(Rational(x), parse_demand(demand), over) == forms


@given(PARTS, st.sampled_from(DEMANDS), st.booleans())
def test_each_form_of_the_key_is_judged_right_and_reads_back(part, demand, counted):
    top, over = part
    x = Rational(top, over)
    asked = parse_demand(demand)
    forms = accepted(x, asked, over if counted else None)
    assert forms[0] == shown(x, asked, over if counted else None)
    assert len(forms) == len(set(forms)) <= 6
    scale = 100 if asked.form == "percent" else 1
    expected = x if asked.places is None else rounded(x * scale, asked.places) / scale
    for form in forms:
        assert written(form).value == expected
        assert judge(str(x), demand, form)[0] == "right"


@given(PARTS, PARTS, st.sampled_from(DEMANDS))
def test_no_form_of_another_number_is_judged_right(part, other, demand):
    asked = parse_demand(demand)
    x, y = Rational(*part), Rational(*other)
    assume(x != y)
    for form in accepted(y, asked, None):
        verdict, _ = judge(str(x), demand, form)
        if asked.places is None:
            assert verdict == "wrong"
        else:
            assert (verdict == "right") <= (shown(x, asked) == shown(y, asked))


@pytest.mark.parametrize(("x", "demand", "over"), [("3/4", "whole", None), ("3/4", "name", None), ("3/4", "any", 10)])
def test_a_form_that_the_answer_does_not_have_is_refused(x, demand, over):
    with pytest.raises(ValueError, match=r"\w{3}"):
        shown(Rational(x), parse_demand(demand), over)
