"""The command line: thin faces, one file a command, each loaded only when it is called."""

from __future__ import annotations

import atexit
import gc
import importlib
import sys
from difflib import get_close_matches
from functools import cache

import click

from mathgen import __version__
from mathgen.errors import MathgenError

# Name -> module in this folder (its command bears the same name as the module) and one line of help. The help stands here, so
# that `mathgen --help` need not load every command.
COMMANDS: dict[str, tuple[str, str]] = {
    "today": ("today", "Make worksheet, cards, page and keys for tomorrow, and one PDF to print."),
    "read": ("read", "Show how a results table is understood."),
    "worksheet": ("worksheet", "Make a worksheet and its proved answer key."),
    "cards": ("cards", "Make problem cards with an answer grid and a proved key."),
    "pick": ("pick", "Make a page on which pupils pick and answer cards."),
    "reprint": ("reprint", "Print a sheet again from its code, or from its key file."),
    "record": ("record", "Make blank recording sheets for the next try."),
    "bank": ("bank", "Write every kind of problem that a table can serve to a file."),
    "answer": ("answer", "Answer a pupil's own question about a table."),
    "check-answers": ("check_answers", "Judge typed answers against keys."),
    "list": ("listing", "Print the topics, standards or skills to choose from."),
}


# How much has to pile up before Python looks for garbage, as gc.set_threshold takes it.
SELDOM = (100_000, 50, 100)


@cache
def _without_looking_for_garbage() -> None:
    """Has Python look for garbage seldom, and not at the end.

    A command is over within seconds and needs nearly all that it loads until then: looking through it again and again takes a
    fifth of the time of a worksheet.
    """
    gc.set_threshold(*SELDOM)
    atexit.register(gc.freeze)


class LazyCommands(click.Group):
    """Loads a command's module only when that command is called; turns errors into messages and exit statuses."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """Every command, in the order of ``COMMANDS``."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of that name, or None."""
        if cmd_name not in COMMANDS:
            return None
        module, _ = COMMANDS[cmd_name]
        command = getattr(importlib.import_module(f"mathgen.cli.{module}"), module)
        assert isinstance(command, click.Command)
        return command

    def resolve_command(self, ctx: click.Context, args: list[str]) -> tuple[str | None, click.Command | None, list[str]]:
        """As click's; a command typed wrong gets its neighbor.

        Raises:
            click.UsageError: there is no such command.
        """
        if args and not args[0].startswith("-") and args[0] not in COMMANDS:
            near = get_close_matches(args[0], COMMANDS, n=1)
            hint = f" Did you mean '{near[0]}'?" if near else " mathgen --help names them."
            ctx.fail(f"No such command '{args[0]}'.{hint}")
        return super().resolve_command(ctx, args)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The list of commands, without loading them."""
        with formatter.section("Commands"):
            formatter.write_dl([(name, text) for name, (_, text) in COMMANDS.items()])

    def invoke(self, ctx: click.Context) -> object:
        """Runs the command. Faults end with status 1, open questions with status 3."""
        _without_looking_for_garbage()
        try:
            return super().invoke(ctx)
        except MathgenError as error:
            click.echo(str(error), err=True)
            sys.exit(error.exit_status)


@click.group(cls=LazyCommands)
@click.version_option(__version__, prog_name="mathgen")
def main() -> None:
    """Turns a class's results table into proved mathematics problems on paper.

    Exit status: 0 done as asked, 1 refused, 2 wrong usage, 3 needs an answer, 4 made with a change.
    """
