"""Rules for questions as pupils ask them: what is wanted, around bags of words in any order."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from mathgen.exact.demand import Demand
from mathgen.reading import bags
from mathgen.reading.bags import EMPTY, Bag, heard, plus
from mathgen.reading.chart import Clash, Rule
from mathgen.reading.noun_phrases import always
from mathgen.reading.tokens import Number
from mathgen.trials.scope import Label, Measure

ANY, PERCENT, DECIMAL, WHOLE = Demand("any"), Demand("percent"), Demand("decimal"), Demand("whole")


class Wish(NamedTuple):
    """What a question wants: the kind, the bags it is about in order, and what else the words say."""

    kind: str
    bags: tuple[Bag, ...] = ()
    demand: Demand | None = None
    sign: int = 1
    by: str = ""
    labels: tuple[Label, ...] = ()
    number: Number | None = None
    test: str = ""
    worth: tuple[tuple[Bag, Number], ...] = ()


def _wish(kind: str, **fixed: object) -> Callable[..., Wish]:
    return lambda *found: Wish(kind, tuple(found), **fixed)  # type: ignore[arg-type]


def _start(bag: Bag) -> Bag:
    """What follows "how many": pins, not whose they are ("how many Owls ...")."""
    if bag.first in ("who", "total", "without"):
        raise Clash
    return bag


def _signed(kind: str) -> Callable[..., Wish]:
    return lambda sign, *found: Wish(kind, tuple(found), sign=sign)


def _merge(*found: Bag | None) -> Bag:
    made = EMPTY
    for bag in found:
        if bag is not None:
            made = plus(made, bag)
    return bags.verb(made)


def _count(before: Bag | None, after: Bag) -> Wish:
    return Wish("count", (_merge(before, _start(after)),))


def _part(before: Bag | None, demand: Demand, after: Bag) -> Wish:
    return Wish("part", (_merge(before, after),), demand)


def _other_trials(first: Label, last: Label) -> tuple[Label, ...]:
    if first == last:
        raise Clash
    return (first, last)


def _ends(sign: int) -> Callable[..., Wish]:
    return lambda bag, trials: Wish("rise", (bags.verb(bag),), sign=sign, labels=trials)


_IS = "(is|was|are|were|be)"
_ALT = "<grp> or <grp>"

RULES: tuple[Rule, ...] = (
    *bags.RULES,
    heard("what", "WHATIS (the|a)?", always(None)),
    heard("b", "<whole_bag>", lambda bag: bag),
    # counts
    heard(
        "ask",
        "HOWMANY <paint> <noun>? (were|are|was) there for <grp> to VERB <bag>?",
        lambda c, _, g, m, b: Wish("count", (_merge(Bag(groups=g, colors=c, measure="set_up"), b),)) if m == "down" else _clash(),
    ),
    heard(
        "ask",
        "HOWMANY ITEM (were|are|was) there for <grp> to VERB <bag>?",
        lambda g, m, b: Wish("count", (_merge(Bag(groups=g, item=True, measure="set_up"), b),)) if m == "down" else _clash(),
    ),
    heard("ask", "HOWMANY of? <bag>", lambda after: _count(None, after)),
    heard("ask", "HOWMANY", always(Wish("count", (EMPTY,)))),
    heard("ask", "<bag> HOWMANY of? <bag>", lambda before, after: _count(before, after)),
    heard("ask", "<bag> and? HOWMANY", lambda before: Wish("count", (bags.verb(before),))),
    heard("ask", "WHATIS? (the|a)? NUMBER of? <bag>", lambda bag: _count(None, bag)),
    heard("ask", "WHATIS? (the|a)? TOTAL NUMBER? of? <b>", lambda b: Wish("count", (plus(b, Bag(total=True)),))),
    heard("ask", f"HOWMANY of? <b> {_IS} <paint> <noun>?", lambda whole, colors, _: Wish("share count", (whole, Bag(colors=colors)))),
    heard("ask", f"of <b> HOWMANY {_IS} <b>", lambda whole, part: Wish("share count", (whole, part))),
    heard("ask", "WHATIS half of? <b>", _wish("half")),
    heard("ask", "half of? <b>", _wish("half")),
    # more and fewer
    heard("sign", "MORE", always(1)),
    heard("sign", "FEWER", always(-1)),
    heard("than", "than", always(None)),
    heard("than", "compared (to|with)", always(None)),
    heard("ask", "HOWMANY <sign> <b> <than> <b>", lambda s, a, _, b: Wish("difference", (a, b), sign=s)),
    heard("ask", "HOWMUCH <sign> <b> <than> <b>", lambda s, a, _, b: Wish("difference", (a, b), sign=s)),
    heard("ask", "<bag> HOWMANY <sign> <bag> <than> <b>", lambda x, s, a, _, b: Wish("difference", (_merge(x, a), b), sign=s)),
    heard("ask", "HOWMANY <sign> <b> <than> (in|on)? LABEL", lambda s, a, _, t: Wish("difference", (a, Bag(trials=(t,))), sign=s)),
    heard("ask", "than <b> HOWMANY <sign> <b>", lambda b, s, a: Wish("difference", (a, b), sign=s)),
    heard("ask", "HOWMANY <sign> <b>", _signed("difference told")),
    heard("ask", "HOWMANY <sign>", lambda s: Wish("difference told", (EMPTY,), sign=s)),
    heard("ask", "by HOWMANY", always(Wish("difference told", (EMPTY,), sign=1))),
    heard("ask", "WHATIS? (the|a)? difference between NUMBER? <b>", _wish("apart")),
    heard("ask", "WHATIS? (the|a)? difference between NUMBER? <b> and NUMBER? <b>", _wish("apart")),
    heard("ask", "by HOWMANY <noun>? did <grp> BEAT <b>", lambda _, a, b: Wish("difference", (Bag(groups=a, got=True), b), sign=1)),
    heard(
        "ask",
        "by HOWMANY <paint> <noun>? did <grp> BEAT <b>",
        lambda c, _, a, b: Wish("difference", (Bag(groups=a, colors=c, got=True), b)),
    ),
    heard("ask", "(subtract|take) NUMBER <b> from NUMBER <b>", lambda b, a: Wish("minus", (a, b))),
    heard("ask", "NUMBER? <b> (minus|subtract) NUMBER? <b>", _wish("minus")),
    heard(
        "ask",
        "HOWMANY MORE <bag> would <grp> have needed to VERB to catch up (with|to) <b>",
        lambda a, g, m, b: Wish("difference", (b, plus(plus(a, Bag(groups=g)), Bag(measure=m))), sign=1),
    ),
    heard("ask", "by (HOWMANY|HOWMUCH) is <mean> GREATER than <mean>", lambda a, b: Wish("mean difference", (a, b))),
    heard("mean", "(the)? <grp> MEAN of? <b>", lambda g, b: plus(Bag(groups=g), b)),
    heard("mean", "the? <grp> MEAN EACHTRIAL", lambda g: Bag(groups=g, each="trials")),
    heard("ask", f"{_IS}? <b> <sign> <noun>? than <b>", lambda a, s, _, b: Wish("truth", (a, b), sign=s)),
    # how many times as many
    heard("ask", "HOWMANY times as many <b> as NUMBER? <b>", _wish("times")),
    heard("ask", f"NUMBER? <b> {_IS} HOWMANY times as many <bag> as NUMBER? <b>", lambda a, x, b: Wish("times", (_merge(a, x), b))),
    heard("ask", f"NUMBER? <b> {_IS} HOWMANY times NUMBER? <b>", _wish("times")),
    heard("ask", f"HOWMANY times NUMBER <b> {_IS} NUMBER <b>", lambda b, a: Wish("times", (a, b))),
    # parts
    heard("form_of", "FRACTION", always(ANY)),
    heard("form_of", "PERCENT", always(PERCENT)),
    heard("form_of", "DECIMAL", always(DECIMAL)),
    heard("form_of", "DECIMAL (for|of) HOWMUCH", always(DECIMAL)),
    heard("form_of", "DECIMAL for the? FRACTION", always(DECIMAL)),
    heard("form_of", "FRACTION for HOWMUCH", always(ANY)),
    heard("form_of", "PERCENT for HOWMUCH", always(PERCENT)),
    heard("form_of", "DECIMAL for", always(DECIMAL)),
    heard("form_of", "HOWMUCH", always(ANY)),
    heard("ask", "WHATIS? <form_of> of? <bag>", lambda d, bag: _part(None, d, bag)),
    heard("ask", "<bag> WHATIS? <form_of> of? <bag>", _part),
    heard("ask", "as <form_of> HOWMANY of <b>", lambda d, bag: Wish("part", (bag,), d)),
    heard("ask", f"WHATIS? <form_of> of? <b> {_IS} <b>", lambda d, whole, part: Wish("share", (whole, part), d)),
    heard("ask", "WHATIS? <form_of> of? <b> came from <b>", lambda d, whole, part: Wish("share", (whole, part), d)),
    heard(
        "ask",
        f"(of|out|from) of? <b> WHATIS? <form_of> of? (them|those|these)? {_IS} <b>",
        lambda whole, d, part: Wish("share", (whole, part), d),
    ),
    heard("ask", "(of|out|from) of? <b> WHATIS? <form_of> <b>", lambda whole, d, part: Wish("part or share", (whole, part), d)),
    heard("ask", f"WHATIS? <form_of> of (them|those|these) {_IS} <b>", lambda d, part: Wish("share", (Bag(they=True), part), d)),
    heard("ask", f"WHATIS? <form_of> {_IS} <b>", lambda d, part: Wish("share told", (part,), d)),
    heard("ask", "<b> as a? <form_of> of <b>", lambda a, d, b: Wish("out of", (a, b), d)),
    heard("ask", "WHATIS? <form_of> <b> out of <b>", lambda d, a, b: Wish("out of", (a, b), d)),
    heard("ask", "WHATIS? (the|a)? difference between FRACTION of? <b> and FRACTION of? <b>", _wish("fractions apart")),
    # chance
    heard("chance", "CHANCE (of|that|for)?", always(None)),
    heard("chance", "CHANCE that one", always(None)),
    heard("ask", "WHATIS? (the|a)? <chance> <bag>", lambda _, bag: _part(None, ANY, bag)),
    heard("ask", "<bag> WHATIS? (the|a)? <chance> <bag>", lambda x, _, bag: _part(x, ANY, bag)),
    heard(
        "ask",
        f"if? (i|you|we) (pick|take|choose) one? of? <b> at? random? WHATIS <chance> (it|that)? {_IS} <b>",
        lambda whole, _, part: Wish("share", (whole, part), ANY),
    ),
    heard(
        "ask",
        f"if? (i|you|we) (pick|take|choose) one? of? <b> at? random? WHATIS <chance> that it {_IS} <b>",
        lambda whole, _, part: Wish("share", (whole, part), ANY),
    ),
    heard("ask", "WHATIS? (the|a)? <chance> <b> (is|was|were|are) <b>", lambda _, whole, part: Wish("share", (whole, part), ANY)),
    # ratios
    heard("side", "NUMBER? <whole_bag>", lambda bag: bag),
    heard("ask", "WHATIS? (the|a)? RATIO (of|is)? <side> to <side>", _wish("ratio")),
    heard("ask", "WHATIS? (the|a)? RATIO (of|is)? <side> : <side>", _wish("ratio")),
    heard("ask", "<side> : <side>", _wish("ratio")),
    heard(
        "ask",
        "WHATIS? (the|a)? <paint> <noun>? to <paint> <noun>? RATIO (of|for) <bag>",
        lambda a, _, b, __, bag: Wish("ratio of", (bag,), labels=(*a, *b)),
    ),
    # mean and median
    heard("stat", "MEAN", always("mean")),
    heard("stat", "MEDIAN", always("median")),
    heard("stat_of", "WHATIS? (the|a)? <stat> (of|for)? NUMBER? of?", lambda s: s),
    heard("series", "<whole_bag>", lambda bag: (bag, "")),
    heard("series", "<bag> <row> <bag>?", lambda a, by, b: (_merge(a, b), by)),
    heard("series", "<row> <bag>?", lambda by, b: (_merge(b), by)),
    heard("row", "(the|of|for|by|in|their|its)? (the|a|all|their)? NUM TRIALWORD TOTALS?", lambda n: ("trials", n)),
    heard("row", "TRIALWORD TOTALS?", always(("trials", None))),
    heard("row", "(the|of|for|by)? (the|all)? NUM groups TOTALS?", lambda n: ("groups", n)),
    heard("row", "(the|of|for|by)? (the|all)? NUM group TOTALS", lambda n: ("groups", n)),
    heard("row", "(the|of|for|by)? (the|all)? NUM (group|groups) (TOTAL|TOTALS)", lambda n: ("groups", n)),
    heard("row", "(by|of|for)? the groups TOTALS?", always(("groups", None))),
    heard("row", "(of|in|for)? <grp> NUM? TRIALWORD TOTALS?", lambda g, n: ("trials of", (n, g))),
    heard("row", "(that|by|for)? EACHGROUP", always(("groups", None))),
    heard("ask", "<stat_of> <series>", lambda s, row: _statistic(s, *row)),
    heard("ask", "<bag> <stat_of> <series>", lambda x, s, row: _statistic(s, plus(x, row[0]), row[1])),
    heard("ask", "WHATIS? <bag> <stat> NUMBER? of? <series>", lambda x, s, row: _statistic(s, plus(x, row[0]), row[1])),
    heard("ask", "WHATIS? <bag> <stat>", lambda x, s: _statistic(s, x, "")),
    heard("row", "(of|for)? <grp> TOTALS", lambda g: ("trials of", (None, g))),
    # most and least
    heard("most", "MOST", always(1)),
    heard("most", "LEAST", always(-1)),
    heard("by", "WHOGROUP", always("groups")),
    heard("by", "in? WHICHTRIAL", always("trials")),
    heard("by", "(of|for|out)? WHICHCOLOR", always("colors")),
    heard("ask", "<by> <bag>? the? <most> of? <bag>?", lambda by, a, s, b: Wish("most", (_merge(a, b),), sign=s, by=by)),
    heard("ask", "<bag> <by> <bag>? the? <most> of? <bag>?", lambda x, by, a, s, b: Wish("most", (_merge(x, a, b),), sign=s, by=by)),
    heard("ask", "<by> <bag>? MORE <bag> than ANYONE <bag>?", lambda by, a, b, c: Wish("most", (_merge(a, b, c),), by=by)),
    heard("ask", "<by> <bag>? FEWER <bag> than ANYONE <bag>?", lambda by, a, b, c: Wish("most", (_merge(a, b, c),), sign=-1, by=by)),
    heard("ask", "<by> tied (for|with) the? <most> <b>", lambda by, s, b: Wish("most", (b,), sign=s, by=by)),
    heard("either", "<grp> or <grp>", lambda a, b: ("groups", (*a, *b))),
    heard("either", "(the|between)? <paint> <noun>? or the? <paint> <noun>?", lambda a, _, b, __: ("colors", (*a, *b))),
    heard("either", "TRIALWORD? LABEL or TRIALWORD? LABEL", lambda a, b: ("trials", _other_trials(a, b))),
    heard("which", "WHICH", always("")),
    heard("which", "<by>", lambda by: by),
    heard("ask", "<which> <bag>? <sign> <bag> <either>", lambda by, a, s, b, e: _between(by, e, s, a, b)),
    heard("ask", "<which> <bag> <sign> <either>", lambda by, a, s, e: _between(by, e, s, a)),
    heard("ask", "<either> <which> <bag> <sign>", lambda e, by, a, s: _between(by, e, s, a)),
    heard("ask", "<either> <which> <bag>? <sign> <bag>", lambda e, by, a, s, b: _between(by, e, s, a, b)),
    heard("ask", "did <either> <bag>? <sign> <bag>", lambda e, a, s, b: _between("", e, s, a, b)),
    heard("size", "GREATER", always(1)),
    heard("size", "SMALLER", always(-1)),
    heard("size", "MORE", always(1)),
    heard("rate", "(the|a)? <size> (FRACTION|PERCENT)", lambda s: s),
    heard("ask", "<which> <bag>? <rate> of? <bag> <either>", lambda by, a, s, b, e: _between(by, e, s, a, b, "rate")),
    heard("ask", "<either> <which> <bag>? <rate> of? <bag>", lambda e, by, a, s, b: _between(by, e, s, a, b, "rate")),
    heard("ask", "<bag> <which> <bag>? <rate> of? <bag> <either>", lambda x, by, a, s, b, e: _between(by, e, s, x, a, b, "rate")),
    heard("ask", "<bag>? <by> <bag>? <rate> of? <bag>", lambda x, by, a, s, b: Wish("most rate", (_merge(x, a, b),), sign=s, by=by)),
    # which of them
    heard("ask", "<by> <bag>? no <bag>", lambda by, a, b: Wish("pick", (_merge(a, b),), by=by, test="none")),
    heard("ask", "<by> <bag>? (only|exactly)? NUM <bag>", lambda by, a, n, b: Wish("pick", (_merge(a, b),), by=by, test="equal", number=n)),
    heard("ask", "<by> <bag>? MORE than NUM <bag>", lambda by, a, n, b: Wish("pick", (_merge(a, b),), by=by, test="more", number=n)),
    heard("ask", "<by> <bag>? FEWER than NUM <bag>", lambda by, a, n, b: Wish("pick", (_merge(a, b),), by=by, test="fewer", number=n)),
    heard("ask", "<by> <bag>? at LEAST NUM <bag>", lambda by, a, n, b: Wish("pick", (_merge(a, b),), by=by, test="at least", number=n)),
    heard(
        "ask",
        "in? HOWMANY TRIALWORD <bag>? at LEAST NUM <bag>",
        lambda a, n, b: Wish("how many labels", (_merge(a, b),), by="trials", test="at least", number=n),
    ),
    heard(
        "ask",
        "HOWMANY groups <bag>? at LEAST NUM <bag>",
        lambda a, n, b: Wish("how many labels", (_merge(a, b),), by="groups", test="at least", number=n),
    ),
    heard("ask", "<by> <bag>? VERB all <bag>", lambda by, a, m, b: _all_of("pick", by, a, m, b)),
    heard("ask", "in? HOWMANY TRIALWORD <bag>? VERB all <bag>", lambda a, m, b: _all_of("how many labels", "trials", a, m, b)),
    heard("ask", "HOWMANY groups <bag>? VERB all <bag>", lambda a, m, b: _all_of("how many labels", "groups", a, m, b)),
    heard("ask", "<by> did not VERB any <bag>", lambda by, m, b: Wish("pick", (plus(b, Bag(measure=m)),), by=by, test="none")),
    heard("ask", "<by> did not VERB all <bag>", lambda by, m, b: Wish("pick", (plus(b, Bag(measure=m)),), by=by, test="not all")),
    # change
    heard("from_to", "from (the|their|its)? TRIALWORD? LABEL to (the|their|its)? TRIALWORD? LABEL", _other_trials),
    heard("from_to", "between TRIALWORD? LABEL and TRIALWORD? LABEL", _other_trials),
    heard(
        "from_to",
        "from (the|their|its)? ORD TRIALWORD to (the|their|its)? LAST TRIALWORD?",
        lambda n: ("first", "last") if n == 1 else _clash(),
    ),
    heard("ask", "WHATIS? (the|a)? change (in|for) NUMBER? <b> <from_to>", lambda b, t: Wish("rise", (b,), sign=0, labels=t)),
    heard("ask", "WHATIS? (the|a)? increase in NUMBER? <b> <from_to>", lambda b, t: Wish("rise", (b,), sign=1, labels=t)),
    heard("ask", "WHATIS? (the|a)? decrease in NUMBER? <b> <from_to>", lambda b, t: Wish("rise", (b,), sign=-1, labels=t)),
    heard("way", "WENTUP", always(1)),
    heard("way", "WENTDOWN", always(-1)),
    heard("ask", "<b> <way> by? HOWMANY <bag>? <from_to>", lambda b, s, x, t: Wish("rise", (_merge(b, x),), sign=s, labels=t)),
    heard("ask", "by? (HOWMANY|HOWMUCH) <bag> <way> <from_to>", lambda b, s, t: Wish("rise", (bags.verb(b),), sign=s, labels=t)),
    heard("ask", "by HOWMANY PERCENT <bag> <way> <from_to>", lambda b, s, t: Wish("percent rise", (bags.verb(b),), PERCENT, s, labels=t)),
    heard("ask", "HOWMANY PERCENT <bag> <way> <from_to>", lambda b, s, t: Wish("percent rise", (bags.verb(b),), PERCENT, s, labels=t)),
    heard(
        "ask",
        "by PERCENT did NUMBER of? <bag> <way> <from_to>",
        lambda b, s, t: Wish("percent rise", (bags.verb(b),), PERCENT, s, labels=t),
    ),
    heard("ask", "by PERCENT <bag> <way> <from_to>", lambda b, s, t: Wish("percent rise", (bags.verb(b),), PERCENT, s, labels=t)),
    heard("turn", "increase", always(1)),
    heard("turn", "decrease", always(-1)),
    heard("turn", "WENTUP", always(1)),
    heard("turn", "WENTDOWN", always(-1)),
    heard(
        "ask",
        "WHATIS? (the|a)? PERCENT <turn> in? NUMBER? <bag>? <from_to> <bag>?",
        lambda s, a, t, b: Wish("percent rise", (_merge(a, b),), PERCENT, s, labels=t),
    ),
    heard(
        "ask",
        "WHATIS? (the|a)? PERCENT <turn> from (the)? <grp> TRIALWORD LABEL to (the)? <grp> TRIALWORD LABEL in? <bag>?",
        lambda s, g, a, h, b, x: (
            Wish("percent rise", (_merge(Bag(groups=g), x),), PERCENT, s, labels=_other_trials(a, b)) if g == h else _clash()
        ),
    ),
    heard("ask", "WHATIS? (the|a)? PERCENT <turn> in? NUMBER? <b>", lambda s, b: Wish("percent rise told", (b,), PERCENT, s)),
    # points
    heard("unit", "(each|every|a|an|the)? <paint> <noun>?", lambda c, _: Bag(colors=c)),
    heard("unit", "(each|every|a|per|for)? (each|every|a|one)? ITEM", always(Bag(item=True))),
    heard("unit", "(each|every|a|for)? every? ITEM (you|they)? VERB", lambda m: Bag(item=True, measure=m)),
    heard("unit", "(each|every|a)? <paint> <noun>? VERB", lambda c, _, m: Bag(colors=c, measure=m)),
    heard("price", "<unit> (is|are|scores|score|gives|give|gets|earns) (worth|you)? NUM (points|point) each?", lambda u, n: (u, n)),
    heard("price", "<unit> GOT NUM (points|point) each?", lambda u, n: (u, n)),
    heard("price", "<unit> (is|are) worth NUM", lambda u, n: (u, n)),
    heard("price", "(you|they) GOT NUM (points|point) for? <unit>", lambda n, u: (u, n)),
    heard("price", "(with|at)? NUM (points|point) (a|per|for|each)? <unit>", lambda n, u: (u, n)),
    heard("prices", "<price>", lambda p: (p,)),
    heard("prices", "<price> and? <prices>", lambda p, rest: (p, *rest)),
    heard("if", "(if|say|suppose|when|imagine)? <prices>", lambda p: p),
    heard("score", "HOWMANY points <bag>", lambda b: Wish("points", (bags.verb(b),))),
    heard("score", "HOWMANY points <bag> score <bag>?", lambda a, b: Wish("points", (_merge(a, b),))),
    heard("score", "points <bag>", lambda b: Wish("points", (bags.verb(b),))),
    heard("score", "HOWMANY <sign> points <b> than <b>", lambda s, a, b: Wish("points difference", (a, b), sign=s)),
    heard("ask", "<if> <only>? <score>", lambda p, only, w: w._replace(worth=p, test=only or "")),
    heard("only", "and (you|we)? count only? <paint> <noun>? only?", lambda c, _: c[0]),
    heard("ask", "<score> (if|when) <prices>", lambda w, p: w._replace(worth=p)),
    heard("ask", "<score>", lambda w: w),
    # two questions made one
    heard("tell", "<if>", lambda p: Wish("worth", (), worth=p)),
    heard("tell", "<b>", lambda b: Wish("said", (b,))),
    heard("tell", "only? NUM VERB <bag>?", lambda n, m, x: Wish("said", (plus(Bag(number=n, measure=m), x or EMPTY),))),
    heard("tell", "look at only? <b>", lambda b: Wish("about", (b,))),
    heard("tell", "looking only? at <b>", lambda b: Wish("about", (b,))),
    heard("tell", "only <b>", lambda b: Wish("about", (b,))),
    heard("tell", "<b> and <b>", lambda a, b: Wish("said both", (a, b))),
    heard("tell", "<b> <sign> <bag>? than <b>", lambda a, s, x, b: Wish("compared", (_merge(a, x), b), sign=s)),
    heard("tell", "<from_to> <bag> <way> <much>?", lambda t, b, s, _: Wish("went", (bags.verb(b),), sign=s, labels=t)),
    heard("much", "a (lot|bit)", always(None)),
    heard("much", "by? (quite)? a (lot|bit)", always(None)),
    heard("tell", "<bag> went from TRIALWORD? LABEL to TRIALWORD? LABEL", lambda b, s, t: Wish("went", (b,), labels=_other_trials(s, t))),
    # forms
    heard("as", "as <form_of>", lambda d: d),
    heard("as", "SIMPLEST", always(Demand("simplest"))),
    heard("as", "as FRACTION SIMPLEST", always(Demand("simplest"))),
    heard("as", "as PERCENT? rounded? to the nearest whole PERCENT", always(Demand("percent", 0))),
    heard("as", "(rounded|round)? to the nearest whole PERCENT", always(Demand("percent", 0))),
    heard("as", "(rounded|round)? to NUM DECIMAL (place|places)?", lambda n: Demand("decimal", int(n.value))),
    heard("as", "(rounded|round)? to the nearest <tenth>", lambda n: Demand("decimal", n)),
    heard("as", "(rounded|round)? to the nearest <tenth> of PERCENT", lambda n: Demand("percent", n)),
    heard("tenth", "tenth", always(1)),
    heard("tenth", "hundredth", always(2)),
    heard("as", "RATIO SIMPLEST", always(Demand("simplest"))),
    heard("order", "WHATIS (it|that)? <as>", lambda d: d),
    heard("order", "(WHATIS|NAMEALL) <all_names>", always(Demand("name"))),
    heard(
        "all_names",
        "(all|every|each)? (of|the)? (group|groups|trials|trial)? <crowd>? if (they|there|two|groups)? (tie|ties|tied)",
        always(None),
    ),
    heard("order", "WHATIS? <form_of>", lambda d: d),
    heard("crowd", "CLASS", always(None)),
    heard("question", "<ask>", lambda w: (w, None)),
    heard("question", "<ask> <as>", lambda w, d: (w, d)),
    heard("question", "<as> <ask>", lambda d, w: (w, d)),
    heard("question", "WHATIS <as> <ask>", lambda d, w: (w, d)),
    heard("question", "WHATIS <ask> <as>", lambda w, d: (w, d)),
    heard("question", "looking only? at <b> <ask>", lambda b, w: (w._replace(bags=tuple(plus(x, b) for x in w.bags)), None)),
    heard("question", "<bag> : <ask>", lambda b, w: (w._replace(bags=tuple(plus(x, b) for x in w.bags[:1]) + w.bags[1:]), None)),
    heard("question", "only <b> : <ask>", lambda b, w: (w._replace(bags=tuple(_fill(x, b) for x in w.bags)), None)),
)


def _all_of(kind: str, by: str, before: Bag | None, measure: Measure, after: Bag) -> Wish:
    if measure != "down" or (before is not None and before.measure is not None):
        raise Clash
    return Wish(kind, (_merge(before, Bag(measure=measure), after),), by=by, test="all")


def _fill(they: Bag, of: Bag) -> Bag:
    return of if they == Bag(they=True) else they


def _clash() -> Wish:
    raise Clash


def _statistic(name: str, bag: Bag, row: tuple[str, object] | str) -> Wish:
    bag = bags.verb(bag)
    by, number = row if isinstance(row, tuple) else ("", None)
    if by == "trials of":
        assert isinstance(number, tuple)  # how many trials, and whose
        number, whose = number
        bag, by = plus(bag, Bag(groups=whose)), "trials"
    if not by:
        by = bag.each or ("trials" if isinstance(bag.trials, str) or any(part == "trials" for part, _ in bag.sizes) else "")
    elif bag.each is not None and bag.each != by:
        raise Clash
    return Wish(name, (bag._replace(each=None),), by=str(by), number=number)  # type: ignore[arg-type]


def _between(by: str, either: tuple[str, tuple[Label, ...]], sign: int, *found: object) -> Wish:
    name, labels = either
    if by and by != name:
        raise Clash
    kind = "most"
    some = list(found)
    if some and some[-1] == "rate":
        kind = "most rate"
        some.pop()
    return Wish(kind, (_merge(*some),), sign=sign, by=name, labels=labels)  # type: ignore[arg-type]
