"""Claims about results: what is said, and whether it is so."""

from __future__ import annotations

from typing import Literal

from mathgen.asks.expression import Op, Quantity, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning import AgainstPart, Claimed, Explain, GreaterFraction, Labels, MoreThanBoth, Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.reading.told import Fact, Told, settled
from mathgen.reading.wanted import JudgeClaim
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure, Scope

_RUBRIC = Demand("rubric")
_Test = Literal["=", ">", "<"]


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


def judge_claim(question: JudgeClaim, told: Told, _: Scenario) -> Asked:
    if (question.statement is None) == (told.claimed is None):
        raise NotRead("it is not said which claim is meant")
    statement = question.statement if told.claimed is None else told.claimed.statement
    assert statement is not None  # one of the two is there
    measure = statement.measure
    if measure not in ("down", "standing"):
        raise NotRead("nothing happened to these")
    goal: Truth
    if isinstance(statement, GreaterFraction):
        pairs = [(_kind(told, measure, colors), _kind(told, "set_up", colors)) for colors in (statement.first, statement.second)]
        goal = Truth(Op("/", pairs[0]), ">", Op("/", pairs[1]))
        subjects = tuple(one for pair in pairs for one in pair)
    elif isinstance(statement, AgainstPart):
        part, whole = _part(told, statement)
        stated = _stated(told, statement.part, "claimed part")
        goal, subjects = Truth(Op("/", (part, whole)), statement.sign, stated), (part, whole)
    elif isinstance(statement, MoreThanBoth):
        if not isinstance(statement.others, tuple) or len(statement.others) < 2:
            raise NotRead("it is not said which are taken together")
        one, *others = (_kind(told, measure, colors) for colors in (statement.first, *((color,) for color in statement.others)))
        goal, subjects = Truth(one, ">", Op("+", tuple(others))), (one, *others)
    else:
        one, other = (_kind(told, measure, colors) for colors in (statement.first, statement.second))
        goal, subjects = Truth(one, "=", Op("*", (_stated(told, statement.times, "times"), other))), (one, other)
    if len(set(subjects)) < len(subjects):
        raise NotRead("the same is compared with itself")
    return Asked("claim", goal, _RUBRIC if told.explain else TRUTH, subjects, ("claim",))


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
