"""Price lists: what counts as one, how messy prices are read, what is asked about, and every fault with its place."""

from __future__ import annotations

from pathlib import Path

import pytest

from mathgen.errors import TableFaults, TableQuestions
from mathgen.trials.grid import Grid
from mathgen.trials.options import ReadOptions
from mathgen.trials.price_list import find_price_list
from mathgen.trials.read_text import read_text
from mathgen.trials.reading import ReadResult, interpret, read_table

ROOT = Path(__file__).parents[2]


def read(text: str, options: ReadOptions = ReadOptions()) -> ReadResult:  # noqa: B008 - frozen
    return interpret((read_text(text.encode(), "prices.csv"),), options)


def prices(text: str, options: ReadOptions = ReadOptions()) -> dict[str, int]:  # noqa: B008 - frozen
    return {one.item: one.cents for one in read(text, options).table.prices}


def faults(text: str, options: ReadOptions = ReadOptions()) -> list[str]:  # noqa: B008 - frozen
    with pytest.raises(TableFaults) as caught:
        read(text, options)
    return [str(fault) for fault in caught.value.faults]


def test_a_price_with_its_sign_is_read_in_every_usual_writing() -> None:
    """25 cents in a quarter, 100 in a dollar: common practice, no source."""
    written = ["25¢", "25 ¢", "¢25", "25c", "25 cents", "25 Cents.", "$0.25", "$ .25", "$.25", "0.25 dollars", "0.25 $", "$0.250"]
    lines = [f"thing {letter},{price}" for letter, price in zip("abcdefghijkl", written, strict=True)]
    assert set(prices("\n".join(["Item,Price", *lines])).values()) == {25}
    assert prices("Item,Price\npenny sweet,1 cent\nlong ramp,$1\nramp,1 dollar\nwide ramp,$1.00") == {
        "penny sweet": 1,
        "long ramp": 100,
        "ramp": 100,
        "wide ramp": 100,
    }


@pytest.mark.parametrize(
    ("heading", "cents"),
    [
        *((heading, True) for heading in ("Price (cents)", "Price in cents", "Cost ¢", "Price each (¢)", "Unit price, cents")),
        *((heading, False) for heading in ("Price ($)", "Price in dollars", "Cost (USD)")),
    ],
)
def test_the_heading_says_what_bare_numbers_are(heading: str, cents: bool) -> None:
    cells = ("1", "25") if cents else ("1", "0.25")
    quoted = f'"{heading}"'
    assert prices(f"Item,{quoted}\ntube,{cells[0]}\ntape,{cells[1]}") == {"tube": 1 if cents else 100, "tape": 25}


def test_bare_numbers_that_can_only_be_one_are_taken_so_and_said() -> None:
    for cells, unit in ((("25", "40"), "cents"), (("0.25", "0.4"), "dollars"), (("25", "1"), "cents"), (("1", ".4"), "dollars")):
        result = read(f"Item,Price\ntube,{cells[0]}\ntape,{cells[1]}")
        assert any(f"is taken as {unit}" in note for note in result.notes), (cells, result.notes)


def test_bare_numbers_that_could_be_either_are_asked_about() -> None:
    text = "Item,Price\ntube,1\ntape,1"
    with pytest.raises(TableQuestions) as caught:
        read(text)
    [question] = caught.value.questions
    assert question.id == "price"
    assert [answer.option for answer in question.answers] == ["--price cents", "--price dollars"]
    assert set(prices(text, ReadOptions(price="cents")).values()) == {1}
    assert set(prices(text, ReadOptions(price="dollars")).values()) == {100}
    with pytest.raises(TableQuestions):
        read("Item,Price\ntube,25\ntape,0.25")


def test_a_sign_in_the_cell_goes_before_the_heading() -> None:
    assert prices('Item,"Price ($)"\ntube,25¢\ntape,0.40') == {"tube": 25, "tape": 40}


def test_every_fault_is_told_at_once_with_its_place() -> None:
    text = "\n".join(
        ["Store,", "Item,Price", "tube,2O¢", "tape,$1.25", "clip,0¢", "cup,", ",5¢", "band,$0.255", "rope,free", "foil,-5¢", "wire,0,25"]
    ).replace("wire,0,25", 'wire,"0,25"')
    found = faults(text)
    expected = "expected a price from 1 cent to 1 dollar, such as 25¢ or $0.25."
    assert found == [
        f'row 3, column "Price", cell B3: found "2O¢", {expected} Is one of its characters a letter, such as O for 0?',
        f'row 4, column "Price", cell B4: found "$1.25", {expected}',
        f'row 5, column "Price", cell B5: found "0¢", {expected}',
        f'row 6, column "Price", cell B6: {expected} Fill in the price, or empty the whole line.',
        'row 7, column "Item", cell A7: expected a short name of one thing that is sold, such as paper tube or roll of tape. '
        "Name what is sold for this price.",
        f'row 8, column "Price", cell B8: found "$0.255", {expected} Prices are whole cents.',
        f'row 9, column "Price", cell B9: found "free", {expected} What costs nothing is left out of the list.',
        f'row 10, column "Price", cell B10: found "-5¢", {expected} A price is not below 0.',
        f'row 11, column "Price", cell B11: found "0,25", {expected} Write a point before the cents: 0.25.',
    ]


