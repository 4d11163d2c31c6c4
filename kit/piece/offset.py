"""The cut line as a parallel of the stitch line, joined corner by corner.

Each edge has a parallel at its allowance. Neighbouring parallels are joined by what pattern makers do at a table:
carry both lines on until they meet (a mitre), cut a corner square when its point would run far out, step where two
allowances meet in a smooth line, trim back in a concave corner (common practice, no source). Other shapes of a
corner are made in `kit.piece.turned_end`; where one of them cannot be made the corner is mitred.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.geometry import Cubic, Curve, Line, Path, Point, Region, Vector, parallel
from kit.piece.corner import Corner
from kit.piece.piece import Edge, Piece
from kit.piece.turned_end import Meeting, Shape, cut_off, ended

if TYPE_CHECKING:
    from shapely.geometry import Polygon

MITRE_LIMIT = 3.0
"""A corner's point may lie this many times the wider allowance from the stitch line's corner."""
_SMOOTH = math.radians(3.0)
_SHALLOW = math.radians(25.0)
_CLOSED = 1e-7
_SAME = 0.01


@dataclass(frozen=True)
class CutLine:
    """The closed cut line in mm. `curves` go once around the piece in the order of its edges; `edges` holds each
    edge's own part (edge name, path): the parallel without the corners; `joins` the corners between them (the edge
    before, the edge after, what joins their parts: nothing where they meet)."""

    curves: tuple[Curve, ...]
    edges: tuple[tuple[str, Path], ...]
    joins: tuple[tuple[str, str, tuple[Curve, ...]], ...] = ()

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

    def region(self, tolerance: float = 0.1) -> Region:
        """The cut piece (paper as cut, half a piece when it lies on the fold)."""
        return Region.of(self.points(tolerance))

    def polygon(self, tolerance: float = 0.1) -> Polygon:
        """The cut piece as a shapely polygon (paper as cut, half a piece when it lies on the fold)."""
        from shapely.geometry import Polygon

        return Polygon([(p.x, p.y) for p in self.points(tolerance)])


def offset_line(piece: Piece, widths: Mapping[str, float], hems: Collection[str] = ()) -> CutLine:
    """The cut line with the width of each edge given in mm; a negative width lies inside the stitch line. The
    piece's corner rules hold where both edges have the width declared on the piece. `hems` names edges whose ends
    are turned where no rule says otherwise. Raises `KitError` naming piece, edge and values when an edge bends
    tighter than its width, or when two neighbours run into each other."""
    offset = _Offset(piece, widths, hems)
    line = offset.line()
    if offset.shapes and _crosses(line):
        return _Offset(piece, widths, hems, shaped=False).line()
    return line


def inside_left(piece: Piece) -> float:
    """+1 when the piece lies to the left of its edges as they run, else -1."""
    return 1.0 if piece.outline.area > 0 else -1.0


def _crosses(line: CutLine) -> bool:
    """Whether the curves of a corner run into other parts of the cut line."""
    boxes = [curve.bounds() for curve in line.curves]
    ends = [(curve.start, curve.end) for curve in line.curves]
    for _, _, joined in line.joins:
        for curve in joined:
            x0, y0, x1, y1 = curve.bounds()
            for other, (a0, b0, a1, b1), (start, end) in zip(line.curves, boxes, ends, strict=True):
                if a0 > x1 or a1 < x0 or b0 > y1 or b1 < y0 or other is curve:
                    continue
                if any(p.distance(q) < 0.01 for p in (curve.start, curve.end) for q in (start, end)):
                    continue
                if isinstance(other, Line) and _in_line(other, curve):
                    continue  # merged with the line it goes on from
                if Path((curve,)).crossings(Path((other,))):
                    return True
    return False


class _Offset:
    """One cut line being built: parallels first, then corner by corner."""

    def __init__(self, piece: Piece, widths: Mapping[str, float], hems: Collection[str], shaped: bool = True) -> None:
        self.piece = piece
        self.sign = inside_left(piece)
        self.edges = piece.edges
        self.widths = [float(widths.get(edge.name, 0.0)) for edge in piece.edges]
        self.shapes = self._shapes(hems) if shaped else {}
        self.paths = [self._parallel(edge, width) for edge, width in zip(self.edges, self.widths, strict=True)]
        self.joins: list[tuple[Point | Curve, ...]] = [()] * len(self.edges)

    def _shapes(self, hems: Collection[str]) -> dict[int, Corner]:
        """What was asked for at the corner after each edge, where both allowances are there as declared."""
        said = {(c.before, c.after): c for c in self.piece.corners}
        whole = [
            width > 0 and (edge.allowance is None or abs(width - edge.allowance) < _SAME)
            for edge, width in zip(self.edges, self.widths, strict=True)
        ]
        found: dict[int, Corner] = {}
        for i, edge in enumerate(self.edges):
            j = (i + 1) % len(self.edges)
            one, two = edge.name, self.edges[j].name
            corner = said.get((one, two)) or said.get((two, one))
            if corner is None and (one in hems) != (two in hems):
                corner = Corner(one, two, "turned", turned=one if one in hems else two)
            if corner is not None and corner.rule != "mitre" and whole[i] and whole[j]:
                found[i] = corner
        return found

    def line(self) -> CutLine:
        count = len(self.edges)
        for i in range(count):
            self._corner(i, (i + 1) % count)
        curves: list[Curve] = []
        joins: list[tuple[str, str, tuple[Curve, ...]]] = []
        for i, path in enumerate(self.paths):
            j = (i + 1) % count
            joined = _chained(path.end, self.joins[i], self.paths[j].start)
            joins.append((self.edges[i].name, self.edges[j].name, joined))
            for curve in (*path.curves, *joined):
                _add(curves, curve)
        if len(curves) > 2 and _in_line(curves[-1], curves[0]):
            last = curves.pop()
            curves[0] = Line(last.start, curves[0].end)
        return CutLine(
            tuple(curves),
            tuple((edge.name, path) for edge, path in zip(self.edges, self.paths, strict=True)),
            tuple(joins),
        )

    def _parallel(self, edge: Edge, width: float) -> Path:
        if abs(width) < 1e-9:
            return edge.path
        try:
            return parallel(edge.path, -self.sign * width)
        except KitError as error:
            raise KitError(
                message("refusal.allowance_tight", edge=named_edge(edge), width=measured(width, "allowance")),
                where=self.piece.title,
                do=message("refusal.allowance_tight_do"),
            ) from error

    def _corner(self, i: int, j: int) -> None:
        """Joins the parallels of the edges `i` and `j`, which follow one another.

        `turn` is how much the stitch line turns there, above zero where the corner is convex seen from outside. Both
        parallels are carried on straight to their `tip`: `on1` and `on2` are how far each must go on, below zero where
        it lies too far already. So the sign of both, and not the angle alone, decides what is done. Both above zero: a
        gap, closed by the tip (or cut square where that is far out). Either below zero, as in a concave corner or
        between very different widths: the lines cross, and are cut off where they do.
        """
        one, two = self.edges[i].path, self.edges[j].path
        t1, t2 = one.tangent_at(one.length), two.tangent_at(0.0)
        turn = math.atan2(t1.cross(t2) * self.sign, t1.dot(t2))
        d1, d2 = self.widths[i], self.widths[j]
        if abs(turn) < _SMOOTH:
            if abs(d1 - d2) < _SAME:
                self._knit(i, j, t1, turn, d1)
            return  # otherwise the closing line between the two ends is the step
        if turn > 0 and i in self.shapes and self._shaped(i, j, t1, t2):
            return
        # `on1` brings the tip d2 outside the second line, `on2` d1 outside the first; `turn` is not near zero here.
        sin, cos = math.sin(turn), math.cos(turn)
        on1, on2 = (d2 - d1 * cos) / sin, (d1 - d2 * cos) / sin
        p1, p2 = self.paths[i].end, self.paths[j].start
        tip = p1 + t1 * on1
        reach = tip.distance(one.end)
        limit = MITRE_LIMIT * max(abs(d1), abs(d2))
        if on1 >= -1e-9 and on2 >= -1e-9:
            self.joins[i] = (tip,) if reach <= limit + 1e-9 else _squared(one.end, tip, p1, t1, p2, t2, limit)
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
                message(
                    "refusal.allowances_meet",
                    one=named_edge(a),
                    one_width=measured(self.widths[i], "allowance"),
                    other=named_edge(b),
                    other_width=measured(self.widths[j], "allowance"),
                ),
                where=self.piece.title,
                do=message("refusal.allowances_meet_do"),
            )
        at = min((p for p in found if p is not None), key=tip.distance)
        self.paths[i] = _until(one, at)
        self.paths[j] = _after(two, at)

    def _shaped(self, i: int, j: int, t1: Vector, t2: Vector) -> bool:
        """Shape the corner as asked for; False where that cannot be drawn."""
        corner = self.shapes[i]
        meeting = Meeting(
            self.edges[i].path.end, t1, t2, self.sign, self.paths[i], self.paths[j], self.widths[i], self.widths[j]
        )
        made: Shape | None
        if corner.rule in ("turned", "squared"):
            folds = corner.folds if corner.rule == "turned" else None
            made = ended(meeting, first=corner.turned == self.edges[i].name, folds=folds)
        else:
            made = cut_off(meeting, corner.size, rounded=corner.rule == "rounded")
        if made is None:
            return False
        self.paths[i], self.joins[i], self.paths[j] = made
        return True


def _chained(start: Point, parts: tuple[Point | Curve, ...], end: Point) -> tuple[Curve, ...]:
    """Points and curves in order as one run of curves from `start` to `end`."""
    found: list[Curve] = []
    here = start
    for part in (*parts, end):
        first = part if isinstance(part, Point) else part.start
        if here.distance(first) > _CLOSED:
            found.append(Line(here, first))
            here = first
        if not isinstance(part, Point):
            found.append(part)
            here = part.end
    return tuple(found)


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
