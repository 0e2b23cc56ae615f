"""Signs that no typeface of ours can show: found before a page is set, and left out of it."""

from __future__ import annotations

import json
import re
import unicodedata
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Any

import typst

from mathgen.errors import RequestFault
from mathgen.press.pdf import pdf_bytes

_PLAIN = frozenset(map(chr, range(0x20, 0x7F))) | frozenset("\n–—’“”…−×÷≈•")
_REFUSED = "could not be displayed"  # what the typesetter says of a sign that no typeface has
# A joiner or a variation selector shows nothing by itself; it goes with the sign that it stood by.
_FOLLOWERS = "[\u200d\ufe0e\ufe0f]*"


def unprintable(data: Any) -> tuple[str, ...]:
    """The signs in plain data that no typeface of ours has, in the order of their numbers.

    >>> unprintable({"title": "Zoë's \\N{FOX FACE}"})
    ('\N{FOX FACE}',)
    """
    # Escapes for control signs would hide them; so the words are gathered, not the JSON text.
    return tuple(sign for sign in sorted(set("".join(_words(data))) - _PLAIN) if not _has_face(sign))


def _words(data: Any) -> Iterable[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from _words(value)
    elif isinstance(data, (list, tuple)):
        for value in data:
            yield from _words(value)


@lru_cache(maxsize=4096)
def _has_face(sign: str) -> bool:
    """Asked of the typesetter itself, on a page with nothing else: it alone knows which typefaces it falls back on."""
    try:
        pdf_bytes("sign", {"sign": sign})
    except typst.TypstError as err:
        if _REFUSED in str(err):
            return False
        raise
    except UnicodeEncodeError:  # half a sign, as a key file edited by hand may have
        return False
    return True


def without(data: Any, signs: Sequence[str]) -> Any:
    """The data with those signs left out of every text, each with the blank before it.

    >>> without({"title": "Foxes \\N{FOX FACE}", "rows": ["\\N{FOX FACE} Foxes"]}, ["\\N{FOX FACE}"])
    {'title': 'Foxes', 'rows': ['Foxes']}
    """
    if not signs:
        return data
    return _cleaned(data, re.compile(f" ?[{re.escape(''.join(signs))}]{_FOLLOWERS}"))


def _cleaned(data: Any, pattern: re.Pattern[str]) -> Any:
    if isinstance(data, str):
        found = pattern.search(data)
        if found is None:
            return data
        left = pattern.sub("", data)
        return left.lstrip() if found.start() == 0 and not data.startswith(" ") else left
    if isinstance(data, dict):
        return {name: _cleaned(value, pattern) for name, value in data.items()}
    if isinstance(data, (list, tuple)):
        return [_cleaned(value, pattern) for value in data]
    return data


def said(signs: Sequence[str]) -> tuple[str, ...]:
    """A sentence for the teacher, which must itself be printable: signs are named, not shown."""
    if not signs:
        return ()
    named = ", ".join(unicodedata.name(sign, f"U+{ord(sign):04X}").lower() for sign in signs)
    what = "A character" if len(signs) == 1 else "Characters"
    return (f"{what} that cannot be printed {'is' if len(signs) == 1 else 'are'} left out of the pages: {named}.",)


def check_labels(labels: Iterable[str], signs: Sequence[str]) -> None:
    """Names must still tell groups, trials and colors apart when those signs are left out.

    Raises:
        RequestFault: a name would be empty, or two would be the same; every such name is told.
    """
    if not signs:
        return
    by_rest: dict[str, list[str]] = {}
    for label in dict.fromkeys(labels):
        by_rest.setdefault(str(without(label, signs)).strip(), []).append(label)
    faults = []
    for rest, all_named in by_rest.items():
        shown = ", ".join(json.dumps(label, ensure_ascii=False) for label in all_named)
        if not rest:
            faults.append(f"{shown}: none of {'its' if len(all_named) == 1 else 'their'} characters can be printed.")
        elif len(all_named) > 1:
            faults.append(f'{shown}: all would be printed as "{rest}", for the other characters cannot be printed.')
    if faults:
        raise RequestFault("\n".join([*faults, "Rename them in the table, in letters such as A to Z, and run mathgen again."]))
