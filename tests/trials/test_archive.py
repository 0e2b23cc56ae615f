"""Zipped workbooks that would unpack to something huge are refused before they do, whatever they state."""

from __future__ import annotations

import io
import struct
import tracemalloc
import zipfile

import pytest

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.archive import open_archive
from mathgen.trials.limits import megabytes

ADVICE = "Copy only the class's table into a new sheet and save that as CSV or XLSX."
RESAVE = "Open it in the spreadsheet program and save it again as XLSX or CSV."


def zipped(*parts: tuple[str, bytes], kind: int = zipfile.ZIP_DEFLATED) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", kind) as archive:
        for name, content in parts:
            archive.writestr(name, content)
    return made.getvalue()


def bomb(megabytes: int) -> bytes:
    """A zip file with one part of so many million spaces."""
    made = io.BytesIO()
    with (
        zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive,
        archive.open("xl/worksheets/sheet1.xml", "w") as part,
    ):
        for _ in range(megabytes):
            part.write(b" " * 1_000_000)
    return made.getvalue()


def refusal(content: bytes) -> tuple[Fault, int]:
    """The one fault of an archive, and the most memory that finding it took."""
    tracemalloc.start()
    try:
        with pytest.raises(TableFaults) as caught:
            open_archive(content, "a.xlsx")
        (fault,) = caught.value.faults
        return fault, tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()


def test_an_archive_that_states_too_much_is_refused_without_unpacking() -> None:
    content = bomb(101)
    assert len(content) < 1_000_000
    fault, memory = refusal(content)
    found = f"a.xlsx: {megabytes(len(content))} that unpack to 101 MB"
    assert fault == Fault(Place(), found, "a workbook that unpacks to at most 100 MB", ADVICE)
    assert memory < 3_000_000


def test_a_part_packed_more_than_a_hundred_times_is_refused_without_unpacking() -> None:
    fault, memory = refusal(bomb(11))
    assert fault == Fault(Place(), "a.xlsx: a part of 0.1 MB that unpacks to 11 MB", "parts packed at most 100 times", ADVICE)
    assert memory < 1_000_000


def test_a_small_part_may_be_packed_as_tightly_as_it_likes() -> None:
    assert open_archive(bomb(1), "a.xlsx").read("xl/worksheets/sheet1.xml") == b" " * 1_000_000


def test_an_archive_that_states_less_than_it_holds_is_refused_before_it_is_unpacked() -> None:
    content = bomb(200)
    lie = content.replace(struct.pack("<I", 200_000_000), struct.pack("<I", 1_000))
    assert lie != content
    fault, memory = refusal(lie)
    found = "a.xlsx: a damaged workbook (xl/worksheets/sheet1.xml unpacks to more than it states)"
    assert fault == Fault(Place(), found, "a whole workbook", RESAVE)
    assert memory < 3_000_000


def test_an_archive_of_many_parts_is_refused() -> None:
    fault, _ = refusal(b"PK\3\4" + b"PK\1\2" * 10_001)
    assert fault == Fault(Place(), "a.xlsx: a workbook of more than 10,000 parts", "at most 10,000 parts", ADVICE)


@pytest.mark.parametrize("keep", [4, 30, 100, -1, -30])
def test_an_archive_that_is_cut_short_is_refused(keep: int) -> None:
    fault, _ = refusal(zipped(("a.xml", b"<a/>" * 100))[:keep])
    assert fault == Fault(Place(), "a.xlsx: a damaged workbook (the file is cut short or changed on the way)", "a whole workbook", RESAVE)


def test_a_part_that_cannot_be_unpacked_is_refused() -> None:
    content = bytearray(zipped(("a.xml", b"<a/>" * 100)))
    content[35:40] = b"\xff" * 5
    fault, _ = refusal(bytes(content))
    assert fault.found == "a.xlsx: a damaged workbook (a.xml cannot be unpacked)"


def test_a_part_packed_in_another_way_is_refused() -> None:
    fault, _ = refusal(zipped(("a.xml", b"<a/>"), kind=zipfile.ZIP_LZMA))
    assert fault.found == "a.xlsx: a damaged workbook (packed in a way that no spreadsheet uses)"


def test_a_part_locked_by_a_password_is_said() -> None:
    content = bytearray(zipped(("a.xml", b"<a/>")))
    content[content.index(b"PK\1\2") + 8] |= 1  # the flag of the part in the archive's list
    fault, _ = refusal(bytes(content))
    expected = "a workbook that opens without one"
    found = "a.xlsx: a workbook protected by a password"
    assert fault == Fault(Place(), found, expected, "Save a copy without the password, as XLSX or CSV.")


def test_stored_parts_are_read_as_they_are() -> None:
    assert open_archive(zipped(("a", b"one"), ("b", b""), kind=zipfile.ZIP_STORED), "a.ods").read("a") == b"one"
