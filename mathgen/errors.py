"""Faults, questions and the errors that carry them.

    MathgenError
    |-- TableFaults      the table cannot be understood: every fault, sorted by place      exit status 1
    |-- TableQuestions   the table can be understood in more than one way                  exit status 3
    |-- RequestFault     an option or a demand that cannot be met as worded                exit status 1

Fields are data and ``__str__`` makes the sentence, so that command line and JSON tell one story.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Place:
    """Where something stands: rows and columns count from 1, as the spreadsheet shows them."""

    row: int | None = None
    column: int | None = None
    sheet: str | None = None
    heading: str | None = None  # the column's own heading, where it has one

    @property
    def cell(self) -> str | None:
        """The cell's spreadsheet name, such as ``C7``, or None without row and column."""
        if self.row is None or self.column is None:
            return None
        letters, rest = "", self.column
        while rest:
            rest, digit = divmod(rest - 1, 26)
            letters = chr(ord("A") + digit) + letters
        return f"{letters}{self.row}"

    def __str__(self) -> str:
        parts = []
        if self.sheet is not None:
            parts.append(f'sheet "{self.sheet}"')
        if self.row is not None:
            parts.append(f"row {self.row}")
        if self.heading is not None:
            parts.append(f'column "{self.heading}"')
        elif self.column is not None:
            parts.append(f"column {self.column}")
        if self.cell is not None:
            parts.append(f"cell {self.cell}")
        return ", ".join(parts)


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that cannot be understood: where, what was found, what was expected, what to do."""

    place: Place
    found: str
    expected: str
    advice: str = ""

    def __str__(self) -> str:
        where = str(self.place)
        sentence = f"{where}: " if where else ""
        sentence += f'found "{self.found}", expected {self.expected}.' if self.found else f"expected {self.expected}."
        return f"{sentence} {self.advice}".rstrip()


@dataclass(frozen=True, slots=True)
class Choice:
    """One answer to a question: the option that gives it, and what it means."""

    option: str
    means: str


@dataclass(frozen=True, slots=True)
class Question:
    """Something that can be understood in more than one way, and the options that settle it."""

    id: str
    text: str
    answers: tuple[Choice, ...]

    def __str__(self) -> str:
        return "\n".join([self.text, *(f"  {answer.option}  {answer.means}" for answer in self.answers)])


class MathgenError(Exception):
    """Anything that a person can put right."""

    exit_status = 1


class TableFaults(MathgenError):
    """A table that cannot be understood, with every fault found in it, and what it leaves open beside them."""

    def __init__(self, faults: tuple[Fault, ...], questions: tuple[Question, ...] = ()) -> None:
        self.faults = tuple(sorted(faults, key=lambda fault: (fault.place.sheet or "", fault.place.row or 0, fault.place.column or 0)))
        self.questions = questions
        super().__init__("\n".join(map(str, (*self.faults, *questions))))


class TableQuestions(MathgenError):
    """A table that reads in more than one way, with what was understood so far."""

    exit_status = 3

    def __init__(self, questions: tuple[Question, ...], notes: tuple[str, ...] = ()) -> None:
        self.questions = questions
        self.notes = notes
        super().__init__("\n".join(map(str, questions)))


class RequestFault(MathgenError):
    """A request that cannot be met as worded; the message says what can be."""
