"""Messy tables, each with the rows that a careful person reads from it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest

from mathgen.trials.reading import ReadOptions, interpret, read_table
from tests.trials.as_grid import grid, in_a_line, pieces

AS_IT_STANDS = ReadOptions()
OWLS = "Owls 1: red 3/4, blue 2/3; Owls 2: red 1/4, blue 0/3"
OWLS_AND_HAWKS = "Owls 1: red 3/4, blue 2/3; Hawks 1: red 1/4, blue 0/3"


@dataclass(frozen=True)
class Messy:
    """One table, what a person reads from it, and words that a note must hold."""

    claim: str
    text: str
    rows: str
    note: str = ""
    options: ReadOptions = AS_IT_STANDS
    merged: tuple[tuple[int, int, int, int], ...] = ()


MESSY = (
    Messy(
        "a wide table under a title",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
        'as "Pins knocked down" says',
    ),
    Messy(
        "a long table",
        """Group,Trial,Color,Set up,Knocked down
Owls,1,red,4,3
Owls,1,blue,3,2
Owls,2,red,4,1
Owls,2,blue,3,0""",
        OWLS,
    ),
    Messy(
        "several title lines and blank rows",
        """Sock ball,,,
,,,
Room with the long hall,,,
How many pins fell?,,,
,,,
Group,Trial,Red (4),Blue (3)
,,,
Owls,1,3,2
,,,
Owls,2,1,0""",
        OWLS,
        'as "How many pins fell?" says',
    ),
    Messy(
        "pins left standing in the title",
        """Pins left standing
Group,Trial,Red (4),Blue (3)
Owls,1,1,1
Owls,2,3,3""",
        OWLS,
        "left standing",
    ),
    Messy(
        "the option says left standing",
        """Group,Trial,Red (4),Blue (3)
