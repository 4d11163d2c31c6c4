"""How an edge curves, and how far apart the scissors open its allowance."""

from __future__ import annotations

from typing import Literal

from kit.geometry import Path
from kit.sewing.cut import Cut
from kit.sewing.run import Run
from kit.sewing.spans import path_of, spans

Bend = Literal["in", "out"]
"""Into the piece, as a neck bends, or out of it, as a rounded collar's edge."""
OPENS = 2.0
"""mm by which one clip opens or one wedge closes: more shows as a corner in the seam (common practice, no source)."""
STRETCHES = 0.05
"""Share by which an allowance follows a curve of itself (common practice, no source)."""
CLOSEST, FARTHEST = 5.0, 25.0  # mm from clip to clip (common practice, no source)
_STEP = 10.0  # mm to either side of a place where the curve is measured


def tightest(pattern: Cut, run: Run, way: Bend) -> float | None:
    """The smallest radius, mm, with which a run bends that way; None where it does not. Corners are no bends."""
    found = [
        radius
        for edge in dict.fromkeys((span.edge, span.start, span.end) for span in spans(pattern, run))
        for turns, radius in _bends(pattern, Run(run.piece, (edge[0],), run.side, edge[1], edge[2]))
        if turns == way
    ]
    return min(found, default=None)


def _bends(pattern: Cut, run: Run) -> list[tuple[Bend, float]]:
    """(which way, radius) at places along one edge: of the circle through a place and those a step before and after
    it, where no corner lies between them."""
    path, outline = path_of(pattern, run), pattern.piece(run.piece).outline
    middle = path.at(path.length / 2)
    within = outline.contains(middle + path.normal_at(path.length / 2) * 1.0)
    step = min(_STEP, path.length / 4)
    count = max(int((path.length - 2 * step) / step), 1)
    found: list[tuple[Bend, float]] = []
    for number in range(count + 1):
        at = step + (path.length - 2 * step) * number / count
        if any(abs(corner - at) < step for corner in path.corners):
            continue
        turn, radius = _circle(path, at, step)
        if radius is not None:
            found.append(("out" if (turn > 0) == within else "in", radius))
    return found


def _circle(path: Path, at: float, step: float) -> tuple[float, float | None]:
    """(turn to the left, radius) of the circle through three places; no radius where they lie in a line."""
    a, b, c = path.at(at - step), path.at(at), path.at(at + step)
    turn = (b - a).cross(c - b)
    if abs(turn) < 1e-6:
        return 0.0, None
    return turn, a.distance(b) * b.distance(c) * c.distance(a) / (2 * abs(turn))


def needs_scissors(radius: float | None, allowance: float) -> bool:
    """Whether an allowance that wide lies along a curve of that radius only when it is clipped or notched."""
    return radius is not None and allowance / radius > STRETCHES


def clip_spacing(radius: float, allowance: float) -> float:
    """mm from clip to clip (or wedge to wedge) on a curve of that radius: an allowance w mm wide is shorter or longer
    than its stitch line by w / radius of it, which the clips share among them; in steps of 5 mm."""
    return min(max(OPENS * radius / max(allowance, 1.0) // 5.0 * 5.0, CLOSEST), FARTHEST)
