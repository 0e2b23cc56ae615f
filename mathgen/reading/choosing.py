"""Fractions of a set that groups had, and which of them have a sum."""

from __future__ import annotations

from mathgen.asks.expression import Chosen, Expr, Op, Quantity, Stated
from mathgen.exact.demand import Demand
from mathgen.exact.parse import written
from mathgen.reading.asked import Asked
from mathgen.reading.evaluate import answer, evaluate
from mathgen.reading.meaning.parts import PartsOfSets
from mathgen.reading.meaning.sets import SumOfSome
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.scenario.words import Scenario


def parts_of_sets(told: Told, claim: PartsOfSets) -> None:
    """Keep the fractions: all those that the groups had, whose sets were told of.

    Raises:
        NotRead: not every group had one set of that size, a fraction is no group's, one is told twice, or one is left out.
    """
    sets = tuple(fact.expr for fact in told.facts if isinstance(fact.expr, Quantity) and fact.expr.measure == "set_up")
    if told.parts or tuple(one.scope.groups for one in sets) != tuple((group,) for group in told.mentions.every("groups")):
        raise NotRead("it is not said what these are fractions of")
    rates = [Op("/", (Quantity(claim.measure, one.scope), one)) for one in sets]
    values = [evaluate(rate, told.counts) for rate in rates]
    if len({evaluate(one, told.counts) for one in sets}) > 1:
        raise NotRead("the sets are not alike")
    if {number.value for number in claim.parts} != set(values) or len(set(values)) < len(claim.parts):
        raise NotRead("these are not all the fractions that there were")
    for number in claim.parts:
        rate = rates[values.index(number.value)]
        told.facts.append(Fact(rate, number.text))
        told.parts = (*told.parts, (number.text, rate))
    told.parts_of = sets
    told.open["parts"] = "a list of fractions"


def which_sums(question: SumOfSome, told: Told, _: Scenario) -> Asked:
    labels, options = tuple(label for label, _ in told.parts), tuple(rate for _, rate in told.parts)
    if len(labels) <= question.size:
        raise NotRead("there is nothing to choose from")
    whole = told.parts_of[0]
    size, total = evaluate(whole, told.counts), question.total
    over = f"/{size}"
    to: Expr
    if all(label.endswith(over) for label in (*labels, total.text)) and " " not in total.text:
        to = Op("/", (Stated(int(total.text.removesuffix(over)), "wanted sum"), whole))
    else:
        to = Stated(int(total.value.numerator), "wanted sum", int(total.value.denominator))
    if written(total.text).form not in ("whole", "fraction", "mixed"):
        raise NotRead(f"{total.text} is no sum of fractions")
    told.facts.append(Fact(to, total.text))
    goal = Chosen(labels, options, question.size, to)
    if answer(goal, told.counts) == "none":
        raise NotRead("no sum will do")
    return Asked("sums listed", goal, Demand("list"), told.parts_of, ("parts",))


TAKEN: Takers = {
    PartsOfSets: parts_of_sets,
}
