"""A front made fuller or flatter over the bust, and a sleeve wider at the upper arm: the paper is cut into parts that
turn and slide, each rigid. Pure functions from piece to piece; amounts in mm.
"""

from __future__ import annotations

import math
from dataclasses import replace

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry import Cubic, Motion, Path, Point, Vector
from kit.lesson.moves import true_dart
from kit.lesson.redrawn import common_end, from_point, lacking, put, ruled, solved, with_guides, with_points
from kit.lesson.slash import STAY, AlongEdge, SlashedPart, rearranged
from kit.piece.dart import darts_on, mouth_path
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece

HINGE = 1 / 3
"""Where the slash meets the armhole: this part of it up from the underarm, about where its notch lies (common practice,
no source)."""
_BELOW = 60.0


def fuller(piece: Piece, amount: float, bust_width: float) -> Piece:
    """A front let out by `amount` mm at the bust (taken in where it is less than nothing), without change to armhole,
    shoulder, neck or side as sewn.

    The paper is slashed from the waist to the bust point and on, and opened by `amount` level at the bust point. With a
    dart from the side it is hinged at the armhole, and what is below that dart slides out upright, so that this dart
    and the waist dart take up more. Without one it is hinged in the middle of the shoulder, which is ruled anew; the
    whole side turns, and the lower edge becomes wider. The centre is cut across below the bust and let down as far as
    the bust point went. `bust_width` is from bust point to bust point."""
    bust = bust_point(piece, bust_width)
    side_darts = [d for e in piece.with_role("side") for d in darts_on(piece, e.name)]
    return _with_dart(piece, amount, bust, side_darts[0]) if side_darts else _without(piece, amount, bust)


def bust_point(piece: Piece, width: float) -> Point:
    """The bust point of a front; where it has none, half the `width` between the two from the centre line, on the bust
    line."""
    drawn = piece.point_of("bust_point")
    if drawn is not None:
        return drawn
    line = piece.guide_of("bust_line")
    if line is None:
        raise lacking(piece)
    out = 1.0 if piece.outline.label_point().x > 0 else -1.0
    return Point(out * width / 2, line.start.mid(line.end).y)


def _hinge(piece: Piece) -> tuple[AlongEdge, Point]:
    hole = from_point(piece, "armhole", common_end(piece, "side", "armhole"))
    at = hole.path.length * HINGE
    return (hole.name, hole.along(at)), hole.path.at(at)


def _turn(hinge: Point, bust: Point, amount: float, out: float) -> Motion:
    """The turn about the hinge that takes the bust point `amount` mm outward, measured level."""
    arm = bust - hinge
    there = arm.x + out * amount
    if abs(there) >= arm.length or arm.y >= 0:
        raise KitError(message("fit.bust_far", amount=measured(abs(amount) * 2)))
    return Motion.rotation(math.asin(there / arm.length) - math.asin(arm.x / arm.length), hinge)


def _centre(piece: Piece, bust: Point, reach: float) -> tuple[AlongEdge, Point]:
    """Where the centre is cut across, below the bust."""
    edge = next((e for e in piece.edges if e.name == piece.fold or e.role == "centre"), None)
    if edge is None:
        raise lacking(piece)
    at = edge.path.nearest(Point(edge.path.start.x, bust.y - reach))
    return (edge.name, at), edge.path.at(at)


def _order(piece: Piece, first: str, second: str) -> bool:
    """Whether the outline runs from the edge `first` over the armhole to `second` (side)."""
    names = [e.name for e in piece.edges]
    return (names.index(second) - names.index(first)) % len(names) == 1


def _part(forward: bool, start: AlongEdge, end: AlongEdge, motion: Motion, inner: Point) -> SlashedPart:
    return SlashedPart(start, end, motion, inner) if forward else SlashedPart(end, start, motion, inner)


