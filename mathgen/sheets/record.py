"""A blank recording sheet as plain data: what to fill in at the next try, and the rules that a class agrees on before."""

from __future__ import annotations

from typing import Any, NamedTuple

from mathgen.scenario.naming import group_name, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.sheets.key import OWN_RULES
from mathgen.sheets.record_plan import RecordPlan


class Rule(NamedTuple):
    """One thing to agree on: words, then boxes to tick, or a line to write on."""

    text: str
    choices: tuple[str, ...] = ()

    def said(self, item: str) -> dict[str, Any]:
        """The rule about things of some name, as plain data."""
        return {"text": self.text.format(Item=f"A {item}"), "choices": list(self.choices), "blank": not self.choices}


RULES = (
    Rule("{Item} down: it lies flat on the floor."),
    Rule("{Item} that leans on something: it counts as", ("down", "standing")),
    Rule("{Item} that slides but stands: it counts as", ("down", "standing")),
    Rule("Do-overs: a roll is repeated if"),
    Rule("Who counts, who writes:"),
)


def record_data(plan: RecordPlan, said: Scenario) -> dict[str, Any]:
    """Class page and group pages, ready for any press.

    Args:
        plan: a plan that was checked.
        said: what the activity calls its things.
    """
    shown = [_shown(group, said) for group in plan.groups]
    extra = [*(["Called color"] if plan.target else []), *(["Space (in.)"] if plan.spaces else [])]
    set_up, in_all = said.after_noun["set_up"], sum(size for _, size in plan.colors)
    columns = [{"head": color, "note": f"({size} {set_up})", "short": f"({size})"} for color, size in plan.colors]
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
        "total": {"head": "Total", "note": f"(of {in_all})", "short": f"({in_all})"},
        "bracketed": f"In brackets: how many are {set_up}.",
        "rules": [rule.said(said.item) for rule in RULES],
        "drawing": f"How the {said.items} stand: draw it, with colors and spaces",
        "cautions_head": said.cautions_head,
        "cautions": list(said.cautions) if any(OWN_RULES in line for line in said.cautions) else [*said.cautions, OWN_RULES],
        "names": "Names of groups only, no pupils' names.",
    }


def _shown(label: str, said: Scenario) -> str:
    name = group_name(label, said)
    return label if name == f"the {label}" else name
