"""What the parts of a written fraction are called: plain words first, the names of the trade once a grade has them."""

from __future__ import annotations

import re

_PART = re.compile(r"\b([Tt]op|[Bb]ottom) number")
_NAMES = {"top": "numerator", "bottom": "denominator"}


def with_part_names(text: str) -> str:
    """The same text with numerator and denominator for the top number and the bottom number.

    >>> with_part_names("Do not add the bottom numbers.")
    'Do not add the denominators.'
    """
    if " number" not in text:
        return text
    return _PART.sub(lambda match: _cased(_NAMES[match[1].lower()], match[1]), text)


def _cased(name: str, like: str) -> str:
    return name.capitalize() if like[0].isupper() else name
