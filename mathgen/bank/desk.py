"""A desk: one table under one scenario, with all that is worked out once and shared by every grade."""

from __future__ import annotations

from functools import cached_property

from mathgen.asks.steps.cell_reader import CellReader
from mathgen.models.slips.rule import SlipRule
from mathgen.models.view import TableView
from mathgen.proof.judge import Judge
from mathgen.scenario.words import Scenario
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from mathgen.wording.part_names import with_part_names
from mathgen.wording.speaker import Speaker


class Desk:
    """Totals for the key, a cell reader for the steps, a judge for the proof, and a speaker for the words."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table = table
        self.totals = Totals(table)
        self.view = TableView(self.totals)
        self.reader = CellReader(table)
        self.judge = Judge(table, scenario)
        self.speaker = Speaker(table, scenario)
        self.scenario = scenario
        self._lines: dict[str, str] = {}

    def slip_line(self, rule: SlipRule, part_names: bool = False) -> str:
        """A rule's line of feedback in the scenario's words; with the names of a fraction's parts, where the grade has them."""
        line = self._lines.get(rule.id)
        if line is None:
            line = self._lines[rule.id] = rule.line.format_map(self._slip_words)
        return with_part_names(line) if part_names else line

    @cached_property
    def _slip_words(self) -> dict[str, str]:
        """What the lines of feedback call things."""
        said = self.scenario
        named = {"item": said.item, "items": said.items, "group": said.group.lower(), "trial": said.trial, "trials": said.trials}
        verbs = {f"{verb}_{measure}": said.done(measure, verb) for measure in said.after_noun for verb in ("were", "was", "be")}
        return named | said.after_noun | verbs
