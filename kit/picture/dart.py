"""How a dart is drawn: its two legs, the fold between them, and the drill mark near its point."""

from __future__ import annotations

from collections.abc import Iterable

from kit.errors import KitError
from kit.geometry import Line, Path, Point, Vector
from kit.picture.drawing import Dot, Item, Stroke, StrokeRole
from kit.picture.lettering import upright
from kit.picture.notes import Note, Standing, around
from kit.picture.place import Scaling
from kit.piece.allowance import CutLine
from kit.piece.dart import depth, fold_line, legs
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece

DRILL = 10.0
"""The drill mark lies this far inside the point, where the stitching covers it (common practice, no source)."""


def on_paper(piece: Piece, dart: Dart, cut: CutLine | None) -> list[Item]:
    """A dart as printed: legs carried to the cut line as notches, fold and drill mark. Nothing for a dart that does
    not lie on its edge (the proof says why)."""
    try:
        one, two = legs(piece, dart)
        fold = fold_line(piece, dart)
    except KitError:
        return []
    name = f"{piece.name}.{dart.name}"
    items: list[Item] = [
        Stroke(one.curves, "stitch", name=name),
        Stroke(two.curves, "stitch", name=name),
        Stroke(fold.curves, "mark", name=f"{name}.fold"),
    ]
    if cut is not None:
        for leg in (one, two):
            met = leg.extended(60.0).crossings(cut.edge(dart.edge))
            if met:
                items.append(Stroke((Line(leg.end, min(met, key=leg.end.distance)),), "notch", name=f"{name}.notch"))
    if depth(piece, dart) > 2 * DRILL:
        items.append(Dot(fold.at(DRILL), "mark", f"{name}.drill"))
    return items


def dart_note(piece: Piece, dart: Dart) -> Note | None:
    """The dart's name, beside the leg whose outer side has more room below or inward of it, or beside the other."""
    try:
        one, two = legs(piece, dart)
    except KitError:
        return None
    leg, other = (one, two) if abs(one.end.x) > abs(two.end.x) or one.end.y < two.end.y else (two, one)

    def places(wide: float, size: float) -> Iterable[Standing]:
        for line, across in ((leg, other), (other, leg)):
            along = line.end_tangent
            out = Vector(-along.y, along.x)
            if out.dot(across.end - line.end) > 0:
                out = out * -1.0
            for far in (0.9, 1.5):
                for share in (0.5, 0.35, 0.65, 0.2):
                    yield line.at(line.length * share) + out * (size * far + 1.0), upright(along.angle)
        yield from around(leg.start, size)(wide, size)

    return Note(dart.label, leg.at(leg.length / 2), places)


def in_step(
    piece: Piece, dart: Dart, role: StrokeRole, put: Scaling | None = None, by: Vector | None = None
) -> list[Item]:
    """A dart in a drafting picture: legs in `role`, fold as a guide, a dot at the point and at the apex."""
    try:
        one, two = legs(piece, dart)
        fold = fold_line(piece, dart)
    except KitError:
        return []

    def curves(path: Path):  # type: ignore[no-untyped-def]
        if put is not None:
            return put.curves(path.curves)
        return path.curves if by is None else tuple(Line(c.start + by, c.end + by) for c in path.curves)

    def point(p: Point) -> Point:
        return put.point(p) if put is not None else p if by is None else p + by

    name = f"{piece.name}.{dart.name}"
    items: list[Item] = [
        Stroke(curves(one), role, name=name),
        Stroke(curves(two), role, name=name),
        Stroke(curves(fold), "guide", name=f"{name}.fold"),
        Dot(point(one.start), "kept" if role != "new" else "new", f"{name}.point"),
    ]
    if dart.short:
        items.append(Dot(point(dart.apex), "kept", f"{name}.apex"))
    return items
