"""What moved between two drafts of one lesson: which named edges of a piece, where, and by how much.

An edge moved where its later line lies off its earlier one, carried on straight at both ends: an edge that only
became longer or shorter has not moved, its neighbour has. All is in mm, in the draft's own place.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, Protocol

from kit.geometry import Path, Point, Vector
from kit.lesson.derive import inside_left
from kit.piece.piece import Piece

OfRun = Literal["start", "middle", "end"]
LEAST = 0.5
"""An edge has moved where its line shifted by more than this, in mm."""
TOLD = 0.8
"""Shifts up to this (mm) are not worth telling: a ruler marked in sixteenths of an inch shows none."""
_STEPS = 32
_CARRIED = 500.0


class Drafted(Protocol):
    """What has pieces to lay over those of another draft: a pattern, or what a file tells of an earlier one."""

    @property
    def pieces(self) -> tuple[Piece, ...]: ...

    def piece(self, name: str) -> Piece: ...


@dataclass(frozen=True)
class Shift:
    """How far `edge` moved at one `place`: its "start", its "end", or where in the "middle" it moved most. `dx` and
    `dy` (mm) lead from `at`, the nearest place of the earlier line, to the later one; `size` is their length; `outward`
    the direction square to the later line, out of the cloth."""

    edge: str
    place: OfRun
    dx: float
    dy: float
    size: float
    at: Point
    outward: Vector

    @property
    def to(self) -> Point:
        """Where that place lies on the later line."""
        return Point(self.at.x + self.dx, self.at.y + self.dy)


def moved_pieces(before: Drafted, after: Drafted) -> tuple[str, ...]:
    """Names of the pieces that are not as they were: an edge moved by more than `LEAST`, a dart or pleat lies
    elsewhere, or the piece is in one draft only."""
    was, now = ({piece.name: piece for piece in pattern.pieces} for pattern in (before, after))
    names = list(dict.fromkeys([*now, *was]))
    return tuple(name for name in names if name not in was or name not in now or _moved(was[name], now[name]))


def differences(before: Drafted, after: Drafted, piece: str) -> tuple[Shift, ...]:
    """For each edge of a piece that moved: the shift at its start, at its end, and in the middle where it moved
    clearly more there than at both ends. A place that stayed has a size of 0. Empty for a piece of one draft only."""
    if not all(any(p.name == piece for p in pattern.pieces) for pattern in (before, after)):
        return ()
    was, now = before.piece(piece), after.piece(piece)
    out = -1.0 if inside_left(now) else 1.0
    found: list[Shift] = []
    for edge in now.edges:
        if was.has_edge(edge.name):
            found += _shifts(edge.name, was.edge(edge.name).path, edge.path, out)
    return tuple(found)


def moved_edges(was: Piece, now: Piece) -> tuple[str, ...]:
    """The edges of both drafts of a piece whose line moved."""
    return tuple(
        edge.name
        for edge in now.edges
        if was.has_edge(edge.name) and any(off > LEAST for off, _ in _offsets(was.edge(edge.name).path, edge.path))
    )


def _moved(was: Piece, now: Piece) -> bool:
    if {e.name for e in was.edges} != {e.name for e in now.edges} or moved_edges(was, now):
        return True
    if any(now.edge(e.name).path.end.distance(e.path.end) > LEAST for e in was.edges):
        return True
    darts = [tuple((d.name, round(d.apex.x), round(d.apex.y), round(d.short)) for d in p.darts) for p in (was, now)]
    return darts[0] != darts[1] or [p.name for p in was.pleats] != [p.name for p in now.pleats]


def _carried(path: Path) -> Path:
    return path.extended(_CARRIED, "start").extended(_CARRIED, "end")


def _offsets(old: Path, new: Path) -> Iterator[tuple[float, float]]:
    """Distances of the later line from the earlier one carried on, each with how far along the later one."""
    if old == new:
        return
    line = _carried(old)
    for i in range(_STEPS + 1):
        place = new.length * i / _STEPS
        yield line.distance_to(new.at(place)), place


def _shifts(name: str, old: Path, new: Path, out: float) -> list[Shift]:
    most, where = max(_offsets(old, new), default=(0.0, 0.0))
    if most <= LEAST:
        return []
    line = _carried(old)

    def shift(place: OfRun, a: Point, b: Point, along: float) -> Shift:
        step = b - a
        size = step.length
        return Shift(name, place, step.x, step.y, size, a, new.normal_at(along) * out)

    def foot(b: Point) -> Point:
        return line.at(line.nearest(b))

    ends: list[Shift] = []
    for place, b, along in (("start", new.start, 0.0), ("end", new.end, new.length)):
        stayed = line.distance_to(b) <= LEAST  # at most slid along itself
        ends.append(shift(place, b if stayed else foot(b), b, along))  # type: ignore[arg-type]
    middle = shift("middle", foot(new.at(where)), new.at(where), where)
    inner = 0.1 * new.length < where < 0.9 * new.length
    if inner and middle.size > max(s.size for s in ends) * 1.1 + LEAST:
        return [ends[0], middle, ends[1]]
    return ends


def direction(shift: Shift) -> Literal["up", "down", "out", "in"]:
    """The way of a shift as people say it: a line that lies rather level goes up or down, one that stands rather
    upright goes out of the cloth or into it."""
    way = Vector(shift.dx, shift.dy)
    if abs(shift.outward.y) >= abs(shift.outward.x):
        return "up" if way.y > 0 else "down"
    return "out" if way.dot(shift.outward) > 0 else "in"
