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
from mathgen.cli.before_work import WishCommand, check_sheets
from mathgen.cli.common_options import GRADES, comma_list, one_or_more_grades, out_options, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.worksheet import MADE_WITH_A_CHANGE
from mathgen.grades.curriculum import load
from mathgen.press.files import write_files
from mathgen.press.today_files import TodayFiles, today_files, today_names
from mathgen.scenario.words import scenario
from mathgen.sheets.today_words import served_lines, spans_line
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.shown_back import understood

_NOTES = 7  # guesses about the table that are told; all has to stand on one screen


@click.command(cls=WishCommand)
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
    plans = [SheetPlan(grade=one, **wishes) for one in wanted]
    check_sheets(plans, [out / name for one in wanted for name in today_names(one)], force)
    result = read_table(table, reading)
    words = scenario(scenario_name)
    click.echo(understood(result, f"{words.items} {words.after_noun['down']}", _NOTES), err=True)
    desk, made = Desk(result.table, words), dict[int, TodayFiles]()
    for one, plan in zip(wanted, plans, strict=True):
        made[one] = today_files(result.table, plan, cards, scenario_name, result.notes)
        found = served_skills(desk, load(plan.curriculum), one, plan.seed)
        click.echo("\n".join([*served_lines(one, found, brief=len(wanted) > 1)]), err=True)
        for change in made[one].changes:
            click.echo(f"grade {one}, {change}", err=True)
    write_files({out / name: content for files in made.values() for name, content in files.contents.items()}, force)
    click.echo("To print on both sides of the paper, and the cards on a screen; each part is in the folder by itself, too:", err=True)
    for one, files in made.items():
        click.echo(out / f"grade{one}-print.pdf")
        click.echo(f"  {spans_line(files.spans)}", err=True)
        click.echo(out / f"grade{one}-pick.html")
    if any(files.changes for files in made.values()):
        sys.exit(MADE_WITH_A_CHANGE)
