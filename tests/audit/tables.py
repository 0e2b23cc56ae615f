"""Random trial tables: any that a file may hold, and such as classes bring home."""

from __future__ import annotations

from random import Random

from hypothesis import strategies as st

from mathgen.trials.scope import Label
from mathgen.trials.table import Row, TrialTable

GROUPS = ("Owls", "Herons", "Group 3", "7", "The Most", "Zoë")
COLORS = ("red", "blue", "gold", "green", "orange")


@st.composite
def any_tables(draw: st.DrawFn) -> TrialTable:
    """2-6 groups, 1-4 trials, 1-5 colors, 1-12 pins of each, any counts; the set-up may differ by trial; some results absent."""
    groups = GROUPS[: draw(st.integers(2, 6))]
    labels: tuple[tuple[Label, ...], ...] = ((1, 2, 3, 4), ("A", "B", "C", "D"), ("Round 1", "Round 2", "Round 3", "Round 4"))
    trials = draw(st.sampled_from(labels))[: draw(st.integers(1, 4))]
    colors = COLORS[: draw(st.integers(1, 5))]
    by_trial = draw(st.booleans())
    sets = {color: draw(st.integers(1, 12)) for color in colors}
    later = {(trial, color): draw(st.integers(1, 12)) if by_trial else sets[color] for trial in trials for color in colors}
    absent = draw(st.sets(st.tuples(st.sampled_from(groups), st.sampled_from(trials)), max_size=2))
    rows, missing = [], []
    for group in groups:
        for trial in trials:
            for color in colors:
                if (group, trial) in absent and len(absent) < len(groups) * len(trials):
                    missing.append((group, trial, color))
                else:
                    size = later[trial, color]
                    rows.append(Row(group, trial, color, size, draw(st.integers(0, size))))
    return TrialTable(tuple(rows), tuple(missing))


def class_table(rng: Random) -> TrialTable:
    """As classes have them: 2-6 groups, 2-4 trials, 2-5 colors of 2-6 pins each, the same sets in every trial."""
    groups = GROUPS[: rng.randint(2, 6)]
    trials: tuple[Label, ...] = tuple(range(1, rng.randint(2, 4) + 1))
    sets = {color: rng.randint(2, 6) for color in COLORS[: rng.randint(2, 5)]}
    return TrialTable(
        tuple(Row(group, trial, color, size, rng.randint(0, size)) for group in groups for trial in trials for color, size in sets.items())
    )


def aimed_table(rng: Random) -> TrialTable:
    """With target colors: 2-6 groups, 3-8 trials each, not all as many, 2-4 colors; about half of the trials are successes."""
    groups, colors = GROUPS[: rng.randint(2, 6)], COLORS[: rng.randint(2, 4)]
    names: tuple[tuple[Label, ...], ...] = (tuple(range(1, 9)), tuple("ABCDEFGH"), tuple(f"Round {number}" for number in range(1, 9)))
    labels, rows = rng.choice(names), []
    for group in groups:
        for trial in labels[: rng.randint(3, 8)]:
            target, success = rng.choice(colors), rng.randrange(2)
            for color in colors:
                down = rng.randint(1, 4) if color == target else 0 if success else rng.randint(0, 4)
                rows.append(Row(group, trial, color, 4, down, target))
    return TrialTable(tuple(rows))
