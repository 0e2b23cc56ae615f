"""The questions that a table may leave open, each with the options that answer it."""

from __future__ import annotations

from mathgen.errors import Choice, Place, Question
from mathgen.trials.scope import Label

_SHOWN = 6  # places named in one question


def ask_counts(columns: list[str]) -> Question:
    """Whether the counts are of pins knocked down or left standing."""
    under = f" under {', '.join(columns)}" if columns else ""
    return Question(
        "counts",
        f"Do the numbers{under} count the pins knocked down or the pins left standing? The table does not make it clear.",
        (
            Choice("--counts down", "each number is how many pins were knocked down"),
            Choice("--counts standing", "each number is how many pins were left standing"),
        ),
    )


def ask_blank(places: list[Place], measure_words: str) -> Question:
    """What blank count cells mean."""
    return Question(
        "blank",
        f"{_listed(places)} {'is' if len(places) == 1 else 'are'} blank. Was no result taken, or did the group get none?",
        (
            Choice("--blank absent", "a blank means that no result was taken; it is left out"),
            Choice("--blank none", f"a blank means 0 pins {measure_words}"),
        ),
    )


def ask_set_up(colors: list[str], all_of_them: bool) -> Question:
    """How many pins of each color were set up."""
    names = ", ".join(colors[:-1]) + (" and " if len(colors) > 1 else "") + colors[-1]
    option = ",".join(f"{color}=N" for color in colors)
    quoted = f'"{option}"' if " " in option else option
    where = "The table does not say" if all_of_them else "For some results the table does not say"
    return Question(
        "set-up",
        f"How many {names} pins were set up for each trial? {where}.",
        (Choice(f"--set-up {quoted}", "with the number of pins of that color set up for each trial in place of each N"),),
    )


def ask_duplicates(doubles: list[tuple[str, Label, list[int]]], timestamped: bool) -> Question:
    """What to do with results that are there twice."""
    shown = [
        f"{group}, {f'trial {trial}' if isinstance(trial, int) else trial} (rows {', '.join(map(str, rows))})"
        for group, trial, rows in doubles[:_SHOWN]
    ]
    more = f" and {len(doubles) - _SHOWN} more" if len(doubles) > _SHOWN else ""
    how = "sent in more than once" if timestamped else "in the table more than once"
    return Question(
        "duplicates",
        f"These results are {how}: {'; '.join(shown)}{more}. Which should count?",
        (
            Choice("--duplicates first", "the first one counts, later ones are left out"),
            Choice("--duplicates last", "the last one counts, earlier ones are left out"),
            Choice("--duplicates keep", "all count; each later one becomes a further trial of its group"),
        ),
    )


def ask_sheet(names: list[str]) -> Question:
    """Which of several sheets to read."""
    return Question(
        "sheet",
        f"{len(names)} sheets hold a results table: {', '.join(names)}. Which one should be read?",
        tuple(Choice(f'--sheet "{name}"' if " " in name else f"--sheet {name}", f"read the sheet {name}") for name in names),
    )


def _listed(places: list[Place]) -> str:
    """Cells by name, each sheet named once behind its own.

    >>> _listed([Place(7, 3, "Results"), Place(7, 4, "Results"), Place(2, 5, "More")])
    'Cells C7 and D7 of sheet Results and E2 of sheet More'
    """
    by_sheet: dict[str | None, list[str]] = {}
    for place in places[:_SHOWN]:
        by_sheet.setdefault(place.sheet, []).append(str(place.cell))
    more = len(places) - _SHOWN
    of_sheets = [f"{_all_of(cells, more > 0)}{f' of sheet {sheet}' if sheet else ''}" for sheet, cells in by_sheet.items()]
    told = _all_of(of_sheets, more > 0)
    return f"Cell {told}" if len(places) == 1 else f"Cells {told}{f' and {more} more' if more > 0 else ''}"


def _all_of(words: list[str], goes_on: bool) -> str:
    return ", ".join(words) if goes_on or len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
