"""Route 1: the printed steps, read from their text and checked in pairs of whole numbers.

Each step has to be a true equality; every number it works with has to be a printed or counted given, an earlier result, or
one whole; no step may be idle; and the last one has to end in the answer, in the form that the words demand. Givens that
stand in the words are looked for in the words.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from functools import lru_cache
from math import prod

from mathgen.asks.expression import (
    DOLLAR,
    NOTHING,
    Ask,
    Changes,
    Choice,
    Chosen,
    Expr,
    Listing,
    Op,
    Quantity,
    QuotientRemainder,
    Ratio,
    Same,
    Stat,
    Stated,
    StatName,
    Tally,
    Truth,
    Unknown,
    Value,
)
from mathgen.problems.record import Answer, Problem
from mathgen.proof.by_board import LETTERS, Lists, check_board, lists_of
from mathgen.proof.lists import is_statistic, statistic
from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number
from mathgen.proof.verdict import AGREES

ADDED_UP = ("mean", "mean absolute deviation")  # statistics of which each number of the list is used
_TURNED = re.compile(r"\|(-?[^|]+)\||-\(([^()]+)\)")  # an absolute value, an opposite
_OPERATOR = re.compile(r" ([-+*/]) ")
_MIXED = re.compile(r"\d+ \d+/\d+")
_PRINTED = re.compile(r"(?:(?<![\w)])-)?\d+(?:/\d+|\.\d+(?:\.\.\.)?)?%?")


def verdict(problem: Problem) -> str:
    """``agrees``, or what is wrong."""
    try:
        _check(problem)
        check_board(problem, _known_on_board(problem), _sides(problem), _lists(problem))
    except NotTrue as err:
        return str(err)
    return AGREES


def _known_on_board(problem: Problem) -> set[Pair]:
    """The numbers that are given, and those of the steps on the way."""
    known = {number(given.number) for given in problem.givens} | {*map(number, _counts_of_series(problem.ask) + _known_to_all(problem.ask))}
    for step in problem.steps:
        numbers, result = _read(step.text)
        known |= {*numbers, result}
    return known


def _sides(problem: Problem) -> tuple[Pair, ...]:
    goal = problem.ask.goal
    if isinstance(goal, Same):
        told = {given.expr: number(given.number) for given in problem.givens}
        return tuple(lowest(*_pair(goal.target, {**told, **dict.fromkeys(_letters(goal.target), tried)}, {})) for tried in LETTERS)
    return _pairs(problem, goal) if isinstance(goal, Choice | Truth) else ()


def _lists(problem: Problem) -> Lists:
    """The lists of the goal's statistics, in the order in which they are worked out."""
    if isinstance(problem.ask.goal, Same):
        return Lists((), (), ())
    stats = [stat for expr in problem.ask.goal.exprs for stat in _stats(expr) if isinstance(stat.series[0], Quantity)]
    printed = {given.expr for given in problem.givens}
    tallies = [tally for expr in problem.ask.goal.exprs for tally in _tallies(expr) if tally not in printed]
    return lists_of(((stat.name, _listed(problem, stat)) for stat in stats), (_meant(problem, tally) for tally in tallies))


def _tallies(expr: Expr) -> tuple[Tally, ...]:
    if isinstance(expr, Op):
        return tuple(tally for arg in expr.args for tally in _tallies(arg))
    return (expr,) if isinstance(expr, Tally) else ()


def _meant(problem: Problem, tally: Tally) -> tuple[Pair, ...]:
    """The numbers of a list that a tally counts."""
    bounds = [(one.number, one.bottom) for one in tally.bounds]
    return tuple(one for one in _listed(problem, tally) if _is_meant(tally.test, one, bounds))


def _looked_over(problem: Problem, expr: Expr) -> tuple[Pair, ...]:
    """The numbers of the lists that tallies count in: one that is added up from cells may be not meant."""
    return tuple(one for tally in _tallies(expr) for one in _listed(problem, tally))


