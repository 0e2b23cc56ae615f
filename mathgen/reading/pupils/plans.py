"""From what a pupil wants to know to what has to be worked out."""

from __future__ import annotations

from collections.abc import Callable

from mathgen.asks.expression import Choice
from mathgen.exact.demand import Demand
from mathgen.reading.pupils import wish_counts, wish_parts, wish_points, wish_series
from mathgen.reading.pupils.bags import DIMENSIONS
from mathgen.reading.pupils.plan import Picked, Plan, quantities_of
from mathgen.reading.pupils.talk import SINGLE, Ask, Talk
from mathgen.reading.pupils.wish import Wish


def plan(talk: Talk, wish: Wish, form: Demand | None) -> Plan:
    """What a question comes to.

    Raises:
        NotRead: something is missing, false, or has two meanings.
    """
    if talk.prices and not wish.worth:
        wish = wish._replace(worth=talk.prices)
    if wish.worth and not wish.kind.startswith("points"):
        raise Ask("You tell what a pin is worth, but you do not ask for points. What do you want to know?")
    made = _PLANS[wish.kind](talk, wish)
    if talk.said.number is not None:
        whole = [q for q in quantities_of(made.goal) if q.measure == "set_up"] or quantities_of(made.goal)
        talk.check_whole(talk.said.number, whole[0].scope)
    if talk.bare is not None and all(q.measure != talk.bare for q in quantities_of(made.goal)):
        raise Ask("Do you mean knocked down, or left standing?")
    if talk.went and made.kind in ("count", "share count"):
        raise Ask("You tell me of a change first. By how many did it change, or how many were there, in which trial?")
    _same_scene(talk, made)
    cells = {cell for q in quantities_of(made.goal) for cell in talk.counts.cells(q.scope)}
    if len(talk.told) > 1 and cells != {cell for quantity in talk.told for cell in talk.counts.cells(quantity.scope)}:
        raise Ask("Do you mean just those you tell me about? Name the groups and trials.")
    for quantity in talk.told:
        about_them = any(bag.they for bag in wish.bags) and cells.issubset(talk.counts.cells(quantity.scope))
        if not about_them and not cells.issuperset(talk.counts.cells(quantity.scope)):
            raise Ask(f"You tell me about {talk.size(quantity)}, but that plays no part in your question. What do you want to know?")
    return formed(talk, made, form)


def _same_scene(talk: Talk, made: Plan) -> None:
    """Hold the plan to the scene that was set first: "Look at trial 2. How many in trial 3?" is not plain."""
    for part in DIMENSIONS:
        said = getattr(talk.said, part)
        if not isinstance(said, tuple) or talk.told or talk.compared or talk.went:
            continue
        every = getattr(talk.table, part)
        if all(set(said).isdisjoint(getattr(q.scope, part) or every) for q in quantities_of(made.goal)):
            raise Ask(f"Which {SINGLE[part]} do you mean?")


def formed(talk: Talk, made: Plan, form: Demand | None) -> Plan:
    """The plan in the form that the question asks for.

    Raises:
        Ask: the answer has no such form.
    """
    if form is None:
        return made
    if form.form == "name" and made.kind.startswith("most"):
        return made  # all that tie are named anyway
    if made.kind == "ratio":
        if form.form not in ("simplest", "any", "ratio"):
            raise Ask("A ratio is not given in that form. Which form do you want?")
        return made._replace(demand=Demand("ratio"))
    if isinstance(made.goal, Choice | Picked) or made.demand.form in ("whole", "name"):
        raise Ask("The answer is a whole number or a name. Of which whole do you want a part?")
    if made.demand.form == "percent" and form.form == "decimal" and form.places is not None:
        form = Demand("percent", form.places)  # "what percent ..., to one decimal place"
    if made.demand.form == "percent" and form.form == "decimal":
        raise Ask("Do you want a percent or a decimal?")
    return made._replace(demand=form)


_PLANS: dict[str, Callable[[Talk, Wish], Plan]] = {
    "count": wish_counts.count,
    "half": wish_counts.half,
    "difference": wish_counts.difference,
    "difference told": wish_counts.difference_told,
    "apart": wish_counts.apart,
    "minus": wish_counts.minus,
    "mean difference": wish_counts.mean_difference,
    "times": wish_counts.times,
    "part": wish_parts.part_of,
    "share": wish_parts.share,
    "part or share": wish_parts.part_or_share,
    "share told": wish_parts.share_told,
    "share count": wish_parts.share_count,
    "out of": wish_parts.out_of,
    "fractions apart": wish_parts.fractions_apart,
    "ratio": wish_parts.ratio,
    "ratio of": wish_parts.ratio_of,
    "mean": wish_series.mean,
    "median": wish_series.median,
    "range": wish_series.spread,
    "most": wish_series.most,
    "most rate": wish_series.most_rate,
    "pick": wish_series.pick,
    "how many labels": wish_series.how_many_labels,
    "rise": wish_counts.rise,
    "percent rise": wish_counts.percent_rise,
    "percent rise told": wish_counts.percent_rise_told,
    "short of": wish_counts.short_of,
    "greatest": wish_series.greatest,
    "points": wish_points.points,
    "points most": wish_points.points_most,
    "points difference": wish_points.points_difference,
}
