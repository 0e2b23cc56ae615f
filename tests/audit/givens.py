"""Where a problem's numbers come from: each given against the raw rows, each number of the text against the givens."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import Any

from sympy import Rational

from tests.audit import successes
from tests.audit.printed import UnreadableError, value
from tests.audit.results import Label, Reach, Results, reach_of
from tests.audit.signed import AGAINST_GOAL, over_goal
from tests.audit.wording import Occurrence, Texts

OUT_OF = " out of "
STATED = (
    "trials", "groups", "how many", "whole", "more than", "fewer than", "times", "goal mean", "set up next time",
    "goal next time", "bottom number", "points for each", "points lost for each", "bonus points", "points in all",
    "goal in points", "kinds", "top number", "trials at this rate", "goal at this rate", "in another row",
    "classes", "spaces", "inches", "inches on the drawing", "inches in a foot", "feet next time", "feet in all",
    "start of the line", "pins for each inch", "inches wider", "pins for each picture", "number on the line", "from", "to",
    "in each group", "in the sample", "of the color", "digits", "first digit", "last digit", "run", "runs", "in one more trial",
    "goal", "points more", "limit in points", "limit",
    "rows", "in each row", "counted next", "claimed", "picks", "claimed part", "claimed percent", "wanted total", "wanted mean",
    "mean told",
    "trials to come", "goal percent",
    "wanted sum",
)  # fmt: skip


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """Each given that the raw rows do not bear out, each number of the text that nothing accounts for."""
    for given in line["givens"]:
        try:
            number = value(given["number"])
        except UnreadableError as err:
            yield f"given: {err}"
            continue
        yield from _given(given, number, line, texts)
    yield from _numbers_in_text(line, texts)
    yield from _cells(line, texts.results)


def _given(given: dict[str, Any], number: Rational, line: dict[str, Any], texts: Texts) -> Iterator[str]:
    name = f"given {given['number']} ({given['quantity']}, {given['where']})"
    if given["where"] == "words" and not any(one.text == given["number"] for one in texts.numbers(line["text"])):
        yield f"{name} is not printed in the text"
    if given["where"] not in ("words", "table", "graph"):
        yield f"{name} stands nowhere"
    if given["quantity"] == f"{successes.SUCCESSES}{OUT_OF}{successes.TRIALS}":
        yield from successes.rate_faults(given, number, name, texts)
    elif OUT_OF in given["quantity"]:
        yield from _rate(given, number, name, line, texts)
    elif given["quantity"].endswith(AGAINST_GOAL):
        groups, trials, _ = reach_of(given["scope"])
        if [over_goal(groups, trial, line, texts) for trial in trials or texts.results.trials] != [number]:
            yield f"{name}: the rows are not so far from the goal"
    elif given["scope"] is not None:
        yield from _count(given, number, name, texts)
    elif given["quantity"] not in STATED:
        yield f"{name} is of no known kind"
    elif given["where"] != "words":
        yield f"{name} can only be told in words"
    elif given["quantity"] == "trials" and number.q == 1:
        # "for each of 2 trials", and a goal for one trial more than there are
        if not 2 <= number <= len(texts.results.trials) + 1:
            yield f"{name}: the table has {len(texts.results.trials)} trials"
    elif given["quantity"] == "groups" and number not in (len(texts.results.groups), len(texts.named(line["text"]).groups)):
        yield f"{name}: the text names {len(texts.named(line['text']).groups)} groups, the table has {len(texts.results.groups)}"


def _count(given: dict[str, Any], number: Rational, name: str, texts: Texts) -> Iterator[str]:
    reach = reach_of(given["scope"])
    if given["quantity"].startswith("space between "):
        if texts.results.gaps(reach) != {number}:
            yield f"{name}: the rows have {sorted(map(str, texts.results.gaps(reach)))}"
        return
    if given["quantity"] in (successes.TRIALS, successes.SUCCESSES):
        yield from successes.given_faults(given, number, name, texts)
        return
    measure = texts.words.measure(given["quantity"])
    if measure is None:
        yield f"{name} is no measure"
        return
    total = texts.results.total(measure, reach)
    if total != number:
        yield f"{name}: the rows add up to {total}"
    if not texts.results.complete(reach):
        yield f"{name} covers a result that was not taken"
    colors = _colors(given["quantity"], texts.results)
    if set(colors) != set(reach.colors or ()):
        yield f"{name}: the scope's colors are {reach.colors}"
    if given["where"] == "table":
        if texts.results.cell_count(reach) != 1:
            yield f"{name} is no single cell"
        if measure == "standing":
            yield f"{name}: the table does not print what is left standing"
    if given["where"] == "graph" and (measure != "down" or len(reach.colors or ()) != 1):
        yield f"{name} is no bar"


def _colors(quantity: str, results: Results) -> list[str]:
    return [color for color in results.colors if re.search(rf"(?<!\w){re.escape(color)}(?!\w)", quantity)]


def _rate(given: dict[str, Any], number: Rational, name: str, line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """A rate, or a count for each trial: its scope has to be one that its sentence names, and has to bear it out."""
    part, whole = given["quantity"].split(OUT_OF)
    part_measure, whole_measure = texts.words.measure(part), texts.words.measure(whole)
    if part == whole and part_measure is not None:
        named, colors = texts.named(line["text"]), tuple(_colors(part, texts.results)) or None
        trials = [trial for trial in texts.results.trials if trial in named.trials]
        counts = [texts.results.total(part_measure, Reach(named.groups or None, (trial,), colors)) for trial in trials]
        if len(counts) != 2 or Rational(counts[1], counts[0]) != number:
            yield f"{name}: the two trials have {counts}"
        return
    if part in ("claimed", "wanted sum"):  # nothing bears it out: it is judged, or found among the fractions
        return
    if part_measure is None or (whole_measure is None and whole != "trials"):
        yield f"{name} is of no known kind"
        return
    results = texts.results
    stated = None if given["scope"] is None else reach_of(given["scope"])
    for groups, trials in _places(given["number"], line["text"], texts):
        if stated is not None and not _same_place((groups, trials), stated, results):
            continue
        reach = Reach(groups, trials, tuple(_colors(part, results)) or None)
        top = results.total(part_measure, reach)
        if whole == "trials":
            bottom = len(results.trials if trials is None else trials)
            # "12 pins for each of 2 trials": true of each trial, not on average
            each = {results.total(part_measure, Reach(groups, (one,), reach.colors)) for one in trials or results.trials}
            mean = re.search(r"\b[Tt]he mean (number of .+ per trial )?was \d+|\ba mean of \d+", line["text"]) is not None
            if (mean or each == {number}) and top == number * bottom:
                return
            continue
        bottom = results.total(whole_measure or "", Reach(groups, trials, tuple(_colors(whole, results)) or None))
        if bottom and Rational(top, bottom) == number and results.complete(reach):
            return
    yield f"{name}: no rows that the text names bear it out"


def _same_place(named: tuple[tuple[Label, ...] | None, tuple[Label, ...] | None], stated: Reach, results: Results) -> bool:
    """Whether the groups and trials of a scope are those that the words name; none named means all."""
    groups, trials = named
    return set(groups or results.groups) == set(stated.groups or results.groups) and set(trials or results.trials) == set(
        stated.trials or results.trials
    )


def _places(number: str, text: str, texts: Texts) -> Iterator[tuple[tuple[Label, ...] | None, tuple[Label, ...] | None]]:
    """Groups and trials that the sentence of a number names; where it names none, those of the whole text, or all."""
    everything = texts.named(text)
    for sentence in dict.fromkeys(one.sentence for one in texts.numbers(text) if one.text == number):
        named = texts.named(sentence)
        groups: list[tuple[Label, ...] | None] = [(group,) for group in named.groups or everything.groups] or [None]
        if texts.words.the_class in text.lower():
            groups.append(None)
        if not everything.groups and re.search(r"\b[Ee]ach group\b", text):
            groups += [(group,) for group in texts.results.groups]
        spans = ways(named.trials, everything.trials)
        yield from product(groups, spans)


def ways(nearest: tuple[Label, ...], anywhere: tuple[Label, ...]) -> list[tuple[Label, ...] | None]:
    """Which trials a sentence can mean: any run of those it names ("Trials 1 and 2 and Trials 3 and 4"); else of the text's, or all."""
    named = nearest or anywhere
    found: dict[tuple[Label, ...] | None, None] = {}
    for size in range(len(named), 0, -1):
        found.update(dict.fromkeys(named[at : at + size] for at in range(len(named) - size + 1)))
    if not nearest:
        found[None] = None
    return list(found)


