"""Problems and sheets written by hand, after the model problems: numbers checked by counting."""

from __future__ import annotations

from typing import Any

from sympy import Rational

from mathgen.asks.expression import Ask, Choice, Quantity, Value
from mathgen.bank.plan import ChosenForm, ChosenSheet, Graph, SheetPlan
from mathgen.exact.demand import Demand
from mathgen.grades.curriculum import load
from mathgen.problems.record import Answer, Given, Problem, Slip, Step
from mathgen.scenario.words import scenario
from mathgen.sheets.page_words import page_words
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable

SET_UP = {"red": 4, "blue": 3, "gold": 5}
RESULTS = {
    ("Owls", 1): (3, 2, 4),
    ("Owls", 2): (1, 3, 2),
    ("Herons", 1): (4, 1, 3),
    ("Herons", 2): (2, 2, 5),
    ("Swifts", 1): (2, 3, 1),
    ("Swifts", 2): (4, 2, 3),
}
TABLE = TrialTable(
    tuple(
        Row(group, trial, color, SET_UP[color], down)
        for (group, trial), counts in RESULTS.items()
        for color, down in zip(SET_UP, counts, strict=True)
    )
)
I_CAN = {
    "put together total": "I can add to find how many in all.",
    "how many more": "I can find how many more and how many fewer.",
    "fraction left standing": "I can subtract fractions of one whole.",
    "compare fractions": "I can compare two fractions of sets of the same size.",
    "percent of a set": "I can find a percent of a set.",
    "percent change": "I can find by what percent a number changed.",
}


def words(grade: int, table: TrialTable = TABLE) -> dict[str, Any]:
    """Our own scenario's words, with phrases for the skills that the problems here name."""
    return {
        **page_words(scenario("ramp"), load("ccss"), table, grade),
        "i_can": I_CAN,
        "topics": {skill: "topic of " + skill for skill in I_CAN},
    }


def problem(
    text: str,
    shown: str,
    *,
    unit: str = "",
    form: str = "any",
    accepted: tuple[str, ...] = (),
    steps: tuple[str, ...] = (),
    slips: tuple[tuple[str, str], ...] = (),
    standards: tuple[str, ...] = ("4.NF.B.3d",),
    grade: int = 4,
    skill: str = "fraction left standing",
    level: str = "on grade",
    reads: Scope | None = None,
    where: str = "table",
    hides: tuple[Scope, ...] = (),
    labels: tuple[str, ...] = (),
) -> Problem:
    """A problem whose asks are only as full as paper needs them."""
    facts, _, question = text.rpartition(". ")
    leaf = Quantity("down", Scope())
    goal = Choice(labels, tuple(leaf for _ in labels)) if labels else Value(leaf)
    demand = Demand("name" if labels else form)  # type: ignore[arg-type]
    exact = shown if labels else Rational(shown.rstrip("%")) / (100 if shown.endswith("%") else 1)
    givens = (Given("", Rational(0), leaf, "pins knocked down", reads, where),) if reads is not None else ()  # type: ignore[arg-type]
    answer = Answer("name" if labels else "number", exact, shown, f"{shown} {unit}".strip(), (shown, *accepted), demand)
    return Problem(
        grade=grade,
        curriculum="ccss",
        standards=standards,
        skill=skill,
        strand="fractions",
        model="by_hand",
        level=level,  # type: ignore[arg-type]
        difficulty=8,
        ask=Ask(goal, (), demand),
        frame="1",
        facts=f"{facts}." if facts else "",
        question=question,
        cells=(),
        answer=answer,
        steps=tuple(map(Step, steps)),
        board=steps,
        relation="x = 0",
        givens=givens,
        slips=tuple(Slip(f"S{i}", value, line) for i, (value, line) in enumerate(slips)),
        must_not_show=hides,
        proof=(),
    )


