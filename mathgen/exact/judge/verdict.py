"""The verdicts on a typed answer."""

from __future__ import annotations

from typing import Literal

Verdict = Literal["right", "right_value_wrong_form", "wrong", "unreadable"]
Judged = tuple[Verdict, str]  # with one line for the teacher
RIGHT: Verdict = "right"
FORM: Verdict = "right_value_wrong_form"
WRONG: Verdict = "wrong"
UNREADABLE: Verdict = "unreadable"
