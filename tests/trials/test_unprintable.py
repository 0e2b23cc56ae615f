"""Control characters."""

from __future__ import annotations

from mathgen.trials.grid import Grid
from mathgen.trials.unprintable import unprintable


def test_a_control_character_is_a_fault_at_its_cell_and_is_shown() -> None:
    (fault,) = unprintable([Grid((("Group", "Red"), ("Ow\x07ls", "3")), "May")])
    assert str(fault) == (
        'sheet "May", row 2, column 1, cell A2: found "Ow[U+0007]ls", expected text without control characters. Type the cell again.'
    )


def test_emoji_accents_and_joined_letters_are_no_faults() -> None:
    assert unprintable([Grid((("😀 Cats", "Zoë", "👩\u200d🔬", "X²", ""),))]) == ()
