"""What a table's groups, trials and colors are called in a sentence: "the Owls and the Herons", "in all 3 trials", "red "."""

from __future__ import annotations

from collections.abc import Iterable

from mathgen.asks.expression import Measured, Price, Quantity, Stated
from mathgen.problems.draft import Role
from mathgen.scenario.naming import group_name, listed, several_of, trial_name, upper_first
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL, Scope
from mathgen.trials.table import TrialTable

_PLACED = (Quantity, Measured)  # roles that name groups, trials and colors


class Speaker:
    """The voice of one table and scenario; remembers names, which recur in every problem."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table = table
        self.scenario = scenario
        self._who: dict[tuple[str, ...] | None, str] = {}
        self._when: dict[tuple[object, ...] | None, str] = {}
        self._kind: dict[tuple[str, ...] | None, str] = {}
        self._names: dict[Scope, tuple[str, ...]] = {}
        self._shape: dict[Scope, tuple[int, ...]] = {}

    def who(self, scope: Scope) -> str:
        """Whose results, in mid-sentence: "the Owls", "the Owls and the Herons", "the class"."""
        groups = scope.groups
        if groups not in self._who:
            everybody = self.table.groups if len(self.table.groups) == 1 else ()
            groups_named = everybody if groups is None else groups
            names = [group_name(label, self.scenario) for label in groups_named]
            self._who[groups] = listed(names) if names else self.scenario.the_class
        return self._who[groups]

    def when(self, scope: Scope) -> str:
        """In which trials: "in Trial 1", "in Trials 1 and 2", "in all 3 trials"."""
        trials = scope.trials
        if trials not in self._when:
            labels = trials or self.table.trials
            plural = self.scenario.trials
            if len(labels) == 1:
                phrase = trial_name(labels[0], self.scenario)
            elif trials is None:
                phrase = f"{'all ' if len(labels) > 2 else 'the '}{len(labels)} {plural}"
            elif all(isinstance(label, int) for label in labels):
                phrase = f"{plural.capitalize()} {listed([str(label) for label in labels])}"
            else:
                phrase = listed([trial_name(label, self.scenario) for label in labels])
            self._when[trials] = f"in {phrase}"
        return self._when[trials]

    def kind(self, scope: Scope) -> str:
        """Which pins, in front of the noun: "red ", "red and gold ", or nothing."""
        colors = scope.colors
        if colors not in self._kind:
            self._kind[colors] = f"{listed(list(colors))} " if colors is not None else ""
        return self._kind[colors]

    def shape(self, role: Role) -> tuple[int, ...]:
        """How many words a role takes, and over how many cells it goes: what decides whether a frame is short enough."""
        if isinstance(role, Price):
            return (role.item.count(" "),)
        if isinstance(role, _PLACED):
            scope = role.scope
        elif isinstance(role, tuple) and role and isinstance(role[0], _PLACED):
            return (len(role), *self.shape(role[0]))
        elif isinstance(role, tuple) and role and isinstance(role[0], Stated):
            return (len(role),)
        else:
            return ()
        measure = role.measure if isinstance(role, Quantity) else None
        if measure in BY_TRIAL:
            taken = dict.fromkeys((row.group, row.trial) for row in self.table.rows if scope.groups is None or row.group in scope.groups)
            return (self.who(scope).count(" "), len(taken))
        known = self._shape.get(scope)
        if known is None:
            table = self.table
            cells = len(scope.groups or table.groups) * len(scope.trials or table.trials) * len(scope.colors or table.colors)
            known = (*(text.count(" ") for text in (self.who(scope), self.when(scope), self.kind(scope))), cells, scope.trials is None)
            self._shape[scope] = known
        return known

    def names(self, roles: Iterable[Role]) -> tuple[str, ...]:
        """Every phrase that names a group, trials or a color of the roles, longest first, as it may stand in a sentence."""
        found: dict[str, None] = {}
        for role in roles:
            if isinstance(role, _PLACED):
                found.update(dict.fromkeys(self._names_of(role.scope)))
            elif isinstance(role, Price):
                names = role.item, several_of(role.item)
                found.update(dict.fromkeys([name for name in names if name is not None and " " in name]))
            elif type(role) is tuple:
                scopes = [one.scope for one in role if isinstance(one, _PLACED)]
                for scope in scopes:
                    found.update(dict.fromkeys(self._names_of(scope)))
                trials = tuple(dict.fromkeys([trial for scope in scopes for trial in scope.trials or ()]))
                if len(trials) > 1:
                    found[self.when(Scope(None, trials)).removeprefix("in ")] = None
        return tuple(sorted(found, key=len, reverse=True))

    def _names_of(self, scope: Scope) -> tuple[str, ...]:
        known = self._names.get(scope)
        if known is None:
            names = [group_name(label, self.scenario) for label in scope.groups or self.table.groups]
            trials = [trial_name(label, self.scenario) for label in scope.trials or self.table.trials]
            together = [self.when(scope).removeprefix("in ")] if scope.trials is not None else []
            phrases = [*names, *map(upper_first, names), *trials, *together, *(scope.colors or self.table.colors)]
            known = self._names[scope] = tuple(one for one in dict.fromkeys(phrases) if " " in one)
        return known

    def items(self, number: int) -> str:
        """The noun for a number: 1 pin, 2 pins, 0 pins."""
        return self.scenario.item if number == 1 else self.scenario.items
