"""Files to disk: all of them or none."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

from mathgen.errors import RequestFault


def write_files(contents: Mapping[Path, bytes], force: bool = False) -> None:
    """Write each file under a temporary name beside its place, then rename all.

    Folders are made as needed. A fault while writing leaves no new file behind and no old one altered.

    Args:
        contents: what to write, by path.
        force: replace files that exist.
    Raises:
        RequestFault: files exist already (all are named), or a place cannot be written to.
    """
    taken = [path for path in contents if path.exists() and (not force or path.is_dir())]
    if taken:
        folders = any(path.is_dir() for path in taken)
        advice = "a folder stands where a file should go; choose another --out" if folders else "use --force to replace, or another --out"
        raise RequestFault(f"already there: {', '.join(str(path) for path in taken)} ({advice})")
    waiting: list[tuple[Path, Path]] = []
    try:
        for path, content in contents.items():
            path.parent.mkdir(parents=True, exist_ok=True)
            handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
            waiting.append((Path(name), path))
            with os.fdopen(handle, "wb") as file:
                file.write(content)
            # mkstemp makes files for their owner only; a teacher's files follow her own settings.
            Path(name).chmod(0o666 & ~_umask())
        for temporary, path in waiting:
            temporary.replace(path)
    except OSError as error:
        raise RequestFault(f"cannot write {error.filename or ''}: {error.strerror or error}") from error
    finally:
        for temporary, _ in waiting:
            temporary.unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
