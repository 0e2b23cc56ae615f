"""Problems about a price list: the second opinion, from the words and the lines of the list alone."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sympy import Rational

from tests.audit.printed import value
from tests.audit.wording import Texts, sentences
from tests.audit.working import relation_numbers, solutions

_AMOUNT = re.compile(r"\$(\d+\.\d\d)|(\d+)(?:¢| cents?)")
_NEW_PRICE = re.compile(r"\bwill (?:be|cost) (\d+)(?:¢| cents?)")
_NO_PRICE = re.compile(rf"{_NEW_PRICE.pattern}|\b(?:spends|has) \d+(?:¢| cents)|\bpays \d+ cents in all for\b")  # what is paid
_PART = re.compile(r"(\d+\.\d+|\d+/\d+) of a dollar")
_NUMBER = re.compile(r"\d+(?:[./]\d+)?")


def faults(line: dict[str, Any], texts: Texts) -> Iterator[str]:
    """Prices that the list has not, numbers from nowhere, a key that is not what the words ask for."""
    list_of = _Items(texts.results.prices)
    text, answer = line["text"], line["answer"]
    yield from _givens(line, list_of)
    for sentence in sentences(text)[:-1]:
        told = [] if _NO_PRICE.search(sentence) else [_cents(*one) for one in _AMOUNT.findall(sentence)]
        if told and told != [list_of.cents[item] for item, _ in list_of.named(sentence)]:
            yield f'"{sentence}": the list has other prices'
    wanted = asked(text, list_of)
    exact = value(answer["exact"]) if answer["kind"] == "number" else answer["exact"]
    if exact != wanted:
        yield f"the words ask for {wanted}, the answer is {exact}"
    for sentence in sentences(text)[:-1]:
        parts = [Rational(100) * value(part) for part in _PART.findall(sentence)]
        if parts and parts != [list_of.cents[item] for item, _ in list_of.named(sentence)]:
            yield f'"{sentence}": the list has other prices'
    if answer["kind"] == "number":
        yield from _key(line, exact, list_of)
    elif answer["kind"] == "truth":
        if answer["accepted"] != ["Yes" if exact == "true" else "No", exact] or answer["display"] != answer["accepted"][0]:
            yield f"the key displays {answer['display']} for {wanted}"
    elif answer["kind"] == "name":
        if answer["display"] != wanted or answer["accepted"] != [wanted]:
            yield f"the key displays {answer['display']} for {wanted}"
    elif not {answer["display"], *answer["accepted"]} >= {str(wanted).upper(), str(wanted)}:
        yield f"the key displays {answer['display']} for {wanted}"


class _Items:
    """What is sold, one of it or several, and what each costs in cents."""

    def __init__(self, prices: tuple[tuple[str, int], ...]) -> None:
        self.cents = dict(prices)
        spelled = {form: item for item, _ in prices for form in _one_and_many(item)}
        names = "|".join(re.escape(form) for form in sorted(spelled, key=len, reverse=True))
        self._spelled = spelled
        self._pattern = re.compile(rf"(?:(\d+) )?(?<!\w)({names})(?!\w)", re.IGNORECASE)

    def named(self, sentence: str) -> list[tuple[str, int]]:
        """Each item of a sentence, in its order, with how many of it (1 where no number stands before it)."""
        return [(self._spelled[found[2].lower()], int(found[1] or 1)) for found in self._pattern.finditer(sentence)]


def _one_and_many(item: str) -> tuple[str, str]:
    head, *rest = re.split(r"(?= (?:of|for|with) )", item)
    many = f"{head}es" if head.endswith(("x", "ch", "sh", "ss")) else f"{head[:-1]}ies" if re.search("[^aeiou]y$", head) else f"{head}s"
    return item.lower(), "".join([many, *rest]).lower()


def _cents(dollars: str, cents: str) -> Rational:
    return Rational(cents) if cents else 100 * value(dollars)


def asked(text: str, list_of: _Items) -> Rational | str:
    """What the question asks for."""
    *facts, question = sentences(text)
    about = list_of.named(question)
    if any(_PART.search(fact) for fact in facts):
        return _parts_of_a_dollar(facts, question, list_of)
    if re.search(r"percent of (a dollar|the (price|higher|first|second))|fraction of a dollar|percent of a dollar|as a decimal", question):
        return _part(facts, question, list_of)
    rate = re.search(r"\b(\d+)%", " ".join(facts))
    if rate:
        return _with_rate(facts, question, list_of, Rational(rate[1]) / 100)
    if re.search(r"\bpercent\b", question):
        return _percent_apart(facts, question, list_of)
    unit = Rational(1, 100) if re.search(r"\bdollars\b", question) else Rational(1)
    money = _money(facts)
    if "can be bought" in question:
        [(item, _)] = about
        full, rest = divmod(int(money or 0), list_of.cents[item])
        return f"{full} r {rest}"
    cents_told = re.search(r"\b(?:spends|has|pays) (\d+)(?:¢| cents)", " ".join(facts))
    if cents_told and re.search(r"\b(does|can) the group buy\b", question):
        [(item, _)] = about
        return Rational(int(cents_told[1]), list_of.cents[item])
    groups = re.search(r"\b(\d+) groups\b", " ".join(facts))
    if groups:
        [(item, _)] = _each_once(facts, list_of)
        return Rational(list_of.cents[item], int(groups[1]))
    if "how many times" in question.lower():
        pair = [list_of.cents[item] for item, _ in _each_once(facts, list_of)]
        return Rational(max(pair), min(pair))
    if "dollar bills" in question:
        [(item, number)] = [one for sentence in sentences(text) for one in list_of.named(sentence) if one[1] > 1]
        return Rational(-(-number * list_of.cents[item] // 100))
    if re.search(r"\bmore\b|\bapart\b", question):
        first, second = (list_of.cents[item] for item, _ in _each_once(facts, list_of))
        return abs(first - second) * unit
    bought = [one for fact in facts if re.search(r"\bbuys\b", fact) for one in list_of.named(fact)]
    if not bought:
        bought = about or _each_once(facts, list_of)
    spent = sum(number * list_of.cents[item] for item, number in bought)
    if re.search(r"\bget back\b|\bhave left\b|\bchange\b", question):
        return (money - spent) * unit
    return spent * unit


def _parts_of_a_dollar(facts: list[str], question: str, list_of: _Items) -> Rational | str:
    """Which of two items costs more or less, whether the first does, what both cost, or what is left of the dollar."""
    (one, _), (other, _) = _each_once([fact for fact in facts if _PART.search(fact)], list_of)
    cents, others = list_of.cents[one], list_of.cents[other]
    if question.startswith("What"):
        spent = Rational(cents + others, 100)
        return 1 - spent if re.search(r"\b(left|get back)\b", question) else spent
    most = re.search(r"\b(more|higher)\b", question) is not None
    if question.startswith("Which"):
        return one if (cents > others) == most else other
    return "true" if (cents > others) == most else "false"


def _with_rate(facts: list[str], question: str, list_of: _Items, rate: Rational) -> Rational:
    """A tax, a sale, or a price that went or will go up or down by a percent."""
    told = " ".join(facts)
    bought = [one for fact in facts if re.search(r"\bbuys\b", fact) for one in list_of.named(fact)]
    [(item, number)] = bought or list_of.named(question) or _each_once(facts, list_of)
    cost = number * list_of.cents[item]
    if re.search(r"\blast week\b", question):
        down = re.search(r"\bwent down\b|% less\b", told)
        return cost / (1 - rate if down else 1 + rate)
    if re.search(r"\bcents is the tax\b|\bthe tax in cents\b|\btake off\b|\bcents less\b", question):
        return rate * cost
    lower = re.search(r"\bsale\b|\bgoes down\b|% off\b", told)
    return cost * (1 - rate if lower else 1 + rate) * (Rational(1, 100) if re.search(r"\bdollars\b", question) else 1)


def _percent_apart(facts: list[str], question: str, list_of: _Items) -> Rational:
    """By what percent a price changes, or one price is over or under another."""
    told = " ".join(facts)
    new = _NEW_PRICE.search(told)
    if new:
        [(item, _)] = _each_once(facts, list_of)
        base, other = list_of.cents[item], int(new[1])
    else:
        named = list_of.named(question) or _each_once(facts, list_of)
        other, base = (list_of.cents[item] for item, _ in named)
        if "above the lower price" in question:
            other, base = max(other, base), min(other, base)
        elif "below the higher price" in question:
            other, base = min(other, base), max(other, base)
    if bool(re.search(r"\b(?:more|up|increase|higher than|higher price above)\b", question)) != (other > base):
        return Rational(-1)  # the words say another way than the prices
    return Rational(abs(other - base), base)


def _each_once(facts: list[str], list_of: _Items) -> list[tuple[str, int]]:
    return list(dict.fromkeys(one for fact in facts for one in list_of.named(fact)))


def _money(facts: list[str]) -> Rational:
    told = " ".join(facts)
    dollars = re.search(r"\b(\d+) dollars\b", told)
    return Rational(100 * int(dollars[1])) if dollars else Rational(100 if re.search(r"\ba dollar\b", told) else 0)


def _part(facts: list[str], question: str, list_of: _Items) -> Rational:
    """A price out of 100 cents, or out of another price."""
    told = [list_of.cents[item] for item, _ in _each_once(facts, list_of)]
    if "lower price" in question and "percent of the higher price" in question:
        return Rational(min(told), max(told))
    named = [list_of.cents[item] for item, _ in list_of.named(question)]
    if "of the price of" in question:
        part, whole = named if question.startswith("The price") else reversed(named)
        return Rational(part, whole)
    [cents] = named or told
    return Rational(cents, 100)


def _givens(line: dict[str, Any], list_of: _Items) -> Iterator[str]:
    """Each given is a price of the list, how many are bought, dollars, a percent or a new price; each number of the text is a given."""
    for given in line["givens"]:
        found = re.fullmatch(r"price of the (.+) in (cents|dollars)", given["quantity"])
        if found:
            cents = list_of.cents.get(found[1])
            if cents is None or value(given["number"]) != (cents if found[2] == "cents" else Rational(cents, 100)):
                yield f"given {given['number']} ({given['quantity']}): the list has {cents} cents"
            if given["where"] == "table" and (found[2] != "cents" or {"item": found[1]} not in line["cells"]):
                yield f"given {given['number']} ({given['quantity']}) stands in no cell"
        elif told_part := re.fullmatch(r"price of the (.+) in cents out of cents in a dollar", given["quantity"]):
            if value(given["number"]) * 100 != list_of.cents.get(told_part[1]):
                yield f"given {given['number']} ({given['quantity']}): another price"
        elif given["quantity"] not in ("bought", "dollars", "percent", "new price", "spent", "shared by") or given["where"] != "words":
            yield f"given {given['number']} ({given['quantity']}) is of no known kind"
    told = sorted(given["number"].removesuffix("%") for given in line["givens"] if given["where"] == "words")
    if sorted(_NUMBER.findall(line["text"])) != told:
        yield f"the text has {sorted(_NUMBER.findall(line['text']))}, the givens are {told}"


def _key(line: dict[str, Any], exact: Rational, list_of: _Items) -> Iterator[str]:
    answer, question = line["answer"], sentences(line["text"])[-1]
    form = "percent" if "percent" in question else "fraction" if "fraction" in question else ""
    things = re.search(r"[Hh]ow many (?!cents|dollars\b)", question)  # of things, of bills, how many times
    unit = "" if form or things else "dollars" if "dollars" in question else "cent" if exact == 1 else "cents"
    shown, _, noun = answer["display"].partition(" ")
    if shown.startswith("$"):
        shown, noun = shown[1:], "dollars"
    if noun != unit or value(shown) != exact or shown != answer["accepted"][0]:
        yield f'the key displays "{answer["display"]}"'
    if unit == "dollars" and not re.fullmatch(r"\d+\.\d\d", shown):
        yield f"{shown} dollars are not written with two places"
    wanted = {"percent": "percent", "fraction": "fraction"}.get(form, "whole" if things or unit.startswith("cent") else "")
    if _PART.search(line["text"]):  # the prices are fractions already: any form of their sum is right
        wanted = "any"
    if wanted and answer["demands"] != wanted:
        yield f"the words demand {wanted}, the line {answer['demands']}"
    if ("as a decimal" in question) != (answer["demands"] == "decimal"):
        yield f"the line demands {answer['demands']}"
    if any(value(text) != exact or (unit and text.endswith("%")) for text in answer["accepted"]):
        yield f"accepted forms {answer['accepted']}"
    if solutions(line["relation"]) != (exact,):
        yield f'relation "{line["relation"]}" has the solutions {solutions(line["relation"])}, the answer is {exact}'
    parts = [value(given["number"].removesuffix("%")) for given in line["givens"]]
    known = {1, 100, *(100 * one for one in parts), *(part for one in parts for part in (one.p, one.q))} | {exact.p, exact.q}
    if strange := [number for number in relation_numbers(line["relation"]) if number not in known]:
        yield f'relation "{line["relation"]}": where does {strange[0]} come from?'
    if "given away" in _copied(line, exact, list_of):
        yield f"the answer {answer['display']} stands in the text"


def _copied(line: dict[str, Any], exact: Rational, list_of: _Items) -> str:
    """A price that is asked for in the very form in which it is told."""
    numbers = [given["number"] for given in line["givens"] if given["quantity"].startswith("price")]
    shown = line["answer"]["accepted"][0]
    single = len(numbers) == 1 and numbers[0] == shown and exact in (list_of.cents.values())
    return "given away" if single and not line["steps"] else ""
