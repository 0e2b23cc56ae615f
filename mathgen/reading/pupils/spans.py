"""From a sentence's tokens to spans: signs of what is wanted, and small bags of whose, when, which things and what became of them.

Each span is found by a rule of a few words, wherever it stands; what the spans mean together is for others to say.
"""

from __future__ import annotations

from collections.abc import Sequence

from mathgen.reading.pupils.bags import EMPTY, Bag, flagged, only
from mathgen.reading.pupils.form_spans import form
from mathgen.reading.pupils.group_spans import people_at
from mathgen.reading.pupils.hearing import Token
from mathgen.reading.pupils.sentence import PREPOSITIONS, THEIR, Sentence
from mathgen.reading.pupils.span import Span
from mathgen.reading.pupils.thing_spans import things_at
from mathgen.reading.pupils.trial_spans import change, trials_at
from mathgen.reading.pupils.vocabulary import CUES
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label, Measure


class Scan:
    """Cuts one sentence's tokens into spans."""

    def __init__(self, tokens: Sequence[Token], trials: tuple[Label, ...]) -> None:
        self._said = Sentence(tokens, trials)

    def spans(self) -> list[Span]:
        """The spans.

        Raises:
            NotRead: words that go with nothing.
        """
        found: list[Span] = []
        place = 0
        while place < len(self._said.tokens):
            got = form(self._said, place) or change(self._said, place) or self._worded(place) or self._other(place, found)
            place, spans = got
            found.extend(spans)
        found = negated(found)
        standing = any(span.bag.measure == "standing" or span.bag.left or span.bag.up for span in found)
        if not standing and any("after" in span.before and isinstance(span.bag.trials, tuple) for span in found):
            raise NotRead("In that trial, or in the trials after it?")
        if any(span.before & {"until", "till"} and isinstance(span.bag.trials, tuple) for span in found):
            raise NotRead("In that trial, or in all the trials up to it?")
        return found

    def _worded(self, place: int) -> tuple[int, list[Span]] | None:
        """A span behind its prepositions and articles."""
        at, words = self._said.led_in(place)
        if self._said.has(at, "TOTALS") and at > place:
            return at + 1, [Span("TOTALS", Bag(their=bool(words & THEIR)))]
        for start, lead in ((place, frozenset[str]()), (at, words)):
            for rule in (trials_at, people_at, things_at):
                got = rule(self._said, start, lead)
                if got is None:
                    continue
                end, span = got
                if "EXCEPT" in (self._said.tokens[place - 1].kinds if place else ()):
                    return end, [span._replace(before=lead)]
                found = [span._replace(before=lead, text=self._said.tokens[start].text)]
                if "both" in lead and not _is_pair(span):
                    raise NotRead("Which two do you mean?")
                if "each" in lead and span.kind == "bag" and not (span.bag.item or span.bag.colors):
                    raise NotRead("One answer for each of them, or one for all together? Ask one thing.")
                if "out" in lead:
                    found.insert(0, Span("outof"))
                if "only" in lead or "just" in lead:
                    found.insert(0, Span("only"))
                return end, found
        return None

    def _other(self, place: int, before: list[Span]) -> tuple[int, list[Span]]:
        token = self._said.tokens[place]
        text = token.text
        kinds = token.kinds
        if "WENTDOWN" in kinds and self._goes_down(place, before):
            return place + 1, [Span("WENTDOWN", text=text)]
        if "VERB" in kinds:
            measure: Measure = self._said.value(place, "VERB")  # type: ignore[assignment]
            return place + 1, [Span("bag", Bag(measure=measure), value="verb", text=text)]
        if "FELLDOWN" in kinds:
            return place + 1, [Span("bag", Bag(measure="down"), value="verb", text=text)]
        for kind, flag in (("GOT", "got"), ("HAD", "had"), ("LEFTV", "left"), ("UP", "up"), ("TOTAL", "total")):
            if kind in kinds:
                return place + 1, [Span("bag", flagged(flag), value="verb" if kind != "TOTAL" else None, text=text)]
        if "they" in kinds or "them" in kinds or "it" in kinds or "those" in kinds or "these" in kinds:
            return place + 1, [Span("bag", Bag(they=True), text=text)]
        if "EXCEPT" in kinds:
            return self._except(place)
        if "NUM" in kinds and not CUES.intersection(kinds):
            number: Number = self._said.value(place, "NUM")  # type: ignore[assignment]
            return place + 1, [Span("number", value=number, text=text)]
        if "then" in kinds:
            sides = {span.kind for span in before}
            compared = sides & {"MORE", "FEWER", "GREATER", "SMALLER"} and "than" not in sides
            return place + 1, [Span("than")] if compared else []
        if "as" in kinds:
            return place + 1, [Span("as")]
        if "went" in kinds or "there" in kinds:
            return place + 1, [Span("went" if "went" in kinds else "there")]
        for word in ("than", "to", "and", "or", ":", "if", "no", "none"):
            if word in kinds:
                return place + 1, [Span("no" if word == "none" else word)]
        if "all" in kinds:
            return place + 1, [Span("all")]
        if "one" in kinds:
            return place + 1, [Span("one")]
        cue = next((kind for kind in kinds if kind in CUES), None)
        if cue is not None:
            return place + 1, [Span(cue, text=text)]
        if "NEG" in kinds:
            return place + 1, [Span("neg", text=text)]
        for kind in ("EITHERWAY", "CAMEFROM", "PICK", "RANDOM", "IWEYOU", "IF", "TOTALS", "exactly", "least", "each", "TRIALWORD", "both"):
            if kind in kinds:
                return place + 1, [Span({"EITHERWAY": "than"}.get(kind, kind), text=text)]
        if {"was", "were", "is", "are", "be", "been", "being"} & set(kinds):
            return place + 1, [Span("be", text=text)]
        if {"did", "do", "does"} & set(kinds):
            return place + 1, [Span("do", text=text)]
        if "group" in kinds:
            return place + 1, [Span("groupword", text=text)]
        if "," in kinds:
            return place + 1, []
        if "that" in kinds:
            return place + 1, [Span("that")]
        if "by" in kinds and self._said.has(place + 1, "HOWMANY", "HOWMUCH", "PERCENT"):
            return place + 1, []
        if "out" in kinds and self._said.has(place + 1, "of"):
            return place + 2, [Span("outof")]
        if "out" in kinds or "only" in kinds or "just" in kinds:
            return place + 1, [Span("only")]
        if PREPOSITIONS & set(kinds):
            return place + 1, [Span("prep", text=text)]
        if {"the", "a", "an", "ones", "set", "there", "their", "many", "much", "so", "ENDEDUP", "IWEYOU", "color", "would", "its"} & set(
            kinds
        ):
            return place + 1, []
        raise NotRead(f'I do not know what to do with "{text}" here. Can you say it another way?')

    def _goes_down(self, place: int, before: Sequence[Span]) -> bool:
        """Whether "went down" is said of a number from trial to trial, and not of pins."""
        if "VERB" not in self._said.tokens[place].kinds:
            return True
        others = any("VERB" in token.kinds for at, token in enumerate(self._said.tokens) if at != place)
        spoken_of = [span for span in before if span.kind in ("bag", "NUMBER", "TOTALS")]
        subject = spoken_of[-1] if spoken_of else None
        by_group = subject is not None and (subject.bag.total or subject.kind == "TOTALS" or (subject.bag.groups and not subject.bag.item))
        changes = any(change(self._said, at) is not None for at in range(len(self._said.tokens)))
        return changes and (others or bool(by_group))

    def _except(self, place: int) -> tuple[int, list[Span]]:
        at, words = self._said.led_in(place + 1)
        for rule in (trials_at, people_at, things_at):
            got = rule(self._said, at, words)
            if got is None:
                continue
            bag = got[1].bag
            for part in ("groups", "trials", "colors"):
                labels = getattr(bag, part)
                if isinstance(labels, tuple) and bag == only(EMPTY, part, labels):
                    if self._more_of_it(got[0], part):
                        raise NotRead("Leave out all of that, or only a part of it? Please say it another way.")
                    return got[0], [Span("bag", Bag(without=((part, labels),)), value="without")]
        raise NotRead("What should I leave out? Say it another way.")

    def _more_of_it(self, place: int, part: str) -> bool:
        """ "Without the Owls in trial 2": whether what follows can belong to what is left out."""
        at, words = self._said.led_in(place)
        if part == "groups":
            return trials_at(self._said, at, words) is not None
        return part == "trials" and bool(words & {"of", "for"}) and people_at(self._said, at, words) is not None


