"""The rows of the class's table that a sheet prints."""

from __future__ import annotations

import re
from random import Random

import pytest

from mathgen.bank.builder import Builder, Candidate
from mathgen.bank.desk import Desk
from mathgen.bank.plan import SheetPlan
from mathgen.bank.sheet import make_sheet
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words
from mathgen.sheets.results import GivenAwayError, results_table
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable
from tests.aimed import AIMED
from tests.audit.banks import sample
from tests.models.asked import every_draft
from tests.sheets.by_hand import TABLE, problem, words

WORDS = words(4)
READS_RED = problem("Use the table. How many?", "7", reads=Scope(("Owls", "Herons"), (1,), ("red",)))


def test_only_the_rows_and_colors_in_use_are_printed_and_set_up_counts_stand_in_the_head() -> None:
    """Counted by hand from the table."""
    printed = results_table(TABLE, (READS_RED,), WORDS)
    assert printed is not None
    assert printed["columns"] == [{"head": "red", "note": "(4 set up)"}]
    assert printed["rows"] == [{"head": "Owls", "cells": ["3"]}, {"head": "Herons", "cells": ["4"]}]
    assert printed["caption"] == "Pins knocked down, Trial 1"
    assert not printed["unneeded"]


def test_rows_name_their_trial_where_there_are_several_and_unneeded_numbers_are_noticed() -> None:
    """Herons in trials 1 and 2 and Owls in trial 1: the gold cells of all but one row are not needed."""
    gold = problem("Use the table. How many?", "4", reads=Scope(("Owls",), (1,), ("gold",)))
    herons = problem("Use the table. How many?", "2", reads=Scope(("Herons",), (1, 2), ("red",)))
    printed = results_table(TABLE, (gold, herons), WORDS)
    assert printed is not None
    assert [row["head"] for row in printed["rows"]] == ["Owls, Trial 1", "Herons, Trial 1", "Herons, Trial 2"]
    assert [row["cells"] for row in printed["rows"]] == [["3", "4"], ["4", "3"], ["2", "5"]]
    assert printed["unneeded"]


def test_no_table_where_the_words_tell_everything() -> None:
    """A problem with all its numbers in words needs no cell."""
    assert results_table(TABLE, (problem("The Owls knocked down 3 pins. How many?", "3"),), WORDS) is None


def test_a_cell_that_would_answer_a_problem_is_covered() -> None:
    """Owls, trial 1, gold (4) answers another problem on the sheet."""
    hides = problem("The Owls knocked down 80% of the 5 gold pins in Trial 1. How many?", "4", hides=(Scope(("Owls",), (1,), ("gold",)),))
    reads = problem("Use the table. How many?", "3", reads=Scope(("Herons",), (1,), ("red", "gold")))
    also = problem("Use the table. How many?", "3", reads=Scope(("Owls",), (1,), ("red",)))
    printed = results_table(TABLE, (hides, reads, also), WORDS)
    assert printed is not None
    assert [row["cells"] for row in printed["rows"]] == [["3", "?"], ["4", "3"]]
    assert printed["covered"]


def test_a_cell_both_needed_and_given_away_is_a_fault_of_the_choice() -> None:
    """Such a pair was never to be chosen; printing it would make one of the two problems worthless."""
    hides = problem("How many?", "3", hides=(Scope(("Owls",), (1,), ("red",)),))
    with pytest.raises(GivenAwayError, match="Owls"):
        results_table(TABLE, (hides, READS_RED), WORDS)


def test_set_up_counts_that_differ_get_a_column_and_absent_results_a_dash() -> None:
    """Group 7 set up 4 red pins, group 8 set up 6; group 8 has no blue result."""
    table = TrialTable((Row("7", 1, "red", 4, 3), Row("7", 1, "blue", 3, 0), Row("8", 1, "red", 6, 5)), absent=(("8", 1, "blue"),))
    printed = results_table(table, (problem("Use the table. How many?", "8", reads=Scope()),), words(4, table))
    assert printed is not None
    assert [(column["head"], column["note"]) for column in printed["columns"]] == [
        ("red", "set up"),
        ("red", "knocked down"),
        ("blue", "(3 set up)"),
    ]
    assert printed["rows"] == [{"head": "Group 7", "cells": ["4", "3", "0"]}, {"head": "Group 8", "cells": ["6", "5", "–"]}]
    assert printed["caption"] == "Pins knocked down"
    assert printed["absent"]


