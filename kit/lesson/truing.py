"""Truing a seam: both edges made to agree, and the lines across its ends drawn smooth.

`trued` is a pure function from pieces to pieces. The difference in length is taken off, or added, at the end that is
not held; the edge beside that end is drawn anew to the moved corner. Where two corners do not add up to a straight
angle, the lines across the seam are bent so that they run on smoothly.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.lesson.slash import with_path
from kit.piece.folded import CornerAt, Folded, corner_at, folded
from kit.piece.piece import Piece
from kit.piece.pleat import stretches
from kit.sewing.seam_walk import drawn, opposed

Share = Literal["half", "own", "other"]
Ends = Literal["both", "start", "end", "none"]

EQUAL = 0.01
"""Lengths (mm) and angles (degrees) that differ by less are left as they are."""
SMOOTH = 0.05
_TOO_MUCH = 0.15
_SHARP = 45.0
_POINTED = 4.0
_BEND = 60.0
_AWAY = (90.0, 270.0)


@dataclass(frozen=True)
class Trued:
    """The two pieces after truing, the `difference` (mm, own less other) there was, and where it was made up:
    (name of the piece, name of the edge, mm added or, below zero, taken off, where its end was, where it is now)."""

    own: Piece
    other: Piece
    difference: float
    changes: tuple[tuple[str, str, float, Point, Point], ...] = ()


def trued(
    own: Piece,
    edges: tuple[str, ...],
    other: Piece,
    other_edges: tuple[str, ...],
    *,
    share: Share = "half",
    hold: Literal["start", "end"] = "start",
    ends: Ends = "both",
    ease: float = 0.0,
    turned: bool | None = None,
) -> Trued:
    """Both edges corrected. `share` says which edge makes up the difference: half each, or one of them. `hold` is the
    end of `edges`, as they are drafted or named, that stays; `ends` where the lines across are drawn smooth. `ease` is
    by how much (mm) the other edge is meant to be longer; `turned` says by hand that it runs the other way.

    Raises `KitError` where the edges differ too much to be trued, where a fold or a dart is in the way, and where
    lines named to be smoothed bend too sharply."""
    if share not in ("half", "own", "other"):
        raise KitError(f"the difference is shared 'half', or all on 'own' or 'other', not '{share}'.", where=own.title)
    if hold not in ("start", "end") or ends not in ("both", "start", "end", "none"):
        raise KitError(
            f"hold='{hold}' and ends='{ends}' do not say an end.",
            where=own.title,
            do="Hold the 'start' or the 'end'; smooth the ends 'both', 'start', 'end' or 'none'.",
        )
    # Both runs may lie on one and the same piece (a tube sewn to itself), so every change is put into `pieces` and
    # the runs are read anew after it: a run kept from before would bring the old piece back.
    pieces = {own.name: own, other.name: other}

    def runs() -> tuple[Folded, Folded]:
        a, b = folded(pieces[own.name], edges), folded(pieces[other.name], other_edges)
        return a, b.reversed() if turn else b

    turn = False
    a, b = runs()
    turn = opposed(drawn(a), drawn(b)) if turned is None else turned
    a, b = runs()
    difference = a.length - b.length
    # The lengths aimed at are `goal` for the own run and `goal + ease` for the other. With ease the two do not become
    # equal: the own run gives up half of it, or none or all, and what is held against the difference is `difference +
    # ease`.
    goal = {"half": (a.length + b.length - ease) / 2, "own": b.length - ease, "other": a.length}[share]
    end = hold == "start"
    if goal + min(ease, 0.0) <= 0 or abs(difference + ease) > _TOO_MUCH * max(a.length, b.length):
        raise KitError(
            message(
                "refusal.true_too_far",
                one=a.spot,
                one_length=measured(a.length),
                other=b.spot,
                other_length=measured(b.length),
                by=measured(abs(difference)),
            ),
            where=own.title,
            do=message("refusal.true_too_far_do"),
        )
    was = (a.length, b.length)
    tips = (_tip(a, end), _tip(b, end))
    for number, size in enumerate((goal, goal + ease)):
        _lengthen(pieces, runs, number, end, size - was[number])
    for at_end in {"both": (False, True), "start": (False,), "end": (True,), "none": ()}[ends]:
        _smooth(pieces, runs, at_end, share, asked=ends != "both", free=at_end == end)
    # What is told is read off at the end, not summed on the way: smoothing may have cut both runs back once more.
    changes = []
    for run, size, tip in zip(runs(), was, tips, strict=True):
        by = run.length - size
        if abs(by) > EQUAL:
            part = run.stretches[-1] if end else run.stretches[0]
            changes.append((run.piece.name, part.edge, by, tip, _tip(run, end)))
    return Trued(pieces[own.name], pieces[other.name], difference, tuple(changes))


def _lengthen(
    pieces: dict[str, Piece], runs: Callable[[], tuple[Folded, Folded]], number: int, end: bool, by: float
) -> None:
    if abs(by) > EQUAL:
        run = runs()[number]
        pieces[run.piece.name] = lengthened(run.piece, run, end, by)


def _tip(run: Folded, end: bool) -> Point:
    part = run.stretches[-1] if end else run.stretches[0]
    path = run.piece.edge(part.edge).path
    return path.end if part.forward == end else path.start


# ---- length -----------------------------------------------------------------------------------------------


def lengthened(piece: Piece, run: Folded, end: bool, by: float) -> Piece:
    """The piece with the run made longer by `by` mm (shorter below zero) at its start or `end`; the edge beside it
    there is drawn to the moved corner."""
    part = run.stretches[-1] if end else run.stretches[0]
    edge = piece.edge(part.edge)
    onward = part.forward == end
    path = edge.path if onward else edge.path.reversed()
    corner = corner_at(run, end)
    if corner is not None and corner.beside == piece.fold:
        along, way = corner.along, _leaving(piece, corner)
        if abs(along.dot(way)) > 0.1:
            raise KitError(
                message("refusal.true_fold", edge=named_edge(edge)),
                where=piece.title,
                do=message("refusal.true_fold_do"),
            )
    if by < 0:
        if part.length + by < 5.0:
            raise KitError(
                message("refusal.true_take_off", by=measured(-by), edge=named_edge(edge), left=measured(part.length)),
                where=piece.title,
                do=message("refusal.true_take_off_do"),
            )
        new = path.between(0.0, path.length + by)
    else:
        new = path.extended(by)
    moved = new.end
    drawn_edge = new if onward else new.reversed()
    shift = 0.0 if onward else by
    changed = with_path(piece, edge.name, drawn_edge, _held(shift, drawn_edge.length))
    if corner is None:
        return changed
    return _redrawn(changed, corner.beside, path.end, moved, None)


def _held(shift: float, length: float) -> Callable[[float], float]:
    return lambda d: min(max(d + shift, 0.0), length)


# ---- the line across --------------------------------------------------------------------------------------


def _leaving(piece: Piece, corner: CornerAt) -> Vector:
    """The direction in which the edge beside a corner leaves it, as drafted."""
    path = piece.edge(corner.beside).path
    return path.start_tangent if corner.before != corner.beside else path.end_tangent * -1.0


def _smooth(
    pieces: dict[str, Piece],
    runs: Callable[[], tuple[Folded, Folded]],
    end: bool,
    share: Share,
    *,
    asked: bool,
    free: bool,
) -> None:
    """Bends the lines across one end so that their two angles add up to a straight one. Where they come to a point
    at a `free` end, both edges are cut back (or let down) by as much as one even curve needs."""
    a, b = runs()
    one, two = corner_at(a, end), corner_at(b, end)
    if one is None or two is None or one.declared(a.piece) or two.declared(b.piece):
        return
    if one.beside == a.piece.fold or two.beside == b.piece.fold:
        return
    total = math.degrees(one.angle + two.angle)
    off = 180.0 - total
    if abs(off) < SMOOTH:
        return
    if not _AWAY[0] <= total <= _AWAY[1] or abs(off) > _SHARP:
        if not asked:
            return  # beside it lie seams of their own, or a corner meant to be one: the proof tells of it
        raise KitError(
            message(
                "refusal.true_sharp",
                one=named_edge(a.piece.edge(one.beside)),
                other=named_edge(b.piece.edge(two.beside)),
                degrees=round(total),
            ),
            where=a.piece.title,
            do=message("refusal.true_sharp_do"),
        )
    weights = {"half": (0.5, 0.5), "own": (1.0, 0.0), "other": (0.0, 1.0)}[share]
    reach = [_reach(run, corner, off * w) for run, corner, w in ((a, one, weights[0]), (b, two, weights[1])) if w]
    if free and share == "half" and abs(off) > _POINTED:
        # Two lines that meet at a point are to become one even curve within `reach` of it. An arc that touches both
        # lines at that distance and turns by `off` passes the point at reach * tan(off / 4); the seam stands at an
        # angle to the line, so along the seam it is that much more. Both edges give it up alike, and so still agree.
        back = min(reach) * math.tan(math.radians(off) / 4) / max(math.sin(one.angle), 0.5)
        _lengthen(pieces, runs, 0, end, -back)
        _lengthen(pieces, runs, 1, end, -back)
        a, b = runs()
        one, two = corner_at(a, end), corner_at(b, end)
        assert one is not None and two is not None
        off = 180.0 - math.degrees(one.angle + two.angle)
    for number, weight in enumerate(weights):
        if not weight:
            continue
        run = runs()[number]
        pieces[run.piece.name] = bent(run, end, off * weight, min(reach))


def bent(run: Folded, end: bool, degrees: float, reach: float | None = None) -> Piece:
    """The piece of the run with the line across its start or `end` bent there, so that the corner between the two opens
    by so many degrees; within `reach` mm it runs into its old course. A run that ends within its edge has none and
    stays as it is. `KitError` where there is no room to bend it."""
    corner = corner_at(run, end)
    if corner is None:
        return run.piece
    turn = math.radians(degrees)
    left = run.cloth_left != end  # the cloth lies to the left of the run as it leaves the corner
    way = _leaving(run.piece, corner).rotated(turn if left else -turn)
    tip = _tip(run, end)
    far = _reach(run, corner, degrees) if reach is None else reach
    return _redrawn(run.piece, corner.beside, tip, tip, way, far)


def _reach(run: Folded, corner: CornerAt, degrees: float) -> float:
    """How far along the line across it is bent."""
    length = run.piece.edge(corner.beside).path.length
    far = _room(run.piece, corner.beside, length, corner.before != corner.beside)
    return min(max(_BEND, length * min(0.45, math.radians(abs(degrees)) * 2)), length * 0.45, far)


def _redrawn(piece: Piece, edge: str, old: Point, new: Point, way: Vector | None, reach: float = _BEND) -> Piece:
    """The piece with the edge that began (or ended) at `old` begun at `new` instead, leaving in the direction `way`
    (its own where None) and running into its old line `reach` mm along without a corner."""
    path = piece.edge(edge).path
    onward = path.start.distance(old) <= path.end.distance(old)
    line = path if onward else path.reversed()
    gone = line.start.distance(new)
    ruled = way is None and line.is_straight and not _folds(piece, edge) and line.end.distance(new) > 5.0
    ruled = ruled and line.length <= _BEND  # a longer one has room to bend: it would be another line than was drawn
    if way is None:
        if gone < 1e-9:
            return piece
        slid = _slid(line, new)
        if slid is not None:
            return _laid(piece, edge, line, slid, onward, 0.0)
        way = line.start_tangent
    reach = min(max(reach, gone * 5), line.length * 0.45, _room(piece, edge, line.length, onward))
    if reach < max(5.0, gone * 1.5):
        if ruled:  # too short to run into its old course: a straight line is ruled anew from corner to corner
            return _laid(piece, edge, line, Path.line(new, line.end), onward, line.length)
        raise KitError(
            message("refusal.true_no_room", edge=named_edge(piece.edge(edge)), reach=measured(max(reach, 0.0))),
            where=piece.title,
            do=message("refusal.true_no_room_do"),
        )
    bend = Path.through((new, line.at(reach)), way, line.tangent_at(reach))
    return _laid(piece, edge, line, bend.joined(line.between(reach, line.length)), onward, reach)


def _slid(line: Path, new: Point) -> Path | None:
    """A straight first stretch simply begun nearer or farther, where the new corner lies on it."""
    first = Path((line.curves[0],))
    if not first.is_straight:
        return None
    way = first.start_tangent
    if abs(way.cross(new - line.start)) > 1e-6:
        return None
    step = (new - line.start).dot(way)
    if step >= first.length:
        return None
    return line.between(step, line.length) if step > 0 else line.reversed().extended(-step).reversed()


def _room(piece: Piece, edge: str, length: float, onward: bool) -> float:
    """How far along the edge, from the end in question, the first dart or pleat opens."""
    folds = _folds(piece, edge)
    return min((start if onward else length - end for start, end in folds), default=length) - 1.0


def _folds(piece: Piece, edge: str) -> list[tuple[float, float]]:
    """(start, end) of the darts and pleats that open on an edge."""
    folds = [(d.start, d.end) for d in piece.darts if d.edge == edge]
    return folds + [(start, end) for start, end, _ in stretches(piece, edge)]


def _laid(piece: Piece, edge: str, line: Path, drawn_line: Path, onward: bool, reach: float) -> Piece:
    """The edge redrawn; what is marked on it keeps its distance from the end that stays."""
    more = drawn_line.length - line.length
    size = drawn_line.length

    def along(distance: float) -> float:
        if distance >= reach:
            return distance + more
        return distance * (reach + more) / reach

    def there(distance: float) -> float:
        found = along(distance) if onward else size - along(line.length - distance)
        return min(max(found, 0.0), size)

    return with_path(piece, edge, drawn_line if onward else drawn_line.reversed(), there)
