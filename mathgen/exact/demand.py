"""What the words of a question demand of its answer."""

from __future__ import annotations

from functools import lru_cache
from typing import Literal, NamedTuple, get_args

# The form "mixed" is in lowest terms, as a scaled ratio is no "ratio"; "mixed:any" and "ratio:any" need not be.
Form = Literal[
    "any", "fraction", "simplest", "mixed", "mixed:any", "decimal", "percent", "ratio", "ratio:any", "whole", "name", "truth",
    "quotient_remainder", "list", "expression", "rubric",
]  # fmt: skip
_FORMS: dict[str, Form] = {form: form for form in get_args(Form)}
_ROUNDED: tuple[Form, ...] = ("decimal", "percent")
MOST_PLACES = 9
_PLACE_NAMES = (
    "tenth",
    "hundredth",
    "thousandth",
    "ten-thousandth",
    "hundred-thousandth",
    "millionth",
    "ten-millionth",
    "hundred-millionth",
    "billionth",
)


_WHOLE_PLACES = {-1: "ten", -2: "hundred", -3: "thousand", -4: "ten thousand", -5: "hundred thousand"}


class Demand(NamedTuple):
    """A form, and for rounded answers the number of places after the point; of a whole number, the places before it, below 0.

    >>> str(Demand("percent", 1)), str(Demand("whole", -2))
    ('percent:1', 'whole:100')
    """

    form: Form = "any"
    places: int | None = None

    def __str__(self) -> str:
        if self.places is None:
            return self.form
        return f"{self.form}:{10**-self.places if self.form == 'whole' else self.places}"


@lru_cache(maxsize=256)
def parse_demand(text: str) -> Demand:
    """The demand that its short text names, as ``str(demand)`` writes it.

    Raises:
        ValueError: there is no such demand; the message lists those there are.

    >>> parse_demand("percent:1"), parse_demand("ratio:any")
    (Demand(form='percent', places=1), Demand(form='ratio:any', places=None))
    """
    if text in _FORMS:
        return Demand(_FORMS[text])
    form, colon, places = text.partition(":")
    if colon and form in _ROUNDED and len(places) == 1 and places in "0123456789":
        return Demand(_FORMS[form], int(places))
    if form == "whole" and (zeros := places.removeprefix("1")) and places == f"1{'0' * len(zeros)}" and -len(zeros) in _WHOLE_PLACES:
        return Demand("whole", -len(zeros))
    raise ValueError(
        f'no demand "{text}"; there are {", ".join(_FORMS)}, decimal:N and percent:N with N from 0 to {MOST_PLACES} places, '
        f"and whole:10 to whole:100000"
    )


def in_words(demand: Demand) -> str:
    """The demand as the end of a question says it; "" where every form is right.

    >>> in_words(Demand("percent", 1)), in_words(Demand("simplest"))
    ('as a percent rounded to the nearest tenth of a percent', 'in simplest form')
    """
    form, places = demand
    if places is not None:
        if form == "whole":
            return f"rounded to the nearest {_WHOLE_PLACES[places]}"
        if form == "percent":
            place = "whole percent" if places == 0 else f"{_PLACE_NAMES[places - 1]} of a percent"
            return f"as a percent rounded to the nearest {place}"
        return "rounded to the nearest whole number" if places == 0 else f"as a decimal rounded to the nearest {_PLACE_NAMES[places - 1]}"
    words: dict[Form, str] = {
        "fraction": "as a fraction",
        "simplest": "in simplest form",
        "mixed": "as a mixed number",
        "mixed:any": "as a mixed number",
        "decimal": "as a decimal",
        "percent": "as a percent",
        "ratio": "as a ratio in simplest form",
        "ratio:any": "as a ratio",
        "whole": "as a whole number",
    }
    return words.get(form, "")
