"""A table in which nothing is filled in yet holds no results, whatever a blank is said to mean."""

from __future__ import annotations

from typing import Literal

import pytest

from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import interpret
from tests.trials.as_grid import grid

WIDE = "Pins knocked down,,,\nGroup,Trial,Red (4),Blue (3)\nOwls,1,{0},{1}\nOwls,2,{2},{3}"
TABLES = {
    "wide": WIDE.format("", "", "", ""),
    "long": "Group,Trial,Color,Set up,Knocked down\nOwls,1,red,4,\nOwls,2,red,4,",
    "without set-up": "Group,Trial,Red knocked down,Blue knocked down\nOwls,1,,\nOwls,2,,",
    "with totals": "Pins knocked down,,,,\nGroup,Trial,Red (4),Blue (3),Total\nOwls,1,,,0\nOwls,2,,,0\nTotal,,0,0,0",
}


@pytest.mark.parametrize("blank", [None, "absent", "none"])
@pytest.mark.parametrize("name", TABLES)
def test_nothing_filled_in_is_one_fault_that_says_where_to_write(name: str, blank: Literal["absent", "none"] | None) -> None:
    with pytest.raises(TableFaults) as refused:
        interpret([grid(TABLES[name])], ReadOptions(blank=blank))
    (fault,) = refused.value.faults
    assert fault.found == "no results yet"
    assert "Fill in the counts in cells" in fault.advice


def test_the_cells_to_fill_in_are_named() -> None:
    with pytest.raises(TableFaults, match="cells C3 to D4"):
        interpret([grid(TABLES["wide"])])


def test_one_count_makes_the_blanks_a_question_again() -> None:
    with pytest.raises(TableQuestions, match="blank"):
        interpret([grid(WIDE.format("0", "", "", ""))])


def test_results_that_are_all_absent_are_no_table_either() -> None:
    with pytest.raises(TableFaults, match=r"every result \(4\) is absent"):
        interpret([grid(WIDE.format(*["absent"] * 4))])
    with pytest.raises(TableFaults, match="absent"):
        interpret([grid(WIDE.format("absent", "", "", ""))], ReadOptions(blank="absent"))
