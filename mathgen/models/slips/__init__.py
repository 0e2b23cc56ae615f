"""The catalogue of slips, a file a section.

Source: the project's catalogue of pupil errors (sections A to K); the research behind each is named there. Ids are its ids.
"""

from __future__ import annotations

from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from mathgen.models.slips.rule import RULES, SlipRule


@cache
def _rules() -> dict[str, SlipRule]:
    for module in iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return RULES


def slip_rule(slip_id: str) -> SlipRule:
    """The rule of a slip id."""
    return _rules()[slip_id]


def slip_ids() -> tuple[str, ...]:
    """Every id of the catalogue, in order."""
    return tuple(sorted(_rules()))
