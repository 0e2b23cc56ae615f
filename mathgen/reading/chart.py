"""A small chart parser: every way in which rules span a whole row of typed tokens.

A rule's pattern is a row of symbols with spaces between them:

    word      that word, in lower case, or the sign itself (``,``)
    KIND      a token of that kind, such as ``GROUP``; its value is handed to the rule
    <name>    whatever the rules of that name make of some tokens; what they make is handed to the rule
    (a|b)     one of these words
    x?        may be left out; None is handed to the rule where it would have handed something

No rule may span nothing, and none may begin with its own name.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import product
from typing import NamedTuple

Kinds = tuple[str, ...]
_MOST_KEPT = 16384  # skeletons; printed problems have some two thousand


class Rule(NamedTuple):
    """One rule: what it is a rule for, its pattern, and what it makes of the parts."""

    name: str
    pattern: str
    make: Callable[..., object]


class Node(NamedTuple):
    """A rule used on some tokens. A part is a node, a token with the kind it is used as, or None where it was left out."""

    make: Callable[..., object]
    parts: tuple[Node | tuple[int, int] | None, ...]


class _Production(NamedTuple):
    symbols: tuple[str, ...]  # "<name>", "KIND" or a word
    slots: tuple[int | None, ...]  # which part each symbol fills; None for words
    size: int  # how many parts the rule takes
    make: Callable[..., object]


class _Step:
    """A place within rules that begin alike: which rules end here, and where each next symbol leads."""

    __slots__ = ("ends", "names", "onward")

    def __init__(self) -> None:
        self.ends: list[tuple[_Production, tuple[int, ...]]] = []
        self.names: list[tuple[str, _Step]] = []
        self.onward: dict[str, _Step] = {}

    def after(self, symbol: str) -> _Step:
        """The step behind a symbol."""
        if not _is_name(symbol):
            return self.onward.setdefault(symbol, _Step())
        for name, step in self.names:
            if name == symbol:
                return step
        self.names.append((symbol, _Step()))
        return self.names[-1][1]


_Parts = tuple[Node | tuple[int, int], ...]
_Chart = dict[tuple[str, int], list[tuple[int, Node]]]


class Clash(Exception):  # not a fault of the text: this way of putting the parts together makes no sense
    """Raised by a rule whose parts do not go together; that one way of reading is dropped."""


def rule(name: str, pattern: str, make: Callable[..., object]) -> Rule:
    """A rule, written as data."""
    return Rule(name, pattern, make)


def _is_name(symbol: str) -> bool:
    """Whether a symbol is another rule's name: "<who>"; "<" alone is a sign of the text."""
    return symbol.startswith("<") and symbol != "<"


def _captured(symbol: str) -> bool:
    return _is_name(symbol) or symbol.isupper()


def _written_out(a_rule: Rule) -> Iterable[_Production]:
    """The rule without brackets and question marks: a production for each way to choose."""
    choices: list[tuple[tuple[str | None, ...], int | None]] = []
    size = 0
    for piece in a_rule.pattern.split():
        optional = len(piece) > 1 and piece.endswith("?")
        symbol = piece[:-1] if optional else piece
        words: tuple[str | None, ...] = tuple(symbol[1:-1].split("|")) if symbol[0] == "(" else (symbol,)
        slot = None
        if _captured(symbol):
            slot, size = size, size + 1
        choices.append(((*words, None) if optional else words, slot))
    slots = [slot for _, slot in choices]
    for chosen in product(*(words for words, _ in choices)):
        if None not in chosen:
            yield _Production(chosen, tuple(slots), size, a_rule.make)  # type: ignore[arg-type]
            continue
        kept = [(symbol, slot) for symbol, slot in zip(chosen, slots, strict=True) if symbol is not None]
        yield _Production(tuple(symbol for symbol, _ in kept), tuple(slot for _, slot in kept), size, a_rule.make)


