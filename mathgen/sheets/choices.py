"""Answers to choose from, as plain data: on the pupil's page a letter and an answer, in the key the letter of each mistake."""

from __future__ import annotations

from typing import Any

from mathgen.bank.key import one_of
from mathgen.bank.options import Option
from mathgen.problems.record import Problem
from mathgen.sheets.answer_line import unit_of
from mathgen.sheets.parts import parts

HOW_TO_CHOOSE = "Circle the letter of the right answer."


def choice_list(problem: Problem, options: tuple[Option, ...], words: dict[str, Any], names: tuple[str, ...] = ()) -> list[dict[str, Any]]:
    """The options of one problem, each with its letter; all have the form and the unit of the key.

    Args:
        problem: whose answers they are.
        options: in print order.
        words: as ``page_words`` gathers them.
        names: of groups, trials and colors, that must not be set as fractions.
    """
    own = names if problem.answer.kind == "name" else ()
    unit = "" if problem.answer.shown == problem.answer.display else unit_of(problem.answer, words)
    return [{"letter": one.letter, "parts": parts(_with_unit(one.value, unit, words), own)} for one in options]


def _with_unit(value: str, unit: str, words: dict[str, Any]) -> str:
    if not unit:
        return value
    if unit == "dollars":
        return f"${value}"
    if value != "1":
        return f"{value} {unit}"
    return f"1 {words['thing'] if unit == words['things'] else one_of(unit)}"


def right_letter(options: tuple[Option, ...]) -> str:
    """The letter of the key."""
    return next(one.letter for one in options if one.slip is None)
