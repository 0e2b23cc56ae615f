"""Printed figures as pictures for a page."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest

from mathgen.press.figure_svg import data_url, figure_svg, shortened
from mathgen.sheets.figures.scene import FigureData
from tests.press.specimens import SUPPORTS, displays

FIGURES: dict[str, FigureData] = {
    **{name: one.blank for name, one in SUPPORTS.items() if one is not None},
    **{f"{name}, filled in": one.worked for name, one in SUPPORTS.items() if one is not None and one.worked is not None},
    **{name: figure for name, figure in displays().items() if name in ("bar graph", "picture graph")},
}
LINK = "{http://www.w3.org/1999/xlink}href"


def lengths(svg: str) -> list[list[float]]:
    """The numbers of each outline and place in a drawing."""
    tree = ElementTree.fromstring(svg)
    told = [one.get(name, "") for one in tree.iter() for name in ("d", "transform", "x", "y", "width", "height", "viewBox")]
    return [[float(number) for number in re.findall(r"-?[0-9.]+(?:e-?[0-9]+)?", text)] for text in told]


@pytest.mark.parametrize("name", FIGURES)
def test_a_shortened_drawing_is_the_same_to_a_thousandth_of_a_point(name: str) -> None:
    whole = figure_svg(FIGURES[name]).decode()
    short = shortened(whole)
    assert len(short) < len(whole)
    assert [one.tag for one in ElementTree.fromstring(short).iter()] == [one.tag for one in ElementTree.fromstring(whole).iter()]
    for before, after in zip(lengths(whole), lengths(short), strict=True):
        assert after == pytest.approx(before, abs=0.001)


@pytest.mark.parametrize("name", FIGURES)
def test_each_letter_and_pattern_that_is_used_is_there(name: str) -> None:
    tree = ElementTree.fromstring(shortened(figure_svg(FIGURES[name]).decode()))
    names = [one.get("id") for one in tree.iter() if one.get("id")]
    used = {one.get(LINK, "")[1:] for one in tree.iter() if one.get(LINK)}
    used |= {found for one in tree.iter() for value in one.attrib.values() for found in re.findall(r"url\(#([^)]+)\)", value)}
    assert len(names) == len(set(names))
    assert used <= set(names)


def test_labels_are_outlines_and_nothing_in_the_address_ends_an_attribute() -> None:
    boxes = SUPPORTS["part-whole boxes"]
    assert boxes is not None
    data = boxes.blank | {"whole": {"label": '<script>"alert"</script> &', "number": ""}}
    drawn = figure_svg(data)
    assert "script" not in drawn.decode()
    assert not set('"<>#\n') & set(data_url(drawn))
