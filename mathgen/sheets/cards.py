"""Problem cards as plain data: cards with their backs, starter cards, results page and answer grid. They name no grade and no level."""

from __future__ import annotations

from typing import Any, Literal, NamedTuple

from mathgen.bank.deck_code import sorting_letters, topic_letters
from mathgen.bank.deck_plan import Card, ChosenDeck
from mathgen.problems.record import Problem
from mathgen.sheets.answer_line import answer_line
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.choice import asked_figure, support
from mathgen.sheets.figures.scene import Scene
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import names_like_fractions, parts, running_parts
from mathgen.sheets.results import results_table
from mathgen.sheets.worksheet import table_notes, type_size
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals

PER_PAGE = (8, 6, 4, 2)
# Type in points below which a card's words are not set, by grade: our own, for a card is read at arm's length.
_LEAST = {1: "14", 2: "13", 3: "12"}
_LEAST_LATER = "10.5"
_LEAST_LARGE = "18"


class CardLook(NamedTuple):
    """How cards are printed."""

    per_page: int = 6
    backs: Literal["blank", "answers"] = "blank"
    duplex: Literal["long", "short"] = "long"  # the edge on which the printer turns the paper
    paper: Literal["letter", "a4"] = "letter"
    large_print: bool = False


def card_codes(deck: ChosenDeck, words: dict[str, Any]) -> list[str]:
    """The small code of each card: the deck's mark and the sorting letters, such as ``7MWF AH``."""
    letters = letters_of_topics(deck, words)
    several = len(deck.plan.grades) > 1
    return [f"{deck.mark} {sorting_letters(one, letters[topic_of(one, words)], several)}" for one in deck.problems]


def topic_of(problem: Problem, words: dict[str, Any]) -> str:
    """The topic of a problem's skill."""
    return str(words["topics"].get(problem.skill, problem.strand))


def letters_of_topics(deck: ChosenDeck, words: dict[str, Any]) -> dict[str, str]:
    """The letter of each topic in the deck."""
    return topic_letters([topic_of(problem, words) for problem in deck.problems])


def cards_data(
    deck: ChosenDeck, table: TrialTable, words: dict[str, Any], look: CardLook, elsewhere: frozenset[int] = frozenset()
) -> dict[str, Any]:
    """All pages of the pupils' pack, ready for any press.

    Args:
        deck: the cards.
        table: the class's results.
        words: as ``page_words`` gathers them.
        look: how they are printed.
        elsewhere: numbers of cards whose table or graph has no room on the card; the results page has it.
    """
    names = names_like_fractions(table_names(table, words))
    codes = card_codes(deck, words)
    checks = {one.last: one.line for one in deck.sets}
    totals = Totals(table)
    youngest = min(deck.plan.grades)
    types = type_size(youngest, look.large_print)

    def one(card: Card, code: str) -> dict[str, Any]:
        problem = card.problem
        away = card.number in elsewhere
        results = None if away else results_table(table, (problem,), words, deck.problems)
        figure = None if away or results or card.graph else support(Scene(problem, table, totals, words), problem.grade)
        asked = asked_figure(problem)
        own = names if problem.answer.kind == "name" else ()
        return {
            "number": card.number,
            "code": code,
            "parts": running_parts(problem.text, stress_not=True, names=names),
            "table": results,
            "notes": table_notes(results),
            "graph": None if away or card.graph is None else graph_data(card.graph, table, words, problem.grade, look.large_print),
            "elsewhere": _where(card) if away else "",
            "figure": None if figure is None or asked == "draw" else figure.blank,
            "figure_read": figure is not None and asked == "read",
            "own_paper": "Work on your own paper." if asked == "draw" else "",  # a card is for the next pupil, too
            "check": parts(checks.get(card.number, "")),
            "answer": parts(problem.answer.display, own),
        }

    return {
        "title": f"{words['title']}: cards",
        "mark": deck.mark,
        "lang": words.get("lang", "en"),
        "region": words.get("region", "US"),
        "paper": look.paper,
        "per_page": look.per_page,
        "backs": look.backs,
        "duplex": look.duplex,
        "large": look.large_print,
        "type": {**types, "least": _LEAST_LARGE if look.large_print else _LEAST.get(youngest, _LEAST_LATER)},
        "cards": [one(card, code) for card, code in zip(deck.cards, codes, strict=True)],
        "results": results_page(deck, table, words, look, elsewhere),
        "grid": answer_grid(deck, words),
        "starter": {"things": words["things"], "trials": words["trials"], "source": "price list" if table.prices else "results"},
    }


def pages_without_back(data: dict[str, Any]) -> tuple[int, ...]:
    """Pages, counted from 1, that nothing may be printed behind; the pack itself has no empty sides for them.

    Args:
        data: what ``cards_data`` gave.
    """
    if data["backs"] == "answers":
        return ()  # every card has its back, and the results page an empty side
    fronts = -(-len(data["cards"]) // data["per_page"])
    results = (fronts + 3,) if data["results"] is not None else ()  # after the starter cards and their backs
    return (*range(1, fronts + 1), *results)


def _where(card: Card) -> str:
    return "Use the graph on the results page." if card.graph is not None else "Use the table on the results page."


def results_page(
    deck: ChosenDeck, table: TrialTable, words: dict[str, Any], look: CardLook, elsewhere: frozenset[int]
) -> dict[str, Any] | None:
    """The page that lies with the cards: table and graph for those that have no room for their own; None where all have."""
    away = [card for card in deck.cards if card.number in elsewhere]
    if not away:
        return None
    results = results_table(table, tuple(card.problem for card in away), words, deck.problems)
    graph = next((card.graph for card in away if card.graph is not None), None)
    youngest = min(deck.plan.grades)
    return {
        "for": _cards_named([card.number for card in away]),
        "table": results,
        "notes": table_notes(results),
        "graph": None if graph is None else graph_data(graph, table, words, youngest, look.large_print),
    }


def _cards_named(numbers: list[int]) -> str:
    if len(numbers) == 1:
        return f"For card {numbers[0]}."
    return f"For cards {', '.join(map(str, numbers[:-1]))} and {numbers[-1]}."


def answer_grid(deck: ChosenDeck, words: dict[str, Any]) -> list[dict[str, Any]]:
    """Rows of numbered boxes; under a row the line by which its first answers are checked."""
    rows, start = [], 0
    checks = {one.first: one.line for one in deck.sets}
    for length in deck.rows:
        cards = deck.cards[start : start + length]
        boxes = [{"number": card.number, "answer": answer_line(card.problem.answer, words)} for card in cards]
        rows.append({"boxes": boxes, "check": parts(checks.get(cards[0].number, ""))})
        start += length
    return rows
