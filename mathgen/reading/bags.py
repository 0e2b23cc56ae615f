"""What pupils say in any order: whose pins, from which trials, of which colors, and what became of them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal, NamedTuple

from mathgen.reading.chart import Clash, Rule, rule
from mathgen.reading.noun_phrases import BOTH, always
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure

Every = Literal["all"]
Some = tuple[Label, ...] | Every | None


class Bag(NamedTuple):
    """The parts of a scope that some words name, each at most once; None is what they do not name."""

    groups: Some = None
    trials: Some = None
    colors: Some = None
    measure: Measure | None = None
    item: bool = False  # "pins"
    got: bool = False  # "get": by itself it means knocked down
    had: bool = False
    left: bool = False  # "left", which needs "standing" or "up"
    up: bool = False
    total: bool = False
    number: Number | None = None  # "12 gold pins"
    they: bool = False
    their: bool = False
    each: str | None = None  # "per trial"
    sizes: tuple[tuple[str, Number], ...] = ()  # "all 3 trials"
    ordinals: tuple[int, ...] = ()  # "the second trial"; 0 for the last
    without: tuple[tuple[str, tuple[Label, ...]], ...] = ()  # "except trial 2"
    over: bool = False  # "over", which needs "knock"
    ranged: bool = False  # "trials 1 to 3"
    first: str = ""  # what comes first


_ONCE = ("groups", "trials", "colors", "measure", "number")
_FLAGS = ("got", "had", "they", "their", "total", "left", "up", "ranged", "over")
EMPTY = Bag()


def plus(one: Bag, other: Bag) -> Bag:
    """Both together.

    Raises:
        Clash: both name the same part.
    """
    made = one._asdict()
    for name in _ONCE:
        mine, theirs = getattr(one, name), getattr(other, name)
        if mine is not None and theirs is not None:
            raise Clash
        made[name] = theirs if mine is None else mine
    if (one.item and (other.item or other.colors is not None)) or (other.item and one.colors is not None):
        raise Clash  # "pins ... red": of all pins, how many were red
    if (one.trials is not None and other.ordinals) or (one.ordinals and (other.trials is not None or other.ordinals)):
        raise Clash
    for name in _FLAGS:
        made[name] = getattr(one, name) or getattr(other, name)
    if (one.left and other.left) or (one.up and other.up):
        raise Clash
    if one.each is not None and one.each == other.each:
        raise Clash
    made["each"] = "groups and trials" if one.each and other.each else one.each or other.each
    made["item"] = one.item or other.item
    made["sizes"] = (*one.sizes, *other.sizes)
    made["ordinals"] = (*one.ordinals, *other.ordinals)
    made["without"] = (*one.without, *other.without)
    made["first"] = one.first or other.first
    return Bag(**made)


def verb(bag: Bag) -> Bag:
    """The bag with "left ... up" and the like taken together.

    Raises:
        Clash: "left" or "up" stands alone or with another verb.
    """
    if bag.over:
        if not bag.got or bag.measure is not None:
            raise Clash
        return verb(bag._replace(over=False, measure="down"))
    if not (bag.left or bag.up):
        return bag
    if bag.left and bag.measure == "standing" and not bag.up:
        return bag._replace(left=False)
    if bag.measure is None and bag.up and bag.left:
        return bag._replace(left=False, up=False, measure="standing")
    raise Clash


def _joined(first: Label, *rest: tuple[Label, ...]) -> tuple[Label, ...]:
    labels = (first, *(label for some in rest for label in some))
    if len(set(labels)) < len(labels):
        raise Clash
    return labels


def _two(a: tuple[Label, ...], b: tuple[Label, ...]) -> tuple[Label, ...]:
    return _joined(a[0], a[1:], b)


def _opposite(measure: Measure) -> Bag:
    if measure != "down":
        raise Clash
    return Bag(measure="standing", first="verb")


def _things(colors: Some, item: bool = False) -> Bag:
    return Bag(colors=colors, item=colors is None, first="things")


def _named_trial(label: Label) -> Bag:
    if isinstance(label, int):
        raise Clash  # "3 trials" are three, not the third
    return _some_trials((label,))


def _adjective(measure: Measure, colors: Some) -> Bag:
    if measure != "set_up":
        raise Clash
    return _things(colors)


def _some_trials(labels: Some, first: str = "when") -> Bag:
    return Bag(trials=labels, first=first)


_VALUED = ("GROUP", "LABEL", "COLOR", "NUM", "ORD", "VERB")


def heard(name: str, pattern: str, make: Callable[..., object]) -> Rule:
    """A rule whose make is handed only the parts that carry something: names of rules, labels, numbers and verbs."""
    parts = [piece.removesuffix("?") for piece in pattern.split()]
    captured = [part for part in parts if part.startswith("<") or part.isupper()]
    kept = [number for number, part in enumerate(captured) if part.startswith("<") or part in _VALUED]
    return rule(name, pattern, lambda *found: make(*(found[number] for number in kept)))


_AT = "(in|on|for|during|over|across|from|of|at|by)?"

RULES: tuple[Rule, ...] = (
    heard("bag", "<atom>", lambda bag: bag),
    heard("bag", "<atom> <bag>", plus),
    heard("whole_bag", "<bag>", verb),
    # who
    heard("grp", "the? GROUP", lambda label: (label,)),
    heard("grp", "the? group GROUP", lambda label: (label,)),
    heard("grps", "<grp> and <grp>", _two),
    heard("grps", "both <grp> and <grp>", _two),
    heard("grps", "<grp> <grps>", _two),
    heard("grps", "<grp> and <grps>", _two),
    heard("atom", "(by|for|of|from|with)? <grp>", lambda labels: Bag(groups=labels, first="who")),
    heard("atom", "(by|for|of|from)? <grps>", lambda labels: Bag(groups=labels, first="who")),
    heard("atom", "(by|for|of|from)? <crew>", lambda bag: bag),
    heard("crew", "CLASS", always(Bag(groups="all", first="who"))),
    heard("crew", "all? of? the? NUM groups", lambda number: Bag(groups="all", sizes=(("groups", number),), first="who")),
    # when
    heard("atom", f"{_AT} (the|all)? <times>", lambda bag: bag),
    heard("times", "TRIALWORD LABEL", lambda label: _some_trials((label,))),
    heard("times", "LABEL TRIALWORD", _named_trial),
    heard("times", "TRIALWORD LABEL and TRIALWORD? LABEL", lambda a, b: _some_trials(_joined(a, (b,)))),
    heard("times", "TRIALWORD LABEL LABEL and LABEL", lambda a, b, c: _some_trials(_joined(a, (b, c)))),
    heard("times", "TRIALWORD LABEL (to|through) TRIALWORD? LABEL", lambda a, b: Bag(trials=_joined(a, (b,)), ranged=True, first="when")),
    heard("times", "(their|its|the|there)? ORD TRIALWORD", lambda n: Bag(ordinals=(n,), first="when")),
    heard("times", "(their|its|the|there)? LAST TRIALWORD", always(Bag(ordinals=(0,), first="when"))),
    heard("times", "both (the|their|its|of)? (the|their)? TRIALWORD", always(Bag(trials="all", sizes=(("trials", BOTH),), first="when"))),
    heard("times", "ALLTRIALS", always(_some_trials("all"))),
    heard("times", "of? (the|their|its|there)? NUM TRIALWORD", lambda n: Bag(trials="all", sizes=(("trials", n),), first="when")),
    heard("atom", "(in|on|for) LABEL", lambda label: _some_trials((label,))),
    # which things
    heard("paint", "COLOR", lambda a: (a,)),
    heard("paints", "COLOR and <paint>", _joined),
    heard("paints", "COLOR <paints>", _joined),
    heard("atom", "<det> ITEM", lambda their: Bag(item=True, their=their, first="things")),
    heard("atom", "ITEM", always(Bag(item=True, first="things"))),
    heard("atom", "<det>? <paint> <noun>?", lambda their, labels, _: Bag(colors=labels, their=bool(their), first="things")),
    heard("atom", "<det>? <paints> <noun>?", lambda their, labels, _: Bag(colors=labels, their=bool(their), first="things")),
    heard("noun", "ITEM", always(True)),
    heard("noun", "(ones|one|set)", always(True)),
    heard("atom", "all? (of|out)? (of|the)? (the|their|its)? NUM ITEM", lambda n, _=None: Bag(item=True, number=n, first="things")),
    heard("atom", "all? (of|out)? (of|the)? (the|their|its)? NUM <paint> <noun>?", lambda n, c, _: Bag(colors=c, number=n, first="things")),
    heard("det", "(the|a|an|any|those|these|that)", always(False)),
    heard("det", "of (the|those|these)", always(False)),
    heard("det", "(for|from) (the|all|a)?", always(False)),
    heard("det", "(out|all) of? (the|those|these)?", always(False)),
    heard("det", "out of (all|every|the) the?", always(False)),
    heard("det", "of all (the|those|these)?", always(False)),
    heard("det", "of? all? of? (their|its|there)", always(True)),
    heard("det", "every", always(False)),
    heard("det", "of", always(False)),
    # what became of them
    heard("atom", "<aux>", lambda bag: bag),
    heard("aux", "(did|do|does|was|were|are|is|be|been|being|to|that|which|a|so|ended)", always(Bag(first="aux"))),
    heard("aux", "ENDEDUP", always(EMPTY)),
    heard("aux", "over", always(Bag(over=True))),
    heard("atom", "GOT", always(Bag(got=True, first="verb"))),
    heard("atom", "HAD", always(Bag(had=True, first="verb"))),
    heard("atom", "LEFTV", always(Bag(left=True, first="verb"))),
    heard("atom", "UP", always(Bag(up=True, first="verb"))),
    heard("atom", "VERB", lambda measure: Bag(measure=measure, first="verb")),
    heard("atom", "(of|out)? (of|all)? (the|those|these) VERB", lambda measure: Bag(measure=measure, first="things")),
    heard("atom", "of? all? of? (their|its) VERB", lambda measure: Bag(measure=measure, their=True, first="things")),
    heard("atom", "not VERB", _opposite),
    heard("atom", "(did|do|does) not <grp> VERB", lambda labels, measure: plus(Bag(groups=labels, first="verb"), _opposite(measure))),
    heard("atom", "(are|were|was|is) LEFTV", always(Bag(measure="standing", first="verb"))),
    heard("atom", "TOTAL of?", always(Bag(total=True, first="total"))),
    heard("atom", "<det>? VERB <paint> <noun>?", lambda _, m, c, __: _adjective(m, c)),
    heard("atom", "RESULTS", always(EMPTY)),
    heard("atom", "RESULTS of? all? (of|the|their)? (the|their)? TOTALS", always(EMPTY)),
    heard("atom", "RESULTS all? of? the? <crew> TOTALS", lambda bag: bag),
    heard("atom", "RESULTS the? TOTALS of <crew>", lambda bag: bag),
    heard("atom", "RESULTS all? of? <grp> TOTALS", lambda labels: Bag(groups=labels, first="who")),
    heard("atom", "(they|them|it)", always(Bag(they=True, first="they"))),
    heard("atom", "of? (them|those|it|that)", always(Bag(they=True, first="they"))),
    heard("atom", "EACHTRIAL", always(Bag(each="trials", first="each"))),
    heard("atom", "(by|in|for)? EACHGROUP", always(Bag(each="groups", first="each"))),
    heard("atom", "EXCEPT <grp>", lambda labels: Bag(without=(("groups", labels),), first="without")),
    heard("atom", "(in|the|groups)? EXCEPT TRIALWORD LABEL", lambda label: Bag(without=(("trials", (label,)),), first="without")),
    heard("atom", "the? groups EXCEPT <grp>", lambda labels: Bag(without=(("groups", labels),), first="without")),
    heard("atom", "EXCEPT <paint> ITEM?", lambda labels: Bag(without=(("colors", labels),), first="without")),
)
