"""The questions in words."""

from __future__ import annotations

from mathgen.errors import Place
from mathgen.trials.questions import ask_blank, ask_counts, ask_duplicates, ask_set_up, ask_sheet


def test_each_question_names_what_it_asks_about() -> None:
    assert ask_counts(['"Red"', '"Blue"']).text.startswith('Do the numbers under "Red", "Blue" count the pins knocked down')
    assert ask_blank([Place(3, 4)], "knocked down").text.startswith("Cell D3 is blank.")
    assert ask_blank([Place(3, 4), Place(4, 4, "May")], "knocked down").text.startswith("Cells D3 and D4 of sheet May are blank.")
    results = [Place(7, column, "Results") for column in (3, 4, 5)]
    assert ask_blank(results, "knocked down").text.startswith("Cells C7, D7 and E7 of sheet Results are blank.")
    assert (
        ask_set_up(["red", "blue", "gold"], True).text
        == "How many red, blue and gold pins were set up for each trial? The table does not say."
    )
    assert (
        "Owls, trial 1 (rows 2, 5); Hawks, practice (rows 3, 4)"
        in ask_duplicates([("Owls", 1, [2, 5]), ("Hawks", "practice", [3, 4])], False).text
    )
    assert ask_sheet(["May", "June 2"]).answers[1].option == '--sheet "June 2"'


def test_long_lists_are_cut_short() -> None:
    assert "and 4 more are blank" in ask_blank([Place(row, 1) for row in range(1, 11)], "knocked down").text
    assert " and 4 more. Which" in ask_duplicates([(f"Group {number}", 1, [1, 2]) for number in range(10)], False).text
