"""A curriculum, read from its TOML file."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any, TypeVar

from mathgen.errors import RequestFault
from mathgen.grades.entry import Caps, Limits, SkillEntry, SkillWords, StandardsWhen

_T = TypeVar("_T")
_FOLDER = Path(__file__).parent
_SKILLS = "skills"  # shared by all curricula, so no curriculum itself


@dataclass(frozen=True, slots=True)
class Curriculum:
    """Grades, limits, skills and standards of one curriculum.

    >>> load("ccss").entry("rest of one whole", 4).standards
    ('4.NF.B.3d',)
    >>> load("ccss").limits(3).denominators
    (2, 3, 4, 6, 8)
    """

    name: str
    title: str
    grades: tuple[int, ...]
    switches: Mapping[str, bool]  # what schools settle differently, such as "fraction_of_a_set"
    first_grade: Mapping[str, int]  # of each feature
    part_names_from: int  # the first grade to say numerator and denominator
    _labels: Mapping[int, str]
    _limits: Mapping[int, Limits]
    _caps: Mapping[int, Caps]
    _words: Mapping[str, SkillWords]
    _entries: tuple[SkillEntry, ...]
    _by_skill_and_grade: Mapping[tuple[str, int], SkillEntry]

    def label(self, grade: int) -> str:
        """What the curriculum calls the grade: "Grade 4", in England "Year 5"."""
        return self._of_grade(self._labels, grade)

    def limits(self, grade: int) -> Limits:
        """What the grade may meet.

        Raises:
            RequestFault: the curriculum has no such grade.
        """
        return self._of_grade(self._limits, grade)

    def caps(self, grade: int) -> Caps:
        """How long the grade's texts may be.

        Raises:
            RequestFault: the curriculum has no such grade.
        """
        return self._of_grade(self._caps, grade)

    def entries(self, skill: str) -> tuple[SkillEntry, ...]:
        """What each grade makes of a skill, lowest grade first; () for a skill that is not offered."""
        return tuple(entry for entry in self._entries if entry.skill == skill and self._on(entry))

    def entry(self, skill: str, grade: int) -> SkillEntry | None:
        """What one grade makes of a skill; None where it is not offered."""
        entry = self._by_skill_and_grade.get((skill, grade))
        return entry if entry is not None and self._on(entry) else None

    def skills(self, grade: int) -> tuple[str, ...]:
        """The skills that a grade offers, in the order of the skill list."""
        return tuple(skill for skill in self._words if self.entry(skill, grade) is not None)

    def all_skills(self) -> tuple[str, ...]:
        """The skills that any grade offers, in the order of the skill list."""
        offered = {entry.skill for entry in self._entries if self._on(entry)}
        return tuple(skill for skill in self._words if skill in offered)

    def words(self, skill: str) -> SkillWords:
        """A skill's strand, topic and "I can" phrase.

        Raises:
            RequestFault: there is no such skill.
        """
        if skill not in self._words:
            raise RequestFault(unknown("skill", skill, self.all_skills()))
        return self._words[skill]

    def topics(self) -> tuple[str, ...]:
        """The topics of the skills on offer, in the order of the skill list."""
        return tuple(dict.fromkeys(self._words[skill].topic for skill in self.all_skills()))

    def standards(self) -> tuple[str, ...]:
        """Every standard that some entry serves, by grade, then in the order of the skill list."""
        found: dict[str, None] = {}
        for grade in self.grades:
            for skill in self.skills(grade):
                entry = self._by_skill_and_grade[skill, grade]
                found.update(dict.fromkeys(entry.standards))
                for other in entry.when:
                    found.update(dict.fromkeys(other.standards))
        return tuple(found)

    def _on(self, entry: SkillEntry) -> bool:
        return entry.switch is None or self.switches[entry.switch]

    def _of_grade(self, of: Mapping[int, _T], grade: int) -> _T:
        if grade not in of:
            raise RequestFault(f"{self.title} has no grade {grade} here; the grades are {self.grades[0]} to {self.grades[-1]}.")
        return of[grade]


def names() -> tuple[str, ...]:
    """The curricula that can be loaded."""
    return tuple(sorted(path.stem for path in _FOLDER.glob("*.toml") if path.stem != _SKILLS))


@cache
def load(name: str) -> Curriculum:
    """The curriculum of that name, read once.

    Raises:
        RequestFault: there is no such curriculum; the message names those there are.
    """
    if name not in names():
        raise RequestFault(unknown("curriculum", name, names()))
    data = _read(name)
    limits = {int(grade): _limits(int(grade), data) for grade in data["grades"]}
    words = _skill_words()
    entries = tuple(sorted(map(_entry, data["entries"]), key=lambda entry: (list(words).index(entry.skill), entry.grade)))
    by_skill_and_grade = {(entry.skill, entry.grade): entry for entry in entries}
    if len(by_skill_and_grade) != len(entries):
        raise ValueError(f"{name}.toml has two entries for one skill and grade")
    return Curriculum(
        name=name,
        title=data["title"],
        grades=tuple(sorted(limits)),
        switches=MappingProxyType(data["switches"]),
        first_grade=MappingProxyType(data["first_grade"]),
        part_names_from=data["part_names_from"],
        _labels=MappingProxyType({int(grade): of["label"] for grade, of in data["grades"].items()}),
        _limits=MappingProxyType(limits),
        _caps=MappingProxyType({int(grade): Caps(**of["caps"]) for grade, of in data["grades"].items()}),
        _words=MappingProxyType(words),
        _entries=entries,
        _by_skill_and_grade=MappingProxyType(by_skill_and_grade),
    )


def unknown(kind: str, typed: str, choices: tuple[str, ...]) -> str:
    """The sentence about a word that is not among the choices, with its neighbors where it has some.

    >>> unknown("curriculum", "ccs", ("ccss", "england"))
    'No curriculum "ccs"; did you mean "ccss"? The choices are: ccss, england.'
    """
    near = get_close_matches(typed, choices, n=1)
    hint = f'; did you mean "{near[0]}"?' if near else "."
    return f'No {kind} "{typed}"{hint} The choices are: {", ".join(choices)}.'


def _read(name: str) -> dict[str, Any]:
    with (_FOLDER / f"{name}.toml").open("rb") as file:
        return tomllib.load(file)


@cache
def _skill_words() -> dict[str, SkillWords]:
    return {each["skill"]: SkillWords(**each) for each in _read(_SKILLS)["skills"]}


def _limits(grade: int, data: dict[str, Any]) -> Limits:
    of = data["grades"][str(grade)]
    listed: list[int] | str = of["denominators"]
    return Limits(
        grade=grade,
        denominators=None if listed == "any" else tuple(int(each) for each in listed),
        # TOML has no null: a limit that is left out is none.
        story_max=of.get("story_max"),
        product_max=of.get("product_max"),
        divisor_digits=of.get("divisor_digits"),
        factor_digits=tuple(map(tuple, of["factor_digits"])) if "factor_digits" in of else None,
        factor_max=of.get("factor_max"),
        product_tens=of.get("product_tens", False),
        decimal_places=of.get("decimal_places"),
        decimal_places_compute=of.get("decimal_places_compute"),
        operations=of.get("operations"),
        addends=of.get("addends"),
        addend_digits=of.get("addend_digits"),
        cells=of["cells"],
        graph_categories=of.get("graph_categories"),
        same_whole=of.get("same_whole", False),
        common_denominator=of.get("common_denominator", False),
        subtract_fractions_of_different_sets=grade >= data["percentage_points_from"],
        features=frozenset(feature for feature, first in data["first_grade"].items() if first <= grade),
    )


def _entry(of: dict[str, Any]) -> SkillEntry:
    # Lists become tuples so that frozen means frozen.
    plain: dict[str, Any] = {key: tuple(value) if isinstance(value, list) else value for key, value in of.items() if key != "when"}
    when = tuple(StandardsWhen(each["condition"], tuple(each["standards"])) for each in of.get("when", []))
    return SkillEntry(**plain, when=when)
