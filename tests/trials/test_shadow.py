"""On a shadow table an answer that was equal by luck falls apart, and one that is right stays right."""

from __future__ import annotations

from random import Random

import pytest

from mathgen.asks.evaluate import NoAnswer, answer
from mathgen.asks.expression import Quantity
from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof.by_relation import NoSolution, solve
from mathgen.proof.raw import RawRows
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.scope import Scope
from mathgen.trials.shadow import shadow
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from tests.aimed import AIMED
from tests.tables import TWO_GROUPS


@pytest.fixture(scope="module")
def table() -> TrialTable:
    return read_table("samples/main.csv", ReadOptions()).table


@pytest.fixture(scope="module")
def problems(table: TrialTable) -> list[Problem]:
    desk = Desk(table, scenario("ramp"))
    return list(build_bank(desk, load("ccss"), tuple(range(1, 8)), seed=3, per_model=10, report=Report()))


def test_a_shadow_keeps_labels_and_gaps_and_changes_every_count() -> None:
    dark = shadow(TWO_GROUPS, Random(1))
    assert (dark.groups, dark.trials, dark.colors) == (TWO_GROUPS.groups, TWO_GROUPS.trials, TWO_GROUPS.colors)
    assert [(row.group, row.trial, row.color) for row in dark.rows] == [(row.group, row.trial, row.color) for row in TWO_GROUPS.rows]
    counts = [*{(row.group, row.color): row.set_up for row in dark.rows}.values(), *(row.down for row in dark.rows)]
    assert len(set(counts)) == len(counts)
    # Both groups set up the same racks for both trials: "for each trial" stays true of each group.
    racks = {(row.group, row.color) for row in dark.rows}
    assert len({(row.group, row.color, row.set_up) for row in dark.rows}) == len(racks)
    assert all(0 < row.down < row.set_up for row in dark.rows)
    assert shadow(TWO_GROUPS, Random(1)) == dark != shadow(TWO_GROUPS, Random(2))


def test_two_routes_agree_on_the_shadow_too(table: TrialTable, problems: list[Problem]) -> None:
    """Where the words assert nothing of their own ("2 more than"), the ask has an answer on any table, and it is the same by both."""
    dark = shadow(table, Random(7))
    totals, rows = Totals(dark), RawRows(dark)
    open_asks = [problem.ask for problem in problems if not problem.ask.given]
    assert len(open_asks) > 150
    for ask in open_asks:
        try:
            expected = answer(ask, totals)
        except NoAnswer:
            with pytest.raises(NoSolution):
                solve(ask, rows)
        else:
            assert solve(ask, rows) == expected


def test_a_swapped_color_hides_on_the_table_and_shows_on_the_shadow(table: TrialTable) -> None:
    """Of the counts of one group and trial, some are equal by luck; on the shadow none are."""
    dark = Totals(shadow(table, Random(3)))
    bright = Totals(table)
    lucky = 0
    for row in table.rows:
        for other in table.colors:
            if other != row.color:
                mine = Quantity("down", cell(row.group, row.trial, row.color))
                swapped = Quantity("down", cell(row.group, row.trial, other))
                lucky += bright.total(*mine) == bright.total(*swapped)
                assert dark.total(*mine) != dark.total(*swapped)
    assert lucky > 0


def cell(group: str, trial: int | str, color: str) -> Scope:
    return Scope((group,), (trial,), (color,))


def test_a_shadow_has_one_new_space_for_each_trial_of_a_group() -> None:
    table = read_table("samples/spaces.csv", ReadOptions()).table
    dark = shadow(table, Random(1))
    gaps = {(row.group, row.trial, row.gap_inches) for row in dark.rows}
    assert len(gaps) == len({(row.group, row.trial) for row in table.rows})
    own = {row.gap_inches for row in table.rows}
    dealt = sum(gap in own for *_, gap in gaps)
    assert len(gaps) // 4 < dealt < len(gaps)
    unlike = {(row.group, row.trial, row.gap_inches) for row in table.rows} - gaps
    assert len(unlike) > len(gaps) // 2


def test_in_about_half_of_the_trials_of_an_aimed_shadow_only_the_target_falls() -> None:
    hits = [Totals(shadow(AIMED, Random(seed), aimed=True)).total("successes", Scope()) for seed in range(20)]
    assert min(hits) < 7 < max(hits)
    assert min(hits) > 0
    assert max(hits) < len(AIMED.rows) // 3
