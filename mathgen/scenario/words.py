"""A scenario's words, read from TOML."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from pathlib import Path
from typing import Any

from mathgen.errors import RequestFault


@dataclass(frozen=True)
class Scenario:
    """Nouns and verb forms of one activity."""

    name: str
    title: str
    item: str
    items: str
    group: str
    trial: str
    trials: str
    the_class: str
    next_time: str
    past: dict[str, str]  # by measure: "knocked down"
    base: dict[str, str]  # "knock down"
    after_noun: dict[str, str]  # "pins knocked down"
    synonyms: dict[str, tuple[str, ...]]
    cautions: tuple[str, ...]
    cautions_head: str = "Before you start"  # what stands above them
    # For blank recording sheets: what a class agrees on (boxes to tick after each "|"), how to write, what to draw.
    agree_head: str = "Before the first trial, agree on"
    agree: tuple[str, ...] = ()
    write: str = "Write each number down at once."
    draw: str = "How it is set up: draw it"

    def done(self, measure: str, verb: str) -> str:
        """What became of things, as a verb; ``verb`` is "were", "was" or "be".

        >>> scenario().done("down", "were"), scenario("seeds").done("down", "were"), scenario("seeds").done("down", "be")
        ('were knocked down', 'sprouted', 'sprout')
        """
        after = self.after_noun[measure]
        if after.startswith("that "):
            return self.base[measure] if verb == "be" else after.removeprefix("that ")
        return f"{verb} {after}"


@lru_cache(maxsize=8)
def scenario(name: str = "ramp") -> Scenario:
    """A scenario of our own by name, or any file by its path.

    Raises:
        RequestFault: no such scenario, or a file that lacks an entry.
    """
    own = files("mathgen.scenario").joinpath(f"{name}.toml")
    try:
        text = own.read_text(encoding="utf-8") if own.is_file() else Path(name).read_text(encoding="utf-8")
        data = tomllib.loads(text)
    except FileNotFoundError as err:
        raise RequestFault(f'There is no scenario "{name}", nor a file of that name. Our own are "ramp" and "seeds".') from err
    except (OSError, ValueError) as err:
        raise RequestFault(f'scenario "{name}" cannot be read: {err}. Copy mathgen/scenario/ramp.toml and change its words.') from err
    return _scenario(_Words(data, name))


class _Words:
    """A scenario file's entries, each checked for its shape."""

    def __init__(self, data: dict[str, Any], name: str) -> None:
        self._data, self._name = data, name

    def one(self, *keys: str, default: str | None = None) -> str:
        """The text of an entry."""
        found = self._at(keys, default)
        if not isinstance(found, str) or not found.strip():
            raise self._fault(keys, "a text in quotation marks")
        return found

    def several(self, *keys: str, count: int | None = None) -> tuple[str, ...]:
        """The texts of a list, ``count`` of them where that is given."""
        found = self._at(keys, None)
        if not isinstance(found, list) or not all(isinstance(one, str) and one.strip() for one in found) or count not in (None, len(found)):
            raise self._fault(keys, f"a list of {count or 'some'} texts")
        return tuple(found)

    def keys(self, name: str) -> tuple[str, ...]:
        """The names of a section's entries; none where there is no such section."""
        section = self._data.get(name, {})
        return tuple(section) if isinstance(section, dict) else ()

    def _at(self, keys: tuple[str, ...], default: str | None) -> object:
        found: object = self._data
        for key in keys:
            found = found.get(key) if isinstance(found, dict) else None
        return default if found is None else found

    def _fault(self, keys: tuple[str, ...], expected: str) -> RequestFault:
        return RequestFault(f'scenario "{self._name}", entry {".".join(keys)}: expected {expected}, as in mathgen/scenario/ramp.toml.')


def _scenario(words: _Words) -> Scenario:
    item, trial = words.several("item", count=2), words.several("trial", count=2)
    verbs = {measure: words.several("verbs", measure, count=3) for measure in ("down", "set_up", "standing")}
    return Scenario(
        name=words.one("name"),
        title=words.one("title"),
        item=item[0],
        items=item[1],
        group=words.one("group"),
        trial=trial[0],
        trials=trial[1],
        the_class=words.one("class"),
        next_time=words.one("next_time"),
        past={measure: forms[0] for measure, forms in verbs.items()},
        base={measure: forms[1] for measure, forms in verbs.items()},
        after_noun={measure: forms[2] for measure, forms in verbs.items()},
        synonyms={key: words.several("synonyms", key) for key in words.keys("synonyms")},
        cautions=words.several("cautions", "lines"),
        cautions_head=words.one("cautions", "head", default="Before you start"),
        agree_head=words.one("record", "head", default="Before the first trial, agree on"),
        agree=words.several("record", "agree") if words.keys("record") else (f"What counts as {item[1]} {verbs['down'][2]}:",),
        write=words.one("record", "write", default="Write each number down at once."),
        draw=words.one("record", "draw", default="How it is set up: draw it"),
    )
