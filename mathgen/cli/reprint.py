"""``mathgen reprint``: a sheet again, from its code and the same table, or a sheet or cards from their key file."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import click

from mathgen import __version__
from mathgen.bank.code import NOT_IN_A_CODE, RELEASE, decode, table_digest
from mathgen.cli.common_options import out_options
from mathgen.cli.table_options import reading_options
from mathgen.cli.usage import WholeCommand
from mathgen.cli.worksheet import MADE_WITH_A_CHANGE
from mathgen.errors import RequestFault
from mathgen.press.files import write_files
from mathgen.press.sheet_files import files_from_key, sheet_files
from mathgen.sheets.key_file import CHANGED
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table


@click.command(cls=WholeCommand)
@click.argument("code", metavar="CODE")
@click.argument("table", metavar="[TABLE]", required=False)
@reading_options
@click.option("--copies", type=click.IntRange(1, 60), help="How many times each form is printed. Without: once, or as the key file has it.")
@out_options
def reprint(code: str, table: str | None, reading: ReadOptions, copies: int | None, out: Path, force: bool) -> None:
    """Print a sheet again from its CODE and the TABLE it was made from.

    CODE stands at the foot of each page. Where a key file (grade4-key.json, grade4-cards-key.json) is given instead of a code, TABLE is
    not needed; given all the same, it must be the sheet's own. Exit status 4: printed, but the key file was changed after it was
    checked.
    """
    if Path(code).suffix == ".json":
        contents, changed = files_from_key(Path(code), None if table is None else read_table(table, reading).table, copies)
    else:
        if table is None:
            decode(code)  # what no code is, or the mark of cards, is told before a table is asked for
            raise click.UsageError("Missing argument 'TABLE': the table that the sheet was made from.")
        contents, changed = _from_code(code, table, reading, copies or 1), False
    paths = {out / name: content for name, content in contents.items()}
    write_files(paths, force)
    for path in paths:
        click.echo(path)
    if changed:
        click.echo(f"{code}: {CHANGED} Its key says so in place of how the answers were checked.", err=True)
        sys.exit(MADE_WITH_A_CHANGE)


def _from_code(code: str, table: str, reading: ReadOptions, copies: int) -> dict[str, bytes]:
    decoded = decode(code)
    if decoded.release != RELEASE:
        raise RequestFault(
            f"This sheet was made by release {decoded.release} of the sheets; this program ({__version__}) makes release {RELEASE}, "
            "which would draw other problems. Reprint it from its key file: mathgen reprint grade...-key.json --out FOLDER."
        )
    result = read_table(table, reading)
    if table_digest(result.table) != decoded.digest:
        raise RequestFault(
            "This table is not the one that the sheet was made from: some count, label or order differs. Give the table as it was "
            "that day, or reprint from the key file: mathgen reprint grade...-key.json --out FOLDER."
        )
    if decoded.plan is None:
        raise RequestFault(
            f"A code has no room for all that this sheet was made with. Its key file has: {NOT_IN_A_CODE}. "
            "Reprint it from there: mathgen reprint grade...-key.json --out FOLDER."
        )
    return sheet_files(result.table, replace(decoded.plan, copies=copies), decoded.scenario, result.notes).contents
