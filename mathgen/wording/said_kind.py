"""Which things are counted, and what was done to them, as a wording template sees it."""

from __future__ import annotations

from mathgen.asks.expression import Quantity
from mathgen.scenario.naming import upper_first
from mathgen.wording.said_place import SaidPlace
from mathgen.wording.speaker import Speaker


class SaidKind(SaidPlace):
    """The noun and the verb of a quantity: "red pins", "knocked down"."""

    __slots__ = ("_measure",)

    def __init__(self, speaker: Speaker, quantity: Quantity) -> None:
        super().__init__(speaker, quantity.scope)
        self._measure = quantity.measure

    @property
    def kind(self) -> str:
        """Noun without number: "red pins"."""
        return f"{self._speaker.kind(self._scope)}{self._speaker.scenario.items}"

    @property
    def Kind(self) -> str:  # noqa: N802 - as of SaidPlace
        return upper_first(self.kind)

    @property
    def one_kind(self) -> str:
        """One of them, without article or number: "red pin"."""
        return f"{self._speaker.kind(self._scope)}{self._speaker.items(1)}"

    @property
    def a_kind(self) -> str:
        """One of them with its article: "a red pin", "an orange pin"."""
        return f"{'an' if self.one_kind[0] in 'aeiouAEIOU' else 'a'} {self.one_kind}"

    @property
    def color(self) -> str:
        """The color alone: "red"; "" of all."""
        return self._speaker.kind(self._scope).strip()

    @property
    def either(self) -> str:
        """As ``kind``: what a single color is beside ``SaidMany.either``."""
        return self.kind

    @property
    def kinds(self) -> str:
        """As ``kind``: what a single color is beside ``SaidMany.kinds``."""
        return self.kind

    @property
    def Kinds(self) -> str:  # noqa: N802 - as of SaidPlace
        return upper_first(self.kinds)

    @property
    def past(self) -> str:
        """What happened: "knocked down"."""
        return self._speaker.scenario.past[self._measure]

    @property
    def base(self) -> str:
        """What is asked: "(did ...) knock down"."""
        return self._speaker.scenario.base[self._measure]

    @property
    def after(self) -> str:
        """After the noun: "pins knocked down"."""
        return self._speaker.scenario.after_noun[self._measure]

    @property
    def be_done(self) -> str:
        """After "will" or "to": "be knocked down"; "sprout"."""
        return self._speaker.scenario.done(self._measure, "be")

    @property
    def was_done(self) -> str:
        """The same after a singular such as "what part": "was knocked down"; "sprouted"."""
        return self._speaker.scenario.done(self._measure, "was")

    @property
    def were_done(self) -> str:
        """What was done to them, after a plural: "were knocked down"; "sprouted"."""
        return self._speaker.scenario.done(self._measure, "were")

    @property
    def that_were(self) -> str:
        """What was done to them, as a clause after the noun: "that were knocked down", "that sprouted"."""
        return f"that {self.were_done}"

    @property
    def fared(self) -> str:
        """What was done to them, after "had ... of its pins": "knocked down"; "sprout"."""
        return self.base if self.after.startswith("that ") else self.after
