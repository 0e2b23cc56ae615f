"""The wheel: built, installed in a new environment away from the checkout, and used there."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path

import pytest

from tests.press.pdf_structure import fonts, reader

ROOT = Path(__file__).resolve().parents[1]


def _run(command: list[str | Path], folder: Path) -> subprocess.CompletedProcess[str]:
    """A command run in a folder, without a PYTHONPATH that could lead back to the checkout."""
    environment = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "COV_", "PIP_"))}
    return subprocess.run(list(map(str, command)), cwd=folder, env=environment, capture_output=True, text=True, check=False)


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, built without a network: hatchling is there already."""
    folder = tmp_path_factory.mktemp("wheel")
    pip = [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--no-build-isolation"]
    built = _run([*pip, "--wheel-dir", folder, ROOT], folder)
    assert built.returncode == 0, built.stderr
    (found,) = folder.glob("*.whl")
    return found


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of programs of a new environment that holds the wheel.

    Other packages are lent from this environment by a path file. Such a file adds a folder and reads no path files within it,
    so that an editable install of the checkout is not found through it.
    """
    place = tmp_path_factory.mktemp("new") / "venv"
    assert _run([sys.executable, "-m", "venv", "--without-pip", place], place.parent).returncode == 0
    programs = Path(sysconfig.get_path("scripts", "venv", {"base": str(place), "platbase": str(place)}))
    site = Path(sysconfig.get_path("purelib", "venv", {"base": str(place), "platbase": str(place)}))
    pip = [sys.executable, "-m", "pip", "--python", programs / "python", "install", "--quiet", "--no-deps", "--no-index"]
    done = _run([*pip, wheel], place.parent)
    assert done.returncode == 0, done.stderr
    # After the install, so that nothing of this environment is taken for an older version of the wheel.
    lent = sorted({sysconfig.get_path("purelib"), sysconfig.get_path("platlib")})
    (site / "lent.pth").write_text("".join(f"{folder}\n" for folder in lent), encoding="utf-8")
    return programs


def test_the_wheel_carries_every_template_and_data_file(wheel: Path) -> None:
    """Templates lie inside the package there; TOML files beside the code that reads them."""
    with zipfile.ZipFile(wheel) as parts:
        names = {name for name in parts.namelist() if name.startswith("mathgen/")}
    templates = {f"mathgen/{path.relative_to(ROOT).as_posix()}" for path in (ROOT / "templates").rglob("*") if path.is_file()}
    data = {path.relative_to(ROOT).as_posix() for path in (ROOT / "mathgen").rglob("*.toml")}
    code = {path.relative_to(ROOT).as_posix() for path in (ROOT / "mathgen").rglob("*.py")}
    assert templates
    assert data
    assert names == templates | data | code


def test_the_installed_program_is_not_the_checkout(installed: Path, tmp_path: Path) -> None:
    """Guards the tests below: they would say nothing if the checkout ran."""
    shown = _run([installed / "python", "-c", "import mathgen, sys; print(mathgen.__file__); print(sys.path)"], tmp_path)
    where, searched = shown.stdout.splitlines()
    assert Path(where).is_relative_to(installed.parent)
    assert repr(str(ROOT)) not in searched


def test_the_installed_program_makes_a_sheet_with_its_fonts_away_from_the_checkout(installed: Path, tmp_path: Path) -> None:
    """Worksheet, key and key file from a copied sample; the face is Lexend, and embedded."""
    shutil.copy(ROOT / "samples" / "main.csv", tmp_path / "table.csv")
    made = _run([installed / "mathgen", "worksheet", "table.csv", "--grade", "4", "--count", "2", "--out", "out"], tmp_path)
    assert made.returncode == 0, made.stderr
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == ["grade4-key.json", "grade4-key.pdf", "grade4-worksheet.pdf"]
    for name in ("grade4-worksheet.pdf", "grade4-key.pdf"):
        embedded = fonts(reader((tmp_path / "out" / name).read_bytes()))
        assert embedded
        assert all(embedded.values())
        assert {face.partition("+")[2] for face in embedded} == {"Lexend-Regular"}
