"""From the stitch line to the cut line: seam and hem allowances, their corners, and notches on the cut edge.

Each edge has a parallel at its allowance; neighbouring parallels are joined by what pattern makers do at a
table: carry both lines on until they meet (a mitre), cut a corner square when its point would run far out, step
where two allowances meet in a smooth line, trim back in a concave corner, and fold the ends of a hem back like
the seam beside it so that the hem lies flat once turned (common practice, no source).
"""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from kit.errors import KitError, near
from kit.geometry import Cubic, Curve, Line, Path, Point, Vector
from kit.piece.piece import Edge, Notch, Piece
from kit.units import show

if TYPE_CHECKING:
    from shapely.geometry import Polygon

MITRE_LIMIT = 3.0
"""A corner's point may lie this many times the wider allowance from the stitch line's corner."""
NOTCH_LENGTH = 5.0
_NOTCH_SPACING = 6.0
_SMOOTH = math.radians(3.0)
_SHALLOW = math.radians(25.0)
_CLOSED = 1e-9
_SAME = 0.01


@dataclass(frozen=True)
class CutLine:
    """The closed cut line in mm. `curves` go once around the piece in the order of its edges; `edges` holds each
    edge's own part (edge name, path): the parallel without the corners."""

    curves: tuple[Curve, ...]
    edges: tuple[tuple[str, Path], ...]

    def edge(self, name: str) -> Path:
        """The part of the cut line beside that edge; `KitError` with the nearest name otherwise."""
        for known, path in self.edges:
            if known == name:
                return path
        raise KitError(f"there is no edge '{name}' on the cut line.", do=near(name, [n for n, _ in self.edges]))

    def bounds(self) -> tuple[float, float, float, float]:
        """(xmin, ymin, xmax, ymax) in mm."""
        boxes = [curve.bounds() for curve in self.curves]
        return (
            min(b[0] for b in boxes),
            min(b[1] for b in boxes),
            max(b[2] for b in boxes),
            max(b[3] for b in boxes),
        )

    @cached_property
    def length(self) -> float:
        """Length around the cut line in mm."""
        return sum(curve.length for curve in self.curves)

    def points(self, tolerance: float = 0.1) -> list[Point]:
        """The closed line as points, chord error at most `tolerance` mm; the first point is not repeated."""
        out: list[Point] = []
        for curve in self.curves:
            out.extend(list(curve.points(tolerance))[:-1])
        return out

    def polygon(self, tolerance: float = 0.1) -> Polygon:
        """The cut piece as a shapely polygon (paper as cut, half a piece when it lies on the fold)."""
        from shapely.geometry import Polygon

        return Polygon([(p.x, p.y) for p in self.points(tolerance)])


@dataclass(frozen=True)
class NotchLine:
    """A notch on the cut line: `lines` run from the cut line square into the allowance (two for a double one)."""

    notch: Notch
    lines: tuple[Line, ...]


def hem_edges(piece: Piece) -> tuple[str, ...]:
    """Names of the edges that are hems: the word "hem" stands in their name or in how people say it."""
    found = []
    for edge in piece.edges:
        words = f"{edge.name.replace('_', ' ')} {edge.said}".lower().split()
        if "hem" in words and edge.name != piece.fold:
            found.append(edge.name)
    return tuple(found)


def has_allowances(piece: Piece) -> bool:
    """Whether every edge has its allowance, so that `cut_line` can be drawn."""
    return all(edge.allowance is not None or edge.name == piece.fold for edge in piece.edges)


def allowance_of(piece: Piece, edge: Edge) -> float:
    """The edge's allowance in mm, 0 on the fold. `KitError` when it has none yet or it is less than zero."""
    if edge.name == piece.fold:
        return 0.0
    if edge.allowance is None:
        raise KitError(
            f"the edge '{edge.label}' has no allowance yet.",
            where=piece.title,
            do="Give it one, or 0 where it is cut on the line.",
        )
    value = float(edge.allowance)
    if not math.isfinite(value) or value < 0:
        raise KitError(
            f"the allowance of '{edge.label}' is {show(value)}; it cannot be less than nothing.",
            where=piece.title,
            do="Give it a width, or 0 where it is cut on the line.",
        )
    return value


