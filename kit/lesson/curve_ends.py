"""What an author says of the two ends of a curve ("square to the centre", "into the side, 12 cm along it"), read as
directions of travel. Which side a curve takes is decided in `curving.py`; here the lines and places are looked up.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from kit.diagnostic import Value, measured, message
from kit.errors import KitError
from kit.geometry import Path, Point, Vector, bent_clear, rounded, tightest_of
from kit.lesson.curving import EndWay, along_way, cloth_side, curve, double_back, square_way
from kit.lesson.headings import OpenSheet, distance, heading, said_toward
from kit.units import Length, Size

_STRIDE = 10.0  # mm along the other line between places that are tried
_FINE = 0.1  # mm


class LineWithEnds(Protocol):
    """A line on a piece: what it is called, and the line it was squared from, where it was."""

    @property
    def sheet(self) -> OpenSheet: ...

    @property
    def path(self) -> Path: ...

    @property
    def told(self) -> Value: ...

    @property
    def beside(self) -> Path | None: ...


def way_at(
    end: Point,
    chord: Vector,
    sheet: OpenSheet,
    *,
    square: LineWithEnds | None,
    along: LineWithEnds | None,
    toward: str,
    arriving: bool = False,
) -> EndWay:
    """The direction of travel at one end of a curve. `chord` leads from its start to its end at either end, because
    an arrival is told as the way the pen moves there, not as the way back into the curve."""
    line = square or along
    said = said_toward(toward, sheet, end)
    if line is None:
        if not isinstance(said, Vector):
            if said:
                raise KitError(f"toward={toward!r} needs a line.", do="Name the line it is square to.")
            return EndWay(chord.unit())
        return EndWay(said, sure=True)
    tangent = line.path.tangent_at(line.path.nearest(end))
    if square is None:
        return along_way(tangent, chord, said, line.told)
    return square_way(tangent.left(), chord, _cloth_side(line, end), said, line.told, arriving=arriving)


def curve_into(
    line: LineWithEnds,
    other: LineWithEnds,
    at: Size,
    fullness: float,
    toward: str,
    least_radius: Size | None = None,
    at_most: Size | None = None,
) -> Path:
    """From the end of `line`, square to it, into `other` without a corner, `at` this far along it; with `least_radius`
    as much farther, to `at_most`, as a curve that bends no tighter needs."""
    size = distance(at, message("refusal.here", place=other.told))
    if size > other.path.length:
        raise KitError(
            message("refusal.join_below", line=other.told, at=measured(size), length=measured(other.path.length)),
            do=message("refusal.join_below_do"),
        )
    # A line whose end lies beyond the other one has nothing left to run into: the curve would have to come back.
    below = other.path.nearest(line.path.end) > other.path.length - 1e-3 and other.path.length > 1.0
    if below and least_radius is None:
        raise KitError(
            message("refusal.reaches_below", line=line.told, length=measured(line.path.length), other=other.told),
            do=message("refusal.reaches_below_do", line=line.told, other=other.told),
        )
    if least_radius is None:
        join = other.path.at(float(size))
        line.sheet.note(size, other.path.start, join, other.path.between(0.0, size) if size > 1e-6 else None)
        return _curve(line, other, join, other.path.tangent_at(float(size)), fullness, toward)
    most = other.path.length if at_most is None else min(float(distance(at_most, "at_most")), other.path.length)
    path = _roomy(line, other, (float(size), most), fullness, toward, distance(least_radius, "least_radius"))
    far = Length(reach) if (reach := other.path.nearest(path.end)) > float(size) + 0.05 else size
    along = other.path.between(0.0, far) if far > 1e-6 else None
    line.sheet.note(far, other.path.start, path.end, along, within=(least_radius, at_most))
    return path


def _roomy(
    line: LineWithEnds, other: LineWithEnds, at: tuple[float, float], fullness: float, toward: str, least: Length
) -> Path:
    """A curve no tighter than `least`: the smooth one, at the first place along `other` between the two `at` where it
    has room; where it has none, a part of a circle between two straight runs."""
    end, normal = line.path.end, line.path.normal_at(line.path.length)
    said, cloth = said_toward(toward, line.sheet, end), _cloth_side(line, end)

    def smooth(place: float) -> Path | None:
        try:
            path = _curve(line, other, other.path.at(place), other.path.tangent_at(place), fullness, toward)
        except KitError:
            return None
        return path if tightest_of(path) >= float(least) else None

    def round_about(place: float) -> Path | None:
        join = other.path.at(place)
        way = square_way(normal, join - end, cloth, said, line.told)
        found = rounded(end, way.first, join, other.path.tangent_at(place))
        return found[0] if found is not None and found[1] >= float(least) else None

    for drawn in (smooth, round_about):
        path = _first(drawn, *at)
        if path is not None:
            return path
    raise KitError(
        message("refusal.no_room_to_round", line=line.told, other=other.told, radius=measured(least)),
        do=message("refusal.no_room_to_round_do", line=line.told, other=other.told),
    )


def _first(drawn: Callable[[float], Path | None], at: float, most: float) -> Path | None:
    """What is drawn at the first place from `at` on where it can be, to 0.1 mm."""
    below: float | None = None
    places = [at + _STRIDE * step for step in range(max(0, int((most - at) / _STRIDE)) + 1)]
    for place in (*places, most) if places[-1] < most else places:
        found = drawn(place)
        if found is not None:
            break
        below = place
    else:
        return None
    while below is not None and place - below > _FINE:
        middle = (below + place) / 2
        nearer = drawn(middle)
        if nearer is None:
            below = middle
        else:
            place, found = middle, nearer
    return found


def curve_square_to(line: LineWithEnds, other: LineWithEnds, at: Size, fullness: float, toward: str) -> Path:
    """From the end of `line`, square to it, to meet `other` square, `at` this far along it."""
    size = distance(at, message("refusal.here", place=other.told))
    join = other.path.at(min(float(size), other.path.length))
    arrive = other.path.normal_at(float(size))
    if arrive.dot(join - line.path.end) < 0:
        arrive = arrive * -1.0
    return _curve(line, other, join, arrive, fullness, toward)


def _cloth_side(line: LineWithEnds, at: Point) -> float:
    """On which side of a line, at its end `at`, the cloth lies. A line squared from another that is no edge yet is
    judged with that one too, or nothing would tell the side."""
    beside = () if line.beside is None else (line.beside,)
    return cloth_side(line.path, at, (*line.sheet.edge_paths(), *beside))


def _curve(line: LineWithEnds, other: LineWithEnds, join: Point, arrive: Vector, fullness: float, toward: str) -> Path:
    end, chord = line.path.end, join - line.path.end
    said = said_toward(toward, line.sheet, end)
    way = square_way(line.path.normal_at(line.path.length), chord, _cloth_side(line, end), said, line.told)
    # How far it may arrive against the straight way to the join: an author who says `toward` has thought of the turn.
    most = -0.5 if toward else -0.2
    if arrive.dot(chord) < most * chord.length or (not way.sure and way.first.dot(chord) <= 0):
        what, do = double_back(line.told, other.told, way.first)
        raise KitError(what, do=do)
    return Path.of(curve(end, way, join, EndWay(arrive, sure=bool(toward)), fullness))


def cleared(begin: Point, along: Vector, size: Length, other: LineWithEnds, by: Length) -> Path:
    """The line of this `size` from `begin`, setting out `along`, bent outward until it ends `by` outside `other`.
    `KitError` when no bend brings it there."""
    out = heading("out", other.sheet, begin)
    path = bent_clear(begin, along, float(size), other.path, out, float(by))
    if path is None:
        raise KitError(
            message("refusal.never_clear", size=measured(size), line=other.told, by=measured(by)),
            do=message("refusal.never_clear_do", line=other.told),
        )
    return path
