"""What a told sentence means, before its gaps are filled: pairs, rows, boxes, factors and multiples."""

from __future__ import annotations

from typing import Literal, NamedTuple

from mathgen.reading.meaning.scope import Labels, Np
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class InPairs(NamedTuple):
    """ "Put these red pins in pairs." """

    measure: Measure | None
    np: Np


class InTwo(NamedTuple):
    """ "Put these pins in two equal rows.", "Both numbers are the same in __ + __ = 14." """

    of_two: Literal["rows", "blanks"]
    measure: Measure | None = None
    np: Np = Np()
    number: Number | None = None


class InRows(NamedTuple):
    """ "The Owls put all red pins knocked down in 3 rows.", "An array shows all pins the Owls knocked down in Trial 1." """

    measure: Measure | None
    np: Np
    rows: Number | None


class RowHolds(NamedTuple):
    """ "Each row has 4 red pins.", "The array has 3 rows of 4." """

    size: Number
    colors: Labels = None
    rows: Number | None = None


class InEqualRows(NamedTuple):
    """ "Put all of these pins in equal rows.", "Write the number of pins knocked down as a product of two factors." """

    measure: Measure | None
    np: Np


class OneChange(NamedTuple):
    """ "Change one number of pins knocked down to make the mean 10 pins." """

    name: Literal["total", "mean"]
    measure: Measure
    colors: Labels
    to: Number


class SumOfSome(NamedTuple):
    """ "Find three of these fractions that have the sum 2." """

    size: int
    total: Number


class SplitInto(NamedTuple):
    """ "Split 5/8 into two fractions with the bottom number 8." """

    part: Number
    bottom: Number


class InBoxes(NamedTuple):
    """ "Put these red pins in boxes of 6.", "Each box holds 6 of these red pins." """

    measure: Measure | None
    np: Np
    number: Number
    box: str  # box, bag, row


class LetterAhead(NamedTuple):
    """ "Next time, the Owls will set up n pins." """

    letter: str
    np: Np


class Reduced(NamedTuple):
    """n − 0.4n, as it is written: the letter, the part of it, and the letter once more."""

    letter: str
    part: Number
    again: str


class LeftIs(NamedTuple):
    """ "At the same rate, n − 0.4n pins would be left standing." """

    measure: Measure
    written: Reduced
    colors: Labels = None


class OneTerm(NamedTuple):
    """ "The expression n − 0.4n can be written as one term." """

    written: Reduced


class Limit(NamedTuple):
    """n > 8, as it is written."""

    letter: str
    test: Literal[">", "<"]
    number: Number


class ResultLimit(NamedTuple):
    """ "A result of n pins reaches the goal where n > 8"; or what the letter stands for, and no limit yet."""

    letter: str
    colors: Labels
    limit: Limit | None = None
    means: str = ""
    measure: Measure | None = None
    by: Literal["", "groups", "trials"] = ""


class PutInBoxes(NamedTuple):
    """ "Put all of these pins in boxes": nothing is said of how many each holds."""

    measure: Measure | None
    np: Np
    box: str


class BoxesAlike(NamedTuple):
    """ "All the boxes are alike"."""

    box: str


class Repeated(NamedTuple):
    """ "Suppose every trial had the same result as Trial 1", "count on by each of these numbers"."""

    trials: tuple[Label, ...] = ()
