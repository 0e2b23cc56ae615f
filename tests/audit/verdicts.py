"""Claims that are to be judged with a reason: the verdict and each number of the reason, from the words and the raw rows."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Rational

from tests.audit.printed import value
from tests.audit.results import Reach
from tests.audit.wording import Texts, sentences
from tests.audit.working import solutions

Sides = tuple[Rational, str, Rational]


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a verdict and its reason, but for its slips."""
    answer, text = line["answer"], line["text"]
    if answer["display"] != {"true": "Yes", "false": "No"}.get(answer["value"]) or answer["exact"] != answer["value"]:
        yield f"{answer['display']} is displayed for {answer['value']}"
    if answer["demands"] != "rubric" or set(answer["accepted"]) != {answer["display"], answer["value"]}:
        yield f"a claim that demands {answer['demands']}, accepted {answer['accepted']}"
    if not text.endswith("? Tell why."):
        yield "no reason is asked for"
    found = _sides(text, texts)
    if found is None:
        yield "the audit does not know what is claimed"
        return
    left, sign, right = found
    if (answer["value"] == "true") != {">": left > right, "<": left < right, "=": left == right}[sign]:
        yield f"the rows say {left} and {right}, the verdict is {answer['value']}"
    if [value(fact["value"]) for fact in answer["facts"]] != [left, right]:
        yield f"the rows say {left} and {right}, the reason names {answer['facts']}"
    if solutions(line["relation"]) != (left - right,):
        yield f"{line['relation']} is not how far {left} is from {right}"


def _fair(text: str, texts: Texts, mine: tuple[str, ...]) -> Sides | None:
    """The results of two groups, each of the trials that its own sentence names: parts of the pins set up, or counts per trial."""
    results, found = texts.results, {}
    for sentence in sentences(text)[:2]:
        named = texts.named(sentence)
        trials = named.trials or results.trials
        reach = Reach(named.groups, trials, named.colors or None)
        down = results.total("down", reach)
        by_fractions = re.search(r"\bfractions\b[^.]*\?", text)
        if not by_fractions and not re.search(r"\b(the means|per trial)\b[^.]*\?", text):
            return None
        found[named.groups] = Rational(down, results.total("set_up", reach) if by_fractions else len(trials))
    if mine not in found or len(found) != 2:
        return None
    [other] = [value_ for groups, value_ in found.items() if groups != mine]
    return found[mine], ">", other


def _together(text: str, texts: Texts, claimed: Rational, colors: tuple[str, ...], size: int | None = None) -> Sides | None:
    """Two colors' parts of one set: those the words give, which the rows have to bear out."""
    named = texts.named(text)
    told = re.search(r"\bOf the (\d+) \D+, (\d+/\d+) were (\S+) .* and (\d+/\d+) were (\S+) ", text)
    if told is None or (colors and set(colors) != {told[3], told[5]}):
        return None
    reach = Reach(named.groups or None, named.trials or None, None)
    whole = texts.results.total("set_up", reach)
    parts = [Rational(texts.results.total("down", reach._replace(colors=(color,))), whole) for color in (told[3], told[5])]
    if whole != int(told[1]) or size not in (None, whole) or parts != [value(told[2]), value(told[4])]:
        return None
    return sum(parts, Rational(0)), "=", claimed


def _sides(text: str, texts: Texts) -> Sides | None:
    """What a claim holds against each other; None where the words claim nothing that is known here."""
    said = re.search(r"\b(?:Someone (?:says|writes|thinks)|[Oo]ne claim is) that (.+?)[.?](?: |$)", texts.masked(text))
    added = re.search(r"\bSomeone adds these fractions and gets (\d+/\d+)\.", text)
    if added:
        return _together(text, texts, value(added[1]), ())
    fair = re.search(r"\bthat (?:(.+) had the (?:stronger|better) result|(.+?) did better(?: than .+)?) in these \w+\.", text)
    if fair:
        return _fair(text, texts, texts.named(next(who for who in fair.groups() if who)).groups)
    if said is None:
        return None
    claim, items = said[1], texts.words.items
    done = re.escape(dict(texts.words.after)["down"].removeprefix("that "))
    named = texts.named(text)

    def total(measure: str, kind: str) -> int:
        return texts.results.total(measure, Reach(named.groups or None, named.trials or None, texts.named(kind).colors or None))

    two = re.fullmatch(rf"a greater fraction of (.+) than of (.+) (?:was )?{done}", claim)
    two = two or re.fullmatch(rf"the fraction (?:that )?{done} was greater for (.+) than for (.+)", claim)
    if two:
        one, other = (Rational(total("down", kind), total("set_up", kind)) for kind in two.groups())
        return one, ">", other
    part = re.fullmatch(rf"(more|less) than (\d+/\d+|\d+%) of the (\d+ )?(.*{items}) (?:were )?{done}", claim)
    if part:
        down, whole = total("down", part[4]), total("set_up", part[4])
        if part[3] and int(part[3]) != whole:
            return None
        return Rational(down, whole), ">" if part[1] == "more" else "<", value(part[2])
    times = re.fullmatch(rf"(\d+) times as many (.+ {items}) as (.+ {items}) (?:were )?{done}", claim)
    if times:
        return Rational(total("down", times[2])), "=", Rational(int(times[1]) * total("down", times[3]))
    joined = re.fullmatch(rf"(\d+/\d+) of the (\d+) {items} were (.+ or .+) {items} (?:that )?{done}", claim)
    turned = re.fullmatch(rf"(.+ or .+) {items} (?:that )?{done} were (\d+/\d+) of the (\d+) {items}", claim)
    if joined or turned:
        part, size, kinds = joined.groups() if joined else (turned[2], turned[3], turned[1])
        return _together(text, texts, value(part), texts.named(kinds).colors, int(size))
    changed = re.fullmatch(rf"the number of (.*{items}) (?:that )?{done} (increased|decreased) by (\d+)%", claim)
    changed = changed or re.fullmatch(r"the change from (.+) was an? (increase|decrease) of (\d+)%", claim)
    if changed:
        colors = texts.named(text).colors or None
        trials = [trial for trial in texts.results.trials if trial in named.trials]
        old, new = (texts.results.total("down", Reach(named.groups or None, (trial,), colors)) for trial in trials)
        gap = new - old if changed[2].startswith("increase") else old - new
        return Rational(gap, old), "=", Rational(int(changed[3]), 100)
    chance = re.search(rf"\bestimated probability that the next (.*{texts.words.item}) will\b", claim)
    last = re.search(r"\bSuppose the last of the (\d+) \D+\.", text)
    if chance and last and int(last[1]) == total("set_up", chance[1]):
        [estimate] = re.findall(r"\d+/\d+", claim)
        return Rational(total("down", chance[1]), int(last[1])), "=", value(estimate)
    both = re.fullmatch(rf"more (.+ {items}) (?:were )?{done} than (.+ {items}) together", claim)
    if both:
        return Rational(total("down", both[1])), ">", Rational(total("down", both[2]))
    return None
