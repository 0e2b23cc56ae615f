"""Demands in short text and in words."""

import pytest

from mathgen.exact.demand import Demand, in_words, parse_demand

SAID = {
    "any": "",
    "name": "",
    "simplest": "in simplest form",
    "mixed": "as a mixed number",
    "decimal": "as a decimal",
    "percent": "as a percent",
    "ratio": "as a ratio in simplest form",
    "ratio:any": "as a ratio",
    "whole": "as a whole number",
    "decimal:0": "rounded to the nearest whole number",
    "decimal:1": "as a decimal rounded to the nearest tenth",
    "decimal:2": "as a decimal rounded to the nearest hundredth",
    "percent:0": "as a percent rounded to the nearest whole percent",
    "percent:1": "as a percent rounded to the nearest tenth of a percent",
    "whole:10": "rounded to the nearest ten",
    "whole:1000": "rounded to the nearest thousand",
    "percent:9": "as a percent rounded to the nearest billionth of a percent",
}


@pytest.mark.parametrize(("text", "words"), SAID.items())
def test_each_demand_reads_back_and_has_words(text, words):
    assert str(parse_demand(text)) == text
    assert in_words(parse_demand(text)) == words


def test_rounded_demands_hold_their_places():
    assert parse_demand("percent:1") == Demand("percent", 1)


UNKNOWN = (
    "",
    "fractions",
    "simplest:2",
    "decimal:",
    "decimal:-1",
    "decimal:x",
    "percent:10",
    "ratio:2",
    "Any",
    "whole:1",
    "whole:20",
    "whole:",
)


@pytest.mark.parametrize("text", UNKNOWN)
def test_an_unknown_demand_is_refused_with_the_list(text):
    with pytest.raises(ValueError, match="there are any, fraction, simplest"):
        parse_demand(text)
