"""What a told sentence means, before its gaps are filled: chance, samples and simulations."""

from __future__ import annotations

from typing import NamedTuple

from mathgen.reading.meaning.scope import Labels
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure


class Picks(NamedTuple):
    """ "This is done 40 times": the pick, each time from all."""

    number: Number


class PickOne(NamedTuple):
    """ "One of these pins is picked at random"; with a measure and colors, "all the pins knocked down go into a bag"."""

    measure: Measure | None = None
    colors: Labels = None


class Sample(NamedTuple):
    """ "A sample of 3 of the 8 groups was drawn at random." """

    size: Number
    groups: Number


class SampleLike(NamedTuple):
    """ "A sample of 8 of these pins should represent the kinds of all 48 pins." """

    size: Number
    measure: Measure | None = None
    whole: Number | None = None


class Drawn(NamedTuple):
    """ "The Owls, the Kites, and the Wrens were drawn at random from a population of 6 groups." """

    groups: tuple[Label, ...]
    number: Number


class UniformModel(NamedTuple):
    """ "In a model, each pin knocked down is equally likely to be any of 3 kinds." """

    number: Number
    measure: Measure


class Digits(NamedTuple):
    """ "A simulation uses 10 random digits." """

    number: Number


class SampleHas(NamedTuple):
    """ "A random sample of 8 of these pins has 2 red pins." """

    size: Number
    number: Number
    colors: Labels
    measure: Measure | None = None


class HitDigits(NamedTuple):
    """ "In a simulation, the digits 1 to 4 stand for a pin knocked down." """

    first: Number
    last: Number
    measure: Measure


class RunsAre(NamedTuple):
    """ "The 10 runs for two pins are 31, 58, ..." """

    number: Number
    runs: tuple[Number, ...]


class Choices(NamedTuple):
    """ "One of 3 kinds of pins is picked": among how many; ``again`` without a number for "a second card is drawn"."""

    sort: str  # "kinds", "groups", "trials", or "again"; "left" where the first one is not put back; "" where none is told
    number: Number | None = None
    of: str = ""  # of which sort that is, where the sentence says it: "both kinds are written down"
