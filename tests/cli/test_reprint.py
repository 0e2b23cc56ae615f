"""``mathgen reprint``: what is typed in place of a sheet code."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from mathgen.cli import main

MAIN = Path(__file__).parents[2] / "samples" / "main.csv"


@pytest.mark.parametrize("table", [[str(MAIN)], []])
def test_the_mark_of_cards_is_told_from_a_sheet_code(table: list[str], tmp_path: Path) -> None:
    refused = CliRunner().invoke(main, ["reprint", "61PZ", *table, "--out", str(tmp_path)])
    assert refused.exit_code == 1
    assert "is the mark of a deck of cards" in refused.output
    assert "grade...-cards-key.json" in refused.output
