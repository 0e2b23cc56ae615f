"""One story asked at several grades: problem n is about the same groups and trials on each grade's sheet."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from mathgen.bank.builder import Candidate
from mathgen.bank.choose import LEVELS, best, fits
from mathgen.bank.draw import stream
from mathgen.bank.length import wanted_count
from mathgen.bank.plan import ChosenSheet, SheetPlan
from mathgen.bank.sheet import SheetMaker
from mathgen.bank.spot import Spot, spot_of
from mathgen.errors import RequestFault
from mathgen.trials.table import TrialTable


class StoryMaker:
    """Makes the sheets of all grades together, again with fewer problems where a page does not hold them all."""

    def __init__(self, table: TrialTable, plan: SheetPlan, scenario_name: str = "ramp") -> None:
        """Draws the candidates of each grade in ``plan.same_story``; the plan's own grade does not count.

        Raises:
            RequestFault: fewer than two grades, wishes that rule each other out, or no problem that fits the plan.
        """
        if len(plan.same_story) < 2:
            raise RequestFault("--same-story needs two grades or more, such as 3,4,6.")
        self._table, self._plan = table, plan
        self._makers = [SheetMaker(table, replace(plan, grade=grade), scenario_name) for grade in plan.same_story]
        self._count = min(wanted_count(replace(plan, grade=grade)) for grade in plan.same_story)

    def make(self, fewer: int = 0) -> list[ChosenSheet]:
        """A sheet for each grade, with the same number of problems.

        Raises:
            RequestFault: no spot has a problem on every grade's sheet.
        """
        count = max(self._count - fewer, 1)
        while True:
            by_grade = [self._by_spot(maker) for maker in self._makers]
            rows = self._rows(by_grade, count)
            if not rows:
                raise RequestFault(
                    f"{self._grades()} have no problem about the same groups and trials on this table and plan: {self._lacking(by_grade)}. "
                    "Try fewer grades, other topics or more trials."
                )
            forms = [[row[at] for row in rows] for at in range(len(self._makers))]
            good = [maker.all_proved(form) for maker, form in zip(self._makers, forms, strict=True)]  # each takes out its own
            if all(good):
                break
        changes = []
        if len(rows) < count:
            are = "is" if len(rows) == 1 else "are"
            changes.append(
                f"{count} problems were wanted, {len(rows)} {are} here: {self._grades()} have no more on this table about the same groups "
                "and trials that do not give one another away. A spot that one grade has nothing for was skipped for all."
            )
        return [maker.sheet_of(form, changes) for maker, form in zip(self._makers, forms, strict=True)]

    def _by_spot(self, maker: SheetMaker) -> dict[Spot, list[Candidate]]:
        found: dict[Spot, list[Candidate]] = {}
        for candidates in maker.pool.own.values():
            for one in candidates:
                found.setdefault(spot_of(one.draft, self._table), []).append(one)
        return found

    def _rows(self, by_grade: list[dict[Spot, list[Candidate]]], count: int) -> list[tuple[Candidate, ...]]:
        """Rows of one problem a grade, all about one spot; spots take turns, and a spot that fails one grade is out for all."""
        spots = [spot for spot in by_grade[0] if all(spot in found for found in by_grade)]
        stream(self._plan.seed, "spots", 0).shuffle(spots)
        used: Counter[Spot] = Counter()
        rows: list[tuple[Candidate, ...]] = []
        while spots and len(rows) < count:
            spot = min(spots, key=lambda one: used[one])
            row = []
            for at, found in enumerate(by_grade):
                form = [other[at] for other in rows]
                models = Counter(one.model.name for one in form)
                fitting = [one for one in found[spot] if fits(one, form)]
                least = min((models[one.model.name] for one in fitting), default=0)
                one = best([one for one in fitting if models[one.model.name] == least], form)
                if one is None:
                    break
                row.append(one)
            if len(row) == len(by_grade):
                rows.append(tuple(row))
                used[spot] += 1
            else:
                spots.remove(spot)
        return sorted(rows, key=lambda row: (LEVELS[row[0].level], row[0].difficulty))

    def _lacking(self, by_grade: list[dict[Spot, list[Candidate]]]) -> str:
        grades = [str(grade) for grade, found in zip(self._plan.same_story, by_grade, strict=True) if not found]
        return f"grade {', '.join(grades)} has none of its own" if grades else "each has problems, but about others"

    def _grades(self) -> str:
        *most, last = map(str, self._plan.same_story)
        return f"Grades {', '.join(most)} and {last}"
