"""Steps that list every way to do something: all ways are tried here, none may be left out, and those before lead up to them."""

from __future__ import annotations

from math import prod

from mathgen.asks.expression import Changes, Chosen, Listing
from mathgen.proof.by_steps.equalities import read_step
from mathgen.proof.by_steps.groups import divided
from mathgen.proof.by_steps.work import Work
from mathgen.proof.step_numbers import NotTrue, lowest, number


def check_list(work: Work, goal: Listing) -> None:
    """The last steps have to be the pairs of the answer, in its order, each true, none left out; those before lead to the number."""
    steps = work.steps
    amount, *wholes = work.given.values(goal.exprs)
    whole = wholes[0] if wholes else (1, 1)
    top, bottom = lowest(amount[0] * whole[0], amount[1] * whole[1])
    if bottom != 1 or whole[1] != 1:
        raise NotTrue("only whole numbers are listed")
    wanted = []
    for one in range(1, top + 1):
        other, over = (top - one, 0) if wholes else divided((top, 1), (one, 1))
        if one <= other and not over:
            wanted.append(f"{one}/{whole[0]} + {other}/{whole[0]}" if wholes else f"{one} * {other}")
    first = len(steps) - len(wanted)
    listed = steps[max(first, 0) :]
    if first < 0 or [step.partition(" = ")[0] for step in listed] != wanted or any(read_step(step)[1] != amount for step in listed):
        raise NotTrue(f"the steps do not list {', '.join(wanted)}")
    work._replace(steps=steps[:first]).follow(amount)
    if work.answer.exact != ", ".join(wanted):
        raise NotTrue(f"the steps list {', '.join(wanted)}")


def check_changes(work: Work, goal: Changes) -> None:
    """Every count that each number may become is tried; those that do have to be the last steps, and those before lead to the change."""
    steps = work.steps
    values = work.given.values(goal.exprs)
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
    work._replace(steps=steps[:first]).follow((change, 1), known=own, more=len(numbers) + len(own))
    if work.answer.exact != ", ".join(f"{old} to {new}" for old, new in fitting):
        raise NotTrue(f"the steps list {', '.join(listed)}")


def check_chosen(work: Work, goal: Chosen) -> None:
    """Every set of the numbers is tried; the last steps have to be those with the sum, and those before bring the numbers to one bottom."""
    steps = work.steps
    *values, (top, bottom) = work.given.values(goal.exprs)
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
    work._replace(operations=len(found) * (goal.size - 1)).follow(*values, (top, bottom))
    if work.answer.exact != ", ".join(" + ".join(goal.labels[place] for place in some) for some in found):
        raise NotTrue(f"the steps list {len(found)} other sums")