def _is_meant(test: str, one: Pair, bounds: list[Pair]) -> bool:
    if test == "digits":
        (last, _), (need, _) = bounds
        return sum(str(one[0]).count(str(digit)) for digit in range(1, last + 1)) >= need
    first, *further = (one[0] * than[1] - than[0] * one[1] for than in bounds)
    if test == "from":
        return first >= 0 >= further[0]
    return first == 0 if test == "=" else first > 0 if test == ">" else first < 0


def _check(problem: Problem) -> None:
    ask, steps = problem.ask, tuple(step.text for step in problem.steps)
    in_words = {*_PRINTED.findall(problem.text), *_MIXED.findall(problem.text)}
    for given in problem.givens:
        if given.where == "words" and given.number not in in_words:
            raise NotTrue(f"{given.number} does not stand in the words")
    givens = tuple(given.number for given in problem.givens) + _counts_of_series(ask) + _known_to_all(ask)
    printed = {given.expr for given in problem.givens}
    goal = ask.goal
    if isinstance(goal, Same):
        _check_expression(problem, goal, steps)
        return
    operations = sum(_operations(expr, printed) for expr in goal.exprs) - _means_used_again(ask)
    if isinstance(goal, Value):
        operations -= _used_again(goal.expr, printed)
    if isinstance(goal, Truth):
        _check_statement(problem, goal, steps, givens, operations)
        return
    if isinstance(goal, Choice):
        pairs = _pairs(problem, goal)
        results = follow(steps, givens, operations, (*pairs, *_crossed_off(problem, goal)))
        if not set(pairs) <= {number(given) for given in givens} | set(results):
            raise NotTrue("a fraction is neither given nor worked out")
        _check_winner(problem, goal, pairs)
        return
    if isinstance(goal, QuotientRemainder):
        _check_groups(problem, goal, steps, givens, operations)
        return
    if isinstance(goal, Listing):
        _check_list(problem, goal, steps, givens, operations)
        return
    if isinstance(goal, Changes):
        _check_changes(problem, goal, steps, givens, operations)
        return
    if isinstance(goal, Chosen):
        _check_chosen(problem, goal, steps, givens)
        return
    if isinstance(goal.expr, Op) and goal.expr.symbol in ("gcf", "lcm"):
        _check_common(problem, goal.expr, steps, givens, operations)
        return
    exact = problem.answer.exact
    end = (int(exact.numerator), int(exact.denominator))  # type: ignore[union-attr]
    stat = goal.expr if isinstance(goal.expr, Stat) else None
    listed = () if stat is None else _listed(problem, stat)
    results = follow(steps, givens, operations, (end, *_crossed_off(problem, goal), *_looked_over(problem, goal.expr)))
    if not results:
        raise NotTrue("no step")
    if results[-1] != end:
        raise NotTrue(f"the steps end in {results[-1][0]}/{results[-1][1]}")
    if stat is not None and not is_statistic(stat.name, end, listed):
        raise NotTrue(f"{problem.answer.shown} is not the {stat.name} of the list")
    if not _in_form(problem.answer, steps[-1]):
        raise NotTrue(f"the steps end in another form than {problem.answer.shown}")