def cut_line(piece: Piece, hems: Collection[str] | None = None) -> CutLine:
    """The cut line of `piece`: every edge's parallel at its allowance, none on the fold, joined at the corners.

    `hems` names the edges whose ends are folded back like the seam beside them (None: `hem_edges`).
    Raises `KitError` naming piece, edge and values when an allowance is missing, when an edge bends tighter than
    its allowance, or when the allowances of two neighbours run into each other.
    """
    widths = {edge.name: allowance_of(piece, edge) for edge in piece.edges}
    return offset_line(piece, widths, hem_edges(piece) if hems is None else hems)


def offset_line(piece: Piece, widths: Mapping[str, float], hems: Collection[str] = ()) -> CutLine:
    """Like `cut_line` with the width of each edge given in mm; a negative width lies inside the stitch line."""
    return _Offset(piece, widths, hems).line()


def notch_lines(piece: Piece, length: float = NOTCH_LENGTH) -> tuple[NotchLine, ...]:
    """Where each notch is cut: lines of `length` mm (at most two thirds of the allowance) from the cut line
    towards the stitch line, square to it. Raises `KitError` for a notch that does not lie on its edge."""
    out = []
    sign = _inside_left(piece)
    for notch in piece.notches:
        edge = piece.edge(notch.edge)
        width = allowance_of(piece, edge)
        deep = min(length, width * 2 / 3) if width > 0 else length * 0.8
        spots = (
            (notch.distance,)
            if notch.kind == "single"
            else (notch.distance - _NOTCH_SPACING / 2, notch.distance + _NOTCH_SPACING / 2)
        )
        whole = edge.path.length
        if not -_SAME <= notch.distance <= whole + _SAME:
            raise KitError(
                f"a notch lies {show(notch.distance)} along '{edge.label}', which is only {show(whole)} long.",
                where=piece.title,
                do="Move the notch onto the edge.",
            )
        lines = []
        for spot in spots:
            along = min(max(spot, 0.0), whole)
            foot = edge.path.at(along)
            out_of = edge.path.normal_at(along) * -sign
            lines.append(Line(foot + out_of * width, foot + out_of * (width - deep)))
        out.append(NotchLine(notch, tuple(lines)))
    return tuple(out)


def _inside_left(piece: Piece) -> float:
    """+1 when the piece lies to the left of its edges as they run, else -1."""
    return 1.0 if piece.outline.area > 0 else -1.0


