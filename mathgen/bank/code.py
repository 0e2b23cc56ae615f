"""The sheet code: what is needed to make a sheet again, in 15 characters.

Thirty-two signs without I, L, O and U (as in Crockford's base 32), the last one a check sign that finds every single wrong sign
and nearly every swap of neighbors (Luhn's scheme, modulo 32). A fixed stirring of the bits keeps the grade from being read off.
"""

from __future__ import annotations

from dataclasses import replace
from hashlib import blake2b
from typing import NamedTuple

from mathgen.bank.plan import SheetPlan
from mathgen.errors import RequestFault
from mathgen.trials.table import TrialTable

RELEASE = 6  # raised whenever the same table, plan and seed would make another sheet
SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
MARK_LENGTH = 4  # of the mark on cards
_LENGTH = 14
_BITS = 5 * _LENGTH
_STIR = 0x2545F4914F6CDD1D7  # odd, so that multiplying modulo a power of two can be undone
_MASK = (1 << _BITS) - 1
_LEVELS = (None, "support", "on grade", "challenge")
_CURRICULA = ("ccss", "england")
_SCENARIOS = ("ramp", "seeds")
_LONG = ("count", "pages", "minutes")
_EACH_GROUP = 3  # in the field of forms, beside tiers: tiers have no forms, so that this pair stands for a form a group
NOT_IN_A_CODE = "topics, skills, standards, topics not taught yet, a story at several grades, more than 4 forms, own words, a large seed"
_WIDTHS = {  # bits of each field
    "tiers": 1,
    "release": 6,
    "digest": 24,
    "seed": 14,
    "grade": 4,
    "long": 2,
    "length": 6,
    "level": 2,
    "forms": 2,
    "paper": 1,
    "layout": 1,
    "large": 1,
    "curriculum": 2,
    "scenario": 2,
    "choices": 1,
    "from_file": 1,
}


class Decoded(NamedTuple):
    """What a code says. ``plan`` is None where only the key file can make the sheet again."""

    plan: SheetPlan | None
    scenario: str
    digest: int
    release: int


def table_digest(table: TrialTable) -> int:
    """24 bits of the table's rows: another table has another digest, but for one in 16 million."""
    lines = [*(repr((row.group, row.trial, row.color, row.set_up, row.down)) for row in table.rows), *map(repr, table.prices)]
    text = "\n".join(lines)
    return int.from_bytes(blake2b(text.encode(), digest_size=3).digest(), "big")


def sheet_code(plan: SheetPlan, table: TrialTable, scenario: str) -> str:
    """The code of a sheet. A plan that does not fit gets a code that points to the key file.

    How many copies are printed is not in it: it says which sheet this is.
    """
    long = next((name for name in _LONG if getattr(plan, name) is not None), None)
    length = getattr(plan, long) if long else 0
    fits = (
        not (plan.topics or plan.standards or plan.skills or plan.not_yet or plan.same_story)
        and 0 <= plan.seed < 1 << _WIDTHS["seed"]
        and length < 1 << _WIDTHS["length"]
        and plan.forms <= 1 << _WIDTHS["forms"]
        and plan.curriculum in _CURRICULA
        and scenario in _SCENARIOS
    )
    values = {"release": RELEASE, "digest": table_digest(table)}
    if fits:
        values |= {
            "seed": plan.seed,
            "grade": plan.grade,
            "long": _LONG.index(long) + 1 if long else 0,
            "length": length,
            "level": _LEVELS.index(plan.level),
            "forms": _EACH_GROUP if plan.each_group else plan.forms - 1,
            "paper": plan.paper == "a4",
            "layout": plan.layout == "save-paper",
            "large": plan.large_print,
            "curriculum": _CURRICULA.index(plan.curriculum),
            "scenario": _SCENARIOS.index(scenario),
            "choices": plan.choices,
            "tiers": plan.tiers or plan.each_group,
        }
    else:
        wishes = repr((replace(plan, copies=1), scenario)).encode()
        values |= {"from_file": 1, "seed": int.from_bytes(blake2b(wishes, digest_size=2).digest(), "big") % (1 << _WIDTHS["seed"])}
    return _signs(_packed(values))


def _packed(values: dict[str, int]) -> int:
    number = 0
    for name, width in _WIDTHS.items():
        number = number << width | int(values.get(name, 0))
    return number


def _signs(number: int) -> str:
    stirred = (number * _STIR) & _MASK
    stirred ^= stirred >> 35
    signs = "".join(SIGNS[stirred >> 5 * place & 31] for place in reversed(range(_LENGTH)))
    return signs + _check_sign(signs)


def _check_sign(signs: str) -> str:
    total = 0
    for place, sign in enumerate(reversed(signs)):
        doubled = SIGNS.index(sign) * (2 if place % 2 == 0 else 1)
        total += doubled // 32 + doubled % 32
    return SIGNS[-total % 32]


def decode(code: str) -> Decoded:
    """What a sheet code says, typed in any case, with blanks or hyphens.

    Raises:
        RequestFault: no sheet code, or one with a wrong sign.
    """
    signs = "".join(sign for sign in code.upper() if sign not in " -").translate(str.maketrans("ILO", "110"))
    if len(signs) == MARK_LENGTH and all(sign in SIGNS for sign in signs):
        raise RequestFault(
            f'"{code}" is the mark of a deck of cards, no sheet code. Cards are printed again from their key file: '
            "mathgen reprint grade...-cards-key.json --out FOLDER."
        )
    if len(signs) != _LENGTH + 1 or any(sign not in SIGNS for sign in signs):
        raise RequestFault(
            f'"{code}" is no sheet code: expected {_LENGTH + 1} characters, digits and letters without I, L, O, U. '
            "It stands at the foot of the sheet."
        )
    if _check_sign(signs[:-1]) != signs[-1]:
        raise RequestFault(f'"{code}" has a wrong sign: its check sign does not fit. Compare it with the foot of the sheet.')
    stirred = 0
    for sign in signs[:-1]:
        stirred = stirred << 5 | SIGNS.index(sign)
    stirred ^= stirred >> 35
    number = stirred * pow(_STIR, -1, 1 << _BITS) & _MASK
    values: dict[str, int] = {}
    for name, width in reversed(_WIDTHS.items()):
        values[name] = number & (1 << width) - 1
        number >>= width
    return _decoded(values)


def _decoded(values: dict[str, int]) -> Decoded:
    scenario = _SCENARIOS[min(values["scenario"], len(_SCENARIOS) - 1)]
    if values["from_file"]:
        return Decoded(None, scenario, values["digest"], values["release"])
    each_group = bool(values["tiers"]) and values["forms"] == _EACH_GROUP
    plan = SheetPlan(
        grade=values["grade"],
        seed=values["seed"],
        curriculum=_CURRICULA[min(values["curriculum"], len(_CURRICULA) - 1)],
        level=_LEVELS[values["level"]],
        forms=1 if each_group else values["forms"] + 1,
        each_group=each_group,
        paper="a4" if values["paper"] else "letter",
        layout="save-paper" if values["layout"] else "more-room",
        large_print=bool(values["large"]),
        choices=bool(values["choices"]),
        tiers=bool(values["tiers"]) and not each_group,
    )
    if values["long"]:
        plan = replace(plan, **{_LONG[values["long"] - 1]: values["length"]})  # type: ignore[arg-type]
    return Decoded(plan, scenario, values["digest"], values["release"])