Owls,1,1,1
Owls,2,3,3""",
        OWLS,
        options=ReadOptions(counts="standing"),
    ),
    Messy(
        "the option says how many were set up",
        """Group,Trial,Red down,Blue down
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
        options=ReadOptions(set_up=(("red", 4), ("blue", 3))),
    ),
    Messy(
        "headings typed wrong",
        """Gruop,Atempt,Colour,Stood at start,Knoked down
Owls,1,Red,4,3
Owls,1,Blue,3,2
Owls,2,Red,4,1
Owls,2,Blue,3,0""",
        OWLS,
        'The heading "Gruop" is read as "group".',
    ),
    Messy(
        "other words for every heading",
        """Grp #,Try,colour,out of,fell
Owls,1,Red,4,3
Owls,1,Blue,3,2
Owls,2,Red,4,1
Owls,2,Blue,3,0""",
        OWLS,
    ),
    Messy(
        "a set-up row below the headings",
        """Pins knocked down
Team,Roll,Red,Blue
Set up,,4,3
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
    ),
    Messy(
        "a set-up row at the foot",
        """Pins knocked down
Team,Turn,Red,Blue
Owls,1,3,2
Owls,2,1,0
Pins set up,,4,3""",
        OWLS,
    ),
    Messy(
        "a set-up row above the headings",
        """Pins knocked down,,,
Set up,,4,3
Team,Run #,Red,Blue
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
    ),
    Messy(
        "set-up counts in a title line",
        """"Set up: red 4, blue 3",,,
Group,Trial,Red down,Blue down
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
    ),
    Messy(
        "a set-up row for each trial",
        """Knocked down
Group,Trial,Red,Blue
Set up,1,4,3
Set up,2,5,6
Owls,1,3,2
Owls,2,5,6""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red 5/5, blue 6/6",
    ),
    Messy(
        "a set-up row for each group",
        """Knocked down
Group,Trial,Red,Blue
Owls,Set up,4,3
Owls,1,3,2
Hawks,Set up,5,4
Hawks,1,5,0""",
        "Owls 1: red 3/4, blue 2/3; Hawks 1: red 5/5, blue 0/4",
    ),
    Messy(
        "a set-up column for each color",
        """Group,Trial,Red set up,Red down,Blue set up,Blue down
Owls,1,4,3,3,2
Owls,2,4,1,3,0""",
        OWLS,
    ),
    Messy(
        "3/4 cells and 3 of 4 cells",
        """Group,Trial,Red,Blue
Owls,1,3/4,2 of 3
Owls,2,1 out of 4,0/3""",
        OWLS,
        "3/4 is read as 3 knocked down of 4 set up",
    ),
    Messy(
        "knocked down and left standing both counted",
        """Group,Trial,Red down,Red standing,Blue down,Blue standing
Owls,1,3,1,2,1
Owls,2,1,3,0,3""",
        OWLS,
        "knocked down and left standing together",
    ),
    Messy(
        "trials across",
        """Pins knocked down
Group,Color,Trial 1,Trial 2
Owls,Red (4),3,1
Owls,Blue (3),2,0""",
        OWLS,
    ),
    Messy(
        "trials across by their numbers alone",
        """Pins knocked down
Group,Color,1,2
Owls,Red (4),3,1
,Blue (3),2,0""",
        OWLS,
        "Blank group cells go on with the group above them (row 4).",
    ),
    Messy(
        "groups across",
        """Pins knocked down
Trial,Color,Owls,Hawks
1,Red (4),3,1
1,Blue (3),2,0""",
        OWLS_AND_HAWKS,
        'The headings "Owls", "Hawks" are read as groups.',
    ),
    Messy(
        "groups across with colors down an unnamed column",
        """Pins knocked down
,Owls,Hawks
Red (4),3,1
Blue (3),2,0""",
        OWLS_AND_HAWKS,
        "No column names the trial: everything is read as trial 1.",
    ),
    Messy(
        "a table on its side",
        """Pins knocked down
Group,Owls,,Hawks
Trial,1,2,1
Red (4),3,1,1
Blue (3),2,0,0""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red 1/4, blue 0/3; Hawks 1: red 1/4, blue 0/3",
    ),
    Messy(
        "two heading rows, trials over colors",
        """Pins knocked down,,,,
Group,Trial 1,,Trial 2,
,Red (4),Blue (3),Red (4),Blue (3)
Owls,3,2,1,0""",
        OWLS,
    ),
    Messy(
        "two heading rows, colors over trials",
        """Pins knocked down,,,,
Group,Red (4),,Blue (3),
,Trial 1,Trial 2,Trial 1,Trial 2
Owls,3,1,2,0""",
        OWLS,
    ),
    Messy(
        "two heading rows, measures over colors",
        """Group,Trial,Pins set up,,Pins knocked down,
,,Red,Blue,Red,Blue
Owls,1,4,3,3,2
Owls,2,4,3,1,0""",
        OWLS,
    ),
    Messy(
        "two heading rows, groups over colors",
        """Pins knocked down,,,,
Trial,Owls,,Hawks,
,Red (4),Blue (3),Red (4),Blue (3)
1,3,2,1,0""",
        OWLS_AND_HAWKS,
    ),
    Messy(
        "merged cells over the colors and down the groups",
        """Group,Trial,Pins knocked down,
,,Red (4),Blue (3)
Owls,1,3,2
,2,1,0""",
        OWLS,
        "Blank group cells go on with the group above them (row 4).",
        merged=((1, 1, 2, 1), (1, 3, 1, 4), (3, 1, 4, 1)),
    ),
    Messy(
        "a group's name on a row of its own",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,,,
,1,3,2
,2,1,0""",
        OWLS,
    ),
    Messy(
        "a block for each trial under its own title",
        """Pins down
Trial 1
Group,Red (4),Blue (3)
Owls,3,2
Trial 2
Group,Red (4),Blue (3)
Owls,1,0""",
        OWLS,
        "Row 6 repeats the headings",
    ),
    Messy(
        "rows of set up and down in turn",
        """Group,Trial,,Red,Blue
Owls,1,Set up,4,3
,,Down,3,2
Owls,2,Set up,4,3
,,Down,1,0""",
        OWLS,
    ),
    Messy(
        "blank group and trial cells in a long table",
        """Group,Trial,Color,Set up,Down
Owls,1,red,4,3
,,blue,3,2
,2,red,4,1
,,blue,3,0""",
        OWLS,
        "Blank trial cells go on with the trial above them (rows 3 and 5).",
    ),
    Messy(
        "a totals column and a totals row that add up",
        """Pins knocked down
Group,Trial,Red (4),Blue (3),Total
Owls,1,3,2,5
Owls,2,1,0,1
Total,,4,2,6""",
        OWLS,
        'Row 5 ("Total") is a totals row',
    ),
    Messy(
        "a total for each group, a grand total and an average",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls total,,3,2
Hawks,1,1,0
Hawks total,,1,0
Grand total,,4,2
Average,,2,1""",
        OWLS_AND_HAWKS,
        'Row 8 ("Average") is not used.',
    ),
    Messy(
        "a total for each trial across",
        """Pins knocked down,,,,,,
Group,Trial 1,,,Trial 2,,
,Red (4),Blue (3),Total,Red (4),Blue (3),Total
Owls,3,2,5,1,0,1""",
        OWLS,
    ),
    Messy(
        "a totals row and set-up counts of a long table",
        """Group,Trial,Color,Total,Knocked down
Owls,1,red,4,3
Owls,1,blue,3,2
Total,,,7,5""",
        "Owls 1: red 3/4, blue 2/3",
        '"Total" is read as how many were set up.',
    ),
    Messy(
        "totals of 3/4 cells",
        """Group,Trial,Red,Blue,Total
Owls,1,3/4,2/3,5/7
Owls,2,1/4,0/3,1/7""",
        OWLS,
    ),
    Messy(
        "a wrong total that is to be ignored",
        """Pins knocked down
Group,Trial,Red (4),Blue (3),Total
Owls,1,3,2,6
Owls,2,1,0,1""",
        OWLS,
        "not checked (--ignore-totals)",
        ReadOptions(ignore_totals=True),
    ),
    Messy(
        "tally marks",
        """Team,Try,Colour,Fell,Stood
Owls,1,Red,|||,||||
Owls,1,Blue,II,III
Owls,1,Gold,||||/ |,𝍸𝍷𝍷""",
        "Owls 1: red 3/4, blue 2/3, gold 6/7",
        '"||||/ |" is read as 6 tally marks',
    ),
    Messy(
        "absent in several spellings",
        """Pins knocked down
Group,Trial,Red (4),Blue (3),Gold (5)
Owls,1,Absent,abs,n/a
Owls,2,-,3,N/A""",
        "Owls 1: red absent, blue absent, gold absent; Owls 2: red absent, blue 3/3, gold absent",
        '"-" is read as absent',
    ),
    Messy(
        "out of right of each color",
        """Pins down
Group,Trial,Red,Out of,Blue,of
Owls,1,3,4,2,3
Owls,2,1,4,0,3""",
        OWLS,
        '"Out of" in column 4 is read as how many red pins were set up.',
    ),
    Messy(
        "a bare count beside pins left standing",
        """Group,Trial,Color,Pins,Left standing
Owls,1,red,4,1
Owls,1,blue,3,1""",
        "Owls 1: red 3/4, blue 2/3",
        '"Pins" is read as how many were set up.',
    ),
    Messy(
        "a row that names the trial of the rows below it",
        """Pins down
Group,Trial,Red (4),Blue (3)
Trial 1,,,
Owls,,3,2
Trial 2,,,
Owls,,1,0""",
        OWLS,
    ),
    Messy(
        "a grand total right of the last trial's total",
        """Pins knocked down,,,,,,,
Group,Trial 1,,,Trial 2,,,
,Red (4),Blue (3),Total,Red (4),Blue (3),Total,Grand total
Owls,3,2,5,1,0,1,6""",
        OWLS,
    ),
    Messy(
        "a note that reads like a set-up row's or a totals row's name",
        """Pins down
Group,Trial,Notes,Red (4),Blue (3)
Owls,1,Start,3,2
Owls,2,Total,1,0""",
        OWLS,
    ),
    Messy(
        "absent once for a whole row",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,absent,""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red absent, blue absent",
        'Row 4 says "absent" once',
    ),
    Messy(
        "set-up counts in a row of their own under the colors",
        """Pins knocked down
Group,Trial,Red,Blue
,,(4),(3)
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
    ),
    Messy(
        "a blank that means absent",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,1,3,
Owls,2,,""",
        "Owls 1: red 3/4, blue absent; Owls 2: red absent, blue absent",
        options=ReadOptions(blank="absent"),
    ),
    Messy(
        "a blank that means none left standing",
        """Pins left standing
Group,Trial,Red (4),Blue (3)
Owls,1,1,""",
        "Owls 1: red 3/4, blue 3/3",
        options=ReadOptions(blank="none"),
    ),
    Messy(
        "a form's questions as headings",
        """Timestamp,What is your group name?,Which trial is this?,Red pins (out of 4) you knocked down,How many blue pins (of 3) fell?
2/3/2025 9:10:11,Owls,1,3,2
2/3/2025 9:14:56,Owls,2,1,0""",
        OWLS,
        'The time stamp column "Timestamp" is left out.',
    ),
    Messy(
        "a form sent twice, the last one counts",
        """Timestamp,Group,Trial,Red (4) down,Blue (3) down
2/3/2025 9:10,Owls,1,4,3
2/3/2025 9:14,Owls,2,1,0
2/3/2025 9:15,Owls,1,3,2""",
        OWLS,
        "the last counts: Owls, trial 1",
        ReadOptions(duplicates="last"),
    ),
    Messy(
        "a form sent twice, the first one counts",
        """Timestamp,Group,Trial,Red (4) down,Blue (3) down
2/3/2025 9:10,Owls,1,3,2
2/3/2025 9:14,Owls,2,1,0
2/3/2025 9:15,Owls,1,4,3""",
        OWLS,
        "the first counts: Owls, trial 1",
        ReadOptions(duplicates="first"),
    ),
    Messy(
        "doubles that are kept as further trials",
        """Group,Trial,Red (4) down,Blue (3) down
Owls,1,3,2
Owls,1,1,0""",
        OWLS,
        'A further result of "Owls" for trial 1 (row 3) is counted as trial 2.',
        ReadOptions(duplicates="keep"),
    ),
    Messy(
        "one group in several spellings",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,Trial 1,3,2
OWLS,T2,1,0""",
        OWLS,
        '"OWLS" is read as the group "Owls".',
    ),
    Messy(
        "groups named by numbers stay names, trials become numbers",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
7,1st,3,2
7,second,1,0""",
        "7 1: red 3/4, blue 2/3; 7 2: red 1/4, blue 0/3",
    ),
    Messy(
        "numbers in words, with units and with zeros after the point",
        """Pins knocked down
Group,Trial,Red (4),Blue (3)
Owls,1,three,2 pins
Owls,2,1.0,none""",
        OWLS,
        '"none" is read as 0',
    ),
    Messy(
        "kinds of pins that are no colors, given by a set-up row",
        """Seeds sprouted
Plot,Trial,Bean,Pea
Planted,,8,10
North,1,6,9""",
        "North 1: bean 6/8, pea 9/10",
    ),
    Messy(
        "kinds of pins that are no colors, given by the option",
        """Knocked down
Group,Trial,Cone,Tube
Owls,1,3,2""",
        "Owls 1: cone 3/4, tube 2/3",
        options=ReadOptions(set_up=(("cone", 4), ("tube", 3))),
    ),
    Messy(
        "set-up numbers without brackets",
        """Pins down
Group,Trial,Red 4,Blue 3
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
        '"Red 4" is read as red pins, 4 set up.',
    ),
    Messy(
        "trial numbers after the colors",
        """Pins down
Group,Red 1,Red 2,Blue 1,Blue 2
Set up,4,4,3,3
Owls,3,1,2,0""",
        OWLS,
        '"Red 1" is read as red pins in trial 1.',
    ),
    Messy(
        "columns that are not used are named",
        """Pins down
#,Group,Trial,Red (4),Blue (3),%,Weather
1,Owls,1,3,2,71%,sunny
2,Owls,2,1,0,14%,rain""",
        OWLS,
        'The column "Weather" is not used.',
    ),
    Messy(
        "a remark below the table",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0
,,,
Note: one pin was squashed.""",
        OWLS,
        'Row 6 ("Note: one pin was squashed.") holds no results',
    ),
    Messy(
        "names that look like code stay names",
        """Pins down
Group,Trial,Red (4),Blue (3)
=1+1,1,3,2
<img src=x onerror=alert(1)>,1,1,0""",
        "=1+1 1: red 3/4, blue 2/3; <img src=x onerror=alert(1)> 1: red 1/4, blue 0/3",
    ),
    Messy(
        "no trial column",
        """Pins down
Group,Red (4),Blue (3)
Owls,3,2
Hawks,1,0""",
        OWLS_AND_HAWKS,
        "everything is read as trial 1",
    ),
    Messy(
        "a round that stands for the trial",
        """Pins down
Group,Round,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
        '"Round" is read as the trial',
    ),
    Messy(
        "groups whose names are a letter apart stay two, and that is said",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owl,1,1,0""",
        "Owls 1: red 3/4, blue 2/3; Owl 1: red 1/4, blue 0/3",
        '"Owls" and "Owl" are read as two groups',
    ),
    Messy(
        "a bare heading over the colors says what was counted",
        """Group,Trial,Down,
,,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0""",
        OWLS,
    ),
    Messy(
        "a group called Means that is no average",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0
Means,1,1,2
Means,2,3,0""",
        OWLS + "; Means 1: red 1/4, blue 2/3; Means 2: red 3/4, blue 0/3",
        '"Means" (row 5) is read as a group: its counts do not sum up the rows above it.',
    ),
    Messy(
        "a group called Totals whose name is typed once",
        """Pins down
Group,Trial,Red (4),Blue (3)
Totals,1,3,2
,2,1,0
Owls,1,3,2""",
        "Totals 1: red 3/4, blue 2/3; Totals 2: red 1/4, blue 0/3; Owls 1: red 3/4, blue 2/3",
        '"Totals" (row 3) is read as a group',
    ),
    Messy(
        "a group called Totals whose name stands on a row of its own",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,,,
,1,3,2
Totals,,,
,1,1,0
,2,1,0""",
        "Owls 1: red 3/4, blue 2/3; Totals 1: red 1/4, blue 0/3; Totals 2: red 1/4, blue 0/3",
        '"Totals" (row 5) is read as a group',
    ),
    Messy(
        "totals whose name stands on a row of its own",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Hawks,1,1,0
Totals,,,
,1,4,2""",
        OWLS_AND_HAWKS,
        'Row 6 ("Totals") is a totals row',
    ),
    Messy(
        "a group called Sum in each block of a table sorted by trial, once equal to what a sum would be",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Sum,1,1,1
Owls,2,1,0
Sum,2,1,0""",
        OWLS + "; Sum 1: red 1/4, blue 1/3; Sum 2: red 1/4, blue 0/3",
        '"Sum" (row 4) is read as a group',
    ),
    Messy(
        "a group called Average in a long table",
        """Group,Trial,Color,Set up,Down
Owls,1,red,4,3
,,blue,3,2
Average,1,red,4,1
,,blue,3,2""",
        "Owls 1: red 3/4, blue 2/3; Average 1: red 1/4, blue 2/3",
        '"Average" (row 4) is read as a group',
    ),
    Messy(
        "a group called Average that was absent",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Average,1,absent,absent""",
        "Owls 1: red 3/4, blue 2/3; Average 1: red absent, blue absent",
    ),
    Messy(
        "totals and averages for each trial stay what they are",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Hawks,1,1,0
Total,1,4,2
Average,1,2,1
Owls,2,2,2
Hawks,2,0,1
Total,2,2,3
Average,2,1,1.5""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red 2/4, blue 2/3; Hawks 1: red 1/4, blue 0/3; Hawks 2: red 0/4, blue 1/3",
        'Row 10 ("Average") is not used.',
    ),
    Messy(
        "totals by trial whose name is typed once",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0
Hawks,1,1,0
Hawks,2,0,1
Total,1,4,2
,2,1,1""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red 1/4, blue 0/3; Hawks 1: red 1/4, blue 0/3; Hawks 2: red 0/4, blue 1/3",
        'Row 8 ("Total") is a totals row',
    ),
    Messy(
        "groups across called Totals and Average",
        """Pins down
Trial,Color,Owls,Totals,Average
1,Red (4),3,1,4
1,Blue (3),2,0,3""",
        "Owls 1: red 3/4, blue 2/3; Totals 1: red 1/4, blue 0/3; Average 1: red 4/4, blue 3/3",
        'The heading "Totals" is read as a group: its counts do not sum up the other groups.',
    ),
    Messy(
        "totals and averages of groups across stay what they are",
        """Pins down
Trial,Color,Owls,Hawks,Total,Average
1,Red (4),3,1,4,2
1,Blue (3),2,0,2,1""",
        OWLS_AND_HAWKS,
        'The column "Average" is not used.',
    ),
    Messy(
        "names keep their signs",
        """Pins down
Group,Trial,Red (4),Glow-in-the-dark (3)
X²,1,3,2
😀 Cats,1,1,0""",
        "X² 1: red 3/4, glow-in-the-dark 2/3; 😀 Cats 1: red 1/4, glow-in-the-dark 0/3",
    ),
    Messy(
        "a color that is written otherwise is said",
        """Pins down
Group,Trial,Sky_Blue (4)
Owls,1,3""",
        "Owls 1: sky blue 3/4",
        '"Sky_Blue (4)" is read as the color "sky blue".',
    ),
    Messy(
        "a group called like a color",
        """Pins down
Group,Trial,Red (4),Blue (3)
Red,1,3,2
Trial 1,1,1,0""",
        "Red 1: red 3/4, blue 2/3; Trial 1 1: red 1/4, blue 0/3",
        'A group is called "Red", like a color: questions may be hard to understand.',
    ),
    Messy(
        "a missing row is said",
        """Pins down
Group,Trial,Red (4),Blue (3)
Owls,1,3,2
Owls,2,1,0
Hawks,1,4,3""",
        "Owls 1: red 3/4, blue 2/3; Owls 2: red 1/4, blue 0/3; Hawks 1: red 4/4, blue 3/3",
        "There is no row for Hawks, trial 2.",
    ),
)


