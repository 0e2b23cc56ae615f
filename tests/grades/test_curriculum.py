"""Curricula as data: what the files say, against what was published."""

from dataclasses import FrozenInstanceError, replace
from itertools import pairwise

import pytest

from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load, names

CCSS, ENGLAND = load("ccss"), load("england")


def test_curricula_are_the_files_but_for_the_skill_list():
    assert names() == ("ccss", "england")


def test_a_curriculum_is_read_once():
    assert load("ccss") is CCSS


def test_an_unknown_curriculum_is_told_its_neighbor_and_the_choices():
    with pytest.raises(RequestFault, match=r'No curriculum "englnd"; did you mean "england"\? The choices are: ccss, england\.'):
        load("englnd")


def test_an_unknown_grade_is_told_the_grades():
    with pytest.raises(RequestFault, match=r"Common Core State Standards has no grade 9 here; the grades are 1 to 8\."):
        CCSS.limits(9)
    with pytest.raises(RequestFault, match="the grades are 2 to 7"):
        ENGLAND.caps(8)


def test_an_unknown_skill_is_told_the_choices():
    with pytest.raises(RequestFault, match=r'No skill "meen"; did you mean "mean"\?'):
        CCSS.words("meen")


def test_denominators_by_grade_are_the_published_lists():
    """CCSS-M 2010, footnotes on 3.NF ("denominators 2, 3, 4, 6, and 8") and 4.NF (2, 3, 4, 5, 6, 8, 10, 12, and 100)."""
    assert {grade: CCSS.limits(grade).denominators for grade in (3, 4, 5)} == {
        3: (2, 3, 4, 6, 8),
        4: (2, 3, 4, 5, 6, 8, 10, 12, 100),
        5: None,
    }


def test_largest_numbers_by_grade_are_the_published_ones():
    """CCSS-M 2010: 1.OA.A.1 within 20, 2.OA.A.1 within 100, 3.NBT.A.2 within 1000, footnote on 4.NBT 1,000,000."""
    assert [CCSS.limits(grade).story_max for grade in range(1, 6)] == [20, 100, 1000, 1_000_000, None]


def test_graph_categories_are_the_published_ones():
    """CCSS-M 2010: 1.MD.C.4 up to three categories, 2.MD.D.10 up to four."""
    assert [CCSS.limits(grade).graph_categories for grade in (1, 2, 3)] == [3, 4, None]


@pytest.mark.parametrize(
    ("feature", "first"),
    [
        ("two_step", 2),  # 2.OA.A.1
        ("multiply_divide", 3),  # 3.OA.A
        ("fraction_notation", 3),  # 3.NF.A.1
        ("times_as_many", 4),  # 4.OA.A.2
        ("remainder", 4),  # 4.NBT.B.6
        ("fraction_add_like", 4),  # 4.NF.B.3
        ("decimal_notation", 4),  # 4.NF.C.6
        ("fraction_add_unlike", 5),  # 5.NF.A.1
        ("fraction_of_quantity", 5),  # 5.NF.B.4a
        ("decimal_compute", 5),  # 5.NBT.B.7
        ("percent", 6),  # 6.RP.A.3c
        ("ratio", 6),  # 6.RP.A.1
        ("negative", 6),  # 6.NS.C.5
        ("mean_median_iqr_mad", 6),  # 6.SP.B.5c
        ("percent_change", 7),  # 7.RP.A.3
        ("probability", 7),  # 7.SP.C
        ("repeating_decimal", 7),  # 7.NS.A.2d
        ("negative_arithmetic", 7),  # 7.NS.A.1
    ],
)
def test_features_start_in_the_published_grade(feature, first):
    """CCSS-M 2010, the code beside each row."""
    assert [grade for grade in CCSS.grades if feature in CCSS.limits(grade).features] == list(range(first, 9))


@pytest.mark.parametrize("curriculum", [CCSS, ENGLAND], ids=lambda each: each.name)
def test_entries_are_whole_and_in_grade_order(curriculum):
    for skill in curriculum.all_skills():
        grades = [entry.grade for entry in curriculum.entries(skill)]
        assert grades == sorted(set(grades))
        assert set(grades) <= set(curriculum.grades)
        for entry in curriculum.entries(skill):
            assert entry.standards
            assert curriculum.entry(skill, entry.grade) is entry
            assert skill in curriculum.skills(entry.grade)


