"""The key of a problem: the answer in its forms, and the likely mistakes."""

from __future__ import annotations

import re
from collections.abc import Collection
from functools import lru_cache
from math import lcm

from sympy import Rational

from mathgen.asks.evaluate import value
from mathgen.asks.expression import (
    ASSOCIATIONS,
    NOTHING,
    OF_TWO,
    PAIR,
    Ask,
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Measured,
    Op,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    Truth,
    Value,
)
from mathgen.bank.desk import Desk
from mathgen.bank.givens import named
from mathgen.bank.holders import with_holder
from mathgen.exact.accepted import LONGEST_DECIMAL, accepted, shown
from mathgen.exact.demand import Demand
from mathgen.exact.forms import cut_decimal, decimal, decimal_places, fraction, fraction_over, percent
from mathgen.models.slips import slip_rule
from mathgen.problems.draft import Draft
from mathgen.problems.record import Answer, Reason, Slip
from mathgen.scenario.naming import group_name, trial_name

YES_OR_NO = {"true": "Yes", "false": "No"}


_ASKED = re.compile(
    r"\b(?:how many|number of) (?:full |different )?((?:ordered )?pairs|boxes|bags|rows|trials|dots|counts|results|sets|points|times)\b",
    re.IGNORECASE,
)


def answer_of(desk: Desk, draft: Draft, exact: Rational | str, text: str, question: str) -> Answer:
    """The answer as a key prints it.

    Args:
        desk: for names, nouns and values.
        draft: what is asked.
        exact: the number, or the name as the table has it.
        text: the number as the words demand it.
        question: what is asked.
    """
    demand = draft.ask.demand
    if isinstance(draft.ask.goal, Truth):
        assert isinstance(exact, str)  # a truth is "true" or "false"
        word = YES_OR_NO[exact]
        if demand.form == "rubric":
            return Answer("rubric", exact, word, word, (word, exact), demand, *_reasons(desk, draft))
        return Answer("truth", exact, word, word, (word, exact), demand, _side_by_side(desk, draft))
    if isinstance(exact, str) and isinstance(draft.ask.goal, QuotientRemainder):
        written = exact.upper()
        return Answer("quotient_remainder", exact, written, written, (written, exact, exact.replace("r", "remainder")), demand)
    if isinstance(exact, str) and isinstance(draft.ask.goal, Listing | Changes | Chosen):
        written = _signs(exact)
        return Answer("list", exact, written, written, tuple(dict.fromkeys((written, exact))), demand)
    if isinstance(exact, str) and isinstance(draft.ask.goal, Same):
        return Answer("name", exact, exact, exact, tuple(dict.fromkeys((exact, exact.replace("\N{MINUS SIGN}", "-")))), demand)
    if isinstance(exact, str):
        name = name_of(desk, draft, exact)
        ways = [name, exact]
        if isinstance(draft.ask.goal, Choice) and draft.ask.goal.labels == ("product", "factor") and exact == "factor":
            factor = value(draft.ask.goal.exprs[1], desk.totals)
            ways += [f"the factor {factor}", str(factor)]
        if isinstance(draft.ask.goal, Choice) and draft.ask.goal.labels == ASSOCIATIONS:
            ways.append(f"{exact} association")
        if isinstance(draft.ask.goal, Choice) and draft.ask.goal.labels == OF_TWO:
            ways += [f"{exact} question", f"the {exact} question", "1st" if exact == OF_TWO[0] else "2nd"]
        return Answer("name", exact, name, name, tuple(dict.fromkeys(ways)), demand, _comparison(desk, draft))
    unit = _unit(desk, draft.unit, exact, question)
    display = f"${text}" if unit == "dollars" else f"{text} {unit}".rstrip()
    forms = tuple(dict.fromkeys((text, *accepted(exact, demand, draft.over))))
    if unit or draft.unit == "dollars" or _of_counts(draft.ask):
        forms = tuple(form for form in forms if not form.endswith("%"))  # a count, a length, money: none of these is a share
    if isinstance(draft.ask.goal, Ratio):
        return Answer("ratio", exact, text, display, forms, demand)
    return Answer("number", exact, text, display, forms, demand, _in_order(desk, draft.ask) or _because(exact, text, demand))


def _signs(listed: str) -> str:
    """A list in a teacher's signs."""
    return listed.replace(" * ", " × ")


_SINGULAR = {"boxes": "box", "successes": "success", "crosses": "cross", "inches": "inch", "feet": "foot"}


def one_of(unit: str) -> str:
    """A unit of just one: "box", "point"."""
    return _SINGULAR.get(unit, unit.removesuffix("s"))


def _unit(desk: Desk, unit: bool | str, number: Rational, question: str) -> str:
    """What stands behind the number: of one "pin" or "cross", up to 1 inch "inch"; "" for none."""
    said = desk.scenario
    if unit == "asked":
        asked = _ASKED.search(question)
        unit = asked[1].lower() if asked else False
    if not unit:
        return ""
    if unit is True or unit == "per trial":
        per = f" per {said.trial}" if unit == "per trial" else ""
        return (said.item if number == 1 else said.items) + per
    return one_of(unit) if number == 1 or (unit == "inches" and number < 1) else unit


