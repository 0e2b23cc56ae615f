"""What was understood, in plain words and as JSON."""

from __future__ import annotations

from sympy import Rational

from mathgen.errors import Choice, Fault, Place, Question, TableFaults, TableQuestions
from mathgen.trials.reading import ReadResult
from mathgen.trials.shown_back import as_json, understood
from mathgen.trials.table import Row, TrialTable

TABLE = TrialTable(
    (Row("Owls", 1, "red", 4, 3, "red", Rational(9, 4), "12 in", "A", "wobbly"), Row("Owls", 2, "red", 5, 0)),
    (("Hawks", "practice", "red"),),
)


def test_plain_words_name_groups_trials_colors_absences_and_every_guess() -> None:
    assert understood(ReadResult(TABLE, ("A guess.",))) == (
        "1 group: Owls\n"
        "2 trials: 1, 2\n"
        "1 color: red (from 4 to 5 set up)\n"
        "2 results: 3 of 9 pins knocked down\n"
        "1 result absent: Hawks, practice, red\n"
        "Also kept: target color, space between pins, release height, design round, notes.\n"
        "How it was read:\n"
        "  - A guess."
    )


def test_guesses_beyond_those_that_have_room_are_counted() -> None:
    lines = understood(ReadResult(TABLE, ("A guess.", "Another.", "A third.")), notes_most=1).splitlines()
    assert lines[-2:] == ["  - A guess.", "  and 2 more, which mathgen read tells"]
    assert understood(ReadResult(TABLE, ("A guess.",)), notes_most=1).endswith("  - A guess.")


def test_json_of_a_table() -> None:
    assert as_json(ReadResult(TABLE, ("A guess.",))) == {
        "rows": [
            {
                "group": "Owls",
                "trial": 1,
                "color": "red",
                "set_up": 4,
                "down": 3,
                "target": "red",
                "gap_inches": "9/4",
                "height": "12 in",
                "round": "A",
                "notes": "wobbly",
            },
            {"group": "Owls", "trial": 2, "color": "red", "set_up": 5, "down": 0},
        ],
        "absent": [{"group": "Hawks", "trial": "practice", "color": "red"}],
        "notes": ["A guess."],
        "questions": [],
        "faults": [],
    }


def test_json_of_faults_has_no_rows_and_nulls_where_there_is_no_place() -> None:
    faults = as_json(TableFaults((Fault(Place(7, 3, "May", "Red"), "1O", "a whole number", "Try 10."), Fault(Place(), "x", "y"))))
    assert faults["rows"] == []
    assert faults["faults"] == [
        {
            "sheet": None,
            "row": None,
            "column": None,
            "cell": None,
            "found": "x",
            "expected": "y",
            "advice": "",
            "message": 'found "x", expected y.',
        },
        {
            "sheet": "May",
            "row": 7,
            "column": 3,
            "cell": "C7",
            "found": "1O",
            "expected": "a whole number",
            "advice": "Try 10.",
            "message": 'sheet "May", row 7, column "Red", cell C7: found "1O", expected a whole number. Try 10.',
        },
    ]


def test_json_of_questions_has_the_options_that_answer_them() -> None:
    shown = as_json(TableQuestions((Question("blank", "Which?", (Choice("--blank absent", "left out"),)),), ("A guess.",)))
    assert shown["questions"] == [{"id": "blank", "text": "Which?", "answers": [{"option": "--blank absent", "means": "left out"}]}]
    assert (shown["rows"], shown["notes"], shown["faults"]) == ([], ["A guess."], [])
