"""Plain data to PDF: Typst documents in ``templates/print``, PDF/UA-1, the same bytes every time."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any, Literal

import fontpkg_lexend
import typst

from mathgen.places import templates_folder
from mathgen.press.files import write_files

Kind = Literal["worksheet", "key"]
# 2000-01-01 00:00 UTC: a date that says nothing, so that the same sheet has the same bytes on any day.
_STAMP = 946_684_800


@cache
def _compiler() -> typst.Compiler:
    # One compiler for all documents of a process: finding the fonts costs more than setting a page.
    # System fonts are left out: pages must not depend on the machine that makes them.
    return typst.Compiler(
        root=templates_folder() / "print",
        font_paths=[Path(fontpkg_lexend.__file__).parent / "files"],
        ignore_system_fonts=True,
    )


def pdf_bytes(kind: Kind, data: dict[str, Any]) -> bytes:
    """A worksheet or key as PDF/UA-1.

    The data goes in as JSON text and is never read as markup.
    """
    made = _compiler().compile(
        input=templates_folder() / "print" / f"{kind}.typ",
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        pdf_standards="ua-1",
        timestamp=_STAMP,
    )
    assert isinstance(made, bytes)
    return made


def write_pdf(kind: Kind, data: dict[str, Any], path: Path, force: bool = False) -> None:
    """Write one document; see ``write_files``."""
    write_files({path: pdf_bytes(kind, data)}, force)
