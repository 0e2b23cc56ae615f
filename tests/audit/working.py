"""Worked steps and relation: true, ending in the answer, and within the published limits of the grade."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from typing import Any

from sympy import Abs, Integer, Max, Min, Rational, Symbol, divisor_count, gcd, lcm, linsolve, solve
from sympy.core.expr import Expr

from tests.audit import published
from tests.audit.board import arithmetic, board_faults, said_numbers
from tests.audit.printed import Line, Operation, UnreadableError, decimals, fraction_bottom, places_of, value
from tests.audit.printed import line as read_line

X = Symbol("x")
FIRST = published.FIRST_GRADE


def step_faults(line: dict[str, Any]) -> Iterator[str]:
    """Steps that are untrue or end elsewhere than in the exact answer."""
    grade = line["grade"]
    lines: list[Line] = []
    equalities = arithmetic(line["steps"])
    for text in equalities:
        try:
            lines.append(read_line(text))
        except UnreadableError as err:
            yield f"step: {err}"
            return
        if not lines[-1].true:
            yield f'step "{text}" is not true'
    yield from board_faults(line)
    yield from _limits(lines, equalities, grade, largest_allowed(line))
    told = {given["number"] for given in line["givens"]}  # a length is read off a ruler before it is worked with
    for text in line["steps"]:
        for number in (one for one in said_numbers(text) if one not in told):
            yield from number_faults(number.replace("...", ""), grade, f'step "{text}"', largest_allowed(line))
    if steps_taken(lines) > published.STEPS_OF.get(tuple(line["standards"]), published.STEPS.get(grade, 99)):
        yield f"{steps_taken(lines)} steps in grade {grade}"
    if steps_taken(lines) > 1 and grade < FIRST["two steps"] and tuple(line["standards"]) not in published.STEPS_OF:
        yield "two steps before grade 2"


def largest_allowed(line: dict[str, Any]) -> int:
    """The largest whole number that a problem may hold: that of its grade, or of a standard that goes further."""
    further = [published.PAST_STORY_MAX[code] for code in line["standards"] if code in published.PAST_STORY_MAX]
    return max(further, default=published.STORY_MAX.get(line["grade"], 10**12))


def is_naming(line: Line) -> bool:
    """``9 / 12 = 9/12``: a part and its whole put down as a fraction, nothing worked out."""
    if len(line.operations) != 1 or len(line.sides) != 2:
        return False
    one = line.operations[0]
    return one.sign == "/" and line.numbers[-1] == f"{one.left_text}/{one.right_text}"


def steps_taken(lines: list[Line]) -> int:
    """How many steps a teacher would count: a sum of several numbers is one, as is each difference, product or quotient."""
    count = 0
    for line in lines:
        if is_naming(line):
            continue
        signs = [one.sign for one in line.operations]
        count += ("+" in signs) + sum(sign != "+" for sign in signs)
    return count


def _limits(lines: list[Line], texts: list[str], grade: int, largest: int) -> Iterator[str]:
    for line, text in zip(lines, texts, strict=True):
        addends = 1 + sum(one.sign == "+" for one in line.operations)
        rows = grade == 2 and addends == 5 and len(set(line.numbers[:-1])) == 1  # five equal rows, 2.OA.C.4
        if addends > published.ADDENDS.get(grade, 99) and not rows:
            yield f'{addends} addends in "{text}"'
        for number in line.numbers:
            yield from number_faults(number, grade, f'step "{text}"', largest)
        for one in line.operations:
            if is_naming(line):
                if grade < FIRST["fraction"]:
                    yield f'a fraction before grade 3 in "{text}"'
                continue
            yield from (f'{fault} in step "{text}"' for fault in _operation(one, grade, largest))


def number_faults(text: str, grade: int, where: str, largest: int) -> Iterator[str]:
    """The form and the size of one printed number."""
    if text.endswith("%"):
        if grade < FIRST["percent"]:
            yield f"{where}: percent before grade 6"
        return
    bottom = fraction_bottom(text)
    if bottom is not None:
        allowed = published.DENOMINATORS.get(grade)
        if allowed is not None and bottom not in allowed:
            yield f"{where}: {text}, denominator {bottom} in grade {grade}"
        if " " in text and grade < FIRST["mixed number"]:
            yield f"{where}: the mixed number {text} before grade 4"
    if "." in text:
        if decimals(text) > published.DECIMAL_PLACES.get(grade, 99):
            yield f"{where}: {text} has {decimals(text)} places in grade {grade}"
        if ("..." in text or "(" in text) and grade < FIRST["repeating decimal"]:
            yield f"{where}: the repeating decimal {text} before grade 7"
    if value(text) < 0 and grade < FIRST["negative"]:
        yield f"{where}: {text} below 0 before grade 6"
    if value(text) > largest:
        yield f"{where}: {text} is over {largest}"


def _is_fraction(text: str | None, number: Rational) -> bool:
    return number.q != 1 if text is None else "/" in text and not text.endswith("%")


def _is_decimal(text: str | None) -> bool:
    return text is not None and "." in text and not text.endswith("%")


def _operation(one: Operation, grade: int, largest: int) -> Iterator[str]:
    result = {
        "+": lambda: one.left + one.right,
        "-": lambda: one.left - one.right,
        "*": lambda: one.left * one.right,
        "/": lambda: one.left / one.right,
    }[one.sign]()
    if result < 0 and grade < FIRST["negative computed"]:
        yield "a result below 0 before grade 7"
    if abs(result) > largest:
        yield f"{result} is over {largest}"
    sides = ((one.left_text, one.left), (one.right_text, one.right))
    fractions = [_is_fraction(text, number) for text, number in sides]
    if any(_is_decimal(text) for text, _ in sides):
        if grade < FIRST["decimals computed"]:
            yield "arithmetic with decimals before grade 5"
        elif grade in published.DECIMAL_PLACES_COMPUTE and any(
            _is_decimal(text) and decimals(text or "") > published.DECIMAL_PLACES_COMPUTE[grade] for text, _ in sides
        ):
            yield "arithmetic beyond hundredths in grade 5"
        return
    if one.sign in "+-":
        if any(fractions):
            if grade < FIRST["fractions added"]:
                yield "fractions added before grade 4"
            bottoms = {fraction_bottom(text) for text, _ in sides if text is not None and "/" in text}
            if len(bottoms) > 1 and grade < FIRST["unlike fractions added"]:
                yield "unlike fractions added before grade 5"
        return
    if grade < FIRST["multiply or divide"]:
        yield f"{one.sign} before grade 3"
    yield from (_product if one.sign == "*" else _quotient)(one, fractions, grade)


def _product(one: Operation, fractions: list[bool], grade: int) -> Iterator[str]:
    if all(fractions):
        if grade < FIRST["fraction times fraction"]:
            yield "fraction times fraction before grade 5"
    elif fractions[0]:
        if grade < FIRST["fraction of a quantity"]:
            yield "a fraction of a quantity before grade 5"
    elif fractions[1]:
        if grade < FIRST["whole times fraction"]:
            yield "whole times fraction before grade 4"
    elif grade == 3 and one.left * one.right > published.PRODUCT_MAX[3]:
        small, big = sorted((one.left, one.right))
        if not (small < 10 and big % 10 == 0 and 10 <= big <= 90):
            yield f"the product {one.left * one.right} in grade 3"
    elif grade == 4:
        digits = sorted(len(str(number)) for number in (one.left, one.right))
        if not (digits[0] == 1 and digits[1] <= 4) and digits != [2, 2]:
            yield f"the product {one.left} * {one.right} in grade 4"


def _quotient(one: Operation, fractions: list[bool], grade: int) -> Iterator[str]:
    if all(fractions):
        if grade < FIRST["fraction by fraction"]:
            yield "fraction by fraction before grade 6"
    elif any(fractions):
        unit = one.left.p == 1 if fractions[0] else one.right.p == 1
        if grade < 5 or (grade == 5 and not unit):
            yield "a quotient of fractions before its grade"
    elif (one.left / one.right).q != 1:
        if grade < FIRST["quotient as a fraction"]:
            yield "a quotient that is not whole before grade 5"
    elif grade == 3 and one.left > published.PRODUCT_MAX[3]:
        yield f"the quotient {one.left} / {one.right} in grade 3"
    elif grade in (4, 5) and (one.left > 9999 or one.right > (9 if grade == 4 and one.left != 100 else 10 if grade == 4 else 99)):
        yield f"the quotient {one.left} / {one.right} in grade {grade}"


def relation_sides(text: str) -> tuple[str, str]:
    """Both sides of a relation.

    Raises:
        UnreadableError: not exactly one equals sign.
    """
    sides = text.split("=")
    if len(sides) != 2:
        raise UnreadableError(f'relation "{text}" is no equation')
    return sides[0].strip(), sides[1].strip()


@cache
def solutions(text: str) -> tuple[Rational, ...]:
    """Every solution of a relation in x, by sympy."""
    left, right = map(_expression, relation_sides(text))
    difference = left - right
    if difference.is_polynomial(X) and difference.as_poly(X) is not None and difference.as_poly(X).degree() == 1:
        return tuple(one[0] for one in linsolve([difference], [X]))
    return tuple(solve(difference, X))


def greatest(text: str) -> tuple[bool, tuple[Rational, ...]] | None:
    """Of ``x = Max(..)``: whether the greatest is wanted, and the values; None for any other relation."""
    found = re.fullmatch(r"x = (Max|Min)\((.*)\)", text)
    if not found:
        return None
    return found[1] == "Max", tuple(Rational(_expression(part)) for part in found[2].split(","))


def relation_numbers(text: str) -> list[int]:
    """Every whole number of a relation."""
    return [int(number) for number in re.findall(r"\d+", text)]


_SIGNS = {ast.Add: "+", ast.Sub: "-", ast.Mult: "*", ast.Div: "/"}


def _expression(text: str) -> Expr:
    """A side of a relation as a sympy expression, its numbers exact."""
    try:
        return _built(ast.parse(text.strip(), mode="eval").body)
    except SyntaxError as err:
        raise UnreadableError(f'relation side "{text}" cannot be read') from err


def _built(node: ast.expr) -> Expr:
    match node:
        case ast.Constant(value=int() as number):
            return Integer(number)
        case ast.Name(id="x"):
            return X
        case ast.UnaryOp(op=ast.USub(), operand=inside):
            return -_built(inside)
        case ast.BinOp(left=left, op=operator, right=right) if type(operator) in _SIGNS:
            a, b = _built(left), _built(right)
            return {"+": lambda: a + b, "-": lambda: a - b, "*": lambda: a * b, "/": lambda: a / b}[_SIGNS[type(operator)]]()
        case ast.Call(func=ast.Name(id="Abs"), args=[inside]):
            return Abs(_built(inside))
        case ast.Call(func=ast.Name(id="gcd" | "lcm" as name), args=[one, other]):
            return (gcd if name == "gcd" else lcm)(_built(one), _built(other))
        case ast.Call(func=ast.Name(id="Mod"), args=[amount, size]):
            return _built(amount) % _built(size)
        case ast.Call(func=ast.Name(id="divisor_count"), args=[number]):
            return Integer(divisor_count(_built(number)))
        case ast.Call(func=ast.Name(id="Max" | "Min" as name), args=parts):
            return (Max if name == "Max" else Min)(*map(_built, parts))
    raise UnreadableError(f"relation has a {ast.dump(node)}")


def ends(exact: Rational) -> bool:
    """Whether the exact decimal ends."""
    return places_of(exact) is not None
