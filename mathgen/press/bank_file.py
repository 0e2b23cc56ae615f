"""A bank as a file: JSON lines, or a CSV table for a spreadsheet. Problems stream to disk as they come."""

from __future__ import annotations

import csv
import json
import os
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TextIO

from mathgen.bank.line import as_line
from mathgen.errors import RequestFault
from mathgen.problems.record import Problem

_COLUMNS = (
    "id",
    "grade",
    "standards",
    "skill",
    "strand",
    "model",
    "level",
    "text",
    "needs_table",
    "answer",
    "accepted",
    "steps",
    "relation",
    "slips",
)


@contextmanager
def bank_file(path: Path, force: bool) -> Iterator[Callable[[Problem], None]]:
    """A function that writes one problem. The file appears under its name only when all is written.

    Raises:
        RequestFault: the name ends in something else, the file is there already, or the place cannot be written to.
    """
    if path.suffix not in (".jsonl", ".csv"):
        raise RequestFault(f"{path.name}: expected a name that ends in .jsonl or .csv.")
    if path.exists() and not force:
        raise RequestFault(f"already there: {path} (use --force to replace, or another --out)")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    except OSError as err:
        raise RequestFault(f"cannot write {path}: {err.strerror or err}") from err
    try:
        # A spreadsheet takes a file without a byte order mark for some other encoding.
        with os.fdopen(handle, "w", encoding="utf-8-sig" if path.suffix == ".csv" else "utf-8", newline="") as file:
            yield _lines(file) if path.suffix == ".jsonl" else _rows(file)
        Path(name).chmod(0o644)
        Path(name).replace(path)
    finally:
        Path(name).unlink(missing_ok=True)


def _lines(file: TextIO) -> Callable[[Problem], None]:
    def keep(problem: Problem) -> None:
        file.write(json.dumps(as_line(problem), ensure_ascii=False) + "\n")

    return keep


def _rows(file: TextIO) -> Callable[[Problem], None]:
    table = csv.writer(file)
    table.writerow(_COLUMNS)

    def keep(problem: Problem) -> None:
        line = as_line(problem)
        line |= {"accepted": line["answer"]["accepted"], "answer": line["answer"]["display"]}
        line["slips"] = [f"{slip['value']}: {slip['line']}" for slip in line["slips"]]
        table.writerow([_cell(line[name]) for name in _COLUMNS])

    return keep


def _cell(value: Any) -> str:
    text = "; ".join(map(str, value)) if isinstance(value, list) else str(value)
    # A cell that starts with one of these would be run as a formula.
    return f"'{text}" if text.startswith(("=", "+", "-", "@", "\t")) else text
