"""Typed expressions in one way of writing: (2 + 11) x 4, 4(11+2) and 4 × (2+11) are one; 2 × 4 + 11 × 4 is another."""

from __future__ import annotations

import re

_TOKEN = re.compile(r"\d+|[a-z]|[-+*()]")
_TIMES = "\N{MULTIPLICATION SIGN}"


def one_way(text: str) -> str | None:
    """The expression with every sign of multiplication written, and its terms and factors in order; None where it is none.

    Args:
        text: in plain signs; blanks do not matter, and x is read as a sign of multiplication.

    >>> one_way("4(11 + 2)") == one_way("(2+11) x 4"), one_way("4x7+4n"), one_way("4 +")
    (True, '4*7+4*n', None)
    """
    plain = re.sub(r"\s", "", text).lower().replace(_TIMES, "*").replace("x", "*")
    tokens = _TOKEN.findall(plain)
    if "".join(tokens) != plain or not tokens:
        return None
    try:
        return _Parser(tokens).whole()
    except IndexError:
        return None


class _Parser:
    """Reads left to right; IndexError where something is missing or stands in a wrong place."""

    def __init__(self, tokens: list[str]) -> None:
        self._tokens = [*tokens, "end"]

    def whole(self) -> str:
        terms = self._terms()
        if self._tokens != ["end"]:
            raise IndexError
        return "+".join(terms)

    def _terms(self) -> list[str]:
        sign = self._tokens.pop(0) if self._tokens[0] == "-" else ""
        terms = [sign + self._product()]
        while self._tokens[0] in ("+", "-"):
            sign = self._tokens.pop(0).strip("+")
            terms.append(sign + self._product())
        return sorted(terms)

    def _product(self) -> str:
        factors = [self._factor()]
        while self._tokens[0] not in ("+", "-", ")", "end"):
            if self._tokens[0] == "*":
                self._tokens.pop(0)
            factors.append(self._factor())
        return "*".join(sorted(factors))

    def _factor(self) -> str:
        token = self._tokens.pop(0)
        if token == "(":
            terms = self._terms()
            if self._tokens.pop(0) != ")":
                raise IndexError
            return terms[0] if len(terms) == 1 else f"({'+'.join(terms)})"
        if token == "end" or not token.isalnum():
            raise IndexError
        return str(int(token)) if token.isdigit() else token
