"""The key of a bank line: value, exact value, demand, accepted forms, display and slips, and the total that the words ask for."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import Any

from sympy import Rational

from tests.audit import choices, listings, published, remainders, successes, truths, verdicts
from tests.audit.asked import asked_blank, asked_ratio, asked_shares, asked_statistic, asked_totals, listed, two_lists
from tests.audit.givens import ways
from tests.audit.graphs import asked_of_graph, asked_of_plot
from tests.audit.lengths import asked_length
from tests.audit.points import asked_points
from tests.audit.printed import UnreadableError, is_tie, places_of, rounded_half_up, value
from tests.audit.results import Label, Reach, reach_of
from tests.audit.shared_factors import asked_shared
from tests.audit.signed import asked_signed, is_signed
from tests.audit.simulations import asked_of_runs
from tests.audit.wording import Texts, sentences
from tests.audit.working import largest_allowed, number_faults, relation_numbers, solutions

_PLAIN = re.compile(r"(any|fraction|mixed|mixed:any|decimal|percent|whole|name|ratio|ratio:any|simplest)$")
_ROUNDED = re.compile(r"(decimal|percent):([0-9])$|(whole):(10+)$")
_FORM = {
    "whole": r"\d[\d,]*",
    "decimal": r"\d*\.?\d+(\.\.\.)?",
    "percent": r"(\d+ )?\d+(/\d+|\.\d+)?%",
    "mixed": r"(\d+ )?\d+(/\d+)?",
    "mixed:any": r"(\d+ )?\d+(/\d+)?",
    "fraction": r"\d+/\d+",
    "simplest": r"(\d+ )?\d+(/\d+)?",
    "ratio": r"\d+(:|/| to )\d+",
    "any": r".+",
}


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a key, whatever its kind."""
    kind = line["answer"]["kind"]
    if kind == "number":
        try:
            yield from _number(line, texts)
        except UnreadableError as err:
            yield f"answer: {err}"
    elif kind == "ratio":
        yield from _ratio(line, texts)
    elif kind == "quotient_remainder":
        yield from remainders.faults(line, texts)
        yield from _slips(line, {*line["answer"]["accepted"]})
    elif kind == "list":
        yield from listings.faults(line, texts)
        yield from _slips(line, {*line["answer"]["accepted"]})
    elif kind == "truth":
        yield from truths.faults(line, texts)
        yield from _slips(line, {line["answer"]["display"], line["answer"]["exact"]})
    elif kind == "rubric":
        yield from verdicts.faults(line, texts)
        yield from _slips(line, {line["answer"]["display"], line["answer"]["exact"]})
    elif kind == "name":
        yield from choices.faults(line, texts)
        yield from _slips(line, {line["answer"]["exact"]})
    else:
        yield f"the audit knows no answers of the kind {kind}"