def test_a_us_standard_belongs_to_the_grade_it_is_listed_under():
    """CCSS-M 2010: a code begins with its grade."""
    for skill in CCSS.all_skills():
        for entry in CCSS.entries(skill):
            codes = [*entry.standards, *(code for other in entry.when for code in other.standards)]
            assert {code.split(".")[0] for code in codes} == {str(entry.grade)}


@pytest.mark.parametrize(
    ("skill", "grades"),
    [
        ("two steps, what is left", (2, 3, 4)),  # 2.OA.A.1, 3.OA.D.8, 4.OA.A.3
        ("compare, difference unknown", (1, 2, 3)),  # 1.OA.A.1, 2.OA.A.1, 3.MD.B.3
        ("take from, what is missing", (1, 2)),  # 1.OA.A.1, 2.OA.A.1
        ("add parts of one whole", (4, 5)),  # 4.NF.B.3d like, 5.NF.A.2 unlike denominators
        ("value of an expression", (6,)),  # 6.EE.A.2c
        ("percent change", (7,)),  # 7.RP.A.3
        ("expected count", (7,)),  # 7.SP.C.6
    ],
)
def test_skills_by_grade_follow_the_standards(skill: str, grades: tuple[int, ...]):
    assert tuple(grade for grade in CCSS.grades if skill in CCSS.skills(grade)) == grades


def test_an_entry_that_a_grade_lacks_is_none():
    assert CCSS.entry("percent of a set", 5) is None
    assert CCSS.entry("percent of a set", 6) is not None


def test_fractions_of_sets_can_be_switched_off_in_grade_3_alone():
    """North Carolina NC.3.NF.1-4 names area and length models only; South Carolina 3.NSF.1.d names sets."""
    areas_only = replace(CCSS, switches={"fraction_of_a_set": False})
    assert "fraction of a set" not in areas_only.skills(3)
    assert "compare fractions" not in areas_only.skills(3)
    assert "compare fractions" in areas_only.skills(4)
    assert "fraction of a set" in CCSS.skills(3)


def test_topics_and_words_of_skills():
    topics = CCSS.topics()
    assert {"whole numbers", "fractions", "decimals", "ratios", "percents", "statistics", "chance"} < set(topics)
    assert len(set(topics)) == len(topics)
    for skill in CCSS.all_skills():
        words = CCSS.words(skill)
        assert words.i_can.startswith("I can ")
        assert words.i_can.endswith(".")
        assert words.strand


def test_wording_caps_rise_with_the_grade():
    """Own proposal; the caps of grade 4 are 45 words, 4 sentences, 15 words in one, 13 in the question."""
    for curriculum in (CCSS, ENGLAND):
        caps = [curriculum.caps(grade) for grade in curriculum.grades]
        assert all(one.words <= other.words and one.question <= other.question for one, other in pairwise(caps))
    four = CCSS.caps(4)
    assert (four.words, four.sentences, four.longest_sentence, four.question) == (45, 4, 15, 13)


def test_england_starts_fractions_of_sets_percents_and_means_earlier():
    """DfE 2013: fractions of a discrete set in Year 3, percents in Year 5, the mean in Year 6; grades here are a year lower."""
    assert ENGLAND.entries("part from a fraction")[0].grade == 2
    assert ENGLAND.entries("percent of a set")[0].grade == 4
    assert ENGLAND.entries("mean")[0].grade == 5
    assert [CCSS.entries(skill)[0].grade for skill in ("part from a fraction", "percent of a set", "mean")] == [5, 6, 6]


def test_grades_are_named_as_the_curriculum_names_them():
    assert (CCSS.label(4), ENGLAND.label(4)) == ("Grade 4", "Year 5")


def test_standards_are_listed_by_grade_without_repeats():
    listed = CCSS.standards()
    assert len(listed) == len(set(listed))
    assert [code[0] for code in listed] == sorted(code[0] for code in listed)
    assert "2.NBT.B.6" in listed


def test_a_curriculum_cannot_be_changed():
    with pytest.raises(FrozenInstanceError):
        CCSS.name = "other"
    with pytest.raises(TypeError):
        CCSS.switches["fraction_of_a_set"] = False
