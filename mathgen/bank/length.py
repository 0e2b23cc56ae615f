"""How long a sheet is: what is usual in a grade, and what a plan asks for."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from mathgen.bank.plan import SheetPlan
from mathgen.errors import RequestFault


@dataclass(frozen=True, slots=True)
class Usual:
    """What a sheet of one grade holds unless a teacher says otherwise, and how it is made up."""

    count: int
    minutes_each: int
    most: int
    own_share: tuple[int, int]
    own_draws: int
    models_each: int
    review_draws: int


@cache
def usual(grade: int) -> Usual:
    """What is usual in a grade."""
    data = tomllib.loads(files("mathgen.bank").joinpath("length.toml").read_text(encoding="utf-8"))
    one, choice = data["grades"][str(grade)], data["choice"]
    top, bottom = choice["own_share"]
    draws = choice["own_draws"], choice["models_each"], choice["review_draws"]
    return Usual(one["count"], one["minutes_each"], choice["most"], (top, bottom), *draws)


MOST_PROBLEMS = max(usual(grade).most for grade in range(1, 9))


def wanted_count(plan: SheetPlan) -> int:
    """How many problems a plan asks for: by count, by minutes, by pages, or what is usual in its grade.

    Raises:
        RequestFault: two of them at once, or a number outside what a sheet can hold.
    """
    defaults = usual(plan.grade)
    named = {"--count": plan.count, "--minutes": plan.minutes, "--pages": plan.pages}
    given = [name for name, number in named.items() if number is not None]
    if len(given) > 1:
        raise RequestFault(f"{' and '.join(given)} both say how long the sheet is. Give one of them.")
    if plan.count is not None:
        count = plan.count
    elif plan.minutes is not None:
        count = plan.minutes // defaults.minutes_each
    elif plan.pages is not None:
        count = plan.pages * defaults.count // 2
    else:
        count = defaults.count
    if not 1 <= count <= defaults.most:
        least, most = (number * defaults.minutes_each for number in (1, defaults.most))
        room = f"1 to {defaults.most} problems" if plan.minutes is None else f"{least} to {most} minutes in grade {plan.grade}"
        raise RequestFault(f"{given[0]} {named[given[0]]} cannot be met; a sheet holds {room}.")
    return count
