"""What two problems on one sheet must not do to each other."""

from __future__ import annotations

from mathgen.asks.expression import DOLLAR, Choice, Expr, Measured, Op, Price, Quantity, Ratio, Truth, Value
from mathgen.bank.builder import Candidate
from mathgen.trials.scope import Scope


def asked(candidate: Candidate) -> Expr | None:
    """The quantity, or expression, that a candidate asks for; None for "which" and "is it so"."""
    goal = candidate.draft.ask.goal
    return goal.expr if isinstance(goal, Value | Ratio) else None


def asked_totals(candidate: Candidate) -> frozenset[Quantity]:
    """Every total that equals a candidate's answer in meaning: printed beside it, that total would give it away."""
    expr = asked(candidate)
    found = {Quantity("down", scope) for scope in candidate.draft.must_not_show}
    if isinstance(expr, Quantity):
        found.add(expr)
    hits = candidate.draft.roles.get("hits")
    if isinstance(hits, Quantity) and hits not in candidate.words.printed:
        found.add(hits)  # trials are to be judged: no other problem may tell how many were successes
    rest = candidate.draft.roles.get("rest")
    if isinstance(rest, Quantity):
        found = {rest}
    return frozenset(found)


def gives_away(one: Candidate, other: Candidate) -> bool:
    """Whether one candidate's words or givens print what the other asks for, or all but print it."""
    printed = {given.expr for given in one.givens}
    totals = asked_totals(other)
    if totals and totals & (printed | (_all_but_printed(one) - _all_but_printed(other))):
        return True
    expr = asked(other)
    if not isinstance(expr, Op):
        return False
    price = expr.args[0]
    # "What part of a dollar is 25¢?" beside "The price of the tape is $0.25."
    in_dollars = isinstance(price, Price) and expr == Op("/", (price, DOLLAR)) and price._replace(unit="dollars") in printed
    return expr in printed or in_dollars


def _all_but_printed(one: Candidate) -> set[Quantity]:
    """Counts of pins knocked down that a fraction of a set, or what was left standing, tells to whoever knows how many were set up."""
    tops = (given.expr.args[0] if isinstance(given.expr, Op) and given.expr.symbol == "/" else given.expr for given in one.givens)
    return {Quantity("down", top.scope) for top in tops if isinstance(top, Quantity) and top.measure != "set_up"}


def same_question(one: Candidate, other: Candidate) -> bool:
    """Whether the two are alike once numbers and names are taken out: the same model in the same words."""
    return one.model.name == other.model.name and one.words.frame == other.words.frame


def clash(one: Candidate, other: Candidate) -> bool:
    """Whether the two may not share a sheet."""
    return same_answer(one, other) or alike_or_telling(one, other)


def alike_or_telling(one: Candidate, other: Candidate) -> bool:
    """Whether the two are much the same, or one gives the other away: all that parts them but an equal answer."""
    return (
        one.draft.ask == other.draft.ask
        or same_question(one, other)
        or gives_away(one, other)
        or gives_away(other, one)
        or _same_story(one, other)
        or _answer_by_graph(one, other)
        or _answer_by_graph(other, one)
    )


def same_answer(one: Candidate, other: Candidate) -> bool:
    """No two numeric keys on a page are equal. A name, and yes or no, may come again."""
    return not isinstance(one.draft.ask.goal, Choice | Truth) and one.exact == other.exact


def _same_story(one: Candidate, other: Candidate) -> bool:
    """The same printed numbers of the same things, asked twice."""
    a = frozenset(given.expr for given in one.givens if isinstance(given.expr, Quantity | Measured | Price))
    b = frozenset(given.expr for given in other.givens if isinstance(given.expr, Quantity | Measured | Price))
    return bool(a) and a == b


def graph_spot(candidate: Candidate) -> tuple[object, object] | None:
    """Which graph a candidate reads: its groups and trials; None for one that reads none."""
    for given in candidate.givens:
        if given.where == "graph" and given.scope is not None:
            return given.scope.groups, given.scope.trials
    return None


def _answer_by_graph(graph: Candidate, other: Candidate) -> bool:
    """Whether the graph that one reads shows a bar that the other asks for; or the two need different graphs."""
    spot = graph_spot(graph)
    if spot is None:
        return False
    if graph_spot(other) not in (None, spot):
        return True
    return any(_is_bar(quantity.scope, spot) for quantity in asked_totals(other) if quantity.measure == "down")


def _is_bar(scope: Scope, spot: tuple[object, object]) -> bool:
    return (scope.groups, scope.trials) == spot and scope.colors is not None and len(scope.colors) == 1
