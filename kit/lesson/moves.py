"""Dart moves: darts drawn, moved, split, trued, shortened and turned into fullness.

Each is a pure function from piece to piece. Moving a dart cuts the paper into two parts, turns one of them about
the apex and leaves the part with the fold (or the grainline) where it is; everything on a part goes with it.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Literal

from kit.diagnostic import measured, message, named_edge, number
from kit.errors import KitError
from kit.geometry import Cubic, Line, Motion, Path, Point, Vector
from kit.lesson.slash import JOIN, SAME, STAY, SlashedPart, holds, on_edge, rearranged, slash_line, with_path
from kit.piece.dart import cap, dart_of, mouth, mouth_path
from kit.piece.darts_and_pleats import Dart, Pressed
from kit.piece.piece import Mark, Notch, Piece
from kit.units import both

Way = Literal["pivot", "slash"]


def move_dart(
    piece: Piece,
    name: str,
    to: str,
    at: float,
    *,
    way: Way = "pivot",
    share: float = 1.0,
    new_name: str = "",
    pressed: Pressed | None = None,
) -> Piece:
    """The dart opened at another place instead: `at` mm along the edge `to`.

    "pivot" holds a pin in the apex and turns the draft until the old legs meet; "slash" cuts from the new place to
    the apex and lays leg on leg. Both give the same. `share` below 1 moves a part of the dart, as `new_name`. The
    new mouth is ruled straight: true it afterwards. Raises `KitError` when the slash line cannot be drawn, when the
    legs differ, or when the fold would be cut.
    """
    dart = dart_of(piece, name)
    one, two = mouth(piece, dart)
    apex = dart.apex
    if abs(apex.distance(one) - apex.distance(two)) > JOIN:
        raise KitError(
            message(
                "refusal.legs_differ",
                dart=dart.label,
                by=measured(abs(apex.distance(one) - apex.distance(two)), "exact"),
            ),
            where=piece.title,
            do=message("refusal.legs_differ_do"),
        )
    if not 0 < share <= 1:
        raise KitError(
            message("refusal.dart_share", share=number(share)), where=dart.label, do=message("refusal.share_outside_do")
        )
    place = on_edge(piece, to, at)
    if place.distance(one) < 0.1 or place.distance(two) < 0.1:
        if share == 1:
            return piece
        raise KitError(message("refusal.dart_on_old"), where=piece.title, do=message("refusal.beside_do"))
    # The outline, walked in edge order, falls into two parts that share the apex: `ahead` from the second leg on to
    # the new place, `behind` from there on to the first leg. The old mouth lies between the legs and belongs to
    # neither, so it drops out. `turn` lays the second leg on the first: turning `ahead` by it closes the old mouth
    # and opens the new one in a single motion.
    slash = slash_line(piece, apex, place, name)
    turn = (two - apex).turn_to(one - apex) * share
    ahead = SlashedPart((dart.edge, dart.end), (to, at), STAY, apex)
    behind = SlashedPart((to, at), (dart.edge, dart.start), STAY, apex)
    keep, other = holds(piece, ahead), holds(piece, behind)
    if keep == other == math.inf:
        raise KitError(message("refusal.slash_fold"), where=piece.title, do=message("refusal.other_edge_do"))
    if way == "pivot":
        motion = Motion.rotation(turn, apex)
    else:
        motion = Motion.matching(apex, two, apex, Motion.rotation(turn, apex)(two) if share < 1 else one)
    # The part with the fold or the grainline must not turn: then the other one turns, the opposite way.
    if keep > other:
        motion = motion.inverse() if way == "pivot" else Motion.matching(apex, motion(two), apex, two)
        behind = replace(behind, motion=motion)
    else:
        ahead = replace(ahead, motion=motion)
    cuts = (slash, Path.line(apex, one), Path.line(apex, two))
    rest = replace(piece, darts=tuple(d for d in piece.darts if d.name != name))
    moved, where = rearranged(rest, (ahead, behind), cuts, to)
    opened = ahead.motion(place).distance(behind.motion(place))
    length = piece.edge(to).path.length
    # The new mouth is the line ruled across the gap. At either end of the edge there is no stretch of it on one side,
    # so that the place before the gap cannot be asked for there.
    start = 0.0 if at < SAME else where(to, at, False) if at < length - SAME else moved.edge(to).path.length - opened
    new = replace(
        dart, name=new_name or name, edge=to, start=start, end=start + opened, pressed=pressed or dart.pressed
    )
    if share == 1:
        return replace(moved, darts=(*moved.darts, new))
    # A dart moved in part leaves a mouth behind, as wide as the legs still stand apart.
    first = where(dart.edge, dart.start, False)
    left = replace(dart, start=first, end=first + behind.motion(one).distance(ahead.motion(two)))
    return replace(moved, darts=(*moved.darts, left, replace(new, name=new_name or f"{name}_2")))


def split_dart(piece: Piece, name: str, *, apart: float, share: float = 0.5, new_name: str = "") -> Piece:
    """A part of the dart taken out as a second one on the same edge, its near leg `apart` mm beyond the first's."""
    dart = dart_of(piece, name)
    return move_dart(piece, name, dart.edge, dart.end + apart, share=share, new_name=new_name or f"{name}_2")


