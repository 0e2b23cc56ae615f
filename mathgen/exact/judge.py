"""A pupil's written answer against the key: is it right, and is it in the form that the words demand?"""

from __future__ import annotations

import re
import unicodedata
from difflib import SequenceMatcher
from functools import lru_cache
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.exact.demand import Demand, parse_demand
from mathgen.exact.forms import decimal_places
from mathgen.exact.parse import NotANumber, Written, tidy, written
from mathgen.exact.rounding import rounded
from mathgen.exact.written_expression import one_way

Verdict = Literal["right", "right_value_wrong_form", "wrong", "unreadable"]
RIGHT: Verdict = "right"
FORM: Verdict = "right_value_wrong_form"
WRONG: Verdict = "wrong"
UNREADABLE: Verdict = "unreadable"

# The closed list: singular nouns that an answer may carry when the key's own answer names no unit.
COUNTED = (
    *("group", "time", "point", "number", "dot", "cross", "space", "picture", "part"),
    *("box", "bag", "result", "pair", "row", "outcome", "card", "way", "success"),
)
"""What is counted in every activity, beside its own things and trials."""
UNITS = ("pin", "trial", *COUNTED)
# Units that count only where the key's own answer names them.
_NAMED_ONLY = {
    "inches": "inch",
    "inch": "inch",
    "in": "inch",
    "in.": "inch",
    '"': "inch",
    **dict.fromkeys(("feet", "foot", "ft", "ft.", "'"), "foot"),
}
_COLORS = "red|blue|gold|green|yellow|orange|purple|violet|black|white|pink|brown|tan|teal|silver|gray|grey"
_FATE = "knocked down|left standing|set up|standing|down|as many|in all|in total|altogether"
_BARE = ("whole", "fraction", "mixed", "decimal", "repeating", "comma")


class _Read(NamedTuple):
    number: Written
    unit: str  # singular noun of the closed list, "money", another unit as typed, or ""
    known: bool  # whether the unit is on the list
    about: bool = False  # whether it is written as an estimate


@lru_cache(maxsize=64)
def _unit_pattern(units: tuple[str, ...]) -> re.Pattern[str]:
    nouns = "|".join(re.escape(unit) for unit in units)
    return re.compile(
        rf"(?P<number>.*?)\s*(?<=[\s0-9%)\u0305])(?:of\s+)?(?:the\s+)?(?:(?:more|fewer)\s+)?(?:(?:{_COLORS}|ordered|color)\s+)?"
        rf"(?:(?P<noun>{nouns})(?:es|s)?(?:\s+(?:per|a|(?:for\s+|in\s+)?each)\s+(?:{nouns}))?(?:\s+(?:were\s+|was\s+)?(?:{_FATE}))?|(?P<inch>inches|inch|in\.?)|more|fewer|(?:were\s+|was\s+)?(?:{_FATE}))",
        re.IGNORECASE | re.DOTALL,
    )


_ABOUT = re.compile(r"(?:(?:about|around|roughly|approximately|approx\.)\s+|[~≈]\s*)(.+)", re.IGNORECASE | re.DOTALL)
_NUMBER_THEN_WORDS = re.compile(r"(.*[0-9%)\u0305])\s*([^\W\d_][^\d]*|[\"'′″°])", re.DOTALL)


def _read(typed: str, units: tuple[str, ...]) -> _Read:
    """The number and the unit in a typed answer; NotANumber where there is no number."""
    plain = re.sub(r"^(?:[a-z]\s*)?=\s*", "", tidy(typed), flags=re.IGNORECASE).rstrip()
    if (estimate := _ABOUT.fullmatch(plain)) is not None:
        return _read_plain(estimate[1], units)._replace(about=True)
    return _read_plain(plain, units)


