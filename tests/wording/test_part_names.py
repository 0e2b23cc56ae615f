"""Numerator and denominator, from the grade that has the words."""

from mathgen.grades.curriculum import load
from mathgen.wording.part_names import with_part_names
from tests.audit.banks import problems, sample


def test_plain_words_become_the_names_with_their_capitals_and_plurals() -> None:
    """Worked by hand."""
    assert with_part_names("Bottom numbers: add the top numbers only. The top number is 3.") == (
        "Denominators: add the numerators only. The numerator is 3."
    )


def test_grade_3_reads_plain_words_and_grade_4_the_names() -> None:
    """4.NF.A.2 compares by numerators and denominators; in 3.NF the words are for teachers (inferred)."""
    assert load("ccss").part_names_from == 4
    said: dict[int, list[str]] = {grade: [] for grade in (3, 4)}
    for problem in problems(sample("main"), 3, grades=(3, 4))[0]:
        said[problem.grade].append(" ".join([problem.text, *(slip.line for slip in problem.slips)]).lower())
    assert [text for text in said[3] if "nominator" in text or "numerator" in text] == []
    assert [text for text in said[4] if "top number" in text or "bottom number" in text] == []
    assert any("top number" in text for text in said[3])
    assert any("denominator" in text for text in said[4])
