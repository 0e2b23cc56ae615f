"""Quotation marks around a cell of a text file: the file's own, or typed by somebody around a name."""

from __future__ import annotations

import re


def _quoted(separator: str) -> re.Pattern[str]:
    edge = re.escape(separator)
    return re.compile(rf'(?:(?<=\A)|(?<={edge})|(?<=[\r\n]))"((?:[^"]|"")*)"(?={edge}|\r|\n|\Z)')


def needless_marks(text: str, separator: str, records: list[list[str]]) -> tuple[str, ...]:
    """Names in quotation marks that no program would have put there: one word each, while other words stand without marks.

    Args:
        text: the whole file.
        separator: what parts its cells.
        records: its cells, without the marks.
    """
    quoted = _quoted(separator).findall(text)
    bare = [cell for record in records for cell in record if any(map(str.isalpha, cell)) and cell not in quoted]
    words = [cell for cell in quoted if any(map(str.isalpha, cell)) and not re.search(r'[\s",;|]', cell)]
    # A program that puts all words in marks, or all cells, leaves none without.
    return tuple(dict.fromkeys(words)) if bare else ()


def with_marks_kept(text: str, separator: str, names: tuple[str, ...]) -> str:
    """The text with the marks around these names written so that they are read as part of them."""
    return _quoted(separator).sub(lambda match: f'"""{match[1]}"""' if match[1] in names else match[0], text)


def marks_note(names: tuple[str, ...]) -> str:
    """What is said where marks are taken for the file's own."""
    listed = ", ".join(f'"{name}"' for name in names[:6]) + (f" and {len(names) - 6} more" if len(names) > 6 else "")
    return f"The quotation marks around {listed} are read as marks of the file, not as part of the name."
