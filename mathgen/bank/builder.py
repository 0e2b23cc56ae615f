"""From a draft to a problem: value, words, steps, gate, level, slips, and last the proof."""

from __future__ import annotations

import re
from functools import cached_property, lru_cache
from hashlib import blake2b
from math import lcm
from random import Random
from typing import NamedTuple

from sympy import Integer, Rational

from mathgen.asks.evaluate import NoAnswer, answer, value
from mathgen.asks.expression import Choice, Equation, Expr, Op, Quantity, Stated
from mathgen.asks.relation import relation, written
from mathgen.asks.steps import CellReader, school_steps
from mathgen.difficulty.levels import level
from mathgen.difficulty.score import Features, score
from mathgen.exact.accepted import accepted, shown
from mathgen.exact.demand import Demand
from mathgen.exact.forms import fraction_over
from mathgen.exact.printed_step import printed_step
from mathgen.gate.gate import Gate
from mathgen.gate.signature import Signature
from mathgen.gate.work import operations
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import ProblemModel
from mathgen.models.slips import slip_rule
from mathgen.models.view import TableView
from mathgen.problems.draft import Draft
from mathgen.problems.record import Answer, Cell, Given, Problem, Slip, Step
from mathgen.proof.raw import RawRows
from mathgen.proof.record import prove
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import Scope
from mathgen.trials.table import TrialTable
from mathgen.trials.totals import Totals
from mathgen.wording.said import Speaker
from mathgen.wording.say import Words, fitting_frames, in_turn, say

_SENTENCE_END = re.compile(r"(?<=[.?!]) (?=[A-Z0-9\"“])")
ALL_SOURCES = frozenset({"words", "table", "graph"})
_GRAPH = frozenset({"graph"})
_SINGLE_UNITS = 20  # the tallest bar that a scale of ones has room for on a sheet


class Stopped(NamedTuple):
    """Why a draft is no problem for this grade: short names of what stopped it."""

    reasons: tuple[str, ...]


class Candidate(NamedTuple):
    """A draft with words that passed the gate: all that choosing needs. Proof comes when it is chosen."""

    model: ProblemModel
    draft: Draft
    grade: int
    words: Words
    givens: tuple[Given, ...]
    cells: tuple[Cell, ...]
    steps: tuple[str, ...]
    exact: Rational | str
    shown: str
    standards: tuple[str, ...]
    difficulty: int
    level: str


class Desk:
    """One table under one scenario: all that is worked out once and shared by every grade."""

    def __init__(self, table: TrialTable, scenario: Scenario) -> None:
        self.table = table
        self.totals = Totals(table)
        self.view = TableView(self.totals)
        self.reader = CellReader(table)
        self.rows = RawRows(table)
        self.speaker = Speaker(table, scenario)
        self.scenario = scenario

    @cached_property
    def slip_words(self) -> dict[str, str]:
        """What the lines of feedback call things."""
        said = self.scenario
        return {"items": said.items, "trial": said.trial, "trials": said.trials, **said.after_noun}


