"""A command that tells every wrong option at once."""

from __future__ import annotations

import click
from click.core import iter_params_for_processing


class WholeCommand(click.Command):
    """Where options are wrong, says so of each of them; click's own command stops at the first."""

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        """As click's.

        Raises:
            click.UsageError: one for all faults, a line each.
        """
        given = list(args)
        try:
            return super().parse_args(ctx, args)
        except click.UsageError:
            faults = self._faults(ctx, given)
            if len(faults) < 2:
                raise
        raise click.UsageError("\n".join([f"{len(faults)} things are wrong.", *(f"  - {fault}" for fault in faults)]), ctx)

    def _faults(self, ctx: click.Context, args: list[str]) -> list[str]:
        """What is wrong with each option by itself; none where an option is not known at all."""
        try:
            values, _, order = self.make_parser(ctx).parse_args(args)
        except click.UsageError:
            return []
        faults = []
        for param in iter_params_for_processing(order, self.get_params(ctx)):
            try:
                param.handle_parse_result(ctx, values, [])
            except click.UsageError as fault:
                faults.append(fault.format_message())
        return faults
