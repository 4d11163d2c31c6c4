"""Lessons on a bad day: their kernel dies, their file, their saved values or what lies beside them is damaged."""

from __future__ import annotations

import json

import nbformat

from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.lesson import sidecar
from tests.booklet.conftest import code
from tests.example import EXAMPLE

from .day import SIDECAR, Day, fault, said

LAST = "the last good output and the lesson"


def run(day: Day, timeout: int = 20) -> str:
    path = day.notebook
    return said(
        lambda: run_notebook(read_notebook(path), path.parent, name=path.name, timeout=timeout) and "it ran to its end"
    )


def broken_at(day: Day, place: int, source: str) -> None:
    """The napkin with `source` as one more cell at `place`."""
    day.lesson()
    book = nbformat.read(day.notebook, as_version=4)
    book.cells.insert(place, code(source))
    day.keeps(day.notebook, nbformat.writes(book))
    day.last_good()


for _place, _name in {0: "before the lesson's cell", 2: "after it"}.items():

    @fault("Kernel", f"it dies in a cell {_name}", LAST, quick=_place == 2)
    def _dies(day: Day, place: int = _place) -> str:
        broken_at(day, place, "import os\nos._exit(9)")
        return run(day)


@fault("Kernel", "it dies in each cell of a whole lesson, one after the other", LAST)
def dies_in_each(day: Day) -> str:
    """The ferry tote: as many notebooks as it has code cells, each of which ends its kernel in another one."""
    book = read_notebook(EXAMPLE.with_name("ferry_tote.ipynb"))
    home = day.folder / "lesson"
    home.mkdir()
    day.last_good()
    places = [place for place, cell in enumerate(book.cells) if cell.cell_type == "code"]
    for number, place in enumerate(places, start=1):
        broken = nbformat.from_dict(book)
        broken.cells[place].source = "import os\nos._exit(9)"
        day.notebook = day.keeps(home / f"tote_{number}.ipynb", nbformat.writes(broken))
        text = run(day)
        assert text.startswith(f"Code cell {number} ") and "ended the notebook's kernel" in text, (number, text)
        assert day.lost() == []
    assert len(places) > 8
    return f"{text.split(' (')[0].replace(str(number), 'N')} ended the notebook's kernel. Run that cell in JupyterLab …"


@fault("Kernel", "it dies while the pattern is handed over", LAST)
def dies_at_the_end(day: Day) -> str:
    day.lesson("import kit.booklet.handover as h, os\nh.send = lambda *a, **k: os._exit(9)")
    day.last_good()
    return run(day)


@fault("Kernel", "it is killed from outside, as where the memory is used up", LAST)
def is_killed(day: Day) -> str:
    broken_at(day, 2, "import os, signal\nos.kill(os.getpid(), signal.SIGKILL)")
    return run(day)


@fault("Kernel", "a cell never ends", LAST)
def never_ends(day: Day) -> str:
    broken_at(day, 2, "while True: pass")
    return run(day, 2)


@fault("Kernel", "a step never ends", LAST)
def step_never_ends(day: Day) -> str:
    day.lesson("@lesson.step('Wait')\ndef wait(front):\n    '''Wait.'''\n    while True: pass")
    day.last_good()
    return run(day)


@fault("Kernel", "a cell uses up the memory", LAST)
def memory(day: Day) -> str:
    broken_at(day, 2, "raise MemoryError")
    return run(day)


@fault("Kernel", "a cell calls itself without end", LAST)
def recursion(day: Day) -> str:
    broken_at(day, 2, "def again(): again()\nagain()")
    return run(day)


@fault("Kernel", "a cell closes what the kernel writes to", LAST)
def closes(day: Day) -> str:
    broken_at(day, 2, "import sys\nsys.stdout.close()\nsys.stderr.close()\nprint('hello')")
    return run(day)


@fault("Kernel", "a cell leaves the lesson's folder", LAST)
def leaves(day: Day) -> str:
    broken_at(day, 2, "import os, tempfile\nos.chdir(tempfile.mkdtemp())")
    return run(day)


