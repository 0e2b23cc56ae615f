"""``mathgen check-answers``: typed answers judged against keys, one case a line."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

import click

from mathgen.cli.usage import WholeCommand
from mathgen.errors import RequestFault
from mathgen.exact.demand import parse_demand
from mathgen.exact.judge import judge
from mathgen.exact.judge.typed_number import UNITS
from mathgen.exact.parse import NotANumber
from mathgen.trials.decoding import decoded

_FIELDS = ("expected", "demand", "typed")


@click.command("check-answers", cls=WholeCommand)
@click.option("--file", "file", metavar="FILE", required=True, help='JSON lines, or - for standard input: {"expected", "demand", "typed"}.')
def check_answers(file: str) -> None:
    """Judge typed answers, one JSON line each.

    Each line of FILE holds what is expected (exactly, also where the question asks to round), what the question demands of the form
    (any, fraction, simplest, mixed, mixed:any, decimal, percent, decimal:N, percent:N, ratio, ratio:any, whole, whole:10 to
    whole:100000, name, truth, quotient_remainder, list, expression, rubric) and what was typed. A name may have a list "accepted"
    of other ways to write it, as the bank has them; "thing" names what is counted, if it is not a pin, and "unit" what the answer
    counts beside: cent. Where the question asks for an estimate, what is expected may be "about 12".
    Each line that comes out holds the verdict (right, right_value_wrong_form, wrong or unreadable) and why.
    """
    verdicts, faults = [], []
    for number, line in enumerate(_lines(file), start=1):
        if not line.strip():
            continue
        try:
            case = _case(line)
            others = case.get("accepted", []) if case["demand"] == "name" else []
            units = (case.get("thing", UNITS[0]), *UNITS[1:], *([case["unit"]] if "unit" in case else []))
            found = [judge(one, case["demand"], case["typed"], units) for one in (case["expected"], *others)]
            verdict, why = next((one for one in found if one[0] == "right"), found[0])
        except ValueError as fault:  # NotANumber, too: the expected answer is none
            what = "the expected answer: " if isinstance(fault, NotANumber) else ""
            faults.append(f"line {number}: {what}{fault}")
        else:
            verdicts.append({"verdict": verdict, "why": why})
    if faults:
        raise RequestFault("\n".join(faults))
    for one in verdicts:
        sys.stdout.buffer.write((json.dumps(one, ensure_ascii=False) + "\n").encode())


def _lines(file: str) -> list[str]:
    try:
        content = sys.stdin.buffer.read() if file == "-" else Path(file).read_bytes()
    except OSError as err:
        raise RequestFault(f'"{file}" cannot be read: {err.strerror}.') from err
    text = decoded(content)
    if text is None:
        raise RequestFault(f'"{file}" is no text. Expected JSON lines.')
    # Only line feeds part cases: other signs that Python takes for line ends can stand inside a typed answer.
    return text.split("\n")


def _case(line: str) -> dict[str, Any]:
    """The fields of a line.

    Raises:
        ValueError: no JSON object with these fields as text, or no such demand.
    """
    try:
        data: Any = json.loads(line)
    except json.JSONDecodeError as err:
        raise ValueError(f"no JSON (column {err.colno}: {err.msg}); expected an object with {', '.join(_FIELDS)}") from err
    if not isinstance(data, dict):
        raise ValueError(f"found {type(data).__name__}; expected an object with {', '.join(_FIELDS)}")
    missing = [name for name in _FIELDS if not isinstance(data.get(name), str)]
    if missing:
        raise ValueError(f"{' and '.join(missing)} {'is' if len(missing) == 1 else 'are'} missing or no text")
    parse_demand(data["demand"])
    others = data.get("accepted", [])
    if not isinstance(others, list) or not all(isinstance(one, str) for one in others):
        raise ValueError(f"accepted: found {json.dumps(others)}; expected a list of texts")
    for name, such in (("thing", "seed"), ("unit", "cent")):
        if not isinstance(data.get(name, such), str) or data.get(name) == "":
            raise ValueError(f"{name}: found {json.dumps(data[name])}; expected one noun, such as {such}")
    return data
