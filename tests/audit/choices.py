"""A name as the key: the one label whose value, from the raw rows, strictly beats every other that the words name."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import Any

from sympy import Rational

from tests.audit import expressions, plotted
from tests.audit.asked import listed, middle
from tests.audit.printed import value
from tests.audit.results import Label, Reach
from tests.audit.signed import is_signed, over_goal
from tests.audit.successes import share
from tests.audit.told_scores import score_told
from tests.audit.wording import Named, Texts, sentences
from tests.audit.working import greatest, largest_allowed, number_faults


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a name as the answer, but for its slips."""
    if line["answer"]["demands"] == "expression":
        yield from expressions.faults(line, texts)
        return
    answer, text = line["answer"], line["text"]
    winner = answer["exact"]
    if answer["value"] != winner or winner not in answer["accepted"]:
        yield "the name is not its own accepted form"
    # A group "7" is answered as "Group 7".
    winner = next((label for label in texts.results.groups if texts.called(label) == winner), winner)
    if answer["demands"] != "name":
        yield f"a name that demands {answer['demands']}"
    relation = greatest(line["relation"])
    if relation is None:
        yield f'relation "{line["relation"]}" chooses nothing'
        return
    most, values = relation
    if plotted.is_plotted(line):
        yield from plotted.faults(line, texts)
        return
    if winner in ("first", "second"):
        yield from _first_and_second(line, winner, most, values, texts)
        return
    named = texts.named(text)
    if winner in ("mean", "median"):
        yield from _mean_and_median(line, winner, most, values, texts)
        return
    if winner in ("product", "factor"):
        yield from _product_and_factor(line, winner, most, values, texts)
        return
    rivals, reaches = _rivals(winner, named, texts)
    if len(rivals) < 2:
        yield f"{winner} has no rival in the text"
        return
    if not any(_wins(winner, rivals, reach, most, values, text, texts) for reach in reaches):
        yield f"{winner} does not have the {'greatest' if most else 'least'} of {values} in the rows"
    printed = texts.called(winner) if winner in texts.results.groups else winner  # a group "7" is printed as "Group 7"
    if not {winner, printed} <= {*answer["accepted"], winner}:
        yield f"{printed} is not accepted"
    shown = re.fullmatch(rf"{re.escape(printed)} \((.+)\)", answer["display"])
    if shown is None:
        if answer["display"] != printed:
            yield f'display "{answer["display"]}"'
    else:
        sides = [value(side) for side in re.split(r" [<>] ", shown[1])]
        if any(
            not ((a > b) if sign == ">" else (a < b))
            for a, b, sign in zip(sides, sides[1:], re.findall(r" ([<>]) ", shown[1]), strict=False)
        ):
            yield f'display "{answer["display"]}" is not true'
        if sorted(sides) != sorted(values):
            yield f'display "{answer["display"]}" compares other numbers than the relation'
        for number in re.split(r" [<>] ", shown[1]):
            yield from number_faults(number, line["grade"], f'display "{answer["display"]}"', largest_allowed(line))


def _mean_and_median(line: dict[str, Any], winner: str, most: bool, values: tuple[Rational, ...], texts: Texts) -> Iterator[str]:
    """Of the list that the words tell of: both worked out from the rows, and the one that the question asks for."""
    rising = listed(line, texts)
    both = {"mean": Rational(sum(rising), len(rising)), "median": middle(rising)}
    if values != (both["mean"], both["median"]) or most == bool(re.search(r"\bless\b", sentences(line["text"])[-1])):
        yield f"the rows have the mean {both['mean']} and the median {both['median']}, not {values}"
    if both[winner] != (max if most else min)(values) or both["mean"] == both["median"]:
        yield f"{winner} is not the one that the question asks for"


def _first_and_second(line: dict[str, Any], winner: str, most: bool, values: tuple[Rational, ...], texts: Texts) -> Iterator[str]:
    """The question, of two, that has more than one answer in the rows; how far the answers to each are apart."""
    told = [one for one in sentences(line["text"]) if re.search(r"\b(question is|wonders) how many ", one)]
    planted = dict(texts.words.after)["set_up"]
    spread = []
    for one in told:
        own = texts.named(one)
        groups = own.groups or texts.results.groups
        measure = "set_up" if f" {planted}" in one else "down"
        answers = [texts.results.total(measure, Reach((group,), own.trials, own.colors or None)) for group in groups]
        spread.append(Rational(max(answers) - min(answers)))
    if len({(texts.named(one).trials, texts.named(one).colors) for one in told}) != 1 or not texts.named(told[0]).trials:
        yield "both questions do not name one trial and one color"
    if len(spread) != 2 or values != tuple(spread) or not most or min(spread) != 0:
        yield f"the answers in the rows are {spread} apart, not {values}"
    elif spread[("first", "second").index(winner)] == 0:
        yield f"the {winner} question has one answer"


