"""A back made longer or shorter at its centre and not at its side: full and flat seat, high round back, sway back. Pure
functions from piece to piece; amounts in mm.
"""

from __future__ import annotations

import math
from dataclasses import replace

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry import Line, Motion, Path, Point
from kit.lesson.fit_lengths import BLEND, crossed
from kit.lesson.lengthen_lines import height_of
from kit.lesson.moves import add_dart, true_dart
from kit.lesson.redrawn import (
    Side,
    blended,
    from_point,
    lacking,
    put,
    rejoined,
    swung,
    taken_down,
    with_guides,
    with_points,
)
from kit.lesson.run_smooth import smooth_as_long, widened
from kit.lesson.slash import STAY, AlongEdge, SlashedPart, rearranged
from kit.piece.dart import darts_on, intake, sewn_length
from kit.piece.piece import Piece
from kit.piece.role import EdgeRole

CENTRE: tuple[EdgeRole, ...] = ("centre", "crotch")
_LEAST_DART = 3.0
_DEEP = 80.0


def wedged(piece: Piece, height: float, amount: float) -> Piece:
    """Slashed level from the centre to the other side, which is the hinge, and opened by `amount` mm at the centre; a
    fold of as much taken out where it is less than nothing. What lies above turns. A straight centre is ruled straight
    on, and what the edge above gains or loses by it goes into its dart nearest the centre (a neck dart is drawn where
    the piece has darts), else it is eased. `KitError` where the line does not cross the piece."""
    apart = amount if amount < 0 else 0.0
    low, high = _from_centre(piece, height + apart / 2), _from_centre(piece, height - apart / 2)
    hinge_at = _from_centre(piece, height)[1]
    hinge, one, two = _spot(piece, hinge_at), _spot(piece, low[0]), _spot(piece, high[0])
    if low[0][0] != high[0][0]:
        raise KitError(message("fit.too_much", amount=measured(abs(amount)), piece=piece.title))
    straight = piece.edge(low[0][0]).path.is_straight
    if amount >= 0:
        angle = 2 * math.asin(min(amount / 2 / hinge.distance(one), 1.0))
    else:
        angle = abs((one - hinge).turn_to(two - hinge))
    clockwise = (one - hinge).x < 0  # upward at a centre that lies left of the hinge
    turn = Motion.rotation((-angle if clockwise else angle) * (1 if amount >= 0 else -1), hinge)
    if piece.outline.area > 0:
        up = SlashedPart(hinge_at, high[0], turn) if clockwise else SlashedPart(high[0], hinge_at, turn)
        down = SlashedPart(low[0], hinge_at, STAY) if clockwise else SlashedPart(hinge_at, low[0], STAY)
    else:
        up = SlashedPart(high[0], hinge_at, turn) if clockwise else SlashedPart(hinge_at, high[0], turn)
        down = SlashedPart(hinge_at, low[0], STAY) if clockwise else SlashedPart(low[0], hinge_at, STAY)
    cuts = (Path.line(one, hinge),) if amount >= 0 else (Path.line(one, hinge), Path.line(two, hinge))
    result, where = rearranged(piece, (up, down), cuts)
    result = rejoined(result, piece)
    for dart in piece.darts:  # what lies on a part goes with it whole
        if height_of(piece, dart.apex) > height:
            result = replace(
                result,
                darts=tuple(replace(d, apex=turn(dart.apex)) if d.name == dart.name else d for d in result.darts),
            )
    name = low[0][0]
    if straight:
        return _straightened(result, piece, name, turn)
    ends = sorted((where(name, low[0][1], low[0][1] < high[0][1]), where(name, high[0][1], high[0][1] < low[0][1])))
    if amount >= 0:
        ends = sorted((where(name, low[0][1], False), where(name, low[0][1], True)))
    return blended(result, name, ends[0], ends[1], BLEND)


def _from_centre(piece: Piece, height: float) -> tuple[AlongEdge, AlongEdge]:
    """Where a level line meets the centre, and where it meets the other side."""
    a, b = crossed(piece, height)
    if piece.edge(a[0]).role in CENTRE or a[0] == piece.fold:
        return a, b
    if piece.edge(b[0]).role in CENTRE or b[0] == piece.fold:
        return b, a
    raise lacking(piece)


def centre_spot(piece: Piece, height: float) -> Point:
    """The place on the centre at a height."""
    return _spot(piece, _from_centre(piece, height)[0])


def waist_spot(piece: Piece) -> Point:
    """The waist at the centre: of a waist edge its end there, else of the waistline."""
    for edge in piece.with_role("waist"):
        for end in (edge.path.start, edge.path.end):
            for other in piece.edges:
                if (other.role in CENTRE or other.name == piece.fold) and min(
                    end.distance(other.path.start), end.distance(other.path.end)
                ) < 0.05:
                    return end
    line = piece.guide_of("waist_line")
    if line is None:
        raise lacking(piece)
    return min((line.start, line.end), key=lambda p: abs(p.x))


def _spot(piece: Piece, place: AlongEdge) -> Point:
    return piece.edge(place[0]).path.at(place[1])


