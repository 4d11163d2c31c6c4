"""Python for the reader's browser: the core of Pyodide (https://pyodide.org), CPython built for WebAssembly.

It is no part of the kit. It comes from the npm registry through the npm client, or from a folder that is given, and is
kept for the next build. Every file is compared with the hash that stands here, wherever it came from.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import subprocess
import tarfile
import tempfile
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from kit.atomic import make_folder, write_atomically
from kit.errors import KitError

VERSION = "314.0.7"
_ABI = "2026_0"
FILES = {
    "pyodide.mjs": "6f1d60f7bf529beb300f0f47983c921d3982363640ba20af0e38efdddbc66109",
    "pyodide.asm.mjs": "f7cdc8ece80678ceb712f8e65ebe6d3a83203a180c399865f49612a051693635",
    "pyodide.asm.wasm": "cc36e3cab04fdfc9a63ff13eb52eae2b911bf46c025cc7b281f394bd3de1d5e6",
    "python_stdlib.zip": "fa1957e5777068fc4f7437f96d860ae2fbe9c19732ba06c84e004ec16dd7dd7a",
}
"""What is needed of it, each with its SHA-256."""
LOCK = f'{{"info":{{"abi_version":"{_ABI}","arch":"wasm32","platform":"emscripten_5_0_3",\
"python":"3.14.2","version":"{VERSION}"}},"packages":{{}}}}'
"""Its list of packages, without any."""
_HOW = (
    f"Install npm (it comes with Node.js, https://nodejs.org) and build once with a connection, or run "
    f"`npm pack pyodide@{VERSION}` elsewhere, unpack the file and name its folder with --pyodide."
)
_PATIENCE = 300  # seconds


@dataclass(frozen=True)
class Core:
    """The files of the core in `folder`, all as they should be."""

    folder: Path

    def bytes_of(self, name: str) -> bytes:
        return (self.folder / name).read_bytes()


def cache_folder() -> Path:
    """Where the core is kept from build to build."""
    given = os.environ.get("LESSONKIT_CACHE")
    if given:
        return Path(given)
    if os.name == "nt":
        return Path(os.environ.get("LOCALAPPDATA") or Path.home() / "AppData" / "Local") / "lessonkit"
    return Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache") / "lessonkit"


def core(given: Path | None = None, progress: Callable[[str], None] = lambda line: None) -> Core:
    """The core from the folder `given`, else the one that is kept, else fetched through npm and kept. Raises `KitError`
    that says how to get it."""
    if given is not None:
        folder = given / "package" if (given / "package" / "pyodide.mjs").is_file() else given
        _check(folder, "--pyodide")
        return Core(folder)
    kept = cache_folder() / f"pyodide-{VERSION}"
    if all((kept / name).is_file() for name in FILES) and not _wrong(kept):
        return Core(kept)
    progress(f"Fetching Pyodide {VERSION} through npm (once; about 6 MB)")
    _fetch(kept)
    return Core(kept)


def _wrong(folder: Path) -> list[str]:
    """The files that are missing or not as they should be."""
    wrong = []
    for name, told in FILES.items():
        path = folder / name
        if not path.is_file() or hashlib.sha256(path.read_bytes()).hexdigest() != told:
            wrong.append(name)
    return wrong


def _check(folder: Path, where: str) -> None:
    if not folder.is_dir():
        raise KitError(f"there is no folder '{folder}'.", where=where, do=_HOW)
    missing = [name for name in FILES if not (folder / name).is_file()]
    if missing:
        raise KitError(f"'{folder}' lacks {', '.join(missing)}.", where=where, do=_HOW)
    wrong = _wrong(folder)
    if wrong:
        raise KitError(
            f"{', '.join(wrong)} in '{folder}' {'is' if len(wrong) == 1 else 'are'} not of Pyodide {VERSION}, or "
            "damaged: the hash is another.",
            where=where,
            do=_HOW,
        )


def _fetch(target: Path) -> None:
    npm = shutil.which("npm")
    if npm is None:
        raise KitError("a page needs Python for the browser (Pyodide), and npm to fetch it is not here.", do=_HOW)
    with tempfile.TemporaryDirectory(prefix="lessonkit-core-") as scratch:
        try:
            ran = subprocess.run(
                [npm, "pack", f"pyodide@{VERSION}", "--ignore-scripts", "--pack-destination", scratch],
                cwd=scratch,
                capture_output=True,
                text=True,
                timeout=_PATIENCE,
            )
        except (OSError, subprocess.TimeoutExpired) as error:
            raise KitError(f"npm did not fetch Pyodide ({type(error).__name__}).", do=_HOW) from None
        packed = sorted(Path(scratch).glob("*.tgz"))
        if ran.returncode or not packed:
            said = next((line for line in ran.stderr.splitlines() if "code" in line or "error" in line.lower()), "")
            raise KitError(f"npm could not fetch Pyodide {VERSION} ({said.strip() or 'no connection'}).", do=_HOW)
        unpacked = Path(scratch) / "unpacked"
        with tarfile.open(packed[0]) as archive:
            for name in FILES:
                member = archive.extractfile(f"package/{name}")
                if member is not None:
                    write_atomically(unpacked / name, member.read())
        _check(unpacked, "npm")
        make_folder(target)
        for name in FILES:
            write_atomically(target / name, (unpacked / name).read_bytes())
