"""The kit as a page carries it, kept from build to build: to read and strip every module takes five seconds."""

from __future__ import annotations

import hashlib
import platform
import zipfile
import zlib
from collections.abc import Sequence
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.page.bundle import MARKUP, PATHS, PURE, PURE_MODULES, WRITER, kit_files, unpacked, zipped
from kit.page.core import cache_folder
from kit.resources import templates

_KIT = Path(__file__).resolve().parents[1]


def kept_kit(
    languages: Sequence[str], *, drawings: bool = False, booklet: bool = False, pages: bool = False
) -> dict[str, bytes]:
    """What `kit_files` gives, from the cache where it was made before of the very same sources, packages and Python;
    what lies there damaged is made anew. Raises `KitError` as it does."""
    asked = f"{','.join(languages)} {drawings} {booklet} {pages}"
    kept = cache_folder() / f"kit-{_sources(asked)}.zip"
    try:
        return unpacked(kept.read_bytes())
    except (OSError, ValueError, EOFError, zlib.error, zipfile.BadZipFile):
        pass  # not there, or not whole
    made = kit_files(languages, drawings=drawings, booklet=booklet, pages=pages)
    try:
        write_atomically(kept, zipped(made))
    except KitError:
        pass  # it is made anew next time
    return made


def _sources(asked: str) -> str:
    """A digest of all that the files are made from."""
    told = hashlib.sha256(f"{asked} {platform.python_version()}".encode())
    for name in sorted({*PURE.values(), *PURE_MODULES.values(), *PATHS.values(), *MARKUP.values(), *WRITER.values()}):
        try:
            told.update(f"{name} {version(name)}\n".encode())
        except PackageNotFoundError:
            told.update(f"{name} -\n".encode())
    words = templates() / "language"
    for path in sorted([*_KIT.rglob("*.py"), *_KIT.glob("*/data/*"), *words.rglob("*")]):
        if path.is_file():
            data = path.read_bytes()
            told.update(f"{path.name} {len(data)}\n".encode() + str(path.parent.name).encode() + data)
    return told.hexdigest()[:24]