def _with_dart(piece: Piece, amount: float, bust: Point, dart: Dart) -> Piece:
    waists = [d for e in piece.with_role("waist") for d in darts_on(piece, e.name)]
    if not waists:
        raise lacking(piece)
    waist = min(waists, key=lambda d: d.apex.distance(bust))
    hinge_at, hinge = _hinge(piece)
    out = 1.0 if piece.outline.label_point().x > 0 else -1.0
    turn = _turn(hinge, bust, amount, out)
    there = turn(bust)
    slide = Motion.translation(there - bust)
    drop = Motion.translation(Vector(0.0, there.y - bust.y))
    centre_at, _ = _centre(piece, bust, _BELOW)
    forward = _order(piece, hinge_at[0], dart.edge)
    near, far = (dart.start, dart.end) if forward else (dart.end, dart.start)
    w_near, w_far = (waist.start, waist.end) if forward else (waist.end, waist.start)
    bare = replace(piece, darts=tuple(d for d in piece.darts if d.name not in (dart.name, waist.name)))
    parts = (
        _part(forward, centre_at, hinge_at, STAY, bust),
        _part(forward, hinge_at, (dart.edge, near), turn, bust),
        _part(forward, (dart.edge, far), (waist.edge, w_near), slide, bust),
        _part(forward, (waist.edge, w_far), centre_at, drop, bust),
    )
    cuts = (Path.line(hinge, bust), Path.line(bust, _below(piece, waist, bust)))
    straight = piece.edge(centre_at[0]).path.is_straight
    result, where = rearranged(bare, parts, cuts)
    side = result.edge(dart.edge).path
    low = where(dart.edge, min(dart.start, dart.end), False)
    wide = turn(_at(piece, dart, near)).distance(slide(_at(piece, dart, far)))
    axis = (side.at(low).mid(side.at(low + wide)) - there).unit()
    bust_dart = replace(dart, start=low, end=low + wide, apex=there - axis * (amount / 2))
    new_waist = result.edge(waist.edge).path
    low = where(waist.edge, min(waist.start, waist.end), False)
    ends = (slide(_at(piece, waist, w_near)), drop(_at(piece, waist, w_far)))
    if (ends[0].x - ends[1].x) * out <= 0 and amount < 0:
        raise KitError(message("fit.dart", dart=waist.label, piece=piece.title))
    one, two = new_waist.at(low), new_waist.at(low + ends[0].distance(ends[1]))
    point = Point(there.x - (there.x - bust.x) / 2, there.y)
    across = (two - one).unit()
    point = point - across * across.dot(point - one.mid(two))
    waist_dart = replace(waist, start=low, end=low + ends[0].distance(ends[1]), apex=point)
    result = replace(result, darts=(*result.darts, bust_dart, waist_dart))
    for old in (dart, waist):
        if not mouth_path(piece, old).is_straight:
            result = true_dart(result, old.name)
    result = ruled(result, centre_at[0]) if straight else result
    return _put_bust(result, piece, point)


def _below(piece: Piece, waist: Dart, bust: Point) -> Point:
    path = piece.edge(waist.edge).path
    return path.at((waist.start + waist.end) / 2)


def _at(piece: Piece, dart: Dart, at: float) -> Point:
    return piece.edge(dart.edge).path.at(at)


