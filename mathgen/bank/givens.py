"""The numbers that a pupil needs: what the words print, and what they leave to be read from the table or the graph."""

from __future__ import annotations

from functools import lru_cache

from sympy import Integer

from mathgen.asks.evaluate import value
from mathgen.asks.expression import DOLLAR, Expr, Measured, Op, Price, Quantity, Ratio, Stat, Stated, Tally, Value
from mathgen.bank.desk import Desk
from mathgen.problems.draft import Draft
from mathgen.problems.record import PRICE, Cell, Given
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL, Scope
from mathgen.wording.say import Words

_TO_READ = (Quantity, Price)
# Numbers that no sentence has to print: 1 whole, the count of a list, 2 in a pair, 0 where nothing differs, 100 cents in a dollar.
STRUCTURAL = frozenset({"whole", "how many", "pair", "nothing", DOLLAR.meaning})


def to_be_read(draft: Draft, printed: dict[Expr, str]) -> tuple[Quantity | Price, ...]:
    """The quantities and prices that the words leave out, each once, in the order of the ask.

    Raises:
        ValueError: the words lack a number that no table holds; a fault of the wording file.
    """
    goal = draft.ask.goal
    if draft.ask.given and isinstance(goal, Value | Ratio):
        waiting: list[Expr] = [side for fact in draft.ask.given for side in fact]
    else:
        waiting = list(goal.exprs)
    waiting.extend(draft.drawn)
    asked = goal.expr if isinstance(goal, Value) and isinstance(goal.expr, Quantity) else None
    found: dict[Quantity | Price, None] = {}
    while waiting:
        expr = waiting.pop(0)
        if expr in printed or expr == asked:
            continue
        if isinstance(expr, _TO_READ):
            found[expr] = None
        elif isinstance(expr, Op):
            waiting[:0] = expr.args
        elif isinstance(expr, Stat):
            waiting[:0] = expr.series
        elif isinstance(expr, Tally):
            waiting[:0] = (*expr.series, *expr.bounds)
        elif isinstance(expr, Stated) and expr.meaning not in STRUCTURAL:
            raise ValueError(f"the words do not print {expr}: a fault of the wording file")
    return tuple(found)


def givens_of(desk: Desk, words: Words, left_out: tuple[Quantity | Price, ...]) -> tuple[tuple[Given, ...], tuple[Cell, ...]]:
    """Every given, and the table cells to be read. A bar of a graph is read whole, a total of the table cell by cell."""
    scenario = desk.scenario
    totals = desk.totals
    givens = [Given(text, value(expr, totals), expr, named(expr, scenario), _scope(expr), "words") for expr, text in words.printed.items()]
    cells: dict[Cell, None] = {}
    for quantity in left_out:
        if isinstance(quantity, Price):
            text = desk.reader.price(quantity).text
            givens.append(Given(text, value(quantity, totals), quantity, named(quantity, scenario), None, "table"))
            cells[quantity.item, PRICE, quantity.unit] = None
            continue
        if quantity.measure in BY_TRIAL:
            spots = _trials(desk, quantity.scope)
            cells.update(dict.fromkeys(_of_spots(desk, spots)))
        else:
            spots = [quantity.scope] if words.source == "graph" else _cells(desk, quantity.scope)
        for scope in spots:
            one = Quantity(quantity.measure, scope)
            number = desk.view.number(one)
            givens.append(Given(str(number), Integer(number), one, named(one, scenario), scope, words.source))  # type: ignore[arg-type]
            if words.source == "table" and quantity.measure not in BY_TRIAL:
                cells[scope.groups[0], scope.trials[0], scope.colors[0]] = None  # type: ignore[index]
    return tuple(givens), tuple(cells)


def _scope(expr: Expr) -> Scope | None:
    """Which results a number covers; for a rate, those of its whole; None for a number that only the words give."""
    if isinstance(expr, Op):
        expr = expr.args[-1] if isinstance(expr.args[-1], Quantity) else expr.args[0]
    return expr.scope if isinstance(expr, Quantity | Measured) else None


def _cells(desk: Desk, scope: Scope) -> list[Scope]:
    groups, trials, colors = scope
    table = desk.table
    return [
        Scope((group,), (trial,), (color,))
        for group in groups or table.groups
        for trial in trials or table.trials
        for color in colors or table.colors
    ]


