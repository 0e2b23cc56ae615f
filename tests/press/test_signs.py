"""Signs that no typeface here can show."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from mathgen.cli import main
from mathgen.errors import RequestFault
from mathgen.press.signs import check_labels, said, unprintable, without
from tests.press.pdf_structure import text

FOX, TIGER, WOLF = "\N{FOX FACE}", "\u864e", "\u72fc"
FAMILY = "\N{MAN}\u200d\N{WOMAN}"


def made(tmp_path: Path, *groups: str) -> Result:
    """A grade 4 sheet of a table with these groups. An exception that flies is a bug and is not caught."""
    rows = [f"{group},{trial},{trial + 1},{place % 3 + 1},{5 - trial}" for place, group in enumerate(groups) for trial in (1, 2, 3)]
    table = tmp_path / "class.csv"
    table.write_text("\n".join(["Pins knocked down", "Group,Trial,Red (4),Blue (3),Gold (5)", *rows]), encoding="utf-8")
    return CliRunner().invoke(main, ["worksheet", str(table), "--grade", "4", "--out", str(tmp_path / "out")], catch_exceptions=False)


def test_signs_without_a_typeface_are_found_wherever_they_stand() -> None:
    """Accents, Greek, Cyrillic and school signs have one; a picture, a Chinese sign and a control sign have none."""
    assert unprintable({"a": ["Zoë", "Αθήνα", "Жуки", "Łódź – ½"], "b": {"c": f"{FOX} {TIGER}\a"}, "d": 4, "e": None}) == ("\a", TIGER, FOX)


@pytest.mark.parametrize(
    ("typed", "printed"),
    [(f"Foxes {FOX}", "Foxes"), (f"{FOX} Foxes", "Foxes"), (f"The {FOX} Foxes won.", "The Foxes won."), (f"A{FAMILY}B", "AB"), (TIGER, "")],
)
def test_a_sign_is_left_out_with_the_blank_before_it(typed: str, printed: str) -> None:
    """No doubled blank stays, and no joiner that has nothing left to join."""
    assert without({"rows": [typed]}, [FOX, TIGER, "\N{MAN}", "\N{WOMAN}"]) == {"rows": [printed]}


def test_names_that_would_be_empty_or_alike_are_refused_all_at_once() -> None:
    """Two faults in one message, and what to do."""
    with pytest.raises(RequestFault) as fault:
        check_labels(["Owls", TIGER, WOLF, f"Fox{FOX}", f"Fox{TIGER}"], [TIGER, WOLF, FOX])
    assert str(fault.value).splitlines() == [
        f'"{TIGER}", "{WOLF}": none of their characters can be printed.',
        f'"Fox{FOX}", "Fox{TIGER}": all would be printed as "Fox", for the other characters cannot be printed.',
        "Rename them in the table, in letters such as A to Z, and run mathgen again.",
    ]
    check_labels(["Owls", f"Foxes {FOX}"], [FOX])


def test_the_sentence_for_the_teacher_is_itself_printable() -> None:
    """It stands on the key: signs are named, not shown."""
    assert said([FOX]) == ("A character that cannot be printed is left out of the pages: fox face.",)
    assert said([]) == ()
    assert unprintable(said(["\a", TIGER, FOX])) == ()


def test_a_sheet_of_a_group_with_a_picture_in_its_name_is_made_and_the_change_said(tmp_path: Path) -> None:
    """Exit status 4; on the key too, and the pages print again from the key file."""
    done = made(tmp_path, f"Foxes {FOX}", "Owls", "Kites")
    assert done.exit_code == 4
    assert "fox face" in done.output
    out = tmp_path / "out"
    assert "fox face" in text((out / "grade4-key.pdf").read_bytes())
    again = CliRunner().invoke(main, ["reprint", str(out / "grade4-key.json"), "--out", str(tmp_path / "again")], catch_exceptions=False)
    assert again.exit_code == 0, again.output
    assert (tmp_path / "again" / "grade4-key.pdf").read_bytes() == (out / "grade4-key.pdf").read_bytes()


def test_a_sheet_of_a_group_whose_name_cannot_be_printed_at_all_is_refused(tmp_path: Path) -> None:
    """The name, and what to do; no file is left."""
    refused = made(tmp_path, TIGER, "Owls", "Kites")
    assert refused.exit_code == 1
    assert f'"{TIGER}"' in refused.output
    assert "Rename" in refused.output
    assert not (tmp_path / "out").exists()


def test_half_a_sign_in_a_key_file_is_refused(tmp_path: Path) -> None:
    """JSON can hold a lone surrogate; no page can."""
    assert made(tmp_path, "Owls", "Kites").exit_code == 0
    content = json.loads((tmp_path / "out" / "grade4-key.json").read_text(encoding="utf-8"))
    content["pages"]["worksheet"]["title"] = "\ud83e"
    (tmp_path / "half.json").write_text(json.dumps(content), encoding="utf-8")
    refused = CliRunner().invoke(main, ["reprint", str(tmp_path / "half.json"), "--out", str(tmp_path / "x")], catch_exceptions=False)
    assert refused.exit_code == 1
    assert "half.json" in refused.output
