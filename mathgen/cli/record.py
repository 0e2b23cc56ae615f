"""``mathgen record``: blank sheets for the next try."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from mathgen.cli.common_options import out_options
from mathgen.cli.usage import WholeCommand
from mathgen.press.files import check_free, write_files
from mathgen.press.record_files import record_files
from mathgen.scenario.words import scenario
from mathgen.sheets.record_plan import HOW, plan_of


@click.command(cls=WholeCommand)
@click.option("--groups", metavar="NAMES", required=True, help="Names of the groups, with commas: Owls,Herons,Finches. No pupils' names.")
@click.option("--colors", metavar="NAMES", help="The colors, with commas. Without: those of --set-up. Counts may stand here, too.")
@click.option("--set-up", "set_up", metavar="COUNTS", help="How many of each color are set up: red=4,blue=3,gold=5.")
@click.option("--trials", type=int, default=3, show_default=True, help="How many trials each group has.")
@click.option("--target", is_flag=True, help="A column for the color that is called before the roll.")
@click.option("--spaces", is_flag=True, help="A column for the space between pins.")
@click.option("--paper", type=click.Choice(["letter", "a4"]), default="letter", show_default=True, help="Size of the paper.")
@click.option("--large-print", is_flag=True, help="18 point and up.")
@click.option("--scenario", "scenario_name", metavar="FILE", default="ramp", show_default=True, help="What things are called.")
@out_options
def record(groups: str, colors: str | None, set_up: str | None, scenario_name: str, out: Path, force: bool, **wishes: Any) -> None:
    """Make blank recording sheets: record.pdf to write on, and record.xlsx to type into, which mathgen read takes as it is.

    The PDF has a page for the class with the rules to agree on, and a slip for each group to carry to the ramp.
    """
    if colors is None and set_up is None:
        raise click.UsageError(f"Missing option '--set-up': the colors, and how many of each are set up. {HOW}")
    plan = plan_of(groups, colors, set_up, **wishes)
    check_free([out / name for name in ("record.pdf", "record.xlsx")], force)
    contents = {out / name: content for name, content in record_files(plan, scenario(scenario_name)).items()}
    write_files(contents, force)
    for path in contents:
        click.echo(path)
