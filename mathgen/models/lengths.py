"""Lengths: the spaces between pins that a class measured, compared and put end to end."""

from __future__ import annotations

from typing import Literal

from sympy import Integer, Rational

from mathgen.asks.expression import Ask, Measured, Op, Stat, Stated, Tally, Value
from mathgen.exact.demand import Demand
from mathgen.models.off_by_one import off_by_one
from mathgen.models.registry import problem_model
from mathgen.models.space import AskSpace
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft

_ANY = Demand("any")
_WHOLE = Demand("whole")
_MIXED = Demand("mixed")
_LISTED = 6  # spaces that one sentence lists


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
                *off_by_one(most - least, most - least + 1),
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


@problem_model(skill="lengths put together")
def two_spaces_together(view: TableView) -> AskSpace:
    """How many inches two spaces make end to end: of one group in two trials, or of two groups in one trial."""

    def build(one: Measured, other: Measured) -> Draft | None:
        a, b = view.length(one), view.length(other)
        by = "trials" if one.group == other.group else "groups"
        # 1 1/4 and 2: nothing is to be put together but the whole inches.
        if a == b or (a.q == 1) != (b.q == 1) or (by == "groups" and one.trial != other.trial):
            return None
        if view.lengths.index(one) > view.lengths.index(other):
            return None
        pair = (int(a.p), int(a.q), int(b.p), int(b.q))
        unlike = a.q != b.q and 1 not in (a.q, b.q)
        return Draft(
            ask=Ask(Value(Op("+", (one, other))), (), _ANY),
            roles={"first": one, "second": other, "by": by},
            structure="whole unknown",
            slips=(("W51", pair), ("W52", pair), ("W53", pair)),
            shown_as=_MIXED,
            unit="inches",
            unlike="one divides" if unlike else None,
        )

    return AskSpace((view.lengths, view.lengths), build)


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


def _of_one_trial(view: TableView) -> list[tuple[Measured, ...]]:
    """The spaces of all groups in each trial, where all were measured: so many as one sentence can list."""
    table = view.table
    series = [tuple(one for one in view.lengths if one.trial == trial) for trial in table.trials]
    return [one for one in series if len(one) == len(table.groups) and 5 <= len(one) <= _LISTED]


def _pair(length: Rational) -> tuple[int, int]:
    return int(length.p), int(length.q)


@problem_model(skill="line plot to make")
def crosses_above(view: TableView) -> AskSpace:
    """How many crosses are stacked over one length of a line plot that the pupil makes."""

    def build(series: tuple[Measured, ...], place: int) -> Draft | None:
        lengths = [view.length(one) for one in series]
        than = lengths[place % len(lengths)]
        count = lengths.count(than)
        # One cross is no count, and a plot with one place is none. Each length is met once.
        if place >= len(lengths) or lengths.index(than) != place or count < 2 or len(set(lengths)) < 3 or count == than:
            return None
        top, bottom = _pair(than)
        above = Stated(top, "inches", bottom)
        return Draft(
            ask=Ask(Value(Tally(series, "=", above)), (), _WHOLE),
            roles={"series": series, "above": above},
            structure="whole unknown",
            slips=(("J08", (top, bottom)), ("W09", (len(set(lengths)),)), ("W12", (len(lengths),))),
            unit="crosses",
        )

    return AskSpace((_of_one_trial(view), range(_LISTED)), build)


@problem_model(skill="line plot to make")
def more_crosses_above(view: TableView) -> AskSpace:
    """How many more crosses are stacked over one length of a line plot that the pupil makes than over another."""

    def build(series: tuple[Measured, ...], place: int, other: int) -> Draft | None:
        lengths = [view.length(one) for one in series]
        if max(place, other) >= len(lengths) or lengths.index(lengths[place]) != place or lengths.index(lengths[other]) != other:
            return None
        one, two = lengths[place], lengths[other]
        more = lengths.count(one) - lengths.count(two)
        # Where 1 is the answer, its unit "cross" says so.
        if more < 2 or more in (one, two):
            return None
        places = Stated(int(one.p), "inches", int(one.q)), Stated(int(two.p), "inches", int(two.q))
        return Draft(
            ask=Ask(Value(Op("-", (Tally(series, "=", places[0]), Tally(series, "=", places[1])))), (), _WHOLE),
            roles={"series": series, "above": places[0], "than": places[1]},
            structure="difference unknown",
            slips=(("H02", (lengths.count(one), lengths.count(two))), ("W41", _pair(abs(one - two))), ("W12", (len(lengths),))),
            unit="crosses",
        )

    return AskSpace((_of_one_trial(view), range(_LISTED), range(_LISTED)), build)


