"""Worksheet and key as PDF."""

from __future__ import annotations

import itertools
import os
import subprocess
import sys
from dataclasses import replace
from functools import cache
from pathlib import Path

import pdfua
import pytest

from mathgen.bank.plan import ChosenForm, Graph
from mathgen.press.pdf import Kind, page_count, pdf_bytes, pdfs
from mathgen.sheets.figures.bar_graph import graph_data
from mathgen.sheets.key import key_data
from mathgen.sheets.worksheet import worksheet_data
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable
from tests.press.pdf_structure import elements, fonts, lines, reader, text
from tests.sheets.by_hand import GRADE_4, GRADE_7, TABLE, problem, sheet, sheet_of, words

ANYWHERE = "\u200b"  # the sign without width at which a line may break
KINDS: tuple[Kind, ...] = ("worksheet", "key")
EVERY = [
    pytest.param(kind, grade, wish, id=f"{kind}, grade {grade}, {wish}")
    for kind, (grade, wish) in itertools.product(
        KINDS, [(2, ()), (4, (("forms", 2), ("paper", "a4"))), (7, (("layout", "save-paper"),)), (4, (("large_print", True),))]
    )
]


@cache
def made(kind: Kind, grade: int, wish: tuple[tuple[str, object], ...] = ()) -> bytes:
    """A document, set once for all tests."""
    data = worksheet_data if kind == "worksheet" else key_data
    return pdf_bytes(kind, data(sheet(grade, **dict(wish)), TABLE, words(grade)))  # type: ignore[arg-type]


@pytest.mark.parametrize(("kind", "grade", "wish"), EVERY)
def test_the_machine_checkable_part_of_pdf_ua_1_holds(kind: Kind, grade: int, wish: tuple[tuple[str, object], ...], tmp_path: Path) -> None:
    """ISO 14289-1 as far as the checker ``pdfua`` goes; what it cannot read in a heading is tested below."""
    path = tmp_path / "made.pdf"
    path.write_bytes(made(kind, grade, wish))
    report = pdfua.validate(str(path))
    assert report.findings == ()
    assert {outcome.rule_id for outcome in report.skipped} <= {"UA-14-001"}


@pytest.mark.parametrize(("kind", "grade", "wish"), EVERY)
def test_documents_are_tagged_titled_and_in_a_language(kind: Kind, grade: int, wish: tuple[tuple[str, object], ...]) -> None:
    """PDF/UA-1: structure tree, marked, document language, title shown, fonts embedded, words as words."""
    document = reader(made(kind, grade, wish))
    root = document.trailer["/Root"]
    assert root["/Lang"] == "en-US"
    assert root["/MarkInfo"]["/Marked"]
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    assert document.metadata is not None
    assert document.metadata.title == ("Knocking down pins" if kind == "worksheet" else "Answer key: Knocking down pins")
    assert fonts(document)
    assert all(fonts(document).values())
    assert {name.partition("+")[2] for name in fonts(document)} == {"Lexend-Regular"}
    assert all(page.extract_text().strip() for page in document.pages)
    assert not any(page.images for page in document.pages)


@pytest.mark.parametrize(("kind", "grade", "wish"), EVERY)
def test_headings_skip_no_level_and_figures_and_fractions_have_alt_text(
    kind: Kind, grade: int, wish: tuple[tuple[str, object], ...]
) -> None:
    """PDF/UA-1, clauses 7.3 and 7.4."""
    found = elements(reader(made(kind, grade, wish)))
    levels = [int(name[2:]) for name, _ in found if name in ("/H1", "/H2", "/H3", "/H4")]
    assert levels[0] == 1
    assert all(after - before <= 1 for before, after in itertools.pairwise(levels))
    assert all(alt for name, alt in found if name in ("/Figure", "/Formula"))


@pytest.mark.parametrize(("kind", "grade", "wish"), EVERY)
def test_tables_have_header_cells(kind: Kind, grade: int, wish: tuple[tuple[str, object], ...]) -> None:
    """PDF/UA-1, clause 7.5."""
    names = [name for name, _ in elements(reader(made(kind, grade, wish)))]
    assert "/TH" in names[names.index("/Table") :]


def test_a_graphs_alt_text_tells_its_data_and_a_fractions_says_it() -> None:
    """A pupil who hears the page gets what one who sees it gets."""
    found = elements(reader(made("worksheet", 4)))
    assert ("/Figure", "Bar graph. Pins knocked down, all groups, Trial 1. red 9, blue 6, gold 8.") in found
    assert [alt for name, alt in found if name == "/Formula"] == [
        "nine twelfths",
        "six tenths",
        "four fifths",
        "seven eighths",
        "three eighths",
    ]


