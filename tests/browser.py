"""A real browser for tests of pages: Debian's Chromium, driven by Playwright. Where it is missing, its tests are skipped, but not in CI."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from playwright.sync_api import Browser

_OFFLINE = ("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-sync")


def program(*names: str) -> str:
    """The path of the first of some programs.

    Raises:
        pytest.skip.Exception: none is there, and the environment does not say that all have to be.
    """
    found = next((path for name in names if (path := shutil.which(name))), None)
    if found is None and os.environ.get("MATHGEN_ALL_TOOLS"):
        pytest.fail(f"{' or '.join(names)} is missing")
    if found is None:
        pytest.skip(f"{' or '.join(names)} is not on this machine")
    return found


def running() -> Iterator[Browser]:
    """The browser, as long as a fixture needs it."""
    path = program("chromium", "chromium-browser", "google-chrome")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path=path, args=list(_OFFLINE))
        yield browser
        browser.close()
