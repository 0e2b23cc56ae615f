"""Slips, section W: coordinates, and lines close to points. One coordinate for the other, a part of a rule."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("W20", "Those are the other coordinates. What does each coordinate of a point tell?")
def other_coordinates(gap: int) -> Wrong:
    return whole(gap)


@slip("W21", "The line has a start value, too. Use the whole rule.")
def start_left_out(slope: int, x: int) -> Wrong:
    return whole(slope * x)


@slip("W22", "The slope goes with x. Multiply first.")
def start_and_slope_first(start: int, slope: int, x: int, rises: int) -> Wrong:
    return whole((start + slope if rises else start - slope) * x)


@slip("W23", "The slope counts once for each inch. Multiply the slope by x.")
def slope_counted_once(start: int, slope: int, x: int) -> Wrong:
    return whole(abs(start - slope - x))


@slip("W24", "Compare with the number that the line predicts for this space, not with the start value.")
def compared_with_start(start: int, pins: int) -> Wrong:
    return whole(abs(start - pins))


@slip("W25", "The question asks how far apart the two numbers are. Do not add.")
def adds_to_prediction(predicted: int, pins: int) -> Wrong:
    return whole(predicted + pins)


@slip("W26", "That is the change for 1 inch. How many inches are there?")
def one_inch_only(slope: int) -> Wrong:
    return whole(slope)


@slip("W27", "That is what the line predicts at one space. The question asks for a change.")
def value_for_change(start: int, slope: int, x: int) -> Wrong:
    return whole(abs(start - slope * x))


@slip("W28", "The slope counts once for each inch. Multiply; do not add.")
def adds_slope_and_inches(slope: int, x: int) -> Wrong:
    return whole(slope + x)


@slip("W61", "Go from left to right. Do the points go up or down?")
def other_association(way: str) -> Wrong:
    return way


@slip("W62", "That {trial} has the most {items}. Compare each point with the one before.")
def most_of_all(label: str) -> Wrong:
    return label


@slip("W67", "That {trial} has the fewest {items}. Compare each point with the one before.")
def fewest_of_all(label: str) -> Wrong:
    return label


@slip("W63", "That is the widest space. Which wider space does not go along with the others?")
def widest_space(label: str) -> Wrong:
    return label


@slip("W64", "That is the point before the change. Which point comes after the change?")
def point_before(label: str) -> Wrong:
    return label


@slip("W65", "Find y on the line for each x. How far is each point from there, up or down?")
def highest_above_line(label: str) -> Wrong:
    return label


@slip("W66", "That point has the most {items}. Compare each point with the line.")
def most_for_farthest(label: str) -> Wrong:
    return label
