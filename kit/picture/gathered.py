"""A piece with a gathered edge in a sewing picture: narrow along the edge, full again farther in, with short lines
where the fullness lies."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kit.geometry import Path, Point, Vector
from kit.picture.darts_shut import Warp
from kit.piece.piece import Edge, Piece, Side
from kit.sewing.facts import drawn_up_to
from kit.sewing.run import Run
from kit.sewing.state import State

FULL = 180.0
"""mm from a gathered edge on which the cloth is drawn in less and less (a drawing's, no measure)."""
STEP = 10.0
"""mm between the points of a line that is drawn in."""
_DEEP = 0.8  # of the piece's depth that it takes at most
_EVERY = 9.0  # mm between the lines of the gathers
_LONG = (26.0, 12.0, 40.0, 18.0)  # mm of those that follow one another
_STRAIGHT = 0.15  # share of its chord that an edge may bow and be drawn up as a line


@dataclass(frozen=True)
class Gathered:
    """The `edge` drawn up to a `share` of its length about `foot`: `way` along it, `into` the piece (unit vectors);
    from `full` mm on the cloth is as wide as it was cut. It
    goes from one to the other of `reach`, mm along `way` from `foot`."""

    edge: str
    foot: Point
    way: Vector
    into: Vector
    share: float
    full: float
    reach: tuple[float, float]

    def __call__(self, p: Point) -> Point:
        off = p - self.foot
        along, deep = off.dot(self.way), off.dot(self.into)
        far = min(max(deep / self.full, 0.0), 1.0)
        wide = self.share + (1.0 - self.share) * far * far * (3.0 - 2.0 * far)
        inner = min(max(along, self.reach[0]), self.reach[1])  # what lies beyond its ends is not gathered
        return self.foot + self.way * (inner * wide + along - inner) + self.into * deep

    def lines(self, path: Path) -> Iterator[Path]:
        """Where the fullness lies along the edge's path, in the draft."""
        count = max(int(path.length * self.share / _EVERY), 2)
        for number in range(1, count):
            start = path.at(path.length * number / count)
            yield Path.line(start + self.into * 1.5, start + self.into * _LONG[number % len(_LONG)])


def gathered(piece: Piece, side: Side, state: State | None) -> tuple[Gathered, ...]:
    """The edges of a half that long stitches have drawn up by now; one that bends much is left as it is cut."""
    if state is None:
        return ()
    found = (_gathered(piece, edge, drawn_up_to(state, Run(piece.name, (edge.name,)), side)) for edge in piece.edges)
    return tuple(each for each in found if each is not None)


def _gathered(piece: Piece, edge: Edge, to: float | None) -> Gathered | None:
    path = edge.path
    chord = path.end - path.start
    if to is None or not 0 < to < path.length or chord.length < 1.0:
        return None
    way = chord.unit()
    places = [path.at(path.length * share) - path.start for share in (0.25, 0.5, 0.75)]
    if max(abs(way.cross(place)) for place in places) > _STRAIGHT * chord.length:
        return None
    foot = path.at(path.length / 2)
    if piece.fold:  # what lies on the fold stays there
        fold = piece.edge(piece.fold).path
        foot = min((path.start, path.end), key=fold.distance_to)
    middle = path.at(path.length / 2)
    into = way.left() if piece.outline.contains(middle + way.left() * 2.0) else way.left() * -1.0
    depth = max((q - middle).dot(into) for each in piece.edges for q in (each.path.start, each.path.end))
    ends = [(end - foot).dot(way) for end in (path.start, path.end)]
    full = max(min(FULL, _DEEP * depth), 1.0)
    return Gathered(edge.name, foot, way, into, to / path.length, full, (min(ends), max(ends)))


def drawn_in(several: tuple[Gathered, ...]) -> Warp:
    """Several gathered edges, one after another."""

    def warp(p: Point) -> Point:
        for each in several:
            p = each(p)
        return p

    return warp
