"""Published charts and bodies the tests measure the kit against. Each reader names its source."""

from __future__ import annotations

import csv
from pathlib import Path

from kit.units import Length, parse

DATA = Path(__file__).resolve().parent / "data"


def _columns(name: str) -> dict[str, dict[str, Length]]:
    lines = [line for line in (DATA / name).read_text("utf-8").splitlines() if not line.startswith("#")]
    header, *rows = csv.reader(lines)
    return {
        size: {row[0]: parse(row[column], "inch") for row in rows} for column, size in enumerate(header) if column > 0
    }


def astm() -> dict[str, dict[str, Length]]:
    """Size -> printed row name -> length. ASTM D5585-11e1, Table 1 (inch-pound), girth rows."""
    return _columns("astm-d5585-11e1-girths-in.csv")


def astm_bodies() -> dict[str, dict[str, Length]]:
    """Size and waist shape -> measurements by the kit's names, from the same table."""
    names = {
        "neck base girth": "neck_base_girth",
        "bust girth": "bust_girth",
        "under-bust girth": "under_bust_girth",
        "upper-chest girth": "upper_chest_girth",
    }
    return {
        f"{size} {shape}": {ours: column[printed] for printed, ours in names.items()}
        | {"waist_girth": column[f"waist girth ({shape})"]}
        for size, column in astm().items()
        for shape in ("straight", "curvy")
    }


def misses() -> dict[str, dict[str, Length]]:
    """Size -> measurements by the kit's names. The Misses chart of printed patterns, as reprinted 2011-02-28."""
    return {
        size: {name.replace(" ", "_"): value for name, value in column.items()}
        for size, column in _columns("misses-pattern-chart-in.csv").items()
    }