class Builder:
    """Builds the problems of one grade at a desk."""

    def __init__(self, desk: Desk, curriculum: Curriculum, grade: int) -> None:
        self.desk = desk
        self.curriculum = curriculum
        self.grade = grade
        self.gate = Gate(curriculum, grade)
        self._caps = curriculum.caps(grade)

    def candidate(self, model: ProblemModel, draft: Draft, rng: Random, sources: frozenset[str] = ALL_SOURCES) -> Candidate | Stopped:
        """The draft in words, if the grade may meet it."""
        desk = self.desk
        try:
            exact = answer(draft.ask, desk.totals)
        except NoAnswer as err:
            return Stopped((str(err),))
        entry = self.curriculum.entry(model.skill, self.grade)
        if entry is not None and entry.graph is not None:
            # What the gate would stop for its source alone is not worth saying.
            sources = sources & _GRAPH if entry.graph else sources - _GRAPH
        frames = fitting_frames(model.strand, model.name, self.grade, draft, sources)
        reasons: dict[str, None] = {}
        for frame in in_turn(frames, rng):
            words = say(frame, draft, desk.speaker, desk.view.number)
            if not self._short_enough(words):
                reasons["words"] = None
                continue
            found = self._in_words(model, draft, words, exact)
            if isinstance(found, Candidate):
                return found
            reasons.update(dict.fromkeys(found.reasons))
        return Stopped(tuple(reasons) or ("no wording for this grade",))

    def _in_words(self, model: ProblemModel, draft: Draft, words: Words, exact: Rational | str) -> Candidate | Stopped:
        desk, ask = self.desk, draft.ask
        if words.source == "graph" and not _on_one_graph(_to_be_read(draft, words.printed), draft.must_not_show):
            return Stopped(("graph",))
        givens, cells = self._givens(draft, words)
        # A bar is read whole; its cells are not added up.
        bars = {given.expr: given.number for given in givens if given.where == "graph"}
        steps = school_steps(ask, desk.reader, {**words.printed, **bars})
        is_name = isinstance(exact, str)
        text = exact if is_name else shown(exact, ask.demand, draft.over)
        graph = words.source == "graph"
        signature = Signature(
            skill=model.skill,
            features=draft.features | self._graph_features(givens) if graph else draft.features,
            givens=tuple(given.number for given in givens),
            steps=steps,
            answer=text,
            sets=draft.sets,
            cells=0 if graph else len(cells),
            categories=len(desk.table.colors) if graph else 0,
        )
        stops = self.gate.stops(signature)
        if stops:
            return Stopped(tuple(stop.limit for stop in stops))
        features = Features(
            structure=draft.structure,
            clash=draft.clash,
            fewer=draft.fewer,
            extra_numbers=_extra_numbers(draft, words),
            extra_lines=0,
            operations=_operations(steps),
            steps=steps,
            answer=text,
            display=None if not cells else "between" if len(cells) > 1 else "read",
            words=len(words.facts.split()) + len(words.question.split()),
            clauses=0,
            mixed_forms=False,
            explain=False,
            unlike=draft.unlike,
            warning=False,
        )
        points = score(features, self.grade)
        return Candidate(
            model, draft, self.grade, words, givens, cells, steps, exact, text, self.gate.standards(signature), points, level(points, self.grade)
        )

    def _short_enough(self, words: Words) -> bool:
        caps = self._caps
        sentences = [*_SENTENCE_END.split(words.facts), words.question] if words.facts else [words.question]
        lengths = [len(sentence.split()) for sentence in sentences]
        return (
            len(sentences) <= caps.sentences and sum(lengths) <= caps.words and max(lengths) <= caps.longest_sentence and lengths[-1] <= caps.question
        )

    def _givens(self, draft: Draft, words: Words) -> tuple[tuple[Given, ...], tuple[Cell, ...]]:
        """What the words print, and what they leave to be read from the table or graph."""
        desk = self.desk
        printed = words.printed
        givens = [
            Given(text, value(expr, desk.totals), expr, self._quantity(expr), expr.scope if isinstance(expr, Quantity) else None, "words")
            for expr, text in printed.items()
        ]
        cells: list[Cell] = []
        for quantity in _to_be_read(draft, printed):
            for one in self._spread(quantity, words.source):
                givens.append(
                    Given(str(desk.view.number(one)), Integer(desk.view.number(one)), one, self._quantity(one), one.scope, words.source)  # type: ignore[arg-type]
                )
                if words.source == "table":
                    groups, trials, colors = one.scope
                    table = desk.table
                    cells.append(((groups or table.groups)[0], (trials or table.trials)[0], (colors or table.colors)[0]))
        return tuple(givens), tuple(dict.fromkeys(cells))

    def _spread(self, quantity: Quantity, source: str) -> list[Quantity]:
        """The cells that a pupil reads one by one for a quantity, or the one bar of the graph."""
        if source == "graph":
            return [quantity]
        groups, trials, colors = quantity.scope
        table = self.desk.table
        return [
            Quantity(quantity.measure, Scope((group,), (trial,), (color,)))
            for group in groups or table.groups
            for trial in trials or table.trials
            for color in colors or table.colors
        ]

    def _graph_features(self, givens: tuple[Given, ...]) -> frozenset[str]:
        """A graph, and a scale that counts in steps where a bar is too tall for single units."""
        scope = next(given.scope for given in givens if given.where == "graph" and given.scope is not None)
        bars = [self.desk.view.number(Quantity("down", scope._replace(colors=(color,)))) for color in self.desk.table.colors]
        return frozenset({"graph", "scaled_graph"} if max(bars) > _SINGLE_UNITS else {"graph"})

    def _quantity(self, expr: Expr) -> str:
        """What a number is a number of, in words."""
        return _quantity_words(expr, self.desk.scenario)

    def finish(self, candidate: Candidate) -> Problem:
        """The candidate as a whole problem, with its key and its proof. It is to be kept only if every route agrees."""
        draft, exact = candidate.draft, candidate.exact
        key = self._answer(candidate)
        slips = self._slips(draft, key)
        goal = draft.ask.goal
        equation = _greatest(goal, self.desk.rows) if isinstance(goal, Choice) else written(relation(draft.ask), self.desk.rows.count)
        problem = Problem(
            id=_identity(draft, self.grade, self.curriculum.name),
            grade=self.grade,
            curriculum=self.curriculum.name,
            standards=candidate.standards,
            skill=candidate.model.skill,
            strand=candidate.model.strand,
            model=candidate.model.name,
            level=candidate.level,  # type: ignore[arg-type]
            difficulty=candidate.difficulty,
            ask=draft.ask,
            frame=candidate.words.frame,
            facts=candidate.words.facts,
            question=candidate.words.question,
            cells=candidate.cells,
            answer=key,
            steps=tuple(map(Step, candidate.steps)),
            relation=equation,
            givens=candidate.givens,
            slips=slips,
            must_not_show=draft.must_not_show,
            proof=(),
        )
        return prove(problem, self.desk.rows)

    def _answer(self, candidate: Candidate) -> Answer:
        draft, exact, text = candidate.draft, candidate.exact, candidate.shown
        demand = draft.ask.demand
        if isinstance(exact, str):
            return Answer("name", exact, exact, exact, (exact,), demand, self._comparison(draft))
        said = self.desk.scenario
        display = text
        if draft.unit:
            display = f"{text} {said.item if exact == 1 else said.items}"
        return Answer("number", exact, text, display, accepted(exact, demand, draft.over), demand)

    def _comparison(self, draft: Draft) -> str:
        """The values of a choice over one bottom number, greatest first: "8/10 > 6/10"."""
        goal, printed = draft.ask.goal, dict(draft.rates)
        exprs = goal.exprs  # type: ignore[union-attr]
        values = sorted((value(expr, self.desk.totals) for expr in exprs), reverse=True)
        bottoms = [int(printed[expr].partition("/")[2] or 1) for expr in exprs if expr in printed and "%" not in printed[expr]]
        bottom = lcm(*(int(one.denominator) for one in values), *bottoms)
        return " > ".join(fraction_over(one, bottom) if bottom > 1 else str(one) for one in values)

    def _slips(self, draft: Draft, key: Answer) -> tuple[Slip, ...]:
        """The likely mistakes, each a wrong answer that differs from the key in every accepted form and after rounding."""
        found: dict[str, Slip] = {}
        for slip_id, numbers in draft.slips:
            wrong = slip_rule(slip_id).wrong(*numbers)
            if wrong is None:
                continue
            if isinstance(wrong, str):
                text = wrong if wrong != key.exact else None
            else:
                text = _wrong_text(wrong[0], wrong[1], key.demand, key.exact, key.shown)  # type: ignore[arg-type]
            if text is not None and text not in found:
                found[text] = Slip(slip_id, text, slip_rule(slip_id).line.format_map(self.desk.slip_words))
        return tuple(found.values())


