"""Good problems on a small table, as bank lines, each worked by hand: what the audit's own tests plant faults in."""

from __future__ import annotations

from typing import Any

from tests.audit.results import RawRow, Results

ROWS = Results(
    tuple(
        RawRow(group, trial, color, set_up, down)
        for group, trial, downs in (("Owls", 1, (3, 2, 4)), ("Owls", 2, (1, 3, 2)), ("Herons", 1, (4, 1, 3)), ("Herons", 2, (2, 2, 5)))
        for color, set_up, down in zip(("red", "blue", "gold"), (4, 3, 5), downs, strict=True)
    )
)


def scope(groups: Any = "all", trials: Any = "all", colors: Any = "all") -> dict[str, Any]:
    return {"groups": groups, "trials": trials, "colors": colors}


def told(number: str, quantity: str, **where: Any) -> dict[str, Any]:
    return {"number": number, "quantity": quantity, "scope": scope(**where) if where else None, "where": "words"}


PROVED = {"steps": "agrees", "relation": "agrees", "forms": "agrees"}

# Grade 2: worked by hand from the rows above.
STANDING: dict[str, Any] = {
    "id": "a",
    "grade": 2,
    "standards": ["2.OA.A.1"],
    "skill": "two steps, what is left",
    "strand": "counting",
    "model": "two_step_left_standing",
    "level": "on grade",
    "text": "The Herons set up 12 pins for Trial 2. The Herons knocked down 2 red, 2 blue, and 5 gold pins."
    " How many pins were left standing?",
    "needs_table": False,
    "cells": [],
    "answer": {"kind": "number", "value": "3", "display": "3 pins", "accepted": ["3"], "demands": "whole", "exact": "3"},
    "steps": ["2 + 2 + 5 = 9", "12 - 9 = 3"],
    "relation": "2 + 2 + 5 + x = 12",
    "givens": [
        told("12", "pins set up", groups=["Herons"], trials=[2]),
        told("2", "red pins knocked down", groups=["Herons"], trials=[2], colors=["red"]),
        told("2", "blue pins knocked down", groups=["Herons"], trials=[2], colors=["blue"]),
        told("5", "gold pins knocked down", groups=["Herons"], trials=[2], colors=["gold"]),
    ],
    "slips": [{"id": "H07", "value": "9", "line": "That is how many were knocked down. Go on to the pins left standing."}],
    "proof": PROVED,
}

# Grade 4: one whole.
REST: dict[str, Any] = {
    "id": "b",
    "grade": 4,
    "standards": ["4.NF.B.3d"],
    "skill": "rest of one whole",
    "strand": "fractions",
    "model": "fraction_left_standing",
    "level": "on grade",
    "text": "The Owls set up 12 pins for Trial 1. The Owls knocked down 9/12 of the 12 pins."
    " What fraction of the 12 pins were left standing?",
    "needs_table": False,
    "cells": [],
    "answer": {
        "kind": "number",
        "value": "1/4",
        "display": "3/12",
        "accepted": ["3/12", "1/4", "0.25", "25%"],
        "demands": "any",
        "exact": "1/4",
    },
    "steps": ["12/12 - 9/12 = 3/12"],
    "relation": "9/12 + x = 1",
    "givens": [
        told("12", "pins set up", groups=["Owls"], trials=[1]),
        told("9/12", "pins knocked down out of pins set up"),
    ],
    "slips": [{"id": "A03", "value": "9/12", "line": "You gave the fallen pins. The question asks about the standing ones."}],
    "proof": PROVED,
}

