"""Sentences about prices, read from the words and the price list alone."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.exact.demand import Demand
from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.table import Priced, TrialTable

STORE = TrialTable((), prices=(Priced("paper tube", 8), Priced("roll of tape", 35), Priced("sock balls", 20), Priced("box", 40)))

READ = [
    ("A group buys the paper tube for 8¢. The group also buys the box for 40¢. How many cents does the group pay in all?", "48"),
    ("The price of the paper tube is 8 cents. The sock balls cost 20 cents. How many cents do the two items cost in all?", "28"),
    ("The box costs 40¢. The roll of tape costs 35¢. What is the total price of the two items in cents?", "75"),
    ("Look at the price list. A group buys the box and the sock balls. How many cents does the group pay in all?", "60"),
    ("Look at the price list. A group buys 3 boxes. How many cents does the group pay?", "120"),
    ("The price of one roll of tape is 35 cents. How many cents do 2 rolls of tape cost?", "70"),
    ("A group has a dollar. The group buys the box for 40¢. How many cents does the group have left?", "60"),
    ("Look at the price list. A group buys 2 boxes. The group pays 3 dollars. How many cents does the group get back?", "220"),
    ("Look at the prices of the box and the paper tube. How many cents more does the box cost?", "32"),
    ("The box costs $0.40. What fraction of a dollar does the box cost?", "2/5"),
    ("A store sells a box for $0.40. The store sells one paper tube for $0.08. How many dollars more does the box cost?", "8/25"),
    ("The paper tube costs 8¢. How many dollars does the paper tube cost, as a decimal?", "2/25"),
    ("Look at the price list. What percent of a dollar is the price of the box?", "2/5"),
    ("The box costs 40¢. The paper tube costs 8¢. What percent of the higher price is the lower price?", "1/5"),
    ("A box costs 40¢. A roll of tape costs 35¢. The price of a roll of tape is what percent of the price of a box?", "7/8"),
    ("One box costs $0.40. A group buys 4 boxes. The group pays 2 dollars. How many dollars of change does the group get?", "2/5"),
]
NOT_READ = [
    # a price that is not on the list, a price of nothing, a price told twice
    "The price of the box is 35¢. The price of the paper tube is 8¢. How many cents do the two items cost in all?",
    "The price of the ramp is 35¢. The price of the paper tube is 8¢. How many cents do the two items cost in all?",
    "The box costs 40¢. The price of the box is 40¢. What percent of a dollar is the price of the box?",
    # nothing says what the box costs
    "A group buys the box. The group pays with a dollar bill. How many cents does the group get back?",
    "Look at the price of the paper tube. What percent of a dollar is the price of the box?",
    # a number, a price, a place to look that play no part
    "The box costs 40¢. The paper tube costs 8¢. What percent of a dollar does the box cost?",
    "Look at the price list. The box costs 40¢. What percent of a dollar does the box cost?",
    "A group buys 3 boxes. The box costs 40¢. What percent of a dollar does the box cost?",
    "A group has a dollar. The box costs 40¢. What percent of a dollar does the box cost?",
    # which is not the dearer, dollars and cents in one question, cents that no list prints
    "The box costs 40¢. The paper tube costs 8¢. How many cents more does the paper tube cost?",
    "The box costs $0.40. The paper tube costs $0.08. How many cents do the two items cost in all?",
    "The box costs 40. The paper tube costs 8. How many cents do the two items cost in all?",
    "The box costs $40. What fraction of a dollar does the box cost?",
    "Look at the price list. A group buys 3 sock balls. How many cents does the group pay?",
    "The box costs 40¢. What is the price in dollars?",
    "The box costs $0.40. What is the price in dollars, as a decimal?",
]


@pytest.mark.parametrize(("text", "value"), READ)
def test_what_is_read(text: str, value: str) -> None:
    assert read_problem(text, STORE, scenario()).value == Rational(value)


def test_how_many_can_be_bought_and_what_is_left() -> None:
    text = "One paper tube costs 8¢. A group has a dollar. How many paper tubes can be bought, and how many cents are left?"
    reading = read_problem(text, STORE, scenario())
    assert (reading.value, reading.demand) == ("12 r 4", Demand("quotient_remainder"))


@pytest.mark.parametrize("text", NOT_READ)
def test_what_is_not_read(text: str) -> None:
    with pytest.raises(NotRead):
        read_problem(text, STORE, scenario())


def test_a_number_with_a_dollar_sign_counts_no_pins() -> None:
    from mathgen.trials.table import Row

    table = TrialTable((Row("Owls", 1, "red", 4, 3),))
    read_problem("The Owls knocked down 3 pins in Trial 1. How many pins were left standing in Trial 1?", table, scenario())
    with pytest.raises(NotRead):
        read_problem("The Owls knocked down $3 pins in Trial 1. How many pins were left standing in Trial 1?", table, scenario())