def add_dart(
    piece: Piece, name: str, edge: str, *, at: float, intake: float, apex: Point, pressed: Pressed = "end"
) -> Piece:
    """A dart folded out of `edge`, its middle `at` mm along, taking up `intake` mm at the edge, pointing to `apex`.

    The legs are made equal: where the edge does not run square to the dart, it is swung a little on either side
    from its far ends to meet them.
    """
    if any(d.name == name for d in piece.darts):
        raise KitError(f"there is already a dart '{name}'.", where=piece.title, do="Choose another name.")
    middle = on_edge(piece, edge, at)
    path = piece.edge(edge).path
    if not intake > 0:
        raise KitError(
            message("refusal.dart_nothing"), where=piece.title, do=message("refusal.more_do", size=measured(25.0))
        )
    if intake / 2 > min(at, path.length - at):
        raise KitError(
            message(
                "refusal.dart_no_fit",
                intake=measured(intake),
                at=measured(at),
                edge=named_edge(piece.edge(edge)),
                length=measured(path.length),
            ),
            where=piece.title,
            do=message("refusal.dart_no_fit_do"),
        )
    if not piece.outline.contains(apex):
        raise KitError(message("refusal.dart_points_out"), where=piece.title, do=message("refusal.dart_points_out_do"))
    # The legs make equal angles with the middle line, and their ends lie equally far (`long`) from the apex, so that
    # they can be sewn together. How far is not known beforehand, because the edge need not run square to the dart:
    # the half angle follows from the length, the two rays strike the edge at two distances, and their mean is the
    # next length. On a level edge this stands at once; on a slanting one it settles in a few rounds.
    way = middle - apex
    long = way.length
    for _ in range(60):
        if intake >= 1.9 * long:
            raise KitError(message("refusal.dart_wide"), where=piece.title, do=message("refusal.dart_wide_do"))
        half = math.asin(intake / 2 / long)
        rays = [way.unit().rotated(half * side) for side in (1, -1)]
        hits = [_hit(path, apex, ray) for ray in rays]
        if hits[0] is None or hits[1] is None:
            raise KitError(
                message("refusal.dart_legs_miss", edge=named_edge(piece.edge(edge))),
                where=piece.title,
                do=message("refusal.dart_opposite_do"),
            )
        reach = (hits[0][0] + hits[1][0]) / 2
        if abs(reach - long) < 1e-10:
            break
        long = reach
    (_, d1), (_, d2) = sorted((h for h in hits if h is not None), key=lambda h: h[1])
    ends = sorted((apex + ray * long for ray in rays), key=path.nearest)
    if max(e.distance(path.at(d)) for e, d in zip(ends, (d1, d2), strict=True)) > intake:
        raise KitError(
            message("refusal.dart_aside", edge=named_edge(piece.edge(edge))),
            where=piece.title,
            do=message("refusal.dart_opposite_do"),
        )
    # On a slanting edge the ends lie off it, one inside and one outside. Each side of the edge is swung to its leg
    # about its own far end, where it meets the next edge and must not move.
    before = _swung(path.between(0.0, d1), path.start, ends[0])
    after = _swung(path.between(d2, path.length).reversed(), path.end, ends[1]).reversed()
    new = Path.of(before, Path.line(ends[0], ends[1]), after)
    shift = new.length - path.length

    def there(d: float) -> float:
        return d if d <= at else d + shift

    result = with_path(piece, edge, new, there)
    start = before.length
    return replace(
        result, darts=(*result.darts, Dart(name, edge, apex, start, start + ends[0].distance(ends[1]), pressed))
    )


