"""Sentences about tenths and hundredths of a dollar, read from the words and the price list alone."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.table import Priced, TrialTable

STORE = TrialTable((), prices=(Priced("paper tube", 5), Priced("roll of tape", 35), Priced("box", 40)))
TOLD = "A roll of tape costs 0.35 of a dollar. A box costs 0.4 of a dollar."
FRACTIONS = "A group pays 35/100 of a dollar for a roll of tape. The group also pays 4/10 of a dollar for a box."

READ = [
    (f"{TOLD} Which costs more, a roll of tape or a box?", "box"),
    (f"{TOLD} Which of the two items costs less?", "roll of tape"),
    ("The price of a box is 0.4 of a dollar. The price of a paper tube is 0.05 of a dollar. Which item has the higher price?", "box"),
    (f"{TOLD} Does a roll of tape cost more than a box?", "false"),
    (f"{TOLD} Does a box cost more than a roll of tape?", "true"),
    (f"{TOLD} Is the first price lower than the second price?", "true"),
    (f"{FRACTIONS} What fraction of a dollar does the group pay in all?", Rational(3, 4)),
    (f"A group has a dollar. {FRACTIONS.replace('A group', 'The group')} What fraction of the dollar is left?", Rational(1, 4)),
    (
        "A box costs 4/10 of a dollar. A paper tube costs 5/100 of a dollar. A group buys the two items and pays with a dollar bill. "
        "What fraction of a dollar does the group get back?",
        Rational(11, 20),
    ),
]
NOT_READ = [
    # another price than the list has, a price told twice
    "A roll of tape costs 0.4 of a dollar. A box costs 0.35 of a dollar. Which costs more, a roll of tape or a box?",
    f"{TOLD} A box costs 40/100 of a dollar. Which of the two items costs less?",
    # one item, another item, three items
    "A roll of tape costs 0.35 of a dollar. Which of the two items costs less?",
    f"{TOLD} Which costs more, a roll of tape or a paper tube?",
    f"{TOLD} A paper tube costs 0.05 of a dollar. Which item has the lower price?",
    # nothing says that there is a dollar; a dollar, or what is bought, that plays no part
    f"{FRACTIONS} What fraction of the dollar is left?",
    f"A group has a dollar. {FRACTIONS.replace('A group', 'The group')} What fraction of a dollar does the group pay in all?",
    f"{TOLD} A group has a dollar and buys the two items. Which of the two items costs less?",
    # parts of nothing, of dollars, of a price
    "A roll of tape costs 0.35. A box costs 0.4. Which costs more, a roll of tape or a box?",
    "A roll of tape costs 0.35 of 2 dollars. A box costs 0.4 of a dollar. Which costs more, a roll of tape or a box?",
]


@pytest.mark.parametrize(("text", "value"), READ)
def test_what_is_read(text: str, value: object) -> None:
    assert read_problem(text, STORE, scenario()).value == value


@pytest.mark.parametrize("text", NOT_READ)
def test_what_is_not_read(text: str) -> None:
    with pytest.raises(NotRead):
        read_problem(text, STORE, scenario())
