"""What a text tells its reader to do: where to look, what to compare, how to round."""

from __future__ import annotations

from mathgen.reading.meaning.counts import About, Against, Look, Rounding
from mathgen.reading.meaning.scope import Labels, Mark
from mathgen.reading.mentions import DIMENSIONS
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Takers, Told
from mathgen.trials.scope import Label


def look(told: Told, claim: Look) -> None:
    told.seen.append(claim)
    for part in DIMENSIONS:
        labels: Labels = getattr(claim.np, part)
        if labels is None or (part == "colors" and isinstance(labels, Mark)):
            continue
        found = told.mentions.resolve(part, labels)
        told.looks.append((part, found))
    if claim.whole is not None:
        told.referred(told.quantity("set_up", claim.np), claim.whole)


def against(told: Told, claim: Against) -> None:
    told.pair = claim
    for part in DIMENSIONS:
        named: list[Label] = []
        for np in claim:
            labels: Labels = getattr(np, part)
            if labels is not None:
                found = told.mentions.resolve(part, labels)
                if isinstance(labels, tuple) and set(found) & set(named) and getattr(claim.first, part) != getattr(claim.second, part):
                    raise NotRead("something is compared with itself")
                named.extend(found)
        if named:
            told.looks.append((part, told.mentions.ordered(part, tuple(named))))


def rounding(told: Told, claim: Rounding) -> None:
    if told.rounding is not None:
        raise NotRead("rounding is asked for twice")
    told.rounding = claim.demand
    told.open.pop("about", None)


def about(told: Told, _: About) -> None:
    told.open["about"] = '"about"'


TAKEN: Takers = {
    Look: look,
    Against: against,
    Rounding: rounding,
    About: about,
}
