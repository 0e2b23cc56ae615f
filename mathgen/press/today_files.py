"""All that a teacher takes to class tomorrow: worksheet, cards, their keys, the pick-a-card page, and one PDF to print."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.plan import SheetPlan
from mathgen.press.card_files import card_files, card_names
from mathgen.press.one_pdf import Document, one_pdf
from mathgen.press.pick_page import page_of_deck
from mathgen.press.sheet_files import sheet_files, sheet_names
from mathgen.sheets.cards import CardLook
from mathgen.trials.table import TrialTable

_ORDER = (("worksheet", "worksheet"), ("cards", "cards"), ("key", "answer key"), ("cards-key", "key of the cards"))


class TodayFiles(NamedTuple):
    """Files by name, what was changed against the plan, and which pages of the print file hold which part."""

    contents: dict[str, bytes]
    changes: tuple[str, ...]
    spans: tuple[tuple[str, int, int], ...]


def today_names(grade: int) -> tuple[str, ...]:
    """The names of a grade's files."""
    return *sheet_names(grade), *card_names((grade,)), f"grade{grade}-pick.html", f"grade{grade}-print.pdf"


def today_files(table: TrialTable, plan: SheetPlan, cards: int, scenario_name: str, notes: tuple[str, ...] = ()) -> TodayFiles:
    """The files of one grade; ``grade4-print.pdf`` holds worksheet, cards, key and cards' key in this order.

    Args:
        table: the class's results.
        plan: of the worksheet; the deck has the same grade, seed, curriculum, paper and print.
        cards: how many cards the deck has.
        scenario_name: what things are called.
        notes: what was guessed while reading the table.
    Raises:
        RequestFault: the plan cannot be met, or a name in the table cannot be printed.
    """
    stem = f"grade{plan.grade}"
    deck = DeckPlan((plan.grade,), cards, plan.seed, plan.curriculum, not_yet=plan.not_yet)
    look = CardLook(4 if plan.large_print else 6, paper=plan.paper, large_print=plan.large_print)
    sheet = sheet_files(table, plan, scenario_name, notes)
    pack = card_files(table, deck, look, scenario_name, notes, elsewhere=sheet.asked)  # no card asks again what the sheet asks
    # The deck that lies on paper, so that one key serves both.
    page, said = page_of_deck(pack.deck, table, scenario_name)
    contents = {**sheet.contents, **pack.contents, f"{stem}-pick.html": page}
    documents = [Document(title, contents[f"{stem}-{name}.pdf"], pack.without_back if name == "cards" else ()) for name, title in _ORDER]
    whole = one_pdf(documents, f"Grade {plan.grade}: to print")
    contents[f"{stem}-print.pdf"] = whole.pdf
    of_cards = dict.fromkeys((*pack.changes, *said))
    changes = (*(f"worksheet: {change}" for change in sheet.changes), *(f"cards: {change}" for change in of_cards))
    return TodayFiles(contents, changes, whole.spans)
