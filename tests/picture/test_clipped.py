"""The part of lines within a circle or a band. Reference: shapely."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely

from kit.geometry import Cubic, Line, Path, Point
from kit.picture.clipped import Band, RoundWindow, Window, clipped

CURVES = (
    Line(Point(-100, 3), Point(100, 3)),
    Cubic(Point(100, 3), Point(140, 60), Point(-40, 80), Point(-60, -20)),
    Line(Point(-60, -20), Point(-60, -90)),
)
WINDOWS: list[Window] = [
    RoundWindow(Point(0, 0), 20),
    RoundWindow(Point(-60, -20), 15),
    RoundWindow(Point(40, 40), 30),
    Band(-30, 10),
]


def area(window: Window) -> shapely.Polygon:
    if isinstance(window, RoundWindow):
        return shapely.Point(window.middle.x, window.middle.y).buffer(window.radius, quad_segs=256)
    return shapely.box(-1000, window.low, 1000, window.high)


@pytest.mark.parametrize("window", WINDOWS)
def test_what_is_left_is_what_shapely_leaves(window: Window) -> None:
    whole = shapely.LineString([(p.x, p.y) for p in Path(CURVES).points(0.001)])
    wanted = whole.intersection(area(window)).length
    runs = clipped(CURVES, window)
    assert sum(curve.length for run in runs for curve in run) == pytest.approx(wanted, abs=0.05)
    for run in runs:
        for a, b in pairwise(run):
            assert a.end.distance(b.start) < 1e-6
        for p in (run[0].point(0.5), run[-1].point(0.5)):
            assert window.holds(p)


def test_a_small_window_on_a_long_line_is_not_missed() -> None:
    (run,) = clipped((Line(Point(-900, 0), Point(900, 0)),), RoundWindow(Point(333.3, 0.0), 8.0))
    assert run[0].length == pytest.approx(16.0, abs=1e-3)


def test_nothing_of_a_line_that_passes_by() -> None:
    assert clipped((Line(Point(-90, 10), Point(90, 10)),), RoundWindow(Point(0, 0), 9.0)) == []
    assert clipped((Line(Point(0, 0), Point(1, 1)),), RoundWindow(Point(0, 0), math.sqrt(2) + 1e-6))
