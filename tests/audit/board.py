"""The lines of the board by the audit's own reading: lists in order, parts, roundings and comparisons, each from its numbers."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

from sympy import Rational, floor, simplify, sympify

from tests.audit.printed import NUMBER, UnreadableError, is_tie, rounded_half_up, value
from tests.audit.printed import line as read_line

_N = f"({NUMBER.pattern})"
_SAID = {
    "part": re.compile(r"(\d+) (?:of (\d+) equal parts|out of (\d+)): (\d+)/(\d+)"),
    "ratio": re.compile(r"(\d+) to (\d+): (\d+):(\d+)"),
    "middle": re.compile(rf"the middle number is {_N}"),
    "opposite": re.compile(rf"the opposite of {_N} is {_N}"),
    "less": re.compile(rf"{_N} is {_N} less than {_N}, so {_N}"),
    "half": re.compile(r"(\d+) \+ (\d+) = (\d+), so (\d+)"),
    "order": re.compile(r"in order: (.+)"),
    "halves": re.compile(r"(lower|upper) half: (.+)"),
    "distances": re.compile(rf"distances from {_N}: (.+)"),
    "along": re.compile(r"y for the (narrowest|widest) spaces: (.+)"),
    "points": re.compile(r"y from left to right: (\d+(?:, \d+)+)"),
    "between": re.compile(rf"{_N} is between {_N} and {_N}"),
    "nearer": re.compile(rf"{_N} is nearer to {_N}"),
    "halfway": re.compile(rf"{_N} is halfway between {_N} and {_N}"),
    "up": re.compile(rf"halfway: round up to {_N}"),
    "against one": re.compile(rf"{_N} ([<>=]) 1"),
    "count": re.compile(r"count (.+): (\d+)"),
    "bound": re.compile(r"the (least|greatest) number is (\d+)"),
    "in x": re.compile(r"[^a-z]*x[^a-z]*(?:x[^a-z]*)?"),
    "stays": re.compile(rf"{_N} stays {_N}"),
    "verdict": re.compile(r"(.+), so (\D.*)"),
    "words": re.compile(r"(.* (?:plus|minus|times) .*|(?:more|less) than .+): (.+)"),
}
ROUNDING = ("between", "nearer", "halfway", "up", "stays")


def kind_of(text: str) -> str:
    """What a line says: one of the kinds above, "cut" where a decimal is only begun, else "equality"."""
    for kind, pattern in _SAID.items():
        if pattern.fullmatch(text):
            return kind
    first, *others = text.split(" = ")
    return "cut" if "..." not in first and any("..." in side for side in others) else "equality"


def arithmetic(steps: list[str]) -> list[str]:
    """The equalities that the lines come to, without what only orders, rounds or compares numbers.

    A quotient that is turned over stays one quotient: ``1/6 / 5/12 = 1/6 * 12/5`` and ``1/6 * 12/5 = 12/30`` are ``1/6 / 5/12 = 12/30``.
    """
    found: list[str] = []
    turned: dict[str, str] = {}
    repeating: list[tuple[str, str]] = []  # how many times x, and what that is
    for text in steps:
        kind = kind_of(text)
        numbers = _SAID[kind].fullmatch(text) if kind in _SAID else None
        if kind == "part" and numbers:
            found.append(f"{numbers[1]} / {numbers[2] or numbers[3]} = {numbers[4]}/{numbers[5]}")
        elif kind == "ratio" and numbers:
            found.append(f"{numbers[1]} / {numbers[2]} = {numbers[3]}/{numbers[4]}")
        elif kind == "middle" and numbers:
            found.append(f"{numbers[1]} = {numbers[1]}")
        elif kind == "opposite" and numbers:
            found.append(f"-({numbers[1]}) = {numbers[2]}")
        elif kind == "less" and numbers:
            found.append(f"-({numbers[2]}) = {numbers[4]}")
        elif kind == "count" and numbers:
            found.append(f"{' + '.join(['1'] * (numbers[1].count(', ') + 1))} = {numbers[2]}")
        elif kind == "in x":
            times, _, right = text.partition("x = ")
            if not times and right.endswith("..."):
                repeating = [("1", right)]
            elif repeating and right.endswith("..."):
                repeating.append((times, right))
                found.append(f"{times} * {repeating[0][1]} = {right}")
            elif repeating and times:
                (less_times, less), (more_times, more) = sorted(repeating, key=lambda one: int(one[0]))[-2:]
                found += [f"{more} - {less} = {right}", f"{more_times} - {less_times} = {times}"]
            elif repeating and "/" in right:
                found.append(f"{right.replace('/', ' / ')} = {right}")
        elif kind == "half":
            found.append(text.partition(", so ")[0])
        elif kind == "equality":
            left, _, right = text.partition(" = ")
            if " / " in left and " * " in right:
                turned[right] = left
            else:
                found.append(f"{turned.get(left, left)} = {right}")
    return found


def said_numbers(text: str) -> list[str]:
    """The numbers of a line that is told in words."""
    if kind_of(text) in ("equality", "cut", "in x"):
        return []
    told = _SAID["verdict"].fullmatch(text)
    return [found[0] for found in NUMBER.finditer(told[1] if told else text)]


def board_faults(line: dict[str, Any]) -> Iterator[str]:
    """Lines that say nothing or what is not so, and a board that does not end in the answer."""
    answer, steps, grade = line["answer"], line["steps"], line["grade"]
    yield from _empty(steps, grade)
    known = {value(given["number"]) for given in line["givens"]}
    lists: list[list[Rational]] = []  # the list in order, then its half that is looked at
    for text in steps:
        try:
            yield from _list_faults(text, lists, known)
            if not (_tells_x(text, line) if kind_of(text) == "in x" else _is_so(text)):
                yield f'"{text}" is not so'
            for equality in arithmetic([text]):
                known.update(read_line(equality).sides)
        except UnreadableError as err:
            yield f"step: {err}"
            return
    if answer["demands"] == "expression":
        if not _words_of(line):
            yield f"the board {steps} does not say {answer['value']}"
        return
    if answer["kind"] in ("name", "truth", "rubric"):
        yield from _verdict(line, known)
    elif answer["kind"] in ("number", "ratio"):
        yield from _end(line)


def _list_faults(text: str, lists: list[list[Rational]], known: set[Rational]) -> Iterator[str]:
    """A list that is put in order, its halves and its middle; and the distances from a mean."""
    kind = kind_of(text)
    if kind in ("order", "halves", "distances"):
        numbers = [value(one) for one in text.partition(": ")[2].split(", ")]
        if kind != "halves" and not set(numbers) <= known:
            yield f'"{text}": where do its numbers come from?'
        if kind == "order":
            lists[:] = [numbers, numbers]
            if numbers != sorted(numbers):
                yield f'"{text}" is not in order'
        elif kind == "halves" and lists:
            whole, size = lists[0], len(lists[0]) // 2
            lists[1] = numbers
            if numbers != (whole[:size] if text.startswith("lower") else whole[len(whole) - size :]):
                yield f'"{text}" is not half of the list'
    elif kind == "middle":
        half = lists[1] if lists else []
        if len(half) % 2 == 0 or half[len(half) // 2] != value(text.split(" ")[-1]):
            yield f'"{text}" of {half}'


def _is_so(text: str) -> bool:
    """Whether what a line tells of its own numbers is so; of equalities that is checked elsewhere."""
    kind = kind_of(text)
    if kind == "cut":
        return _cut(text)
    found = _SAID[kind].fullmatch(text) if kind in _SAID else None
    told = found.groups() if found else ()
    match kind:
        case "part":
            return (told[0], told[1] or told[2]) == told[3:]
        case "ratio":
            return told[:2] == told[2:]
        case "opposite":
            return value(told[0]) == -value(told[1])
        case "less":
            return value(told[2]) - value(told[0]) == value(told[1]) == -value(told[3])
        case "half":
            return told[0] == told[1] == told[3] and 2 * int(told[0]) == int(told[2])
        case "against one":
            return _holds(value(told[0]), told[1], Rational(1))
    return True


def _words_of(line: dict[str, Any]) -> bool:
    """Whether words such as "3 plus 10 first, then times 5" say what the story makes, and end in the expression."""
    found = _SAID["words"].fullmatch(line["steps"][0]) if len(line["steps"]) == 1 else None
    if found is None or found[2] != line["answer"]["value"]:
        return False
    words = re.sub(r"^(.*) first, then (times .*)$", r"(\1) \2", found[1])
    words = re.sub(r"^more than (.*)$", r"n - \1", re.sub(r"^less than (.*)$", r"\1 - n", words)).replace(",", "")
    for name, sign in (("plus", "+"), ("minus", "-"), ("times", "*")):
        words = words.replace(name, sign)
    return bool(simplify(sympify(words) - sympify(line["relation"].partition("x = ")[2])) == 0)


def _tells_x(text: str, line: dict[str, Any]) -> bool:
    """Whether the answer fits a line in x, and the next number does not."""
    repeating = [given["number"] for given in line["givens"] if given["number"].endswith("...")]
    exact = value(repeating[0] if repeating else line["answer"]["exact"])
    left, sign, right = re.split(r" (<=|>=|[<>=]) ", text)
    plain = [re.sub(r"\d+\.\d+\.\.\.", lambda found: f"({value(found[0])})", side) for side in (left, right)]
    sides = [sympify(re.sub(r"(\d)(?=[x(])", r"\1*", side), rational=True) for side in plain]
    step = -1 if sign in (">", ">=") else 1
    fits = [_holds(sides[0].subs("x", one), sign, sides[1].subs("x", one)) for one in (exact, exact + step)]
    edge = exact + step if sign in "<>" else exact
    return fits == [True, False] and sides[0].subs("x", edge) == sides[1].subs("x", edge)


def _holds(one: Rational, sign: str, other: Rational) -> bool:
    return bool({"<": one < other, ">": one > other, "=": one == other, "<=": one <= other, ">=": one >= other}[sign])


def _empty(steps: list[str], grade: int) -> Iterator[str]:
    """5 = 5 says nothing; 5 / 8 = 5/8 says something from the grade on in which a fraction is a quotient."""
    for text in steps:
        if kind_of(text) != "equality":
            continue
        sides = text.split(" = ")
        if len(set(sides)) < len(sides) or (grade < 5 and len({side.replace(" / ", "/") for side in sides}) < len(sides)):
            yield f'"{text}" says nothing'


def _cut(text: str) -> bool:
    """The first digits of a decimal, as they are."""
    first, *others = text.split(" = ")
    exact = read_line(f"{first} = 0").sides[0]
    for other in others:
        found = re.fullmatch(r"(\d+)\.(\d+)\.\.\.(%?)", other)
        scaled = exact * 10 ** len(found[2]) * (100 if found[3] else 1) if found else Rational(0)
        if found is None or floor(scaled) != int(found[1] + found[2]) or scaled.q == 1:
            return False
    return True


def _along(steps: list[str], known: set[Rational]) -> tuple[list[Rational], list[Rational]]:
    """The numbers told for the widest and for the narrowest spaces; none where one of them comes from nowhere."""
    found = {told[1]: told[2] for text in steps if (told := _SAID["along"].fullmatch(text))}
    sides = [[value(one) for one in found.get(side, "").split(", ") if one] for side in ("widest", "narrowest")]
    return (sides[0], sides[1]) if known.issuperset(sides[0] + sides[1]) else ([], [])


def _once(line: dict[str, Any], way: str, told: tuple[int, int], known: set[Rational]) -> Iterator[str]:
    """The points from left to right make the differences that are compared, and one of them alone goes the way that is told."""
    found = _SAID["points"].fullmatch(line["steps"][0])
    values = [int(one) for one in found[1].split(", ")] if found else []
    pairs = list(pairwise(values))
    if len(line["steps"]) != 2 or not known.issuperset(map(Rational, values)):
        yield f"the board does not show the points: {line['steps']}"
    compared = re.fullmatch(r"x = (Max|Min)\((.+)\)", line["relation"])
    if compared is None or sorted(compared[2].split(", ")) != sorted(f"{other} - {one}" for one, other in pairs):
        yield f"{values} do not make what the relation compares"
    elif [pair for pair in pairs if (pair[1] > pair[0]) == (way == "up")] != [told] or (compared[1] == "Max") != (way == "up"):
        yield f"y goes {way} elsewhere than from {told[0]} to {told[1]}"


def _verdict(line: dict[str, Any], known: set[Rational]) -> Iterator[str]:
    """The last line compares what was given or worked out, and says what follows."""
    answer = line["answer"]
    found = _SAID["verdict"].fullmatch(line["steps"][-1]) if line["steps"] else None
    wanted = answer["value"] if answer["kind"] == "name" else {"true": "yes", "false": "no"}[answer["value"]]
    if found is None or found[2] != wanted:
        yield f"the board does not end in a reason for {wanted}"
        return
    told = found[1]
    if re.fullmatch(r"\d+ is (odd|even)", told):
        number, _, word = told.partition(" is ")
        if Rational(number) not in known or (int(number) % 2 == 1) != (word == "odd"):
            yield f'"{told}" is not so'
        return
    if over := re.fullmatch(r"(\d+) (?:is|are) left over|nothing is left over", told):
        if Rational(over[1] or 0) not in known | {Rational(0)} or (over[1] is None) == (" - " in line["steps"][-2]):
            yield f'"{told}" is not so'
        return
    if told in ("the answers vary", "there is only one answer"):
        if (told == "the answers vary") != (wanted == "yes"):
            yield f'"{told}" is not so'
        return
    if varying := re.fullmatch(r"the answers to the (first|second) question vary", told):
        if varying[1] != wanted:
            yield f'"{told}" is not so'
        return
    if told in ("y is greater for wider spaces", "y is less for wider spaces"):
        wider, narrower = _along(line["steps"], known)
        if not wider or len(wider) != len(narrower) or ("greater" in told) != (sum(wider) > sum(narrower)):
            yield f'"{told}" is not so'
        if wanted != ("positive" if "greater" in told else "negative"):
            yield f'"{told}" does not lead to {wanted}'
        if line["relation"] != f"x = Max({' + '.join(map(str, wider))}, {' + '.join(map(str, narrower))})":
            yield f"{wider} and {narrower} are not what the relation compares"
        return
    if once := re.fullmatch(r"y goes (up|down) only from (\d+) to (\d+)", told):
        yield from _once(line, once[1], (int(once[2]), int(once[3])), known)
        return
    pieces = re.split(r" ([<>=]) ", told)
    values = [read_line(f"{piece} = 0").sides[0] for piece in pieces[::2]]
    signs = pieces[1::2]
    if not signs or not all(_holds(one, sign, other) for (one, other), sign in zip(pairwise(values), signs, strict=True)):
        yield f'"{told}" is not so'
    if "*" not in told and not set(values) <= known:
        yield f'"{told}" compares numbers from nowhere'
    if answer["kind"] == "name" and (signs[0] == "=" or len({sign for sign in signs if sign != "="}) > 1):
        yield f'"{told}" does not tell one from the rest'


def _end(line: dict[str, Any]) -> Iterator[str]:
    """The answer as it is to be written; where it is rounded, the two numbers that it lies between come first."""
    answer, steps = line["answer"], line["steps"]
    exact, shown = value(answer["exact"]), answer["accepted"][0]
    if not steps:
        yield "no steps"
        return
    form, _, places = answer["demands"].partition(":")
    if places.isdigit() and form != "ratio":  # "mixed:any" is not rounded
        yield from _rounding(steps, exact, shown, form, int(places))
        return
    if kind_of(steps[-1]) in ROUNDING:
        yield f'"{steps[-1]}", but nothing is to be rounded'
        return
    text = re.split(r" = |, so |: | is ", steps[-1])[-1]
    if text == shown:
        return
    if "..." in text or not NUMBER.fullmatch(text) or value(text) != exact:
        yield f'the steps end in "{steps[-1]}", the exact answer is {answer["exact"]}'
    else:
        yield f'the steps end in "{text}", the answer is written {shown}'


def _rounding(steps: list[str], exact: Rational, shown: str, form: str, places: int) -> Iterator[str]:
    last = steps[-2:] if kind_of(steps[-1]) in ("nearer", "up") else steps[-1:]
    kinds = [kind_of(text) for text in last]
    percent = form == "percent"
    digits = -(len(str(places)) - 1) if form == "whole" else places
    scaled = exact * 100 if percent else exact
    unit = Rational(10) ** -digits
    low = floor(scaled / unit) * unit
    tie = is_tie(scaled, digits)
    wanted = ["stays"] if low == scaled else ["halfway", "up"] if tie else ["between", "nearer"]
    if kinds != wanted:
        yield f'the steps end in "{last[-1]}", wanted: {" and ".join(wanted)}'
        return
    numbers = [_SAID[kind].fullmatch(text).groups() for kind, text in zip(kinds, last, strict=True)]  # type: ignore[union-attr]
    if len(last) == 2 and [value(one.rstrip("%")) for one in numbers[0][1:]] != [low, low + unit]:
        yield f'"{last[0]}" is not so'
    if value(numbers[-1][-1].rstrip("%")) != rounded_half_up(scaled, digits) or numbers[-1][-1] != shown:
        yield f'"{last[-1]}" is not the rounding'
    for told in {found[0] for kind, found in zip(kinds, numbers, strict=True) if kind != "up"}:
        plain = told.rstrip("%")
        right = floor(scaled * 10 ** len(plain.rstrip(".").partition(".")[2])) if plain.endswith("...") else None
        if (right != int(plain[:-3].replace(".", ""))) if right is not None else (value(plain) != scaled):
            yield f'"{told}" is not what is to be rounded'
