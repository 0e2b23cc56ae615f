"""``mathgen worksheet``: a sheet and its answer key for each grade asked for."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from mathgen.bank.length import MOST_PROBLEMS
from mathgen.bank.plan import SheetPlan
from mathgen.cli.before_work import WishCommand, check_sheets
from mathgen.cli.common_options import GRADES, comma_list, one_or_more_grades, out_options, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.errors import RequestFault
from mathgen.press.files import write_files
from mathgen.press.sheet_files import sheet_files, sheet_names, story_files
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.shown_back import understood

MADE_WITH_A_CHANGE = 4


@click.command(cls=WishCommand)
@table_argument_and_options
@click.option("--grade", type=GRADES, default=(), help="One grade, such as 4.")
@click.option("--grades", type=GRADES, default=(), help="Several grades, such as 2-8: a sheet each.")
@click.option("--count", type=click.IntRange(1, MOST_PROBLEMS), help="How many problems.")
@click.option("--pages", type=click.IntRange(1, 4), help="How many sides of paper.")
@click.option("--minutes", type=click.IntRange(min=1), help="How much time the sheet may take.")
@click.option("--level", type=click.Choice(["support", "on grade", "challenge"]), help="Only problems of this level.")
@click.option("--topic", "topics", multiple=True, callback=comma_list, help="Only this topic (see mathgen list topics).")
@click.option("--standard", "standards", multiple=True, callback=comma_list, help="Only this standard (see mathgen list standards).")
@click.option("--skill", "skills", multiple=True, help="Only this skill (see mathgen list skills).")
@click.option("--not-yet", "not_yet", multiple=True, callback=comma_list, help="Topics not taught so far: decimals,percents.")
@click.option("--forms", type=click.IntRange(1, 8), default=1, show_default=True, help="Parallel forms with other numbers.")
@click.option("--each-group", is_flag=True, help="A form for every group, on its own trials; class data where they are too thin.")
@click.option("--copies", type=click.IntRange(1, 60), default=1, show_default=True, help="How many times each form is in the PDF.")
@click.option("--tiers", is_flag=True, help="Forms A, B, C at three levels, number by number of the same standard.")
@click.option("--same-story", type=GRADES, default=(), help="Grades, such as 3,4,6: each number about the same groups and trials on all.")
@click.option("--choices", is_flag=True, help="Answers to choose from; each wrong one is a likely mistake.")
@click.option("--paper", type=click.Choice(["letter", "a4"]), default="letter", show_default=True, help="Size of the paper.")
@click.option(
    "--layout", type=click.Choice(["more-room", "save-paper"]), default="more-room", show_default=True, help="Room to work, or fewer pages."
)
@click.option("--large-print", is_flag=True, help="18 point and up.")
@source_options
@out_options
def worksheet(
    table: str,
    reading: ReadOptions,
    grade: tuple[int, ...],
    grades: tuple[int, ...],
    scenario_name: str,
    out: Path,
    force: bool,
    **wishes: Any,
) -> None:
    """Make a worksheet and its proved answer key from TABLE (a file, or - for standard input).

    For each grade FOLDER gets grade4-worksheet.pdf, grade4-key.pdf and grade4-key.json. Exit status 4: made, but with a change
    that is said here and in the key.
    """
    story: tuple[int, ...] = wishes["same_story"]
    if story and (grade or grades):
        raise RequestFault("--same-story names the grades itself. Leave out --grade and --grades.")
    wanted = story or one_or_more_grades(grade, grades)
    plans = [SheetPlan(grade=one, **wishes) for one in wanted]
    check_sheets(plans, [out / name for one in wanted for name in sheet_names(one)], force)
    result = read_table(table, reading)
    words = scenario(scenario_name)
    click.echo(understood(result, f"{words.items} {words.after_noun['down']}"), err=True)
    contents: dict[Path, bytes] = {}
    changed = False
    if story:
        sheets = story_files(result.table, plans[0], scenario_name, result.notes)
    else:
        sheets = [sheet_files(result.table, plan, scenario_name, result.notes) for plan in plans]
    for one, made in zip(wanted, sheets, strict=True):
        contents |= {out / name: content for name, content in made.contents.items()}
        for change in made.changes:
            click.echo(f"grade {one}: {change}", err=True)
        changed = changed or bool(made.changes)
    write_files(contents, force)
    for path in contents:
        click.echo(path)
    if changed:
        sys.exit(MADE_WITH_A_CHANGE)
