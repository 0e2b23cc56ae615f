"""Text to a grid: separators, quotation marks, line ends, drawn tables, and text that cannot be told apart."""

from __future__ import annotations

from pathlib import Path

import pytest

from mathgen.errors import Fault, Place, TableFaults
from mathgen.trials.read_text import read_text

SAMPLES = Path(__file__).parent.parent.parent / "samples"
HEADING, OWLS, HERONS = ("Group", "Trial", "Red (4)"), ("Owls", "1", "3"), ("Herons", "1", "0")


def rows(text: str) -> tuple[tuple[str, ...], ...]:
    return read_text(text.encode(), "table").rows


def faults(text: str) -> tuple[Fault, ...]:
    with pytest.raises(TableFaults) as caught:
        rows(text)
    return caught.value.faults


@pytest.mark.parametrize("separator", ["\t", ",", ";", "|"])
@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
def test_each_separator_and_line_end_gives_the_same_rows(separator: str, line_end: str) -> None:
    text = line_end.join(separator.join(row) for row in (HEADING, OWLS, HERONS))
    assert rows(text) == rows(text + line_end) == (HEADING, OWLS, HERONS)


def test_tabs_win_where_cells_hold_other_separators() -> None:
    pasted = "Group\tTrial\tNotes\nOwls\t1\tfast, straight, late\nHerons\t2\tslow; left, right\n"
    assert rows(pasted)[1] == ("Owls", "1", "fast, straight, late")


def test_a_title_with_tabs_below_it_is_one_row() -> None:
    assert rows("Results, May\n\nGroup\tRed\nOwls\t3\n") == (("Results, May", ""), ("", ""), ("Group", "Red"), ("Owls", "3"))


def test_one_tab_does_not_part_a_table_of_commas() -> None:
    assert rows("Group,Red,Notes\nOwls,3,a\tb\nHerons,1,\nKites,2,\n")[1] == ("Owls", "3", "a b")


def test_decimal_commas_do_not_part_a_table_of_semicolons() -> None:
    assert rows("Group;Share\nOwls;0,75\nHerons;0,5\n") == (("Group", "Share"), ("Owls", "0,75"), ("Herons", "0,5"))


def test_tally_marks_do_not_part_a_table_of_commas() -> None:
    text = "Group,Red,Blue\nOwls,||||,||\nHerons,|||,|||| ||\n"
    assert rows(text) == (("Group", "Red", "Blue"), ("Owls", "||||", "||"), ("Herons", "|||", "|||| ||"))


def test_a_stated_separator_is_an_instruction_and_no_row() -> None:
    assert rows("sep=;\r\nGroup;Red,Blue\r\nOwls;3\r\n") == (("Group", "Red,Blue"), ("Owls", "3"))


def test_quoted_cells_keep_separators_and_line_breaks_and_rows_stay_records() -> None:
    text = 'Group,"Red\n(4)",Notes\nOwls,3,"said ""go"", then\r\nrolled"\nHerons,1,\n'
    assert rows(text) == (("Group", "Red (4)", "Notes"), ("Owls", "3", 'said "go", then rolled'), ("Herons", "1", ""))


def test_inch_marks_are_no_quotation_marks() -> None:
    assert rows('Group,Space\nOwls,1 1/4"\nHerons,2"\n') == (("Group", "Space"), ("Owls", '1 1/4"'), ("Herons", '2"'))


def test_blank_lines_above_and_between_stay_and_below_go() -> None:
    assert rows("\n,,\nGroup,Red\n\nOwls,3\n\n,,\n") == (("", ""), ("", ""), ("Group", "Red"), ("", ""), ("Owls", "3"))


def test_empty_columns_to_the_left_stay_and_to_the_right_go() -> None:
    assert rows(",Group,Red,,\n,Owls,3,,\n") == (("", "Group", "Red"), ("", "Owls", "3"))


def test_unseen_characters_go_and_accents_have_one_form() -> None:
    text = "Group,Red\u00a0(4)\n\u200bZoe\u0308 \u2009Jays\ufeff,\u20603\n"
    assert rows(text) == (("Group", "Red (4)"), ("Zo\u00eb Jays", "3"))


