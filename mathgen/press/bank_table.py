"""A bank as a CSV table for a spreadsheet, a chunk of rows at a time."""

from __future__ import annotations

from typing import Any, TextIO

import pandas as pd

from mathgen.bank.line import as_line
from mathgen.problems.record import Problem

COLUMNS = (
    "id", "grade", "standards", "skill", "strand", "model", "level", "text", "needs_table",
    "answer", "accepted", "steps", "relation", "slips",
)  # fmt: skip
_CHUNK = 500


class BankTable:
    """Collects problems and writes them in chunks, so that a large bank does not fill the memory."""

    def __init__(self, file: TextIO) -> None:
        self._file = file
        self._rows: list[list[str]] = []
        pd.DataFrame(columns=COLUMNS).to_csv(file, index=False)

    def keep(self, problem: Problem) -> None:
        """Adds one problem."""
        line = as_line(problem)
        line |= {"accepted": line["answer"]["accepted"], "answer": line["answer"]["display"]}
        line["slips"] = [f"{slip['value']}: {slip['line']}" for slip in line["slips"]]
        self._rows.append([_cell(line[name]) for name in COLUMNS])
        if len(self._rows) == _CHUNK:
            self.flush()

    def flush(self) -> None:
        """Writes what waits."""
        pd.DataFrame(self._rows, columns=COLUMNS).to_csv(self._file, index=False, header=False)
        self._rows.clear()


def _cell(value: Any) -> str:
    text = "; ".join(map(str, value)) if isinstance(value, list) else str(value)
    # A cell that starts with one of these would be run as a formula.
    return f"'{text}" if text.startswith(("=", "+", "-", "@", "\t")) else text
