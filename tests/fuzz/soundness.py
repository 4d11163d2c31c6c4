"""What a pattern that passed its proof must hold, measured without the kit's geometry.

From the kit come the control points of its curves (a line and an arc give theirs as cubics), names, allowances and the
places of folds. Areas, crossings and distances are shapely's (https://shapely.readthedocs.io), lengths along curves
svgpathtools' (https://github.com/mathandy/svgpathtools).
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

import numpy as np
import shapely
from shapely.geometry import LinearRing, LineString, Point, Polygon
from svgpathtools import CubicBezier

from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.sewing.operations.bands import SeamBand
from kit.sewing.operations.joined import Seam
from kit.sewing.order import operations
from kit.sewing.run import Run

STEPS = 48  # straight bits that stand for one curve: 0.05 mm off on a quarter circle of 40 cm
FLAT = 0.12  # mm such a bit may lie beside its curve, on either of two lines
SEAM = 0.5  # mm two seamed edges may differ by, as the proof says
_BENT = np.linspace(0.0, 1.0, STEPS + 1)[:, None]


def controls(curve) -> Iterator[np.ndarray]:  # type: ignore[no-untyped-def]
    """The control points of a curve's cubics, 4 x 2, mm."""
    for cubic in curve.as_cubics():
        yield np.array([(p.x, p.y) for p in (cubic.start, cubic.c1, cubic.c2, cubic.end)])


