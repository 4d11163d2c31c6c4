"""Slider values beside the notebook, so that they outlive the kernel and the build sees them.

A small JSON file, `<lesson>.values.json`, in the notebook's folder:
`{"lesson": slug, "size": "W4", "units": "cm", "values": {"sleeve_length": 230.0}}`, lengths in mm. A file
that cannot be read is set aside, never overwritten.
"""

from __future__ import annotations

import json
import os
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.lesson.parameter import Parameter


@dataclass(frozen=True)
class Saved:
    """What the sidecar holds. `trouble` says plainly why it could not be read, if so."""

    size: str = ""
    units: str = ""
    values: dict[str, float] = field(default_factory=dict)
    trouble: str = ""


def path_for(slug: str, folder: Path | None = None) -> Path:
    return (folder or Path.cwd()) / f"{slug}.values.json"


def read(path: Path) -> Saved:
    """The saved values; an empty `Saved` when there is no file, one with `trouble` when it is broken."""
    try:
        data = json.loads(path.read_text(encoding="utf-8"))
        values = {str(name): float(value) for name, value in data.get("values", {}).items()}
        return Saved(str(data.get("size", "")), str(data.get("units", "")), values)
    except FileNotFoundError:
        return Saved()
    except (OSError, ValueError, AttributeError, TypeError) as error:
        return Saved(trouble=f"The saved slider values in {path.name} cannot be read ({error}); defaults are used.")


def write(path: Path, slug: str, size: str, units: str, values: dict[str, float]) -> None:
    """Write the values atomically; a broken earlier file is kept as `.broken`. During a build nothing is
    written."""
    if os.environ.get("LESSONKIT_BUILD"):
        return
    if path.exists() and read(path).trouble:
        os.replace(path, path.with_suffix(".json.broken"))
    data: dict[str, Any] = {"lesson": slug, "size": size, "units": units, "values": values}
    write_atomically(path, (json.dumps(data, indent=1, sort_keys=True) + "\n").encode())


def within(parameter: Parameter, saved: Saved) -> float:
    """The saved value of a parameter when it still fits its range, else its default."""
    value = saved.values.get(parameter.name, parameter.default)
    try:
        return parameter.checked(value)
    except KitError:
        return parameter.default
