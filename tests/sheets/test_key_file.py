"""The key file: what it keeps, and whether it is still what was checked."""

from __future__ import annotations

import json
from typing import Any

import pytest

from mathgen.bank.code import table_digest
from mathgen.errors import RequestFault
from mathgen.sheets.key import key_data
from mathgen.sheets.key_file import CHANGED, FORMAT, key_file, pages_of
from mathgen.sheets.worksheet import worksheet_data
from tests.sheets.by_hand import TABLE, sheet, words


def written(**other: Any) -> bytes:
    """The key file of the grade 4 sheet, with entries replaced."""
    chosen = sheet(4)
    content = key_file(chosen, TABLE, "ramp", (), worksheet_data(chosen, TABLE, words(4)), key_data(chosen, TABLE, words(4)))
    return json.dumps(json.loads(content) | other).encode() if other else content


def test_pages_come_back_as_they_went_in() -> None:
    """Another layout of the same JSON is no change."""
    for content in (written(), json.dumps(json.loads(written())).encode()):
        kept = pages_of(content, "grade4-key.json")
        assert not kept.changed
        assert kept.pupils == worksheet_data(sheet(4), TABLE, words(4))
        assert kept.key == key_data(sheet(4), TABLE, words(4))
        assert (kept.kind, kept.stem, kept.table_digest) == ("worksheet", "grade4", table_digest(TABLE))


def test_a_changed_answer_is_noticed_and_the_key_no_longer_says_that_it_was_checked() -> None:
    """3/12 becomes 4/12 in the strip alone."""
    content = written().replace(b'"top": "3"', b'"top": "4"', 1)
    assert content != written()
    kept = pages_of(content, "grade4-key.json")
    assert kept.changed
    assert kept.key["proof_line"] == CHANGED == "This key file was changed after it was checked."


@pytest.mark.parametrize("other", [{"digest": "0" * 16}, {"digest": None}, {"scenario": "seeds"}, {"more": 1}])
def test_any_entry_counts_and_so_does_the_digest_itself(other: dict[str, Any]) -> None:
    """Whatever is altered, the file is not the one that was checked."""
    assert pages_of(written(**other), "grade4-key.json").changed


def test_another_format_is_refused_by_its_number() -> None:
    """Format 1 had no digest."""
    with pytest.raises(RequestFault, match=f"format 1; this program reads format {FORMAT}"):
        pages_of(written(format=1), "grade4-key.json")
