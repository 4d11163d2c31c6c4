"""A hat whose crown is one ring, seen as it stands: the crown as the cone it is part of, its top, and its brim.

Laid flat such pieces say nothing of the hat, so its shape is worked out from their lengths. The edge that is worn round
the head is the lower one; what is sewn to the edge across from it is the top, what is sewn to the lower one the brim.
A ring that turns through a share of a circle slopes as the cone of that share does: how far out it goes for each
millimetre of its width is that share.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from kit.geometry import Line, Point
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, drawn
from kit.picture.drawing import Fill, Item, Stroke
from kit.picture.figure import View
from kit.piece.piece import Edge, Piece
from kit.sewing.operations.joined import Seam
from kit.sewing.order import of_kind, operations
from kit.sewing.spans import sides_of

_SEEN = 0.2  # how much of a circle's depth is seen from a little above
_STEPS = 24


@dataclass(frozen=True)
class HatRing:
    """A ring of a `piece` from the radius `inner` at the height `top` to `outer` at `low`, mm; `low_edge` is its edge
    there."""

    piece: Piece
    inner: float
    top: float
    outer: float
    low: float
    low_edge: str

    def at(self, distance: float, slope: float) -> tuple[float, float]:
        """Radius and height that far from the lower edge, measured along the cloth, which is `slope` long."""
        share = distance / max(slope, 1e-9)
        return self.outer + (self.inner - self.outer) * share, self.low + (self.top - self.low) * share

    @property
    def slope(self) -> float:
        return math.hypot(self.outer - self.inner, self.top - self.low)


@dataclass(frozen=True)
class RoundHat:
    """The `crown` from its top to the head, the piece that closes it above, and the brim where there is one."""

    pattern: Pattern
    crown: HatRing
    tip: Piece | None
    brim: HatRing | None

    def items(self, view: View) -> list[Item]:
        """The hat from the front or the back, its lower edge at the height 0, the middle at x = 0."""
        found: list[Item] = []
        rings = [ring for ring in (self.brim, self.crown) if ring is not None]
        for ring in rings:
            found += _ring(ring, self.pattern)
            if view == "back" and _closed_behind(ring.piece, self.pattern):
                seam = (Point(0.0, ring.top - _SEEN * ring.inner), Point(0.0, ring.low - _SEEN * ring.outer))
                found.append(Stroke(drawn(seam), "edge", name=f"{ring.piece.name}.back"))
        if self.tip is not None:
            far, near = (_half(self.crown.inner, self.crown.top, way) for way in (1, -1))
            circle = drawn([*far, *reversed(near)], True)
            found.append(Fill(circle, "right_side", self.tip.name))
            found.append(Stroke(circle, "edge", closed=True, name=self.tip.name))
        return found


def round_hat(pattern: Pattern) -> RoundHat | None:
    """The hat of a pattern; None where nothing is worn round the head, or its crown is of several panels."""
    for piece in pattern.pieces:
        line = piece.guide_of("head_line")
        if line is None or piece.cut.cloth != "main" or not _closed_behind(piece, pattern):
            continue
        across = [edge for edge in piece.edges if edge.name != piece.fold and edge.name not in _closing(piece, pattern)]
        if len(across) != 2:
            continue
        head = line.start
        lower, upper = sorted(across, key=lambda edge: edge.path.at(edge.path.nearest(head)).distance(head))
        halves = 2.0 if piece.fold else 1.0
        below, above = (edge.path.length * halves / (2 * math.pi) for edge in (lower, upper))
        slant = _between(lower, upper)
        high = math.sqrt(max(slant * slant - (below - above) ** 2, 0.0))
        tip = _sewn_to(piece, upper.name, pattern)
        return RoundHat(
            pattern, HatRing(piece, above, high, below, 0.0, lower.name), tip, _brim(piece, lower, below, pattern)
        )
    return None


def _brim(crown: Piece, lower: Edge, radius: float, pattern: Pattern) -> HatRing | None:
    brim = _sewn_to(crown, lower.name, pattern)
    if brim is None:
        return None
    sewn = _partners(crown.name, lower.name, pattern)
    inner = next((edge for edge in brim.edges if (brim.name, edge.name) in sewn), None)
    rest = [e for e in brim.edges if e is not inner and e.name != brim.fold and e.name not in _closing(brim, pattern)]
    if inner is None or len(rest) != 1:
        return None
    wide = _between(inner, rest[0])
    halves = 2.0 if brim.fold else 1.0
    out = (rest[0].path.length - inner.path.length) * halves / (2 * math.pi)
    return HatRing(brim, radius, 0.0, radius + out, -math.sqrt(max(wide * wide - out * out, 0.0)), rest[0].name)


def _between(one: Edge, other: Edge) -> float:
    """How far apart two edges of a ring lie."""
    return other.path.points(0.5)[0].distance(one.path.at(one.path.nearest(other.path.points(0.5)[0])))


def _seams(pattern: Pattern) -> Iterator[Seam]:
    for _, operation in operations(pattern):
        if isinstance(operation, Seam):
            yield operation


def _partners(piece: str, edge: str, pattern: Pattern) -> set[tuple[str, str]]:
    """(piece, edge) that are sewn to an edge."""
    found = set()
    for seam in _seams(pattern):
        for own, other in ((seam.a, seam.b), (seam.b, seam.a)):
            if any(run.piece == piece and edge in run.edges for run in own):
                found |= {(run.piece, name) for run in other for name in run.edges}
    return found


def _sewn_to(piece: Piece, edge: str, pattern: Pattern) -> Piece | None:
    names = {name for name, _ in _partners(piece.name, edge, pattern) if name != piece.name}
    found = [pattern.piece(name) for name in sorted(names)]
    return next((one for one in found if one.cut.cloth == "main" and one.role not in ("lining", "facing")), None)


def _closing(piece: Piece, pattern: Pattern) -> set[str]:
    """Edges of a piece whose left half is sewn to its right one."""
    return {
        name
        for seam in _seams(pattern)
        for one in seam.a
        for other in seam.b
        if one.piece == other.piece == piece.name
        and set(sides_of(pattern, one)) | set(sides_of(pattern, other)) == {"left", "right"}
        for name in one.edges
        if name in other.edges
    }


def _closed_behind(piece: Piece, pattern: Pattern) -> bool:
    return bool(piece.fold) and bool(_closing(piece, pattern))


def _half(radius: float, height: float, way: int) -> Chain:
    """Half of a circle from left to right as it is seen: the near half below (`way` -1), or the far one."""
    turns = (math.pi * step / _STEPS for step in range(_STEPS + 1))
    return [Point(-radius * math.cos(turn), height + way * _SEEN * radius * math.sin(turn)) for turn in turns]


def _ring(ring: HatRing, pattern: Pattern) -> Iterator[Item]:
    outline = drawn([*_half(ring.inner, ring.top, -1), *reversed(_half(ring.outer, ring.low, -1))], True)
    yield Fill(outline, "right_side", ring.piece.name)
    for row in of_kind(pattern, "topstitch"):
        for run in row.runs():
            for far in (row.distance + 6.0 * number for number in range(row.rows)):
                if run.piece == ring.piece.name and ring.low_edge in run.edges and far < ring.slope:
                    yield Stroke(drawn(_half(*ring.at(far, ring.slope), -1)), "old_row", name=run.said)
    yield Stroke(outline, "edge", closed=True, name=ring.piece.name)


def moved(items: list[Item], to: Callable[[Point], Point]) -> list[Item]:
    """The items with every place taken elsewhere; they are made of straight bits."""
    found: list[Item] = []
    for item in items:
        if isinstance(item, Fill | Stroke):
            lines = tuple(Line(to(curve.start), to(curve.end)) for curve in item.curves)
            found.append(replace(item, curves=lines))
    return found


def on_head(hat: RoundHat, view: View, brow: float, breadth: float) -> list[Item]:
    """The hat on a head: its lower edge at the height `brow`, `breadth` as wide as it is round, since a head is longer
    than broad."""
    return moved(hat.items(view), lambda p: Point(p.x * breadth, p.y + brow))
