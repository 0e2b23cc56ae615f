"""A pupil's text as what is told first, one question, and the form of its answer."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.pupils import asked_counts, asked_parts, asked_points, asked_series
from mathgen.reading.pupils.asked_counts import SIGNS, TURNS
from mathgen.reading.pupils.bags import Bag
from mathgen.reading.pupils.one_meaning import one_meaning
from mathgen.reading.pupils.one_question import MAIN, TWO, one_question
from mathgen.reading.pupils.regions import count, find, has, names_something, without
from mathgen.reading.pupils.span import FORMS, Span
from mathgen.reading.pupils.told_first import told
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead

_HEADS = (*MAIN, *FORMS, "CHANCE", "RATIO", ":", "MEAN", "MEDIAN", "RANGE", "DIFF", "MINUS", "HALF", "as a part of")
_FORM_WORDS = frozenset((*FORMS, "WHATIS", "form", "RATIO", "be", "prep", "and", "TOTALS"))


class NoQuestion(NotRead):
    """Nothing is asked for."""


class Understood(NamedTuple):
    """What is told before a question, the question, and the form that is asked for beside it."""

    told: tuple[Wish, ...]
    wishes: tuple[Wish, ...]
    form: Demand | None


def understood(sentences: Sequence[Sequence[Span]]) -> Understood:
    """What the sentences say.

    Raises:
        NotRead: there is no question, or more than one, or words that do not go together.
    """
    form, kept = _forms(sentences)
    worth: tuple[asked_points.Price, ...] = ()
    of_points = asked_points.is_of_points(kept)
    if of_points:
        kept, worth = _priced(kept)
    asking = [place for place, spans in enumerate(kept) if _asks(spans, of_points)]
    if len(asking) > 1:  # "Find the group that knocked down the most. How many ...": the first is told
        asking = [place for place in asking if has(kept[place], *_HEADS) or not has(kept[place], "groupword", "trialword")]
    if not asking:
        asking = [place for place, spans in enumerate(kept) if has(spans, "ADD")]
    if len(asking) > 1:
        raise NotRead(TWO)
    if not asking:
        raise NoQuestion("What do you want to know? Ask one question, such as: how many?")
    [place] = asking
    ahead, question = _parted(kept[place])
    question = [*question, *_trailing(kept[place + 1 :])]
    before = [one for spans in (*kept[:place], ahead) if names_something(spans) for one in [told(spans)]]
    if of_points:
        wishes = asked_points.points(question, worth)
    else:
        wishes = asked(question, form)
        if form is not None and form.form == "percent" and wishes[0].kind in ("part", "share", "out of"):
            wishes = [wish._replace(demand=None) for wish in wishes]
    return Understood(tuple(before), tuple(wishes), form)


def _forms(sentences: Sequence[Sequence[Span]]) -> tuple[Demand | None, list[list[Span]]]:
    """The form that is asked for beside the question, and the sentences without it."""
    found: list[Demand] = []
    kept: list[list[Span]] = []
    for place, spans in enumerate(sentences):
        found.extend(span.value for span in spans if span.kind == "form")  # type: ignore[misc]
        if place and kept and all(span.kind in _FORM_WORDS or span.bag == Bag(they=True) for span in spans):
            found.extend(FORMS[span.kind] for span in spans if span.kind in FORMS)
            continue
        left = without(spans, "form")
        if left:
            kept.append(left)
    wanted = set(found) - {Demand("any")}
    if Demand("simplest") in wanted and len(wanted) > 1 and Demand("mixed") in wanted:
        wanted.discard(Demand("simplest"))
    rounded = {one for one in wanted if one.places is not None}
    if len(rounded) == 1 and all(one.form == next(iter(rounded)).form for one in wanted):
        wanted = rounded
    if len(wanted) > 1:
        raise NotRead("You ask for two forms. Which one do you want?")
    return next(iter(wanted), Demand("any") if found else None), kept


def _priced(sentences: Sequence[Sequence[Span]]) -> tuple[list[list[Span]], tuple[asked_points.Price, ...]]:
    kept: list[list[Span]] = []
    worth: list[asked_points.Price] = []
    for spans in sentences:
        priced = asked_points.prices(spans)
        worth.extend(priced.prices)
        rest = without(priced.rest, "IF") if has(spans, "number") else list(priced.rest)
        if (
            priced.prices
            and not has(rest, "HOWMANY", "POINTS", "SCORE")
            and not any(span.kind == "bag" and span.value != "verb" for span in rest)
        ):
            continue
        kept.append([span for span in rest if not (span.kind == "and" and priced.prices)])
    return kept, tuple(worth)


def _asks(spans: Sequence[Span], of_points: bool) -> bool:
    if has(spans, *_HEADS):
        return True
    if of_points and has(spans, "POINTS", "SCORE"):
        return True
    if has(spans, "WHATIS") and (has(spans, "NUMBER", "MOST", "LEAST", *TURNS) or any(span.bag.total for span in spans)):
        return True
    return has(spans, "NUMBER") and not has(spans, *SIGNS, *TURNS)


def _parted(spans: Sequence[Span]) -> tuple[list[Span], list[Span]]:
    """A sentence that first tells something and then asks, in two."""
    head = find(spans, *_HEADS)
    if head is None:
        return [], list(spans)
    while head and spans[head - 1].kind in ("WHATIS", "prep", "and"):
        head -= 1
    before, after = list(spans[:head]), list(spans[head:])
    if count(before, *SIGNS) and has(before, "than") and has(after, *SIGNS):
        return before, after
    if has(before, "BEAT") and not has(after, "BEAT") and has(after, *SIGNS):
        return before, after
    if any(span.kind == "number" or span.bag.number is not None for span in before) and any(
        span.bag.measure in ("down", "standing") for span in before
    ):
        return before, after
    return [], list(spans)


def _trailing(sentences: Sequence[Sequence[Span]]) -> list[Span]:
    """What is added after the question: only words that say more of its scope."""
    found: list[Span] = []
    for spans in sentences:
        if any(span.kind not in ("bag", "that", "be", "prep", "only") or span.bag.number is not None for span in spans):
            raise NotRead("I understand the question, but not what comes after it. Can you ask one thing?")
        found.extend(spans)
    return found


def asked(spans: Sequence[Span], form: Demand | None) -> list[Wish]:
    """What one question wants.

    Raises:
        NotRead: two questions in one.
        Clash: words that do not go together.
    """
    one_question(spans)
    one_meaning(spans)
    kinds = {span.kind for span in spans}
    if kinds & {"RATIO", ":"}:
        return asked_parts.ratio(spans)
    if "HOWTIMES" in kinds:
        return asked_counts.times(spans)
    stats = [kind for kind in ("MEAN", "MEDIAN", "RANGE") if kind in kinds]
    if stats:
        return asked_series.statistic(spans, stats[0].lower())
    if kinds & set(asked_series.BY):
        return asked_series.which(spans)
    if "DIFF" in kinds:
        return asked_counts.apart(spans)
    if kinds & {"groupword", "trialword"} and kinds & {"MOST", "LEAST"}:  # "Find the group that ..."
        by = {"groupword": "WHOGROUP", "trialword": "WHICHTRIAL"}
        return asked_series.which([span._replace(kind=by.get(span.kind, span.kind)) for span in spans])
    if "BEAT" in kinds:
        return asked_counts.beaten(spans)
    if "NEED" in kinds:
        return asked_counts.needed(spans)
    if kinds & {*FORMS, "CHANCE", "as a part of"}:
        if kinds & set(TURNS):
            return asked_counts.rise(spans, "PERCENT" in kinds)
        return asked_parts.part(spans)
    if kinds & set(SIGNS):
        return asked_counts.difference(spans)
    if kinds & set(TURNS):
        return asked_counts.rise(spans, False)
    if "MINUS" in kinds:
        return asked_counts.minus(spans)
    if "HALF" in kinds:
        return asked_counts.half(spans)
    if kinds & {"MOST", "LEAST"}:
        return asked_series.greatest(spans)
    if "HOWMUCH" in kinds or (form is not None and form.form in ("any", "percent", "decimal", "simplest") and "HOWMANY" in kinds):
        return asked_parts.part(spans)
    return asked_counts.count(without(spans, "WHATIS"))
