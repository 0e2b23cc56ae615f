"""A price as a wording template sees it."""

from __future__ import annotations

from sympy import Rational

from mathgen.asks.expression import Price
from mathgen.scenario.naming import several_of, upper_first
from mathgen.wording.said_number import Printed

_SAID_WITH_Y = ("uni", "use", "eu", "one")  # a unicorn


class SaidPrice:
    """What one item of the price list costs: "25¢", "$0.25"; and what the item is called: "a paper tube"."""

    __slots__ = ("_amount", "_price", "_printed")

    def __init__(self, printed: Printed, price: Price, amount: Rational) -> None:
        self._printed, self._price, self._amount = printed, price, amount

    @property
    def n(self) -> str:
        """The bare number."""
        amount = self._amount
        cents = int(100 * amount)
        text = str(amount) if self._price.unit == "cents" else f"{cents // 100}.{cents % 100:02}"
        return self._printed.note(self._price, text)

    @property
    def told(self) -> str:
        """The price with its sign, in the unit in which it is told: "25¢", "$0.25"."""
        return f"{self.n}¢" if self._price.unit == "cents" else f"${self.n}"

    @property
    def spelled(self) -> str:
        """As ``told``, of cents in a word: "25 cents", "1 cent"."""
        if self._price.unit == "dollars":
            return self.told
        return f"{self.n} {'cent' if self._amount == 1 else 'cents'}"

    @property
    def item(self) -> str:
        """What is sold, without an article: "paper tube"."""
        return self._price.item

    @property
    def a(self) -> str:
        """The item in mid-sentence: "a paper tube", "an eraser", "the sock balls"."""
        if several_of(self.item) is None:
            return f"the {self.item}"
        vowel = self.item[0].casefold() in "aeiou" and not self.item.casefold().startswith(_SAID_WITH_Y)
        return f"{'an' if vowel else 'a'} {self.item}"

    @property
    def A(self) -> str:  # noqa: N802 - the capital says that it starts a sentence
        return upper_first(self.a)

    @property
    def costs(self) -> str:
        """The verb: one of a thing costs, several cost."""
        return "cost" if several_of(self.item) is None else "costs"

    @property
    def does(self) -> str:
        """In a question: "does the paper tube cost", "do the sock balls cost"."""
        return "do" if several_of(self.item) is None else "does"

    @property
    def Does(self) -> str:  # noqa: N802 - as above
        return upper_first(self.does)

    @property
    def several(self) -> str:
        """Several of them: "paper tubes". Only for items of which several can be said."""
        found = several_of(self.item)
        if found is None:
            raise ValueError(f"{self.item} are several already; the model may not offer it")
        return found
