"""Whether a deck can be made as asked: before anything is drawn, and all that is wrong at once."""

from __future__ import annotations

from mathgen.bank.deck_plan import DeckPlan
from mathgen.bank.wishes import settled
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import Curriculum

MOST = 60  # cards of one deck


def check_deck_plan(plan: DeckPlan, curriculum: Curriculum) -> None:
    """Nothing where the plan can be understood.

    Raises:
        RequestFault: a count that no deck has, grades that the curriculum does not have, words that it does not know; a line each.
    """
    faults = []
    if not 1 <= plan.count <= MOST:
        faults.append(f"--count {plan.count} cannot be met; a deck has 1 to {MOST} cards.")
    unknown = [str(grade) for grade in plan.grades if grade not in curriculum.grades]
    if unknown:
        faults.append(f"{curriculum.title} has no grade {', '.join(unknown)} here; it has {', '.join(map(str, curriculum.grades))}.")
    try:
        settled(plan.of_grade(plan.grades[0]), curriculum)
    except RequestFault as fault:
        faults.append(str(fault))
    if faults:
        raise RequestFault("\n".join(faults))
