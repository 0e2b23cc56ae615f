"""The limits on an answer: its form, its rounding, and that it is neither nothing nor everything."""

from __future__ import annotations

from collections.abc import Iterator

from mathgen.exact.printed_step import Printed, lowest, repeat_length
from mathgen.gate.signature import Stop
from mathgen.gate.work import Work
from mathgen.grades.entry import SkillEntry


def answer_stops(entry: SkillEntry, read: Work) -> Iterator[Stop]:
    """The limits on the answer. A name passes them all."""
    answer, exact = read.answer, read.exact
    if answer is None or exact is None:
        return
    if entry.whole_answer is True and not answer.is_whole:
        yield Stop("whole answer", _text(answer), "a whole number")
    if entry.whole_answer is False and answer.is_whole:
        yield Stop("whole answer", _text(answer), "no whole number")
    if entry.answer_max is not None and answer.top > entry.answer_max * answer.bottom:
        yield Stop("largest answer", _text(answer), f"at most {entry.answer_max}")
    block = repeat_length(exact.top, exact.bottom)
    if entry.repeats is not None and entry.repeats != (block > 0):
        yield Stop("repeating", "a repeating decimal" if block else "a decimal that ends", "the other kind")
    if entry.max_repeat is not None and block > entry.max_repeat:
        yield Stop("repeating block", f"{block} digits", f"at most {entry.max_repeat}")
    if read.rounded:
        yield from _rounding(entry, answer, exact)
    elif not answer.repeats:
        if entry.max_places is not None and answer.places > entry.max_places:
            yield Stop("answer places", f"{answer.places} places", f"at most {entry.max_places}")
        if entry.min_places is not None and answer.places < entry.min_places:
            yield Stop("answer places", f"{answer.places} places", f"at least {entry.min_places}")


def _rounding(entry: SkillEntry, answer: Printed, exact: Printed) -> Iterator[Stop]:
    if answer.places not in entry.round_places or answer.kind in ("fraction", "mixed"):
        wanted = f"rounding to {listing(entry.round_places)} places" if entry.round_places else "an exact answer"
        yield Stop("rounded answer", f"{answer.places} places", wanted)
        return
    # Twice the exact value in units of the last place: odd at a tie.
    scale = 2 * 10**answer.places * (100 if answer.percent else 1)
    units, rest = divmod(abs(exact.top) * scale, exact.bottom)
    if rest == 0 and units % 2 == 1:
        yield Stop("rounding tie", f"a tie at {answer.places} places", "a value that no rounding rule moves")


def share_stops(entry: SkillEntry, read: Work) -> Iterator[Stop]:
    """0 and the whole set: as an answer, or as a share that the words give."""
    if read.answer is not None and read.answer.top == 0 and not entry.allow_zero:
        yield Stop("zero answer", "0", "an answer above 0")
    shares = [(number, entry.allow_whole_given) for number in read.givens]
    if read.answer is not None:
        shares.append((read.answer, entry.allow_whole_set))
    for number, whole_allowed in shares:
        if not is_share(number):
            continue
        if number.top == 0 and not entry.allow_zero:
            yield Stop("empty share", _text(number), "a part above 0")
        if number.top == number.bottom and not whole_allowed:
            yield Stop("whole set", _text(number), "a part of the set")


def is_share(number: Printed) -> bool:
    """Whether a number is printed as a part of something: a fraction or a percent."""
    return number.percent or number.kind == "fraction"


def listing(numbers: tuple[int, ...]) -> str:
    """A list of choices in words."""
    return f"one of {', '.join(map(str, numbers))}" if numbers else "none"


def _text(number: Printed) -> str:
    if number.kind == "fraction" and not number.percent:
        return f"{number.written_top}/{number.written_bottom}"
    top, bottom = lowest(number.top * (100 if number.percent else 1), number.bottom)
    return (str(top) if bottom == 1 else f"{top}/{bottom}") + ("%" if number.percent else "")
