"""Memory and time of a bank of a large table, grades 2 to 7: ``python tests/bench/bench_bank.py [ROUNDS]``.

Each bank is made in a process of its own, whose highest resident memory is asked of the system. The floor is a process that
only imports sympy, pandas, jinja2 and typst.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import NamedTuple

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.bench.tables import MAIN, ROOT, large_table


class Run(NamedTuple):
    """One process: wall time, and its highest resident memory."""

    seconds: float
    mebibytes: float


def run(command: list[str]) -> Run:
    """A command in a process of its own, waited for so that its own memory is known and no other's."""
    start = perf_counter()
    child = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(child.pid, 0)
    taken = perf_counter() - start
    child.returncode = os.waitstatus_to_exitcode(status)
    if child.returncode != 0:
        sys.exit(f"{' '.join(command)} ended with {child.returncode}")
    return Run(taken, used.ru_maxrss / 1024)  # Linux counts in kibibytes


def main(rounds: int) -> None:
    """Prints memory, time and problems of the floor, the main sample's bank and the large table's."""
    with tempfile.TemporaryDirectory() as folder:
        large, out = Path(folder) / "large.csv", Path(folder) / "bank.jsonl"
        large.write_text(large_table(), encoding="utf-8")
        bank = [sys.executable, "-m", "mathgen", "bank"]
        wishes = ["--grades", "2-7", "--out", str(out), "--force"]
        commands = {
            "floor (imports)": [sys.executable, "-c", "import sympy, pandas, jinja2, typst"],
            "bank, main sample": [*bank, str(MAIN), *wishes],
            "bank, 40 x 6 x 12": [*bank, str(large), *wishes],
        }
        runs: dict[str, list[Run]] = {name: [] for name in commands}
        kept: dict[str, int] = {}
        for _ in range(rounds):
            for name, command in commands.items():
                runs[name].append(run(command))
                if out.exists():
                    with out.open(encoding="utf-8") as lines:
                        kept[name] = sum(1 for _ in lines)
                    out.unlink()
    floor = median(one.seconds for one in runs["floor (imports)"])
    for name, all_runs in runs.items():
        seconds, memory = median(one.seconds for one in all_runs), max(one.mebibytes for one in all_runs)
        line = f"{name:20} median {seconds:6.2f} s   peak {memory:5.0f} MiB"
        if name in kept:
            line += f"   {kept[name]} problems, {(seconds - floor) / kept[name] * 1e6:.0f} us each beyond the imports"
        print(line)
    peak = max(one.mebibytes for one in runs["bank, 40 x 6 x 12"])
    print(f"large bank's peak / 700 MiB   {peak / 700:.2f}   (wanted: below 1)")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3)