def _without(piece: Piece, amount: float, bust: Point) -> Piece:
    shoulder = from_point(piece, "shoulder", common_end(piece, "shoulder", "armhole"))
    middle = shoulder.path.length / 2
    hinge_at, hinge = (shoulder.name, shoulder.along(middle)), shoulder.path.at(middle)
    out = 1.0 if piece.outline.label_point().x > 0 else -1.0
    turn = _turn(hinge, bust, amount, out)
    there = turn(bust)
    drop = Motion.translation(Vector(0.0, there.y - bust.y))
    hem_at, below = _hem_under(piece, bust)
    centre_at, _ = _centre(piece, bust, _BELOW)
    forward = _order(piece, shoulder.name, from_point(piece, "armhole", shoulder.path.start).name)
    parts = (
        _part(forward, centre_at, hinge_at, STAY, bust),
        _part(forward, hinge_at, hem_at, turn, bust),
        _part(forward, hem_at, centre_at, drop, bust),
    )
    result, _ = rearranged(piece, parts, (Path.line(hinge, bust), Path.line(bust, below)))
    for name in (centre_at[0], shoulder.name):
        if piece.edge(name).path.is_straight:
            result = ruled(result, name)
    hem = result.edge(hem_at[0]).path
    third = hem.start.distance(hem.end) / 3
    curve = Cubic(hem.start, hem.start + hem.start_tangent * third, hem.end - hem.end_tangent * third, hem.end)
    result = put(result, {hem_at[0]: Path((curve,))})
    return _put_bust(_levels(result, piece, turn, drop), piece, Point((there.x + bust.x) / 2, there.y))


def _hem_under(piece: Piece, bust: Point) -> tuple[AlongEdge, Point]:
    down = Path.line(bust - Vector(0.0, 5.0), Point(bust.x, bust.y - 3000.0))
    found = [(p, e) for e in piece.edges for p in down.crossings(e.path)]
    if not found:
        raise lacking(piece)
    point, edge = max(found, key=lambda item: item[0].y)
    return (edge.name, edge.path.nearest(point)), point


def _levels(result: Piece, before: Piece, turn: Motion, drop: Motion) -> Piece:
    """Level lines from the centre to the side, whole again."""
    guides = {}
    for name, line in before.guides:
        if line.is_straight:
            inner, outer = sorted((line.start, line.end), key=lambda p: abs(p.x))
            low = inner.y < (before.point_of("bust_point") or Point(0.0, before.outline.label_point().y)).y - _BELOW
            a, b = drop(inner) if low else inner, turn(outer)
            guides[name] = Path.line(a, b) if inner is line.start else Path.line(b, a)
    kept = replace(result, guides=tuple((n, g) for n, g in result.guides if n in dict(before.guides)))
    return with_guides(kept, guides)


def _put_bust(result: Piece, before: Piece, point: Point) -> Piece:
    names = [name for name, what in before.landmarks or () if what == "bust_point"]
    kept = with_points(result, dict.fromkeys(names, point))
    whole = {name: path for name, path in before.guides if path.is_straight}
    guides: list[tuple[str, Path]] = []
    for name, path in kept.guides:
        if name in whole:
            parts = [path, *(p for n, p in kept.guides if n.startswith(f"{name}_") and n not in whole)]
            ends = [p for part in parts for p in (part.start, part.end)]
            line = (min(ends, key=lambda p: p.x), max(ends, key=lambda p: p.x))
            turned = whole[name].start.x > whole[name].end.x
            guides.append((name, Path.line(*(reversed(line) if turned else line)) if len(parts) > 1 else path))
        elif name in dict(before.guides):
            guides.append((name, path))
    levels = {name for name, what in before.landmarks or () if what == "bust_line"}
    return replace(kept, guides=tuple((n, _level(g, point.y) if n in levels else g) for n, g in guides))


def _level(line: Path, height: float) -> Path:
    """A level line at another height."""
    return Path.line(Point(line.start.x, height), Point(line.end.x, height))


# ---- the upper arm ----------------------------------------------------------------------------------------


