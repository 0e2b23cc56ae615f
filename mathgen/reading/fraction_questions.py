"""Parts held side by side, and a fraction that comes again: what is told of them, and what has to be worked out."""

from __future__ import annotations

from mathgen.asks.expression import Choice, Op, Quantity, Stated, Truth, Value
from mathgen.exact.parse import written
from mathgen.reading.asked import ANY, FRACTION, NAME, TRUTH, Answers, Asked
from mathgen.reading.evaluate import evaluate
from mathgen.reading.meaning.parts import SameInTrials, ShareFraction, ShownPart, SomePart
from mathgen.reading.meaning.scope import Mark, Np
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.parts import AsFraction, FractionGap, FractionShare, GreaterPart, SameValue, SetsDown, SetsInAll
from mathgen.scenario.words import Scenario


def _told_fractions(told: Told) -> list[Op]:
    """The fractions of a set that the text tells."""
    return [
        fact.expr
        for fact in told.facts
        if isinstance(fact.expr, Op) and fact.expr.symbol == "/" and all(isinstance(arg, Quantity) for arg in fact.expr.args)
    ]


def greater_part(question: GreaterPart, told: Told, _: Scenario) -> Asked:
    """Of two colors, the one that was told to be the greater part of the same whole."""
    found: list[Op] = []
    for color in (question.one, question.other):
        colors = told.mentions.scope((), (), (color,)).colors
        fitting = [expr for expr in _told_fractions(told) if _is_part(expr, question, colors)]
        if len(fitting) != 1:
            raise NotRead(f"it is not told what part was {color}")
        found += fitting
    first, second = found
    if first.args[1] != second.args[1]:
        raise NotRead("the parts are of two wholes")
    parts = tuple(one.args[0] for one in found)
    assert all(isinstance(part, Quantity) for part in parts)
    return Asked("which", Choice((question.one, question.other), tuple(found)), NAME, parts)  # type: ignore[arg-type]


def _is_part(expr: Op, question: GreaterPart, colors: tuple[str, ...] | None) -> bool:
    part = expr.args[0]
    return isinstance(part, Quantity) and part.measure == question.measure and part.scope.colors == colors


def fraction_gap(question: FractionGap, told: Told, _: Scenario) -> Asked:
    """How much greater the fraction told of one trial is than that of the other."""
    fractions = _told_fractions(told)
    parts = [expr.args[0] for expr in fractions]
    if len(fractions) != 2 or not all(isinstance(part, Quantity) for part in parts):
        raise NotRead("two fractions have to be told of")
    one, other = parts
    assert isinstance(one, Quantity)
    assert isinstance(other, Quantity)
    if one.measure != other.measure or one.scope._replace(trials=None) != other.scope._replace(trials=None):
        raise NotRead("the fractions differ in more than the trial")
    if evaluate(fractions[0].args[1], told.counts) != evaluate(fractions[1].args[1], told.counts):
        raise NotRead("the fractions are of sets of two sizes")
    order = {one.scope.trials: 0, other.scope.trials: 1}
    wanted = question.first if isinstance(question.first, tuple) else None
    if wanted not in order or len(order) != 2:
        raise NotRead("it is not said which trial is meant")
    bigger, smaller = fractions[order[wanted]], fractions[1 - order[wanted]]
    if question.other is not None and question.other not in order:
        raise NotRead("it is not said which trials are compared")
    goal = Op("-", (bigger, smaller))
    if evaluate(goal, told.counts) <= 0:
        raise NotRead("the fraction is not greater")
    return Asked("gap", Value(goal), question.demand, (one, other))


def same_in_trials(told: Told, claim: SameInTrials) -> None:
    """Keep in how many trials the fraction stays the same.

    Raises:
        NotRead: it is told twice, or of another group or outcome than the fraction.
    """
    last = told.last_portion
    if told.same_in_trials is not None or last is None:
        raise NotRead("it is not said which fraction stays the same")
    if claim.measure not in (None, last[0]) or (claim.np.groups is not None and told.scope(claim.np).groups != last[1].groups):
        raise NotRead("it is another fraction that stays the same")
    told.same_in_trials = claim
    told.facts.append(Fact(Stated(int(claim.number.value), "trials at this rate"), claim.number.text))
    told.open["same fraction"] = claim.number.text


def sets_in_all(question: SetsInAll, told: Told, _: Scenario) -> Asked:
    """How many sets are knocked down (or left standing) in the trials that all have one fraction."""
    claim, last = told.same_in_trials, told.last_portion
    if claim is None or last is None:
        raise NotRead("nothing says that the fraction stays the same")
    scope = told.scope(question.np)
    if scope != last[1]:
        raise NotRead("the sets are of other colors or groups")
    part, whole = Quantity(question.measure, scope), Quantity("set_up", scope)
    told.referred(whole, question.whole)
    count = Stated(int(claim.number.value), "trials at this rate")
    return Asked("sets", Value(Op("*", (count, Op("/", (part, whole))))), ANY, (part, whole), ("same fraction",))


