"""The independent audit: one bank line, held against its own words, the raw rows and the published limits.

It takes the line as the bank file has it, the rows, and the activity's few words. Nothing of the program is imported: numbers are
read, totals added up, equations solved and limits written down a second time here.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator
from typing import Any

from tests.audit import answers, givens, prices, published, standards, successes, wording, working
from tests.audit.asked import asked_totals
from tests.audit.board import arithmetic
from tests.audit.graphs import makes_graph
from tests.audit.printed import UnreadableError, value
from tests.audit.printed import line as read_line
from tests.audit.results import Results, Words, reach_of
from tests.audit.wording import Texts, sentences

FIELDS = (
    "id", "grade", "standards", "skill", "strand", "model", "level", "text", "needs_table", "cells",
    "answer", "steps", "relation", "givens", "slips", "proof",
)  # fmt: skip
FIRST = published.FIRST_GRADE
_WORDS_FIRST = {
    "fraction": r"\bfractions?\b",
    "times as many": r"\btimes as (many|much)\b",
    "mixed number": r"\bmixed number",
    "decimal": r"\bdecimal",
    "ratio or rate": r"\bratio\b|\bfor every\b|\brates?\b|\d:\d",
    "percent": r"\bpercent|%",
    "mean": r"\b(mean|median)\b",
    "percent change": r"\bpercent (more|less|fewer|increase|decrease|change)|\b[Bb]y what percent",
    "probability": r"\bprobabilit|\b(un)?likely\b|\bchance",
    "remainder": r"\bremainder|\bleft over\b",
}


def audit(line: dict[str, Any], results: Results, words: Words = Words()) -> list[str]:  # noqa: B008 - frozen, so shared safely
    """Every fault of a bank line; empty where there is none."""
    missing = [name for name in FIELDS if name not in line]
    if missing:
        return [f"the line lacks {', '.join(missing)}"]
    texts = Texts(results, words)
    try:
        return list(_faults(line, texts))
    except UnreadableError as err:
        return [f"the line cannot be read: {err}"]


def audit_bank(lines: Iterable[dict[str, Any]], results: Results, words: Words = Words()) -> list[str]:  # noqa: B008 - as above
    """Every fault of every line, with the words it is about; and what only a whole bank can break."""
    ids: Counter[str] = Counter()
    found = []
    for line in lines:
        ids[line["id"]] += 1
        found += [f"{fault} | grade {line['grade']} {line['model']}: {line['text']}" for fault in audit(line, results, words)]
    return [*found, *(f"the id {name} stands twice" for name, times in ids.items() if times > 1)]


def _faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    if line["level"] not in ("support", "on grade", "challenge"):
        yield f"no level {line['level']}"
    if not line["proof"] or any(verdict != "agrees" for verdict in line["proof"].values()):
        yield f"not proved: {line['proof']}"
    yield from wording.faults(line["text"], line["grade"], texts)
    if texts.results.prices:
        yield from prices.faults(line, texts)
        yield from answers.slip_faults(line)
    else:
        yield from givens.faults(line, texts)
        yield from answers.faults(line, texts)
    yield from working.step_faults(line)
    yield from standards.faults(line)
    yield from _grade(line, texts)
    yield from _printed_answer(line, texts)
    yield from _same_whole(line, texts)


def _grade(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """The words and numbers of the text, and how much is to be read, against the grade."""
    grade, masked = line["grade"], texts.masked(line["text"])
    for name, pattern in _WORDS_FIRST.items():
        if grade < FIRST[name] and re.search(pattern, masked):
            yield f"{name} before grade {FIRST[name]}"
    # A ruler is read in halves and fourths of an inch in grade 3 (3.MD.B.4), past 1 inch as well.
    by_ruler = "3.MD.B.4" in line["standards"]
    for one in texts.numbers(line["text"]):
        if not (by_ruler and re.fullmatch(r"\d+ [13]/[24]", one.text)):
            yield from working.number_faults(one.text, grade, "text", working.largest_allowed(line))
    for given in line["givens"]:
        if by_ruler and re.fullmatch(r"\d+ [13]/[24]", given["number"]):
            continue
        yield from working.number_faults(given["number"], grade, f"given {given['number']}", working.largest_allowed(line))
    places = successes.places(line) if successes.is_about_successes(line) else len(line["cells"])
    if places > published.CELLS[grade]:
        yield f"{places} cells to read, at most {published.CELLS[grade]}"
    graph = makes_graph(line["text"]) or any(given["where"] == "graph" for given in line["givens"])
    if graph and len(texts.results.colors) > published.GRAPH_CATEGORIES.get(grade, 99):
        yield f"a graph of {len(texts.results.colors)} categories in grade {grade}"


def _printed_answer(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """No number of the text says what is asked: the same measure over the same rows, not merely an equal number."""
    answer = line["answer"]
    if answer["kind"] != "number":
        return
    right = {value(answer["exact"]), value(answer["value"])}
    said = [
        given
        for given in line["givens"]
        if given["where"] == "words" and value(given["number"]) in right and _in_asked_form(given["number"], answer["demands"])
    ]
    totals = asked_totals(line, texts) or []
    share = re.search(r"\b(?:fraction|percent|part)\b", texts.masked(sentences(line["text"])[-1]))
    for given in said:
        measure = texts.words.measure(given["quantity"].split(givens.OUT_OF)[0])
        if (given["scope"] is not None and (measure, reach_of(given["scope"])) in totals) or (
            share and givens.OUT_OF in given["quantity"] and measure is not None and _asks_share_of(measure, line, texts)
        ):
            yield f"the answer {answer['display']} is printed in the text"


def _in_asked_form(number: str, demands: str) -> bool:
    """Whether a number of the text could be copied as the answer: 0.375 is none where a percent or tenths are asked for."""
    form, _, places = demands.partition(":")
    if form == "fraction":
        return "/" in number
    if form == "percent":
        return number.endswith("%")
    if form == "decimal":
        digits = number.partition(".")[2]
        return number.replace(".", "", 1).isdigit() and (not places or len(digits) <= int(places))
    return True


def _asks_share_of(measure: str, line: dict[str, Any], texts: Texts) -> bool:
    question = sentences(line["text"])[-1]
    forms = (dict(texts.words.after)[measure], dict(texts.words.base)[measure])
    return any(re.search(rf"\b{re.escape(form)}\b(?! set up)", question) for form in forms)


def _same_whole(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """Fractions compared in grades 3-5 are of one size of set; fractions added are of one and the same set."""
    counts = [given for given in line["givens"] if given["scope"] is not None and givens.OUT_OF not in given["quantity"]]
    wholes = [given for given in counts if texts.words.measure(given["quantity"]) == "set_up"]
    if line["answer"]["kind"] == "name" and line["grade"] <= 5 and re.search("fraction|part|percent", line["text"]):
        if len({given["number"] for given in wholes}) != 1:
            yield f"sets of {sorted({given['number'] for given in wholes})} compared in grade {line['grade']}"
        bottoms = set(re.findall(r"/(\d+)", line["relation"]))
        sizes = {given["number"] for given in wholes}
        if bottoms and bottoms != sizes:
            yield f"the sizes {sorted(sizes)} are not the bottom numbers of {line['relation']}"
    # By value: 1/3 of the pins is added as 4/12.
    rates: dict[Any, set[str]] = {}
    for given in line["givens"]:
        if givens.OUT_OF in given["quantity"]:
            rates.setdefault(value(given["number"]), set()).add(given["quantity"].split(givens.OUT_OF)[1])
    for text in arithmetic(line["steps"]):
        step = read_line(text)
        adds = any(one.sign == "+" for one in step.operations)
        added = [number for number in step.numbers[:-1] if adds and ("/" in number or "." in number)]
        wholes_added = set().union(*(rates.get(value(number), {""}) for number in added))
        of_inches = re.search(r"\binch(es)?\b", line["text"]) is not None  # the one whole of all lengths
        if len(added) > 1 and not of_inches and (len(wholes_added) > 1 or len(texts.named(line["text"]).groups) > 1):
            yield f'fractions of different sets added in "{text}"'
