"""The closed shape of a piece: named edges, each ending where the next begins."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.forgetting import forgettable
from kit.geometry.cubic import Cubic
from kit.geometry.curve import Bounds, Curve
from kit.geometry.line import Line
from kit.geometry.meet import apart, meet, only_meet_at
from kit.geometry.motion import Motion
from kit.geometry.path import Path
from kit.geometry.point import TOLERANCE, Point, place
from kit.geometry.region import Region, Spot

if TYPE_CHECKING:
    from shapely import Polygon

CLOSING = 0.05
"""The gap, in mm, up to which two edges count as meeting."""


@dataclass(frozen=True, slots=True)
class Outline:
    """A closed loop of (name, path). `KitError` when there is no edge, a name comes twice, or an edge ends
    more than 0.05 mm from the start of the next: it names both, the gap and the place.

    >>> corners = [Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)]
    >>> lines = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1])]
    >>> patch = Outline(tuple(zip(("hem", "side", "top", "fold"), lines)))
    >>> patch.area, patch.perimeter, patch.contains(Point(50, 20))
    (5000.0, 300.0, True)
    """

    edges: tuple[tuple[str, Path], ...]
    _flat: tuple[Point, ...] | None = field(default=None, init=False, repr=False, compare=False)
    _crossed: list[tuple[str, str, Point] | None] = field(default_factory=list, init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        if type(self.edges) is not tuple:
            object.__setattr__(self, "edges", tuple(self.edges))
        if not self.edges:
            raise KitError("an outline needs edges.", do="Draw its edges first.")
        names = [name for name, _ in self.edges]
        for name in names:
            if names.count(name) > 1:
                raise KitError(f"two edges are called '{name}'.", do="Give each edge a name of its own.")
        for (name, path), (after, following) in zip(self.edges, self.edges[1:] + self.edges[:1], strict=True):
            gap = path.end.distance(following.start)
            if gap > CLOSING:
                raise KitError(
                    message(
                        "refusal.edge_gap" if name != after else "refusal.edge_open",
                        edge=named_edge(name),
                        next=named_edge(after),
                        gap=measured(gap, "exact"),
                    ),
                    where=place(path.end),
                    do=message("refusal.edge_gap_do"),
                )

    # ---- measuring ----------------------------------------------------------------------------------------

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(name for name, _ in self.edges)

    @property
    def curves(self) -> tuple[Curve, ...]:
        """All curves in order around the loop."""
        return tuple(curve for _, path in self.edges for curve in path.curves)

    def edge(self, name: str) -> Path:
        """The edge of that name; `KitError` with the nearest name otherwise."""
        for known, path in self.edges:
            if known == name:
                return path
        raise KitError(f"there is no edge '{name}'.", do=near(name, self.names))

    @property
    def area(self) -> float:
        """Enclosed area in mm2 (Green's theorem on the curves, exact), positive when travelled ccw."""
        total, curves = 0.0, self.curves
        for curve, after in zip(curves, curves[1:] + curves[:1], strict=True):
            a, b = curve.end, after.start
            total += curve.area_term() + (a.x * b.y - b.x * a.y) / 2
        return total

    @property
    def perimeter(self) -> float:
        return math.fsum(path.length for _, path in self.edges)

    def bounds(self) -> Bounds:
        boxes = [path.bounds() for _, path in self.edges]
        return (
            min(b[0] for b in boxes),
            min(b[1] for b in boxes),
            max(b[2] for b in boxes),
            max(b[3] for b in boxes),
        )

    def points(self, tol: float = TOLERANCE) -> list[Point]:
        """Points around the loop, the first not repeated, whose chords stay within `tol` mm of the edges."""
        found: list[Point] = []
        for curve in self.curves:
            for p in curve.points(tol):
                if not found or p.distance(found[-1]) > 1e-9:
                    found.append(p)
        while len(found) > 1 and found[-1].close_to(found[0], CLOSING):
            found.pop()
        return found

    def polygon(self, tol: float = TOLERANCE) -> Polygon:
        """The shape as a shapely polygon within `tol` mm."""
        from shapely import Polygon

        return Polygon([(p.x, p.y) for p in self.points(tol)])

    def contains(self, point: Point) -> bool:
        """Whether `point` lies inside or within `TOLERANCE` of the edge."""
        flat = self._flat
        if flat is None:
            flat = tuple(self.points(TOLERANCE))
            object.__setattr__(self, "_flat", flat)
        # A ray to the right crosses the outline an odd number of times from inside. A corner at the very height of
        # the point counts for one of its two lines only, hence > on one side of the comparison and not on the other.
        inside, before = False, flat[-1]
        for p in flat:
            if (p.y > point.y) != (before.y > point.y):
                inside ^= point.x < p.x + (before.x - p.x) * (point.y - p.y) / (before.y - p.y)
            before = p
        return inside or any(path.distance_to(point) <= TOLERANCE for _, path in self.edges)

    def label_point(self) -> Point:
        """The place furthest from every edge (the pole of inaccessibility, within 1 % of the piece's size):
        where a label has most room. For an outline that crosses itself or holds no area, some point on or in it."""
        box = self.bounds()
        size = max(box[2] - box[0], box[3] - box[1])
        found = _roomiest(tuple((p.x, p.y) for p in self.points(max(0.5, size / 500))), size / 100)
        return self.edges[0][1].start if found is None else found

    def self_crossing(self) -> tuple[str, str, Point] | None:
        """The first place where the outline crosses or touches itself: the names of both edges and the point.
        Ends that neighbours share do not count. None when it is sound. It is looked for once."""
        if not self._crossed:
            self._crossed.append(self._first_crossing())
        return self._crossed[0]

    def _first_crossing(self) -> tuple[str, str, Point] | None:
        parts = [(name, curve, curve.bounds()) for name, path in self.edges for curve in path.curves]
        n = len(parts)
        for i, (name, curve, box) in enumerate(parts):
            if isinstance(curve, Cubic):
                loop = curve.self_crossing()
                if loop is not None:
                    return name, name, loop
            for j in range(i + 1, n):
                other, against, around = parts[j]
                if apart(box, around):
                    continue
                # Neighbours meet at the end they share, the last curve and the first as well; only other meetings
                # count. In an outline of two curves they share both ends.
                shared = []
                if j == i + 1:
                    shared.append(curve.end)
                if i == 0 and j == n - 1:
                    shared.append(curve.start)
                if len(shared) == 1 and only_meet_at(shared[0], curve, against):
                    continue
                for p, _, _ in meet(curve, against):
                    if not any(p.close_to(q, 2 * CLOSING) for q in shared):
                        return name, other, p
        return None

    # ---- copies -------------------------------------------------------------------------------------------

    def oriented(self) -> Outline:
        """The same loop travelled ccw, so that the inside lies to the left of every edge."""
        if self.area >= 0:
            return self
        return Outline(tuple((name, path.reversed()) for name, path in reversed(self.edges)))

    def moved(self, motion: Motion) -> Outline:
        """The same edges in the same order, moved; after a flip the loop runs the other way round."""
        return Outline(tuple((name, path.moved(motion)) for name, path in self.edges))

    def mirrored(self, line: Line) -> Outline:
        """The mirror image across the endless line through `line`, edges in the same order."""
        return self.moved(Motion.reflection(line.start, line.end))


# A quarter of working a draft is the search for where its grain lines stand, and most values leave most pieces alone.
@forgettable(512)
def _roomiest(ring: tuple[Spot, ...], tolerance: float) -> Point | None:
    """The place farthest from every side of a ring; None where it holds no area."""
    region = Region.of([Point(x, y) for x, y in ring])
    return None if region.is_empty else region.roomiest(tolerance)
