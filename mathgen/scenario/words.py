"""A scenario's words, read from TOML."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from pathlib import Path

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
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as err:
        raise RequestFault(f'scenario "{name}" cannot be read: {err}. Our own are "ramp" and "seeds".') from err
    try:
        verbs = data["verbs"]
        return Scenario(
            name=data["name"],
            title=data["title"],
            item=data["item"][0],
            items=data["item"][1],
            group=data["group"],
            trial=data["trial"][0],
            trials=data["trial"][1],
            the_class=data["class"],
            next_time=data["next_time"],
            past={measure: forms[0] for measure, forms in verbs.items()},
            base={measure: forms[1] for measure, forms in verbs.items()},
            after_noun={measure: forms[2] for measure, forms in verbs.items()},
            synonyms={key: tuple(words) for key, words in data.get("synonyms", {}).items()},
            cautions=tuple(data["cautions"]["lines"]),
            cautions_head=str(data["cautions"].get("head", "Before you start")),
        )
    except (KeyError, IndexError, TypeError, AttributeError) as err:
        raise RequestFault(f'scenario "{name}" lacks an entry or has it in another shape: {err}. Copy mathgen/scenario/ramp.toml.') from err