@lru_cache(maxsize=65536)
def _wrong_text(top: int, bottom: int, demand: Demand, exact: Rational, key: str) -> str | None:
    """A wrong value in the form of the key; None where it is right after all, or no such answer can be."""
    wrong = Rational(top, bottom)
    if wrong == exact or wrong < 0:
        return None
    if demand.form == "whole" and wrong.denominator != 1:
        return None
    if demand.form == "any":
        return f"{top}/{bottom}" if bottom != 1 else str(top)
    text = shown(wrong, demand)
    return None if text == key else text


def _greatest(goal: Choice, rows: RawRows) -> str:
    """A choice as sympy reads it: x is the greatest (or least) of the values."""
    texts = [written(Equation(expr, Stated(0, "")), rows.count).removesuffix(" = 0") for expr in goal.exprs]
    return f"x = {'Max' if goal.most else 'Min'}({', '.join(texts)})"


def _identity(draft: Draft, grade: int, curriculum: str) -> str:
    return blake2b(f"{draft.ask!r}|{grade}|{curriculum}".encode(), digest_size=8).hexdigest()


def _to_be_read(draft: Draft, printed: dict[Expr, str]) -> tuple[Quantity, ...]:
    """The quantities that the words leave to the table, each once, in the order of the ask."""
    goal = draft.ask.goal
    if isinstance(goal, Choice):
        wanted: list[Expr] = list(goal.exprs)
    elif draft.ask.given:
        wanted = [side for fact in draft.ask.given for side in fact]
    else:
        wanted = [goal.expr]
    asked = None if isinstance(goal, Choice) else goal.expr
    found: dict[Quantity, None] = {}

    def visit(expr: Expr) -> None:
        if expr in printed or expr == asked and isinstance(expr, Quantity):
            return
        if isinstance(expr, Quantity):
            found[expr] = None
        elif isinstance(expr, Op):
            for arg in expr.args:
                visit(arg)
        elif hasattr(expr, "series"):
            for one in expr.series:
                visit(one)
        elif isinstance(expr, Stated) and expr.meaning not in STRUCTURAL:
            raise ValueError(f"the words do not print {expr}: a fault of the wording file")

    for expr in wanted:
        visit(expr)
    return tuple(found)


