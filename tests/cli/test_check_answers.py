"""``mathgen check-answers``: one verdict a line, and all faults of a file at once."""

from __future__ import annotations

import json
from pathlib import Path

from click.testing import CliRunner

from mathgen.cli import main

CASES = json.loads((Path(__file__).parents[1] / "exact" / "judge_cases.json").read_text(encoding="utf-8"))


def test_every_case_of_the_table_gets_its_verdict_in_order(tmp_path: Path) -> None:
    """The verdicts were worked out by hand from the rules for each demand; no published source."""
    file = tmp_path / "cases.jsonl"
    file.write_text("\n".join(json.dumps(case, ensure_ascii=False) for case in CASES), encoding="utf-8")
    done = CliRunner().invoke(main, ["check-answers", "--file", str(file)])
    assert done.exit_code == 0, done.output
    found = [json.loads(line) for line in done.output.splitlines()]
    assert [one["verdict"] for one in found] == [case["verdict"] for case in CASES]
    assert all(one["why"] for one in found)
    assert len(CASES) >= 400


def test_faults_are_said_together_with_their_lines_and_nothing_is_judged() -> None:
    text = '{"expected": "1", "demand": "any", "typed": "1"}\n{"typed": "1"}\nnope\n{"expected": "x", "demand": "any", "typed": "1"}\n' + (
        '{"expected": "1", "demand": "fancy", "typed": "1"}\n'
    )
    done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=text)
    assert done.exit_code == 1
    assert [f"line {number}:" in done.output for number in range(1, 6)] == [False, True, True, True, True]
    assert "verdict" not in done.output


def test_a_file_that_is_not_there_is_refused() -> None:
    done = CliRunner().invoke(main, ["check-answers", "--file", "no-such-file.jsonl"])
    assert done.exit_code == 1
    assert "cannot be read" in done.output


def test_signs_that_part_lines_elsewhere_may_stand_in_an_answer() -> None:
    line = json.dumps({"expected": "3/4", "demand": "any", "typed": "3/4\u2028"}, ensure_ascii=False)
    done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=line)
    assert json.loads(done.output)["verdict"] == "right"
