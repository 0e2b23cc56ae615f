"""Statements that are to be judged: what the words say, held against the raw rows."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Rational

from tests.audit.results import Reach
from tests.audit.told_scores import score_told
from tests.audit.wording import Texts, sentences
from tests.audit.working import solutions


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with a yes or no, but for its slips."""
    answer = line["answer"]
    if answer["value"] not in ("true", "false") or answer["exact"] != answer["value"]:
        yield f"the value {answer['value']} is neither true nor false"
    if answer["display"] != {"true": "Yes", "false": "No"}.get(answer["value"]):
        yield f"{answer['display']} is displayed for {answer['value']}"
    if answer["demands"] != "truth" or set(answer["accepted"]) != {answer["display"], answer["value"]}:
        yield f"a statement that demands {answer['demands']}, accepted {answer['accepted']}"
    if line["answer"]["display"] in line["text"].split():
        yield "the answer stands in the text"
    told = _pairs(line, texts)
    if told is None:
        told = _shared_out(line, texts)
    if told is None:
        told = _number_sentence(line, texts)
    if told is None:
        told = _claimed_total(line, texts)
    if told is None:
        told = _split(line, texts)
    if told is None:
        told = _longer(line, texts)
    if told is None:
        told = _repeating(line, texts)
    if told is None:
        told = _proportional(line, texts)
    if told is None:
        told = _statistical(line, texts)
    if told is None:
        told = _mean_of_count(line, texts)
    if told is None:
        told = _likelier(line, texts)
    if told is None:
        told = _against_factor(line, texts)
    if told is None:
        told = _right_expression(line, texts)
    if told is None:
        told = _sample(line, texts)
    if told is None:
        yield "the audit does not know what is to be judged"
    elif told != (answer["value"] == "true"):
        yield f"the rows say {told}"


def _pairs(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Can all of these red pins be put in pairs?", "... an odd number?", "Is one pin without a partner?"; None for anything else."""
    question = texts.masked(sentences(line["text"])[-1])
    paired = re.search(r"be put in pairs\?|every \w+ have a partner\?|\beven( number)?\?", question)
    if not paired and not re.search(r"\bodd( number)?\?|without a partner\?", question):
        return None
    named = texts.named(line["text"])
    count = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None))
    if solutions(line["relation"]) != (count % 2,):
        return None
    return (count % 2 == 0) == bool(paired)


