"""The key file: all that reprinting and marking need, as JSON."""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import Any

from mathgen import __version__
from mathgen.bank.code import RELEASE, table_digest
from mathgen.bank.line import as_line
from mathgen.bank.plan import ChosenSheet
from mathgen.errors import RequestFault
from mathgen.trials.table import TrialTable

FORMAT = 1


def key_file(
    chosen: ChosenSheet, table: TrialTable, scenario: str, notes: tuple[str, ...], worksheet: dict[str, Any], key: dict[str, Any]
) -> bytes:
    """The key file's bytes.

    Args:
        chosen: the sheet.
        table: whose rows the sheet's code stands for.
        scenario: name of the words used.
        notes: what was guessed while reading the table.
        worksheet: the pupils' pages as plain data, from which they can be printed again.
        key: the teacher's pages likewise.
    """
    content = {
        "format": FORMAT,
        "code": chosen.code,
        "program": __version__,
        "release": RELEASE,
        "table_digest": table_digest(table),
        "scenario": scenario,
        "plan": asdict(chosen.plan),
        "changes": list(chosen.changes),
        "notes": list(notes),
        "forms": [{"mark": form.mark, "problems": [as_line(problem) for problem in form.problems]} for form in chosen.forms],
        "pages": {"worksheet": worksheet, "key": key},
    }
    return (json.dumps(content, ensure_ascii=False, indent=1) + "\n").encode()


def pages_of(content: bytes, name: str) -> tuple[int, dict[str, Any], dict[str, Any]]:
    """Grade, worksheet and key of a key file, as plain data.

    Raises:
        RequestFault: no key file, or one of another format.
    """
    try:
        data = json.loads(content.decode())
        if data["format"] != FORMAT:
            raise RequestFault(f"{name} is a key file of format {data['format']}; this program reads format {FORMAT}.")
        return int(data["plan"]["grade"]), dict(data["pages"]["worksheet"]), dict(data["pages"]["key"])
    except (UnicodeDecodeError, json.JSONDecodeError, KeyError, TypeError, ValueError) as err:
        raise RequestFault(f"{name} is no key file: expected the grade...-key.json that mathgen worksheet wrote.") from err
