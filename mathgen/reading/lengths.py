"""Spaces between pins: what is told of them, and what is asked."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Measured, Op, Stat, Stated, Tally, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.lengths import Apart, ApartEach, LinePlot, MadeEqual, Spaces
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.lengths import AllEndToEnd, CrossesAbove, EachEqual, EndToEnd, Farther, MoreCrosses, SpacesBeyond, WidestGap
from mathgen.scenario.words import Scenario

_ALL = Mark("all")


def measured_at(told: Told, np: Np) -> Measured:
    """The space of the one group and trial that a phrase stands for."""
    scope = told.scope(np._replace(colors=_ALL))
    groups = scope.groups or told.mentions.every("groups")
    trials = scope.trials or told.mentions.every("trials")
    if len(groups) != 1 or len(trials) != 1:
        raise NotRead("a space between pins is measured in one trial of one group")
    return Measured("gap", str(groups[0]), trials[0])


def apart(told: Told, claim: Apart) -> None:
    """Keep a space that is told.

    Raises:
        NotRead: the table says otherwise.
    """
    measured = measured_at(told, claim.np)
    told.said(measured, claim.number)
    told.lengths.append(measured)


def spaces(told: Told, claim: Spaces) -> None:
    """Keep how many spaces are put end to end.

    Raises:
        NotRead: that is told twice.
    """
    if told.spaces is not None:
        raise NotRead("how many spaces there are is told twice")
    told.spaces = claim.number
    told.facts.append(Fact(Stated(int(claim.number.value), "spaces"), claim.number.text))
    told.open["spaces"] = claim.number.text


def farther(question: Farther, told: Told, _: Scenario) -> Asked:
    if len(told.lengths) != 2:
        raise NotRead("two spaces are needed to compare them")
    one, other = told.lengths
    if question.np is None:
        far, near = (one, other) if told.counts.length(one) >= told.counts.length(other) else (other, one)
    else:
        part = "groups" if question.np.groups is not None else "trials"
        [label, *more] = told.mentions.resolve("groups" if part == "groups" else "trials", getattr(question.np, part))
        found = [length for length in told.lengths if label == (length.group if part == "groups" else length.trial)]
        if more or len(found) != 1:
            raise NotRead("it is not said which space is compared with which")
        asked = found[0]
        against = other if asked == one else one
        if question.than is not None and told.mentions.resolve("trials", question.than.trials) != (against.trial,):
            raise NotRead("it is another trial that is compared with")
        far, near = (asked, against) if question.sign > 0 else (against, asked)
    if told.counts.length(far) <= told.counts.length(near):
        raise NotRead("that space is not the wider one")
    return Asked("length", Value(Op("-", (far, near))), ANY, ())


def end_to_end(question: EndToEnd, told: Told, _: Scenario) -> Asked:
    if len(told.lengths) == 2 == question.number.value and told.spaces is None:
        return Asked("length", Value(Op("+", tuple(told.lengths))), ANY, ())
    if len(told.lengths) != 1:
        raise NotRead("it is not said how long one space is")
    if told.spaces is None:
        told.facts.append(Fact(Stated(int(question.number.value), "spaces"), question.number.text))
    elif told.spaces.value != question.number.value:
        raise NotRead(f"there are {told.spaces.text} spaces, not {question.number.text}")
    count = Stated(int(question.number.value), "spaces")
    return Asked("length", Value(Op("*", (count, told.lengths[0]))), ANY, (), ("spaces",))


def apart_each(told: Told, claim: ApartEach) -> None:
    """Keep the spaces of all groups in one trial, in the table's order.

    Raises:
        NotRead: there are more or fewer groups, or the table says otherwise.
    """
    groups = told.mentions.resolve("groups", None)
    if told.listed or set(groups) != set(told.mentions.every("groups")) or len(groups) != len(claim.numbers):
        raise NotRead(f"it is not clear whose the {len(claim.numbers)} spaces are")
    found = tuple(measured_at(told, Np((group,))) for group in groups)
    for measured, number in zip(found, claim.numbers, strict=True):
        told.said(measured, number)
    told.listed = found


def line_plot(told: Told, _: LinePlot) -> None:
    """Keep that a line plot is to be made.

    Raises:
        NotRead: of nothing that was told before.
    """
    if not told.listed:
        raise NotRead("it is not said of what the line plot is")
    told.line_plot = True


def made_equal(told: Told, _: MadeEqual) -> None:
    """Keep that the spaces are made equal.

    Raises:
        NotRead: no spaces are told.
    """
    if not told.listed:
        raise NotRead("it is not said which spaces are made equal")
    told.open["made equal"] = "that all the spaces are made equal"


def _plotted(told: Told, plotted: bool) -> tuple[Measured, ...]:
    if not told.listed or (plotted and not told.line_plot):
        raise NotRead("nothing says which spaces are meant")
    return told.listed


def _tally(told: Told, test: Literal["=", ">", "<"], number: Number) -> Asked:
    series, value = _plotted(told, True), number.value
    than = Stated(int(value.p), "inches", int(value.q))
    told.facts.append(Fact(than, number.text))
    return Asked("length", Value(Tally(series, test, than)), WHOLE, ())


def crosses_above(question: CrossesAbove, told: Told, _: Scenario) -> Asked:
    return _tally(told, "=", question.number)


def spaces_beyond(question: SpacesBeyond, told: Told, _: Scenario) -> Asked:
    return _tally(told, question.test, question.number)


def more_crosses(question: MoreCrosses, told: Told, scenario: Scenario) -> Asked:
    """How many more crosses are stacked over one number than over another.

    Raises:
        NotRead: there are no more.
    """
    counts = []
    for number in (question.number, question.than):
        asked = crosses_above(CrossesAbove(number), told, scenario)
        assert isinstance(asked.goal, Value)
        counts.append(asked.goal.expr)
    goal = Op("-", tuple(counts))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("there are no more crosses over that number")
    return Asked("length", Value(goal), WHOLE, ())


def all_end_to_end(_question: AllEndToEnd, told: Told, _: Scenario) -> Asked:
    return Asked("length", Value(Op("+", _plotted(told, True))), ANY, ())


def widest_gap(question: WidestGap, told: Told, _: Scenario) -> Asked:
    return Asked("length", Value(Stat("range", _plotted(told, question.plotted))), ANY, ())


def each_equal(question: EachEqual, told: Told, _: Scenario) -> Asked:
    if "made equal" not in told.open:
        raise NotRead("nothing says that the spaces are made equal")
    return Asked("length", Value(Stat("mean", _plotted(told, question.plotted))), ANY, (), ("made equal",))


ASKED: Answers = {
    MoreCrosses: more_crosses,
    SpacesBeyond: spaces_beyond,
    AllEndToEnd: all_end_to_end,
    Farther: farther,
    EndToEnd: end_to_end,
    CrossesAbove: crosses_above,
    WidestGap: widest_gap,
    EachEqual: each_equal,
}


TAKEN: Takers = {
    Apart: apart,
    Spaces: spaces,
    ApartEach: apart_each,
    LinePlot: line_plot,
    MadeEqual: made_equal,
}
