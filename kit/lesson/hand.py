"""What the hand does in a drafting step, one move after another: mark, square across, rule, draw a curve, trace.

The verbs of points and lines write each move down as it is made, with the places where a line is square to another or
runs into one without a corner. Pictures number the moves and draw their signs from this record; nothing is read out of
the words of the step.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal, Protocol

from kit.geometry import Curve, Line, Path, Point, Vector
from kit.piece.changed import changed

Kind = Literal["mark", "place", "across", "rule", "curve", "parallel", "trace", "mirror"]
_HERE = 0.05
"""mm within which two places of a draft are the same."""
SQUARE = 0.003
"""How far the cosine of a square corner may be off nothing (0.17 degrees)."""


@dataclass(frozen=True)
class Sign:
    """A place `at` which the trade says "square" or "without a corner" (tangent). `way` leads along the move's line
    away from that place, `other` along the line `to` which it is so (its name; empty for a level or upright of the
    paper, and for a line without a name)."""

    kind: Literal["square", "tangent"]
    at: Point
    way: Vector
    other: Vector
    to: str = ""


@dataclass(frozen=True)
class HandMove:
    """One move of the hand on `piece`. A "mark" leads from `start` to a place at `end` (straight, or along `path`), a
    "place" is measured from the corner of the paper, "across" squares over to a line, "rule", "curve" and "parallel"
    draw `path`, "trace" and "mirror" take lines over from elsewhere (`path` is the fold of a mirror, `source` the piece
    that is traced). `size` is what was said (mm, 0 for nothing) and `measure` its name; `name` is the line or point it
    became."""

    kind: Kind
    piece: str
    start: Point
    end: Point
    path: Path | None = None
    size: float = 0.0
    measure: str = ""
    name: str = ""
    source: str = ""
    signs: tuple[Sign, ...] = ()

    @property
    def is_line(self) -> bool:
        return self.kind in ("rule", "curve", "parallel")


def same(a: Point, b: Point) -> bool:
    """Whether two places are one."""
    return abs(a.x - b.x) < _HERE and abs(a.y - b.y) < _HERE


def square_sign(at: Point, way: Vector, lines: Iterable[tuple[str, Path]]) -> tuple[Sign, ...]:
    """The sign of a line that sets out from `at` in the direction `way` of the paper: square to the line that it leaves
    there, else to the level or the upright. None where it runs along a line that is drawn already: there is nothing to
    square then."""
    found: Sign | None = None
    for name, path in lines:
        for tangent, ahead in _through(path, at):
            if abs(tangent.cross(way)) < SQUARE:
                return ()
            if found is None and abs(tangent.dot(way)) < SQUARE:
                found = Sign("square", at, way, tangent if ahead else tangent * -1.0, name)
    return (found or Sign("square", at, way, way.left() if way.x else Vector(1.0, 0.0)),)


def _through(path: Path, at: Point) -> Iterable[tuple[Vector, bool]]:
    """(direction of travel, whether the path goes on from there) of the curves of `path` that pass through `at`.

    Only ends of curves, and places on straight lines, are looked for: measures are taken from points that were marked,
    and these lie there. It is asked at every move while a step is worked, so it must cost next to nothing."""
    for curve in path.curves:
        if same(curve.start, at):
            yield curve.tangent(0.0), True
        elif same(curve.end, at):
            yield curve.tangent(1.0), False
        elif isinstance(curve, Line):
            span, off = curve.end - curve.start, at - curve.start
            long = span.length
            if long > _HERE and abs(span.cross(off)) < _HERE * long and 0.0 < off.dot(span) < long * long:
                yield span.unit(), True


class NamedLine(Protocol):
    """A line on a piece and its name."""

    @property
    def path(self) -> Path: ...

    @property
    def name(self) -> str: ...


def end_sign(path: Path, start: bool, square: NamedLine | None, along: NamedLine | None) -> tuple[Sign, ...]:
    """The sign at one end of a curve that was said to be square to a line there, or to run along one. A line ruled in
    this very step has no name yet and counts as well."""
    line = square or along
    if line is None:
        return ()
    at, way = (path.start, path.start_tangent) if start else (path.end, path.end_tangent * -1.0)
    if square is None:
        return (Sign("tangent", at, way, way * -1.0, line.name),)
    near = line.path.nearest(at)
    tangent = line.path.tangent_at(near)
    ahead = near < line.path.length / 2
    return (Sign("square", at, way, tangent if ahead else tangent * -1.0, line.name),)


def named(moves: Sequence[HandMove], name: str, path: Path) -> list[HandMove]:
    """`moves` with those that drew `path`, or a part of it, under the name it was given."""
    own = {id(curve) for curve in path.curves}
    return [
        changed(move, name=name)
        if move.is_line and not move.name and move.path is not None and _drew(move.path, path, own)
        else move
        for move in moves
    ]


def _drew(part: Path, whole: Path, curves: set[int]) -> bool:
    return part is whole or part == whole or all(id(curve) in curves for curve in part.curves)


def pointed(moves: Sequence[HandMove], name: str, at: Point) -> list[HandMove]:
    """`moves` with the last one that leads to `at` under the name of the point marked there."""
    out = list(moves)
    for i in range(len(out) - 1, -1, -1):
        if out[i].kind in ("mark", "place", "across") and not out[i].name and same(out[i].end, at):
            out[i] = changed(out[i], name=name)
            break
    return out


def right_angles(edges: Sequence[tuple[str, Path]]) -> list[Sign]:
    """The signs of the square corners of an outline ruled on fresh paper: between neighbouring straight lines."""
    found = []
    for i, (_, path) in enumerate(edges):
        name, before = edges[i - 1]
        if not (path.is_straight and before.is_straight and same(before.end, path.start)) or len(edges) < 2:
            continue
        way, back = path.start_tangent, before.end_tangent * -1.0
        if abs(way.dot(back)) < SQUARE:
            found.append(Sign("square", path.start, way, back, name))
    return found


def carried_out(moves: Sequence[HandMove], ends: Sequence[Point]) -> tuple[HandMove, ...]:
    """The moves that lead to what was drawn: those that drew a named line or marked a named point, and those whose
    place the rest begins or ends at. `ends` are the ends of what is new on the piece. What an author only computed with
    is left out."""
    wanted: list[Point] = list(ends)
    kept: list[HandMove] = []
    for move in reversed(moves):
        drew = bool(move.name) or move.kind in ("trace", "mirror")
        if not drew and not (not move.is_line and any(same(move.end, p) for p in wanted)):
            continue
        kept.append(move)
        wanted += [move.start, move.end]
    found: list[HandMove] = []
    squared: list[Point] = []
    for move in reversed(kept):
        if any(_alike(move, one) for one in found):  # an author may ask for one place twice
            continue
        signs = []
        for sign in move.signs:  # a corner that was squared is square: one sign is enough
            if sign.kind == "square":
                if any(same(sign.at, at) for at in squared):
                    continue
                squared.append(sign.at)
            signs.append(sign)
        found.append(move if len(signs) == len(move.signs) else changed(move, signs=tuple(signs)))
    return tuple(found)


def _alike(a: HandMove, b: HandMove) -> bool:
    return a.kind == b.kind and same(a.start, b.start) and same(a.end, b.end) and a.path == b.path


def ends_of(curves: Iterable[Curve]) -> list[Point]:
    """The ends of curves, each place once as it comes."""
    out: list[Point] = []
    for curve in curves:
        out += [p for p in (curve.start, curve.end) if not any(same(p, q) for q in out)]
    return out
