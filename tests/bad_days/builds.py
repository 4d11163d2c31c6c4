"""Builds on a bad day: killed, out of room, without a folder, a typesetter, a clock."""

from __future__ import annotations

import errno
import os
import re
import shutil
import tempfile
import time
from typing import Any

from kit.booklet import typeset, writing
from kit.booklet.put_in_place import alone_for

from .day import GOOD, Day, ended, fault, fill, small_disk

KEPT = "the last good output; the next build clears away what was left"


def killed(day: Day, where: str, forms: str = "html") -> str:
    day.lesson()
    day.last_good()
    status = ended(day, where, forms)
    assert status == -9, f"the build was not killed but ended with {status}"
    with alone_for(day.out):  # as the next build begins
        left = [path.name for path in day.out.iterdir() if path.is_file() and path.name not in GOOD]
    assert left == [], left
    assert sorted(path.name for path in day.out.iterdir()) == sorted(GOOD)
    return "(nothing: the process is gone)"


STAGES = {
    "while the notebook runs": "building.run_notebook = end",
    "while it is proved": "writing.prove = end",
    "while the cloth is laid": "writing.shopping = end",
    "while pictures and words are made": "writing.compose = end",
    "while the pattern pages are laid out": "writing.write_pages = end",
    "when all is made and nothing is in place": "writing.put_in_place = end",
}
for _stage, _where in STAGES.items():
    fault("Build killed", _stage, KEPT, quick=_stage.startswith("while the pattern"))(
        lambda day, where=_where: killed(day, where)
    )


@fault("Build killed", "while the booklet is set in type", KEPT)
def killed_in_type(day: Day) -> str:
    return killed(day, "import kit.booklet.typeset as t\nt._asked = end", "a4")


@fault("Build killed", "between two files that are put in place", KEPT)
def killed_in_place(day: Day) -> str:
    cut = """
import kit.booklet.put_in_place as p
real, count = os.replace, [0]
def some(one, two):
    if Path(two).parent == Path(OUT):
        count[0] += 1
        if count[0] == 3: end()
    real(one, two)
p.os.replace = some
"""
    return killed(day, cut.replace("OUT", repr(str(day.folder / "out"))))


@fault("Build killed", "twice, one after the other", KEPT)
def killed_twice(day: Day) -> str:
    killed(day, "writing.write_pages = end")
    killed(day, "writing.put_in_place = end")
    return day.replaced() or "(nothing: the process is gone); the third build is whole"


@fault("Build stopped", "by Ctrl+C while the pages are laid out", "the last good output; nothing is left behind", True)
def interrupted(day: Day) -> str:
    day.lesson()
    day.last_good()

    def stop() -> None:
        raise KeyboardInterrupt

    try:
        day.built(at="Laying out the pattern pages", then=stop)
    except KeyboardInterrupt:  # the command says it: "stopped. The earlier output is untouched."
        assert sorted(path.name for path in day.out.iterdir()) == sorted(GOOD)
        return "stopped. The earlier output is untouched."
    raise AssertionError("it was not stopped")


ROOM = "the last good output; with room on the disk the next build is whole"


def full(day: Day, at: str, forms: str = "html") -> str:
    """The disk of the output is full from the moment a stage begins."""
    day.lesson()
    with small_disk(day) as disk:
        day.last_good(disk / "out")
        text = day.built(forms, at, lambda: fill(disk))
        (disk / "filling").unlink()
        assert "disk is full" in text or "No space left" in text or "no space left" in text, text
        assert not day.lost(), day.lost()
        after = day.replaced()
        return after or text.replace(str(day.folder), "FOLDER")


for _at, _name in {
    "Proving": "when the proof begins",
    "Laying the pieces": "when the cloth is laid",
    "Writing the booklet (screen)": "when the screen page is written",
    "Laying out the pattern pages": "when the pattern pages are written",
}.items():
    fault("Disk full", _name, ROOM)(lambda day, at=_at: full(day, at))
fault("Disk full", "when the booklet is set in type", ROOM)(lambda day: full(day, "Writing the booklet (a4)", "a4"))


@fault("Disk full", "when the finished files are put in place", ROOM)
def full_in_place(day: Day) -> str:
    day.lesson()
    with small_disk(day) as disk:
        day.last_good(disk / "out")
        real = writing.put_in_place

        def late(made, out, names):  # type: ignore[no-untyped-def]
            fill(disk)
            return real(made, out, names)

        day.patch.setattr(writing, "put_in_place", late)
        text = day.built()
        day.patch.setattr(writing, "put_in_place", real)
        (disk / "filling").unlink()
        assert not day.lost(), day.lost()
        return day.replaced() or text.replace(str(day.folder), "FOLDER")


@fault("Disk full", "before the build begins", ROOM)
def full_before(day: Day) -> str:
    day.lesson()
    with small_disk(day) as disk:
        day.last_good(disk / "out")
        fill(disk)
        text = day.built()
        (disk / "filling").unlink()
        return day.replaced() or text.replace(str(day.folder), "FOLDER")


@fault("Disk full", "where the system keeps temporary files", "the last good output")
def full_temporary(day: Day) -> str:
    day.lesson()
    day.last_good()
    with small_disk(day) as disk:
        day.patch.setattr(tempfile, "tempdir", str(disk))
        fill(disk)
        text = day.built(ran=False)
        assert not day.lost()
    return re.sub(r"run-\w+", "run-1", text.replace(str(day.folder), "FOLDER"))


