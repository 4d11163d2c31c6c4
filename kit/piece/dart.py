"""Darts: a wedge folded out of an edge so that flat cloth follows the body.

The edge's path runs as it is drawn on paper, through the dart's mouth. Between the two legs lies the cap, the
little roof that makes the edge run true once the dart is folded and pressed (`cap`). What is sewn is the path
less the mouths (`sewn_length`), and `closed_edge` is the edge with its darts folded shut.
"""

from __future__ import annotations

from dataclasses import replace

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.geometry import Line, Motion, Path, Point
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece
from kit.piece.pleat import closing as pleat_closing
from kit.piece.pleat import taken_up

LEGS_AGREE = 0.5
"""How much the legs of a dart may differ in mm."""
_SAME = 0.05  # mm that the end of a leg may lie beside a line drawn again through it


def dart_of(piece: Piece, name: str) -> Dart:
    """The dart of that name; `KitError` with the nearest name otherwise."""
    for dart in piece.darts:
        if dart.name == name:
            return dart
    raise KitError(
        f"there is no dart '{name}'.", where=piece.title, do=near(name, [d.name for d in piece.darts]) or "Draw it."
    )


def meant(piece: Piece, name: str) -> str:
    """The name of the dart that is called `name` in a lesson for several: where one is spared that others have beside
    it ("waist_dart_2"), the only one ("waist_dart") is the first of them as well ("waist_dart_1")."""
    only = name.removesuffix("_1")
    names = {dart.name for dart in piece.darts}
    return only if name not in names and only in names and f"{only}_2" in piece.spared else name


def darts_on(piece: Piece, edge: str) -> tuple[Dart, ...]:
    """The darts that open on an edge, in order along it."""
    return tuple(sorted((d for d in piece.darts if d.edge == edge), key=lambda d: d.start))


def darts_lying(piece: Piece) -> tuple[Dart, ...]:
    """The darts that lie on their edge; the proof tells of the others."""
    return tuple(
        d
        for d in piece.darts
        if piece.has_edge(d.edge) and -1e-6 <= d.start < d.end <= piece.edge(d.edge).path.length + 1e-6
    )


def mouth(piece: Piece, dart: Dart) -> tuple[Point, Point]:
    """Where the two legs meet the edge. `KitError` when the dart does not lie on its edge."""
    path = piece.edge(dart.edge).path
    if not -1e-6 <= dart.start < dart.end <= path.length + 1e-6:
        raise KitError(
            message(
                "refusal.dart_off",
                dart=dart.label,
                start=measured(dart.start),
                end=measured(dart.end),
                edge=named_edge(piece.edge(dart.edge)),
                length=measured(path.length),
            ),
            where=piece.title,
            do=message("refusal.dart_off_do"),
        )
    return path.at(max(dart.start, 0.0)), path.at(min(dart.end, path.length))


def left_where_they_lie(before: Piece, after: Piece) -> Piece:
    """`after` is `before` with edges drawn again: a dart whose edge still runs through both ends of its legs opens
    there, wherever the edge begins by now. A dart whose ends the edge has left keeps its distances along it."""
    darts = tuple(_where_it_lay(before, after, dart) for dart in after.darts)
    return after if darts == after.darts else replace(after, darts=darts)


def _where_it_lay(before: Piece, after: Piece, dart: Dart) -> Dart:
    if not (before.has_edge(dart.edge) and after.has_edge(dart.edge)):
        return dart
    old, new = before.edge(dart.edge).path, after.edge(dart.edge).path
    if old == new or not -1e-6 <= dart.start < dart.end <= old.length + 1e-6:
        return dart
    legs = mouth(before, dart)
    start, end = (new.nearest(leg) for leg in legs)
    away = max(new.at(at).distance(leg) for at, leg in zip((start, end), legs, strict=True))
    return replace(dart, start=start, end=end) if away < _SAME and start < end else dart


