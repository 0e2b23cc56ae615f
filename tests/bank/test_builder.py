"""A wording that is too long is stopped by the name of the cap that it goes past."""

from __future__ import annotations

import pytest

from mathgen.bank.builder import Builder
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.scenario.words import scenario
from mathgen.wording.say import Words
from tests.tables import TWO_GROUPS

FIVE = "The Owls had 8 pins."
TWELVE = "How many pins did the Owls knock down in the 3 trials"


@pytest.mark.parametrize(
    ("facts", "question", "stop"),
    [
        (f"{FIVE} {FIVE}", "How many?", ""),
        ("", f"{TWELVE}?", ""),
        ("", f"{TWELVE} in all?", "words in the question"),
        (f"{FIVE} {FIVE} {FIVE}", "How many?", "sentences"),
        (f"{FIVE} {FIVE} {FIVE}", f"{TWELVE} in all?", "words in the question"),
        ("The Owls knocked down 8 pins in Trial 1 and 9 after.", "How many?", ""),  # 11 words
        ("The Owls knocked down 8 red pins in Trial 1 and 9 in Trial 2.", "How many?", "words in a sentence"),
        ("In Trial 1 the Owls had 8 red pins down. In Trial 2 they had 9 red pins down.", f"{TWELVE}?", "words"),
    ],
)
def test_the_cap_that_is_not_kept_is_named(facts: str, question: str, stop: str) -> None:
    """Grade 1 of ccss.toml: 30 words, 3 sentences, 12 words in the longest and in the question."""
    builder = Builder(Desk(TWO_GROUPS, scenario("ramp")), load("ccss"), 1)
    words = Words("plain", "words", facts, question, {})
    assert builder._too_long(words) == stop
