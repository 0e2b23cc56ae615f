"""The argument TABLE and the options that answer a reader's questions, for every command that takes a table."""

from __future__ import annotations

import functools
import re
from collections.abc import Callable
from typing import Any

import click

from mathgen.trials.options import ReadOptions


def _set_up_counts(ctx: click.Context, param: click.Parameter, value: str | None) -> tuple[tuple[str, int], ...]:
    """Colors and how many pins of each were set up, from ``red=4,blue=3``, in the order given."""
    counts: dict[str, int] = {}
    for part in value.split(",") if value is not None else ():
        match = re.fullmatch(r"\s*([^=]*[^=\s])\s*[=:]\s*([0-9]{1,5})\s*", part)
        if match is None or int(match[2]) == 0:
            message = f'"{part.strip()}" is not a color and a count, such as red=4. Write: --set-up red=4,blue=3,gold=5'
            raise click.BadParameter(message, ctx, param)
        color, count = " ".join(match[1].split()).casefold(), int(match[2])
        if counts.setdefault(color, count) != count:
            raise click.BadParameter(f'"{color}" is there twice, with {counts[color]} and with {count}.', ctx, param)
    return tuple(counts.items())


_OPTIONS = (
    click.option("--counts", type=click.Choice(["down", "standing"]), help="What the numbers count: pins knocked down or left standing."),
    click.option("--blank", type=click.Choice(["absent", "none"]), help="What a blank means: no result taken, or no pins."),
    click.option(
        "--set-up",
        "set_up",
        metavar="COLOR=N,...",
        callback=_set_up_counts,
        help="How many pins of each color were set up: red=4,blue=3,gold=5.",
    ),
    click.option(
        "--duplicates", type=click.Choice(["first", "last", "keep"]), help="Which of several results of one group and trial count."
    ),
    click.option("--sheet", metavar="NAME", help="The sheet of a workbook to read."),
    click.option("--price", type=click.Choice(["cents", "dollars"]), help="What the bare numbers of a price list are."),
    click.option("--ignore-totals", is_flag=True, help="Go on where the table's own totals do not match its counts."),
)


def table_argument_and_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Gives a command the argument TABLE (a file, or - for standard input) and the reading options.

    The command is called with ``table: str`` and ``reading: ReadOptions``.
    """
    return click.argument("table", metavar="TABLE")(reading_options(command))


def reading_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Gives a command the reading options alone, where TABLE may be left out; it is called with ``reading: ReadOptions``."""

    @functools.wraps(command)
    def with_options(**given: Any) -> Any:
        reading = ReadOptions(
            counts=given.pop("counts"),
            blank=given.pop("blank"),
            set_up=given.pop("set_up"),
            duplicates=given.pop("duplicates"),
            sheet=given.pop("sheet"),
            ignore_totals=given.pop("ignore_totals"),
            scenario=given.get("scenario_name"),
            price=given.pop("price"),
        )
        return command(reading=reading, **given)

    wrapped: Callable[..., Any] = with_options
    for option in reversed(_OPTIONS):
        wrapped = option(wrapped)
    return wrapped
