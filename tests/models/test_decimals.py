"""The decimal models on one small table; every value, step and slip worked by hand."""

from random import Random

import pytest

from mathgen.asks.expression import Stated
from mathgen.bank.builder import Builder, Candidate, Stopped
from mathgen.bank.desk import Desk
from mathgen.grades.curriculum import load
from mathgen.models.registry import problem_models
from mathgen.problems.draft import Draft
from mathgen.proof.judge import proved
from mathgen.scenario.words import scenario
from mathgen.sheets.key import worked_lines
from mathgen.trials.scope import Scope
from mathgen.trials.table import Row, TrialTable
from tests.models.asked import every_draft, model, said, worked
from tests.tables import table

TABLE = TrialTable(
    (
        Row("Owls", 1, "red", 4, 3),
        Row("Owls", 1, "gold", 5, 4),
        Row("Owls", 2, "red", 4, 2),
        Row("Owls", 2, "gold", 5, 3),
        Row("Herons", 1, "red", 4, 4),
        Row("Herons", 1, "gold", 5, 0),
        Row("Herons", 2, "red", 4, 1),
        Row("Herons", 2, "gold", 5, 1),
    )
)
DESK = Desk(TABLE, scenario("ramp"))
MODEL = next(model for model in problem_models() if model.name == "part_as_decimal")


def draft_of(*scope: tuple[str | int, ...] | None) -> Draft | None:
    space = MODEL.space(DESK.view)
    found = [d for d in map(space.draft, range(space.size)) if d is not None and d.roles["part"].scope == Scope(*scope)]
    assert len(found) <= 1
    return found[0] if found else None


@pytest.mark.parametrize(
    ("scope", "grade", "answer", "steps", "slips"),
    [
        # 7 of 10 in grade 4; 0.7 is also what the top alone would give, and 0.710 nobody writes: those slips are not there.
        (
            (("Owls",), None, ("gold",)),
            4,
            "0.7",
            ["7 / 10 = 7/10", "7/10 = 0.7"],
            {"D01": "7.1", "A03": "0.3", "D18": "0.07"},
        ),
        # 3 of 4: hundredths. 4 / 3 repeats, which grade 4 does not write.
        (
            (("Owls",), (1,), ("red",)),
            4,
            "0.75",
            ["3 / 4 = 3/4", "3/4 = 75/100", "75/100 = 0.75"],
            {"D01": "3.4", "D02": "0.34", "D04": "0.3", "A03": "0.25"},
        ),
        # 5 of 8: thousandths are grade 5. 8 / 5 = 1.6
        (
            (("Owls",), None, ("red",)),
            5,
            "0.625",
            ["5 / 8 = 5/8", "5/8 = 625/1000", "625/1000 = 0.625"],
            {"D22": "0.63", "D01": "5.8", "D02": "0.58", "D04": "0.5", "A03": "0.375", "D05": "1.6"},
        ),
        # 7 of 9: 0.777... in grade 7. 9 / 7 has a block of six digits, which no pupil would write.
        (
            (("Owls",), (1,), None),
            7,
            "0.777...",
            ["7 / 9 = 7/9"],
            {"N06": "0.77", "D01": "7.9", "D02": "0.79", "D04": "0.7", "A03": "0.222..."},
        ),
    ],
)
def test_a_part_of_a_set_as_a_decimal(scope, grade, answer, steps, slips):
    draft = draft_of(*scope)
    assert draft is not None
    builder = Builder(DESK, load("ccss"), grade)
    found = builder.candidate(MODEL, draft, Random("1"), frozenset({"words"}))
    assert isinstance(found, Candidate), found
    problem = builder.finish(found)
    assert proved(problem), problem.proof
    assert problem.answer.shown == answer
    assert [step.text for step in problem.steps] == steps
    assert {slip.id: slip.value for slip in problem.slips} == slips
    assert problem.answer.display == answer


@pytest.mark.parametrize(
    ("scope", "grade"), [((("Owls",), None, ("red",)), 4), ((("Owls",), (1,), ("red",)), 5), ((("Owls",), (1,), None), 5)]
)
def test_each_kind_of_decimal_has_its_grade(scope, grade):
    """CCSS 4.NF.C.6 tenths and hundredths, 5.NBT.A.3 thousandths, 7.NS.A.2d repeating decimals."""
    draft = draft_of(*scope)
    assert draft is not None
    assert isinstance(Builder(DESK, load("ccss"), grade).candidate(MODEL, draft, Random("1")), Stopped)


def test_nothing_and_everything_are_not_asked_for():
    """4 of 4 red, 0 of 5 gold; 2 of 4 red pins are asked for: such a set leaves little choice."""
    assert draft_of(("Herons",), (1,), ("red",)) is None
    assert draft_of(("Herons",), (1,), ("gold",)) is None
    assert draft_of(("Owls",), (2,), ("red",)) is not None