def mouth_path(piece: Piece, dart: Dart) -> Path:
    """The edge between the legs: the cap once it is drawn."""
    mouth(piece, dart)
    path = piece.edge(dart.edge).path
    return path.between(max(dart.start, 0.0), min(dart.end, path.length))


def intake(piece: Piece, dart: Dart) -> float:
    """How much the dart takes up at its mouth: straight across from leg to leg, mm."""
    one, two = mouth(piece, dart)
    return one.distance(two)


def sewn_point(piece: Piece, dart: Dart) -> Point:
    """Where the stitching ends: the apex, or `short` mm before it on the dart's middle line."""
    one, two = mouth(piece, dart)
    return dart.apex.lerp(one.mid(two), dart.short / dart.apex.distance(one.mid(two))) if dart.short else dart.apex


def depth(piece: Piece, dart: Dart) -> float:
    """From the sewn point to the middle of the mouth, mm."""
    one, two = mouth(piece, dart)
    return sewn_point(piece, dart).distance(one.mid(two))


def legs(piece: Piece, dart: Dart) -> tuple[Path, Path]:
    """The two stitching lines, from the sewn point to the edge."""
    one, two = mouth(piece, dart)
    point = sewn_point(piece, dart)
    return Path.line(point, one), Path.line(point, two)


def fold_line(piece: Piece, dart: Dart) -> Path:
    """The dart's fold: from the sewn point through the middle of the mouth to the edge or the tip of the cap."""
    one, two = mouth(piece, dart)
    point = sewn_point(piece, dart)
    middle = one.mid(two)
    way = (middle - point).unit()
    ray = Path.line(point + way * 1.0, middle + way * (point.distance(middle) + one.distance(two)))
    found = ray.crossings(mouth_path(piece, dart))
    return Path.line(point, max(found, key=point.distance) if found else middle)


def closing(piece: Piece, dart: Dart) -> Motion:
    """The turn about the sewn point that lays the second leg on the first. `KitError` when the legs differ."""
    one, two = legs(piece, dart)
    if abs(one.length - two.length) > LEGS_AGREE:
        raise KitError(
            message("refusal.dart_legs", dart=dart.label, one=measured(one.length), other=measured(two.length)),
            where=piece.title,
            do=message("refusal.dart_legs_do"),
        )
    return Motion.matching(two.start, two.end, one.start, one.end)


def mouths_length(piece: Piece, edge: str, start: float = 0.0, end: float | None = None) -> float:
    """mm of an edge's path, between two distances along it, that lie in the mouths of darts or are folded in pleats
    and tucks."""
    high = piece.edge(edge).path.length if end is None else end
    return sum(max(0.0, min(b, high) - max(a, start)) for a, b in mouths(piece, edge))


def mouths(piece: Piece, edge: str) -> tuple[tuple[float, float], ...]:
    """(start, end) in mm along an edge's path of every dart, pleat and tuck sewn there, in order."""
    found = [(d.start, d.end) for d in piece.darts if d.edge == edge]
    return tuple(sorted(found + [(a, b) for a, b, _ in taken_up(piece, edge)]))


def sewn_length(piece: Piece, edge: str) -> float:
    """The edge's length with its darts, pleats and tucks sewn: its path less their mouths, mm.

    >>> from kit import darted_bodice_block, workshop_chart
    >>> front, _ = darted_bodice_block(workshop_chart()["W4"])
    >>> (dart,) = darts_on(front, "waist")
    >>> round(front.edge("waist").path.length), round(intake(front, dart)), round(sewn_length(front, "waist"))
    (223, 34, 189)
    """
    return piece.edge(edge).path.length - mouths_length(piece, edge)


def closed_parts(piece: Piece, edge: str) -> tuple[Path, ...]:
    """The parts of an edge between its darts, pleats and tucks, each laid where it comes with them folded shut."""
    return tuple(part for _, _, part in closed_stretches(piece, edge))


