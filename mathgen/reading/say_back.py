"""How a problem was understood, in a sentence that its reader can say yes or no to."""

from __future__ import annotations

from mathgen.asks.expression import Changes, Choice, Chosen, Listing, Op, Quantity, QuotientRemainder, Stat, Truth, Value
from mathgen.exact.demand import Demand
from mathgen.exact.demand import in_words as form_in_words
from mathgen.reading.read_problem import Reading
from mathgen.scenario.naming import group_name, listed, trial_name
from mathgen.scenario.words import Scenario
from mathgen.trials.scope import BY_TRIAL, Scope
from mathgen.trials.table import TrialTable


def in_words(reading: Reading, table: TrialTable, scenario: Scenario) -> str:
    """The question as it was understood, with everything that was left out filled in.

    Args:
        reading: of a problem about the table.
        table: for the names of groups and trials.
        scenario: nouns and verbs of the activity.
    """
    asked = reading.asked
    if asked.kind == "length":
        return "Work with the spaces between the pins that are told."
    if asked.kind == "money":
        return "Work with the prices that are told."
    if asked.kind == "tally":
        return "Count the numbers of the plot that are meant."
    if asked.kind in ("pairs", "recorded", "pictures"):
        return f"Multiply {' by '.join(str(one.number) for one in asked.stated())}."
    number = [number_of(quantity, table, scenario) for quantity in asked.subjects]
    first = asked.subjects[0]
    who, when, things = who_of(first.scope, scenario), when_of(first.scope, table, scenario), things_of(first.scope, scenario)
    stated = {stated.meaning: stated.number for stated in asked.stated()}
    base = "" if first.measure in BY_TRIAL else scenario.base[first.measure]
    match asked.kind:
        case "count":
            sentence = f"Find {number[0]}."
        case "difference":
            sentence = f"Find how much {'greater' if asked.sign > 0 else 'smaller'} {number[0]} is than {number[1]}."
        case "times":
            sentence = f"Find how many times as great {number[0]} is as {number[1]}."
        case "part":
            sentence = f"Find {_name_of_form(reading.demand)}: {number[0]}, out of {number[1]}."
        case "which":
            most = "greatest" if asked.sign > 0 else "smallest"
            sentence = f"Find which is the {most} part of what was {scenario.past['set_up']}: {'; '.join(number)}."
        case "which list":
            goal = asked.goal
            sentence = f"Work with the lists: {'; '.join(number)}."
            if isinstance(goal, Choice) and isinstance(goal.exprs[0], Stat):
                size = "greatest" if asked.sign > 0 else "smallest"
                sentence = f"Find which list has the {size} {goal.exprs[0].name}, {' or '.join(goal.labels)}: {'; '.join(number)}."
        case "mean or median":
            sentence = f"Find which is {'greater' if asked.sign > 0 else 'less'}, the mean or the median of {'; '.join(number)}."
        case "sample":
            sentence = f"Estimate for all the groups from a sample: {'; '.join(number[:-1])}."
        case "sample off":
            sentence = f"Find how far an estimate from a sample is from {number[-1]}: {'; '.join(number[:-1])}."
        case "sample alike":
            shares = f"{stated['of the color']} of {stated['in the sample']}"
            sentence = f"Say whether {shares} is the same fraction as {number[0]} of {number[1]}."
        case "sample like":
            sentence = f"Find how many of a sample of {stated['in the sample']} are as large a part as {number[0]} of {number[1]}."
        case "runs":
            sentence = f"Count the runs that have the event, out of {stated['runs']}: digits stand for {number[0]} of {number[1]}."
        case "mean then":
            brought, count = stated["in one more trial"], stated["trials"]
            sentence = f"Find the mean of {count} trials if one more brings {brought}: {'; '.join(number)}."
        case "sample gap":
            sentence = f"Find how far the mean of a sample is from the mean of all: {'; '.join(number)}."
        case "model gap":
            sentence = f"Find how far {number[0]} is from an equal share of {number[1]} among {stated['kinds']} kinds."
        case "simulation":
            sentence = f"Find how many of {stated['digits']} digits are as large a part as {number[0]} of {number[1]}."
        case "likelier":
            sentence = f"Say whether {number[0]} is greater than {number[1]}."
        case "is statistical":
            sentence = f"Say whether the answers differ: {'; '.join(number)}."
        case "most":
            sentence = f"Find which is the {'greatest' if asked.sign > 0 else 'smallest'}: {'; '.join(number)}."
        case "ratio":
            sentence = f"Find the ratio: {number[0]}, to {number[1]}."
        case "color part":
            sentence = f"Find {_name_of_form(reading.demand)}: {number[0]}, out of {number[1]}."
        case "chance":
            goal = asked.goal
            assert isinstance(goal, Value)
            negated = isinstance(goal.expr, Op) and isinstance(goal.expr.args[0], Op)
            sentence = f"Find the probability: {'all but ' if negated else ''}{number[0]}, out of {number[1]}."
        case "next":
            sentence = f"Find how many of {stated['set up next time']} {things} {who} would {base} at the same rate as {when}."
        case "next set up":
            wish, must = stated["goal next time"], scenario.base["set_up"]
            sentence = f"Find how many {things} {who} must {must} to {base} {wish} of them at the same rate as {when}."
        case "equal fraction":
            [(place, given)] = stated.items()
            other = "top number" if place == "bottom number" else "bottom number"
            sentence = f"Take {number[0]}, out of {number[1]}. Find the {other} of an equal fraction with the {place} {given}."
        case "rate":
            per = f"for one of {number[1]}" if len(number) > 1 else "for one trial"
            sentence = f"Find how many that is {per}: {number[0]}."
        case "rate carried on" if "trials at this rate" in stated:
            sentence = f"Find how many {things} {who} would {base} in {stated['trials at this rate']} trials at the rate of {when}."
        case "rate carried on":
            sentence = f"Find in how many trials {who} would {base} {stated['goal at this rate']} {things} at the rate of {when}."
        case "ratio table":
            sentence = f"Take the ratio: {number[0]}, to {number[1]}. Find the first where the second is {stated['in another row']}."
        case "gap":
            sentence = f"Find how much one part of its set is greater than the other: {number[0]}; {number[1]}."
        case "sets":
            sentence = f"Find {stated['trials at this rate']} times this part: {number[0]}, out of {number[1]}."
        case "full sets":
            sentence = f"Find how many times {number[0]} holds what was {scenario.past['set_up']} for one trial."
        case "fraction share":
            sentence = f"Take {number[0]}, out of {number[1]}. Share that part equally among {stated['trials']} trials."
        case "needed" if first.measure in BY_TRIAL:
            sentence = f"Find how many more {first.measure} are needed to reach the goal: {'; '.join(number)}."
        case "needed":
            wish, trials = stated["goal mean"], stated["trials"]
            sentence = f"Find how many {things} {who} must {base} in one more trial, so that the mean of {trials} trials is {wish}."
        case "share":
            among = next(name for name in ("groups", "trials") if name in stated)
            sentence = f"Each counts as a point. Share {number[0]} equally among {stated[among]} {among}, and find one share."
        case "mean":
            goal = asked.goal
            single = isinstance(goal, Value) and isinstance(goal.expr, Stat)
            name = goal.expr.name if isinstance(goal, Value) and isinstance(goal.expr, Stat) else ""
            sentence = f"Find the {name} of {'; '.join(number)}." if single else f"Work with the lists: {'; '.join(number)}."
        case "score":
            sentence = f"Find the score for {'; '.join(number)}."
        case "equation":
            sentence = f"Find {number[0]} from the equation."
        case "level":
            sentence = f"Find how many {things} make the two scores equal: {'; '.join(number)}."
        case "line":
            sentence = f"Find the number of the line through the scores: {'; '.join(number)}."
        case "goal":
            sentence = f"Find the least number of {things} that {who} must {base} to reach the goal, after {number[0]}."
        case "change":
            sentence = f"Find the percent {'increase' if asked.sign > 0 else 'decrease'} from {number[0]} to {number[1]}."
        case "is true":
            sentence = f"Say whether the number sentence is true, of {'; '.join(number)}."
        case "total claimed":
            sentence = f"Say whether {stated['claimed']} is the total: {number[0]}."
        case "in pairs":
            assert isinstance(asked.goal, Truth)
            sentence = f"Say whether {number[0]} is {'even' if asked.goal.test == 'multiple' else 'odd'}."
        case "in equal groups":
            sentence = f"Say whether {number[0]} is a multiple of {stated['in each group']}."
        case "in boxes":
            assert isinstance(asked.goal, QuotientRemainder)
            what = {"both": "how many are full and what is over", "full": "how many are full", "over": "what is over"}
            wanted = what.get(asked.goal.want, "how many are needed for all")
            sentence = f"Put {number[0]} in groups of {stated['in each group']}. Find {wanted}."
        case "parts of a line":
            sentence = f"Find how many parts of the line are left: {number[0]}, without {number[1]}."
        case "fraction of a line":
            sentence = f"Find the fraction on the line, out of {number[1]}, where the parts to 1 are {number[0]}."
        case "fraction as sets":
            sentence = f"Find how many sets of one trial make all the sets: {number[0]}."
        case "doubled":
            sentence = f"Find the number that makes {number[0]} when it is added to itself."
        case "same value":
            sentence = f"Say whether the fraction is that part: {number[0]}, out of {number[1]}."
        case "picks":
            sentence = f"Find how many of {stated['picks']} picks should be one of {number[0]}, out of {number[1]}."
        case "behind a mean":
            sentence = f"Find how many trials the mean of {number[0]} is of."
        case "split claimed":
            sentence = f"Say whether the fractions have this sum: {number[0]}, out of {number[1]}."
        case "product or factor named":
            assert isinstance(asked.goal, Choice)
            sentence = f"Say which is the {'greater' if asked.goal.most else 'less'}: {number[0]}, told as a product, or {number[1]}."
        case "sets as a fraction":
            sentence = f"Find the top number of a fraction that equals all the sets: {number[0]}."
        case "counted on":
            sentence = f"Find the number that comes 2 after {number[0]}."
        case "counted back":
            sentence = f"Find the number that comes 1 before {number[0]}."
        case "array":
            sentence = f"Find {number[0]}: add the {stated['in each row']} of each row."
        case "product or factor":
            assert isinstance(asked.goal, Truth)
            sentence = f"Say whether {number[0]} is {'greater' if asked.goal.test == '>' else 'less'} than {number[1]}."
        case "expression":
            sentence = f"Say whether the expression gives the points for {'; '.join(number)}."
        case "claim":
            sentence = f"Judge a claim and tell why, by {' and '.join(number)}."
        case "changes listed":
            assert isinstance(asked.goal, Changes)
            sentence = f"Find each way to change one number so that the {asked.goal.name} is {asked.goal.to.number}: {'; '.join(number)}."
        case "sums listed":
            assert isinstance(asked.goal, Chosen)
            sentence = f"Find each way to choose {asked.goal.size} of these fractions with the sum wanted: {', '.join(asked.goal.labels)}."
        case "points":
            goal = asked.goal
            each = isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "/"
            sentence = f"Find how many points one of them gives: {number[0]}." if each else f"Find the points for {number[0]}."
        case "blank":
            sentence = f"Find the missing number, from {' and '.join(number)}."
        case "signed":
            sentence = f"Work with numbers above and below 0: {'; '.join(number)}."
        case "common":
            goal = asked.goal
            common = "factor" if isinstance(goal, Value) and isinstance(goal.expr, Op) and goal.expr.symbol == "gcf" else "multiple"
            sentence = f"Find the {'greatest' if common == 'factor' else 'least'} common {common} of {' and '.join(number)}."
        case "as fraction":
            sentence = f"Find a fraction: {number[0]}, out of {number[1]}."
        case "mean of a count":
            sentence = f"Say whether the mean that is told fits: {'; '.join(number)}."
        case "pairs listed":
            assert isinstance(asked.goal, Listing)
            wanted = "Find its factor pairs" if asked.goal.symbol == "*" else "Find the ways to split the fraction in two"
            sentence = f"Look at {'; '.join(number)}. {wanted}."
    plain = ("whole", "any", "name", "expression", "truth", "quotient_remainder", "list", "rubric")
    form = "" if reading.demand.form in plain else form_in_words(reading.demand)
    return f"{sentence} Give the answer {form}." if form else sentence