def _product_and_factor(line: dict[str, Any], winner: str, most: bool, values: tuple[Rational, ...], texts: Texts) -> Iterator[str]:
    """The later trial's count, told as a fraction times the first trial's, and the first trial's own."""
    named = texts.named(line["text"])
    trials = [trial for trial in texts.results.trials if trial in named.trials]
    counts = [texts.results.total("down", Reach(named.groups or None, (trial,), named.colors or None)) for trial in trials]
    found = re.search(r"(?<!\d)(\d+)/(\d+) × (\d+)\b", line["text"])
    if found is None or len(counts) != 2 or counts[0] != int(found[3]) or counts[1] * int(found[2]) != counts[0] * int(found[1]):
        yield f"the rows have {counts}"
        return
    if values != (counts[1], counts[0]) or most == bool(re.search(r"\bless\b", sentences(line["text"])[-1])):
        yield f"the product is {counts[1]}, the factor {counts[0]}, not {values}"
    if {"product": counts[1], "factor": counts[0]}[winner] != (max if most else min)(values) or counts[0] == counts[1]:
        yield f"{winner} is not the one that the question asks for"


def _statistic_of(name: str, reach: Reach, over: str, texts: Texts) -> Rational:
    """The range or the median of one label's list: a number for each trial of a group, or for each group in a trial."""
    labels: tuple[Label, ...] = texts.results.trials if over == "trials" else texts.results.groups
    rising = sorted(texts.results.total("down", reach._replace(**{over: (label,)})) for label in labels)
    return Rational(rising[-1] - rising[0]) if name != "median" else middle(rising)


def _rivals(winner: str, named: Named, texts: Texts) -> tuple[list[str], list[Reach]]:
    """The labels between which the words choose, and the scopes in which they may do so, less the label itself."""
    # One reading only: a second one could make a loser win.
    spans: list[tuple[Label, ...] | None] = [named.trials or None]
    colors: list[tuple[Label, ...] | None] = [named.colors or None]
    if winner in named.groups:
        return list(named.groups), [Reach((), span, color) for span, color in product(spans, colors)]
    if winner.casefold() in [color.casefold() for color in named.colors]:
        groups: list[tuple[Label, ...] | None] = [(group,) for group in named.groups] or [None]
        return list(named.colors), [Reach(group, span, ()) for group, span in product(groups, spans)]
    trials = [texts.called_trial(label) for label in named.trials]
    if winner in trials:
        groups = [(group,) for group in named.groups] or [None]
        return trials, [Reach(group, (), color) for group, color in product(groups, colors)]
    return [], []


def _wins(winner: str, rivals: list[str], reach: Reach, most: bool, values: tuple[Rational, ...], text: str, texts: Texts) -> bool:
    """Whether the winner strictly beats every rival in a scope, on just the values of the relation."""
    found: dict[str, Rational] = {}
    for rival in rivals:
        label: Label = rival
        if reach.trials == ():
            label = next(one for one in texts.results.trials if texts.called_trial(one) == rival)
        own = Reach(*((label,) if part == () else part for part in reach))
        standing = dict(texts.words.after)["standing"] in sentences(text)[-1]
        if re.search(r"\bsuccesses\b", text):
            found[rival.casefold()] = share(rival, texts.results)
            continue
        compared = re.search(r"\b(median|from the least number to the greatest)\b.*\?", sentences(text)[-1], re.IGNORECASE)
        if compared:
            found[rival.casefold()] = _statistic_of(compared[1], own, "groups" if reach.trials == () else "trials", texts)
            continue
        if is_signed({"text": text}):
            found[rival.casefold()] = Rational(abs(over_goal(own.groups, (own.trials or texts.results.trials)[0], {"text": text}, texts)))
            continue
        if "steeper" in text:  # a score that the words tell, for each pin that earned it
            score, pins = score_told(text, texts.called(rival)), texts.results.total("down", own)
            if score is None or not pins:
                return False
            found[rival.casefold()] = Rational(score, pins)
            continue
        # "Which was the greater fraction, red or gold pins knocked down?": both are parts of one whole, of every color.
        whole = own._replace(colors=None) if re.search(r"was the greater fraction\b|\bpart was greater\b", sentences(text)[-1]) else own
        top, bottom = texts.results.total("standing" if standing else "down", own), texts.results.total("set_up", whole)
        if not bottom:
            return False
        found[rival.casefold()] = Rational(top, bottom) if re.search(r"fraction|percent|part|rate|likely", text) else Rational(top)
    if sorted(found.values()) != sorted(values):
        return False
    best = max(found.values()) if most else min(found.values())
    return [name for name, number in found.items() if number == best] == [winner.casefold()]
