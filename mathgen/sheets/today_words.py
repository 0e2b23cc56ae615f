"""What a teacher is told about a lesson's files: what the table serves, what it does not and why, and which pages hold what."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from mathgen.bank.served import Served

_REASONS, _SKILLS, _BRIEFLY = 5, 6, 3  # named at most; the rest is counted, for all of it has to stand on one screen


def served_lines(grade: int, found: Served, brief: bool = False) -> list[str]:
    """How many skills of a grade a table has problems for, then a line for each reason that it has none.

    Args:
        grade: the grade.
        found: its skills.
        brief: one line only, where several grades share the screen.

    >>> print("\\n".join(served_lines(4, Served(("total",), (("feet", "it has no spaces"), ("lengths", "it has no spaces"))))))
    grade 4: this table has problems for 1 of 3 skills.
      None for feet; lengths: it has no spaces.
    >>> served_lines(4, Served(("total",), (("feet", "it has no spaces"), ("lengths", "it has no spaces"))), brief=True)
    ['grade 4: this table has problems for 1 of 3 skills. None for feet; lengths: it has no spaces.']
    """
    line = f"grade {grade}: this table has problems for {len(found.served)} of {len(found.served) + len(found.missing)} skills."
    by_reason: dict[str, list[str]] = {}
    for skill, why in found.missing:
        by_reason.setdefault(why, []).append(skill)
    reasons = sorted(by_reason.items(), key=lambda one: -len(one[1]))
    if brief:
        told = [f"None for {_cut(skills, _BRIEFLY)}: {why}." for why, skills in reasons[:1]]
        left = sum(len(skills) for _, skills in reasons[1:])
        return [" ".join([line, *told, *([f"None for {left} more; --grade {grade} by itself tells why."] if left else [])])]
    lines = [f"  None for {_cut(skills, _SKILLS)}: {why}." for why, skills in reasons[:_REASONS]]
    more = sum(len(skills) for _, skills in reasons[_REASONS:])
    return [line, *lines, *([f"  None for {more} more."] if more else [])]


def spans_line(spans: Iterable[tuple[str, int, int]]) -> str:
    """Which pages hold which part, for the printer's dialog.

    >>> spans_line([("worksheet", 1, 2), ("cards", 3, 10)])
    'pages 1-2 worksheet, 3-10 cards'
    """
    return f"pages {', '.join(f'{first}-{last} {name}' for name, first, last in spans)}"


def _cut(names: Sequence[str], most: int) -> str:
    left = len(names) - most
    return "; ".join(names) if left <= 0 else f"{'; '.join(names[:most])} and {left} more"
