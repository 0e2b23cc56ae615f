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

from collections.abc import Callable, Sequence
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


class _Piece(NamedTuple):
    """One symbol of a pattern, with all the ways to fill it."""

    symbols: tuple[str, ...]  # each a "<name>", a "KIND" or a word
    optional: bool
    slot: int | None  # which part it fills; None for words


class _Prepared(NamedTuple):
    """A rule with its pattern taken apart."""

    pieces: tuple[_Piece, ...]
    size: int  # how many parts it takes
    make: Callable[..., object]


class _Step:
    """A place within rules that begin alike: which rules end here, and where each next symbol leads.

    Most places are never come to, so each is worked out when it is.
    """

    __slots__ = ("ends", "names", "onward", "waiting")

    def __init__(self) -> None:
        self.waiting: list[tuple[_Prepared, int, tuple[int, ...]]] = []  # rule, place in it, slots filled so far
        self.ends: list[tuple[_Prepared, tuple[int, ...]]] = []
        self.names: list[tuple[str, _Step]] = []
        self.onward: dict[str, _Step] = {}

    def add(self, prepared: _Prepared, place: int, slots: tuple[int, ...]) -> None:
        """Say that a rule can be at this step."""
        self.waiting.append((prepared, place, slots))

    def work_out(self) -> None:
        """Fill in what ends here and what leads on, for the rules that were added."""
        leads = dict(self.names)
        for prepared, place, slots in self.waiting:
            for index in range(place, len(prepared.pieces)):
                symbols, optional, slot = prepared.pieces[index]
                filled = slots if slot is None else (*slots, slot)
                for symbol in symbols:
                    steps = leads if _is_name(symbol) else self.onward
                    steps.setdefault(symbol, _Step()).add(prepared, index + 1, filled)
                if not optional:
                    break
            else:
                self.ends.append((prepared, slots))
        self.waiting.clear()
        self.names = list(leads.items())


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


def _prepared(a_rule: Rule) -> _Prepared:
    pieces: list[_Piece] = []
    size = 0
    for piece in a_rule.pattern.split():
        optional = len(piece) > 1 and piece.endswith("?")
        symbol = piece[:-1] if optional else piece
        slot = None
        if _captured(symbol):
            slot, size = size, size + 1
        pieces.append(_Piece(tuple(symbol[1:-1].split("|")) if symbol[0] == "(" else (symbol,), optional, slot))
    return _Prepared(tuple(pieces), size, a_rule.make)


class Grammar:
    """Rules made ready for parsing. ``words`` are all words that some rule names."""

    def __init__(self, rules: Sequence[Rule]) -> None:
        self._rules: dict[str, list[_Prepared]] = {}
        for a_rule in rules:
            self._rules.setdefault(f"<{a_rule.name}>", []).append(_prepared(a_rule))
        symbols = {symbol for some in self._rules.values() for one in some for piece in one.pieces for symbol in piece.symbols}
        missing = sorted(symbol for symbol in symbols if _is_name(symbol) and symbol not in self._rules)
        if missing:
            raise ValueError(f"no rule for {', '.join(missing)}")
        self.words = frozenset(symbol for symbol in symbols if not _captured(symbol))
        self._starts: dict[str, _Step] = {}
        for name, some in self._rules.items():
            step = self._starts[name] = _Step()
            for one in some:
                step.add(one, 0, ())
        self._first: dict[str, frozenset[str]] = {}
        for name in self._rules:
            self._beginnings(name, ())
        self._parsed: dict[tuple[str, tuple[Kinds, ...]], tuple[Node, ...]] = {}

    def _beginnings(self, name: str, above: tuple[str, ...]) -> frozenset[str]:
        """The kinds of token that a name can begin with."""
        if name in above:
            raise ValueError(f"a rule for {name} begins with itself")
        if name not in self._first:
            found: set[str] = set()
            for one in self._rules[name]:
                for piece in one.pieces:
                    for symbol in piece.symbols:
                        found |= self._beginnings(symbol, (*above, name)) if _is_name(symbol) else {symbol}
                    if not piece.optional:
                        break
            self._first[name] = frozenset(found)
        return self._first[name]

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
        if at.waiting:
            at.work_out()
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
