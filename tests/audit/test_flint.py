"""Every answer recomputed from the raw rows by python-flint, an exact library that shares nothing with sympy."""

from __future__ import annotations

from collections import Counter
from itertools import compress, product
from typing import NamedTuple

import pytest
import sympy.external.gmpy
from flint import fmpq, fmpz

from mathgen.asks.expression import (
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Measured,
    Op,
    Price,
    Quantity,
    QuotientRemainder,
    Same,
    Stat,
    Stated,
    Tally,
    Truth,
    Unknown,
    with_number,
)
from mathgen.models.registry import problem_models
from mathgen.problems.record import Problem
from mathgen.trials.table import TrialTable
from tests.audit.banks import EVERY_NAME, sample, sample_problems


class Form(NamedTuple):
    """``constant + slope * x``."""

    constant: fmpq
    slope: fmpq


def fixed(number: fmpq) -> Form:
    return Form(number, fmpq(0))


class Flint:
    """Works out asks on one table's raw rows, in flint's rationals only."""

    def __init__(self, table: TrialTable) -> None:
        self.rows = table.rows
        self.cents = {one.item: one.cents for one in table.prices}

    def count(self, quantity: Quantity) -> fmpq:
        groups, trials, colors = quantity.scope
        if quantity.measure in ("trials", "successes"):
            rows = [row for row in self.rows if (groups is None or row.group in groups) and (trials is None or row.trial in trials)]
            fallen = {(row.group, row.trial): fmpq(0) for row in rows}
            missed = dict(fallen)
            for row in rows:
                (fallen if row.color == row.target else missed)[row.group, row.trial] += row.down
            hits = [spot for spot in fallen if fallen[spot] > 0 and missed[spot] == 0]
            return fmpq(len(fallen if quantity.measure == "trials" else hits))
        total = fmpq(0)
        for row in self.rows:
            if (
                (groups is None or row.group in groups)
                and (trials is None or row.trial in trials)
                and (colors is None or row.color in colors)
            ):
                total += {"set_up": row.set_up, "down": row.down, "standing": row.set_up - row.down}[quantity.measure]
        return total

    def form(self, expr: Expr, asked: Expr | None) -> Form:
        if isinstance(expr, Unknown) or (expr == asked and isinstance(expr, Quantity)):
            return Form(fmpq(0), fmpq(1))
        if isinstance(expr, Quantity):
            return fixed(self.count(expr))
        if isinstance(expr, Measured):
            [inches] = {row.gap_inches for row in self.rows if (row.group, row.trial) == (expr.group, expr.trial)}
            return fixed(fmpq(int(inches.p), int(inches.q)))
        if isinstance(expr, Price):
            return fixed(fmpq(self.cents[expr.item], 100 if expr.unit == "dollars" else 1))
        if isinstance(expr, Stated):
            return fixed(fmpq(expr.number, expr.bottom))
        if isinstance(expr, Tally):
            than, to = (self.form(one, None).constant for one in (expr.bounds[0], expr.bounds[-1]))
            numbers = [self.form(one, None).constant for one in expr.series]
            if expr.test == "digits":
                hits = [sum(1 for digit in str(one) if 1 <= int(digit) <= int(than)) for one in numbers]
                return fixed(fmpq(sum(1 for one in hits if one >= int(to))))
            tests = ({"=": one == than, ">": one > than, "<": one < than, "from": than <= one <= to}[expr.test] for one in numbers)
            return fixed(fmpq(sum(tests)))
        if isinstance(expr, Stat):
            return fixed(statistic(expr.name, sorted(self.form(one, None).constant for one in expr.series)))
        assert isinstance(expr, Op)
        result = self.form(expr.args[0], asked)
        if expr.symbol == "opposite" or (expr.symbol == "abs" and result.constant < 0):
            return Form(-result.constant, -result.slope)
        for arg in expr.args[1:]:
            other = self.form(arg, asked)
            if expr.symbol in ("gcf", "lcm"):
                pair = fmpz(int(result.constant.p)), fmpz(int(other.constant.p))
                return fixed(fmpq(pair[0].gcd(pair[1]) if expr.symbol == "gcf" else pair[0].lcm(pair[1])))
            if expr.symbol == "+":
                result = Form(result.constant + other.constant, result.slope + other.slope)
            elif expr.symbol == "-":
                result = Form(result.constant - other.constant, result.slope - other.slope)
            elif expr.symbol == "*":
                assert not (result.slope and other.slope)
                result = Form(result.constant * other.constant, result.constant * other.slope + result.slope * other.constant)
            else:
                assert not other.slope
                result = Form(result.constant / other.constant, result.slope / other.constant)
        return result

    def answer(self, problem: Problem) -> fmpq | str:
        ask = problem.ask
        if isinstance(ask.goal, Same):
            values = [[self.form(with_number(expr, number), None).constant for number in (3, 10)] for expr in ask.goal.exprs]
            [label] = [label for label, option in zip(ask.goal.labels, values[1:], strict=True) if option == values[0]]
            return label
        if isinstance(ask.goal, Truth):
            left, right = (self.form(side, None).constant for side in ask.goal.exprs)
            so = {
                "=": left == right,
                ">": left > right,
                "<": left < right,
                "multiple": right != 0 and (left / right).q == 1,
                "no multiple": right != 0 and (left / right).q != 1,
            }
            return "true" if so[ask.goal.test] else "false"
        if isinstance(ask.goal, Choice):
            values = [self.form(expr, None).constant for expr in ask.goal.exprs]
            best = max(values) if ask.goal.most else min(values)
            winners = [label for label, number in zip(ask.goal.labels, values, strict=True) if number == best]
            assert len(winners) == 1
            return winners[0]
        if isinstance(ask.goal, QuotientRemainder):
            amount, size = (self.form(side, None).constant for side in ask.goal.exprs)
            full = fmpq((amount / size).floor())
            over = amount - full * size
            wanted = {"full": full, "over": over, "needed": fmpq((amount / size).ceil())}
            return f"{full} r {over}" if ask.goal.want == "both" else wanted[ask.goal.want]
        if isinstance(ask.goal, Listing):
            amount, whole = (*(self.form(expr, None).constant for expr in ask.goal.exprs), fmpq(1))[:2]
            number = int(amount * whole)
            if ask.goal.symbol == "*":
                small = [one for one in range(1, number + 1) if one * one <= number and not number % one]
                return ", ".join(f"{one} * {fmpz(number) / one}" for one in small)
            return ", ".join(f"{one}/{whole} + {number - one}/{whole}" for one in range(1, number // 2 + 1))
        if isinstance(ask.goal, Changes):
            *numbers, to, most = (self.form(expr, None).constant for expr in ask.goal.exprs)
            change = (to * len(numbers) if ask.goal.name == "mean" else to) - sum(numbers, fmpq(0))
            return ", ".join(f"{old} to {old + change}" for old in numbers if 0 <= old + change <= most)
        if isinstance(ask.goal, Chosen):
            *numbers, total = (self.form(expr, None).constant for expr in ask.goal.exprs)
            marks = [mark for mark in product((1, 0), repeat=len(numbers)) if sum(mark) == ask.goal.size]
            right = [mark for mark in marks if sum((a * b for a, b in zip(mark, numbers, strict=True)), fmpq(0)) == total]
            return ", ".join(" + ".join(compress(ask.goal.labels, mark)) for mark in right)
        goal = ask.goal.expr
        for fact in ask.given:
            left, right = self.form(fact.left, goal), self.form(fact.right, goal)
            slope = left.slope - right.slope
            if slope:
                return (right.constant - left.constant) / slope
        found = self.form(goal, None)
        assert not found.slope
        return found.constant


def statistic(name: str, rising: list[fmpq]) -> fmpq:
    """A statistic of a list in order."""
    size = len(rising)
    mean = sum(rising, fmpq(0)) / size
    if name == "mean":
        return mean
    if name == "mean absolute deviation":
        return sum((abs(one - mean) for one in rising), fmpq(0)) / size
    if name == "range":
        return rising[-1] - rising[0]
    if name == "median":
        return (rising[(size - 1) // 2] + rising[size // 2]) / 2
    lower = statistic("median", rising[: size // 2])
    upper = statistic("median", rising[(size + 1) // 2 :])
    return {"lower quartile": lower, "upper quartile": upper, "interquartile range": upper - lower}[name]


def half_up(number: fmpq, places: int) -> fmpq:
    """Rounded the school way."""
    power = fmpq(10) ** places
    return fmpq((number * power + fmpq(1, 2)).floor()) / power


def test_sympy_runs_on_its_own_integers() -> None:
    """Else the comparison below would hold flint against flint."""
    assert sympy.external.gmpy.GROUND_TYPES == "python"


@pytest.mark.parametrize("name", EVERY_NAME)
def test_flint_agrees_with_every_answer(name: str) -> None:
    flint = Flint(sample(name))
    bank = sample_problems(name)
    assert bank
    for problem in bank:
        found, key = flint.answer(problem), problem.answer
        if isinstance(found, str):
            assert found == key.exact, problem.text
            continue
        assert found == fmpq(int(key.exact.numerator), int(key.exact.denominator)), problem.text  # type: ignore[union-attr]
        if key.demand.places is not None:
            percent = key.shown.endswith("%")
            shown = half_up(found * (100 if percent else 1), key.demand.places)
            units, _, decimals = key.shown.rstrip("%").partition(".")
            assert shown == fmpq(int(units + decimals), 10 ** len(decimals)), problem.text


def test_every_kind_of_ask_was_recomputed() -> None:
    asked = Counter(problem.model for name in EVERY_NAME for problem in sample_problems(name))
    assert set(asked) == {model.name for model in problem_models()}
