"""The words that one table and one scenario bring: each spelling, and the kinds of token that it can be."""

from __future__ import annotations

import tomllib
from importlib.resources import files
from typing import NamedTuple

from mathgen.scenario.naming import group_name, several_of, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Label, Measure
from mathgen.trials.table import TrialTable

# Token kinds that are no words of the grammar.
GROUP, TRIALS, COLOR, ITEM, CLASS, NEXT = "GROUP", "TRIALS", "COLOR", "ITEM", "CLASS", "NEXT"
WARE, WARES = "WARE", "WARES"  # an item of a price list, and several of it
DOWN, SET, STAND = "DOWN", "SET", "STAND"  # past forms and what stands after a noun: "knocked down", "left standing"
DOWNB, SETB, STANDB = "DOWNB", "SETB", "STANDB"  # base forms: "knock down"
_PAST: dict[str, tuple[str, str, Measure]] = {
    "down": (DOWN, DOWNB, "down"),
    "set_up": (SET, SETB, "set_up"),
    "standing": (STAND, STANDB, "standing"),
}
_LISTS = tomllib.loads(files("mathgen.reading").joinpath("lexicon.toml").read_text(encoding="utf-8"))
EMPTY, PRONOUNS = frozenset[str](_LISTS["empty"]), frozenset[str](_LISTS["pronouns"])


class Lexicon(NamedTuple):
    """Spellings in lower case, with each kind and value that they can stand for."""

    phrases: dict[str, tuple[tuple[str, object], ...]]
    trials: dict[str, Label]  # a trial's label as it follows the word "Trial"
    trial_words: tuple[str, str]  # "trial", "trials"


def lexicon(table: TrialTable, scenario: Scenario) -> Lexicon:
    """The words of a table's labels and of the scenario's nouns and verbs.

    Returns:
        Labels are known as they are typed and as sentences name them: ``7`` only as ``Group 7``, ``2`` only as ``Trial 2``.
    """
    phrases: dict[str, dict[str, object]] = {}

    def known(spelling: str, kind: str, value: object) -> None:
        phrases.setdefault(" ".join(spelling.casefold().split()), {}).setdefault(kind, value)

    for group in table.groups:
        name = group_name(group, scenario)
        known(name.removeprefix("the ") if name == f"the {group}" else name, GROUP, group)
        if not (group.isdigit() or len(group) == 1):
            known(group, GROUP, group)
    for color in table.colors:
        known(color, COLOR, color)
    for price in table.prices:
        known(price.item, WARE, price.item)
        several = several_of(price.item)
        if several is not None:
            known(several, WARES, price.item)
    trials: dict[str, Label] = {}
    for trial in table.trials:
        trials[str(trial).casefold()] = trial
        name = trial_name(trial, scenario)
        if name.casefold() != f"{scenario.trial} {trial}".casefold():
            known(name, TRIALS, (trial,))
    for number, word in enumerate((scenario.item, scenario.items)):
        known(word, ITEM, number)
    for word in scenario.synonyms.get("item", ()):
        known(word, ITEM, 0)
        known(f"{word}s", ITEM, 1)
    for key, (past, base, measure) in _PAST.items():
        after = scenario.after_noun[key].removeprefix("that ")
        for spelling in (scenario.past[key], after, *scenario.synonyms.get(key, ())):
            known(spelling, past, measure)
        known(scenario.base[key], base, measure)
    known(scenario.the_class, CLASS, None)
    known(scenario.next_time, NEXT, None)
    for single, many in ((scenario.group, f"{scenario.group}s"), (scenario.trial, scenario.trials)):
        # The grammar says "trial" and "group" whatever the scenario calls them.
        word = "group" if single == scenario.group else "trial"
        known(single, word, None)
        known(many, f"{word}s", None)
    return Lexicon({spelling: tuple(kinds.items()) for spelling, kinds in phrases.items()}, trials, (scenario.trial, scenario.trials))
