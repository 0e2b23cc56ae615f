"""A figure or graph as SVG, for pages on a screen: the same drawing as on paper, with its letters as outlines."""

from __future__ import annotations

import json
from base64 import b64encode
from threading import get_ident
from typing import Any

from mathgen.places import templates_folder
from mathgen.press.pdf import compiler


def figure_svg(data: dict[str, Any]) -> bytes:
    """The figure that plain data says, as an SVG document.

    Args:
        data: a figure to work on, or a graph, with its ``kind``.
    """
    made = compiler(get_ident()).compile(
        input=templates_folder() / "print" / "figure.typ",
        format="svg",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
    )
    assert isinstance(made, bytes)  # one page
    return made


def data_url(svg: bytes) -> str:
    """An SVG as the address of a picture that holds it."""
    return f"data:image/svg+xml;base64,{b64encode(svg).decode()}"
