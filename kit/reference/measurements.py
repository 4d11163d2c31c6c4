"""The body measurements a step may ask for by name: how each is taken, and what it is in one size, so that a name is
looked up and not guessed."""

from __future__ import annotations

import textwrap

from kit.body.chart import workshop_chart
from kit.body.measures import MEASUREMENTS, Measurement
from kit.language import say
from kit.reference.blocks import SIZE

_WIDE = 92
WORDS = frozenset({"measurement", "measurements", "body measurement", "body measurements", "measure", "measures"})
"""What is asked for when all of them are meant."""


def _line(one: Measurement) -> str:
    value = workshop_chart()[SIZE][one.name] / 10
    return textwrap.fill(f"  {one.name:20} {value:6.1f}  {one.note}", _WIDE, subsequent_indent=" " * 31)


def measurements_text(name: str = "") -> str:
    """All the measurements as lines of text, or the one of that name; `KeyError` for a name that is none."""
    rows = [MEASUREMENTS[name]] if name else MEASUREMENTS.values()
    return "\n".join([textwrap.fill(say("reference.measurements", size=SIZE), _WIDE), "", *map(_line, rows)])


def measurements_table() -> str:
    """All of them as the table of the notebook."""
    body = workshop_chart()[SIZE]
    rows = [f"| `{one.name}` | {one.note} | {body[one.name] / 10:.1f} |" for one in MEASUREMENTS.values()]
    return "\n".join([f"| name | how it is taken | {SIZE}, cm |", "| --- | --- | --- |", *rows])
