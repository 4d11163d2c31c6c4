"""The lines and points of a traced top that a block has: waist and bust line, their ends, neck point, shoulder tip.

They are found from what its edges are (their roles), so that a lesson written for a block runs on a top of one's own.
What an author names himself stays his; what is found gives way to anything drawn of the same name later.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from kit.geometry import Path, Point
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole, Landmark

POINTS: dict[tuple[str, str], str] = {
    ("centre", "neck"): "centre_neck",
    ("neck", "shoulder"): "neck_point",
    ("shoulder", "armhole"): "shoulder_tip",
    ("armhole", "side"): "underarm_point",
    ("side", "hip"): "side_hip",
    ("hip", "centre"): "centre_hip",
}
"""What a block calls the corner between an edge and the next one, by their roles."""
LANDMARKS: dict[str, Landmark] = {
    "neck_point": "neck_point",
    "shoulder_tip": "shoulder_tip",
    "underarm_point": "underarm_point",
    "waist": "waist_line",
    "bust_line": "bust_line",
    "hip_line": "hip_line",
}
_FAR = 4000.0
_APART = 1.0


def with_block_lines(piece: Piece, waist: bool) -> Piece:
    """A traced front or back with the points and lines of a block that can be found on it. `waist`: its waistline lies
    at y = 0. A name that stands already is left alone; without a centre and a side there are no lines."""
    points = dict(_corners(piece.edges))
    lines: dict[str, Path] = {}
    if piece.worn and waist and (level := _level(piece, 0.0)):
        lines["waist"] = level
        points |= {"centre_waist": level.start, "side_waist": level.end}
    if piece.worn and (underarm := _underarm(piece, points)) and (level := _level(piece, underarm.y, underarm)):
        lines["bust_line"] = level
    taken = {edge.name for edge in piece.edges} | {name for name, _ in (*piece.points, *piece.guides)}
    points = {name: point for name, point in points.items() if name not in taken}
    lines = {name: line for name, line in lines.items() if name not in taken}
    known = {what for _, what in piece.landmarks or ()}
    marks = [(name, LANDMARKS[name]) for name in (*points, *lines) if LANDMARKS.get(name, "") not in ("", *known)]
    return replace(
        piece,
        points=(*piece.points, *points.items()),
        guides=(*piece.guides, *lines.items()),
        landmarks=(*(piece.landmarks or ()), *marks),
        found=(*points, *lines),
    )


def _corners(edges: Sequence[Edge]) -> list[tuple[str, Point]]:
    """The corners a block has a name for, whatever their edges are called, whichever way round they run."""
    found = []
    for i, edge in enumerate(edges):
        pair = (edges[i - 1].role or "", edge.role or "")
        if name := POINTS.get(pair) or POINTS.get(pair[::-1]):
            found.append((name, edge.path.start))
    return found


def _underarm(piece: Piece, points: dict[str, Point]) -> Point | None:
    return points.get("underarm_point") or piece.point_of("underarm_point")


def _level(piece: Piece, y: float, end: Point | None = None) -> Path | None:
    """The level line at `y` from the centre to the side (or to `end`); None where it meets no centre or no side."""
    centre = _met(piece, "centre", y)
    side = end or _met(piece, "side", y)
    return Path.line(centre, side) if centre and side and centre.distance(side) > _APART else None


def _met(piece: Piece, role: EdgeRole, y: float) -> Point | None:
    """Where a level line meets the edges of that role; of several places the one farthest from the centre line."""
    ray = Path.line(Point(-_FAR, y), Point(_FAR, y))
    found = [point for edge in piece.with_role(role) for point in edge.path.crossings(ray)]
    return max(found, key=lambda point: abs(point.x), default=None)
