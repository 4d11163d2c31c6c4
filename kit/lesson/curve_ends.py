"""What an author says of the two ends of a curve ("square to the centre", "into the side, 12 cm along it"), read as
directions of travel. Which side a curve takes is decided in `curving.py`; here the lines and places are looked up.
"""

from __future__ import annotations

from typing import Protocol

from kit.diagnostic import Value, measured, message
from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.lesson.curving import Way, along_way, cloth_side, curve, double_back, square_way
from kit.lesson.headings import Paper, distance, said_toward
from kit.units import Size


class Drawn(Protocol):
    """A line on a piece: what it is called, and the line it was squared from, where it was."""

    @property
    def sheet(self) -> Paper: ...

    @property
    def path(self) -> Path: ...

    @property
    def told(self) -> Value: ...

    @property
    def beside(self) -> Path | None: ...


def way_at(
    end: Point,
    chord: Vector,
    sheet: Paper,
    *,
    square: Drawn | None,
    along: Drawn | None,
    toward: str,
    arriving: bool = False,
) -> Way:
    """The direction of travel at one end of a curve. `chord` leads from its start to its end at either end, because
    an arrival is told as the way the pen moves there, not as the way back into the curve."""
    line = square or along
    said = said_toward(toward, sheet, end)
    if line is None:
        if not isinstance(said, Vector):
            if said:
                raise KitError(f"toward={toward!r} needs a line.", do="Name the line it is square to.")
            return Way(chord.unit())
        return Way(said, sure=True)
    tangent = line.path.tangent_at(line.path.nearest(end))
    if square is None:
        return along_way(tangent, chord, said, line.told)
    return square_way(tangent.left(), chord, _cloth_side(line, end), said, line.told, arriving=arriving)


def curve_into(line: Drawn, other: Drawn, at: Size, fullness: float, toward: str) -> Path:
    """From the end of `line`, square to it, into `other` without a corner, `at` this far along it."""
    size = distance(at, message("refusal.here", place=other.told))
    if size > other.path.length:
        raise KitError(
            message("refusal.join_below", line=other.told, at=measured(size), length=measured(other.path.length)),
            do=message("refusal.join_below_do"),
        )
    # A line whose end lies beyond the other one has nothing left to run into: the curve would have to come back.
    if other.path.nearest(line.path.end) > other.path.length - 1e-3 and other.path.length > 1.0:
        raise KitError(
            message("refusal.reaches_below", line=line.told, length=measured(line.path.length), other=other.told),
            do=message("refusal.reaches_below_do", line=line.told, other=other.told),
        )
    join = other.path.at(float(size))
    line.sheet.note(size, other.path.start, join, other.path.between(0.0, size) if size > 1e-6 else None)
    return _curve(line, other, join, other.path.tangent_at(float(size)), fullness, toward)


def curve_square_to(line: Drawn, other: Drawn, at: Size, fullness: float, toward: str) -> Path:
    """From the end of `line`, square to it, to meet `other` square, `at` this far along it."""
    size = distance(at, message("refusal.here", place=other.told))
    join = other.path.at(min(float(size), other.path.length))
    arrive = other.path.normal_at(float(size))
    if arrive.dot(join - line.path.end) < 0:
        arrive = arrive * -1.0
    return _curve(line, other, join, arrive, fullness, toward)


def _cloth_side(line: Drawn, at: Point) -> float:
    """On which side of a line, at its end `at`, the cloth lies. A line squared from another that is no edge yet is
    judged with that one too, or nothing would tell the side."""
    beside = () if line.beside is None else (line.beside,)
    return cloth_side(line.path, at, (*line.sheet.edge_paths(), *beside))


def _curve(line: Drawn, other: Drawn, join: Point, arrive: Vector, fullness: float, toward: str) -> Path:
    end, chord = line.path.end, join - line.path.end
    said = said_toward(toward, line.sheet, end)
    way = square_way(line.path.normal_at(line.path.length), chord, _cloth_side(line, end), said, line.told)
    # How far it may arrive against the straight way to the join: an author who says `toward` has thought of the turn.
    most = -0.5 if toward else -0.2
    if arrive.dot(chord) < most * chord.length or (not way.sure and way.first.dot(chord) <= 0):
        what, do = double_back(line.told, other.told, way.first)
        raise KitError(what, do=do)
    return Path.of(curve(end, way, join, Way(arrive, sure=bool(toward)), fullness))
