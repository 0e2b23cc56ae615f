"""Wording files: one a problem model, several frames each.

A frame starts with a Jinja2 comment that names it and gives its tags, then holds one sentence a line, the question last (how to round
stands behind it, on its line):

    {# frame listed: words #}
    {{ whole.Who }} knocked down {{ parts.listed }} {{ whole.when }}.
    {{ whole.how_many }}

Tags: where the numbers stand (``words``, ``table`` or ``graph``, exactly one), whom it is for (``easy``: grades 2-3 only,
``older``: grade 4 and up; neither: all), and any mark that a draft may want (``more``, ``fewer``, ``increase`` ...).
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache

from jinja2 import Environment, StrictUndefined, Template

from mathgen.places import templates_folder

_HEAD = re.compile(r"\{#\s*frame\s+([a-z0-9-]+)\s*:\s*([a-z0-9 ,-]+?)\s*#\}\n?")
SOURCES = frozenset({"words", "table", "graph"})
_READERS = frozenset({"easy", "older"})


class _OfRoles(Environment):
    """What a template names of a role is an attribute of it; an item of a dictionary is not looked for."""

    getattr = staticmethod(getattr)  # type: ignore[assignment]


_ENVIRONMENT = _OfRoles(undefined=StrictUndefined, autoescape=False, trim_blocks=True, lstrip_blocks=True)


@dataclass(frozen=True)
class Frame:
    """One way of saying an ask. Compiled when it is first used: a sheet uses few of them."""

    name: str
    source: str
    readers: frozenset[str]
    marks: frozenset[str]
    body: str
    _compiled: list[Template] = field(default_factory=list, compare=False)

    def render(self, roles: dict[str, object]) -> tuple[str, str]:
        """Facts and question. Data never is a template: roles arrive as values."""
        if not self._compiled:
            self._compiled.append(_ENVIRONMENT.from_string(self.body))
        template = self._compiled[0]
        # As Template.render does, but the roles are not copied into a new dictionary for every problem.
        text = "".join(template.root_render_func(template.new_context(roles, shared=True)))
        lines = [line for line in map(str.strip, text.splitlines()) if line]
        return " ".join(lines[:-1]), lines[-1]

    def fits(self, grade: int, wanted: frozenset[str]) -> bool:
        """Whether the frame says what the draft wants, to readers of a grade."""
        if self.readers and ("easy" in self.readers) != (grade <= 3):
            return False
        return wanted == self.marks


@cache
def frames(strand: str, model: str) -> tuple[Frame, ...]:
    """The frames of one model, in file order.

    Raises:
        ValueError: a wording file that breaks the form above; a bug of ours.
    """
    path = templates_folder() / "wording" / strand / f"{model}.j2"
    pieces = _HEAD.split(path.read_text(encoding="utf-8"))
    found = []
    for name, tags, body in zip(pieces[1::3], pieces[2::3], pieces[3::3], strict=True):
        words = frozenset(re.split(r"[ ,]+", tags))
        source = words & SOURCES
        if len(source) != 1:
            raise ValueError(f"{path.name}, frame {name}: needs one of words, table, graph")
        found.append(Frame(name, min(source), words & _READERS, words - SOURCES - _READERS, body.strip()))
    if not found:
        raise ValueError(f"{path.name}: no frame")
    return tuple(found)
