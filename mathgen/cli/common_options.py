"""Options that several commands share, and how grades are written."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import click

LOWEST, HIGHEST = 1, 8


class Grades(click.ParamType):  # type: ignore[type-arg]  # generic only since click 8.2, and 8.1 is in range
    """Grades as a teacher writes them: ``4``, ``2-8``, ``3,5``."""

    name = "GRADES"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> tuple[int, ...]:
        """The grades in order, each once."""
        if isinstance(value, tuple):
            return value
        found: set[int] = set()
        for part in str(value).split(","):
            match = re.fullmatch(r"\s*(\d{1,2})\s*(?:[-–]\s*(\d{1,2}))?\s*", part)
            if match is None:
                self.fail(f'"{part}" is no grade; write 4, or 2-8, or 3,5', param, ctx)
            first, last = int(match[1]), int(match[2] or match[1])
            if not LOWEST <= first <= last <= HIGHEST:
                self.fail(f'"{part.strip()}": grades are {LOWEST} to {HIGHEST}, the lower one first', param, ctx)
            found.update(range(first, last + 1))
        return tuple(sorted(found))


GRADES = Grades()


def comma_list(ctx: click.Context, param: click.Parameter, values: tuple[str, ...]) -> tuple[str, ...]:
    """Options that may be repeated or hold a comma list: ``--not-yet decimals,percents``. Skills have commas in their names."""
    return tuple(dict.fromkeys(word.strip() for value in values for word in value.split(",") if word.strip()))


def apply(options: list[Callable[..., Any]], command: Callable[..., Any]) -> Callable[..., Any]:
    """A command with options, shown in the order of the list."""
    for option in reversed(options):
        command = option(command)
    return command


def source_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Curriculum, scenario and seed."""
    return apply(
        [
            click.option("--curriculum", default="ccss", show_default=True, help="Whose standards and limits: ccss or england."),
            click.option(
                "--scenario",
                "scenario_name",
                metavar="FILE",
                default="ramp",
                show_default=True,
                help="What things are called: ramp, seeds, or a file.",
            ),
            click.option("--seed", type=click.IntRange(min=0), default=1, show_default=True, help="Another number, another draw."),
        ],
        command,
    )


def out_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """The folder for files, and whether to replace what is there."""
    return apply(
        [
            click.option(
                "--out", metavar="FOLDER", required=True, type=click.Path(file_okay=False, path_type=Path), help="Where the files go."
            ),
            click.option("--force", is_flag=True, help="Replace files that exist."),
        ],
        command,
    )


def one_or_more_grades(grade: tuple[int, ...], grades: tuple[int, ...]) -> tuple[int, ...]:
    """The grades of ``--grade`` and ``--grades`` together.

    Raises:
        click.UsageError: neither was given, or both.
    """
    if grade and grades:
        raise click.UsageError("'--grade' and '--grades' both say for which grades. Give one of them.")
    both = tuple(sorted({*grade, *grades}))
    if not both:
        raise click.UsageError("Missing option '--grade' (such as --grade 4) or '--grades' (such as --grades 2-8).")
    return both
