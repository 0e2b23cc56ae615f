"""From a draft to a problem: value, gate, words, steps, level, slips, and last the proof.

Many drafts share one arithmetic, and many share one shape of words. What the gate says of an arithmetic, and which frames are
too long for a shape, is remembered, so that a draft that cannot pass costs little.
"""

from __future__ import annotations

import re
from functools import lru_cache
from random import Random
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.asks.board import board_lines
from mathgen.asks.evaluate import NoAnswer, answer
from mathgen.asks.expression import (
    Ask,
    Changes,
    Chosen,
    Expr,
    Listing,
    Measured,
    Op,
    Price,
    Quantity,
    QuotientRemainder,
    Stat,
    Stated,
    Tally,
    Truth,
    parts_to_share,
)
from mathgen.asks.relation import question_in_x
from mathgen.asks.steps.by_goal import school_steps
from mathgen.bank.desk import Desk
from mathgen.bank.givens import givens_of, may_be_bar, on_one_graph, places_to_read, tells_successes, to_be_read
from mathgen.bank.graph_scale import lines_as_ones
from mathgen.bank.key import answer_of, slips_of
from mathgen.difficulty.levels import level
from mathgen.difficulty.score import Features, score
from mathgen.exact.accepted import shown
from mathgen.exact.forms import mixed
from mathgen.exact.printed_step import printed_step
from mathgen.gate.gate import Gate
from mathgen.gate.signature import Signature
from mathgen.gate.work import operations
from mathgen.grades.curriculum import Curriculum
from mathgen.models.registry import ProblemModel
from mathgen.models.slips import slip_rule
from mathgen.problems.draft import Draft
from mathgen.problems.record import Cell, Given, Level, Problem, Step
from mathgen.wording.frames import SOURCES, Frame
from mathgen.wording.part_names import with_part_names
from mathgen.wording.say import Words, fitting_frames, in_turn, say

_HYPHENS = re.compile(r"(?<=[^\W\d_])-(?=[^\W\d_])")
_SENTENCE_END = re.compile(r"(?<=[.?!]) (?=[A-Z0-9\"“])")
_GRAPH = frozenset({"graph"})
_FROM_TABLE = (Quantity, Measured, Price)
_OF_LINES_ALIKE = (Listing, Changes, Chosen)
_SINGLE_UNITS = 20  # the tallest bar that a scale of ones has room for on a sheet
TOO_LONG = ("words in the question", "sentences", "words", "words in a sentence")  # what a wording can have too many of
# Limits that hang on how much stands in the words and how much in the table, not on the numbers.
_OF_SHAPE = frozenset({*TOO_LONG, "cells to read", "operations", "addends"})


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
    own_steps: bool  # whether they were worked for this very draft
    printed: dict[Expr, str]  # what the steps take as printed
    exact: Rational | str
    shown: str  # "" for a name
    standards: tuple[str, ...]
    difficulty: int
    level: Level


class _Core(NamedTuple):
    """The arithmetic of a draft, whatever its words: its steps where every number is given, and what the gate says of them."""

    draft: Draft  # that the steps were worked for
    steps: tuple[str, ...]
    stops: tuple[str, ...]
    numbers: frozenset[str]  # its givens
    largest: int