@pytest.mark.parametrize("messy", MESSY, ids=lambda messy: messy.claim)
def test_a_messy_table_is_read_as_a_person_reads_it(messy: Messy) -> None:
    """The tables are common practice, from memory; no published source."""
    result = interpret([grid(messy.text, merged=messy.merged)], messy.options)
    assert pieces(in_a_line(result.table)) == pieces(messy.rows)
    assert messy.note in "\n".join(result.notes)


def test_rows_keep_the_order_of_the_file() -> None:
    table = interpret([grid("Pins down\nGroup,Trial,Red (4),Blue (3)\nOwls,2,3,2\nOwls,1,1,0\nAnts,1,0,0")]).table
    assert [(row.group, row.trial, row.color) for row in table.rows] == [
        ("Owls", 2, "red"), ("Owls", 2, "blue"), ("Owls", 1, "red"), ("Owls", 1, "blue"), ("Ants", 1, "red"), ("Ants", 1, "blue"),
    ]  # fmt: skip
    assert (table.groups, table.trials, table.colors) == (("Owls", "Ants"), (2, 1), ("red", "blue"))


def test_a_table_without_any_oddity_is_read_without_a_note() -> None:
    assert interpret([grid("Group,Trial,Red (4) knocked down,Blue (3) knocked down\nOwls,1,3,2")]).notes == ()


