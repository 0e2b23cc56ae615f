"""The sample pages that README shows are there, small, and as long as their pictures say."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.press.sample_pages import SAMPLES, Sample

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda sample: sample.picture)
def test_readme_shows_the_picture_and_names_the_pages(sample: Sample) -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert f"samples/pictures/{sample.picture}" in readme
    assert f"`samples/pages/{sample.kept}`" in readme
    kept, picture = ROOT / "samples" / "pages" / sample.kept, ROOT / "samples" / "pictures" / sample.picture
    assert len(PdfReader(kept).pages) >= max(sample.pages)
    assert kept.stat().st_size < 250_000
    assert picture.stat().st_size < 250_000
    assert picture.read_bytes().startswith(b"\x89PNG")


def test_the_job_list_names_the_command() -> None:
    assert "-m tests.press.sample_pages samples" in (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
