"""Rules for two questions of which one is statistical, and for a number that is left out of a list."""

from __future__ import annotations

from mathgen.reading.chart import Rule, rule
from mathgen.reading.meaning.scope import Labels
from mathgen.reading.meaning.statistics import LeaveOut, MeanTold, OneOfTwo, Wondered
from mathgen.reading.noun_phrases import always, measured, what
from mathgen.reading.wanted.statistics import CenterWithout, MeanCounts, WhichStatistical
from mathgen.trials.scope import Measure


def _each(colors: Labels, measure: Measure, when: Labels) -> Wondered:
    return Wondered(measure, what(colors, None, when), True)


def _single(colors: Labels, who: Labels, measure: Measure, when: Labels) -> Wondered:
    return Wondered(measure, what(colors, who, when))


RULES: tuple[Rule, ...] = (
    rule("question_told", "how many <things> each group <past> <when>", _each),
    rule("question_told", "how many <things> <group> <past> <when>", _single),
    rule("fact", "the first question is <question_told>", lambda one: (OneOfTwo("first", one),)),
    rule("fact", "the second question is <question_told>", lambda one: (OneOfTwo("second", one),)),
    rule("fact", "one question is <question_told>", lambda one: (OneOfTwo("first", one),)),
    rule("fact", "another question is <question_told>", lambda one: (OneOfTwo("second", one),)),
    rule("fact", "someone wonders <question_told>", lambda one: (OneOfTwo("first", one),)),
    rule("fact", "someone else wonders <question_told>", lambda one: (OneOfTwo("second", one),)),
    rule("ask", "which is a statistical question , the first or the second", always(WhichStatistical())),
    rule("ask", "which of these is a statistical question , the first or the second", always(WhichStatistical())),
    rule("ask", "is the first or the second a statistical question", always(WhichStatistical())),
    # what was counted
    rule("fact", "a mean of WHOLE was written down without a heading", lambda number: (MeanTold(number),)),
    rule("fact", "someone found a mean of WHOLE for these trials", lambda number: (MeanTold(number),)),
    rule("fact", "the heading above a mean of WHOLE is missing", lambda number: (MeanTold(number),)),
    rule("ask", "is that the mean number of <things> <that_outcome>", lambda c, m: MeanCounts(measured(m, "down", "standing"), what(c))),
    rule(
        "ask",
        "does this mean tell the number of <things> <that_outcome> per trial",
        lambda c, m: MeanCounts(measured(m, "down", "standing"), what(c)),
    ),
    rule("ask", "should the heading say <things> <that_outcome>", lambda c, m: MeanCounts(measured(m, "down", "standing"), what(c))),
    # a number left out
    rule("left_out", "<group>", lambda who: LeaveOut("groups", who)),
    rule("left_out", "TRIALS", lambda when: LeaveOut("trials", when)),
    rule("fact", "leave out <left_out>", lambda one: (one,)),
    rule("fact", "the number for <left_out> is far from the others", lambda one: (one,)),
    rule("fact", "find the <center> with and without the number for <left_out>", lambda name, one: (one._replace(name=name),)),
    rule("center", "mean", always("mean")),
    rule("center", "median", always("median")),
    rule(
        "ask",
        "how much <size> is the <center> of the other numbers of <things>",
        lambda more, name, c: CenterWithout(name, more, None, what(c)),
    ),
    rule(
        "ask",
        "how much <size> is the <center> number of <things> <that_outcome> <per> then",
        lambda more, name, c, m, by: CenterWithout(name, more, measured(m, "down", "standing"), what(c), by),
    ),
    rule(
        "ask",
        "without this number , how much <size> is the <center> number of <things>",
        lambda more, name, c: CenterWithout(name, more, None, what(c)),
    ),
    rule(
        "ask",
        "how much <size> is the <center> number of <things> without this number",
        lambda more, name, c: CenterWithout(name, more, None, what(c)),
    ),
)
