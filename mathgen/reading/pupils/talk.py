"""What was said before a question, and from bags of words to counts; gaps that would be guesses are asked about."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal

from sympy import Rational

from mathgen.asks.expression import Expr, Quantity
from mathgen.reading.chart import Clash
from mathgen.reading.evaluate import Counts, evaluate
from mathgen.reading.noun_phrases import BOTH
from mathgen.reading.pupils.bags import DIMENSIONS, EMPTY, Bag, only, verb
from mathgen.reading.pupils.wish import Wish
from mathgen.reading.tokens import NotRead, Number
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label, Measure, Scope

Dimension = Literal["groups", "trials", "colors"]
SINGLE = {"groups": "group", "trials": "trial", "colors": "color"}


class Ask(NotRead):
    """The pupil has to say more."""


class TwoMeanings(Ask):
    """The words are understood, and mean two things: read in parts they would only seem to mean one."""


class False_(NotRead):  # noqa: N801  (the plain word is taken)
    """The words say what is not so."""


def same_left_out(a: Bag, b: Bag) -> None:
    """Does nothing where two bags that are set side by side leave out the same.

    Raises:
        TwoMeanings: it is left out of one of them, and may be meant for both.
    """
    if a.without != b.without:
        raise TwoMeanings("Should I leave that out for both? Ask only about the groups and trials that you want counted.")


@dataclass
class Talk:
    """What was said before the question."""

    counts: Counts
    scenario: Scenario
    said: Bag = EMPTY
    spoken: bool = False
    told: list[Quantity] = field(default_factory=list)  # counts told with their numbers, each of them true
    compared: tuple[Quantity, Quantity] | None = None
    sign: int = 1  # how they were compared: more, or fewer (-1)
    chosen_in: bool = False  # a group was chosen by what it did in some trials only
    went: tuple[Label, ...] = ()
    bare: Measure | None = None  # what a sentence without a number speaks of
    prices: tuple[tuple[Bag, Number], ...] = ()

    @property
    def table(self) -> Any:
        """The table that is talked about."""
        return self.counts.table

    # from bags to quantities

    def labels(self, part: Dimension, bag: Bag) -> tuple[Label, ...]:
        """The labels a bag names, all where it names none."""
        every: tuple[Label, ...] = getattr(self.table, part)
        some = getattr(bag, part)
        labels = every if some is None or some == "all" else some
        for name, left_out in bag.without:
            if name == part:
                labels = tuple(label for label in labels if label not in left_out)
        return tuple(label for label in every if label in labels)

    def chosen_from(self, part: Dimension, bag: Bag) -> tuple[tuple[Label, ...], Bag]:
        """The labels to choose from, and the bag without what it leaves out of them.

        Raises:
            Ask: fewer than two are left.
        """
        labels = self.labels(part, only(bag, part, None))
        if len(labels) < 2:
            raise Ask(f"Which {SINGLE[part]}s should I choose from?")
        return labels, bag._replace(without=tuple(one for one in bag.without if one[0] != part))

    def filled(self, bag: Bag) -> Bag:
        """The bag with gaps filled from what was said before."""
        try:
            bag = verb(bag)
        except Clash as err:
            raise Ask("Do you mean knocked down, left standing or set up?") from err
        if (bag.they or bag.that_group) and not self.spoken and bag.groups is None and bag.measure != "set_up":
            raise Ask('I cannot tell what "they" or "it" stands for. Which group do you mean?')
        if bag.that_group and (bag.groups is not None or not isinstance(self.said.groups, tuple) or len(self.said.groups) != 1):
            raise Ask("Which group do you mean?")
        if bag.that_trial and bag.trials is None and self.said.trials is None:
            raise Ask("Which trial do you mean?")
        if self.chosen_in and bag.trials is None and not bag.that_trial:
            raise Ask("In which trial?")
        if bag.they and bag.groups is None and self.said.groups is None and self.said.measure is None and bag.measure != "set_up":
            raise Ask('I cannot tell what "they" or "it" stands for. Which group do you mean?')
        made = bag._asdict()
        for part in DIMENSIONS:
            if made[part] is None:
                made[part] = getattr(self.said, part)
        if bag.trials == "all" and ("trials", BOTH) in bag.sizes and isinstance(self.said.trials, tuple) and len(self.said.trials) == 2:
            made["trials"], made["sizes"] = self.said.trials, ()  # "in both trials", of which two were told
        if bag.item and bag.colors is None and self.said.colors is not None:
            raise Ask("Do you mean all colors, or only those you named first?")
        if made["measure"] is None and self.said.measure is not None and not (bag.got or bag.had):
            made["measure"] = self.said.measure
        made["total"] = bag.total or self.said.total
        return Bag(**made)

    def scope(self, bag: Bag) -> Scope:
        """The scope of a filled bag, once its "all 3 trials" and "their" are seen to be true."""
        if bag.each is not None:
            raise Ask(
                f'Do you want one answer for each {SINGLE[bag.each]}, or one for all of them together? Ask for "the mean" or "in all".'
            )
        for part, number in bag.sizes:
            size = len(getattr(self.table, part))  # those of the class, also where a group missed one
            results = len(self.labels("groups", bag)) * len(self.table.trials)  # "all 18 trials": those of all six groups
            if number.value != size and not (part == "trials" and bag.groups in (None, "all") and number.value == results):
                raise False_(f"There are {size} {part}, not {number.text}.")
        if bag.their and bag.groups is None:
            raise Ask("Whose pins do you mean? Name the group, or say the whole class.")
        found = []
        for part in DIMENSIONS:
            labels = self.labels(part, bag)
            if not labels:
                raise Ask("You leave out all that there is to count. What do you want to know?")
            found.append(None if len(labels) == len(getattr(self.table, part)) else labels)
        return Scope(*found)  # type: ignore[arg-type]

    def measure(self, bag: Bag, default: Measure | None = None) -> Measure:
        """What is counted."""
        if bag.measure is not None:
            return bag.measure
        if bag.got and not bag.had and (bag.groups is not None or bag.colors is not None or bag.trials is not None):
            return "down"
        if bag.total and (isinstance(bag.groups, tuple) or isinstance(bag.trials, tuple)) and not bag.had and not bag.item:
            return "down"
        if default is not None:
            return default
        past = self.scenario.past
        raise Ask(f"Do you mean {self.scenario.items} {past['down']}, {past['standing']} or {past['set_up']}?")

    def quantity(self, bag: Bag, default: Measure | None = None, whole: bool = False) -> Quantity:
        """The count a bag names; ``whole`` where it is only what another count is a part of."""
        bag = self.filled(bag)
        measure = self.measure(bag, default)
        if measure == "set_up" and bag.each is not None:
            return self._alike(bag)
        scope = self.scope(bag)
        if measure == "set_up" and not whole:
            self._set_up_is_clear(bag)
        if bag.number is not None:
            self.check_whole(bag.number, scope)
        return Quantity(measure, scope)

    def _alike(self, bag: Bag) -> Quantity:
        """What is set up for "one group in one trial": the same for each, or else there is no one answer."""
        each = bag.each or ""
        groups = self.labels("groups", bag)
        trials = self.labels("trials", bag)
        if ("groups" in each and bag.groups is not None) or ("trials" in each and bag.trials is not None):
            raise Ask("Do you mean one of them, or all?")
        if ("groups" not in each and len(groups) > 1) or ("trials" not in each and len(trials) > 1):
            raise Ask("Each group sets up its own pins, and again for each trial. Do you mean one group in one trial, or all of them?")
        colors = self.scope(bag._replace(each=None)).colors
        found = [Scope((group,), (trial,), colors) for group in groups for trial in trials]  # type: ignore[arg-type]
        sizes = {self.counts.total("set_up", scope) for scope in found if self.counts.cells(scope)}
        if len(sizes) != 1:
            raise Ask("They did not all set up the same number. Which group and trial do you mean?")
        return Quantity("set_up", next(scope for scope in found if self.counts.cells(scope)))

    def _set_up_is_clear(self, bag: Bag) -> None:
        if bag.trials is None and len(self.table.trials) > 1 and not bag.total:
            raise Ask("The same pins are set up again for each trial. Do you mean for one trial, or for all trials together?")
        if bag.groups is None and len(self.table.groups) > 1 and not bag.total:
            raise Ask("Each group sets up its own pins. Do you mean one group, or the whole class?")

    def check_whole(self, number: Number, scope: Scope) -> None:
        """Hold a set that is told to the table.

        Raises:
            False_: another number was set up.
        """
        size = self.counts.total("set_up", scope)
        if number.value != size:
            raise False_(f"You say {number.text}, but the table says that {size} were {self.scenario.past['set_up']} there.")

    def pair(self, a: Bag, b: Bag) -> tuple[Quantity, Quantity]:
        """Two counts that are compared; what one leaves out is as in the other."""
        same_left_out(a, b)
        first, second = a._asdict(), b._asdict()
        for mine, theirs in ((first, second), (second, first)):
            if mine["every"] and mine["item"] and mine["colors"] is None and theirs["colors"] is not None:
                mine["colors"] = "all"  # "all the pins", beside pins of one color
        for name in (*DIMENSIONS, "measure"):
            if first[name] is None:
                first[name] = second[name]
            elif second[name] is None:
                second[name] = first[name]
        first["sizes"] = second["sizes"] = tuple(dict.fromkeys((*a.sizes, *b.sizes)))
        for name in ("got", "total", "had"):
            first[name] = second[name] = first[name] or second[name]
        one, two = Bag(**first), Bag(**second)
        found = self.quantity(one, self._fallback(one)), self.quantity(two, self._fallback(two))
        if found[0] == found[1]:
            raise Ask("What should I compare with what?")
        if found[0].measure != found[1].measure and found[0].scope != found[1].scope:
            raise Ask("Please compare the same kind of count: knocked down, or left standing.")
        if sum(one != two for one, two in zip((found[0].measure, *found[0].scope), (found[1].measure, *found[1].scope), strict=True)) > 1:
            # More than one thing differs: only where both are named in full is that what was meant.
            named = [(bag.groups is not None, bag.trials is not None) for bag in (a, b)]
            if named[0] != named[1]:
                raise Ask("Please say group and trial for both that I should compare.")
        return found

    def _fallback(self, bag: Bag) -> Measure | None:
        return "down" if bag.had and bag.total else None

    def size(self, expr: Expr) -> Rational:
        """What an expression comes to."""
        return evaluate(expr, self.counts)

    # sentences that tell

    def tell(self, wish: Wish) -> None:
        """Take in a sentence that asks nothing."""
        self.spoken = True
        if wish.kind == "worth":
            self.prices = wish.worth
        elif wish.kind in ("about", "said"):
            self._said(wish.bags[0])
        elif wish.kind == "said both":
            a, b = wish.bags
            if a.number is None or b.number is None:
                raise Ask("Which of the two do you want to know about?")
            a, b = a._replace(trials=a.trials or b.trials), b._replace(trials=b.trials or a.trials)
            b = b._replace(groups=b.groups or a.groups, measure=b.measure or (None if b.got else a.measure), got=b.got or a.got)
            a, b = self.filled(a), self.filled(b)
            for bag in (a, b):
                self._true(bag, "down")
            self.compared = self.pair(a._replace(number=None), b._replace(number=None))
            both = {*self.labels("trials", a), *self.labels("trials", b)}
            self.said = self.said._replace(
                trials=tuple(trial for trial in self.table.trials if trial in both), groups=a.groups if a.groups == b.groups else None
            )
        elif wish.kind == "compared":
            first, second = self.pair(*wish.bags)
            if (self.size(first) - self.size(second)) * wish.sign <= 0:
                raise False_("The table does not say so.")
            self.compared, self.sign = (first, second), wish.sign
        elif wish.kind == "select":
            self._select(wish)
        elif wish.kind == "went":
            if wish.bags[0].number is not None:
                raise Ask(f"What should I do with the {wish.bags[0].number.text}?")
            self.note(wish.bags[0])
            self.went = wish.labels

    def _select(self, wish: Wish) -> None:
        """The one group or trial that has the most."""
        part: Dimension = "groups" if wish.by == "groups" else "trials"
        bag = self.filled(wish.bags[0])
        if getattr(bag, part) not in (None, "all"):
            raise Ask(f"Which {SINGLE[part]} do you mean?")
        labels, bag = self.chosen_from(part, bag)
        found = {label: self.size(self.quantity(only(bag, part, (label,)), "down" if bag.got or bag.had else None)) for label in labels}
        best = max(found.values()) if wish.sign > 0 else min(found.values())
        winners = tuple(label for label, size in found.items() if size == best)
        if len(winners) != 1:
            raise Ask(f"There is more than one such {SINGLE[part]}: {' and '.join(map(str, winners))}.")
        self.said = only(self.said, part, winners)
        self.chosen_in = part == "groups" and bag.trials not in (None, "all")
        if part == "trials":
            self.said = only(self.said, "groups", bag.groups)

    def note(self, bag: Bag) -> None:
        """Remember what was spoken of."""
        if bag.without or bag.they:
            raise Ask("Please say that in one sentence.")
        self.scope(verb(bag)._replace(their=False))  # "all 3 trials" has to be true here, too
        if bag.measure is not None and bag.number is None:
            self.bare = bag.measure
        for part in DIMENSIONS:
            if getattr(self.said, part) is not None and getattr(bag, part) is not None:
                raise Ask("Which one do you mean?")
        self.said = self.said._replace(
            groups=bag.groups or self.said.groups, trials=bag.trials or self.said.trials, colors=bag.colors or self.said.colors,
            measure=bag.measure or self.said.measure,
        )  # fmt: skip

    def _said(self, bag: Bag) -> None:
        if bag.number is not None:
            if bag.measure is None and bag.groups is None:
                raise Ask(f"What should I do with the {bag.number.text}?")
            if bag.measure == "set_up" and bag.groups is None and bag.trials is None:
                self.note(bag._replace(measure=None))
                self.said = self.said._replace(number=bag.number)
                return
            self._true(bag, None)
        self.note(bag)

    def _true(self, bag: Bag, default: Measure | None) -> None:
        full = self.filled(bag._replace(number=None))
        quantity = Quantity(self.measure(full, default), self.scope(full))
        size = self.counts.total(quantity.measure, quantity.scope)
        assert bag.number is not None  # the callers look
        if bag.number.value != size:
            raise False_(f"You say {bag.number.text}, but the table says {size}.")
        self.told.append(quantity)
