"""Where a notebook came from, as far as the file itself says it.

Running a notebook runs its code with the reader's rights. Whoever wrote it oneself knows that code; a notebook that
somebody else owns, or that a browser or mail program marked as a download, deserves a look first. A file without a
mark may still be a stranger's: the mark is lost when a file is unpacked or copied by some programs, so silence here
promises nothing.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

_DOWNLOADED = ("user.xdg.origin.url", "user.xdg.referrer.url")  # freedesktop.org, common extended attributes


def stranger(path: Path) -> str:
    """Why the notebook at `path` is not this machine's user's own, as a whole sentence; empty when nothing says so."""
    try:
        owner = path.stat().st_uid
    except OSError:
        return ""
    if os.name == "posix" and owner != os.getuid():
        return f"{path.name} belongs to another user of this machine ({_name(owner)})."
    if _downloaded(path):
        return f"{path.name} was downloaded."
    return ""


def _name(uid: int) -> str:
    try:
        import pwd

        return pwd.getpwuid(uid).pw_name
    except (ImportError, KeyError):
        return f"number {uid}"


def _downloaded(path: Path) -> bool:
    """Whether the file carries the mark of a download: on Linux by browsers that keep it, on macOS the quarantine
    mark, on Windows zone 3 or 4 (internet, restricted) in its Zone.Identifier stream."""
    if sys.platform == "darwin":
        command = ["/usr/bin/xattr", "-p", "com.apple.quarantine", str(path)]
        try:
            return subprocess.run(command, capture_output=True, check=False, timeout=5).returncode == 0
        except (OSError, subprocess.TimeoutExpired):
            return False
    if sys.platform == "win32":
        try:
            text = Path(f"{path}:Zone.Identifier").read_text(encoding="utf-8", errors="replace")
        except OSError:
            return False
        return "ZoneId=3" in text or "ZoneId=4" in text
    try:
        return any(name in os.listxattr(path) for name in _DOWNLOADED)
    except (OSError, AttributeError):
        return False