def arm_fuller(sleeve: Piece, amount: float) -> Piece:
    """A sleeve `amount` mm wider at the upper arm: cut down its middle and across at the upper arm, hinged at wrist,
    cap top and underarms. The four parts are rigid, so that cap, underarm seams and wrist keep their lengths; the cap
    becomes lower. Narrower where `amount` is less than nothing."""
    caps, wrists = sleeve.with_role("cap"), sleeve.with_role("wrist")
    if len(caps) != 2 or len(wrists) != 1:
        raise lacking(sleeve)
    top = next(
        (
            p
            for p in (caps[0].path.start, caps[0].path.end)
            for q in (caps[1].path.start, caps[1].path.end)
            if p.distance(q) < 0.05
        ),
        None,
    )
    if top is None:
        raise lacking(sleeve)
    wrist = wrists[0]
    down = Path.line(top, Point(top.x, top.y - 3000.0))
    met = [wrist.path.nearest(p) for p in down.crossings(wrist.path)]
    if not met:
        raise lacking(sleeve)
    foot_at, foot = met[0], wrist.path.at(met[0])
    arms = [next(p for p in (c.path.start, c.path.end) if p.distance(top) > 0.05) for c in caps]
    right, left = sorted(arms, key=lambda p: -p.x)
    middle = Point(top.x, (right.y + left.y) / 2)

    def parts(spread: float) -> tuple[Motion, Motion, Motion, Motion, float]:
        """Motions of the lower and upper right, lower and upper left part, when the right opens by `spread` radians."""
        lower = Motion.rotation(-spread, foot)
        arm = lower(right)
        long = right.distance(top)
        peak = Point(top.x, arm.y + math.sqrt(max(long**2 - (arm.x - top.x) ** 2, 0.0)))
        upper = Motion.matching(right, top, arm, peak)

        def off(angle: float) -> float:
            elbow = Motion.rotation(angle, foot)(left)
            return elbow.y + math.sqrt(max(left.distance(top) ** 2 - (elbow.x - top.x) ** 2, 0.0)) - peak.y

        bounds = sorted((0.0, math.copysign(0.3, spread)))
        if off(bounds[0]) * off(bounds[1]) > 0:
            raise KitError(message("fit.arm_far", amount=measured(abs(amount))))
        other = Motion.rotation(solved(off, bounds[0], bounds[1]), foot)
        upper_left = Motion.matching(left, top, other(left), peak)
        return lower, upper, other, upper_left, arm.distance(other(left)) - right.distance(left) - amount

    bounds = sorted((0.0, math.copysign(abs(amount) / middle.distance(foot) * 1.2, amount)))
    if abs(amount) < 1e-9:
        return sleeve
    spread = solved(lambda angle: parts(angle)[4], bounds[0], bounds[1])
    lower, upper, other, upper_left, _ = parts(spread)
    pieces: list[SlashedPart] = []
    for edge in sleeve.edges:
        whole = ((edge.name, 0.0), (edge.name, edge.path.length))
        centre = edge.path.at(edge.path.length / 2)
        if edge.role == "wrist":
            first = edge.path.start.x > foot.x
            pieces.append(SlashedPart(whole[0], (edge.name, foot_at), lower if first else other, middle))
            pieces.append(SlashedPart((edge.name, foot_at), whole[1], other if first else lower, middle))
        elif edge.role == "cap":
            pieces.append(SlashedPart(*whole, upper if centre.x > top.x else upper_left, middle))
        else:
            pieces.append(SlashedPart(*whole, lower if centre.x > top.x else other, middle))
    straight = wrist.path.is_straight
    cuts = (Path.line(top, foot), Path.line(left, right))
    result, _ = rearranged(sleeve, tuple(pieces), cuts)
    result = ruled(result, wrist.name) if straight else result
    peak = upper(top)

    def carried(p: Point) -> Point:
        """Where a point of the sleeve lies now; what lay on the middle line stays on it."""
        if abs(p.x - top.x) < 0.05:
            share = max((p.y - middle.y) / (top.y - middle.y), 0.0)
            return Point(p.x, p.y + (peak.y - top.y) * share)
        if p.y > middle.y + 0.05 and min(p.distance(right), p.distance(left)) > 0.05:
            return (upper if p.x > top.x else upper_left)(p)
        return (lower if p.x > top.x else other)(p)

    points = tuple((name, carried(p)) for name, p in sleeve.points)
    now = dict(result.guides)
    guides = tuple(
        (name, Path.line(carried(line.start), carried(line.end)) if line.is_straight else now.get(name, line))
        for name, line in sleeve.guides
    )
    return replace(result, points=points, guides=guides)
