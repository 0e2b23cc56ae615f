"""A small table with target colors, and what was a success in it, by hand."""

from __future__ import annotations

from mathgen.trials.table import Row, TrialTable

_ROLLS = {
    # group, trial: (target, red, blue, gold); three of each are set up
    ("Owls", 1): ("red", 2, 0, 0),  # success
    ("Owls", 2): ("gold", 0, 1, 3),
    ("Owls", 3): ("gold", 0, 0, 1),  # success
    ("Owls", 4): ("blue", 0, 3, 0),  # success
    ("Owls", 5): ("blue", 0, 0, 0),
    ("Wrens", 1): ("blue", 0, 2, 0),  # success
    ("Wrens", 2): ("red", 1, 0, 2),
    ("Wrens", 3): ("gold", 2, 0, 0),
    ("Wrens", 4): ("red", 3, 0, 0),  # success
    ("Wrens", 5): ("red", 1, 1, 1),
    ("Kites", 1): ("red", 2, 0, 0),  # success
    ("Kites", 2): ("blue", 0, 1, 0),  # success
    ("Kites", 3): ("blue", 1, 1, 0),
    ("Kites", 4): ("gold", 0, 0, 2),  # success
}
AIMED = TrialTable(
    tuple(
        Row(group, trial, color, 3, down, target)
        for (group, trial), (target, *downs) in _ROLLS.items()
        for color, down in zip(("red", "blue", "gold"), downs, strict=True)
    )
)
