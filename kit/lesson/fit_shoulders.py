"""Shoulder, armhole and side altered on a bodice, and what follows for its sleeve. Pure functions from piece to piece;
amounts in mm.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry import Motion, Path, Point, Vector
from kit.lesson.redrawn import (
    Side,
    blended,
    common_end,
    cut_or_run_on,
    from_point,
    lacking,
    put,
    shifted,
    swung,
    tail_swung,
    with_guides,
    with_points,
)
from kit.lesson.shaping import spread
from kit.piece.dart import darts_on
from kit.piece.piece import Piece

_SMOOTH = 20.0
_HINGES = (0.55, 0.45, 0.35, 0.25)


def _armhole(piece: Piece) -> tuple[Side, Side, Side]:
    """Shoulder seen from its tip, armhole from the tip, side from the underarm."""
    tip = common_end(piece, "shoulder", "armhole")
    low = common_end(piece, "side", "armhole")
    return from_point(piece, "shoulder", tip), from_point(piece, "armhole", tip), from_point(piece, "side", low)


def sloped(piece: Piece, amount: float, longer: float | None = None) -> Piece:
    """The armhole as it is, `amount` lower: the tip of the shoulder and the underarm both go down, so that the armhole
    keeps its length and its sleeve; the shoulder is ruled to the new tip. Upward where `amount` is less than nothing.
    `longer` is by how many mm the shoulder becomes longer, where its partner says so."""
    shoulder, armhole, side = _armhole(piece)
    hole = armhole.path.moved(Motion.translation(Vector(0.0, -amount)))
    neck = shoulder.path.end
    if longer is not None:
        tip = neck + (hole.start - neck).unit() * (neck.distance(shoulder.path.start) + longer)
        hole = tail_swung(hole.reversed(), tip).reversed()
    path = _from_underarm(piece, side, hole.end)
    return put(
        piece,
        {
            shoulder.name: shoulder.drawn(swung(shoulder.path.reversed(), hole.start).reversed()),
            armhole.name: armhole.drawn(hole),
            side.name: side.drawn(path),
        },
        {side.name: _kept_from_end(side, path)},
    )


def _from_underarm(piece: Piece, side: Side, start: Point) -> Path:
    """The side from another underarm point: cut or run on to its height, then drawn to it from the next joint on."""
    path = side.path
    drop = path.start.y - start.y
    along = drop / max(-path.start_tangent.y, 0.2)
    if along > 0:
        level = Path.line(Point(-5000.0, start.y), Point(5000.0, start.y))
        found = [path.nearest(p) for p in level.crossings(path)]
        if not found:
            raise KitError(message("fit.too_much", amount=measured(drop), piece=piece.title))
        along = min(found)
    taken = [d for dart in darts_on(piece, side.name) for d in (side.along(dart.start), side.along(dart.end))]
    if taken and along > min(taken) - 5.0:
        raise KitError(message("fit.too_much", amount=measured(drop), piece=piece.title))
    path = cut_or_run_on(path, along)
    if taken:  # nothing is drawn anew through a dart
        reach = min(taken) - along
        return swung(path.between(0.0, reach).reversed(), start).reversed().joined(path.between(reach, path.length))
    return tail_swung(path.reversed(), start, least=100.0).reversed()


def _kept_from_end(side: Side, path: Path) -> Callable[[float], float]:
    """Distances along the side on the outline, kept from its lower end, where nothing moves."""
    more = path.length - side.path.length
    return shifted(0.0 if side.turned else more)


def broadened(piece: Piece, amount: float) -> Piece:
    """Slashed from the shoulder to the armhole and spread by `amount` at the shoulder, hinged at the armhole, which
    keeps its length; the shoulder is ruled again from the neck to its tip. Overlapped where `amount` is less than
    nothing."""
    shoulder, armhole, _ = _armhole(piece)
    darts = [
        d for dart in darts_on(piece, shoulder.name) for d in (shoulder.along(dart.start), shoulder.along(dart.end))
    ]
    middle = min([shoulder.path.length, *darts]) / 2
    was = piece.edge(shoulder.name).path
    first = (shoulder.name, shoulder.along(middle))
    for share in _HINGES:  # as low as the armhole can be reached in a straight line
        hinge = armhole.path.length * share
        try:
            opened = spread(piece, first, (armhole.name, armhole.along(hinge)), amount, hinged=True)
            break
        except KitError:
            if share == _HINGES[-1]:
                raise
    if not darts:
        path = opened.edge(shoulder.name).path
        line = swung(was, path.end, path.start)
        opened = put(opened, {shoulder.name: line})
    else:
        opened = _ruled_past(opened, shoulder.name, amount)
    return blended(opened, armhole.name, armhole.along(hinge), armhole.along(hinge), _SMOOTH)


def _ruled_past(piece: Piece, name: str, amount: float) -> Piece:
    """The shoulder between its dart and its tip ruled straight."""
    tip = common_end(piece, "shoulder", "armhole")
    side = from_point(piece, "shoulder", tip)
    dart = min(min(side.along(d.start), side.along(d.end)) for d in darts_on(piece, name))
    whole = side.path
    line = Path.line(whole.start, whole.at(dart)).joined(whole.between(dart, whole.length))
    less = whole.length - line.length
    return put(piece, {name: side.drawn(line)}, {name: shifted(0.0 if side.turned else -less)})


def forward(piece: Piece, amount: float, longer: float | None = None) -> Piece:
    """The shoulder seam turned about the neck point, `amount` lower at the tip along the armhole (or higher, run
    straight on, where it is less than nothing). `longer` is by how many mm the seam becomes longer, where its partner
    says so."""
    shoulder, armhole, _ = _armhole(piece)
    hole = cut_or_run_on(armhole.path, amount)
    tip = hole.start
    neck = shoulder.path.end
    old = shoulder.path.start.distance(neck)
    if longer is not None:
        tip = neck + (tip - neck).unit() * (old + longer)
        hole = (
            swung(hole.reversed(), tip).reversed()
            if amount > 0
            else Path.of(Path.line(tip, armhole.path.start), armhole.path)
        )
    seam = swung(shoulder.path.reversed(), tip).reversed()
    more = hole.length - armhole.path.length
    kept = shifted(0.0 if armhole.turned else more)
    return put(
        piece,
        {shoulder.name: shoulder.drawn(seam), armhole.name: armhole.drawn(hole)},
        {armhole.name: kept},
    )


def shoulder_run(piece: Piece) -> float:
    """From the neck point straight to the tip of the shoulder, mm."""
    shoulder, _, _ = _armhole(piece)
    return shoulder.path.start.distance(shoulder.path.end)


def underarm_lowered(piece: Piece, amount: float) -> Piece:
    """The underarm `amount` lower on the side (higher where it is less than nothing), and the lower part of the armhole
    drawn to it."""
    _, armhole, side = _armhole(piece)
    low = Point(side.path.start.x, side.path.start.y - amount)
    path = _from_underarm(piece, side, low)
    hole = tail_swung(armhole.path, low, least=armhole.path.length * 0.35)
    return put(
        piece,
        {armhole.name: armhole.drawn(hole), side.name: side.drawn(path)},
        {side.name: _kept_from_end(side, path)},
    )


def let_out(piece: Piece, amount: float) -> Piece:
    """The side `amount` farther out along its whole length (in where it is less than nothing), level, so that it keeps
    its length; armhole and hem are drawn to its new ends."""
    _, armhole, side = _armhole(piece) if piece.with_role("armhole") else (None, None, _only_side(piece))
    middle = side.path.at(side.path.length / 2)
    inside = piece.outline.label_point()
    by = Vector(amount * math.copysign(1.0, middle.x - inside.x), 0.0)
    path = side.path.moved(Motion.translation(by))
    paths = {side.name: side.drawn(path)}
    for end, new in ((side.path.start, path.start), (side.path.end, path.end)):
        beside = _meeting(piece, side, end)
        least = beside.path.length * 0.35 if armhole is not None and beside.name == armhole.name else 60.0
        taken = [beside.along(d) for dart in darts_on(piece, beside.name) for d in (dart.start, dart.end)]
        whole = beside.path.reversed()  # toward the end that moves
        if taken:
            reach = min(taken)
            tail = swung(whole.between(whole.length - reach, whole.length), new)
            drawn = whole.between(0.0, whole.length - reach).joined(tail)
        else:
            drawn = tail_swung(whole, new, least=least)
        paths[beside.name] = beside.drawn(drawn.reversed())
    there = {}
    for name, redrawn in paths.items():
        edge = piece.edge(name)
        if name != side.name and darts_on(piece, name):
            start_moved = redrawn.start.distance(edge.path.start) > 1e-6
            more = redrawn.length - edge.path.length
            there[name] = shifted(more if start_moved else 0.0)
    guides = {
        name: Path.line(line.start + by, line.end)
        if line.start.distance(side.path.at(side.path.nearest(line.start))) < 0.05
        else Path.line(line.start, line.end + by)
        for name, line in piece.guides
        if line.is_straight and min(side.path.distance_to(p) for p in (line.start, line.end)) < 0.05
    }
    moved = {name: p + by for name, p in piece.points if side.path.distance_to(p) < 0.05}
    result = put(piece, paths, there)
    return with_points(with_guides(result, guides), moved)


def _only_side(piece: Piece) -> Side:
    found = piece.with_role("side")
    if len(found) != 1:
        raise lacking(piece)
    return Side(found[0], found[0].path, False)


def _meeting(piece: Piece, side: Side, at: Point) -> Side:
    """The other edge that ends where the side does, seen from there."""
    for edge in piece.edges:
        if edge.name != side.name:
            if edge.path.start.distance(at) < 0.05:
                return Side(edge, edge.path, False)
            if edge.path.end.distance(at) < 0.05:
                return Side(edge, edge.path.reversed(), True)
    raise lacking(piece)


# ---- the sleeve -------------------------------------------------------------------------------------------


def cap_longer(sleeve: Piece, front: float, back: float, way: str) -> Piece:
    """A sleeve whose cap follows an armhole that became longer by `front` and `back` mm (of both armholes alike, their
    mean is taken): its underarm points go "down" the underarm seams or "out", both alike, so that these stay equal."""
    wanted = front + back
    if abs(wanted) < 1e-9:
        return sleeve

    def moved(by: float) -> Piece:
        piece = sleeve
        paths: dict[str, Path] = {}
        there = {}
        for cap in sleeve.with_role("cap"):
            end = _underarm_end(sleeve, cap.path)
            one = from_point(sleeve, "underarm", end)
            out = math.copysign(1.0, end.x - sleeve.outline.label_point().x)
            if way == "down":
                seam = cut_or_run_on(one.path, by)
            else:
                seam = one.path.moved(Motion.translation(Vector(out * by, 0.0)))
            side = from_point(sleeve, "cap", end)
            drawn = tail_swung(side.path.reversed(), seam.start, least=side.path.length * 0.35)
            paths[one.name] = one.drawn(seam)
            paths[side.name] = side.drawn(drawn.reversed())
            if way == "down":
                more = seam.length - one.path.length
                there[one.name] = shifted(0.0 if one.turned else more)
        if way == "out":
            ends = {p: q for p, q in _wrist_ends(sleeve, paths)}
            for wrist in sleeve.with_role("wrist"):
                a, b = (ends.get(p, p) for p in (wrist.path.start, wrist.path.end))
                paths[wrist.name] = swung(wrist.path, b, a)
        return put(piece, paths, there)

    def off(by: float) -> float:
        return _cap_length(moved(by)) - _cap_length(sleeve) - wanted

    # The cap's length follows almost evenly: a few steps along the chord find it.
    one, two, at_one = 0.0, wanted, -wanted
    for _ in range(12):
        at_two = off(two)
        if abs(at_two) < 1e-5:
            break
        one, two, at_one = two, two - at_two * (two - one) / (at_two - at_one), at_two
        if way == "down" and abs(two) > 2 * abs(wanted):
            # A low cap runs almost level: moved along the seams its ends change its length too little. They go half as
            # far that way, and both seams move in or out for the rest.
            half = moved(wanted / 2)
            rest = (wanted - _cap_length(half) + _cap_length(sleeve)) / 2
            return cap_longer(_level_redrawn(half, sleeve), rest, rest, "out")
    return _level_redrawn(moved(two), sleeve)


def _cap_length(sleeve: Piece) -> float:
    return sum(edge.path.length for edge in sleeve.with_role("cap"))


def _underarm_end(sleeve: Piece, cap: Path) -> Point:
    for p in (cap.start, cap.end):
        if any(min(p.distance(e.path.start), p.distance(e.path.end)) < 0.05 for e in sleeve.with_role("underarm")):
            return p
    raise lacking(sleeve)


def _wrist_ends(sleeve: Piece, paths: dict[str, Path]) -> list[tuple[Point, Point]]:
    found = []
    for edge in sleeve.with_role("underarm"):
        if edge.name in paths:
            found += [(edge.path.start, paths[edge.name].start), (edge.path.end, paths[edge.name].end)]
    return found


def _level_redrawn(sleeve: Piece, before: Piece) -> Piece:
    """The line at the underarm drawn from underarm to underarm again."""
    old = [e for e in before.with_role("cap")]
    ends = {}
    for edge in old:
        p = _underarm_end(before, edge.path)
        new = sleeve.edge(edge.name).path
        ends[p] = new.start if p.distance(edge.path.start) < 0.05 else new.end
    guides = []
    for name, line in sleeve.guides:
        a = next((new for p, new in ends.items() if p.distance(line.start) < 0.05), line.start)
        b = next((new for p, new in ends.items() if p.distance(line.end) < 0.05), line.end)
        guides.append((name, Path.line(a, b) if line.is_straight else line))
    return replace(sleeve, guides=tuple(guides))


def cap_forward(sleeve: Piece, amount: float) -> Piece:
    """The place on the cap that meets the shoulder seam moved `amount` mm to the front; the cap stays as it is."""
    caps = sleeve.with_role("cap")
    if len(caps) != 2:
        raise lacking(sleeve)
    shared = [
        p
        for p in (caps[0].path.start, caps[0].path.end)
        if min(p.distance(caps[1].path.start), p.distance(caps[1].path.end)) < 0.05
    ]
    front = next((e for e in caps if _is_front(sleeve, e.name)), None)
    if not shared or front is None:
        raise lacking(sleeve)
    top = shared[0]
    ahead = from_point(sleeve, "cap", top)
    both = {
        e.name: Side(e, e.path, False) if e.path.start.distance(top) < 0.05 else Side(e, e.path.reversed(), True)
        for e in caps
    }
    ahead = both[front.name]
    behind = next(side for name, side in both.items() if name != front.name)
    if amount >= 0:
        moved = ahead.path.between(0.0, amount)
        paths = {
            ahead.name: ahead.path.between(amount, ahead.path.length),
            behind.name: moved.reversed().joined(behind.path),
        }
    else:
        moved = behind.path.between(0.0, -amount)
        paths = {
            behind.name: behind.path.between(-amount, behind.path.length),
            ahead.name: moved.reversed().joined(ahead.path),
        }
    there = {}
    for side in (ahead, behind):
        more = paths[side.name].length - side.path.length
        there[side.name] = shifted(0.0 if side.turned else more)
    drawn = {name: both[name].drawn(path) for name, path in paths.items()}
    result = put(sleeve, drawn, there)
    new = paths[ahead.name].start
    marks = tuple(
        replace(m, point=new) if m.point is not None and m.point.distance(top) < 0.05 else m for m in result.marks
    )
    return replace(result, marks=marks)


def _is_front(sleeve: Piece, cap: str) -> bool:
    """Whether a half of the cap goes into the front: its notch is single, that of the back double (common practice)."""
    kinds = {n.kind for n in sleeve.notches if n.edge == cap}
    others = {n.kind for n in sleeve.notches if n.edge != cap}
    return "single" in kinds and "double" in others
