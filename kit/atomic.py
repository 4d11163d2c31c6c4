"""Writing files so that a failed build never spoils the last good one.

The new content goes to a temporary file in the same folder and takes the old one's place in a single step
(`os.replace`), so a reader sees either the old file or the new one, whole.
"""

from __future__ import annotations

import errno
import os
import tempfile
from pathlib import Path

from kit.errors import KitError

_REASONS = {
    errno.EACCES: "you have no permission to write there",
    errno.EPERM: "you have no permission to write there",
    errno.EROFS: "it is read-only",
    errno.ENOSPC: "the disk is full",
    errno.EDQUOT: "your disk quota is used up",
    errno.ENOTDIR: "part of the path is a file, not a folder",
    errno.EEXIST: "there is a file of that name where the folder should be",
    errno.EISDIR: "there is a folder of that name where the file should be",
    errno.ENAMETOOLONG: "the name is too long",
}

MAKE_ROOM = "Make room on the disk and try again."


def make_folder(path: Path) -> Path:
    """`path` as a folder that exists, made with its parents. Raises `KitError` when it cannot be made."""
    try:
        path.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise KitError(
            f"the folder cannot be made: {reason(error)}.",
            where=str(path),
            do="Choose another folder with --out, or free the name and try again.",
        ) from error
    return path


def write_atomically(path: Path, content: bytes | str) -> Path:
    """Write `content` (text as UTF-8) to `path`, making its folder; give back `path`.

    Raises `KitError` with the path, the reason and the way out when it cannot be written; a file already
    there stays as it was.
    """
    make_folder(path.parent)
    data = content.encode("utf-8") if isinstance(content, str) else content
    temporary = ""
    try:
        handle, temporary = tempfile.mkstemp(prefix=f".{path.name[:40]}-", suffix=".part", dir=path.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        os.chmod(temporary, _mode(path))
        os.replace(temporary, path)
    except OSError as error:
        raise KitError(
            f"the file cannot be written: {reason(error)}.",
            where=str(path),
            do="What was there before is untouched. "
            + (MAKE_ROOM if is_full(error) else "Choose another folder with --out, or make this one writable."),
        ) from error
    finally:
        if temporary and os.path.exists(temporary):
            os.unlink(temporary)
    return path


def is_full(error: OSError) -> bool:
    """Whether there is no room on the disk, or none that this user may take."""
    return error.errno in (errno.ENOSPC, errno.EDQUOT)


def reason(error: OSError) -> str:
    """Why the system refused it, in a phrase: "the disk is full"."""
    known = _REASONS.get(error.errno or 0)
    return known or (error.strerror or "the system refused it").lower()


def _mode(path: Path) -> int:
    """The mode the finished file should have: the old file's, else what a plain `open` would give."""
    try:
        return path.stat().st_mode & 0o777
    except OSError:
        umask = os.umask(0)
        os.umask(umask)
        return 0o666 & ~umask
