"""The names of groups, trials and colors as typed, and the one spelling that stands for all of them."""

from __future__ import annotations

import re
from collections.abc import Iterable

from mathgen.trials.heading_words import KEY_ROLES, read_heading, tidy, whole_measure
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

_IN_ALL = ("total pins", "pins in all", "in all")  # above the first result they speak of the pins set up


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


def heads_set_up(text: str, first: bool = True) -> bool:
    """Whether a label heads a row of pins set up; "Total pins" does so above the first result only."""
    return whole_measure(text) == "set_up" or (first and text.casefold() in _IN_ALL)


def taken_for(name: str, groups: Iterable[str] = ()) -> str | None:
    """What a name in the group column is or may be read as in the place of a group; None for a name that stands for a group.

    Args:
        name: as typed.
        groups: the table's other groups, for "Owls total" sums them up.

    >>> taken_for("Totals"), taken_for("Owls total", ["Owls"]), taken_for("Pins set up"), taken_for("Owls"), taken_for("Team 3")
    ('sums', 'sums', 'a row of pins set up', None, None)
    """
    kind = total_label(name)
    whose = total_of(name)
    if kind == "total" or (whose is not None and {spelling_key(whose), spelling_key(f"the {whose}")} & set(map(spelling_key, groups))):
        return "sums"
    if kind is not None:
        return "averages or the like"
    if heads_set_up(name):
        return "a row of pins set up"
    heading = read_heading(name)
    return "a heading" if heading.role in KEY_ROLES and heading.group is None else None
