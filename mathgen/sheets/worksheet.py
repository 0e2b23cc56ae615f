"""The pupils' pages as plain data. They show no grade and no level."""

from __future__ import annotations

from typing import Any

from mathgen.asks.expression import Changes, Stated
from mathgen.bank.plan import ChosenForm, ChosenSheet, SheetPlan
from mathgen.problems.record import Problem
from mathgen.sheets.answer_line import answer_line
from mathgen.sheets.choices import HOW_TO_CHOOSE, choice_list
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.figures.choice import form_supports
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import names_like_fractions, running_parts
from mathgen.sheets.results import results_table
from mathgen.trials.table import TrialTable

# Type sizes in points and lines in millimeters. Sizes are ours: children err more in smaller type (Hughes and Wilkins 2000; Wilkins
# et al. 2009); large print is 18 points (APH guidelines). Writing lines: common practice, no source.
_TYPE = {1: ("18", "14"), 2: ("16", "13"), 3: ("14", "11")}
_TYPE_LATER = ("12.5", "9")
_LARGE = 18


def type_size(grade: int, large_print: bool) -> dict[str, str]:
    """Body type in points and the height of a writing line in millimeters, as decimal text.

    >>> type_size(2, False), type_size(6, True)
    ({'points': '16', 'line_mm': '13'}, {'points': '18', 'line_mm': '11'})
    """
    points, line = _TYPE.get(grade, _TYPE_LATER)
    if large_print:
        points, line = ("20", line) if grade <= 2 else (str(_LARGE), "11")
    return {"points": points, "line_mm": line}


def i_can_lines(problems: tuple[Problem, ...], words: dict[str, Any]) -> list[str]:
    """At most two "I can" phrases, of the skills with the most problems of the sheet's own grade."""
    top = max((problem.grade for problem in problems), default=0)
    counts: dict[str, int] = {}
    for problem in problems:
        if problem.grade == top and problem.skill in words["i_can"]:
            counts[problem.skill] = counts.get(problem.skill, 0) + 1
    ranked = sorted(counts, key=lambda skill: -counts[skill])  # stable: print order among equals
    phrases = (str(words["i_can"][skill]).removeprefix("I can ").rstrip(".") for skill in ranked)
    return list(dict.fromkeys(phrases))[:2]


def show_how(forms: tuple[ChosenForm, ...]) -> int | None:
    """Which problem, counted from 0, asks pupils to show how they know: the same in every form.

    A choice between groups or colors, or of yes and no, if there is one, for its answer alone says little; else the middle problem.
    A claim that is to be judged has lines for the reason already.
    """
    problems = forms[0].problems if forms else ()
    if not problems:
        return None
    choices = [index for index, problem in enumerate(problems) if index and problem.answer.kind in ("name", "truth")]
    return choices[0] if choices else len(problems) // 2


POINTS = "Points in one problem are for that problem only."
CHANGES = "Write each change as the old number, the word to, and the new number."
LEAF = 2  # sides of one sheet of paper


def wanted_pages(plan: SheetPlan) -> int | None:
    """Pages asked for; a leaf of two sides by default; None, as few as can be, where count, minutes, paper or large print decide."""
    if plan.pages is not None:
        return plan.pages
    free = plan.count is not None or plan.minutes is not None or plan.layout == "save-paper" or plan.large_print
    return None if free else LEAF


def page_change(data: dict[str, Any], printed_pages: int) -> str | None:
    """The sentence for the teacher where a worksheet took another number of pages than was asked for; None where it is met.

    Args:
        data: what ``worksheet_data`` gave.
        printed_pages: pages of the whole document, all forms together.
    """
    forms = len(data["forms"]) * data["copies"]
    wanted = data["pages"] and data["pages"] * forms
    if not wanted or printed_pages == wanted or (printed_pages < wanted and not data["pages_fixed"]):
        return None
    why = "its problems need the space" if printed_pages > wanted else "it has too few problems for more"
    return f"{wanted} {'page was' if wanted == 1 else 'pages were'} wanted; the worksheet has {printed_pages}, for {why}."


