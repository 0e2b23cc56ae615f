"""Whether a pupil's text asks one question and not two."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.reading.pupils import asked_series
from mathgen.reading.pupils.span import FORMS, Span
from mathgen.reading.tokens import NotRead

MAIN = ("HOWMANY", "HOWMUCH", "HOWTIMES", *asked_series.BY)
TWO = "There are two questions. Please ask one at a time."


def _on_average(kinds: Sequence[str]) -> bool:
    """ "On average, how many ...", "the median of how many ...", "how many ... on average": one question, where nothing parts the two."""
    ends = sorted(kinds.index(kind) for kind in ("HOWMANY", "MEAN", "MEDIAN") if kind in kinds)
    between = kinds[ends[0] : ends[-1]]
    return kinds.count("HOWMANY") == 1 and len(ends) == 2 and not {"and", "WHATIS", "than"} & set(between)


def one_question(spans: Sequence[Span]) -> None:
    """Does nothing where one thing is asked.

    Raises:
        NotRead: two questions in one.
    """
    kinds = [span.kind for span in spans]
    main = [kind for kind in kinds if kind in MAIN]
    forms = [kind for kind in kinds if kind in FORMS]
    others = [kind for kind in kinds if kind in ("CHANCE", "RATIO", "DIFF")]
    stats = {kind for kind in kinds if kind in ("MEAN", "MEDIAN", "RANGE")}
    by_much = bool(main) and main[0] == "HOWMUCH" and (forms or stats)
    if len(main) > 1 or (others and len(others) > 1) or len(stats) > 1:
        raise NotRead(TWO)
    if main and not by_much and (others or (stats and not _on_average(kinds))):
        raise NotRead(TWO)
    if others and stats:
        raise NotRead(TWO)
    if forms and (stats or (others and others[0] not in ("DIFF", "CHANCE"))):
        raise NotRead(TWO)
    if kinds.count("WHATIS") > 1 and "and" in kinds:
        raise NotRead(TWO)
    if len(forms) > 1 and forms.count(forms[0]) > 1 and "DIFF" not in kinds:
        raise NotRead(TWO)