def _numbers_in_text(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    in_words = [given for given in line["givens"] if given["where"] == "words"]
    for one in texts.numbers(line["text"]):
        if (
            one.text in ("0", "1")
            and "number line" in line["text"]
            and re.search(r"from 0 to 1\b|\b(and|from|to|before) 1[.?]|^Count back \d+ parts from 1 to\b", one.sentence)
        ):
            continue
        if one.text == "0" and one.sentence == "Do not use 0, and count each pair once.":
            continue
        fitting = [given for given in in_words if given["number"] == one.text]
        counts = (str(len(texts.results.trials)), str(len(texts.results.groups)), str(len(texts.named(line["text"]).trials)))
        if texts.is_count_of_trials(one) and one.text in counts:
            continue
        if not fitting:
            yield f'the text\'s "{one.text}" in "{one.sentence}" is no given in words, no label and no count of trials or groups'
            continue
        if not any(_said_of(given, one, line["text"], texts) for given in fitting):
            yield f'the text\'s "{one.text}" in "{one.sentence}" is said of something else than its given'


def _said_of(given: dict[str, Any], one: Occurrence, text: str, texts: Texts) -> bool:
    """Whether a number's own sentence agrees with the given's color, group and trials."""
    colors = [color for color in texts.results.colors if re.match(rf" {re.escape(color)}\b", one.after, re.IGNORECASE)]
    bare = re.match(rf" ({re.escape(texts.words.items)}|{re.escape(texts.words.item)})\b", one.after)
    if given["scope"] is None:
        if OUT_OF not in given["quantity"]:
            return True
        mine = set(_colors(given["quantity"], texts.results))
        return not colors or colors[0] in mine
    if re.search(rf"(?<!\d)\d+/\d+ × {re.escape(one.text)}\b|(?<!\d){re.escape(one.text)} × \d+\b", one.sentence):
        return True  # "5/4 × 8 pins in Trial 2" takes up the 8 of Trial 1
    reach = reach_of(given["scope"])
    if colors and (reach.colors is None or colors[0] not in reach.colors):
        return False
    # A whole named once as "10 gold pins" may come again as "of the 10 pins".
    if bare and not colors and reach.colors is not None and not any(str(color) in one.sentence for color in reach.colors):
        return False
    named = texts.named(one.sentence)
    if re.match(r"With .+, the total was ", one.sentence):
        # "With the Herons, the total was 9 pins": what was told before, and the Herons besides.
        named = texts.named(text[: text.index(one.sentence) + len(one.sentence)])
    if named.groups and reach.groups is not None and not set(reach.groups) <= set(named.groups):
        return False
    the_class = texts.words.the_class in one.sentence.lower() or set(named.groups) == set(texts.results.groups)
    if named.groups and reach.groups is None and not the_class:
        return False
    return not named.trials or reach.trials is None or set(reach.trials) <= set(named.trials)


def _cells(line: dict[str, Any], results: Results) -> Iterator[str]:
    wanted: set[tuple[str, Label, str]] = set()
    for given in line["givens"]:
        if given["where"] == "table" and given["scope"] is not None:
            inside = results.inside(reach_of(given["scope"]))
            wanted.update((row.group, row.trial, row.color) for row in inside)
    listed = [(cell["group"], cell["trial"], cell["color"]) for cell in line["cells"]]
    if len(set(listed)) != len(listed) or set(listed) != wanted:
        yield "the cells to be read are not those of the givens"
    if line["needs_table"] != any(given["where"] != "words" for given in line["givens"]):
        yield "needs_table does not say whether the table is needed"