def few_on_pages(plan: SheetPlan, here: int, usual: int) -> str | None:
    """The sentence for the teacher where the pages that she named hold not even half of what such pages usually do."""
    if plan.pages is None or 2 * here >= usual:
        return None
    pages = "1 page holds" if plan.pages == 1 else f"{plan.pages} pages hold"
    return f"{pages} {here} {'problem' if here == 1 else 'problems'} of these with room to work; {usual} are usual."


def how_to_answer(form: ChosenForm) -> str:
    """What holds for all problems of a form: how to answer, and that each game has points of its own."""
    games = sum(any(isinstance(given.expr, Stated) and "points" in given.expr.meaning for given in one.givens) for one in form.problems)
    changes = any(isinstance(one.ask.goal, Changes) for one in form.problems)
    return " ".join(line for line, holds in ((HOW_TO_CHOOSE, form.options), (POINTS, games > 1), (CHANGES, changes)) if holds)


def form_name(form: ChosenForm, words: dict[str, Any]) -> str:
    """What a form is called: ``Form A``; by the group's name where every group has its own."""
    return str(words["group_labels"][form.group]) if form.group else f"Form {form.mark}"


def worksheet_data(chosen: ChosenSheet, table: TrialTable, scenario_words: dict[str, Any]) -> dict[str, Any]:
    """All forms of the sheet, ready for any press.

    Args:
        chosen: the sheet; problems in print order.
        table: the class's results, from which the used rows are printed.
        scenario_words: as ``page_words`` gathers them; ``lang``, ``region`` and ``graph_kind`` ("bar" or "picture") may be added.
    """
    plan = chosen.plan
    explain = show_how(chosen.forms)
    names = names_like_fractions(table_names(table, scenario_words))
    forms = []
    for form in chosen.forms:
        results = results_table(table, form.problems, scenario_words)
        figures = form_supports(form.problems, table, scenario_words, plan.grade, explain)
        forms.append(
            {
                "mark": form_name(form, scenario_words) if len(chosen.forms) > 1 else "",
                "i_can": i_can_lines(form.problems, scenario_words),
                "table": results,
                "graph": None if form.graph is None else graph_data(form.graph, table, scenario_words, plan.grade, plan.large_print),
                "notes": table_notes(results),
                "how_to_answer": how_to_answer(form),
                "problems": [
                    {
                        "number": number,
                        "figure": None if figure is None else figure.blank,
                        "figure_asked": figure is not None and figure.asked != "",
                        "parts": running_parts(problem.text, stress_not=True, names=names),
                        "answer": (ending := answer_line(problem.answer, scenario_words)),
                        "choices": choice_list(problem, form.options[number - 1], scenario_words, names) if form.options else [],
                        # A number without a unit is the next one, or one that is missing: there the sentence stands already.
                        "number_sentence": plan.grade <= 2 and ending["unit"] != "" and not form.options,
                        "show": "Show or draw how you know." if number - 1 == explain and problem.answer.kind != "rubric" else "",
                    }
                    for number, (problem, figure) in enumerate(zip(form.problems, figures, strict=True), start=1)
                ],
            }
        )
    return {
        "title": scenario_words["title"],
        "code": chosen.code,
        "lang": scenario_words.get("lang", "en"),
        "region": scenario_words.get("region", "US"),
        "paper": plan.paper,
        "layout": plan.layout,
        "pages": wanted_pages(plan),
        "copies": plan.copies,
        "pages_fixed": plan.pages is not None,
        "type": type_size(plan.grade, plan.large_print),
        "airy": plan.grade <= 3 or plan.large_print,
        "large": plan.large_print,
        # Short columns suit short problems in small type only.
        "columns": 2 if plan.layout == "save-paper" and plan.grade >= 4 and not plan.large_print else 1,
        "forms": forms,
    }


def table_notes(results: dict[str, Any] | None) -> list[str]:
    """What must be said of a printed table: numbers to spare, covered cells, results that are missing."""
    if results is None:
        return []
    notes = []
    if results["unneeded"]:
        notes.append("Some numbers in the table are not needed.")
    if results["covered"]:
        notes.append('A "?" covers a number that you will find.')
    if results["absent"]:
        notes.append('A "–" means that there was no result.')
    return notes
