"""``mathgen pick``: where the page is written."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from mathgen.cli import main

MAIN = Path(__file__).parents[2] / "samples" / "main.csv"


@pytest.mark.parametrize(("out", "page"), [("y2", "y2.html"), ("y2.htm", "y2.htm"), ("", "grade4-pick.html")])
def test_a_page_has_an_ending_and_goes_into_a_folder_under_its_own_name(out: str, page: str, tmp_path: Path) -> None:
    made = CliRunner().invoke(main, ["pick", str(MAIN), "--grade", "4", "--count", "2", "--out", str(tmp_path / out)])
    assert made.exit_code == 0, made.output
    assert [path.name for path in tmp_path.iterdir()] == [page]