def _read_plain(plain: str, units: tuple[str, ...]) -> _Read:
    try:
        number = written(plain)
    except NotANumber as first:
        end = plain.rstrip(".!")
        match = _unit_pattern(units).fullmatch(end)
        if match is not None and match["number"]:
            try:
                noun = match["noun"]
                return _Read(written(match["number"]), "inch" if match["inch"] else (noun or "").lower(), match["inch"] is None)
            except NotANumber:
                pass  # what stands before the unit is no number by itself; see whether something else does
        other = _NUMBER_THEN_WORDS.fullmatch(plain)
        if other is None:
            raise
        try:
            number = written(other[1])
        except NotANumber:
            raise first from None
        word = other[2].strip().lower()
        if word in ("bar", "repeating", "repeats", "recurring"):
            raise first from None  # 0.16 repeating: nobody can tell which digits
        return _Read(number, _NAMED_ONLY.get(word, word), False)
    return _Read(number, "money" if number.form == "money" else "", True)


_AROUND = " .!\"'“”"


def _whole_name(text: str) -> str:
    plain = " ".join(unicodedata.normalize("NFC", text).casefold().strip(_AROUND).split())
    plain = re.sub(r"^(?:the|an?) ", "", plain)  # "a marker" names a thing that is sold
    return plain.removeprefix("group ") if plain.removeprefix("group ").isdigit() else plain


_COLOR = re.compile("[a-z]+(?:[ -][a-z]+)*")  # as keys write colors: in small letters


def _judge_name(expected: str, typed: str, thing: str) -> tuple[Verdict, str]:
    """A name; a trial by its number, too; a color with or without what has it: "the gold pins", "a gold pin"."""
    name = _whole_name(typed)
    if not name:
        return UNREADABLE, "there is nothing written"
    key = _whole_name(expected)
    if key == f"trial {typed.strip(_AROUND)}":
        return RIGHT, "the same name"
    if _COLOR.fullmatch(expected):
        name = re.sub(rf"^(?:an? )?(.+) {re.escape(thing.casefold())}s?$", r"\1", name)
    several = [sorted(_whole_name(part) for part in re.split(r",\s*(?:and\s+)?|\s+and\s+|\s*&\s*", text)) for text in (key, name)]
    if name == key or several[0] == several[1]:
        return RIGHT, "the same name"
    # What is said may be passed on to a pupil, so it never holds the answer.
    close = len(name) > 3 and 5 * SequenceMatcher(None, key, name).ratio() > 4
    return WRONG, "a name much like the answer; check the spelling" if close else "another name"


def _judge_expression(expected: str, typed: str) -> tuple[Verdict, str]:
    """One of the expressions that the question shows: blanks, signs, and the order of terms and factors do not matter."""
    key, said = (tidy(text).casefold().strip(" .") for text in (expected, typed))
    if not said:
        return UNREADABLE, "there is nothing written"
    said = said.replace("is greater than", ">").replace("is less than", "<")
    turned = re.fullmatch(r"(.+)<(.+)", said)
    said = f"{turned[2]}>{turned[1]}" if turned else said  # 8 < n is n > 8
    same = [one_way(side) for side in said.split(">")] == [one_way(side) for side in key.split(">")]
    return (RIGHT, "the same expression") if same else (WRONG, "another expression")


_TRUTH = {"yes": "true", "y": "true", "true": "true", "t": "true", "no": "false", "n": "false", "false": "false", "f": "false"}


def _judge_truth(expected: str, typed: str) -> tuple[Verdict, str]:
    said = _TRUTH.get(_whole_name(typed))
    if said is None:
        return UNREADABLE, "neither yes nor no"
    return (RIGHT, "the same answer") if said == _TRUTH.get(_whole_name(expected)) else (WRONG, "the other answer")


def _judge_rubric(expected: str, typed: str) -> tuple[Verdict, str]:
    """A verdict with its reason: "No, because 7/12 is less than 2/3". The verdict is judged; what is said for it, a person has to read."""
    verdict, _, reason = tidy(typed).partition(" ")
    said, key = (_TRUTH.get(_whole_name(text.strip(",.;:!"))) for text in (verdict, expected))
    if said is None:
        return UNREADABLE, "neither yes nor no"
    if said != key:
        return WRONG, "the other verdict"
    return FORM, "the right verdict; its reason is to be read" if reason.strip(" ,.;:") else "the right verdict, without a reason"