@fault("Disk full", "when a file of the output is written (told by the system call)", "the last good output", True)
def full_by_call(day: Day) -> str:
    day.lesson()
    day.last_good()

    def no_room(number: int) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    day.patch.setattr("kit.atomic.os.fsync", no_room)
    return day.built().replace(str(day.folder), "FOLDER")


@fault("Folder", "the output folder is read-only", "the last good output")
def read_only(day: Day) -> str:
    import subprocess

    day.lesson()
    with small_disk(day) as disk:
        day.last_good(disk / "out")
        subprocess.run(["mount", "-o", "remount,ro", disk], check=True)
        text = day.built()
        assert not day.lost()
        return text.replace(str(day.folder), "FOLDER")


@fault("Folder", "the lesson's own folder is read-only", "the lesson; the booklet is made, laid cloth is not kept")
def read_only_lesson(day: Day) -> str:
    import subprocess

    from kit.booklet.run_notebook import read_notebook, run_notebook

    with small_disk(day) as disk:
        whole, day.folder = day.folder, disk
        day.lesson()
        day.folder = whole
        day.last_good(whole / "out")
        subprocess.run(["mount", "-o", "remount,ro", disk], check=True)
        run_notebook(read_notebook(day.notebook), day.notebook.parent, name=day.notebook.name)
        wrong = day.replaced()
        assert not day.lost()
        return wrong or "(nothing: it is built)"


@fault("Folder", "the output folder is removed in mid-build", "the lesson", True)
def removed(day: Day) -> str:
    day.lesson()
    day.last_good()
    for name in GOOD:
        day.wanted.pop(day.out / name)  # whoever removed the folder took them along
    return day.built(at="Laying out", then=lambda: shutil.rmtree(day.out)).replace(str(day.folder), "FOLDER")


@fault("Folder", "a file lies where the output folder should be", "that file")
def a_file(day: Day) -> str:
    day.lesson()
    day.out = day.keeps(day.folder / "out", "somebody's letter")
    return day.built().replace(str(day.folder), "FOLDER")


@fault("Folder", "a folder lies where a file of the output should be", "that folder and the last good output")
def a_folder(day: Day) -> str:
    day.lesson()
    day.last_good()
    day.keeps(day.out / "sheet.pdf" / "somebody.txt", "hers")
    return day.built().replace(str(day.folder), "FOLDER")


@fault("Folder", "two builds are put into one folder at once", "the files are of one build each")
def two_at_once(day: Day) -> str:
    from concurrent.futures import ThreadPoolExecutor

    day.lesson()
    day.last_good()
    for name in GOOD:
        day.wanted.pop(day.out / name)
    with ThreadPoolExecutor(2) as pool:
        told = list(pool.map(lambda _: day.built(), range(2)))
    assert told == ["built", "built"], told
    assert [path for path in day.out.iterdir() if path.name.startswith(".")] == []
    return "(nothing: both are built)"


def _typeset_ends(day: Day, status: int, said: str) -> None:
    """The process that sets pages ends so, with these words."""
    asked = typeset._asked

    def ended(process: Any, files: Any) -> tuple[int, str]:
        process.kill()
        asked(process, files)
        return status, said

    day.patch.setattr(typeset, "_asked", ended)


@fault("Typesetter", "its process is killed", "the last good output")
def typesetter_killed(day: Day) -> str:
    day.lesson()
    day.last_good()
    _typeset_ends(day, -9, "")
    return day.built("a4")


@fault("Typesetter", "it is not installed (no Pango)", "the last good output", True)
def typesetter_missing(day: Day) -> str:
    day.lesson()
    day.last_good()
    _typeset_ends(day, 1, "OSError: cannot load library 'libpango-1.0-0'")
    return day.built("a4")


@fault(
    "Clock", "it is set back by ten years while the build runs", "the build: its files are the same to the byte", True
)
def clock_back(day: Day) -> str:
    day.lesson()
    day.last_good()
    for name in GOOD:
        day.wanted.pop(day.out / name)
    assert day.built() == "built"
    before = {path.name: path.read_bytes() for path in day.out.iterdir() if path.is_file()}
    now, calls = time.time(), [0]

    def back() -> float:
        calls[0] += 1
        return now - 315_000_000 - calls[0]

    with day.patch.context() as patch:
        patch.setattr(time, "time", back)
        told = day.built()
    assert told == "built", told
    assert {path.name: path.read_bytes() for path in day.out.iterdir() if path.is_file()} == before
    return "(nothing: it is built)"


@fault("Clock", "the earlier output and leftovers are dated years ahead", "the build; leftovers are cleared")
def from_the_future(day: Day) -> str:
    day.lesson()
    day.last_good()
    left = day.out / ".lessonkit-booklet-left"
    left.mkdir()
    for path in (*day.out.iterdir(), left):
        os.utime(path, (time.time() + 3e8,) * 2)
    return day.replaced() or "(nothing: it is built)"


@fault("Clock", "SOURCE_DATE_EPOCH is no number", "the last good output")
def no_moment(day: Day) -> str:
    day.lesson()
    day.last_good()
    day.patch.setenv("SOURCE_DATE_EPOCH", "yesterday")
    text = day.built("epub")
    if text == "built":
        for name in GOOD:
            day.wanted.pop(day.out / name)
        return "(nothing: it is built)"
    return text
