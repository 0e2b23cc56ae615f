"""Faults planted in printed words, by rules that know nothing of the project's wording: only the table's labels and English.

A rule takes the text and returns other texts. A text that comes back unchanged is no fault. One kind of edit is harmless by rule and
left out: dropping a sentence without a number, for such a sentence only says where to look.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from itertools import pairwise

from mathgen.trials.table import TrialTable

_SENTENCE = re.compile(r"(?<=[.?]) (?=[A-Z])")
_NUMBER = re.compile(r"(?<![\d/.])\d+(?![\d/.%]|\.\d)")

Rule = Callable[[str, TrialTable], Iterator[str]]
RULES: dict[str, Rule] = {}


def fault(rule: Rule) -> Rule:
    """Files a rule under its own name."""
    RULES[rule.__name__.replace("_", " ")] = rule
    return rule


def _swap(text: str, one: str, other: str) -> str:
    return re.sub(rf"\b{re.escape(one)}\b", other, text)


def _each(text: str, labels: tuple[str, ...], where: str) -> Iterator[str]:
    """Each label that stands in a part of the text, replaced there by each other label."""
    for one in labels:
        if re.search(rf"\b{re.escape(one)}\b", where):
            for other in labels:
                if other != one:
                    yield text.replace(where, _swap(where, one, other))


def _question(text: str) -> str:
    return _SENTENCE.split(text)[-1]


def _facts(text: str) -> list[str]:
    return _SENTENCE.split(text)[:-1]


@fault
def another_color(text: str, table: TrialTable) -> Iterator[str]:
    yield from _each(text, table.colors, text)


@fault
def another_color_in_the_question(text: str, table: TrialTable) -> Iterator[str]:
    yield from _each(text, table.colors, _question(text))


@fault
def another_group(text: str, table: TrialTable) -> Iterator[str]:
    yield from _each(text, table.groups, text)


@fault
def another_group_in_the_question(text: str, table: TrialTable) -> Iterator[str]:
    yield from _each(text, table.groups, _question(text))


@fault
def another_group_in_one_fact(text: str, table: TrialTable) -> Iterator[str]:
    for fact in _facts(text):
        yield from _each(text, table.groups, fact)


@fault
def another_trial(text: str, table: TrialTable) -> Iterator[str]:
    for trial in table.trials:
        for other in table.trials:
            if trial != other:
                yield re.sub(rf"\bTrial {trial}\b", f"Trial {other}", text)


@fault
def one_trial_for_all(text: str, table: TrialTable) -> Iterator[str]:
    for trial in table.trials:
        yield re.sub(rf"\b(all|the) {len(table.trials)} trials\b", f"Trial {trial}", text)


@fault
def all_trials_for_one(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"\bTrial \d+\b", f"all {len(table.trials)} trials", text)


@fault
def the_class_for_a_group(text: str, table: TrialTable) -> Iterator[str]:
    for group in table.groups:
        yield re.sub(rf"\bthe {group}\b", "the class", re.sub(rf"\bThe {group}\b", "The class", text))


@fault
def knocked_down_for_left_standing(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("left standing", "knocked down")


@fault
def left_standing_for_knocked_down_in_the_question(text: str, table: TrialTable) -> Iterator[str]:
    question = _question(text)
    yield text.replace(question, question.replace("knocked down", "left standing"))


@fault
def set_up_for_knocked_down(text: str, table: TrialTable) -> Iterator[str]:
    question = _question(text)
    yield text.replace(question, question.replace("knocked down", "set up").replace("knock down", "set up"))


@fault
def fewer_for_more(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"\bmore (?=\w+ ?\w* ?(than|did|were|does|pins))", "fewer ", text) if "How many more" in text or " than " in text else text


@fault
def more_for_fewer(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("fewer", "more")


@fault
def decrease_for_increase(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("increase", "decrease")


@fault
def increase_for_decrease(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("decrease", "increase")


@fault
def one_number_changed(text: str, table: TrialTable) -> Iterator[str]:
    for found in _NUMBER.finditer(text):
        if not re.search(r"Trials? (\d+,? )*(and )?$", text[: found.start()]):
            yield f"{text[: found.start()]}{int(found.group()) + 1}{text[found.end() :]}"


@fault
def two_numbers_swapped(text: str, table: TrialTable) -> Iterator[str]:
    found = [one for one in _NUMBER.finditer(text) if not re.search(r"Trials? (\d+,? )*(and )?$", text[: one.start()])]
    for one, other in pairwise(found):
        if one.group() != other.group():
            yield text[: one.start()] + other.group() + text[one.end() : other.start()] + one.group() + text[other.end() :]


@fault
def a_fraction_or_percent_changed(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"(?<![\d.])(\d+)/(\d+)", lambda found: f"{int(found[1]) + 1}/{found[2]}", text, count=1)
    yield re.sub(r"(?<![\d.])(\d+)%", lambda found: f"{int(found[1]) + 5}%", text, count=1)


@fault
def another_place(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("nearest tenth of a percent", "nearest whole percent")
    yield text.replace("nearest tenth", "nearest hundredth")


@fault
def another_form(text: str, table: TrialTable) -> Iterator[str]:
    question = _question(text)
    for one, other in (("percent", "decimal"), ("decimal", "percent"), ("mixed number", "decimal"), ("fraction", "percent")):
        yield text.replace(question, question.replace(f"a {one}", f"a {other}"))


@fault
def a_fact_dropped(text: str, table: TrialTable) -> Iterator[str]:
    for fact in _facts(text):
        if re.search(r"\d", re.sub(r"Trials? [\d, and]+|\d+ trials", "", fact)):
            yield text.replace(f"{fact} ", "", 1)


@fault
def a_fact_said_twice_with_another_number(text: str, table: TrialTable) -> Iterator[str]:
    for fact in _facts(text):
        changed = _NUMBER.sub(lambda found: str(int(found.group()) + 1), fact, count=1)
        if changed != fact and not re.match(r"(Look|Use) ", fact):
            yield text.replace(fact, f"{fact} {changed}", 1)


@fault
def a_second_question(text: str, table: TrialTable) -> Iterator[str]:
    yield f"{text} How many pins were left standing?"
    yield f"{text} How many {table.colors[0]} pins did {table.groups[0]} knock down?"


@fault
def not_put_in(text: str, table: TrialTable) -> Iterator[str]:
    question = _question(text)
    for verb in ("did ", "were ", "was ", "would ", "must "):
        yield text.replace(question, question.replace(verb, f"{verb}not ", 1))


@fault
def not_put_in_a_fact(text: str, table: TrialTable) -> Iterator[str]:
    for fact in _facts(text):
        yield text.replace(fact, fact.replace(" knocked down ", " did not knock down ", 1), 1)


@fault
def an_unknown_word(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace(" pins", " heavy pins", 1)


@fault
def lesser_for_greater(text: str, table: TrialTable) -> Iterator[str]:
    yield text.replace("greater", "lesser")


@fault
def median_for_mean(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"\bmean\b", "median", text)


@fault
def mean_for_median(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"\bmedian\b", "mean", text)


@fault
def the_ratio_turned_round(text: str, table: TrialTable) -> Iterator[str]:
    yield re.sub(r"ratio of (.+?) to (.+?)\?", r"ratio of \2 to \1?", text)


@fault
def another_whole(text: str, table: TrialTable) -> Iterator[str]:
    for color in table.colors:
        yield re.sub(rf"of the (\d+) {color} pins", r"of the \1 pins", text)
        yield re.sub(r"of the (\d+) pins", rf"of the \1 {color} pins", text)
