"""Steps that make numbers ready to compare: which is greatest, whether a statement is true, which expression fits a story."""

from __future__ import annotations

from mathgen.asks.expression import NOTHING, Choice, Expr, Op, Same, Stated, Truth, Unknown
from mathgen.proof.by_steps.groups import check_shared_out
from mathgen.proof.by_steps.work import Work
from mathgen.proof.step_numbers import NotTrue, Pair, lowest, number


def check_winner(work: Work, goal: Choice) -> None:
    """The answer has to be the label whose value beats every other when cross-multiplied."""
    pairs = work.given.values(goal.exprs)
    results = work.follow(*pairs, *work.given.crossed_off(goal.exprs))
    if not set(pairs) <= {*map(number, work.given.texts), *results}:
        raise NotTrue("a fraction is neither given nor worked out")
    sign = 1 if goal.most else -1
    winners = [
        label
        for label, (top, bottom) in zip(goal.labels, pairs, strict=True)
        if sum(sign * (a * bottom - top * b) >= 0 for a, b in pairs) == 1
    ]
    if winners != [work.answer.exact]:
        raise NotTrue(f"the steps point to {winners}")


def check_statement(work: Work, goal: Truth) -> None:
    """Both sides have to be given or worked out. Where something is put in groups, the steps have to say how many and what is over."""
    answer = work.answer
    left, right = work.given.values(goal.exprs)
    true = check_shared_out(work, left, right) == (goal.test == "multiple") if goal.divides else _compared(work, goal, left, right)
    reasons = [lowest(int(one.value.numerator), int(one.value.denominator)) for one in answer.reasons]
    if reasons != ([left, right] if answer.kind == "rubric" else []):
        raise NotTrue("the reasons are not what the steps lead to")
    if answer.kind == "rubric":
        _check_written_down(work, goal)
    if answer.exact != ("true" if true else "false"):
        raise NotTrue(f"the steps show it to be {str(true).lower()}")


def _compared(work: Work, goal: Truth, left: Pair, right: Pair) -> bool:
    """Whether the statement is true, once both sides are known to be worked out; two sides alike are worked out once."""
    once = work._replace(operations=work.operations // 2) if goal.left == goal.right else work
    results = once.follow(left, right, *work.given.crossed_off(goal.exprs))
    told = {*map(number, work.given.texts)} | {(0, 1) for side in goal.exprs if side == NOTHING}
    if not {left, right} <= told | set(results):
        raise NotTrue("a side is neither given nor worked out")
    apart = left[0] * right[1] - right[0] * left[1]
    return apart == 0 if goal.test == "=" else apart > 0 if goal.test == ">" else apart < 0


def _check_written_down(work: Work, goal: Truth) -> None:
    """What the reasons compare ends a step as it is written there; only a side that is given may be written as a given is."""
    ends = {step.rpartition(" = ")[2] for step in work.steps}
    for side, shown in zip(goal.exprs, work.answer.because.split(" ")[::2], strict=False):
        given = side in work.given.numbers or isinstance(side, Stated)
        if shown not in ends and not (given and shown in work.given.texts):
            raise NotTrue(f"{work.answer.because} compares what was not worked out")


def check_expression(work: Work, goal: Same) -> None:
    """Nothing is worked out. Tried with numbers for the letter, one option only has to come to what the story makes."""
    letters = letters_in(goal.target)
    fits = set(goal.labels)
    for tried in ((3, 1), (7, 2), (50, 1)):
        target, *options = (work.given.with_letters(expr, letters, tried) for expr in goal.exprs)
        fits &= {label for label, option in zip(goal.labels, options, strict=True) if option == target}
    if work.steps or fits != {work.answer.exact}:
        raise NotTrue(f"{sorted(fits)} fit")


def letters_in(expr: Expr) -> tuple[Expr, ...]:
    """The letters in an expression."""
    if isinstance(expr, Op):
        return tuple(letter for arg in expr.args for letter in letters_in(arg))
    return (expr,) if isinstance(expr, Unknown) else ()
