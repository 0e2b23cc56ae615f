"""What sentences can mean is listed once, in the tables of the rooms: no record is left without its function, none is taken twice."""

from __future__ import annotations

from collections import Counter
from importlib import import_module
from pkgutil import iter_modules
from types import ModuleType
from typing import Any, get_args, get_type_hints

import pytest

from mathgen.reading import claims, goals, meaning, wanted


def records(package: ModuleType) -> list[type]:
    """The records that stand in the files of a package."""
    files = [import_module(f"{package.__name__}.{found.name}") for found in iter_modules(package.__path__)]
    return [one for file in files for one in vars(file).values() if isinstance(one, type) and one.__module__ == file.__name__]


def named_in(hint: Any) -> set[type]:
    """The classes that a type names: those of ``tuple[A | B, ...] | None`` are A and B."""
    return {hint}.union(*map(named_in, get_args(hint))) if get_args(hint) else {hint} if isinstance(hint, type) else set()


RECORDS = records(meaning) + records(wanted)
PARTS = {part for record in RECORDS for hint in get_type_hints(record).values() for part in named_in(hint)}


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: f"{record.__module__.partition('reading.')[2]}.{record.__name__}")
def test_each_record_has_its_function_or_is_a_part_of_another(record: type) -> None:
    table = claims._TAKE if ".meaning." in record.__module__ else goals._ASKED
    assert record in table or record in PARTS


def test_no_table_has_what_is_no_record() -> None:
    assert set(claims._TAKE) | set(goals._ASKED) <= set(RECORDS)


def test_no_record_is_taken_by_two_rooms() -> None:
    for taken in ([kind for room in claims._ROOMS for kind in room.TAKEN], [kind for room in goals._ROOMS for kind in room.ASKED]):
        assert [kind for kind, times in Counter(taken).items() if times > 1] == []