@problem_model(skill="one side of a line plot")
def spaces_beyond(view: TableView) -> AskSpace:
    """How many spaces are wider, or narrower, than one length of a line plot that the pupil makes."""

    def build(series: tuple[Measured, ...], place: int, test: Literal[">", "<"]) -> Draft | None:
        lengths = [view.length(one) for one in series]
        if place >= len(lengths) or lengths.index(lengths[place]) != place or len(set(lengths)) < 3:
            return None
        than = lengths[place]
        count, at = sum(1 for one in lengths if (one > than if test == ">" else one < than)), lengths.count(than)
        # At least two spaces on the one side, and one on the other.
        if not 2 <= count < len(lengths) - at or count == than:
            return None
        beyond = Stated(int(than.p), "inches", int(than.q))
        return Draft(
            ask=Ask(Value(Tally(series, test, beyond)), (), _WHOLE),
            roles={"series": series, "beyond": beyond, "word": "wider" if test == ">" else "narrower"},
            structure="whole unknown",
            slips=(("W54", (count + at,)), ("W55", (len(lengths) - count - at,)), ("W56", (at,))),
            unit="spaces",
        )

    return AskSpace((_of_one_trial(view), range(_LISTED), (">", "<")), build)


@problem_model(skill="lengths of a plot put together")
def all_spaces_together(view: TableView) -> AskSpace:
    """How many inches the spaces of a line plot make, end to end."""

    def build(series: tuple[Measured, ...]) -> Draft | None:
        lengths = [view.length(one) for one in series]
        total = sum(lengths, Integer(0))
        if len(set(lengths)) < 3 or all(one.q == 1 for one in lengths):
            return None
        return Draft(
            ask=Ask(Value(Op("+", series)), (), _ANY),
            roles={"series": series},
            structure="whole unknown",
            slips=(
                ("W42", _pair(sum(set(lengths), Integer(0)))),
                ("W43", _pair(total - lengths[-1])),
                ("W44", (sum(int(one) for one in lengths),)),
            ),
            shown_as=_MIXED,
            unit="inches",
        )

    return AskSpace((_of_one_trial(view),), build)


@problem_model(skill="widest and narrowest")
def widest_and_narrowest(view: TableView) -> AskSpace:
    """How much wider the widest space of a line plot is than the narrowest."""

    def build(series: tuple[Measured, ...]) -> Draft | None:
        rising = sorted(view.length(one) for one in series)
        least, most = rising[0], rising[-1]
        gap = most - least
        first, last = view.length(series[0]), view.length(series[-1])
        if gap == 0 or gap == least or abs(last - first) == gap:
            return None
        return Draft(
            ask=Ask(Value(Stat("range", series)), (), _ANY),
            roles={"series": series},
            structure="difference unknown",
            slips=(
                ("W10", _pair(abs(last - first))),
                ("W02", (*_pair(most), *_pair(least))),
                ("W03", (*_pair(most), *_pair(least))),
                ("W01", (*_pair(most), *_pair(least))),
            ),
            shown_as=_MIXED,
            unit="inches",
        )

    return AskSpace((_of_one_trial(view),), build)


@problem_model(skill="lengths made equal")
def spaces_made_equal(view: TableView) -> AskSpace:
    """How wide each space of a line plot would be with the total shared equally."""

    def build(series: tuple[Measured, ...]) -> Draft | None:
        lengths = [view.length(one) for one in series]
        total = sum(lengths, Integer(0))
        share = total / len(lengths)
        # The whole inches are shared out; what comes out is to be seen on a ruler.
        if total.q != 1 or 8 % share.q or len(set(lengths)) < 3 or all(one.q == 1 for one in lengths):
            return None
        return Draft(
            ask=Ask(Value(Stat("mean", series)), (), _ANY),
            roles={"series": series},
            structure="statistic",
            slips=(
                ("W07", _pair(total)),
                ("W08", _pair((max(lengths) + min(lengths)) / 2)),
                ("W11", _pair(sorted(lengths)[len(lengths) // 2])),
            ),
            shown_as=_MIXED,
            unit="inches",
        )

    return AskSpace((_of_one_trial(view),), build)