def test_a_bare_number_against_its_heading_is_a_fault() -> None:
    [fault] = faults('Item,"Price (cents)"\ntube,0.25\ntape,40')
    assert fault == (
        'row 2, column "Price (cents)", cell B2: found "0.25", expected a whole number of cents from 1 to 100, as the heading says. '
        "Or write its unit: 25¢, $0.25."
    )
    [fault] = faults("Item,Price\ntube,25\ntape,40\nfoil,250")
    assert "as the other prices are" in fault


def test_names_that_no_sentence_can_carry_are_faults() -> None:
    names = ["tape (1 ft)", "a very long roll of tape", "3 clips", "tube 2", "tape."]
    found = faults("\n".join(["Item,Price", *(f"{name},5¢" for name in names), "cup,6¢"]))
    assert len(found) == len(names)
    assert all("a short name of one thing that is sold" in fault for fault in found)


def test_an_item_is_there_once() -> None:
    [fault] = faults("Item,Price\nPaper tube,5¢\ncup,6¢\npaper tube,7¢")
    assert 'row 4, column "Item", cell A4: found "paper tube", expected each item once. It is in row 2 already.' in fault


def test_one_price_is_no_list() -> None:
    [fault] = faults("Item,Price\ntube,5¢")
    assert "at least 2 items with their prices" in fault
    assert faults("Item,Price")


def test_titles_empty_lines_totals_and_other_columns_are_left_out_and_said() -> None:
    text = "Class store 2026,,\n,,\nNo,Material,Price each\n1,Paper Tube,8¢\n,,\n2,LED light,$0.35\n,Total,43¢"
    result = read(text)
    assert [(one.item, one.cents) for one in result.table.prices] == [("paper tube", 8), ("LED light", 35)]
    assert result.notes == ('Row 7 is left out: "Total" is no item.', 'Not used: the column "No".')
    assert not result.table.rows


def test_a_results_table_is_no_price_list() -> None:
    for path in sorted((ROOT / "samples").glob("*.csv")):
        [grid] = (read_text(path.read_bytes(), path.name),)
        assert (find_price_list(grid) is not None) == (path.stem == "prices"), path
    for heads in ("Group,Trial,Red (4),Cost", "Group,Item,Red (4),Blue (3)", "Item,Red (4),Blue (3),Points"):
        assert find_price_list(read_text(f"{heads}\nOwls,1,3,2\nHerons,1,2,2".encode(), "table.csv")) is None


def test_the_sample_is_read_whole() -> None:
    result = read_table(str(ROOT / "samples" / "prices.csv"))
    assert len(result.table.prices) == 12
    assert result.notes == ()
    assert (result.table.prices[0].item, result.table.prices[0].cents) == ("paper tube", 8)


def test_prices_without_their_headings_are_told_which_ones_to_write() -> None:
    for text in ("Item,Amount\ntube,25¢\ntape,35¢", "tube,$0.25\ntape,$0.35"):
        [fault] = faults(text)
        assert "expected the headings Item and Price." in fault
        assert "Head the two columns of a price list Item and Price." in fault


def test_of_a_workbook_the_sheet_with_the_price_list_is_read() -> None:
    notes = Grid((("To do",), ("paint the ramp",)), "Notes")
    store = Grid((("Item", "Price"), ("tube", "8¢"), ("tape", "35¢")), "Store")
    result = interpret((notes, store))
    assert [one.item for one in result.table.prices] == ["tube", "tape"]
    assert result.notes == ('The sheet "Store" is read: it holds a price list.',)


def test_a_price_that_is_a_formula_without_a_result_is_told() -> None:
    store = Grid((("Item", "Price"), ("tube", ""), ("tape", "35¢"), ("cup", "5¢")), "Store", unworked=frozenset({(2, 2)}))
    with pytest.raises(TableFaults) as caught:
        interpret((store,))
    [fault] = caught.value.faults
    assert fault.place.cell == "B2"
