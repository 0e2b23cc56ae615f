"""Steps read from their text: each a true equality of numbers that are known by then, and of use."""

from __future__ import annotations

import re
from functools import lru_cache

from mathgen.proof.step_numbers import NotTrue, Pair, in_turn, number

_TURNED = re.compile(r"\|(-?[^|]+)\||-\(([^()]+)\)")  # an absolute value, an opposite
_OPERATOR = re.compile(r" ([-+*/]) ")


@lru_cache(maxsize=65536)
def read_step(step: str) -> tuple[tuple[Pair, ...], Pair]:
    """The numbers that a step works with, and its result, once its equality is known to be true.

    Raises:
        NotTrue: it is no equality, not true, mixes operations or divides by zero.
    """
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
    if operators[:1] == ["/"] and (0, 1) in numbers[1:]:
        raise NotTrue(f"{step!r} divides by zero")
    result = number(right)
    if (in_turn(operators[0], numbers) if operators else numbers[0]) != result:
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
        numbers, result = read_step(step)
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
