"""Curves as SVG path data, and quick parallels for dimension lines."""

from __future__ import annotations

import math
from collections.abc import Sequence

from kit.geometry import Arc, Cubic, Curve, Line, Point


def path_data(curves: Sequence[Curve], closed: bool = False) -> str:
    """SVG path data in mm with y turned over, to 0.01 mm. Curves that do not join start a new subpath."""
    out: list[str] = []
    last: Point | None = None
    for curve in curves:
        start, end = curve.start, curve.end
        if last is None or abs(last.x - start.x) > 0.02 or abs(last.y - start.y) > 0.02:
            out.append(f"M{number(start.x)} {number(-start.y)}")
        if isinstance(curve, Line):
            out.append(f"L{number(end.x)} {number(-end.y)}")
        elif isinstance(curve, Cubic):
            a, b = curve.c1, curve.c2
            out.append(f"C{number(a.x)} {number(-a.y)} {number(b.x)} {number(-b.y)} {number(end.x)} {number(-end.y)}")
        elif isinstance(curve, Arc):
            out.append(_arc(curve))
        else:
            for cubic in curve.as_cubics():
                a, b, e = cubic.c1, cubic.c2, cubic.end
                out.append(f"C{number(a.x)} {number(-a.y)} {number(b.x)} {number(-b.y)} {number(e.x)} {number(-e.y)}")
        last = end
    if closed:
        out.append("Z")
    return "".join(out)


def shifted(curve: Curve, distance: float) -> Curve:
    """`curve` moved `distance` mm to its left for a dimension line: exact for lines and arcs; a cubic keeps its
    end directions and scales its handles (close enough to look parallel, and quick)."""
    if isinstance(curve, Arc):
        radius = curve.radius - distance if curve.sweep > 0 else curve.radius + distance
        return Arc(curve.centre, max(radius, 0.1), curve.from_angle, curve.sweep)
    n0, n1 = curve.normal(0.0), curve.normal(1.0)
    start = curve.start + n0 * distance
    end = curve.end + n1 * distance
    if isinstance(curve, Line):
        return Line(start, end)
    cubic = curve.as_cubics()[0]
    chord = cubic.start.distance(cubic.end)
    ratio = start.distance(end) / chord if chord > 1e-6 else 1.0
    return Cubic(start, start + (cubic.c1 - cubic.start) * ratio, end + (cubic.c2 - cubic.end) * ratio, end)


def number(value: float) -> str:
    """`value` to 0.01, as short as it can be written."""
    text = f"{value:.2f}"
    if text.endswith("00"):
        text = text[:-3]
    elif text.endswith("0"):
        text = text[:-1]
    return "0" if text == "-0" else text


def _arc(arc: Arc) -> str:
    """Arc commands of at most a third of a turn each: near half a turn the end points' rounding would show."""
    count = max(1, math.ceil(abs(arc.sweep) / 2.1))
    flag = 0 if arc.sweep > 0 else 1
    radius, out = number(arc.radius), ""
    for i in range(1, count + 1):
        end = arc.end if i == count else arc.point(i / count)
        out += f"A{radius} {radius} 0 0 {flag} {number(end.x)} {number(-end.y)}"
    return out