@pytest.mark.parametrize(
    ("grade", "wish", "pages"),
    [(7, (), 2), (4, (), 3), (4, (("layout", "save-paper"),), 2), (4, (("forms", 2), ("paper", "a4")), 4), (4, (("pages", 4),), 4)],
)
def test_a_sheet_takes_the_pages_that_its_problems_need_and_counts_them_by_form(
    grade: int, wish: tuple[tuple[str, object], ...], pages: int
) -> None:
    """Eight problems with room to work; fewer sides where paper is saved, more where they were asked for."""
    document = reader(made("worksheet", grade, wish))
    assert len(document.pages) == pages
    forms = dict(wish).get("forms", 1)
    assert isinstance(forms, int)
    each = pages // forms
    for index, page in enumerate(document.pages):
        assert f"Page {index % each + 1} of {each}" in page.extract_text()
        assert "4Q7K2M0X9R5T" in page.extract_text()


def test_one_problem_alone_takes_one_side_where_one_was_asked_for() -> None:
    """It cannot be left out for want of room."""
    assert page_count(pdf_bytes("worksheet", worksheet_data(sheet_of(GRADE_7[:1], 7, pages=1), TABLE, words(7)))) == 1


@pytest.mark.parametrize("grade", [2, 4, 7])
@pytest.mark.parametrize("kind", KINDS)
def test_large_print_is_eighteen_points_everywhere(kind: Kind, grade: int) -> None:
    """Table, graph and foot as well (American Printing House guidelines: 18 points at least)."""
    sizes = {height for page in reader(made(kind, grade, (("large_print", True),))).pages for *_, height, _ in lines(page)}
    assert min(sizes) >= 18


def test_a_first_page_without_problems_is_filled_by_its_graph() -> None:
    """In large print the head leaves no room for a problem; then the lowest word on the page stands in its last sixth."""
    first = reader(made("worksheet", 4, (("large_print", True),))).pages[0]
    assert "Look at" not in first.extract_text()
    body = [height for height, *_ in lines(first) if height > 70]
    assert min(body) < 792 / 6


