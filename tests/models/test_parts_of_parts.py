"""Parts of parts on a small table; every value, step and slip worked by hand."""

from __future__ import annotations

import pytest

from mathgen.problems.draft import Draft
from mathgen.trials.scope import Scope
from tests.models.asked import every_draft, said, worked
from tests.tables import TWO_GROUPS


def draft_of(name: str, group: str, trial: int, color: str, rate: str) -> Draft:
    """The one draft about a color of one group in one trial whose first printed rate is this."""
    found = [
        draft
        for draft in every_draft(name, TWO_GROUPS)
        if draft.roles["part"].scope == Scope((group,), (trial,), (color,)) and draft.rates[0][1] == rate
    ]
    assert len(found) == 1, found
    return found[0]


ROWS = {
    # model: (whose, when, color, first rate, grade, answer, relation, steps, slips)
    # Owls, Trial 1: 3 of 4 red, 2 of 3 blue, 4 of 5 gold; 9 of 12 knocked down, 3 left standing.
    "rest_after_two_parts": (
        "Owls", 1, "gold", "3/12", 4, "5/12", "3/12 + 4/12 + x = 1", ("12/12 - 3/12 - 4/12 = 5/12",),
        {"C31": "7/12", "C32": "9/12", "C33": "8/12", "A05": "5"},
    ),
    "rest_after_two_parts, unlike": (
        "Owls", 1, "gold", "1/4", 5, "5/12", "3/12 + 4/12 + x = 1", ("1/4 = 3/12", "1/3 = 4/12", "12/12 - 3/12 - 4/12 = 5/12"),
        {"C31": "7/12", "C32": "3/4", "C33": "2/3", "C34": "10/12"},
    ),
    "part_of_a_part": (
        "Owls", 1, "red", "3/4", 5, "1/4", "9*x = 3*9/12", ("1/3 * 3/4 = 1/4",),
        {"A31": "1/3", "C35": "13/12", "C36": "3/4", "C37": "5/12"},
    ),
    "share_from_two_parts": (
        "Owls", 1, "red", "3/4", 6, "1/3", "9/12*x = 3/12", ("1/4 / 3/4 = 1/3",),
        {"C38": "3/16", "C37": "2/4", "A22": "1/4", "C39": "3"},
    ),
}  # fmt: skip


@pytest.mark.parametrize("row", ROWS)
def test_each_model_by_hand(row: str) -> None:
    group, trial, color, rate, grade, *expected = ROWS[row]
    name = row.partition(",")[0]
    one = said(name, TWO_GROUPS, grade, draft_of(name, group, trial, color, rate))
    assert worked(one) == tuple(expected)


def test_the_rest_is_never_a_part_that_is_told() -> None:
    drafts = list(every_draft("rest_after_two_parts", TWO_GROUPS))
    assert drafts
    for draft in drafts:
        if draft.unlike is None:
            (a, n), (b, _) = (tuple(map(int, text.split("/"))) for _, text in draft.rates)
            assert n - a - b not in (0, a, b)


def test_a_part_of_a_part_is_less_than_both() -> None:
    for draft in every_draft("part_of_a_part", TWO_GROUPS):
        part, down, whole = (draft.roles[name].scope for name in ("part", "down", "whole"))
        assert part.colors is not None
        assert down.colors is None
        assert whole.colors is None
