"""What a working puts down: equalities as short as can be, and the same as a teacher writes them on the board of a grade."""

from __future__ import annotations

from mathgen.asks.steps.written_number import dollars, terminating


class Lines:
    """The lines of one working."""

    def __init__(self, money: bool, grade: int) -> None:
        """``money``: whether decimals are dollars. ``grade``: how much the board may take for known."""
        self.lines: list[str] = []
        self.board: list[str] = []
        self.money = money
        self.grade = grade

    def line(self, left: str, right: str, *on_board: str) -> None:
        """An equality; ``on_board`` is how a teacher writes it, where not in the same way."""
        text = f"{left} = {right}"
        if left != right and text not in self.lines:
            self.lines.append(text)
            self.board += on_board or (text,)

    def tell(self, text: str) -> None:
        """A line for the board alone."""
        self.board.append(text)

    def line_if_new(self, text: str, *on_board: str) -> None:
        """An equality that a teacher writes in the way of ``on_board``, or not at all."""
        if text not in self.lines:
            self.lines.append(text)
            self.board += on_board

    def decimal(self, top: int, bottom: int) -> str | None:
        """The decimal where it ends; dollars with two places: 0.60."""
        if self.money and 100 * top % bottom == 0:
            return dollars(100 * top // bottom)
        return terminating(top, bottom)
