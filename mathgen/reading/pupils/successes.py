"""Pupils' questions about successes: trials in which pins of the target color fell, and no others.

A few ways of asking are known, each as a whole; every other question with such a word is told what can be asked.
"""

from __future__ import annotations

import re

from mathgen.asks.expression import Choice, Op, Quantity, Value
from mathgen.exact.demand import Demand
from mathgen.reading.evaluate import Counts
from mathgen.reading.pupils.plan import Plan
from mathgen.scenario.naming import group_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label, Scope

_WORDS = re.compile(r"\b(?:success\w*|accura\w+|targets?|on target|unsuccessful)\b", re.IGNORECASE)
_HIT = r"(?:a success|successes|successful|success)"
_FORMS = {"fraction": Demand("any"), "part": Demand("any"), "percent": Demand("percent"), "percentage": Demand("percent")}
_FORMS["decimal"] = Demand("decimal")


class Successes:
    """The successes of one table, as pupils ask for them."""

    def __init__(self, counts: Counts, scenario: Scenario) -> None:
        """Args:
        counts: of the table.
        scenario: nouns and verbs of the activity.
        """
        table = counts.table
        self._counts, self._scenario, self._groups = counts, scenario, table.groups
        self._known = any(row.target is not None for row in table.rows)
        self._labels = " ".join((*table.groups, *table.colors)).casefold()
        groups = "|".join(re.escape(one) for one in sorted(table.groups, key=len, reverse=True))
        everybody = r"(?P<class>the (?:whole )?class|we|everybody|everyone|all groups|all the groups)"
        who = rf"(?:(?:the|group|team) )?(?P<group>{groups})|{everybody}"
        when = (
            rf"(?: (?:in|on|for|during) (?:all (?:of )?)?(?:the |their |its )?{scenario.trials}| altogether| in all| in total)?"
            rf"(?: in {scenario.trial} (?P<trial>\w+))?"
        )
        past = rf"(?:were|was|are|is|(?:did|have) (?:end up|turn out)) (?P<not>not )?{_HIT}"
        of = rf"(?:of )?(?:the )?{scenario.trials}"
        self._counted = [
            re.compile(pattern, re.IGNORECASE)
            for pattern in (
                rf"how many (?:successes|successful {scenario.trials}) (?:did|do|does|have|has) (?:{who}) (?:have|get|got|make|had){when}",
                rf"how many {of} of (?:{who}) {past}",
                rf"how many {of} {past} (?:for|by|of) (?:{who})",
                rf"how many of (?:{who})'?s? {scenario.trials} {past}",
            )
        ]
        form = r"(?:what|which) (?P<form>fraction|part|percent|percentage|decimal)(?: part)?"
        self._shared = [
            re.compile(pattern, re.IGNORECASE)
            for pattern in (
                rf"{form} {of} of (?:{who}) {past}",
                rf"{form} {of} {past} (?:for|by|of) (?:{who})",
                rf"{form} of (?:{who})'?s? {scenario.trials} {past}",
                rf"(?:what is|what was|find) (?:the )?(?:success rate|accuracy|target color accuracy) (?:of|for) (?:{who})",
                rf"(?:what is|what was|find) (?:{who})'?s? (?:success rate|accuracy|target color accuracy)",
            )
        ]
        self._which = re.compile(r"(?:which|what) (?:group|team) had the (?P<sign>most|fewest|least) successes", re.IGNORECASE)

    def spoken_of(self, text: str) -> bool:
        """Whether a text has a word for successes that is no label of the table."""
        found = _WORDS.search(text)
        return found is not None and found[0].casefold() not in self._labels

    @property
    def rule(self) -> str:
        """What a success is, as problems tell it."""
        words = self._scenario
        fallen = f"target-color {words.items} and no others are {words.after_noun['down']}"
        return f"A {words.trial} is a success when {fallen}."

    @property
    def help(self) -> str:
        """What a pupil can ask."""
        if not self._known:
            trial = self._scenario.trial
            return f"The table does not tell the target color of a {trial}, so nobody can count successes. Ask me what was counted."
        group = group_name(self._groups[0], self._scenario)
        return (
            f"{self.rule} You can ask: How many successes did {group} have? "
            f"What fraction of the {self._scenario.trials} of {group} were successes?"
        )

    def plan(self, text: str) -> Plan | None:
        """What has to be worked out; None where it is asked in a way that is not known."""
        plain = " ".join(re.sub(r"[-?!.,]", " ", text.replace("’", "'")).split())
        plain = re.sub(r"(?<=s)'(?= )", "", plain)
        if not self._known:
            return None
        if found := self._which.fullmatch(plain):
            return self._most(found["sign"] == "most")
        for patterns, share in ((self._counted, False), (self._shared, True)):
            for pattern in patterns:
                if found := pattern.fullmatch(plain):
                    return self._of(found.groupdict(), share)
        return None

    def _of(self, said: dict[str, str | None], share: bool) -> Plan | None:
        groups = None if said["group"] is None else tuple(one for one in self._groups if one.casefold() == said["group"].casefold())
        trials: tuple[Label, ...] | None = None
        if said.get("trial") is not None:
            trials = tuple(one for one in self._counts.table.trials if str(one).casefold() == str(said["trial"]).casefold())
        if trials == () or groups == ():
            return None
        scope = Scope(groups, trials)
        hits, tries = Quantity("successes", scope), Quantity("trials", scope)
        counted = Op("-", (tries, hits)) if said.get("not") else hits
        missed = tuple(dict.fromkeys(self._counts.missing(scope)))
        if not share:
            return Plan(Value(counted), Demand("whole"), "count", missed=missed)
        form = _FORMS[(said.get("form") or "fraction").casefold()]
        return Plan(Value(Op("/", (counted, tries))), form, "part", missed=missed)

    def _most(self, most: bool) -> Plan | None:
        """The group with the most successes, where all groups had as many trials."""
        scopes = [Scope((group,)) for group in self._groups]
        if len({self._counts.total("trials", one) for one in scopes}) > 1:
            return None
        return Plan(Choice(self._groups, tuple(Quantity("successes", one) for one in scopes), most), Demand("name"), "most", "groups")