def _is_pair(span: Span) -> bool:
    bag = span.bag
    return any(isinstance(part, tuple) and len(part) == 2 for part in (bag.groups, bag.trials, bag.colors)) or bool(bag.sizes)


def negated(spans: list[Span]) -> list[Span]:
    """The spans with each "not" taken into the verb that it goes with.

    Raises:
        NotRead: there is no such verb, or two nots.
    """
    if sum(span.kind == "neg" for span in spans) > 1:
        raise NotRead("There are two nots in your question. Please say it another way.")
    for place, span in enumerate(spans):
        if span.kind != "neg":
            continue
        made = [*spans[:place], *spans[place + 1 :]]
        for at in range(place, len(made)):
            other = made[at]
            if other.value == "verb" and other.bag.measure is not None:
                if other.bag.measure == "set_up":
                    break
                turned: Measure = "standing" if other.bag.measure == "down" else "down"
                made[at] = other._replace(bag=other.bag._replace(measure=turned), value="negated")
                if any(one.value == "without" for one in made):
                    raise NotRead('"Not" and "except" together can mean two things. Please say it another way.')
                return made
            if other.value == "verb" and other.bag.got and not any(one.value == "verb" and one.bag.measure for one in made[at:]):
                made[at] = other._replace(bag=Bag(measure="standing"), value="negated")
                return made
            if other.kind not in ("bag", "be", "do", "to", "that") or other.value == "without":
                break
        raise NotRead('I do not know what "not" goes with. Please say it another way.')
    return spans
