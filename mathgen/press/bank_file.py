"""A bank as a file: JSON lines, or a CSV table for a spreadsheet. Problems stream to disk as they come."""

from __future__ import annotations

import json
import os
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib import import_module
from pathlib import Path
from typing import TextIO

from mathgen.bank.line import as_line
from mathgen.errors import RequestFault
from mathgen.problems.record import Problem


@contextmanager
def bank_file(path: Path, force: bool) -> Iterator[Callable[[Problem], None]]:
    """A function that writes one problem. The file appears under its name only when all is written.

    Raises:
        RequestFault: the name ends in something else, the file is there already, or the place cannot be written to.
    """
    if path.suffix not in (".jsonl", ".csv"):
        raise RequestFault(f"{path.name}: expected a name that ends in .jsonl or .csv.")
    try:
        if path.exists() and not force:
            raise RequestFault(f"already there: {path} (use --force to replace, or another --out)")
        path.parent.mkdir(parents=True, exist_ok=True)
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    except OSError as err:
        raise RequestFault(f"cannot write {path}: {err.strerror or err}") from err
    try:
        # A spreadsheet takes a file without a byte order mark for some other encoding.
        with os.fdopen(handle, "w", encoding="utf-8-sig" if path.suffix == ".csv" else "utf-8", newline="") as file:
            if path.suffix == ".jsonl":
                yield _lines(file)
            else:
                # pandas takes a fifth of a second to load, and only this kind of file needs it.
                table = import_module("mathgen.press.bank_table").BankTable(file)
                yield table.keep
                table.flush()
        Path(name).chmod(0o644)
        Path(name).replace(path)
    finally:
        Path(name).unlink(missing_ok=True)


def _lines(file: TextIO) -> Callable[[Problem], None]:
    def keep(problem: Problem) -> None:
        file.write(json.dumps(as_line(problem), ensure_ascii=False) + "\n")

    return keep
