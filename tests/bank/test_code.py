"""The sheet code: short, checked, and all that a sheet needs."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from mathgen.bank.code import RELEASE, decode, sheet_code, table_digest
from mathgen.bank.plan import SheetPlan
from mathgen.errors import RequestFault
from tests.tables import TWO_GROUPS

SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

plans = (
    st.builds(
        SheetPlan,
        grade=st.integers(1, 8),
        seed=st.integers(0, 16_383),
        curriculum=st.sampled_from(["ccss", "england"]),
        level=st.sampled_from([None, "support", "on grade", "challenge"]),
        forms=st.integers(1, 4),
        paper=st.sampled_from(["letter", "a4"]),
        layout=st.sampled_from(["more-room", "save-paper"]),
        large_print=st.booleans(),
        choices=st.booleans(),
        copies=st.just(1),
    )
    .flatmap(
        # Tiers and a sheet for every group have no forms of their own.
        lambda plan: st.sampled_from([plan, replace(plan, forms=1, tiers=True), replace(plan, forms=1, each_group=True)])
    )
    .flatmap(
        lambda plan: st.one_of(
            st.just(plan),
            st.integers(1, 60).map(lambda minutes: replace(plan, minutes=minutes)),
            st.integers(1, 20).map(lambda count: replace(plan, count=count)),
        )
    )
)


@given(plans, st.sampled_from(["ramp", "seeds"]))
def test_a_code_says_its_whole_plan(plan: SheetPlan, scenario: str) -> None:
    decoded = decode(sheet_code(plan, TWO_GROUPS, scenario))
    assert decoded == (plan, scenario, table_digest(TWO_GROUPS), RELEASE)


@given(plans)
def test_a_code_is_short_and_has_no_letter_that_looks_like_a_digit(plan: SheetPlan) -> None:
    code = sheet_code(plan, TWO_GROUPS, "ramp")
    assert len(code) <= 16
    assert set(code) <= set(SIGNS)


@given(plans, st.integers(0, 14), st.integers(1, 31))
def test_every_single_wrong_sign_is_found(plan: SheetPlan, place: int, shift: int) -> None:
    code = sheet_code(plan, TWO_GROUPS, "ramp")
    wrong = SIGNS[(SIGNS.index(code[place]) + shift) % 32]
    with pytest.raises(RequestFault, match="check sign"):
        decode(code[:place] + wrong + code[place + 1 :])


def test_a_code_may_be_typed_with_hyphens_small_letters_and_the_letter_o_for_zero() -> None:
    code = sheet_code(SheetPlan(4), TWO_GROUPS, "ramp")
    typed = f"{code[:5]}-{code[5:10]} {code[10:]}".lower().replace("0", "o")
    assert decode(typed) == decode(code)


def test_no_place_of_the_code_tells_the_grade() -> None:
    """Were a sign to depend on the grade alone, it would be the same for every seed."""
    for place in range(14):
        signs = [{sheet_code(SheetPlan(grade, seed=seed), TWO_GROUPS, "ramp")[place] for seed in range(64)} for grade in range(2, 8)]
        assert all(len(one) > 8 for one in signs)


def test_a_plan_that_does_not_fit_points_to_the_key_file() -> None:
    for plan in (SheetPlan(4, topics=("fractions",)), SheetPlan(4, seed=16_384), SheetPlan(4, not_yet=("decimals",))):
        assert decode(sheet_code(plan, TWO_GROUPS, "ramp")).plan is None
    assert decode(sheet_code(SheetPlan(4), TWO_GROUPS, "my-own.toml")).plan is None


def test_copies_are_of_one_sheet_and_have_its_code() -> None:
    assert sheet_code(SheetPlan(4, copies=5), TWO_GROUPS, "ramp") == sheet_code(SheetPlan(4), TWO_GROUPS, "ramp")
    fractions = SheetPlan(4, topics=("fractions",))
    assert sheet_code(replace(fractions, copies=5), TWO_GROUPS, "ramp") == sheet_code(fractions, TWO_GROUPS, "ramp")


def test_one_changed_count_changes_the_digest() -> None:
    first, *rest = TWO_GROUPS.rows
    assert table_digest(replace(TWO_GROUPS, rows=(replace(first, down=first.down - 1), *rest))) != table_digest(TWO_GROUPS)


@pytest.mark.parametrize("code", ["", "123", "ABCDEFGHJKMNPQRSTV", "UUUUUUUUUUUUUUU", "é" * 15])
def test_what_is_no_code_is_refused(code: str) -> None:
    with pytest.raises(RequestFault, match="no sheet code"):
        decode(code)
