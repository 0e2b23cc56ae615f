"""A small class for reading: three groups, three trials, three colors, no two totals alike where it matters."""

from sympy import Rational

from mathgen.scenario.words import scenario
from mathgen.trials.table import Row, TrialTable

SET_UP = {"red": 4, "blue": 3, "gold": 5}
DOWN = {
    "Owls": ((3, 2, 3), (4, 1, 5), (2, 3, 4)),
    "Wrens": ((2, 3, 0), (3, 1, 3), (1, 1, 1)),
    "Kites": ((3, 2, 5), (0, 1, 4), (4, 1, 4)),
}
# Space between pins in inches; not measured in the last trial.
GAPS = {"Owls": ("9/4", "7/4", None), "Wrens": ("3", "5/8", None), "Kites": ("3/2", "9/4", None)}
TABLE = TrialTable(
    tuple(
        Row(group, trial, color, set_up, down, gap_inches=gap and Rational(gap))
        for group, trials in DOWN.items()
        for trial, (downs, gap) in enumerate(zip(trials, GAPS[group], strict=True), 1)
        for (color, set_up), down in zip(SET_UP.items(), downs, strict=True)
    )
)
RAMP = scenario("ramp")