def number_of(quantity: Quantity, table: TrialTable, scenario: Scenario) -> str:
    """A quantity by its full name: ``the number of red pins that the Owls knocked down in Trial 1``."""
    scope = quantity.scope
    if quantity.measure in BY_TRIAL:
        counted = scenario.trials if quantity.measure == "trials" else quantity.measure
        when = f" {when_of(scope, table, scenario)}"
        if scope.trials is None:  # a group may have had fewer than there are in the table
            when = "" if quantity.measure == "trials" else f" in all {scenario.trials}"
        return f"the number of {counted} of {who_of(scope, scenario)}{when}"
    verb = scenario.past[quantity.measure]
    return f"the number of {things_of(scope, scenario)} that {who_of(scope, scenario, table)} {verb} {when_of(scope, table, scenario)}"


def _name_of_form(demand: Demand) -> str:
    return {"percent": "the percent", "decimal": "the decimal"}.get(demand.form, "the fraction")


def who_of(scope: Scope, scenario: Scenario, table: TrialTable | None = None) -> str:
    """``the Owls and the Kites``, ``the class``; with the table, ``all groups but the Owls`` of many."""
    if table is not None and scope.groups is not None and len(scope.groups) == len(table.groups) - 1 >= 3:
        [left] = [group for group in table.groups if group not in scope.groups]
        return f"all groups but {group_name(left, scenario)}"
    return scenario.the_class if scope.groups is None else listed([group_name(group, scenario) for group in scope.groups])


def things_of(scope: Scope, scenario: Scenario) -> str:
    """``red pins``, ``pins``."""
    return scenario.items if scope.colors is None else f"{listed(list(scope.colors))} {scenario.items}"


def when_of(scope: Scope, table: TrialTable, scenario: Scenario) -> str:
    """``in Trial 1``, ``in both trials``, ``in all 3 trials``."""
    if scope.trials is None and len(table.trials) > 1:
        return f"in {'both' if len(table.trials) == 2 else f'all {len(table.trials)}'} {scenario.trials}"
    trials = scope.trials or table.trials
    if len(trials) > 1 and all(isinstance(trial, int) for trial in trials):
        return f"in {scenario.trials.capitalize()} {listed([str(trial) for trial in trials])}"
    return f"in {listed([trial_name(trial, scenario) for trial in trials])}"
