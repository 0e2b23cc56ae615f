"""Cards as they leave the printer: measured on the pages themselves."""

from __future__ import annotations

import itertools
import json
import os
import re
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import pdfua
import pytest

from mathgen.bank.deck_plan import DeckPlan
from mathgen.press.card_files import CardFiles, card_files
from mathgen.sheets.cards import CardLook
from mathgen.trials.options import ReadOptions
from mathgen.trials.reading import read_table
from mathgen.trials.table import Row, TrialTable
from tests.press.marks import Box, Mark, Page, around, pages
from tests.press.pdf_structure import elements, fonts, lines, reader, text

ROOT = Path(__file__).parents[2]
DRIFT = 5  # millimeters by which a copier may shift a side
OFF_CENTER = 1
SIX = CardLook(6)


@cache
def main() -> TrialTable:
    return read_table(str(ROOT / "samples" / "main.csv"), ReadOptions()).table


@cache
def made(grades: tuple[int, ...] = (4,), count: int = 24, look: CardLook = SIX) -> CardFiles:
    return card_files(main(), DeckPlan(grades, count), look, "ramp")


class Pack(NamedTuple):
    """The pupils' pages of a deck, and what its key file says."""

    files: CardFiles
    pages: list[Page]
    kept: dict[str, Any]

    @property
    def per_page(self) -> int:
        return int(self.kept["look"]["per_page"])

    @property
    def fronts(self) -> list[int]:
        """Numbers of the pages with fronts, from 0."""
        step = 2 if self.kept["look"]["backs"] == "answers" else 1
        return list(range(0, -(-len(self.kept["cards"]) // self.per_page) * step, step))

    @property
    def starter(self) -> int:
        return self.fronts[-1] + (2 if self.kept["look"]["backs"] == "answers" else 1)


def named(files: CardFiles, ending: str) -> bytes:
    return next(content for name, content in files.contents.items() if name.endswith(ending))


@cache
def pack(grades: tuple[int, ...] = (4,), count: int = 24, look: CardLook = SIX) -> Pack:
    files = made(grades, count, look)
    return Pack(files, pages(named(files, "-cards.pdf")), json.loads(named(files, "-cards-key.json")))


def cut_lines(page: Page) -> list[Box]:
    """Lines across all cards."""
    shapes = [mark.box for mark in page.marks if not mark.words]
    return [box for box in shapes if max(box.wide, box.tall) > 150 and min(box.wide, box.tall) < 1]


def cells(page: Page) -> list[Box]:
    """The cards of a page, row by row, as its cut lines part them."""
    upright = sorted(box.center[0] for box in cut_lines(page) if box.tall > box.wide)
    level = sorted(box.center[1] for box in cut_lines(page) if box.wide > box.tall)
    return [Box(left, top, right, bottom) for top, bottom in itertools.pairwise(level) for left, right in itertools.pairwise(upright)]


def behind(box: Box, page: Page, duplex: str) -> Box:
    """Where a rectangle of the front lies on the back once the paper is turned over its long or short edge."""
    if duplex == "long":
        return Box(page.width - box.right, box.top, page.width - box.left, box.bottom)
    return Box(box.left, page.height - box.bottom, box.right, page.height - box.top)


def marks_on(page: Page, cell: Box) -> list[Mark]:
    """Marks whose middle lies in a cell, but for cut lines."""
    cuts = cut_lines(page)
    return [
        mark
        for mark in page.marks
        if mark.box not in cuts and cell.left <= mark.box.center[0] < cell.right and cell.top <= mark.box.center[1] < cell.bottom
    ]


def all_words(page: Page) -> str:
    return page.text_in(Box(0, 0, page.width, page.height))


def signs(words: str) -> list[str]:
    """The signs of some words in any order, for a fraction's numbers are read in any order."""
    return sorted(re.sub(r"[\s/\u200b]", "", words))


LOOKS = [
    CardLook(per_page, "answers", duplex, paper, large)
    for per_page, (duplex, paper, large) in itertools.product(
        (4, 6, 8), (("long", "letter", False), ("short", "a4", False), ("long", "a4", True), ("short", "letter", True))
    )
]
GRADES: tuple[tuple[int, ...], ...] = ((1,), (2,), (4,), (5,), (7,), (3, 4, 5))
BLANK = [CardLook(per_page, paper=paper) for per_page, paper in itertools.product((4, 6, 8), ("letter", "a4"))]
every_look = pytest.mark.parametrize("look", LOOKS, ids=str)
LARGE = CardLook(4, "answers", large_print=True)
every_blank = pytest.mark.parametrize(("look", "grades"), list(zip(BLANK, GRADES, strict=True)), ids=str)


@every_look
def test_each_answer_lies_centered_behind_its_card(look: CardLook) -> None:
    """Within 1 mm, with an odd last page: cut lines of the front, turned over, against the ink on the back."""
    found = pack((4,), 2 * look.per_page - 1, look)
    answers = {card["number"]: card["answer"]["display"] for card in found.kept["cards"]}
    number = 0
    for at in found.fronts:
        front, back = found.pages[at], found.pages[at + 1]
        assert not cut_lines(back)
        for cell in cells(front):
            number += 1
            mirrored = behind(cell, front, look.duplex)
            on_back = marks_on(back, mirrored)
            if number not in answers:
                assert not on_back
                assert not marks_on(front, cell)
                continue
            assert front.text_in(cell).split()[0] == str(number)
            assert signs(back.text_in(mirrored)) == signs(f"Card {number} {answers[number]}")
            (x, y), (middle, height) = around(mark.box for mark in on_back).center, mirrored.center
            assert abs(x - middle) <= OFF_CENTER
            assert abs(y - height) <= OFF_CENTER
    assert number >= len(answers)


@every_look
def test_a_side_that_drifts_by_five_millimeters_stays_on_its_cards(look: CardLook) -> None:
    found = pack((4,), 2 * look.per_page - 1, look)
    for at in [*found.fronts, found.starter]:
        front, back = found.pages[at], found.pages[at + 1]
        for side, places in ((front, cells(front)), (back, [behind(cell, front, look.duplex) for cell in cells(front)])):
            cuts = cut_lines(side)
            for mark in side.marks:
                assert mark.box in cuts or any(cell.holds(mark.box, DRIFT) for cell in places), mark


@every_blank
def test_blank_backs_are_no_pages_and_fronts_keep_off_the_knife(look: CardLook, grades: tuple[int, ...]) -> None:
    found = pack(grades, 24, look)
    assert len(found.fronts) == -(-len(found.kept["cards"]) // found.per_page)
    for at in found.fronts:
        page = found.pages[at]
        cuts = cut_lines(page)
        assert len(cells(page)) == found.per_page
        assert all(mark.box in cuts or any(cell.holds(mark.box, DRIFT) for cell in cells(page)) for mark in page.marks)
    assert found.files.without_back[: len(found.fronts)] == tuple(at + 1 for at in found.fronts)


@every_blank
def test_cards_of_a_page_are_of_one_size(look: CardLook, grades: tuple[int, ...]) -> None:
    page = pack(grades, 24, look).pages[0]
    sizes = {(round(cell.wide, 1), round(cell.tall, 1)) for cell in cells(page)}
    assert len(sizes) == 1
    whole = around(cells(page))
    assert abs(whole.center[0] - page.width / 2) < 0.1
    assert abs(whole.center[1] - page.height / 2) < 0.1


@pytest.mark.parametrize(
    ("look", "grades", "count"),
    [*((look, grades, 24) for look, grades in zip(BLANK, GRADES, strict=True)), *((look, (4,), 2 * look.per_page - 1) for look in LOOKS)],
    ids=str,
)
def test_no_page_prints_where_school_printers_do_not(look: CardLook, grades: tuple[int, ...], count: int) -> None:
    """12 mm at every edge, which all common printers can print."""
    for page in pack(grades, count, look).pages:
        assert all(Box(0, 0, page.width, page.height).holds(mark.box, 12) for mark in page.marks)


@pytest.mark.parametrize(
    ("look", "grades"),
    [*zip(BLANK, GRADES, strict=True), *((CardLook(6), one) for one in GRADES), *((LARGE, one) for one in GRADES), (CardLook(4), (3,))],
    ids=str,
)
def test_no_words_are_printed_over_others(look: CardLook, grades: tuple[int, ...]) -> None:
    for page in pack(grades, 24, look).pages:
        boxes = [mark.box for mark in page.marks if mark.words]
        for one, other in itertools.combinations(boxes, 2):
            across = min(one.right, other.right) - max(one.left, other.left)
            down = min(one.bottom, other.bottom) - max(one.top, other.top)
            assert across < 0.3 or down < 0.3, (page.text_in(one), page.text_in(other))
        for one, other in itertools.product(boxes, [mark.box for mark in page.marks if not mark.words]):
            across = min(one.right, other.right) - max(one.left, other.left)
            down = min(one.bottom, other.bottom) - max(one.top, other.top)
            assert across < 0.3 or down < 0.3 or other.holds(one, -0.3), (page.text_in(one), one, other)


@every_blank
def test_every_card_holds_its_number_its_code_and_all_its_words(look: CardLook, grades: tuple[int, ...]) -> None:
    found = pack(grades, 24, look)
    cards = iter(found.kept["cards"])
    for at in found.fronts:
        page = found.pages[at]
        for cell in cells(page):
            card = next(cards, None)
            if card is None:
                break
            printed = page.text_in(cell)
            assert printed.startswith(f"{card['number']} {card['code']} ")
            assert not set(re.findall(r"[A-Za-z]+", card["text"])) - set(re.findall(r"[A-Za-z]+", printed))
    assert next(cards, None) is None


@every_blank
def test_codes_are_small_and_nothing_else_is(look: CardLook, grades: tuple[int, ...]) -> None:
    found = pack(grades, 24, look)
    codes = {sign for card in found.kept["cards"] for sign in card["code"].split()}
    document = reader(named(found.files, "-cards.pdf"))
    for at in found.fronts:
        for *_, size, words in lines(document.pages[at]):
            if set(words.split()) <= codes:
                assert 8 <= size <= 9
            else:
                assert size > (8.5 if words.startswith("(") else 8.9), (size, words)


@pytest.mark.parametrize("grades", GRADES, ids=str)
def test_pupils_pages_name_no_grade_and_no_level(grades: tuple[int, ...]) -> None:
    for look in (CardLook(6), LARGE):
        content = named(made(grades, 24, look), "-cards.pdf")
        title = str(reader(content).metadata.title)  # type: ignore[union-attr]
        assert not re.search(r"\b(grades?|levels?|support|challenge|years?|easy|hard|stars?)\b", f"{title} {text(content)}", re.IGNORECASE)


@pytest.mark.parametrize("kind", ["-cards.pdf", "-cards-key.pdf"])
@pytest.mark.parametrize("grades", GRADES, ids=str)
def test_large_print_is_eighteen_points_everywhere(grades: tuple[int, ...], kind: str) -> None:
    """American Printing House guidelines: 18 points at least."""
    document = reader(named(made(grades, 24, LARGE), kind))
    assert min(size for page in document.pages for *_, size, _ in lines(page)) >= 18


@pytest.mark.parametrize("look", [CardLook(6), LARGE, CardLook(8, "answers", paper="a4")], ids=str)
def test_starter_cards_leave_all_to_the_pupil(look: CardLook) -> None:
    """Rules at least 8 mm apart for a problem, and behind it for working and answer; no number is printed."""
    found = pack((4,), 24, look)
    front, back = found.pages[found.starter], found.pages[found.starter + 1]
    assert all_words(front).count("My problem") == found.per_page
    assert all_words(back).count("My working") == all_words(back).count("Answer:") == found.per_page
    assert not re.search(r"\d", all_words(front) + all_words(back))
    for side, least in ((front, 4), (back, 4)):
        for cell in cells(front):
            rules = sorted(mark.box.top for mark in marks_on(side, cell) if not mark.words)
            assert len(rules) >= least
            assert min(below - above for above, below in itertools.pairwise(rules)) >= 8


@pytest.mark.parametrize("grades", GRADES, ids=str)
def test_the_grid_has_a_box_for_each_card_and_the_lines_of_the_cards(grades: tuple[int, ...]) -> None:
    found = pack(grades)
    grid = found.pages[-1]
    boxes = [mark.box for mark in grid.marks if not mark.words and mark.box.tall > 14]
    numbers = sorted(int(number) for box in boxes for number in re.findall(r"\d+", grid.text_in(box)))
    assert numbers == list(range(1, len(found.kept["cards"]) + 1))
    assert all(box.wide > 40 for box in boxes)
    printed = text(named(found.files, "-cards.pdf"))
    assert found.kept["sets"]
    for one in found.kept["sets"]:
        assert printed.count(f"Answers {one['first']} to {one['last']} add up to") == 2  # on the last card of the set, and on the grid


def test_cards_without_room_for_their_table_are_those_that_the_results_page_names() -> None:
    found = pack((4,), 32, CardLook(8))
    away = [card["number"] for card in found.kept["pages"]["cards"]["cards"] if card["elsewhere"]]
    assert away
    (page,) = [words for words in map(all_words, found.pages) if words.startswith("Results page")]
    told = re.search(r"For cards? ([\d, and]+)\.", page)
    assert told is not None
    assert [int(number) for number in re.findall(r"\d+", told[1])] == away
    on_cards = [(number, cell) for number, cell in enumerate((place for at in found.fronts for place in cells(found.pages[at])), 1)]
    asked = [number for number, cell in on_cards if "on the results page" in found.pages[(number - 1) // 8].text_in(cell)]
    assert asked == away


@pytest.mark.parametrize("look", [CardLook(6), LARGE, CardLook(8, "answers", paper="a4")], ids=str)
def test_pages_are_light_in_ink_and_gray(look: CardLook) -> None:
    """No page has more than 8 of 100 parts black, and none has any color."""
    for page in pack((4,), 24, look).pages:
        dots = page.pixels()
        assert (dots.max(axis=2) == dots.min(axis=2)).all()
        assert 1 - dots.mean() / 255 < 0.08


@pytest.mark.parametrize("ending", ["-cards.pdf", "-cards-key.pdf"])
@pytest.mark.parametrize(
    ("grades", "look"),
    [((4,), CardLook(6)), ((2,), CardLook(8, paper="a4")), ((3, 4, 5), LARGE), ((7,), CardLook(6))],
    ids=str,
)
def test_the_machine_checkable_part_of_pdf_ua_1_holds(grades: tuple[int, ...], look: CardLook, ending: str, tmp_path: Path) -> None:
    """ISO 14289-1 as far as the checker ``pdfua`` goes; clauses 7.3 (figures), 7.4 (headings) and fonts besides."""
    path = tmp_path / "made.pdf"
    path.write_bytes(named(made(grades, 24, look), ending))
    report = pdfua.validate(str(path))
    assert report.findings == ()
    assert {outcome.rule_id for outcome in report.skipped} <= {"UA-14-001"}
    document = reader(path.read_bytes())
    found = elements(document)
    levels = [int(name[2:]) for name, _ in found if re.fullmatch(r"/H[1-6]", name)]
    assert levels[0] == 1
    assert all(after - before <= 1 for before, after in itertools.pairwise(levels))
    assert all(alt for name, alt in found if name in ("/Figure", "/Formula"))
    assert document.trailer["/Root"]["/Lang"] == "en-US"
    assert all(fonts(document).values())


def test_a_reader_of_the_screen_gets_each_card_under_its_number() -> None:
    """A heading for every card, starter card and page after them."""
    found = pack((4,))
    heads = [name for name, _ in elements(reader(named(found.files, "-cards.pdf"))) if name == "/H1"]
    results = found.kept["pages"]["cards"]["results"] is not None
    assert len(heads) == 24 + 2 * found.per_page + results + 1


def test_the_same_arguments_give_the_same_bytes_in_every_process() -> None:
    """Two processes with different hash seeds, and this one."""
    program = (
        "import sys; from tests.press.test_card_files import made;"
        "[sys.stdout.buffer.write(content) for content in made((3, 4, 5)).contents.values()]"
    )
    outputs = [
        subprocess.run(
            [sys.executable, "-c", program], cwd=ROOT, env={**os.environ, "PYTHONHASHSEED": seed}, capture_output=True, check=True
        ).stdout
        for seed in ("1", "2")
    ]
    assert outputs[0] == outputs[1] == b"".join(made((3, 4, 5)).contents.values())


def test_the_key_has_every_answer_in_the_place_of_the_grid_and_says_which_letters_mean_what() -> None:
    found = pack((3, 4, 5))
    key = text(named(found.files, "-cards-key.pdf"))
    assert f"{found.kept['mark']} is on every card of this deck." in key
    for card in found.kept["cards"]:
        topic, level, grade = card["code"].split()[1]
        assert re.search(rf"Second letter, level: .*\b{level} {card['level']}\b", key)
        assert re.search(rf"Third letter: .*\b{grade} Grade {card['grade']}\b", key)
        assert re.search(rf"First letter, topic: .*\b{topic} ", key)


@pytest.mark.parametrize("name", ["#panic()", '$x$ <img onerror="a">', "*B* _i_ `raw` @ref", "W" * 40])
def test_a_group_may_be_called_anything_and_stays_on_its_card(name: str) -> None:
    spots = itertools.product(enumerate((name, "Herons", "Kites")), (1, 2), (("red", 4), ("blue", 6)))
    rows = tuple(Row(group, trial, color, size, (place + trial) % (size + 1)) for (place, group), trial, (color, size) in spots)
    files = card_files(TrialTable(rows), DeckPlan((4,), 16), CardLook(6, "answers"), "ramp")
    printed = re.sub(r"[\s\u200b\u0002]", "", text(named(files, "-cards.pdf")))
    kept = json.loads(named(files, "-cards-key.json"))
    assert any(name in card["text"] for card in kept["cards"])
    assert re.sub(r"\s", "", name) in printed
    found = Pack(files, pages(named(files, "-cards.pdf")), kept)
    for at in found.fronts:
        page = found.pages[at]
        cuts = cut_lines(page)
        assert all(mark.box in cuts or any(cell.holds(mark.box, DRIFT) for cell in cells(page)) for mark in page.marks)


def test_cards_for_which_the_words_are_too_long_are_printed_larger_and_that_is_said() -> None:
    files = made((3, 4, 5), 24, CardLook(8, large_print=True))
    kept = json.loads(named(files, "-cards-key.json"))
    assert kept["look"]["per_page"] == 4
    assert any(change.startswith("8 cards to a page were wanted; 4 are here") for change in files.changes)
    assert kept["changes"] == list(files.changes)


@pytest.mark.parametrize("per_page", [4, 8])
def test_a_figure_that_the_words_ask_pupils_to_read_is_on_its_card(per_page: int) -> None:
    """A scatter plot; a kind that has no room for it on small cards is left out of them."""
    table = read_table(str(ROOT / "samples" / "spaces.csv"), ReadOptions()).table
    files = card_files(table, DeckPlan((8,), 24), CardLook(per_page), "ramp")
    found = Pack(files, pages(named(files, "-cards.pdf")), json.loads(named(files, "-cards-key.json")))
    places = [(page, cell) for page in (found.pages[at] for at in found.fronts) for cell in cells(page)]
    to_read = [card["number"] for card in found.kept["pages"]["cards"]["cards"] if card["figure_read"]]
    assert to_read or found.per_page > 4
    for number in to_read:
        page, cell = places[number - 1]
        drawn = around(mark.box for mark in marks_on(page, cell) if not mark.words)
        assert drawn.wide > 40
        assert drawn.tall > 25
