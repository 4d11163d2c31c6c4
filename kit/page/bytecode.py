"""Modules compiled before they travel: the browser's own Python does it once, under Node.js, when a page is built.

To compile the sources took most of a page's start. Bytecode is of one version of Python alone; the core is pinned by
its hash (`core.py`) and what it compiled is kept by the hashes of core and sources, so that the two never part.
"""

from __future__ import annotations

import hashlib
import shutil
import subprocess
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.page.bundle import unpacked, zipped
from kit.page.core import FILES, LOCK, Core, cache_folder
from kit.resources import templates

_SCRIPT = "bytecode.mjs"
_PATIENCE = 600  # seconds


def compiled(taken: Core, files: Mapping[str, bytes]) -> dict[str, bytes]:
    """`files` by name, each module `a.py` as `a.pyc` in its place; the others as they are. Raises `KitError` that says
    why it cannot be done."""
    sources = {name: data for name, data in files.items() if name.endswith(".py")}
    script = templates() / "page" / _SCRIPT
    told = hashlib.sha256("".join(FILES.values()).encode() + script.read_bytes())
    for name in sorted(sources):
        told.update(name.encode() + b"\0" + hashlib.sha256(sources[name]).digest())
    kept = cache_folder() / f"bytecode-{told.hexdigest()[:24]}.zip"
    made = _whole(kept.read_bytes(), sources) if kept.is_file() else None
    if made is None:
        packed = _compile(taken, script, sources)
        made = _whole(packed, sources)
        if made is None:
            raise KitError("the page's Python compiled something else than it was given.")
        try:
            write_atomically(kept, zipped(made))
        except KitError:
            pass  # it is made anew next time
    return {**{name: data for name, data in files.items() if name not in sources}, **made}


def _whole(packed: bytes, sources: Mapping[str, bytes]) -> dict[str, bytes] | None:
    """What is in the archive; None where it is not what became of `sources`, whole."""
    try:
        made = unpacked(packed)
    except (zipfile.BadZipFile, EOFError, OSError):
        return None
    return made if set(made) == {f"{name}c" for name in sources} else None


def _compile(taken: Core, script: Path, sources: Mapping[str, bytes]) -> bytes:
    node = shutil.which("node")
    if node is None:
        raise KitError("Node.js is not here.")
    with tempfile.TemporaryDirectory(prefix="lessonkit-bytecode-") as scratch:
        given, target = Path(scratch) / "sources.zip", Path(scratch) / "compiled.zip"
        given.write_bytes(zipped({f"page/{name}": data for name, data in sources.items()}))
        try:
            ran = subprocess.run(
                [node, str(script), str(taken.folder), str(given), str(target), LOCK],
                cwd=scratch,
                capture_output=True,
                timeout=_PATIENCE,
            )
        except (OSError, subprocess.TimeoutExpired) as error:
            raise KitError(f"Node.js did not end its work ({type(error).__name__}).") from None
        if ran.returncode or not target.is_file():
            said = ran.stderr.decode("utf-8", "replace").strip().splitlines()
            last = next((line for line in reversed(said) if "Error" in line), "it ended without a word")
            raise KitError(f"Node.js could not do it: {last.strip()[:200]}.")
        return zipped({name.removeprefix("page/"): data for name, data in unpacked(target.read_bytes()).items()})
