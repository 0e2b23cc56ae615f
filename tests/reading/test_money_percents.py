"""Sentences about percents of prices, read from the words and the price list alone."""

from __future__ import annotations

import pytest
from sympy import Rational

from mathgen.reading.read_problem import read_problem
from mathgen.reading.tokens import NotRead
from mathgen.scenario.words import scenario
from mathgen.trials.table import Priced, TrialTable

STORE = TrialTable((), prices=(Priced("paper tube", 8), Priced("roll of tape", 30), Priced("sock balls", 20), Priced("box", 40)))

READ = [
    ("The price of the box is 40 cents. The tax is 10% of the price. How many cents is the tax?", "4"),
    ("The box costs 40¢. In a sale, the store takes 20% off. How many cents does the store take off?", "8"),
    ("Look at the price list. In a sale, every price is 25% less. How many cents less do the sock balls cost in the sale?", "5"),
    ("The price of the box is 40 cents. In a sale, the store takes 15% off. What is the sale price in cents?", "34"),
    ("A group buys the box in a sale. The box costs 40¢. The store takes 15% off this price. How many cents does the group pay?", "34"),
    ("Look at the price list. In a sale, every price is 75% less. How many cents does the paper tube cost in the sale?", "2"),
    ("A group buys the box for 40¢. A tax of 5% is added. How many cents does the group pay in all?", "42"),
    ("Look at the price list. The store adds a tax of 5%. How many cents does the box cost with the tax?", "42"),
    ("The box costs 40¢ this week. Next week, every price goes up by 25%. How many cents will the box cost next week?", "50"),
    ("The box costs 40¢. Next week, the price goes down by 25%. What is the new price in cents?", "30"),
    ("The box costs 40¢ this week. The price is 20% less than last week. How many cents did the box cost last week?", "50"),
    ("The price of the box is now 40 cents. The price went up by 60% this week. What was the price last week in cents?", "25"),
    ("Look at the price list. Every price went down by 20% this week. How many cents did the paper tube cost last week?", "10"),
    ("The price of the box is 40 cents. Next week, the price will be 50 cents. By what percent will the price increase?", "1/4"),
    ("Look at the price list. Next week, the box will cost 30¢. By what percent will the price go down?", "1/4"),
    ("The box costs 40¢. The sock balls cost 20¢. What percent less do the sock balls cost than the box?", "1/2"),
    ("The sock balls cost 20¢. A roll of tape costs 30¢. By what percent is the higher price above the lower price?", "1/2"),
    ("One box costs $0.40. A group buys 5 boxes in a sale. The store takes 10% off the total. How many dollars does the group pay?", "9/5"),
]
NOT_READ = [
    # no percent, two, one that is no percent of a price
    "The price of the box is 40 cents. What is the sale price in cents?",
    "A group buys the box for 40¢. A tax of 5% is added. The tax is 10% of the price. How many cents does the group pay in all?",
    "The box costs 40¢. In a sale, the store takes 100% off. What is the sale price in cents?",
    "The box costs 40¢. In a sale, the store takes 20 off. What is the sale price in cents?",
    # the percent is of something else than what is asked for
    "The box costs 40¢. In a sale, the store takes 20% off. How many cents is the tax?",
    "The box costs 40¢. The tax is 10% of the price. What is the sale price in cents?",
    "The box costs 40¢. Next week, the price goes up by 25%. How many cents did the box cost last week?",
    "The box costs 40¢. The price is 20% less than last week. How many cents will the box cost next week?",
    "A group buys the box for 40¢. The price went up by 60% this week. How many cents does the group pay in all?",
    # a percent that plays no part
    "The box costs 40¢. In a sale, the store takes 20% off. What percent of a dollar does the box cost?",
    "The box costs 40¢. The sock balls cost 20¢. The store adds a tax of 5%. How many cents do the two items cost in all?",
    # another item, another way, no new price
    "The box costs 40¢. In a sale, every price is 25% less. How many cents does the paper tube cost in the sale?",
    "The price of the box is 40 cents. Next week, the price will be 50 cents. By what percent will the price decrease?",
    "The price of the box is 40 cents. Next week, the sock balls will cost 50 cents. By what percent will the price go up?",
    "The price of the box is 40 cents. By what percent will the price go up?",
    "The box costs 40¢. The sock balls cost 20¢. What percent more do the sock balls cost than the box?",
    "The sock balls cost 20¢. The box costs 40¢. By what percent is the price of a box lower than the price of the sock balls?",
    "Look at the price list. What percent more does the box cost than the box?",
    # no whole number of cents
    "The paper tube costs 8¢. In a sale, the store takes 20% off. What is the sale price in cents?",
]


@pytest.mark.parametrize(("text", "value"), READ)
def test_what_is_read(text: str, value: str) -> None:
    assert read_problem(text, STORE, scenario()).value == Rational(value)


@pytest.mark.parametrize("text", NOT_READ)
def test_what_is_not_read(text: str) -> None:
    with pytest.raises(NotRead):
        read_problem(text, STORE, scenario())
