"""Trials with a target color: which of them were successes, judged from the raw rows, and what the words ask of them.

A success: at least one pin of the target color fell, and no pin of any other color.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Rational

from tests.audit.results import Label, Reach, Results, reach_of
from tests.audit.wording import Texts, sentences

TRIALS, SUCCESSES = "trials", "trials that were successes"


def is_about_successes(line: dict[str, Any]) -> bool:
    """Whether trials are counted by whether they were successes."""
    return re.search(r"\bsuccess(es)?\b", line["text"]) is not None


def judged(results: Results, reach: Reach) -> list[bool]:
    """Each trial of a reach: whether it was a success."""
    found: dict[tuple[str, Label], dict[str, int]] = {}
    targets: dict[tuple[str, Label], str | None] = {}
    for row in results.inside(reach):
        found.setdefault((row.group, row.trial), {})[row.color] = row.down
        targets[row.group, row.trial] = row.target
    return [{color for color, down in counts.items() if down} == {targets[spot]} for spot, counts in found.items()]


def places(line: dict[str, Any]) -> int:
    """How many trials are to be judged in the table: each is one look along its line."""
    return len({(cell["group"], cell["trial"]) for cell in line["cells"]})


def given_faults(given: dict[str, Any], number: Rational, name: str, texts: Texts) -> Iterator[str]:
    """A count of trials or of successes, held against the rows."""
    reach = reach_of(given["scope"])
    trials = judged(texts.results, reach)
    if number != (len(trials) if given["quantity"] == TRIALS else sum(trials)):
        yield f"{name}: the rows have {sum(trials)} successes in {len(trials)} trials"
    if reach.colors is not None:
        yield f"{name} is of some colors only"
    if given["where"] == "table" and (given["quantity"] == TRIALS or len(trials) != 1):
        yield f"{name} is no single trial to judge"


def faults(line: dict[str, Any], exact: Any, texts: Texts) -> Iterator[str]:
    """What is wrong with the words about successes: no rule, another answer, or the answer printed."""
    if not is_about_successes(line):
        return
    words = texts.words
    falls = rf"(are {dict(words.after)['down']}|{dict(words.base)['down']})"
    rule = rf"(A {words.trial} is a success when|In a success,) target-color {words.items} and no others {falls}\."
    if len(re.findall(rule, line["text"])) != 1:
        yield "the words do not say once what a success is"
    asked = asked_successes(line, texts)
    if asked is None:
        yield "the audit does not know what is asked about successes"
    elif asked != exact:
        yield f"the words ask for {asked}, the answer is {exact}"


def asked_successes(line: dict[str, Any], texts: Texts) -> Rational | None:
    """What the words ask for, worked out from the rows."""
    question = texts.masked(sentences(line["text"])[-1])
    groups = texts.named(line["text"]).groups
    trials = judged(texts.results, Reach(groups or None, None, None))
    size, hits = len(trials), sum(trials)
    others = re.search(r"\bnot (be )?(a )?success", question) is not None
    meant = size - hits if others else hits
    more = re.search(r"\bhow many of the (\d+) trials should .+ expect to be successes\?", question)
    if more:
        to_come = re.search(r"\b(?:for|do) (\d+) more trials\b", line["text"])
        return Rational(hits * int(more[1]), size) if to_come and to_come[1] == more[1] else None
    if re.match(r"How many new trials (are needed to reach the goal exactly|is that)\?", question):
        percent = re.search(r"\b(?:successes in|until) (\d+)% of all trials\b", line["text"])
        if percent is None or "Suppose every new trial is a success" not in line["text"]:
            return None
        # One more success at a time, until the goal is reached.
        return next((Rational(new) for new in range(1000) if 100 * (hits + new) == int(percent[1]) * (size + new)), None)
    said = re.search(r"\bof the (\d+) trials were\b|\bhave in (\d+) trials\?", question)
    if said and int(said[1] or said[2]) != size:
        return None
    if re.match(r"How many successes did .+ have|How many (of the \d+ )?trials (of .+ )?were (not )?successes\?", question):
        return Rational(meant)
    if re.search(r"\b(fraction|percent|part) of the \d+ trials were (not )?successes\b", question):
        return Rational(meant, size)
    if re.search(r"\bprobability that the next trial will (not )?be a success\?", question):
        return Rational(meant, size)
    return None


def unit(line: dict[str, Any], texts: Texts) -> str | None:
    """What the answer counts, where it counts trials or successes."""
    question = texts.masked(sentences(line["text"])[-1])
    if not is_about_successes(line) or not re.match(r"(?:.*, )?(?:[Aa]bout )?[Hh]ow many\b", question):
        return None
    one = line["answer"]["exact"] == "1"
    if re.search(r"\bwere not successes|new trials\b", question):
        return "trial" if one else "trials"
    return "success" if one else "successes"


def asked_ratio(line: dict[str, Any], texts: Texts) -> tuple[int, int] | None:
    """The successes to the other trials, or the other way round."""
    found = re.search(r"\bratio of (successes|other trials) to (successes|other trials)\?", line["text"])
    trials = judged(texts.results, Reach(texts.named(line["text"]).groups or None, None, None))
    counts = {"successes": sum(trials), "other trials": len(trials) - sum(trials)}
    return None if found is None else (counts[found[1]], counts[found[2]])


def share(group: str, results: Results) -> Rational:
    """The part of a group's trials that were successes."""
    trials = judged(results, Reach((group,), None, None))
    return Rational(sum(trials), len(trials))


def rate_faults(given: dict[str, Any], number: Rational, name: str, texts: Texts) -> Iterator[str]:
    """A part of all trials that the words tell."""
    trials = judged(texts.results, reach_of(given["scope"]))
    if number * len(trials) != sum(trials):
        yield f"{name}: the rows have {sum(trials)} successes in {len(trials)} trials"


def tops_told(line: dict[str, Any]) -> set[int]:
    """The top numbers of told parts of all trials: 3 of 3/4."""
    rates = (given["number"] for given in line["givens"] if given["quantity"].startswith(f"{SUCCESSES} out of"))
    return {int(number.partition("/")[0]) for number in rates}