def bent(control: np.ndarray) -> np.ndarray:
    """Points on a cubic by Bernstein's polynomials."""
    t, (a, b, c, d) = _BENT, control
    return (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t**2 * c + t**3 * d


def is_straight(control: np.ndarray) -> bool:
    a, b, c, d = control
    way = d - a
    size = float(np.hypot(*way)) or 1.0
    return all(abs(way[0] * (p - a)[1] - way[1] * (p - a)[0]) / size < 1e-9 for p in (b, c))


def points(curves) -> np.ndarray:  # type: ignore[no-untyped-def]
    """A run of curves as points, n x 2, each place once."""
    found: list[np.ndarray] = []
    for curve in curves:
        for control in controls(curve):
            found.append(control[[0, 3]] if is_straight(control) else bent(control))
    whole = np.concatenate(found)
    away = np.hypot(*np.diff(whole, axis=0).T)
    return whole[np.concatenate([[True], away > 1e-7])]


@lru_cache(maxsize=4096)
def length(path) -> float:  # type: ignore[no-untyped-def]
    """mm along a path: svgpathtools' lengths of its cubics."""
    total = 0.0
    for curve in path.curves:
        for control in controls(curve):
            total += (
                float(np.hypot(*(control[3] - control[0])))
                if is_straight(control)
                else float(CubicBezier(*(complex(*p) for p in control)).length(error=1e-4))
            )
    return total


def ring(edges) -> np.ndarray:  # type: ignore[no-untyped-def]
    found = points([curve for path in edges for curve in path.curves])
    return found[:-1] if np.hypot(*(found[0] - found[-1])) < 0.06 else found


def faults(pattern: Pattern) -> list[str]:
    """What is wrong with a pattern that nothing speaks against."""
    found: list[str] = []
    for piece in pattern.pieces:
        found += [f"{piece.name}: {text}" for text in _piece(piece)]
    return found + list(_seams(pattern))


def _piece(piece: Piece) -> Iterator[str]:
    stitch = Polygon(ring([edge.path for edge in piece.edges]))
    if not stitch.is_valid:
        yield f"the stitch line is no simple outline ({shapely.is_valid_reason(stitch)})"
        return
    if stitch.area < 1.0:
        yield f"its area is {stitch.area:.2f} square mm"
        return
    for before, after in zip(piece.edges, piece.edges[1:] + piece.edges[:1], strict=True):
        gap = before.path.end.distance(after.path.start)
        if gap > 0.06:
            yield f"{before.name} ends {gap:.3f} mm from {after.name}"
    for dart in piece.darts:
        if not stitch.buffer(FLAT).contains(Point(dart.apex.x, dart.apex.y)):
            yield f"the tip of {dart.name} lies outside"
    cut = Polygon(points(cut_line(piece).curves)[:-1])
    if not cut.is_valid:
        # A point of the cut line may be touched twice where an allowance ends in a step; a crossing encloses an area.
        mended = shapely.make_valid(cut)
        lost = Polygon(LinearRing(cut.exterior)).buffer(0)
        if abs(mended.area - cut.area) > 0.5 or abs(lost.area - cut.area) > 0.5:
            yield f"the cut line crosses itself ({shapely.is_valid_reason(cut)})"
            return
        cut = cut.buffer(0)
    beyond = stitch.difference(cut.buffer(FLAT)).area
    if beyond > 0.5:
        yield f"{beyond:.2f} square mm of the sewn piece lie outside the cut line"
    yield from _allowances(piece, stitch, cut)


def _allowances(piece: Piece, stitch: Polygon, cut: Polygon) -> Iterator[str]:
    """Square to each edge, away from its ends, lies its whole allowance, and no more than that where no other edge is
    near."""
    lines = {edge.name: LineString(points(edge.path.curves)) for edge in piece.edges}
    wide = {e.name: 0.0 if e.name == piece.fold else (e.allowance or 0.0) + e.extra for e in piece.edges}
    clear = 3.0 * max(wide.values(), default=0.0)
    left = stitch.exterior.is_ccw
    for name, line in lines.items():
        width = wide[name]
        if line.length <= 2 * clear + 2:
            continue
        for share in (0.0, 0.21, 0.5, 0.77, 1.0):
            at = clear + 1 + share * (line.length - 2 * clear - 2)
            here, ahead = (
                np.array(line.interpolate(at - 0.05).coords[0]),
                np.array(line.interpolate(at + 0.05).coords[0]),
            )
            way = (ahead - here) / np.hypot(*(ahead - here))
            out = np.array([way[1], -way[0]]) if left else np.array([-way[1], way[0]])
            foot = (here + ahead) / 2
            least, most = Point(foot + out * (width - FLAT)), Point(foot + out * (width + 2 * FLAT))
            if width > FLAT and not cut.contains(least):
                short = width - foot_to(cut, foot, out, width)
                yield f"the allowance of {name} lacks {short:.2f} of {width:.2f} mm, {at:.0f} mm along it"
            lonely = all(most.distance(other) > wide[key] + 1 for key, other in lines.items() if key != name)
            if lonely and cut.contains(most) and most.distance(line) > width + FLAT:
                yield f"the allowance of {name} is wider than {width:.2f} mm, {at:.0f} mm along it"


def foot_to(cut: Polygon, foot: np.ndarray, out: np.ndarray, width: float) -> float:
    """How far from `foot` the cut line is met, straight out, mm."""
    met = LineString([foot, foot + out * width]).intersection(cut.exterior)
    return float(Point(foot).distance(met)) if not met.is_empty else 0.0


def sewn_length(pattern: Pattern, run: Run) -> float:
    """mm of a run as it is sewn on one half: its edges less what darts and pleats take of them."""
    piece = pattern.piece(run.piece)
    total = 0.0
    for name in run.edges:
        total += length(piece.edge(name).path)
    low = run.start or 0.0
    high = total if run.end is None else min(run.end, total)
    taken = 0.0
    if run.start is None and run.end is None:
        for name in run.edges:
            taken += sum(dart.end - dart.start for dart in piece.darts if dart.edge == name)
            taken += sum(pleat.end - pleat.start for pleat in piece.pleats if pleat.edge == name)
            taken += sum(
                pleat.far_end - pleat.far_start for pleat in piece.pleats if pleat.far == name and pleat.held == "both"
            )
    return high - low - taken


def measurable(pattern: Pattern, run: Run) -> bool:
    """Whether the run is whole, or a part of an edge with nothing folded out of it."""
    piece = pattern.piece(run.piece)
    whole = run.start is None and run.end is None
    folded = {dart.edge for dart in piece.darts} | {e for pleat in piece.pleats for e in (pleat.edge, pleat.far)}
    return whole or not folded & set(run.edges)


def seams(pattern: Pattern) -> Iterator[tuple[str, float, float, float]]:
    """(what, mm of the one, mm of the other, ease) of the seams that can be measured so, on one half."""
    for record, operation in operations(pattern):
        if not isinstance(operation, Seam) or isinstance(operation, SeamBand):
            continue
        if not all(measurable(pattern, run) for run in (*operation.a, *operation.b)):
            continue
        one, two = (
            sum(sewn_length(pattern, r) * (1 if r.side else len(pattern.piece(r.piece).sides)) for r in runs)
            for runs in (operation.a, operation.b)
        )
        both = all(r.side is None and len(pattern.piece(r.piece).sides) == 2 for r in (*operation.a, *operation.b))
        halves = 2 if both else 1
        yield (
            f"{record.key}, {type(operation).__name__} {operation.a} on {operation.b}",
            one / halves,
            two / halves,
            (operation.ease),
        )


def _seams(pattern: Pattern) -> Iterator[str]:
    for what, one, two, ease in seams(pattern):
        if abs(abs(one - two) - ease) > SEAM + 0.02:
            yield f"{what}: {one:.2f} mm on {two:.2f} mm, eased by {ease:.2f}"
