"""What questions about positive and negative numbers ask for, read from their words and worked out from the raw rows."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.results import Label, Reach
from tests.audit.wording import Texts, sentences

AGAINST_GOAL = " against goal"
_GOAL = re.compile(r"\bgoal (?:was|of) (\d+)\b")
_CHANGE = re.compile(r"\bnumber shows the change\b")


def is_signed(line: dict[str, Any]) -> bool:
    """Whether a problem is about numbers on both sides of zero: there an answer may be below 0."""
    return re.search(r"\bnegative number\b|\bzero stands? for\b|\bLet zero stand for\b", line["text"]) is not None


def over_goal(groups: tuple[Label, ...] | None, trial: Label, line: dict[str, Any], texts: Texts) -> int:
    """How many over the goal that the words name; below 0 for under."""
    goal = _GOAL.search(line["text"])
    assert goal is not None  # where there are results, there is a goal
    colors = texts.named(line["text"]).colors
    return texts.results.total("down", Reach(groups, (trial,), colors or None)) - int(goal[1])


def asked_signed(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The number that is asked for; None for any other question."""
    question = sentences(line["text"])[-1]
    named = texts.named(line["text"])
    groups = named.groups or None
    if _CHANGE.search(question):
        earlier, later = sorted(texts.named(question).trials, key=texts.results.trials.index)
        before, after = (texts.results.total("down", Reach(groups, (trial,), named.colors or None)) for trial in (earlier, later))
        return Rational(after - before)
    if not is_signed(line) or not _GOAL.search(line["text"]):
        return None
    results = [over_goal(groups, trial, line, texts) for trial in named.trials or texts.results.trials]
    if "distance between" in question or re.search(r"\bgreater was\b|\bless than\b", question):
        one, other = results
        return Rational(abs(one - other))
    if re.search(r"\bzero\?", question) and re.search(r"\bsum\b", question):
        return Rational(-sum(results))
    if "mean" in question:
        return Rational(sum(results), len(results))
    if re.search(r"\b(sum|total)\b", question):
        return Rational(sum(results))
    [result] = results
    return Rational(result if re.search(r"\bnumber stands for\b", question) else abs(result))