def sets_down(question: SetsDown, told: Told, _: Scenario) -> Asked:
    """How many sets of one trial make up a count: every trial has to set up as many."""
    total = told.quantity("down", question.np)
    if total not in {fact.expr for fact in told.facts}:
        raise NotRead("it is not said how many there were")
    told.referred(total, question.total)
    trials = total.scope.trials or told.mentions.every("trials")
    ones = [told.mentions.scope((), (trial,), ()).trials for trial in trials]
    sizes = {told.counts.total("set_up", total.scope._replace(trials=one)) for one in ones}
    if len(trials) < 2 or sizes != {question.whole.value}:
        raise NotRead(f"the trials did not each have {question.whole.text}")
    whole = Quantity("set_up", total.scope)
    each = Op("/", (whole, Stated(len(trials), "trials")))
    told.referred(each, question.whole)
    return Asked("full sets", Value(Op("/", (total, each))), question.demand, (total, whole))


def share_fraction(told: Told, claim: ShareFraction) -> None:
    """Keep among how many trials the fraction is shared.

    Raises:
        NotRead: it is told twice, or the fraction is of more or fewer trials.
    """
    last = told.last_portion
    if told.share_fraction is not None or last is None:
        raise NotRead("it is not said which fraction is shared")
    size = len(last[1].trials or told.mentions.every("trials"))
    if claim.number.value != size:
        raise NotRead(f"there are {size} trials, not {claim.number.text}")
    told.share_fraction = claim
    told.facts.append(Fact(Stated(size, "trials"), claim.number.text))
    told.open["fraction share"] = "the sharing"


def fraction_share(question: FractionShare, told: Told, _: Scenario) -> Asked:
    """One trial's share of the fraction."""
    claim, last = told.share_fraction, told.last_portion
    if claim is None or last is None:
        raise NotRead("it is not said what is shared")
    measure, scope = last
    if told.scope(question.np) != scope:
        raise NotRead("the share is of another set than the fraction")
    part, whole = Quantity(measure, scope), Quantity("set_up", scope)
    told.referred(whole, question.whole)
    goal = Op("/", (Op("/", (part, whole)), Stated(int(claim.number.value), "trials")))
    return Asked("fraction share", Value(goal), ANY, (part, whole), ("fraction share",))


def some_part(told: Told, claim: SomePart) -> None:
    """Keep of which part of a set it will be told how much it is.

    Raises:
        NotRead: there are two.
    """
    if told.some_part is not None:
        raise NotRead("two parts are told of")
    told.some_part = claim
    told.open["part"] = "the part"


def shown_part(told: Told, claim: ShownPart) -> None:
    """Keep how much a part is, as a decimal that does not end.

    Raises:
        NotRead: it is not said which part, or the table says otherwise.
    """
    if told.some_part is None or written(claim.number.text).form != "repeating":
        raise NotRead("it is not said which part that is, or the decimal ends")
    scope = told.scope(told.some_part.np)
    told.said(Op("/", (Quantity(told.some_part.measure, scope), Quantity("set_up", scope))), claim.number)


def as_fraction(question: AsFraction, told: Told, _: Scenario) -> Asked:
    shown = _told_fractions(told)
    if len(shown) != 1 or not any(fact.expr == shown[0] and written(fact.text).form == "repeating" for fact in told.facts):
        raise NotRead("one repeating decimal has to be told")
    part, whole = (arg for arg in shown[0].args if isinstance(arg, Quantity))
    if told.quantity("set_up", Np(part.scope.groups, part.scope.trials, question.colors)) != whole:
        raise NotRead("the question is about other colors")
    return Asked("as fraction", Value(shown[0]), FRACTION, (part, whole), ("part",))


def same_value(question: SameValue, told: Told, scenario: Scenario) -> Asked:
    """Whether a fraction has the value of the repeating decimal that was told."""
    fractions = _told_fractions(told)
    if len(fractions) != 1:
        raise NotRead("one repeating decimal has to be told")
    shown, whole = fractions[0], fractions[0].args[1]
    assert isinstance(whole, Quantity)
    asked = as_fraction(AsFraction(whole.scope.colors or Mark("all")), told, scenario)
    value = question.claimed.value
    claim = Stated(int(value.p), "claimed", int(value.q))
    told.facts.append(Fact(claim, question.claimed.text))
    return asked._replace(kind="same value", goal=Truth(shown, "=", claim), demand=TRUTH)


ASKED: Answers = {
    GreaterPart: greater_part,
    FractionGap: fraction_gap,
    SetsInAll: sets_in_all,
    SetsDown: sets_down,
    FractionShare: fraction_share,
    SameValue: same_value,
    AsFraction: as_fraction,
}


TAKEN: Takers = {
    SameInTrials: same_in_trials,
    ShareFraction: share_fraction,
    SomePart: some_part,
    ShownPart: shown_part,
}
