"""The teacher's pages as plain data: answer strip, worked answers, and what she should know about the sheet."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable
from typing import Any

from mathgen.asks.board import scaled_by
from mathgen.asks.expression import Choice
from mathgen.bank.options import Option
from mathgen.bank.plan import ChosenForm, ChosenSheet
from mathgen.problems.record import Problem, Slip
from mathgen.sheets.choices import right_letter
from mathgen.sheets.figures.choice import form_supports
from mathgen.sheets.figures.scene import Support
from mathgen.sheets.page_words import table_names
from mathgen.sheets.parts import Part, names_like_fractions, parts, running_parts, working
from mathgen.sheets.rubric import rubric
from mathgen.sheets.worksheet import form_name, show_how
from mathgen.trials.table import TrialTable

_EQUATIONS_SOLVED = 7  # the grade of 7.EE.B.4
_ITEMS_TOLD = 16  # of a price list, in one line
MISTAKES_SHOWN = 3  # the likeliest; the key file has them all
OWN_RULES = "Follow your school's own safety rules."
STATE_STANDARDS = "Standards are guides: check your state's own."


def answer_strip(forms: tuple[ChosenForm, ...], names: tuple[str, ...] = ()) -> list[dict[str, Any]]:
    """One line a problem number, one answer a form; None where a form has fewer problems."""
    longest = max((len(form.problems) for form in forms), default=0)
    return [
        {
            "number": index + 1,
            "answers": [_strip_answer(form, index, names) if index < len(form.problems) else None for form in forms],
        }
        for index in range(longest)
    ]


def _strip_answer(form: ChosenForm, index: int, names: tuple[str, ...]) -> list[Part]:
    """The answer; on a sheet with choices its letter first."""
    answer = _answer(form.problems[index], names)
    return [{"text": f"{right_letter(form.options[index])}   "}, *answer] if form.options else answer


def _answer(problem: Problem, names: tuple[str, ...]) -> list[Part]:
    return parts(problem.answer.display, names if problem.answer.kind == "name" else ())


def worked_answer(
    problem: Problem,
    number: int,
    grade: int,
    names: tuple[str, ...] = (),
    options: tuple[Option, ...] = (),
    figure: Support | None = None,
) -> dict[str, Any]:
    """One problem as a teacher needs it: words, key, steps, other right forms, likely mistakes, standards.

    Args:
        problem: the problem.
        number: its number on the sheet.
        grade: the sheet's grade.
        names: of groups, trials and colors, that must not be set as fractions.
        options: the answers to choose from, where the sheet has them.
        figure: what the pupils' page has to work on.
    """
    own = names if problem.answer.kind == "name" else ()
    return {
        "number": number,
        "text": running_parts(problem.text, stress_not=True, names=names),
        "answer": _answer(problem, names),
        "figure": None if figure is None else figure.worked,
        "steps": [working(line, own) for line in worked_lines(problem)],
        "accepted": [parts(form, own) for form in _other_forms(problem) if _taught(form, grade)],
        "demand": parts(_demand_line(problem)),
        "because": [],  # of key files before release 6, whose comparison was no step
        "credit": parts(credit) if (credit := reason(problem)) else [],
        "right": right_letter(options) if options else "",
        "slips": [
            {"letter": letter, "value": parts(slip.value, own), "line": running_parts(slip.line, names=names)}
            for letter, slip in _lettered(problem, options)
        ],
        "standards": list(problem.standards),
        "level": problem.level,
        "review": problem.grade < grade,
    }


def _lettered(problem: Problem, options: tuple[Option, ...]) -> list[tuple[str, Slip]]:
    """The likely mistakes, each with a letter to mark it by: that of its option where the sheet has choices."""
    if options:
        return [(one.letter, one.slip) for one in options if one.slip is not None]
    return list(zip("abc", problem.slips[:MISTAKES_SHOWN], strict=False))


def _other_forms(problem: Problem) -> list[str]:
    """The other ways to write the answer. Yes, 7 r 1 and a list need none; a name is its own."""
    answer = problem.answer
    if answer.kind in ("truth", "quotient_remainder", "list", "rubric"):
        return []
    goal = problem.ask.goal
    rate = scaled_by(goal) if isinstance(goal, Choice) else None
    if rate is not None:  # "the factor" is named as well by its number
        numbers = {given.expr: given.number for given in problem.givens}
        factor = numbers[goal.exprs[1]]
        return [factor if answer.exact == "factor" else f"{numbers[rate]} × {factor}"]
    shown = answer.shown.replace("-", "−")  # a typed sign of less looks the same in print
    return [form for form in answer.accepted if form.replace("-", "−") != shown]


def _taught(form: str, grade: int) -> bool:
    """Whether pupils of the grade could write the form: percents come in grade 6 (6.RP.A.3c), decimals in grade 4 (4.NF.C.6).

    An earlier form that a pupil writes all the same is right in marking; here it would only puzzle.
    """
    return not (("%" in form and grade < 6) or ("." in form and grade < 4))


def worked_lines(problem: Problem) -> list[str]:
    """The lines of the board; where an equation is solved from grade 7 on, that alone."""
    first = next((place for place, line in enumerate(problem.board) if re.search(r"\bx\b|\dx", line)), 0)
    return list(problem.board[first if problem.ask.given and problem.grade >= _EQUATIONS_SOLVED else 0 :])


def reason(problem: Problem) -> str:
    """What a reason for a verdict is marked by; "" where none is asked for."""
    return rubric(problem) if problem.answer.reasons else ""


def _demand_line(problem: Problem) -> str:
    """What counts as right where the list of forms cannot show it all."""
    demand = problem.answer.demand
    if problem.answer.kind == "ratio":
        return "Any equal ratio in this order is right."
    if demand.form == "any" and "/" in problem.answer.shown:
        return "Any equal form is right."
    if demand.form == "mixed:any" and "/" in problem.answer.shown:
        return "Any equal mixed number is right."
    return ""


def about_sheet(chosen: ChosenSheet, scenario_words: dict[str, Any], minutes: int | None) -> list[dict[str, Any]]:
    """What is on this sheet: how many problems, minutes, topics, levels and standards with their count."""
    problems = chosen.forms[0].problems if chosen.forms else ()
    lines: list[dict[str, Any]] = [{"head": "Problems", "lines": [_how_many(chosen.forms, scenario_words)]}]
    if chosen.plan.same_story:
        grades = ", ".join(map(str, chosen.plan.same_story))
        told = f"Each number is about the same groups and trials on the sheets of grades {grades}, so that all can discuss it."
        lines.append({"head": "Same story", "lines": [told]})
    if minutes is not None:
        lines.append({"head": "Time", "lines": [f"about {minutes} minutes"]})
    topics = [scenario_words["topics"].get(problem.skill, problem.strand) for problem in problems]
    lines.append({"head": "Topics", "lines": [", ".join(_counted(topics))]})
    lines.append({"head": "Levels", "lines": _levels(chosen.forms, scenario_words)})
    review = sum(problem.grade < chosen.plan.grade for problem in problems)
    if review:
        lines.append({"head": "Review", "lines": [f"{review} of an earlier grade"]})
    texts = scenario_words.get("standard_texts", {})
    codes = [code for form in chosen.forms for problem in form.problems for code in problem.standards]
    listed = sorted(set(codes))
    described = [f"{code}: {texts[code]}" if code in texts else code for code in listed]
    lines.append({"head": "Standards", "lines": described if texts else [", ".join(listed)]})
    return lines


def _named(form: ChosenForm, words: dict[str, Any]) -> str:
    """What a form is called on the teacher's pages: ``Form A``; ``Form A (support)`` where forms stand for levels."""
    return f"{form_name(form, words)} ({form.tier})" if form.tier else form_name(form, words)