STRUCTURAL = frozenset({"whole", "how many"})  # numbers that no sentence has to print: 1 whole, the count of a list


def _extra_numbers(draft: Draft, words: Words) -> int:
    """Quantities that the words print and the ask does not use."""
    used = set(draft.leaves())
    return sum(1 for expr in words.printed if isinstance(expr, Quantity) and expr not in used and not words.printed[expr] == str(draft.over))


def _on_one_graph(to_be_read: tuple[Quantity, ...], must_not_show: tuple[Scope, ...]) -> bool:
    """Whether all that the words leave out are bars of one graph by color, each bar more than one cell of the table.

    No bar of that graph may be the answer.
    """
    places = {(one.scope.groups, one.scope.trials) for one in to_be_read}
    if any((one.groups, one.trials) in places and one.colors is not None and len(one.colors) == 1 for one in must_not_show):
        return False
    return len(places) == 1 and all(
        one.measure == "down" and one.scope.colors is not None and len(one.scope.colors) == 1 and not _one_cell(one) for one in to_be_read
    )


def _one_cell(quantity: Quantity) -> bool:
    groups, trials, _ = quantity.scope
    return groups is not None and trials is not None and len(groups) == 1 == len(trials)


@lru_cache(maxsize=65536)
def _operations(steps: tuple[str, ...]) -> int:
    return max(operations(tuple(map(printed_step, steps))), 1)


@lru_cache(maxsize=65536)
def _kind_words(colors: tuple[str, ...] | None, items: str, after: str) -> str:
    return f"{' and '.join(colors)} {items} {after}" if colors else f"{items} {after}"


def _quantity_words(expr: Expr, scenario: Scenario) -> str:
    if isinstance(expr, Quantity):
        return _kind_words(expr.scope.colors, scenario.items, scenario.after_noun[expr.measure])
    if isinstance(expr, Stated):
        return expr.meaning
    if isinstance(expr, Op) and expr.symbol == "/":
        return " out of ".join(_quantity_words(arg, scenario) for arg in expr.args)
    return "computed"
