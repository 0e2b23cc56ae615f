"""Claims about results: what is said, and whether it is so."""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, Answers, Asked
from mathgen.reading.comparing import change
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.judged import (
    AgainstPart,
    ChangedBy,
    Claimed,
    Explain,
    GreaterFraction,
    LastOne,
    MoreThanBoth,
    NextOne,
    PartTogether,
    Stronger,
    TimesAsMany,
)
from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Takers, Told, settled
from mathgen.reading.wanted.counts import Change
from mathgen.reading.wanted.judged import JudgeClaim
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure, Scope

_RUBRIC = Demand("rubric")


def claimed(told: Told, claim: Claimed) -> None:
    """Keep what someone says.

    Raises:
        NotRead: two things are claimed.
    """
    if told.claimed is not None:
        raise NotRead("two things are claimed")
    told.claimed = claim
    told.open["claim"] = "a claim"


def explain(told: Told, _: Explain) -> None:
    """Keep that a reason is asked for."""
    told.explain = True


def last_one(told: Told, claim: LastOne) -> None:
    """Keep what is supposed of the one before the next.

    Raises:
        NotRead: it is supposed twice.
    """
    if told.last_one is not None:
        raise NotRead("two things are supposed of the last")
    told.last_one = claim
    told.open["last one"] = "what is supposed of the last"


def judge_claim(question: JudgeClaim, told: Told, _: Scenario) -> Asked:
    if (question.statement is None) == (told.claimed is None):
        raise NotRead("it is not said which claim is meant")
    statement = question.statement if told.claimed is None else told.claimed.statement
    assert statement is not None  # one of the two is there
    if isinstance(statement, Stronger):
        raise NotRead("it is not said by what results are compared")
    if statement.measure not in ("down", "standing", *((None,) if isinstance(statement, ChangedBy | PartTogether) else ())):
        raise NotRead("nothing happened to these")
    goal, subjects = _JUDGED[type(statement)](told, statement)  # type: ignore[operator]
    if len(set(subjects)) < len(subjects):
        raise NotRead("the same is compared with itself")
    uses = ("claim", "last one") if isinstance(statement, NextOne) else ("claim",)
    return Asked("claim", goal, _RUBRIC if told.explain else TRUTH, subjects, uses)


_Judged = tuple[Truth, tuple[Quantity, ...]]  # and the quantities that it speaks of


def _greater_fraction(told: Told, said: GreaterFraction) -> _Judged:
    pairs = [(_kind(told, said.measure, colors), _kind(told, "set_up", colors)) for colors in (said.first, said.second)]
    return Truth(Op("/", pairs[0]), ">", Op("/", pairs[1])), tuple(one for pair in pairs for one in pair)


def _against_part(told: Told, said: AgainstPart) -> _Judged:
    part, whole = _part(told, said)
    return Truth(Op("/", (part, whole)), said.sign, _stated(told, said.part, "claimed part")), (part, whole)


def _more_than_both(told: Told, said: MoreThanBoth) -> _Judged:
    if not isinstance(said.others, tuple) or len(said.others) < 2:
        raise NotRead("it is not said which are taken together")
    one, *others = (_kind(told, said.measure, colors) for colors in (said.first, *((color,) for color in said.others)))
    return Truth(one, ">", Op("+", tuple(others))), (one, *others)


def _times_as_many(told: Told, said: TimesAsMany) -> _Judged:
    one, other = (_kind(told, said.measure, colors) for colors in (said.first, said.second))
    return Truth(one, "=", Op("*", (_stated(told, said.times, "times"), other))), (one, other)


