"""What a PDF says about its own structure, read with pypdf."""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any

from pypdf import PdfReader


def reader(pdf: bytes) -> PdfReader:
    """The document."""
    return PdfReader(io.BytesIO(pdf))


def elements(document: PdfReader) -> list[tuple[str, str]]:
    """Every structure element in reading order: its type and its alt text."""

    def walk(node: Any) -> Iterator[tuple[str, str]]:
        node = node.get_object()
        if isinstance(node, list):
            for child in node:
                yield from walk(child)
        elif hasattr(node, "get"):
            if "/S" in node:
                yield str(node["/S"]), str(node.get("/Alt", ""))
            if "/K" in node:
                yield from walk(node["/K"])

    return list(walk(document.trailer["/Root"]["/StructTreeRoot"]))


def fonts(document: PdfReader) -> dict[str, bool]:
    """Fonts in use, and whether each is embedded."""
    found: dict[str, bool] = {}
    for page in document.pages:
        for entry in page["/Resources"].get("/Font", {}).values():
            font = entry.get_object()
            for inner in font.get("/DescendantFonts", [font]):
                descriptor = inner.get_object()["/FontDescriptor"].get_object()
                found[str(font["/BaseFont"])] = any(key in descriptor for key in ("/FontFile", "/FontFile2", "/FontFile3"))
    return found


def text(pdf: bytes) -> str:
    """All words in reading order, one space between them."""
    return " ".join(" ".join(page.extract_text() for page in reader(pdf).pages).split())


def lines(page: Any) -> list[tuple[float, float, float, str]]:
    """Each run of words on a page, in reading order: height of its base line, where it starts, its size (all in points), its words."""
    found: list[tuple[float, float, float, str]] = []

    def keep(words: str, outer: list[float], inner: list[float], font: object, size: float) -> None:
        if words.strip():
            found.append((inner[5] * outer[3] + outer[5], inner[4] * outer[0] + outer[4], size, words.strip()))

    page.extract_text(visitor_text=keep)
    return found