def _levels(forms: tuple[ChosenForm, ...], words: dict[str, Any]) -> list[str]:
    """How many problems of each level there are; form by form where forms stand for levels."""
    counted = [", ".join(_counted(problem.level for problem in form.problems)) for form in forms]
    if not any(form.tier for form in forms):
        return counted[:1] or [""]
    return [f"{_named(form, words)}: {levels}" for form, levels in zip(forms, counted, strict=True)]


def _how_many(forms: tuple[ChosenForm, ...], words: dict[str, Any]) -> str:
    """How many problems there are: ``8``; ``8 on each form``; ``Form A 20, Form B 18``."""
    counts = [len(form.problems) for form in forms]
    if len(counts) == 1:
        return str(counts[0])
    if len(set(counts)) == 1:
        return f"{counts[0]} on each form"
    return ", ".join(f"{form_name(form, words)} {count}" for form, count in zip(forms, counts, strict=True))


def _counted(names: Iterable[str]) -> list[str]:
    """Each name once, with how often it came: ``fractions 5``."""
    return [f"{name} {count}" for name, count in Counter(names).items()]


def cautions(lines: list[str], money: bool = False) -> list[str]:
    """The scenario's cautions; the school's own rules are named even where the scenario forgets them. Prices need no safety rules."""
    return lines if money or any(OWN_RULES in line for line in lines) else [*lines, OWN_RULES]


