"""Lengths: the spaces between pins that a class measured, compared and put end to end."""

from __future__ import annotations

from mathgen.asks.expression import Ask, Measured, Op, Stated, Value
from mathgen.exact.demand import Demand
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
_MIXED = Demand("mixed")
_COUNTED = 10  # further than this nobody counts on or back one by one


@problem_model(skill="lengths compared")
def how_much_farther(view: TableView) -> AskSpace:
    """How many inches farther apart (or closer together) the pins were: one group in two trials, or two groups in one trial."""

    def build(one: Measured, other: Measured, word: str) -> Draft | None:
        a, b = view.length(one), view.length(other)
        by = "trials" if one.group == other.group else "groups"
        # 8 and 4: the answer would stand in the words, and "I took the smaller number" would be right.
        if one == other or (by == "groups" and one.trial != other.trial) or a <= b or a == 2 * b:
            return None
        first, second = (one, other) if view.lengths.index(one) < view.lengths.index(other) else (other, one)
        pair = (int(a.p), int(a.q), int(b.p), int(b.q))
        whole = a.q == b.q == 1
        if whole and a - b == 1:
            return None  # seen at a glance
        if whole:
            most, least = int(a), int(b)
            slips: tuple[tuple[str, tuple[int | str, ...]], ...] = (
                ("H01", (most, least)),
                ("H02", (most, least)),
                ("H10", (most, least)),
                *((("H13", (most - least + 1,)),) if most - least <= _COUNTED else ()),
            )
        else:
            slips = (("W02", pair), ("W03", pair), ("W01", pair), ("C14", pair))
        unlike = a.q != b.q and 1 not in (a.q, b.q)
        return Draft(
            ask=Ask(Value(Op("-", (one, other))), (), _ANY),
            roles={
                "first": first,
                "second": second,
                "asked": one if word == "farther apart" else other,
                "by": by,
                "word": word,
                "wider": "wider" if word == "farther apart" else "narrower",
            },
            structure="difference unknown",
            slips=slips,
            shown_as=_MIXED,
            unit="inches",
            fewer=word != "farther apart",
            unlike="one divides" if unlike else None,
        )

    return AskSpace((view.lengths, view.lengths, ("farther apart", "closer together")), build)


@problem_model(skill="equal lengths end to end")
def spaces_end_to_end(view: TableView) -> AskSpace:
    """How long some equal spaces between pins are in all."""

    def build(space: Measured, number: int) -> Draft | None:
        length = view.length(space)
        top, bottom = int(length.p), int(length.q)
        if length in (1, number):
            return None
        count = Stated(number, "spaces")
        return Draft(
            ask=Ask(Value(Op("*", (count, space))), (), _ANY),
            roles={"space": space, "count": count},
            structure="whole unknown",
            slips=(("W04", (number, top, bottom)), ("W05", (number, top, bottom)), ("W06", (top, bottom))),
            shown_as=_MIXED,
            unit="inches",
        )

    return AskSpace((view.lengths, (3, 4, 5, 6)), build)
