"""Published charts and bodies the tests measure the kit against, read from the folder of published figures beside the
checkout. Each reader names its source."""

from __future__ import annotations

import csv
from typing import Any

import pytest

from kit import Body, make_body, workshop_chart
from kit.units import Length, parse
from tests.body.survey import TABLE

DATA = TABLE.parent
ABSENT = f"the published charts are not beside the checkout, in {DATA.parent.name}/{DATA.name}"
"""Why a check that needs them is skipped where they are not: the project holds no copy of them."""
HERE = (DATA / "astm-d5585-11e1-girths-in.csv").is_file() and (DATA / "misses-pattern-chart-in.csv").is_file()
needed = pytest.mark.skipif(not HERE, reason=ABSENT)


def bodies() -> list[Any]:
    """As parameters of a test: the workshop's sizes; ASTM D5585-11e1 girths, straight and curvy; the Misses chart of
    printed patterns. What a chart does not have is estimated from the workshop's sizes."""
    found = [pytest.param(body, id=body.name) for body in workshop_chart().bodies()]
    if not HERE:
        return [*found, pytest.param(None, id="published", marks=needed)]
    columns = [(f"ASTM {name}", values) for name, values in astm_bodies().items()]
    columns += [(f"Misses {name}", values) for name, values in misses().items()]
    return found + [pytest.param(_made(name, values), id=name) for name, values in columns]


def _made(name: str, values: dict[str, Length]) -> Body:
    return make_body(values, name=name)


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
