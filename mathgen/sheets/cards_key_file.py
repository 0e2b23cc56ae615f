"""The key file of a deck: all that reprinting and marking need, as JSON."""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import Any

from mathgen import __version__
from mathgen.bank.code import RELEASE, table_digest
from mathgen.bank.deck_plan import ChosenDeck
from mathgen.bank.line import as_line
from mathgen.sheets.cards import CardLook
from mathgen.sheets.key_file import FORMAT, content_digest
from mathgen.trials.table import TrialTable


def cards_key_file(
    deck: ChosenDeck,
    table: TrialTable,
    scenario: str,
    notes: tuple[str, ...],
    look: CardLook,
    cards: dict[str, Any],
    key: dict[str, Any],
) -> bytes:
    """The key file's bytes.

    Args:
        deck: the cards.
        table: whose rows the deck was made from.
        scenario: name of the words used.
        notes: what was guessed while reading the table.
        look: how the cards are printed.
        cards: the pupils' pages as plain data, from which they can be printed again.
        key: the teacher's pages likewise.
    """
    codes = {card["number"]: card["code"] for card in cards["cards"]}
    content: dict[str, Any] = {
        "format": FORMAT,
        "kind": "cards",
        "mark": deck.mark,
        "program": __version__,
        "release": RELEASE,
        "table_digest": table_digest(table),
        "scenario": scenario,
        "plan": asdict(deck.plan),
        "look": look._asdict(),
        "changes": list(deck.changes),
        "notes": list(notes),
        "cards": [{"number": card.number, "code": codes[card.number], **as_line(card.problem)} for card in deck.cards],
        "sets": [{"first": one.first, "last": one.last, "line": one.line} for one in deck.sets],
        "pages": {"cards": cards, "key": key},
    }
    # The digest is taken as the file will be read: tuples have become lists.
    content["digest"] = content_digest(json.loads(json.dumps(content)))
    return (json.dumps(content, ensure_ascii=False, indent=1) + "\n").encode()
