"""What DEVELOPERS.md and README.md say is there, is there."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
README = (ROOT / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("text", [GUIDE, README], ids=["DEVELOPERS", "README"])
def test_every_path_that_is_named_exists(text: str) -> None:
    """What stands in code marks or a picture and starts with a folder of ours; ``out/`` is made by the commands."""
    text = re.sub(r"<!-- recipe: .*?-->", "", text)  # a file that a reader is to make
    named = re.findall(r"(?<![\w/.-])((?:mathgen|templates|tests|samples|\.ci)/[\w./-]*[\w/])", text)
    assert len(set(named)) > 3
    assert [path for path in sorted(set(named)) if not (ROOT / path).exists() and not (ROOT / f"{path}.png").exists()] == []


def test_the_map_names_every_room_and_keeps_the_contract_s_order() -> None:
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["importlinter"]["contracts"]
    (layers,) = (contract["layers"] for contract in contracts if contract["type"] == "layers")
    rooms = [room for layer in layers for room in layer.split(" | ") if (ROOT / "mathgen" / room).is_dir()]
    assert re.findall(r"^\| `mathgen/(\w+)/` \|", GUIDE, re.MULTILINE) == rooms
    assert set(rooms) == {path.parent.name for path in (ROOT / "mathgen").glob("*/__init__.py")}


def test_names_from_the_code_are_still_in_the_code() -> None:
    """Functions, classes and constants that stand in code marks: of the program, or of a test that the guide names."""
    files = [*(ROOT / "mathgen").rglob("*.py"), *(ROOT / path for path in set(re.findall(r"`(tests/[\w/]+\.py)`", GUIDE)))]
    code = "\n".join(path.read_text(encoding="utf-8") for path in files)
    names = set(re.findall(r"`(?:@)?(_?[A-Z][A-Z_]+|[A-Z][a-z]+(?:[A-Z][a-z]+)*(?:\.[a-z_]+)?|[a-z]+_[a-z_]+)`", GUIDE))
    assert {"RELEASE", "AskSpace", "Builder.finish", "worksheet_data"} <= names
    assert [name for name in sorted(names) if not re.search(rf"\b{name.rpartition('.')[2]}\b", code)] == []
