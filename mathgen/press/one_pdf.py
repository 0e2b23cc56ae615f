"""Several documents as one, in the order in which they are printed on both sides of the paper."""

from __future__ import annotations

import io
from collections.abc import Collection, Sequence
from typing import NamedTuple


class Document(NamedTuple):
    """One part: its name, its PDF, and the numbers of its pages that nothing may be printed behind, for cards are cut apart."""

    name: str
    pdf: bytes
    without_back: Collection[int] = ()


class OnePdf(NamedTuple):
    """All parts in one PDF, and the first and the last page of each."""

    pdf: bytes
    spans: tuple[tuple[str, int, int], ...]


def one_pdf(documents: Sequence[Document], title: str) -> OnePdf:
    """One PDF of all, each starting on a sheet of its own: a blank side follows where one has an odd number of pages.

    It is for the printer. The documents' own tags for screen readers are not taken over; the single files keep them.

    Args:
        documents: the parts in print order; each has a bookmark.
        title: of the whole.
    """
    from pypdf import PdfReader, PdfWriter  # only here: other commands do not need it

    writer = PdfWriter()
    spans = []
    for name, document, without_back in documents:
        pages, first = PdfReader(io.BytesIO(document)).pages, len(writer.pages) + 1
        width, height = pages[0].mediabox.width, pages[0].mediabox.height
        for number, page in enumerate(pages, 1):
            writer.add_page(page)
            if number in without_back:
                writer.add_blank_page(width, height)
        if len(writer.pages) % 2:
            writer.add_blank_page(width, height)
        writer.add_outline_item(title=name, page_number=first - 1)
        spans.append((name, first, len(writer.pages)))
    writer.compress_identical_objects()  # the pages of one document share their fonts
    writer.add_metadata({"/Title": title, "/Producer": "mathgen"})
    out = io.BytesIO()
    writer.write(out)
    return OnePdf(out.getvalue(), tuple(spans))
