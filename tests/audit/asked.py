"""What a question asks for, read from its words alone and worked out from the raw rows."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from typing import Any

from sympy import Rational

from tests.audit import successes
from tests.audit.results import Label, Reach
from tests.audit.wording import Named, Texts, sentences


def asked_totals(line: dict[str, Any], texts: Texts) -> list[tuple[str, Reach]] | None:
    """What a plain "How many pins did the Owls knock down?" asks for, read from the words alone; None for any other question."""
    parts = sentences(line["text"])
    question = parts[-1]
    masked = texts.masked(question)
    others = _asked_others(line, texts)
    if others is not None:
        return [others]
    if not re.match(r"(In TRIAL, |In (?:all|the) \d+ trials, )?[Hh]ow many ", masked):
        return None
    if re.search(r"\b(more|fewer|times|mean|next|would|will|must|should|expect|about|each|every|per|need\w*|points|one)\b", masked):
        return None
    if re.search(r"\b(suppose|next|share\w*|equal\w*|moved?)\b", texts.masked(line["text"]), re.IGNORECASE):
        return None
    if re.search(rf"\bmore {re.escape(texts.words.items)}\b|\b(more|fewer|times)\b", masked):
        return None
    if re.search(r"\bhow many sets of \d+\b", masked, re.IGNORECASE):
        return None
    asks = [
        name
        for name, phrase in texts.words.after
        if re.search(rf"\b(?:were|was) {re.escape(phrase)}|{re.escape(texts.words.items)} {re.escape(phrase)}", masked)
    ]
    asks += [name for name, phrase in texts.words.base if re.search(rf"\bdid\b.*\b{re.escape(phrase)}\b", masked)]
    if re.search(r"\bdid TRIAL add\b", masked):
        asks.append("down")
    if not asks:
        return None
    in_question, in_text = texts.named(question), texts.named(line["text"])
    return [(asks[-1], reach) for reach in _asked_reaches(in_question, in_text, question, texts)]


def _asked_others(line: dict[str, Any], texts: Texts) -> tuple[str, Reach] | None:
    """ "How many pins other than the red pins were left standing?", "How many of the other pins were left standing?" """
    question = sentences(line["text"])[-1]
    told = re.search(r"one row for (.+) and one row for all the other", line["text"])
    one_kind = question if "other than" in question else told[1] if told and "of the other" in question else ""
    named, kinds = texts.named(line["text"]), texts.named(one_kind).colors
    measures = [name for name, phrase in texts.words.after if phrase in question]
    if not kinds or len(measures) != 1:
        return None
    others = tuple(color for color in texts.results.colors if color not in kinds)
    return measures[0], Reach(named.groups or None, named.trials or None, others)


def asked_blank(line: dict[str, Any]) -> Rational | None:
    """The number that a number sentence with a blank lacks, worked out from the sentence alone; None for any other question."""
    found = re.search(r"(\d+|__) ([+-]) (\d+|__) = (\d+)\b", sentences(line["text"])[-1])
    if found is None:
        return None
    first, sign, second, result = found.groups()
    if first == "__":
        return Rational(int(result) - int(second) if sign == "+" else int(result) + int(second))
    return Rational(int(result) - int(first) if sign == "+" else int(first) - int(result))


def asked_shares(line: dict[str, Any], texts: Texts) -> list[Rational] | None:
    """What "What fraction (percent, part) of the 8 red pins were knocked down?" asks for, part over whole from the raw rows."""
    question = sentences(line["text"])[-1]
    masked = texts.masked(question)
    sets = re.search(r"\bhow many sets of (\d+) .*\bdid\b", masked, re.IGNORECASE)
    if sets:  # full sets in what was knocked down
        reaches = _asked_reaches(texts.named(question), texts.named(line["text"]), question, texts)
        return [Rational(texts.results.total("down", reach), int(sets[1])) for reach in reaches]
    if re.search(r"percent (more|fewer)\b|\bby what percent is\b", masked, re.IGNORECASE):
        return _percent_more(question, line, texts)
    if not re.search(r"\b(what|exactly what) (fraction|percent|part|decimal part)\b", masked, re.IGNORECASE):
        return None
    if re.search(r"crease|change|\bnext\b|mean|average", masked):
        return None
    kinds = _share_of_kinds(masked, line, texts)
    if kinds is not None:
        return kinds
    forms = [(name, phrase) for name, phrase in (*texts.words.after, *texts.words.base) if name != "set_up" and phrase in masked]
    if not forms:
        return None
    measure = forms[-1][0]
    found = []
    for reach in _asked_reaches(texts.named(question), texts.named(line["text"]), question, texts):
        whole = texts.results.total("set_up", reach)
        if whole:
            found.append(Rational(texts.results.total(measure, reach), whole))
    return found


def _percent_more(question: str, line: dict[str, Any], texts: Texts) -> list[Rational]:
    """What part of the count of the group named last the difference of the two counts is; none where it goes the other way."""
    named = texts.named(line["text"])
    groups = sorted(texts.named(question).groups, key=lambda group: question.rindex(texts.called(group)))
    count, base = (texts.results.total("down", Reach((group,), named.trials or None, named.colors or None)) for group in groups)
    greater = re.search(r"\b(more|greater)\b", question) is not None
    return [Rational(abs(count - base), base)] if base and (count > base) == greater else []


def _share_of_kinds(question: str, line: dict[str, Any], texts: Texts) -> list[Rational] | None:
    """ "What fraction of all 12 pins were red or gold pins knocked down?", "... of the 9 pins knocked down were red pins?"

    The whole takes in every color, but where the words name some: the pins set up, or those knocked down where the words say so.
    None for any other question.
    """
    words, kinds = texts.words, "|".join(map(re.escape, texts.results.colors))
    items, phrases = re.escape(words.items), "|".join(re.escape(phrase) for _, phrase in words.after)
    found = re.search(
        rf"\b(?:fraction|percent|part) of (?:all |the )*(?:\d+ )?(?P<of>(?:(?:{kinds}|and),? )*){items}"
        rf"(?: (?P<whole>{phrases}))? (?:were|was) "
        rf"(?P<part>.+) {items}\b",
        question,
    )
    # "The red and gold pins knocked down were what decimal part of the 12 pins?"
    down = re.escape(dict(words.after)["down"])
    whole_set = rf"(?:(?:the|all) \d+|all) {items}"
    turned = re.search(rf"^(?P<part>.+) {items} {down} were (?:about )?what (?:fraction|decimal part) of {whole_set}\?", question)
    found = found or turned
    if found is None:
        return None
    named, colors = texts.named(line["text"]), texts.named(found["part"]).colors
    said = None if turned else found["whole"]
    whole = next((name for name, phrase in words.after if phrase == said), "set_up")
    place = named.groups or None, named.trials or None
    together = None if turned else texts.named(found["of"]).colors or None
    return [Rational(texts.results.total("down", Reach(*place, colors)), texts.results.total(whole, Reach(*place, together)))]


def asked_ratio(line: dict[str, Any], texts: Texts) -> tuple[int, int] | None:
    """What "What is the ratio of red pins knocked down to all red pins set up?" asks for: both counts, in their order."""
    if successes.is_about_successes(line):
        return successes.asked_ratio(line, texts)
    question = sentences(line["text"])[-1]
    found = re.search(r"\bratio of (.+) to (.+)\?", texts.masked(question))
    if found is None:
        return None
    measures = [[name for name, phrase in texts.words.after if re.search(rf"\b{re.escape(phrase)}$", side)] for side in found.groups()]
    if not measures[1]:
        return None
    named = texts.named(line["text"])
    counts = []
    for side, said in zip(found.groups(), measures, strict=True):
        colors = texts.named(side).colors or None
        # "red pins to gold pins knocked down": what is said at the end is said of both.
        counts.append(texts.results.total((said or measures[1])[0], Reach(named.groups or None, named.trials or None, colors)))
    return counts[0], counts[1]


def asked_statistic(line: dict[str, Any], texts: Texts) -> Rational | None:
    """The median, quartile, range or deviation that the words ask for, of the groups' or the trials' own totals; else None."""
    without = re.search(r"\b[Hh]ow much (greater|less) is the (mean|median)\b(?! of the sample)", sentences(line["text"])[-1])
    if without and " sample" not in line["text"]:
        return _without(line, texts, without[1] == "greater", without[2])
    if re.search(r"\bstretch\b.* cover\?", sentences(line["text"])[-1]):
        return _overlap(line, texts)
    if "difference of the means" in sentences(line["text"])[-1]:
        own, other = two_lists(line, texts)
        return abs(Rational(sum(own), len(own)) - Rational(sum(other), len(other))) / _deviation(own)
    work_out = next((of for pattern, of in _STATISTICS.items() if re.search(pattern, sentences(line["text"])[-1])), None)
    return None if work_out is None else work_out(listed(line, texts))


def _overlap(line: dict[str, Any], texts: Texts) -> Rational:
    """How long the stretch is that lies from least to greatest in the numbers of both groups, or of both trials, that the words name."""
    results, named = texts.results, texts.named(line["text"])
    if len(named.groups) == 2:
        lists = [[results.total("down", Reach((g,), (t,), named.colors or None)) for t in results.trials] for g in named.groups]
    else:
        lists = [[results.total("down", Reach((g,), (t,), named.colors or None)) for g in results.groups] for t in named.trials]
    assert len(lists) == 2, "two lists make two dot plots"
    return Rational(min(map(max, lists)) - max(map(min, lists)))


def _without(line: dict[str, Any], texts: Texts, up: bool, name: str) -> Rational:
    """By how much a mean or a median grows (or shrinks) without the number that the words leave out."""
    [told] = [one for one in sentences(line["text"]) if re.match(r"Leave out |The number for |Find the me", one)]
    out, named = texts.named(told), texts.named(line["text"])
    colors, over = named.colors or None, "groups" if out.groups else "trials"
    if over == "groups":
        labels: tuple[Label, ...] = named.groups if len(named.groups) > 1 else texts.results.groups
        lists = [[Reach((one,), named.trials, colors) for one in labels if one not in some] for some in ((), out.groups)]
    else:
        labels = tuple(one for one in texts.results.trials if one in named.trials) if len(named.trials) > 1 else texts.results.trials
        lists = [[Reach(named.groups or None, (one,), colors) for one in labels if one not in some] for some in ((), out.trials)]
    centers = []
    for reaches in lists:
        rising = sorted(texts.results.total("down", reach) for reach in reaches)
        centers.append(Rational(sum(rising), len(rising)) if name == "mean" else middle(rising))
    assert len(lists[1]) == len(lists[0]) - 1, "another number is left out"
    return centers[1] - centers[0] if up else centers[0] - centers[1]


def two_lists(line: dict[str, Any], texts: Texts) -> tuple[list[int], list[int]]:
    """The numbers of the group or trial that the question names, and those of the other one that the text names."""
    results, named, asked = texts.results, texts.named(line["text"]), texts.named(sentences(line["text"])[-1])
    lists = []
    if asked.groups:
        [other] = [group for group in named.groups if group not in asked.groups]
        for group in (asked.groups[0], other):
            lists.append([results.total("down", Reach((group,), (trial,), named.colors or None)) for trial in results.trials])
    else:
        [other_trial] = [trial for trial in named.trials if trial not in asked.trials]
        for trial in (asked.trials[0], other_trial):
            lists.append([results.total("down", Reach((group,), (trial,), named.colors or None)) for group in results.groups])
    return lists[0], lists[1]


def listed(line: dict[str, Any], texts: Texts) -> list[int]:
    """The numbers, in order, that a statistic is asked of: totals of the groups that the text names, or of its trials."""
    results, named = texts.results, texts.named(line["text"])
    colors = named.colors or None

    def some(told: tuple[Label, ...], every: tuple[Label, ...]) -> tuple[Label, ...]:
        return told if len(told) > 1 else every  # one name alone is that of a number left out of the list

    if len(named.groups) > 1 or re.search(r"\b(the groups|each group|per group)\b", texts.masked(line["text"]), re.IGNORECASE):
        reaches = [Reach((group,), named.trials or None, colors) for group in some(named.groups, results.groups)]
    else:
        reaches = [Reach(named.groups or None, (trial,), colors) for trial in some(named.trials, results.trials)]
    return sorted(results.total("down", reach) for reach in reaches)


def middle(rising: list[int]) -> Rational:
    return Rational(rising[(len(rising) - 1) // 2] + rising[len(rising) // 2], 2)


def _lower(rising: list[int]) -> Rational:
    return middle(rising[: len(rising) // 2])


def _upper(rising: list[int]) -> Rational:
    """The lower quartile of the list read from the other end."""
    return -_lower([-one for one in reversed(rising)])


def _deviation(rising: list[int]) -> Rational:
    mean = Rational(sum(rising), len(rising))
    return sum((abs(one - mean) for one in rising), Rational(0)) / len(rising)


_STATISTICS = {
    r"\bmedian\b": middle,
    r"left end of the box": _lower,
    r"right end of the box": _upper,
    r"\binterquartile range\b|long is the box": lambda rising: _upper(rising) - _lower(rising),
    r"\bmean absolute deviation\b": _deviation,
}


def _asked_reaches(in_question: Named, in_text: Named, question: str, texts: Texts) -> Iterator[Reach]:
    groups: list[tuple[Label, ...] | None]
    if in_question.groups:
        groups = [in_question.groups]
    elif texts.words.the_class in question.lower() or not in_text.groups:
        groups = [None]
    else:
        groups = [in_text.groups]
    colors: list[tuple[Label, ...] | None] = [in_question.colors or None]
    if not in_question.colors and in_text.colors:
        colors.append(in_text.colors)  # "How many pins in all?" of the red, blue and gold ones
    # Trials that the question does not name are those of the facts, taken together.
    trials: list[tuple[Label, ...] | None] = [in_question.trials or in_text.trials or None]
    return (Reach(*choice) for choice in product(groups, trials, colors))
