"""The registry of problem models, filled by the ``problem_model`` decorator."""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from pkgutil import iter_modules
from typing import NamedTuple

import mathgen.models
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.trials.table import TableKind


class ProblemModel(NamedTuple):
    """A rule that proposes asks for a skill."""

    name: str
    skill: str
    strand: str
    space: Callable[[TableView], AskSpace]
    table: TableKind


_MODELS: dict[str, ProblemModel] = {}


def problem_model(skill: str, table: TableKind = "results") -> Callable[[Callable[[TableView], AskSpace]], Callable[[TableView], AskSpace]]:
    """Files a model under its own name, in the strand of its file, with the kind of table that it is about."""

    def file(space: Callable[[TableView], AskSpace]) -> Callable[[TableView], AskSpace]:
        name = space.__name__
        if name in _MODELS:
            raise ValueError(f"two problem models are named {name}")
        _MODELS[name] = ProblemModel(name, skill, space.__module__.rpartition(".")[2], space, table)
        return space

    return file


def problem_models(table: TableKind | None = None) -> tuple[ProblemModel, ...]:
    """Every model about a kind of table, or about either, in name order."""
    for module in sorted(iter_modules(mathgen.models.__path__), key=lambda module: module.name):
        import_module(f"mathgen.models.{module.name}")  # one without models files none
    return tuple(_MODELS[name] for name in sorted(_MODELS) if table in (None, _MODELS[name].table))
