"""Points of a scatter plot that the words tell one by one: true to the rows, and what they show."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

from sympy import Rational

from tests.audit.lengths import by_rule
from tests.audit.printed import value
from tests.audit.results import Label, Reach
from tests.audit.wording import Texts, sentences
from tests.audit.working import greatest

_ASKED = r"\bassociation\b|\binstead\?|\bfarther from the (line|number)\b|\bmiss the point\b"
_PLOTTED = re.compile(r"(?:plotted|had the points)((?:,? (?:and )?\([\d /]+, \d+\))+)")
_POINT = re.compile(r"\(([\d /]+), (\d+)\)")


def is_plotted(line: dict[str, Any]) -> bool:
    """Whether the question is about points that the words tell one by one."""
    return re.search(_ASKED, sentences(line["text"])[-1]) is not None


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with what the points are said to show."""
    text, winner = line["text"], line["answer"]["exact"]
    points = list(_points(line, texts))
    for group, trial, x, y in points:
        reach = Reach((group,), (trial,), texts.named(text).colors or None)
        if texts.results.gaps(reach) != {x} or texts.results.total(_measure(text, texts), reach) != y:
            yield f"the point ({x}, {y}) of {group} is not in the rows"
    relation = greatest(line["relation"])
    if relation is None:
        yield f'relation "{line["relation"]}" chooses nothing'
        return
    most, values = relation
    shown = _by_shape(points) if "association" in text else _against(points, most, texts) if "instead?" in text else _farther(points, text)
    if shown is None:
        yield "the points show nothing clear"
    elif shown != (winner, values):
        yield f"the points show {shown}, not {winner} by {values}"


def _measure(text: str, texts: Texts) -> str:
    return "standing" if dict(texts.words.after)["standing"] in text else "down"


def _points(line: dict[str, Any], texts: Texts) -> Iterator[tuple[str, Label, Rational, int]]:
    """Group, trial and both coordinates of each point, as the sentences tell them."""
    for sentence in sentences(line["text"]):
        named = texts.named(sentence)
        for group, found in zip(named.groups, _PLOTTED.finditer(sentence), strict=False):
            told = _POINT.findall(found[1])
            trials = texts.results.trials if len(told) > 1 else texts.named(line["text"]).trials
            for trial, (x, y) in zip(trials, told, strict=True):
                yield group, trial, value(x), int(y)


_Told = list[tuple[str, Label, Rational, int]]


def _by_shape(points: _Told) -> tuple[str, tuple[Rational, ...]] | None:
    """By the sum of products of the distances from both means; nothing where it is small beside the spreads."""
    xs, ys = [x for _, _, x, _ in points], [Rational(y) for _, _, _, y in points]
    x_mean, y_mean = sum(xs, Rational(0)) / len(xs), sum(ys, Rational(0)) / len(ys)
    shared = sum(((x - x_mean) * (y - y_mean) for x, y in zip(xs, ys, strict=True)), Rational(0))
    across, up = (sum(((one - mean) ** 2 for one in some), Rational(0)) for some, mean in ((xs, x_mean), (ys, y_mean)))
    if len(points) < 8 or shared**2 * 4 < across * up:  # a correlation of less than one half
        return None
    rising, half = sorted(points, key=lambda one: one[2]), len(points) // 2
    sums = tuple(Rational(sum(y for _, _, _, y in some)) for some in (rising[-half:], rising[:half]))
    return ("positive" if shared > 0 else "negative"), sums


def _against(points: _Told, up: bool, texts: Texts) -> tuple[str, tuple[Rational, ...]] | None:
    """The one trial whose point goes the other way, and every change from a space to the next wider one, in trial order."""
    rising = sorted(points, key=lambda one: one[2])
    changes = {new[1]: Rational(new[3] - old[3]) for old, new in pairwise(rising)}
    odd = [trial for trial, change in changes.items() if (change > 0) == up]
    if len(odd) != 1 or 0 in changes.values():
        return None
    return texts.called_trial(odd[0]), tuple(changes[trial] for _, trial, _, _ in points if trial in changes)


def _farther(points: _Told, text: str) -> tuple[str, tuple[Rational, ...]] | None:
    """The group whose point is farther from the line that the words tell."""
    gaps = [(abs(y - by_rule(text, x)), group) for group, _, x, y in points]
    if len(gaps) != 2 or gaps[0][0] == gaps[1][0]:
        return None
    return max(gaps)[1], tuple(gap for gap, _ in gaps)
