"""Spans that say when: one trial, several of them, or from one to another."""

from __future__ import annotations

from mathgen.reading.noun_phrases import BOTH
from mathgen.reading.pupils.bags import Bag
from mathgen.reading.pupils.form_spans import form
from mathgen.reading.pupils.sentence import THEIR, Sentence
from mathgen.reading.pupils.span import Span
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label


def one_trial(said: Sentence, place: int, named: bool) -> tuple[int, Label] | None:
    """A single trial at a place, with its noun, or without where it was named before."""
    if named and said.has(place, "LABEL") and not said.has(place, "NUM"):
        return place + 1, said.value(place, "LABEL")  # type: ignore[return-value]
    start = place
    place, _ = said.led_in(place)
    if not named and place > start:
        return None  # what leads in is for the caller to see
    if said.has(place, "TRIALWORD") and said.has(place + 1, "LABEL"):
        return place + 2, said.value(place + 1, "LABEL")  # type: ignore[return-value]
    if said.has(place, "ORDER", "LAST"):
        number = -1 if said.has(place, "LAST") else int(str(said.value(place, "ORDER"))) - 1
        if number < len(said.trials) and (said.has(place + 1, "TRIALWORD") or named):
            return place + (2 if said.has(place + 1, "TRIALWORD") else 1), said.trials[number]
    if named and said.has(place, "LABEL"):
        return place + 1, said.value(place, "LABEL")  # type: ignore[return-value]
    return None


def change(said: Sentence, place: int) -> tuple[int, list[Span]] | None:
    """ "From trial 1 to trial 2", "between trial 1 and trial 2"."""
    if not said.has(place, "from", "between"):
        return None
    first = one_trial(said, said.led_in(place + 1)[0], False)
    if first is None:
        at = said.skip(place + 1, "TRIALWORD", "the", "their")
        first = one_trial(said, at, True) if at > place + 1 or (said.has(at, "LABEL", "ORDER") and said.has(at + 1, "to", "and")) else None
    if first is None or not said.has(first[0], "to", "and", "until", "till"):
        return None
    last = one_trial(said, first[0] + 1, True)
    if last is None:
        return None
    if first[1] == last[1]:
        raise NotRead("From which trial to which trial?")
    end = last[0] + 1 if said.has(last[0], "TRIALWORD") else last[0]
    one, other = (said.trials.index(label) for label in (first[1], last[1]))
    between = said.trials[min(one, other) : max(one, other) + 1]
    return end, [Span("change", Bag(trials=between), (first[1], last[1]), text=said.tokens[place].text.casefold())]


def trials_at(said: Sentence, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
    """The trials named at a place, behind the words that lead them in: the place after them and their span, or None.

    Raises:
        NotRead: the table has no such trial, or one is named twice.
    """
    if said.has(place, "ALLTRIALS"):
        return place + 1, Span("bag", Bag(trials="all"))
    if said.has(place, "THATTRIAL"):
        return place + 1, Span("bag", Bag(that_trial=True))
    if said.has(place, "EACHTRIAL"):
        return place + 1, Span("bag", Bag(each="trials"))
    if said.has(place, "NUM") and said.has(place + 1, "TRIALWORD") and not said.has(place + 2, "LABEL"):
        number = said.value(place, "NUM")
        end = _series(said, place + 2)
        return end[0], Span("bag", Bag(trials="all", sizes=(("trials", number),), each=end[1]))  # type: ignore[arg-type]
    if said.has(place, "LABEL") and said.has(place + 1, "TRIALWORD") and not isinstance(said.value(place, "LABEL"), int):
        return place + 2, Span("bag", Bag(trials=(said.value(place, "LABEL"),)))  # type: ignore[arg-type]
    if said.has(place, "ORDER", "LAST") and said.has(place + 1, "NUM") and said.has(place + 2, "TRIALWORD"):
        number = said.value(place + 1, "NUM")
        assert isinstance(number, Number)
        size = int(number.value) if number.value.is_integer else 0
        if not 0 < size <= len(said.trials) or (said.has(place, "ORDER") and said.value(place, "ORDER") != 1):
            raise NotRead(f"The table has {len(said.trials)} trials. Which ones do you mean?")
        labels = said.trials[-size:] if said.has(place, "LAST") else said.trials[:size]
        return place + 3, Span("bag", Bag(trials=labels))
    if said.has(place, "ORDER") and said.value(place, "ORDER") > len(said.trials) and said.has(place + 1, "TRIALWORD"):  # type: ignore[operator]
        raise NotRead(f"The table has only {len(said.trials)} trials.")
    if said.has(place, "ORDER", "LAST") and said.has(place + 1, "and") and one_trial(said, said.led_in(place + 2)[0], False):
        return _trial_list(said, place, said.trials[int(str(said.value(place, "ORDER"))) - 1], place + 1)
    first = one_trial(said, place, False)
    if first is not None:
        return _trial_list(said, place, first[1], first[0])
    if said.has(place, "LABEL") and not isinstance(said.value(place, "LABEL"), int):
        label: Label = said.value(place, "LABEL")  # type: ignore[assignment]
        if words & {"in", "on", "for", "than"} or said.tokens[place].text.isupper():
            return _trial_list(said, place, label, place + 1)
    if said.has(place, "TRIALWORD"):
        end = _series(said, place + 1)
        if end[1] or said.tokens[place].text.casefold().endswith("s"):
            two = (("trials", BOTH),) if "both" in words else ()
            return end[0], Span("bag", Bag(trials="all", sizes=two, each=end[1], their=bool(words & THEIR)))
        return place + 1, Span("trialword")
    return None


def _series(said: Sentence, place: int) -> tuple[int, str | None]:
    """ "Trial totals": one number for each trial."""
    return (place + 1, "trials") if said.has(place, "TOTALS") else (place, None)


def _trial_list(said: Sentence, start: int, first: Label, place: int) -> tuple[int, Span]:
    labels = [first]
    joined = ""
    while True:
        at = place
        word = next((word for word in ("and", "to", "through", "or") if said.has(at, word)), "")
        if word:
            at += 1
        if not word and not (said.has(at, "LABEL") and _listed_on(said, at)):
            break
        if word == "to" and form(said, place) is not None:
            break  # "to one decimal place"
        following = one_trial(said, at, True)
        if following is None or (joined and word and word != joined):
            break
        # "trial 1 and 3 red pins": a number before things is no trial.
        counts = said.has(following[0] - 1, "LABEL") and said.has(following[0], "COLOR", "ITEM")
        if counts and not said.has(following[0] - 2, "TRIALWORD"):
            break
        labels.append(following[1])
        place = following[0]
        joined = word or joined
        if word:
            break
    if len(set(labels)) < len(labels):
        raise NotRead("Which two trials do you mean?")
    if joined == "or":
        return place, Span("either", value=("trials", tuple(labels)))
    if joined in ("to", "through") and len(labels) == 2:
        one, other = (said.trials.index(label) for label in labels)
        if one > other:
            raise NotRead("Which of the two trials came first?")
        return place, Span("bag", Bag(trials=said.trials[one : other + 1]), value="range")
    order = tuple(label for label in said.trials if label in labels)
    return place, Span("bag", Bag(trials=order), value=tuple(labels))


def _listed_on(said: Sentence, place: int) -> bool:
    """Whether labels without "and" between them end in one that has it."""
    while said.has(place, "LABEL"):
        place += 1
    return said.has(place, "and", "or") and said.has(said.skip(place + 1, "TRIALWORD"), "LABEL")
