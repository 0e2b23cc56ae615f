"""Choosing a deck: problems of one grade or several that lie on desks one by one, none of which gives another away."""

from __future__ import annotations

from collections import Counter
from functools import partial

from mathgen.asks.expression import Ask
from mathgen.bank.builder import Candidate
from mathgen.bank.check_sets import Row, check_line, in_rows
from mathgen.bank.choose import Joins, fits, take_turns
from mathgen.bank.clashes import alike_or_telling, asked, asked_totals, same_answer
from mathgen.bank.deck_code import deck_mark
from mathgen.bank.deck_order import apart
from mathgen.bank.deck_plan import Card, CheckSet, ChosenDeck, DeckPlan
from mathgen.bank.deck_wishes import check_deck_plan
from mathgen.bank.desk import Desk
from mathgen.bank.draw import stream
from mathgen.bank.graph import graph_of
from mathgen.bank.length import usual
from mathgen.bank.pool import Pool, fill_pool, wanted_models
from mathgen.bank.wishes import settled
from mathgen.errors import RequestFault
from mathgen.grades.curriculum import load
from mathgen.problems.record import Problem
from mathgen.proof import by_sum
from mathgen.proof.judge import proved
from mathgen.proof.verdict import AGREES
from mathgen.scenario.words import scenario
from mathgen.trials.table import TrialTable


def make_deck(table: TrialTable, plan: DeckPlan, scenario_name: str = "ramp") -> ChosenDeck:
    """The deck of a plan.

    Raises:
        RequestFault: the plan cannot be met at all; the message says why and what to try.
    """
    return DeckMaker(table, plan, scenario_name).make()


_NO_ROOM = {"list": "a list, for which no card has room", "rubric": "a reason, for which no card has room"}


