"""An ask is worked in steps: by hand on one small table."""

from __future__ import annotations

import pytest

from mathgen.asks.steps.by_goal import school_steps
from mathgen.asks.steps.cell_reader import CellReader
from tests.asks.cases import CASES
from tests.tables import TWO_GROUPS


@pytest.mark.parametrize("name", CASES)
def test_each_kind_of_ask_by_hand(name: str) -> None:
    ask, printed, _, _, steps = CASES[name]
    assert school_steps(ask, CellReader(TWO_GROUPS), printed) == steps
