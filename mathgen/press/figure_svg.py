"""A figure or graph as SVG, for pages on a screen: the same drawing as on paper, with its letters as outlines."""

from __future__ import annotations

import json
import re
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


# What a browser takes to be so where nothing is said, and spaces for names that these documents do not use.
_IDLE = re.compile(
    r' (?:fill-rule="nonzero"|stroke-linecap="butt"|stroke-linejoin="miter"|stroke-miterlimit="4"|xmlns:h5="[^"]*"|class="typst-[a-z]+")'
)
_LONG = re.compile(r"(\.[0-9]{3})[0-9]+")
_NAME = re.compile(r'(?<= id=")[^"]+')
_ESCAPES = str.maketrans({"%": "%25", "#": "%23", "<": "%3C", ">": "%3E", '"': "'", "\n": "", "\r": ""})


def shortened(svg: str) -> str:
    """The same drawing in fewer signs: lengths to a thousandth of a point, short names for letters, nothing that goes without saying."""
    svg = _LONG.sub(r"\1", _IDLE.sub("", svg))
    for place, name in enumerate(dict.fromkeys(_NAME.findall(svg))):
        svg = svg.replace(f'"{name}"', f'"_{place}"').replace(f'"#{name}"', f'"#_{place}"').replace(f"url(#{name})", f"url(#_{place})")
    return svg


def data_url(svg: bytes) -> str:
    """An SVG as the address of a picture that holds it: as text, for base64 is a third longer.

    Letters are outlines in it, so that no label stands there whose quotation marks would be changed.
    """
    return f"data:image/svg+xml,{shortened(svg.decode()).translate(_ESCAPES)}"
