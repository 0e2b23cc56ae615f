"""Whether counts are of pins knocked down or left standing: what the headings, titles and option say, or a question."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Literal

from mathgen.errors import Fault, Place, Question
from mathgen.trials.cells import Count, read_cell
from mathgen.trials.questions import ask_counts
from mathgen.trials.readings import Reading
from mathgen.trials.scope import Measure
from mathgen.trials.titles import speaks_of_seeds, title_measures

MEASURE_WORDS: dict[Measure, str] = {"down": "knocked down", "standing": "left standing", "set_up": "set up"}
_SHOWN = 6  # headings named in the question


@dataclass(frozen=True, slots=True)
class Settled:
    """Readings that all have a measure, and what was said or asked on the way."""

    readings: list[Reading]
    notes: tuple[str, ...] = ()
    faults: tuple[Fault, ...] = ()
    question: Question | None = None


def settle_measures(readings: list[Reading], titles: Iterable[str], wanted: Literal["down", "standing"] | None) -> Settled:
    """A measure for each reading.

    A heading that says it stands against everything; then the option; then titles and sheet names that speak of counting. A count
    such as 3/4 is read as knocked down of set up, which is said. With none of these the class alone knows.
    """
    unsaid = [reading for reading in readings if reading.measure is None]
    if not unsaid:
        return Settled(readings, faults=tuple(_against_headings(readings, wanted)))
    said: dict[Measure, str] = {}
    phrases: dict[Measure, str] = {}
    for title in titles:
        for measure, phrase in sorted(title_measures(title).items()):
            said.setdefault(measure, title)
            phrases.setdefault(measure, phrase)
    if wanted:
        against = [title for measure, title in said.items() if wanted not in said and measure != wanted]
        notes = tuple(
            f'The counts are of pins {MEASURE_WORDS[wanted]}, as --counts says, although a title is "{title}".' for title in against
        )
        return Settled(_all(readings, wanted), notes)
    if len(said) == 1:
        ((measure, title),) = said.items()
        # A table of seeds is told in its own words: nothing was knocked down there.
        what = f'taken as "{phrases[measure]}"' if speaks_of_seeds([title]) else f"of pins {MEASURE_WORDS[measure]}"
        return Settled(_all(readings, measure), (f'The counts are {what}, as "{title}" says.',))
    cells = [read_cell(reading.text, reading.is_date) for reading in unsaid]
    if (
        not said
        and all(cell.out_of is not None for cell in cells if isinstance(cell, Count))
        and any(isinstance(cell, Count) for cell in cells)
    ):
        return Settled(_all(readings, "down"), ("A count such as 3/4 is read as 3 knocked down of 4 set up.",))
    headings = list(dict.fromkeys(f'"{reading.place.heading}"' for reading in unsaid if reading.place.heading))
    shown = headings if len(headings) <= _SHOWN else [*headings[:_SHOWN], "..."]
    return Settled(_all(readings, "down"), question=ask_counts(shown))


def _all(readings: list[Reading], measure: Measure) -> list[Reading]:
    return [reading if reading.measure else replace(reading, measure=measure) for reading in readings]


def _against_headings(readings: list[Reading], wanted: Measure | None) -> list[Fault]:
    """A fault where the option says one thing and every heading the other."""
    stated = sorted({reading.measure for reading in readings if reading.measure and reading.measure != "set_up"})
    if wanted is None or not stated or wanted in stated:
        return []
    other = stated[0]
    return [
        Fault(
            Place(),
            f"--counts {wanted}",
            f"--counts {other}, as the headings say {MEASURE_WORDS[other]}",
            "Leave --counts out or change it.",
        )
    ]