def test_a_joined_emoji_stays_whole() -> None:
    assert rows("Group,Red\n\U0001f426\u200d\u2b1b,3\nO\u200dwls,2\n") == (("Group", "Red"), ("\U0001f426\u200d\u2b1b", "3"), ("Owls", "2"))


def test_a_table_drawn_in_markdown_keeps_its_row_numbers() -> None:
    text = "| Group | Red (4) |\n|-------|:-----:|\n| Owls  | 3 |\n| Herons | |\n"
    assert rows(text) == (("Group", "Red (4)"), ("", ""), ("Owls", "3"), ("Herons", ""))


def test_tally_marks_in_a_drawn_table_are_refused() -> None:
    advice = "Tally marks cannot be told from the lines of a table drawn with |. Write the counts as numbers, or part the columns by tabs."
    expected = Fault(Place(row=3), "Owls | ||| | 2", "3 columns, as in the first row of the table", advice)
    assert faults("| Group | Red | Blue |\n|---|---|---|\n| Owls | ||| | 2 |\n| Kites | 1 | 2 |\n") == (expected,)


def test_columns_lined_up_with_spaces_know_an_empty_cell() -> None:
    text = "Results of May\n\nGroup    Trial  Red (4)\nOwls     1            3\n         2            4\nHerons                1\n"
    expected = (("Results of May", "", ""), ("", "", ""), HEADING, OWLS, ("", "2", "4"), ("Herons", "", "1"))
    assert rows(text) == expected


def test_columns_parted_by_spaces_without_lining_up() -> None:
    assert rows("Group  Trial  Red (4)\nOwls  1  3\nHerons    1  0\n") == (HEADING, OWLS, HERONS)


def test_a_missing_cell_among_spaces_is_refused_where_nothing_tells_which() -> None:
    advice = "Part the columns by tabs or commas, so that an empty cell shows."
    assert faults("Group  Trial  Red (4)\nOwls  1  3\nHerons  10\n") == (
        Fault(Place(row=3), "Herons  10", "3 columns, as in row 1", advice),
    )


def test_a_quotation_mark_left_open_is_refused_with_its_row() -> None:
    expected = Fault(Place(row=3), '"', "a second quotation mark that closes the cell", "Close the quotation mark, or take it out.")
    assert faults('Group,Notes\nOwls,"one\ntwo"\nHerons,"late\nKites,early\n') == (expected,)
    assert faults('Group,Notes\nOwls,"one\ntwo"\nHerons,"late\n' + "Kites,early\n" * 20_000) == (expected,)


@pytest.mark.parametrize("text", ["", "\n\n", " , ,\n", "\ufeff"])
def test_a_file_with_nothing_in_it_is_refused(text: str) -> None:
    advice = "Was it saved, and is it the right one?"
    assert faults(text) == (Fault(Place(), "table: nothing", "a table with headings and results", advice),)


def test_too_many_rows_or_columns_are_refused_with_the_numbers() -> None:
    advice = "Copy only the class's table into a new sheet and save that as CSV or XLSX."
    limit = "at most 5,000 rows and 400 columns"
    assert faults("a,b\n" * 5_001) == (Fault(Place(), "cells in use down to row 5,001 and across to column 2", limit, advice),)
    assert faults("a," * 401 + "\n")[0].found == "cells in use down to row 1 and across to column 401"
    assert len(rows("a,b\n" * 5_000)) == 5_000


def test_large_text_is_refused_before_it_is_read() -> None:
    assert faults("a,b\n" * 1_250_001)[0].found == "table: 5.1 MB of text"


@pytest.mark.parametrize(
    ("name", "shape"),
    [
        ("main", (20, 5)),
        ("small-sets", (37, 5)),
        ("tens", (23, 5)),
        ("target", (14, 10)),
        ("seeds", (14, 5)),
        ("spaces", (26, 6)),
        ("accuracy", (24, 7)),
    ],
)
def test_the_samples_have_their_rows_and_columns(name: str, shape: tuple[int, int]) -> None:
    found = read_text((SAMPLES / f"{name}.csv").read_bytes(), name).rows
    assert (len(found), len(found[0])) == shape
    assert sum(1 for row in found if not row[0]) == 0
