"""Rules for stories of adding to a count and taking from it: before a trial, after it, and what it added."""

from __future__ import annotations

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.facts import Claims, at, of
from mathgen.reading.meaning.counts import Count
from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.noun_phrases import Counted, what
from mathgen.reading.wanted.counts import Blank, HowMany, IsDifference, IsTrue
from mathgen.trials.scope import Label


def _one(trials: tuple[Label, ...]) -> tuple[Label, ...]:
    """The trials, where they are one: "before Trials 1 and 2" says nothing clear."""
    if len(trials) != 1:
        raise Clash
    return trials


def _before(trials: tuple[Label, ...]) -> Mark:
    return Mark("before", None, _one(trials))


def _total_after(trials: tuple[Label, ...], thing: Counted) -> Claims:
    """The count of all trials up to one. Only what is knocked down adds up: what is left standing is set up again."""
    return (Count("down", what(thing.colors, None, Mark("through", None, _one(trials))), thing.number),)


def _asked_after(colors: Labels, trials: tuple[Label, ...]) -> HowMany:
    return HowMany("down", Np(None, Mark("through", None, _one(trials)), colors))


def _added(trials: tuple[Label, ...], thing: Counted, who: Labels = None) -> Claims:
    return (Count("down", what(thing.colors, who, _one(trials)), thing.number),)


def _after(trials: tuple[Label, ...], claims: Claims) -> Claims:
    """What stands after a trial is what that trial left; what falls after it would be of later trials."""
    if not all(isinstance(claim, Count) and claim.measure == "standing" for claim in claims):
        raise Clash
    return at(_one(trials), claims)


def _left_then(claims: Claims) -> Claims:
    """ "Then 7 pins were left standing": after the trial that was told of last."""
    if not all(isinstance(claim, Count) and claim.measure == "standing" for claim in claims):
        raise Clash
    return claims


def _together(who: Labels, claims: Claims) -> Claims:
    """ "Together, the Owls and the Kites knocked down 15 pins": one count for several groups."""
    if isinstance(who, tuple) and len(who) < 2:
        raise Clash
    return of(who, claims)


RULES: tuple[Rule, ...] = (
    # number sentences with a blank
    rule("blank", "WHOLE + _ _ = WHOLE", lambda first, result: Blank("+", first, None, result)),
    rule("blank", "_ _ + WHOLE = WHOLE", lambda second, result: Blank("+", None, second, result)),
    rule("blank", "WHOLE - _ _ = WHOLE", lambda first, result: Blank("-", first, None, result)),
    rule("blank", "_ _ - WHOLE = WHOLE", lambda second, result: Blank("-", None, second, result)),
    rule("sums", "WHOLE + WHOLE = WHOLE", lambda a, b, c: IsTrue((a, b), "=", (c,))),
    rule("sums", "WHOLE = WHOLE + WHOLE", lambda a, b, c: IsTrue((a,), "=", (b, c))),
    rule("sums", "WHOLE - WHOLE = WHOLE + WHOLE", lambda a, b, c, d: IsDifference((a, b), (c, d))),
    rule("sums", "WHOLE > WHOLE", lambda left, right: IsTrue((left,), ">", (right,))),
    rule("sums", "WHOLE (<) WHOLE", lambda left, right: IsTrue((left,), "<", (right,))),
    rule("ask", "is <sums> true", lambda question: question),
    rule("ask", "is <sums> a true number sentence", lambda question: question),
    rule("ask", "is the number sentence <sums> true", lambda question: question),
    rule("ask", "what number is missing in <blank>", lambda question: question),
    rule("ask", "what number makes <blank> true", lambda question: question),
    rule("ask", "what is the missing number in <blank>", lambda question: question),
    rule("fact", "then <passive>", _left_then),
    # before a trial and after it
    rule("when", "before TRIALS", _before),
    rule("fact", "then <clause>", lambda claims: claims),
    rule("fact", "together , <who> <vp>", _together),
    rule("added", "TRIALS added <counted>", _added),
    rule("added", "TRIALS added <counted> for <who>", _added),
    rule("fact", "<added>", lambda claims: claims),
    rule("fact", "then <added>", lambda claims: claims),
    rule("fact", "after TRIALS , the total was <counted>", _total_after),
    rule("fact", "TRIALS made the total <counted>", _total_after),
    rule("ask", "what was the total number of <things> after TRIALS", _asked_after),
    rule("fact", "after TRIALS , <passive>", _after),
    rule("ask", "how many <things> did TRIALS add", lambda colors, trials: HowMany("down", Np(None, _one(trials), colors))),
)
