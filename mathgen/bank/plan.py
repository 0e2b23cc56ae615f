"""What a teacher asks for on a sheet, and what was chosen for it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from mathgen.bank.options import Option
from mathgen.problems.record import Problem
from mathgen.trials.scope import Scope


@dataclass(frozen=True, slots=True)
class SheetPlan:
    """A teacher's wishes for one grade. None means the grade's own default."""

    grade: int
    seed: int = 1
    curriculum: str = "ccss"
    count: int | None = None
    pages: int | None = None
    minutes: int | None = None
    level: str | None = None
    topics: tuple[str, ...] = ()
    standards: tuple[str, ...] = ()
    skills: tuple[str, ...] = ()
    not_yet: tuple[str, ...] = ()  # topics that were not taught so far
    forms: int = 1
    each_group: bool = False  # a form for every group, on its own trials
    copies: int = 1  # of each form in the PDF, in print order
    paper: Literal["letter", "a4"] = "letter"
    layout: Literal["more-room", "save-paper"] = "more-room"
    large_print: bool = False
    choices: bool = False  # answers to choose from
    tiers: bool = False  # three forms, one a level, of the same standards
    same_story: tuple[int, ...] = ()  # grades whose sheets tell one story, number by number

    @property
    def form_count(self) -> int:
        """How many forms there are."""
        return 3 if self.tiers else self.forms


class Graph(NamedTuple):
    """A bar graph of the pins knocked down, one bar a color, over the groups and trials of ``scope``."""

    scope: Scope  # colors is None: every color that the graph shows, in table order
    colors: tuple[str, ...]
    values: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class ChosenForm:
    """One form of a sheet: its problems in print order."""

    mark: str  # "A", "B", ...
    problems: tuple[Problem, ...]
    graph: Graph | None
    options: tuple[tuple[Option, ...], ...] = ()  # of each problem, where the plan wants choices
    tier: str = ""  # the level that the form stands for, where the plan wants tiers
    group: str = ""  # the group that the form is for, where every group has its own


@dataclass(frozen=True, slots=True)
class ChosenSheet:
    """All forms of a sheet, and what could not be done as asked."""

    plan: SheetPlan
    code: str
    forms: tuple[ChosenForm, ...]
    changes: tuple[str, ...]  # sentences: which demand the table cannot meet, why, what was done instead
