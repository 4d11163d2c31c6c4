"""Layouts on cloth are searched for once in a run of tests, whichever process or test asks first.

What is found is known by a digest of the outlines, the cloth and the code that lays (kit/cloth/kept_lays.py), so that a
build in one test and a booklet composed in another, of the same lesson in the same sizes, lay the same. Both ask the
file in a folder that all processes of a run share, one for each digest. Tests of laying itself (tests/cloth) lay anew.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from kit.atomic import write_atomically
from kit.cloth.kept_lays import Kept

_shared: list[Path] = []


@contextmanager
def sharing(folder: Path) -> Iterator[None]:
    """Layouts are read from `folder` where they are not known yet, and written there when they are found."""
    of, keep = Kept.of, Kept.keep

    def file(key: str) -> Path:
        return folder / f"{hashlib.sha256(key.encode()).hexdigest()}.json"

    def asked(self, key, tables):
        found = of(self, key, tables)
        if found is not None or not _shared:
            return found
        try:
            entry = json.loads(file(key).read_text(encoding="utf-8"))
        except FileNotFoundError:
            return None
        self._known[key] = entry
        return of(self, key, tables)

    def kept(self, key, found):
        keep(self, key, found)
        if _shared:
            write_atomically(file(key), json.dumps(self._used[key]))

    folder.mkdir(parents=True, exist_ok=True)
    _shared.append(folder)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Kept, "of", asked)
        patch.setattr(Kept, "keep", kept)
        yield
    _shared.remove(folder)


@contextmanager
def laying_anew() -> Iterator[None]:
    """Nothing is shared meanwhile."""
    before = _shared[:]
    _shared.clear()
    yield
    _shared[:] = before
