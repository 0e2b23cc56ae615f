"""Numbers as wording templates print them."""

import pytest

from mathgen.asks.expression import Quantity, Stated
from mathgen.trials.scope import Scope
from mathgen.wording.said_count import SaidCount
from mathgen.wording.said_number import Printed, SaidNumber
from mathgen.wording.speaker import Speaker
from tests.reading.small_class import RAMP, TABLE


@pytest.mark.parametrize(("number", "said"), [(2, "the 2"), (3, "all 3")])
def test_two_are_never_called_all_two_and_the_number_is_printed(number: int, said: str) -> None:
    quantity, stated, printed = Quantity("trials", Scope(("Owls",))), Stated(number, "trials"), Printed()
    assert SaidCount(Speaker(TABLE, RAMP), printed, quantity, number).all_n == said
    assert SaidNumber(printed, stated).all_n == said
    assert printed.texts == {quantity: str(number), stated: str(number)}
