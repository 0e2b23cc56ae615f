"""The pick-a-card page as plain data: cards in seeded order, each with what a checker and a helper need. No grade, no level."""

from __future__ import annotations

from typing import Any

from mathgen.bank.deck_plan import Card, ChosenDeck
from mathgen.exact.demand import in_words
from mathgen.problems.record import Problem
from mathgen.sheets.answer_line import answer_line
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.choice import support
from mathgen.sheets.figures.scene import Scene
from mathgen.sheets.key import worked_lines
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import Part, names_like_fractions, parts, running_parts, working
from mathgen.sheets.results import results_table
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals


def pick_data(deck: ChosenDeck, table: TrialTable, words: dict[str, Any]) -> dict[str, Any]:
    """The deck for a page on a screen; figures and graphs as plain data.

    Args:
        deck: the cards.
        table: the class's results; a card shows the rows that it uses.
        words: as ``page_words`` gathers them.
    """
    names = names_like_fractions(table_names(table, words))
    totals = Totals(table)

    def one(card: Card) -> dict[str, Any]:
        problem = card.problem
        figure = support(Scene(problem, table, totals, words), problem.grade)
        own = names if problem.answer.kind == "name" else ()
        return {
            "number": card.number,
            "parts": running_parts(problem.text, stress_not=True, names=names),
            "table": results_table(table, (problem,), words),
            "graph": None if card.graph is None else graph_data(card.graph, table, words, problem.grade),
            "place": answer_line(problem.answer, words),
            "expected": list(problem.answer.accepted) if problem.answer.kind == "name" else [str(problem.answer.exact)],
            "demand": str(problem.answer.demand),
            "form": in_words(problem.answer.demand),
            "slips": [{"value": slip.value, "line": slip.line} for slip in problem.slips],
            "figure": None if figure is None else figure.blank,
            "hint": _hint(problem),
            "steps": [working(line) for line in worked_lines(problem)],
            "because": parts(problem.answer.because) if problem.answer.because else [],
            "answer": parts(problem.answer.display, own),
        }

    return {
        "title": f"{words['title']}: pick a card",
        "mark": deck.mark,
        "lang": words.get("lang", "en"),
        "seed": deck.plan.seed,
        "cards": [one(card) for card in deck.cards],
    }


def _hint(problem: Problem) -> list[Part]:
    """What to do first, where there is a step; else what to look at."""
    steps = worked_lines(problem)
    if steps:
        return [{"text": "Start with "}, *working(steps[0].split(" = ")[0]), {"text": "."}]
    return parts(problem.slips[0].line if problem.slips else "Read the question again, one sentence at a time.")