def _part_together(told: Told, said: PartTogether) -> _Judged:
    """Two parts that were told of, of one set.

    Raises:
        NotRead: there are not two, or others are claimed.
    """
    rates = [fact.expr for fact in told.facts if isinstance(fact.expr, Op) and fact.expr.symbol == "/"]
    parts = [rate.args[0] for rate in rates if isinstance(rate.args[0], Quantity)]
    wholes = {rate.args[1] for rate in rates}
    if len(rates) != 2 or len(parts) != 2 or len(wholes) != 1 or parts[0].scope == parts[1].scope:
        raise NotRead("it is not said which parts are taken together")
    [whole] = wholes
    assert isinstance(whole, Quantity)  # the whole of a part told of always is one
    if said.measure is not None:
        colors = [color for part in parts for color in part.scope.colors or ()]
        if not isinstance(said.colors, tuple) or {one.measure for one in parts} != {said.measure} or set(said.colors) != set(colors):
            raise NotRead("other parts are claimed than those told of")
        if said.whole is not None:
            told.referred(whole, said.whole)
    return Truth(Op("+", tuple(rates)), "=", _stated(told, said.part, "claimed part")), (*parts, whole)


def _changed_by(told: Told, said: ChangedBy) -> _Judged:
    measure = said.measure
    counts = [fact.expr for fact in told.facts if isinstance(fact.expr, Quantity)]
    if measure is None and len({one.measure for one in counts}) == 1:
        measure = counts[0].measure
    if measure is None or not said.percent.text.endswith("%"):
        raise NotRead("it is not said what changed")
    first, last = said.trials or (None, None)
    asked = change(Change(measure, Np(None, None, said.colors), said.sign, first, last), told)
    assert isinstance(asked.goal, Value)  # by what percent
    return Truth(asked.goal.expr, "=", _stated(told, said.percent, "claimed percent")), asked.subjects


def _next_one(told: Told, said: NextOne) -> _Judged:
    """The estimate by all results; the last one is one of the same pins and changes nothing."""
    if told.last_one is None or told.last_one.colors != said.colors:
        raise NotRead("nothing is supposed of the last one")
    part, whole = _part(told, AgainstPart(">", said.chance, said.colors, told.last_one.whole, said.measure))
    rate = Op("/", (part, whole))
    if (2 * evaluate(rate, told.counts) > 1) != (told.last_one.measure == said.measure):
        raise NotRead("after the last one, nobody would call another one due")
    return Truth(rate, "=", _stated(told, said.chance, "claimed part")), (part, whole)


_JUDGED = {
    GreaterFraction: _greater_fraction,
    AgainstPart: _against_part,
    MoreThanBoth: _more_than_both,
    TimesAsMany: _times_as_many,
    PartTogether: _part_together,
    ChangedBy: _changed_by,
    NextOne: _next_one,
}


def _stated(told: Told, number: Number, meaning: str) -> Stated:
    """A number that only the claim gives; a fact beside those of the table."""
    if number.text.endswith("%"):
        if not (100 * number.value).is_integer:
            raise NotRead("only a whole percent is claimed")
        stated = Stated(int(100 * number.value), "claimed percent", 100)
    else:
        stated = Stated(int(number.value.numerator), meaning, int(number.value.denominator))
    told.facts.append(Fact(stated, number.text))
    return stated


def _kind(told: Told, measure: Measure, colors: Labels) -> Quantity:
    """What a claim counts: pins of colors that it names, of those who were spoken of.

    Raises:
        NotRead: it names none.
    """
    if not isinstance(colors, tuple):
        raise NotRead("it is not said which are compared")
    return told.quantity(measure, Np(None, None, colors))


def _part(told: Told, statement: AgainstPart) -> tuple[Quantity, Quantity]:
    """What fell and what was set up, of the set that the claim names.

    Raises:
        NotRead: more than one set, or none, is as large as it says.
    """
    scopes: list[Scope] = list(dict.fromkeys(told.scope(choice) for choice in settled(told, Np(None, None, statement.colors))))
    number = statement.whole
    if number is not None:
        scopes = [scope for scope in scopes if evaluate(Quantity("set_up", scope), told.counts) == number.value]
    if len(scopes) != 1:
        raise NotRead("it is not said which set is meant")
    part, whole = (Quantity(measure, scopes[0]) for measure in (statement.measure, "set_up"))
    if number is not None:
        told.referred(whole, number)
    return part, whole


ASKED: Answers = {
    JudgeClaim: judge_claim,
}


TAKEN: Takers = {
    Claimed: claimed,
    LastOne: last_one,
    Explain: explain,
}
