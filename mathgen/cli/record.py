"""``mathgen record``: blank sheets for the next try."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from mathgen.cli.common_options import out_options
from mathgen.errors import RequestFault
from mathgen.press.files import write_files
from mathgen.press.record_files import record_files
from mathgen.scenario.words import scenario
from mathgen.sheets.record import RecordPlan


def _names(text: str) -> tuple[str, ...]:
    return tuple(part.strip() for part in text.split(","))


@click.command()
@click.option("--groups", metavar="NAMES", required=True, help="Names of the groups, with commas: Owls,Herons,Finches. No pupils' names.")
@click.option("--colors", metavar="NAMES", help="The colors, with commas: red,blue,gold. Without: those of --set-up.")
@click.option("--set-up", "set_up", metavar="COUNTS", required=True, help="How many of each color are set up: red=4,blue=3,gold=5.")
@click.option("--trials", type=int, default=3, show_default=True, help="How many trials each group has.")
@click.option("--target", is_flag=True, help="A column for the color that is called before the roll.")
@click.option("--spaces", is_flag=True, help="A column for the space between pins.")
@click.option("--paper", type=click.Choice(["letter", "a4"]), default="letter", show_default=True, help="Size of the paper.")
@click.option("--large-print", is_flag=True, help="18 point and up.")
@click.option("--scenario", "scenario_name", metavar="FILE", default="ramp", show_default=True, help="What things are called.")
@out_options
def record(groups: str, colors: str | None, set_up: str, scenario_name: str, out: Path, force: bool, **wishes: Any) -> None:
    """Make blank recording sheets: record.pdf to write on, and record.xlsx to type into, which mathgen read takes as it is.

    The PDF has a page for the class with the rules to agree on, and a slip for each group to carry to the ramp.
    """
    plan = RecordPlan(_names(groups), _counts(set_up, None if colors is None else _names(colors)), **wishes)
    contents = {out / name: content for name, content in record_files(plan, scenario(scenario_name)).items()}
    write_files(contents, force)
    for path in contents:
        click.echo(path)


def _counts(set_up: str, colors: tuple[str, ...] | None) -> tuple[tuple[str, int], ...]:
    """The colors with their counts, in the order of the colors.

    Raises:
        RequestFault: a part that is no color=number, or colors and counts that do not go together; all faults at once.
    """
    faults: list[str] = []
    counts: dict[str, int] = {}
    for part in _names(set_up):
        color, sign, number = part.partition("=")
        color, number = color.strip().casefold(), number.strip()
        if not (color and sign and number.isdecimal() and len(number) < 4):
            faults.append(f'--set-up: found "{part}"; expected a color and a whole number, such as red=4.')
        elif color in counts:
            faults.append(f"--set-up: {color} is there twice.")
        else:
            counts[color] = int(number)
    named = list(counts) if colors is None else [color.casefold() for color in colors]
    if not faults:
        faults += [f"--set-up: no count for {color}, which --colors names." for color in named if color not in counts]
        faults += [f"--set-up: a count for {color}, which --colors does not name." for color in counts if color not in named]
    if faults:
        raise RequestFault("\n".join(faults))
    return tuple((color, counts[color]) for color in named)