def test_optional_columns_are_kept() -> None:
    text = """Group,Trial,Target color,Space between pins (in),Release height,Design round,Red (4) knocked down,Notes
Owls,1,Red,2 1/4,12 in,A,3,wobbly
Owls,2,BLUE,1½,1 ft,B,1,"""
    first, second = interpret([grid(text)]).table.rows
    assert (first.target, str(first.gap_inches), first.height, first.round, first.notes) == ("red", "9/4", "12 in", "A", "wobbly")
    assert (second.target, str(second.gap_inches), second.height, second.round, second.notes) == ("blue", "3/2", "1 ft", "B", None)


def test_the_messy_sample_is_read_as_a_person_reads_it() -> None:
    result = read_table(str(Path(__file__).parent.parent.parent / "samples" / "messy.xlsx"))
    assert in_a_line(result.table) == (
        "Owls 1: red 3/4, blue 2/3, gold 4/5; Owls 2: red 4/4, blue 1/3, gold 5/5; Owls 3: red 2/4, blue 3/3, gold 3/5; "
        "HERONS 1: red 1/4, blue 2/3, gold 1/5; HERONS 2: red 2/4, blue 0/3, gold 4/5; HERONS 3: red 3/4, blue 3/3, gold 5/5; "
        "Finches 1: red 4/4, blue 1/3, gold 3/5; Finches 2: red 3/4, blue 1/3, gold 5/5; Finches 3: red 1/4, blue 2/3, gold absent; "
        "wrens 1: red 2/4, blue 3/3, gold 0/5; wrens 2: red 3/4, blue 1/3, gold 3/5; wrens 3: red 1/4, blue 1/3, gold 2/5"
    )
    said = "\n".join(result.notes)
    for guess in ('"Gruop"', "Blank group cells", '"||||" is read as 4 tally marks', 'The column "Total" is checked', 'Row 19 ("Totals")'):
        assert guess in said


