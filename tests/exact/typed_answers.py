"""Typed answers made up from the pieces that pupils write, right and wrong: to hold two judges against each other."""

from __future__ import annotations

from random import Random

_NUMBERS = ("0", "1", "2", "3", "4", "7", "8", "12", "25", "75", "100", "150", "1,234", "007", "33", "66", "67")
_PIECES = (
    *(" fourths", " over ", " out of four", " and 1 half", " tenths"),
    *("/", " / ", ".", ",", ":", " : ", "-", " ", " and ", " to ", " out of ", " of ", "%", " percent", "...", " repeating", "(3)"),
    *("$", "¢", " pins", " pin", " points", " inches", " in.", " apples", " red pins", " pins knocked down", " more"),
    *("½", "¾", "⅓", "¹⁄₂", "³", "₄", "three", "fourths", "one half", "twenty one", "over", "point", "hundred", "negative ", "a "),
    *("half", "eighths", "=", "x = ", "!", "?", "0.", ".", "33", "666", "R", " r ", " remainder ", "Owls", "the Owls", "yes", "No"),
    *("−", "⁄", "\u00a0", "３", "٪", "'", '"', "in", "e5", "00"),
    *("about ", "~", "≈ ", " bar", " (repeating)", " boxes", " ordered pairs", " in ", " -> ", "→"),
    *("Trial 1: ", "gold", "gold pins", "a gold pin", "Trial 2"),
)
_FORMS = {  # of each number that is expected, ways to write it or something near it
    "3/4": ("3/4", "6/8", "0.75", ".75", "75%", "75", "0.750", "3:4", "6 to 8", "three fourths", "0,75", "3 out of 4", "4/3"),
    "2/3": ("2/3", "0.67", "66.7%", "66 2/3%", "0.666...", "0.7", "0.(6)", "67%", "0.667", "66.67", "4/6", "2:3"),
    "9/4": ("2 1/4", "9/4", "2.25", "225%", "2 2/8", "two and one fourth", "2-1/4", "18/8", "1 5/4"),
    "12": ("12", "12.0", "24/2", "12 pins", "twelve", "12 inches", "$12", "10"),
    "0": ("0", "0.0", "0/5", "0%", "none", "zero"),
    "5/6": ("5/6", "0.8333...", "83.3%", "0.83", "10/12", "83 1/3%", "0.8"),
    "1/8": ("1/8", "12.5%", "0.125", "0.13", "12 1/2%", "2/16", "13%", "0.1"),
    "147": ("147", "150", "100", "147 pins", "147.0", "one hundred forty-seven", "200"),
    "1234": ("1,234", "1234", "1230", "1200", "1.234", "1000"),
    "17:7": ("17:7", "34:14", "7/17", "17 to 7", "17/7", "17 : 7"),
    "3 inches": ("3 inches", "3", "3 in.", "3 pins", '3"', "6/2 inches"),
    "$1.25": ("$1.25", "125¢", "1.25", "5/4", "$1.250", "1 1/4"),
    "1/3": ("1/3", "0.333...", "0.3 repeating", "0.33", "33 1/3%", "33%", "one third"),
}
DEMANDS = (
    *("any", "simplest", "mixed", "mixed:any", "decimal", "percent", "ratio", "ratio:any", "whole", "whole:10", "whole:100"),
    *("decimal:0", "decimal:1", "decimal:2", "percent:0", "percent:1", "percent:2"),
)
EXPECTED = tuple(_FORMS)


def typed_answer(rng: Random, expected: str = "") -> str:
    """A few pieces in a row, about half of them numbers; or a form that a pupil may well write, as it is or with a piece put in."""
    if expected in _FORMS and rng.random() < 0.7:
        form = rng.choice(_FORMS[expected])
        place = rng.randrange(len(form) + 1)
        return rng.choice((form, form + rng.choice(_PIECES), form[:place] + rng.choice(_PIECES) + form[place:], rng.choice(_PIECES) + form))
    pieces = [rng.choice(_NUMBERS if rng.random() < 0.5 else _PIECES) for _ in range(rng.randint(1, 5))]
    return "".join(pieces)


def cases(count: int, seed: str) -> list[dict[str, str]]:
    """So many cases: what is expected, the demand, what was typed."""
    rng = Random(seed)
    found = []
    for _ in range(count):
        expected = rng.choice(EXPECTED)
        found.append({"expected": expected, "demand": rng.choice(DEMANDS), "typed": typed_answer(rng, expected)})
    others = (
        *(("Owls", "name"), ("gold", "name"), ("Trial 2", "name"), ("Kites and Owls", "name")),
        *(("true", "truth"), ("7 r 2", "quotient_remainder"), ("1 * 8, 2 * 4", "list"), ("6 to 8, 7 to 3", "list")),
    )
    return found + [
        {"expected": expected, "demand": demand, "typed": typed_answer(rng)} for expected, demand in others for _ in range(count // 20)
    ]


_SIGNS = (
    *(*range(0x09, 0x250), *range(0x300, 0x370), *range(0x660, 0x66A)),
    *(*range(0x2000, 0x2100), *range(0x2150, 0x218C), *range(0xFF00, 0xFF60)),
)
_SIGN_EXPECTED = (
    *((key, demand) for key in EXPECTED for demand in DEMANDS[:9]),
    *(("Owls", "name"), ("true", "truth"), ("7 r 2", "quotient_remainder"), ("1 * 8, 2 * 4", "list"), ("6 to 8, 7 to 3", "list")),
)


def odd_signs(count: int, seed: str) -> list[dict[str, str]]:
    """So many cases of digits among signs of all kinds: controls, accents, spaces, digits of other scripts, one-character fractions."""
    rng = Random(seed)
    found = []
    for _ in range(count):
        expected, demand = rng.choice(_SIGN_EXPECTED)
        signs = (chr(rng.choice(_SIGNS)) if rng.random() < 0.4 else rng.choice("0123456789./ %:") for _ in range(rng.randint(1, 7)))
        found.append({"expected": expected, "demand": demand, "typed": rng.choice(("", "", "yes", "Owls", "7 r ")) + "".join(signs)})
    return found