def _straightened(piece: Piece, before: Piece, name: str, turn: Motion) -> Piece:
    """The centre ruled straight on as it was below the slash; the edge above drawn to it."""
    old = before.edge(name).path
    line = Line(old.start, old.end)
    top = max((old.start, old.end), key=lambda p: height_of(before, p))
    away = turn(top)
    axis = (old.end - old.start).unit()
    foot = old.start + axis * axis.dot(away - old.start)
    above = _other_edge(piece, name, away)
    path = above.path
    inside = before.outline.label_point()
    side_of = axis.cross(away - foot) * axis.cross(inside - old.start)
    if side_of >= 0:
        path = Path.line(foot, away).joined(path) if foot.distance(away) > 1e-6 else path
        gained = foot.distance(away)
    else:
        far = Path.line(line.start - axis * 5000.0, line.end + axis * 5000.0)
        found = [path.nearest(p) for p in far.crossings(path)]
        if not found:
            raise KitError(message("fit.too_much", amount=measured(foot.distance(away)), piece=before.title))
        gained = -min(found)
        path = path.between(min(found), path.length)
    bottom = old.start if top is old.end else old.end
    ends = {True: (bottom, path.start), False: (path.start, bottom)}[top is old.end]
    moved = gained
    there = (lambda d: d) if above.turned else (lambda d: d + moved)
    was = piece.edge(name).path
    ruled = Path.line(*ends)
    piece = put(
        piece,
        {name: ruled, above.name: above.drawn(path)},
        {name: lambda d: ruled.nearest(was.at(d)), above.name: there},
    )
    darts = sorted(
        darts_on(piece, above.name), key=lambda d: piece.edge(above.name).path.at(d.start).distance(path.start)
    )
    if darts:
        return smooth_as_long(piece, before, above.name, darts[0].name, sewn_length(before, above.name), gained)
    if gained > _LEAST_DART and piece.darts and piece.edge(above.name).role == "neck":
        middle = piece.edge(above.name).path.length / 2
        at = piece.edge(above.name).path.at(middle)
        piece = add_dart(piece, "neck_dart", above.name, at=middle, intake=gained, apex=Point(at.x, at.y - _DEEP))
        return true_dart(piece, "neck_dart")
    return piece


def _other_edge(piece: Piece, name: str, at: Point) -> Side:
    for edge in piece.edges:
        if edge.name != name:
            if edge.path.start.distance(at) < 0.05:
                return Side(edge, edge.path, False)
            if edge.path.end.distance(at) < 0.05:
                return Side(edge, edge.path.reversed(), True)
    raise lacking(piece)


def swayed(piece: Piece, amount: float) -> Piece:
    """Shortened at the centre of the waist by `amount` mm, tapering to nothing at the side: at a waist edge the edge is
    drawn into the piece, its darts' legs shortened alike; on a piece that goes on below its waistline all below is
    taken up at the centre. Sides keep their length."""
    waists = piece.with_role("waist")
    if waists:
        edge = waists[0]
        for role in CENTRE:
            for end in (edge.path.start, edge.path.end):
                try:
                    centre = from_point(piece, role, end)
                    side = from_point(piece, "waist", end)
                    up = from_point(piece, "side", side.path.end)
                except KitError:
                    continue
                return _as_wide(taken_down(piece, side, amount, 0.0, centre, up), piece)
        raise lacking(piece)
    return _taken_up(piece, amount)


def _as_wide(piece: Piece, before: Piece) -> Piece:
    """The piece with its darts taking up as much as before, so that the waist sewn keeps its length."""
    for dart in before.darts:
        more = intake(before, dart) - intake(piece, next(d for d in piece.darts if d.name == dart.name))
        if abs(more) > 0.05:
            piece = widened(piece, dart.name, more)
    return piece


def _taken_up(piece: Piece, amount: float) -> Piece:
    line = piece.guide_of("waist_line")
    centre = next((e for e in piece.edges if e.role == "centre" or e.name == piece.fold), None)
    if line is None or centre is None or not centre.path.is_straight:
        raise lacking(piece)
    heights = {height_of(piece, p): p for p in (centre.path.start, centre.path.end)}
    low = heights[min(heights)]
    waist = min((line.start, line.end), key=centre.path.distance_to)
    if height_of(piece, waist) - height_of(piece, low) < amount + 20.0 or centre.path.distance_to(waist) > 1.0:
        raise lacking(piece)
    up = (heights[max(heights)] - low).unit() * amount
    hem = _other_edge(piece, centre.name, low)
    moved = low + up
    path = swung(hem.path.reversed(), moved).reversed()
    ends = (moved, centre.path.end) if centre.path.start is low else (centre.path.start, moved)
    ruled = Path.line(*ends)
    was = centre.path
    points = {
        name: p + up
        for name, p in piece.points
        if was.distance_to(p) < 0.05
        and height_of(piece, p) <= height_of(piece, waist) + 0.05
        and p.distance(low) > 0.05
    }
    guides = {}
    for name, guide in piece.guides:
        for end in (guide.start, guide.end):
            if was.distance_to(end) < 0.05 and height_of(piece, end) <= height_of(piece, waist) + 0.05:
                other = guide.end if end is guide.start else guide.start
                guides[name] = Path.line(end + up, other) if end is guide.start else Path.line(other, end + up)
    piece = put(
        piece, {centre.name: ruled, hem.name: hem.drawn(path)}, {centre.name: lambda d: ruled.nearest(was.at(d))}
    )
    return with_points(with_guides(piece, guides), points)
