"""Lists of pairs: each pair tried one by one on the count of the raw rows, or on the tops of a fraction that the rows bear out."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import Any

from tests.audit.printed import value
from tests.audit.results import Reach
from tests.audit.wording import Texts
from tests.audit.working import solutions

Pairs = list[frozenset[str]]
_CHOSEN = re.compile(r"\b(two|three) of these fractions (?:with|that have|that add up to) (?:the sum )?(\d[\d /]*)")

_OVER = re.compile(r"(?:bottom number|denominator) (\d+)")


def _wanted(line: dict[str, Any], texts: Texts) -> Pairs | None:
    """What the words ask for; None where they ask for no list."""
    text = texts.masked(line["text"])
    named = texts.named(line["text"])
    reach = Reach(named.groups or None, named.trials or None, named.colors or None)
    down = texts.results.total("down", reach)
    if re.search(r"\bfactor pairs\b.*\?|\bproduct of two factors\b", text):
        return [frozenset({str(a), str(b)}) for a in range(1, down + 1) for b in range(a, down + 1) if a * b == down]
    changed = re.search(r"\bone number of \D+ (?:changes and|to make) the (total|mean) (?:becomes )?(\d+) ", text)
    if changed:
        rows = [texts.results.total("down", reach._replace(trials=(trial,))) for trial in texts.results.trials]
        sets = {texts.results.total("set_up", reach._replace(trials=(trial,))) for trial in texts.results.trials}
        wanted = int(changed[2]) * (len(rows) if changed[1] == "mean" else 1)
        found = [(old, old + wanted - sum(rows)) for old in rows]
        return [frozenset({f"from {old}", f"to {new}"}) for old, new in found if 0 <= new <= max(sets) and new != old]
    chosen = _CHOSEN.search(text)
    if chosen:
        return _sums(text, reach, texts, {"two": 2, "three": 3}[chosen[1]], chosen[2])
    split = re.search(
        r"\bSplit (\d+)/(\d+) into two fractions|\bWrite (\d+)/(\d+) as a sum of two|\bfractions .*\bhave the sum (\d+)/(\d+)",
        text,
    )
    if split is None or "Do not use 0, and count each pair once." not in text:
        return None
    top, bottom = (int(number) for number in split.groups() if number is not None)
    if (top, bottom) != (down, texts.results.total("set_up", reach)) or set(_OVER.findall(text)) != {str(bottom)}:
        return None
    return [frozenset({f"{a}/{bottom}", f"{b}/{bottom}"}) for a in range(1, top) for b in range(a, top) if a + b == top]


def _told(text: str) -> list[str]:
    """The fractions to choose from."""
    return re.findall(r"\d+/\d+", text[: re.search(r"\bof these fractions\b", text).start()])  # type: ignore[union-attr]


def _sums(text: str, reach: Reach, texts: Texts, size: int, total: str) -> Pairs | None:
    """Every way to take so many of the fractions told, each once; None where the rows do not bear out just these fractions."""
    told = _told(text)
    rows = [reach._replace(groups=(group,)) for group in texts.results.groups]
    sets = {texts.results.total("set_up", one) for one in rows}
    downs = [texts.results.total("down", one) for one in rows]
    if len(sets) != 1 or {value(one) for one in told} != {value(f"{down}/{max(sets)}") for down in downs} or len(set(told)) < len(told):
        return None
    found = {frozenset(some) for some in product(told, repeat=size) if sum(map(value, some)) == value(total.strip())}
    return [some for some in found if len(some) == size]


def _numbers(pair: str) -> list[str]:
    """Both numbers of a pair; of a change, which of them is new."""
    old, to, new = pair.partition(" to ")
    return [f"from {old}", f"to {new}"] if to else re.split(r" [+*×] ", pair)


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a list, but for its slips."""
    answer = line["answer"]
    wanted = _wanted(line, texts)
    if wanted is None:
        yield "the audit does not know what is to be listed"
        return
    if answer["demands"] != "list" or answer["value"] != answer["exact"]:
        yield f"a list that demands {answer['demands']}, value {answer['value']}, exact {answer['exact']}"
    for text in (", ".join(answer["value"]), answer["display"], *answer["accepted"]):
        pairs = [frozenset(_numbers(pair)) for pair in text.split(", ")]
        if sorted(map(sorted, pairs)) != sorted(map(sorted, wanted)):
            yield f"{text} is not all that the rows give"
    changes = " to " in answer["display"]
    shown = [step.partition(" = ")[0] for step in line["steps"][-len(wanted) :]]
    if changes:  # 8 + 3 = 11 shows that 8 can become 11
        shown = [re.sub(r" [+-] \d+ = ", " to ", step) for step in line["steps"][-len(wanted) :]]
    chosen = _CHOSEN.search(line["text"])
    if chosen:  # over one bottom number
        if [sorted(map(value, _numbers(one))) for one in shown] != [sorted(map(value, _numbers(one))) for one in answer["value"]]:
            yield "the steps do not show each sum"
    elif shown != answer["value"]:
        yield "the steps do not show each pair"
    if changes:
        old, new = map(int, answer["value"][0].split(" to "))
        if solutions(line["relation"]) != (new - old,):
            yield f"relation {line['relation']}: a number changes by {new - old}"
    elif chosen:
        others = sum(map(value, _told(line["text"])), -value(chosen[2].strip()))
        if solutions(line["relation"]) != (others,):
            yield f"relation {line['relation']}: the numbers not chosen come to {others}"
    elif solutions(line["relation"]) != (len(wanted),):
        yield f"relation {line['relation']}: there are {len(wanted)} pairs"
