"""Encodings that spreadsheets and editors write, and bytes that are no text."""

from __future__ import annotations

import codecs

import pytest

from mathgen.trials.decoding import decoded

TABLE = "Group;Red (4)\r\nZoë’s Jays;3\r\nÉclairs – late;¼\r\n"


@pytest.mark.parametrize(
    "content",
    [
        TABLE.encode("utf-8"),
        TABLE.encode("utf-8-sig"),
        codecs.BOM_UTF16_LE + TABLE.encode("utf-16-le"),
        codecs.BOM_UTF16_BE + TABLE.encode("utf-16-be"),
        codecs.BOM_UTF32_LE + TABLE.encode("utf-32-le"),
        codecs.BOM_UTF32_BE + TABLE.encode("utf-32-be"),
        TABLE.encode("cp1252"),
    ],
    ids=["utf-8", "utf-8 marked", "utf-16-le marked", "utf-16-be marked", "utf-32-le", "utf-32-be", "windows-1252"],
)
def test_each_encoding_gives_the_same_text(content: bytes) -> None:
    assert decoded(content) == TABLE


@pytest.mark.parametrize("encoding", ["utf-16-le", "utf-16-be"])
def test_utf_16_is_known_without_a_mark(encoding: str) -> None:
    assert decoded("Group,Zoë\r\nOwls,3\r\n".encode(encoding)) == "Group,Zoë\r\nOwls,3\r\n"


def test_mac_roman_is_taken_where_windows_1252_has_no_such_byte() -> None:
    """0x8F is è in Mac Roman and unused in Windows-1252 (Unicode's mapping tables ROMAN.TXT and CP1252.TXT, from memory)."""
    assert decoded(b"Group,Red\nMyst\x8fres,3\n") == "Group,Red\nMystères,3\n"


def test_mac_roman_is_taken_where_lines_end_as_on_old_macs() -> None:
    """0x8E is é in Mac Roman and Ž in Windows-1252 (Unicode's mapping tables ROMAN.TXT and CP1252.TXT, from memory)."""
    assert decoded(b"Group,Red\rCaf\x8e,3\r") == "Group,Red\rCafé,3\r"
    assert decoded(b"Group,Red\r\nCaf\xe9,3\r\n") == "Group,Red\r\nCafé,3\r\n"


@pytest.mark.parametrize("content", [b"\x01\x02\x03table", bytes(range(256)), b"\0" * 40, b"\xef\xbb\xbf\xff\xfe\xfd", b"a\0bc,d"])
def test_other_bytes_are_no_text(content: bytes) -> None:
    assert decoded(content) is None


def test_a_stray_control_character_is_left_to_be_told_by_its_cell() -> None:
    assert decoded(b"Ow\x07ls,3") == "Ow\x07ls,3"


def test_an_end_of_file_sign_is_left_out() -> None:
    assert decoded(b"Owls,3\r\n\x1a") == "Owls,3\r\n"
