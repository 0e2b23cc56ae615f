"""What lies at the top of the repository."""

from __future__ import annotations

from fnmatch import fnmatch
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
ALLOWED = {"README.md", "DEVELOPERS.md", "pyproject.toml", "mathgen", "templates", "tests", "samples"}


def test_the_top_level_holds_what_is_allowed_and_nothing_else_visible() -> None:
    """A rule of this project: the list is closed. What git ignores (``out/``, ``build/``) is no part of the repository."""
    ignored = [line.rstrip("/") for line in (ROOT / ".gitignore").read_text(encoding="utf-8").splitlines() if line and line[0] != "#"]
    found = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")}
    assert {name for name in found if not any(fnmatch(name, pattern) for pattern in ignored)} == ALLOWED


def test_no_room_is_a_drawer_for_this_and_that() -> None:
    """A file is named by the one concept that it holds."""
    drawers = {"utils", "helpers", "common", "misc"}
    assert not [path for path in (ROOT / "mathgen").rglob("*.py") if path.stem in drawers]
