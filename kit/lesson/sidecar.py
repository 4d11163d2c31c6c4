"""Slider values beside the notebook, so that they outlive the kernel and the build sees them.

A small JSON file, `<lesson>.values.json`, in the notebook's folder:
`{"lesson": slug, "size": "W4", "units": "cm", "values": {"sleeve_length": 230.0}}`, lengths in mm;
`"video": {"marks": {"hem_it": 200.0}}` says at which second of a film each step is shown. Whatever else stands in it,
such as fittings, is left as it is. A file that cannot be read is set aside, never overwritten.
"""

from __future__ import annotations

import json
import math
import os
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.lesson.parameter import Parameter
from kit.lesson.where import here


@dataclass(frozen=True)
class Saved:
    """What the sidecar holds; `marks` are seconds into a film by step, `more` is everything beside size, units and
    values, by key. `trouble` says plainly why it could not be read, if so."""

    size: str = ""
    units: str = ""
    values: dict[str, float] = field(default_factory=dict)
    trouble: str = ""
    more: dict[str, Any] = field(default_factory=dict)
    marks: dict[str, float] = field(default_factory=dict)


_OWN = ("lesson", "size", "units", "values")


def path_for(slug: str, folder: Path | None = None) -> Path:
    return (folder or Path.cwd()) / f"{slug}.values.json"


def read(path: Path) -> Saved:
    """The saved values; an empty `Saved` when there is no file, one with `trouble` when it is broken."""
    try:
        data = json.loads(path.read_text(encoding="utf-8"))
        values = {str(name): float(value) for name, value in data.get("values", {}).items()}
        marks = {str(name): float(at) for name, at in data.get("video", {}).get("marks", {}).items()}
        if any(not 0 <= at < math.inf for at in marks.values()):
            raise ValueError("a time mark is not a number of seconds")
        more = {key: value for key, value in data.items() if key not in _OWN}
        return Saved(str(data.get("size", "")), str(data.get("units", "")), values, more=more, marks=marks)
    except FileNotFoundError:
        return Saved()
    except (OSError, ValueError, AttributeError, TypeError) as error:
        return Saved(trouble=f"The saved slider values in {path.name} cannot be read ({error}); defaults are used.")


def write(path: Path, slug: str, size: str, units: str, values: dict[str, float]) -> None:
    """Write the values atomically and keep what else the file holds; a broken earlier file is kept as `.broken`.
    During a build nothing is written."""
    _update(path, {"lesson": slug, "size": size, "units": units, "values": values})


def keep(path: Path, saved: Saved, key: str, value: Any) -> Saved:
    """Write `value` (JSON) under `key`, as `write` does; gives `saved` with it."""
    _update(path, {key: value})
    return replace(saved, more={**saved.more, key: value})


def write_marks(path: Path, slug: str, marks: dict[str, float]) -> None:
    """Write the seconds at which a film shows each step, as `write` does."""
    _update(path, {"lesson": slug, "video": {"marks": marks}})


def _update(path: Path, changes: dict[str, Any]) -> None:
    if here().building:
        return
    data: dict[str, Any] = {}
    if path.exists():
        if read(path).trouble:
            os.replace(path, path.with_suffix(".json.broken"))
        else:
            data = json.loads(path.read_text(encoding="utf-8"))
    if "video" in changes:
        changes = {**changes, "video": {**data.get("video", {}), **changes["video"]}}
    data |= changes
    write_atomically(path, (json.dumps(data, indent=1, sort_keys=True) + "\n").encode())


def within(parameter: Parameter, saved: Saved) -> float:
    """The saved value of a parameter when it still fits its range, else its default."""
    value = saved.values.get(parameter.name, parameter.default)
    try:
        return parameter.checked(value)
    except KitError:
        return parameter.default
