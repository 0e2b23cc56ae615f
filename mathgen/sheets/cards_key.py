"""The teacher's pages of a deck as plain data: answers in the shape of the pupils' grid, contents page, worked answers."""

from __future__ import annotations

from typing import Any

from mathgen.bank.deck_code import grade_letter, level_letter
from mathgen.bank.deck_plan import Card, ChosenDeck
from mathgen.grades.curriculum import Curriculum
from mathgen.problems.record import Problem
from mathgen.sheets.cards import CardLook, card_codes, letters_of_topics, topic_of
from mathgen.sheets.figures.choice import support
from mathgen.sheets.figures.scene import Scene
from mathgen.sheets.key import STATE_STANDARDS, cautions, table_head, table_line, worked_answer
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import names_like_fractions, parts
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals

LEVELS = ("support", "on grade", "challenge")


def cards_key_data(
    deck: ChosenDeck,
    table: TrialTable,
    words: dict[str, Any],
    curriculum: Curriculum,
    look: CardLook,
    pupils: dict[str, Any],
    page_total: int,
) -> dict[str, Any]:
    """The key of a deck, ready for any press.

    Args:
        deck: the cards.
        table: the class's results.
        words: as ``page_words`` gathers them.
        curriculum: for the names of grades.
        look: how the cards are printed.
        pupils: what ``cards_data`` gave.
        page_total: pages of the pupils' pack.
    """
    names = names_like_fractions(table_names(table, words))
    totals = Totals(table)
    several = len(deck.plan.grades) > 1
    drawn = {card["number"] for card in pupils["cards"] if card["figure"] is not None}

    def worked(card: Card) -> dict[str, Any]:
        problem = card.problem
        figure = support(Scene(problem, table, totals, words), problem.grade) if card.number in drawn else None
        return worked_answer(problem, card.number, problem.grade if several else deck.plan.grades[0], names, (), figure)

    return {
        "title": f"Answer key: {words['title']}, cards",
        "code": deck.mark,
        "lang": words.get("lang", "en"),
        "region": words.get("region", "US"),
        "paper": look.paper,
        "points": "18" if look.large_print else "10.5",
        "large": look.large_print,
        "grade": ", ".join(curriculum.label(grade) for grade in deck.plan.grades),
        "proof_line": words["proof_line"],
        "marks": [""],
        "strip": [],
        "deck": {
            "grid": _filled_grid(deck, pupils["grid"], names),
            "contents": contents(deck, words, pupils),
            "letters": letters(deck, words, curriculum),
            "printing": printing(deck, look, pupils, page_total),
        },
        "forms": [{"mark": "", "problems": [worked(card) for card in deck.cards]}],
        "teacher": {
            "changes": list(deck.changes),
            "about": [],
            "table_head": table_head(table),
            "table": table_line(table, words),
            "cautions_head": words["cautions_head"],
            "cautions": cautions(words["cautions"], bool(table.prices)),
            "standards_note": STATE_STANDARDS,
        },
    }


def _filled_grid(deck: ChosenDeck, rows: list[dict[str, Any]], names: tuple[str, ...]) -> list[dict[str, Any]]:
    """The pupils' grid with the answers in its boxes."""

    def shown(problem: Problem) -> list[dict[str, Any]]:
        return parts(problem.answer.display, names if problem.answer.kind == "name" else ())

    answers = {card.number: shown(card.problem) for card in deck.cards}
    return [{**row, "boxes": [{**box, "shown": answers[box["number"]]} for box in row["boxes"]]} for row in rows]


def contents(deck: ChosenDeck, words: dict[str, Any], pupils: dict[str, Any]) -> list[dict[str, Any]]:
    """One line a card: number, code, topic, skill, standards, level, grade, and what lies on the results page."""
    return [
        {
            "number": card.number,
            "code": code.partition(" ")[2],
            "topic": topic_of(card.problem, words),
            "skill": card.problem.skill,
            "standards": ", ".join(card.problem.standards),
            "level": card.problem.level,
            "grade": str(card.problem.grade),
            "needs": _needs(shown),
        }
        for card, code, shown in zip(deck.cards, card_codes(deck, words), pupils["cards"], strict=True)
    ]


def _needs(shown: dict[str, Any]) -> str:
    if shown["elsewhere"]:
        return "results page"
    return "graph" if shown["graph"] is not None else "table" if shown["table"] is not None else ""


def letters(deck: ChosenDeck, words: dict[str, Any], curriculum: Curriculum) -> list[str]:
    """What the letters of a card's code say."""
    topics = ", ".join(f"{letter} {topic}" for topic, letter in letters_of_topics(deck, words).items())
    levels = ", ".join(f"{level_letter(level)} {level}" for level in LEVELS)
    lines = [f"{deck.mark} is on every card of this deck.", f"First letter, topic: {topics}.", f"Second letter, level: {levels}."]
    if len(deck.plan.grades) > 1:
        grades = ", ".join(f"{grade_letter(grade)} {curriculum.label(grade)}" for grade in sorted({one.grade for one in deck.problems}))
        lines.append(f"Third letter: {grades}.")
    return lines


def printing(deck: ChosenDeck, look: CardLook, pupils: dict[str, Any], page_total: int) -> list[str]:
    """What is on which page of the pupils' pack, and how it is printed."""
    sides = -(-len(deck.cards) // look.per_page) * (2 if look.backs == "answers" else 1)
    lines = []
    if look.backs == "answers":
        lines.append(f"Pages 1 to {sides}: cards, each page followed by its backs. Print on both sides, turned on the {look.duplex} edge.")
    else:
        lines.append(f"{_pages(1, sides)}: cards. Print on one side, then cut along the dashed lines.")
    lines.append(
        f"Pages {sides + 1} and {sides + 2}: starter cards on which pupils write their own problem, and their backs for working and answer."
    )
    after = sides + 3
    if pupils["results"] is not None:
        lines.append(f"Page {after}: results page, to lie with the cards. {pupils['results']['for']}")
        after += 2 if look.backs == "answers" else 1
    lines.append(f"{_pages(after, page_total)}: answer grid, one for each pupil.")
    return lines


def _pages(first: int, last: int) -> str:
    return f"Page {first}" if first == last else f"Pages {first} to {last}"
