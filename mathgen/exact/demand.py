"""What the words of a question demand of its answer."""

from __future__ import annotations

from typing import Literal, NamedTuple

Form = Literal["any", "simplest", "mixed", "decimal", "percent", "ratio", "whole", "name"]


class Demand(NamedTuple):
    """A form, and for rounded answers the number of places after the point.

    >>> str(Demand("percent", 1))
    'percent:1'
    """

    form: Form = "any"
    places: int | None = None

    def __str__(self) -> str:
        return self.form if self.places is None else f"{self.form}:{self.places}"
