"""Two questions of which one is statistical, and a number that is left out of a list: what is told, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import OF_TWO, Choice, Op, Quantity, Stat, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import ANY, NAME, TRUTH, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.statistics import LeaveOut, MeanTold, OneOfTwo, Wondered
from mathgen.reading.means import mean
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import MeanOf
from mathgen.reading.wanted.statistics import CenterWithout, MeanCounts, WhichStatistical
from mathgen.scenario.words import Scenario


def one_of_two(told: Told, claim: OneOfTwo) -> None:
    """Keep one of two questions, and when it is about.

    Raises:
        NotRead: the second comes first, or one comes twice.
    """
    if len(told.questions) != OF_TWO.index(claim.place):
        raise NotRead("the first and the second question are not told in turn")
    told.questions.append(claim.wondered)
    told.open["questions"] = "a question"
    if isinstance(claim.wondered.np.trials, tuple):
        told.mentions.note("trials", claim.wondered.np.trials)


def which_statistical(_: WhichStatistical, told: Told, __: Scenario) -> Asked:
    if len(told.questions) != 2 or told.questions[0] == told.questions[1]:
        raise NotRead("there are not two questions to choose from")
    series = [_answers(told, one) for one in told.questions]
    goal = Choice(OF_TWO, (Stat("range", series[0]), Stat("range", series[1])))
    return Asked("is statistical", goal, NAME, tuple(one for some in series for one in some), ("questions",))


def _answers(told: Told, claim: Wondered) -> tuple[Quantity, ...]:
    """What the table answers to a question: one count, or one for each group."""
    np = claim.np._replace(trials=told.mentions.resolve("trials", claim.np.trials))
    many = [np._replace(groups=(group,)) for group in told.mentions.every("groups")] if claim.each else [np]
    return tuple(told.quantity(claim.measure, one) for one in many)


def leave_out(told: Told, claim: LeaveOut) -> None:
    """Keep whose number is left out, or that of which trial.

    Raises:
        NotRead: two are left out.
    """
    if told.left_out is not None or len(claim.labels) != 1:
        raise NotRead("more than one number is left out")
    told.left_out = claim
    told.open["left out"] = "a number that is left out"


def center_without(question: CenterWithout, told: Told, scenario: Scenario) -> Asked:
    claim = told.left_out
    if claim is None or claim.name not in ("", question.name):
        raise NotRead("it is not said which number is left out")
    goal = mean(MeanOf(question.measure, question.np, question.by, Demand("any"), "mean"), told, scenario).goal
    assert isinstance(goal, Value)
    assert isinstance(goal.expr, Stat)
    series = tuple(one for one in goal.expr.series if isinstance(one, Quantity))
    rest = tuple(one for one in series if getattr(one.scope, claim.part) != claim.labels)
    if len(rest) != len(series) - 1:
        raise NotRead("the number that is left out is none of these")
    both = Stat(question.name, rest), Stat(question.name, series)
    change = Op("-", both if question.greater else both[::-1])
    if evaluate(change, told.counts) <= 0:
        raise NotRead("it is the other way round")
    return Asked("mean or median", Value(change), ANY, series, ("left out",))


def mean_told(told: Told, claim: MeanTold) -> None:
    """Keep a mean of which it is not said what was counted.

    Raises:
        NotRead: two are told.
    """
    if told.mean_told is not None:
        raise NotRead("two means are told")
    told.mean_told = Stated(int(claim.number.value), "mean told")
    told.facts.append(Fact(told.mean_told, claim.number.text))
    told.open["mean"] = claim.number.text


def mean_counts(question: MeanCounts, told: Told, _: Scenario) -> Asked:
    stated = told.mean_told
    looks = [look for look in told.seen if look.measure == "down" and look.np.trials is not None]
    if len(told.lists) == 1:
        [series] = told.lists
    elif not told.lists and len(looks) == 1:
        series = tuple(told.quantity("down", looks[0].np._replace(trials=(trial,))) for trial in told.mentions.every("trials"))
    else:
        raise NotRead("it is not said of which numbers the mean is")
    first = series[0]
    if stated is None or first.measure != "down" or len({one.scope.groups for one in series}) > 1:
        raise NotRead("it is not said which mean is meant")
    if told.quantity("down", question.np._replace(groups=first.scope.groups, trials=first.scope.trials)) != first:
        raise NotRead("the mean is of other counts")
    racks = [fact.expr for fact in told.facts if isinstance(fact.expr, Op) and isinstance(fact.expr.args[0], Quantity)]
    alike = [one for one in racks if isinstance(one.args[0], Quantity) and one.args[0].scope[::2] == first.scope[::2]]
    if len(racks) != 1 or len(alike) != 1:
        raise NotRead("it is not said how many were set up for each trial")
    stat = Stat("mean", series)
    left = stat if question.measure == "down" else Op("-", (alike[0], stat))
    return Asked("mean of a count", Truth(left, "=", stated), TRUTH, series, ("mean",))


ASKED: Answers = {
    WhichStatistical: which_statistical,
    CenterWithout: center_without,
    MeanCounts: mean_counts,
}


TAKEN: Takers = {
    OneOfTwo: one_of_two,
    LeaveOut: leave_out,
    MeanTold: mean_told,
}