def _trials(desk: Desk, scope: Scope) -> list[Scope]:
    """Each trial that a group took: whether it was a success is seen at once, along its line of the table."""
    groups, trials, _ = scope
    taken = dict.fromkeys((row.group, row.trial) for row in desk.table.rows)
    return [Scope((g,), (t,)) for g, t in taken if (groups is None or g in groups) and (trials is None or t in trials)]


def _of_spots(desk: Desk, spots: list[Scope]) -> list[Cell]:
    lines = {(spot.groups, spot.trials) for spot in spots}
    return [(row.group, row.trial, row.color) for row in desk.table.rows if ((row.group,), (row.trial,)) in lines]


def places_to_read(givens: tuple[Given, ...], cells: tuple[Cell, ...]) -> int:
    """How many places of the table a pupil has to look at: cells, or whole lines where trials are judged."""
    by_line = any(isinstance(given.expr, Quantity) and given.where == "table" and given.expr.measure in BY_TRIAL for given in givens)
    return len({cell[:2] for cell in cells}) if by_line else len(cells)


def tells_successes(givens: tuple[Given, ...]) -> bool:
    """Whether the words tell how many trials were successes."""
    return any(isinstance(given.expr, Quantity) and given.where == "words" and given.expr.measure == "successes" for given in givens)


def on_one_graph(left_out: tuple[Quantity | Price, ...], must_not_show: tuple[Scope, ...]) -> bool:
    """Whether all that the words leave out are bars of one graph by color, each bar more than one cell of the table.

    No bar of that graph may be the answer.
    """
    places = {(one.scope.groups, one.scope.trials) for one in left_out if isinstance(one, Quantity)}
    if any((one.groups, one.trials) in places and one.colors is not None and len(one.colors) == 1 for one in must_not_show):
        return False
    return len(places) == 1 and all(may_be_bar(one) for one in left_out)


def may_be_bar(expr: Expr) -> bool:
    """Whether a graph by color could show the quantity: one color, over more than one cell."""
    if not isinstance(expr, Quantity) or expr.measure != "down":
        return False
    groups, trials, colors = expr.scope
    one_cell = groups is not None and trials is not None and len(groups) == 1 == len(trials)
    return colors is not None and len(colors) == 1 and not one_cell


@lru_cache(maxsize=65536)
def _kind(colors: tuple[str, ...] | None, items: str, after: str) -> str:
    return f"{' and '.join(colors)} {items} {after}" if colors else f"{items} {after}"


def named(expr: Expr, scenario: Scenario) -> str:
    """What a number is a number of, in words."""
    if isinstance(expr, Quantity) and expr.measure in BY_TRIAL:
        return scenario.trials if expr.measure == "trials" else f"{scenario.trials} that were successes"
    if isinstance(expr, Quantity):
        return _kind(expr.scope.colors, scenario.items, scenario.after_noun[expr.measure])
    if isinstance(expr, Measured):
        return f"space between {scenario.items} in inches"
    if isinstance(expr, Price):
        return f"price of the {expr.item} in {expr.unit}"
    if isinstance(expr, Stated):
        return expr.meaning
    if isinstance(expr, Stat):
        return f"{expr.name} of {named(expr.series[0], scenario)}"
    if isinstance(expr, Op) and expr.symbol == "/" and isinstance(expr.args[1], Stated) and expr.args[1].meaning == "how many":
        return f"{named(expr.args[0], scenario)} per {scenario.trial}"
    if isinstance(expr, Op) and expr.symbol == "/":
        return " out of ".join(named(arg, scenario) for arg in expr.args)
    if isinstance(expr, Op) and expr.symbol == "-":
        return " against ".join(named(arg, scenario) for arg in expr.args)
    if isinstance(expr, Op) and expr.symbol in ("+", "*"):
        if expr.symbol == "+":
            return " and ".join(named(arg, scenario) for arg in expr.args)
        return " times ".join(str(arg.number) if isinstance(arg, Stated) else named(arg, scenario) for arg in expr.args)
    raise TypeError(f"no words for {expr}")
