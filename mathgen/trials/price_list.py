"""The other kind of table: the price list of a class store, an item and a price in each line, 1 cent to 1 dollar."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal, NamedTuple

from mathgen.errors import Choice, Fault, Place, Question
from mathgen.trials.grid import Grid
from mathgen.trials.options import ReadOptions
from mathgen.trials.table import Priced
from mathgen.trials.unworked import without_result

Unit = Literal["cents", "dollars"]
_SEARCHED = 10  # rows, from the top, that may be the headings
_MOST_CENTS = 100
_LONGEST_NAME = 4  # words: longer ones leave no room in a sentence
_EXPECTED = "a price from 1 cent to 1 dollar, such as 25¢ or $0.25"
_NAME = "a short name of one thing that is sold, such as paper tube or roll of tape"

_ITEM = re.compile(
    r"(?:the )?(?:items?|things?|(?:building )?materials?|suppl(?:y|ies)|products?|goods|articles?)(?: names?)?", re.IGNORECASE
)
_PRICE = re.compile(
    r"(?:(?:unit|item) )?(?:prices?|costs?)(?: (?:each|of (?:one|each)|for (?:one|each)|per (?:item|piece|one)))?"
    r"(?:,? ?\(?(?:in )?(?P<unit>cents?|¢|c|dollars?|\$|usd)\)?)?(?: each)?",
    re.IGNORECASE,
)
_CENTS = re.compile(r"¢ ?(\d+)|(\d+) ?(?:¢|c|cts?|cents?)\.?", re.IGNORECASE)
_DOLLARS = re.compile(r"\$ ?(\d*)(?:\.(\d+))?|(\d*)(?:\.(\d+))? ?(?:\$|dollars?|usd)", re.IGNORECASE)
_BARE = re.compile(r"(\d*)(?:\.(\d+))?")
_LOOKALIKE = re.compile(r"[$¢\d.,OolIS ]*\d[$¢\d.,OolIS ]*")
_TOTAL = re.compile(r"(?:grand )?(?:totals?|sum|average|mean)", re.IGNORECASE)


class Found(NamedTuple):
    """Where the price list of a sheet stands: rows and columns count from 0."""

    grid: Grid
    row: int
    item: int
    price: int
    unit: Unit | None  # of bare numbers, where the heading says it


@dataclass(slots=True)
class PriceList:
    """What a sheet's price list came to."""

    prices: list[Priced] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    question: Question | None = None


def find_price_list(grid: Grid) -> Found | None:
    """The headings of a price list: one cell that says item, one that says price; None where no row has both."""
    for number, row in enumerate(grid.rows[:_SEARCHED]):
        items = [column for column, cell in enumerate(row) if _ITEM.fullmatch(cell.strip(" :"))]
        prices = [(column, found) for column, cell in enumerate(row) if (found := _PRICE.fullmatch(cell.strip(" :")))]
        if len(items) == 1 and len(prices) == 1:
            column, found = prices[0]
            said = (found["unit"] or "").casefold()
            return Found(grid, number, items[0], column, None if not said else "cents" if said[0] in "c¢" else "dollars")
    return None


def without_headings(grids: Sequence[Grid]) -> Fault | None:
    """The fault of a file that holds prices, but not the two headings of a price list; None where no cell is a price."""
    for grid in grids:
        for number, row in enumerate(grid.rows):
            if any(_CENTS.fullmatch(cell) or (cell[:1] == "$" and _DOLLARS.fullmatch(cell)) for cell in row if len(cell) > 1):
                shown = ", ".join(cell for cell in grid.rows[0] if cell)
                advice = f"Row {number + 1} has a price. Head the two columns of a price list Item and Price."
                return Fault(Place(1, None, grid.sheet), shown, "the headings Item and Price", advice)
    return None


def read_price_list(found: Found, options: ReadOptions) -> PriceList:
    """Every line of the list, with every fault and guess."""
    return _Reading(found, options).all()


