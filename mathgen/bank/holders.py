"""What things are put in: a line of feedback names the box, the bag or the row that the problem speaks of, and no other."""

from __future__ import annotations

import re

_HOLDERS = (("box", "boxes"), ("bag", "bags"), ("row", "rows"))
_ONE, _MANY = "box, bag or row", "boxes, bags or rows"


def with_holder(line: str, text: str) -> str:
    """A line of feedback for a problem of this text.

    >>> with_holder("The last box, bag or row is not full.", "Put these pins in bags of 4. How many bags are needed?")
    'The last bag is not full.'
    """
    if _ONE not in line and _MANY not in line:
        return line
    said = [(one, many) for one, many in _HOLDERS if re.search(rf"\b(?:{one}|{many})\b", text)]
    if len(said) != 1:
        return line
    [(one, many)] = said
    return line.replace(_MANY, many).replace(_ONE, one)
