"""What the clock of a film says: when each step was shown, and what follows from it.

A step's mark is the first time it was on show for two seconds; stepping past it quickly leaves none, unless the
teacher says that steps shown briefly count. A time put in by hand stands before the clock's.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

LEAST = 2.0
"""Seconds a step must be on show to be marked."""


@dataclass(frozen=True)
class Showing:
    """The step `key` was on show from `start` to `end`, seconds from the start of the film."""

    key: str
    start: float
    end: float


def showings(given: object) -> tuple[Showing, ...]:
    """Showings out of what the browser sends, [[key, start, end], ...]; what is none is left out."""
    found: list[Showing] = []
    for one in given if isinstance(given, list | tuple) else ():
        if not isinstance(one, list | tuple) or len(one) != 3 or not isinstance(one[0], str):
            continue
        start, end = one[1], one[2]
        if all(isinstance(t, int | float) and math.isfinite(t) and t >= 0 for t in (start, end)):
            found.append(Showing(one[0], float(start), float(end)))
    return tuple(found)


def marks(found: Sequence[Showing], least: float = LEAST) -> dict[str, float]:
    """Seconds by step: the first time each was on show for at least `least` seconds."""
    out: dict[str, float] = {}
    for one in found:
        if one.key not in out and one.end - one.start >= least - 1e-6:
            out[one.key] = round(one.start, 1)
    return out


def corrected(clocked: Mapping[str, float], by_hand: Mapping[str, float | None]) -> dict[str, float]:
    """The clock's marks with those put in by hand; None takes a mark out."""
    out = {**clocked, **{key: at for key, at in by_hand.items() if at is not None}}
    return {key: at for key, at in out.items() if by_hand.get(key, at) is not None}


def clock(at: float) -> str:
    """Seconds as a list of chapters has them: 03:20, 1:02:10."""
    whole = math.floor(at)
    hours, minutes = whole // 3600, whole // 60 % 60
    return f"{hours}:{minutes:02d}:{whole % 60:02d}" if hours else f"{minutes:02d}:{whole % 60:02d}"


def chapters(found: Mapping[str, float], titles: Mapping[str, str], opening: str) -> str:
    """A line for each marked step by its time, "03:20 Raise the shoulder". The list begins at 00:00, as sites that show
    films want it (common practice, no source): with `opening` where no step is shown from the start."""
    lines = sorted((at, titles[key]) for key, at in found.items() if key in titles)
    if not lines:
        return ""
    if math.floor(lines[0][0]) > 0:
        lines.insert(0, (0.0, opening))
    return "".join(f"{clock(at)} {title}\n" for at, title in lines)
