"""Where the ink is on a printed page, as PDFium finds it: in millimeters from the upper left corner of the paper."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, NamedTuple

import pypdfium2
from pypdfium2 import raw

MM = 72 / 25.4


class Box(NamedTuple):
    """A rectangle around ink, or on which ink may stand."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def center(self) -> tuple[float, float]:
        return (self.left + self.right) / 2, (self.top + self.bottom) / 2

    @property
    def wide(self) -> float:
        return self.right - self.left

    @property
    def tall(self) -> float:
        return self.bottom - self.top

    def holds(self, other: Box, margin: float = 0) -> bool:
        """Whether the other lies inside, nowhere nearer to an edge than the margin."""
        return (
            other.left >= self.left + margin
            and other.right <= self.right - margin
            and other.top >= self.top + margin
            and other.bottom <= self.bottom - margin
        )


class Mark(NamedTuple):
    """A run of words, or a line or shape with its stroke."""

    words: bool
    box: Box


class Page(NamedTuple):
    """One page of paper."""

    width: float
    height: float
    marks: tuple[Mark, ...]
    page: Any

    def text_in(self, box: Box) -> str:
        """The words inside a rectangle, one space between them."""
        top, bottom = (self.height - box.top) * MM, (self.height - box.bottom) * MM
        return " ".join(self.page.get_textpage().get_text_bounded(box.left * MM, bottom, box.right * MM, top).split())

    def pixels(self, dots_an_inch: int = 60) -> Any:
        """The page as an array of rows of red, green and blue."""
        return self.page.render(scale=dots_an_inch / 72).to_numpy()[:, :, :3]


def pages(pdf: bytes) -> list[Page]:
    """The pages of a document."""
    found = []
    for page in pypdfium2.PdfDocument(pdf):
        width, height = (length / MM for length in page.get_size())
        marks = []
        for item in page.get_objects(max_depth=8):
            left, bottom, right, top = (length / MM for length in item.get_bounds())
            marks.append(Mark(item.type == raw.FPDF_PAGEOBJ_TEXT, Box(left, height - top, right, height - bottom)))
        found.append(Page(width, height, tuple(marks), page))
    return found


def around(boxes: Iterable[Box]) -> Box:
    """The smallest rectangle around all."""
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    return Box(min(lefts), min(tops), max(rights), max(bottoms))
