"""Answers in words judged: names, expressions, yes and no, a verdict with its reason."""

from __future__ import annotations

import re
import unicodedata
from difflib import SequenceMatcher

from mathgen.exact.judge.verdict import FORM, RIGHT, UNREADABLE, WRONG, Judged
from mathgen.exact.parse import tidy
from mathgen.exact.written_expression import one_way

_AROUND = " .!\"'“”"
_COLOR = re.compile("[a-z]+(?:[ -][a-z]+)*")  # as keys write colors: in small letters
_TRUTH = {"yes": "true", "y": "true", "true": "true", "t": "true", "no": "false", "n": "false", "false": "false", "f": "false"}


def judge_name(expected: str, typed: str, thing: str) -> Judged:
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


def _whole_name(text: str) -> str:
    plain = " ".join(unicodedata.normalize("NFC", text).casefold().strip(_AROUND).split())
    plain = re.sub(r"^(?:the|an?) ", "", plain)  # "a marker" names a thing that is sold
    return plain.removeprefix("group ") if plain.removeprefix("group ").isdigit() else plain


def judge_expression(expected: str, typed: str) -> Judged:
    """One of the expressions that the question shows: blanks, signs, and the order of terms and factors do not matter."""
    key, said = (tidy(text).casefold().strip(" .") for text in (expected, typed))
    if not said:
        return UNREADABLE, "there is nothing written"
    said = said.replace("is greater than", ">").replace("is less than", "<")
    turned = re.fullmatch(r"(.+)<(.+)", said)
    said = f"{turned[2]}>{turned[1]}" if turned else said  # 8 < n is n > 8
    same = [one_way(side) for side in said.split(">")] == [one_way(side) for side in key.split(">")]
    return (RIGHT, "the same expression") if same else (WRONG, "another expression")


def judge_truth(expected: str, typed: str) -> Judged:
    """Yes or no, in any way of writing it."""
    said = _TRUTH.get(_whole_name(typed))
    if said is None:
        return UNREADABLE, "neither yes nor no"
    return (RIGHT, "the same answer") if said == _TRUTH.get(_whole_name(expected)) else (WRONG, "the other answer")


def judge_rubric(expected: str, typed: str) -> Judged:
    """A verdict with its reason: "No, because 7/12 is less than 2/3". The verdict is judged; what is said for it, a person has to read."""
    verdict, _, reason = tidy(typed).partition(" ")
    said, key = (_TRUTH.get(_whole_name(text.strip(",.;:!"))) for text in (verdict, expected))
    if said is None:
        return UNREADABLE, "neither yes nor no"
    if said != key:
        return WRONG, "the other verdict"
    return FORM, "the right verdict; its reason is to be read" if reason.strip(" ,.;:") else "the right verdict, without a reason"
