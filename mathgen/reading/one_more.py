"""One more trial: the number supposed for it, and the mean that it would make."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import ANY, Answers, Asked
from mathgen.reading.meaning.scope import Mark
from mathgen.reading.meaning.statistics import NextTrial
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
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


ASKED: Answers = {
    MeanThen: mean_then,
}


TAKEN: Takers = {
    NextTrial: next_trial,
}
