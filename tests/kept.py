"""What takes long and is asked for by several files of tests is found once in a run, whichever process asks first.

It lies as a pickle in a folder that all processes of a run share and no other run knows, under its name and a digest of
the files it is made from, so it is never older than they are. Who asks while another process is at it waits for it.
"""

from __future__ import annotations

import hashlib
import pickle
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TypeVar

from kit.atomic import write_atomically

try:
    import fcntl
except ImportError:  # on Windows nobody waits: who asks meanwhile makes it too
    fcntl = None  # type: ignore[assignment]

T = TypeVar("T")
_folder: list[Path] = []


@contextmanager
def keeping(folder: Path) -> Iterator[None]:
    """What is kept inside the block lies in `folder`."""
    folder.mkdir(parents=True, exist_ok=True)
    _folder.append(folder)
    try:
        yield
    finally:
        _folder.remove(folder)


def kept(name: str, made_from: tuple[Path, ...], make: Callable[[], T]) -> T:
    """What `make` gives, which follows from the kit's code and the files `made_from` alone; made anew for each who asks
    outside `keeping`, so that nobody may change what another reads."""
    if not _folder:
        return make()
    told = hashlib.sha256(name.encode())
    for path in made_from:
        told.update(hashlib.sha256(path.read_bytes()).digest())
    file = _folder[-1] / f"{told.hexdigest()}.pickle"
    with file.with_suffix(".lock").open("w") as lock:
        if fcntl is not None:
            fcntl.flock(lock, fcntl.LOCK_EX)
        if file.exists():
            return pickle.loads(file.read_bytes())  # type: ignore[no-any-return]  # written by this very run
        found = make()
        write_atomically(file, pickle.dumps(found))
        return found
