"""Recomputes the value of every plain question from the rows of its table.

Each line of ``plain.jsonl`` carries a ``query``, written by hand before its value was known. This file reads the
table with pandas, works the query out exactly and compares. It imports nothing of ``mathgen``.

A query is one of:
- a count: ``{"down": SCOPE}``, ``{"standing": SCOPE}``, ``{"set_up": SCOPE}``, SCOPE with any of group, trial, color
  (a name or a list of names; what is left out means all);
- ``{"num": "3"}``; ``{"add": [..]}``, ``{"mul": [..]}``, ``{"sub": [a, b]}``, ``{"div": [a, b]}``;
- ``{"ratio": [a, b, ..]}``; ``{"percent_change": [old, new]}`` (as a fraction of old, without sign);
- ``{"mean": EACH}``, ``{"median": EACH}``, ``{"range": EACH}``, ``{"most": EACH}``, ``{"least": EACH}``, EACH being
  ``{"each": "trial", "of": query, "among": [..]}``: the query worked out once for each trial (or group, color, or a
  list of these); ``{"count": EACH}`` with ``"is": ["==", "3"]`` counts those for which it holds;
- ``{"truth": [a, ">", b]}``.

Run: ``python tests/reading/corpus/check_plain.py``
"""

import itertools
import json
import operator
import re
import sys
from functools import cache
from pathlib import Path
from typing import Any

import pandas as pd
from sympy import Integer, Rational, gcd, ilcm

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[2]
MEASURES = ("down", "standing", "set_up")
SIGNS = {"==": operator.eq, ">": operator.gt, "<": operator.lt, ">=": operator.ge, "<=": operator.le}


@cache
def rows_of(table: str) -> pd.DataFrame:
    """The table as one row for each group, trial and color, in the order of the file."""
    raw = pd.read_csv(ROOT / table, header=None, dtype=str, keep_default_na=False)
    start = next(i for i in range(len(raw)) if raw.iloc[i, 0] in ("Group", "Team"))
    heads = [str(cell) for cell in raw.iloc[start]]
    body = raw.iloc[start + 1 :].values.tolist()
    trial = heads.index("Trial")
    found = []
    if "Color" in heads:
        color, up, down = (heads.index(name) for name in ("Color", "Set up", "Knocked down"))
        found = [(row[0], row[trial], row[color].lower(), int(row[up]), int(row[down])) for row in body]
    else:
        ups: dict[int, tuple[str, int]] = {}
        if body[0][0] == "Set up":
            ups = {i: (heads[i].lower(), int(body[0][i])) for i in range(trial + 1, len(heads))}
            body = body[1:]
        for i, head in enumerate(heads):
            if i not in ups and (match := re.fullmatch(r"(\w+) \((\d+)\)", head)):
                ups[i] = (match[1].lower(), int(match[2]))
        found = [(row[0], row[trial], name, up, int(row[i])) for row in body for i, (name, up) in ups.items()]
    return pd.DataFrame(found, columns=["group", "trial", "color", "set_up", "down"])


def count(rows: pd.DataFrame, measure: str, scope: dict[str, Any]) -> Rational:
    """One count over a scope; a name that the table does not have is an error."""
    for key, wanted in scope.items():
        names = [str(name) for name in (wanted if isinstance(wanted, list) else [wanted])]
        strangers = set(names) - set(rows[key])
        if strangers:
            raise ValueError(f"no {key} {sorted(strangers)}")
        rows = rows[rows[key].isin(names)]
    if rows.empty:
        raise ValueError(f"no rows for {scope}")
    if measure == "standing":
        return Integer(int(rows["set_up"].sum() - rows["down"].sum()))
    return Integer(int(rows[measure].sum()))


def bind(query: Any, more: dict[str, str]) -> Any:
    """The query with a scope laid over every count in it."""
    if isinstance(query, list):
        return [bind(part, more) for part in query]
    if not isinstance(query, dict):
        return query
    return {key: {**part, **more} if key in MEASURES else bind(part, more) for key, part in query.items()}


def each(rows: pd.DataFrame, spec: dict[str, Any]) -> list[tuple[str, Rational]]:
    """(name, value) for every group, trial or color (or pair of these), in table order."""
    keys = spec["each"] if isinstance(spec["each"], list) else [spec["each"]]
    names = [list(dict.fromkeys(rows[key])) for key in keys]
    if "among" in spec:
        names = [[name for name in names[0] if name in spec["among"]]]
        if len(names[0]) != len(spec["among"]):
            raise ValueError(f"no {keys[0]} among {spec['among']}")
    return [
        (" ".join(map(str, combo)), number(rows, bind(spec["of"], dict(zip(keys, map(str, combo), strict=True)))))
        for combo in itertools.product(*names)
    ]


def middle(values: list[Rational]) -> Rational:
    """The median."""
    ordered = sorted(values)
    half = len(ordered) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


def number(rows: pd.DataFrame, query: dict[str, Any]) -> Rational:
    """The exact number that a query asks for."""
    ((kind, part),) = query.items()
    if kind in MEASURES:
        return count(rows, kind, part)
    if kind == "num":
        return Rational(part)
    if kind in ("mean", "median", "range", "count"):
        values = [value for _, value in each(rows, part)]
        if kind == "mean":
            return sum(values, Integer(0)) / len(values)
        if kind == "median":
            return middle(values)
        if kind == "range":
            return max(values) - min(values)
        sign, bound = part["is"]
        return Integer(sum(bool(SIGNS[sign](value, Rational(bound))) for value in values))
    parts = [number(rows, piece) for piece in part]
    if kind == "add":
        return sum(parts, Integer(0))
    if kind == "mul":
        result = Integer(1)
        for piece in parts:
            result *= piece
        return result
    first, second = parts
    if kind == "sub":
        return first - second
    if kind == "div":
        return first / second
    if kind == "percent_change":
        return abs(second - first) / first
    raise ValueError(f"unknown query {kind}")


def value(table: str, query: dict[str, Any]) -> str:
    """The value as the bank writes it: whole number, fraction, names joined by "and", ratio, true or false."""
    rows = rows_of(table)
    ((kind, part),) = query.items()
    if kind in ("most", "least"):
        found = each(rows, part)
        best = (max if kind == "most" else min)(amount for _, amount in found)
        return " and ".join(name for name, amount in found if amount == best)
    if kind == "ratio":
        terms = [number(rows, piece) for piece in part]
        scale = ilcm(*[term.q for term in terms])
        whole = [term * scale for term in terms]
        shared = whole[0]
        for term in whole[1:]:
            shared = gcd(shared, term)
        return ":".join(str(term / shared) for term in whole)
    if kind == "truth":
        left, sign, right = part
        return "true" if SIGNS[sign](number(rows, left), number(rows, right)) else "false"
    return str(number(rows, query))


def main() -> int:
    """Checks every line; returns 1 where a value differs."""
    wrong = 0
    for line in (HERE / "plain.jsonl").read_text(encoding="utf-8").splitlines():
        record = json.loads(line)
        found = value(record["table"], record["query"]) if record["query"] else None
        if found != record["value"]:
            wrong += 1
            sys.stderr.write(f"{record['id']}: key {record['value']}, worked out {found}: {record['question']}\n")
    sys.stderr.write(f"{wrong} wrong\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
