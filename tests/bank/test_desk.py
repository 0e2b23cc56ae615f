"""A desk's words: what is said of a mistake, in the words of the activity."""

from __future__ import annotations

import re

import pytest

from mathgen.bank.desk import Desk
from mathgen.models.slips import slip_ids, slip_rule
from mathgen.scenario.words import scenario
from tests.audit.banks import lines, sample, sample_problems

# Forms that no sentence takes, and words of the other activity.
_BROKEN = re.compile(r"\b(?:was|were|be|is|are|to) that (?:sprout|knock)|\bthe chance to be\b")
_OTHERS_WORDS = re.compile(r"\b(?:knock|knocked|set up|standing|stood|fell|falls|pins?)\b")


@pytest.mark.parametrize("activity", ["ramp", "seeds"])
def test_every_line_of_feedback_can_be_said_in_the_words_of_every_activity(activity: str) -> None:
    desk = Desk(sample("main"), scenario(activity))
    said = [desk.slip_line(slip_rule(slip_id)) for slip_id in slip_ids()]
    assert len(said) > 300
    assert [line for line in said if _BROKEN.search(line) or "{" in line] == []
    if activity == "seeds":
        assert [line for line in said if _OTHERS_WORDS.search(line)] == []


def test_no_problem_of_seeds_speaks_of_pins_or_breaks_a_verb() -> None:
    """Whole banks: what is asked, and every line of feedback."""
    found = [text for line in lines(sample_problems("seeds", 12)) for text in (line["text"], *(slip["line"] for slip in line["slips"]))]
    assert len(found) > 2000
    assert [text for text in found if _BROKEN.search(text) or _OTHERS_WORDS.search(text)] == []
