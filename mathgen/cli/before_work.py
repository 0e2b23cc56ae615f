"""What stands against a command, found out before it works or says anything: all of it at once, and alone."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import partial
from pathlib import Path
from typing import Any

import click

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.deck_wishes import check_deck_plan
from mathgen.bank.length import wanted_count
from mathgen.bank.plan import SheetPlan
from mathgen.bank.wishes import settled
from mathgen.cli.usage import WholeCommand
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.press.files import check_free


def check_sheets(plans: Iterable[SheetPlan], paths: Iterable[Path], force: bool) -> None:
    """Nothing where sheets can be made as asked, and their files written.

    Raises:
        RequestFault: words that the curriculum does not know, a length that no sheet has, files that exist already; a line each.
    """
    checks: list[Callable[[], Any]] = []
    for plan in plans:
        checks += [partial(_settled, plan), partial(wanted_count, plan)]
    _all([*checks, partial(check_free, paths, force)])


def check_deck(plan: DeckPlan, paths: Iterable[Path], force: bool) -> None:
    """The same for a deck of cards.

    Raises:
        RequestFault: as ``check_deck_plan``, or files that exist already.
    """
    _all([lambda: check_deck_plan(plan, load(plan.curriculum)), partial(check_free, paths, force)])


class WishCommand(WholeCommand):
    """A command with a teacher's wishes: wrong words are told along with wrong options."""

    def _faults(self, ctx: click.Context, args: list[str]) -> list[str]:
        faults = super()._faults(ctx, list(args))
        try:
            values, _, _ = self.make_parser(ctx).parse_args(args)
        except click.UsageError:
            return faults
        topics, not_yet, standards = (
            tuple(word.strip() for text in values.get(name) or () for word in text.split(",") if word.strip())
            for name in ("topics", "not_yet", "standards")
        )
        skills = tuple(values.get("skills") or ())
        wishes = SheetPlan(4, topics=topics, not_yet=not_yet, standards=standards, skills=skills)
        try:
            settled(wishes, load(values.get("curriculum") or "ccss"))
        except RequestFault as fault:
            faults.extend(str(fault).splitlines())
        return faults


def _settled(plan: SheetPlan) -> SheetPlan:
    return settled(plan, load(plan.curriculum))


def _all(checks: Iterable[Callable[[], Any]]) -> None:
    faults: dict[str, None] = {}
    for check in checks:
        try:
            check()
        except RequestFault as fault:
            faults.update(dict.fromkeys(str(fault).splitlines()))
    if faults:
        raise RequestFault("\n".join(faults))
