"""What a teacher asks for, in the curriculum's own spelling."""

from __future__ import annotations

from dataclasses import replace
from difflib import get_close_matches

from mathgen.bank.plan import SheetPlan
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import Curriculum

_NEAR, _FEW = 3, 30  # neighbors that are named; choices that are few enough to name them all


def settled(plan: SheetPlan, curriculum: Curriculum) -> SheetPlan:
    """The plan with its topics, skills and standards as the curriculum spells them.

    Capitals do not matter, and a standard stands for its parts: ``6.RP.A.3`` for ``6.RP.A.3a`` and so on.

    Raises:
        RequestFault: words that the curriculum does not know, with what it knows, and wishes that rule each other out; all at once.
    """
    faults: list[str] = []
    if plan.tiers and plan.level is not None:
        faults.append("--tiers makes a form of each level, and --level one level only. Give one of them.")
    if plan.same_story and (plan.tiers or plan.forms != 1):
        faults.append("--same-story makes one form a grade. Leave out --tiers and --forms.")
    if plan.each_group and (plan.tiers or plan.same_story or plan.forms != 1):
        faults.append("--each-group makes a form for every group. Leave out --tiers, --same-story and --forms.")
    if plan.tiers and plan.forms != 1:
        faults.append("--tiers makes three forms, one a level. Leave --forms out.")

    def known(option: str, words: tuple[str, ...], choices: tuple[str, ...], parts: bool = False) -> tuple[str, ...]:
        found: dict[str, None] = {}
        for word in words:
            wanted = word.casefold()
            matches = [choice for choice in choices if choice.casefold() == wanted]
            if parts and not matches:
                matches = [choice for choice in choices if choice.casefold().startswith(wanted) and wanted.count(".") >= 2]
            if not matches:
                faults.append(f'{option}: there is no "{word}"{_near(option, word, choices)}')
            found.update(dict.fromkeys(matches))
        return tuple(found)

    topics = known("--topic", plan.topics, curriculum.topics())
    not_yet = known("--not-yet", plan.not_yet, curriculum.topics())
    skills = known("--skill", plan.skills, curriculum.all_skills())
    standards = known("--standard", plan.standards, curriculum.standards(), parts=True)
    if faults:
        raise RequestFault("\n".join(faults))
    return replace(plan, topics=topics, not_yet=not_yet, skills=skills, standards=standards)


def _near(option: str, word: str, choices: tuple[str, ...]) -> str:
    """How the sentence goes on that a word is not among the choices: those near it, or all of them where they are few.

    >>> _near("--topic", "fractons", ("decimals", "fractions"))
    '; did you mean "fractions"? There are: decimals; fractions'
    """
    by_case = {choice.casefold(): choice for choice in choices}
    longer = [one for one in by_case if one.startswith(word.casefold())]
    close = sorted(f'"{by_case[one]}"' for one in longer[:_NEAR] or get_close_matches(word.casefold(), by_case, n=_NEAR))
    hint = f"; did you mean {' or '.join(close)}?" if close else "."
    if len(choices) <= _FEW:
        return f"{hint} There are: {'; '.join(choices)}"
    return f"{hint} mathgen list {option.removeprefix('--')}s prints them all."
