"""``mathgen bank``: every proved problem of a table, one a line."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from mathgen.bank.build import Report, build_bank
from mathgen.bank.desk import Desk
from mathgen.cli.common_options import GRADES, source_options
from mathgen.cli.table_options import table_argument_and_options
from mathgen.cli.usage import WholeCommand
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.press.bank_file import bank_file
from mathgen.press.files import check_free
from mathgen.scenario.words import scenario
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table


@click.command(cls=WholeCommand)
@table_argument_and_options
@click.option("--grade", "--grades", "grades", type=GRADES, required=True, help="Which grades, such as 2-7.")
@click.option("--per-model", type=click.IntRange(min=1), default=40, show_default=True, help="At most so many of each kind and grade.")
@source_options
@click.option(
    "--out", required=True, type=click.Path(dir_okay=False, path_type=Path), metavar="FILE", help="A file ending in .jsonl or .csv."
)
@click.option("--force", is_flag=True, help="Replace a file that exists.")
def bank(
    table: str,
    reading: ReadOptions,
    grades: tuple[int, ...],
    per_model: int,
    curriculum: str,
    scenario_name: str,
    seed: int,
    out: Path,
    force: bool,
) -> None:
    """Write every kind of problem that TABLE can serve to a file, each with its key and proof."""
    standards = load(curriculum)
    check_free([out], force)
    result = read_table(table, reading)
    desk = Desk(result.table, scenario(scenario_name))
    report = Report()
    problems = build_bank(desk, standards, grades, seed, per_model, report)
    models = problem_models(result.table.kind)
    most = per_model * sum(standards.entry(model.skill, grade) is not None for grade in grades for model in models)
    with (
        bank_file(out, force) as keep,
        click.progressbar(problems, length=most, label="problems", file=sys.stderr, update_min_steps=50) as going,
    ):
        for problem in going:
            keep(problem)
    click.echo(str(report), err=True)
    click.echo(out)
