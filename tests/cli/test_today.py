"""``mathgen today``: all files of a lesson, and one PDF of them in print order."""

from __future__ import annotations

import io
import json
import re
from pathlib import Path

import pytest
from click.testing import CliRunner
from pypdf import PdfReader

from mathgen.bank.desk import Desk
from mathgen.bank.served import served_skills
from mathgen.cli import main
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from tests.audit.banks import sample, sample_problems

SAMPLE = str(Path(__file__).parents[2] / "samples" / "main.csv")


def texts(content: bytes) -> list[str]:
    return [page.extract_text() for page in PdfReader(io.BytesIO(content)).pages]


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("today")
    done = CliRunner().invoke(main, ["today", SAMPLE, "--grade", "4", "--out", str(out)])
    assert done.exit_code in (0, 4), done.output
    assert "6 groups" in done.output
    assert "grade 4: this table has problems for" in done.output
    assert "no spaces between pins" in done.output
    assert "pages 1-2 worksheet, 3-" in done.output
    assert len(done.output.splitlines()) <= 24  # one screen
    return out


def test_a_table_with_many_guesses_still_leaves_all_on_one_screen(tmp_path: Path) -> None:
    """Nothing that was guessed is lost: what has no room is counted, and read tells it."""
    groups = ("Red", "Blue", "Gold", "Green", "White", "Black", "Purple", "Orange")  # each is noted, for it is called like a color
    rows = [f"{group},{trial},{(at + trial) % 5},{(at * trial) % 4}" for at, group in enumerate(groups) for trial in (1, 2)]
    table = "\n".join(["Pins knocked down", "Group,Trial,Red (4),Blue (3)", *rows])
    told = CliRunner().invoke(main, ["read", "-"], input=table).output
    done = CliRunner().invoke(main, ["today", "-", "--grade", "3", "--cards", "4", "--out", str(tmp_path)], input=table)
    assert done.exit_code in (0, 4), done.output
    assert f"and {told.count('  - ') - 7} more, which mathgen read tells" in done.output
    assert len(done.output.splitlines()) <= 24


def test_the_files_are_named_on_standard_output_and_nothing_else_is(tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["today", SAMPLE, "--grades", "2,3", "--out", str(tmp_path)])
    assert done.exit_code in (0, 4), done.output
    assert [Path(line).name for line in done.stdout.splitlines()] == [
        f"grade{grade}-{name}" for grade in (2, 3) for name in ("print.pdf", "pick.html")
    ]
    assert len(done.output.splitlines()) <= 24


def test_the_print_file_has_a_bookmark_for_each_part_on_the_page_that_is_told(folder: Path) -> None:
    reader = PdfReader(io.BytesIO((folder / "grade4-print.pdf").read_bytes()))
    marks = [(mark.title, reader.get_destination_page_number(mark)) for mark in reader.outline]  # type: ignore[union-attr, arg-type]
    assert [title for title, _ in marks] == ["worksheet", "cards", "answer key", "key of the cards"]
    heads = ("Name", "1", "Answer key: Knocking down pins", "Answer key: Knocking down pins, cards")
    assert all((reader.pages[page or 0].extract_text()).startswith(head) for (_, page), head in zip(marks, heads, strict=True))


def test_all_files_are_there(folder: Path) -> None:
    names = ("worksheet.pdf", "key.pdf", "key.json", "cards.pdf", "cards-key.pdf", "cards-key.json", "pick.html", "print.pdf")
    assert sorted(path.name for path in folder.iterdir()) == sorted(f"grade4-{name}" for name in names)


def test_the_print_file_has_every_page_in_order_and_each_part_starts_on_a_sheet_of_its_own(folder: Path) -> None:
    whole = texts((folder / "grade4-print.pdf").read_bytes())
    expected: list[str] = []
    for name in ("worksheet", "cards", "key", "cards-key"):
        pages = texts((folder / f"grade4-{name}.pdf").read_bytes())
        if name == "cards":
            pages = [side for page in pages for side in ([page, ""] if is_cut_or_shared(page) else [page])]
        expected += pages + [""] * (len(pages) % 2)
    assert whole == expected
    # A worksheet's sides, and the two of a starter card, share a leaf; no two pages of cards do.
    backs = dict(zip(whole[::2], whole[1::2], strict=True))
    assert [back for front, back in backs.items() if is_cut_or_shared(front)] == [""] * (2 + any("Results page" in one for one in whole))
    assert next("My working" in back for front, back in backs.items() if "My problem" in front)


def is_cut_or_shared(page: str) -> bool:
    """Whether a page has cards with problems, or the results for them: nothing may be printed behind it."""
    mark = re.search(r"^[0-9A-Z]{4} [A-Z]{2,3}$", page, re.MULTILINE)
    return mark is not None or "Results page" in page


def test_one_key_serves_the_cards_on_paper_and_on_the_screen(folder: Path) -> None:
    """Number by number the same problem and answer, under the same mark."""
    kept = json.loads((folder / "grade4-cards-key.json").read_text(encoding="utf-8"))
    page = (folder / "grade4-pick.html").read_text(encoding="utf-8")
    deck = json.loads(page.partition('id="deck">')[2].partition("</script>")[0])
    assert deck["mark"] == kept["mark"]
    on_screen = [(card["number"], card["parts"], card["answer"]) for card in deck["cards"]]
    assert on_screen == [(card["number"], card["parts"], card["answer"]) for card in kept["pages"]["cards"]["cards"]]


def test_the_same_command_gives_the_same_bytes(folder: Path, tmp_path: Path) -> None:
    CliRunner().invoke(main, ["today", SAMPLE, "--grade", "4", "--out", str(tmp_path)])
    assert {path.name: path.read_bytes() for path in tmp_path.iterdir()} == {path.name: path.read_bytes() for path in folder.iterdir()}


def test_nothing_is_replaced_without_force(folder: Path) -> None:
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    done = CliRunner().invoke(main, ["today", SAMPLE, "--grade", "3,4", "--out", str(folder)])
    assert done.exit_code == 1
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before


@pytest.mark.parametrize("grade", [2, 4, 7])
def test_what_is_said_to_be_served_is_in_the_bank_and_the_rest_is_not(grade: int) -> None:
    found = served_skills(Desk(sample("main"), scenario("ramp")), load("ccss"), grade)
    in_bank = {problem.skill for problem in sample_problems("main") if problem.grade == grade}
    assert set(found.served) == in_bank
    assert not {skill for skill, _ in found.missing} & in_bank


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_the_cautions_are_not_alone_on_the_last_page_of_a_key(paper: str, tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["today", SAMPLE, "--grades", "3,4", "--large-print", "--paper", paper, "--out", str(tmp_path)])
    assert done.exit_code in (0, 4), done.output
    for path in sorted(tmp_path.glob("*key.pdf")):
        (page,) = [text for text in texts(path.read_bytes()) if "Before anything rolls" in text]
        assert "What is " in page, path.name


def test_no_card_asks_what_the_worksheet_asks(folder: Path) -> None:
    sheet, cards = (json.loads((folder / f"grade4-{name}.json").read_text(encoding="utf-8")) for name in ("key", "cards-key"))
    on_sheet = {problem["id"] for form in sheet["forms"] for problem in form["problems"]}
    on_cards = {card["id"] for card in cards["cards"]}
    assert len(on_cards) == 12
    assert on_sheet
    assert not on_sheet & on_cards
