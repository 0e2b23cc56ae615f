"""``mathgen worksheet --each-group --copies``, from the command line to the pages."""

from __future__ import annotations

import io
import json
from pathlib import Path

from click.testing import CliRunner
from pypdf import PdfReader

from mathgen.cli import main

SAMPLE = str(Path(__file__).parents[2] / "samples" / "main.csv")
GROUPS = ("Owls", "Herons", "Finches", "Wrens", "Kites", "Swifts")


def pages(path: Path) -> list[str]:
    return [page.extract_text() for page in PdfReader(io.BytesIO(path.read_bytes())).pages]


def made(tmp_path: Path, *wishes: str) -> tuple[int, str]:
    done = CliRunner().invoke(main, ["worksheet", SAMPLE, "--grade", "4", "--each-group", *wishes, "--out", str(tmp_path)])
    return done.exit_code, done.output


def test_every_group_s_sheet_bears_its_name_in_table_order_and_the_key_has_the_same_order(tmp_path: Path) -> None:
    code, said = made(tmp_path)
    assert code in (0, 4), said
    firsts = [text for text in pages(tmp_path / "grade4-worksheet.pdf") if "Page 1 of" in text]
    assert len(firsts) == len(GROUPS)
    assert all(group in text.split("I can")[0] for group, text in zip(GROUPS, firsts, strict=True))
    key = "\n".join(pages(tmp_path / "grade4-key.pdf"))
    heads = [key.index(f"Worked answers, {group}") for group in GROUPS]
    assert heads == sorted(heads)
    assert (code == 4) == bool(json.loads((tmp_path / "grade4-key.json").read_text(encoding="utf-8"))["changes"])


def test_copies_follow_one_another_in_print_order(tmp_path: Path) -> None:
    made(tmp_path, "--copies", "2")
    firsts = [text.split("I can")[0] for text in pages(tmp_path / "grade4-worksheet.pdf") if "Page 1 of" in text]
    assert [next(group for group in GROUPS if group in text) for text in firsts] == [group for group in GROUPS for _ in range(2)]


def test_a_class_set_prints_again_from_its_key_file(tmp_path: Path) -> None:
    made(tmp_path, "--copies", "2")
    again = tmp_path / "again"
    done = CliRunner().invoke(main, ["reprint", str(tmp_path / "grade4-key.json"), "--out", str(again)])
    assert done.exit_code == 0, done.output
    assert (again / "grade4-worksheet.pdf").read_bytes() == (tmp_path / "grade4-worksheet.pdf").read_bytes()
    assert (again / "grade4-key.pdf").read_bytes() == (tmp_path / "grade4-key.pdf").read_bytes()
