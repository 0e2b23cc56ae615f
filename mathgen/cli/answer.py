"""``mathgen answer``: pupils' own questions about a table, answered, asked about or declined."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import click

from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.usage import WholeCommand
from mathgen.errors import RequestFault
from mathgen.reading.pupils.verdict import Listener, Outcome
from mathgen.scenario.words import Scenario, scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import interpret
from mathgen.trials.source import read_grids

_STATUS = {"answer": 0, "ask": 3, "decline": 1}
_OWN = ("ramp", "seeds")


@click.command(cls=WholeCommand)
@table_argument_and_options
@click.argument("question", required=False)
@click.option("--json", "json_wanted", is_flag=True, help="Print JSON for programs.")
@click.option(
    "--file",
    "file",
    metavar="FILE",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="One question a line; prints one JSON line for each.",
)
@click.option(
    "--scenario", "scenario_name", metavar="FILE", help="What things are called: ramp, seeds, or a file. Without: as the table says."
)
def answer(table: str, reading: ReadOptions, question: str | None, json_wanted: bool, file: Path | None, scenario_name: str | None) -> None:
    """Answer a pupil's QUESTION about TABLE (a file, or - for standard input).

    Says how the question was understood, the exact answer and its steps; or asks back, or declines, and says why.
    Exit status: 0 answered, 3 asked back, 1 declined. With --file: 0.
    """
    if (question is None) == (file is None):
        raise click.UsageError("Give one question in quotation marks, or a file of questions with --file.")
    grids = read_grids(table)
    words = scenario(scenario_name) if scenario_name is not None else _named_in([cell for grid in grids for cell in _first_cells(grid)])
    results = interpret(grids, reading).table
    if results.prices:
        raise RequestFault("This is a price list; questions are answered about results of groups only.")
    listener = Listener(results, words)
    if file is not None:
        for line in _lines(file):
            _write(json.dumps(_as_data(listener.outcome(line)), ensure_ascii=False))
        return
    assert question is not None  # looked at above
    outcome = listener.outcome(question)
    _write(json.dumps(_as_data(outcome), ensure_ascii=False) if json_wanted else _in_words(outcome))
    sys.exit(_STATUS[outcome.verdict])


def _lines(file: Path) -> list[str]:
    """The lines of a file of questions, empty ones too."""
    try:
        text = file.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as err:
        raise RequestFault(f'"{file.name}" is no UTF-8 text: byte {err.start + 1} is none. Save it as UTF-8.') from err
    # Only line feeds part questions: other signs that Python takes for line ends can stand inside one.
    lines = text.replace("\r\n", "\n").split("\n")
    return lines[:-1] if lines and not lines[-1] else lines


def _first_cells(grid: object) -> list[str]:
    rows = getattr(grid, "rows", ())
    return [str(getattr(cell, "text", cell)) for row in list(rows)[:3] for cell in row]


def _named_in(cells: list[str]) -> Scenario:
    """Our own scenario whose things the head of the table names; the first where none does."""
    head = " ".join(cells).casefold()
    found = [one for one in map(scenario, _OWN) if one.items.casefold() in head]
    return found[0] if len(found) == 1 else scenario(_OWN[0])


def _as_data(outcome: Outcome) -> dict[str, object]:
    data: dict[str, object] = {"verdict": outcome.verdict, "read_as": outcome.read_as}
    if outcome.verdict == "answer":
        data["answer"] = {"value": outcome.value, "display": outcome.display, "forms": list(outcome.forms)}
        data["steps"] = list(outcome.steps)
    data["why"] = outcome.why
    return data


def _in_words(outcome: Outcome) -> str:
    if outcome.verdict != "answer":
        return "\n".join(filter(None, (outcome.read_as and f"I understood: {outcome.read_as}", outcome.why)))
    lines = [f"I understood: {outcome.read_as}", *(f"  {step}" for step in outcome.steps), f"Answer: {outcome.display}"]
    if outcome.forms:
        lines.append(f"The same: {', '.join(outcome.forms)}")
    return "\n".join(lines)


def _write(text: str) -> None:
    # UTF-8 whatever the terminal's own encoding, so that names survive a pipe.
    sys.stdout.buffer.write(f"{text}\n".encode())
    sys.stdout.flush()
