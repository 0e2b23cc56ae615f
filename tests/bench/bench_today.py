"""All of a lesson from a cold start, ``mathgen today``: ``python tests/bench/bench_today.py [ROUNDS]``.

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
sheet, cards = (json.load(open(path))["pages"] for path in sys.argv[1:])
for kind, data in (("worksheet", sheet["worksheet"]), ("key", sheet["key"]), ("cards", cards["cards"]), ("key", cards["key"])):
    pdf_bytes(kind, data)
"""


def main(rounds: int) -> None:
    """Times both in turn and prints medians, their ratio and the sizes of the files."""
    with tempfile.TemporaryDirectory() as folder:
        byte_code, out = str(Path(folder) / "byte-code"), Path(folder) / "out"
        make = [sys.executable, "-m", "mathgen", "today", str(MAIN), "--grade", "4", "--out", str(out), "--force"]
        seconds(make, byte_code)
        floor = [sys.executable, "-c", _FLOOR, str(out / "grade4-key.json"), str(out / "grade4-cards-key.json")]
        seconds(floor, byte_code)
        taken = [(seconds(make, byte_code), seconds(floor, byte_code)) for _ in range(rounds)]
        for path in sorted(out.iterdir()):
            print(f"{path.name:24} {path.stat().st_size / 1000:8.0f} kB")
    made, least = (median(times) for times in zip(*taken, strict=True))
    print(f"today {made:.2f} s; floor (imports and compile) {least:.2f} s; ratio {made / least:.2f}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
