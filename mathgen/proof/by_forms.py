"""Route 4: every written form of the answer parses back to it, and no likely mistake equals it in any of them."""

from __future__ import annotations

import re
from functools import lru_cache
from itertools import pairwise

from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.exact.parse import NotANumber, written
from mathgen.problems.record import Answer, Problem, Slip
from mathgen.proof.verdict import AGREES

_REMAINDER = re.compile(r"(\d+) (?:r|R|remainder) (\d+)")
_ODD_OR_EVEN = re.compile(r"(\d+) is (odd|even)")
_IN_ORDER = "in order: "  # what stands before the list of a median, or its halves


class FormFails(ValueError):
    """A form that does not say the answer, or a slip that does."""


def verdict(problem: Problem) -> str:
    """``agrees``, or what is wrong."""
    try:
        check(problem.answer, problem.slips)
    except FormFails as err:
        return str(err)
    return AGREES


@lru_cache(maxsize=65536)
def _value(text: str) -> Rational:
    return written(text).value


def _within_half_a_place(shown: Rational, exact: Rational, demand: Demand) -> bool:
    """Strictly: a value that lies half way between two roundings is a failure."""
    places = (demand.places or 0) + (2 if demand.form == "percent" else 0)
    return bool(2 * abs(shown - exact) * Rational(10) ** places < 1)


def check(answer: Answer, slips: tuple[Slip, ...]) -> None:
    """Passes silently, or says what does not agree.

    Raises:
        FormFails: see above.
    """
    if answer.kind in ("truth", "rubric"):
        _check_truth(answer, slips)
        if answer.kind == "rubric":
            _check_reasons(answer)
        return
    if answer.kind == "quotient_remainder":
        _check_remainder(answer, slips)
        return
    if answer.kind == "list":
        _check_list(answer, slips)
        return
    if answer.kind == "name":
        right = {answer.exact, answer.shown, answer.display}
        if not right <= set(answer.accepted) or set(answer.accepted) & {slip.value for slip in slips}:
            raise FormFails("a name that is not accepted, or a slip that names the answer")
        if answer.demand.form != "expression" and not _falls(answer.because):
            raise FormFails(f"{answer.because} does not show which is greatest")
        return
    _check_number(answer)
    if answer.kind == "ratio" and written(answer.shown).form != "ratio":
        raise FormFails(f"{answer.shown} is no ratio")
    taken = {_value(text) for text in answer.accepted}
    taken.add(answer.exact)
    for slip in slips:
        if _value(slip.value) in taken:
            raise FormFails(f"slip {slip.id} gives {slip.value}, which is right")


_WORDS = {"Yes": "true", "No": "false"}


def _check_truth(answer: Answer, slips: tuple[Slip, ...]) -> None:
    """Yes for true and no for false, in every form; a slip is the other one; what is said to show it is true."""
    if {_WORDS.get(text, text) for text in (*answer.accepted, answer.shown, answer.display)} != {answer.exact}:
        raise FormFails(f"{answer.display} is displayed for {answer.exact}")
    if any(_WORDS.get(slip.value) in (answer.exact, None) for slip in slips):
        raise FormFails("a slip that says the same")
    kind = _ODD_OR_EVEN.fullmatch(answer.because)
    if kind is not None:
        true = (int(kind[1][-1]) in (1, 3, 5, 7, 9)) == (kind[2] == "odd")
    else:
        true = not answer.because or _side_by_side(*answer.because.split(" "))
    if not true:
        raise FormFails(f"{answer.because} is not so")


def _check_reasons(answer: Answer) -> None:
    """Each number is written as what it is, and the comparison is one of these very numbers."""
    left, _, right = answer.because.partition(" > ") if " > " in answer.because else answer.because.replace(" < ", " = ").partition(" = ")
    if [_value(one.shown) for one in answer.reasons] != [one.value for one in answer.reasons]:
        raise FormFails("a reason is shown as another number than it is")
    if not right or [_value(left), _value(right)] != [one.value for one in answer.reasons]:
        raise FormFails(f"{answer.because} does not compare the numbers of the reason")


def _two_numbers(text: str) -> tuple[int, int]:
    found = _REMAINDER.fullmatch(text)
    if found is None:
        raise FormFails(f"{text} is no quotient and remainder")
    return int(found[1]), int(found[2])


