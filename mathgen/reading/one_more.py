"""One more trial: the number supposed for it and the mean that it would make, or the mean that is the goal and the number it takes."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Value
from mathgen.reading.asked import ANY, WHOLE, Answers, Asked
from mathgen.reading.meaning.counts import GoalMean, OneMoreTrial
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.meaning.statistics import NextTrial
from mathgen.reading.next_time import agrees
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.counts import Needed
from mathgen.reading.wanted.statistics import MeanThen
from mathgen.scenario.words import Scenario


def next_trial(told: Told, claim: NextTrial) -> None:
    """Keep what one more trial would bring.

    Raises:
        NotRead: two are told of.
    """
    if told.next_trial is not None:
        raise NotRead("two more trials are told of")
    told.next_trial = claim
    told.open["next trial"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "in one more trial"), claim.number.text))


def goal_mean(told: Told, claim: GoalMean) -> None:
    if told.goal_mean is not None:
        raise NotRead("two goals are told of")
    told.goal_mean = claim
    told.open["goal"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "goal mean"), claim.number.text))
    for part in ("groups", "colors"):
        labels = getattr(claim.np, part)
        if labels is not None:
            told.mentions.resolve(part, labels)


def one_more(told: Told, claim: OneMoreTrial) -> None:
    told.one_more = claim
    told.open["one more trial"] = "one more trial"


def mean_then(question: MeanThen, told: Told, _: Scenario) -> Asked:
    claim, every = told.next_trial, told.mentions.every("trials")
    if claim is None:
        raise NotRead("nothing is said of one more trial")
    looks = [look for look in told.seen if look.measure is not None and look.np.trials == Mark("all")]
    if len(told.lists) == 1:
        [series] = told.lists
    elif not told.lists and len(looks) == 1:
        series = tuple(told.quantity(looks[0].measure or "down", looks[0].np._replace(trials=(trial,))) for trial in every)
    else:
        raise NotRead("it is not said which numbers are meant")
    if tuple(one.scope.trials for one in series) != tuple((trial,) for trial in every) or question.trials.value != len(series) + 1:
        raise NotRead(f"with one more trial there are {len(every) + 1}")
    first = series[0]
    for measure, np in ((claim.measure, claim.np), (question.measure, question.np)):
        if told.quantity(measure, np._replace(trials=first.scope.trials)) != first:
            raise NotRead("one more trial is about something else")
    size = Stated(len(series) + 1, "trials")
    told.said(size, question.trials)
    goal = Op("/", (Op("+", (*series, Stated(int(claim.number.value), "in one more trial"))), size))
    return Asked("mean then", Value(goal), ANY, series, ("next trial",))


def needed(question: Needed, told: Told, _: Scenario) -> Asked:
    goal = told.goal_mean
    if goal is None or told.one_more is None:
        raise NotRead("nothing says what the goal is")
    scope = told.scope(question.np)
    agrees(told, goal.np, scope)
    trials = scope.trials or told.mentions.every("trials")
    size = len(trials) + 1
    for number in (goal.trials, told.one_more.trials):
        if number is not None:
            if number.value != size:
                raise NotRead(f"with one more trial there are {size}, not {number.text}")
            told.said(Stated(size, "trials"), number)
    if goal.trials is None and told.one_more.trials is None:
        raise NotRead("it is not said for how many trials the goal is")
    total = Op("*", (Stated(size, "trials"), Stated(int(goal.number.value), "goal mean")))
    parts = tuple(
        Quantity(question.measure, scope._replace(trials=None if len(told.mentions.every("trials")) == 1 else (t,))) for t in trials
    )
    return Asked("needed", Value(Op("-", (total, *parts))), WHOLE, (Quantity(question.measure, scope),), ("goal", "one more trial"))


ASKED: Answers = {
    MeanThen: mean_then,
    Needed: needed,
}


TAKEN: Takers = {
    NextTrial: next_trial,
    GoalMean: goal_mean,
    OneMoreTrial: one_more,
}
