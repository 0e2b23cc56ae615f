"""Cuts of the score."""

import tomllib
from random import Random

import pytest

from mathgen.difficulty.levels import Cuts, cuts, level, levels_text
from mathgen.errors import RequestFault


@pytest.mark.parametrize("grade", range(1, 9))
def test_every_grade_has_three_levels_that_rise_with_the_score(grade):
    order = ["support", "on grade", "challenge"]
    found = [order.index(level(score, grade)) for score in range(61)]
    assert found == sorted(found)
    assert set(found) == {0, 1, 2}


def test_a_grade_without_cuts_is_refused():
    with pytest.raises(RequestFault, match="no levels for grade 9"):
        level(3, 9)


def test_cuts_are_thirds_where_scores_allow():
    assert cuts(range(9)) == Cuts(3, 6)
    assert cuts([0] * 10 + [5] * 10 + [9] * 10) == Cuts(5, 9)


def test_equal_scores_stay_together():
    assert cuts([1] * 50 + [2, 3, 4]) == Cuts(2, 3)


def test_no_other_pair_of_cuts_is_nearer_to_thirds():
    rng = Random(7)
    scores = [rng.randrange(20) for _ in range(200)]

    def unevenness(low, high):
        parts = (sum(s < low for s in scores), sum(low <= s < high for s in scores), sum(s >= high for s in scores))
        return sum((3 * part - 200) ** 2 for part in parts)

    chosen = cuts(scores)
    assert unevenness(*chosen) == min(unevenness(low, high) for low in range(1, 20) for high in range(low + 1, 20))


def test_too_few_scores_make_no_levels():
    with pytest.raises(ValueError, match="three different scores; there are 2"):
        cuts([1, 2, 2])


def test_the_text_of_the_file_reads_back():
    text = levels_text({4: range(9), 2: [0, 0, 1, 2, 5, 5]}, "2026-11-25", "sample banks")
    assert tomllib.loads(text) == {"grade": {"2": {"on_grade": 1, "challenge": 5}, "4": {"on_grade": 3, "challenge": 6}}}
    assert "sample banks" in text
    assert "2026-11-25" in text
    assert list(tomllib.loads(text)["grade"]) == ["2", "4"]
