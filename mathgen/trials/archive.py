"""The parts of a zipped workbook, unpacked bit by bit and never beyond the limits."""

from __future__ import annotations

import io
import struct
import zipfile
import zlib
from collections.abc import Iterator
from dataclasses import dataclass

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.limits import ADVICE, PACKING_RATIO, PACKING_RATIO_FROM, UNPACKED_BYTES, megabytes

_PARTS = 10_000
_CHUNK = 1 << 16
_LOCAL_HEADER = 30  # bytes before the part's name
RESAVE = "Open it in the spreadsheet program and save it again as XLSX or CSV."


def damaged(name: str, why: str) -> TableFaults:
    """The fault of a workbook that cannot be unpacked."""
    return TableFaults((Fault(Place(), f"{name}: a damaged workbook ({why})", "a whole workbook", RESAVE),))


@dataclass(frozen=True, slots=True)
class Archive:
    """A zip file whose parts have been measured."""

    content: bytes
    name: str
    parts: dict[str, zipfile.ZipInfo]

    def chunks(self, part: str) -> Iterator[bytes]:
        """The part's bytes, some at a time.

        Raises:
            TableFaults: the part is damaged, or unpacks to more than the archive says.
        """
        info = self.parts[part]
        start = info.header_offset
        header = self.content[start : start + _LOCAL_HEADER]
        if len(header) < _LOCAL_HEADER or not header.startswith(b"PK\3\4"):
            raise damaged(self.name, f"{part} is missing")
        start += _LOCAL_HEADER + sum(struct.unpack("<HH", header[26:30]))
        packed = self.content[start : start + info.compress_size]
        left = info.file_size
        for chunk in _inflated(packed) if info.compress_type == zipfile.ZIP_DEFLATED else (packed,):
            left -= len(chunk)
            # The reader behind us trusts the archive's own figures, which a trap states wrongly.
            if left < 0:
                raise damaged(self.name, f"{part} unpacks to more than it states")
            yield chunk
        if left:
            raise damaged(self.name, f"{part} is cut short")

    def read(self, part: str) -> bytes:
        """All of the part's bytes."""
        return b"".join(self.chunks(part))


def _inflated(packed: bytes) -> Iterator[bytes]:
    inflate = zlib.decompressobj(-15)
    chunk = inflate.decompress(packed, _CHUNK)
    while chunk:
        yield chunk
        chunk = inflate.decompress(inflate.unconsumed_tail, _CHUNK)


def open_archive(content: bytes, name: str) -> Archive:
    """A zip file's parts, once it is known that they unpack to something of a workbook's size.

    Args:
        content: the zip file.
        name: what to call it in a fault.
    Raises:
        TableFaults: no whole zip file, or one that unpacks to something huge.
    """
    if content.count(b"PK\1\2") > _PARTS:
        raise TableFaults((Fault(Place(), f"{name}: a workbook of more than {_PARTS:,} parts", f"at most {_PARTS:,} parts", ADVICE),))
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as opened:
            infos = opened.infolist()
    except (zipfile.BadZipFile, struct.error, NotImplementedError, ValueError) as err:
        raise damaged(name, "the file is cut short or changed on the way") from err
    archive = Archive(content, name, {info.filename: info for info in infos})
    _refuse_huge(archive, infos)
    if len(archive.parts) < len(infos):
        raise damaged(name, "two parts of one name")
    try:
        for part in archive.parts:
            for _ in archive.chunks(part):
                pass  # measured only: what is stated above must be what comes out
    except zlib.error as err:
        raise damaged(name, f"{part} cannot be unpacked") from err
    return archive


def _refuse_huge(archive: Archive, infos: list[zipfile.ZipInfo]) -> None:
    total = sum(info.file_size for info in infos)
    if total > UNPACKED_BYTES:
        found = f"{archive.name}: {megabytes(len(archive.content))} that unpack to {megabytes(total)}"
        raise TableFaults((Fault(Place(), found, f"a workbook that unpacks to at most {megabytes(UNPACKED_BYTES)}", ADVICE),))
    for info in infos:
        if info.file_size > PACKING_RATIO_FROM and info.file_size > PACKING_RATIO * info.compress_size:
            found = f"{archive.name}: a part of {megabytes(info.compress_size)} that unpacks to {megabytes(info.file_size)}"
            raise TableFaults((Fault(Place(), found, f"parts packed at most {PACKING_RATIO} times", ADVICE),))
        if info.flag_bits & 1:
            raise password(archive.name)
        if info.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
            raise damaged(archive.name, "packed in a way that no spreadsheet uses")


def password(name: str) -> TableFaults:
    """The fault of a workbook that opens only with a password."""
    advice = "Save a copy without the password, as XLSX or CSV."
    return TableFaults((Fault(Place(), f"{name}: a workbook protected by a password", "a workbook that opens without one", advice),))
