"""Before and after a fitting: one piece of two drafts laid over each other, with what moved measured.

The earlier line is a dashed ghost, the later one drawn as it stands, heavy where it moved. The shifts dimensioned are
the same values the sentences are made of.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from kit.geometry import Point
from kit.language import say
from kit.lesson.moved import TOLD, Drafted, Shift, differences, moved_pieces
from kit.picture.dart import in_step
from kit.picture.drawing import Area, Dimension, Dot, Drawing, Item, Label, Stroke, StrokeRole
from kit.picture.rows import bounds_of_paths
from kit.piece.piece import Piece
from kit.prose.fitting import piece_words
from kit.units import System, both

__all__ = ["Shift", "differences", "fitting_drawing", "moved_pieces"]

MOST = 6
"""So many shifts are dimensioned, the largest first."""
_ROOM = (0.15, 0.08)
"""Paper left beside and above the piece for the texts, as shares of its reach."""
_APART = 0.12
"""Two shifts nearer to each other than this share of the piece's reach are told by the larger one."""


def fitting_drawing(before: Drafted, after: Drafted, piece: str, units: System = "cm") -> Drawing:
    """One piece before and after a fitting, as drafted. `KitError` for a piece neither draft has."""
    was = next((p for p in before.pieces if p.name == piece), None)
    now = next((p for p in after.pieces if p.name == piece), None) or before.piece(piece)
    ghost = was if now is not was else None
    shifts = differences(before, after, piece)
    moved = {shift.edge for shift in shifts if shift.size > TOLD}
    box = bounds_of_paths(edge.path for p in (was, now) if p for edge in p.edges)
    reach = max(box[2] - box[0], box[3] - box[1], 1.0)
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    items: list[Item] = []
    if ghost is not None:
        for edge in ghost.edges:
            gone = not now.has_edge(edge.name)
            if gone or edge.name in moved or now.edge(edge.name).path != edge.path:
                items.append(Stroke(edge.path.curves, "removed", name=f"{piece}.{edge.name}.before"))
        for dart in ghost.darts:
            if dart not in now.darts:
                items += in_step(ghost, dart, "removed")
    for edge in now.edges:
        fresh = was is None or not was.has_edge(edge.name) or edge.name in moved
        role: StrokeRole = "new" if fresh else "fold" if edge.name == now.fold else "kept"
        items.append(Stroke(edge.path.curves, role, name=f"{piece}.{edge.name}"))
    for dart in now.darts:
        items += in_step(now, dart, "kept" if was and dart in was.darts else "new")
    items.append(
        Label(now.title, middle, "ghost", of=Area(tuple(curve for edge in now.edges for curve in edge.path.curves)))
    )
    for shift in shown(shifts, reach):
        items += _dimension(shift, units, reach, middle)
    words = " ".join(piece_words(before, after, piece, units))
    alt = say("fitting.alt", piece=now.title, words=words)
    return Drawing(tuple(items), alt, say("fitting.title", piece=now.title), _with_room(box, reach))


Box = tuple[float, float, float, float]


def room_of(was: Piece, now: Piece) -> tuple[Box, tuple[float, float]]:
    """The room the picture takes for these two drafts of a piece, and its middle."""
    box = bounds_of_paths(edge.path for p in (was, now) for edge in p.edges)
    reach = max(box[2] - box[0], box[3] - box[1], 1.0)
    return _with_room(box, reach), ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)


def _with_room(box: Box, reach: float) -> Box:
    wide, high = reach * _ROOM[0], reach * _ROOM[1]
    return box[0] - wide, box[1] - high, box[2] + wide, box[3] + high


def shown(shifts: Sequence[Shift], reach: float) -> list[Shift]:
    """The shifts worth dimensioning, the largest first: at most `MOST`, none beside a larger one, where two edges meet
    only one."""
    found: list[Shift] = []
    for shift in sorted(shifts, key=lambda s: -s.size):
        near = any(shift.at.distance(other.at) < reach * _APART for other in found)
        if shift.size > TOLD and not near and len(found) < MOST:
            found.append(shift)
    return found


def _dimension(shift: Shift, units: System, reach: float, middle: Point) -> Iterable[Item]:
    """The shift with its size: a line from where the place was to where it is, its text outside the piece."""
    yield Dot(shift.at, "kept", f"{shift.edge}.{shift.place}.before")
    yield Dot(shift.to, "new", f"{shift.edge}.{shift.place}")
    a, b = shift.at, shift.to
    if (b - a).cross(a.mid(b) - middle) < 0:  # the text of a short one stands to the left of its travel
        a, b = b, a
    yield Dimension(a, b, both(shift.size, units), offset=reach * 0.05, name=f"{shift.edge}.{shift.place}.shift")
