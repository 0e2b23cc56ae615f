"""The pupil errors that keys should have first, a choice of ours from sections A to K of the slips: each is in use."""

from __future__ import annotations

from mathgen.models.slips import slip_ids
from tests.audit.banks import EVERY_NAME, sample_problems

_SECTIONS = """
A01 A02 A03 A05 A12 A15
B04 B05 B06
C01 C02 C06 C07
D05 D07 D10 D12 D13
E01 E02 E06
F01 F02 F07 F12
G01 G04 G05
H01 H02 H03 H05 H07
I01 I05 I06
J01 J04
K01 K07
"""
FIRST = tuple(_SECTIONS.split())
# Under another id, as our problems have it: decimals that begin with 0, and one more trial in place of a second group.
AS = {"E06": "E31", "I05": "I41"}
ON_OTHER_TABLES = {"D13"}  # a percent under 10, which no sample has: worked by hand in tests/models/test_percents.py


def test_each_error_of_the_first_list_is_in_the_program() -> None:
    assert [error for error in FIRST if AS.get(error, error) not in slip_ids()] == []


def test_each_error_of_the_first_list_stands_in_a_key_of_some_sample() -> None:
    found = {slip.id for name in EVERY_NAME for problem in sample_problems(name) for slip in problem.slips}
    assert [error for error in FIRST if error not in ON_OTHER_TABLES and AS.get(error, error) not in found] == []
