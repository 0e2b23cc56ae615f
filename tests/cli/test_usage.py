"""Wrong options, all told at once."""

from __future__ import annotations

import pytest
from click.testing import CliRunner

from mathgen.cli import COMMANDS, main
from mathgen.cli.usage import WholeCommand


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_tells_all_faults(name: str) -> None:
    assert isinstance(main.get_command(main.make_context("mathgen", ["--help"], resilient_parsing=True), name), WholeCommand)


def test_each_wrong_option_has_its_line() -> None:
    done = CliRunner().invoke(main, ["worksheet", "nothing.csv", "--grade", "99", "--paper", "silk", "--seed", "7"])
    assert done.exit_code == 2
    assert [line.split(":")[0] for line in done.output.splitlines() if line.startswith("  - ")] == [
        "  - Invalid value for '--grade'",
        "  - Invalid value for '--paper'",
        "  - Missing option '--out'.",
    ]


def test_one_wrong_option_is_told_as_ever() -> None:
    done = CliRunner().invoke(main, ["list", "bananas"])
    assert done.exit_code == 2
    assert "Error: Invalid value for" in done.output
    assert "things are wrong" not in done.output
