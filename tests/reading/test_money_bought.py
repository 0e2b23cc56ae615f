"""Sentences about what is bought for some cents, shared, or paid with dollar bills."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.table import Priced, TrialTable

STORE = TrialTable((), prices=(Priced("paper tube", 8), Priced("roll of tape", 35), Priced("sock balls", 20), Priced("box", 40)))

READ = [
    ("One paper tube costs 8¢. A box costs 40¢. A group buys 3 paper tubes and a box. How many cents does the group pay in all?", "64"),
    ("Look at the price list. A group buys 3 paper tubes and the sock balls. How many cents does the group pay in all?", "44"),
    ("A box costs 40¢. A paper tube costs 8¢. A group has a dollar and buys the two items. How many cents does the group have left?", "52"),
    ("One paper tube costs 8¢. A group spends 24¢ on paper tubes. How many paper tubes does the group buy?", "3"),
    ("The price list says 8¢ for one paper tube. A group has 32¢. How many paper tubes can the group buy?", "4"),
    ("Look at the price list. The price of a box is shared equally by 5 groups. How many cents does each group pay?", "8"),
    ("A box costs 40¢. A class of 5 groups shares the price equally. How many cents does each group pay?", "8"),
    ("A box costs 40¢. A paper tube costs 8¢. How many times as much does a box cost as a paper tube?", "5"),
    ("The price of the sock balls is 20 cents. The price of a box is 40 cents. The higher price is how many times the lower price?", "2"),
    ("One box costs 40¢. A group buys 7 boxes and pays with dollar bills. How many dollar bills does the group need?", "3"),
    ("The price of one roll of tape is 35 cents. How many dollar bills are needed to buy 9 rolls of tape?", "4"),
]
NOT_READ = [
    # nothing is spent, twice, on something else, or it plays no part
    "One paper tube costs 8¢. How many paper tubes does the group buy?",
    "One paper tube costs 8¢. A group spends 24¢ on paper tubes. The group has 32¢. How many paper tubes does the group buy?",
    "One paper tube costs 8¢. A group spends 40¢ on boxes. How many paper tubes does the group buy?",
    "One paper tube costs 8¢. A group has 32¢. What percent of a dollar does a paper tube cost?",
    "One paper tube costs 8¢. A group spends 25¢ on paper tubes. How many paper tubes does the group buy?",
    # nobody shares, nothing is shared, two prices
    "A box costs 40¢. How many cents does each group pay?",
    "The price is shared equally by 5 groups. How many cents does each group pay?",
    "A box costs 40¢. A paper tube costs 8¢. The price is shared equally by 5 groups. How many cents does each group pay?",
    # the wrong one is said to cost more
    "A box costs 40¢. A paper tube costs 8¢. How many times as much does a paper tube cost as a box?",
    # what is bought is not said, or is not all that is told
    "One box costs 40¢. How many dollar bills does the group need?",
    "A box costs 40¢. A group has a dollar and buys the two items. How many cents does the group have left?",
    "One paper tube costs 8¢. A group buys 3 paper tubes and a paper tube. How many cents does the group pay in all?",
    "A box costs 40¢. A paper tube costs 8¢. A group has a dollar and buys the two items. How many cents apart are the two prices?",
]


@pytest.mark.parametrize(("text", "value"), READ)
def test_what_is_read(text: str, value: str) -> None:
    assert read_problem(text, STORE, scenario()).value == Rational(value)


@pytest.mark.parametrize("text", NOT_READ)
def test_what_is_not_read(text: str) -> None:
    with pytest.raises(NotRead):
        read_problem(text, STORE, scenario())
