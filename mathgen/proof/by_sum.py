"""A line by which pupils check answers together, proved in two ways that share nothing that adds or solves.

First the line and the printed answers are read as text and added in pairs of whole numbers. Apart from that, each question is solved
as an equation over the raw rows, and sympy adds the solutions up.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from sympy import Rational

from mathgen.exact.parse import NotANumber, written
from mathgen.problems.record import Problem
from mathgen.proof import by_relation
from mathgen.proof.raw import RawRows
from mathgen.proof.step_numbers import NotTrue, lowest, number
from mathgen.proof.verdict import AGREES

_LINE = re.compile(r"Answers (\d+) to (\d+) add up to (.+)\.")


def verdict(line: str, first: int, problems: Sequence[Problem], rows: RawRows) -> str:
    """``agrees``, or what is wrong.

    Args:
        line: as printed: "Answers 1 to 4 add up to 27."
        first: the number of the first card.
        problems: of the cards, in order.
        rows: of the class's table.
    """
    found = _LINE.fullmatch(line)
    if found is None:
        return f"{line!r} is no check line"
    if (int(found[1]), int(found[2])) != (first, first + len(problems) - 1):
        return f"{line!r} names other cards than {first} to {first + len(problems) - 1}"
    try:
        top, bottom = _as_printed([problem.answer.shown for problem in problems])
        if number(found[3]) != (top, bottom):
            return f"the printed answers add up to {top}/{bottom}"
        solved = [by_relation.solve(problem.ask, rows) for problem in problems]
        total = sum((one for one in solved if not isinstance(one, str)), Rational(0))
        if any(isinstance(one, str) for one in solved) or written(found[3]).value != total:
            return f"the solutions add up to {total}"
    except (NotTrue, by_relation.NoSolution, NotANumber) as err:
        return str(err)
    return AGREES


def _as_printed(answers: Sequence[str]) -> tuple[int, int]:
    """The sum of printed numbers, in pairs of whole numbers, never reduced before the end."""
    top, bottom = 0, 1
    for text in answers:
        a, b = number(text)
        top, bottom = top * b + a * bottom, bottom * b
    return lowest(top, bottom)
