"""What a blank recording sheet is to hold, and all that stands against it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any, Literal

from mathgen.errors import RequestFault
from mathgen.trials.heading_words import read_heading
from mathgen.trials.labels import spelling_key, taken_for

MOST_GROUPS, MOST_TRIALS, MOST_COLORS, MOST_SET_UP, LONGEST_NAME = 40, 12, 12, 99, 40
HOW = "Write both together: --set-up red=4,blue=3,gold=5."


@dataclass(frozen=True, slots=True)
class RecordPlan:
    """What is to be recorded."""

    groups: tuple[str, ...]
    colors: tuple[tuple[str, int], ...]  # each with how many are set up
    trials: int = 3
    target: bool = False  # a column for the color that is called before the roll
    spaces: bool = False  # a column for the space between pins, in inches
    paper: Literal["letter", "a4"] = "letter"
    large_print: bool = False


def plan_of(groups: str, colors: str | None, set_up: str | None, **wishes: Any) -> RecordPlan:
    """The plan that options ask for, if a sheet can be made of it.

    Args:
        groups: names with commas between them.
        colors: names likewise; counts may stand with them, as in ``red=4,blue=3``.
        set_up: colors with their counts.
        wishes: the plan's other fields.
    Raises:
        RequestFault: whatever stands against it in any option; all faults at once.
    """
    faults: list[str] = []
    counts = _counted("--set-up", set_up, faults)
    # Counts given with the colors are the set-up, in the place where one would look for them.
    beside = _counted("--colors", colors, faults) if colors is not None and re.search("[=:]", colors) else []
    named = [color for color, _ in beside or counts] if colors is None or beside else [color.casefold() for color in names(colors)]
    sizes: dict[str, int] = {}
    for color, count in (*counts, *beside):
        if count is not None and sizes.setdefault(color, count) != count:
            faults.append(f"--set-up: {color} has two counts, {sizes[color]} and {count}. Give it one.")
    faults += [f"--set-up: a count for {color}, which --colors does not name." for color, _ in counts if color not in named]
    told = {color for color, _ in (*counts, *beside)}  # a count that cannot be read was told by itself
    missing = [color for color in dict.fromkeys(named) if color and color not in told]
    if missing:
        listed = ",".join(f"{color}=N" for color in missing)
        faults.append(f"--set-up: how many of {', '.join(missing)} are set up? Add --set-up {listed}, with the number in place of each N.")
    plan = RecordPlan(names(groups), tuple((color, sizes.get(color, 1)) for color in named), **wishes)
    faults += faults_of(plan)
    if faults:
        raise RequestFault("\n".join(dict.fromkeys(faults)))
    return plan


def names(text: str) -> tuple[str, ...]:
    """Names with commas between them; none for an empty text."""
    return tuple(" ".join(part.split()) for part in text.split(",")) if text.strip() else ()


def _counted(option: str, text: str | None, faults: list[str]) -> list[tuple[str, int | None]]:
    """Colors with their counts; None where the count cannot be read, which is a fault."""
    found: list[tuple[str, int | None]] = []
    for part in names(text or ""):
        color, number = (one.strip() for one in part.replace(":", "=").casefold().partition("=")[::2])
        if not (color and number.isascii() and number.isdecimal() and len(number) < 4):
            faults.append(f'{option}: found "{part}"; expected a color and a whole number, such as red=4. {HOW}')
            found.append((color, None))
        elif any(other == color for other, _ in found):
            faults.append(f"{option}: {color} is there twice. Name it once.")
        else:
            found.append((color, int(number)))
    return found


def checked(plan: RecordPlan) -> RecordPlan:
    """The plan, if a sheet can be made of it.

    Raises:
        RequestFault: names that ``read`` would not take, or numbers that no sheet has; all faults at once.
    """
    if faults := faults_of(plan):
        raise RequestFault("\n".join(faults))
    return plan


def faults_of(plan: RecordPlan) -> list[str]:
    """Names that are empty, too long, twice there, read as something else or no color's name; numbers that no sheet has."""
    faults: list[str] = []
    colors = tuple(color for color, _ in plan.colors)
    for option, labels, most in (("--groups", plan.groups, MOST_GROUPS), ("--colors", colors, MOST_COLORS)):
        if not labels:
            faults.append(f"{option}: nothing is named. Expected names with commas between them.")
        if len(labels) > most:
            faults.append(f"{option}: {len(labels)} are named; a sheet has room for {most}.")
        seen: dict[str, str] = {}
        for place, name in enumerate(labels, start=1):
            if not name:
                faults.append(f"{option}: name {place} is empty. Take out the comma, or write a name.")
                continue
            first = seen.setdefault(spelling_key(name), name)
            if place > 1 and list(seen.values()).count(first) and labels.index(first) != place - 1:
                same = f'"{name}" is there twice' if name == first else f'"{first}" and "{name}" would be read as one'
                faults.append(f"{option}: {same}. Give each its own name.")
            if len(name) > LONGEST_NAME:
                faults.append(f'{option}: "{name}" has {len(name)} characters; a sheet has room for {LONGEST_NAME}.')
    faults += [_misread(name, plan.groups) for name in dict.fromkeys(plan.groups) if name and taken_for(name, plan.groups)]
    for color, size in plan.colors:
        if color and read_heading(f"{color} ({size})").color != color:
            faults.append(f'--colors: "{color}" is no color\'s name. Expected a word such as red.')
        if not 1 <= size <= MOST_SET_UP:
            faults.append(f"--set-up: {color}={size} cannot be; expected 1 to {MOST_SET_UP}.")
    if not 1 <= plan.trials <= MOST_TRIALS:
        faults.append(f"--trials: {plan.trials} cannot be; expected 1 to {MOST_TRIALS}.")
    return faults


def _misread(name: str, groups: tuple[str, ...]) -> str:
    other = f"The {name}"
    advice = f'Call the group "{other}", or give it another name.' if taken_for(other, groups) is None else "Give the group another name."
    return f'--groups: "{name}" in the filled table would be read as {taken_for(name, groups)}, not as a group. {advice}'
