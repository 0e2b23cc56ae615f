"""``mathgen read``: how a table is understood, in plain words or as JSON."""

from __future__ import annotations

import json
import sys

import click

from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.usage import WholeCommand
from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import ReadResult, read_table
from mathgen.trials.shown_back import as_json, understood


@click.command(cls=WholeCommand)
@table_argument_and_options
@click.option("--json", "json_wanted", is_flag=True, help="Print JSON for programs.")
def read(table: str, reading: ReadOptions, json_wanted: bool) -> None:
    """Show how TABLE (a file, or - for standard input) is understood, with every guess named.

    Faults and questions come all at once; each question names the option that answers it.
    """
    if not json_wanted:
        click.echo(understood(read_table(table, reading)))
        return
    outcome: ReadResult | TableFaults | TableQuestions
    try:
        outcome, status = read_table(table, reading), 0
    except (TableFaults, TableQuestions) as error:
        outcome, status = error, error.exit_status
    # UTF-8 whatever the terminal's own encoding, so that names survive a pipe.
    sys.stdout.buffer.write((json.dumps(as_json(outcome), ensure_ascii=False, indent=2) + "\n").encode())
    sys.stdout.flush()
    sys.exit(status)
