"""``mathgen pick``: the pick-a-card page."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.deck_wishes import MOST
from mathgen.cli.before_work import WishCommand, check_deck
from mathgen.cli.common_options import GRADES, comma_list, one_or_more_grades, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.worksheet import MADE_WITH_A_CHANGE
from mathgen.press.files import write_files
from mathgen.press.pick_page import pick_page
from mathgen.scenario.words import scenario
from mathgen.sheets.key_file import grades_in_name
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.shown_back import understood


@click.command(cls=WishCommand)
@table_argument_and_options
@click.option("--grade", type=GRADES, default=(), help="One grade, such as 4.")
@click.option("--grades", type=GRADES, default=(), help="Several grades, such as 3-5, mixed in one deck.")
@click.option("--count", type=click.IntRange(1, MOST), default=24, show_default=True, help="How many cards.")
@click.option("--level", type=click.Choice(["support", "on grade", "challenge"]), help="Only problems of this level.")
@click.option("--topic", "topics", multiple=True, callback=comma_list, help="Only this topic (see mathgen list topics).")
@click.option("--standard", "standards", multiple=True, callback=comma_list, help="Only this standard (see mathgen list standards).")
@click.option("--skill", "skills", multiple=True, help="Only this skill (see mathgen list skills).")
@click.option("--not-yet", "not_yet", multiple=True, callback=comma_list, help="Topics not taught so far: decimals,percents.")
@source_options
@click.option("--out", metavar="FILE", type=click.Path(path_type=Path), required=True, help="The page: FILE.html, or a folder for it.")
@click.option("--force", is_flag=True, help="Replace a file that exists.")
def pick(
    table: str,
    reading: ReadOptions,
    grade: tuple[int, ...],
    grades: tuple[int, ...],
    scenario_name: str,
    out: Path,
    force: bool,
    **wishes: Any,
) -> None:
    """Make a pick-a-card page from TABLE (a file, or - for standard input): one HTML file that needs no network.

    Exit status 4: made, but with a change that is said here.
    """
    plan = DeckPlan(one_or_more_grades(grade, grades), **wishes)
    out = _page_path(out, plan.grades)
    check_deck(plan, [out], force)
    result = read_table(table, reading)
    words = scenario(scenario_name)
    click.echo(understood(result, f"{words.items} {words.after_noun['down']}"), err=True)
    page, changes = pick_page(result.table, plan, scenario_name)
    write_files({out: page}, force)
    for change in changes:
        click.echo(change, err=True)
    click.echo(out)
    if changes:
        sys.exit(MADE_WITH_A_CHANGE)


def _page_path(out: Path, grades: tuple[int, ...]) -> Path:
    """Where the page is written: into a folder under the name that ``today`` gives it; a name without an ending gets one."""
    if out.is_dir():
        return out / f"{grades_in_name(grades)}-pick.html"
    return out if out.suffix else out.with_name(f"{out.name}.html")