NOTEBOOKS = {
    "half of it is missing": lambda text: text[: len(text) // 2],
    "it is empty": lambda text: "",
    "it is a hundred thousand brackets": lambda text: "[" * 100_000,
    "its bytes are no text": None,
    "its cells are none": lambda text: json.dumps({**json.loads(text), "cells": 7}),
}
for _name, _change in NOTEBOOKS.items():

    @fault("Notebook", _name, "the file, to be mended by hand; the last good output", quick=_name.startswith("half"))
    def _notebook(day: Day, change=_change) -> str:  # type: ignore[no-untyped-def]
        day.lesson()
        text = day.notebook.read_text("utf-8")
        day.keeps(day.notebook, b"\xff\xfe\x00" * 100 if change is None else change(text))
        day.last_good()
        return said(lambda: read_notebook(day.notebook)).replace(str(day.folder), "FOLDER")


@fault("Notebook", "it begins with a byte order mark", "the lesson; it is read")
def order_mark(day: Day) -> str:
    day.lesson()
    day.keeps(day.notebook, b"\xef\xbb\xbf" + day.notebook.read_bytes())
    assert len(read_notebook(day.notebook).cells) == 2
    return "(nothing: it is read)"


SIDECARS: dict[str, bytes] = {
    "it is cut off": b'{"lesson": "pebble-napkin", "values": {"se',
    "it is empty": b"",
    "its bytes are no text": b"\xff\xfe\x00",
    "it is nested without end": b'{"values": ' + b"[" * 100_000,
    "it is of another lesson": b'{"lesson": "another", "values": {"seam": 9}}',
    "its values are a list": b'{"lesson": "pebble-napkin", "values": [1]}',
}
for _name, _data in SIDECARS.items():

    @fault(
        "Saved values",
        _name,
        "the damaged file, set aside as .broken when values are saved anew",
        _name.startswith("it is cut"),
    )
    def _sidecar(day: Day, data: bytes = _data) -> str:
        day.lesson()
        path = day.notebook.parent / SIDECAR
        path.write_bytes(data)
        told = sidecar.read(path, "pebble-napkin").trouble
        assert told is not None
        sidecar.write(path, "pebble-napkin", "W4", "cm", {"seam": 8.0})
        assert sidecar.read(path, "pebble-napkin").values == {"seam": 8.0}
        assert path.with_suffix(".json.broken").read_bytes() == data
        return str(told)


@fault(
    "Saved values", "they are numbers that are none (NaN, 1e999, 400 digits)", "the file; the lesson's own values stand"
)
def no_numbers(day: Day) -> str:
    from kit.lesson.parameter import parameter_of

    day.lesson()
    path = day.notebook.parent / SIDECAR
    seam = parameter_of("seam", "length", 10.0, 5.0, 20.0)
    for number in ("NaN", "1e999", "-Infinity", "9" * 400, '"wide"', "true"):
        day.keeps(path, f'{{"lesson": "pebble-napkin", "values": {{"seam": {number}}}}}')
        assert sidecar.within(seam, sidecar.read(path, "pebble-napkin")) == 10.0
    return said(lambda: seam.checked(float("nan")))


@fault("Saved values", "the folder is full when they are saved", "the values saved before")
def not_saved(day: Day) -> str:
    import errno
    import os

    day.lesson()
    path = day.keeps(day.notebook.parent / SIDECAR, '{"lesson": "pebble-napkin", "values": {"seam": 9}}')

    def no_room(number: int) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    day.patch.setattr("kit.atomic.os.fsync", no_room)
    text = said(lambda: sidecar.write(path, "pebble-napkin", "W4", "cm", {"seam": 8.0}))
    return text.replace(str(day.folder), "FOLDER")


BESIDE: dict[str, tuple[str, bytes]] = {
    "the laid cloth that is kept is damaged": ("pebble-napkin.lays.json", b'{"x": {"tries": 7, "sum": '),
    "the look of the booklet is damaged": ("theme.toml", b"[colours\nline = "),
}
for _name, (_file, _data) in BESIDE.items():

    @fault("Beside the lesson", _name, "the last good output, or a whole new one", quick="look" in _name)
    def _beside(day: Day, file: str = _file, data: bytes = _data) -> str:
        day.lesson()
        (day.notebook.parent / file).write_bytes(data)
        day.last_good()
        text = day.built()
        if text == "built":
            day.wanted = {path: data for path, data in day.wanted.items() if path.parent != day.out}
            return "(nothing: it is built)"
        return text.replace(str(day.folder), "FOLDER")
