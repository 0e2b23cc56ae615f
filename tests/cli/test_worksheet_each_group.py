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


def test_the_code_on_a_group_s_page_prints_the_class_set_again_in_as_many_copies_as_asked(tmp_path: Path) -> None:
    made(tmp_path, "--copies", "2")
    code = json.loads((tmp_path / "grade4-key.json").read_text(encoding="utf-8"))["code"]
    page = next(text for text in pages(tmp_path / "grade4-worksheet.pdf") if "Page 1 of" in text)
    assert code in page.replace("-", "").replace(" ", "")
    for copies, again in (("2", tmp_path / "two"), (None, tmp_path / "one")):
        wish = ["--copies", copies] if copies else []
        done = CliRunner().invoke(main, ["reprint", code, SAMPLE, *wish, "--out", str(again)])
        assert done.exit_code == 0, done.output
        assert (again / "grade4-key.pdf").read_bytes() == (tmp_path / "grade4-key.pdf").read_bytes()
    assert (tmp_path / "two" / "grade4-worksheet.pdf").read_bytes() == (tmp_path / "grade4-worksheet.pdf").read_bytes()
    assert 2 * len(pages(tmp_path / "one" / "grade4-worksheet.pdf")) == len(pages(tmp_path / "grade4-worksheet.pdf"))


def test_a_key_file_prints_another_number_of_copies(tmp_path: Path) -> None:
    made(tmp_path)
    done = CliRunner().invoke(main, ["reprint", str(tmp_path / "grade4-key.json"), "--copies", "3", "--out", str(tmp_path / "again")])
    assert done.exit_code == 0, done.output
    assert len(pages(tmp_path / "again" / "grade4-worksheet.pdf")) == 3 * len(pages(tmp_path / "grade4-worksheet.pdf"))


def test_a_code_that_cannot_hold_its_plan_says_what_can(tmp_path: Path) -> None:
    made(tmp_path, "--topic", "fractions")
    code = json.loads((tmp_path / "grade4-key.json").read_text(encoding="utf-8"))["code"]
    done = CliRunner().invoke(main, ["reprint", code, SAMPLE, "--out", str(tmp_path / "again")])
    assert done.exit_code == 1
    assert "Its key file has: topics" in done.output
    assert "mathgen reprint grade...-key.json" in done.output
