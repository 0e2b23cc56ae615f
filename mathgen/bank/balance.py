"""Yes and no in balance: a pupil who always says yes must not do well."""

from __future__ import annotations

from collections import Counter

_OTHER = {"true": "false", "false": "true"}


def tips(answer: object, kept: Counter[object]) -> bool:
    """Whether one more such answer would tip the balance of yes and no among those kept.

    Args:
        answer: of a candidate; only "true" and "false" can tip.
        kept: how often each answer is among those kept.

    >>> tips("true", Counter({"true": 1})), tips("false", Counter({"true": 1})), tips("Owls", Counter({"Owls": 5}))
    (True, False, False)
    """
    return isinstance(answer, str) and answer in _OTHER and kept[answer] > kept[_OTHER[answer]]
