"""Results of one group, trial and color that are in the table more than once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Literal

from mathgen.errors import Question
from mathgen.trials.questions import ask_duplicates
from mathgen.trials.readings import Reading
from mathgen.trials.scope import Label, Measure

_SHOWN = 8  # results named in one note


@dataclass(frozen=True, slots=True)
class Single:
    """Readings of which no two say the same of the same pins, and what was said or asked on the way."""

    readings: list[Reading]
    notes: tuple[str, ...] = ()
    question: Question | None = None
    later: tuple[list[Reading], ...] = ()  # where it is asked which one counts: the second readings, the third ones, ...


def settle_duplicates(readings: list[Reading], wanted: Literal["first", "last", "keep"] | None, timestamped: bool) -> Single:
    """The readings with doubles settled.

    Args:
        readings: every reading, each with its measure.
        wanted: which one counts; None asks.
        timestamped: whether a form collected the table.
    """
    numbered = _numbered(readings)
    doubled = list(dict.fromkeys((reading.group, reading.trial) for reading, number in numbered if number))
    if not doubled:
        return Single(readings)
    first = [reading for reading, number in numbered if number == 0]
    if wanted is None:
        places = [(group, trial, _rows(readings, group, trial)) for group, trial in doubled]
        turns = range(1, 1 + max(number for _, number in numbered))
        later = [[reading for reading, number in numbered if number == turn] for turn in turns]
        return Single(first, question=ask_duplicates(places, timestamped), later=tuple(later))
    if wanted == "keep":
        return _kept(numbered)
    notes = (f"Of results that are there more than once, the {wanted} counts: {trials_listed(doubled)}.",)
    if wanted == "first":
        return Single(first, notes)
    last = {_label(reading): number for reading, number in numbered}
    return Single([reading for reading, number in numbered if number == last[_label(reading)]], notes)


def _label(reading: Reading) -> tuple[str, Label, str, Measure | None]:
    return reading.group, reading.trial, reading.color, reading.measure


def _numbered(readings: list[Reading]) -> list[tuple[Reading, int]]:
    """Each reading with how many before it say the same of the same pins."""
    seen: dict[tuple[str, Label, str, Measure | None], int] = {}
    numbered = []
    for reading in readings:
        number = seen.get(_label(reading), 0)
        seen[_label(reading)] = number + 1
        numbered.append((reading, number))
    return numbered


def _rows(readings: list[Reading], group: str, trial: Label) -> list[int]:
    return sorted({reading.line[1] for reading in readings if (reading.group, reading.trial) == (group, trial)})


def _kept(numbered: list[tuple[Reading, int]]) -> Single:
    """Each later one as a further trial of its group, numbered on from the group's last."""
    last: dict[str, int] = {}
    for reading, _ in numbered:
        last[reading.group] = max(last.get(reading.group, 0), reading.trial if isinstance(reading.trial, int) else 0)
    further: dict[tuple[str, Label, int], int] = {}
    notes, kept = [], []
    for reading, number in numbered:
        if number == 0:
            kept.append(reading)
            continue
        spot = (reading.group, reading.trial, number)
        if spot not in further:
            last[reading.group] += 1
            further[spot] = last[reading.group]
            further_one = f'"{reading.group}" for {trial_words(reading.trial)} (row {reading.line[1]})'
            notes.append(f"A further result of {further_one} is counted as trial {further[spot]}.")
        kept.append(replace(reading, trial=further[spot]))
    return Single(kept, tuple(notes))


def trial_words(trial: Label) -> str:
    """ "trial 2", or the trial's own name."""
    return f"trial {trial}" if isinstance(trial, int) else trial


def trials_listed(pairs: Iterable[tuple[str, Label]]) -> str:
    """Groups and trials in words, cut short where there are many."""
    listed = [f"{group}, {trial_words(trial)}" for group, trial in pairs]
    more = f" and {len(listed) - _SHOWN} more" if len(listed) > _SHOWN else ""
    return "; ".join(listed[:_SHOWN]) + more
