"""An open dataset read as a trial table: its published percents come out."""

from __future__ import annotations

from sympy import Rational

from mathgen.trials.reading import interpret
from mathgen.trials.scope import Scope
from mathgen.trials.totals import Totals
from tests.trials.as_grid import grid

# Applicants to the six largest departments in 1973, admitted of all who applied.
BERKELEY = """Knocked down stands for admitted and set up for applied
Group,Trial,men,women
A,1973,512/825,89/108
B,1973,353/560,17/25
C,1973,120/325,202/593
D,1973,138/417,131/375
E,1973,53/191,94/393
F,1973,22/373,24/341
Total,,1198/2691,557/1835"""


def test_shares_are_total_over_total() -> None:
    """44.5% of 2691 men and 30.4% of 1835 women. R manual, package datasets, UCBAdmissions (Berkeley, 1973).

    In four of six departments the women's rate is the higher one, so that a mean of rates would not pass.
    """
    table = interpret([grid(BERKELEY)]).table
    totals = Totals(table)
    assert (table.groups, table.trials, table.colors) == (tuple("ABCDEF"), (1973,), ("men", "women"))
    applied = {sex: totals.total("set_up", Scope(colors=(sex,))) for sex in table.colors}
    assert applied == {"men": 2691, "women": 1835}
    for sex, tenths_of_a_percent in (("men", 445), ("women", 304)):
        share = Rational(1000 * totals.total("down", Scope(colors=(sex,))), applied[sex])
        assert tenths_of_a_percent - Rational(1, 2) <= share < tenths_of_a_percent + Rational(1, 2)


def test_the_rates_of_the_departments_point_the_other_way() -> None:
    """Bickel, Hammel and O'Connell, Sex bias in graduate admissions, Science 187 (1975): women do better in 4 of 6."""
    totals = Totals(interpret([grid(BERKELEY)]).table)

    def rate(department: str, sex: str) -> Rational:
        scope = Scope(groups=(department,), colors=(sex,))
        return Rational(totals.total("down", scope), totals.total("set_up", scope))

    assert [department for department in "ABCDEF" if rate(department, "women") > rate(department, "men")] == ["A", "B", "D", "F"]