class _Line(NamedTuple):
    row: int  # from 0
    item: str
    text: str
    cents: int | None  # None for a bare number


class _Reading:
    """Reads one list, line by line."""

    def __init__(self, found: Found, options: ReadOptions) -> None:
        self.found, self.options = found, options
        self.out = PriceList()
        self.headings = found.grid.rows[found.row]

    def place(self, row: int, column: int) -> Place:
        return Place(row + 1, column + 1, self.found.grid.sheet, self.headings[column] or None)

    def fault(self, row: int, column: int, found: str, expected: str, advice: str = "") -> None:
        self.out.faults.append(Fault(self.place(row, column), found, expected, advice))

    def all(self) -> PriceList:
        found, out = self.found, self.out
        lines = [line for row in range(found.row + 1, len(found.grid.rows)) if (line := self.line(row)) is not None]
        unused = [f'"{head}"' for column, head in enumerate(self.headings) if head and column not in (found.item, found.price)]
        if unused:
            out.notes.append(f"Not used: the {'column' if len(unused) == 1 else 'columns'} {', '.join(unused)}.")
        unit = self.unit_of_bare([line for line in lines if line.cents is None])
        for line in lines:
            cents = line.cents
            if cents is None and unit is not None:
                cents = _bare_cents(line.text, unit)
                if cents is None:
                    self.fault(line.row, found.price, line.text, self.expected_bare(unit), "Or write its unit: 25¢, $0.25.")
            if cents is not None:
                out.prices.append(Priced(line.item, cents))
        self.twice(lines)
        if not out.faults and out.question is None and len(out.prices) < 2:
            place = Place(None, None, found.grid.sheet)
            out.faults.append(Fault(place, "", "at least 2 items with their prices", "Add a line for each thing that is sold."))
        return out

    def line(self, row: int) -> _Line | None:
        """The item and its price; None for an empty line, for a total, or where a fault is told."""
        found = self.found
        cells = found.grid.rows[row]
        name, text = cells[found.item], cells[found.price]
        if (row + 1, found.price + 1) in found.grid.unworked:
            self.out.faults.append(without_result(self.place(row, found.price)))
            return None
        if not name and not text:
            if any(cells):
                self.fault(row, found.item, "", _NAME, "Fill in the item and its price, or empty the whole line.")
            return None
        if _TOTAL.fullmatch(name):
            self.out.notes.append(f'Row {row + 1} is left out: "{name}" is no item.')
            return None
        item = self.named(row, name)
        cents = self.priced(row, text)
        return None if item is None or cents == 0 else _Line(row, item, text, cents)

    def named(self, row: int, name: str) -> str | None:
        """The item as a sentence names it."""
        advice = ""
        if not name:
            advice = "Name what is sold for this price."
        elif len(name.split()) > _LONGEST_NAME or len(name) > 40:
            advice = f"Use at most {_LONGEST_NAME} words."
        elif re.search(r"[^\w' -]|_", name) or not re.search(r"[^\W\d]", name[0]):
            advice = "Use letters, spaces and hyphens only, and begin with a letter."
        elif any(word.isdigit() for word in name.split()):
            advice = "Leave numbers out: a pupil must not take them for prices."
        if advice:
            self.fault(row, self.found.item, name, _NAME, advice)
            return None
        return " ".join(word.lower() if word[1:].islower() or len(word) == 1 else word for word in name.split())

    def priced(self, row: int, text: str) -> int | None:
        """Cents; None for a bare number, whose unit is found out later; 0 where a fault is told."""
        column = self.found.price
        if not text:
            self.fault(row, column, text, _EXPECTED, "Fill in the price, or empty the whole line.")
            return 0
        written = _CENTS.fullmatch(text)
        if written:
            cents: int | None = int(written[1] or written[2])
        elif (dollars := _DOLLARS.fullmatch(text)) and any(char.isdigit() for char in text):
            cents = _hundredths(dollars[1] or dollars[3] or "", dollars[2] or dollars[4] or "")
        elif _BARE.fullmatch(text):
            return None
        else:
            self.fault(row, column, text, _EXPECTED, _advice(text))
            return 0
        if cents is None or not 1 <= cents <= _MOST_CENTS:
            self.fault(row, column, text, _EXPECTED, "Prices are whole cents." if cents is None else "")
            return 0
        return cents

    def unit_of_bare(self, lines: Sequence[_Line]) -> Unit | None:
        """What bare numbers count: as the heading or the option says, or as most of them can only be meant; else it is asked."""
        said: Unit | None = self.options.price or self.found.unit
        if said or not lines:
            return said
        fitting = {unit: sum(_bare_cents(line.text, unit) is not None for line in lines) for unit in _UNITS}
        if fitting["cents"] == fitting["dollars"]:
            shown = ", ".join(dict.fromkeys(line.text for line in lines[:6]))
            self.out.question = ask_price_unit(shown, self.headings[self.found.price])
            return None
        unit = max(_UNITS, key=lambda one: fitting[one])
        self.out.notes.append(f'"{lines[0].text}" is taken as {unit}; a heading such as "Price ({unit})" says it for sure.')
        return unit

    def expected_bare(self, unit: Unit) -> str:
        said = self.options.price or self.found.unit
        why = f"as {'--price' if self.options.price else 'the heading'} says" if said else "as the other prices are"
        return f"{'a whole number of cents from 1 to 100' if unit == 'cents' else 'dollars from 0.01 to 1.00'}, {why}"

    def twice(self, lines: Sequence[_Line]) -> None:
        """An item that is there twice has two prices, or one line too many."""
        first: dict[str, _Line] = {}
        for line in lines:
            known = first.setdefault(line.item.casefold(), line)
            if known is not line:
                advice = f"It is in row {known.row + 1} already. Give it one line, or another name."
                self.fault(line.row, self.found.item, line.item, "each item once", advice)