def _of_counts(ask: Ask) -> bool:
    """Whether a mean, a median or the like is asked for, or how far apart two of them are: numbers of things, none a share."""
    parts = [ask.goal.expr] if isinstance(ask.goal, Value) else []
    parts = list(parts[0].args) if parts and isinstance(parts[0], Op) and parts[0].symbol in "+-" else parts
    return any(isinstance(one, Stat) for one in parts)


def _in_order(desk: Desk, ask: Ask) -> str:
    """The list of a median, put in order: "4, 8, 9"; for quartiles in halves: "4, 6 | 8 | 9, 11". No equality can say it."""
    expr = ask.goal.expr if isinstance(ask.goal, Value) else None
    if not isinstance(expr, Stat) or expr.name in ("mean", "mean absolute deviation") or isinstance(expr.series[0], Measured):
        return ""
    numbers = sorted(value(one, desk.totals) for one in expr.series)
    half = len(numbers) // 2
    parts = [numbers] if expr.name == "median" else [numbers[:half], numbers[half:-half], numbers[-half:]]
    return f"in order: {' | '.join(', '.join(map(str, part)) for part in parts if part)}"


def name_of(desk: Desk, draft: Draft, label: str) -> str:
    """A label of the table as a pupil would write it: "Trial 2", "Group 7", "Owls", "red"."""
    if "trials" in draft.wanted:
        return trial_name(next(trial for trial in desk.table.trials if str(trial) == label), desk.scenario)
    return group_name(label, desk.scenario).removeprefix("the ") if "groups" in draft.wanted else label


def _side_by_side(desk: Desk, draft: Draft) -> str:
    """What shows a statement to be true or false, where the steps do not say it: "11 > 10", "7 is odd"."""
    goal = draft.ask.goal
    assert isinstance(goal, Truth)
    left, right = (value(expr, desk.totals) for expr in goal.exprs)
    if goal.right == PAIR:
        return f"{left} is {'odd' if left % 2 else 'even'}"
    if goal.divides or goal.right == NOTHING:
        return ""
    sign = "=" if left == right else ">" if left > right else "<"
    places = _places_told(draft)
    if places:
        return f"{decimal(left, places)} {sign} {decimal(right, places)}"
    return f"{fraction(left)} {sign} {fraction(right)}"


def _places_told(draft: Draft) -> int:
    """The most places of the decimals that the words print, where each side is such a decimal, and it ends; else 0."""
    texts = [text for _, text in draft.rates]
    if len(texts) < 2 or not all("." in text and not text.endswith(("%", "...")) for text in texts):
        return 0
    return max(len(text.partition(".")[2]) for text in texts)


def _reasons(desk: Desk, draft: Draft) -> tuple[str, tuple[Reason, ...]]:
    """Both sides of a claim over one bottom number, and what each is, as a full reason names them."""
    goal = draft.ask.goal
    assert isinstance(goal, Truth)
    values = [value(expr, desk.totals) for expr in goal.exprs]
    bottoms = [int(one.denominator) for one in values]
    for expr in goal.exprs:
        if isinstance(expr, Op) and expr.symbol == "+":
            bottoms += [int(text.partition("/")[2]) for rate, text in draft.rates if rate in expr.args]  # 3/12 + 5/12 stays 8/12
        elif isinstance(expr, Op) and expr.symbol == "/" and not (_per_trial(expr) and value(expr, desk.totals).is_integer):
            bottoms.append(int(value(expr.args[1], desk.totals)))  # 6/12 of the pins stays 6/12
        elif isinstance(expr, Stated):
            bottoms.append(expr.bottom)  # 50% is 50/100
    bottom = lcm(*bottoms)
    left, right = (fraction_over(one, bottom) if bottom > 1 else str(one) for one in values)
    if isinstance(goal.left, Op) and goal.left.symbol == "/" and isinstance(goal.left.args[0], Op):  # a change is told as a percent
        left, right = map(percent, values)
    if isinstance(goal.left, Stat):  # means are told as decimals
        places = max(decimal_places(one) or 0 for one in values)
        ends = all(decimal_places(one) is not None for one in values)
        left, right = (decimal(one, places) if ends and one.denominator > 1 else fraction(one) for one in values)
    sign = "=" if values[0] == values[1] else ">" if values[0] > values[1] else "<"
    facts = [Reason(one, _as_counted(desk, expr, one), named(expr, desk.scenario)) for expr, one in zip(goal.exprs, values, strict=True)]
    return f"{left} {sign} {right}", tuple(facts)


def _per_trial(expr: Op) -> bool:
    """Whether a count is shared among trials: 27 / 3 is 9, and not told as 27/3."""
    return expr.symbol == "/" and isinstance(expr.args[1], Stated) and expr.args[1].meaning == "how many"


