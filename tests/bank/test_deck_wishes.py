"""Plans of decks that cannot be understood are refused before anything is drawn."""

from __future__ import annotations

import pytest

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.deck_wishes import MOST, check_deck_plan
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load


def test_all_that_is_wrong_is_said_at_once() -> None:
    plan = DeckPlan((4, 12), 0, topics=("weather", "clouds"), standards=("9.X",), skills=("juggling",), not_yet=("snow",))
    with pytest.raises(RequestFault) as refused:
        check_deck_plan(plan, load("ccss"))
    lines = str(refused.value).splitlines()
    assert len(lines) == 7
    for word in ("--count 0", "no grade 12", '"weather"', '"clouds"', '"9.X"', '"juggling"', '"snow"'):
        assert sum(word in line for line in lines) == 1


@pytest.mark.parametrize(("count", "fits"), [(0, False), (1, True), (MOST, True), (MOST + 1, False)])
def test_a_deck_has_a_number_of_cards_that_can_be_handled(count: int, fits: bool) -> None:
    if fits:
        check_deck_plan(DeckPlan((4,), count, topics=("Decimals",)), load("ccss"))
    else:
        with pytest.raises(RequestFault, match=f"1 to {MOST}"):
            check_deck_plan(DeckPlan((4,), count), load("ccss"))