class _Offset:
    """One cut line being built: parallels first, then corner by corner."""

    def __init__(self, piece: Piece, widths: Mapping[str, float], hems: Collection[str]) -> None:
        self.piece = piece
        self.sign = _inside_left(piece)
        self.edges = piece.edges
        self.widths = [float(widths.get(edge.name, 0.0)) for edge in piece.edges]
        self.hems = [edge.name in hems for edge in piece.edges]
        self.paths = [self._parallel(edge, width) for edge, width in zip(self.edges, self.widths, strict=True)]
        self.joins: list[tuple[Point, ...]] = [()] * len(self.edges)

    def line(self) -> CutLine:
        count = len(self.edges)
        for i in range(count):
            self._corner(i, (i + 1) % count)
        curves: list[Curve] = []
        for i, path in enumerate(self.paths):
            for curve in path.curves:
                _add(curves, curve)
            points = (path.end, *self.joins[i], self.paths[(i + 1) % count].start)
            for a, b in pairwise(points):
                if a.distance(b) > _CLOSED:
                    _add(curves, Line(a, b))
        if len(curves) > 2 and _in_line(curves[-1], curves[0]):
            last = curves.pop()
            curves[0] = Line(last.start, curves[0].end)
        return CutLine(
            tuple(curves), tuple((edge.name, path) for edge, path in zip(self.edges, self.paths, strict=True))
        )

    def _parallel(self, edge: Edge, width: float) -> Path:
        if abs(width) < 1e-9:
            return edge.path
        try:
            return edge.path.parallel(-self.sign * width)
        except KitError as error:
            raise KitError(
                f"'{edge.label}' bends tighter than its allowance of {show(width, style='allowance')}.",
                where=self.piece.title,
                do="Make the curve rounder or the allowance narrower.",
            ) from error

    def _corner(self, i: int, j: int) -> None:
        one, two = self.edges[i].path, self.edges[j].path
        t1, t2 = one.tangent_at(one.length), two.tangent_at(0.0)
        turn = math.atan2(t1.cross(t2) * self.sign, t1.dot(t2))
        d1, d2 = self.widths[i], self.widths[j]
        if abs(turn) < _SMOOTH:
            if abs(d1 - d2) < _SAME:
                self._knit(i, j, t1, turn, d1)
            return  # otherwise the closing line between the two ends is the step
        if turn > 0 and d1 > 0 and d2 > 0 and self.hems[i] != self.hems[j] and self._hem_corner(i, j, t1, t2):
            return
        sin, cos = math.sin(turn), math.cos(turn)
        on1, on2 = (d2 - d1 * cos) / sin, (d1 - d2 * cos) / sin
        p1, p2 = self.paths[i].end, self.paths[j].start
        tip = p1 + t1 * on1
        reach = tip.distance(one.end)
        limit = MITRE_LIMIT * max(abs(d1), abs(d2))
        if on1 >= -1e-9 and on2 >= -1e-9:
            self.joins[i] = (tip,) if reach <= limit else _squared(one.end, tip, p1, t1, p2, t2, limit)
            return
        if abs(turn) < _SHALLOW and reach > limit:
            return  # nearly smooth: a step, not a long wedge
        self._trim(i, j, t1, t2, max(on1, 0.0), max(on2, 0.0), tip, turn)

    def _knit(self, i: int, j: int, t1: Vector, turn: float, width: float) -> None:
        """Makes two parallels of one width meet at a nearly smooth joint, hundredths of a mm along their ends."""
        one, two = self.paths[i], self.paths[j]
        tip = one.end + t1 * (width * math.tan(turn / 2)) if abs(turn) > 1e-4 else one.end.mid(two.start)
        last, first = _ending_at(one.curves[-1], tip), _starting_at(two.curves[0], tip)
        if last is not None and first is not None and one is not two:
            self.paths[i] = Path((*one.curves[:-1], last))
            self.paths[j] = Path((first, *two.curves[1:]))

    def _trim(self, i: int, j: int, t1: Vector, t2: Vector, on1: float, on2: float, tip: Point, turn: float) -> None:
        """Cut both parallels back (or carry one on) to where they cross near `tip`."""
        one = _carried(self.paths[i], t1, on1)
        two = _carried_back(self.paths[j], t2, on2)
        found = [_cross_lines(one.curves[-1], two.curves[0])]
        if found[0] is None:
            found = list(one.crossings(two))
        if not found:
            if turn > 0 or abs(turn) < _SHALLOW:
                return
            a, b = self.edges[i], self.edges[j]
            raise KitError(
                f"the allowances of '{a.label}' ({show(self.widths[i], style='allowance')}) and '{b.label}' "
                f"({show(self.widths[j], style='allowance')}) run into each other at their corner.",
                where=self.piece.title,
                do="Make one of them narrower, or the corner wider.",
            )
        at = min((p for p in found if p is not None), key=tip.distance)
        self.paths[i] = _until(one, at)
        self.paths[j] = _after(two, at)

    def _hem_corner(self, i: int, j: int, t1: Vector, t2: Vector) -> bool:
        """The end of a hem: the seam's cut line runs on to the hem line, then back like its mirror image."""
        seam_first = self.hems[j]
        corner = self.edges[i].path.end
        seam, hem = (i, j) if seam_first else (j, i)
        toward = t1 if seam_first else t2 * -1.0
        away = t2 if seam_first else t1 * -1.0
        outward = self.edges[hem].path.normal_at(0.0 if seam_first else self.edges[hem].path.length) * -self.sign
        start = self.paths[seam].end if seam_first else self.paths[seam].start
        down = toward.dot(outward)
        if down < 0.35:
            return False
        go = (corner - start).dot(outward) / down
        at = start + toward * go
        along = toward.dot(away)
        mirrored = away * -along + outward * down
        foot = at + mirrored * (self.widths[hem] / down)
        shift = (foot - (corner + outward * self.widths[hem])).dot(away)
        if shift > self.paths[hem].length * 0.5 or -go > self.paths[seam].length * 0.5:
            return False
        if go < 0:
            cross = Path.line(at + away * 40.0, at - away * 40.0)
            met = self.paths[seam].crossings(cross)
            if not met:
                return False
            at = min(met, key=at.distance)
            foot = at + mirrored * (self.widths[hem] / down)
            self.paths[seam] = _until(self.paths[seam], at) if seam_first else _after(self.paths[seam], at)
        if shift > 0:
            self.paths[hem] = _after(self.paths[hem], foot) if seam_first else _until(self.paths[hem], foot)
            foot = self.paths[hem].start if seam_first else self.paths[hem].end
        self.joins[i] = (at, foot) if seam_first else (foot, at)
        return True