class DeckMaker:
    """Makes the deck of a plan, again without the cards that a page has no room for: draws once, proves each once."""

    def __init__(self, table: TrialTable, plan: DeckPlan, scenario_name: str = "ramp", elsewhere: frozenset[Ask] = frozenset()) -> None:
        """Draws the candidates of each grade.

        Args:
            table: the class's results.
            plan: what the teacher wishes.
            scenario_name: what things are called.
            elsewhere: what the pupils are asked on other pages, and so on no card.
        Raises:
            RequestFault: a wish that the curriculum does not know, or a count that no deck has.
        """
        curriculum = load(plan.curriculum)
        check_deck_plan(plan, curriculum)
        self._plan = plan
        self._limits = curriculum.limits(min(plan.grades))
        self._desk = Desk(table, scenario(scenario_name))
        self._table = table
        self._pools: dict[int, Pool] = {}
        each = -(-plan.count // len(plan.grades))
        for grade in plan.grades:
            wishes = settled(plan.of_grade(grade), curriculum)
            models = len(wanted_models(wishes, curriculum, grade, table.kind))
            # Where few models are wanted, each has to offer more.
            pool = self._pools[grade] = fill_pool(self._desk, curriculum, wishes, each, max(1, -(-each // max(models, 1))))
            drawn = [one for kept in (pool.own, pool.review) for many in kept.values() for one in many]
            pool.drop([one for one in drawn if one.draft.ask in elsewhere])
            long = [one for one in drawn if one.draft.ask.demand.form in _NO_ROOM]
            pool.drop(long)
            for one in long:
                pool.stopped.setdefault(one.model.name, Counter())[_NO_ROOM[one.draft.ask.demand.form]] += 1
        self._made: dict[int, tuple[Candidate, Problem]] = {}  # by the candidate's id; holding it keeps the id its own
        self._by_problem: dict[str, Candidate] = {}
        self._failed: Counter[str] = Counter()
        self._left_out: set[str] = set()  # models of which some problem was left out

    def leave_out(self, problems: list[Problem]) -> None:
        """Takes problems out, so that the next deck has others in their place: with them all of their frames, and what else of
        their models says as much; once it comes to that again, the models.
        """
        out = [self._by_problem[problem.id] for problem in problems]
        frames = {(one.model.name, one.words.frame) for one in out}
        shortest = {name: min(_length(one) for one in out if one.model.name == name) for name, _ in frames}
        tired = self._left_out & set(shortest)
        self._left_out |= set(shortest)
        lists = [some for pool in self._pools.values() for kept in (pool.own, pool.review) for some in kept.values()]
        self._drop(
            [
                one
                for some in lists
                for one in some
                if one.model.name in shortest
                and (one.model.name in tired or (one.model.name, one.words.frame) in frames or _length(one) >= shortest[one.model.name])
            ]
        )

    def make(self) -> ChosenDeck:
        """The deck.

        Raises:
            RequestFault: no problem fits the plan and passes its proof.
        """
        while True:
            chosen = self._chosen()
            if not chosen:
                raise RequestFault(self._nothing())
            bad = [one for one in chosen if not proved(self._problem(one))]
            if not bad:
                break
            self._failed.update(one.model.name for one in bad)
            self._drop(bad)
        rows = self._rows(chosen)
        cards: list[Card] = []
        sets: list[CheckSet] = []
        unproved = 0
        for row in rows:
            if row.together:
                mates = row.problems[: row.together]
                found = check_line(mates, len(cards) + 1)
                if by_sum.verdict(found.line, found.first, mates, self._desk.judge.rows) == AGREES:
                    sets.append(found)
                else:
                    unproved += 1
            for problem in row.problems:
                cards.append(Card(len(cards) + 1, problem, graph_of([self._by_problem[problem.id]], self._desk)))
        lengths = tuple(len(row.problems) for row in rows)
        mark = deck_mark([card.problem for card in cards], self._table)
        return ChosenDeck(self._plan, mark, tuple(cards), lengths, tuple(sets), tuple(self._changes(cards, unproved)))

    def _drop(self, bad: list[Candidate]) -> None:
        for pool in self._pools.values():
            pool.drop(bad)

    def _problem(self, candidate: Candidate) -> Problem:
        if id(candidate) not in self._made:
            grade = next(grade for grade, pool in self._pools.items() if candidate.grade in pool.builders)
            problem = self._pools[grade].builders[candidate.grade].finish(candidate)
            self._made[id(candidate)] = candidate, problem
            self._by_problem[problem.id] = candidate
        return self._made[id(candidate)][1]

    def _chosen(self) -> list[Candidate]:
        """Candidates grade by grade; answers come again only where the deck has too few cards without."""
        chosen: list[Candidate] = []
        count, grades = self._plan.count, self._plan.grades
        top, bottom = usual(grades[0]).own_share
        mixed = len(grades) > 1
        never, seldom = partial(fits, clashing=_clashing), partial(fits, clashing=partial(_clashing_but_for_keys, chosen))
        # Where grades are mixed, one grade's own problems are another's review.
        self._take(chosen, count if mixed else -(-count * top // bottom), own=True, joins=never)
        self._take(chosen, count, own=False, joins=never)
        self._take(chosen, count, own=True, joins=never)
        self._take(chosen, count, own=True, joins=seldom)
        self._take(chosen, count, own=False, joins=seldom)
        return chosen

    def _take(self, chosen: list[Candidate], count: int, *, own: bool, joins: Joins) -> None:
        """Adds candidates until there are ``count``; the grade with the fewest has its turn."""
        open_grades = dict(self._pools)
        taken = Counter(self._grade_of(one) for one in chosen)
        while open_grades and len(chosen) < count:
            grade = min(open_grades, key=lambda one: taken[one])
            before = len(chosen)
            pool = open_grades[grade]
            take_turns(pool.own if own else pool.review, before + 1, chosen, joins)
            if len(chosen) == before:
                del open_grades[grade]
            else:
                taken[grade] += 1

    def _grade_of(self, candidate: Candidate) -> int:
        """The grade for which a candidate was drawn: its own, or the one that reviews it."""
        return candidate.grade if candidate.grade in self._pools else candidate.grade + 1

    def _rows(self, chosen: list[Candidate]) -> list[Row]:
        """The cards in rows, in which the same answer does not come again too soon; what cannot be set apart is left out."""
        left = list(chosen)
        while True:
            rows = in_rows([self._problem(one) for one in left], self._limits)
            rng = stream(self._plan.seed, "deck", *self._plan.grades)
            found = apart(rows, rng)
            if found is not None:
                return found
            again = [one for at, one in enumerate(left) if any(_same_key(one, other) for other in left[:at])]
            left.remove(again[-1])

    def _changes(self, cards: list[Card], unproved: int) -> list[str]:
        plan, changes = self._plan, []
        if self._failed:
            named = ", ".join(f"{name} ({number})" for name, number in sorted(self._failed.items()))
            changes.append(f"Left out, for a route of the proof did not agree: {named}.")
        if unproved:
            changes.append(f"{unproved} check lines are left out, for their proof did not agree.")
        if len(cards) < plan.count:
            are = "1 is" if len(cards) == 1 else f"{len(cards)} are"
            changes.append(
                f"{plan.count} cards were wanted, {are} here: this table has no more for {self._demand()} "
                "that differ and do not give one another away."
            )
        for grade in plan.grades:
            own = sum(card.problem.grade == grade for card in cards)
            if own == 0:
                changes.append(f"No problem of grade {grade} itself fits this table and plan.")
        return changes

    def _demand(self) -> str:
        plan = self._plan
        grades = f"grade {plan.grades[0]}" if len(plan.grades) == 1 else f"grades {', '.join(map(str, plan.grades))}"
        return ", ".join([grades, *plan.topics, *plan.skills, *plan.standards, *([plan.level] if plan.level else [])])

    def _nothing(self) -> str:
        stopped = Counter[str]()
        for pool in self._pools.values():
            for reasons in pool.stopped.values():
                stopped.update(reasons)
        if not any(pool.stopped for pool in self._pools.values()):
            return f"There is no kind of problem for {self._demand()}. See mathgen list topics, skills or standards."
        why = ", ".join(f"{reason} ({n} times)" for reason, n in stopped.most_common(5)) or "too few results, or none that differ"
        return (
            f"This table has no problem for {self._demand()}. What stood in the way: {why}. "
            "Try another grade, another level, more trials, or other set-up counts."
        )


def _length(candidate: Candidate) -> int:
    """How many signs a candidate's words have."""
    return len(candidate.words.facts) + len(candidate.words.question)


def _same_key(one: Candidate, other: Candidate) -> bool:
    """Whether the two have one answer, as a number or as it is written: rounded, 7/12 and 5/9 are both 0.6."""
    return same_answer(one, other) or (one.shown != "" and one.shown == other.shown)


def _clashing(one: Candidate, other: Candidate) -> bool:
    """Whether the two may not be in one deck."""
    return _same_key(one, other) or alike_or_telling(one, other)


def _clashing_but_for_keys(chosen: list[Candidate], one: Candidate, other: Candidate) -> bool:
    """The same where an answer may come twice: but never the same quantity, nor a third time."""
    if alike_or_telling(one, other):
        return True
    if not _same_key(one, other):
        return False
    if sum(_same_key(one, third) for third in chosen) > 1:
        return True
    return bool(asked_totals(one) & asked_totals(other)) or (asked(one) is not None and asked(one) == asked(other))
