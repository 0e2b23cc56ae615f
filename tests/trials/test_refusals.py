"""Tables that are refused or asked about, each with the places, and words of what is said."""

from __future__ import annotations

from dataclasses import dataclass

import pytest

from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.reading import ReadOptions, interpret
from tests.trials.as_grid import grid

AS_IT_STANDS = ReadOptions()
TITLE = "Pins knocked down\nGroup,Trial,Red (4),Blue (3)\n"


@dataclass(frozen=True)
class Refused:
    """A table and its faults: row, column, what was found, and words of the rest."""

    claim: str
    text: str
    faults: tuple[tuple[int | None, int | None, str, str], ...]
    options: ReadOptions = AS_IT_STANDS
    dates: tuple[tuple[int, int], ...] = ()


REFUSED = (
    Refused("a letter O in a count", TITLE + "Owls,1,O,2", ((3, 3, "O", "Is this a letter O? If so, type 0."),)),
    Refused("a letter at the end of a count", TITLE + "Owls,1,2,1O", ((3, 4, "1O", "Is the last character a letter O? If so, type 10."),)),
    Refused("a small letter l", TITLE + "Owls,1,l,2", ((3, 3, "l", "Is this a small letter l? If so, type 1."),)),
    Refused("a letter at the start", TITLE + "Owls,1,l2,2", ((3, 3, "l2", "Is the first character a small letter l? If so, type 12."),)),
    Refused("more down than set up", TITLE + "Owls,1,5,2", ((3, 3, "5", "a whole number from 0 to 4 (pins set up)"),)),
    Refused(
        "more standing than set up",
        TITLE.replace("knocked down", "standing") + "Owls,1,5,2",
        ((3, 3, "5", "More pins were left standing"),),
    ),
    Refused("a part of a pin", TITLE + "Owls,1,3.5,2", ((3, 3, "3.5", "Pins are counted whole."),)),
    Refused("3/4 that was worked out", TITLE + "Owls,1,0.75,2", ((3, 3, "0.75", "type 3 of 4"),)),
    Refused("fewer than none", TITLE + "Owls,1,-1,2", ((3, 3, "-1", "A count is never below 0."),)),
    Refused("a percent", TITLE + "Owls,1,75%,2", ((3, 3, "75%", "This is a percent."),)),
    Refused("a day and month", TITLE + "Owls,1,4-Mar,2", ((3, 3, "4-Mar", "has turned an entry such as 3/4 into a date"),)),
    Refused("a date in figures", TITLE + "Owls,1,2025-03-04,2", ((3, 3, "2025-03-04", "into a date"),)),
    Refused("a date in American figures", TITLE + "Owls,1,3/4/2025,2", ((3, 3, "3/4/2025", "into a date"),)),
    Refused("a cell held as a date", TITLE + "Owls,1,45720,2", ((3, 3, "45720", "into a date"),), dates=((3, 3),)),
    Refused(
        "a formula that failed", TITLE + "Owls,1,#REF!,#DIV/0!", ((3, 3, "#REF!", "formula failed"), (3, 4, "#DIV/0!", "formula failed"))
    ),
    Refused("a formula that was not worked out", TITLE + "Owls,1,=2+1,2", ((3, 3, "=2+1", "a formula, not its result"),)),
    Refused("a number too big", TITLE + "Owls,1,20000000000000,2", ((3, 3, "20000000000000", "Counts here go up to 10000."),)),
    Refused("a word", TITLE + "Owls,1,pizza,2", ((3, 3, "pizza", 'or "absent" where no result was taken'),)),
    Refused("a count with a remark", TITLE + "Owls,1,3*,2", ((3, 3, "3*", "type 3 alone and put the rest in a Notes column"),)),
    Refused("a range", TITLE + "Owls,1,2-3,2", ((3, 3, "2-3", "Type one count"),)),
    Refused("more of than out of", TITLE + "Owls,1,5/4,2", ((3, 3, "5/4", "at most 4 of 4"),)),
    Refused(
        "a fraction of another set", TITLE + "Owls,1,3/5,2", ((3, 3, "3/5", 'expected 4 red pins set up, as the heading "Red (4)" says'),)
    ),
    Refused("tally marks crossed too soon", TITLE + "Owls,1,||/,2", ((3, 3, "||/", "Type the count as a number"),)),
    Refused(
        "every fault at once, by place",
        TITLE + "Owls,1,1O,9\nHawks,1,x,2\nLarks,1,2,y",
        ((3, 3, "1O", ""), (3, 4, "9", ""), (4, 3, "x", ""), (5, 4, "y", "")),
    ),
    Refused(
        "absent in place of a trial",
        TITLE + "Owls,1,3,2\nHawks,absent,,",
        ((4, 2, "absent", 'Type the trial here and "absent" under each color.'),),
    ),
    Refused(
        "a wrong total of one trial across",
        "Pins knocked down\nGroup,Trial 1,,,Trial 2,,\n,Red (4),Blue (3),Total,Red (4),Blue (3),Total\nOwls,3,2,6,1,0,1",
        ((4, 4, "6", "5, the sum of the counts"),),
    ),
    Refused("a blank trial", TITLE + "Owls,1,3,2\nOwls,,3,2", ((4, 2, "", "the trial's number"),)),
    Refused("a blank first group", TITLE + ",1,3,2", ((3, 1, "", "the name of a group"),)),
    Refused(
        "a wrong total at the end of a row",
        "Pins down\nGroup,Trial,Red (4),Blue (3),Total\nOwls,1,3,2,6",
        ((3, 5, "6", "5, the sum of the counts"),),
    ),
    Refused("a wrong total below a column", TITLE + "Owls,1,3,2\nOwls,2,1,0\nTotal,,5,2", ((5, 3, "5", "4, the sum of the counts"),)),
    Refused(
        "a wrong total of one group", TITLE + "Owls,1,3,2\nOwls total,,3,1\nHawks,1,4,1\nHawks total,,4,1", ((4, 4, "1", "2, the sum"),)
    ),
    Refused(
        "a wrong grand total", "Pins down\nGroup,Trial,Red (4),Total\nOwls,1,3,3\nOwls,2,1,1\nTotal,,4,5", ((5, 4, "5", "4, the sum"),)
    ),
    Refused(
        "a wrong total of one trial, with what to do if it is a group",
        TITLE + "Owls,1,3,2\nHawks,1,1,1\nTotal,1,4,2",
        (
            (
                5,
                4,
                "2",
                "expected 3, the sum of the counts. Correct the count or the total that is wrong, or use --ignore-totals to go on with"
                ' the counts as they are. If "Total" is a group, call it "The Total".',
            ),
        ),
    ),
    Refused(
        "counts of Sum where no column names the trial",
        "Pins down\nGroup,Red (4)\nOwls,3\nHawks,1\nSum,2",
        ((5, 2, "2", 'If "Sum" is a group, call it "The Sum".'),),
    ),
    Refused(
        "averages that are none, without a trial",
        TITLE + "Owls,1,3,2\nHawks,1,1,1\nMeans,,4,0",
        (
            (
                5,
                1,
                "Means",
                'expected averages or the like of the rows above, or the name of a group. If "Means" is a group, call it "The Means"; '
                "if the row holds averages or the like, correct it or take it out.",
            ),
        ),
    ),
    Refused(
        "averages that are nearly right beside a trial",
        "Pins down\nGroup,Trial,Red (4),Blue (3),Gold (5)\nOwls,1,3,2,5\nHawks,1,1,2,3\nMeans,1,2,2,1",
        ((5, 1, "Means", "averages or the like of the rows above, or the name of a group"),),
    ),
    Refused(
        "a total of one trial and counts that are no total in the next",
        TITLE + "Owls,1,3,2\nHawks,1,1,1\nTotal,1,4,3\nOwls,2,1,1\nHawks,2,1,0\nTotal,2,0,3",
        ((8, 1, "Total", "sums of the rows above, or the name of a group"),),
    ),
    Refused(
        "averages across that are nearly right",
        "Pins down\nTrial,Color,Owls,Hawks,Average\n1,Red (4),3,1,2\n1,Blue (3),2,0,1\n2,Red (4),0,0,4",
        ((2, 5, "Average", 'If it is a group, call it "The Average"'),),
    ),
    Refused("a control character in a name", TITLE + "Ow\x07ls,1,3,2", ((3, 1, "Ow[U+0007]ls", "text without control characters"),)),
    Refused("a total that is no number", TITLE + "Owls,1,3,2\nTotal,,three or so,2", ((4, 3, "three or so", "3, the sum"),)),
    Refused("no headings", "Owls,1,3,2\nHawks,1,2,2", ((1, None, "Owls, 1, 3, 2", "a row of headings such as Group, Trial, Red (4)"),)),
    Refused(
        "labels but no headings", "Group 1,Trial 1,3,2\nGroup 2,Trial 1,2,2", ((1, None, "Group 1, Trial 1, 3, 2", "a row of headings"),)
    ),
    Refused("no groups", "Pins down\nTrial,Red (4),Blue (3)\n1,3,2", ((2, None, "", "a column that names the groups"),)),
    Refused("no colors", "Group,Trial,Knocked down,Set up\nOwls,1,3,4", ((1, None, "", "the colors of the pins"),)),
    Refused("no counts", "Group,Trial,Notes\nOwls,1,went well", ((1, None, "", "columns that hold counts"),)),
    Refused("no rows", "Group,Trial,Red (4) down", ((None, None, "", "results below the headings"),)),
    Refused("a column of numbers that could be anything", "Pins down\nGroup,Trial,Red (4),Cone\nOwls,1,3,2", ((2, 4, "Cone", "Cone (4)"),)),
    Refused("a color heading typed wrong", "Pins down\nGroup,Trial,Red (4),Bleu\nOwls,1,3,2", ((2, 4, "Bleu", 'Did you mean "blue"?'),)),
    Refused(
        "a column of numbers without a heading",
        "Pins down\nGroup,Trial,Red (4),\nOwls,1,3,2",
        ((2, 4, "", "a heading above a column of numbers"),),
    ),
    Refused(
        "one heading twice",
        "Group,Trial,Red (4) down,Red (4) down\nOwls,1,3,2\nOwls,2,3,2",
        ((1, 4, "Red (4) down", "a heading of its own, other than that of column 3"),),
    ),
    Refused(
        "a color cell typed wrong",
        "Group,Trial,Color,Set up,Down\nOwls,1,red,4,3\nOwls,1,blue,3,2\nOwls,2,bleu,3,2\nOwls,3,blue,3,1",
        ((4, 3, "bleu", 'Did you mean "blue"?'),),
    ),
    Refused("a blank color cell", "Group,Trial,Color,Set up,Down\nOwls,1,red,4,3\nOwls,1,,3,2", ((3, 3, "", "a color"),)),
    Refused(
        "a set-up count that is no number",
        "Group,Trial,Color,Set up,Down\nOwls,1,red,four or five,3",
        ((2, 4, "four or five", "pins set up"),),
    ),
    Refused("no pins set up", "Group,Trial,Color,Set up,Down\nOwls,1,red,0,0", ((2, 4, "0", "at least 1 pin set up"),)),
    Refused("heading and set-up row disagree", TITLE + "Set up,,5,3\nOwls,1,3,2", ((3, 3, "5", 'as the heading "Red (4)" says'),)),
    Refused(
        "down and standing do not make the set",
        "Group,Trial,Red set up,Red down,Red standing\nOwls,1,4,3,2",
        ((2, 5, "2", "1 left standing"),),
    ),
    Refused(
        "a space between pins that is no length",
        "Group,Trial,Gap (in),Red (4) down\nOwls,1,wide,3",
        ((2, 3, "wide", "a length in inches"),),
    ),
    Refused(
        "set-up option for a color that is not there",
        "Group,Trial,Red down,Blue down\nOwls,1,3,2",
        ((None, None, "--set-up bleu=3", 'Did you mean "blue"?'),),
        ReadOptions(set_up=(("red", 4), ("bleu", 3), ("blue", 3))),
    ),
    Refused(
        "set-up option against the heading",
        TITLE + "Owls,1,3,2",
        ((None, None, "--set-up red=5", '4 red pins, as the heading "Red (4)" says'),),
        ReadOptions(set_up=(("red", 5),)),
    ),
    Refused(
        "counts option against the headings",
        "Group,Trial,Red (4) down\nOwls,1,3",
        ((None, None, "--counts standing", "as the headings say knocked down"),),
        ReadOptions(counts="standing"),
    ),
    Refused(
        "a sheet named for a file without sheets",
        TITLE + "Owls,1,3,2",
        ((None, None, "--sheet May", "no --sheet"),),
        ReadOptions(sheet="May"),
    ),
)


