"""From a sentence's tokens to spans: signs of what is wanted, and small bags of whose, when, which things and what became of them.

Each span is found by a rule of a few words, wherever it stands; what the spans mean together is for others to say.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading.noun_phrases import BOTH
from mathgen.reading.pupils.bags import EMPTY, Bag, flagged, only
from mathgen.reading.pupils.hearing import CUES, Token
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label, Measure

_PREPOSITIONS = frozenset(
    (
        "in",
        "on",
        "at",
        "by",
        "for",
        "of",
        "from",
        "with",
        "during",
        "over",
        "across",
        "after",
        "through",
        "throughout",
        "about",
        "until",
        "till",
        "into",
        "among",
        "between",
        "per",
    )
)
_DETERMINERS = frozenset(
    (
        "the",
        "a",
        "an",
        "all",
        "any",
        "every",
        "those",
        "these",
        "their",
        "its",
        "there",
        "his",
        "her",
        "both",
        "just",
        "only",
        "that",
        "each",
    )
)
_THEIR = frozenset(("their", "its", "his", "her"))
FORMS = {"FRACTION": Demand("any"), "PROPORTION": Demand("any"), "PERCENT": Demand("percent"), "DECIMAL": Demand("decimal")}


class Span(NamedTuple):
    """Some words that belong together: a sign of what is wanted, a bag, or a word that holds others together."""

    kind: str
    bag: Bag = EMPTY
    value: object = None
    before: frozenset[str] = frozenset()  # prepositions and articles that lead it in
    text: str = ""


class Scan:
    """Cuts one sentence's tokens into spans."""

    def __init__(self, tokens: Sequence[Token], trials: tuple[Label, ...]) -> None:
        self._tokens, self._trials = tokens, trials
        everything = {kind for token in tokens for kind in token.kinds}
        self._one_is_article = "CHANCE" in everything or "PICK" in everything

    def spans(self) -> list[Span]:
        """The spans.

        Raises:
            NotRead: words that go with nothing.
        """
        found: list[Span] = []
        place = 0
        while place < len(self._tokens):
            for rule in (self._form, self._change, self._worded):
                got = rule(place)
                if got is not None:
                    break
            else:
                got = self._other(place, found)
            place, spans = got
            found.extend(spans)
        found = negated(found)
        standing = any(span.bag.measure == "standing" or span.bag.left or span.bag.up for span in found)
        if not standing and any("after" in span.before and isinstance(span.bag.trials, tuple) for span in found):
            raise NotRead("In that trial, or in the trials after it?")
        if any(span.before & {"until", "till"} and isinstance(span.bag.trials, tuple) for span in found):
            raise NotRead("In that trial, or in all the trials up to it?")
        return found

    # looking at tokens

    def _is(self, place: int, *kinds: str) -> bool:
        return 0 <= place < len(self._tokens) and any(kind in kinds for kind in self._tokens[place].kinds)

    def _value(self, place: int, kind: str) -> object:
        token = self._tokens[place]
        return token.values[token.kinds.index(kind)]

    def _skip(self, place: int, *kinds: str) -> int:
        while self._is(place, *kinds):
            place += 1
        return place

    def _led_in(self, place: int) -> tuple[int, frozenset[str]]:
        """Past prepositions and articles."""
        words: set[str] = set()
        while place < len(self._tokens):
            word = next((kind for kind in self._tokens[place].kinds if kind in _PREPOSITIONS or kind in _DETERMINERS), None)
            if word is None and self._is(place, "out") and self._is(place + 1, "of"):
                word = "out"
            if word is None and self._is(place, "one") and (self._is(place + 1, "of") or self._one_is_article) and words <= {"that"}:
                word = "one"
            if word is None:
                break
            words.add(word)
            place += 1
        return place, frozenset(words)

    # forms

    def _form(self, place: int) -> tuple[int, list[Span]] | None:
        at = self._skip(place, "rounded", "round")
        if self._is(at, "SIMPLEST"):
            return at + 1, [Span("form", value=Demand("simplest"))]
        if self._is(at, "as") and self._is(at + 1, *FORMS) and self._is(at + 2, "of"):
            return at + 3, [Span("as a part of", value=next(kind for kind in FORMS if self._is(at + 1, kind)))]
        if self._is(at, "as") and self._is(at + 1, *FORMS, "MIXED") and not self._is(at + 1, "HOWMANY"):
            kind = next(kind for kind in (*FORMS, "MIXED") if self._is(at + 1, kind))
            if self._is(at + 2, "SIMPLEST"):
                return at + 3, [Span("form", value=Demand("simplest"))]
            return at + 2, [Span("form", value=FORMS.get(kind, Demand("mixed")))]
        if self._is(at, "MIXED"):
            return at + 1, [Span("form", value=Demand("mixed"))]
        if not self._is(at, "to"):
            return None
        at = self._skip(at + 1, "the")
        if self._is(at, "nearest"):
            at = self._skip(at + 1, "whole")
            if self._is(at, "NUMBER", "ITEM"):
                return at + 1, [Span("form", value=Demand("decimal", 0))]
            if self._is(at, "PERCENT"):
                return at + 1, [Span("form", value=Demand("percent", 0))]
            places = 1 if self._is(at, "tenth") else 2 if self._is(at, "hundredth") else None
            if places is not None:
                of_percent = self._is(at + 1, "of") and self._is(at + 2, "PERCENT")
                return at + (3 if of_percent else 1), [Span("form", value=Demand("percent" if of_percent else "decimal", places))]
        if self._is(at, "NUM") and self._is(at + 1, "DECIMAL", "place", "places"):
            number = self._value(at, "NUM")
            assert isinstance(number, Number)  # a token of that kind holds one
            if number.value.is_integer and 0 < number.value < 7:
                return self._skip(at + 1, "DECIMAL", "place", "places"), [Span("form", value=Demand("decimal", int(number.value)))]
        return None

    # when

    def _one_trial(self, place: int, named: bool) -> tuple[int, Label] | None:
        """A single trial at a place, with its noun, or without where it was named before."""
        if named and self._is(place, "LABEL") and not self._is(place, "NUM"):
            return place + 1, self._value(place, "LABEL")  # type: ignore[return-value]
        start = place
        place, _ = self._led_in(place)
        if not named and place > start:
            return None  # what leads in is for the caller to see
        if self._is(place, "TRIALWORD") and self._is(place + 1, "LABEL"):
            return place + 2, self._value(place + 1, "LABEL")  # type: ignore[return-value]
        if self._is(place, "ORDER", "LAST"):
            number = -1 if self._is(place, "LAST") else int(str(self._value(place, "ORDER"))) - 1
            if number < len(self._trials) and (self._is(place + 1, "TRIALWORD") or named):
                return place + (2 if self._is(place + 1, "TRIALWORD") else 1), self._trials[number]
        if named and self._is(place, "LABEL"):
            return place + 1, self._value(place, "LABEL")  # type: ignore[return-value]
        return None

    def _change(self, place: int) -> tuple[int, list[Span]] | None:
        """ "From trial 1 to trial 2", "between trial 1 and trial 2"."""
        if not self._is(place, "from", "between"):
            return None
        first = self._one_trial(self._led_in(place + 1)[0], False)
        if first is None:
            at = self._skip(place + 1, "TRIALWORD", "the", "their")
            first = (
                self._one_trial(at, True) if at > place + 1 or (self._is(at, "LABEL", "ORDER") and self._is(at + 1, "to", "and")) else None
            )
        if first is None or not self._is(first[0], "to", "and", "until", "till"):
            return None
        last = self._one_trial(first[0] + 1, True)
        if last is None:
            return None
        if first[1] == last[1]:
            raise NotRead("From which trial to which trial?")
        end = last[0] + 1 if self._is(last[0], "TRIALWORD") else last[0]
        one, other = (self._trials.index(label) for label in (first[1], last[1]))
        between = self._trials[min(one, other) : max(one, other) + 1]
        return end, [Span("change", Bag(trials=between), (first[1], last[1]), text=self._tokens[place].text.casefold())]

    def _trials_at(self, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
        if self._is(place, "ALLTRIALS"):
            return place + 1, Span("bag", Bag(trials="all"))
        if self._is(place, "THATTRIAL"):
            return place + 1, Span("bag", Bag(that_trial=True))
        if self._is(place, "EACHTRIAL"):
            return place + 1, Span("bag", Bag(each="trials"))
        if self._is(place, "NUM") and self._is(place + 1, "TRIALWORD") and not self._is(place + 2, "LABEL"):
            number = self._value(place, "NUM")
            end = self._series(place + 2)
            return end[0], Span("bag", Bag(trials="all", sizes=(("trials", number),), each=end[1]))  # type: ignore[arg-type]
        if self._is(place, "LABEL") and self._is(place + 1, "TRIALWORD") and not isinstance(self._value(place, "LABEL"), int):
            return place + 2, Span("bag", Bag(trials=(self._value(place, "LABEL"),)))  # type: ignore[arg-type]
        if self._is(place, "ORDER", "LAST") and self._is(place + 1, "NUM") and self._is(place + 2, "TRIALWORD"):
            number = self._value(place + 1, "NUM")
            assert isinstance(number, Number)
            size = int(number.value) if number.value.is_integer else 0
            if not 0 < size <= len(self._trials) or (self._is(place, "ORDER") and self._value(place, "ORDER") != 1):
                raise NotRead(f"The table has {len(self._trials)} trials. Which ones do you mean?")
            labels = self._trials[-size:] if self._is(place, "LAST") else self._trials[:size]
            return place + 3, Span("bag", Bag(trials=labels))
        if self._is(place, "ORDER") and self._value(place, "ORDER") > len(self._trials) and self._is(place + 1, "TRIALWORD"):  # type: ignore[operator]
            raise NotRead(f"The table has only {len(self._trials)} trials.")
        if self._is(place, "ORDER", "LAST") and self._is(place + 1, "and") and self._one_trial(self._led_in(place + 2)[0], False):
            return self._trial_list(place, self._trials[int(str(self._value(place, "ORDER"))) - 1], place + 1)
        first = self._one_trial(place, False)
        if first is not None:
            return self._trial_list(place, first[1], first[0])
        if self._is(place, "LABEL") and not isinstance(self._value(place, "LABEL"), int):
            label: Label = self._value(place, "LABEL")  # type: ignore[assignment]
            if words & {"in", "on", "for", "than"} or self._tokens[place].text.isupper():
                return self._trial_list(place, label, place + 1)
        if self._is(place, "TRIALWORD"):
            end = self._series(place + 1)
            if end[1] or self._tokens[place].text.casefold().endswith("s"):
                two = (("trials", BOTH),) if "both" in words else ()
                return end[0], Span("bag", Bag(trials="all", sizes=two, each=end[1], their=bool(words & _THEIR)))
            return place + 1, Span("trialword")
        return None

    def _series(self, place: int) -> tuple[int, str | None]:
        """ "Trial totals": one number for each trial."""
        return (place + 1, "trials") if self._is(place, "TOTALS") else (place, None)

    def _trial_list(self, start: int, first: Label, place: int) -> tuple[int, Span]:
        labels = [first]
        joined = ""
        while True:
            at = place
            word = next((word for word in ("and", "to", "through", "or") if self._is(at, word)), "")
            if word:
                at += 1
            if not word and not (self._is(at, "LABEL") and self._listed_on(at)):
                break
            if word == "to" and self._form(place) is not None:
                break  # "to one decimal place"
            following = self._one_trial(at, True)
            if following is None or (joined and word and word != joined):
                break
            # "trial 1 and 3 red pins": a number before things is no trial.
            counts = self._is(following[0] - 1, "LABEL") and self._is(following[0], "COLOR", "ITEM")
            if counts and not self._is(following[0] - 2, "TRIALWORD"):
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
            one, other = (self._trials.index(label) for label in labels)
            if one > other:
                raise NotRead("Which of the two trials came first?")
            return place, Span("bag", Bag(trials=self._trials[one : other + 1]), value="range")
        order = tuple(label for label in self._trials if label in labels)
        return place, Span("bag", Bag(trials=order), value=tuple(labels))

    def _listed_on(self, place: int) -> bool:
        """Whether labels without "and" between them end in one that has it."""
        while self._is(place, "LABEL"):
            place += 1
        return self._is(place, "and", "or") and self._is(self._skip(place + 1, "TRIALWORD"), "LABEL")

    # who

    def _people_at(self, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
        if self._is(place, "CLASS"):
            return place + 1, Span("bag", Bag(groups="all"))
        if self._is(place, "EACHGROUP"):
            return place + 1, Span("bag", Bag(each="groups"))
        if self._is(place, "THATGROUP"):
            return place + 1, Span("bag", Bag(that_group=True))
        if self._is(place, "NUM") and self._is(place + 1, "groups", "group"):
            number = self._value(place, "NUM")
            end = place + 2
            each = "groups" if self._is(end, "TOTALS") else None
            return end + bool(each), Span("bag", Bag(groups="all", sizes=(("groups", number),), each=each), value="groups")  # type: ignore[arg-type]
        if self._is(place, "NUM") and self._is(place + 1, "of"):
            at = self._skip(place + 2, "the", "their", "its")
            who = at + 1 if self._is(at, "GROUP", "CLASS") else at
            if self._is(who, "TRIALWORD") and not self._is(who + 1, "LABEL"):
                number = self._value(place, "NUM")
                groups = None if who == at else "all" if self._is(at, "CLASS") else (self._value(at, "GROUP"),)
                return who + 1, Span("bag", Bag(groups=groups, trials="all", sizes=(("trials", number),)))  # type: ignore[arg-type]
        if self._is(place, "group") and self._is(place + 1, "TOTALS"):
            return place + 2, Span("bag", Bag(groups="all", each="groups"))
        at = place + 1 if self._is(place, "group") and self._is(place + 1, "GROUP") else place
        if self._is(at, "GROUP"):
            return self._group_list(at)
        if self._is(place, "groups", "GROUPS"):
            each = "groups" if self._is(place + 1, "TOTALS") else None
            return place + 1 + bool(each), Span("bag", Bag(groups="all", each=each), value="groups")
        return None

    def _group_list(self, place: int) -> tuple[int, Span]:
        labels = [self._value(place, "GROUP")]
        place += 1
        joined = ""
        while True:
            at = place
            word = next((word for word in ("and", "or") if self._is(at, word)), "")
            at = self._skip(at + bool(word), "the", "both", "group", "by", "for")
            if not self._is(at, "GROUP") or (not word and not self._groups_on(at)) or (joined and word and word != joined):
                break
            labels.append(self._value(at, "GROUP"))
            place, joined = at + 1, word or joined
        names = tuple(str(label) for label in labels)
        if len(set(names)) < len(names):
            raise NotRead("You name one group twice. Which groups do you mean?")
        if joined == "or":
            return place, Span("either", value=("groups", names))
        place = self._skip(place, "group") if self._is(place, "group") else place
        return place, Span("bag", Bag(groups=names))

    def _groups_on(self, place: int) -> bool:
        while self._is(place, "GROUP", "the"):
            place += 1
        return self._is(place, "and", "or") and self._is(self._skip(place + 1, "the", "group"), "GROUP")

    # which things

    def _things_at(self, place: int, words: frozenset[str]) -> tuple[int, Span] | None:
        start, number, measure = place, None, None
        their = bool(words & _THEIR) or "there" in words
        every = "all" in words or "every" in words
        if self._is(place, "ANYCOLOR"):
            return place + 1, Span("bag", Bag(colors="all"))
        if self._is(place, "NUM") and self._is(self._led_in(place + 1)[0], "COLOR", "ITEM", "ones", "one", "VERB"):
            # "the 12 pins", "2 of the pins"
            number = self._value(place, "NUM")
            place += 1
            if self._is(place, "of"):
                return None
        if self._is(place, "VERB", "FELLDOWN") and self._is(place + 1, "COLOR", "ITEM", "ones"):
            # "Knocked down red pins" is a verb and its things; "fallen pins" and "standing pins" have a word before them.
            value = "down" if self._is(place, "FELLDOWN") else self._value(place, "VERB")
            if self._is(place, "FELLDOWN") or value == "standing":
                measure, place = value, place + 1
        if self._is(place, "COLOR"):
            return self._color_list(place, start, number, measure, their, words)
        if self._is(place, "ITEM"):
            bag = Bag(item=True, number=number, measure=measure, their=their, every=every)  # type: ignore[arg-type]
            return place + 1, Span("bag", bag)
        if self._is(place, "ones", "theirs"):
            return place + 1, Span("bag", Bag(number=number, measure=measure, their=their))  # type: ignore[arg-type]
        if number is not None or measure is not None:
            return None
        if self._is(place, "color", "colors") and not words:
            return None
        return None

    def _color_list(self, place: int, start: int, number: object, measure: object, their: bool, words: frozenset[str]) -> tuple[int, Span]:
        labels = [self._value(place, "COLOR")]
        place = self._noun(place + 1)
        joined = ""
        while True:
            word = next((word for word in ("and", "or") if self._is(place, word)), "")
            at = self._skip(place + bool(word), "the", "of", "their")
            if not self._is(at, "COLOR") or (not word and not self._colors_on(at)) or (joined and word and word != joined):
                break
            labels.append(self._value(at, "COLOR"))
            place, joined = self._noun(at + 1), word or joined
        names = tuple(str(label) for label in labels)
        if len(set(names)) < len(names):
            raise NotRead("You name one color twice. Which colors do you mean?")
        if joined == "or":
            return place, Span("either", value=("colors", names))
        bag = Bag(colors=names, number=number, measure=measure, their=their, every="all" in words)  # type: ignore[arg-type]
        return place, Span("bag", bag, value=names)

    def _noun(self, place: int) -> int:
        return place + 1 if self._is(place, "ITEM", "ones", "one", "set", "color") and not self._is(place + 1, "SETUP") else place

    def _colors_on(self, place: int) -> bool:
        while self._is(place, "COLOR", "the", "ITEM"):
            place += 1
        return self._is(place, "and", "or") and self._is(self._skip(place + 1, "the"), "COLOR")

    # the rest

    def _worded(self, place: int) -> tuple[int, list[Span]] | None:
        """A span behind its prepositions and articles."""
        at, words = self._led_in(place)
        if self._is(at, "TOTALS") and at > place:
            return at + 1, [Span("TOTALS", Bag(their=bool(words & _THEIR)))]
        for start, lead in ((place, frozenset[str]()), (at, words)):
            for rule in (self._trials_at, self._people_at, self._things_at):
                got = rule(start, lead)
                if got is None:
                    continue
                end, span = got
                if "EXCEPT" in (self._tokens[place - 1].kinds if place else ()):
                    return end, [span._replace(before=lead)]
                found = [span._replace(before=lead, text=self._tokens[start].text)]
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
        token = self._tokens[place]
        text = token.text
        kinds = token.kinds
        if "WENTDOWN" in kinds and self._goes_down(place, before):
            return place + 1, [Span("WENTDOWN", text=text)]
        if "VERB" in kinds:
            measure: Measure = self._value(place, "VERB")  # type: ignore[assignment]
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
            number: Number = self._value(place, "NUM")  # type: ignore[assignment]
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
        if "by" in kinds and self._is(place + 1, "HOWMANY", "HOWMUCH", "PERCENT"):
            return place + 1, []
        if "out" in kinds and self._is(place + 1, "of"):
            return place + 2, [Span("outof")]
        if "out" in kinds or "only" in kinds or "just" in kinds:
            return place + 1, [Span("only")]
        if _PREPOSITIONS & set(kinds):
            return place + 1, [Span("prep", text=text)]
        if {"the", "a", "an", "ones", "set", "there", "their", "many", "much", "so", "ENDEDUP", "IWEYOU", "color", "would", "its"} & set(
            kinds
        ):
            return place + 1, []
        raise NotRead(f'I do not know what to do with "{text}" here. Can you say it another way?')

    def _goes_down(self, place: int, before: Sequence[Span]) -> bool:
        """Whether "went down" is said of a number from trial to trial, and not of pins."""
        if "VERB" not in self._tokens[place].kinds:
            return True
        others = any("VERB" in token.kinds for at, token in enumerate(self._tokens) if at != place)
        spoken_of = [span for span in before if span.kind in ("bag", "NUMBER", "TOTALS")]
        subject = spoken_of[-1] if spoken_of else None
        by_group = subject is not None and (subject.bag.total or subject.kind == "TOTALS" or (subject.bag.groups and not subject.bag.item))
        changes = any(self._change(at) is not None for at in range(len(self._tokens)))
        return changes and (others or bool(by_group))

    def _except(self, place: int) -> tuple[int, list[Span]]:
        at, words = self._led_in(place + 1)
        for rule in (self._trials_at, self._people_at, self._things_at):
            got = rule(at, words)
            if got is None:
                continue
            bag = got[1].bag
            for part in ("groups", "trials", "colors"):
                labels = getattr(bag, part)
                if isinstance(labels, tuple) and bag == only(EMPTY, part, labels):
                    return got[0], [Span("bag", Bag(without=((part, labels),)), value="without")]
        raise NotRead("What should I leave out? Say it another way.")


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
