"""Of whom, when and of which colors the text has spoken: what fills the gaps of later sentences."""

from __future__ import annotations

from typing import Literal

from mathgen.reading.meaning.scope import Labels, Mark, Np
from mathgen.reading.tokens import NotRead, Number
from mathgen.trials.scope import Label, Scope
from mathgen.trials.table import TrialTable

Dimension = Literal["groups", "trials", "colors"]
DIMENSIONS: tuple[Dimension, ...] = ("groups", "trials", "colors")
_ASKED: dict[Dimension, str] = {"groups": "which group", "trials": "which trial", "colors": "which color"}


class Mentions:
    """Labels that were spelled out, in the order of the text. ``later`` holds those of the whole text, for facts that come first."""

    table: TrialTable
    before: dict[Dimension, list[tuple[Label, ...]]]
    later: dict[Dimension, list[tuple[Label, ...]]]
    counted: list[tuple[Dimension, int, Number]]  # "the 2 trials": how many, and the number as printed
    merged: bool = False  # whether labels that were named one by one were last taken together
    assumed: list[str]  # gaps that nothing in the text fills
    all_colors: bool = False  # whether pins of all colors have been spoken of

    def __init__(self, table: TrialTable) -> None:
        self.table = table
        self.before = {"groups": [], "trials": [], "colors": []}
        self.later = {"groups": [], "trials": [], "colors": []}
        self.counted = []
        self.assumed = []

    def every(self, part: Dimension) -> tuple[Label, ...]:
        """All labels of the table."""
        return getattr(self.table, part)  # type: ignore[no-any-return]

    def ordered(self, part: Dimension, labels: tuple[Label, ...]) -> tuple[Label, ...]:
        """Labels in the table's order, each once."""
        return labels if len(labels) == 1 else tuple(label for label in self.every(part) if label in labels)

    def scope(self, groups: tuple[Label, ...], trials: tuple[Label, ...], colors: tuple[Label, ...]) -> Scope:
        """A scope in table order, with None for the full set."""
        found = self._but_all("groups", groups), self._but_all("trials", trials), self._but_all("colors", colors)
        return Scope(*found)  # type: ignore[arg-type]

    def _but_all(self, part: Dimension, labels: tuple[Label, ...]) -> tuple[Label, ...] | None:
        every = self.every(part)
        kept = labels if len(labels) == 1 else tuple([label for label in every if label in labels])
        return None if len(kept) == len(every) else kept

    def note(self, part: Dimension, labels: tuple[Label, ...]) -> None:
        """Remember labels that a sentence has named."""
        if labels not in self.before[part]:
            self.before[part].append(labels)

    def note_later(self, np: Np) -> None:
        """Remember labels that a sentence further on names."""
        for part in DIMENSIONS:
            labels: Labels = getattr(np, part)
            if isinstance(labels, Mark):
                labels = self._spelled_out(part, labels) or (self.every(part) if part != "colors" and self._is_all(part, labels) else None)
            if labels is not None and labels not in self.later[part]:
                self.later[part].append(labels)

    def _spelled_out(self, part: Dimension, mark: Mark) -> tuple[Label, ...] | None:
        """The labels that a mark names, or those in front of the one that it names; None where it names none."""
        if mark.of is None or mark.kind not in ("before", "through"):
            return mark.of
        every = self.every(part)
        place = every.index(mark.of[0])
        return every[:place] if mark.kind == "before" else every[: place + 1]

    def _is_all(self, part: Dimension, mark: Mark) -> bool:
        """Whether a mark can stand for nothing but all labels: "all trials", "the 2 trials" of a table that has two."""
        return mark.kind == "all" or (mark.kind == "these" and mark.count is not None and mark.count.value == len(self.every(part)))

    def named(self, part: Dimension) -> tuple[Label, ...]:
        """Every label that has been named so far."""
        return self.ordered(part, tuple(dict.fromkeys(label for labels in self.before[part] for label in labels)))

    def resolve(self, part: Dimension, labels: Labels, together: bool = False) -> tuple[Label, ...]:
        """The labels that a part of a scope stands for.

        Args:
            part: who, when or which color.
            labels: as the words say.
            together: whether several that have been named may be taken together ("in all").
        Raises:
            NotRead: nothing in the text settles it.
        """
        if isinstance(labels, tuple):
            self.note(part, labels)
            return labels
        if isinstance(labels, Mark):
            found = self._marked(part, labels)
            if part != "colors":
                self.note(part, found)
            return found
        return self._left_out(part, together)

    def _marked(self, part: Dimension, mark: Mark) -> tuple[Label, ...]:
        every = self.every(part)
        if mark.of is not None:
            found = self._spelled_out(part, mark)
            if not found:
                raise NotRead(f"there is nothing before {mark.of[0]}")
            return found
        if mark.kind == "bare" or (mark.kind == "all" and part == "colors"):
            self.all_colors = True
            return every
        if mark.kind == "all":
            if mark.count is not None and mark.count.value != len(every):
                raise NotRead(f"the table has {len(every)} {part}, not {mark.count.text}")
            return every
        named = self.named(part)
        if mark.count is None:
            return named or (self._ahead(part) if mark.kind == "each" else ()) or every
        size = mark.count.value
        fitting = [labels for labels in self.before[part] if len(labels) == size]
        if len(fitting) == 1:
            found = fitting[0]
        elif len(named) == size:
            found, self.merged = named, True
        elif len(every) == size and not named:
            found = every
        elif len(self._ahead(part)) == size:
            found = self._ahead(part)
        elif len(every) == size:
            found = every
        else:
            raise NotRead(f"it is not clear which {mark.count.text} {part} are meant")
        self.counted.append((part, len(found), mark.count))
        return found

    def _ahead(self, part: Dimension) -> tuple[Label, ...]:
        return self.later[part][0] if len(self.later[part]) == 1 else ()

    def _left_out(self, part: Dimension, together: bool) -> tuple[Label, ...]:
        before = self.before[part]
        if part == "colors" and self.all_colors and not before:
            return self.every(part)
        if len(before) == 1:
            return before[0]
        if len(before) > 1:
            if together:
                self.merged = True
                return self.named(part)
            raise NotRead(f"it is not said {_ASKED[part]}")
        ahead = self._ahead(part)
        if ahead:
            return ahead
        if len(self.later[part]) > 1:
            raise NotRead(f"it is not said {_ASKED[part]}")
        every = self.every(part)
        if len(every) > 1:
            self.assumed.append(f"all {part}")
        return every
