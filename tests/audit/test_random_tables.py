"""Over random tables: the bank builds, every problem passes the audit and is proved, and nearly every class finds its grade."""

from __future__ import annotations

from collections import Counter
from random import Random

from hypothesis import given, settings

from mathgen.trials.table import TrialTable
from tests.audit.audit import audit_bank
from tests.audit.banks import GRADES, lines, problems
from tests.audit.results import Results
from tests.audit.tables import any_tables, class_table

CLASSES = 60


@settings(max_examples=40)
@given(table=any_tables())
def test_the_bank_of_any_table_passes_the_audit(table: TrialTable) -> None:
    """On a table that no class would make, the reader may not follow some words; such a problem is dropped and named."""
    bank, report = problems(table, per_model=2)
    assert all(name.endswith(" (reading)") for name in report.failed)
    assert sum(report.failed.values()) * 10 <= report.kept + 10
    found = audit_bank(lines(bank), Results.of(table.rows))
    assert not found, "\n".join(found[:20])


def test_nine_in_ten_class_tables_keep_a_problem_in_every_grade() -> None:
    kept: Counter[int] = Counter()
    reasons: Counter[str] = Counter()
    for number in range(CLASSES):
        bank, report = problems(class_table(Random(f"class/{number}")), per_model=1)
        assert not report.failed
        kept.update({problem.grade for problem in bank})
        reasons.update(report.stopped)
    share = {grade: kept[grade] / CLASSES for grade in GRADES}
    assert min(share.values()) >= 0.9, (share, reasons.most_common(10))


def test_class_tables_pass_the_audit() -> None:
    for number in range(15):
        table = class_table(Random(f"audited/{number}"))
        bank, _ = problems(table, per_model=4)
        found = audit_bank(lines(bank), Results.of(table.rows))
        assert not found, "\n".join(found[:20])
