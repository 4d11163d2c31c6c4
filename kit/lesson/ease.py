"""Ease: how much larger a finished measurement is than the body measurement it goes over."""

from __future__ import annotations

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS
from kit.errors import KitError, near
from kit.lesson.pattern import Pattern


def measured(over: str, title: str, body: Body) -> str:
    """`over` when it is a measurement of the table or of `body`; `KitError` with the nearest one otherwise."""
    if over in MEASUREMENTS or over in body:
        return over
    raise KitError(
        f"there is no body measurement '{over}'.",
        where=f"Finished measurement '{title}'",
        do=near(over, [*MEASUREMENTS, *(measure.name for measure in body.measures)]),
    )


def ease(pattern: Pattern) -> tuple[tuple[str, str, float], ...]:
    """(title, body measurement, ease in mm) of every finished measurement that goes over one the body has; less than
    nothing where the cloth must stretch."""
    found = dict(pattern.finished)
    return tuple(
        (title, name, found[title] - pattern.body[name]) for title, name in pattern.over if name in pattern.body
    )
