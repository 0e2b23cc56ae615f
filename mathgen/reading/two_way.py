"""Two-way tables of one kind and all the others: what is told of the rows, and the cell that is asked for."""

from __future__ import annotations

from mathgen.asks.expression import Quantity, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.meaning.statistics import OtherRow
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.statistics import OtherThan
from mathgen.scenario.words import Scenario


def other_row(told: Told, claim: OtherRow) -> None:
    """Keep which kind has a row of its own.

    Raises:
        NotRead: two have, or all.
    """
    if told.other_row is not None:
        raise NotRead("two rows are told of")
    told.other_row = claim
    told.open["other row"] = "the row"


def other_than(question: OtherThan, told: Told, _: Scenario) -> Asked:
    colors = question.colors
    if colors is None and told.other_row is not None:
        colors = told.other_row.colors
    others = tuple(color for color in told.mentions.every("colors") if isinstance(colors, tuple) and color not in colors)
    if not others or len(others) == len(told.mentions.every("colors")):
        raise NotRead("it is not said what the others are other than")
    whole = Quantity("set_up", told.scope(Np(None, None, Mark("all"))))
    part = Quantity(question.measure, whole.scope._replace(colors=told.mentions.scope((), (), others).colors))
    return Asked("count", Value(part), WHOLE, (whole,), ("other row",) if question.colors is None else ())


ASKED: Answers = {
    OtherThan: other_than,
}


TAKEN: Takers = {
    OtherRow: other_row,
}
