"""``mathgen cards``: a deck of problem cards with answer grid and key."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.deck_wishes import MOST
from mathgen.cli.before_work import WishCommand, check_deck
from mathgen.cli.common_options import GRADES, comma_list, one_or_more_grades, out_options, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.worksheet import MADE_WITH_A_CHANGE
from mathgen.press.card_files import card_files, card_names
from mathgen.press.files import write_files
from mathgen.scenario.words import scenario
from mathgen.sheets.cards import CardLook
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.shown_back import understood


@click.command(cls=WishCommand)
@table_argument_and_options
@click.option("--grade", type=GRADES, default=(), help="One grade, such as 4.")
@click.option("--grades", type=GRADES, default=(), help="Several grades, such as 3-5, mixed in one deck.")
@click.option("--count", type=click.IntRange(1, MOST), default=24, show_default=True, help="How many cards.")
@click.option("--per-page", type=click.Choice(["4", "6", "8"]), default="6", show_default=True, help="How many cards on a page.")
@click.option(
    "--backs", type=click.Choice(["blank", "answers"]), default="blank", show_default=True, help="What is on the backs of the cards."
)
@click.option(
    "--duplex", type=click.Choice(["long", "short"]), default="long", show_default=True, help="The edge on which your printer turns paper."
)
@click.option("--level", type=click.Choice(["support", "on grade", "challenge"]), help="Only problems of this level.")
@click.option("--topic", "topics", multiple=True, callback=comma_list, help="Only this topic (see mathgen list topics).")
@click.option("--standard", "standards", multiple=True, callback=comma_list, help="Only this standard (see mathgen list standards).")
@click.option("--skill", "skills", multiple=True, help="Only this skill (see mathgen list skills).")
@click.option("--not-yet", "not_yet", multiple=True, callback=comma_list, help="Topics not taught so far: decimals,percents.")
@click.option("--paper", type=click.Choice(["letter", "a4"]), default="letter", show_default=True, help="Size of the paper.")
@click.option("--large-print", is_flag=True, help="18 point and up.")
@source_options
@out_options
def cards(
    table: str,
    reading: ReadOptions,
    grade: tuple[int, ...],
    grades: tuple[int, ...],
    scenario_name: str,
    per_page: str,
    backs: Any,
    duplex: Any,
    paper: Any,
    large_print: bool,
    out: Path,
    force: bool,
    **wishes: Any,
) -> None:
    """Make problem cards with an answer grid and a key from TABLE (a file, or - for standard input).

    FOLDER gets grade4-cards.pdf (cards, starter cards, results page, answer grid), grade4-cards-key.pdf (answers, contents page,
    worked steps) and grade4-cards-key.json. Exit status 4: made, but with a change that is said here and in the key.
    """
    wanted = one_or_more_grades(grade, grades)
    plan = DeckPlan(wanted, **wishes)
    check_deck(plan, [out / name for name in card_names(wanted)], force)
    result = read_table(table, reading)
    words = scenario(scenario_name)
    click.echo(understood(result, f"{words.items} {words.after_noun['down']}"), err=True)
    look = CardLook(int(per_page), backs, duplex, paper, large_print)
    made = card_files(result.table, plan, look, scenario_name, result.notes)
    contents = {out / name: content for name, content in made.contents.items()}
    write_files(contents, force)
    for change in made.changes:
        click.echo(change, err=True)
    for path in contents:
        click.echo(path)
    if made.changes:
        sys.exit(MADE_WITH_A_CHANGE)