_TERM = "([0-9]+(?:/[0-9]+)?)"
_OF_PAIRS = " *(?:[*x×+]|and|by|times|to) *"
_OF_MORE = " *(?:[+&]|,? *and|,) *"  # "8/12, 5/12, and 6/12" is one sum of three
_BETWEEN = re.compile(r"(?:[ ,;.()]|and )*")
_CHANGE = re.compile(" *(?:-+>|=>|\N{RIGHTWARDS ARROW}|becomes|changed? to|changes to) *")
_WHOSE = re.compile("trial [0-9]+ *:? +(?:from +)?(?=[0-9]+ +to)")  # "Trial 1: 6 to 8"


@lru_cache(maxsize=8)
def _group(size: int, in_order: bool) -> re.Pattern[str]:
    return re.compile((" +to +" if in_order else _OF_PAIRS if size == 2 else _OF_MORE).join([_TERM] * size))


def _groups(text: str, size: int, in_order: bool) -> set[tuple[str, ...]] | None:
    """The pairs of a list, or its sums of three; None where something else stands there. A pair with nothing is left out.

    Args:
        text: "1 x 12, 2 x 6".
        size: how many numbers stand together.
        in_order: whether which comes first says something: a change goes one way.
    """
    tidied = tidy(text).lower()
    if in_order:
        tidied = _WHOSE.sub("", _CHANGE.sub(" to ", tidied))
    if _BETWEEN.fullmatch(_group(size, in_order).sub("", tidied)) is None:
        return None
    found = [match.groups() for match in _group(size, in_order).finditer(tidied)]
    if in_order:
        return set(found)
    return {tuple(sorted(one)) for one in found if "0" not in [term.partition("/")[0] for term in one]}


def _values(groups: set[tuple[str, ...]]) -> list[list[Rational]]:
    pairs = [[term.split("/") for term in one] for one in groups]
    return sorted(sorted(Rational(*map(int, pair)) for pair in one) for one in pairs)


def _judge_list(expected: str, typed: str) -> tuple[Verdict, str]:
    """Pairs or sums in any order: "1 x 12, 2 x 6, 3 x 4", "2/8 + 3/8 and 4/8 + 1/8". Changes go one way: "6 to 8", "6 -> 8"."""
    size, changes = expected.partition(",")[0].count(" ") // 2 + 1, " to " in expected
    key, said = (_groups(text, size, changes) for text in (expected, typed))
    if not said or any(term.endswith("/0") for one in said for term in one):
        return UNREADABLE, "no list of pairs" if size == 2 else f"no list of sums of {size} numbers"
    assert key is not None  # keys are written "1 * 12, 2 * 6"
    if said == key:
        named = changes and "trial" in typed.casefold()
        return (FORM, "the same list; the trials that are named are to be read") if named else (RIGHT, "the same list")
    if _values(said) == _values(key) and not changes:
        return FORM, "the same list, its fractions written in another way"
    missing = len(key - said)
    return WRONG, "something that is none of them" if said - key else f"{missing} {'is' if missing == 1 else 'are'} missing"


_REMAINDER = re.compile(r"([0-9]+)(?:\s*[a-z]+)*\s*(?:,|\br|[a-z]|\s)\s*(?:[a-z]+\s*)*([0-9]+)(?:\s*[a-z]+)*", re.IGNORECASE)


def _judge_remainder(expected: str, typed: str) -> tuple[Verdict, str]:
    """Two whole numbers in their order: "7 r 1", "7 R1", "7 remainder 1", "7 boxes and 1 pin"."""
    key, said = (_REMAINDER.fullmatch(tidy(text).strip(" .!")) for text in (expected, typed))
    if said is None:
        return UNREADABLE, "not a quotient and a remainder"
    assert key is not None  # keys are written "7 r 1"
    numbers, right = [int(one) for one in said.groups()], [int(one) for one in key.groups()]
    if numbers == right:
        return RIGHT, "the same quotient and remainder"
    return WRONG, "the order is reversed" if numbers == right[::-1] else "another quotient or remainder"


class _Reading(NamedTuple):
    """One way to take a typed number, counted in the demanded unit (percents for percent:N)."""

    value: Rational
    places: int | None
    own_form: bool


