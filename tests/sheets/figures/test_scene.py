"""What a figure knows of its problem."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.trials.scope import Scope
from tests.sheets.figures.scenes import down, scene, up

SCENE = scene(down())


def test_things_are_named_by_what_tells_them_apart() -> None:
    """Colors, groups, trials, what is counted; and no name where two are alike."""
    assert SCENE.names([down(color="red"), down(color="gold")]) == ["red", "gold"]
    assert SCENE.names([down("Owls"), down("Herons")]) == ["Owls", "Herons"]
    assert SCENE.names([down(trial=1), down(trial=2)]) == ["Trial 1", "Trial 2"]
    both = Quantity("down", Scope(("Owls",), (1, 2)))
    assert SCENE.names([both, down(trial=None)]) == ["Trials 1 and 2", "all trials"]
    assert SCENE.names([down(), down(color="blue")]) == ["all colors", "blue"]
    assert SCENE.names([down(), up()]) == ["knocked down", "set up"]
    assert SCENE.names([down(), down()]) == ["", ""]


def test_counts_come_from_the_table() -> None:
    """The Owls' 3 + 2 + 4 pins of Trial 1, of 12."""
    assert (SCENE.count(down()), SCENE.count(up())) == (9, 12)