# Grade 4: a name, read from the table.
WHICH: dict[str, Any] = {
    "id": "c",
    "grade": 4,
    "standards": ["4.NF.A.2"],
    "skill": "compare fractions",
    "strand": "fractions",
    "model": "compare_fractions",
    "level": "challenge",
    "text": "In Trials 1 and 2, each group set up 10 gold pins. The Owls knocked down 6/10 of the 10 gold pins."
    " The Herons knocked down 4/5 of the 10 gold pins. Which group knocked down the greater fraction of its 10 gold pins?",
    "needs_table": False,
    "cells": [],
    "answer": {
        "kind": "name",
        "value": "Herons",
        "display": "Herons (8/10 > 6/10)",
        "accepted": ["Herons"],
        "demands": "name",
        "exact": "Herons",
    },
    "steps": ["4/5 = 8/10", "8/10 > 6/10, so Herons"],
    "relation": "x = Max(6/10, 8/10)",
    "givens": [
        told("10", "gold pins set up", groups=["Owls"], colors=["gold"]),
        told("10", "gold pins set up", groups=["Herons"], colors=["gold"]),
        told("6/10", "gold pins knocked down out of gold pins set up"),
        told("4/5", "gold pins knocked down out of gold pins set up"),
    ],
    "slips": [{"id": "B05", "value": "Owls", "line": "Look at how many were set up as well."}],
    "proof": PROVED,
}

# Grade 7: a rounded percent.
POOLED: dict[str, Any] = {
    "id": "d",
    "grade": 7,
    "standards": ["7.EE.B.3"],
    "skill": "percent of a set",
    "strand": "percents",
    "model": "percent_of_set",
    "level": "challenge",
    "text": "In Trial 1, the Owls knocked down 3 of the 4 red pins. The Owls also knocked down 4 of the 5 gold pins."
    " What percent of the red and gold pins set up did the Owls knock down? Round to the nearest tenth of a percent.",
    "needs_table": False,
    "cells": [],
    "answer": {"kind": "number", "value": "389/500", "display": "77.8%", "accepted": ["77.8%"], "demands": "percent:1", "exact": "7/9"},
    "steps": [
        "3 + 4 = 7",
        "4 + 5 = 9",
        "7 out of 9: 7/9",
        "7/9 = 0.7777... = 77.77...%",
        "77.77...% is between 77.7% and 77.8%",
        "77.77...% is nearer to 77.8%",
    ],
    "relation": "(4 + 5)*x = 3 + 4",
    "givens": [
        told("3", "red pins knocked down", groups=["Owls"], trials=[1], colors=["red"]),
        told("4", "red pins set up", groups=["Owls"], trials=[1], colors=["red"]),
        told("4", "gold pins knocked down", groups=["Owls"], trials=[1], colors=["gold"]),
        told("5", "gold pins set up", groups=["Owls"], trials=[1], colors=["gold"]),
    ],
    "slips": [{"id": "F12", "value": "77.5%", "line": "The two sets are of different sizes. Put the pins together first."}],
    "proof": PROVED,
}

# Grade 2: two cells of the table.
READ: dict[str, Any] = {
    "id": "e",
    "grade": 2,
    "standards": ["2.OA.A.1"],
    "skill": "total of parts",
    "strand": "counting",
    "model": "put_together_total",
    "level": "support",
    "text": "Use the results table for Trials 1 and 2. How many red pins did the Owls knock down in all?",
    "needs_table": True,
    "cells": [{"group": "Owls", "trial": 1, "color": "red"}, {"group": "Owls", "trial": 2, "color": "red"}],
    "answer": {"kind": "number", "value": "4", "display": "4 pins", "accepted": ["4"], "demands": "whole", "exact": "4"},
    "steps": ["3 + 1 = 4"],
    "relation": "3 + 1 = x",
    "givens": [
        {"number": "3", "quantity": "red pins knocked down", "scope": scope(["Owls"], [1], ["red"]), "where": "table"},
        {"number": "1", "quantity": "red pins knocked down", "scope": scope(["Owls"], [2], ["red"]), "where": "table"},
    ],
    "slips": [{"id": "H14", "value": "3", "line": "Two trials are asked for."}],
    "proof": PROVED,
}

GOOD = {"STANDING": STANDING, "REST": REST, "WHICH": WHICH, "POOLED": POOLED, "READ": READ}
