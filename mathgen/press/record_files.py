"""A blank recording sheet as PDF, and as a workbook to type into."""

from __future__ import annotations

import io
import re
import zipfile
from typing import Any

from mathgen.press.pdf import pdf_bytes
from mathgen.press.signs import check_labels, unprintable
from mathgen.scenario.naming import upper_first
from mathgen.scenario.words import Scenario
from mathgen.sheets.record import record_data
from mathgen.sheets.record_plan import RecordPlan, checked

_LONGEST_LIST, _LONGEST_ERROR = 255, 225  # signs, as spreadsheet files allow
_LISTED = 12  # sets up to here get a list of numbers to choose from; larger ones limits
_STAMP = (1980, 1, 1, 0, 0, 0)  # the earliest that a ZIP archive can say, so that the same sheet has the same bytes on any day
_FIRST = 3  # row of the first result: a title and the head stand above


def record_files(plan: RecordPlan, said: Scenario) -> dict[str, bytes]:
    """``record.pdf`` and ``record.xlsx``.

    Raises:
        RequestFault: names or numbers that no sheet can have, or a name that cannot be printed.
    """
    data = record_data(checked(plan), said)
    check_labels(plan.groups, unprintable([data]))
    return {"record.pdf": pdf_bytes("record", data), "record.xlsx": workbook(plan, said)}


def workbook(plan: RecordPlan, said: Scenario) -> bytes:
    """A workbook with a row for each group and trial: lists to choose from, limits, totals by formula.

    Names are written as text, whatever they start with. ``mathgen read`` takes the filled workbook as it is.
    """
    from openpyxl import Workbook  # only here: no other command writes workbooks
    from openpyxl.styles import Alignment, Font
    from openpyxl.utils import get_column_letter
    from openpyxl.worksheet.datavalidation import DataValidation

    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.title = "Results"
    extra = [*(["Target"] if plan.target else []), *(["Space between pins (in)"] if plan.spaces else [])]
    heads = [said.group, upper_first(said.trial), *extra, *(f"{upper_first(color)} ({size})" for color, size in plan.colors), "Total"]
    bold = Font(bold=True)

    def write(row: int, column: int, value: Any, font: Font | None = None) -> None:
        cell = sheet.cell(row, column, value)
        if isinstance(value, str) and not value.startswith("=IF("):
            cell.data_type = "s"  # "=1+1" is a group's name, no formula
        if font is not None:
            cell.font = font

    write(1, 1, upper_first(f"{said.items} {said.after_noun['down']}"), bold)
    for column, head in enumerate(heads, start=1):
        write(2, column, head, bold)
        sheet.column_dimensions[get_column_letter(column)].width = max(11, len(head) + 3)
    first = 3 + len(extra)
    last = first + len(plan.colors) - 1
    row = _FIRST
    for group in plan.groups:
        for trial in range(1, plan.trials + 1):
            write(row, 1, group)
            write(row, 2, trial)
            span = f"{get_column_letter(first)}{row}:{get_column_letter(last)}{row}"
            write(row, last + 1, f'=IF(COUNT({span})=0,"",SUM({span}))')
            row += 1
    end = row - 1

    def refuse(rule: DataValidation, letter: str, error: str) -> None:
        """Adds a rule for a column of results, with what a spreadsheet says to an entry that does not keep it."""
        rule.error = error if len(error) <= _LONGEST_ERROR else f"{error[: _LONGEST_ERROR - 3]}..."
        rule.errorTitle, rule.showErrorMessage = "Not on this sheet", True
        sheet.add_data_validation(rule)
        rule.add(f"{letter}{_FIRST}:{letter}{end}")

    for place, (color, size) in enumerate(plan.colors):
        letter = get_column_letter(first + place)
        if size <= _LISTED:
            numbers = ",".join(map(str, range(size + 1)))
            rule = DataValidation(type="list", formula1=f'"{numbers},absent"', allow_blank=True)
        else:
            cell = f"{letter}{_FIRST}"  # a rule of whole numbers alone would refuse the word
            limits = f'OR({cell}="absent",IF(ISNUMBER({cell}),AND({cell}=INT({cell}),{cell}>=0,{cell}<={size}),FALSE))'
            rule = DataValidation(type="custom", formula1=limits, allow_blank=True)
        refuse(rule, letter, f"Write how many {color} {said.items} were {said.past['down']}: 0 to {size}, or absent.")
    if plan.target:
        colors = ",".join(color for color, _ in plan.colors)
        # Spreadsheets hold a list of choices only up to so many signs; a longer one would spoil the file.
        rule = DataValidation(type="list", formula1=f'"{colors}"', allow_blank=True) if len(colors) <= _LONGEST_LIST else None
        if rule is not None:
            refuse(rule, "C", f"Write the color that was called: {colors}.")
    if plan.spaces:
        letter = get_column_letter(2 + len(extra))
        rule = DataValidation(type="decimal", operator="between", formula1="0", formula2="48", allow_blank=True)
        refuse(rule, letter, "Write the space between pins in inches, 0 to 48, such as 2.25 or 2 1/4.")
        for line in range(_FIRST, end + 1):
            sheet[f"{letter}{line}"].number_format = "# ?/?"
    for line in sheet.iter_rows(min_row=_FIRST, max_row=end, min_col=2):
        for cell in line:
            cell.alignment = Alignment(horizontal="center")
    sheet.freeze_panes = f"C{_FIRST}"
    sheet.print_title_rows = "1:2"
    out = io.BytesIO()
    book.save(out)
    return _undated(out.getvalue())


# A formula as openpyxl writes it: with no result. Those of a blank sheet come to nothing, and a reader wants to see that.
_RESULT = re.compile(rb"<c((?: [rs]=\"[A-Z0-9]+\")+)><f>(.*?)</f><v ?/?>(?:</v>)?</c>")


def _undated(content: bytes) -> bytes:
    """The same workbook without the time of its making, and with the results of its formulas."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            part = old.read(name)
            if name == "docProps/core.xml":
                part = re.sub(rb"(<dcterms:(?:created|modified)[^>]*>)[^<]*", rb"\g<1>2000-01-01T00:00:00Z", part)
            if name.startswith("xl/worksheets/"):
                part = _RESULT.sub(rb'<c\g<1> t="str"><f>\g<2></f><v></v></c>', part)
            entry = zipfile.ZipInfo(name, _STAMP)
            entry.compress_type = zipfile.ZIP_DEFLATED
            new.writestr(entry, part)
    return out.getvalue()