def _readings(demand: Demand, number: Written, unit: str) -> list[_Reading]:
    plain = number.form in ("decimal", "whole", "money")
    value, places = number.value, number.places
    if demand.form == "decimal":
        if number.form == "percent" and places is not None:
            places += 2
        return [_Reading(value, places, plain)]
    if number.form == "percent":
        return [_Reading(value * 100, places, True)]
    as_decimal = _Reading(value * 100, None if places is None else places - 2, False)
    # Without a sign "66.7" is taken as 66.7%, since a percent is asked for; with a unit it is a count.
    return [_Reading(value, places, plain), as_decimal] if number.form in _BARE and not unit else [as_decimal]


def _judge_reading(size: Rational, places: int, reading: _Reading) -> tuple[Verdict, str]:
    target = rounded(size, places)
    value = reading.value
    if reading.own_form and reading.places is not None:
        own = decimal_places(size)
        if value == target and reading.places == places:
            return RIGHT, "rounded as asked"
        if own is not None and own < places and value == size and reading.places == own:
            return RIGHT, "exact, and shorter than the place asked for"
    if value == size:
        return FORM, "the exact value, not written as the question asks"
    if value == target:
        return FORM, f"the right value, not written with {places} places" if reading.own_form else "the right value in another form"
    if reading.places is not None and reading.places > places and value == rounded(size, reading.places):
        return FORM, "rounded correctly, but to more places than asked"
    if reading.places is not None and 0 <= reading.places < places and value == rounded(size, reading.places):
        return WRONG, "rounded to fewer places than asked"
    if value == rounded(rounded(size, places + 1), places):
        return WRONG, "rounded twice; check your rounding"
    if reading.places is not None and reading.places > places and rounded(value, places) == target:
        return WRONG, "not rounded as asked"
    return WRONG, "another value"


def _judge_rounded(exact: Rational, demand: Demand, number: Written, unit: str) -> tuple[Verdict, str]:
    size = exact * 100 if demand.form == "percent" else exact
    order = (RIGHT, FORM, WRONG)
    found = [_judge_reading(size, demand.places or 0, reading) for reading in _readings(demand, number, unit)]
    # A reading as a percent comes first and keeps its place among equals.
    return min(found, key=lambda verdict: order.index(verdict[0]))


def _judge_whole(exact: Rational, places: int, number: Written) -> tuple[Verdict, str]:
    """A whole number that is to be rounded to tens, hundreds ... A number that is left as it was is not rounded."""
    value = number.value
    if value == rounded(exact, places):
        whole = number.form == "whole" or (number.form == "money" and number.places == 0)
        return (RIGHT, "rounded as asked") if whole else (FORM, "the right value, not written as a whole number")
    if value == exact:
        return WRONG, "not rounded"
    if value in [rounded(exact, place) for place in range(-5, 0)]:
        return WRONG, "rounded to another place"
    return WRONG, "another value"


def _form_fault(demand: Demand, exact: Rational, key: Written, number: Written) -> str:
    """What is wrong with the form of an equal number; "" if nothing."""
    form, lowest = number.form, number.lowest
    if form == "comma":
        return "a decimal comma; here a point is written"
    if form == "ratio" and demand.form not in ("ratio", "ratio:any") and key.form != "ratio":
        return "a ratio, where a number is asked for"
    decimal_like = form in ("decimal", "repeating") or (form == "money" and number.places is not None)
    whole = exact.denominator == 1
    match demand.form:
        case "simplest" | "mixed" | "mixed:any":
            if whole:
                return "" if form in ("whole", "money") and number.places == 0 else "a whole number is written as such"
            if form not in ("fraction", "mixed"):
                return "another form than a fraction or mixed number"
            if not lowest and demand.form != "mixed:any":
                return "not in lowest terms"
            if not number.proper:
                return "a mixed number with another whole in its fraction"
            return "an improper fraction, not a mixed number" if demand.form != "simplest" and form == "fraction" and abs(exact) > 1 else ""
        case "fraction":
            return "" if form in ("fraction", "mixed") or (whole and form == "whole") else "not a fraction"
        case "decimal":
            return "" if decimal_like or (whole and form == "whole") else "not a decimal"
        case "percent":
            return "" if form == "percent" else "not a percent"
        case "ratio" | "ratio:any":
            if form not in ("ratio", "fraction"):
                return "not a ratio"
            scaled = not lowest and not (form == "fraction" and _denominator_one(number))
            return "a scaled copy, not in lowest terms" if scaled and demand.form == "ratio" else ""
        case "whole":
            return "" if form == "whole" or (form == "money" and number.places == 0) else "not written as a whole number"
    return ""


