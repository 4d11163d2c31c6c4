"""A dart taken out of a draft without being sewn: its width left in the edge, or taken off at one end of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Cubic, Path, Point
from kit.lesson.redrawn import put
from kit.lesson.slash import with_path
from kit.piece.dart import dart_of, depth, mouth
from kit.piece.piece import Edge, Piece
from kit.piece.pleat import stretches

_NEAR = 0.05
_LEAST = 20.0  # mm the edge beside it must have, up to the next dart or pleat, to be drawn in


def dart_out(piece: Piece, name: str) -> Piece:
    """The dart gone and its mouth ruled straight: the edge keeps its width."""
    dart = dart_of(piece, name)
    one, two = mouth(piece, dart)
    path = piece.edge(dart.edge).path
    parts = [path.between(0.0, dart.start)] if dart.start > _NEAR else []
    parts.append(Path.line(one, two))
    if path.length - dart.end > _NEAR:
        parts.append(path.between(dart.end, path.length))
    shift = one.distance(two) - (dart.end - dart.start)
    piece = replace(piece, darts=tuple(each for each in piece.darts if each.name != name))
    return with_path(piece, dart.edge, Path.of(*parts), lambda d: d + shift if d >= dart.end - _NEAR else d)


def all_darts(piece: Piece, beside: str = "") -> list[str]:
    """The names of all darts of the piece; with `beside` of those on the edges that meet it, nearest to it first."""
    if not beside:
        return [dart.name for dart in piece.darts]
    other = piece.edge(beside).path
    found = []
    for dart in piece.darts:
        path = piece.edge(dart.edge).path
        if dart.edge != beside and path.end.distance(other.start) < _NEAR:
            found.append((path.length - dart.end, dart.name))
        elif dart.edge != beside and path.start.distance(other.end) < _NEAR:
            found.append((dart.start, dart.name))
    return [name for _, name in sorted(found)]


def dart_into(piece: Piece, name: str, beside: str) -> Piece:
    """The dart gone and its width taken off where its edge meets `beside`, which runs from there into its old course as
    far from the corner as the dart was deep, or to the next dart (common practice, no source): of a waist dart closed
    into the side seam, the side comes in at the waist and leaves the hip as it was.

    Raises `KitError` when the two edges do not meet, when `beside` is the fold, or when another dart opens on what is
    taken off, or when one leaves no room beside it.
    """
    dart = dart_of(piece, name)
    one, two = mouth(piece, dart)
    wide, deep = one.distance(two), depth(piece, dart)
    piece = dart_out(piece, name)
    edge, other = piece.edge(dart.edge), piece.edge(beside)
    at_end = edge.path.end.distance(other.path.start) < _NEAR
    if beside == edge.name or not (at_end or edge.path.start.distance(other.path.end) < _NEAR):
        raise KitError(
            message("refusal.dart_not_beside", dart=dart.label, edge=named_edge(other), beside=named_edge(edge)),
            where=piece.title,
            do=message("refusal.dart_not_beside_do", beside=named_edge(edge)),
        )
    if piece.cut is not None and piece.cut.fold == beside:
        raise KitError(
            message("refusal.dart_into_fold", dart=dart.label, edge=named_edge(other)),
            where=piece.title,
            do=message("refusal.dart_into_fold_do"),
        )
    long = edge.path.length
    begins, ends = (0.0, long - wide) if at_end else (wide, long)
    _none_cut_away(piece, edge, begins, ends)
    new = edge.path.between(begins, ends)
    path = other.path if at_end else other.path.reversed()
    folds = [(each.start, each.end) for each in piece.darts if each.edge == beside]
    folds += [(low, high) for low, high, _ in stretches(piece, beside)]
    room = min([low if at_end else path.length - high for low, high in folds], default=path.length * 0.95)
    if room < _LEAST:
        raise KitError(
            message("refusal.true_no_room", edge=named_edge(other), reach=measured(room)),
            where=piece.title,
            do=message("refusal.dart_cut_away_do"),
        )
    side, there = _run_in(path, new.end if at_end else new.start, min(deep, room))
    if at_end:
        along = there
    else:
        whole, old, side = side.length, other.path.length, side.reversed()

        def along(d: float) -> float:
            return whole - there(old - d)

    return put(piece, {edge.name: new, beside: side}, {edge.name: lambda d: d - begins, beside: along})


def _run_in(path: Path, start: Point, deep: float) -> tuple[Path, Callable[[float], float]]:
    """The path from a new start on, back in its old course `deep` along it, and where a place on it lies then."""
    joint = path.at(deep)
    third = start.distance(joint) / 3
    begins = Cubic(start, start + (joint - start) * (1 / 3), joint - path.tangent_at(deep) * third, joint)
    new = Path((begins,)).joined(path.between(deep, path.length))
    first = new.length - (path.length - deep)

    def there(d: float) -> float:
        return d / deep * first if d < deep else d - deep + first

    return new, there


def _none_cut_away(piece: Piece, edge: Edge, low: float, high: float) -> None:
    for each in piece.darts:
        if each.edge == edge.name and (each.start < low or each.end > high):
            raise KitError(
                message("refusal.dart_cut_away", dart=each.label, edge=named_edge(edge)),
                where=piece.title,
                do=message("refusal.dart_cut_away_do"),
            )