def table_head(table: TrialTable) -> str:
    """What a teacher calls the table."""
    return "Price list" if table.prices else "Results table"


def table_line(table: TrialTable, words: dict[str, Any]) -> str:
    """The results table in one line, so that a teacher sees which class's table the sheet was made from."""
    if table.prices:
        items = [f"{one.item} {one.cents}¢" for one in table.prices]
        return ", ".join(items) if len(items) <= _ITEMS_TOLD else f"{', '.join(items[:_ITEMS_TOLD])} and {len(items) - _ITEMS_TOLD} more"
    groups = [str(words["group_labels"][group]) for group in table.groups]
    named = ", ".join(groups) if len(groups) <= 8 else f"{', '.join(groups[:8])} and {len(groups) - 8} more"
    trials = len(table.trials)
    return f"{named}; {trials} {words['trial'] if trials == 1 else words['trials']}; {', '.join(table.colors)}"


def key_data(chosen: ChosenSheet, table: TrialTable, scenario_words: dict[str, Any], minutes: int | None = None) -> dict[str, Any]:
    """The answer key and the teacher's page, ready for any press.

    Args:
        chosen: the sheet with all its forms.
        table: the class's results; its groups and trials are named on the teacher's page.
        scenario_words: as ``page_words`` gathers them; ``standard_texts`` (code to words) may be added.
        minutes: time that the sheet should take; the plan's own where none is given.
    """
    plan = chosen.plan
    names = names_like_fractions(table_names(table, scenario_words))
    drawn = show_how(chosen.forms)
    return {
        "title": f"Answer key: {scenario_words['title']}",
        "code": chosen.code,
        "lang": scenario_words.get("lang", "en"),
        "region": scenario_words.get("region", "US"),
        "paper": plan.paper,
        "points": "18" if plan.large_print else "10.5",
        "large": plan.large_print,
        "grade": scenario_words["grade_name"],
        "proof_line": scenario_words["proof_line"],
        "marks": [_named(form, scenario_words) for form in chosen.forms],
        "strip": answer_strip(chosen.forms, names),
        "forms": [
            {
                "mark": _named(form, scenario_words),
                "problems": [
                    worked_answer(problem, index + 1, plan.grade, names, form.options[index] if form.options else (), figure)
                    for index, (problem, figure) in enumerate(
                        zip(form.problems, form_supports(form.problems, table, scenario_words, plan.grade, drawn), strict=True)
                    )
                ],
            }
            for form in chosen.forms
        ],
        "teacher": {
            "changes": list(chosen.changes),
            "about": about_sheet(chosen, scenario_words, plan.minutes if minutes is None else minutes),
            "table_head": table_head(table),
            "table": table_line(table, scenario_words),
            "cautions_head": scenario_words["cautions_head"],
            "cautions": cautions(scenario_words["cautions"], bool(table.prices)),
            "standards_note": STATE_STANDARDS,
        },
    }
