"""Shapes of a corner of the allowances other than the mitre: ends that are folded, squared, clipped or rounded.

An allowance that is folded lies flush with its neighbour when its end is the neighbour's cut line mirrored in the
fold. With several folds, each further part of the end is the part before it mirrored in the next fold, so that the
end of a hem turned twice runs in a zigzag (common practice, no source).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.geometry import Arc, Curve, Line, Motion, Path, Point, Vector

Shape = tuple[Path, tuple[Point | Curve, ...], Path]
"""The cut line of the edge before, what joins it to the next, the cut line of the edge after."""

FLATTEST = 0.35
"""Sine of the least angle at which a neighbour meets a folded edge; flatter, its mirror image would run far out."""
FARTHEST = 3.0
"""The end of an allowance may lie this many times both widths together from the corner."""
_FAR = 2000.0

_HAIR = 1e-9  # of a curve


@dataclass(frozen=True)
class Meeting:
    """A corner of the stitch line (convex, seen from outside) and what meets there: the unit directions of the edge
    `before` arriving and the edge `after` leaving, their cut lines and widths in mm. `sign` is +1 when the piece lies
    to the left of its edges."""

    at: Point
    arriving: Vector
    leaving: Vector
    sign: float
    before: Path
    after: Path
    width_before: float
    width_after: float

    def turned_round(self) -> Meeting:
        """The same corner walked the other way."""
        return Meeting(
            self.at,
            self.leaving * -1.0,
            self.arriving * -1.0,
            -self.sign,
            self.after.reversed(),
            self.before.reversed(),
            self.width_after,
            self.width_before,
        )

    def tip(self) -> Point:
        """Where the two cut lines, carried on straight, meet."""
        sin, cos = self.arriving.cross(self.leaving) * self.sign, self.arriving.dot(self.leaving)
        out = self.arriving.left() * -self.sign
        return self.at + out * self.width_before + self.arriving * ((self.width_after - self.width_before * cos) / sin)


def ended(meeting: Meeting, *, first: bool, folds: tuple[float, ...] | None) -> Shape | None:
    """The allowance of one edge (the `first` of the two, or the second) ending as its `folds` ask for (mm outside its
    stitch line, nearest first), or square to its stitch line (None) from where that, carried on, runs out into the
    neighbour's cut line. None where that cannot be drawn.

    All is told for the second edge, `out` being away from the piece across it, and heights measured that way; for the
    first the corner is walked the other way round and the result turned back. The folds part the allowance into zones.
    The end of each is where the cloth lies when everything beneath is folded: the neighbour's cut line, mirrored in
    one fold after the other.

    None is an answer, not a failure: the caller mitres the corner then, which can always be cut."""
    if first:
        found = ended(meeting.turned_round(), first=False, folds=folds)
        if found is None:
            return None
        back = tuple(part if isinstance(part, Point) else part.reversed() for part in reversed(found[1]))
        return found[2].reversed(), back, found[0].reversed()
    away = meeting.leaving
    out = away.left() * -meeting.sign
    width = meeting.width_after
    if meeting.arriving.dot(out) < FLATTEST:
        return None
    reach = [fold for fold in folds if fold < width - 1e-6] if folds is not None else [0.0]
    if not reach:
        return None
    edge = _Side(meeting, out)
    start = edge.at(reach[0])
    if start is None:
        return None
    parts: list[tuple[Path, bool]] = []  # each zone's end, straight or not
    low = reach[0]
    for number, high in enumerate((*reach[1:], width)):
        zone: Path | None = (
            Path.line(start, start + out * width) if folds is None else edge.zone(reach[: number + 1], low, high)
        )
        if zone is None:
            return None
        parts.append((zone, zone.is_straight))
        low = high
    # A mirror image in a fold that it meets at a flat angle runs far along the edge, or far out: such an end would eat
    # up the allowance of half the hem.
    limit = FARTHEST * (meeting.width_before + width)
    deep = meeting.after.length * 0.5
    for part, _ in parts:
        if (part.end - meeting.at).dot(away) > deep or part.end.distance(meeting.at) > limit:
            return None
    before = edge.cut_to(reach[0])
    if before is None:
        return None
    foot = parts[-1][0].end
    after = meeting.after
    shift = (foot - after.start).dot(away)
    if shift > 1e-6:
        trimmed = _trimmed(parts[-1][0], after, shift, away)
        if trimmed is None:
            return None
        parts[-1], after = (trimmed[0], parts[-1][1]), trimmed[1]
    end: list[Point | Curve] = [start]
    for part, straight in parts:
        end.extend((part.end,) if straight else part.curves)
    return before, tuple(end), after


class _Side:
    """The neighbour's cut line, carried on straight at both ends, by the height over the folded edge's stitch line.
    A place on it is the number of its curve and the curve's parameter."""

    def __init__(self, meeting: Meeting, out: Vector) -> None:
        self.meeting, self.out = meeting, out
        self.path = meeting.before
        first, last = self.path.curves[0], self.path.curves[-1]
        self.curves: tuple[Curve, ...] = (
            Line(first.start - first.tangent(0.0) * _FAR, first.start),
            *self.path.curves,
            Line(last.end, last.end + last.tangent(1.0) * _FAR),
        )
        self.heights = [self.height(curve.start) for curve in self.curves] + [self.height(self.curves[-1].end)]

    def height(self, p: Point) -> float:
        return (p - self.meeting.at).dot(self.out)

    def place(self, height: float) -> tuple[int, float] | None:
        """Where the cut line is at that height, nearest the corner."""
        for i in range(len(self.curves) - 1, -1, -1):
            low, high = self.heights[i], self.heights[i + 1]
            if low <= height <= high and high > low:
                return i, self._crossing(self.curves[i], height, (height - low) / (high - low))
        return None

    def _crossing(self, curve: Curve, height: float, t: float) -> float:
        """The parameter at which a curve that ends higher than it begins is at `height`, by Newton's method kept within
        a shrinking bracket."""
        if isinstance(curve, Line):
            return t
        low, high = 0.0, 1.0
        for _ in range(60):
            off = self.height(curve.point(t)) - height
            if abs(off) < 1e-12:
                break
            low, high = (low, t) if off > 0 else (t, high)
            slope = curve.derivative(t).dot(self.out)
            step = t - off / slope if slope > 0 else -1.0
            t = step if low < step < high else (low + high) / 2
        return t

    def at(self, height: float) -> Point | None:
        found = self.place(height)
        return None if found is None else self.curves[found[0]].point(found[1])

    def zone(self, folds: list[float], low: float, high: float) -> Path | None:
        """The end of the allowance between two heights, beyond the last of `folds`."""
        motion = Motion.identity()
        for fold in reversed(folds):
            line = self.meeting.at + self.out * fold
            low, high = 2 * fold - low, 2 * fold - high
            motion = Motion.reflection(line, line + self.meeting.leaving).then(motion)
        a, b = self.place(low), self.place(high)
        if a is None or b is None or a == b:
            return None
        return self._between(a, b).moved(motion)

    def _between(self, a: tuple[int, float], b: tuple[int, float]) -> Path:
        if b < a:
            return self._between(b, a).reversed()
        (i, t), (j, s) = a, b
        if i == j:
            return Path((self.curves[i].between(t, s),))
        # A hair short of a curve's end is its end: an arc through no angle cannot be drawn.
        parts = [self.curves[i].between(t, 1.0)] if t < 1.0 - _HAIR else []
        parts += self.curves[i + 1 : j]
        parts += [self.curves[j].between(0.0, s)] if s > _HAIR else []
        return Path.of(*parts)

    def cut_to(self, height: float) -> Path | None:
        """The neighbour's cut line as far as that height; it may lose up to half of its length."""
        if self.height(self.path.end) - height <= 1e-9:
            return self.path
        found = self.place(height)
        if found is None or not 1 <= found[0] <= len(self.path.curves):
            return None
        kept = self._between((1, 0.0), found)
        return kept if kept.length > self.path.length * 0.5 else None


