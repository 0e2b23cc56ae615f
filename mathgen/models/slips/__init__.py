"""The catalogue of slips, a file for each subject.

An id is the letter of a section and a number. What sections A to K begin with, up to A16, B09, C10, D16, E11, F14, G08, H13, I14, J09
and K11, was gathered from studies of pupils' errors, or follows from how the numbers stand in a table. Studies with a star were seen,
some only in their abstract; the others are cited from memory. Higher numbers are ours, as common practice has it: no study known to us
describes them, but where a slip names one.

- A, a fraction of a set: Wearne and Kouba 2000*; Hart 1981; Behr et al. 1983.
- B, equal fractions and comparing: Clarke and Roche 2009*; Malone and Fuchs 2017*; Gomez et al., ERIC ED599798*; Pearn and Stephens
  2004; Ni and Zhou 2005.
- C, adding, taking away and multiplying fractions: Lortie-Forgues, Tian and Siegler 2015*; Braithwaite, Pyke and Siegler 2017*;
  Schumacher and Malone 2017*; Siegler, Thompson and Schneider 2011; Siegler and Pyke 2013.
- D, between fractions, decimals and percents: Hiebert and Wearne 1983*; Brown 1981; Sackur-Grisvard and Leonard 1985; Parker and
  Leinhardt 1995.
- E, decimals: Stacey and Steinle's pages on decimals*; Martinie 2007*; Lortie-Forgues and Siegler 2017*; Hiebert and Wearne 1985.
- F, percents: Baratta et al. 2010*; Jacobs 2010-11*; Pollatsek, Lima and Well 1981; Parker and Leinhardt 1995.
- G, ratio and rate: Fernandez et al. 2010*; Valentin and Lim 2004*; Smith 2020*; Hart 1981; Clark, Berenson and Cavey 2003.
- H, how many more or fewer, and other counting: Cummins et al. 1988*; De Corte, Verschaffel and Pauwels 1990*; Valentin and Lim 2004*;
  Brown and Burton 1978; Riley, Greeno and Heller 1983; Fuson 1984; Hegarty, Mayer and Monk 1995; Verschaffel, Greer and De Corte 2000.
- I, mean, median, range and spread: Barr 1980*; Pollatsek, Lima and Well 1981; Mevarech 1983; Strauss and Bichler 1988; Cai 1998;
  Zawojewski and Shaughnessy 2000.
- J, graphs and tables: Friel, Curcio and Bright 2001* on scales; else from how a graph is drawn.
- K, chance: Konold 1987*; Falk and Lann 2008*; Green 1983; Lecoutre 1992; Fischbein and Schnarch 1997.

All other sections are ours, but for what a slip says of itself: L, expressions, equations and lines (Kuchemann 1981, from memory, on
letters); M, equal groups; N, decimals that repeat; O, parentheses; P, odd and even, remainders, factors and arrays; Q, a letter for a
count; R, rounding; S, scaling; T, accuracy; U, changing a number of a list; V, judging a claim; W, lengths, points and plots;
X, positive and negative numbers; Y, money; Z, common factors and multiples.
"""

from __future__ import annotations

from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from mathgen.models.slips.rule import RULES, SlipRule


@cache
def _rules() -> dict[str, SlipRule]:
    for module in iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
    return RULES


def slip_rule(slip_id: str) -> SlipRule:
    """The rule of a slip id."""
    return _rules()[slip_id]


def slip_ids() -> tuple[str, ...]:
    """Every id of the catalogue, in order."""
    return tuple(sorted(_rules()))
