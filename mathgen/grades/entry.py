"""The records of a curriculum: limits, wording caps, skills and what a grade makes of a skill."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Limits:
    """What a grade may meet. None means no limit."""

    grade: int
    denominators: tuple[int, ...] | None  # of written fractions, before simplifying; () where fractions are not written
    story_max: int | None  # the largest whole number
    product_max: int | None  # the largest product or dividend
    divisor_digits: int | None  # of the number that a whole number is divided by
    factor_digits: tuple[tuple[int, ...], ...] | None  # at most so many digits of the shorter and of the longer factor
    factor_max: int | None  # the larger of two factors, but for doubles and for one digit times a multiple of ten
    product_tens: bool  # one digit times a multiple of ten from 10 to 90 may pass ``product_max``
    decimal_places: int | None  # written and compared
    decimal_places_compute: int | None  # in a step that adds, subtracts, multiplies or divides
    operations: int | None  # in one problem
    addends: int | None  # in one sum
    addend_digits: int | None  # of each number in a sum of three or more
    cells: int  # table cells that a pupil must read
    graph_categories: int | None  # bars
    same_whole: bool  # fractions are compared, added and subtracted of one whole (or equal sets) only
    common_denominator: bool  # of two fractions that are compared, must be a denominator of the list
    subtract_fractions_of_different_sets: bool  # a difference of two rates ("percentage points")
    features: frozenset[str]  # allowed in this grade; what is not here comes later


@dataclass(frozen=True, slots=True)
class Caps:
    """How long one problem's text may be, question included, in words and sentences."""

    words: int
    sentences: int
    longest_sentence: int
    question: int


@dataclass(frozen=True, slots=True)
class SkillWords:
    """A skill in words: where it belongs, and what a pupil says who has it."""

    skill: str
    strand: str
    topic: str
    i_can: str


@dataclass(frozen=True, slots=True)
class StandardsWhen:
    """Other standards for an entry where a condition holds: ``graph``, ``several two-digit addends``, ``past 20``, ``a fact``."""

    condition: str
    standards: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SkillEntry:
    """A skill in one grade: its standards, and what the gate asks of it beyond the grade's limits. None asks nothing."""

    skill: str
    grade: int
    standards: tuple[str, ...]
    when: tuple[StandardsWhen, ...] = ()  # the first condition that holds replaces ``standards``
    switch: str | None = None  # offered only while this switch is on
    needs: str | None = None  # a feature that a problem must have: what lacks it belongs to a lower grade
    graph: bool | None = None  # numbers must (or must not) be read from a bar graph
    max_operations: int | None = None
    max_addends: int | None = None
    min_biggest: int | None = None  # some given must be at least this
    max_biggest: int | None = None  # no number of the problem may be more
    ruler: bool = False  # lengths are read off a ruler: 1 3/4 inches before mixed numbers are worked with
    largest: int | None = None  # the largest whole number, instead of the grade's
    tens_and_ones: bool = False  # above the grade's largest: two digits and one digit or tens are added, tens taken from tens
    min_factor: int | None = None  # of every whole number that is multiplied or divided, and of the quotient
    denominators: tuple[int, ...] | None = None  # for the sizes of the sets, instead of the grade's list
    min_places: int | None = None  # of a decimal answer; of a percent answer, the places of the percent
    max_places: int | None = None
    round_places: tuple[int, ...] = ()  # places to which the answer may be rounded; () asks for exact answers
    max_repeat: int | None = None  # longest block of repeating digits
    repeats: bool | None = None  # the exact answer must (or must not) be a repeating decimal
    whole_answer: bool | None = None  # the answer must (or must not) be a whole number
    answer_max: int | None = None
    equal_sets: bool | None = None  # the sets must (or must not) be of one size
    same_denominator: bool | None = None  # the given fractions must (or must not) share their denominator
    nested_denominators: bool = False  # of two given fractions one denominator must divide the other
    min_sets: int | None = None
    max_sets: int | None = None
    allow_zero: bool = False  # an answer or share of 0
    allow_whole_set: bool = False  # an answer of n/n or 100%
    allow_whole_given: bool = False  # a given share of n/n or 100%
