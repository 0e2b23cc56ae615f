"""Over random tables: the bank builds, every problem passes the audit and is proved, and nearly every class finds its grade."""

from __future__ import annotations

from collections import Counter
from random import Random

from hypothesis import given, settings

from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.trials.table import TrialTable
from tests.audit.audit import audit, audit_bank
from tests.audit.banks import GRADES, lines, problems
from tests.audit.results import SEEDS, Results, Words
from tests.audit.tables import aimed_table, any_tables, class_table

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


def test_problems_about_successes_of_any_aimed_table_are_proved_and_pass_the_audit() -> None:
    curriculum, made = load("ccss"), 0
    for number in range(12):
        rng = Random(f"aimed/{number}")
        table, activity = aimed_table(rng), "seeds" if number % 4 == 3 else "ramp"
        desk, results = Desk(table, scenario(activity)), Results.of(table.rows)
        for model in problem_models("results"):
            space = model.space(desk.view)
            last = filter(None, map(space.draft, range(max(space.size - 40, 0), space.size)))
            drafts = [draft for draft in last if "hits" in draft.roles][:5]
            for entry in curriculum.entries(model.skill) if drafts else ():
                builder = Builder(desk, curriculum, entry.grade)
                found = [builder.candidate(model, draft, rng) for draft in drafts]
                bank = [builder.finish(one) for one in found if isinstance(one, Candidate)]
                made += len(bank)
                assert [one.text for one in bank if not proved(one)] == []
                faults = [fault for line in lines(bank) for fault in audit(line, results, SEEDS if activity == "seeds" else Words())]
                assert not faults, "\n".join(faults[:20])
    assert made > 150


def test_class_tables_pass_the_audit() -> None:
    for number in range(15):
        table = class_table(Random(f"audited/{number}"))
        bank, _ = problems(table, per_model=4)
        found = audit_bank(lines(bank), Results.of(table.rows))
        assert not found, "\n".join(found[:20])