def _check_remainder(answer: Answer, slips: tuple[Slip, ...]) -> None:
    """Every form says the same two numbers, and no slip does."""
    right = _two_numbers(str(answer.exact))
    if {_two_numbers(text) for text in (*answer.accepted, answer.shown, answer.display)} != {right}:
        raise FormFails(f"{answer.display} is displayed for {answer.exact}")
    if any(_two_numbers(slip.value) == right for slip in slips):
        raise FormFails("a slip that says the same")


def _pairs(text: str) -> set[frozenset[tuple[Rational, str]]]:
    """A list of sums or products as a set of pairs (or of three), whatever the order; each number with how it is written."""
    found = set()
    for one in text.replace("×", "*").split(", "):
        if one.count(" + ") > 1:  # a sum of three
            terms = one.split(" + ")
            found.add(frozenset((_value(term), f"{terms.count(term)} + {term}") for term in terms))
            continue
        left, sign, right = one.split(" ") if one.count(" ") == 2 else ("", "", "")
        if sign == "to":  # a change goes one way
            found.add(frozenset({(_value(left), "from"), (_value(right), "to")}))
            continue
        if sign not in ("*", "+"):
            raise FormFails(f"{one} is neither a sum, a product nor a change of two numbers")
        found.add(frozenset({(_value(left), f"{sign} {left}"), (_value(right), f"{sign} {right}")}))
    return found


def _check_list(answer: Answer, slips: tuple[Slip, ...]) -> None:
    """Every form lists the same pairs, none twice, and no slip does."""
    right = _pairs(str(answer.exact))
    forms = (*answer.accepted, answer.shown, answer.display)
    if len(right) != str(answer.exact).count(", ") + 1 or any(_pairs(text) != right for text in forms):
        raise FormFails(f"{answer.display} is displayed for {answer.exact}")
    if any(_pairs(slip.value) == right for slip in slips):
        raise FormFails("a slip that lists the same")


def _side_by_side(left: str, sign: str, right: str) -> bool:
    one, other = _value(left), _value(right)
    return bool(one == other if sign == "=" else one > other if sign == ">" else one < other)


def _falls(because: str) -> bool:
    """Whether a comparison is true: "8/10 > 6/10"."""
    values = [_value(text) for text in because.split(" > ")]
    return len(values) > 1 and all(one > other for one, other in pairwise(values))


def _check_order(answer: Answer) -> None:
    """Whether a list rises to its end, and its middle, or that of a half, or how far those of the halves are apart, is the answer."""
    parts = [[_value(text) for text in part.split(", ")] for part in answer.because.removeprefix(_IN_ORDER).split(" | ")]
    low, high = _middle(parts[0]), _middle(parts[-1])
    shown = (low,) if len(parts) == 1 else (low, high, high - low) if len(parts[0]) == len(parts[-1]) else ()
    if any(one > other for one, other in pairwise(value for part in parts for value in part)) or answer.exact not in shown:
        raise FormFails(f"{answer.because} does not show {answer.shown}")


def _middle(values: list[Rational]) -> Rational:
    half = len(values) // 2
    return (values[half] + values[-half - 1]) / 2


def _is_exact(text: str, exact: Rational) -> bool:
    """Whether a text is the number, or its first digits: "52.38...%"."""
    if not text.endswith("...%"):
        return bool(_value(text) == exact)
    digits = text.removesuffix("...%")
    places = len(digits.partition(".")[2]) + 2
    return bool(0 <= exact - _value(f"{digits}%") < Rational(1, 10**places))


def _check_number(answer: Answer) -> None:
    exact, rounded = answer.exact, answer.demand.places is not None
    try:
        shown = _value(answer.shown)
        others = {text: _value(text) for text in answer.accepted}
    except NotANumber as err:
        raise FormFails(f"an accepted form is no number: {err}") from err
    if not (_within_half_a_place(shown, exact, answer.demand) if rounded else shown == exact):
        raise FormFails(f"{answer.shown} is shown for {exact}")
    number, _, unit = answer.display.partition(answer.shown)
    if (number, unit) != ("$", "") and (number or unit.strip(" abcdefghijklmnopqrstuvwxyz")):
        raise FormFails(f"{answer.display} is displayed for {answer.shown}")
    if answer.because.startswith(_IN_ORDER):
        _check_order(answer)
    elif answer.because:
        exact_text, _, end = answer.because.replace(" rounds to ", " = ").partition(" = ")
        if not _is_exact(exact_text, exact) or end != answer.shown:
            raise FormFails(f"{answer.because} does not show {answer.shown}")
    for text, found in others.items():
        if found not in (shown, exact):
            raise FormFails(f"{text} is accepted for {exact}")