def _number(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    answer, grade = line["answer"], line["grade"]
    exact, shown, demands = value(answer["exact"]), value(answer["value"]), answer["demands"]
    for name in ("exact", "value"):
        number = value(answer[name])
        if answer[name] != (str(number.p) if number.q == 1 else f"{number.p}/{number.q}"):
            yield f"{name} {answer[name]} is not in lowest terms"
    rounded = _ROUNDED.match(demands)
    if rounded:
        places = 1 - len(rounded[4]) if rounded[3] else int(rounded[2]) + (2 if rounded[1] == "percent" else 0)
        if is_tie(exact, places):
            yield f"{exact} ties at the asked place"
        if shown != rounded_half_up(exact, places):
            yield f"value {shown} is not {exact} rounded half up"
    elif not _PLAIN.match(demands):
        yield f"an unknown demand, {demands}"
    elif shown != exact:
        yield f"value {shown}, exact {exact}"
    if demands == "simplest":
        yield "simplest form, which no standard demands"
    if places_of(exact) is None:
        first = published.FIRST_GRADE["percent" if rounded else "repeating decimal"]
        if demands.startswith(("decimal", "percent")) and grade < first:
            yield f"{exact} as {demands} in grade {grade}"
    yield from _forms(answer, exact, shown, demands, bool(rounded))
    yield from _display(line, shown, texts)
    yield from _slips(line, {exact, shown})
    yield from _zero_or_all(line, exact)
    yield from _relation(line, exact, texts)
    yield from _asked(line, exact, texts)
    yield from remainders.number_faults(line, exact, texts)


def _ratio(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """A ratio: two whole numbers in the order of the words, any equal ratio right."""
    answer = line["answer"]
    written = re.fullmatch(r"([1-9]\d*):([1-9]\d*)", answer["value"])
    if written is None:
        yield f"the value {answer['value']} is no ratio"
        return
    exact = value(answer["value"])
    if answer["exact"] != answer["value"] or answer["display"] != answer["value"] or answer["accepted"][0] != answer["value"]:
        yield f"value {answer['value']}, exact {answer['exact']}, display {answer['display']}, accepted {answer['accepted']}"
    if not answer["demands"].startswith("ratio"):
        yield f"a ratio that demands {answer['demands']}"
    if exact == 1:
        yield "a ratio whose order does not matter"
    yield from _forms(answer, exact, exact, answer["demands"], False)
    yield from _slips(line, {exact})
    yield from _relation(line, exact, texts)
    asked = asked_ratio(line, texts)
    if asked is None:
        yield "the question does not say of what the ratio is"
    elif asked != (int(written[1]), int(written[2])):
        yield f"the words ask for {asked[0]}:{asked[1]}, the answer is {answer['value']}"


def _forms(answer: dict[str, Any], exact: Rational, shown: Rational, demands: str, rounded: bool) -> Iterator[str]:
    accepted = answer["accepted"]
    if not accepted or len(set(accepted)) != len(accepted):
        yield "accepted forms are missing or twice the same"
    for text in accepted:
        if value(text) not in (exact, shown):
            yield f"accepted form {text} is {value(text)}"
        form = demands.partition(":")[0]
        if not re.fullmatch(_FORM.get(form, ".+"), text):
            yield f"accepted form {text} is no {demands}"
        if demands == "any" and text.endswith("%") and exact > 1:
            yield f"accepted form {text} of a number over 1"
    if rounded and len(accepted[0].rstrip("%").partition(".")[2]) != int(demands[-1]):
        yield f"{accepted[0]} does not show the asked places"


def _display(line: dict[str, Any], shown: Rational, texts: Texts) -> Iterator[str]:
    answer, words = line["answer"], texts.words
    first, display = answer["accepted"][0], answer["display"]
    rest = display.removeprefix(first)
    if rest == display:
        yield f'display "{display}" does not start with {first}'
        return
    counted = successes.unit(line, texts)
    if counted is not None:
        if rest != f" {counted}":
            yield f'display "{display}" should end in {counted}'
        return
    noun = words.item if value(answer["exact"]) == 1 else words.items
    question = texts.masked(sentences(line["text"])[-1])
    other = re.match(r"how many (?:of (?:the|these) |more )?(crosses|spaces|feet|pictures|numbers|dots|counts)\b", question, re.IGNORECASE)
    other = other or re.search(
        r"\b(?:how many|number of) (?:full |different )?((?:ordered )?pairs|boxes|bags|rows|trials|results|sets|parts|times(?! the| as))\b",
        question,
        re.IGNORECASE,
    )
    other = other or re.match(r"of the (spaces), how many\b", question, re.IGNORECASE)
    if other:
        one = {"crosses": "cross", "boxes": "box"}.get(other[1], other[1].rstrip("s"))
        if rest != f" {one if value(answer['exact']) == 1 else other[1]}":
            yield f'display "{display}" should end in {other[1]}'
        return
    if re.search(r"\binches\b", question) and "the line predict" not in question:
        if rest != (" inch" if value(answer["exact"]) <= 1 else " inches"):
            yield f'display "{display}" should end in inches'
        return
    if "unit rate" in question and "trial" in question:
        if rest != f" {noun} per trial":
            yield f'display "{display}" should end in {noun} per trial'
        return
    # A change, a length of a box plot or where it ends, and how far a sample's mean lies off, are numbers of things, too.
    things = re.search(r"\bthe change\b|\b(?:is|end of) the box\b|\bmean of the sample\b", question)
    if things and rest != f" {noun}":
        yield f'display "{display}" should end in "{noun}"'
    counts = re.match(
        r"(?:.*, )?(?:[Aa]bout )?how many "
        r"(?!times|(?:lost )?points|ordered pairs|different pairs|results|of the(?:se)? results|rows|dots|counts|of the \d+ digits)"
        r"|.*\b(number|mean|median|total|deviation|interquartile range) (?:number |the numbers )?"
        rf"of (?!points)[\w ,]*{re.escape(words.items)}\b",
        question,
        re.IGNORECASE,
    )
    shares = re.search(
        r"\bis n\b|\bpairs are there\b|\bmany trials (did|were)\b|\bin each row\b|"
        r"percent|fraction|how many (full )?(boxes|bags|rows)|\bpart\b|how many times|ratio|unit rate|\bsets\b",
        question,
        re.IGNORECASE,
    )
    if counts and not shares:
        if rest != f" {noun}":
            yield f'display "{display}" should end in "{noun}"'
    elif rest and not things and not re.match(r" (times|points?)$", rest):
        yield f'display "{display}" has a unit that the question does not ask for'
    yield from number_faults(first, line["grade"], f'display "{display}"', largest_allowed(line))
    observed = re.search(r"\b(did|were)\b", question) and not re.search(r"mean|share|equal|each|fair", line["text"])
    if counts and not shares and observed and shown.q != 1:
        yield f"{display}: a count that is not whole"
    if line["grade"] <= 2 and shown.q != 1:
        yield f"{display}: not whole in grade {line['grade']}"


def slip_faults(line: dict[str, Any]) -> Iterator[str]:
    """Slips that are right, or that no pupil would write."""
    exact = line["answer"]["exact"]
    yield from _slips(line, {value(exact)} if line["answer"]["kind"] == "number" else {*line["answer"]["accepted"]})


def _slips(line: dict[str, Any], right: set[Any]) -> Iterator[str]:
    for slip in line["slips"]:
        name = f"slip {slip['id']} {slip['value']}"
        if line["answer"]["kind"] in ("number", "ratio"):
            if value(slip["value"]) in right | {value(text) for text in line["answer"]["accepted"]}:
                yield f"{name} is right"
            if value(slip["value"]) < 0 and not is_signed(line):
                yield f"{name} is below 0"
            if line["answer"]["demands"] == "whole" and value(slip["value"]).q != 1:
                yield f"{name} is no count"
        elif slip["value"] in right:
            yield f"{name} is right"
        # Names of things that are sold are longer: "sheet of cardboard".
        longest = {"list": 64, "name": 40}.get(line["answer"]["kind"], 16)
        if len(slip["value"]) > longest:
            yield f"{name} is nothing that a pupil would write"
        if not re.fullmatch(r"[A-Z]\d\d", slip["id"]):
            yield f"{name} is not in the catalog"
        # "At most about 15 words", one idea.
        if re.search(r"[{}]", slip["line"]) or not slip["line"].strip() or len(slip["line"].split()) > 18:
            yield f'{name}: the line "{slip["line"]}"'
    if len({slip["value"] for slip in line["slips"]}) != len(line["slips"]):
        yield "two slips with one value"


def _zero_or_all(line: dict[str, Any], exact: Rational) -> Iterator[str]:
    if exact == 0:
        yield "the answer is 0"
    share = line["answer"]["demands"].partition(":")[0] in ("any", "decimal", "percent")
    other = is_signed(line) or re.search(r"(in|de)crease|mean|median|share|\bbox\b|interquartile|\binch", line["text"])
    if exact == 1 and share and not other:
        yield "the answer is the whole set"
    if exact < 0 and not is_signed(line):
        yield "the answer is below 0"


def _relation(line: dict[str, Any], exact: Rational, texts: Texts) -> Iterator[str]:
    relation = line["relation"]
    found = solutions(relation)
    if found != (exact,):
        yield f'relation "{relation}" has the solutions {found}, the answer is {exact}'
    if re.search(r"\d\.\d|%", relation):
        yield f'relation "{relation}" has a number that is no count'
    known = {value(given["number"]) for given in line["givens"]} | {1, 100}
    lengths = [value(given["number"]) for given in line["givens"] if re.match("space between |inches on", given["quantity"])]
    known |= {part for length in lengths for part in (length.p, length.q)}  # 2 1/4 as 9/4
    if not is_signed(line) and asked_statistic(line, texts) is not None:
        apart = "difference of the means" in line["text"]
        lists = two_lists(line, texts) if apart else (listed(line, texts),)
        # Two numbers in the middle; a mean that others are far from.
        if re.search(r"\bwith(out)?\b|\bLeave out\b|\bfar from the others\b", line["text"]):
            known.add(len(lists[0]) - 1)
        # A median may be one number of the list, itself a sum over colors.
        known |= {2, *(Rational(sum(numbers), len(numbers)) for numbers in lists), *(one for numbers in lists for one in numbers)}
    if re.search(r"\bin pairs\b|\bMake pairs\b|\btwo equal rows\b|\bnumbers are the same\b", line["text"]):
        known.add(Rational(2))
    named = texts.named(line["text"])
    known |= {
        len(texts.results.trials),
        len(texts.results.groups),
        len(named.groups),
        len(named.trials),
        sum(given["where"] != "words" for given in line["givens"]),
    }
    known |= {len(texts.named(one).groups) for one in sentences(line["text"])}  # of those in a sample, of all
    known |= {100 * value(given["number"]) for given in line["givens"] if given["quantity"] == "goal percent"}
    known |= successes.tops_told(line)
    missing = [number for number in relation_numbers(relation) if number not in known]
    if missing:
        possible = _totals_near(line, texts)
        for number in missing:
            if number not in possible:
                yield f'relation "{relation}": where does {number} come from?'


def _totals_near(line: dict[str, Any], texts: Texts) -> set[int]:
    """Every total of rows that the text names: groups one by one or all, trials together or each, colors likewise."""
    named = texts.named(line["text"])
    groups: list[tuple[Label, ...] | None] = [*((group,) for group in named.groups), named.groups or None, None]
    # "All pins" that are read in the table are added kind by kind, whatever kinds the words name.
    read = any(given["where"] == "table" for given in line["givens"])
    kinds = texts.results.colors if read else named.colors
    colors: list[tuple[Label, ...] | None] = [*((color,) for color in kinds), named.colors or None, None]
    trials = [*ways(named.trials, ()), None]
    each: list[tuple[Label, ...] | None] = [(one,) for one in texts.results.trials]
    return {
        texts.results.total(measure, Reach(*reach))
        for measure in ("down", "set_up", "standing")
        for reach in product(groups, [*trials, *each], colors)
    }


def _asked(line: dict[str, Any], exact: Rational, texts: Texts) -> Iterator[str]:
    """The total that the words ask for, from the raw rows; and whether the table or the graph shows it as it stands."""
    shares = asked_shares(line, texts)
    if shares is not None and exact not in shares:
        yield f"the words ask for {shares[0] if shares else 'a share of nothing'}, the answer is {exact}"
    yield from successes.faults(line, exact, texts)
    statistic = None if is_signed(line) else asked_statistic(line, texts)
    if statistic not in (None, exact):
        yield f"the words ask for {statistic}, the answer is {exact}"
    points = asked_points(line, texts)
    if points not in (None, exact):
        yield f"the words ask for {points}, the answer is {exact}"
    length = asked_length(line, texts)
    if length not in (None, exact):
        yield f"the words ask for {length} inches, the answer is {exact}"
    shared = asked_shared(line, texts)
    if shared not in (None, exact):
        yield f"the words ask for {shared}, the answer is {exact}"
    signed = asked_signed(line, texts)
    if signed not in (None, exact):
        yield f"the words ask for {signed}, the answer is {exact}"
    runs = asked_of_runs(line, texts)
    if runs not in (None, exact):
        yield f"the words ask for {runs}, the answer is {exact}"
    plot = asked_of_plot(line, texts)
    if plot not in (None, exact):
        yield f"the words ask for {plot}, the answer is {exact}"
    graph = asked_of_graph(line, texts)
    if graph not in (None, exact):
        yield f"the words ask for {graph}, the answer is {exact}"
    blank = asked_blank(line)
    if blank not in (None, exact):
        yield f"the number sentence lacks {blank}, the answer is {exact}"
    asked = asked_totals(line, texts)
    if asked is None:
        return
    fitting = [(measure, reach) for measure, reach in asked if texts.results.total(measure, reach) == exact]
    if not fitting:
        yield f"the words ask for {sorted({texts.results.total(*one) for one in asked})}, the answer is {exact}"
        return
    measure, reach = fitting[0]
    if measure in ("down", "set_up") and texts.results.cell_count(reach) == 1:
        yield "the answer can be copied from one cell of the table"
    bars = [reach_of(given["scope"]) for given in line["givens"] if given["where"] == "graph" and given["scope"]]
    if measure == "down" and len(reach.colors or ()) == 1 and any(bar[:2] == reach[:2] for bar in bars):
        yield "the answer can be copied from one bar of the graph"
