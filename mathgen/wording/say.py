"""Choosing a frame for a draft, and saying the draft in it."""

from __future__ import annotations

from collections.abc import Callable
from random import Random
from typing import Any, NamedTuple

from mathgen.asks.expression import Expr, Measured, Op, Price, Quantity, Stated
from mathgen.problems.draft import Draft, Role
from mathgen.wording.frames import Frame, frames
from mathgen.wording.said_count import SaidCount
from mathgen.wording.said_length import SaidLength, SaidLengths
from mathgen.wording.said_many import SaidMany
from mathgen.wording.said_number import Printed, SaidNumber, SaidRate, SaidRates, SaidRuns
from mathgen.wording.said_price import SaidPrice
from mathgen.wording.speaker import Speaker


class Words(NamedTuple):
    """What a pupil reads."""

    frame: str
    source: str  # "words", "table" or "graph": where the numbers that are not printed stand
    facts: str
    question: str
    printed: dict[Expr, str]


def fitting_frames(strand: str, model: str, grade: int, draft: Draft, sources: frozenset[str]) -> tuple[Frame, ...]:
    """The frames that may say a draft to a grade's readers, from any of the sources."""
    return tuple(frame for frame in frames(strand, model) if frame.source in sources and frame.fits(grade, draft.wanted))


def say(frame: Frame, draft: Draft, speaker: Speaker, count: Callable[[Any], Any]) -> Words:
    """The draft's words in one frame, with a record of every number they print; ``count`` tells a count or a length."""
    printed = Printed()
    rates = dict(draft.rates)
    roles: dict[str, object] = {"scenario": speaker.scenario}
    for name, role in draft.roles.items():
        roles[name] = _said(role, rates, speaker, printed, count)
    facts, question = frame.render(roles)
    return Words(frame.name, frame.source, facts, question, printed.texts)


def _said(role: Role, rates: dict[Op, str], speaker: Speaker, printed: Printed, count: Callable[[Any], Any]) -> object:
    if isinstance(role, Quantity):
        return SaidCount(speaker, printed, role, count(role))
    if isinstance(role, Measured):
        return SaidLength(speaker, printed, role, count(role))
    if isinstance(role, Price):
        return SaidPrice(printed, role, count(role))
    if isinstance(role, Stated):
        return SaidNumber(printed, role)
    if isinstance(role, Op):
        return SaidRate(printed, role, rates[role])
    if isinstance(role, str):
        return role
    if isinstance(role[0], Op):
        return SaidRates(printed, role, tuple([rates[one] for one in role]))
    if isinstance(role[0], Stated):
        return SaidRuns(printed, role)
    if isinstance(role[0], Measured):
        return SaidLengths(speaker, printed, role, tuple(map(count, role)))
    return SaidMany(speaker, printed, role, tuple(map(count, role)))


def in_turn(choices: tuple[Frame, ...], rng: Random) -> tuple[Frame, ...]:
    """The frames, starting at a seeded one: the first that keeps to the grade's limits is used."""
    start = rng.randrange(len(choices)) if choices else 0
    return choices[start:] + choices[:start]
