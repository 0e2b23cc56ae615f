"""Where the program's own files lie."""

from __future__ import annotations

from mathgen.places import templates_folder


def test_the_print_templates_are_where_the_program_looks() -> None:
    """The typesetter reads these by name."""
    assert {path.name for path in (templates_folder() / "print").glob("*.typ")} >= {"worksheet.typ", "key.typ", "figures.typ", "words.typ"}
