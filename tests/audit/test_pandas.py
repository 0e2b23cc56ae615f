"""Totals and rates held against pandas, which groups and sums by itself, and against one published table of counts."""

from __future__ import annotations

from itertools import product
from pathlib import Path

import pandas as pd
import pytest

from mathgen.asks.evaluate import answer
from mathgen.asks.expression import Ask, Op, Quantity, Value
from mathgen.exact.accepted import shown
from mathgen.exact.demand import Demand
from mathgen.trials.reading import read_table
from mathgen.trials.scope import Scope
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from tests.audit.banks import NAMES, problems, sample, sample_problems
from tests.audit.results import Reach, Results

MEASURES = ("set_up", "down", "standing")


def frame(table: TrialTable) -> pd.DataFrame:
    found = pd.DataFrame(
        [(row.group, row.trial, row.color, row.set_up, row.down) for row in table.rows],
        columns=["groups", "trials", "colors", "set_up", "down"],
    )
    found["standing"] = found["set_up"] - found["down"]
    return found


@pytest.mark.parametrize("name", NAMES)
def test_totals_by_any_two_labels_are_those_of_groupby(name: str) -> None:
    table = sample(name)
    totals, data = Totals(table), frame(table)
    labels = {"groups": table.groups, "trials": table.trials, "colors": table.colors}
    for kinds in (("groups",), ("trials",), ("colors",), ("groups", "trials"), ("groups", "colors"), ("trials", "colors")):
        sums = data.groupby(list(kinds))[list(MEASURES)].sum()
        for picked in product(*(labels[kind] for kind in kinds)):
            scope = Scope(*((picked[kinds.index(kind)],) if kind in kinds else None for kind in labels))  # type: ignore[arg-type]
            if not totals.complete(scope):
                continue  # groups that had fewer trials than others have no sum there
            for measure in MEASURES:
                assert totals.total(measure, scope) == sums.loc[picked if len(picked) > 1 else picked[0], measure]  # type: ignore[arg-type]


@pytest.mark.parametrize("name", NAMES)
def test_the_pivot_of_a_table_is_its_margins(name: str) -> None:
    table = sample(name)
    totals = Totals(table)
    pivot = frame(table).pivot_table(index="groups", columns="colors", values="down", aggfunc="sum", margins=True, margins_name="(all)")
    for group, color in product((*table.groups, "(all)"), (*table.colors, "(all)")):
        scope = Scope(None if group == "(all)" else (group,), None, None if color == "(all)" else (color,))
        assert totals.total("down", scope) == pivot.loc[group, color]


@pytest.mark.parametrize("name", NAMES)
def test_every_count_that_a_problem_gives_is_a_sum_of_the_frame(name: str) -> None:
    data = frame(sample(name))
    for problem in sample_problems(name):
        for given in problem.givens:
            if isinstance(given.expr, Quantity) and given.expr.measure in MEASURES:
                rows = data
                for kind, picked in zip(("groups", "trials", "colors"), given.expr.scope, strict=True):
                    rows = rows if picked is None else rows[rows[kind].isin(picked)]
                assert int(rows[given.expr.measure].sum()) == int(given.value), problem.text


def test_the_audit_adds_up_as_pandas_does() -> None:
    results, data = Results.of(sample("main").rows), frame(sample("main"))
    for trial, color in product(results.trials, results.colors):
        rows = data[(data["trials"] == trial) & (data["colors"] == color)]
        for measure in MEASURES:
            assert results.total(measure, Reach(None, (trial,), (color,))) == rows[measure].sum()


BERKELEY = """Group,Trial,Color,Set up,Knocked down
A,1,men,825,512
A,1,women,108,89
B,1,men,560,353
B,1,women,25,17
C,1,men,325,120
C,1,women,593,202
D,1,men,417,138
D,1,women,375,131
E,1,men,191,53
E,1,women,393,94
F,1,men,373,22
F,1,women,341,24
"""


@pytest.fixture(scope="module")
def berkeley(tmp_path_factory: pytest.TempPathFactory) -> TrialTable:
    path: Path = tmp_path_factory.mktemp("berkeley") / "admissions.csv"
    path.write_text(BERKELEY, encoding="utf-8")
    return read_table(str(path)).table


def percent_down(table: TrialTable, scope: Scope) -> str:
    """The key of "What percent were knocked down?", to a tenth of a percent."""
    demand = Demand("percent", 1)
    exact = answer(Ask(Value(Op("/", (Quantity("down", scope), Quantity("set_up", scope)))), (), demand), Totals(table))
    assert not isinstance(exact, str)
    return shown(exact, demand)


def test_published_percents_come_out_of_a_published_table(berkeley: TrialTable) -> None:
    """44.5% of 2691 men and 30.4% of 1835 women. R manual, package datasets, UCBAdmissions (Berkeley, 1973).

    The departments' own rates point the other way, so a mean of rates cannot pass.
    """
    assert {sex: percent_down(berkeley, Scope(None, None, (sex,))) for sex in ("men", "women")} == {"men": "44.5%", "women": "30.4%"}


def test_published_percents_of_each_department_come_out(berkeley: TrialTable) -> None:
    """Percents by department and sex, computed from the counts of the R manual's UCBAdmissions."""
    found = {group: tuple(percent_down(berkeley, Scope((group,), None, (sex,))) for sex in ("men", "women")) for group in berkeley.groups}
    assert found == {
        "A": ("62.1%", "82.4%"),
        "B": ("63.0%", "68.0%"),
        "C": ("36.9%", "34.1%"),
        "D": ("33.1%", "34.9%"),
        "E": ("27.7%", "23.9%"),
        "F": ("5.9%", "7.0%"),
    }


def test_the_bank_of_the_published_table_pools_total_over_total(berkeley: TrialTable) -> None:
    """1755 of 4526 applicants, 38.8%: the sum of the published counts; the mean of 44.5% and 30.4% would be 37.5%."""
    bank, _ = problems(berkeley, per_model=200, grades=(7,))
    pooled = [problem for problem in bank if problem.model == "percent_of_set" and "the class" in problem.text.lower()]
    assert {problem.answer.shown for problem in pooled} == {"38.8%"}
