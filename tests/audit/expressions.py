"""Which of three printed expressions fits the story: each written out as a polynomial of the letter, and held against the rows."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Expr, Integer, Symbol, expand, sympify

from tests.audit.results import Reach
from tests.audit.wording import Texts

N = Symbol("n")
_SHOWN = re.compile(r"(?:\b(?:expressions|inequalities) |Look at (?=[(\d]))(.+?), (.+?), and (.+?)(?: fits this (?:story|goal))?\.")
_BRACKET = re.compile(r"\b(\d+)\((\d+) \+ n\)")


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """All that is wrong with an expression as the answer, but for its slips."""
    shown = _SHOWN.search(line["text"])
    if shown is None:
        yield "no expressions to choose from are shown"
        return
    if "points" in line["text"] and "n" not in re.findall(r"[a-z]+", " ".join(shown.groups())):
        yield from _points(line, shown.groups(), texts)
        return
    if "inequalities" in line["text"]:
        yield from _goal(line, shown.groups(), texts)
        return
    story = _story(line, texts)
    fitting = [text for text in shown.groups() if expand(_polynomial(text) - story) == 0]
    answer = line["answer"]
    if fitting != [answer["exact"]] or answer["exact"] not in answer["accepted"] or answer["display"] != answer["exact"]:
        yield f"{fitting} fit the story, the answer is {answer['exact']}"
    wrong = {slip["value"] for slip in line["slips"]}
    if wrong != set(shown.groups()) - {answer["exact"]}:
        yield f"the slips {sorted(wrong)} are not the other expressions"


def _polynomial(text: str) -> Expr:
    """Sums, differences and products of numbers and n: 5 x 8 + 5n."""
    total: Expr = Integer(0)
    for sign, part in re.findall(r"(^|[+−] )([^+−]+)", text):
        product: Expr = Integer(1)
        for factor in part.split("×"):
            number, letter = re.fullmatch(r" ?(\d*)(n?) ?", factor).groups()  # type: ignore[union-attr]
            product *= Integer(int(number or 1)) * (N if letter else 1)
        total += -product if sign.startswith("−") else product
    return total


def _story(line: dict[str, Any], texts: Texts) -> Expr:
    named = texts.named(line["text"])
    counted = [given for given in line["givens"] if given["scope"] is not None]
    [one] = counted
    trials = tuple(one["scope"]["trials"]) if one["scope"]["trials"] != "all" else None
    reach = Reach(named.groups or None, trials, named.colors or None)
    if texts.words.measure(one["quantity"]) == "set_up":
        return Integer(texts.results.total("set_up", reach)) - N
    total = Integer(texts.results.total("down", reach)) + N
    bracket = _BRACKET.search(line["text"])
    return total if bracket is None else Integer(int(bracket[1])) * (Integer(int(bracket[2])) + N)


def _points(line: dict[str, Any], shown: tuple[str, ...], texts: Texts) -> Iterator[str]:
    """So many points for each pin of two colors: the one expression that comes to the points of the rows."""
    each = re.search(r"\b(?:earns|earned|costs?|is worth|at) (\d+) points\b", line["text"])
    bonus = re.search(r"\bone bonus of (\d+) points\b", line["text"], re.IGNORECASE)
    named = texts.named(line["text"])
    total = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors))
    more = int(bonus[1]) if bonus else 0
    fitting = [text for text in shown if each and sympify(text.replace("×", "*")) == total * int(each[1]) + more]
    if fitting != [line["answer"]["exact"]] or line["answer"]["display"] != line["answer"]["exact"]:
        yield f"{fitting} give the points, the answer is {line['answer']['exact']}"
    if {slip["value"] for slip in line["slips"]} != set(shown) - {line["answer"]["exact"]}:
        yield "the slips are not the other expressions"


def _goal(line: dict[str, Any], shown: tuple[str, ...], texts: Texts) -> Iterator[str]:
    """More than what was knocked down: of the numbers to 60, those above it, and no others, make the right inequality true."""
    named = texts.named(line["text"])
    known = texts.results.total("down", Reach(named.groups or None, named.trials or None, named.colors or None))
    fitting = []
    for text in shown:
        left, right = text.split(" > ")
        true = {n for n in range(60) if (n if left == "n" else int(left)) > (n if right == "n" else int(right))}
        if true == set(range(known + 1, 60)):
            fitting.append(text)
    if fitting != [line["answer"]["exact"]]:
        yield f"{fitting} fit the goal, the answer is {line['answer']['exact']}"
