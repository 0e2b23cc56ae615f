"""The names of groups, trials and colors as typed, and the one spelling that stands for all of them."""

from __future__ import annotations

import re

from mathgen.trials.heading_words import read_heading, tidy
from mathgen.trials.scope import Label
from mathgen.trials.tidy import tidy_cell

_TOTAL = re.compile(
    r"(?:(?:sub|grand|class|overall|column|group|team|trial)[ -]?)?(?:totals?|sums?)(?: down| knocked down| standing| pins)?:?"
    r"|(?:all|everyone|overall|altogether|in all|all groups|all teams|all trials|whole class)(?: totals?)?:?"
)
_DERIVED = re.compile(
    r"(?:class |group |grand |overall )?(?:averages?|avg\.?|means?|medians?|max(?:imum)?|min(?:imum)?|percents?|percentages?|range):?"
)
_OF_GROUP = re.compile(
    r"(?:sub)?totals?(?: for| of)?[ :]+(?:the )?(?P<after>.+)|(?P<before>.+?)(?:'s?|’s?)?[ :-]+(?:sub)?totals?:?", re.IGNORECASE
)


def spelling_key(name: str) -> str:
    """What two spellings of one name share: letters without case, spaces and the signs between words."""
    return re.sub(r"[\s_.-]+", " ", tidy(name).casefold()).strip()


def read_trial(text: str) -> Label:
    """A trial's label: a number where it was typed as one.

    >>> read_trial("Trial 2"), read_trial("T3"), read_trial("1st"), read_trial("practice")
    (2, 3, 1, 'practice')
    """
    typed = tidy(text)
    if re.fullmatch(r"#?\s*[0-9]{1,4}(?:\.0+)?\.?", typed):
        return int(re.split(r"\.", typed.lstrip("# "))[0])
    if match := re.fullmatch(r"([0-9]{1,3})(?:st|nd|rd|th)", typed.casefold()):
        return int(match[1])
    for candidate in (typed, f"trial {typed}", f"{typed} trial"):
        heading = read_heading(candidate)
        if (
            heading.trial is not None
            and heading.role is None
            and heading.color is None
            and heading.measure is None
            and heading.set_up is None
        ):
            return heading.trial
    return tidy_cell(text)


def is_trial_label(text: str) -> bool:
    """Whether a text names a trial by word and number, such as "Trial 1" or "T2", and says nothing else."""
    heading = read_heading(text)
    return heading.trial is not None and not (heading.role or heading.color or heading.measure or heading.set_up)


def read_color(text: str) -> tuple[str, int | None]:
    """A color in lower case, and how many were set up where the label says so.

    >>> read_color("Dark  Blue pins (3)")
    ('dark blue', 3)
    """
    heading = read_heading(text)
    if heading.color and heading.trial is None:
        return heading.color, heading.set_up
    return re.sub(r" pins?$", "", tidy_cell(text).casefold()), None


def respelled(color: str, typed: str) -> bool:
    """Whether a color is more than the typed text, or a part of it, in lower case.

    >>> respelled("glow-in-the-dark", "Glow-in-the-dark (3)"), respelled("sky blue", "Sky_Blue")
    (False, True)
    """
    return color not in tidy_cell(typed).lower()


def total_label(text: str) -> str | None:
    """ "total" or "derived" (an average or a percent) where a label heads a summing-up row, else None."""
    lowered = tidy(text).casefold()
    if _TOTAL.fullmatch(lowered):
        return "total"
    return "derived" if _DERIVED.fullmatch(lowered) else None


def total_of(text: str) -> str | None:
    """The group that a label such as "Owls total" sums up, or None."""
    match = _OF_GROUP.fullmatch(tidy(text))
    return (match["after"] or match["before"]) if match else None
