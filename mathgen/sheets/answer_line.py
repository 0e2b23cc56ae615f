"""What a pupil writes an answer on: a line with its unit, an empty fraction or list, the two numbers of a ratio or a remainder, yes and no.

Beside yes and no there may be room for a reason.
"""

from __future__ import annotations

import re
from typing import Any

from mathgen.bank.key import one_of
from mathgen.problems.record import Answer

_FRACTION = re.compile(r"\d+/\d+")
_SEVERAL = {one_of(unit): unit for unit in ("inches", "feet", "boxes", "crosses", "successes")}


def unit_of(answer: Answer, words: dict[str, Any]) -> str:
    """The unit, always as for many: "1 pin" must not show on the answer line of a problem whose key is 1."""
    if answer.demand.form == "percent":
        return "%"
    if answer.display == f"${answer.shown}":
        return "dollars"
    _, found, unit = answer.display.partition(answer.shown)
    unit = unit.strip() if found else ""
    first, per, trial = unit.partition(" per ")
    if first == words["thing"]:
        first = str(words["things"])
    elif first:
        first = _SEVERAL.get(first, first if first.endswith("s") or first in _SEVERAL.values() else f"{first}s")
    return first + per + trial


def answer_line(answer: Answer, words: dict[str, Any]) -> dict[str, Any]:
    """The kind of answer place and its unit."""
    if answer.kind in ("truth", "quotient_remainder", "list", "rubric"):
        return {"kind": answer.kind, "unit": ""}
    if answer.kind == "name":
        return {"kind": "name", "unit": ""}
    if answer.kind == "ratio":
        return {"kind": "ratio", "unit": ""}
    unit = unit_of(answer, words)
    # Where the words demand a form, the place to write must not give the form away.
    # Nor that a length is less than 1 inch.
    if answer.demand.form in ("any", "fraction") and _FRACTION.fullmatch(answer.shown) and unit not in ("inches", "dollars"):
        return {"kind": "fraction", "unit": unit}
    return {"kind": "line", "unit": unit}
