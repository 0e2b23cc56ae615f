"""The gate of one grade: every limit that stops a problem, or none."""

from __future__ import annotations

from collections.abc import Iterator
from math import lcm

from mathgen.exact.printed_step import Operation, Printed, PrintedStep
from mathgen.gate.answer import answer_stops, is_share, listing, share_stops
from mathgen.gate.signature import Signature, Stop
from mathgen.gate.work import Work, largest_of, longest_sum, shown_features, work
from mathgen.grades.curriculum import Curriculum
from mathgen.grades.entry import SkillEntry

_NUMBERS = Signature._fields.index("cells")  # the fields before it are about numbers, the others about display


class Gate:
    """The limits of one grade of one curriculum, and the verdict on every signature seen so far.

    >>> from mathgen.grades.curriculum import load
    >>> third = Gate(load("ccss"), 3)
    >>> third.stops(Signature("fraction of a set", givens=("5", "8"), steps=("5/8 = 5/8",), answer="5/8", sets=(8,)))
    ()
    >>> print(*third.stops(Signature("fraction of a set", givens=("5", "10"), steps=("5/10 = 1/2",), answer="1/2", sets=(10,))), sep="; ")
    denominator: found 10, expected one of 2, 3, 4, 6, 8 in Grade 3; set size: found 10, expected one of 2, 3, 4, 6, 8 in Grade 3
    """

    def __init__(self, curriculum: Curriculum, grade: int) -> None:
        self.curriculum = curriculum
        self.grade = grade
        self.limits = curriculum.limits(grade)
        self._label = curriculum.label(grade)
        self._known: dict[tuple[object, ...], tuple[Stop, ...]] = {}
        self._graphs = {skill: entry.graph for skill in curriculum.skills(grade) if (entry := curriculum.entry(skill, grade)) is not None}

    def stops(self, signature: Signature) -> tuple[Stop, ...]:
        """Every limit that stops a problem with this signature; () where it passes.

        Raises:
            UnreadableStepError: a step is no equality of printed numbers.
            ValueError: a feature has no first grade in the curriculum.
        """
        # How much is read from where is looked at each time, so that one verdict on the numbers serves many displays.
        numbers = signature[:_NUMBERS]
        known = self._known.get(numbers)
        if known is None:
            known = self._known[numbers] = self._rule(signature)
        return known + self.display_stops(signature.skill, signature.cells, signature.categories)

    def standards(self, signature: Signature) -> tuple[str, ...]:
        """The standards that a problem with this signature serves; () where the grade does not offer its skill."""
        entry = self.curriculum.entry(signature.skill, self.grade)
        if entry is None:
            return ()
        for other in entry.when:
            if _holds(other.condition, signature):
                return other.standards
        return entry.standards

    def _rule(self, signature: Signature) -> tuple[Stop, ...]:
        entry = self.curriculum.entry(signature.skill, self.grade)
        if entry is None:
            return (Stop("skill", signature.skill, f"a skill that {self._label} offers"),)
        read = work(signature)
        found = [
            *self._features(entry, signature, read),
            *self._denominators(entry, signature, read),
            *self._sizes(entry, read),
            *self._structure(entry, read),
            *self._sets(entry, signature, read),
            *self._comparison(entry, signature, read),
            *answer_stops(entry, read),
            *share_stops(entry, read),
        ]
        # The same number may stand in a given, a step and the answer: it is told once.
        return tuple(dict.fromkeys(found))

    def _features(self, entry: SkillEntry, signature: Signature, read: Work) -> Iterator[Stop]:
        known = self.curriculum.first_grade
        seen = {*signature.features, *shown_features(read, signature.sets)}
        if strange := sorted(seen - known.keys()):
            raise ValueError(f"no first grade is known for {', '.join(strange)}")
        # What the entry itself allows: lengths as a ruler shows them, more than one operation.
        own = ({"mixed_number"} if entry.ruler else set()) | ({"two_step"} if (entry.max_operations or 0) > 1 else set())
        for feature in sorted(seen - self.limits.features - own):
            first = known[feature]
            when = f"only from {self.curriculum.label(first)} on" if first in self.curriculum.grades else "in no grade here"
            yield Stop(feature, feature.replace("_", " "), when)
        if entry.needs is not None and entry.needs not in seen:
            wanted = entry.needs.replace("_", " ")
            yield Stop("feature", f"no {wanted}", f"{wanted} in {self._label}")

    def _denominators(self, entry: SkillEntry, signature: Signature, read: Work) -> Iterator[Stop]:
        listed = self.limits.denominators
        if listed is not None:
            # As written: 5 of 10 stays in tenths, though it is a half.
            for number in read.numbers:
                if number.kind in ("fraction", "mixed") and number.written_bottom not in listed:
                    yield Stop("denominator", str(number.written_bottom), f"{listing(listed)} in {self._label}")
        sizes = entry.denominators or listed
        if sizes is not None:
            for size in signature.sets:
                if size not in sizes:
                    yield Stop("set size", str(size), f"{listing(sizes)} in {self._label}")

    def _sizes(self, entry: SkillEntry, read: Work) -> Iterator[Stop]:
        limits = self.limits
        largest = limits.story_max if entry.largest is None else entry.largest
        for number in read.numbers:
            whole = abs(number.top) // number.bottom
            if largest is not None and not number.percent and whole > largest:
                yield Stop("largest number", str(whole), f"at most {largest} in {self._label}")
            if limits.decimal_places is not None and number.places > limits.decimal_places:
                yield Stop("decimal places", f"{number.places} places", f"at most {limits.decimal_places} in {self._label}")
        if entry.tens_and_ones and largest_of(read) > (limits.story_max or 0) and not all(map(_tens_and_ones, read.steps)):
            yield Stop("tens and ones", str(largest_of(read)), f"ones or tens added to two digits, or tens from tens, in {self._label}")
        for step in read.steps:
            for operation in step.operations:
                yield from self._product(operation.symbol, operation.left, operation.right, operation.result)
                most = limits.decimal_places_compute
                for number in (operation.left, operation.right, operation.result):
                    if most is not None and number.kind == "decimal" and not number.percent and number.places > most:
                        yield Stop("decimal places in a step", f"{number.places} places", f"at most {most} in {self._label}")
            most = limits.decimal_places_compute
            if step.operations and most is not None and step.end.kind == "decimal" and step.end.places > most and not step.end.percent:
                yield Stop("decimal places in a step", f"{step.end.places} places", f"at most {most} in {self._label}")

    def _product(self, symbol: str, left: Printed, right: Printed, result: Printed) -> Iterator[Stop]:
        digits = self.limits.divisor_digits
        if digits is not None and symbol == "/" and left.is_whole and right.is_whole and result.is_whole:
            divisor = right.top // right.bottom
            # Ten tens are a hundred: place value (4.NBT.A.1), no long division.
            if divisor >= 10**digits and not divisor == 10 == result.top // result.bottom:
                yield Stop("divisor", str(divisor), f"at most {digits} {'digit' if digits == 1 else 'digits'} in {self._label}")
        pairs = self.limits.factor_digits
        if pairs is not None and symbol == "*" and left.is_whole and right.is_whole:
            lengths = sorted(len(str(one.top // one.bottom)) for one in (left, right))
            if not any(all(one <= most for one, most in zip(lengths, pair, strict=True)) for pair in pairs):
                yield Stop("factors", f"{lengths[0]} by {lengths[1]} digits", f"shorter factors in {self._label}")
        limit = self.limits.product_max
        if limit is None or symbol not in "*/" or not (left.is_whole and right.is_whole):
            return
        factors = (left, right) if symbol == "*" else (right, result)
        biggest = result if symbol == "*" else left
        value = biggest.top // biggest.bottom
        tens = any(_small(one) and _tens(other) for one, other in (factors, factors[::-1]))
        if value > limit and not (self.limits.product_tens and tens and symbol == "*"):
            yield Stop("product", str(value), f"at most {limit} in {self._label}")
        small, large = sorted(one.top // one.bottom for one in factors)
        most = self.limits.factor_max
        if most is not None and large > most and small > 2 and not tens:
            yield Stop("factors", f"{small} times {large}", f"factors of at most {most}, doubles, or tens in {self._label}")

    def _structure(self, entry: SkillEntry, read: Work) -> Iterator[Stop]:
        limits = self.limits
        most = entry.max_operations if entry.max_operations is not None else limits.operations
        # A sum of sums is one operation later on; where stories have one step only, it is one line.
        taken = read.operations if limits.operations != 1 else sum(bool(step.operations) for step in read.steps)
        if most is not None and taken > most:
            yield Stop("operations", str(taken), f"at most {most} in {self._label}")
        addends, printed = longest_sum(read.steps)
        most = entry.max_addends if entry.max_addends is not None else limits.addends
        if most is not None and addends > most:
            yield Stop("addends", str(addends), f"at most {most} in {self._label}")
        if limits.addend_digits is not None and addends > 2:
            for number in printed:
                if number.top >= number.bottom * 10**limits.addend_digits:
                    yield Stop("addend", str(number.top // number.bottom), f"at most {limits.addend_digits} digits in {self._label}")
        biggest = largest_of(read)
        if entry.min_biggest is not None and biggest < entry.min_biggest:
            yield Stop("numbers too small", str(biggest), f"some number of at least {entry.min_biggest} in {self._label}")
        if entry.max_biggest is not None and biggest > entry.max_biggest:
            yield Stop("numbers too big", str(biggest), f"no number above {entry.max_biggest} in {self._label}")
        if entry.min_factor is not None:
            for step in read.steps:
                for operation in step.operations:
                    if operation.symbol not in "*/":
                        continue
                    for number in (operation.left, operation.right, operation.result):
                        if number.top < entry.min_factor * number.bottom:
                            yield Stop("factor", f"{number.top // number.bottom}", f"factors of at least {entry.min_factor}")

    def _sets(self, entry: SkillEntry, signature: Signature, read: Work) -> Iterator[Stop]:
        sizes = signature.sets
        for size in sizes:
            if size < 2:
                yield Stop("set of one", f"a set of {size}", "at least 2 in each set")
        if entry.min_sets is not None and len(sizes) < entry.min_sets:
            yield Stop("number of sets", str(len(sizes)), f"at least {entry.min_sets}")
        if entry.max_sets is not None and len(sizes) > entry.max_sets:
            yield Stop("number of sets", str(len(sizes)), f"at most {entry.max_sets}")
        found = ", ".join(map(str, sizes))
        unequal = len(set(sizes)) > 1
        if unequal and self.limits.same_whole:
            yield Stop("same whole", f"sets of {found}", f"one set, or sets of equal size, in {self._label}")
        elif unequal and entry.equal_sets is True:
            yield Stop("equal sets", f"sets of {found}", "sets of equal size")
        if entry.equal_sets is False and not unequal:
            yield Stop("unequal sets", f"sets of {found}", "sets of different sizes")
        if unequal:
            yield from self._parts_of_different_sets(found, read)

    def _parts_of_different_sets(self, found: str, read: Work) -> Iterator[Stop]:
        """3/4 of the red pins and 2/3 of the blue pins have no sum in any grade; a difference of rates comes late."""
        for step in read.steps:
            for operation in step.operations:
                if not (is_share(operation.left) and is_share(operation.right)):
                    continue
                if operation.symbol == "+":
                    yield Stop("sum of different wholes", f"a sum of parts of sets of {found}", "parts of one set")
                elif operation.symbol == "-" and not self.limits.subtract_fractions_of_different_sets:
                    yield Stop("difference of different wholes", f"a difference of parts of sets of {found}", "parts of one set")

    def _comparison(self, entry: SkillEntry, signature: Signature, read: Work) -> Iterator[Stop]:
        fractions = [number for number in read.givens if number.kind in ("fraction", "mixed") and not number.percent]
        bottoms = {number.written_bottom for number in fractions}
        found = ", ".join(text for text in signature.givens if "/" in text)
        if entry.same_denominator is True and len(bottoms) > 1:
            yield Stop("same denominator", found, "one denominator")
        if entry.same_denominator is False and len(bottoms) < 2:
            yield Stop("different denominators", found or "no fractions", "two denominators")
        if entry.nested_denominators and bottoms and lcm(*bottoms) not in bottoms:
            yield Stop("nested denominators", found, "one denominator that divides the other")
        listed = self.limits.denominators
        if not self.limits.common_denominator or listed is None or len(bottoms) < 2:
            return
        common = lcm(*bottoms)
        if common in listed or len({number.written_top for number in fractions}) == 1 or _half_between(fractions):
            return
        yield Stop("common denominator", f"{common} for {found}", f"{listing(listed)} in {self._label}")

    def display_stops(self, skill: str, cells: int, categories: int) -> tuple[Stop, ...]:
        """The limits on how much is read from where, whatever the numbers."""
        limits, graph = self.limits, self._graphs.get(skill)
        stops = []
        if cells > limits.cells:
            stops.append(Stop("cells to read", str(cells), f"at most {limits.cells} in {self._label}"))
        most = limits.graph_categories
        if most is not None and categories > most:
            stops.append(Stop("graph categories", str(categories), f"at most {most} in {self._label}"))
        if graph is not None and graph != (categories > 0):
            stops.append(Stop("graph", "no graph" if graph else "a graph", "a graph" if graph else "no graph"))
        return tuple(stops)


def _holds(condition: str, signature: Signature) -> bool:
    if condition == "graph":
        return _has_graph(signature)
    bound, _, number = condition.partition(" ")
    if bound in ("past", "within") and number.isdigit():
        largest, most = largest_of(work(signature)), int(number)
        return largest > most if bound == "past" else 0 < largest <= most
    if condition == "mixed numbers":
        return any(number.kind == "mixed" for number in work(signature).givens)
    if condition == "three addends":
        return longest_sum(work(signature).steps)[0] > 2
    if condition == "several two-digit addends":
        addends, printed = longest_sum(work(signature).steps)
        return addends > 2 and sum(number.top >= 10 * number.bottom for number in printed) > 2
    if condition == "tenths to hundredths":
        return signature.sets == (10,) and "100" in signature.givens
    if condition in ("a fact", "one digit by tens"):
        return any(_known_product(condition, operation) for step in work(signature).steps for operation in step.operations)
    raise ValueError(f'no condition "{condition}" is known')


def _known_product(condition: str, operation: Operation) -> bool:
    """Whether a product, or a quotient turned round, is of two one-digit numbers, or of one digit and tens from 20 to 90."""
    symbol, left, right, result = operation.symbol, operation.left, operation.right, operation.result
    if symbol not in "*/" or not (left.is_whole and right.is_whole and result.is_whole):
        return False
    one, other = (left, right) if symbol == "*" else (right, result)
    if condition == "a fact":
        return _small(one) and _small(other)
    return symbol == "*" and any(_small(a) and _tens(b) and b.top > 10 * b.bottom for a, b in ((one, other), (other, one)))


def _has_graph(signature: Signature) -> bool:
    return signature.categories > 0 or "graph" in signature.features


def _half_between(numbers: list[Printed]) -> bool:
    """Whether 1/2 tells two fractions apart: one is less, the other is not, or one is more, the other is not."""
    sides = sorted(2 * number.top - number.bottom for number in numbers)
    return len(sides) == 2 and sides[0] <= 0 <= sides[1] and sides[0] != sides[1]


def _tens_and_ones(step: PrintedStep) -> bool:
    """Whether a step adds one digit or a multiple of ten to another number, or takes tens from tens."""
    if len(step.operations) != 1:
        return False
    symbol, left, right, *_ = step.operations[0]
    if symbol == "+":
        return any(_small(one) or _tens(one) for one in (left, right))
    return symbol == "-" and _tens(left) and _tens(right)


def _small(number: Printed) -> bool:
    return 0 <= number.top < 10 * number.bottom


def _tens(number: Printed) -> bool:
    value = number.top // number.bottom
    return value % 10 == 0 and 10 <= value <= 90
