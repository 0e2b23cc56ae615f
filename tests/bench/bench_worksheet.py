"""How long one worksheet takes from a cold start, sheet and key: ``python tests/bench/bench_worksheet.py [ROUNDS]``.

The floor is the time to import sympy, pandas, jinja2 and typst in a fresh process. Rounds take turns, so that whatever else
the machine does falls on all of them alike; the median counts.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.bench.tables import MAIN, ROOT, large_table

FLOOR = [sys.executable, "-c", "import sympy, pandas, jinja2, typst"]


def seconds(command: list[str], byte_code: str) -> float:
    """Wall time of a command in a process of its own. Status 4 (made with a change) counts as made.

    Byte code is kept in a folder of its own, as an installed program has it, whatever the environment says.
    """
    environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    start = perf_counter()
    done = subprocess.run(command, cwd=ROOT, capture_output=True, check=False, env=environment | {"PYTHONPYCACHEPREFIX": byte_code})
    taken = perf_counter() - start
    if done.returncode not in (0, 4):
        sys.exit(f"{' '.join(command)} ended with {done.returncode}:\n{done.stderr.decode()}")
    return taken


def main(rounds: int) -> None:
    """Times all commands in turn and prints medians and ratios."""
    with tempfile.TemporaryDirectory() as folder:
        byte_code = str(Path(folder) / "byte-code")
        large = Path(folder) / "large.csv"
        large.write_text(large_table(), encoding="utf-8")
        out = ["--grade", "4", "--out", folder, "--force"]
        commands = {
            "floor (imports)": FLOOR,
            "worksheet, main sample": [sys.executable, "-m", "mathgen", "worksheet", str(MAIN), *out],
            "worksheet, 40 x 6 x 12": [sys.executable, "-m", "mathgen", "worksheet", str(large), *out],
        }
        taken: dict[str, list[float]] = {name: [] for name in commands}
        for command in commands.values():  # files into memory, byte code written
            seconds(command, byte_code)
        for _ in range(rounds):
            for name, command in commands.items():
                taken[name].append(seconds(command, byte_code))
    for name, times in taken.items():
        print(f"{name:24} median {median(times):.3f} s   fastest {min(times):.3f} s   of {len(times)}")
    floor, small, big = (median(times) for times in taken.values())
    print(f"worksheet / floor        {small / floor:.2f}   (wanted: at most 1.5)")
    print(f"large / main             {big / small:.2f}   (wanted: at most 1.5)")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 9)
