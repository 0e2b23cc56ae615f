"""Where the program's own files lie, in a checkout and in the installed wheel."""

from __future__ import annotations

from functools import cache
from pathlib import Path


@cache
def templates_folder() -> Path:
    """The folder of wording, print and page templates.

    Raises:
        FileNotFoundError: the program was installed without its templates.
    """
    package = Path(__file__).resolve().parent
    # The wheel carries the folder inside the package; in a checkout it lies beside it.
    for folder in (package / "templates", package.parent / "templates"):
        if (folder / "print").is_dir():
            return folder
    raise FileNotFoundError(f"no templates folder in {package} or beside it: the installation is incomplete, install mathgen again")
