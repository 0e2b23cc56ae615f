"""Checks the hostile questions: each answerable line's value is worked out again from its recorded query by pandas alone.

Run `python tests/reading/corpus/check_hostile.py`; with `--write` the values are filled in from the queries instead of compared.
Nothing of mathgen is imported: the tables are read and totalled here a second time, so a fault there cannot hide here.

A query is one of
    {"total": "down" | "up" | "standing", "groups": [..], "trials": [..], "colors": [..]}      a part left out means all of it
    {"number": "3"}, {"plus": [a, b, ..]}, {"minus": [a, b]}, {"times": [a, b]}, {"over": [a, b]}, {"ratio": [a, b]}
    {"most": "groups" | "trials" | "colors", "of": total, "among": [..]}, and "least" likewise: the labels that tie for it
    {"which": "groups" | ..., "where": "=" | "<" | ">" | ">=" | "odd", "of": total, "than": query}: the labels for which it holds
    {"count": query of labels}, {"labels": "groups" | ...}, {"truth": ">" | ">=", "of": [a, b]}, {"every": which query}
    {"mean" | "median": "groups" | ..., "of": query}, {"each": "groups" | ..., "of": total}
    {"round": "1/100", "of": query}: half up to a whole multiple of the step
    {"cell": column, "group": .., "trial": ..}: an exact length from a named column
"""

import argparse
import json
import re
import sys
from collections import Counter
from pathlib import Path
from typing import Any

import pandas as pd
from sympy import Rational, floor

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[2]
LINES = HERE / "hostile.jsonl"
VERDICTS = ("answer", "ask", "decline")
COLUMN = {"groups": "group", "trials": "trial", "colors": "color"}
Query = dict[str, Any]


def wide(cells: pd.DataFrame) -> pd.DataFrame:
    """One row a group, trial and color, from a table whose colors are columns."""
    heads = list(cells.columns)
    sets = {head: int(found.group(1)) for head in heads if (found := re.search(r"\((\d+)\)$", head))}
    first = cells.iloc[0]
    if not sets:  # the set-up counts stand in a row of their own
        sets = {head: int(first[head]) for head in heads[2:]}
        cells = cells.iloc[1:]
    rows = [
        {"group": row.iloc[0], "trial": row["Trial"], "color": re.sub(r" \(\d+\)$", "", head).lower(), "up": up, "down": int(row[head])}
        for _, row in cells.iterrows()
        for head, up in sets.items()
    ]
    return pd.DataFrame(rows)


def load(name: str) -> tuple[pd.DataFrame, pd.DataFrame]:
    """The long table and the cells as typed."""
    path = ROOT / name
    has_title = "," * 2 in path.read_text().splitlines()[0]
    cells = pd.read_csv(path, dtype=str, keep_default_na=False, skiprows=1 if has_title else 0)
    if "Color" in cells:
        names = {"Group": "group", "Trial": "trial", "Color": "color", "Set up": "up", "Knocked down": "down"}
        long = cells.rename(columns=names).assign(color=lambda t: t["color"].str.lower()).astype({"up": int, "down": int})
    else:
        long = wide(cells)
    return long.assign(standing=long["up"] - long["down"]), cells


def labels(table: pd.DataFrame, part: str) -> list[str]:
    """The labels of a part in table order."""
    return list(dict.fromkeys(table[COLUMN[part]]))


def total(table: pd.DataFrame, query: Query) -> Rational:
    """Pins of one measure in a scope."""
    for part, column in COLUMN.items():
        if part in query:
            unknown = set(query[part]) - set(table[column])
            if unknown:
                raise ValueError(f"not in the table: {sorted(unknown)}")
            table = table[table[column].isin(query[part])]
    if table.empty:
        raise ValueError(f"nothing in scope: {query}")
    return Rational(sum(int(str(count)) for count in table[query["total"]]))


def at(query: Query, part: str, label: str) -> Query:
    """The query narrowed to one label, in each total it holds."""
    if "total" in query:
        return {**query, part: [label]}
    return {key: [at(q, part, label) for q in inner] if isinstance(inner, list) else inner for key, inner in query.items()}


def present(table: pd.DataFrame, query: Query, part: str) -> list[str]:
    """The labels that have rows where the query looks: a trial a group did not do is no zero."""
    inner = query
    while "total" not in inner:
        inner = next(v[0] for v in inner.values() if isinstance(v, list))
    for other, column in COLUMN.items():
        if other in inner and other != part:
            table = table[table[column].isin(inner[other])]
    return labels(table, part)


def holds(value: Rational, where: str, other: Rational) -> bool:
    """Whether the comparison is true."""
    if where == "odd":
        return bool(value % 2 == 1)
    return bool({"=": value == other, "<": value < other, ">": value > other, ">=": value >= other, "<=": value <= other}[where])


