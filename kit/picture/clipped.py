"""The part of lines that lies within a circle or a band: what an enlarged corner and a cropped piece show."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from kit.geometry import Curve, Point

_STEPS, _MOST = 16, 240
_HALVED = 26


@dataclass(frozen=True)
class RoundWindow:
    """A round window about `middle`."""

    middle: Point
    radius: float

    @property
    def stride(self) -> float:
        """How closely a line is looked at, in mm."""
        return self.radius * 0.3

    def holds(self, p: Point) -> bool:
        """Whether a point lies within."""
        return math.hypot(p.x - self.middle.x, p.y - self.middle.y) <= self.radius

    def misses(self, box: tuple[float, float, float, float]) -> bool:
        """Whether nothing within `box` can lie in the window."""
        x0, y0, x1, y1 = box
        dx = max(x0 - self.middle.x, 0.0, self.middle.x - x1)
        dy = max(y0 - self.middle.y, 0.0, self.middle.y - y1)
        return math.hypot(dx, dy) > self.radius


@dataclass(frozen=True)
class Band:
    """A level band from `low` to `high`."""

    low: float
    high: float

    @property
    def stride(self) -> float:
        """How closely a line is looked at, in mm."""
        return (self.high - self.low) * 0.3

    def holds(self, p: Point) -> bool:
        """Whether a point lies within."""
        return self.low <= p.y <= self.high

    def misses(self, box: tuple[float, float, float, float]) -> bool:
        """Whether nothing within `box` can lie in the window."""
        return box[3] < self.low or box[1] > self.high


Window = RoundWindow | Band


def clipped(curves: Sequence[Curve], window: Window) -> list[tuple[Curve, ...]]:
    """The runs of joined `curves` inside the window, exact but for their ends, which lie on its rim to 1 in 10^6 of a
    curve's length."""
    runs: list[list[Curve]] = []
    open_run = False
    for curve in curves:
        if window.misses(curve.bounds()):
            open_run = False
            continue
        for low, high in _stretches(curve, window.holds, window.stride):
            part = curve if low <= 0.0 and high >= 1.0 else curve.between(low, high)
            if open_run and low <= 0.0 and runs:
                runs[-1].append(part)
            else:
                runs.append([part])
            open_run = high >= 1.0
        if not runs or not window.holds(curve.end):
            open_run = False
    return [tuple(run) for run in runs]


def _stretches(curve: Curve, holds: Callable[[Point], bool], stride: float) -> Iterator[tuple[float, float]]:
    """(from, to) of the curve's parameter where it lies inside. It is looked at in equal steps of about `stride` mm:
    what dips in and out again between two of them is not seen."""
    box = curve.bounds()
    across = math.hypot(box[2] - box[0], box[3] - box[1])
    steps = min(max(_STEPS, math.ceil(across / max(stride, 1e-6))), _MOST)
    inside = [holds(curve.point(i / steps)) for i in range(steps + 1)]
    begun = 0.0 if inside[0] else None
    for i in range(steps):
        if inside[i] == inside[i + 1]:
            continue
        edge = _rim(curve, i / steps, (i + 1) / steps, inside[i], holds)
        if inside[i + 1]:
            begun = edge
        elif begun is not None:
            if edge - begun > 1e-9:
                yield begun, edge
            begun = None
    if begun is not None:
        yield begun, 1.0


def _rim(curve: Curve, a: float, b: float, inside: bool, holds: Callable[[Point], bool]) -> float:
    for _ in range(_HALVED):
        middle = (a + b) / 2
        if holds(curve.point(middle)) == inside:
            a = middle
        else:
            b = middle
    return (a + b) / 2
