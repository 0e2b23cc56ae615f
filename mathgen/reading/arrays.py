"""Things that stand in rows of as many: what is told of them, and how many there are."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import WHOLE, Asked
from mathgen.reading.meaning.sets import InRows, RowHolds
from mathgen.reading.points import scored
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import HowMany

_MOST = 20  # rows that are added one by one


def in_rows(told: Told, claim: InRows) -> None:
    """Keep what stands in rows.

    Raises:
        NotRead: two things do.
    """
    if told.in_rows is not None:
        raise NotRead("two kinds stand in rows")
    told.in_rows = claim
    told.open["rows"] = "the rows"
    if claim.rows is not None:
        told.facts.append(Fact(Stated(int(claim.rows.value), "rows"), claim.rows.text))


def row_holds(told: Told, claim: RowHolds) -> None:
    """Keep how many stand in each row.

    Raises:
        NotRead: nothing stands in rows, it is told twice, or of other colors.
    """
    put = told.in_rows
    if put is None or told.row is not None or (claim.rows is None) == (put.rows is None):
        raise NotRead("it is not said what stands in rows")
    if claim.colors is not None and claim.colors != put.np.colors:
        raise NotRead("others stand in rows")
    told.row = claim
    if claim.rows is not None:
        told.facts.append(Fact(Stated(int(claim.rows.value), "rows"), claim.rows.text))
    told.facts.append(Fact(Stated(int(claim.size.value), "in each row"), claim.size.text))
    told.open["row"] = "how many stand in a row"


def array_total(question: HowMany, told: Told) -> Asked:
    """All in the rows: as many for each row, added up."""
    put, row = told.in_rows, told.row
    if put is None or row is None or put.measure not in (None, question.measure):
        raise NotRead("it is not said how many stand in a row")
    rows = put.rows or row.rows
    assert rows is not None  # seen when the row was told
    if not 2 <= rows.value <= _MOST:
        raise NotRead(f"{rows.text} rows are not added one by one")
    whole = scored(told, question.measure, (question.np, put.np))
    each = Stated(int(row.size.value), "in each row")
    return Asked("array", Value(Op("+", (each,) * int(rows.value))), WHOLE, (whole,), ("rows", "row"), whole)


TAKEN: Takers = {
    InRows: in_rows,
    RowHolds: row_holds,
}
