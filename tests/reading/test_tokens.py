import pytest

from mathgen.reading.grammar import GRAMMAR
from mathgen.reading.lexicon import lexicon
from mathgen.reading.read_problem import Reader
from mathgen.reading.tokens import NotRead, Tokenizer
from mathgen.trials.table import Row, TrialTable
from tests.reading.small_class import RAMP, TABLE

CUT = Tokenizer(lexicon(TABLE, RAMP), GRAMMAR.words)


def kinds(text: str) -> list[str]:
    return [token[0] for sentence in CUT.sentences(text) for token in sentence.kinds]


def values(text: str) -> list[object]:
    return [token[0] for sentence in CUT.sentences(text) for token in sentence.values]


def test_labels_and_verb_phrases_are_one_token_each():
    assert kinds("The Owls knocked down 3 red pins.") == ["the", "GROUP", "DOWN", "NUM", "COLOR", "ITEM"]


@pytest.mark.parametrize(
    ("text", "trials"),
    [
        ("in Trial 2", (2,)),
        ("in Trials 1 and 2", (1, 2)),
        ("in Trials 1, 2, and 3", (1, 2, 3)),
        ("in Trials 1 to 3", (1, 2, 3)),
        ("in Trial 1 and Trial 3", (1, 3)),
    ],
)
def test_trials_are_one_token(text: str, trials: tuple[int, ...]):
    assert values(text)[1] == trials


def test_the_letters_of_and_are_no_trials():
    """Trials called A to D: "Trial C and Trial D" names two, and the "d" of "and" is none of them."""
    lettered = TrialTable(tuple(Row("Owls", trial, "red", 4, 1) for trial in "ABCD"))
    [sentence] = Tokenizer(lexicon(lettered, RAMP), GRAMMAR.words).sentences("in Trial C and Trial D")
    assert sentence.values[1][0] == ("C", "D")


def test_a_number_after_a_trial_is_no_trial():
    assert kinds("In Trial 1, 2/3 of the pins") == ["in", "TRIALS", ",", "NUM", "of", "the", "ITEM"]
    assert kinds("In Trials 1 and 2, 3 pins") == ["in", "TRIALS", ",", "NUM", "ITEM"]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("12", "12"),
        ("1,234", "1234"),
        ("3/4", "3/4"),
        ("2 1/2", "5/2"),
        ("75%", "3/4"),
        ("0.75", "3/4"),
        ("twelve", "12"),
        ("three fourths", "3/4"),
    ],
)
def test_numbers_of_every_school_form_are_one_token(text: str, value: str):
    [number] = values(text)
    assert str(number.value) == value  # type: ignore[attr-defined]


def test_numbers_in_a_list_stay_apart():
    assert [str(number.value) for number in values("16, 16, and 11") if number] == ["16", "16", "11"]  # type: ignore[attr-defined]


def test_empty_words_are_dropped_and_unknown_words_are_not():
    assert kinds("The Owls also knocked down") == ["the", "GROUP", "DOWN"]
    with pytest.raises(NotRead, match="hardly"):
        CUT.sentences("The Owls hardly knocked down")


def test_a_trial_that_the_table_does_not_have_is_said():
    with pytest.raises(NotRead, match="no trial 9"):
        CUT.sentences("in Trial 9")


def test_a_group_named_like_a_color_can_be_both():
    table = TrialTable((Row("Red", 1, "red", 4, 3), Row("Blue", 1, "red", 4, 2)))
    [sentence] = Tokenizer(lexicon(table, RAMP), GRAMMAR.words).sentences("Red")
    assert sorted(sentence.kinds[0]) == ["COLOR", "GROUP"]


def test_sentences_end_at_their_signs_and_not_inside_numbers():
    assert [sentence.end for sentence in CUT.sentences("The Owls knocked down 0.75 of the pins. How many?")] == [".", "?"]


@pytest.mark.parametrize(
    "text", ["The Owls knocked down " + "3, " * 900 + "and 3 pins.", "9" * 5000, "1/0", "Zoë 🎳?", "- - -", "?!.", "\x00"]
)
def test_no_text_ends_in_anything_but_a_reason(text: str):
    with pytest.raises(NotRead):
        Reader(TABLE, RAMP).read(text)