@pytest.mark.parametrize("refused", REFUSED, ids=lambda refused: refused.claim)
def test_a_table_that_cannot_be_understood_is_refused_at_the_right_place(refused: Refused) -> None:
    with pytest.raises(TableFaults) as caught:
        interpret([grid(refused.text, dates=refused.dates)], refused.options)
    faults = caught.value.faults
    assert [(fault.place.row, fault.place.column, fault.found) for fault in faults] == [fault[:3] for fault in refused.faults]
    for fault, (_, _, _, words) in zip(faults, refused.faults, strict=True):
        assert words in str(fault)


@dataclass(frozen=True)
class Asked:
    """A table, the questions it leaves open by id, words of the texts, and options that answer them."""

    claim: str
    text: str
    ids: tuple[str, ...]
    words: str
    options: tuple[str, ...]
    given: ReadOptions = AS_IT_STANDS


ASKED = (
    Asked(
        "nothing says down or standing",
        "Group,Trial,Red (4),Blue (3)\nOwls,1,3,2",
        ("counts",),
        'under "Red (4)", "Blue (3)"',
        ("--counts down", "--counts standing"),
    ),
    Asked(
        "a title in which something goes down the ramp",
        "Sock ball down the cardboard ramp\nGroup,Trial,Red (4),Blue (3)\nOwls,1,3,2",
        ("counts",),
        'Do the numbers under "Red (4)", "Blue (3)" count the pins knocked down or the pins left standing?',
        ("--counts down", "--counts standing"),
    ),
    Asked(
        "a title in which somebody is standing around",
        "Ball rolls standing around\nGroup,Trial,Red (4)\nOwls,1,3",
        ("counts",),
        "does not make it clear",
        ("--counts down", "--counts standing"),
    ),
    Asked(
        "such a title over the middle of the table",
        ",Sock ball down the ramp,,\nGroup,Trial,Red (4),Blue (3)\nOwls,1,3,2",
        ("counts",),
        "does not make it clear",
        ("--counts down", "--counts standing"),
    ),
    Asked(
        "both are spoken of",
        "Pins knocked down or left standing\nGroup,Trial,Red (4)\nOwls,1,3",
        ("counts",),
        "does not make it clear",
        ("--counts down", "--counts standing"),
    ),
    Asked(
        "a long table with a bare count",
        "Group,Trial,Color,Set up,Count\nOwls,1,red,4,3",
        ("counts",),
        'under "Count"',
        ("--counts down", "--counts standing"),
    ),
    Asked("a lone blank", TITLE + "Owls,1,3,\nOwls,2,3,2", ("blank",), "Cell D3 is blank.", ("--blank absent", "--blank none")),
    Asked("a row of blanks", TITLE + "Owls,1,3,2\nOwls,2,,", ("blank",), "Cells C4 and D4 are blank.", ("--blank absent", "--blank none")),
    Asked(
        "many blanks are cut short",
        TITLE + "Owls,1,3,2\n" + "\n".join(f"Owls,{trial},," for trial in range(2, 7)),
        ("blank",),
        "Cells C4, D4, C5, D5, C6, D6 and 4 more",
        ("--blank absent", "--blank none"),
    ),
    Asked(
        "no set-up counts",
        "Group,Trial,Red down,Blue down,Gold down\nOwls,1,3,2,5",
        ("set-up",),
        "How many red, blue and gold pins were set up for each trial?",
        ("--set-up red=N,blue=N,gold=N",),
    ),
    Asked(
        "set-up counts for one color only",
        "Group,Trial,Red (4) down,Dark blue down\nOwls,1,3,2",
        ("set-up",),
        "How many dark blue pins",
        ('--set-up "dark blue=N"',),
    ),
    Asked(
        "a result twice",
        TITLE + "Owls,1,3,2\nHawks,1,3,2\nOwls,1,2,2",
        ("duplicates",),
        "Owls, trial 1 (rows 3, 5)",
        ("--duplicates first", "--duplicates last", "--duplicates keep"),
    ),
    Asked(
        "a form sent twice",
        "Timestamp,Group,Trial,Red (4) down\nx,Owls,1,3\ny,owls,1,3",
        ("duplicates",),
        "sent in more than once: Owls, trial 1 (rows 2, 3)",
        ("--duplicates first", "--duplicates last", "--duplicates keep"),
    ),
    Asked(
        "groups listed again without a trial column",
        "Pins down\nGroup,Red (4)\nOwls,3\nHawks,1\nOwls,2",
        ("duplicates",),
        "Owls, trial 1 (rows 3, 5)",
        ("--duplicates first", "--duplicates last", "--duplicates keep"),
    ),
    Asked(
        "several questions at once",
        "Group,Trial,Red,Blue\nOwls,1,3,\nOwls,1,2,1",
        ("counts", "duplicates", "blank", "set-up"),
        "",
        (
            "--counts down", "--counts standing", "--duplicates first", "--duplicates last", "--duplicates keep", "--blank absent",
            "--blank none", "--set-up red=N,blue=N",
        ),
    ),
    Asked(
        "a blank stays open when other questions are answered",
        "Group,Trial,Red (4),Blue (3)\nOwls,1,3,",
        ("blank",),
        "Cell D2 is blank.",
        ("--blank absent", "--blank none"),
        ReadOptions(counts="standing"),
    ),
)  # fmt: skip


