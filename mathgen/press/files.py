"""Files to disk: all of them or none."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from pathlib import Path

from mathgen.errors import RequestFault


def check_free(paths: Iterable[Path], force: bool = False) -> None:
    """Nothing where files may be written: for a command to ask before it works or says anything.

    Raises:
        RequestFault: files exist already (all are named), or a place cannot be looked at.
    """
    try:
        taken = [path for path in paths if path.exists() and (not force or path.is_dir())]
        folders = any(path.is_dir() for path in taken)
    except OSError as error:
        raise RequestFault(f"cannot write {error.filename}: {error.strerror}") from error
    if taken:
        advice = "a folder stands where a file should go; choose another --out" if folders else "use --force to replace, or another --out"
        raise RequestFault(f"already there: {', '.join(str(path) for path in taken)} ({advice})")


def write_files(contents: Mapping[Path, bytes], force: bool = False) -> None:
    """Write each file under a temporary name beside its place, then rename all.

    Folders are made as needed. A fault while writing leaves no new file behind and no old one altered.

    Args:
        contents: what to write, by path.
        force: replace files that exist.
    Raises:
        RequestFault: files exist already (all are named), or a place cannot be written to.
    """
    check_free(contents, force)
    waiting: list[tuple[Path, Path]] = []
    try:
        for path, content in contents.items():
            path.parent.mkdir(parents=True, exist_ok=True)
            temporary = path.with_name(f".{path.name}.{os.getpid()}.part")
            waiting.append((temporary, path))
            temporary.write_bytes(content)
        for temporary, path in waiting:
            temporary.replace(path)
    except OSError as error:
        place = error.filename or ", ".join(str(path) for path in contents)
        raise RequestFault(f"cannot write {place}: {error.strerror or error}") from error
    finally:
        for temporary, _ in waiting:
            temporary.unlink(missing_ok=True)
