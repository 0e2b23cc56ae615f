"""What a sentence tells before the question: a scene, a count, a comparison, a change, or the group with the most."""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.reading.chart import Clash
from mathgen.reading.pupils.regions import find, gather, has, without
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead

_SIGNS = {"MORE": 1, "FEWER": -1}
_TURNS = {"WENTUP": 1, "WENTDOWN": -1}


def told(spans: Sequence[Span]) -> Wish:
    """What a sentence tells.

    Raises:
        NotRead: nothing that is understood.
    """
    try:
        return _told(spans)
    except Clash:
        heard = " ".join(span.text for span in spans if span.text)
        raise NotRead(f'I do not understand what you tell me first: "{heard}". Can you say it in another way?') from None


def _told(spans: Sequence[Span]) -> Wish:
    word = next((span.kind for span in spans if span.kind in _SIGNS), None)
    than = find(spans, "than")
    if word is not None and than is not None:
        one, other = gather(without(spans[:than], word)), gather(spans[than + 1 :])
        return Wish("compared", (one, other), sign=_SIGNS[word])
    beat = find(spans, "BEAT")
    if beat is not None:
        one, other = gather(spans[:beat]), gather(spans[beat + 1 :])
        return Wish("compared", (one._replace(got=one.measure is None), other))
    turn = next((span.kind for span in spans if span.kind in _TURNS), None)
    change = find(spans, "change")
    if turn is not None and change is not None:
        return Wish("went", (gather(without(spans, turn, "change")),), sign=_TURNS[turn], labels=spans[change].value)  # type: ignore[arg-type]
    if change is not None and has(spans, "went"):
        return Wish("went", (gather(without(spans, "went", "change")),), labels=spans[change].value)  # type: ignore[arg-type]
    most = next((span.kind for span in spans if span.kind in ("MOST", "LEAST")), None)
    if most is not None and has(spans, "groupword", "trialword"):
        by = "groups" if has(spans, "groupword") else "trials"
        bag = gather(without(spans, "groupword", "trialword", most, "RANDOM", "PICK", "HOWMANY"))
        return Wish("select", (bag,), sign=1 if most == "MOST" else -1, by=by)
    both = find(spans, "and")
    if both is not None and 0 < both < len(spans) - 1:
        return Wish("said both", (gather(spans[:both]), gather(spans[both + 1 :])))
    return Wish("said", (gather(without(spans, "PICK")),))
