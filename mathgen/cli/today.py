"""``mathgen today``: one command for tomorrow morning."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from mathgen.bank.deck_wishes import MOST
from mathgen.bank.desk import Desk
from mathgen.bank.plan import SheetPlan
from mathgen.bank.served import served_skills
from mathgen.cli.common_options import GRADES, comma_list, one_or_more_grades, out_options, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.worksheet import MADE_WITH_A_CHANGE
from mathgen.grades.curriculum import load
from mathgen.press.files import write_files
from mathgen.press.today_files import today_files
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.shown_back import understood

_SHOWN = 4  # skills that are named as not served; the rest is counted


@click.command()
@table_argument_and_options
@click.option("--grade", type=GRADES, default=(), help="One grade, such as 4.")
@click.option("--grades", type=GRADES, default=(), help="Several grades, such as 2-8: a set each.")
@click.option("--cards", type=click.IntRange(1, MOST), default=12, show_default=True, help="How many cards.")
@click.option("--not-yet", "not_yet", multiple=True, callback=comma_list, help="Topics not taught so far: decimals,percents.")
@click.option("--paper", type=click.Choice(["letter", "a4"]), default="letter", show_default=True, help="Size of the paper.")
@click.option(
    "--layout", type=click.Choice(["more-room", "save-paper"]), default="more-room", show_default=True, help="Room to work, or fewer pages."
)
@click.option("--large-print", is_flag=True, help="18 point and up.")
@source_options
@out_options
def today(
    table: str,
    reading: ReadOptions,
    grade: tuple[int, ...],
    grades: tuple[int, ...],
    cards: int,
    scenario_name: str,
    out: Path,
    force: bool,
    **wishes: Any,
) -> None:
    """Make all that tomorrow's lesson needs from TABLE (a file, or - for standard input).

    For each grade FOLDER gets worksheet, answer key, problem cards with their key, the pick-a-card page grade4-pick.html, and
    grade4-print.pdf, which holds all of them in print order. Exit status 4: made, but with a change that is said here and in the keys.
    """
    wanted = one_or_more_grades(grade, grades)
    result = read_table(table, reading)
    words = scenario(scenario_name)
    click.echo(understood(result, f"{words.items} {words.after_noun['down']}"), err=True)
    desk, contents, changed = Desk(result.table, words), dict[Path, bytes](), False
    for one in wanted:
        plan = SheetPlan(grade=one, **wishes)
        made = today_files(result.table, plan, cards, scenario_name, result.notes)
        contents |= {out / name: content for name, content in made.contents.items()}
        click.echo(_served(desk, plan), err=True)
        for change in made.changes:
            click.echo(f"grade {one}, {change}", err=True)
        changed = changed or bool(made.changes)
    write_files(contents, force)
    for one in wanted:
        click.echo(out / f"grade{one}-print.pdf")
        click.echo("  all of it to print, on both sides of the paper; each part is there by itself, too")
        click.echo(out / f"grade{one}-pick.html")
        click.echo("  the cards on a screen")
    if changed:
        sys.exit(MADE_WITH_A_CHANGE)


def _served(desk: Desk, plan: SheetPlan) -> str:
    """One or two lines: what this table serves in a grade, and what not."""
    found = served_skills(desk, load(plan.curriculum), plan.grade, plan.seed)
    count = len(found.served) + len(found.missing)
    line = f"grade {plan.grade}: this table has problems for {len(found.served)} of {count} skills."
    if not found.missing:
        return line
    named = [f"{skill} ({why})" for skill, why in found.missing[:_SHOWN]]
    more = len(found.missing) - len(named)
    return f"{line} Not for: {'; '.join(named)}{f'; and {more} more' if more else ''}."
