"""Whose results something is, and in which trials, as a wording template sees it."""

from __future__ import annotations

from mathgen.scenario.naming import upper_first
from mathgen.trials.scope import Scope
from mathgen.wording.speaker import Speaker


class SaidPlace:
    """A group and trials in a sentence: "the Owls", "in Trial 1"."""

    __slots__ = ("_scope", "_speaker")

    def __init__(self, speaker: Speaker, scope: Scope) -> None:
        self._speaker, self._scope = speaker, scope

    @property
    def who(self) -> str:
        """Whose results they are: "the Owls"."""
        return self._speaker.who(self._scope)

    @property
    def Who(self) -> str:  # noqa: N802 - the capital says that it starts a sentence
        return upper_first(self.who)

    @property
    def when(self) -> str:
        """In which trials: "in Trial 1", "in all 3 trials"."""
        return self._speaker.when(self._scope)

    @property
    def When(self) -> str:  # noqa: N802 - as above
        return upper_first(self.when)

    @property
    def span(self) -> str:
        """The trials without "in": "Trial 1", "Trials 1 and 2", "all 3 trials"."""
        return self.when.removeprefix("in ")

    @property
    def Span(self) -> str:  # noqa: N802 - as above
        return upper_first(self.span)

    @property
    def In(self) -> str:  # noqa: N802 - as above
        """``When`` of a sentence that ends in ``altogether``: "In 3 trials, ... 14 red pins in all"."""
        return f"In {self.trials} {self._speaker.scenario.trials}" if self._scope.trials is None and self.trials > 1 else self.When

    @property
    def look(self) -> str:
        """Where to look, as a sentence without its period: "Look at Trial 1"."""
        return f"Look at {self.span}"

    @property
    def think(self) -> str:
        """Which results the words tell of, as a sentence without its period: "Think about Trial 1". There is nothing to look at."""
        return f"Think about {self.span}"

    @property
    def trials(self) -> int:
        """How many trials the quantity covers, for choosing words."""
        return len(self._scope.trials or self._speaker.table.trials)
