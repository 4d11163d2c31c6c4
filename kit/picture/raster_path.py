"""The shapes the SVG pen writes, as paths for a painter of pixels."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from matplotlib.path import Path

_TOKEN = re.compile(r"([MLHVCAZhvz])|(-?[\d.]+(?:e-?\d+)?)")


def shape(kind: str, paint: Mapping[str, str]) -> Path:
    """A path, circle or box (rect) from its attributes, y as in the SVG."""
    if kind == "path":
        return _path_of(paint["d"])
    if kind == "circle":
        return _circle(float(paint["cx"]), float(paint["cy"]), float(paint["r"]))
    return _box(*(float(paint.get(name, "0")) for name in ("x", "y", "width", "height", "rx")))


@lru_cache(maxsize=4000)
def _path_of(data: str) -> Path:
    """The path of path data as the SVG pen writes it: M L H V C A Z and h v, absolute but for h and v.

    This is no reader of SVG at large, and need not be: it reads back what one pen of this kit writes, and anything
    else would show at once as a wrong picture. A command's letter holds for the numbers after it until the next letter
    (after M as L), as the standard has it. The painter knows no arcs, so they become cubics. Pictures of a film
    repeat most of their shapes, hence the cache."""
    from matplotlib.path import Path

    tokens = _TOKEN.findall(data)
    points: list[tuple[float, float]] = []
    codes: list[int] = []
    i, letter = 0, ""
    x = y = sx = sy = 0.0

    def take(count: int) -> list[float]:
        nonlocal i
        found = [float(number) for _, number in tokens[i : i + count]]
        i += count
        return found

    while i < len(tokens):
        if tokens[i][0]:
            letter = tokens[i][0]
            i += 1
        if letter in "Zz":
            points.append((sx, sy))
            codes.append(int(Path.CLOSEPOLY))
            x, y = sx, sy
            continue
        if letter == "M":
            x, y = take(2)
            sx, sy, letter = x, y, "L"
            points.append((x, y))
            codes.append(int(Path.MOVETO))
            continue
        if letter == "C":
            ax, ay, bx, by, x, y = take(6)
            points += [(ax, ay), (bx, by), (x, y)]
            codes += [int(Path.CURVE4)] * 3
            continue
        if letter == "A":
            radius, _, _, large, sweep, ex, ey = take(7)
            cubics = _arc(x, y, radius, large > 0, sweep > 0, ex, ey)
            points += cubics
            codes += [int(Path.CURVE4)] * len(cubics)
            x, y = ex, ey
            continue
        if letter == "L":
            x, y = take(2)
        elif letter in "Hh":
            (across,) = take(1)
            x = across + (x if letter == "h" else 0.0)
        else:
            (down,) = take(1)
            y = down + (y if letter == "v" else 0.0)
        points.append((x, y))
        codes.append(int(Path.LINETO))
    return Path(np.array(points, float).reshape(-1, 2), codes)


def _arc(x: float, y: float, r: float, large: bool, sweep: bool, ex: float, ey: float) -> list[tuple[float, float]]:
    """A circle's arc as cubics (SVG 2, appendix B.2.4, for equal radii)."""
    dx, dy = (x - ex) / 2, (y - ey) / 2
    half = math.hypot(dx, dy)
    if half < 1e-9:
        return []
    r = max(r, half)
    root = math.sqrt(max(r * r / (half * half) - 1.0, 0.0)) * (-1.0 if large == sweep else 1.0)
    cx, cy = root * dy + (x + ex) / 2, -root * dx + (y + ey) / 2
    start, end = math.atan2(y - cy, x - cx), math.atan2(ey - cy, ex - cx)
    turn = end - start
    if sweep and turn < 0:
        turn += 2 * math.pi
    elif not sweep and turn > 0:
        turn -= 2 * math.pi
    count = max(1, math.ceil(abs(turn) / (math.pi / 2)))
    step = turn / count
    k = 4 / 3 * math.tan(step / 4) * r
    out: list[tuple[float, float]] = []
    for n in range(count):
        a, b = start + n * step, start + (n + 1) * step
        out.append((cx + r * math.cos(a) - k * math.sin(a), cy + r * math.sin(a) + k * math.cos(a)))
        out.append((cx + r * math.cos(b) + k * math.sin(b), cy + r * math.sin(b) - k * math.cos(b)))
        out.append((cx + r * math.cos(b), cy + r * math.sin(b)))
    return out


def _circle(cx: float, cy: float, r: float) -> Path:
    from matplotlib.path import Path

    return Path.circle((cx, cy), r)


def _box(x: float, y: float, wide: float, high: float, round_by: float) -> Path:
    from matplotlib.path import Path

    r = min(round_by, wide / 2, high / 2)
    k = r * 0.5523
    x1, y1 = x + wide, y + high
    points = [(x + r, y), (x1 - r, y), (x1 - r + k, y), (x1, y + r - k), (x1, y + r), (x1, y1 - r)]
    points += [(x1, y1 - r + k), (x1 - r + k, y1), (x1 - r, y1), (x + r, y1), (x + r - k, y1), (x, y1 - r + k)]
    points += [(x, y1 - r), (x, y + r), (x, y + r - k), (x + r - k, y), (x + r, y), (x + r, y)]
    corner, line = [int(Path.CURVE4)] * 3, [int(Path.LINETO)]
    codes = [int(Path.MOVETO), *(line + corner) * 4, int(Path.CLOSEPOLY)]
    return Path(points, codes)
