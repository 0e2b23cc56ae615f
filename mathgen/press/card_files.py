"""A deck with all its files: the pupils' pack, the key, and the key file."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import Any, NamedTuple

from mathgen.asks.expression import Ask
from mathgen.bank.deck import DeckMaker
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.press.pdf import page_count, pdf_and_told, pdf_bytes
from mathgen.press.signs import check_labels, said, unprintable, without
from mathgen.scenario.words import scenario
from mathgen.sheets.cards import PER_PAGE, CardLook, cards_data, pages_without_back
from mathgen.sheets.cards_key import cards_key_data
from mathgen.sheets.cards_key_file import cards_key_file
from mathgen.sheets.key_file import grades_in_name
from mathgen.sheets.page_words import page_words, table_names
from mathgen.trials.table import TrialTable

_ROUNDS = 12  # how often cards that have no room are chosen anew


class CardFiles(NamedTuple):
    """Files by name, the deck that is on them, pages of the pupils' pack that want an empty back, and what was changed."""

    contents: dict[str, bytes]
    deck: ChosenDeck
    without_back: tuple[int, ...]
    changes: tuple[str, ...]


class _Pack(NamedTuple):
    """A deck that fits its cards, and the pupils' pack."""

    deck: ChosenDeck
    look: CardLook
    data: dict[str, Any]
    pdf: bytes


def card_names(grades: tuple[int, ...]) -> tuple[str, ...]:
    """The names of a deck's files: pack, key, key file."""
    stem = grades_in_name(grades)
    return f"{stem}-cards.pdf", f"{stem}-cards-key.pdf", f"{stem}-cards-key.json"


def card_files(
    table: TrialTable,
    plan: DeckPlan,
    look: CardLook,
    scenario_name: str,
    notes: tuple[str, ...] = (),
    elsewhere: frozenset[Ask] = frozenset(),
) -> CardFiles:
    """The files of one deck: ``grade4-cards.pdf``, ``grade4-cards-key.pdf``, ``grade4-cards-key.json``.

    Args:
        table: the class's results.
        plan: of the deck.
        look: how the cards are printed.
        scenario_name: what things are called.
        notes: what was guessed while reading the table.
        elsewhere: what the pupils are asked on other pages, and so on no card.
    Raises:
        RequestFault: the plan cannot be met, or a name in the table cannot be printed.
    """
    curriculum = load(plan.curriculum)
    words = page_words(scenario(scenario_name), curriculum, table, min(plan.grades))
    signs = unprintable([words, table_names(table, words)])
    check_labels(table.groups, signs)
    check_labels(map(str, table.trials), signs)
    check_labels(table.colors, signs)
    pack = _fitting(partial(DeckMaker, table, plan, scenario_name, elsewhere), table, look, words, signs)
    changes = list(pack.deck.changes)
    if pack.look.per_page != look.per_page:
        changes.append(
            f"{look.per_page} cards to a page were wanted; {pack.look.per_page} are here, for the words have no room on smaller cards."
        )
    deck = replace(pack.deck, changes=(*changes, *said(signs)))
    key = without(cards_key_data(deck, table, words, curriculum, pack.look, pack.data, page_count(pack.pdf)), signs)
    kept = cards_key_file(deck, table, scenario_name, notes, pack.look, pack.data, key)
    contents = dict(zip(card_names(plan.grades), (pack.pdf, pdf_bytes("key", key), kept), strict=True))
    return CardFiles(contents, deck, pages_without_back(pack.data), deck.changes)


def _fitting(new_maker: Callable[[], DeckMaker], table: TrialTable, look: CardLook, words: dict[str, Any], signs: tuple[str, ...]) -> _Pack:
    """The deck on cards as small as was asked for; where most words have no room on them, on larger ones.

    Raises:
        RequestFault: as ``DeckMaker``; or even the largest cards have no room.
    """
    maker, left_out = new_maker(), False
    for per_page in (one for one in PER_PAGE if one <= look.per_page):
        if left_out:  # larger cards may have room for it
            maker, left_out = new_maker(), False
        for _ in range(_ROUNDS):
            deck = maker.make()
            pack, misfit = _printed(deck, table, look._replace(per_page=per_page), words, signs)
            if not misfit:
                return pack
            if 4 * len(misfit) > 3 * len(deck.cards):
                break
            maker.leave_out([deck.cards[number - 1].problem for number in misfit])
            left_out = True
    raise RequestFault(
        "The words of most problems have no room on cards, even two to a page. Shorten the names in the table"
        + (", or leave out --large-print." if look.large_print else ".")
    )


def _printed(deck: ChosenDeck, table: TrialTable, look: CardLook, words: dict[str, Any], signs: tuple[str, ...]) -> tuple[_Pack, list[int]]:
    """The pack, and the numbers of cards whose words have no room. What a card has no room for goes to the results page."""
    elsewhere: frozenset[int] = frozenset()
    while True:
        data = without(cards_data(deck, table, words, look, elsewhere), signs)
        pdf, told = pdf_and_told("cards", data)
        if not told["away"] or told["misfit"]:
            return _Pack(deck, look, data, pdf), told["misfit"]
        elsewhere |= frozenset(told["away"])
