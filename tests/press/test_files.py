"""Files to disk: all or none."""

from __future__ import annotations

from pathlib import Path

import pytest

from mathgen.errors import RequestFault
from mathgen.press.files import write_files


def names(folder: Path) -> list[str]:
    """Every file below a folder."""
    return sorted(str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file())


def test_all_files_are_written_and_no_temporary_one_stays(tmp_path: Path) -> None:
    """Folders are made as needed."""
    write_files({tmp_path / "a" / "one.pdf": b"1", tmp_path / "two.json": b"2"})
    assert names(tmp_path) == ["a/one.pdf", "two.json"]
    assert (tmp_path / "a" / "one.pdf").read_bytes() == b"1"


def test_existing_files_are_refused_all_at_once_and_nothing_is_written(tmp_path: Path) -> None:
    """The message names each of them and says what to do."""
    (tmp_path / "one").write_bytes(b"old")
    (tmp_path / "two").write_bytes(b"old")
    with pytest.raises(RequestFault) as fault:
        write_files({tmp_path / name: b"new" for name in ("zero", "one", "two")})
    assert all(word in str(fault.value) for word in (str(tmp_path / "one"), str(tmp_path / "two"), "--force"))
    assert names(tmp_path) == ["one", "two"]
    assert (tmp_path / "one").read_bytes() == b"old"


def test_force_replaces(tmp_path: Path) -> None:
    """The old bytes are gone."""
    (tmp_path / "one").write_bytes(b"old")
    write_files({tmp_path / "one": b"new"}, force=True)
    assert (tmp_path / "one").read_bytes() == b"new"


def test_a_folder_in_the_way_is_refused_even_with_force(tmp_path: Path) -> None:
    """A folder is never replaced by a file."""
    (tmp_path / "one").mkdir()
    with pytest.raises(RequestFault, match="folder"):
        write_files({tmp_path / "one": b"new"}, force=True)


def test_a_place_that_cannot_be_written_leaves_nothing_behind(tmp_path: Path) -> None:
    """The second file's folder would have to be a file."""
    (tmp_path / "file").write_bytes(b"")
    with pytest.raises(RequestFault, match="cannot write"):
        write_files({tmp_path / "one": b"new", tmp_path / "file" / "two": b"new"})
    assert names(tmp_path) == ["file"]
