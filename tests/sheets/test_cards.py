"""Cards as plain data: what is on each, what lies beside it, and what none of them tells of another."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import pytest
from flint import fmpq

from mathgen.asks.expression import Expr, Op, Quantity, Ratio, Value
from mathgen.bank.deck import make_deck
from mathgen.bank.deck_code import grade_letter, level_letter
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.scenario.words import scenario
from mathgen.sheets.cards import CardLook, cards_data, pages_without_back
from mathgen.sheets.page_words import page_words
from mathgen.sheets.results import cells_in, cells_read
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable

MAIN = Path(__file__).parents[2] / "samples" / "main.csv"
GRADES: tuple[tuple[int, ...], ...] = ((1,), (2,), (3,), (4,), (5,), (6,), (7,), (8,), (3, 4, 5))
SIX = CardLook(6)
every_deck = pytest.mark.parametrize("grades", GRADES, ids=str)


ONE_COLOR = TrialTable(
    tuple(
        Row(group, trial, "red", 12, (7 * place + 5 * trial) % 13)
        for place, group in enumerate(("Owls", "Herons", "Finches", "Wrens", "Kites", "Swifts"))
        for trial in (1, 2, 3)
    )
)


class Made(NamedTuple):
    """A deck and its pupils' pages."""

    deck: ChosenDeck
    data: dict[str, Any]


@cache
def main() -> TrialTable:
    return read_table(str(MAIN), ReadOptions()).table


@cache
def deck(grades: tuple[int, ...]) -> ChosenDeck:
    return make_deck(main(), DeckPlan(grades))


def made(grades: tuple[int, ...], look: CardLook = SIX, elsewhere: frozenset[int] = frozenset()) -> Made:
    words = page_words(scenario("ramp"), load("ccss"), main(), min(grades))
    return Made(deck(grades), cards_data(deck(grades), main(), words, look, elsewhere))


