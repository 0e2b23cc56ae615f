"""How groups, trials and colors are named in a sentence."""

from __future__ import annotations

from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label

_TRIAL_WORDS = frozenset({"attempt", "day", "roll", "round", "test", "try"})
_LINKS = frozenset({"of", "for", "with"})  # a roll of tape
_NO_ARTICLE = ("the ", "group ", "team ", "table ", "our ", "class ")


def group_name(label: str, scenario: Scenario) -> str:
    """A group as named in mid-sentence: ``the Owls``, ``Group 7``, ``The Most``, ``Zoë``.

    A plural takes the article; a bare number takes the scenario's word for a group.
    """
    if label.isdigit() or (len(label) == 1 and label.isalpha()):
        return f"{scenario.group} {label}"
    if label.casefold().startswith(_NO_ARTICLE) or any(letter.isdigit() for letter in label):
        return label
    if label.endswith("s") and not label.endswith(("ss", "us", "is", "'s")):
        return f"the {label}"
    return label


def trial_name(label: Label, scenario: Scenario) -> str:
    """``Trial 1``, ``Trial A``, ``Monday trial``; a label that has the word already, or is a phrase, stays as typed."""
    text = str(label)
    word = scenario.trial.capitalize()
    if isinstance(label, int) or len(text) <= 2:
        return f"{word} {text}"
    if _TRIAL_WORDS.union({scenario.trial}) & set(text.casefold().split()):
        return text
    return f"{text} {scenario.trial}"


def several_of(item: str) -> str | None:
    """An item of a price list as one says it of several: ``paper tubes``, ``rolls of tape``; None where it is said of several anyway.

    >>> several_of("roll of tape"), several_of("box"), several_of("sock balls")
    ('rolls of tape', 'boxes', None)
    """
    words = item.split()
    place = next((number for number, word in enumerate(words) if number and word in _LINKS), len(words)) - 1
    head = words[place]
    if not head.isalpha() or (head.endswith("s") and not head.endswith("ss")):
        return None
    if head.endswith(("ss", "x", "ch", "sh", "z")):
        head += "es"
    elif head.endswith("y") and head[-2:-1] not in tuple("aeiou"):
        head = f"{head[:-1]}ies"
    else:
        head += "s"
    return " ".join([*words[:place], head, *words[place + 1 :]])


def listed(words: list[str], joint: str = "and") -> str:
    """A list with the serial comma: ``red, blue, and gold``; ``red and blue``; ``red or blue``."""
    if len(words) <= 2:
        return f" {joint} ".join(words)
    return f"{', '.join(words[:-1])}, {joint} {words[-1]}"


def upper_first(text: str) -> str:
    """The text as it starts a sentence."""
    return text[:1].upper() + text[1:]