_UNITS: tuple[Unit, Unit] = ("cents", "dollars")


def ask_price_unit(shown: str, heading: str) -> Question:
    """Whether bare prices are cents or dollars."""
    return Question(
        "price",
        f'Are the numbers under "{heading}" ({shown}) cents or dollars? The table does not make it clear.',
        (Choice("--price cents", "each number is a price in cents"), Choice("--price dollars", "each number is a price in dollars")),
    )


def _hundredths(whole: str, after: str) -> int | None:
    """Dollars as whole cents: 0.25, .25, 1, 0.5; None where there are parts of a cent."""
    if len(after) > 2 and after[2:].strip("0"):
        return None
    return 100 * int(whole or 0) + int(after[:2].ljust(2, "0"))


def _bare_cents(text: str, unit: Unit) -> int | None:
    """A number without a sign as a price in the unit; None where that is none from 1 cent to 1 dollar."""
    found = _BARE.fullmatch(text)
    assert found is not None  # only such lines are asked about
    whole, after = found[1] or "", found[2] or ""
    cents = _hundredths(whole, after)
    if unit == "cents":  # 25.0 is how a spreadsheet may write 25
        cents = None if after.strip("0") else int(whole or 0)
    return cents if cents is not None and 1 <= cents <= _MOST_CENTS else None


def _advice(text: str) -> str:
    if re.fullmatch(r"\D*\d+,\d+\D*", text):
        return "Write a point before the cents: 0.25."
    if text[:1] in "-−(" and any(char.isdigit() for char in text):
        return "A price is not below 0."
    if re.fullmatch(r"free|none|-+|–", text, re.IGNORECASE):
        return "What costs nothing is left out of the list."
    if _LOOKALIKE.fullmatch(text) and re.search("[OolIS]", text):
        return "Is one of its characters a letter, such as O for 0?"
    return ""
