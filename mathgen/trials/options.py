"""Answers to the questions that a table may leave open."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True)
class ReadOptions:
    """What the user has said beforehand; None where nothing was said."""

    counts: Literal["down", "standing"] | None = None
    blank: Literal["absent", "none"] | None = None
    set_up: tuple[tuple[str, int], ...] = ()  # color and how many were set up
    duplicates: Literal["first", "last", "keep"] | None = None
    sheet: str | None = None
    ignore_totals: bool = False
    scenario: str | None = None  # what things are called: "ramp", "seeds" or a file
    price: Literal["cents", "dollars"] | None = None  # what bare numbers of a price list are
