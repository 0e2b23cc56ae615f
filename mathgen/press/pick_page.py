"""The pick-a-card page: one HTML file with everything in it, which asks nothing of any network."""

from __future__ import annotations

import json
from base64 import b64encode
from functools import cache
from hashlib import sha256
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.grades.curriculum import load
from mathgen.places import templates_folder
from mathgen.press.figure_svg import data_url, figure_svg
from mathgen.press.signs import check_labels, said, unprintable, without
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words, table_names
from mathgen.sheets.pick import pick_data
from mathgen.trials.table import TrialTable


def pick_page(table: TrialTable, plan: DeckPlan, scenario_name: str = "ramp") -> tuple[bytes, tuple[str, ...]]:
    """The page of a deck, and what was done otherwise than asked.

    Raises:
        RequestFault: the plan cannot be met, or a name in the table cannot be shown.
    """
    return page_of_deck(make_deck(table, plan, scenario_name), table, scenario_name)


def page_of_deck(deck: ChosenDeck, table: TrialTable, scenario_name: str = "ramp") -> tuple[bytes, tuple[str, ...]]:
    """The page of a deck that was chosen, such as one that lies on paper, too; and what was done otherwise than asked.

    Raises:
        RequestFault: a name in the table cannot be shown.
    """
    plan = deck.plan
    words = page_words(scenario(scenario_name), load(plan.curriculum), table, min(plan.grades))
    signs = unprintable([words, table_names(table, words)])
    check_labels(table.groups, signs)
    check_labels(map(str, table.trials), signs)
    check_labels(table.colors, signs)
    return page_of(without(pick_data(deck, table, words), signs)), (*deck.changes, *said(signs))


def page_of(data: dict[str, Any]) -> bytes:
    """The HTML of a deck's plain data, as UTF-8."""
    cards = [
        card | {name: _picture(card[name]) for name in ("graph", "figure", "worked") if card[name] is not None} for card in data["cards"]
    ]
    style, script = _source("pick.css"), _source("judge.js") + _source("pick.js")
    allowed = f"script-src '{_digest(script)}'; style-src '{_digest(style)}'; img-src data:"
    policy = f"default-src 'none'; {allowed}; base-uri 'none'; form-action 'none'"
    html = (
        _environment()
        .get_template("pick.html.j2")
        .render(
            lang=data["lang"],
            title=data["title"],
            policy=policy,
            style=Markup(style),
            script=Markup(script),
            deck=Markup(_as_script_data(data | {"cards": cards})),
        )
    )
    return html.encode()


def _picture(figure: dict[str, Any]) -> dict[str, str]:
    return {"address": data_url(figure_svg(figure)), "alt": str(figure["alt"])}


def _as_script_data(data: dict[str, Any]) -> str:
    """JSON that can stand in a script element: no sign in it can end the element or start a comment."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
    return text.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")


def _digest(source: str) -> str:
    """A source's hash as a content security policy names it."""
    return f"sha256-{b64encode(sha256(source.encode()).digest()).decode()}"


@cache
def _source(name: str) -> str:
    return (templates_folder() / "pages" / name).read_text(encoding="utf-8")


@cache
def _environment() -> Environment:
    return Environment(loader=FileSystemLoader(templates_folder() / "pages"), autoescape=True, undefined=StrictUndefined)