def named(table: pd.DataFrame, query: Query) -> list[str]:
    """The labels that a query picks out, in table order."""
    if "labels" in query:
        return labels(table, query["labels"])
    if "which" in query:
        part = query["which"]
        held = {"number": "0"}
        return [
            label
            for label in present(table, query["of"], part)
            if holds(value(table, at(query["of"], part, label)), query["where"], value(table, at(query.get("than", held), part, label)))
        ]
    wish = "most" if "most" in query else "least"
    part = query[wish]
    counts = {label: value(table, at(query["of"], part, label)) for label in query.get("among", present(table, query["of"], part))}
    best = max(counts.values()) if wish == "most" else min(counts.values())
    return [label for label, count in counts.items() if count == best]


def value(table: pd.DataFrame, query: Query) -> Rational:
    """The exact number a query stands for."""
    if "total" in query:
        return total(table, query)
    if "number" in query:
        return Rational(query["number"])
    if "count" in query:
        return Rational(len(named(table, query["count"])))
    if "round" in query:
        step = Rational(query["round"])
        return floor(value(table, query["of"]) / step + Rational(1, 2)) * step
    for stat in ("mean", "median"):
        if stat in query:
            part = query[stat]
            kept = query["of"].get(part) or present(table, query["of"], part)
            series = sorted(value(table, at(query["of"], part, label)) for label in kept)
            middle = len(series) // 2
            if stat == "mean":
                return sum(series, Rational(0)) / len(series)
            return series[middle] if len(series) % 2 else (series[middle - 1] + series[middle]) / 2
    (operation,) = query
    parts = [value(table, q) for q in query[operation]]
    if operation == "plus":
        return sum(parts, Rational(0))
    if operation == "times":
        return parts[0] * parts[1]
    return {"minus": lambda a, b: a - b, "over": lambda a, b: a / b}[operation](*parts)


def worked_out(name: str, query: Query) -> str | list[str]:
    """What a query comes to, as the value of a line is written."""
    table, cells = load(name)
    if "cell" in query:
        row = cells[(cells.iloc[:, 0] == query["group"]) & (cells["Trial"] == query["trial"])]
        return str(sum(Rational(piece) for piece in row[query["cell"]].iloc[0].split()))
    if "ratio" in query:
        first, second = (value(table, q) for q in query["ratio"])
        reduced = first / second
        return f"{reduced.p}:{reduced.q}"
    if "truth" in query:
        first, second = (value(table, q) for q in query["of"])
        return "true" if holds(first, query["truth"], second) else "false"
    if "every" in query:
        asked = query["every"]
        return "true" if named(table, asked) == labels(table, asked["which"]) else "false"
    if "each" in query:
        part = query["each"]
        return [str(value(table, at(query["of"], part, label))) for label in present(table, query["of"], part)]
    if {"most", "least", "which"} & set(query):
        found = named(table, query)
        if not found:
            raise ValueError(f"no label: {query}")
        return " and ".join(found)
    return str(value(table, query))


def faults(lines: list[dict[str, Any]]) -> list[str]:
    """All that is wrong with the lines, one sentence each."""
    found = [f"{key} twice: {name!r}" for key in ("id",) for name, n in Counter(line[key] for line in lines).items() if n > 1]
    found += [f"asked twice: {q}" for q, n in Counter((line["table"], line["question"]) for line in lines).items() if n > 1]
    for line in lines:
        expect = [line["expect"]] if isinstance(line["expect"], str) else line["expect"]
        if not expect or set(expect) - set(VERDICTS):
            found.append(f"{line['id']}: expect is {line['expect']!r}")
        if ("answer" in expect) != ("query" in line) or ("query" in line) != ("value" in line):
            found.append(f"{line['id']}: value and query go with the verdict 'answer', and only with it")
        elif "query" in line:
            right = worked_out(line["table"], line["query"])
            if right != line["value"]:
                found.append(f"{line['id']}: found {line['value']!r}, expected {right!r}")
            if "exact_query" in line and line.get("exact") != worked_out(line["table"], line["exact_query"]):
                found.append(f"{line['id']}: exact is {line.get('exact')!r}")
        if not (ROOT / line["table"]).exists() or not line["why"] or not line["kind"]:
            found.append(f"{line['id']}: no table, kind or why")
    return found


def main() -> None:
    """Compare, or write the values, then count."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--write", action="store_true", help="fill in the values from the queries")
    write = parser.parse_args().write
    lines = [json.loads(text) for text in LINES.read_text(encoding="utf-8").splitlines()]
    if write:
        for line in lines:
            if "query" in line:
                line["value"] = worked_out(line["table"], line["query"])
            if "exact_query" in line:
                line["exact"] = worked_out(line["table"], line["exact_query"])
        LINES.write_text("".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines), encoding="utf-8")
    wrong = faults(lines)
    print(*wrong, sep="\n", end="\n" if wrong else "")
    counts = Counter((line["kind"], "|".join([line["expect"]] if isinstance(line["expect"], str) else line["expect"])) for line in lines)
    for (kind, expect), n in sorted(counts.items()):
        print(f"{kind:22} {expect:22} {n}")
    print(f"{len(lines)} lines, {len(wrong)} faults")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
