"""Graphs that pupils make: what is told of them, and how many pictures a row has."""

from __future__ import annotations

from mathgen.asks.expression import Op, Stated, Value
from mathgen.reading.asked import WHOLE, Answers, Asked
from mathgen.reading.meaning.statistics import GraphToMake, PictureStandsFor
from mathgen.reading.noun_phrases import what
from mathgen.reading.tokens import NotRead
from mathgen.reading.told import Fact, Takers, Told
from mathgen.reading.wanted.statistics import PicturesFor
from mathgen.scenario.words import Scenario


def graph_to_make(told: Told, claim: GraphToMake) -> None:
    """Keep which graph is to be made.

    Raises:
        NotRead: two graphs are to be made.
    """
    if told.graph:
        raise NotRead("two graphs are to be made")
    told.graph = claim.kind
    told.open["graph"] = f"the {claim.kind} graph"


def picture_stands_for(told: Told, claim: PictureStandsFor) -> None:
    """Keep how many pins a picture stands for.

    Raises:
        NotRead: there is no picture graph, or that is told twice.
    """
    if told.graph != "picture" or told.picture is not None:
        raise NotRead("it is not clear what the pictures are of")
    told.picture = claim.number
    told.facts.append(Fact(Stated(int(claim.number.value), "pins for each picture"), claim.number.text))
    told.open["picture"] = claim.number.text


def pictures_for(question: PicturesFor, told: Told, _: Scenario) -> Asked:
    if told.picture is None:
        raise NotRead("it is not said what a picture stands for")
    down = told.quantity("down", what((question.color,)))
    goal = Op("/", (down, Stated(int(told.picture.value), "pins for each picture")))
    return Asked("pictures", Value(goal), WHOLE, (down,), ("graph", "picture"))


ASKED: Answers = {
    PicturesFor: pictures_for,
}


TAKEN: Takers = {
    GraphToMake: graph_to_make,
    PictureStandsFor: picture_stands_for,
}
