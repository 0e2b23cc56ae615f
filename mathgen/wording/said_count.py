"""A quantity as a wording template sees it. Templates choose among these phrases; they never count.

``q.count`` reads "3 red pins", ``q.kind`` "red pins", ``q.who`` "the Owls", ``q.when`` "in Trial 1",
``q.did`` "The Owls knocked down 3 red pins", ``q.how_many`` the question.
"""

from __future__ import annotations

from mathgen.asks.expression import Op, Quantity, Stated
from mathgen.scenario.naming import trial_name
from mathgen.wording.said_kind import SaidKind
from mathgen.wording.said_number import Printed
from mathgen.wording.speaker import Speaker


class SaidCount(SaidKind):
    """A quantity in a sentence."""

    __slots__ = ("_number", "_printed", "_quantity")

    def __init__(self, speaker: Speaker, printed: Printed, quantity: Quantity, number: int) -> None:
        super().__init__(speaker, quantity)
        self._printed, self._quantity, self._number = printed, quantity, number

    @property
    def n(self) -> str:
        """The bare number."""
        return self._printed.note(self._quantity, str(self._number))

    @property
    def all_n(self) -> str:
        """The number of all there are: "all 3", but "the 2"."""
        return f"{'the' if self._number == 2 else 'all'} {self.n}"

    @property
    def one(self) -> bool:
        """Whether the number is 1, for was and were."""
        return self._number == 1

    @property
    def was(self) -> str:
        """The verb: "was" of 1, else "were"."""
        return "was" if self._number == 1 else "were"

    @property
    def count(self) -> str:
        """Number and noun: "3 red pins"."""
        speaker = self._speaker
        return f"{self.n} {speaker.kind(self._scope)}{speaker.items(self._number)}"

    @property
    def kind_counted(self) -> str:
        """Noun without number, one or several as the number has it: "red pin", "red pins"."""
        return self.one_kind if self.one else self.kind

    @property
    def stayed(self) -> str:
        """What became of just so many of them: "(1 pin) was left standing", "(7 seeds) were left in the soil"."""
        return f"{self.was} {self.after}"

    @property
    def did(self) -> str:
        """ "The Owls knocked down 3 red pins"; "3 red pins were left standing"."""
        if self._measure == "standing":
            return f"{self.count} {self.was} {self.after}"
        return f"{self.Who} {self.past} {self.count}"

    @property
    def how_many(self) -> str:
        """The question, without a time: "How many red pins did the Owls knock down"."""
        if self._measure == "standing":
            return f"How many {self.kind} were {self.after}"
        return f"How many {self.kind} did {self.who} {self.base}"

    @property
    def times(self) -> str:
        """Number and noun of what is counted by trials: "5 trials", "1 success"."""
        scenario = self._speaker.scenario
        one, many = (scenario.trial, scenario.trials) if self._measure == "trials" else ("success", "successes")
        return f"{self.n} {one if self.one else many}"

    @property
    def rule(self) -> str:
        """What a success is: "A trial is a success when target-color pins and no others are knocked down"."""
        return f"A {self._speaker.scenario.trial} is a success when {self._target}"

    @property
    def short_rule(self) -> str:
        """The same in fewer words: "In a success, target-color pins and no others are knocked down"."""
        return f"In a success, {self._target}"

    @property
    def _target(self) -> str:
        """What comes of a success: "target-color pins and no others are knocked down"; a trial with none down is not one."""
        scenario = self._speaker.scenario
        after = scenario.after_noun["down"]
        falls = scenario.base["down"] if after.startswith("that ") else f"are {after}"
        return f"target-color {scenario.items} and no others {falls}"

    @property
    def in_all(self) -> str:
        """ " in all" after a count of two or more named groups or colors, which could be read as a count of each."""
        groups, _, colors = self._scope
        return " in all" if len(groups or ()) > 1 or len(colors or ()) > 1 else ""

    @property
    def altogether(self) -> str:
        """ " in all" after a count that several trials add up to as well: no 24 pins stand in the room at once."""
        return " in all" if self.trials > 1 else self.in_all

    @property
    def set_up_each(self) -> str:
        """The set-up as a fact: "The Owls set up 12 pins for each of 2 trials, 24 pins in all" or "... set up 12 pins for Trial 1".

        The same pins stand again in each trial; a child must not look for 24 pins in the room.
        """
        speaker, quantity = self._speaker, self._quantity
        labels = self._scope.trials or speaker.table.trials
        past = speaker.scenario.past["set_up"]
        if len(labels) == 1:
            return f"{self.Who} {past} {self.count}{self.in_all} for {trial_name(labels[0], speaker.scenario)}"
        each = self._per_trial(labels)
        if each is None:
            return f"{self.Who} {past} {self.count} {self.when}"
        kind = f"{speaker.kind(self._scope)}{speaker.items(each)}"
        number = Stated(len(labels), "trials")
        per_trial = self._printed.note(Op("/", (quantity, number)), str(each))
        if self._scope.trials is not None:
            # No number directly after those of the trials.
            return f"{self.Who} {past} {per_trial} {kind} for each of {self.span}, a total of {self.count}"
        trials = self._printed.note(number, str(len(labels)))
        return f"{self.Who} {past} {per_trial} {kind} for each of {trials} {speaker.scenario.trials}, {self.count} in all"

    @property
    def set_up_here(self) -> str:
        """The set-up after a sentence that says in which trials: "The Owls set up 4 red pins for each trial, 8 in all"."""
        speaker, quantity = self._speaker, self._quantity
        labels = self._scope.trials or speaker.table.trials
        past = speaker.scenario.past["set_up"]
        each = self._per_trial(labels) if len(labels) > 1 else None
        if each is None:
            return f"{self.Who} {past} {self.count}{' in all' if len(labels) > 1 else self.in_all}"
        kind = f"{speaker.kind(self._scope)}{speaker.items(each)}"
        per_trial = self._printed.note(Op("/", (quantity, Stated(len(labels), "trials"))), str(each))
        return f"{self.Who} {past} {per_trial} {kind} for each {speaker.scenario.trial}, {self.n} in all"

    def _per_trial(self, labels: tuple[object, ...]) -> int | None:
        """The set-up of one trial, where every trial had the same."""
        counts = dict.fromkeys(labels, 0)
        groups, _, colors = self._scope
        for row in self._speaker.table.rows:
            if row.trial in counts and (groups is None or row.group in groups) and (colors is None or row.color in colors):
                counts[row.trial] += row.set_up
        sizes = set(counts.values())
        return sizes.pop() if len(sizes) == 1 else None