@pytest.mark.parametrize(
    ("size", "downs", "grade", "answer", "relation", "steps", "slips"),
    [
        # 55 hundredths look like more than 6 tenths.
        (20, (11, 12), 4, "Herons", "x = Max(11/20, 12/20)", ("0.6 = 0.60",), {"E01": "Owls"}),
        # 0.625 is longer and greater: only "shorter is larger" misleads.
        (8, (5, 4), 5, "Owls", "x = Max(5/8, 4/8)", ("0.5 = 0.500",), {"E02": "Herons"}),
    ],
)
def test_decimals_of_two_lengths_are_compared_by_hand(size, downs, grade, answer, relation, steps, slips):
    """CCSS 4.NF.C.7 to hundredths, 5.NBT.A.3b to thousandths."""
    results = table({"gold": size}, {("Owls", 1): downs[:1], ("Herons", 1): downs[1:]})
    (draft,) = every_draft("compare_decimals", results)
    one = said("compare_decimals", results, grade, draft)
    assert worked(one) == (answer, relation, steps, slips)
    other = Builder(Desk(results, scenario("ramp")), load("ccss"), 9 - grade).candidate(model("compare_decimals"), draft, Random("1"))
    assert isinstance(other, Stopped)


def test_what_shows_the_greater_decimal_has_as_many_places():
    results = table({"gold": 20}, {("Owls", 1): (11,), ("Herons", 1): (12,)})
    (draft,) = every_draft("compare_decimals", results)
    assert said("compare_decimals", results, 4, draft).answer.because == "0.60 > 0.55"


@pytest.mark.parametrize("downs", [(12, 14), (0, 11), (11, 20), (11, 11)])
def test_decimals_of_one_length_and_empty_or_whole_sets_are_not_compared(downs):
    """0.6 and 0.7; nothing; everything; a tie."""
    results = table({"gold": 20}, {("Owls", 1): downs[:1], ("Herons", 1): downs[1:]})
    assert not list(every_draft("compare_decimals", results))


@pytest.mark.parametrize(
    ("down", "answer", "because", "slips"),
    [
        (3, "0.4", "0.375 rounds to 0.4", {"D15": "0.3", "E11": "0", "A03": "0.6"}),
        (5, "0.6", "0.625 rounds to 0.6", {"E12": "0.7", "E11": "1", "A03": "0.4"}),
    ],
)
def test_a_decimal_is_rounded_to_tenths_by_hand(down, answer, because, slips):
    """CCSS 5.NBT.A.4."""
    results = table({"gold": 8}, {("Owls", 1): (down,)})
    (draft,) = every_draft("round_decimal", results)
    one = said("round_decimal", results, 5, draft)
    assert worked(one) == (answer, f"8*x = {down}", (f"0.{1000 * down // 8} = {1000 * down // 8}/1000",), slips)
    assert one.answer.because == because
    counted = said("round_decimal", results, 5, draft, frozenset({"table"}))
    assert counted.steps[0].text == f"{down} / 8 = {down}/8"


@pytest.mark.parametrize(("size", "down"), [(4, 1), (10, 3), (20, 11), (3, 1), (50, 1)])
def test_ties_and_what_needs_no_rounding_are_not_rounded(size, down):
    """0.25 and 0.55 tie; 0.3 has tenths only; 0.333... is no grade 5 decimal; 0.02 is nothing to the nearest tenth."""
    assert not list(every_draft("round_decimal", table({"gold": size}, {("Owls", 1): (down,)})))


def test_a_repeating_decimal_as_a_fraction_worked_by_hand() -> None:
    """5 of 12: 100 times is 41.666..., 1000 times is 416.666...; 375 is 900 times the number, and 375/900 is 5/12."""
    results = table({"red": 12}, {("Owls", 1): (5,), ("Owls", 2): (3,)})
    drafts = [one for one in every_draft("fraction_of_repeating", results) if one.rates[0][1] == "0.41666..."]
    one = said("fraction_of_repeating", results, 8, drafts[0])
    assert worked(one) == (
        "5/12",
        "12*x = 5",
        (
            "1000 * 0.41666... = 416.666...",
            "100 * 0.41666... = 41.666...",
            "416.666... - 41.666... = 375",
            "1000 - 100 = 900",
            "375 / 900 = 375/900",
            "375/900 = 5/12",
        ),
        {"N01": "416/1000", "N02": "416/999", "N03": "6/9"},
    )


def test_the_rest_of_a_set_as_a_decimal_worked_by_hand() -> None:
    """7 of 9 fell: 2 of 9 stand, 0.222...; 0.79 is a top and a bottom written side by side."""
    found = [one for one in every_draft("rest_as_decimal", TABLE) if one.roles["part"].scope == Scope(("Owls",), (1,), None)]  # type: ignore[union-attr]
    one = said("rest_as_decimal", TABLE, 7, found[0])
    assert worked(one) == ("0.222...", "9*x = 9 - 7", ("9 - 7 = 2", "2 / 9 = 2/9"), {"N04": "0.777...", "N06": "0.22", "D02": "0.29"})


@pytest.mark.parametrize(
    ("claim", "key", "slips"), [(Stated(5, "claimed", 12), "Yes", {"N05": "No"}), (Stated(416, "claimed", 999), "No", {"N05": "Yes"})]
)
def test_a_fraction_held_against_a_repeating_decimal_by_hand(claim: Stated, key: str, slips: dict[str, str]) -> None:
    """0.41666... is 375/900, which is 5/12; 416/999 repeats the 4 and the 1 as well."""
    results = table({"red": 12}, {("Owls", 1): (5,), ("Owls", 2): (3,)})
    draft = next(one for one in every_draft("equal_to_repeating", results) if one.roles["claim"] == claim)
    one = said("equal_to_repeating", results, 8, draft)
    assert (one.answer.shown, {slip.id: slip.value for slip in one.slips}) == (key, slips)
    assert [step.text for step in one.steps][-1] == "375 / 900 = 375/900"
    assert "375/900 = 5/12" in worked_lines(one)