class Grammar:
    """Rules made ready for parsing. ``words`` are all words that some rule names."""

    def __init__(self, rules: Sequence[Rule]) -> None:
        self._productions: dict[str, list[_Production]] = {}
        for a_rule in rules:
            self._productions.setdefault(f"<{a_rule.name}>", []).extend(_written_out(a_rule))
        symbols = {symbol for productions in self._productions.values() for made in productions for symbol in made.symbols}
        missing = sorted(symbol for symbol in symbols if _is_name(symbol) and symbol not in self._productions)
        if missing:
            raise ValueError(f"no rule for {', '.join(missing)}")
        self.words = frozenset(symbol for symbol in symbols if not _captured(symbol))
        self._starts = {name: _Step() for name in self._productions}
        for name, productions in self._productions.items():
            for made in productions:
                step = self._starts[name]
                for symbol in made.symbols:
                    step = step.after(symbol)
                step.ends.append((made, tuple(slot for slot in made.slots if slot is not None)))
        self._first = {name: self._beginnings(name, ()) for name in self._productions}
        self._parsed: dict[tuple[str, tuple[Kinds, ...]], tuple[Node, ...]] = {}

    def _beginnings(self, name: str, above: tuple[str, ...]) -> frozenset[str]:
        if name in above:
            raise ValueError(f"a rule for {name} begins with itself")
        found: set[str] = set()
        for first in {made.symbols[0] for made in self._productions[name]}:
            found |= self._beginnings(first, (*above, name)) if _is_name(first) else {first}
        return frozenset(found)

    def parse(self, name: str, skeleton: tuple[Kinds, ...]) -> tuple[Node, ...]:
        """Every tree by which ``<name>`` spans the whole row of kinds; kept, since few skeletons make up most texts."""
        key = (name, skeleton)
        found = self._parsed.get(key)
        if found is None:
            chart: _Chart = {}
            found = tuple(node for end, node in self._spans(f"<{name}>", 0, skeleton, chart) if end == len(skeleton))
            if len(self._parsed) >= _MOST_KEPT:
                self._parsed.clear()
            self._parsed[key] = found
        return found

    def _spans(self, name: str, start: int, skeleton: tuple[Kinds, ...], chart: _Chart) -> list[tuple[int, Node]]:
        found = chart.get((name, start))
        if found is None:
            found = chart[name, start] = []
            self._walk(self._starts[name], start, (), skeleton, chart, found)
        return found

    def _walk(
        self, at: _Step, place: int, parts: _Parts, skeleton: tuple[Kinds, ...], chart: _Chart, found: list[tuple[int, Node]]
    ) -> None:
        """Go on from a step that all rules with the same beginning share."""
        for made, slots in at.ends:
            filled: list[Node | tuple[int, int] | None] = [None] * made.size
            for slot, part in zip(slots, parts, strict=True):
                filled[slot] = part
            found.append((place, Node(made.make, tuple(filled))))
        if place == len(skeleton):
            return
        kinds = skeleton[place]
        for index, kind in enumerate(kinds):
            onward = at.onward.get(kind)
            if onward is not None:
                taken = (*parts, (place, index)) if _captured(kind) else parts
                self._walk(onward, place + 1, taken, skeleton, chart, found)
        for name, onward in at.names:
            if not self._first[name].isdisjoint(kinds):
                for end, node in self._spans(name, place, skeleton, chart):
                    self._walk(onward, end, (*parts, node), skeleton, chart, found)


def build(node: Node, values: Sequence[tuple[object, ...]]) -> object:
    """What the rules of a tree make of the tokens' values.

    Raises:
        Clash: parts that do not go together.
    """
    parts: list[object] = []
    for part in node.parts:
        if part is None:
            parts.append(None)
        elif isinstance(part, Node):
            parts.append(build(part, values))
        else:
            parts.append(values[part[0]][part[1]])
    return node.make(*parts)
