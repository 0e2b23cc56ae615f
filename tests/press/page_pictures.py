"""Pictures of the pick-a-card page for the samples; run as a module, it writes them into a folder.

python -m tests.press.page_pictures samples/pages/grade4-pick.html samples/pictures
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

from tests.browser import running

SIZES = (("phone", 390, "light"), ("screen", 1280, "dark"))


def write_pictures(page_file: Path, folder: Path) -> None:
    """A card with a figure for its hint, once a likely mistake was typed: on a phone, and on a screen in the dark."""
    for browser in running():
        for name, width, scheme in SIZES:
            page = browser.new_page(viewport={"width": width, "height": 640}, color_scheme=scheme)  # type: ignore[arg-type]
            page.goto(page_file.resolve().as_uri())
            cards = {card["number"]: card for card in json.loads(page.locator("#deck").text_content() or "")["cards"]}
            page.click("#pick")
            while not (card := cards[int(page.inner_text("#card-head").split()[1])])["figure"] or not card["slips"]:
                page.click("#back")
                page.click("#pick")
            page.fill("#typed", card["slips"][0]["value"])
            page.click("#check")
            page.click("#hint")
            page.evaluate("document.activeElement.blur()")
            page.screenshot(path=folder / f"pick-{name}.png", full_page=True)
            page.close()


if __name__ == "__main__":
    write_pictures(Path(sys.argv[1]), Path(sys.argv[2]))
