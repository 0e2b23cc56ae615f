"""Whether a row or column called "Totals" or "Means" sums up its neighbors, or is a group of that name: its numbers tell."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from mathgen.trials.cells import Count, read_cell
from mathgen.trials.heading_words import tidy
from mathgen.trials.labels import total_label

Verdict = Literal["sums up", "group", "unclear", "no counts"]


@dataclass(frozen=True, slots=True)
class Summed:
    """One cell under such a name, and each list of counts that it may sum up."""

    text: str
    choices: tuple[tuple[int, ...], ...]


def judge(label: str, cells: list[Summed]) -> Verdict:
    """What the numbers under a name say that it is.

    All of them agree with the sums (or averages): it sums up. None agrees, or no more than chance brings about: it is a group.
    Anything between is unclear: it may be either, with a slip in it. No group has decimals or percents for counts.

    >>> judge("Means", [Summed("1", ((3,),)), Summed("2", ((2,),))])
    'group'
    >>> judge("Total", [Summed("4", ((3, 1),)), Summed("2", ((2, 0),))])
    'sums up'
    """
    derived = total_label(label) == "derived"
    if derived and any(re.fullmatch(r"\d*[.,]\d+%?|\d+%", tidy(cell.text)) for cell in cells):
        return "sums up"
    counts = [(read.value, cell.choices) for cell in cells if isinstance(read := read_cell(cell.text), Count)]
    if not counts:
        return "no counts"
    word = tidy(label).casefold().rstrip(":").split()[-1]
    if word.startswith("percent"):
        return "unclear"  # a whole percent looks like a count
    best, telling = 0, False
    for way in range(max(len(choices) for _, choices in counts)):
        agreeing = [choices[way] for value, choices in counts if way < len(choices) and _agrees(word, derived, value, choices[way])]
        best = max(best, len(agreeing))
        telling = telling or any(len(choice) > 1 for choice in agreeing)
    if best == len(counts):
        return "sums up"
    # The sum of several counts is rarely met by chance; an average is, and so is the sum of a single count.
    return "unclear" if 2 * best > len(counts) or (telling and not derived) else "group"


def _agrees(word: str, derived: bool, value: int, counts: tuple[int, ...]) -> bool:
    """Whether a number is the sum of the counts, or the average (or the like) that a word names, to the nearest whole."""
    if not derived:
        return value == sum(counts)
    if not counts:
        return False
    if word.startswith("max"):
        return value == max(counts)
    if word.startswith("min"):
        return value == min(counts)
    if word == "range":
        return value == max(counts) - min(counts)
    if word.startswith("median"):
        ordered = sorted(counts)
        return abs(2 * value - ordered[len(counts) // 2] - ordered[(len(counts) - 1) // 2]) <= 1
    return abs(2 * value * len(counts) - 2 * sum(counts)) <= len(counts)