@lru_cache(maxsize=65536)
def _read(step: str) -> tuple[tuple[Pair, ...], Pair]:
    """The numbers that a step works with, and its result, once its equality is known to be true."""
    left, equals, right = step.partition(" = ")
    if not equals:
        raise NotTrue(f"{step!r} is no equality")
    turned = _TURNED.fullmatch(left)
    if turned is not None:
        before, after = number(turned[1] or turned[2]), number(right)
        if after != (abs(before[0]) if turned[1] else -before[0], before[1]):
            raise NotTrue(f"{step!r} is not true")
        return (before,), after
    pieces = _OPERATOR.split(left)
    numbers = tuple(number(piece) for piece in pieces[::2])
    operators = pieces[1::2]
    if len(set(operators)) > 1:
        raise NotTrue(f"{step!r} mixes operations")
    top, bottom = numbers[0]
    for sign, (other_top, other_bottom) in zip(operators, numbers[1:], strict=True):
        if sign == "+":
            top, bottom = top * other_bottom + other_top * bottom, bottom * other_bottom
        elif sign == "-":
            top, bottom = top * other_bottom - other_top * bottom, bottom * other_bottom
        elif sign == "*":
            top, bottom = top * other_top, bottom * other_bottom
        elif other_top == 0:
            raise NotTrue(f"{step!r} divides by zero")
        else:
            top, bottom = top * other_bottom, bottom * other_top
    result = number(right)
    if lowest(top, bottom) != result:
        raise NotTrue(f"{step!r} is not true")
    return numbers, result


def follow(steps: tuple[str, ...], givens: tuple[str, ...], operations: int, ends: tuple[Pair, ...]) -> tuple[Pair, ...]:
    """The result of each step, each one true, made from what is known, and of use.

    Args:
        steps: equalities in ASCII.
        givens: numbers that the pupil has, as printed or counted.
        operations: how many operations the ask leaves to the pupil; there are at least as many in the steps.
        ends: what the steps are to lead to.
    Raises:
        NotTrue: see above.
    """
    known = {number(given) for given in givens}
    known.add((1, 1))
    if any("..." in given for given in givens):  # the point of a repeating decimal is moved by as many places as it takes
        known.update((10**places, 1) for places in range(1, 8))
    waiting: dict[Pair, str] = {}  # results that no later step has used yet
    results = []
    done = 0
    for step in steps:
        numbers, result = _read(step)
        for one in numbers:
            if one not in known:
                raise NotTrue(f"{step!r} works with a number that nobody gave")
            waiting.pop(one, None)
        done += len(numbers) - 1
        known.add(result)
        waiting[result] = step
        results.append(result)
    for result, step in waiting.items():
        if result not in ends:
            raise NotTrue(f"{step!r} leads nowhere")
    if done < operations:
        raise NotTrue(f"{operations} operations, but steps for {done}")
    return tuple(results)


def _in_form(answer: Answer, last: str) -> bool:
    """Whether the last step ends in the form that the words demand: in a percent, a decimal, a mixed number."""
    form, places = answer.demand
    end = last.rpartition(" = ")[2]
    if answer.kind == "ratio":
        return end == answer.shown.replace(":", "/")  # the two numbers as they were counted, in their order
    if form == "percent":
        return end.endswith("%")
    if form in ("decimal", "mixed", "mixed:any", "simplest", "fraction") and places is None and "..." not in answer.shown:
        return end == answer.shown
    return True  # any form is right, or the exact value is worked out and the rounding is the last thing to do


def _pairs(problem: Problem, goal: Choice | Truth | QuotientRemainder | Listing | Changes | Chosen) -> tuple[Pair, ...]:
    """The value of each label of a choice, or of both sides of a statement, as the givens have it."""
    numbers = {given.expr: number(given.number) for given in problem.givens}
    read = {given.expr: numbers[given.expr] for given in problem.givens if given.where == "table"}
    return tuple(lowest(*_pair(expr, numbers, read)) for expr in goal.exprs)


def _crossed_off(problem: Problem, goal: Choice | Truth | Value | Ratio) -> tuple[Pair, ...]:
    """The numbers of the lists of which only a few are used: one that is added up from cells may be crossed off."""
    stats = [stat for expr in goal.exprs for stat in _stats(expr) if stat.name not in ADDED_UP]
    return tuple(one for stat in stats for one in _listed(problem, stat))


