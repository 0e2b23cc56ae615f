"""Names are incidental: other groups, colors or trial labels leave difficulty, standards and key as they were."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from mathgen.asks.expression import Quantity, Same
from mathgen.problems.record import Problem
from mathgen.trials.scope import Label
from mathgen.trials.table import TrialTable
from tests.audit.banks import activity, problems, sample

SAME_SHAPE: dict[str, dict[Label, Label]] = {
    "groups": {"Owls": "Terns", "Herons": "Ducks", "Finches": "Geckos", "Wrens": "Newts", "Kites": "Foxes", "Swifts": "Otters"},
    "groups turned round": {
        "Owls": "Swifts",
        "Herons": "Kites",
        "Finches": "Wrens",
        "Wrens": "Finches",
        "Kites": "Herons",
        "Swifts": "Owls",
    },
    "colors": {"red": "green", "blue": "black", "gold": "white"},
    "colors turned round": {"red": "gold", "blue": "red", "gold": "blue"},
    "trials": {1: 4, 2: 5, 3: 6},
}
OTHER_SHAPE: dict[str, dict[Label, Label]] = {
    "bare numbers": {"Owls": "11", "Herons": "12", "Finches": "13", "Wrens": "14", "Kites": "15", "Swifts": "16"},
    "two words": {
        "Owls": "Team Ada",
        "Herons": "The Most",
        "Finches": "Snow Owls",
        "Wrens": "Zoë",
        "Kites": "Big Bees",
        "Swifts": "The Rest",
    },
    "lettered trials": {1: "A", 2: "B", 3: "C"},
}


def renamed(table: TrialTable, names: dict[Label, Label]) -> TrialTable:
    """The same counts under other labels."""

    def new(label: Any) -> Any:
        return names.get(label, label)

    return TrialTable(tuple(replace(row, group=new(row.group), trial=new(row.trial), color=new(row.color)) for row in table.rows))


def place(problem: Problem, table: TrialTable) -> tuple[object, ...]:
    """Which ask it is, by the positions of its labels."""
    labels = (table.groups, table.trials, table.colors)

    def positions(scope: Any) -> object:
        return (
            None
            if scope is None
            else tuple(
                None if part is None else tuple(all_of.index(one) for one in part) for part, all_of in zip(scope, labels, strict=True)
            )
        )

    goal = problem.ask.goal
    asked = getattr(goal, "expr", None)
    return (
        problem.grade,
        getattr(goal, "test", None),
        # Which expressions there are to choose from.
        tuple(sorted(goal.labels)) if isinstance(goal, Same) else (),
        problem.model,
        problem.relation,
        positions(asked.scope) if isinstance(asked, Quantity) else None,
        "fewer" in problem.text,
        tuple((given.number, given.where, positions(given.scope)) for given in problem.givens),
    )


def key(problem: Problem, table: TrialTable) -> tuple[object, ...]:
    """What a swap of labels must not change. A name is told by its position."""
    exact: object = problem.answer.exact
    if problem.answer.kind == "name" and isinstance(exact, str):
        words = [str(label) for label in (*table.groups, *table.colors)]
        trials = [label for label in table.trials if exact in (str(label), f"Trial {label}")]
        if exact in words or trials:  # else it is no label: "median", "n > 3"
            exact = words.index(exact) if exact in words else table.trials.index(trials[0])
    slips = tuple(slip.id for slip in problem.slips)
    return (problem.standards, problem.difficulty, problem.level, exact, problem.steps, slips)


@pytest.mark.parametrize("swap", SAME_SHAPE)
def test_swapped_names_leave_the_whole_bank_as_it_was(swap: str) -> None:
    """Names of the same shape: problem by problem, in the same order and the same frames."""
    before, after = sample("main"), renamed(sample("main"), SAME_SHAPE[swap])
    old, new = (problems(table, 20, activity("main"))[0] for table in (before, after))
    assert [place(one, before) for one in old] == [place(one, after) for one in new]
    assert [key(one, before) for one in old] == [key(one, after) for one in new]
    assert [one.frame for one in old] == [one.frame for one in new]


@pytest.mark.parametrize("swap", OTHER_SHAPE)
def test_names_of_another_shape_change_no_difficulty_standard_or_key(swap: str) -> None:
    """Longer names may choose another frame; where ask and frame are the same, so is all that counts."""
    before, after = sample("main"), renamed(sample("main"), OTHER_SHAPE[swap])
    old = {(place(one, before), one.frame): one for one in problems(before, 60)[0]}
    new = {(place(one, after), one.frame): one for one in problems(after, 60)[0]}
    both = old.keys() & new.keys()
    assert len(both) > len(old) / 3
    changed = [(old[spot].text, new[spot].text) for spot in old if spot in both and key(old[spot], before) != key(new[spot], after)]
    assert not changed, changed[:5]
