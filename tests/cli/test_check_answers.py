"""``mathgen check-answers``: one verdict a line, and all faults of a file at once."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import get_args

from click.testing import CliRunner

from mathgen.cli import main
from mathgen.exact.demand import Form

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


def test_a_name_may_be_written_as_the_bank_accepts_it_and_a_color_beside_what_is_counted() -> None:
    """Worked by hand: only what the bank lists, and only the activity's own noun."""
    factor = {"expected": "factor", "demand": "name", "accepted": ["factor", "the factor 15", "15"]}
    bean = {"expected": "bean", "demand": "name", "thing": "seed"}
    made = [(factor, "15"), (factor, "the factor 15"), (factor, "14"), (bean, "bean seeds"), (bean, "bean pins")]
    text = "\n".join(json.dumps(case | {"typed": typed}) for case, typed in made)
    done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=text)
    assert [json.loads(line)["verdict"] for line in done.output.splitlines()] == ["right", "right", "wrong", "right", "wrong"]
    for fault in ({"accepted": "15"}, {"thing": 7}, {"unit": ""}):
        done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=json.dumps(factor | {"typed": "15"} | fault))
        assert done.exit_code == 1


def test_an_answer_takes_the_unit_that_it_counts() -> None:
    """Worked by hand: sets are counted in every activity, cents where they are told of, feet nowhere in a bare number."""
    cents = {"unit": "cent"}
    made = [("10/9", "1 1/9 sets", {}), ("60", "60 cents", cents), ("60", "60 cents", {}), ("60", "60 feet", cents)]
    cases = [{"expected": key, "demand": "mixed" if "/" in key else "whole", "typed": typed} | more for key, typed, more in made]
    text = "\n".join(map(json.dumps, cases))
    done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=text)
    assert [json.loads(line)["verdict"] for line in done.output.splitlines()] == ["right", "right", "wrong", "wrong"]


def test_a_file_that_is_not_there_is_refused() -> None:
    done = CliRunner().invoke(main, ["check-answers", "--file", "no-such-file.jsonl"])
    assert done.exit_code == 1
    assert "cannot be read" in done.output


def test_signs_that_part_lines_elsewhere_may_stand_in_an_answer() -> None:
    line = json.dumps({"expected": "3/4", "demand": "any", "typed": "3/4\u2028"}, ensure_ascii=False)
    done = CliRunner().invoke(main, ["check-answers", "--file", "-"], input=line)
    assert json.loads(done.output)["verdict"] == "right"


def test_help_names_every_demand_that_is_accepted() -> None:
    told = re.search(r"\((any, .*?)\)", " ".join(CliRunner().invoke(main, ["check-answers", "--help"]).output.split()))
    assert told is not None
    assert set(re.split(r", | to ", told[1])) == {*get_args(Form), "decimal:N", "percent:N", "whole:10", "whole:100000"}


def test_the_example_in_readme_runs_as_shown() -> None:
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    shown = re.search(r"^echo '(.*)' \| mathgen (check-answers .*)$", readme, re.MULTILINE)
    assert shown is not None
    done = CliRunner().invoke(main, shown[2].split(), input=f"{shown[1]}\n")
    assert done.exit_code == 0
    assert json.loads(done.output)["verdict"] == "right_value_wrong_form"
