"""Whether a problem's numbers and words show what its standards are about.

Source: the standards' own limits (Common Core State Standards for Mathematics, 2010), in our words.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

from sympy import Rational

from tests.audit.board import arithmetic
from tests.audit.graphs import makes_graph
from tests.audit.printed import Line, fraction_bottom, places_of, value
from tests.audit.printed import line as read_line
from tests.audit.published import CODES
from tests.audit.working import relation_numbers, solutions, steps_taken

Problem = dict[str, Any]


def faults(line: Problem) -> Iterator[str]:
    """Codes that are not published, are of another grade, or are about something else than the problem."""
    if not line["standards"]:
        yield "no standard"
    for code in line["standards"]:
        if code not in CODES:
            yield f"{code} is not among the published codes"
        if code.partition(".")[0] != str(line["grade"]):
            yield f"{code} in grade {line['grade']}"
        shows = SHOWS.get(code)
        if shows is None:
            yield f"the audit does not know what {code} is about"
        elif not shows(line):
            yield f"the problem does not show {code}"


def _lines(line: Problem) -> list[Line]:
    return [read_line(text) for text in arithmetic(line["steps"])]


def _signs(line: Problem) -> set[str]:
    return {one.sign for step in _lines(line) for one in step.operations}


def _exact(line: Problem) -> Rational:
    return value(line["answer"]["exact"])


def _whole(line: Problem) -> bool:
    """Whole numbers in, whole number out, or a yes or no, or a list, about whole numbers."""
    numbers = [number for step in _lines(line) for number in step.numbers]
    judged = line["answer"]["kind"] in ("truth", "list", "rubric")
    return all("/" not in number and "." not in number and "%" not in number for number in numbers) and (judged or _exact(line).q == 1)


def _add_or_subtract(line: Problem) -> bool:
    return bool(_signs(line)) and _signs(line) <= {"+", "-"} and _whole(line)


def _graph(line: Problem) -> bool:
    return (makes_graph(line["text"]) or any(given["where"] == "graph" for given in line["givens"])) and _add_or_subtract(line)


def _says(pattern: str) -> Callable[[Problem], bool]:
    return lambda line: re.search(pattern, line["text"], re.IGNORECASE) is not None


def _like_bottoms(line: Problem) -> bool:
    """A sum or difference of fractions with one bottom number."""
    for step in _lines(line):
        bottoms = {fraction_bottom(number) for number in step.numbers}
        if {one.sign for one in step.operations} & {"+", "-"} and len(bottoms) == 1 and None not in bottoms:
            return True
    return False


def _two_digit_addends(line: Problem) -> bool:
    for step in _lines(line):
        addends = list(step.numbers[:-1])
        if {one.sign for one in step.operations} == {"+"} and 2 <= len(addends) <= 4 and sum(len(number) == 2 for number in addends) >= 2:
            return True
    return False


def _below_zero(line: Problem) -> bool:
    return any(value(given["number"]) < 0 for given in line["givens"])


def _one_step(line: Problem) -> bool:
    """One sum of two numbers or one difference, whole numbers throughout."""
    return _add_or_subtract(line) and len(_lines(line)) == 1 and len(_lines(line)[0].operations) == 1


def _numbers(line: Problem) -> list[int]:
    return [int(number) for step in _lines(line) for number in step.numbers]


def _story(line: Problem, largest: int) -> bool:
    return _one_step(line) and max(_numbers(line)) <= largest


def _unknown_addend(line: Problem) -> bool:
    """A part and the total are told: ``8 + x = 11``, and the working takes away."""
    return re.fullmatch(r"(\d+ \+ x|x \+ \d+) = \d+|\d+ = (x \+ \d+|\d+ \+ x)", line["relation"]) is not None and _signs(line) == {"-"}


def _adds_tens_or_ones(line: Problem) -> bool:
    """Past 20 and within 100: a two-digit number, and one digit or a multiple of ten."""
    first, *rest = _lines(line)
    if rest or len(first.operations) != 1 or first.operations[0].sign != "+":
        return False
    one, other, total = _numbers(line)
    return 20 < total <= 100 and any(number < 10 or number % 10 == 0 for number in (one, other))


def _tens_from_tens(line: Problem) -> bool:
    return _one_step(line) and _signs(line) == {"-"} and all(number % 10 == 0 and 10 <= number <= 90 for number in _numbers(line))


def _part_of(line: Problem, percent: bool) -> bool:
    """A fraction (or percent) times a number."""
    for step in _lines(line):
        for one in step.operations:
            if one.sign == "*" and one.left_text and "/" in one.left_text:
                return not percent or any("%" in given["number"] for given in line["givens"])
    return False


def _compares(line: Problem) -> bool:
    relation = str(line["relation"])
    if line["answer"]["kind"] == "rubric":  # two fractions held against each other
        return len(re.findall(r"\d\)?/\d", relation)) == 2
    return bool(line["answer"]["kind"] == "name") and relation.startswith(("x = Max", "x = Min"))


def _holds_sides(line: Problem) -> bool:
    """Which of two is greater, or whether a number sentence with > or < is true."""
    return _compares(line) or (line["answer"]["kind"] == "truth" and _says(r"\bIs .*\d [<>] \d+( a)? true\b.*\?")(line))


def _made_equal(line: Problem) -> bool:
    return _says(r"\bspaces were\b.*\bequal(ly)?\b")(line) and {"+", "/"} <= _signs(line)


def _plot_added(line: Problem) -> bool:
    """All lengths of a line plot added up, fractions of an inch among them."""
    asks = _says(r"\bspaces were\b.*\bline plot\b.*\ball the spaces\b.*\?")(line)
    return asks and "+" in _signs(line) and any("/" in given["number"] for given in line["givens"])


def _feet_in_inches(line: Problem) -> bool:
    """A length in feet beside inches: how much wider it is, or whether spaces are longer."""
    longer = line["answer"]["kind"] == "truth" and _says(r"\blonger than \d+ feet\?")(line)
    told = _says(r"\bfoot is 12 inches\b")(line)
    return told and (_signs(line) == {"*"} if longer else _says(r"\binches\b.*\?")(line) and _signs(line) == {"*", "-"})


def _bottoms_compared(line: Problem) -> set[int]:
    return {int(bottom) for bottom in re.findall(r"/(\d+)", line["relation"])}


def _two_step_equation(line: Problem) -> bool:
    """px + q = r or p(x + q) = r: the unknown, a number added to it, and a product somewhere."""
    return "x" in line["relation"] and {"+", "*"} <= set(re.findall(r"[+*]", line["relation"])) and len(solutions(line["relation"])) == 1


def _equal_fraction(line: Problem) -> bool:
    """k of n set up, and the top number that makes k/n with a given bottom number, a divisor or a multiple of n."""
    numbers = {given["quantity"]: value(given["number"]) for given in line["givens"] if given["where"] == "words"}
    bottom = numbers.get("bottom number")
    size = next((number for quantity, number in numbers.items() if re.search(r"(set up|planted)$", quantity)), None)
    nested = bottom is not None and size is not None and (bottom % size == 0 or size % bottom == 0) and bottom != size
    return bool(
        nested and {"/"} <= _signs(line) <= {"+", "*", "/"} and _says("equal fraction|top number|numer")(line) and _exact(line) < bottom
    )


def _equal_fraction_from_top(line: Problem) -> bool:
    """k of n set up, and the bottom number that makes k/n with a given top number: one top number is a multiple of the other."""
    numbers = {given["quantity"]: value(given["number"]) for given in line["givens"]}
    top = numbers.get("top number")
    part = sum(value(given["number"]) for given in line["givens"] if re.search(r"(knocked down|sprouted)$", given["quantity"]))
    counted = top is not None and part and (top % part == 0 or part % top == 0)
    return bool(counted and {"/"} <= _signs(line) <= {"+", "*", "/"} and _says("bottom number|denominator")(line) and top < _exact(line))


def _tenths_and_hundredths(line: Problem) -> bool:
    """Tenths written as hundredths, and added to hundredths; or 10 set up, and a fraction with the bottom number 100."""
    tenths = any(re.fullmatch(r"\d+/10 = \d+/100", step) for step in line["steps"])
    given = {one["quantity"]: one["number"] for one in line["givens"]}
    return (tenths and "+" in _signs(line)) or (given.get("bottom number") == "100" and "10" in given.values() and _equal_fraction(line))


def _computes_with_decimals(line: Problem, places: int) -> bool:
    """A sum, difference, product or quotient with a decimal of at most so many places."""
    worked = [text for step in _lines(line) for one in step.operations for text in (one.left_text, one.right_text) if text and "." in text]
    return bool(worked) and all(len(text.partition(".")[2]) <= places for text in worked)


def _whole_times_fraction(line: Problem) -> bool:
    return any(
        one.sign == "*" and one.left.q == 1 and one.right_text and "/" in one.right_text for step in _lines(line) for one in step.operations
    )


def _unit_fraction_by_whole(line: Problem) -> bool:
    """A unit fraction divided by a whole number."""
    return any(
        one.sign == "/" and one.left.p == 1 and one.left.q > 1 and one.right.q == 1 and one.left_text is not None and "/" in one.left_text
        for step in _lines(line)
        for one in step.operations
    )


def _joins_parts(line: Problem) -> bool:
    """Counts of kinds added over one whole: an answer between 0 and 1, and a sum on the way."""
    joined = _says(r"\bor\b| and .* were what fraction of all ")(line)
    return 0 < _exact(line) < 1 and "+" in _signs(line) and _says("fraction of")(line) and joined


def _told_places(line: Problem) -> list[int]:
    """Places of the decimals that the words give."""
    return [len(given["number"].partition(".")[2]) for given in line["givens"] if "." in given["number"] and "%" not in given["number"]]


def _divides_by_fraction(line: Problem, unit: bool) -> bool:
    """A whole number divided by a fraction, which is (or is not) one part of several."""
    for step in _lines(line):
        for one in step.operations:
            if one.sign == "/" and one.right_text and "/" in one.right_text:
                return bool(one.left.q == 1 and (one.right.p == 1) == unit)
    return False


def _fraction_by_fraction(line: Problem) -> bool:
    return any(one.sign == "/" and one.left.q != 1 and one.right.q != 1 for step in _lines(line) for one in step.operations)


def _unlike_bottoms(line: Problem) -> bool:
    """Fractions with two bottom numbers are given, and added or subtracted over one."""
    bottoms = {fraction_bottom(given["number"]) for given in line["givens"] if "/" in given["number"]}
    return len(bottoms) > 1 and _like_bottoms(line)


def _forms_given(line: Problem) -> set[str]:
    """Which of fraction, decimal and percent the words give."""
    marks = {"%": "percent", "/": "fraction", ".": "decimal"}
    numbers = [one["number"] for one in line["givens"] if re.search("[%/.]", one["number"])]
    return {next(name for mark, name in marks.items() if mark in number) for number in numbers}


def _formula(line: Problem) -> bool:
    """An expression of two letters, evaluated: two products and a sum or difference of them."""
    return _says(r"\d[a-z] [-+] \d+[a-z]\b")(line) and [one.sign for step in _lines(line) for one in step.operations].count("*") == 2


def _one_step_equation(line: Problem) -> bool:
    """x + p = q or px = q, printed, with one operation to solve it."""
    found = re.search(r"(?:\bx \+ (\d+)|\b(\d+)x) = (\d+)", line["text"])
    if found is None or steps_taken(_lines(line)) != 1:
        return False
    p, factor, q = (int(number or 0) for number in found.groups())
    return bool(_exact(line) + p == q if p else factor * _exact(line) == q)


def _both_sides(line: Problem) -> bool:
    """A linear equation with x on both sides, and one solution."""
    sides = line["relation"].split("=")
    return all(re.search(r"\bx\b", side) for side in sides) and solutions(line["relation"]) == (_exact(line),)


def _two_unknowns(line: Problem) -> bool:
    """px + q(n - x) = r, or px - q(n - x) = r: what one of two unknowns leaves of n is the other."""
    found = re.fullmatch(r"(\d+)\*x ([-+]) (\d+)\*\((\d+) - x\) = (\d+)", line["relation"])
    if found is None:
        return False
    p, q, n, r = (int(found[place]) for place in (1, 3, 4, 5))
    x = _exact(line)
    return bool(0 < x < n and p * x + (q if found[2] == "+" else -q) * (n - x) == r)


def _told_line(line: Problem) -> bool:
    """Two points of a line, counts against scores: its slope, or its value at 0."""
    scores = [value(given["number"]) for given in line["givens"] if given["quantity"] == "points in all"]
    counts = [value(given["number"]) for given in line["givens"] if given["where"] == "words" and given["scope"] is not None]
    if len(scores) != 2 or not _says(r"\bstart value\b|\bline\b")(line):
        return False
    if len(counts) != 2:  # to be read in the table
        return bool(line["cells"])
    slope = (scores[0] - scores[1]) / (counts[0] - counts[1])
    return bool(_exact(line) == (slope if _says(r"\bslope\b|does each")(line) else scores[0] - slope * counts[0]))


def _least_number(line: Problem) -> bool:
    """The least whole number with which the score so far, at so many points for each, passes (or reaches) a goal."""
    numbers = {given["quantity"]: value(given["number"]) for given in line["givens"]}
    each, goal = numbers.pop("points for each", None), numbers.pop("goal in points", None)
    have = sum(value(given["number"]) for given in line["givens"] if given["scope"] is not None)
    if each is None or goal is None or not _says(r"\b(least|smallest) number\b")(line):
        return False
    reached = [each * (have + count) for count in (_exact(line) - 1, _exact(line))]
    return bool(reached[0] <= goal < reached[1] if _says("more than")(line) else reached[0] < goal <= reached[1])


def _greatest_number(line: Problem) -> bool:
    """The greatest whole number with which the loss so far, at so many points for each, stays under (or at) a limit."""
    numbers = {given["quantity"]: value(given["number"]) for given in line["givens"]}
    each, limit = numbers.get("points lost for each"), numbers.get("limit in points")
    have = sum(value(given["number"]) for given in line["givens"] if given["scope"] is not None)
    if each is None or limit is None or not _says(r"\b(greatest|largest) number\b.*\?")(line):
        return False
    lost = [each * (have + count) for count in (_exact(line), _exact(line) + 1)]
    return bool(lost[0] < limit <= lost[1] if _says("less than")(line) else lost[0] <= limit < lost[1])


def _factors(line: Problem) -> tuple[str, int, int, int] | None:
    """The one step of a problem that multiplies or divides whole numbers: sign, the two factors, their product."""
    steps = _lines(line)
    if len(steps) != 1 or len(steps[0].operations) != 1 or not _whole(line):
        return None
    one = steps[0].operations[0]
    if one.sign not in "*/":
        return None
    left, right = int(one.left), int(one.right)
    return (one.sign, left, right, left * right) if one.sign == "*" else (one.sign, right, left // right, left)


def _equal_groups(line: Problem, sign: str) -> bool:
    """Equal groups in the words, as many for each, and one product or quotient of whole numbers."""
    found = _factors(line)
    same = _says(r"\b(each|one)\b|equal sets|\b(buys|spends) \d+")(line)
    return found is not None and found[0] in sign and min(found[1:3]) > 1 and same and not _says("times as many")(line)


def _equal_lengths(line: Problem) -> bool:
    """Equal spaces end to end: one product of whole numbers within 100."""
    found = _factors(line)
    return found is not None and found[0] == "*" and found[3] <= 100 and _says(r"\bspaces\b")(line)


def _within_100(line: Problem, sign: str = "*/") -> bool:
    found = _factors(line)
    return _equal_groups(line, sign) and found is not None and found[3] <= 100


def _digits_multiplied(line: Problem) -> tuple[int, int] | None:
    found = _factors(line)
    if found is None or found[0] != "*":
        return None
    short, long = sorted(len(str(number)) for number in found[1:3])
    return short, long


def _digits_divided(line: Problem) -> tuple[int, int] | None:
    """Digits of the divisor and of the dividend."""
    found = _factors(line)
    return None if found is None or found[0] != "/" else (len(str(found[1])), len(str(found[3])))


def _against_model(line: Problem) -> bool:
    """How far a count is from an equal share of all, which a model of equally likely kinds predicts."""
    told = _says(r"equally likely|each as likely")(line) and _says(r"than the model predicts")(line)
    return told and {"/", "-"} <= _signs(line) <= {"/", "-", "+"}


def _cell_left(line: Problem) -> bool:
    """A cell of a two-way table that the totals and the other row leave: three differences, asked of the other things."""
    return _signs(line) == {"-"} and steps_taken(_lines(line)) == 3 and _says(r"\bother\b.*\?")(line)


def _tens(line: Problem) -> bool:
    found = _factors(line)
    return found is not None and found[0] == "*" and min(found[1:3]) < 10 and max(found[1:3]) in range(20, 100, 10)


def _brackets(line: Problem) -> bool:
    """An expression with brackets in the words that comes to the answer, and would not without them."""
    found = re.search(r"\((\d+) ([+−]) (\d+)\) × (\d+)", line["text"])
    if found is None:
        return False
    a, b, each = int(found[1]), int(found[3]), int(found[4])
    sign = 1 if found[2] == "+" else -1
    return (a + sign * b) * each == _exact(line) != a + sign * b * each


def _pairs(line: Problem) -> bool:
    """A number of up to 20 as a double, or a double and one more."""
    last = _lines(line)[-1] if _lines(line) else None
    if last is None or (line["answer"]["kind"] != "truth" and not _says(r"\bpairs\b|\btwo equal rows\b|\bnumbers are the same\b")(line)):
        return False
    addends = last.numbers[:-1]
    return bool(addends[0] == addends[1] and list(addends[2:]) in ([], ["1"]) and value(last.numbers[-1]) <= 20)


def _factors_and_multiples(line: Problem) -> bool:
    """A number from 1 to 100, and whether a one-digit number goes into it with none over."""
    sizes = [value(given["number"]) for given in line["givens"] if given["quantity"] == "in each group"]
    if line["answer"]["kind"] != "truth" or len(sizes) != 1:
        return False
    asks = _says(r"\bequal rows of \d+\?|\bmultiple of \d+\?|\bIs \d+ a factor of\b|\bIs every box full,")(line)
    return 2 <= sizes[0] <= 9 and max(_numbers(line)) <= 100 and asks


def _probability(line: Problem) -> bool:
    """A number between 0 and 1, asked for as a probability."""
    return 0 < _exact(line) < 1 and _says(r"\bprobability that\b.*\?")(line)


def _times_picked(line: Problem) -> bool:
    """A probability of a pick times a number of picks, which comes out whole."""
    return _says(r"[Hh]ow many times should an? .+ be picked\?")(line) and _part_of(line, percent=False) and _exact(line).q == 1


def _constant(line: Problem) -> bool:
    """A score over its count, each told once."""
    scores = [value(given["number"]) for given in line["givens"] if given["quantity"] == "points in all"]
    counts = [value(given["number"]) for given in line["givens"] if given["scope"] is not None]
    return len(scores) == 1 and bool(scores[0] == _exact(line) * sum(counts)) and _says(r"\bproportional|\bkx\b")(line)


def _steeper(line: Problem) -> bool:
    return _compares(line) and _says("steeper")(line) and _says("proportional|through the origin")(line)


def _constant_from_growth(line: Problem) -> bool:
    """What a score grew by, over what the count grew by."""
    told = {given["quantity"]: value(given["number"]) for given in line["givens"]}
    return "points more" in told and _signs(line) >= {"-", "/"} and _says(r"\bproportional|\bkx\b")(line)


def _for_one_more(line: Problem) -> bool:
    """Two values of both quantities: how much the one grows where the other grows by one."""
    scores = [value(given["number"]) for given in line["givens"] if given["quantity"] == "points in all"]
    return len(scores) == 2 and {"-", "/"} <= _signs(line) and _says(r"\bd (is|grows by) one\b.*\?")(line)


def _grows(line: Problem) -> bool:
    """y = kx at two values of x: how much y grows."""
    found = re.search(r"\b([a-z]) = (\d+)[a-z]\b", line["text"])
    if found is None or not re.search(rf"\b(greater is|did) {found[1]}\b", line["text"]):
        return False
    return "/" not in _signs(line) and {"-", "*"} <= _signs(line) and _exact(line) % int(found[2]) == 0


def _remainder(line: Problem) -> bool:
    """A quotient and a remainder by a one-digit number."""
    sizes = [value(given["number"]) for given in line["givens"] if given["quantity"] == "in each group"]
    return line["answer"]["kind"] == "quotient_remainder" and len(sizes) == 1 and 2 <= sizes[0] <= 9 and _says(r"\bremain\b")(line)


def _splits(line: Problem) -> bool:
    """A fraction split in two like ones, in more ways than one."""
    if line["answer"]["kind"] == "truth":
        like = {fraction_bottom(number) for step in _lines(line) for number in step.numbers}
        return len(like) == 1 and _signs(line) == {"+"} and _says(r"\d = \d+/|\bbe split into\b|\bhave the sum\b")(line)
    pairs = [re.fullmatch(r"(\d+)/(\d+) \+ (\d+)/(\d+)", pair) for pair in line["answer"]["value"]]
    return line["answer"]["kind"] == "list" and len(pairs) > 1 and all(pair is not None and pair[2] == pair[4] for pair in pairs)


def _on_a_line(line: Problem) -> bool:
    """A line from 0 to 1 in as many parts as the set has; parts from the fraction to 1."""
    cut = re.search(r"(?:has|into) (\d+) equal parts", line["text"])
    if cut is not None and _says(r"\b(what|which) fraction\b[^.]*\?")(line):
        told = _says(r"\bparts before 1\.|\bcount back \d+ parts\b")(line)
        return told and bool(0 < _exact(line) < 1 and (_exact(line) * int(cut[1])).q == 1)
    return cut is not None and _says("from 0 to 1")(line) and 0 < _exact(line) < int(cut[1]) and _says(r"\b(and|from|to) 1\?")(line)


def _whole_as_fraction(line: Problem) -> bool:
    """So many wholes of so many parts: the top number over the number of parts."""
    asked = re.search(
        r"(?:top number|numerator) (?:of a fraction is )?(\d+),? and the (?:\w+ number|denominator) (?:is )?(\d+)\b", line["text"]
    )
    if asked is not None:
        return _says(r"[Ww]h(ich|at) whole number\b.*\?")(line) and bool(_exact(line) * int(asked[2]) == int(asked[1]))
    told = re.search(r"(?:Write|equal to) (\d+)\b", line["text"])
    bottom = re.search(r"(?:bottom number|denominator) (\d+)\b", line["text"])
    return (
        told is not None and bottom is not None and _says("top number|numer")(line) and bool(_exact(line) == int(told[1]) * int(bottom[1]))
    )


def _equal_rows_added(line: Problem) -> bool:
    """Up to 5 rows of up to 5, told as such, added row by row."""
    told = {given["quantity"]: given["number"] for given in line["givens"]}
    lines = _lines(line)
    addends = lines[0].numbers[:-1] if len(lines) == 1 else ()
    return (
        2 <= len(addends) <= 5
        and set(addends) == {told.get("in each row")}
        and told.get("rows") == str(len(addends))
        and value(addends[0]) <= 5
        and all(one.sign == "+" for one in lines[0].operations)
    )


def _factor_pairs(line: Problem) -> bool:
    return line["answer"]["kind"] == "list" and _says(r"\bfactor(s|\b)")(line) and max(_numbers(line)) <= 100


def _money(pattern: str = r"\d¢|\bcents?\b|\bdollars?\b|\$\d") -> Callable[[Problem], bool]:
    """Amounts of cents or dollars, in the words or on the price list."""
    return lambda line: re.search(pattern, line["text"]) is not None


def _more_of_a_dollar(line: Problem) -> bool:
    """Whether one part of a dollar is more than another."""
    return line["answer"]["kind"] == "truth" and _says(r"\d of a dollar\b.*\b(more|less|higher|lower) than\b.*\?")(line)


def _bought(line: Problem) -> bool:
    """How many can be bought, and what is left."""
    return line["answer"]["kind"] == "quotient_remainder" and _money()(line) and _says(r"\bhow many\b.*\bhow many cents\b")(line)


_COUNTED_BY_ONES = r"\b(count|numbers after)\b.*\b(comes next|comes second|comes right before \d+|number before \d+|which number is that)\?"
_ON_A_LINE_PLOT = r"\bline plot\b.*\b(crosses|spaces are (wider|narrower)|how many are (wider|narrower))\b.*\?"

SHOWS: dict[str, Callable[[Problem], bool]] = {
    "2.MD.C.8": lambda p: _money()(p) and _add_or_subtract(p) and max(_numbers(p)) <= 100,
    "1.OA.A.1": lambda p: _story(p, 20),
    "1.OA.A.2": lambda p: len(_lines(p)) == 1 and [one.sign for one in _lines(p)[0].operations] == ["+", "+"] and max(_numbers(p)) <= 20,
    "1.OA.B.4": lambda p: _story(p, 20) and _unknown_addend(p),
    "1.OA.C.6": lambda p: _story(p, 20),
    "1.OA.D.7": lambda p: (
        p["answer"]["kind"] == "truth"
        and _says(r"(\d+ \+ \d+ = \d+|\d+ = \d+ \+ \d+|\d+ - \d+ = \d+ \+ \d+).*( true| a true number sentence)\?")(p)
        and max(_numbers(p)) <= 20
    ),
    "1.OA.D.8": lambda p: _story(p, 20) and _says(r"(\d+|__) [+-] (\d+|__) = \d+")(p) and p["text"].count("__") == 1,
    "1.NBT.A.1": lambda p: _says(_COUNTED_BY_ONES)(p) and _exact(p) <= 120,
    "1.NBT.B.3": lambda p: _holds_sides(p) and all(10 <= number <= 99 for number in relation_numbers(p["relation"])),
    "1.NBT.C.4": _adds_tens_or_ones,
    "1.NBT.C.6": _tens_from_tens,
    "1.MD.C.4": lambda p: _graph(p) and steps_taken(_lines(p)) == 1,
    "2.OA.A.1": lambda p: _add_or_subtract(p) and steps_taken(_lines(p)) <= 2,
    "2.OA.C.3": _pairs,
    "3.NF.A.2b": _on_a_line,
    "3.NF.A.3c": _whole_as_fraction,
    "2.OA.C.4": _equal_rows_added,
    "2.OA.B.2": lambda p: _story(p, 20),
    "2.NBT.A.4": lambda p: _holds_sides(p) and all(100 <= number <= 999 for number in relation_numbers(p["relation"])),
    "2.NBT.B.5": lambda p: _story(p, 100) and max(_numbers(p)) >= 10,
    "2.NBT.B.7": lambda p: _story(p, 1000) and max(_numbers(p)) > 100,
    "2.NBT.B.6": _two_digit_addends,
    "2.MD.D.10": lambda p: _graph(p) and steps_taken(_lines(p)) == 1,
    "3.OA.A.4": lambda p: (
        (found := _factors(p)) is not None and found[3] <= 100 and _says(rf"(n × {found[1]}|{found[1]} × n) = {found[3]}\b")(p)
    ),
    "4.OA.A.1": lambda p: _says("times as many")(p) and _says(r"n = \d+ × \d+|\d+ × n = \d+|\d+ = \d+ × n")(p) and _factors(p) is not None,
    "5.OA.A.1": _brackets,
    "3.NBT.A.1": lambda p: p["answer"]["demands"] in ("whole:10", "whole:100") and _says("nearest (ten|hundred)")(p) and _exact(p) <= 1000,
    "4.NBT.A.3": lambda p: p["answer"]["demands"].startswith("whole:") and _says("nearest")(p) and 1000 <= _exact(p) <= 1000000,
    "3.OA.A.1": lambda p: _within_100(p, "*"),
    "3.OA.A.2": lambda p: _within_100(p, "/"),
    "3.OA.A.3": lambda p: _within_100(p) or _equal_lengths(p),
    "3.OA.C.7": lambda p: _within_100(p) and max((_factors(p) or ("", 99, 99, 0))[1:3]) < 10,
    "3.NBT.A.3": _tens,
    "4.NBT.B.5": lambda p: (found := _digits_multiplied(p)) is not None and (found == (2, 2) or (found[0] == 1 and 2 <= found[1] <= 4)),
    "4.NBT.B.6": lambda p: _remainder(p) or ((found := _digits_divided(p)) is not None and found[0] == 1 and 3 <= found[1] <= 4),
    "5.NBT.B.5": lambda p: (found := _digits_multiplied(p)) is not None and found[0] >= 2,
    "5.NBT.B.6": lambda p: (found := _digits_divided(p)) is not None and found[0] == 2 and 3 <= found[1] <= 4,
    "6.NS.B.2": lambda p: (found := _digits_divided(p)) is not None and found[0] >= 2 and found[1] >= 4,
    "3.NBT.A.2": _add_or_subtract,
    "3.OA.D.8": lambda p: _whole(p) and steps_taken(_lines(p)) == 2,
    "3.MD.B.3": lambda p: (_graph(p) and _says(r"\b(more|fewer)\b")(p)) or (_signs(p) == {"/"} and _says(r"\bhow many pictures\b")(p)),
    "3.NF.A.1": lambda p: 0 < _exact(p) < 1 and p["answer"]["demands"] == "any" and _says("fraction")(p),
    "3.NF.A.3d": lambda p: _compares(p) and len(_bottoms_compared(p)) == 1,
    "3.NF.A.3b": lambda p: _equal_fraction(p) or _equal_fraction_from_top(p),
    "4.OA.B.4": lambda p: _factor_pairs(p) or _factors_and_multiples(p),
    "4.NF.B.3b": _splits,
    "5.NF.B.5a": lambda p: (
        p["answer"]["kind"] in ("truth", "name") and _says(r"\d/\d+ × \d.*\b([Dd]o not multiply\.|[Ww]ithout multiplying,)")(p)
    ),
    "5.OA.A.2": lambda p: (
        (p["answer"]["kind"] == "truth" or p["answer"]["demands"] == "expression") and _says(r"\+ \d+\) × \d|\d × \d+ \+|\d \+ \d+ × \d")(p)
    ),
    "4.OA.A.2": _says("times as (many|much)|is how many times"),
    "4.OA.A.3": lambda p: (_bought(p) or (p["answer"]["kind"] in ("number", "list") and _whole(p))) and steps_taken(_lines(p)) >= 2,
    "4.NF.A.2": lambda p: _compares(p) and (_says("fraction")(p) or _says(r"\b(more|less) than \d/\d of the\b")(p)),
    "5.G.A.2": lambda p: _whole(p) and _signs(p) == {"-"} and len(re.findall(r"\(\d+, \d+\)", p["text"])) == 2,
    "7.RP.A.1": lambda p: (
        _says(r"\beach inch\b|\bone inch on the drawing\b")(p) and "/" in _signs(p) and any("/" in one["number"] for one in p["givens"])
    ),
    "8.SP.A.1": lambda p: (
        _says(r"\bscatter plot\b")(p) and _says(r"\bassociation\b.*\?|\b(goes|lower|higher|less|greater)\b.*\binstead\?")(p)
    ),
    "8.SP.A.2": lambda p: (
        _says(r"\bscatter plot\b.*(\bthan the line predicts|\bfarther from\b.*|\bmiss the point by more)\?")(p) and {"*", "-"} <= _signs(p)
    ),
    "8.SP.A.3": lambda p: _says(r"\bscatter plot\b.*\bthe line predict\b.*\?")(p) and "*" in _signs(p),
    "4.MD.A.1": lambda p: _feet_in_inches(p),
    "5.MD.A.1": lambda p: _says(r"\bfoot is 12 inches\b")(p) and _says(r"\b\d+ feet|many feet\b")(p) and _signs(p) == {"*", "/"},
    "6.RP.A.3d": lambda p: _says(r"\bfoot is 12 inches\b")(p) and _says(r"\b\d+ feet|many feet\b")(p) and _signs(p) == {"*", "/"},
    "2.MD.D.9": lambda p: _whole(p) and _says(_ON_A_LINE_PLOT)(p),
    "3.MD.B.4": lambda p: any("/" in one["number"] for one in p["givens"]) and _says(_ON_A_LINE_PLOT)(p),
    "4.MD.B.4": lambda p: (
        any("/" in one["number"] for one in p["givens"])
        and _says(r"\bspaces were\b")(p)
        and (_says(r"\bcrosses\b.*\?")(p) or _like_bottoms(p))
    ),
    "5.MD.B.2": lambda p: _made_equal(p) or _plot_added(p),
    "2.MD.B.5": lambda p: _add_or_subtract(p) and _says(r"\binch(es)?\b.*\binches\b")(p),
    "4.MD.A.2": lambda p: (
        (_money()(p) and _whole(p) and "*" in _signs(p))
        or (_says(r"\binch(es)?\b.*\binches\b")(p) and ("*" in _signs(p) or _like_bottoms(p)))
    ),
    "4.NF.B.3c": lambda p: any(" " in given["number"] for given in p["givens"]) and _like_bottoms(p),
    "4.NF.A.1": lambda p: _equal_fraction(p) or _equal_fraction_from_top(p),
    "4.NF.B.3a": _joins_parts,
    "4.NF.B.3d": _like_bottoms,
    "4.NF.B.4c": _whole_times_fraction,
    "4.NF.C.5": _tenths_and_hundredths,
    "4.NF.C.6": lambda p: (
        (p["answer"]["demands"] == "decimal" and (places_of(_exact(p)) or 9) <= 2)
        or (p["answer"]["demands"] == "fraction" and _says(r"\d\.\d\d\b.*\bfraction of a dollar\b")(p))
    ),
    "4.NF.C.7": lambda p: (_compares(p) or _more_of_a_dollar(p)) and len(_told_places(p)) == 2 and max(_told_places(p)) <= 2,
    "5.NBT.A.3b": lambda p: _compares(p) and len(_told_places(p)) == 2 and max(_told_places(p)) == 3,
    "5.NBT.A.4": lambda p: p["answer"]["demands"].startswith("decimal:") and _says("nearest")(p),
    "5.NBT.A.3a": lambda p: p["answer"]["demands"] == "decimal" and places_of(_exact(p)) == 3,
    "5.NBT.B.7": lambda p: _computes_with_decimals(p, 2),
    "5.NF.A.1": _unlike_bottoms,
    "5.NF.A.2": _unlike_bottoms,
    "5.NF.B.7c": lambda p: _divides_by_fraction(p, unit=True) or _unit_fraction_by_whole(p),
    "5.NF.B.3": lambda p: (
        "/" in _signs(p) and (_says(r"\bper trial\b.*\?")(p) and _compares(p) if p["answer"]["kind"] == "rubric" else _exact(p).q != 1)
    ),
    "5.NF.B.4a": lambda p: _part_of(p, percent=False),
    "5.NF.B.6": lambda p: _part_of(p, percent=False),
    "6.EE.A.2c": _formula,
    "6.EE.B.7": _one_step_equation,
    "6.NS.A.1": lambda p: _divides_by_fraction(p, unit=False) or _fraction_by_fraction(p),
    "6.NS.B.3": lambda p: _computes_with_decimals(p, 9),
    "6.NS.B.4": lambda p: p["relation"].startswith(("x = gcd(", "x = lcm(")) and _says(r"boxes|bags|both (groups|counts)")(p),
    "6.NS.C.5": lambda p: _says(r"negative number")(p) and _says(r"number (shows the change|stands for) .+\?")(p),
    "6.NS.C.7c": lambda p: any("|" in step for step in p["steps"]) and _says(r"(absolute value|zero|distance|the goal)\b.*\?")(p),
    "7.NS.A.1b": lambda p: _below_zero(p) and "+" in _signs(p) and _says(r"\b(sum|total)\b.*\?")(p),
    "7.NS.A.1c": lambda p: (
        _below_zero(p) and _signs(p) == {"-"} and _says(r"\b(distance between these results|how much (greater )?was the result)\b.*\?")(p)
    ),
    "7.NS.A.3": lambda p: _below_zero(p) and bool({"/", "-"} & _signs(p)),
    "6.RP.A.1": lambda p: (
        (p["answer"]["kind"] == "ratio" and _says(r"\bratio of .+ to .+\?")(p))
        or _says(r"\b(ratio of .+ to .+ was|in the ratio) \d+ to \d+.*What fraction of .+\?")(p)
    ),
    "6.RP.A.2": lambda p: _says(r"\bunit rate\b|\bfor (each|every) ")(p) and "/" in _signs(p),
    "6.RP.A.3a": lambda p: (_compares(p) and len(_bottoms_compared(p)) > 1) or (_says(r"\bratio\b")(p) and {"/", "*"} <= _signs(p)),
    "6.RP.A.3b": lambda p: _says(r"\brate\b")(p) and _says(r"\bin (\d+|how many) trials\b")(p) and "/" in _signs(p),
    "6.RP.A.3c": lambda p: _says("percent|%")(p) and not _says("increase|decrease|percent (more|less|fewer)|[Bb]y what percent")(p),
    "6.SP.B.5c": _says(r"\b(means?|median|interquartile range)\b"),
    "6.SP.B.5b": lambda p: _says(r"\bmean of \d+\b.*\b(mean number|mean tell|heading say)\b.*\?")(p) and "/" in _signs(p),
    "6.SP.A.1": _says(r"\bstatistical question\b.*\?"),
    "6.SP.A.2": lambda p: _compares(p) and _says(r"\b(median|least number to the greatest)\b.*\?")(p),
    "6.SP.B.5d": lambda p: (
        (_compares(p) and _says(r"the mean or the median\b.*\?")(p))
        or (
            _says(r"\b[Ll]eave out\b|\b[Ww]ithout this number\b|\bfar from the others\b")(p)
            and _says(r"\bhow much (greater|less) is the me(di)?an\b.*\?")(p)
        )
    ),
    "7.SP.B.3": lambda p: (
        _says(r"\bdot plots? .*\bstretch\b.* both (groups|trials|lists|dot plots) cover\?")(p)
        or (_says(r"\bdifference of the means\b")(p) and _says(r"mean absolute deviation\b.*\?")(p) and "/" in _signs(p))
    ),
    "7.SP.B.4": lambda p: _compares(p) and _says(r"\b(median|the means|least number to the greatest)\b.*\?")(p),
    "6.SP.B.4": _says(r"\b(box plot|dot plot|one dot for each number|histogram)\b"),
    "6.SP.B.5a": lambda p: _whole(p) and _signs(p) == {"*"} and _says(r"\bhow many (results|rows of results|dots|counts)\b")(p),
    "7.NS.A.2d": lambda p: p["answer"]["demands"].startswith("decimal") and _exact(p).q != 1,
    "7.RP.A.3": lambda p: (
        _says(r"\b(in|de)crease(d by| of) \d+%")(p)
        or (_says("percent")(p) and _says("increase|decrease|change|error|percent (more|less|fewer)|[Bb]y what percent")(p))
        or (_says(r"every new trial is a success\b.*\bnew trials\b.*\?")(p) and _says(r"\d%")(p) and steps_taken(_lines(p)) >= 2)
        or (_money()(p) and _says(r"\d%.*\b(tax|sale|week|total)\b|\b(tax|sale|week)\b.*\d%")(p) and steps_taken(_lines(p)) >= 2)
    ),
    "7.EE.B.3": lambda p: (steps_taken(_lines(p)) >= 2 or len(_forms_given(p)) > 1) and _exact(p).q != 1,
    "7.EE.B.4a": _two_step_equation,
    "6.EE.B.6": lambda p: p["answer"]["demands"] == "expression" and _says(r"\bexpressions?\b.*\?")(p),
    "6.EE.B.8": lambda p: (
        (p["answer"]["demands"] == "expression" and _says(r"\bgoal\b")(p) and _says(r"\binequalit(y|ies)\b.*\?")(p))
        or (_whole(p) and _says(r"\bn [<>] \d+.*\?")(p) and _says(r"\bhow many of the(se)? (results|numbers)\b")(p))
    ),
    "7.EE.A.2": lambda p: (
        (p["answer"]["demands"] == "expression" and _says(r"\d\(\d+ \+ n\)")(p) and "n" in p["relation"])
        or (_says(r"\bn − 0\.\d+n\b.*\?")(p) and _signs(p) == {"-"} and 0 < _exact(p) < 1)
    ),
    "6.EE.C.9": lambda p: _grows(p) or _for_one_more(p),
    "7.RP.A.2b": lambda p: _constant(p) or _constant_from_growth(p),
    "7.RP.A.2a": lambda p: _says(r"scores proportional to .+\?|line through the origin\?")(p) and "/" in _signs(p),
    "8.NS.A.1": lambda p: p["answer"]["demands"] in ("fraction", "truth") and any("..." in given["number"] for given in p["givens"]),
    "8.EE.B.5": lambda p: (
        (_says(r"slope of the|unit rate")(p) and {"-", "/"} <= _signs(p) and _says("proportional|through the origin")(p)) or _steeper(p)
    ),
    "7.EE.B.4b": lambda p: _least_number(p) or _greatest_number(p),
    "8.EE.C.7b": _both_sides,
    "8.EE.C.8c": _two_unknowns,
    "8.F.B.4": _told_line,
    "8.SP.A.4": lambda p: (
        _says(r"two-way table")(p)
        and (
            (p["answer"]["kind"] == "rubric" and _compares(p))
            or (_says(r"[Ww]hat percent of")(p) and "/" in _signs(p))
            or _cell_left(p)
        )
    ),
    "7.SP.C.5": lambda p: (
        (_compares(p) and _says("(more|less) likely")(p))
        or (p["answer"]["kind"] == "truth" and _says(r"more likely to .+ than to .+\?")(p))
    ),
    "7.SP.C.7a": lambda p: (_probability(p) or _times_picked(p)) and _says("is picked (at random|without looking)|equally likely")(p),
    "7.SP.A.1": lambda p: (
        (p["answer"]["kind"] == "truth" and _says(r"\bsample\b.*\bfraction of .+\?")(p))
        or (_says(r"\bsample\b.*\brepresents?\b.*\bhow many\b.*\bsample\b.*\?")(p) and _part_of(p, percent=False))
    ),
    "7.SP.C.7b": lambda p: _against_model(p) or (_probability(p) and _says(r"\bnext\b")(p) and _says("results")(p)),
    "7.SP.C.8b": lambda p: _whole(p) and "*" in _signs(p) <= {"*", "-"} and _says(r"\bpairs of\b.*\?")(p),
    "7.SP.A.2": lambda p: (
        _says(r"mean of the sample (greater |less )?than the mean of the population\?")(p)
        or (_says(r"\bsample\b.*\babout how many\b|\bAbout how many .* sample\?")(p) and _signs(p) == {"+", "/", "*"})
        or (_says(r"\bdrawn at random\b|\brandom sample\b")(p) and _says(r"\bestimate\b.*\?")(p) and _signs(p) == {"+", "-", "/", "*"})
    ),
    "7.SP.C.8c": lambda p: (
        (_says(r"simulation")(p) and _says(r"how many of the \d+ digits.*\?")(p) and _part_of(p, percent=False))
        or (
            _probability(p)
            and _says(r"\bsimulation\b.*\bruns\b|\bruns\b.*\bsimulation\b")(p)
            and _says(r"\b(both|at least one) of\b.*\?")(p)
        )
    ),
    "7.SP.C.6": lambda p: (
        (_says(r"\bnext\b")(p) and _says(r"\bprobability\b")(p) and _says(r"\bSuppose the last of the\b")(p) and _says("results")(p))
        or (_probability(p) and _says("results")(p))
        or (_says("about")(p) and _says("expect|predict")(p) and _part_of(p, percent=False))
        or _times_picked(p)
    ),
}