def _ending_at(curve: Curve, end: Point) -> Curve | None:
    if isinstance(curve, Line):
        return Line(curve.start, end)
    if isinstance(curve, Cubic):
        return Cubic(curve.start, curve.c1, curve.c2 + (end - curve.end), end)
    return None


def _starting_at(curve: Curve, start: Point) -> Curve | None:
    if isinstance(curve, Line):
        return Line(start, curve.end)
    if isinstance(curve, Cubic):
        return Cubic(start, curve.c1 + (start - curve.start), curve.c2, curve.end)
    return None


def _add(curves: list[Curve], curve: Curve) -> None:
    if curves and _in_line(curves[-1], curve):
        curves[-1] = Line(curves[-1].start, curve.end)
    else:
        curves.append(curve)


def _in_line(one: Curve, two: Curve) -> bool:
    """Two straight lines that go on in the same direction."""
    if not (isinstance(one, Line) and isinstance(two, Line)):
        return False
    a, b = one.end - one.start, two.end - two.start
    return a.dot(b) > 0 and abs(a.cross(b)) < 1e-7 * max(a.length * b.length, 1e-9)


def _squared(
    corner: Point, tip: Point, p1: Point, t1: Vector, p2: Vector | Point, t2: Vector, limit: float
) -> tuple[Point, ...]:
    """Two points instead of a far tip: cut square across the corner's middle, `limit` mm out."""
    out = (tip - corner).unit()
    start, end = p1, Point(p2.x, p2.y)
    go1, go2 = t1.dot(out), (t2 * -1.0).dot(out)
    a = start + t1 * ((limit - (start - corner).dot(out)) / go1)
    b = end + t2 * (-(limit - (end - corner).dot(out)) / go2)
    return a, b


def _carried(path: Path, tangent: Vector, by: float) -> Path:
    return path if by <= 1e-9 else Path((*path.curves, Line(path.end, path.end + tangent * (by * 1.2 + 1.0))))


def _carried_back(path: Path, tangent: Vector, by: float) -> Path:
    return path if by <= 1e-9 else Path((Line(path.start + tangent * -(by * 1.2 + 1.0), path.start), *path.curves))


def _cross_lines(one: Curve, two: Curve) -> Point | None:
    """Where two straight lines cross within their length."""
    if not (isinstance(one, Line) and isinstance(two, Line)):
        return None
    a, b = one.end - one.start, two.end - two.start
    whole = a.cross(b)
    if abs(whole) < 1e-12:
        return None
    between = two.start - one.start
    t, u = between.cross(b) / whole, between.cross(a) / whole
    return one.start + a * t if -1e-9 <= t <= 1 + 1e-9 and -1e-9 <= u <= 1 + 1e-9 else None


def _until(path: Path, at: Point) -> Path:
    return path.between(0.0, path.nearest(at))


def _after(path: Path, at: Point) -> Path:
    return path.between(path.nearest(at), path.length)
