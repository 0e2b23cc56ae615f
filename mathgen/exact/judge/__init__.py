"""A pupil's written answer against the key: is it right, and is it in the form that the words demand?

- ``words``, ``lists``, ``numbers``: the judges of each kind of answer;
- ``typed_number``: the number in a typed answer, and its unit;
- ``verdict``: what may be said of it.
"""

from __future__ import annotations

from collections.abc import Callable

from mathgen.exact.demand import Form, parse_demand
from mathgen.exact.judge.lists import judge_list, judge_remainder
from mathgen.exact.judge.numbers import judge_number
from mathgen.exact.judge.typed_number import UNITS, TypedNumber, read_number
from mathgen.exact.judge.verdict import FORM, RIGHT, UNREADABLE, WRONG, Judged
from mathgen.exact.judge.words import judge_expression, judge_name, judge_rubric, judge_truth
from mathgen.exact.parse import NotANumber

_BY_FORM: dict[Form, Callable[[str, str], Judged]] = {
    "expression": judge_expression,
    "quotient_remainder": judge_remainder,
    "list": judge_list,
    "truth": judge_truth,
    "rubric": judge_rubric,
}


def judge(expected: str, demand: str, typed: str, units: tuple[str, ...] = UNITS) -> Judged:
    """The verdict on a typed answer, and why.

    Args:
        expected: the exact answer in any school form, unrounded even where the demand rounds; or a name. Where the question asks
            for an estimate, "about 108" lets a pupil write so, too.
        demand: as ``parse_demand`` reads it.
        typed: what the pupil wrote.
        units: singular nouns that an answer may carry, the activity's own thing first: it may stand beside a color. Where
            ``expected`` has a unit of its own, only that one is right.
    Returns:
        ``right``, ``right_value_wrong_form``, ``wrong`` or ``unreadable``, and one line for the teacher.
    Raises:
        NotANumber: ``expected`` is not a number, and no name is demanded.
        ValueError: there is no such demand.

    >>> judge("3/4", "simplest", "6/8")
    ('right_value_wrong_form', 'not in lowest terms')
    """
    asked = parse_demand(demand)
    if asked.form == "name":
        return judge_name(expected, typed, units[0])
    if (judged := _BY_FORM.get(asked.form)) is not None:
        return judged(expected, typed)
    key = read_number(expected, units)
    try:
        read = read_number(typed, units)
    except NotANumber as fault:
        return UNREADABLE, str(fault)
    if read.unit == "money" and asked.form == "whole" and "cent" in units and not key.unit:
        # Cents are asked for: "60¢" and "60 cents" are 60; "$0.60" is as much, in another form.
        cents = read.number._replace(value=100 * read.number.value, form="whole" if read.number.places is None else "money")
        read = TypedNumber(cents, "", True)
    if read.unit:
        money_for_count = read.unit == "money" and asked.form == "whole"
        fits = read.unit == key.unit if key.unit else read.known and not money_for_count
        if not fits:
            return WRONG, f'"{read.unit}" is not the unit of this answer'
    if key.unit and key.unit != "money" and read.number.form == "percent":
        return WRONG, "a percent; the question asks for a number of things"
    verdict, why = judge_number(key.number, asked, read.number, read.unit)
    if verdict == RIGHT and read.about and not (key.about or asked.places is not None):
        return FORM, 'the right value; "about" is for an estimate'
    return verdict, why
