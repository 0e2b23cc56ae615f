"""Several documents as one, in the order in which they are printed on both sides of the paper."""

from __future__ import annotations

import io
from collections.abc import Collection, Sequence


def one_pdf(documents: Sequence[tuple[bytes, Collection[int]]], title: str) -> bytes:
    """One PDF of all, each starting on a sheet of its own: a blank side follows where one has an odd number of pages.

    It is for the printer. The documents' own tags for screen readers are not taken over; the single files keep them.

    Args:
        documents: PDFs in print order, each with the numbers of its pages that nothing may be printed behind: cards are cut apart.
        title: of the whole.
    """
    from pypdf import PdfReader, PdfWriter  # only here: other commands do not need it

    writer = PdfWriter()
    for document, without_back in documents:
        pages = PdfReader(io.BytesIO(document)).pages
        width, height = pages[0].mediabox.width, pages[0].mediabox.height
        for number, page in enumerate(pages, 1):
            writer.add_page(page)
            if number in without_back:
                writer.add_blank_page(width, height)
        if len(writer.pages) % 2:
            writer.add_blank_page(width, height)
    writer.compress_identical_objects()  # the pages of one document share their fonts
    writer.add_metadata({"/Title": title, "/Producer": "mathgen"})
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()
