"""The published limits, written down by hand a second time for the audit.

Source: Common Core State Standards for Mathematics, NGA Center & CCSSO, 2010: footnotes on 3.NF, 4.NF and 4.NBT, and the
standards named beside each line. Wording caps: our own proposal, medians and upper tenths of a published collection of school
problems for grades 1-6, extended by hand to 7 and 8. Cells to be read: our own.
"""

from __future__ import annotations

DENOMINATORS = {1: (), 2: (), 3: (2, 3, 4, 6, 8), 4: (2, 3, 4, 5, 6, 8, 10, 12, 100)}  # footnotes 3.NF, 4.NF; later: any
STORY_MAX = {1: 20, 2: 100, 3: 1000, 4: 1_000_000}  # 1.OA.A.1, 2.OA.A.1, 3.NBT.A.2, footnote 4.NBT
# Codes that let numbers pass that limit: 1.NBT.C.4 adds within 100, 1.NBT.C.6 takes tens from tens up to 90, 2.NBT.B.7 within 1000.
PAST_STORY_MAX = {"1.NBT.A.1": 120, "1.NBT.B.3": 99, "2.NBT.A.4": 999, "1.NBT.C.4": 100, "1.NBT.C.6": 90, "2.NBT.B.7": 1000}
PRODUCT_MAX = {3: 100}  # 3.OA.A.3; one digit times a multiple of ten 10-90 besides, 3.NBT.A.3
DECIMAL_PLACES = {1: 0, 2: 0, 3: 0, 4: 2, 5: 3}  # 4.NF.C.6, 5.NBT.A.3
DECIMAL_PLACES_COMPUTE = {4: 0, 5: 2}  # 5.NBT.B.7
STEPS = {1: 1, 2: 2, 3: 2}  # 2.OA.A.1, 3.OA.D.8; "multi-step" from 4.OA.A.3
STEPS_OF = {("1.OA.D.7",): 2}  # a sum or difference on each side: the standard's own examples
ADDENDS = {1: 3, 2: 4}  # 1.OA.A.2, 2.NBT.B.6
GRAPH_CATEGORIES = {1: 3, 2: 4}  # 1.MD.C.4, 2.MD.D.10
CELLS = {1: 4, 2: 4, 3: 4, 4: 6, 5: 6, 6: 9, 7: 9, 8: 9}

FIRST_GRADE = {
    "two steps": 2,
    "multiply or divide": 3,
    "fraction": 3,
    "remainder": 4,
    "times as many": 4,
    "mixed number": 4,
    "fractions added": 4,
    "whole times fraction": 4,
    "decimal": 4,
    "unlike fractions added": 5,
    "fraction of a quantity": 5,
    "fraction times fraction": 5,
    "decimals computed": 5,
    "quotient as a fraction": 5,
    "ratio or rate": 6,
    "percent": 6,
    "negative": 6,
    "mean": 6,
    "fraction by fraction": 6,
    "percent change": 7,
    "probability": 7,
    "negative computed": 7,
    "repeating decimal": 7,
}
NEVER = ("mode", "range", "pie chart", "line graph", "simplest form", "lowest terms", "average")  # not in the K-8 content standards

# Words a problem, sentences, words in the longest sentence, words in the question.
CAPS = {
    1: (30, 3, 12, 12),
    2: (34, 4, 12, 12),
    3: (42, 4, 15, 12),
    4: (45, 4, 15, 13),
    5: (50, 4, 18, 15),
    6: (52, 4, 18, 15),
    7: (60, 5, 20, 18),
    8: (60, 5, 20, 18),
}

# Codes that a trial table can exercise, as published.
CODES = frozenset(
    """
    1.OA.A.1 1.OA.A.2 1.OA.B.4 1.OA.C.6 1.OA.D.7 1.OA.D.8 1.NBT.A.1 1.NBT.B.3 1.NBT.C.4 1.NBT.C.6 1.MD.C.4
    2.OA.A.1 2.OA.B.2 2.OA.C.3 2.OA.C.4 2.NBT.A.4 2.NBT.B.5 2.NBT.B.6 2.NBT.B.7 2.MD.B.5 2.MD.C.8 2.MD.D.9 2.MD.D.10
    3.OA.A.1 3.OA.A.2 3.OA.A.3 3.OA.A.4 3.OA.C.7 3.OA.D.8 3.NBT.A.1 3.NBT.A.2 3.NBT.A.3 3.NF.A.1 3.NF.A.2b 3.NF.A.3b 3.NF.A.3c 3.NF.A.3d
    3.MD.B.3 3.MD.B.4
    4.OA.A.1 4.OA.A.2 4.OA.A.3 4.OA.B.4 4.NBT.A.3 4.NBT.B.5 4.NBT.B.6 4.NF.A.1 4.NF.A.2 4.NF.B.3a 4.NF.B.3b 4.NF.B.3c 4.NF.B.3d
    4.NF.B.4c 4.NF.C.5 4.NF.C.6 4.NF.C.7 4.MD.A.1 4.MD.A.2 4.MD.B.4
    5.OA.A.1 5.OA.A.2 5.NBT.A.3a 5.NBT.A.3b 5.NBT.A.4 5.NBT.B.5 5.NBT.B.6 5.NBT.B.7 5.NF.A.1 5.NF.A.2 5.NF.B.3 5.NF.B.4a 5.NF.B.5a
    5.NF.B.6 5.NF.B.7c 5.MD.A.1 5.MD.B.2 5.G.A.2
    6.RP.A.1 6.RP.A.2 6.RP.A.3a 6.RP.A.3b 6.RP.A.3c 6.RP.A.3d 6.NS.A.1 6.NS.B.2 6.NS.B.3 6.NS.B.4 6.NS.C.5 6.NS.C.7c 6.EE.A.2c 6.EE.B.6
    6.EE.B.7 6.EE.B.8 6.EE.C.9 6.SP.A.1 6.SP.A.2 6.SP.B.4 6.SP.B.5a 6.SP.B.5b 6.SP.B.5c 6.SP.B.5d
    7.RP.A.1 7.RP.A.2a 7.RP.A.2b 7.RP.A.3 7.NS.A.1b 7.NS.A.1c 7.NS.A.2d 7.NS.A.3 7.EE.A.2 7.EE.B.3 7.EE.B.4a 7.EE.B.4b 7.SP.A.1 7.SP.A.2
    7.SP.B.3 7.SP.B.4 7.SP.C.5 7.SP.C.6 7.SP.C.7a 7.SP.C.7b 7.SP.C.8b 7.SP.C.8c
    8.NS.A.1 8.EE.B.5 8.EE.C.7b 8.EE.C.8c 8.F.B.4 8.SP.A.1 8.SP.A.2 8.SP.A.3 8.SP.A.4
    """.split()  # noqa: SIM905 - a list of this length reads better as words
)
