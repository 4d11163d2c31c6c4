"""What of a worn garment is seen only on a body: sleeves set into an armhole, a strap round the neck, and the edges
and ties of what is open behind, as an apron is."""

from __future__ import annotations

from collections.abc import Iterator

from kit.geometry import Cubic, Point, Vector
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import Chain, crossings, drawn
from kit.picture.drawing import Fill, Item, Stroke
from kit.picture.on_body import Bent
from kit.picture.place import slant_of
from kit.picture.place_on_band import band_width
from kit.picture.tied import bow, strip_along, strip_length, tie_ends
from kit.picture.wearer import Wearer
from kit.piece.piece import Piece
from kit.sewing.spans import path_of

_TUBE = 0.69  # how wide a sleeve with an arm in it looks, of half of what goes round (as the trunk, `Wearer.seen`)
_STEP = 10.0
_CHEST = 100.0  # mm above the waist from which a strap goes round the neck


def set_in_sleeves(garment: Assembled, wearer: Wearer) -> Iterator[Item]:
    """Sleeves that are sewn into an armhole, along the arm from the shoulder: as long and as wide as they are made. To
    be drawn before the body of the garment, whose armhole lies over them."""
    for flat in garment.flats:
        if flat.piece.role != "sleeve" or not any(edge.role == "cap" for edge in flat.piece.edges):
            continue
        xs = [p.x for p in (garment.lying or garment).of(flat.piece.name, flat.side)[0].ring]
        sign = 1.0 if sum(xs) > 0 else -1.0
        arm = _along_arm(flat.piece, _armhole_top(garment, wearer), wearer)
        for name, chain in ((flat.piece.name, arm), *_cuffs(flat.piece, arm[1], garment, wearer)):
            ring = drawn([Point(sign * p.x, p.y) for p in chain], True)
            yield Fill(ring, "right_side", name)
            yield Stroke(ring, "edge", closed=True, name=f"{name}.{flat.side}")


def _cuffs(sleeve: Piece, end: Point, garment: Assembled, wearer: Wearer) -> Iterator[tuple[str, Chain]]:
    """The band that a sleeve ends in, on from its outer end: as deep as it is made, as wide as half of it goes
    round."""
    pattern, way = garment.pattern, wearer.arm_way()
    for op in of_kind(pattern, "set_band"):
        if any(run.piece == sleeve.name for run in op.b):
            deep = way * band_width(op.a[0].piece, pattern)
            across = way.left() * -(sum(path_of(pattern, run).length for run in op.a) / 2 * _TUBE)
            yield op.a[0].piece, [end, end + deep, end + deep + across, end + across]


def _armhole_top(garment: Assembled, wearer: Wearer) -> Point:
    for flat in garment.near:
        point = flat.piece.point_of("shoulder_tip")
        if point is not None:
            there = flat.put(point, flat.side)
            return Point(abs(there.x), there.y)
    return wearer.tip


def _along_arm(sleeve: Piece, top: Point, wearer: Wearer) -> Chain:
    """The outline of a sleeve on the arm at the viewer's right: straight down the arm outside, as wide inside as half
    of it goes round."""
    points = [p for edge in sleeve.edges for p in edge.path.points(1.0)]
    high, low = max(p.y for p in points), min(p.y for p in points)
    double = 2.0 if sleeve.fold else 1.0
    way = wearer.arm_way()
    inward = way.left() * -1.0

    under = min(p.y for edge in sleeve.edges if edge.role == "cap" for p in edge.path.points(1.0))

    def wide(y: float) -> float:
        xs = crossings(points, min(y, under - 1.0))  # the cap lies under the armhole
        return double * (xs[-1] - xs[0]) / 2 * _TUBE if xs else 0.0

    count = max(int((high - low) / _STEP), 2)
    levels = [high - 1.0 - (high - low - 2.0) * i / count for i in range(count + 1)]
    inner = [top + way * (high - y) + inward * wide(y) for y in levels]
    return [top, top + way * (high - low), *inner[::-1]]


def neck_strap(garment: Assembled, wearer: Wearer) -> Iterator[Item]:
    """A strap fixed with both ends to an upper edge, over the shoulders and round the neck."""
    pattern = garment.pattern
    for op in of_kind(pattern, "attach_handle"):
        for flat in garment.of(op.to.piece):
            ends = [flat.place(pattern, op.to, at, flat.side)[0] for at in op.at]
            if min(p.y for p in ends) < _CHEST:
                continue
            strip = pattern.strip(op.name)
            sides = [Point((1 if p.x >= 0 else -1) * (wearer.neck.x + 6.0), wearer.neck.y) for p in ends]
            if garment.view == "front":
                for end, side in zip(ends, sides, strict=True):
                    yield from strip_along([end - Vector(0.0, 8.0), end, side], strip)
            else:
                low = Vector(0.0, wearer.nape - wearer.neck.y - 8.0)
                spine = Cubic(sides[0], sides[0] + low * 1.3, sides[1] + low * 1.3, sides[1]).points(0.5)
                yield from strip_along(list(spine), strip)


def open_behind(garment: Assembled) -> Iterator[Item]:
    """Seen from behind: the edges of cloth that comes round the body from in front, and its ties, tied in the
    middle."""
    if garment.view != "back":
        return
    for flat in garment.flats:
        bent = flat.bent
        if flat.near or not isinstance(bent, Bent) or not bent.limits:
            continue
        yield from _edges(flat, bent)
        ends = [end for end in tie_ends(garment) if end.flat is flat]
        if len(ends) == 2 and abs(ends[0].at.y - ends[1].at.y) < 30.0:
            y = (ends[0].at.y + ends[1].at.y) / 2
            strip = ends[0].strip
            reach = bent.behind(y)
            yield from strip_along([Point(-reach, y), Point(reach, y)], strip)
            shared = dict(bent.widths)[min(dict(bent.widths), key=lambda level: abs(level - y))]
            left = sum(strip_length(end.strip) for end in ends) - 2 * reach / shared
            one, two = (slant_of(end.strip, garment.pattern) for end in ends)
            yield from bow(Point(0.0, y), strip, left, (one, two))


def _edges(flat: Flat, bent: Bent) -> Iterator[Item]:
    levels = [y for y, half in bent.reach if half > 0.0]
    sides = dict(bent.limits)
    out = [(y, sides[y], bent.behind(y)) for y in levels if bent.behind(y) < sides[y] - 1.0]
    if len(out) < 2:
        return
    for sign in (-1.0, 1.0):
        outer = [Point(sign * side, y) for y, side, _ in out]
        inner = [Point(sign * edge, y) for y, _, edge in reversed(out)]
        ring = drawn([*outer, *inner], True)
        yield Fill(ring, "right_side", flat.piece.name)
        yield Stroke(ring, "edge", closed=True, name=f"{flat.piece.name} behind")
