"""Wording files: enough ways to say each ask, for every grade and both sources; and templates that print without counting."""

from __future__ import annotations

import re
from collections import defaultdict
from functools import cache
from pathlib import Path

import pytest
from jinja2 import Environment, nodes

from mathgen.asks.expression import Price, Quantity, Value
from mathgen.bank.desk import Desk
from mathgen.bank.draw import drafts, stream
from mathgen.models.registry import ProblemModel, problem_models
from mathgen.places import templates_folder
from mathgen.problems.draft import Draft
from mathgen.scenario.words import scenario
from mathgen.wording.frames import frames
from mathgen.wording.say import say
from tests.audit.banks import EVERY_NAME, GRADES, activity, sample, sample_problems
from tests.audit.published import CAPS
from tests.audit.results import Results, Words
from tests.audit.wording import Texts, lengths

FILES = sorted(templates_folder().glob("wording/*/*.j2"))
MODELS = problem_models()

# One word for each family of words that mean the same, so that a swap of synonyms is no new way of saying.
SYNONYMS = (
    (r"\b(altogether|in total|all together)\b", "in all"),
    (r"\b(look at|think about|use|check|read|see)\b", "see"),
    (r"\b(results table|table|chart)\b", "table"),
    (r"\b(find|count|work out)\b", "find"),
    (r"\b(suppose|imagine|say)\b", "suppose"),
    (r"\b(would like|want|wants|hope|hopes)\b", "want"),
    (r"\b(each|every)\b", "each"),
    (r"\b(greater|larger|bigger)\b", "greater"),
    (r"\b(total number|sum|total)\b", "total"),
    (r"\b(the|a|an|that|this)\b", ""),
)

# Trials are sorted in the table: told how many were successes, pupils would have nothing to do.
TABLE_ONLY = {"other_trials_counted", "successes_counted"}
TABLE_ONLY |= {"which_is_statistical"}  # a list would answer one of the two questions
WORDS_ONLY = {
    "next_number",
    "number_before",
    "true_or_false",
    "difference_and_sum",
    "fraction_from_one",
    "fraction_as_sets",
    "is_that_the_array",
    "comparison_true",
    "mean_or_median",
    "sample_estimate",
    "estimate_off",
    "two_way_missing",
    "pins_by_coordinates",
    "off_the_line",
    "total_with_letter",
    "points_in_another_form",
    "inequality_for_goal",
}
# The printed price list is in cents.
WORDS_ONLY |= {"price_as_fraction", "dollars_total", "dollars_difference", "dollars_of_several", "change_in_dollars", "several_on_sale"}
WORDS_ONLY |= {"greater_part_of_dollar", "part_of_dollar_is_more", "add_parts_of_dollar", "rest_of_dollar"}
WORDS_ONLY |= {"farther_from_line", "point_against_the_rest", "positive_or_negative"}  # points are told with both their numbers
WORDS_ONLY |= {"dot_plots_overlap"}  # of the lists only two numbers are worked with
WORDS_ONLY |= {"fair_per_trial", "fair_by_fraction", "fair_by_mean"}  # of some trials only: the table shows the others, too
WORDS_ONLY |= {"association_claimed", "fraction_from_ratio", "next_claimed"}  # row totals, a ratio, and one more result are told
WORDS_ONLY |= {"pictures_in_row"}  # the words tell all that is to be drawn
WORDS_ONLY |= {"add_to_result"}  # the table shows the later trials as well, and invites to add them


def masked(text: str, texts: Texts) -> str:
    """The text with labels, numbers, nouns and synonyms made alike."""
    text = texts.masked(text)
    for item, _ in texts.results.prices:
        text = re.sub(rf"(?<!\w){re.escape(item)}(?!\w)", "ITEM", text, flags=re.IGNORECASE)
    for color in texts.results.colors:
        text = re.sub(rf"(?<!\w){re.escape(color)}(?!\w)", "COLOR", text, flags=re.IGNORECASE)
    text = re.sub(rf"\b({texts.words.items}|{texts.words.item})\b", "ITEM", text, flags=re.IGNORECASE)
    text = re.sub(r"\d+(?:[./,]\d+)*%?", "N", text).lower()
    for pattern, one in SYNONYMS:
        text = re.sub(pattern, one, text)
    return re.sub(r"[^a-z?. ]+|\s+", " ", text).replace("  ", " ").strip()


@cache
def desk(name: str) -> Desk:
    return Desk(sample(name), scenario(activity(name)))


@cache
def some_drafts(model: ProblemModel, name: str) -> tuple[Draft, ...]:
    """Drafts of a model on a sample: a few for every set of marks that a frame must carry."""
    found: dict[frozenset[str], list[Draft]] = defaultdict(list)
    for draft in drafts(model.space(desk(name).view), stream(1, "templates", model.name)):
        if len(found[draft.wanted]) < 12:
            found[draft.wanted].append(draft)
    return tuple(draft for some in found.values() for draft in some)


