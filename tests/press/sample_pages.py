"""Sample pages for the next try, every group, tomorrow, prices and large print, with a picture of each for README; run as a module.

    python -m tests.press.sample_pages samples

The pages of a PDF become pictures with Debian's poppler-utils; the typesetter puts them side by side.
"""

from __future__ import annotations

import shlex
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import NamedTuple

import typst
from click.testing import CliRunner

from mathgen.cli import main
from tests.browser import program

_GAP = 8  # dots between the pages of a picture
_FINER = 3  # pages are set this many times finer than they are shown, so that thin lines stay thin


class Sample(NamedTuple):
    """A command, the file of it that is kept, and the pages of it that a picture shows side by side."""

    command: str
    file: str
    kept: str
    picture: str
    pages: tuple[int, ...]
    across: int
    width: int  # of a page in the picture, in dots


SAMPLES = (
    Sample(
        "record --groups Owls,Herons,Finches,Wrens,Kites,Swifts --set-up red=4,blue=3,gold=5",
        "record.pdf", "record.pdf", "record.png", (1, 2, 3), 3, 300,
    ),
    Sample(
        "worksheet {samples}/main.csv --grade 3 --each-group",
        "grade3-worksheet.pdf", "grade3-each-group.pdf", "each-group.png", (1, 3, 5), 3, 300,
    ),
    Sample(
        "today {samples}/main.csv --grade 4",
        "grade4-print.pdf", "grade4-print.pdf", "today.png", tuple(range(1, 13)), 6, 190,
    ),
    Sample(
        "worksheet {samples}/prices.csv --grade 4",
        "grade4-worksheet.pdf", "prices-grade4.pdf", "prices.png", (1, 2), 2, 300,
    ),
    Sample(
        "worksheet {samples}/main.csv --grade 4 --large-print",
        "grade4-worksheet.pdf", "grade4-large-print.pdf", "large-print.png", (1, 2), 2, 300,
    ),
)  # fmt: skip


def write_samples(samples: Path) -> None:
    """Makes each sample anew: its pages in ``pages``, their picture in ``pictures``."""
    for sample in SAMPLES:
        with tempfile.TemporaryDirectory() as folder:
            command = [part.format(samples=samples) for part in shlex.split(sample.command)]
            done = CliRunner().invoke(main, [*command, "--out", folder])
            if done.exit_code not in (0, 4):
                raise SystemExit(f"{sample.command}: {done.output}")
            kept = samples / "pages" / sample.kept
            shutil.copy(Path(folder) / sample.file, kept)
        picture = side_by_side(kept, sample.pages, sample.across, sample.width)
        (samples / "pictures" / sample.picture).write_bytes(picture)


def side_by_side(pdf: Path, pages: tuple[int, ...], across: int, width: int) -> bytes:
    """Pages of a PDF as one picture.

    Args:
        pdf: the document.
        pages: their numbers from 1.
        across: how many stand in a row.
        width: of each, in dots.
    """
    with tempfile.TemporaryDirectory() as folder:
        top = Path(folder)
        for page in pages:
            size = ["-scale-to-x", str(_FINER * width), "-scale-to-y", "-1"]
            span = ["-f", str(page), "-l", str(page), "-singlefile"]
            subprocess.run([program("pdftoppm"), "-png", "-gray", *size, *span, str(pdf), str(top / f"page{page}")], check=True)
        # A point stands for a dot.
        shown = "".join(f'rect(inset: 0pt, stroke: 0.5pt + gray, image("page{page}.png", width: {width}pt)),' for page in pages)
        (top / "sheet.typ").write_text(
            f"#set page(width: auto, height: auto, margin: {_GAP}pt)\n#grid(columns: {across}, gutter: {_GAP}pt, {shown})\n",
            encoding="utf-8",
        )
        made = typst.compile(top / "sheet.typ", format="png", ppi=72)
        assert isinstance(made, bytes), "one page makes one picture"
        return made


if __name__ == "__main__":
    write_samples(Path(sys.argv[1]))
