"""Steps that put a number in groups: how many full ones there are, and what is over."""

from __future__ import annotations

from mathgen.asks.expression import QuotientRemainder
from mathgen.proof.by_steps.equalities import read_step
from mathgen.proof.by_steps.work import Work
from mathgen.proof.step_numbers import NotTrue, Pair


def divided(amount: Pair, size: Pair) -> Pair:
    """How many times a size can be taken away, and what is over then.

    Raises:
        NotTrue: one of them is no whole number above zero.
    """
    if (amount[1], size[1]) != (1, 1) or amount[0] < 1 or size[0] < 1:
        raise NotTrue("only whole numbers are put in groups")
    full, over = 0, amount[0]
    while over >= size[0]:
        full, over = full + 1, over - size[0]
    return full, over


def check_shared_out(work: Work, amount: Pair, size: Pair) -> bool:
    """Whether nothing is over, where the last step has to say what is.

    A double, and one more where one is over; else the full groups, taken away where something is over.
    """
    full, over = divided(amount, size)
    all_full = (full * size[0], 1)
    results = work.follow(amount, (over, 1) if over else all_full, known=(str(full), str(size[0])), more=1)
    doubled = ((full, 1), (full, 1), *(((1, 1),) if over else ()))
    grouped = (amount, all_full) if over else ((full, 1), size)
    ends = {(doubled, amount)} if size[0] == 2 else set()
    ends.add((grouped, (over, 1) if over else amount))
    if not results or read_step(work.steps[-1]) not in ends:
        raise NotTrue("the steps do not say what is over")
    return over == 0


def check_groups(work: Work, goal: QuotientRemainder) -> None:
    """The steps have to take the full groups away from the amount, and to end in what is wanted."""
    left, right = work.given.values(goal.exprs)
    full, over = divided(left, right)
    (amount, _), (size, _) = left, right
    exact = work.answer.exact
    wanted = {"both": over, "over": over, "full": full, "needed": full + (over > 0)}[goal.want]
    if size == 2 and goal.want == "full" and not over:  # the number that is added to itself
        doubled = work.follow(left, known=(str(full),), more=1)
        if not doubled or read_step(work.steps[-1]) != (((full, 1), (full, 1)), left) or exact != full:
            raise NotTrue(f"the steps do not double {full}")
        return
    results = work.follow((over, 1), (wanted, 1), known=(str(full),), more=1)
    lines = [read_step(step) for step in work.steps]
    if (((full, 1), (size, 1)), (full * size, 1)) not in lines or (over and (((amount, 1), (full * size, 1)), (over, 1)) not in lines):
        raise NotTrue("the steps do not say what is over")
    if not results or (results[-1] != (wanted, 1) and over):
        raise NotTrue(f"the steps do not end in {wanted}")
    if exact != f"{full} r {over}" if goal.want == "both" else exact != wanted:
        raise NotTrue(f"the steps show {full} full and {over} over")
