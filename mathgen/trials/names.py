"""One spelling for each group, trial and color; names that are a slip of the fingers apart."""

from __future__ import annotations

from dataclasses import replace

from mathgen.errors import Fault
from mathgen.trials.heading_words import COLOR_WORDS
from mathgen.trials.labels import is_trial_label, spelling_key
from mathgen.trials.readings import Reading
from mathgen.trials.scope import Label


def one_spelling(readings: list[Reading], notes: list[str]) -> list[Reading]:
    """The readings with groups and trials that differ only in case or spaces made one; the first spelling stands."""
    groups: dict[str, str] = {}
    trials: dict[str, Label] = {}
    variants: dict[str, list[str]] = {}
    renamed = []
    for reading in readings:
        group = groups.setdefault(spelling_key(reading.group), reading.group)
        if group != reading.group and reading.group not in variants.setdefault(group, []):
            variants[group].append(reading.group)
        trial = reading.trial
        if isinstance(trial, str):
            trial = trials.setdefault(spelling_key(trial), trial)
        renamed.append(replace(reading, group=group, trial=trial))
    for group, others in variants.items():
        if others:
            listed = ", ".join(f'"{other}"' for other in others)
            notes.append(f'{listed} {"is" if len(others) == 1 else "are"} read as the group "{group}".')
    return renamed


def near_groups(readings: list[Reading]) -> list[str]:
    """A note for each two groups whose names are a slip apart: they stay two, and that is said."""
    groups = list(dict.fromkeys(reading.group for reading in readings))
    return [
        f'"{group}" and "{other}" are read as two groups. If they are one, give them one spelling.'
        for index, group in enumerate(groups)
        for other in groups[index + 1 :]
        if _slip_apart(group, other)
    ]


def unclear_groups(readings: list[Reading]) -> list[str]:
    """A note for each group that is called like a color or a trial: it stays, and that is said."""
    colors = {spelling_key(reading.color) for reading in readings} | COLOR_WORDS
    trials = {spelling_key(reading.trial) for reading in readings if isinstance(reading.trial, str)}
    notes = []
    for group in dict.fromkeys(reading.group for reading in readings):
        key = spelling_key(group)
        like = "a color" if key in colors else "a trial" if is_trial_label(group) or key in trials else None
        if like:
            notes.append(f'A group is called "{group}", like {like}: questions may be hard to understand.')
    return notes


def misspelled_colors(readings: list[Reading]) -> list[Fault]:
    """A fault for each color cell that is a slip away from another color of the table and is in no list of colors."""
    times: dict[str, int] = {}
    for reading in readings:
        times[reading.color] = times.get(reading.color, 0) + 1
    meant = {color: other for color in times if color not in COLOR_WORDS and len(color) > 3 and (other := _more_usual(color, times))}
    faults = {}
    for reading in readings:
        if reading.color in meant and reading.color_place is not None:
            others = ", ".join(color for color in times if color not in meant)
            faults[reading.color_place] = Fault(
                reading.color_place, reading.color, f"one of the colors {others}", f'Did you mean "{meant[reading.color]}"?'
            )
    return list(faults.values())


def near_colors(readings: list[Reading]) -> list[str]:
    """A note for each color in a heading that is in no list and a slip away from one that is: it stays as typed, and that is said."""
    headed = dict.fromkeys(reading.color for reading in readings if reading.color_place is None and reading.color not in COLOR_WORDS)
    known = [color for color in headed if " " not in color and len(color) > 2]
    notes = []
    for color in known:
        near = [f'"{other}"' for other in sorted(COLOR_WORDS) if _misspelled(color, other)]
        if near:
            meant = " or ".join(near)
            notes.append(f'A heading names the color "{color}", which stays as typed. If {meant} is meant, correct the heading.')
    return notes


def _misspelled(typed: str, color: str) -> bool:
    if len(typed) > 3 and len(color) > 2:
        return _slip_apart(typed, color)
    return sorted(typed) == sorted(color) and _slip_apart(typed, color)


def _more_usual(color: str, times: dict[str, int]) -> str | None:
    # rapidfuzz is loaded only for a color that is in no list.
    from mathgen.trials.spelling import nearest

    return nearest(color, [other for other in times if times[other] > times[color]])


def _slip_apart(first: str, second: str) -> bool:
    """Whether two names differ by one letter more, one letter changed or two letters swapped; figures and single letters tell groups apart.

    >>> _slip_apart("Owls", "Owl"), _slip_apart("Olws", "Owls"), _slip_apart("Team A", "Team B"), _slip_apart("Group 1", "Group 11")
    (True, True, False, False)
    """
    one, other = sorted((spelling_key(first), spelling_key(second)), key=len)
    if len(one) < 3 or len(other) - len(one) > 1:
        return False
    if len(one) == len(other):
        unlike = [(a, b) for a, b in zip(one, other, strict=True) if a != b]
        swapped = len(unlike) == 2 and unlike[0] == unlike[1][::-1]
        by_letter = len(one.split()) > 1 and one.split()[:-1] == other.split()[:-1] and len(one.split()[-1]) == 1
        changed = len(unlike) == 1 and len(one) > 3 and all(letter.isalpha() for pair in unlike for letter in pair)
        return (changed and not by_letter) or (swapped and all(letter.isalpha() for letter in unlike[0]))
    return any(one == other[:index] + other[index + 1 :] for index in range(len(other)) if other[index].isalpha())
