"""A dart taken out of a draft without being sewn: its width left in the edge, or taken off at one end of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from kit.diagnostic import message, named_edge
from kit.errors import KitError
from kit.geometry import Cubic, Path, Point
from kit.lesson.redrawn import put
from kit.lesson.slash import with_path
from kit.piece.dart import dart_of, depth, mouth
from kit.piece.piece import Edge, Piece

_NEAR = 0.05


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


def dart_into(piece: Piece, name: str, beside: str) -> Piece:
    """The dart gone and its width taken off where its edge meets `beside`, which runs from there into its old course as
    far from the corner as the dart was deep (common practice, no source): of a waist dart closed into the side seam,
    the side comes in at the waist and leaves the hip as it was.

    Raises `KitError` when the two edges do not meet, when `beside` is the fold, or when another dart opens on what is
    taken off.
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
    low, high = (0.0, long - wide) if at_end else (wide, long)
    _none_cut_away(piece, edge, low, high)
    new = edge.path.between(low, high)
    side, there = _run_in(other.path if at_end else other.path.reversed(), new.end if at_end else new.start, deep)
    if at_end:
        along = there
    else:
        whole, old, side = side.length, other.path.length, side.reversed()

        def along(d: float) -> float:
            return whole - there(old - d)

    return put(piece, {edge.name: new, beside: side}, {edge.name: lambda d: d - low, beside: along})


def _run_in(path: Path, start: Point, deep: float) -> tuple[Path, Callable[[float], float]]:
    """The path from a new start on, back in its old course `deep` along it, and where a place on it lies then."""
    deep = min(deep, path.length * 0.95)
    joint = path.at(deep)
    third = start.distance(joint) / 3
    begins = Cubic(start, start + path.tangent_at(0.0) * third, joint - path.tangent_at(deep) * third, joint)
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
