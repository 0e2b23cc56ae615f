"""``mathgen list``: what --topic, --standard and --skill accept."""

from __future__ import annotations

import click

from mathgen.cli.usage import WholeCommand
from mathgen.grades.curriculum import load


@click.command("list", cls=WholeCommand)
@click.argument("what", type=click.Choice(["topics", "standards", "skills"]))
@click.option("--curriculum", default="ccss", show_default=True, help="ccss or england.")
def listing(what: str, curriculum: str) -> None:
    """Print the topics, standards or skills that a curriculum offers, one a line."""
    offered = load(curriculum)
    words = {"topics": offered.topics, "standards": offered.standards, "skills": offered.all_skills}[what]()
    click.echo("\n".join(words))
