"""The place of a finding: what is wrong, drawn from the pattern it was found in.

A corner that is not true is shown with the seam laid shut, near to, its two angles written in; edges of unequal length
and notches without a partner as the walk of their seam; any other finding as its piece with the edge heavy.
"""

from __future__ import annotations

import math

from kit.errors import KitError
from kit.geometry import Arc, Line, Motion, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Area, Drawing, Fill, FillRole, Item, Label, Stroke
from kit.picture.lettering import upright
from kit.picture.place import moved_curves, rectangle
from kit.picture.rows import bounds_of_paths
from kit.picture.walk import outline_of, walk_drawing
from kit.piece.folded import CornerAt, Folded
from kit.proof.corners import Kink, kinks
from kit.proof.finding import Finding
from kit.sewing.operations.joined import Seam
from kit.sewing.order import operations
from kit.sewing.seam_walk import Walk, walk
from kit.units import System
from kit.wording.names import edge_label, title_said

_NEAR = 70.0
_WALKED = frozenset(("seam_length", "facing_length", "ease_amount", "notch_unmatched"))


def finding_drawing(finding: Finding, pattern: Pattern, system: System = "cm") -> Drawing | None:
    """The picture of a finding; None where it has no place on a piece, or the piece cannot be drawn."""
    try:
        if finding.code == "corner_not_true":
            kink = next((k for k in kinks(pattern) if k.finding() == finding), None)
            if kink is not None:
                return corner_drawing(kink, str(finding))
        if finding.code in _WALKED:
            found = _walk_of(finding, pattern)
            if found is not None:
                return walk_drawing(found, system, ghosts=3)
        return _edge_drawing(finding, pattern)
    except KitError:
        return None  # what cannot be drawn is told by a finding of its own


def _walk_of(finding: Finding, pattern: Pattern) -> Walk | None:
    """The walk of the seam a finding speaks of."""
    for record, operation in operations(pattern):
        if record.key != finding.step or not isinstance(operation, Seam) or len(operation.a) != len(operation.b):
            continue
        for a, b in zip(operation.a, operation.b, strict=True):
            if any(run.piece == finding.piece and finding.edge in run.edges for run in (a, b)):
                return walk(pattern.pieces, a, b, ease=operation.ease)
    return None


# ---- a corner ---------------------------------------------------------------------------------------------


def corner_drawing(kink: Kink, alt: str = "") -> Drawing:
    """A corner that is not true: both pieces with the seam laid shut, its end near to, both angles written in."""
    one, other = kink.walk.a, kink.walk.b
    tip, seam, across = _laid(one, kink.one, kink.end, Motion.identity())
    motion = _onto(other, kink, tip, seam)
    _, _, beyond = _laid(other, kink.other, kink.end, motion)
    items: list[Item] = []
    faces: tuple[tuple[Folded, CornerAt, Motion, FillRole], ...] = (
        (one, kink.one, Motion.identity(), "right_side"),
        (other, kink.other, motion, "facing" if kink.turned_under else "wrong_side"),
    )
    for run, corner, put, role in faces:
        part = run.stretches[-1] if kink.end else run.stretches[0]
        curves = moved_curves(outline_of(run.piece), put)
        items.append(Fill(curves, role, run.piece.name))
        items.append(Stroke(curves, "edge", closed=True, name=run.piece.name))
        beside = moved_curves(run.piece.edge(corner.beside).path.curves, put)
        items.append(Stroke(beside, "new", name=f"{run.piece.name}.{corner.beside}"))
        line = moved_curves(run.piece.edge(part.edge).path.curves, put)
        items.append(Stroke(line, "stitch", name=f"{run.piece.name}.{part.edge}"))
    if not kink.turned_under:  # the line as it would run on smoothly from either side
        items.append(Stroke((Line(tip, tip + across * (-_NEAR * 0.75)),), "guide"))
    sizes = (_NEAR * 0.30, _NEAR * 0.42 if kink.turned_under else _NEAR * 0.30)
    for (_, corner, _, _), way, size in zip(faces, (across, beyond), sizes, strict=True):
        items.extend(_angle(tip, seam, way, size, math.degrees(corner.angle)))
    for run, corner, way in ((one, kink.one, across), (other, kink.other, beyond)):
        side = way.left() * (1.0 if way.cross(seam) > 0 else -1.0)
        at = tip + way * (_NEAR * 0.62) + side * (_NEAR * 0.09)
        title = title_said(run.piece.title or run.piece.name)
        name = say("picture.corner_edge", edge=edge_label(run.piece.edge(corner.beside)), piece=title)
        curves = (Line(tip, tip + way * (_NEAR * 1.2)),)
        items.append(Label(name, at, "small", upright(math.atan2(way.y, way.x)), of=curves))
    key = "picture.corner_differs" if kink.turned_under else "picture.corner_bends"
    head = say(key, degrees=f"{abs(kink.degrees):.0f}")
    items.append(Label(head, tip + seam * (-_NEAR * 0.22), "new", of=tip))
    middle = tip + seam * (_NEAR * 0.25)
    box = (middle.x - _NEAR, middle.y - _NEAR * 0.8, middle.x + _NEAR, middle.y + _NEAR * 0.8)
    items.append(Stroke(rectangle(*box), "page", closed=True))
    return Drawing(tuple(items), alt or kink.finding().what, say("picture.corner_title"), box)


