"""How many pins were set up: what headings, set-up rows, title lines and the option say, and which of them holds."""

from __future__ import annotations

import re
from dataclasses import dataclass

from mathgen.errors import Fault, Place
from mathgen.trials.heading_words import COLOR_WORDS, measure_words, plain
from mathgen.trials.labels import spelling_key
from mathgen.trials.scope import Label


@dataclass(frozen=True, slots=True)
class Statement:
    """One place that says how many pins of a color were set up; None covers every group or every trial."""

    color: str
    count: int
    source: str  # in words: 'the heading "Red (4)"'
    place: Place
    group: str | None = None
    trial: Label | None = None
    in_row: bool = False  # whether it stands in a set-up row, where totals may add it up

    @property
    def general(self) -> bool:
        """Whether it speaks of every group and trial."""
        return self.group is None and self.trial is None


class SetUps:
    """All that is said about set-up counts, looked up for one result at a time."""

    def __init__(self, statements: list[Statement]) -> None:
        self.statements = statements
        self._by_scope: dict[tuple[str, str, Label | None], Statement] = {}
        for statement in statements:
            self._by_scope.setdefault((statement.color, spelling_key(statement.group or ""), statement.trial), statement)

    def of(self, group: str, trial: Label, color: str) -> Statement | None:
        """The narrowest statement that covers a result, the first of equals, or None."""
        own = spelling_key(group)
        for scope in ((color, own, trial), (color, own, None), (color, "", trial), (color, "", None)):
            if scope in self._by_scope:
                return self._by_scope[scope]
        return None

    def conflicts(self) -> list[Fault]:
        """Two statements of the same scope that disagree."""
        faults = []
        first: dict[tuple[str, str, Label | None], Statement] = {}
        for statement in self.statements:
            scope = (statement.color, spelling_key(statement.group or ""), statement.trial)
            earlier = first.setdefault(scope, statement)
            if earlier.count != statement.count:
                faults.append(
                    Fault(
                        statement.place,
                        str(statement.count),
                        f"{earlier.count} {statement.color} pins set up, as {earlier.source} says",
                        f"{statement.source[0].upper()}{statement.source[1:]} says {statement.count}. Make them agree.",
                    )
                )
        return faults


def in_title(text: str) -> dict[str, int]:
    """Colors and set-up counts that a title line gives, as in "Set up: red 4, blue 3, gold 5".

    >>> in_title("Pins set up: Red = 4, dark blue 3")
    {'red': 4, 'dark blue': 3}
    >>> in_title("Grade 4, room 12")
    {}
    """
    if "set_up" not in measure_words(text):
        return {}
    body = text.split(":", 1)[-1].casefold()
    found = {}
    for part in re.split(r"[,;]|\band\b", body):
        words = plain(part)
        if match := re.fullmatch(r"(\D+?) (\d{1,6})(?: pins?)?", words):
            found[match[1]] = int(match[2])
        elif match := re.fullmatch(r"(\d{1,6}) (\D+?)(?: pins?)?", words):
            found[match[2]] = int(match[1])
        else:
            return {}
    # Without a colon only colors that are known tell counts from a room's number.
    return found if ":" in text or all(set(color.split()) & COLOR_WORDS for color in found) else {}


def against_option(given: tuple[tuple[str, int], ...], stated: list[Statement]) -> list[Fault]:
    """Faults for counts in the option that differ from what the table itself says."""
    faults = []
    for color, count in given:
        said = next((statement for statement in stated if statement.color == color.casefold() and statement.general), None)
        if said is not None and said.count != count:
            expected = f"{said.count} {said.color} pins, as {said.source} says"
            faults.append(Fault(Place(), f"--set-up {color}={count}", expected, "Leave that color out of --set-up, or correct the table."))
    return faults


def unknown_colors(given: tuple[tuple[str, int], ...], colors: tuple[str, ...]) -> list[Fault]:
    """Faults for colors that the option names and the table does not have."""
    faults = []
    for color, count in given:
        if color.casefold() in colors:
            continue
        # rapidfuzz is loaded only for a word that is not known as it stands.
        from mathgen.trials.spelling import nearest

        meant = nearest(color.casefold(), colors)
        advice = f'Did you mean "{meant}"?' if meant else ""
        faults.append(Fault(Place(), f"--set-up {color}={count}", f"one of the table's colors: {', '.join(colors)}", advice))
    return faults