def _as_counted(desk: Desk, expr: Expr, number: Rational) -> str:
    """A part over the set that it is counted from; a percent as one."""
    if isinstance(expr, Stated) and expr.meaning == "claimed percent":
        return f"{expr.number}%"
    if isinstance(expr, Stat):
        return decimal(number)
    whole = expr.args[1] if isinstance(expr, Op) and expr.symbol == "/" else None
    if isinstance(expr, Op) and _per_trial(expr) and number.is_integer:
        return str(number)
    return fraction(number) if whole is None else fraction_over(number, int(value(whole, desk.totals)))


def _because(exact: Rational, text: str, demand: Demand) -> str:
    """The last thing a pupil does that no equality can say: writing a repeating decimal, or rounding."""
    if text.endswith("..."):
        return f"{fraction(exact)} = {text}"
    if demand.places is None:
        return ""
    plain = percent(exact) if demand.form == "percent" else fraction(exact)
    places = decimal_places(exact)
    if demand.form == "percent" and " " in plain:  # 52 8/21%: no pupil writes that
        plain = f"{cut_decimal(100 * exact, demand.places + 1)}%"
    if demand.form == "decimal" and places is not None and places <= LONGEST_DECIMAL:
        plain = decimal(exact)  # 0.375 rounds to 0.4: its digits are looked at
    return "" if plain == text else f"{plain} rounds to {text}"


def _comparison(desk: Desk, draft: Draft) -> str:
    """The values of a choice over one bottom number, greatest first: "8/10 > 6/10"."""
    goal, printed = draft.ask.goal, dict(draft.rates)
    assert isinstance(goal, Choice)
    values = sorted((value(expr, desk.totals) for expr in goal.exprs), reverse=True)
    places = _places_told(draft)
    if places:
        return " > ".join(decimal(one, places) for one in values)
    # Where counts are printed, the steps bring the counts over the sets to one bottom number: 55/90 > 45/90, not 11/18 > 9/18.
    bottoms = [int(text.partition("/")[2] or 1) for text in printed.values() if "%" not in text] or list(draft.sets)
    bottom = lcm(*(int(one.denominator) for one in values), *bottoms)
    return " > ".join(fraction_over(one, bottom) if bottom > 1 else str(one) for one in values)


def slips_of(
    desk: Desk, draft: Draft, key: Answer, printed: Collection[str], text: str, told: bool = False, part_names: bool = False
) -> tuple[Slip, ...]:
    """The likely mistakes, each a wrong answer that differs from the key in every accepted form and after rounding.

    Args:
        desk: for names, nouns and values.
        draft: what is asked.
        key: the answer.
        printed: numbers that the pupil sees.
        text: of the problem.
        told: whether the words tell how many successes there were.
        part_names: whether the grade says numerator and denominator.
    """
    found: dict[str, Slip] = {}
    for slip_id, numbers in draft.slips:
        rule = slip_rule(slip_id)
        if told and rule.unless_told:
            continue
        wrong = rule.wrong(*numbers)
        if wrong is None:
            continue
        if isinstance(wrong, str) and key.kind in ("truth", "rubric"):
            wrong_text = YES_OR_NO[wrong] if wrong != key.exact else None
        elif isinstance(wrong, str) and key.kind == "quotient_remainder":
            wrong_text = wrong.upper() if wrong != key.exact else None
        elif isinstance(wrong, str) and key.kind == "list":
            wrong_text = _signs(wrong) if wrong != key.exact else None
        elif isinstance(wrong, str):
            wrong_text = name_of(desk, draft, wrong) if wrong not in key.accepted else None
        else:
            below = "negative" in draft.features
            wrong_text = _wrong_text(wrong[0], wrong[1], draft.shown_as or key.demand, key.exact, key.shown, below, draft.unit == "dollars")
        if wrong_text is not None and wrong_text not in found and not (rule.unless_printed and wrong_text in printed):
            found[wrong_text] = Slip(slip_id, wrong_text, with_holder(desk.slip_line(rule, part_names), text))
    return tuple(found.values())


@lru_cache(maxsize=65536)
def _wrong_text(top: int, bottom: int, demand: Demand, exact: Rational, key: str, below: bool = False, money: bool = False) -> str | None:
    """A wrong value in the form of the key; None where it is right after all, or no such answer can be (``below`` 0, mostly).

    ``money`` is written with two places throughout: 0.60.
    """
    wrong = Rational(top, bottom)
    if wrong == exact or (wrong < 0 and not below):
        return None
    if demand.form == "whole" and wrong.denominator != 1:
        return None
    if demand.form == "any" or (demand.form == "fraction" and wrong.denominator > 1):  # 416/1000, not 52/125
        return f"{top}/{bottom}" if bottom != 1 else str(top)
    if demand.form == "ratio:any":
        return f"{top}:{bottom}"  # as it is counted, never in lowest terms
    text = str(wrong) if demand.form == "whole" else shown(wrong, demand)
    if demand.places is not None and demand.form != "whole" and not money:
        text = min(text, shown(wrong, Demand(demand.form)), key=len)  # a pupil writes 2%, not 2.0%
    return None if text == key else text
