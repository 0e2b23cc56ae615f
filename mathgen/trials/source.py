"""Any file that a teacher has, or standard input, to grids: what it is by its content, not by its name."""

from __future__ import annotations

import difflib
import os
import sys

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.archive import Archive, damaged, open_archive, password
from mathgen.trials.grid import Grid
from mathgen.trials.limits import ADVICE, FILE_BYTES, megabytes
from mathgen.trials.read_text import read_text

_SAVE_AS = "Open it in the program that made it and save it as CSV or XLSX."
_OLE2 = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_ZIP = (b"PK\3\4", b"PK\5\6")
_KNOWN = (  # how a file starts that is no table, and what to call it
    (b"%PDF", "a PDF"),
    (b"\x89PNG", "a picture"),
    (b"\xff\xd8\xff", "a picture"),
    (b"GIF8", "a picture"),
    (b"BM", "a picture"),
    (b"II*\0", "a picture"),
    (b"MM\0*", "a picture"),
    (b"{\\rtf", "an RTF document"),
    (b"\x1f\x8b", "a packed file (GZ)"),
    (b"7z\xbc\xaf", "a packed file (7Z)"),
    (b"Rar!", "a packed file (RAR)"),
    (b"SQLite format 3", "a database"),
    (b"\x09\0\4\0", "an Excel workbook from before 1993"),
    (b"\x09\2\6\0", "an Excel workbook from before 1993"),
    (b"\x09\4\6\0", "an Excel workbook from before 1993"),
)
_MARKUP = (  # lower case, after spaces
    (b"<!doctype html", "a web page"),
    (b"<html", "a web page"),
    (b"<table", "a web page"),
    (b"<?xml", "an XML file"),
)
_PARTS = (  # parts of zip files that are no workbook that can be read
    ("xl/workbook.bin", "an XLSB workbook"),
    ("word/document.xml", "a Word document"),
    ("ppt/presentation.xml", "a PowerPoint file"),
    ("Index/Tables/", "a Numbers workbook"),
    ("Index/Document.iwa", "a Numbers, Pages or Keynote file"),
    ("Index.zip", "a Numbers, Pages or Keynote file"),
)
_ODS = b"application/vnd.oasis.opendocument.spreadsheet"
_STREAMS = (  # names inside OLE2 files that are no workbook that can be read
    ("WordDocument", "a Word document"),
    ("PowerPoint Document", "a PowerPoint file"),
    ("__properties_version1.0", "an e-mail message"),
)


def read_grids(path: str) -> tuple[Grid, ...]:
    """The grids of a table file: one for text, one for each sheet in use of a workbook.

    Args:
        path: a CSV, TSV or other text file, XLSX, XLS or ODS; ``-`` is standard input.
    Raises:
        TableFaults: nothing that can be read as a table, or far too much; the fault says what it is and what to do.
    """
    name = "standard input" if path == "-" else path
    content = sys.stdin.buffer.read(FILE_BYTES + 1) if path == "-" else _file_bytes(path)
    if len(content) > FILE_BYTES:
        raise _refused(f"{name}: more than {megabytes(FILE_BYTES)}", ADVICE)
    if content.startswith(_ZIP):
        return _zipped(open_archive(content, name))
    if content.startswith(_OLE2):
        return _ole2(content, name)
    beginning = content[:200].removeprefix(b"\xef\xbb\xbf").lstrip().lower()
    for mark, what in _KNOWN:
        # A picture's two letters may also start a heading, and then no zero bytes follow.
        if content.startswith(mark) and (len(mark) > 2 or b"\0" in content[:16] or not mark.isascii()):
            raise _refused(f"{name}: {what}")
    for mark, what in _MARKUP:
        if beginning.startswith(mark):
            raise _refused(f"{name}: {what}")
    return (read_text(content, name),)


def _refused(found: str, advice: str = _SAVE_AS) -> TableFaults:
    return TableFaults((Fault(Place(), found, "a table as text, CSV, XLSX, XLS or ODS", advice),))


def _file_bytes(path: str) -> bytes:
    """The file's bytes, at most one more than the limit."""
    if os.path.isdir(path):
        what = "a Numbers workbook" if path.rstrip("/").endswith(".numbers") else "a folder"
        raise _refused(f"{path}: {what}", _SAVE_AS if what != "a folder" else "Name the file in it that holds the table.")
    try:
        # The size first, so that a huge file is refused without reading any of it.
        if os.path.getsize(path) > FILE_BYTES:
            raise _refused(f"{path}: {megabytes(os.path.getsize(path))}, more than {megabytes(FILE_BYTES)}", ADVICE)
        with open(path, "rb") as file:
            return file.read(FILE_BYTES + 1)
    except FileNotFoundError as err:
        raise _refused(f"{path}: no such file", _neighbors(path)) from err
    except (OSError, ValueError) as err:  # ValueError: a name with a zero byte
        why = getattr(err, "strerror", None) or str(err)
        raise _refused(f"{path}: a file that cannot be opened ({why})", "Is it open in another program, or not yours to read?") from err


def _neighbors(path: str) -> str:
    """Advice on a missing file: the names in its folder that look like it."""
    folder, wanted = os.path.split(path)
    try:
        names = sorted(os.listdir(folder or "."))
    except OSError:
        return f'There is no folder "{folder}".'
    near = difflib.get_close_matches(wanted, names, n=3, cutoff=0.7)
    return f"Did you mean {' or '.join(os.path.join(folder, name) for name in near)}?" if near else "Is the name spelled right?"


def _zipped(archive: Archive) -> tuple[Grid, ...]:
    parts = archive.parts
    kind = archive.read("mimetype").strip() if "mimetype" in parts else b""
    if "xl/workbook.xml" in parts or kind in (_ODS, _ODS + b"-template"):
        # Opened here and not above: text tables, most of all, then start without waiting for the workbook library.
        from mathgen.trials.read_workbook import read_ods, read_xlsx

        return read_ods(archive) if kind else read_xlsx(archive)
    if kind.startswith(b"application/vnd.oasis.opendocument."):
        raise _refused(f"{archive.name}: an OpenDocument file that is no spreadsheet")
    for part, what in _PARTS:
        if any(name.startswith(part) for name in parts):
            raise _refused(f"{archive.name}: {what}")
    raise _refused(f"{archive.name}: a packed file (ZIP)", "Unpack it, and name the file in it that holds the table.")


def _ole2(content: bytes, name: str) -> tuple[Grid, ...]:
    def has(stream: str) -> bool:
        return (stream + "\0").encode("utf-16-le") in content

    if has("EncryptedPackage"):
        raise password(name)
    if has("Workbook") or has("Book"):
        from mathgen.trials.read_workbook import read_xls  # late, as above

        return read_xls(content, name)
    for stream, what in _STREAMS:
        if has(stream):
            raise _refused(f"{name}: {what}")
    raise damaged(name, "the file is cut short or is no workbook")