def test_many_colors_stand_below_one_another() -> None:
    """Seven colors side by side would not fit a page with their words."""
    colors = ("red", "blue", "gold", "green", "white", "black", "brown")
    table = TrialTable(tuple(Row("Owls", 1, color, 4, index % 5) for index, color in enumerate(colors)))
    printed = results_table(table, (problem("Use the table. How many?", "11", reads=Scope()),), words(4, table))
    assert printed is not None
    assert printed["corner"] == "Color"
    assert [column["head"] for column in printed["columns"]] == ["Owls"]
    assert printed["rows"][:2] == [{"head": "red (4 set up)", "cells": ["0"]}, {"head": "blue (4 set up)", "cells": ["1"]}]
    assert len(printed["rows"]) == len(colors)


def test_a_price_list_holds_every_item_that_a_problem_of_the_sheet_names() -> None:
    """ "The price list says 40 cents for the ball of string" is then true of the page."""
    table = sample("prices")
    for grade in range(2, 7):
        problems = tuple(make_sheet(table, SheetPlan(grade)).forms[0].problems)
        printed = results_table(table, problems, {**words(grade), "table_caption": "Price list"})
        if printed is None:
            continue
        shown = {text for row in printed["rows"] for text in (row["head"], *row["cells"])}
        told = [problem.text for problem in problems if not re.search(r"\d of a dollar\b", problem.text)]
        named = [one.item for one in table.prices if any(one.item in text for text in told)]
        assert named
        assert {item[0].upper() + item[1:] for item in named} <= shown


def test_where_trials_are_judged_the_target_colors_stand_first() -> None:
    desk = Desk(AIMED, scenario("ramp"))
    model = next(one for one in problem_models() if one.name == "successes_counted")
    [kites] = [draft for draft in every_draft(model.name, AIMED) if draft.roles["hits"].scope.groups == ("Kites",)]  # type: ignore[union-attr]
    candidate = Builder(desk, load("ccss"), 2).candidate(model, kites, Random(1))
    assert isinstance(candidate, Candidate)
    one, said = Builder(desk, load("ccss"), 2).finish(candidate), page_words(scenario("ramp"), load("ccss"), AIMED, 2)
    printed = results_table(AIMED, (one,), said)
    assert printed is not None
    assert [column["head"] for column in printed["columns"]] == ["Target color", "red", "blue", "gold"]
    assert [row["cells"] for row in printed["rows"]] == [
        ["red", "2", "0", "0"],
        ["blue", "0", "1", "0"],
        ["blue", "1", "1", "0"],
        ["gold", "0", "0", "2"],
    ]


def test_a_price_list_does_not_tell_in_cents_what_is_told_as_a_part_of_a_dollar() -> None:
    """ "0.4 of a dollar or 0.35 of a dollar" is not to be looked up; a price that another problem reads has to be there all the same."""
    table = sample("prices")
    problems = tuple(make_sheet(table, SheetPlan(4)).forms[0].problems)
    printed = results_table(table, problems, {**words(4), "table_caption": "Price list"})
    assert printed is not None
    shown = {text for row in printed["rows"] for text in (row["head"], *row["cells"])}
    parts = [one.text for one in problems if re.search(r"\d of a dollar\b", one.text)]
    others = [one.text for one in problems if one.text not in parts]
    assert parts

    def named(item: str, texts: list[str]) -> bool:
        return any(re.search("s? ".join(map(re.escape, item.split())), text) for text in texts)  # one ball of string, two balls of string

    only = [one.item for one in table.prices if named(one.item, parts) and not named(one.item, others)]
    assert only
    assert not {item[0].upper() + item[1:] for item in only} & shown
