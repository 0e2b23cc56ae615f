"""A deck of 24 cards with its key from a cold start, ``mathgen cards``: ``python tests/bench/bench_cards.py [ROUNDS]``.

The floor is the time to import sympy, pandas, jinja2 and typst in a fresh process and to compile the very pages that come out.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path
from statistics import median

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.bench.bench_worksheet import seconds
from tests.bench.tables import MAIN

_FLOOR = """
import json, sys
import sympy, pandas, jinja2, typst
from mathgen.press.pdf import pdf_bytes
pages = json.load(open(sys.argv[1]))["pages"]
pdf_bytes("cards", pages["cards"])
pdf_bytes("key", pages["key"])
"""
_DECKS = {
    "6 a page": [],
    "8 a page, answers": ["--per-page", "8", "--backs", "answers"],
    "large print": ["--per-page", "4", "--large-print"],
}


def main(rounds: int) -> None:
    """Times each deck and its floor in turn and prints medians, their ratio and the sizes of the files."""
    with tempfile.TemporaryDirectory() as folder:
        byte_code = str(Path(folder) / "byte-code")
        for name, options in _DECKS.items():
            out = Path(folder) / name
            make = [sys.executable, "-m", "mathgen", "cards", str(MAIN), "--grade", "4", *options, "--out", str(out), "--force"]
            seconds(make, byte_code)
            floor = [sys.executable, "-c", _FLOOR, str(out / "grade4-cards-key.json")]
            seconds(floor, byte_code)
            taken = [(seconds(make, byte_code), seconds(floor, byte_code)) for _ in range(rounds)]
            made, least = (median(times) for times in zip(*taken, strict=True))
            sizes = ", ".join(f"{path.name} {path.stat().st_size / 1000:.0f} kB" for path in sorted(out.iterdir()))
            print(f"{name:18} {made:.2f} s; floor (imports and compile) {least:.2f} s; ratio {made / least:.2f}; {sizes}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