class Builder:
    """Builds the problems of one grade at a desk."""

    def __init__(self, desk: Desk, curriculum: Curriculum, grade: int) -> None:
        self.desk = desk
        self.curriculum = curriculum
        self.grade = grade
        self.gate = Gate(curriculum, grade)
        self._caps = curriculum.caps(grade)
        self._part_names = grade >= curriculum.part_names_from
        self._cores: dict[tuple[object, ...], _Core] = {}
        self._fitting: dict[tuple[object, ...], tuple[Frame, ...]] = {}
        self._unfit: dict[tuple[object, ...], tuple[str, ...]] = {}

    def candidate(self, model: ProblemModel, draft: Draft, rng: Random, sources: frozenset[str] = SOURCES) -> Candidate | Stopped:
        """The draft in words, if the grade may meet it."""
        desk, demand = self.desk, draft.ask.demand
        try:
            exact = answer(draft.ask, desk.totals)
        except NoAnswer as err:
            return Stopped((str(err),))
        # A name is no number, even where a group is called 7.
        text = "" if isinstance(exact, str) else shown(exact, draft.shown_as or demand, draft.over)
        leaves = draft.leaves()
        core = self._core(model, draft, leaves, text)
        if core.stops:
            return Stopped(core.stops)
        frames = self._frames(model, draft, sources)
        shape = tuple([desk.speaker.shape(role) for role in draft.roles.values()])
        reasons: dict[str, None] = {}
        for frame in in_turn(frames, rng):
            spot = (model.name, frame.name, shape)
            stops = self._unfit.get(spot)
            if stops is None:
                found = self._in_frame(model, draft, leaves, frame, core, exact, text)
                if isinstance(found, Candidate):
                    return found
                stops = found.reasons
                if _OF_SHAPE.issuperset(stops):
                    self._unfit[spot] = stops
            reasons.update(dict.fromkeys(stops))
        return Stopped(tuple(reasons) or ("no wording for this grade",))

    def _core(self, model: ProblemModel, draft: Draft, leaves: tuple[Expr, ...], text: str) -> _Core:
        """The gate's word on the arithmetic alone. What it stops here, no words can mend."""
        desk = self.desk
        number = desk.view.number
        numbers = tuple([desk.view.value(leaf) if isinstance(leaf, _FROM_TABLE) else leaf for leaf in leaves])
        rates = tuple([rate for _, rate in draft.rates])
        spot = (model.name, outline(draft.ask), draft.features, draft.wanted, rates, draft.sets, text, numbers)
        core = self._cores.get(spot)
        if core is None:
            steps = school_steps(draft.ask, desk.reader, _all_printed(draft, leaves))
            # A rate is said instead of the count that it is made from.
            said = [leaf for leaf in leaves if not (rates and isinstance(leaf, Quantity) and leaf.measure != "set_up")]
            counts = {str(number(leaf)) for leaf in said if isinstance(leaf, Quantity)}
            counts.update(str(leaf.number) for leaf in said if isinstance(leaf, Stated) and leaf.bottom == 1)
            lengths = [mixed(desk.view.length(leaf)) for leaf in leaves if isinstance(leaf, Measured)]
            lengths += [mixed(Rational(leaf.number, leaf.bottom)) for leaf in leaves if isinstance(leaf, Stated) and leaf.bottom > 1]
            prices = [desk.reader.price(leaf).text for leaf in leaves if isinstance(leaf, Price)]
            signature = Signature(model.skill, draft.features, tuple(sorted(counts.union(rates, lengths, prices))), steps, text, draft.sets)
            # Whether a graph is read is a matter of the words.
            stops = tuple(stop.limit for stop in self.gate.stops(signature) if stop.limit != "graph")
            largest = max((int(count) for count in counts), default=0)
            core = self._cores[spot] = _Core(draft, steps, stops, frozenset(signature.givens), largest)
        return core

    def _frames(self, model: ProblemModel, draft: Draft, sources: frozenset[str]) -> tuple[Frame, ...]:
        """The frames that may say the draft. What the gate would stop for its source alone is not worth saying."""
        spot = (model.name, draft.wanted, sources)
        frames = self._fitting.get(spot)
        if frames is None:
            entry = self.curriculum.entry(model.skill, self.grade)
            if entry is not None and entry.graph is not None:
                sources = sources & _GRAPH if entry.graph else sources - _GRAPH
            frames = self._fitting[spot] = fitting_frames(model.strand, model.name, self.grade, draft, sources)
        if any(frame.source == "graph" for frame in frames) and not any(map(may_be_bar, draft.leaves())):
            frames = tuple([frame for frame in frames if frame.source != "graph"])
        return frames

    def _in_frame(
        self,
        model: ProblemModel,
        draft: Draft,
        leaves: tuple[Expr, ...],
        frame: Frame,
        core: _Core,
        exact: Rational | str,
        text: str,
    ) -> Candidate | Stopped:
        desk = self.desk
        words = say(frame, draft, desk.speaker, desk.view.value)
        if self._part_names:
            words = words._replace(facts=with_part_names(words.facts), question=with_part_names(words.question))
        too_long = self._too_long(words)
        if too_long:
            return Stopped((too_long,))
        left_out = to_be_read(draft, words.printed)
        if left_out and words.source == "words":
            raise ValueError(f"{model.name}, frame {frame.name}: the words lack {left_out[0]}; a fault of the wording file")
        graph = words.source == "graph"
        if graph and not on_one_graph(left_out, draft.must_not_show):
            return Stopped(("graph",))
        givens, cells = givens_of(desk, words, left_out)
        places = places_to_read(givens, cells)
        steps, printed = core.steps, _all_printed(draft, leaves)
        # A total that is read cell by cell has to be added up first.
        summed = cells and not all(isinstance(one, Price) or desk.view.is_cell(one) for one in left_out)
        if summed or any(rate not in words.printed for rate, _ in draft.rates):
            printed = words.printed
            steps = school_steps(draft.ask, desk.reader, printed)
        numbers = {given.number for given in givens}
        features = draft.features | self._graph_features(givens) if graph else draft.features
        bars = len(desk.table.colors) if graph or "graph" in draft.features else 0  # read, or to be drawn
        signature = Signature(model.skill, features, tuple(sorted(numbers)), steps, text, draft.sets, places, bars)
        if steps is core.steps and not graph and all(one.isdigit() and int(one) <= core.largest for one in numbers - core.numbers):
            # No number that the gate has not passed already, but for smaller counts.
            stops = self.gate.display_stops(model.skill, places, bars)
        else:
            stops = self.gate.stops(signature)
        if stops:
            return Stopped(tuple(stop.limit for stop in stops))
        scored = steps[:1] if draft.at_sight else steps
        if isinstance(draft.ask.goal, _OF_LINES_ALIKE):  # its lines are alike: one operation, done again
            scored = tuple({step.partition(" = ")[2]: step for step in steps}.values())
        extra = _extra_numbers(draft, words, leaves)
        points = score(self._features(draft, words, places, extra, scored, text), self.grade)
        standards = self.gate.standards(signature)
        own = steps is not core.steps or core.draft is draft
        return Candidate(
            model, draft, self.grade, words, givens, cells, steps, own, printed, exact, text, standards, points, level(points, self.grade)
        )

    def _features(self, draft: Draft, words: Words, places: int, extra: int, steps: tuple[str, ...], text: str) -> Features:
        return Features(
            structure=draft.structure,  # type: ignore[arg-type]
            clash=draft.clash,
            fewer=draft.fewer,
            extra_numbers=extra,
            operations=_operations(steps),
            steps=steps,
            answer=text,
            display=_display(words.source, places),
            words=self._words(draft, words),
            explain=draft.ask.demand.form == "rubric",
            unlike=draft.unlike,  # type: ignore[arg-type]
        )

    def _words(self, draft: Draft, words: Words) -> int:
        """How many words a pupil reads. A name counts as one, however it is spelled, so that names never change the score."""
        text = f"{words.facts} {words.question}"
        for name in self.desk.speaker.names(draft.roles.values()):
            text = text.replace(name, "x")
        return text.count(" ") + 1

    def _too_long(self, words: Words) -> str:
        """Which of the grade's caps the words go past; "" where they keep them all."""
        caps = self._caps
        asked, _, rounding = words.question.partition("? ")  # how to round is told after the question
        question = _word_count(asked)
        lengths = [_word_count(sentence) for sentence in _SENTENCE_END.split(words.facts)] if words.facts else []
        told = len(lengths)
        if rounding:
            lengths.append(_word_count(rounding))
            told += rounding != "Tell why."  # an instruction of two words is no sentence to be understood
        if question > caps.question:
            return "words in the question"
        if told >= caps.sentences:
            return "sentences"
        if sum(lengths) + question > caps.words:
            return "words"
        return "words in a sentence" if max(lengths, default=0) > caps.longest_sentence else ""

    def _graph_features(self, givens: tuple[Given, ...]) -> frozenset[str]:
        """A graph, and a scale that counts in steps where a bar is too tall for single units."""
        return frozenset({"graph", "scaled_graph"} if self._tallest(givens) > _SINGLE_UNITS else {"graph"})

    def _tallest(self, givens: tuple[Given, ...]) -> int:
        """The tallest bar of the graph that is read; 0 where none is."""
        scope = next((given.scope for given in givens if given.where == "graph" and given.scope is not None), None)
        if scope is None:
            return 0
        return max(self.desk.view.number(Quantity("down", scope._replace(colors=(color,)))) for color in self.desk.table.colors)

    def finish(self, candidate: Candidate) -> Problem:
        """The candidate as a whole problem, with its key and its proof. It is to be kept only if every route agrees."""
        draft = candidate.draft
        key = answer_of(self.desk, draft, candidate.exact, candidate.shown, candidate.words.question)
        draft = draft._replace(slips=_from_source(draft.slips, candidate.words.source))
        bars = [int(given.number) for given in candidate.givens if given.where == "graph"]
        if bars:
            also = lines_as_ones(bars, self._tallest(candidate.givens), self.grade, candidate.exact)
            draft = draft._replace(slips=(*draft.slips, *also))
        # Drafts whose numbers are alike share a core, which may have another list's distances from its mean.
        steps = candidate.steps if candidate.own_steps else school_steps(draft.ask, self.desk.reader, candidate.printed)
        problem = Problem(
            grade=self.grade,
            curriculum=self.curriculum.name,
            standards=candidate.standards,
            skill=candidate.model.skill,
            strand=candidate.model.strand,
            model=candidate.model.name,
            level=candidate.level,
            difficulty=candidate.difficulty,
            ask=draft.ask,
            frame=candidate.words.frame,
            facts=candidate.words.facts,
            question=candidate.words.question,
            cells=candidate.cells,
            answer=key,
            steps=tuple(map(Step, steps)),
            board=board_lines(draft.ask, self.desk.reader, candidate.printed, self.grade, candidate.exact, key.shown),
            relation=question_in_x(draft.ask, self.desk.judge.rows.number),
            givens=candidate.givens,
            slips=slips_of(
                self.desk,
                draft,
                key,
                {given.number for given in candidate.givens},
                f"{candidate.words.facts} {candidate.words.question}",
                tells_successes(candidate.givens),
                self._part_names,
            ),
            must_not_show=draft.must_not_show,
            proof=(),
        )
        return self.desk.judge.prove(problem)


