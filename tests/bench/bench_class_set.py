"""A class set, a sheet for each of 30 groups with its key, from a cold start: ``python tests/bench/bench_class_set.py [ROUNDS]``.

The floor is the time to import sympy, pandas, jinja2 and typst in a fresh process and to compile the very pages that come out.
"""

from __future__ import annotations

import json
import sys
import tempfile
from pathlib import Path
from statistics import median

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.bench.bench_worksheet import seconds
from tests.bench.tables import large_table

_FLOOR = """
import json, sys
import sympy, pandas, jinja2, typst
from mathgen.press.pdf import pdf_bytes
pages = json.load(open(sys.argv[1]))["pages"]
pdf_bytes("worksheet", pages["worksheet"])
pdf_bytes("key", pages["key"])
"""


def main(rounds: int) -> None:
    """Times both in turn and prints medians, their ratio and the sizes of the files."""
    with tempfile.TemporaryDirectory() as folder:
        byte_code, table, out = str(Path(folder) / "byte-code"), Path(folder) / "class.csv", Path(folder) / "out"
        table.write_text(large_table(30, 3, 3), encoding="utf-8")
        make = [sys.executable, "-m", "mathgen", "worksheet", str(table), "--grade", "4", "--each-group", "--out", str(out), "--force"]
        seconds(make, byte_code)
        floor = [sys.executable, "-c", _FLOOR, str(out / "grade4-key.json")]
        seconds(floor, byte_code)
        taken = [(seconds(make, byte_code), seconds(floor, byte_code)) for _ in range(rounds)]
        for path in sorted(out.iterdir()):
            print(f"{path.name:24} {path.stat().st_size / 1000:8.0f} kB")
        forms = len(json.loads((out / "grade4-key.json").read_text(encoding="utf-8"))["forms"])
    made, least = (median(times) for times in zip(*taken, strict=True))
    print(f"{forms} groups, sheets and key {made:.2f} s; floor (imports and compile) {least:.2f} s; ratio {made / least:.2f}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