GRADE_2 = (
    problem(
        "Look at Trial 1. The Owls knocked down 3 red, 2 blue, and 4 gold pins. How many pins did the Owls knock down in Trial 1?",
        "9",
        unit="pins",
        form="whole",
        steps=("3 + 2 + 4 = 9",),
        slips=(("5", "Did you add all three colors?"),),
        standards=("2.OA.A.1",),
        grade=2,
        skill="put together total",
        level="support",
    ),
    problem(
        "The Owls knocked down 15 pins in two trials. The Herons knocked down 17 pins in two trials. How many pins did the two "
        "groups knock down in all?",
        "32",
        unit="pins",
        form="whole",
        steps=("15 + 17 = 32",),
        slips=(("22", "Look at the tens again."), ("2", "In all means put together.")),
        standards=("2.NBT.B.5",),
        grade=2,
        skill="put together total",
    ),
    problem(
        "Look at the bar graph. How many more gold pins than blue pins were knocked down?",
        "3",
        unit="pins",
        form="whole",
        steps=("7 - 4 = 3",),
        slips=(("11", "How many more asks for the gap."),),
        standards=("2.MD.D.10",),
        grade=2,
        skill="how many more",
        reads=Scope(trials=(1,)),
        where="graph",
    ),
    problem(
        "Use the table. How many red pins did the Owls and the Herons knock down in Trial 1?",
        "7",
        unit="pins",
        form="whole",
        steps=("3 + 4 = 7",),
        slips=(("3", "Read both rows."),),
        standards=("2.OA.A.1",),
        grade=2,
        skill="put together total",
        reads=Scope(("Owls", "Herons"), (1,), ("red",)),
    ),
    problem(
        "The Herons set up 12 pins for Trial 2. The Herons knocked down 2 red, 2 blue, and 5 gold pins. How many pins were left standing?",
        "3",
        unit="pins",
        form="whole",
        steps=("2 + 2 + 5 = 9", "12 - 9 = 3"),
        slips=(("9", "That is how many fell."),),
        standards=("2.OA.A.1",),
        grade=2,
        skill="how many more",
        level="challenge",
    ),
    problem(
        "The Herons knocked down 6 red pins. The Herons knocked down 5 more red pins than the Owls. How many red pins did the "
        "Owls knock down?",
        "1",
        unit="pin",
        form="whole",
        steps=("6 - 5 = 1",),
        slips=(("11", "Who knocked down more?"),),
        standards=("1.OA.A.1",),
        grade=1,
        skill="how many more",
    ),
)
GRADE_4 = (
    problem(
        "The class knocked down 8 blue pins in 2 trials. Counting all colors, the class knocked down 4 times as many pins. How "
        "many pins of all colors did the class knock down?",
        "32",
        unit="pins",
        form="whole",
        steps=("4 * 8 = 32",),
        slips=(("12", "Times as many asks you to multiply."),),
        standards=("4.OA.A.2",),
        level="support",
        skill="times as many",
    ),
    problem(
        "The Owls set up 12 pins for Trial 1. The Owls knocked down 9/12 of the 12 pins. What fraction of the 12 pins were left standing?",
        "3/12",
        accepted=("1/4",),
        steps=("12/12 - 9/12 = 3/12",),
        slips=(("9/12", "That is the part that fell."), ("3/9", "The whole is the 12 pins.")),
    ),
    problem(
        "In 2 trials, each group set up 10 gold pins in all. The Owls knocked down 6/10 of the 10 gold pins. The Herons knocked "
        "down 4/5 of the 10 gold pins. Which group knocked down the greater fraction of its 10 gold pins?",
        "Herons",
        labels=("Owls", "Herons"),
        steps=("4/5 = 8/10", "8/10 > 6/10"),
        slips=(("Owls", "Write both as tenths first."),),
        standards=("4.NF.A.2",),
        skill="compare fractions",
    ),
    problem(
        "In Trial 1, the two groups set up 10 gold pins in all. Use the table to count the gold pins knocked down. As a decimal, "
        "what part of the 10 gold pins was knocked down?",
        "0.7",
        accepted=(".7", "0.70"),
        form="decimal",
        steps=("4 + 3 = 7", "7/10 = 0.7"),
        slips=(("7.10", "The point is not the bar."),),
        standards=("4.NF.C.6",),
        reads=Scope(("Owls", "Herons"), (1,), ("gold",)),
        skill="tenths as a decimal",
    ),
    problem(
        "The class set up 8 red pins for each trial. The class knocked down 7/8 of the 8 red pins in Trial 1. The class knocked "
        "down 3/8 of the 8 red pins in Trial 2. How much greater is the fraction for Trial 1?",
        "4/8",
        accepted=("1/2",),
        steps=("7/8 - 3/8 = 4/8",),
        slips=(("10/8", "How much greater asks for the gap."),),
    ),
    problem(
        "Use the table. How many more red pins did the Herons knock down in Trial 1 than in Trial 2?",
        "2",
        unit="pins",
        form="whole",
        steps=("4 - 2 = 2",),
        slips=(("6", "How many more asks for the gap."),),
        standards=("3.OA.D.8",),
        grade=3,
        reads=Scope(("Herons",), (1, 2), ("red",)),
        skill="how many more",
    ),
    problem(
        "Look at the bar graph. How many fewer blue pins than gold pins were knocked down?",
        "2",
        unit="pins",
        form="whole",
        steps=("8 - 6 = 2",),
        slips=(("14", "How many fewer asks for the gap."),),
        standards=("3.MD.B.3",),
        grade=3,
        reads=Scope(trials=(1,)),
        where="graph",
        skill="how many more",
    ),
    problem(
        "The Swifts set up 12 pins for each of 2 trials, 24 pins in all. The Swifts knocked down 15 pins. Next time, the Swifts "
        "want to knock down 3 times as many pins. How many pins is that?",
        "45",
        unit="pins",
        form="whole",
        steps=("3 * 15 = 45",),
        slips=(("18", "Times as many asks you to multiply."),),
        standards=("4.OA.A.2",),
        level="challenge",
        skill="times as many",
    ),
)
GRADE_7 = (
    problem(
        "The Herons knocked down 8 pins in Trial 1 and 10 pins in Trial 2. By what percent did the number of pins knocked down increase?",
        "25%",
        accepted=("25",),
        form="percent",
        steps=("10 - 8 = 2", "2/8 = 25/100"),
        slips=(("20%", "The base is Trial 1."),),
        standards=("7.RP.A.3",),
        grade=7,
        skill="percent change",
        level="support",
    ),
    problem(
        "In Trial 2, the Owls knocked down 100% of the 3 blue pins and 40% of the 5 gold pins. What percent of the 8 blue and "
        "gold pins did the Owls knock down?",
        "62.5%",
        accepted=("62 1/2%",),
        form="percent",
        steps=("3 + 2 = 5", "5/8 = 625/1000"),
        slips=(("70%", "The sets are not the same size."),),
        standards=("7.EE.B.3",),
        grade=7,
        skill="percent of a set",
        level="challenge",
    ),
    problem(
        "In 2 trials, the class knocked down 2 1/2 times as many gold pins as blue pins. The class knocked down 8 blue pins. How "
        "many gold pins did the class knock down?",
        "20",
        unit="pins",
        form="whole",
        steps=("5/2 * 8 = 20",),
        slips=(("10 1/2", "Times as many asks you to multiply."),),
        standards=("7.RP.A.3",),
        grade=7,
        skill="times as many",
    ),
    problem(
        "Use the table. In Trial 1, what fraction of the red pins that the three groups set up were not knocked down, in simplest form?",
        "1/4",
        form="simplest",
        steps=("12 - 9 = 3", "3/12 = 1/4"),
        slips=(("3/4", "That is the part that fell."),),
        standards=("6.RP.A.3",),
        grade=6,
        reads=Scope(None, (1,), ("red",)),
        skill="percent of a set",
    ),
    problem(
        "The Owls want a mean of 8 pins for 3 trials. Use the table for Trial 1 and Trial 2. How many pins must the Owls knock "
        "down in Trial 3?",
        "9",
        unit="pins",
        form="whole",
        steps=("3 * 8 = 24", "24 - 9 - 6 = 9"),
        slips=(("8", "The mean is not each trial."),),
        standards=("6.SP.B.5c",),
        grade=6,
        reads=Scope(("Owls",), None, None),
        skill="goal mean",
    ),
    problem(
        "In 2 trials, the class knocked down 10 of 16 red pins and 8 of 12 blue pins. Which color had the greater fraction of "
        "its pins knocked down?",
        "blue",
        labels=("red", "blue"),
        steps=("8/12 = 32/48", "10/16 = 30/48", "32/48 > 30/48"),
        slips=(("red", "10 is more pins, but of a bigger set."),),
        standards=("6.RP.A.3a",),
        grade=6,
        skill="compare fractions",
    ),
    problem(
        "In 2 trials, the Herons knocked down 75% of the red pins set up. Next time, the Herons will set up 40 red pins. At the "
        "same rate, how many red pins would be knocked down?",
        "30",
        unit="pins",
        form="whole",
        steps=("75/100 * 40 = 30",),
        slips=(("10", "That is the part left standing."), ("75", "75 is the percent.")),
        standards=("7.RP.A.3",),
        grade=7,
        skill="percent of a set",
    ),
    problem(
        "The Owls set up 5 gold pins for each trial. The Owls knocked down 80% of the gold pins in Trial 1 and 40% in Trial 2. "
        "What is the percent decrease in gold pins knocked down?",
        "50%",
        accepted=("50",),
        form="percent",
        steps=("4 - 2 = 2", "2/4 = 50/100"),
        slips=(("40%", "40 is a drop in percentage points."),),
        standards=("7.RP.A.3",),
        grade=7,
        skill="percent change",
    ),
)
BY_GRADE = {2: GRADE_2, 4: GRADE_4, 7: GRADE_7}
GRAPHS = {
    2: Graph(Scope(("Owls", "Herons"), (1,), None), ("red", "blue", "gold"), (7, 3, 7)),
    4: Graph(Scope(None, (1,), None), ("red", "blue", "gold"), (9, 6, 8)),
    7: None,
}


def sheet(grade: int, forms: int = 1, **plan: object) -> ChosenSheet:
    """A sheet of the grade's problems; form B has them with the first two exchanged."""
    problems = BY_GRADE[grade]
    swapped = (problems[1], problems[0], *problems[2:])
    made = tuple(ChosenForm(mark, problems if mark == "A" else swapped, GRAPHS[grade]) for mark in "ABC"[:forms])
    changes = (
        ("The table has no two groups with equal sets of 3 blue pins, so one problem on comparing fractions was left out.",)
        if forms > 1
        else ()
    )
    return ChosenSheet(SheetPlan(grade=grade, forms=forms, **plan), "4Q7K2M0X9R5T", made, changes)  # type: ignore[arg-type]


def sheet_of(problems: tuple[Problem, ...], grade: int, **plan: object) -> ChosenSheet:
    """A sheet of one form with these problems and no graph."""
    return ChosenSheet(SheetPlan(grade=grade, **plan), "4Q7K2M0X9R5T", (ChosenForm("A", problems, None),), ())  # type: ignore[arg-type]