def _laid(run: Folded, corner: CornerAt, end: bool, motion: Motion) -> tuple[Point, Vector, Vector]:
    """The corner's point, and the directions along the seam and along the edge beside it, as the draft lies."""
    part = run.stretches[-1] if end else run.stretches[0]
    path = run.piece.edge(part.edge).path
    tip = path.at(part.high if part.forward == end else part.low)
    return motion(tip), motion.vector(corner.along), motion.vector(corner.away)


def _onto(other: Folded, kink: Kink, tip: Point, seam: Vector) -> Motion:
    """Lays the second piece's seam on the first's at that end: beside it, or on it where it is turned under."""
    point, along, _ = _laid(other, kink.other, kink.end, Motion.identity())
    flip = (kink.walk.a.cloth_left == other.cloth_left) != kink.turned_under
    return Motion.matching(point, point + along, tip, tip + seam, flip)


def _angle(tip: Point, seam: Vector, way: Vector, size: float, degrees: float) -> list[Item]:
    start = math.atan2(seam.y, seam.x)
    turn = seam.turn_to(way)
    if degrees > 180:
        turn -= math.copysign(2 * math.pi, turn)
    middle = start + turn / 2
    at = tip + Vector(math.cos(middle), math.sin(middle)) * (size * 1.3)
    return [
        Stroke((Arc(tip, size, start, turn),), "press", arrow="both"),
        Label(say("picture.angle", degrees=f"{degrees:.0f}"), at, "measure"),
    ]


# ---- an edge ----------------------------------------------------------------------------------------------


def _edge_drawing(finding: Finding, pattern: Pattern) -> Drawing | None:
    piece = next((p for p in pattern.pieces if p.name == finding.piece), None)
    if piece is None or not piece.edges:
        return None
    items: list[Item] = []
    for edge in piece.edges:
        role = "new" if edge.name == finding.edge else "fold" if edge.name == piece.fold else "kept"
        items.append(Stroke(edge.path.curves, role, name=f"{piece.name}.{edge.name}"))  # type: ignore[arg-type]
    x0, y0, x1, y1 = bounds_of_paths(edge.path for edge in piece.edges)
    size = max(x1 - x0, y1 - y0)
    outline = Area(tuple(curve for edge in piece.edges for curve in edge.path.curves))
    items.append(Label(piece.title or piece.name, Point((x0 + x1) / 2, (y0 + y1) / 2), "ghost", of=outline))
    if piece.has_edge(finding.edge):
        path = piece.edge(finding.edge).path
        half = path.length / 2
        way = path.tangent_at(half)
        inward = Point((x0 + x1) / 2, (y0 + y1) / 2) - path.at(half)
        side = way.left() * (1.0 if way.left().dot(inward) > 0 else -1.0)
        at = path.at(half) + side * (size * 0.04)
        lie = upright(math.atan2(way.y, way.x))
        items.append(Label(edge_label(piece.edge(finding.edge)), at, "new", lie, of=path.curves))
    return Drawing(tuple(items), str(finding), finding.where or piece.title)
