"""Parallels of whole paths: each curve is moved aside, then neighbours are joined again, carried on to a
mitre at outer corners and trimmed at inner ones."""

from __future__ import annotations

import math
from itertools import pairwise

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry.curve import Curve
from kit.geometry.line import Line
from kit.geometry.meet import meet_lines
from kit.geometry.path import Path
from kit.geometry.point import TOLERANCE, Point, place

_SHARPEST = math.radians(170.0)
_JOG = 1.0  # mm: what is shorter is not seen in a picture
_SHOWN = 0.3  # mm that straight bits may lie beside a curve, there
_LOOKED = 200  # places of a parallel that passes a part over, at which its distance is measured


def parallel(path: Path, d: float) -> Path:
    """The parallel of `path`, `d` mm to the LEFT of travel (negative: right), mitred at outer corners and trimmed at
    inner ones; of a closed path, closed again (it then starts in the middle of the first curve). `KitError` where a
    curve is too tight or a part too short for it.

    >>> from kit.geometry import Path, Point
    >>> parallel(Path.line(Point(0, 0), Point(100, 0)), 15.0).start
    Point(x=0.0, y=15.0)
    """
    d = float(d)
    if abs(d) < 1e-12:
        return path
    curves = [curve for curve in path.curves if curve.length > 1e-9]
    if not curves:
        raise KitError(message("refusal.no_parallel"), where=place(path.start), do=message("refusal.move_end_do"))
    # A closed path is begun in the middle of its first curve: then its old corner is a joint like any other, and both
    # loose ends lie on one smooth curve, where they meet without being joined.
    closed = path.is_closed
    if closed:
        first, second = curves[0].split(curves[0].t_at(curves[0].length / 2))
        curves = [second, *curves[1:], first]
    done = Path(curves[0].parallel(d))
    before, passed = curves[0], None
    for curve in curves[1:]:
        further = _joined(done, Path(curve.parallel(d)), before, curve, d)
        if further is None:
            # Shorter than the parallel lies aside, it vanishes at an inner corner, as the lap beside a button edge does
            # in the facing that runs round both: what follows it is trimmed against what lies before it.
            passed = passed or curve
            continue
        done, before = further, curve
    if passed and (before is not curves[-1] or not _keeps_off(done, path, d)):
        raise _too_short(d, passed.start)
    if closed and not done.start.close_to(done.end):
        raise _too_short(d, path.start)
    return done


def beside(path: Path, d: float) -> Path:
    """What a picture draws for `parallel`: the same where there is one. Where a jog of the line is shorter than what
    can be followed (a dart that lies shut in it, two curves that end a hair apart), the jog is passed over, and each
    place of the line moved square to it.

    >>> from kit.geometry import Line, Path, Point
    >>> there, shut, away = Point(0, 0), Point(50, 0), Point(100, 0)
    >>> jog = Path.of(Line(there, shut), Line(shut, Point(50, 0.2)), Line(Point(50, 0.2), shut), Line(shut, away))
    >>> beside(jog, -10.0).end
    Point(x=100.0, y=-10.0)
    """
    try:
        return parallel(path, d)
    except KitError:
        pass
    kept = [path.start]
    for curve in path.curves:
        kept += [point for point in curve.points(_SHOWN)[1:] if point.distance(kept[-1]) > _JOG]
    kept[1 if len(kept) == 1 else -1 :] = [path.end]  # the line ends where it ended, whatever was passed over
    inner = [(after - before).unit() for before, after in zip(kept, kept[2:], strict=False)]
    ways = [path.start_tangent, *inner, path.end_tangent]
    moved = [at + way.left() * float(d) for at, way in zip(kept, ways, strict=True)]
    return Path(tuple(Line(one, two) for one, two in pairwise(moved)))


def _keeps_off(done: Path, path: Path, d: float) -> bool:
    """Whether all of the parallel lies as far from the path as it should, and nowhere nearer."""
    places = (done.at(done.length * share / _LOOKED) for share in range(_LOOKED + 1))
    return all(path.distance_to(place) > abs(d) - 5 * TOLERANCE for place in places)


def _joined(done: Path, run: Path, before: Curve, after: Curve, d: float) -> Path | None:
    """The parallel with the next part's; None where that part is too short to be met at an inner corner."""
    gap = done.end.distance(run.start)
    if gap <= TOLERANCE / 2:
        return done.joined(run)
    corner = after.start
    out, into = before.tangent(1.0), after.tangent(0.0)
    turn = out.turn_to(into)
    # To the left of a path that turns right (or the other way about) the parallels gape and are carried on to a
    # point; on the inside of the turn they run across each other, and what lies beyond the crossing is cut off.
    if turn * d < 0:  # outer corner
        if abs(turn) > _SHARPEST:
            raise KitError(
                message("refusal.turns_back", degrees=round(math.degrees(abs(turn)))),
                where=place(corner),
                do=message("refusal.turns_back_do"),
            )
        tip = meet_lines(done.end, out, run.start, into)
        if tip is None:
            tip = done.end.mid(run.start)
        return Path.of(*_carried_on(done, tip).curves, *_begun_at(run, tip).curves)
    meetings = done.meetings(run)
    if meetings:
        # The crossing that leaves the least off: nearest to the corner.
        _, d0, d1 = min(meetings, key=lambda m: (done.length - m[1]) + m[2])
        if d0 > 1e-6 and d1 < run.length - 1e-6:
            return Path.of(done.between(0.0, d0), run.between(d1, run.length))
    if gap < 5 * TOLERANCE:
        return Path.of(*done.curves, Line(done.end, run.start), *run.curves)
    return None


def _carried_on(path: Path, tip: Point) -> Path:
    last = path.curves[-1]
    if isinstance(last, Line):
        return Path((*path.curves[:-1], Line(last.start, tip)))
    return Path((*path.curves, Line(last.end, tip)))


def _begun_at(path: Path, tip: Point) -> Path:
    first = path.curves[0]
    if isinstance(first, Line):
        return Path((Line(tip, first.end), *path.curves[1:]))
    return Path((Line(tip, first.start), *path.curves))


def _too_short(d: float, corner: Point) -> KitError:
    return KitError(
        message("refusal.corner_short", by=measured(abs(d))),
        where=place(corner),
        do=message("refusal.corner_short_do", by=measured(abs(d))),
    )