def _denominator_one(number: Written) -> bool:
    """Whether a fraction is written over 1: as a ratio, 3/1 is in lowest terms."""
    return tidy(number.text).replace(" ", "").endswith(("/1", "of1"))


def _judge_number(key: Written, demand: Demand, number: Written, unit: str) -> tuple[Verdict, str]:
    exact = key.value
    if demand.form == "whole" and demand.places is not None:
        return _judge_whole(exact, demand.places, number)
    if demand.places is not None:
        verdict, why = _judge_rounded(exact, demand, number, unit)
        return (FORM, "a decimal comma; here a point is written") if verdict == RIGHT and number.form == "comma" else (verdict, why)
    if demand.form == "percent" and number.form in _BARE and not unit and number.value == exact * 100:
        return (FORM, "a decimal comma; here a point is written") if number.form == "comma" else (RIGHT, "the percent, its sign left out")
    if number.value != exact:
        if demand.form in ("ratio", "ratio:any") and exact != 0 and number.value == 1 / exact:
            return WRONG, "the order of the ratio is reversed"
        if number.value == -exact:
            return WRONG, "the other sign"
        if number.form in _BARE and number.value == exact * 100:
            if key.form == "money":
                return WRONG, "that is cents; the question asks for dollars"
            return WRONG, "100 times the answer; a percent is written with its sign"
        return WRONG, "another value"
    fault = _form_fault(demand, exact, key, number)
    return (FORM, fault) if fault else (RIGHT, "equal, in a form that is right here")


def judge(expected: str, demand: str, typed: str, units: tuple[str, ...] = UNITS) -> tuple[Verdict, str]:
    """The verdict on a typed answer, and why.

    Args:
        expected: the exact answer in any school form, unrounded even where the demand rounds; or a name. Where the question asks
            for an estimate, "about 108" lets a pupil write so, too.
        demand: as ``parse_demand`` reads it.
        typed: what the pupil wrote.
        units: singular nouns that an answer may carry, the activity's own thing first: it may stand beside a color. Where
            ``expected`` has a unit of its own, only that one is right.
    Returns:
        ``right``, ``right_value_wrong_form``, ``wrong`` or ``unreadable``, and one line for the teacher.
    Raises:
        NotANumber: ``expected`` is not a number, and no name is demanded.
        ValueError: there is no such demand.

    >>> judge("3/4", "simplest", "6/8")
    ('right_value_wrong_form', 'not in lowest terms')
    """
    asked = parse_demand(demand)
    if asked.form == "expression":
        return _judge_expression(expected, typed)
    if asked.form == "name":
        return _judge_name(expected, typed, units[0])
    if asked.form == "quotient_remainder":
        return _judge_remainder(expected, typed)
    if asked.form == "list":
        return _judge_list(expected, typed)
    if asked.form == "truth":
        return _judge_truth(expected, typed)
    if asked.form == "rubric":
        return _judge_rubric(expected, typed)
    key = _read(expected, units)
    try:
        read = _read(typed, units)
    except NotANumber as fault:
        return UNREADABLE, str(fault)
    if read.unit == "money" and asked.form == "whole" and "cent" in units and not key.unit:
        # Cents are asked for: "60¢" and "60 cents" are 60; "$0.60" is as much, in another form.
        cents = read.number._replace(value=100 * read.number.value, form="whole" if read.number.places is None else "money")
        read = _Read(cents, "", True)
    if read.unit:
        money_for_count = read.unit == "money" and asked.form == "whole"
        fits = read.unit == key.unit if key.unit else read.known and not money_for_count
        if not fits:
            return WRONG, f'"{read.unit}" is not the unit of this answer'
    if key.unit and key.unit != "money" and read.number.form == "percent":
        return WRONG, "a percent; the question asks for a number of things"
    verdict, why = _judge_number(key.number, asked, read.number, read.unit)
    if verdict == RIGHT and read.about and not (key.about or asked.places is not None):
        return FORM, 'the right value; "about" is for an estimate'
    return verdict, why