def _from_source(slips: tuple[tuple[str, tuple[int | str, ...]], ...], source: str) -> tuple[tuple[str, tuple[int | str, ...]], ...]:
    """The slips that may come about where the numbers stand."""
    return tuple(one for one in slips if source in (slip_rule(one[0]).sources or SOURCES))


def _all_printed(draft: Draft, leaves: tuple[Expr, ...]) -> dict[Expr, str]:
    """As if the words gave every number: what a rate prints is known, of a count it does not matter."""
    printed: dict[Expr, str] = {leaf: "" for leaf in leaves if isinstance(leaf, _FROM_TABLE)}
    printed.update(draft.rates)
    return printed


def _word_count(text: str) -> int:
    """Words between blanks; "two-way" is two."""
    return text.count(" ") + 1 + (len(_HYPHENS.findall(text)) if "-" in text else 0)


def outline(ask: Ask) -> tuple[object, ...]:
    """The structure of an ask without its quantities: asks alike in this and in their numbers have the same working."""
    goal = ask.goal
    exprs: list[Expr] = list(goal.exprs)
    exprs += [side for fact in ask.given for side in fact]
    manner: str = goal.test if isinstance(goal, Truth) else goal.want if isinstance(goal, QuotientRemainder) else ""
    if isinstance(goal, Listing):
        manner = goal.symbol
    if isinstance(goal, Changes):
        manner = goal.name
    if isinstance(goal, Chosen):
        manner = parts_to_share(goal)[0]
    return (ask.demand, manner, *map(_outline, exprs))


def _outline(expr: Expr) -> object:
    if isinstance(expr, Op):
        return (expr.symbol, *map(_outline, expr.args))
    if isinstance(expr, Tally):
        return (expr.test, len(expr.series))
    return (expr.name, len(expr.series)) if isinstance(expr, Stat) else type(expr)


def _display(source: str, cells: int) -> Literal["read", "between"] | None:
    """How the numbers that the words leave out are found: one is read, several are read between; a graph's bars are read between."""
    if source == "graph":
        return "between"
    return None if not cells else "read" if cells == 1 else "between"


def _extra_numbers(draft: Draft, words: Words, used: tuple[Expr, ...]) -> int:
    """Quantities that the words print and the ask does not use, nor a graph that is to be drawn."""
    if "graph" in draft.features:
        return 0
    size = str(draft.over)
    return sum(1 for expr, text in words.printed.items() if isinstance(expr, Quantity) and expr not in used and text != size)


@lru_cache(maxsize=65536)
def _operations(steps: tuple[str, ...]) -> int:
    return max(operations(tuple(map(printed_step, steps))), 1)
