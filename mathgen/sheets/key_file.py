"""The key file: all that reprinting and marking need, as JSON."""

from __future__ import annotations

import json
from dataclasses import asdict
from hashlib import blake2b
from typing import Any, Literal, NamedTuple

from mathgen import __version__
from mathgen.bank.code import RELEASE, table_digest
from mathgen.bank.line import as_line
from mathgen.bank.plan import ChosenForm, ChosenSheet
from mathgen.errors import RequestFault
from mathgen.trials.table import TrialTable

FORMAT = 6
CHANGED = "This key file was changed after it was checked."


class KeptPages(NamedTuple):
    """What a key file keeps for printing again."""

    kind: Literal["worksheet", "cards"]
    stem: str  # what the names of its files begin with
    pupils: dict[str, Any]
    key: dict[str, Any]
    table_digest: int
    changed: bool  # the content is not the one that was checked


def grades_in_name(grades: tuple[int, ...]) -> str:
    """What the names of files of these grades begin with.

    >>> grades_in_name((4,)), grades_in_name((3, 4, 5)), grades_in_name((3, 5))
    ('grade4', 'grades3-5', 'grades3and5')
    """
    if len(grades) == 1:
        return f"grade{grades[0]}"
    if grades == tuple(range(grades[0], grades[-1] + 1)):
        return f"grades{grades[0]}-{grades[-1]}"
    return f"grades{'and'.join(map(str, grades))}"


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
        kind: Literal["worksheet", "cards"] = "cards" if data.get("kind") == "cards" else "worksheet"
        grades = map(int, data["plan"]["grades"] if kind == "cards" else [data["plan"]["grade"]])
        return KeptPages(kind, grades_in_name(tuple(grades)), dict(data["pages"][kind]), key, int(data["table_digest"]), changed)
    except (UnicodeDecodeError, json.JSONDecodeError, KeyError, TypeError, ValueError, AttributeError, RecursionError) as err:
        raise RequestFault(f"{name} is no key file: expected the grade...-key.json that mathgen worksheet or mathgen cards wrote.") from err
