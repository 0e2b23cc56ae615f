"""Plain data to PDF: Typst documents in ``templates/print``, PDF/UA-1, the same bytes every time."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from functools import lru_cache
from pathlib import Path
from threading import get_ident
from typing import Any, Literal

import fontpkg_lexend
import typst

from mathgen.places import templates_folder

Kind = Literal["worksheet", "key", "cards", "sign", "specimens", "record"]
# 2000-01-01 00:00 UTC: a date that says nothing, so that the same sheet has the same bytes on any day.
_STAMP = 946_684_800
_AT_ONCE = 2


@lru_cache(maxsize=16)
def compiler(thread: int) -> typst.Compiler:
    """The compiler of one thread, with the templates of print and one font."""
    # Kept, because a warm compiler sets a page many times faster; one a thread, because a compiler serves one caller at a time.
    # System fonts are left out: pages must not depend on the machine that makes them.
    return typst.Compiler(
        root=templates_folder() / "print",
        font_paths=[Path(fontpkg_lexend.__file__).parent / "files"],
        ignore_system_fonts=True,
    )


def pdf_bytes(kind: Kind, data: dict[str, Any]) -> bytes:
    """A worksheet or key (or one sign alone, to see whether it can be set; or specimens of figures) as PDF/UA-1.

    The data goes in as JSON text and is never read as markup.
    """
    made = compiler(get_ident()).compile(
        input=templates_folder() / "print" / f"{kind}.typ",
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        pdf_standards="ua-1",
        timestamp=_STAMP,
    )
    assert isinstance(made, bytes)
    return made


def pdf_and_told(kind: Kind, data: dict[str, Any]) -> tuple[bytes, Any]:
    """One document, and what its template tells about it: the value of its one element with the label ``told``."""
    made = pdf_bytes(kind, data)
    # The compiler still holds this document; a thread has its own.
    return made, json.loads(compiler(get_ident()).query("<told>", field="value", one=True))


def pdfs(documents: Sequence[tuple[Kind, dict[str, Any]]]) -> list[bytes]:
    """Several documents, in their order; set side by side, as a key and its worksheet on two cores."""
    if len(documents) < 2:
        return [pdf_bytes(kind, data) for kind, data in documents]
    with ThreadPoolExecutor(min(len(documents), _AT_ONCE)) as pool:
        return list(pool.map(lambda document: pdf_bytes(*document), documents))


def page_count(pdf: bytes) -> int:
    """How many pages a document of ours has."""
    found = re.search(rb"/Type/Pages/Count (\d+)", pdf)
    assert found is not None, "the typesetter writes its page tree plainly"
    return int(found[1])
