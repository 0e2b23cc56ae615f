"""A blank recording sheet as plain data: what to fill in at the next try, and the rules that a class agrees on before."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from mathgen.errors import RequestFault
from mathgen.scenario.naming import group_name, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.sheets.key import OWN_RULES
from mathgen.trials.heading_words import read_heading

MOST_GROUPS, MOST_TRIALS, MOST_COLORS, MOST_SET_UP = 40, 12, 12, 99
RULES = (
    "{Item} down: it lies flat on the floor. ____",
    "{Item} that leans on something: it counts as  ☐ down  ☐ standing",
    "{Item} that slides but stands: it counts as  ☐ down  ☐ standing",
    "Do-overs: a roll is repeated if ____",
    "Who counts, who writes: ____",
)


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


def checked(plan: RecordPlan) -> RecordPlan:
    """The plan, if a sheet can be made of it.

    Raises:
        RequestFault: names that are empty, twice there or no color's name, or numbers that no sheet has; all faults at once.
    """
    faults: list[str] = []
    colors = tuple(color for color, _ in plan.colors)
    for option, names, most in (("--groups", plan.groups, MOST_GROUPS), ("--colors", colors, MOST_COLORS)):
        if not names:
            faults.append(f"{option}: nothing is named. Expected names with commas between them.")
        if len(names) > most:
            faults.append(f"{option}: {len(names)} are named; a sheet has room for {most}.")
        seen: set[str] = set()
        for place, name in enumerate(names, start=1):
            if not name:
                faults.append(f"{option}: name {place} is empty. Take out the comma, or write a name.")
            elif name.casefold() in seen:
                faults.append(f'{option}: "{name}" is there twice. Give each its own name.')
            seen.add(name.casefold())
    for color, size in plan.colors:
        if read_heading(f"{color} ({size})").color != color:
            faults.append(f'--colors: "{color}" is no color\'s name. Expected a word such as red.')
        if not 1 <= size <= MOST_SET_UP:
            faults.append(f"--set-up: {color}={size} cannot be; expected 1 to {MOST_SET_UP}.")
    if not 1 <= plan.trials <= MOST_TRIALS:
        faults.append(f"--trials: {plan.trials} cannot be; expected 1 to {MOST_TRIALS}.")
    if faults:
        raise RequestFault("\n".join(faults))
    return plan


def record_data(plan: RecordPlan, said: Scenario) -> dict[str, Any]:
    """Class page and group pages, ready for any press.

    Args:
        plan: a plan that was checked.
        said: what the activity calls its things.
    """
    shown = [_shown(group, said) for group in plan.groups]
    extra = [*(["Called color"] if plan.target else []), *(["Space (in.)"] if plan.spaces else [])]
    columns = [{"head": color, "note": f"({size} {said.after_noun['set_up']})"} for color, size in plan.colors]
    return {
        "title": said.title,
        "lang": "en",
        "region": "US",
        "paper": plan.paper,
        "large": plan.large_print,
        "counted": upper_first(f"{said.items} {said.after_noun['down']}"),
        "group": said.group,
        "trial": upper_first(said.trial),
        "groups": shown,
        "trials": [trial_name(number, said) for number in range(1, plan.trials + 1)],
        "extra": extra,
        "columns": columns,
        "total": "Total",
        "of": sum(size for _, size in plan.colors),
        "rules": [line.format(Item=f"A {said.item}") for line in RULES],
        "cautions_head": said.cautions_head,
        "cautions": list(said.cautions) if any(OWN_RULES in line for line in said.cautions) else [*said.cautions, OWN_RULES],
        "names": "Names of groups only, no pupils' names.",
    }


def _shown(label: str, said: Scenario) -> str:
    name = group_name(label, said)
    return label if name == f"the {label}" else name