def closed_stretches(piece: Piece, edge: str) -> tuple[tuple[float, float, Path], ...]:
    """The same parts, each with where it starts and ends along the edge as drawn."""
    path = piece.edge(edge).path
    shut = [(d.start, d.end, closing(piece, d)) for d in darts_on(piece, edge)]
    for start, end, pleat in taken_up(piece, edge):
        turn = pleat_closing(piece, pleat)
        # Along the far edge the pleat's second line comes first.
        shut.append((start, end, turn if pleat.edge == edge else turn.inverse()))
    motion, at = Motion.identity(), 0.0
    parts: list[tuple[float, float, Path]] = []
    for start, end, turn in sorted(shut, key=lambda item: item[0]):
        if start - at > 1e-6:
            parts.append((at, start, path.between(at, start).moved(motion)))
        # Each fold is shut where it was drafted, and then carried with all that came before it.
        motion = turn.then(motion)
        at = end
    if path.length - at > 1e-6:
        parts.append((at, path.length, path.between(at, path.length).moved(motion)))
    return tuple(parts)


def closed_edge(piece: Piece, edge: str) -> Path:
    """The edge with its darts and pleats folded shut, the first part lying as drawn. `KitError` where legs differ."""
    parts = closed_parts(piece, edge)
    joined = parts[0]
    for part in parts[1:]:
        gap = joined.end - part.start
        if gap.length > 1e-9:  # legs within tolerance but not exactly alike
            part = part.moved(Motion.translation(gap))
        joined = joined.joined(part)
    return joined


def cap(piece: Piece, dart: Dart) -> Path:
    """The cap, from leg to leg: the line to cut through the folded dart so that the edge runs on under it.

    Pressed toward the start, the folded wedge lies under the edge before the dart; that edge's mirror image in the
    first leg, as far as the fold, and the same again beyond the fold. `KitError` where no edge lies on that side.
    """
    path = piece.edge(dart.edge).path
    one, two = mouth(piece, dart)
    point = sewn_point(piece, dart)
    middle = one.mid(two)
    fold = Line(point, middle)
    wide = one.distance(two)
    # The wedge reaches over the edge by half the mouth; twice the mouth is enough to mirror, unless the next fold
    # begins sooner.
    others = [(a, b) for a, b in mouths(piece, dart.edge) if (a, b) != (dart.start, dart.end)]
    if dart.pressed == "start":
        low = max((b for _, b in others if b <= dart.start), default=0.0)
        beside, leg = _part(path, max(low, dart.start - 2 * wide), dart.start), Line(point, one)
    else:
        high = min((a for a, _ in others if a >= dart.end), default=path.length)
        beside, leg = _part(path, dart.end, min(high, dart.end + 2 * wide)), Line(point, two)
    if beside is None:
        raise KitError(
            message("refusal.fold_no_edge", fold=dart.label, edge=named_edge(piece.edge(dart.edge))),
            where=piece.title,
            do=message("refusal.fold_no_edge_do"),
        )
    folded = beside.mirrored(leg)
    near_leg = folded.reversed() if dart.pressed == "start" else folded  # from the leg outward
    way = (middle - point).unit()
    ray = Path.line(point, point + way * (point.distance(middle) * 2 + 4 * wide))
    half = near_leg.to(ray)
    if half.end.distance(middle) > 2 * wide:
        raise KitError(
            message("refusal.fold_beyond_edge", fold=dart.label),
            where=piece.title,
            do=message("refusal.dart_beyond_do"),
        )
    # The half from the leg to the fold is what shows of one layer; the layer beneath is cut by the same stroke, so
    # opened out it is the mirror image in the fold.
    other = half.mirrored(fold)
    return half.joined(other.reversed()) if dart.pressed == "start" else other.joined(half.reversed())


def _part(path: Path, low: float, high: float) -> Path | None:
    return path.between(low, high) if high - low > 0.5 else None