def ways_of_saying(model: ProblemModel, name: str, grades: tuple[int, ...] = GRADES) -> dict[frozenset[str], set[str]]:
    """By marks: the frames of a model in the given grades, each as it says the same drafts, masked."""
    texts = Texts(Results.of(sample(name).prices or sample(name).rows), Words())
    found: dict[frozenset[str], set[str]] = defaultdict(set)
    for wanted in dict.fromkeys(draft.wanted for draft in some_drafts(model, name)):
        first = next(draft for draft in some_drafts(model, name) if draft.wanted == wanted)
        for frame in frames(model.strand, model.name):
            if any(frame.fits(grade, wanted) for grade in grades):
                words = say(frame, first, desk(name).speaker, desk(name).view.value)
                found[wanted].add(masked(f"{words.facts} {words.question}", texts))
    return found


def samples_of(model: ProblemModel) -> tuple[str, ...]:
    """The samples of the model's kind of table, the main one first."""
    return tuple(name for name in EVERY_NAME if sample(name).kind == model.table)


def offered(model: ProblemModel) -> tuple[int, ...]:
    """The grades in which some sample's bank keeps a problem of a model."""
    return tuple(sorted({problem.grade for name in EVERY_NAME for problem in sample_problems(name) if problem.model == model.name}))


@pytest.mark.parametrize("model", MODELS, ids=lambda model: model.name)
def test_each_ask_can_be_said_in_three_ways_that_differ_when_masked(model: ProblemModel) -> None:
    """Different in frame or in the order of facts after nouns, numbers and synonyms are masked."""
    for wanted, ways in ways_of_saying(model, samples_of(model)[0], offered(model)).items():
        assert len(ways) >= 3, (sorted(wanted), ways)


def _in_table(draft: Draft) -> bool:
    """Whether some given is a count of what was knocked down, or a price."""
    goal = draft.ask.goal
    asked = goal.expr if isinstance(goal, Value) else None
    return any(
        isinstance(leaf, Price) or (isinstance(leaf, Quantity) and leaf.measure == "down" and leaf != asked) for leaf in draft.leaves()
    )


@pytest.mark.parametrize("model", MODELS, ids=lambda model: model.name)
def test_each_grade_can_say_it_in_two_ways_within_its_caps_from_words_and_from_the_table(model: ProblemModel) -> None:
    """Caps: our own proposal, from a published collection of school problems."""
    assert offered(model)
    # The table prints counts of what was knocked down: a fraction or a percent that is given can only be told in words, and so can
    # what was set up, points, every other number that the table has not, and the parts of an equation in x, which is printed with
    # its numbers.
    # An expression or an equation beside the story prints its numbers, too.
    # So do a number sentence to judge, two statistics to choose from, a sample that is drawn, and a two-way table with a gap.
    told_only = (
        model.strand == "equations"
        or model.name in WORDS_ONLY
        or all(draft.rates or draft.ask.given or not _in_table(draft) for name in samples_of(model) for draft in some_drafts(model, name))
    )
    for grade in offered(model):
        words, count_of_sentences, longest, question = CAPS[grade]
        usable: set[str] = set()
        sources: set[str] = set()
        too_long: dict[str, list[int]] = {}  # by frame, the words of its sentences, the question last
        for name in samples_of(model):
            for draft in some_drafts(model, name):
                for frame in frames(model.strand, model.name):
                    if frame.name in usable or not frame.fits(grade, draft.wanted):
                        continue
                    said = say(frame, draft, desk(name).speaker, desk(name).view.value)
                    counted = lengths(f"{said.facts} {said.question}")
                    if said.question.endswith(" Tell why."):  # two words that ask for the reason are no further fact
                        *counted, _ = counted
                    if sum(counted) <= words and len(counted) <= count_of_sentences and max(counted) <= longest and counted[-1] <= question:
                        usable.add(frame.name)
                        sources.add(frame.source)
                    else:
                        too_long[frame.name] = counted
        assert len(usable) >= 2, (grade, usable, CAPS[grade], too_long)
        assert "words" in sources or model.name in TABLE_ONLY, (grade, sources)
        assert told_only or sources & {"table", "graph"}, (grade, sources)


def test_every_wording_file_belongs_to_a_model_and_every_model_has_one() -> None:
    assert {(path.parent.name, path.stem) for path in FILES} == {(model.strand, model.name) for model in MODELS}


COUNTING = (nodes.Add, nodes.Sub, nodes.Mul, nodes.Div, nodes.FloorDiv, nodes.Mod, nodes.Pow, nodes.Neg)
COUNTING_FILTERS = frozenset({"sum", "round", "int", "float", "abs", "length", "count", "max", "min"})


def counting_in(source: str) -> list[str]:
    """Arithmetic in a template's syntax tree."""
    tree = Environment().parse(source)
    found = [type(node).__name__ for node in tree.find_all(COUNTING)]
    return found + [node.name for node in tree.find_all(nodes.Filter) if node.name in COUNTING_FILTERS]


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_templates_print_and_do_not_count(path: Path) -> None:
    assert counting_in(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "what", ["a + 1", "a - b", "a * 2", "a / b", "a // b", "a % b", "a ** 2", "a | sum", "a | round", "a | int", "a | float"]
)
def test_counting_in_a_template_is_found(what: str) -> None:
    assert counting_in(f"{{{{ {what} }}}}")
