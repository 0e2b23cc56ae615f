"""Bytes to text: the encodings that spreadsheets and text editors write."""

from __future__ import annotations

import codecs

_MARKS = (  # the four-byte mark first: it starts with the two-byte one
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32-le"),
    (codecs.BOM_UTF32_BE, "utf-32-be"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)

_SLIPS = 2  # control characters


def decoded(content: bytes) -> str | None:
    """The text in the bytes, or None where they are no text.

    A byte order mark decides. Without one: UTF-16 where zero bytes stand at every other place, else UTF-8 where it fits,
    else one of the two one-byte encodings that spreadsheets still write.

    >>> decoded(b"Zo\\xeb,3"), decoded("Zoë,3".encode("utf-16"))
    ('Zoë,3', 'Zoë,3')
    """
    for mark, encoding in _MARKS:
        if content.startswith(mark):
            return _strictly(content[len(mark) :], encoding)
    if b"\0" in content:
        wide = _unmarked_utf16(content)
        return _strictly(content, wide) if wide else None
    text = _strictly(content, "utf-8")
    return _strictly(content, _one_byte_encoding(content)) if text is None else text


def _strictly(content: bytes, encoding: str) -> str | None:
    try:
        text = content.decode(encoding)
    except UnicodeDecodeError:
        return None
    text = text.removesuffix("\x1a")  # old programs end a text file with Ctrl-Z
    odd = sum(sign < " " and sign not in "\t\n\v\f\r" for sign in text)
    # Two or three are a slip in a cell, which is told by its place; more, or a zero, are no text.
    return None if odd > _SLIPS or "\0" in text else text


def _unmarked_utf16(content: bytes) -> str | None:
    """UTF-16's byte order told by where the zero bytes are: digits, commas and plain letters have one each."""
    if len(content) % 2:
        return None
    first, second = content[::2].count(0), content[1::2].count(0)
    half = len(content) // 4  # half of the characters
    if second > half and not first:
        return "utf-16-le"
    return "utf-16-be" if first > half and not second else None


def _one_byte_encoding(content: bytes) -> str:
    """Mac Roman where that is certain or nearly so, else Windows-1252."""
    try:
        content.decode("cp1252")
    except UnicodeDecodeError:
        return "mac_roman"  # one of the five bytes that Windows-1252 leaves unused
    # Lines that end in a bare carriage return are written by "CSV (Macintosh)" and by little else.
    return "mac_roman" if b"\r" in content and b"\n" not in content else "cp1252"