def _listed(problem: Problem, stat: Stat | Tally) -> tuple[Pair, ...]:
    """The numbers of a list, as the givens have them."""
    numbers = {given.expr: number(given.number) for given in problem.givens}
    read = {given.expr: numbers[given.expr] for given in problem.givens if given.where == "table"}
    return tuple(lowest(*_pair(one, numbers, read)) for one in stat.series)


def _check_winner(problem: Problem, goal: Choice, pairs: tuple[Pair, ...]) -> None:
    """The answer has to be the label whose value beats every other when cross-multiplied."""
    sign = 1 if goal.most else -1
    winners = [
        label
        for label, (top, bottom) in zip(goal.labels, pairs, strict=True)
        if sum(sign * (a * bottom - top * b) >= 0 for a, b in pairs) == 1
    ]
    if winners != [problem.answer.exact]:
        raise NotTrue(f"the steps point to {winners}")


def _check_statement(problem: Problem, goal: Truth, steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> None:
    """Both sides have to be given or worked out. Where something is put in groups, the steps have to say how many and what is over."""
    left, right = _pairs(problem, goal)
    if not goal.divides:
        if goal.left == goal.right:
            operations //= 2  # two sides alike are worked out once
        results = follow(steps, givens, operations, (left, right, *_crossed_off(problem, goal)))
        told = {number(given) for given in givens} | {(0, 1) for side in goal.exprs if side == NOTHING}
        if not {left, right} <= told | set(results):
            raise NotTrue("a side is neither given nor worked out")
        apart = left[0] * right[1] - right[0] * left[1]
        true = apart == 0 if goal.test == "=" else apart > 0 if goal.test == ">" else apart < 0
    else:
        full, over = _divided(left, right)
        amount, size = left[0], right[0]
        results = follow(steps, (*givens, str(full), str(size)), operations + 1, (left, (full * size, 1) if not over else (over, 1)))
        # A double, and one more where one is over; else the full groups, taken away where something is over.
        doubled = ((full, 1), (full, 1), *(((1, 1),) if over else ()))
        grouped = ((amount, 1), (full * size, 1)) if over else ((full, 1), (size, 1))
        ends = {(doubled, left)} if size == 2 else set()
        ends.add((grouped, (over, 1) if over else left))
        if not results or _read(steps[-1]) not in ends:
            raise NotTrue("the steps do not say what is over")
        true = (over == 0) == (goal.test == "multiple")
    reasons = [lowest(int(one.value.numerator), int(one.value.denominator)) for one in problem.answer.reasons]
    if reasons != ([left, right] if problem.answer.kind == "rubric" else []):
        raise NotTrue("the reasons are not what the steps lead to")
    if problem.answer.kind == "rubric":
        _check_written_down(problem, goal, steps, givens)
    if problem.answer.exact != ("true" if true else "false"):
        raise NotTrue(f"the steps show it to be {str(true).lower()}")


def _check_written_down(problem: Problem, goal: Truth, steps: tuple[str, ...], givens: tuple[str, ...]) -> None:
    """What the reasons compare ends a step as it is written there; only a side that is given may be written as a given is."""
    printed = {given.expr for given in problem.givens}
    ends = {step.rpartition(" = ")[2] for step in steps}
    for side, shown in zip(goal.exprs, problem.answer.because.split(" ")[::2], strict=False):
        given = side in printed or isinstance(side, Stated)
        if shown not in ends and not (given and shown in givens):
            raise NotTrue(f"{problem.answer.because} compares what was not worked out")


def _divided(amount: Pair, size: Pair) -> Pair:
    """How many times a size can be taken away, and what is over then."""
    if (amount[1], size[1]) != (1, 1) or amount[0] < 1 or size[0] < 1:
        raise NotTrue("only whole numbers are put in groups")
    full, over = 0, amount[0]
    while over >= size[0]:
        full, over = full + 1, over - size[0]
    return full, over


def _check_groups(problem: Problem, goal: QuotientRemainder, steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> None:
    """The steps have to take the full groups away from the amount, and to end in what is wanted."""
    left, right = _pairs(problem, goal)
    full, over = _divided(left, right)
    (amount, _), (size, _) = left, right
    wanted = {"both": over, "over": over, "full": full, "needed": full + (over > 0)}[goal.want]
    if size == 2 and goal.want == "full" and not over:  # the number that is added to itself
        doubled = follow(steps, (*givens, str(full)), operations + 1, (left,))
        if not doubled or _read(steps[-1]) != (((full, 1), (full, 1)), left) or problem.answer.exact != full:
            raise NotTrue(f"the steps do not double {full}")
        return
    results = follow(steps, (*givens, str(full)), operations + 1, ((over, 1), (wanted, 1)))
    lines = [_read(step) for step in steps]
    if (((full, 1), (size, 1)), (full * size, 1)) not in lines or (over and (((amount, 1), (full * size, 1)), (over, 1)) not in lines):
        raise NotTrue("the steps do not say what is over")
    if not results or (results[-1] != (wanted, 1) and over):
        raise NotTrue(f"the steps do not end in {wanted}")
    exact = problem.answer.exact
    if exact != f"{full} r {over}" if goal.want == "both" else exact != wanted:
        raise NotTrue(f"the steps show {full} full and {over} over")


def _check_list(problem: Problem, goal: Listing, steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> None:
    """The last steps have to be the pairs of the answer, in its order, each true, none left out; those before lead to the number."""
    amount, *wholes = _pairs(problem, goal)
    whole = wholes[0] if wholes else (1, 1)
    top, bottom = lowest(amount[0] * whole[0], amount[1] * whole[1])
    if bottom != 1 or whole[1] != 1:
        raise NotTrue("only whole numbers are listed")
    wanted = []
    for one in range(1, top + 1):
        other, over = (top - one, 0) if wholes else _divided((top, 1), (one, 1))
        if one <= other and not over:
            wanted.append(f"{one}/{whole[0]} + {other}/{whole[0]}" if wholes else f"{one} * {other}")
    first = len(steps) - len(wanted)
    listed = steps[max(first, 0) :]
    if first < 0 or [step.partition(" = ")[0] for step in listed] != wanted or any(_read(step)[1] != amount for step in listed):
        raise NotTrue(f"the steps do not list {', '.join(wanted)}")
    follow(steps[:first], givens, operations, (amount,))
    if problem.answer.exact != ", ".join(wanted):
        raise NotTrue(f"the steps list {', '.join(wanted)}")


def _check_changes(problem: Problem, goal: Changes, steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> None:
    """Every count that each number may become is tried; those that do have to be the last steps, and those before lead to the change."""
    values = _pairs(problem, goal)
    if any(bottom != 1 for _, bottom in values):
        raise NotTrue("only whole numbers change")
    *numbers, to, most = (top for top, _ in values)
    wanted = to * len(numbers) if goal.name == "mean" else to
    fitting = [
        (old, new)
        for place, old in enumerate(numbers)
        for new in range(most + 1)
        if new != old and sum(numbers[:place]) + new + sum(numbers[place + 1 :]) == wanted
    ]
    change = abs(wanted - sum(numbers))
    listed = [f"{old} {'+' if new > old else '-'} {change} = {new}" for old, new in fitting]
    first = len(steps) - len(listed)
    if not fitting or first < 0 or list(steps[first:]) != listed:
        raise NotTrue(f"the steps do not list {', '.join(listed)}")
    own = (str(len(numbers)),) if goal.name == "mean" else ()
    follow(steps[:first], (*givens, *own), operations + len(numbers) + len(own), ((change, 1),))
    if problem.answer.exact != ", ".join(f"{old} to {new}" for old, new in fitting):
        raise NotTrue(f"the steps list {', '.join(listed)}")


def _check_chosen(problem: Problem, goal: Chosen, steps: tuple[str, ...], givens: tuple[str, ...]) -> None:
    """Every set of the numbers is tried; the last steps have to be those with the sum, and those before bring the numbers to one bottom."""
    *values, (top, bottom) = _pairs(problem, goal)
    if list(map(number, goal.labels)) != values:
        raise NotTrue("a number is written as another than it is")
    found = []
    for mask in range(1 << len(values)):
        some = [place for place in range(len(values)) if mask >> place & 1]
        over = prod(values[place][1] for place in some)
        tops = sum(values[place][0] * (over // values[place][1]) for place in some)
        if len(some) == goal.size and tops * bottom == top * over:
            found.append(some)
    found.sort()
    first = len(steps) - len(found)
    listed = [[number(one) for one in step.partition(" = ")[0].split(" + ")] for step in steps[max(first, 0) :]]
    if not found or first < 0 or listed != [[values[place] for place in some] for some in found]:
        raise NotTrue("the steps do not list the sums that are right")
    follow(steps, givens, len(found) * (goal.size - 1), (*values, (top, bottom)))
    if problem.answer.exact != ", ".join(" + ".join(goal.labels[place] for place in some) for some in found):
        raise NotTrue(f"the steps list {len(found)} other sums")


def _check_expression(problem: Problem, goal: Same, steps: tuple[str, ...]) -> None:
    """Nothing is worked out. Tried with numbers for the letter, one option only has to come to what the story makes."""
    told = {given.expr: number(given.number) for given in problem.givens}
    fits = set(goal.labels)
    for tried in ((3, 1), (7, 2), (50, 1)):
        numbers = {**told, **dict.fromkeys(_letters(goal.target), tried)}
        target, *options = (lowest(*_pair(expr, numbers, {})) for expr in goal.exprs)
        fits &= {label for label, option in zip(goal.labels, options, strict=True) if option == target}
    if steps or fits != {problem.answer.exact}:
        raise NotTrue(f"{sorted(fits)} fit")


def _letters(expr: Expr) -> tuple[Expr, ...]:
    if isinstance(expr, Op):
        return tuple(letter for arg in expr.args for letter in _letters(arg))
    return (expr,) if isinstance(expr, Unknown) else ()


def _check_common(problem: Problem, expr: Op, steps: tuple[str, ...], givens: tuple[str, ...], operations: int) -> None:
    """The last two steps have to lead from both numbers to the answer, by numbers that share no factor but 1."""
    numbers = {given.expr: number(given.number) for given in problem.givens}
    read = {given.expr: numbers[given.expr] for given in problem.givens if given.where == "table"}
    (one, _), (other, _) = (lowest(*_pair(arg, numbers, read)) for arg in expr.args)
    shared = max(size for size in range(1, min(one, other) + 1) if one % size == other % size == 0)
    sign, end = ("/", shared) if expr.symbol == "gcf" else ("*", one * other // shared)
    by = (one // shared, other // shared) if sign == "/" else (other // shared, one // shared)
    follow(steps, (*givens, *map(str, by)), operations, ((end, 1),))
    if steps[-2:] != (f"{one} {sign} {by[0]} = {end}", f"{other} {sign} {by[1]} = {end}"):
        raise NotTrue("the steps do not say what both numbers share")
    if problem.answer.exact != end:
        raise NotTrue(f"the steps end in {end}")


def _pair(expr: Expr, numbers: dict[Expr, Pair], read: dict[Expr, Pair]) -> Pair:
    """A value as a pair: the given itself, the sum of the cells read for it, or the part over the whole."""
    if expr in numbers:
        return numbers[expr]
    if isinstance(expr, Op):
        (top, bottom), *others = (_pair(arg, numbers, read) for arg in expr.args)
        if expr.symbol == "opposite" or (expr.symbol == "abs" and top < 0):
            top = -top
        for other_top, other_bottom in others:
            if expr.symbol == "/":
                top, bottom = top * other_bottom, bottom * other_top
            elif expr.symbol == "*":
                top, bottom = top * other_top, bottom * other_bottom
            else:
                sign = 1 if expr.symbol == "+" else -1
                top, bottom = top * other_bottom + sign * other_top * bottom, bottom * other_bottom
        return top, bottom
    if isinstance(expr, Stat):
        return statistic(expr.name, tuple(lowest(*_pair(one, numbers, read)) for one in expr.series))
    if isinstance(expr, Stated):
        return expr.number, expr.bottom  # 2 in a pair, which no word has to print
    if isinstance(expr, Quantity):
        cells = [top for one, (top, _) in read.items() if isinstance(one, Quantity) and _within(one, expr)]
        if cells:
            return sum(cells), 1
    raise NotTrue(f"nobody gave {expr}")


def _within(cell: Quantity, total: Quantity) -> bool:
    """Whether a cell that was read is part of a total."""
    return cell.measure == total.measure and all(
        labels is None or (one is not None and set(one) <= set(labels)) for one, labels in zip(cell.scope, total.scope, strict=True)
    )


def _counts_of_series(ask: Ask) -> tuple[str, ...]:
    """How many numbers a mean is of, or the two in the middle of a list: structural constants that no word has to print."""
    return tuple(str(len(stat.series)) if stat.name in ADDED_UP else "2" for expr in ask.goal.exprs for stat in _stats(expr))


def _known_to_all(ask: Ask) -> tuple[str, ...]:
    """100 cents in a dollar, where the question is about a dollar; how many trials are named, where pins per trial are meant."""
    waiting: list[Expr] = [] if isinstance(ask.goal, Choice) else list(ask.goal.exprs)
    for expr in waiting:
        if isinstance(expr, Op):
            waiting.extend(expr.args)
    counted = tuple(str(one.number) for one in waiting if isinstance(one, Stated) and one.meaning == "how many")
    return (*counted, str(DOLLAR.number)) if DOLLAR in waiting else counted


def _stats(expr: Expr) -> tuple[Stat, ...]:
    if isinstance(expr, Op):
        return tuple(stat for arg in expr.args for stat in _stats(arg))
    return (expr,) if isinstance(expr, Stat) else ()


def _operations(expr: Expr, printed: set[Expr]) -> int:
    """The operations of an ask that the words leave to the pupil, at the least."""
    if expr in printed:
        return 0
    if isinstance(expr, Stat):
        return _in_statistic(expr.name, len(expr.series))
    if isinstance(expr, Op):
        return len(expr.args) - 1 + sum(_operations(arg, printed) for arg in expr.args)
    return 0


def _means_used_again(ask: Ask) -> int:
    """The operations of means that are worked out once and used for a deviation besides."""
    stats = {stat for expr in ask.goal.exprs for stat in _stats(expr)}
    return sum(len(stat.series) for stat in stats if stat.name == "mean absolute deviation" and stat._replace(name="mean") in stats)


def _used_again(expr: Expr, printed: set[Expr]) -> int:
    """The operations of what is worked out once and used twice: a total, and 20% of the total."""
    seen = Counter(_left_to_do(expr, printed))
    return sum((times - 1) * (len(op.args) - 1) for op, times in seen.items())


def _left_to_do(expr: Expr, printed: set[Expr]) -> Iterator[Op]:
    if isinstance(expr, Op) and expr not in printed:
        yield expr
        for arg in expr.args:
            yield from _left_to_do(arg, printed)


def _in_statistic(name: StatName, size: int) -> int:
    if name == "mean":
        return size
    if name == "mean absolute deviation":
        return 2 * size + 1  # a mean, at least one distance, a mean
    if name == "range":
        return 1
    # One number in the middle is found; two are added and halved.
    middle = 0 if (size if name == "median" else size // 2) % 2 else 2
    return 2 * middle + 1 if name == "interquartile range" else middle
