"""The files of a page, read once and packed once; each is then given out as often as it is asked for."""

from __future__ import annotations

import gzip
import hashlib
from dataclasses import dataclass
from pathlib import Path

_KINDS = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".webmanifest": "application/manifest+json",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".zip": "application/zip",
    ".gz": "application/octet-stream",
    ".wasm": "application/wasm",
}
_PACKED = (".html", ".js", ".mjs", ".css", ".json", ".webmanifest", ".svg", ".txt")
_WORTH = 0.9  # packed only where it is smaller by a tenth


@dataclass(frozen=True)
class Given:
    """A file as it is given out: its `data`, packed with gzip where `packed`, its `kind` and `tag` (ETag)."""

    data: bytes
    kind: str
    tag: str
    packed: bool = False


def given(data: bytes, suffix: str) -> Given:
    """`data` ready to be given out as a file with that suffix."""
    kind, packed = _KINDS.get(suffix, "application/octet-stream"), False
    if suffix in _PACKED:
        smaller = gzip.compress(data, 9, mtime=0)
        if len(smaller) < _WORTH * len(data):
            data, packed = smaller, True
    return Given(data, kind, f'"{hashlib.sha256(data).hexdigest()[:20]}"', packed)


def read_files(folder: Path, left_out: tuple[str, ...] = ()) -> dict[str, Given]:
    """Every file under `folder` by its path, with slashes; links and what begins with a dot are left out."""
    found = {}
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if path.is_symlink() or not path.is_file() or name in left_out or "/." in f"/{name}":
            continue
        found[name] = given(path.read_bytes(), path.suffix)
    return found
