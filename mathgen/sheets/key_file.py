"""The key file: all that reprinting and marking need, as JSON."""

from __future__ import annotations

import json
from dataclasses import asdict
from hashlib import blake2b
from typing import Any, NamedTuple

from mathgen import __version__
from mathgen.bank.code import RELEASE, table_digest
from mathgen.bank.line import as_line
from mathgen.bank.plan import ChosenForm, ChosenSheet
from mathgen.errors import RequestFault
from mathgen.trials.table import TrialTable

FORMAT = 5
CHANGED = "This key file was changed after it was checked."


class KeptPages(NamedTuple):
    """What a key file keeps for printing again."""

    grade: int
    worksheet: dict[str, Any]
    key: dict[str, Any]
    table_digest: int
    changed: bool  # the content is not the one that was checked


def content_digest(content: dict[str, Any]) -> str:
    """Sixteen hexadecimal digits of all that a key file says but the digest itself, however it is laid out.

    It finds a slip of an editor; it is no seal against someone who means to deceive.
    """
    told = {name: value for name, value in content.items() if name != "digest"}
    text = json.dumps(told, ensure_ascii=True, sort_keys=True, separators=(",", ":"))
    return blake2b(text.encode(), digest_size=8).hexdigest()


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
    content: dict[str, Any] = {
        "format": FORMAT,
        "code": chosen.code,
        "program": __version__,
        "release": RELEASE,
        "table_digest": table_digest(table),
        "scenario": scenario,
        "plan": asdict(chosen.plan),
        "changes": list(chosen.changes),
        "notes": list(notes),
        "forms": [_form(form) for form in chosen.forms],
        "pages": {"worksheet": worksheet, "key": key},
    }
    # The digest is taken as the file will be read: tuples have become lists, and numbers that were keys are texts.
    content["digest"] = content_digest(json.loads(json.dumps(content)))
    return (json.dumps(content, ensure_ascii=False, indent=1) + "\n").encode()


def _form(form: ChosenForm) -> dict[str, Any]:
    lines = [as_line(problem) for problem in form.problems]
    for line, options in zip(lines, form.options, strict=False):
        line["choices"] = [{"letter": one.letter, "value": one.value, "slip": one.slip.id if one.slip else None} for one in options]
    return {"mark": form.mark, "problems": lines}


def pages_of(content: bytes, name: str) -> KeptPages:
    """The pages of a key file, as plain data. The key of a changed file says so where it said how its answers were checked.

    Raises:
        RequestFault: no key file, or one of another format.
    """
    try:
        data = json.loads(content.decode())
        if data["format"] != FORMAT:
            raise RequestFault(f"{name} is a key file of format {data['format']}; this program reads format {FORMAT}.")
        key = dict(data["pages"]["key"])
        changed = data.get("digest") != content_digest(data)
        if changed:
            key["proof_line"] = CHANGED
        return KeptPages(int(data["plan"]["grade"]), dict(data["pages"]["worksheet"]), key, int(data["table_digest"]), changed)
    except (UnicodeDecodeError, json.JSONDecodeError, KeyError, TypeError, ValueError, AttributeError, RecursionError) as err:
        raise RequestFault(f"{name} is no key file: expected the grade...-key.json that mathgen worksheet wrote.") from err