@pytest.mark.parametrize("asked", ASKED, ids=lambda asked: asked.claim)
def test_a_table_that_reads_two_ways_is_asked_about(asked: Asked) -> None:
    with pytest.raises(TableQuestions) as caught:
        interpret([grid(asked.text)], asked.given)
    questions = caught.value.questions
    assert tuple(question.id for question in questions) == asked.ids
    assert asked.words in " ".join(question.text for question in questions)
    assert tuple(answer.option for question in questions for answer in question.answers) == asked.options


def test_a_fault_names_sheet_row_column_heading_and_cell() -> None:
    with pytest.raises(TableFaults) as caught:
        interpret([grid(TITLE + "Owls,1,9,2", sheet="Monday")])
    assert str(caught.value) == (
        'sheet "Monday", row 3, column "Red (4)", cell C3: found "9", expected a whole number from 0 to 4 (pins set up). '
        "More pins were knocked down than were set up."
    )


def test_a_fault_in_the_headings_is_told_once_beside_those_of_the_rows() -> None:
    text = "Pins down\nGroup,Trial,Red (4),Cone,Total\n" + "\n".join(f"Owls,{trial},{trial},9,9" for trial in range(1, 6))
    with pytest.raises(TableFaults) as caught:
        interpret([grid(text)])
    assert [fault.place.cell for fault in caught.value.faults] == ["D2", "C7"]
