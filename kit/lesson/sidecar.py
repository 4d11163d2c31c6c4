"""Slider values beside the notebook, so that they outlive the kernel and the build sees them.

A small JSON file, `<lesson>.values.json`, in the notebook's folder:
`{"lesson": slug, "size": "W4", "units": "cm", "values": {"sleeve_length": 230.0}}`, lengths in mm;
`"notebook": "top.ipynb"` says whose it is: another notebook of that title in the folder has a file of its own,
`<lesson>.<notebook>.values.json`. `"video": {"marks": {"hem_it": 200.0}}` says at which second of a film each step is
shown. Whatever else stands in it, such as fittings, is left as it is. A file that cannot be read, or that is of another
lesson, is set aside, never overwritten; what of it is not used is told (`kit.lesson.sitting.troubles`).
"""

from __future__ import annotations

import json
import math
import os
import sys
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.diagnostic import Message, message
from kit.errors import KitError
from kit.lesson.parameter import Parameter
from kit.lesson.where import here


@dataclass(frozen=True)
class Saved:
    """What the sidecar holds; `marks` are seconds into a film by step, `more` is everything beside size, units and
    values, by key. `trouble` says why it is not used, if so; `file` is its name."""

    size: str = ""
    units: str = ""
    values: dict[str, float] = field(default_factory=dict)
    trouble: Message | None = None
    more: dict[str, Any] = field(default_factory=dict)
    marks: dict[str, float] = field(default_factory=dict)
    file: str = ""


_LARGEST = 10_000_000  # bytes; fittings of years come to a thousandth of it
_OWN = ("lesson", "notebook", "size", "units", "values")


def notebook() -> str:
    """The name of the notebook that makes a lesson now; "" in plain Python and where it is not known."""
    where = here()
    file = where.opening[-1] if where.opening else where.file
    return file.name if file else ""


def path_for(slug: str, folder: Path | None = None) -> Path:
    """The file of the lesson `slug` that is being made: one of its own where that of the title belongs to another
    notebook in the folder."""
    place = folder or Path.cwd()
    return own_path(place / f"{slug}.values.json", slug, notebook())


def own_path(path: Path, slug: str, book: str) -> Path:
    """`path`, or the file that notebook `book` has to itself where that belongs to another notebook in the folder, as
    it may since the lesson was made: of two notebooks with a new title the first that keeps something has the file."""
    other = owner(path) if book else ""
    return path.with_name(f"{slug}.{Path(book).stem}.values.json") if other and other != book else path


def owner(path: Path) -> str:
    """The notebook beside `path` to which that file of values belongs; "" where there is none any more."""
    try:
        name = json.loads(path.read_text(encoding="utf-8-sig")).get("notebook", "")
        return name if isinstance(name, str) and name and (path.parent / Path(name).name).is_file() else ""
    except (OSError, ValueError, AttributeError, RecursionError):
        return ""


def read(path: Path, slug: str) -> Saved:
    """The values saved for the lesson `slug`; an empty `Saved` when there is no file, one with `trouble` when it is
    broken or of another lesson. Numbers that are none are kept as they are: no parameter takes them (`within`)."""
    file = path.name
    try:
        if path.stat().st_size > _LARGEST:
            raise ValueError("too large")
        data = json.loads(path.read_text(encoding="utf-8-sig"))
        other = data.get("lesson", slug)
        if other != slug:
            return Saved(trouble=message("saved.another", file=file, other=str(other)[:60], slug=slug), file=file)
        values = {str(name): _number(value) for name, value in data.get("values", {}).items()}
        marks = {str(name): float(at) for name, at in data.get("video", {}).get("marks", {}).items()}
        if any(not 0 <= at < math.inf for at in marks.values()):
            raise ValueError("a time mark is not a number of seconds")
        more = {key: value for key, value in data.items() if key not in _OWN}
        size, units = (text if isinstance(text := data.get(key, ""), str) else repr(text) for key in ("size", "units"))
        return Saved(size[:60], units[:60], values, more=more, marks=marks, file=file)
    except FileNotFoundError:
        return Saved()
    except json.JSONDecodeError as error:
        return Saved(trouble=message("saved.broken_line", file=file, line=str(error.lineno)), file=file)
    except (OSError, ValueError, AttributeError, TypeError, OverflowError, RecursionError):
        return Saved(trouble=message("saved.broken", file=file), file=file)


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return math.nan
    return math.inf if isinstance(value, int) and abs(value) > sys.float_info.max else float(value)


def write(path: Path, slug: str, size: str, units: str, values: dict[str, float], *, book: str = "") -> None:
    """Write the values atomically and keep what else the file holds; a broken earlier file is kept as `.broken`. `book`
    is the notebook that the lesson stands in. During a build nothing is written."""
    _update(path, slug, {"size": size, "units": units, "values": values}, book)


def keep(path: Path, slug: str, saved: Saved, key: str, value: Any, *, book: str = "") -> Saved:
    """Write `value` (JSON) under `key`, as `write` does; gives `saved` with it."""
    _update(path, slug, {key: value}, book)
    return replace(saved, more={**saved.more, key: value})


def write_marks(
    path: Path, slug: str, marks: dict[str, float], *, book: str = "", clock: Mapping[str, Any] | None = None
) -> None:
    """Write the seconds at which a film shows each step, as `write` does, and what else its `clock` says (JSON)."""
    _update(path, slug, {"video": {**(clock or {}), "marks": marks}}, book)


def _update(path: Path, slug: str, changes: dict[str, Any], book: str) -> None:
    if here().building:
        return
    data: dict[str, Any] = {}
    path = own_path(path, slug, book)
    if path.exists():
        if read(path, slug).trouble:
            _set_aside(path)
        else:
            data = json.loads(path.read_text(encoding="utf-8-sig"))
    if "video" in changes:
        changes = {**changes, "video": {**data.get("video", {}), **changes["video"]}}
    if book and not owner(path):
        changes = {**changes, "notebook": book}
    data |= {"lesson": slug, **changes}
    write_atomically(path, (json.dumps(data, indent=1, sort_keys=True) + "\n").encode())


def _set_aside(path: Path) -> None:
    """Move a file that is not used out of the way, beside those set aside earlier."""
    number, to = 1, path.with_suffix(".json.broken")
    while to.exists():
        number += 1
        to = path.with_suffix(f".json.broken-{number}")
    try:
        os.replace(path, to)
    except OSError as error:
        raise KitError(
            f"the file cannot be set aside ({error.strerror}).", where=str(path), do="Move it away, then save again."
        ) from None


def within(parameter: Parameter, saved: Saved) -> float:
    """The saved value of a parameter when it still fits its range, else its default."""
    value = saved.values.get(parameter.name, parameter.default)
    try:
        return parameter.checked(value)
    except KitError:
        return parameter.default
