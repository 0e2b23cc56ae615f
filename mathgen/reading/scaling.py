"""One count told as a fraction times another, and whether the product is greater than the factor."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Truth
from mathgen.reading.asked import NAME, TRUTH, Answers, Asked
from mathgen.reading.meaning.parts import ScaledCount
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.reading.wanted.parts import AgainstFactor, ProductOrFactor
from mathgen.scenario.words import Scenario


def scaled_count(told: Told, claim: ScaledCount) -> None:
    """Keep which count is a fraction times the one told before.

    Raises:
        NotRead: no such count was told before, another is meant, or it is not so many times as much.
    """
    first = told.last_count
    if told.scaled is not None or first is None or first.measure != claim.measure:
        raise NotRead(f"it is not said what {claim.first.text} counts")
    later = Quantity(claim.measure, told.scope(claim.np))
    if later == first or later.scope._replace(trials=None) != first.scope._replace(trials=None):
        raise NotRead(f"{claim.first.text} counts something else")
    told.referred(first, claim.first)
    rate = Op("/", (later, first))
    told.said(rate, claim.rate)
    told.scaled = claim, later, first
    told.open["scaled"] = "the product"


def against_factor(question: AgainstFactor, told: Told, _: Scenario) -> Asked:
    if told.scaled is None:
        raise NotRead("no product is told of")
    claim, later, first = told.scaled
    numbers = [(question.rate, claim.rate), (question.factor, claim.first), (question.second, claim.first)]
    if any(asked is not None and asked.text != known.text for asked, known in numbers):
        raise NotRead("another product is told of")
    places = [(question.later, later), (question.first, first)]
    if any(np is not None and Quantity(question.measure or later.measure, told.scope(np)) != known for np, known in places):
        raise NotRead("other counts are told of")
    product = Op("*", (Op("/", (later, first)), first))
    return Asked("product or factor", Truth(product, ">" if question.sign > 0 else "<", first), TRUTH, (later, first), ("scaled",))


def product_or_factor(question: ProductOrFactor, told: Told, scenario: Scenario) -> Asked:
    """Which of the two is the greater, or the less."""
    asked = against_factor(AgainstFactor(1, question.rate, question.factor, question.second), told, scenario)
    assert isinstance(asked.goal, Truth)
    goal = Choice(("product", "factor"), asked.goal.exprs, question.greater)
    return asked._replace(kind="product or factor named", goal=goal, demand=NAME)


ASKED: Answers = {
    ProductOrFactor: product_or_factor,
    AgainstFactor: against_factor,
}


TAKEN: Takers = {
    ScaledCount: scaled_count,
}
