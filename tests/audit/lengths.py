"""What a question about the spaces between pins asks for, read from its words and the raw rows."""

from __future__ import annotations

import re
from typing import Any

from sympy import Rational

from tests.audit.printed import value
from tests.audit.results import Label, Reach
from tests.audit.wording import Named, Texts, sentences

_INCHES = r"(\d+ \d+/\d+|\d+/\d+|\d+) inch(?:es)?"


def asked_length(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The number of inches that is asked for; None for any other question."""
    *told, question = sentences(line["text"])
    if re.search(r"\bthe line predicts?\b", question):
        return _by_line(line["text"], question, texts)
    listed = _listed(told, texts)
    if listed:
        return _of_list(listed, question)
    feet = _in_feet(line["text"], [length for length, _ in _told(told, texts)]) if "One foot is" in line["text"] else None
    if feet is not None:
        return feet
    if not re.search(r"\binches\b", question):
        return None
    lengths = _told(told, texts)
    if re.search(r"\bon the drawing\b", question):
        [(length, _), (drawn, _)] = lengths
        return length / drawn
    if re.search(r"\beach inch\b", question):
        base, asked = re.search(r"\beach inch (?:of space )?for (.*)$", question), texts.named(question).groups
        assert base is not None
        [below] = [group for group in asked if group in texts.named(base[1].partition(", how many")[0]).groups]
        [above] = [group for group in asked if group != below]
        [trial] = texts.named(line["text"]).trials
        return _only(texts, above, trial) / _only(texts, below, trial)
    if re.search(r"\bend to end\b|\bspaces (in all|together)\b", question):
        if re.search(r"\bthe two spaces\b", question):
            return sum((length for length, _ in lengths), Rational(0))
        [(length, _)] = lengths
        [count] = {int(number) for number in re.findall(r"\b(\d+) (?:of these )?spaces\b", line["text"])}
        return count * length
    if "differ" in question:
        (one, _), (other, _) = lengths
        return abs(one - other)
    wide = re.search(r"\b(farther|wider)\b", question) is not None
    groups, trials = texts.named(line["text"]).groups, texts.named(line["text"]).trials
    asked = texts.named(question.partition(" than ")[0])
    both: list[tuple[Label, Label]] = [(group, trial) for group in groups for trial in trials]
    [one] = [spot for spot in both if spot[0] in (asked.groups or groups) and spot[1] in (asked.trials or trials)]
    [other] = [spot for spot in both if spot != one]
    a, b = (_only(texts, *spot) for spot in (one, other))
    return a - b if wide else b - a


def by_rule(text: str, x: Rational) -> Rational:
    """What the line of the words has at a space."""
    found = re.search(r"\by = (\d+) ([-+]) (\d+)x\b", text)
    assert found is not None
    return int(found[1]) + int(found[3]) * x * (1 if found[2] == "+" else -1)


def _by_line(text: str, question: str, texts: Texts) -> Rational:
    """What a line predicts, a change of what it predicts, or how far a result is from that; the rows must bear the line out."""
    found = re.search(r"\by = (\d+) ([-+]) (\d+)x\b", text)
    assert found is not None
    assert not _far_from(found, texts), f"the results are far from {found[0]}"
    start, slope = int(found[1]), int(found[3]) * (1 if found[2] == "+" else -1)
    more = re.search(r"\b(\d+) (?:inches wider|more inches|inches farther apart)\b", question)
    if more:
        return Rational(slope * int(more[1]) * (1 if "more pins" in question else -1))
    space = re.search(r"\b(?:space of|are) (\d+) inches\b", question)
    if space:
        return Rational(start + slope * int(space[1]))
    named = texts.named(text)
    reach = Reach(named.groups, named.trials, None)
    gap = texts.results.total("down", reach) - (start + slope * _only(texts, named.groups[0], named.trials[0]))
    return gap if "more" in question else -gap


def _far_from(line: re.Match[str], texts: Texts) -> bool:
    """Whether the results of all trials lie more than 2 pins from a line on average."""
    start, slope = int(line[1]), int(line[3]) * (1 if line[2] == "+" else -1)
    spots = {(row.group, row.trial): row.gap for row in texts.results.rows if row.gap is not None}
    away = [abs(texts.results.total("down", Reach((g,), (t,), None)) - start - slope * x) for (g, t), x in spots.items()]
    return not away or sum(away, Rational(0)) > 2 * len(away)


def _told(told: list[str], texts: Texts) -> list[tuple[Rational, Named]]:
    """Each number of inches in the facts, but for those of a foot, with what its sentence names."""
    sentences_of_spaces = [sentence for sentence in told if not sentence.startswith("One foot")]
    return [(value(found[1]), texts.named(one)) for one in sentences_of_spaces for found in re.finditer(_INCHES, one)]


def _in_feet(text: str, lengths: list[Rational]) -> Rational:
    """A space in inches beside feet: how much wider, how many feet some spaces make, or how many spaces some feet hold."""
    [space] = lengths
    counts = [int(number) for number in re.findall(r"\b(\d+) (?:of these )?spaces\b", text)]
    if counts:
        return counts[0] * space / 12
    [feet] = {int(number) for number in re.findall(r"\b(\d+) feet\b", text)}
    return 12 * feet / space if re.search(r"\bmany (of these )?spaces\b", text) else 12 * feet - space


def _listed(told: list[str], texts: Texts) -> list[Rational]:
    """The spaces of all groups in the trial that the text names, from the rows, where the text lists them."""
    trials = texts.named(" ".join(told)).trials
    if not any(re.search(r"\bspaces were \d", sentence) for sentence in told) or len(trials) != 1:
        return []
    return [_only(texts, group, trials[0]) for group in texts.results.groups]


def _of_list(listed: list[Rational], question: str) -> Rational:
    above = re.search(r"\bcrosses (?:of the plot )?are stacked over the number (\d+ \d+/\d+|\d+/\d+|\d+)\?", question)
    if above:
        return Rational(listed.count(value(above[1])))
    beyond = re.search(r"\bare (wider|narrower) than (\d+ \d+/\d+|\d+/\d+|\d+) inch(?:es)?\?", question)
    if beyond:
        ends = [one for one in listed if one != value(beyond[2])]
        return Rational(sum(1 for one in ends if (one > value(beyond[2])) == (beyond[1] == "wider")))
    apart = re.search(r"\bmore crosses are stacked over (.+) than over (.+)\?", question)
    if apart:
        return Rational(listed.count(value(apart[1])) - listed.count(value(apart[2])))
    if "all the spaces" in question:
        return sum(listed, Rational(0))
    if re.search(r"\bwidest\b.*\bnarrowest\b|\bfirst and the last cross\b", question):
        return max(listed) - min(listed)
    return sum(listed, Rational(0)) / len(listed)


def _only(texts: Texts, group: Label, trial: Label) -> Rational:
    [gap] = texts.results.gaps(Reach((group,), (trial,), None))
    assert gap is not None
    return gap
