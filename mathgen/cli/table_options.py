"""The argument TABLE and the options that answer a reader's questions, for every command that takes a table."""

from __future__ import annotations

import functools
import re
from collections.abc import Callable
from typing import Any

import click

from mathgen.trials.options import ReadOptions


class SetUpCounts(click.ParamType):
    """Colors and how many pins of each were set up: ``red=4,blue=3``."""

    name = "COLOR=N,..."

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> tuple[tuple[str, int], ...]:
        """Pairs of color and count, in the order given."""
        if isinstance(value, tuple):
            return value
        counts: dict[str, int] = {}
        for part in str(value).split(","):
            match = re.fullmatch(r"\s*([^=]*[^=\s])\s*[=:]\s*([0-9]{1,5})\s*", part)
            if match is None or int(match[2]) == 0:
                message = f'"{part.strip()}" is not a color and a count, such as red=4. Write: --set-up red=4,blue=3,gold=5'
                raise click.BadParameter(message, ctx, param)
            color = " ".join(match[1].split()).casefold()
            if counts.get(color, int(match[2])) != int(match[2]):
                self.fail(f'"{color}" is there twice, with {counts[color]} and with {match[2]}.', param, ctx)
            counts[color] = int(match[2])
        return tuple(counts.items())


_OPTIONS = (
    click.argument("table", metavar="TABLE"),
    click.option("--counts", type=click.Choice(["down", "standing"]), help="What the numbers count: pins knocked down or left standing."),
    click.option("--blank", type=click.Choice(["absent", "none"]), help="What a blank means: no result taken, or no pins."),
    click.option(
        "--set-up", "set_up", type=SetUpCounts(), default=(), help="How many pins of each color were set up: red=4,blue=3,gold=5."
    ),
    click.option(
        "--duplicates", type=click.Choice(["first", "last", "keep"]), help="Which of several results of one group and trial count."
    ),
    click.option("--sheet", metavar="NAME", help="The sheet of a workbook to read."),
    click.option("--ignore-totals", is_flag=True, help="Go on where the table's own totals do not match its counts."),
)


def table_argument_and_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Gives a command the argument TABLE (a file, or - for standard input) and the reading options.

    The command is called with ``table: str`` and ``reading: ReadOptions``.
    """

    @functools.wraps(command)
    def with_options(**given: Any) -> Any:
        reading = ReadOptions(
            counts=given.pop("counts"),
            blank=given.pop("blank"),
            set_up=given.pop("set_up"),
            duplicates=given.pop("duplicates"),
            sheet=given.pop("sheet"),
            ignore_totals=given.pop("ignore_totals"),
        )
        return command(reading=reading, **given)

    wrapped: Callable[..., Any] = with_options
    for option in reversed(_OPTIONS):
        wrapped = option(wrapped)
    return wrapped