def _hit(path: Path, apex: Point, ray: Vector) -> tuple[float, float] | None:
    """Where a ray from the apex first strikes the edge: how far from the apex, and how far along the edge."""
    line = Path.line(apex + ray * 0.01, apex + ray * 4000.0)
    found = line.crossings(path)
    if not found:
        return None
    p = min(found, key=apex.distance)
    return apex.distance(p), path.nearest(p)


def _swung(path: Path, fixed: Point, end: Point) -> Path:
    """The path turned and stretched about its start so that it ends at `end`."""
    old, new = path.end - fixed, end - fixed
    if (end - path.end).length < 1e-9:
        return path
    size, turn = new.length / old.length, old.turn_to(new)

    def go(p: Point) -> Point:
        return fixed + (p - fixed).rotated(turn) * size

    curves = []
    for curve in path.curves:
        for bit in (curve,) if isinstance(curve, Line) else curve.as_cubics():
            if isinstance(bit, Line):
                curves.append(Line(go(bit.start), go(bit.end)))
            elif isinstance(bit, Cubic):
                curves.append(Cubic(go(bit.start), go(bit.c1), go(bit.c2), go(bit.end)))  # type: ignore[arg-type]
    return Path(tuple(curves))


def _with_mouth(piece: Piece, dart: Dart, new: Path) -> Piece:
    """The piece with the mouth of a dart redrawn."""
    path = piece.edge(dart.edge).path
    parts = [path.between(0.0, dart.start)] if dart.start > SAME else []
    parts.append(new)
    if path.length - dart.end > SAME:
        parts.append(path.between(dart.end, path.length))
    shift = new.length - (dart.end - dart.start)
    return with_path(piece, dart.edge, Path.of(*parts), lambda d: d + shift if d >= dart.end - SAME else d)


def true_dart(piece: Piece, name: str, pressed: Pressed | None = None) -> Piece:
    """The dart folded shut, pressed, and its cap drawn, so that the edge runs true when it opens again."""
    dart = dart_of(piece, name)
    dart = replace(dart, pressed=pressed or dart.pressed)
    piece = _replaced(piece, dart)
    return _with_mouth(piece, dart, cap(piece, dart))


def shorten_dart(piece: Piece, name: str, short: float) -> Piece:
    """The stitching stopped `short` mm before the apex. The cap is redrawn when the dart had one."""
    dart = dart_of(piece, name)
    one, two = mouth(piece, dart)
    deep = dart.apex.distance(one.mid(two))
    if not 0 <= short < deep * 0.8:
        raise KitError(
            message("refusal.dart_short", dart=dart.label, deep=measured(deep), by=measured(short)),
            where=piece.title,
            do=message("refusal.shorten_less_do"),
        )
    trued = not mouth_path(piece, dart).is_straight
    piece = _replaced(piece, replace(dart, short=float(short)))
    return true_dart(piece, name) if trued else piece


def _replaced(piece: Piece, dart: Dart) -> Piece:
    return replace(piece, darts=tuple(dart if d.name == dart.name else d for d in piece.darts))


def dart_to_fullness(piece: Piece, name: str, how: Literal["gathers", "ease"], over: float | None = None) -> Piece:
    """The dart left unsewn: its intake becomes gathers or ease on the edge, marked with the amount between two
    notches `over` mm apart (three times the intake by default)."""
    dart = dart_of(piece, name)
    one, two = mouth(piece, dart)
    amount = one.distance(two)
    piece = _with_mouth(piece, dart, Path.line(one, two))
    piece = replace(piece, darts=tuple(d for d in piece.darts if d.name != name))
    path = piece.edge(dart.edge).path
    wide = (amount * 3 if over is None else over) / 2
    middle = dart.start + amount / 2
    if wide < amount / 2:
        raise KitError(
            message("refusal.take_in", amount=measured(amount), over=measured(wide * 2)),
            where=piece.title,
            do=message("refusal.spread_more_do"),
        )
    low, high = max(middle - wide, 0.0), min(middle + wide, path.length)
    words = f"{'gather' if how == 'gathers' else 'ease'} in {both(amount)} between the notches"
    inside = 1.0 if piece.outline.area > 0 else -1.0
    line = Path.line(
        path.at(low) + path.normal_at(low) * (6 * inside), path.at(high) + path.normal_at(high) * (6 * inside)
    )
    mark = Mark(f"{name}_{how}", "line", path=line, edge=dart.edge, start=low, end=high, said=words)
    notches = (Notch(dart.edge, low, name=f"{name}_{how}_1"), Notch(dart.edge, high, name=f"{name}_{how}_2"))
    return replace(piece, marks=(*piece.marks, mark), notches=(*piece.notches, *notches))