@pytest.mark.parametrize(("highest", "numbered"), [(14, False), (20, False), (37, True), (39, True), (480, True)])
def test_numbers_of_a_graph_touch_neither_one_another_nor_its_title(highest: int, numbered: bool) -> None:
    """Capital height of the face is 0.7 of its size: the scale's numbers stand at least that far apart, and so do a bar's number and
    the title."""
    data = worksheet_data(sheet(2), TABLE, words(2))
    graph = Graph(Scope(), ("red", "blue", "gold"), (highest, highest // 2, 1))
    data["forms"][0]["graph"] = graph_data(graph, TABLE, words(2), 2)
    page = reader(pdf_bytes("worksheet", data)).pages[0]
    found = [(y, x, size, word) for y, x, size, word in lines(page) if abs(size - 16 * 0.85) < 0.01]
    scale = sorted(y for y, x, _, word in found if word.isdigit() and x < min(x for _, x, _, word in found if word == "red") - 10)
    assert len(scale) > 3
    assert all(above - below > 0.8 * 13.6 for below, above in itertools.pairwise(scale))
    title = min(y for y, _, _, word in found if "all groups" in word or "2 trials" in word)
    label = [y for y, _, _, word in found if word == str(highest) and y not in scale]
    assert len(label) == numbered
    assert all(title - y > 13.6 for y in label)


def test_the_answer_strip_of_twenty_problems_and_four_forms_stands_on_one_page() -> None:
    """A row alone on the next page would be missed in marking."""
    problems = tuple(itertools.islice(itertools.cycle(GRADE_4), 20))
    forms = tuple(ChosenForm(mark, problems, None) for mark in "ABCD")
    chosen = replace(sheet_of(problems, 4, forms=4), forms=forms)
    page, *_ = reader(pdf_bytes("key", key_data(chosen, TABLE, words(4)))).pages
    numbers = [word for _, x, _, word in lines(page) if x < 90 and word.isdigit()]
    assert numbers[:20] == [str(number) for number in range(1, 21)]


def test_worked_answers_start_under_a_short_strip() -> None:
    """Half a page left white helps nobody."""
    assert "Worked answers" in reader(made("key", 2)).pages[0].extract_text()


@pytest.mark.parametrize("name", ["Supercalifragilisticexpialidocious" * 3, "W" * 60])
def test_a_long_unbroken_name_stays_on_the_page(name: str) -> None:
    """Every line starts within the margins and its letters, at the narrowest, end there; nothing is lost."""
    table = TrialTable(tuple(Row(group, trial, "red", 4, 3) for group in (name, "Owls") for trial in (1, 2)))
    read = problem(f"Use the table. {name} set up 4 pins. How many fell?", "3", unit="pins", reads=Scope())
    chosen = sheet_of((read, problem("Which group?", name, labels=(name, "Owls"))), 4)
    for kind, data in (("worksheet", worksheet_data), ("key", key_data)):
        pages = reader(pdf_bytes(kind, data(chosen, table, words(4, table)))).pages  # type: ignore[arg-type]
        # The narrowest letter of the face is a fifth of its size.
        assert all(x + 0.2 * size * len(word) < 612 - 40 for page in pages for _, x, size, word in lines(page))
        assert "".join(word for page in pages for *_, word in lines(page)).replace(" ", "").replace(ANYWHERE, "").count(name) >= 1


@pytest.mark.parametrize("wish", [(), (("paper", "a4"),), (("large_print", True),), (("pages", 8),), (("layout", "save-paper"),)])
def test_every_problem_is_printed_whole_on_one_page(wish: tuple[tuple[str, object], ...]) -> None:
    """Its words up to the question mark stand on the page of its number."""
    document = reader(made("worksheet", 7, wish))
    pages = [" ".join(page.extract_text().split()) for page in document.pages]
    for one in GRADE_7:
        whole = [page for page in pages if one.question.replace(" 1/2", "")[-30:] in page]
        assert len(whole) == 1
        assert one.facts[:30] in whole[0]


def test_a_page_that_nobody_asked_for_is_left_out_where_few_problems_leave_it_empty() -> None:
    """One problem takes one side by default; two sides where two were asked for and the problems allow it."""
    one, two = sheet_of(GRADE_7[:1], 7), sheet_of(GRADE_7[:2], 7, pages=2)
    assert page_count(pdf_bytes("worksheet", worksheet_data(one, TABLE, words(7)))) == 1
    assert page_count(pdf_bytes("worksheet", worksheet_data(two, TABLE, words(7)))) == 2


@pytest.mark.parametrize(("kind", "grade", "wish"), EVERY)
def test_pages_are_counted_without_reading_the_document(kind: Kind, grade: int, wish: tuple[tuple[str, object], ...]) -> None:
    """As an independent reader counts them."""
    assert page_count(made(kind, grade, wish)) == len(reader(made(kind, grade, wish)).pages)


@pytest.mark.parametrize("wish", [(), (("paper", "a4"), ("large_print", True)), (("large_print", True),)])
def test_an_answer_line_keeps_its_unit(wish: tuple[tuple[str, object], ...]) -> None:
    """The unit stands on the line of its answer in every size of type."""
    lines = [line.strip() for page in reader(made("worksheet", 4, wish)).pages for line in page.extract_text().splitlines()]
    assert lines.count("Answer: pins") == 4
    assert "pins" not in lines


def test_paper_sizes_are_true() -> None:
    """US letter is 612 by 792 points; A4 (ISO 216) is 210 by 297 mm."""
    letter, a4 = (reader(made("worksheet", 4, wish)).pages[0].mediabox for wish in ((), (("forms", 2), ("paper", "a4"))))
    assert (round(letter.width), round(letter.height)) == (612, 792)
    assert (round(a4.width), round(a4.height)) == (595, 842)


@pytest.mark.parametrize(
    "name", ["#panic()", '$x$ <img onerror="a">', "*B* _i_ `raw` @ref <label> \\u{41} // no", "#import \"/etc\"; 'Zoë'"]
)
def test_data_is_never_code(name: str) -> None:
    """A group may be called anything; its name is printed as typed, on both documents."""
    table = TrialTable((Row(name, 1, "red", 4, 3), Row("Herons", 1, "red", 4, 1)))
    chosen = sheet_of((problem(f"{name} set up 4 pins. How many pins were set up?", "4", unit="pins"),), 2)
    listing = {**words(2, table), "title": f"Pins: {name}"}
    flat = "".join(name.split())
    for kind, data in (("worksheet", worksheet_data(chosen, table, listing)), ("key", key_data(chosen, table, listing))):
        printed = "".join(text(pdf_bytes(kind, data)).split())  # type: ignore[arg-type]
        assert printed.count(flat) >= 2, kind


def test_regular_and_bold_are_two_weights_of_one_variable_font() -> None:
    """Rendered apart, or headings would not stand out: two embedded instances at least."""
    assert len(fonts(reader(made("worksheet", 4)))) >= 2


def test_the_same_sheet_has_the_same_bytes_in_every_process() -> None:
    """Two processes with different hash seeds, and both ways of asking for documents in this one."""
    program = (
        "import sys; from tests.sheets.by_hand import TABLE, sheet, words; from mathgen.press.pdf import pdf_bytes;"
        "from mathgen.sheets.worksheet import worksheet_data; from mathgen.sheets.key import key_data;"
        "sys.stdout.buffer.write(pdf_bytes('worksheet', worksheet_data(sheet(4), TABLE, words(4))));"
        "sys.stdout.buffer.write(pdf_bytes('key', key_data(sheet(4), TABLE, words(4))))"
    )
    root = Path(__file__).parents[2]
    outputs = [
        subprocess.run(
            [sys.executable, "-c", program], cwd=root, env={**os.environ, "PYTHONHASHSEED": seed}, capture_output=True, check=True
        ).stdout
        for seed in ("1", "2")
    ]
    together = pdfs([("worksheet", worksheet_data(sheet(4), TABLE, words(4))), ("key", key_data(sheet(4), TABLE, words(4)))])
    assert outputs[0] == outputs[1] == b"".join(together) == made("worksheet", 4) + made("key", 4)