def texts(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from texts(value)
    elif isinstance(data, list | tuple):
        for value in data:
            yield from texts(value)


def number(parts: list[dict[str, str]]) -> fmpq:
    """The number that printed parts show, read with python-flint: ``6 pins``, 2 1/4, 0.75, 75%."""
    total = fmpq(0)
    for part in parts:
        if "top" in part:
            total += fmpq(int(part["top"]), int(part["bottom"])) + int(part["whole"] or 0)
        elif found := re.search(r"(\d+)(?:\.(\d+))?(%?)", next(iter(part.values()))):
            decimals = found[2] or ""
            total += fmpq(int(found[1] + decimals), 10 ** len(decimals) * (100 if found[3] else 1))
    return total


@every_deck
def test_a_check_line_says_the_sum_of_the_answers_that_are_printed(grades: tuple[int, ...]) -> None:
    """Added up with python-flint from the backs of the cards; the line stands on the last card of its set and on the grid."""
    chosen, data = made(grades)
    assert chosen.sets
    on_cards = {card["number"]: card["check"] for card in data["cards"] if card["check"]}
    on_grid = {row["boxes"][0]["number"]: row["check"] for row in data["grid"] if row["check"]}
    assert on_grid == {one.first: on_cards[one.last] for one in chosen.sets}
    assert len(on_cards) == len(chosen.sets)
    for one in chosen.sets:
        line = json.loads(json.dumps(on_cards[one.last]))
        start = line[0]["text"]
        said = f"Answers {one.first} to {one.last} add up to "
        assert start.startswith(said)
        line[0]["text"] = start[len(said) :]
        answers = [number(card["answer"]) for card in data["cards"][one.first - 1 : one.last]]
        assert number(line) == sum(answers, fmpq(0))
        assert len(answers) >= 3


@every_deck
def test_the_grid_has_every_card_once_in_order(grades: tuple[int, ...]) -> None:
    _, data = made(grades)
    rows = [[box["number"] for box in row["boxes"]] for row in data["grid"]]
    assert [one for row in rows for one in row] == [card["number"] for card in data["cards"]]
    assert all(len(row) <= 4 for row in rows)
    assert all(len(row) == 4 for row in rows[:-1])


@every_deck
def test_nothing_that_pupils_get_names_a_grade_or_a_level(grades: tuple[int, ...]) -> None:
    _, data = made(grades, CardLook(backs="answers"))
    for words in texts(data):
        assert not re.search(r"\b(grades?|levels?|support|challenge|years?)\b", words, re.IGNORECASE), words


@every_deck
def test_codes_sort_by_topic_level_and_grade(grades: tuple[int, ...]) -> None:
    """Cards of one letter are of one level, and of one grade where grades are mixed."""
    chosen, data = made(grades)
    for card, problem in zip(data["cards"], chosen.problems, strict=True):
        mark, letters = card["code"].split()
        assert mark == chosen.mark
        assert letters[1:] == level_letter(problem.level) + (grade_letter(problem.grade) if len(grades) > 1 else "")


def asked(problem: Problem) -> Expr | None:
    goal = problem.ask.goal
    return goal.expr if isinstance(goal, Value | Ratio) else None


def meant(expr: Expr, table: TrialTable) -> object:
    """An expression by the very cells that it adds up, so that "all trials" and "trials 1 to 3" are one."""
    if isinstance(expr, Quantity):
        return expr.measure, frozenset(cells_in(table, expr.scope))
    if isinstance(expr, Op):
        return expr.symbol, tuple(meant(one, table) for one in expr.args)
    return expr


@every_deck
def test_no_card_prints_what_another_asks(grades: tuple[int, ...]) -> None:
    """No number in another card's words is the asked one, whatever the groups, trials and colors are called."""
    problems = deck(grades).problems
    for problem in problems:
        expr = asked(problem)
        if expr is None:
            continue
        others = [other for other in problems if other is not problem]
        told = {meant(given.expr, main()) for other in others for given in other.givens if given.where == "words"}
        assert meant(expr, main()) not in told


@every_deck
@pytest.mark.parametrize("table", [main(), ONE_COLOR], ids=["main sample", "one color"])
@pytest.mark.parametrize("moved", [False, True])
def test_no_table_shows_a_cell_that_another_card_asks(grades: tuple[int, ...], table: TrialTable, moved: bool) -> None:
    """On cards, and where all tables are moved to the results page; what is shown is the count of its group, trial and color."""
    chosen = make_deck(table, DeckPlan(grades))
    places = [given.where for card in chosen.cards for given in card.problem.givens]
    readers = frozenset(card.number for card in chosen.cards if reads(card.problem)) if moved else frozenset()
    data = cards_data(chosen, table, page_words(scenario("ramp"), load("ccss"), table, min(grades)), CardLook(), readers)
    hidden = [cells_in(table, scope) for problem in chosen.problems for scope in secrets(problem)]
    secret = {cells[0] for cells in hidden if len(cells) == 1}
    counts = {(row.group, row.trial, row.color): str(row.down) for row in table.rows}
    tables = [card["table"] for card in data["cards"]] + ([data["results"]["table"]] if data["results"] else [])
    shown = 0
    for printed in (one for one in tables if one is not None):
        only = re.search(r"Trial (\d)$", printed["caption"])
        for row in printed["rows"]:
            group, _, trial = row["head"].partition(", Trial ")
            for column, cell in zip(printed["columns"], row["cells"], strict=True):
                place = (group, int(trial or (only[1] if only else 0)), column["head"])
                assert cell == ("?" if place in secret else counts[place])
                shown += 1
    assert shown or "table" not in places


def test_a_count_that_answers_another_card_is_covered() -> None:
    """A cell that a table shows and its problems do not need, once some other card is said to ask for it."""
    chosen, words = deck((4,)), page_words(scenario("ramp"), load("ccss"), main(), 4)
    cards = [card for card in chosen.cards if "table" in {given.where for given in card.problem.givens}]
    away = frozenset(card.number for card in cards)
    table = cards_data(chosen, main(), words, SIX, away)["results"]["table"]
    needed = cells_read(main(), tuple(card.problem for card in cards))
    places = [(row, column) for row in table["rows"] for column in table["columns"]]
    spare = [(*row["head"].split(", Trial "), column["head"]) for row, column in places]
    covered_already = covered_cells_of(table)
    group, trial, color = next(one for one in spare if (one[0], int(one[1]), one[2]) not in {*needed, *covered_already})
    asking = next(card for card in chosen.cards if card.number not in away)
    secret = Scope((group,), (int(trial),), (color,))
    planted = [card._replace(problem=card.problem._replace(must_not_show=(secret,))) if card is asking else card for card in chosen.cards]
    covered = cards_data(replace(chosen, cards=tuple(planted)), main(), words, SIX, away)["results"]["table"]
    assert covered_cells_of(covered) - covered_already == {(group, int(trial), color)}


def covered_cells_of(table: dict[str, Any]) -> set[tuple[str, int, str]]:
    """Group, trial and color of each cell that shows no number."""
    heads = [column["head"] for column in table["columns"]]
    cells = [(*row["head"].split(", Trial "), head, cell) for row in table["rows"] for head, cell in zip(heads, row["cells"], strict=True)]
    return {(group, int(trial), color) for group, trial, color, cell in cells if cell == "?"}


def secrets(problem: Problem) -> list[Scope]:
    """What a table beside a problem must not show: counts that are the answer."""
    expr = asked(problem)
    own = [expr.scope] if isinstance(expr, Quantity) and expr.measure == "down" else []
    return [*problem.must_not_show, *own]


def reads(problem: Problem) -> bool:
    """Whether a table or graph is needed."""
    return any(given.where in ("table", "graph") for given in problem.givens)


@every_deck
def test_a_card_can_be_solved_alone(grades: tuple[int, ...]) -> None:
    """It has its table or graph, or says that the results page has it; a helping figure stands only where neither is."""
    readers = [card.number for card in deck(grades).cards if reads(card.problem)]
    for elsewhere in (frozenset(), frozenset(readers[:2])):
        _, data = made(grades, elsewhere=elsewhere)
        for card in data["cards"]:
            own = card["table"] is not None or card["graph"] is not None
            assert own == (card["number"] in readers and card["number"] not in elsewhere)
            assert ("on the results page." in card["elsewhere"]) == (card["number"] in elsewhere)
            assert card["figure"] is None or card["number"] not in readers
        assert (data["results"] is None) == (not elsewhere)
        for one in elsewhere:
            assert re.search(rf"\b{one}\b", data["results"]["for"])


@pytest.mark.parametrize(
    ("look", "away", "expected"),
    [(CardLook(6), (), (1, 2, 3, 4)), (CardLook(8), (5,), (1, 2, 3, 6)), (CardLook(4, "answers"), (5,), ())],
)
def test_nothing_is_printed_behind_cards_or_the_results_page(look: CardLook, away: tuple[int, ...], expected: tuple[int, ...]) -> None:
    """24 cards of grade 4; two pages of starter cards stand before the results page."""
    assert pages_without_back(made((4,), look, frozenset(away)).data) == expected


def test_what_is_to_be_drawn_is_drawn_on_the_pupils_own_paper() -> None:
    """A card goes on to the next pupil; a figure for drawing is not printed on it, and the card says so."""
    told = 0
    for grades in GRADES:
        chosen, data = made(grades)
        for problem, card in zip(chosen.problems, data["cards"], strict=True):
            draw = re.search(r"\b(draw|make) (a|one|the) ([a-z]+ )?(graph|plot|dot|histogram)\b", problem.text, re.IGNORECASE) is not None
            assert draw <= (card["own_paper"] == "Work on your own paper.")
            assert card["figure"] is None or not card["own_paper"]
            told += draw
    assert told
