"""Things put in pairs and in boxes: what is told of them, and what is asked."""

from __future__ import annotations

from mathgen.asks.expression import PAIR, Quantity, QuotientRemainder, Stated, Truth
from mathgen.exact.demand import Demand
from mathgen.reading.asked import TRUTH, WHOLE, Answers, Asked
from mathgen.reading.counting import covered
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.meaning.sets import InBoxes, InPairs, InTwo
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told, settled
from mathgen.reading.wanted.sets import AllFull, Boxed, Doubled, Paired, Partners, Shared
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Measure


def in_pairs(told: Told, claim: InPairs) -> None:
    """Keep what is put in pairs.

    Raises:
        NotRead: two things are.
    """
    if told.in_pairs is not None:
        raise NotRead("two kinds are put in pairs")
    told.in_pairs = claim
    told.open["pairs"] = "putting in pairs"


def together(told: Told, measure: Measure | None, np: Np) -> Quantity:
    """All of "these pins", or of the pins knocked down: what was told piece by piece is taken together.

    Raises:
        NotRead: it is not said which are meant, or the pieces are not all of it.
    """
    if measure is None:
        if told.last_count is None:
            raise NotRead('it is not said what "these" are')
        measure = told.last_count.measure
    told.mentions.merged = False
    whole = Quantity(measure, told.scope(np, True))
    if told.mentions.merged:
        covered(told, whole)
    return whole


def paired(question: Paired, told: Told, _: Scenario) -> Asked:
    whole = together(told, question.measure, question.np)
    return Asked("in pairs", Truth(whole, "multiple" if question.even else "no multiple", PAIR), TRUTH, (whole,))


def partners(question: Partners, told: Told, scenario: Scenario) -> Asked:
    claim = told.in_pairs
    if claim is None:
        raise NotRead("nothing is put in pairs")
    choices = settled(told, claim.np)
    if len(choices) > 1:
        raise NotRead("it is not said which color")
    asked = paired(Paired(claim.measure, choices[0], question.all_have), told, scenario)
    return asked._replace(uses=("pairs",))


def in_two(told: Told, claim: InTwo) -> None:
    """Keep what is put in two equal rows, or of what the double is told.

    Raises:
        NotRead: two things are.
    """
    if told.in_two is not None:
        raise NotRead("two kinds are put in two rows")
    told.in_two = claim
    told.open["two"] = "the two that are alike"


def doubled(question: Doubled, told: Told, _: Scenario) -> Asked:
    """Half of an even number: the pairs, the pins of one of two equal rows, or the number that is added to itself.

    Raises:
        NotRead: nothing is put in two, or one would be over.
    """
    claim: InTwo | InPairs | None = told.in_pairs if question.of_two == "pairs" else told.in_two
    if claim is None or (isinstance(claim, InTwo) and claim.of_two != question.of_two):
        raise NotRead("it is not said what is put in two")
    choices = settled(told, claim.np)
    if len(choices) > 1 or (isinstance(question.colors, tuple) and question.colors != choices[0].colors):
        raise NotRead("it is not said which color")
    whole = together(told, claim.measure, choices[0])
    if isinstance(claim, InTwo) and claim.number is not None:
        told.referred(whole, claim.number)
    if evaluate(whole, told.counts) % 2:
        raise NotRead("one is over")
    return Asked("doubled", QuotientRemainder(whole, PAIR, "full"), WHOLE, (whole,), ("pairs" if question.of_two == "pairs" else "two",))


def in_boxes(told: Told, claim: InBoxes) -> None:
    """Keep what is put in boxes, and how many in each.

    Raises:
        NotRead: two things are.
    """
    if told.in_boxes is not None:
        raise NotRead("two kinds are put in boxes")
    told.in_boxes = claim
    told.open["boxes"] = claim.number.text
    told.facts.append(Fact(Stated(int(claim.number.value), "in each group"), claim.number.text))


def shared(question: Shared, told: Told, _: Scenario) -> Asked:
    size = Stated(int(question.number.value), "in each group")
    told.facts.append(Fact(size, question.number.text))
    whole = together(told, question.measure, question.np)
    return Asked("in equal groups", Truth(whole, "multiple", size), TRUTH, (whole,))


def all_full(question: AllFull, told: Told, scenario: Scenario) -> Asked:
    claim, np = _put_in(told, question.box)
    return shared(Shared(claim.measure, np, claim.number), told, scenario)._replace(uses=("boxes",))


def _put_in(told: Told, box: str | None) -> tuple[InBoxes, Np]:
    """What was put in boxes of a kind, or of any kind (None).

    Raises:
        NotRead: nothing was, or it is not said which color.
    """
    claim = told.in_boxes
    if claim is None or box not in (claim.box, None):
        raise NotRead(f"nothing is put in {box}s" if box in ("bag", "row") else "nothing is put in boxes")
    choices = settled(told, claim.np)
    if len(choices) > 1:
        raise NotRead("it is not said which color")
    return claim, choices[0]


def boxed(question: Boxed, told: Told, _: Scenario) -> Asked:
    claim, np = _put_in(told, question.box)
    if isinstance(question.colors, tuple) and question.colors != claim.np.colors:
        raise NotRead("other colors are put in boxes than are asked for")
    assert question.colors is None or isinstance(question.colors, Mark | tuple)
    whole = together(told, claim.measure, np)
    goal = QuotientRemainder(whole, Stated(int(claim.number.value), "in each group"), question.want)
    return Asked("in boxes", goal, Demand("quotient_remainder") if question.want == "both" else WHOLE, (whole,), ("boxes",))


ASKED: Answers = {
    Doubled: doubled,
    Paired: paired,
    Boxed: boxed,
    Shared: shared,
    AllFull: all_full,
    Partners: partners,
}


TAKEN: Takers = {
    InPairs: in_pairs,
    InBoxes: in_boxes,
    InTwo: in_two,
}