def test_a_table_of_seeds_is_told_in_its_own_words() -> None:
    assert interpret([grid("Seeds sprouted\nPlot,Trial,Bean (8)\nNorth,1,6")]).notes == (
        'The counts are taken as "sprouted", as "Seeds sprouted" says.',
        "The table speaks of seeds; --scenario seeds gives words about seeds.",
    )


@pytest.mark.parametrize(("named", "told"), [(None, True), ("ramp", True), ("seeds", False), ("beans.toml", False)])
def test_words_about_seeds_are_named_only_where_others_would_be_used(named: str | None, told: bool) -> None:
    notes = interpret([grid("Seeds sprouted\nPlot,Trial,Bean (8)\nNorth,1,6")], ReadOptions(scenario=named)).notes
    assert any("--scenario seeds" in note for note in notes) is told


def test_headings_alone_may_speak_of_seeds() -> None:
    notes = interpret([grid("Group,Trial,Bean planted,Bean sprouted\nNorth,1,8,6")]).notes
    assert notes == ("The table speaks of seeds; --scenario seeds gives words about seeds.",)


def test_a_table_of_pins_is_told_of_pins() -> None:
    assert interpret([grid("Pins knocked down\nGroup,Trial,Red (4)\nOwls,1,3")]).notes == (
        'The counts are of pins knocked down, as "Pins knocked down" says.',
    )
