"""The folder a build writes into: refused before the work when it cannot be written, and its files put in place as one.

The finished files take the place of the old ones together, one build at a time (`kit.scratch.alone_in`). Should the
process be ended between two of them, the next build into the folder first puts back those of the build before it, so
that what lies there is of one build.
"""

from __future__ import annotations

import json
import os
import shutil
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from kit.atomic import MAKE_ROOM, is_full, make_folder, reason
from kit.errors import KitError
from kit.scratch import alone_in, scratch

_BEFORE, _PLACING = "before", "placing.json"
_MAKING = ".lessonkit-booklet-"  # a release keeps folders of its own beside these


@contextmanager
def alone_for(out: Path) -> Iterator[Path]:
    """A folder in `out` to make the files in, which nobody else uses; leftovers of ended builds are cleared away first.
    Raises `KitError` when `out` is removed while it is used."""
    with alone_in(out):
        working = scratch(_MAKING, out, _put_back)
        made = working.__enter__()
    own = made.stat().st_ino
    try:
        yield made
    except (OSError, KitError) as error:
        if made.is_dir() and made.stat().st_ino == own:
            if isinstance(error, KitError) and str(made) in error.where:  # where it is to go is all that people know
                raise KitError(error.told.says, where=error.where.replace(str(made), str(out)), do=error.do) from error
            raise
        raise KitError(
            "the folder was removed while the booklet was made.", where=str(out), do="Build again, and leave it there."
        ) from error
    finally:
        working.__exit__(None, None, None)


def writable(out: Path, names: Sequence[str]) -> None:
    """Refuse an output folder that cannot be written before the work begins."""
    make_folder(out)
    try:
        with tempfile.TemporaryFile(dir=out):
            pass
    except OSError as error:
        raise KitError(
            f"nothing can be written there: {reason(error)}.",
            where=str(out),
            do="What was there before is untouched. "
            + (MAKE_ROOM if is_full(error) else "Choose another folder with --out, or make this one writable."),
        ) from error
    blocked = [name for name in names if (out / name).is_dir()]
    if blocked:
        raise KitError(
            f"there is a folder called {blocked[0]} where the file should go.",
            where=str(out),
            do="Move that folder away, or choose another folder with --out.",
        )


def put_in_place(made: Path, out: Path, names: Sequence[str]) -> dict[str, Path]:
    """Put every new file in the place of the old one. Where one cannot be placed, those already placed are put
    back."""
    with alone_in(out):
        try:
            (made / _BEFORE).mkdir()
            for name in names:
                if (out / name).exists():
                    shutil.copy2(out / name, made / _BEFORE / name)
            marks = {name: _mark(made / name) for name in names}
            (made / _PLACING).write_text(json.dumps(marks), encoding="utf-8")
            for name in names:
                os.replace(made / name, out / name)
            (made / _PLACING).unlink()
        except OSError as error:
            _put_back(made)
            raise _not_placed(out, error) from error
    return {name: out / name for name in names}


def _mark(path: Path) -> list[int]:
    """What tells a file from another that was put in its place later."""
    found = path.stat()
    return [found.st_ino, found.st_size, found.st_mtime_ns]


def _put_back(made: Path) -> None:
    """Undo what was placed from the folder `made`, where it was not done to the end."""
    placing = made / _PLACING
    if not placing.is_file():
        return
    for name, mark in json.loads(placing.read_text(encoding="utf-8")).items():
        there, before = made.parent / name, made / _BEFORE / name
        if not there.exists() or _mark(there) != mark:
            continue
        if before.exists():
            os.replace(before, there)
        else:
            there.unlink()
    placing.unlink()


def _not_placed(out: Path, error: OSError) -> KitError:
    return KitError(
        f"the finished files cannot be put in place: {reason(error)}.",
        where=str(out),
        do="The earlier files are as they were. "
        + (MAKE_ROOM if is_full(error) else "Close programs that hold them open, or choose another folder."),
    )
