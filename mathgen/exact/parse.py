"""Text to number: the only place where a written number becomes a ``Rational``."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache
from math import gcd
from typing import Literal, NamedTuple

from sympy import Rational

from mathgen.exact.number_words import read_cardinal, read_part_name

WrittenForm = Literal["whole", "fraction", "mixed", "decimal", "repeating", "percent", "ratio", "money", "comma"]

LONGEST = 4000  # characters; beyond some 4300 digits Python itself refuses to read a number


class NotANumber(ValueError):
    """The text is not a number in any school form; the message says why."""


class Written(NamedTuple):
    """A number as it was written.

    ``places`` counts the digits after the point (of a percent: those before its sign) and is None where the writing has no
    places, as a fraction has none. ``lowest`` is False for a fraction, the fraction of a mixed number or percent, or a ratio
    that could be written with smaller numbers (``6/8``, ``2 5/4``, ``4/1``). ``proper`` is False for a mixed number whose fraction
    is none of one whole (``2 5/4``, ``2 0/4``). ``form`` is "comma" for a decimal comma.
    """

    value: Rational
    form: WrittenForm
    text: str
    places: int | None
    lowest: bool
    proper: bool = True


_SIGNS = str.maketrans(
    {
        **dict.fromkeys("−–—‒‐‑﹣", "-"),
        **dict.fromkeys("⁄∕", "/"),
        **dict.fromkeys("٪﹪", "%"),
        **dict.fromkeys("∶﹕", ":"),
        **dict.fromkeys("\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000", " "),
        **dict.fromkeys("\t\n\x0b\x0c\r\x1c\x1d\x1e\x1f\x85\u1680\u2028\u2029", " "),
        **dict.fromkeys("\u200b\u2060\ufeff", ""),
        "\u0304": "\u0305",  # a macron over a digit is meant as the bar of a repeating decimal
        "…": "...",
        "‚": ",",
        "﹩": "$",
    }
)


def tidy(text: str) -> str:
    """The same text in plain signs: typographer's minus, slash, percent, spaces, full-width and one-character fractions undone.

    >>> tidy(" 1½ "), tidy("³⁄₄"), tidy("−3 ٪")
    ('1 1/2', '3/4', '-3 %')
    """
    text = text.strip()
    if text.isascii() and text.isprintable():
        return text
    out: list[str] = []
    raised_before = False
    for sign in text:
        kind, _, codes = unicodedata.decomposition(sign).partition(" ")
        raised = kind == "<super>" and (sign in "¹²³" or "⁰" <= sign <= "⁹")
        if kind == "<fraction>":
            out.append(" " + "".join(chr(int(code, 16)) for code in codes.split()) + " ")
        elif raised or kind in ("<sub>", "<wide>"):
            # "1³/₄" is one and three fourths, never thirteen fourths.
            out.append((" " if raised and not raised_before else "") + "".join(chr(int(code, 16)) for code in codes.split()))
        else:
            out.append(sign)
        raised_before = raised
    return re.sub(" {2,}", " ", "".join(out).translate(_SIGNS)).strip()


_WHOLE = r"(?:[1-9][0-9]{0,2}(?:,[0-9]{3})+|[0-9]+)"
_PERCENT = r"(?:%|percent|per\ cent|pct\.?)"

_PLAIN = re.compile(
    rf"""([-+]?)\ *(\$?)\ *([-+]?)(?:
        ({_WHOLE})\.?                                                        # 12
      | ({_WHOLE})?\.([0-9]+)\.?                                             # 0.75, and .75
      | (?:({_WHOLE})(?:\ +and\ +|\ *&\ *|\ +|-))?({_WHOLE})\ */\ *({_WHOLE})  # 3/4, and 1 1/2
    )(?:\ *({_PERCENT}|¢|cents?|dollars?))?\.?""",
    re.VERBOSE,
)
_PAIR = re.compile(
    rf"([-+]?) *({_WHOLE}|[0-9]*\.[0-9]+)(?: *(:) *| +(to) +| +(?:(?:out +)?of|in) +(?:the +)?)({_WHOLE}|[0-9]*\.[0-9]+)\.?",
)
_COMMA = re.compile(rf"([-+]?)\ *([0-9]+),([0-9]+)(?:\ *({_PERCENT}))?\.?", re.VERBOSE)
_REPEATING = re.compile(
    rf"""([-+]?)\ *([0-9]*)\.(?:
        ([0-9]*)(?:\(([0-9]+)\)|((?:[0-9]\u0305)+))                          # 0.41(6), and 0.416 with a bar over the 6
      | ([0-9]+)\ *(?:\.\.+(?:\ *\(?(?:repeating|repeats)\)?)?|\(?(?:repeating|recurring|repeats|bar)\)?)  # 0.416..., 0.3 bar
    )(?:\ *({_PERCENT}))?""",
    re.VERBOSE,
)


_SAID_BELOW_ZERO = re.compile(r"^(?:(?:negative|minus) ([0-9.$].*)|\( ?- ?([0-9./ ]+)\))$")  # "negative 3", and (-3)


def _over(top: int, bottom: int, text: str) -> Rational:
    if bottom == 0:
        raise NotANumber(f'"{text}" divides by zero, so it has no value')
    return Rational(top, bottom)


def _digits(text: str) -> int:
    return int(text.replace(",", ""))


def _plain(match: re.Match[str], text: str) -> Written:
    sign, dollar, inner, whole, before, after, wholes, top, bottom, suffix = match.groups()
    if sign and inner:
        raise NotANumber(f'"{text}" has two signs')
    lowest, proper, places = True, True, None
    form: WrittenForm
    if whole is not None:
        form, value, places = "whole", Rational(_digits(whole)), 0
    elif after is not None:
        places = len(after)
        form, value = "decimal", Rational(_digits((before or "") + after), 10**places)
    else:
        numerator, denominator = _digits(top), _digits(bottom)
        value = _over(numerator, denominator, text)
        lowest = denominator > 1 and gcd(numerator, denominator) == 1
        form = "fraction"
        if wholes is not None:
            form, proper = "mixed", 0 < numerator < denominator
            lowest = lowest and proper
            value += _digits(wholes)
    if sign == "-" or inner == "-":
        value = -value
    if suffix is None and not dollar:
        return Written(value, form, text, places, lowest, proper)
    if suffix is not None and suffix[0] in "%p":
        if dollar:
            raise NotANumber(f'"{text}" is both money and a percent')
        return Written(value / 100, "percent", text, places, lowest)
    cents = suffix is not None and suffix[0] in "¢c"
    if top is not None or (dollar and cents):
        raise NotANumber(f'"{text}" is not an amount of money; write it like $1.25 or 25¢')
    return Written(value / 100, "money", text, None, True) if cents else Written(value, "money", text, places, True)


def _pair(match: re.Match[str], text: str) -> Written:
    sign, first, colon, to, second = match.groups()
    left, right = Rational(first.replace(",", "")), Rational(second.replace(",", ""))
    if right == 0:
        raise NotANumber(f'"{text}" has a zero in second place, so it has no value')
    whole = "." not in first + second
    value = left / right
    lowest = whole and gcd(int(left), int(right)) == 1
    if colon or to:
        return Written(-value if sign == "-" else value, "ratio", text, None, lowest)
    if not whole:
        raise NotANumber(f'"{text}" is not a number out of a whole number')
    return Written(-value if sign == "-" else value, "fraction", text, None, lowest and right > 1)


def _comma(match: re.Match[str], text: str) -> Written:
    sign, before, after, percent = match.groups()
    value = Rational(int(before + after), 10 ** len(after))
    if sign == "-":
        value = -value
    return Written(value / 100 if percent else value, "comma", text, len(after), True)


def repeating_block(digits: str) -> tuple[str, str] | None:
    """Digits after the point, written out and then broken off, as the part before the repeating block and the block.

    The block must stand there twice at the end, or be the only digit. Of several, the shortest account of all the digits is
    meant. None where it can't be told: ``0.16...`` may be 1/6 or 16/99.

    >>> repeating_block("41666"), repeating_block("122122"), repeating_block("3"), repeating_block("16")
    (('41', '6'), ('', '122'), ('', '3'), None)
    """
    if len(digits) == 1:
        return "", digits
    best: tuple[int, int] | None = None
    for size in range(1, len(digits) // 2 + 1):
        start = len(digits) - size
        while start > 0 and digits[start - 1] == digits[start - 1 + size]:
            start -= 1
        if start + 2 * size <= len(digits) and (best is None or start + size < best[0] + best[1]):
            best = start, size
    return None if best is None else (digits[: best[0]], digits[best[0] : best[0] + best[1]])


def _repeating(match: re.Match[str], text: str) -> Written:
    sign, whole, before, bracketed, barred, broken_off, percent = match.groups()
    if broken_off is not None:
        found = repeating_block(broken_off)
        if found is None:
            raise NotANumber(f'"{text}": can\'t tell which digits repeat; write them twice, as in 0.1666...')
        before, block = found
    else:
        block = bracketed or barred.replace("\u0305", "")
    lead = int((whole or "0") + before)
    value = Rational(int((whole or "0") + before + block) - lead, 10 ** len(before) * (10 ** len(block) - 1))
    if sign == "-":
        value = -value
    return Written(value / 100, "percent", text, None, True) if percent else Written(value, "repeating", text, None, True)


def _count(words: tuple[str, ...]) -> int | None:
    """A whole number in words, or one in digits among words: the 3 of "3 fourths" and of "3 out of four"."""
    if len(words) == 1 and re.fullmatch("[0-9]{1,12}", words[0]):
        return int(words[0])
    return read_cardinal(words)


def _fraction_in_words(words: tuple[str, ...], text: str) -> tuple[int, int] | None:
    if "over" in words:
        cut = words.index("over")
        top, bottom = _count(words[:cut]), _count(words[cut + 1 :])
        return None if top is None or bottom is None else (top, bottom)
    if words == ("half",):
        return 1, 2
    if words[:1] == ("a",) or words[:1] == ("an",):
        words = ("one", *words[1:])
    # The longest count that leaves the name of a part: "twenty one hundredths" is 21/100.
    for cut in range(len(words) - 1, 0, -1):
        top, bottom = _count(words[:cut]), read_part_name(words[cut:])
        if top is not None and bottom is not None:
            return top, bottom
    return None


def _in_words(plain: str, text: str) -> Written | None:
    words = tuple(plain.replace("-", " ").replace(",", " ").rstrip(".").split())
    minus = words[:1] in (("negative",), ("minus",))
    words = words[1:] if minus else words
    percent = words[-1:] == ("percent",)
    words = words[:-1] if percent else words
    form: WrittenForm
    lowest, proper, places = True, True, None
    count = read_cardinal(words)
    if count is not None:
        form, value, places = "whole", Rational(count), 0
    elif "point" in words:
        cut = words.index("point")
        before, after = read_cardinal(words[:cut]), [read_cardinal((word,)) for word in words[cut + 1 :]]
        if before is None or not after or any(digit is None or digit > 9 for digit in after):
            return None
        places = len(after)
        form, value = "decimal", Rational(int(str(before) + "".join(map(str, after))), 10**places)
    elif "to" in words or "of" in words:
        cut = words.index("to") if "to" in words else words.index("of")
        ahead = words[:cut][:-1] if words[cut] == "of" and words[cut - 1 : cut] == ("out",) else words[:cut]
        left, right = _count(ahead), _count(words[cut + 1 :])
        if left is None or right is None:
            return None
        form, value, lowest = ("ratio" if words[cut] == "to" else "fraction"), _over(left, right, text), gcd(left, right) == 1
        lowest = lowest and (form == "ratio" or right > 1)
    else:
        wholes: int | None = 0
        if "and" in words:
            cut = words.index("and")
            wholes, words = _count(words[:cut]), words[cut + 1 :]
            form = "mixed"
        else:
            form = "fraction"
        pair = _fraction_in_words(words, text)
        if pair is None or wholes is None:
            return None
        value = _over(*pair, text) + wholes
        proper = form == "fraction" or 0 < pair[0] < pair[1]
        lowest = pair[1] > 1 and gcd(*pair) == 1 and proper
    value = -value if minus else value
    return Written(value / 100, "percent", text, places, lowest) if percent else Written(value, form, text, places, lowest, proper)


@lru_cache(maxsize=65536)
def written(text: str) -> Written:
    """The number that the text says, and how it is written.

    Reads whole numbers (``12``, ``1,234``), fractions (``3/4``, ``¾``, ``3 out of 4``, ``3 in 4``, ``three fourths``, ``3 fourths``),
    mixed numbers (``1 1/2``, ``1-1/2``, ``1 and 1/2``, ``1½``), decimals (``0.75``, ``.75``), repeating decimals (``0.41666...``,
    ``0.41(6)``, ``0.3 repeating``, ``0.3 bar``, a bar over digits), percents (``75%``, ``37 1/2%``, ``62.5 percent``), ratios (``3:4``,
    ``3 to 4``), money (``$1.25``, ``25¢``), a decimal comma (``0,75``), and numbers in words. No units: ``judge`` takes
    those off.

    Raises:
        NotANumber: the text is empty, divides by zero, is no number, or could be more than one.

    >>> written("6/8")
    Written(value=3/4, form='fraction', text='6/8', places=None, lowest=False, proper=True)
    >>> written("37 1/2%").value, written("1,234").value, written("0,75").form
    (3/8, 1234, 'comma')
    """
    plain = _SAID_BELOW_ZERO.sub(r"-\1\2", tidy(text).lower())
    if not plain:
        raise NotANumber("there is nothing written")
    if len(plain) > LONGEST:
        raise NotANumber(f"a text of {len(plain)} characters is too long for a number")
    if match := _PLAIN.fullmatch(plain):
        return _plain(match, text)
    if match := _PAIR.fullmatch(plain):
        return _pair(match, text)
    if match := _REPEATING.fullmatch(plain):
        return _repeating(match, text)
    if match := _COMMA.fullmatch(plain):
        return _comma(match, text)
    if (said := _in_words(plain, text)) is not None:
        return said
    shown = text if len(text) <= 60 else text[:57] + "..."
    raise NotANumber(f'"{shown}" is not a number; write it like 12, 3/4, 1 1/2, 0.75, 75% or 3:4')