def _number_sentence(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Is 3 + 2 = 5 true?", "Is 27 > 31 a true number sentence?": the numbers, in the order in which the facts tell them."""
    *facts, asked = sentences(line["text"])
    found = re.search(r"\bIs (?:the number sentence )?([\d +-]+) ([=<>]) ([\d +]+?)( true| a true number sentence)\?", asked)
    if found is None:
        return None
    sides = [[int(number) for number in re.split(r" [+-] ", side)] for side in (found[1], found[3])]
    told = re.findall(rf"\b(\d+)(?: (?!{texts.words.trials}\b)[a-z]|\.)", texts.masked(" ".join(facts)))
    if [int(text) for text in told] != (sides[0] if "-" in found[1] else sides[0] + sides[1]):
        return None
    left = sides[0][0] - sides[0][1] if "-" in found[1] else sum(sides[0])
    apart = left - sum(sides[1])
    if solutions(line["relation"]) not in ((apart,), (-apart,)):
        return None
    return {"=": apart == 0, ">": apart > 0, "<": apart < 0}[found[2]]


def _split(line: dict[str, Any], _: Texts) -> bool | None:
    """ "Is 5/8 = 1/8 + 2/8 + 2/8 true?", "Can 5/8 be split into ...?", "Do ... have the sum 5/8?": like fractions, added by their tops."""
    asked = sentences(line["text"])[-1]
    if not re.search(r"\d = \d+/|\bbe split into\b|\bhave the sum\b", asked):
        return None
    fractions = [(int(top), int(bottom)) for top, bottom in re.findall(r"(\d+)/(\d+)", asked)]
    (part, *others) = fractions if "have the sum" not in asked else [fractions[-1], *fractions[:-1]]
    if len(others) != 3 or {bottom for _, bottom in fractions} != {part[1]}:
        return None
    apart = part[0] - sum(top for top, _ in others)
    return apart == 0 if solutions(line["relation"]) == (Rational(apart, part[1]),) else None


def _repeating(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Is 5/12 equal to this repeating decimal?": a fraction held against the part of the set that the rows have."""
    asked = sentences(line["text"])[-1]
    if not re.search(r"\bequal to this repeating decimal\?|\bhave the same value\?|\bpart of the \w+ equal to\b", asked):
        return None
    found = re.search(r"(?<![\d.])(\d+)/(\d+)", asked)
    claimed = Rational(int(found[1]), int(found[2])) if found else None
    named = texts.named(line["text"])
    reach = Reach(named.groups or None, named.trials or None, named.colors or None)
    part = Rational(texts.results.total("down", reach), texts.results.total("set_up", reach))
    if claimed is None or solutions(line["relation"]) != (part - claimed,):
        return None
    return bool(part == claimed)


def _longer(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Are 5 of these spaces end to end longer than 3 feet?": so many times the space that the rows have, in inches."""
    feet = re.search(r"\blonger than (\d+) feet\?", line["text"])
    count = re.search(r"\b(\d+) (?:of these )?spaces\b", line["text"])
    named = texts.named(line["text"])
    if feet is None or count is None or "One foot is 12 inches." not in line["text"]:
        return None
    [gap] = texts.results.gaps(Reach(named.groups, named.trials, None))
    assert gap is not None
    apart = int(count[1]) * gap - 12 * int(feet[1])
    return bool(apart > 0) if solutions(line["relation"]) == (apart,) else None


def _claimed_total(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Did the Owls knock down 12 pins in all?", "Is 12 the total number of pins knocked down?": the rows of all that the text names."""
    asked = texts.masked(sentences(line["text"])[-1])
    found = re.search(r"\bDid .+? (\d+) .+\?|\bIs (\d+) the total number of\b|\bIs the total number of .+ (\d+)\?", asked)
    if found is None:
        return None
    claimed, named = int(next(filter(None, found.groups()))), texts.named(line["text"])
    total = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None))
    if solutions(line["relation"]) != (total - claimed,):
        return None
    return bool(total == claimed)


def _shared_out(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "... be put in equal rows of 4?", "... a multiple of 4?", "Is 4 a factor of ...?"; boxes of 4, and "Is every box full ...?" """
    asked, text = texts.masked(sentences(line["text"])[-1]), texts.masked(line["text"])
    found = re.search(r"equal rows of (\d+)\?|a multiple of (\d+)\?|\bIs (\d+) a factor of\b", asked)
    if found is None and re.search(rf"\bIs every box full, with no {texts.words.items} left over\?", asked):
        found = re.search(r"\bin boxes of (\d+)\.", text)
    if found is None:
        return None
    size = int(next(filter(None, found.groups())))
    named = texts.named(line["text"])
    count = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None))
    if solutions(line["relation"]) != (count % size,):
        return None
    return count % size == 0


def _likelier(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Is a red pin more likely to be knocked down than to be left standing?" """
    found = re.search(r"more likely to (.+) than to (.+)\?", sentences(line["text"])[-1])
    if found is None:
        return None
    named, words = texts.named(line["text"]), texts.words
    reach, counts = Reach(named.groups or None, named.trials or None, named.colors or None), []
    for side in found.groups():
        forms = [(phrase, name) for name, phrase in (*words.after, *words.base) if name != "set_up"]
        [measure] = {name for phrase, name in forms if phrase.removeprefix("that ") in side}
        counts.append(texts.results.total(measure, reach))
    if solutions(line["relation"]) != (counts[0] - counts[1],):
        return None
    return counts[0] > counts[1]


def _statistical(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Is that a statistical question?": whether what someone asks has more than one answer in the rows."""
    if not re.search(r"a statistical question\?", sentences(line["text"])[-1]):
        return None
    [asks] = [sentence for sentence in sentences(line["text"]) if re.match(r"Someone (asks|would like to know) how many ", sentence)]
    named, phrase = texts.named(asks), f" {dict(texts.words.after)['set_up']} "
    groups = texts.results.groups if re.search(rf"\beach {texts.words.group}\b", asks, re.IGNORECASE) else named.groups
    measure = "set_up" if phrase in asks else "down"
    answers = {texts.results.total(measure, Reach((group,), named.trials, named.colors or None)) for group in groups}
    if solutions(line["relation"]) != (max(answers) - min(answers),):
        return None
    return len(answers) > 1


def _mean_of_count(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "A mean of 4 was written down without a heading. Is that the mean number of pins left standing?" """
    question = sentences(line["text"])[-1]
    written = re.search(r"\ba mean of (\d+)\b", line["text"], re.IGNORECASE)
    if written is None or not re.search(r"\bmean number\b|\bmean tell\b|\bheading say\b", question):
        return None
    named, results = texts.named(line["text"]), texts.results
    [measure] = [name for name, phrase in texts.words.after if phrase in question]
    counts = [results.total(measure, Reach(named.groups, (trial,), named.colors or None)) for trial in results.trials]
    mean = Rational(sum(counts), len(counts))
    return mean == int(written[1]) if solutions(line["relation"]) == (mean - int(written[1]),) else None


def _proportional(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Are these scores proportional to the numbers of pins knocked down?", "Do both points lie on one line through the origin?" """
    text = line["text"]
    if not re.search(r"scores proportional to the numbers of .+\?|one line through the origin\?", sentences(text)[-1]):
        return None
    named, (first, second) = texts.named(text), texts.named(text).groups
    rates = []
    for group in (first, second):
        score = score_told(text, texts.called(group))
        count = texts.results.total("down", Reach((group,), named.trials or None, named.colors or None))
        if score is None or not count:
            return None
        rates.append(Rational(score, count))
    if solutions(line["relation"]) not in ((rates[0] - rates[1],), (rates[1] - rates[0],)):
        return None
    return bool(rates[0] == rates[1])


def _against_factor(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "... 5/4 × 8 pins in Trial 2. ... more pins in Trial 2 than in Trial 1?", "Is 5/4 × 8 less than 8?" """
    found = re.search(r"(?<!\d)(\d+)/(\d+) × (\d+)\b", line["text"])
    asked = re.search(r"\b(more|greater|fewer|less)\b[^.]*\?", sentences(line["text"])[-1])
    if found is None or asked is None:
        return None
    named = texts.named(line["text"])
    trials = [trial for trial in texts.results.trials if trial in named.trials]
    counts = [texts.results.total("down", Reach(named.groups or None, (trial,), named.colors or None)) for trial in trials]
    if len(counts) != 2 or counts[0] != int(found[3]) or counts[1] * int(found[2]) != counts[0] * int(found[1]):
        return None
    if solutions(line["relation"]) != (counts[1] - counts[0],):
        return None
    return counts[1] > counts[0] if asked[1] in ("more", "greater") else counts[1] < counts[0]


def _right_expression(line: dict[str, Any], texts: Texts) -> bool | None:
    """ "Does (3 + 2) × 5 give the number of points the Owls earned?": at so many points for each pin of two colors."""
    found = re.search(r"\(\d+ \+ \d+\) × \d+|\d+(?: × \d+)? \+ \d+(?: × \d+)?", sentences(line["text"])[-1])
    each = re.search(r"\b(?:earns|earned|is worth) (\d+) points\b", line["text"])
    if found is None or each is None:
        return None
    named = texts.named(line["text"])
    points = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors)) * int(each[1])
    [worth] = solutions(f"x = {found[0].replace('×', '*')}")
    if solutions(line["relation"]) != (points - worth,):
        return None
    return bool(points == worth)


def _sample(line: dict[str, Any], texts: Texts) -> bool | None:
    """Whether a color is the same part of a sample as of all that were knocked down; None for any other question."""
    told = re.search(r"\bsample of (\d+) .*\bhas (\d+) ", line["text"])
    question = sentences(line["text"])[-1]
    if told is None or "fraction of" not in question:
        return None
    named, colors = texts.named(line["text"]), texts.named(question).colors
    place = named.groups or None, named.trials or None
    part, whole = (texts.results.total("down", Reach(*place, some)) for some in (colors, None))
    return Rational(int(told[2]), int(told[1])) == Rational(part, whole)
