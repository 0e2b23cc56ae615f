"""A blank recording sheet as plain data: what to fill in at the next try, and the rules that a class agrees on before."""

from __future__ import annotations

from typing import Any

from mathgen.scenario.naming import trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.sheets.key import OWN_RULES
from mathgen.sheets.page_words import shown_group
from mathgen.sheets.record_plan import RecordPlan

WHO = "Who counts, who writes:"


def record_data(plan: RecordPlan, said: Scenario) -> dict[str, Any]:
    """Class page and group pages, ready for any press.

    Args:
        plan: a plan that was checked.
        said: what the activity calls its things.
    """
    shown = [shown_group(group, said) for group in plan.groups]
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
        "bracketed": f"In parentheses: how many are {set_up}.",
        "rules_head": said.agree_head,
        "rules": [_rule(line) for line in (*said.agree, WHO)],
        "write": said.write,
        "drawing": said.draw,
        "cautions_head": said.cautions_head,
        "cautions": list(said.cautions) if any(OWN_RULES in line for line in said.cautions) else [*said.cautions, OWN_RULES],
        "names": "Names of groups only, no pupils' names.",
    }


def _rule(line: str) -> dict[str, Any]:
    """One thing to agree on: words, then boxes to tick, or a line to write on.

    >>> _rule("A pin that leans: it counts as | down | standing")
    {'text': 'A pin that leans: it counts as', 'choices': ['down', 'standing'], 'blank': False}
    """
    text, *choices = (part.strip() for part in line.split("|"))
    return {"text": text, "choices": choices, "blank": not choices}