def _trimmed(zone: Path, after: Path, shift: float, away: Vector) -> tuple[Path, Path] | None:
    """The end of the allowance and the cut line it runs into, both as far as they meet."""
    first = after.curves[0]
    if isinstance(first, Line) and first.length > shift and abs(first.tangent(0.0).cross(away)) < 1e-9:
        return zone, after.between(shift, after.length)
    longer = zone.extended(after.length * 0.25 + shift)
    met = [(d, s) for _, d, s in longer.meetings(after) if s < after.length * 0.75]
    if not met:
        return None
    d, s = min(met)
    if d < 1e-6 or s < 1e-6:
        return None
    return longer.between(0.0, d), after.between(s, after.length)


def cut_off(meeting: Meeting, size: float, *, rounded: bool) -> Shape | None:
    """The point of a mitre cut off straight, or in an arc about the corner, `size` mm from the stitch lines' corner
    (0: as far as the wider allowance). An arc is never nearer than the wider allowance. None where there is nothing to
    cut off."""
    wider = max(meeting.width_before, meeting.width_after)
    size = max(size, wider) if rounded else size or wider
    tip = meeting.tip()
    reach = tip.distance(meeting.at)
    if size >= reach - 1e-6:
        return None
    if (tip - meeting.before.end).dot(meeting.arriving) < 0 or (meeting.after.start - tip).dot(meeting.leaving) < 0:
        return None  # widths so different that one cut line meets the other before its end
    before, after = _to_tip(meeting, tip)
    if rounded:
        across = Path((Arc(meeting.at, size, 0.0, 2 * math.pi),))
    else:
        out = (tip - meeting.at).unit()
        across = Path.line(*(meeting.at + out * size + out.left() * (way * reach * 20.0) for way in (-1.0, 1.0)))
    on_before = [d for _, d, _ in before.meetings(across)]
    on_after = [d for _, d, _ in after.meetings(across)]
    if not on_before or not on_after:
        if not rounded:
            return None
        on_before = on_before or [before.nearest(meeting.at)]
        on_after = on_after or [after.nearest(meeting.at)]
    one, two = max(on_before), min(on_after)
    if one < before.length * 0.3 or two > after.length * 0.7:
        return None
    a, b = before.at(one), after.at(two)
    if max(a.distance(meeting.at), b.distance(meeting.at)) > FARTHEST * (meeting.width_before + meeting.width_after):
        return None  # an edge that hardly turns has no point to cut off
    kept_before, kept_after = before.between(0.0, one), after.between(two, after.length)
    if not rounded:
        return kept_before, (), kept_after
    begin, end = (a - meeting.at).angle, (b - meeting.at).angle
    sweep = (end - begin) * meeting.sign % (2 * math.pi) * meeting.sign
    if not 1e-6 < abs(sweep) < math.pi:
        return None  # widths so different that the arc would begin beyond its end
    return kept_before, (Arc(meeting.at, size, begin, sweep),), kept_after


def _to_tip(meeting: Meeting, tip: Point) -> tuple[Path, Path]:
    """Both cut lines carried on, or trimmed, to where they meet."""
    before, after = meeting.before, meeting.after
    return (
        Path.of(before, Line(before.end, tip)) if before.end.distance(tip) > 1e-6 else before,
        Path.of(Line(tip, after.start), after) if after.start.distance(tip) > 1e-6 else after,
    )
