"""What any difficulty score must keep, whatever its weights."""

from itertools import product

import pytest

from mathgen.difficulty.score import Features, score
from mathgen.errors import RequestFault

GRADES = range(1, 9)
PLAIN = Features("part unknown", steps=("9 - 4 = 5",), answer="5", words=30)


@pytest.mark.parametrize("grade", GRADES)
def test_a_word_that_points_the_wrong_way_is_harder(grade):
    """Lewis and Mayer 1987."""
    assert score(PLAIN._replace(clash=True), grade) > score(PLAIN, grade)


@pytest.mark.parametrize("grade", GRADES)
def test_an_unknown_start_is_no_easier_than_an_unknown_change_or_result(grade):
    """Riley, Greeno and Heller 1983, from memory."""
    start, change, whole = (score(PLAIN._replace(structure=name), grade) for name in ("start unknown", "change unknown", "whole unknown"))
    assert start >= change >= whole
    assert start > whole


@pytest.mark.parametrize("grade", GRADES)
def test_one_more_step_is_harder(grade):
    scores = [score(PLAIN._replace(operations=count), grade) for count in range(1, 6)]
    assert scores == sorted(set(scores))


@pytest.mark.parametrize("grade", GRADES)
def test_an_extra_number_is_harder(grade):
    """Muth 1984: an extra number lowers accuracy."""
    assert score(PLAIN._replace(extra_numbers=1), grade) > score(PLAIN, grade)


@pytest.mark.parametrize("grade", GRADES)
def test_unlike_bottoms_are_harder_than_like_ones(grade):
    like, divides, neither = (score(PLAIN._replace(unlike=kind), grade) for kind in (None, "one divides", "neither"))
    assert like < divides < neither


@pytest.mark.parametrize("grade", GRADES)
def test_the_whole_from_a_part_is_harder_than_the_part_from_the_whole(grade):
    whole, share, part = (score(PLAIN._replace(structure=name), grade) for name in ("whole from part", "what fraction", "part from rate"))
    assert whole > share > part


@pytest.mark.parametrize("grade", GRADES)
def test_reading_between_the_data_is_harder_than_reading_it(grade):
    """Curcio 1987, from memory: read the data, read between the data."""
    read, between = (score(PLAIN._replace(display=kind), grade) for kind in ("read", "between"))
    assert read < between


@pytest.mark.parametrize("grade", GRADES)
def test_explaining_is_harder_than_a_short_answer(grade):
    """Dossey et al. 1993."""
    assert score(PLAIN._replace(explain=True), grade) > score(PLAIN, grade)


@pytest.mark.parametrize("grade", GRADES)
def test_a_longer_text_is_no_easier(grade):
    scores = [score(PLAIN._replace(words=words), grade) for words in range(10, 81)]
    assert scores == sorted(scores)
    assert scores[0] < scores[-1]


@pytest.mark.parametrize("grade", GRADES)
def test_fewer_is_harder_than_more(grade):
    assert score(PLAIN._replace(fewer=True), grade) > score(PLAIN, grade)


def test_names_and_colors_cannot_move_the_score():
    """A name as the answer is like any other name; the features hold no label."""
    assert score(PLAIN._replace(answer="Owls", steps=()), 4) == score(PLAIN._replace(answer="Herons", steps=()), 4)
    assert not {"group", "color", "label", "name"} & set(Features._fields)


def test_the_order_of_addends_cannot_move_the_score():
    for one, other in product(range(1, 40), repeat=2):
        scores = {score(PLAIN._replace(steps=(f"{a} + {b} = {a + b}",), answer=str(a + b)), 2) for a, b in ((one, other), (other, one))}
        assert len(scores) == 1


def test_more_and_fewer_wrong_way_compare_is_the_hardest_compare_in_grade_2():
    """Riley, Greeno and Heller 1983, from memory: the referent unknown, told with "less", is hardest."""
    compared = score(PLAIN._replace(structure="compared unknown"), 2)
    assert (
        compared
        < score(PLAIN._replace(structure="start unknown", clash=True), 2)
        < score(PLAIN._replace(structure="start unknown", clash=True, fewer=True), 2)
    )


def test_a_score_counts_quarter_points():
    """Own proposal, grades 3-5: compared 1 point, clash 1, second operation 1, borrow a quarter."""
    features = Features("compared unknown", clash=True, operations=2, steps=("32 - 17 = 15", "15 - 2 = 13"), answer="13", words=20)
    assert score(features, 4) == 4 + 4 + 4 + 1


def test_an_unknown_grade_or_structure_is_refused():
    with pytest.raises(RequestFault, match="no weights for grade 9"):
        score(PLAIN, 9)
    with pytest.raises(KeyError):
        score(PLAIN._replace(structure="puzzle"), 4)
