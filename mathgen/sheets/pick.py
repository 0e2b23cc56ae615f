"""The pick-a-card page as plain data: cards in seeded order, each with what a checker and a helper need. No grade, no level."""

from __future__ import annotations

import re
from typing import Any

from mathgen.asks.expression import Choice, Same
from mathgen.bank.deck_plan import Card, ChosenDeck
from mathgen.bank.key import one_of
from mathgen.exact.demand import in_words
from mathgen.exact.judge.typed_number import COUNTED
from mathgen.problems.record import Problem
from mathgen.sheets.answer_line import answer_line
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.choice import support
from mathgen.sheets.figures.scene import Scene
from mathgen.sheets.key import reason, worked_lines
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import Part, names_like_fractions, parts, running_parts, working
from mathgen.sheets.results import results_table
from mathgen.sheets.worksheet import table_notes
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals

_SAID = (("__", "blank"), (" × ", " times "), (" ÷ ", " divided by "), (" − ", " minus "), (" + ", " plus "), (" = ", " equals "))
_ONE_NUMBER = re.compile(r"[\d./%-]+")
_WHERE = {"table": "in the table", "graph": "in the graph"}
_ONLY = ("point", "inch", "foot", "box", "bag", "pair", "ordered pair")  # where one of these is counted, nothing else is right
_ESTIMATE = re.compile(r"\babout (?:how|what)\b", re.IGNORECASE)


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
        read = figure is not None and figure.asked == "read"  # then it stands with the words, and is no hint
        graph = None if card.graph is None else graph_data(card.graph, table, words, problem.grade)
        own = names if problem.answer.kind == "name" else ()
        text = running_parts(problem.text, stress_not=True, names=names)
        results = results_table(table, (problem,), words)
        return {
            "number": card.number,
            "parts": text,
            "say": said(text),
            "table": results,
            "notes": table_notes(results),
            "graph": figure.blank if figure is not None and read else graph,
            "place": {**answer_line(problem.answer, words), "choices": choices(problem, table, words)},
            "expected": expected(problem, words),
            "units": units(problem, words, table),
            "demand": str(problem.answer.demand),
            "form": in_words(problem.answer.demand),
            "slips": [{"value": slip.value, "line": slip.line} for slip in problem.slips],
            "figure": None if figure is None or read else figure.blank,
            "worked": None if figure is None else figure.worked,
            "hint": hint(problem),
            "steps": [working(line) for line in worked_lines(problem)],
            "because": parts(because) if (because := reason(problem)) else [],
            "answer": parts(problem.answer.display, own),
        }

    return {
        "title": f"{words['title']}: pick a card",
        "mark": deck.mark,
        "lang": words.get("lang", "en"),
        "seed": deck.plan.seed,
        "cards": [one(card) for card in deck.cards],
    }


def expected(problem: Problem, words: dict[str, Any]) -> list[str]:
    """The key as the judge takes it: exact, and with its unit where things are counted, so that no other unit is right.

    A name may be written in several ways. A number without a unit takes any that the activity has. "About" stands before what
    the question calls an estimate.
    """
    answer = problem.answer
    if answer.kind == "name":
        return list(answer.accepted)
    if answer.display == f"${answer.shown}":
        return [answer.display]
    if answer.kind != "number":
        return [str(answer.exact)]
    about = "about " if _ESTIMATE.search(problem.question) else ""
    unit = answer.display.partition(answer.shown)[2].split(" per ")[0].strip()
    counted = own_unit(problem, words) in (words["thing"], words["trial"], *_ONLY)
    return [f"{about}{answer.exact} {unit}" if counted else f"{about}{answer.exact}"]


def own_unit(problem: Problem, words: dict[str, Any]) -> str:
    """What the key's own number counts, of just one: "pin", "set"; "" where it counts nothing."""
    answer = problem.answer
    if answer.kind != "number":
        return ""
    unit = answer.display.partition(answer.shown)[2].split(" per ")[0].strip()
    return str({words["things"]: words["thing"]}.get(unit, one_of(unit)))


def units(problem: Problem, words: dict[str, Any], table: TrialTable) -> list[str]:
    """What an answer may count: the activity's own thing first, as judges take it; what the key prints is among them."""
    own = own_unit(problem, words)
    return list(dict.fromkeys([words["thing"], words["trial"], *COUNTED, *(["cent"] if table.prices else []), *([own] if own else [])]))


def choices(problem: Problem, table: TrialTable, words: dict[str, Any]) -> list[str]:
    """The names that a question with a name for its answer compares, as pages show them; empty where it names none."""
    goal, answer = problem.ask.goal, problem.answer
    if isinstance(goal, Same):
        return list(goal.labels)
    if answer.kind != "name" or not isinstance(goal, Choice):
        return []
    trials = {str(trial): str(name) for trial, name in words["trial_labels"].items()}
    # A group and a trial may have one label: what is meant are the names of which the key's own is one.
    for names in (words["group_labels"], trials, {color: color for color in table.colors}, {one.item: one.item for one in table.prices}):
        shown = [str(names.get(label, "")) for label in goal.labels]
        if answer.shown in shown and all(shown) and len(set(shown)) == len(shown):
            return shown
    return list(goal.labels) if answer.shown in goal.labels else []  # "product" or "factor"


def said(text: list[Part]) -> str:
    """A card's words as they are read aloud: fractions and signs in words.

    >>> said([{"text": "Which number makes "}, {"kept": "12 − __ = 7"}, {"text": " true?"}])
    'Which number makes 12 minus blank equals 7 true?'
    """
    spoken = "".join(str(part["alt"] if "alt" in part else next(iter(part.values()))) for part in text)
    for sign, word in _SAID:
        spoken = spoken.replace(sign, word)
    return spoken


def hint(problem: Problem) -> list[list[Part]]:
    """Lines that help without a figure: where there are several steps, how the first begins; else the numbers that count, and what
    is to be read elsewhere, for the beginning of a single step would be the whole of it.
    """
    steps = worked_lines(problem)
    if len(steps) > 1:
        start = steps[0].split(" = ")[0]
        if _ONE_NUMBER.fullmatch(start):
            return [[{"text": "Start with "}, *working(start), {"text": ". Write it in another form."}]]
        return [[{"text": "Start with "}, *working(start), {"text": "."}]]
    told = [given.number for given in problem.givens if given.where not in _WHERE]
    lines = [[{"text": "These numbers help: "}, *parts(", ".join(told)), {"text": "."}]] if told else []
    read = dict.fromkeys(f"Look {_WHERE[given.where]} for this: {given.quantity}." for given in problem.givens if given.where in _WHERE)
    return [*lines, *([{"text": line}] for line in read), [{"text": "Say in your own words what is asked."}]]
