"""Strips of the finished garment in use: handles as arcs, ties round the body, a loose belt through its loops.

A handle's arc is as long as the handle is between its ends. A tie that is sewn to the corner of a lapped front goes
round the back and is knotted with the other; that of the layer underneath comes out through the opening left in the
side seam. A bow is drawn where enough of a strip is left for one.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from kit.geometry import Cubic, Path, Point, Vector
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import Chain, beside, drawn, length, part
from kit.picture.drawing import Fill, FillRole, Item, Stroke
from kit.picture.place import slant_of
from kit.picture.place_on_band import on_band
from kit.piece.piece import Side, Strip
from kit.sewing.run import Run
from kit.sewing.spans import path_of, sides_of

_KNOT = 60.0  # mm of a strip that a knot takes (common practice, no source)
_BOW = 450.0  # mm of both ends together from which a bow is tied
_LOOP = 62.0  # mm that each loop of a bow reaches out
_LEAN = 0.10  # how far the handle behind leans aside, of its height, so that both are seen
_FINE = 0.5
_MEET, _LEVEL = 60.0, 15.0
"""mm between two ties that are tied to each other in front, and by which one may lie higher."""
_INTO = 10.0  # mm into a band by which the way out of its end is told


def strip_cloth(strip: Strip) -> FillRole:
    """The fill of a strip: the garment's own cloth unless the author cuts it of another."""
    return "lining" if strip.cloth == "lining" else "interfacing" if strip.cloth == "interfacing" else "right_side"


def _wide(strip: Strip) -> float:
    return strip.finished_width or strip.width / 4


def strip_length(strip: Strip) -> float:
    return strip.finished_length or strip.length


def strip_along(spine: Chain, strip: Strip, name: str = "", slant: float = 0.0) -> Iterator[Item]:
    """A strip seen from its broad side along a spine, its far end slanted by `slant` mm: the edge that lies lower there
    is the longer one, as when it hangs."""
    half = _wide(strip) / 2
    sides = [beside(spine, half), beside(spine, -half)]
    if slant > 0:
        upper = max(sides, key=lambda side: (round(side[-1].y, 3), -abs(side[-1].x)))
        sides = [part(side, 0.0, max(length(side) - slant, 0.0)) if side is upper else side for side in sides]
    ring = [*sides[0], *sides[1][::-1]]
    yield Fill(drawn(ring, True), strip_cloth(strip), name or strip.name)
    yield Stroke(drawn(ring, True), "edge", closed=True, name=name or strip.name)


# ---- handles -----------------------------------------------------------------------------------------------


def handles(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """The handles fixed to a piece, to be drawn before it: their ends lie inside."""
    pattern = garment.pattern
    for op in of_kind(pattern, "attach_handle"):
        if op.to.piece != flat.piece.name:
            continue
        strip = pattern.strip(op.name)
        for side in flat.sides if op.to.side is None else [s for s in flat.sides if s == op.to.side]:
            (one, out), (two, _) = (flat.place(pattern, op.to, at, side) for at in op.at)
            free = max(strip_length(strip) - 2 * op.lap, one.distance(two) * 1.05)
            lean = 0.0 if flat.near else _LEAN
            spine = _arc(one, two, out, free, lean)
            yield from strip_along([one - out * 8.0, *spine, two - out * 8.0], strip)


def handle_rows(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """The boxes with a cross that hold handles sewn onto a finished edge: they show on the right side."""
    pattern = garment.pattern
    for op in of_kind(pattern, "attach_handle"):
        if op.to.piece != flat.piece.name or op.method != "stitched_on" or flat.up == "wrong":
            continue
        half = max(_wide(pattern.strip(op.name)) / 2 - 2.0, 2.0)
        for side in flat.sides if op.to.side is None else [s for s in flat.sides if s == op.to.side]:
            for at in op.at:
                place, out = flat.place(pattern, op.to, at, side)
                across = out.left() * half
                top, low = place - out * 2.0, place - out * max(op.lap - 2.0, 6.0)
                box = [top - across, top + across, low + across, low - across]
                name = f"{op.name} sewn"
                yield Stroke(drawn(box, True), "old_row", closed=True, name=name)
                yield Stroke(drawn([box[0], box[2]]), "old_row", name=name)
                yield Stroke(drawn([box[1], box[3]]), "old_row", name=name)


def _arc(one: Point, two: Point, out: Vector, long: float, lean: float) -> Chain:
    """An arc from place to place that is `long` mm, found by halving: its height alone is free."""
    aside = (two - one).unit() if two.distance(one) > 1e-6 else out.right()

    def made(high: float) -> Path:
        up = out * high + aside * (high * lean)
        return Path((Cubic(one, one + up, two + up, two),))

    low, high = 0.0, long * 2
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if made(middle).length < long else (low, middle)
    return made(high).points(_FINE)


# ---- ties --------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class TieEnd:
    """A tie where it leaves an edge: the place, the way out of the piece there, its strip and piece."""

    at: Point
    out: Vector
    strip: Strip
    flat: Flat
    half: Side


def attached(garment: Assembled, kind: str) -> Iterator[Any]:
    """The operations of a kind that have fixed their strips by now: as many of each as the garment's state counts."""
    used: dict[str, int] = {}
    for op in of_kind(garment.pattern, "attach_strip", "attach_handle", "belt_loop"):
        used[op.name] = used.get(op.name, 0) + op.halves
        if op.kind == kind and used[op.name] <= garment.state.count(op.name):
            yield op


def tie_ends(garment: Assembled) -> list[TieEnd]:
    """Where ties are sewn on by now, on every piece that lies there; on the fold a piece has one on either half."""
    pattern, found = garment.pattern, list[TieEnd]()
    for op in attached(garment, "attach_strip"):
        run: Run = op.to
        for flat in garment.of(run.piece):
            for side in [s for s in sides_of(pattern, run) if s in flat.sides]:
                place, out = flat.place(pattern, run, float(op.at), side)
                found.append(TieEnd(place, out, pattern.strip(op.name), flat, side))
        found += _on_bands(op, garment)
    return found


def _on_bands(op: Any, garment: Assembled) -> Iterator[TieEnd]:
    """Where a tie comes out of a band that is set on a piece which lies there."""
    pattern, run = garment.pattern, op.to
    path, piece = path_of(pattern, run), pattern.piece(run.piece)
    place, into = path.at(min(float(op.at), path.length)), path.normal_at(min(float(op.at), path.length))
    into = into if piece.outline.contains(place + into * 2.0) else into * -1.0
    for band in of_kind(pattern, "set_band"):
        if band.a[0].piece != run.piece:
            continue
        for flat in garment.flats:
            for half in sides_of(pattern, run) if piece.fold else (None,):
                here, inner = (on_band(p, band, flat, garment, half) for p in (place, place + into * _INTO))
                if here is not None and inner is not None and here.distance(inner) > 1e-6:
                    side = half or sides_of(pattern, run)[-1]
                    yield TieEnd(here, (here - inner).unit(), pattern.strip(op.name), flat, side)


def _opening(garment: Assembled, half: Side) -> Point | None:
    """The middle of the opening left in a seam of that half, where a tie can pass."""
    pattern = garment.pattern
    for op in of_kind(pattern, "plain_seam", "french_seam", "mock_french_seam", "flat_felled_seam", "bound_seam"):
        if getattr(op, "opening", None) is None or not _sewn(op.a, garment):
            continue
        for run in op.a:
            if half not in sides_of(pattern, run):
                continue
            middle = sum(op.opening) / 2
            for flat in garment.of(run.piece, half):
                path = path_of(pattern, run)
                if middle <= path.length:
                    return flat.put(path.at(middle), half)
    return None


def _sewn(runs: Iterable[Run], garment: Assembled) -> bool:
    """Whether each of the runs lies in a seam by now."""
    seamed = {(name, edge) for seam in garment.state.seams for name, _, edge in seam}
    return all((run.piece, edge) in seamed for run in runs for edge in run.edges)


@dataclass(frozen=True)
class Wrapped:
    """Two ties tied round the body: `over` is the one outside; it meets the edge of the garment at `leaves`, the other
    comes out at `through`; `knot` is where they are tied (None: at the back), both with `left` mm to spare in all."""

    over: TieEnd
    under: TieEnd
    leaves: Point
    through: Point
    knot: Point | None
    left: float


def wrapped(garment: Assembled) -> Wrapped | None:
    """How the ties of a wrap lie; None where there are no two, or no opening for the one underneath."""
    ends = tie_ends(garment)
    pairs = [(a, b) for a in ends for b in ends if a.flat.piece is b.flat.piece and a.half == "right" != b.half]
    for over, under in pairs:
        if over.flat.piece.fold or not over.flat.piece.cut.mirrored:
            continue
        level = garment.widest(over.at.y, over.at.x)
        through = _opening(garment, "right")
        if level is None or through is None:
            continue
        to_right = over.out.x > 0
        leaves = Point(level[1] if to_right else level[0], over.at.y)
        held = [middle for middle, _, _ in loops(garment) if (middle.x > over.at.x) == to_right]
        leaves = min(held, key=leaves.distance) if held else leaves
        around = level[1] - level[0]
        spare = strip_length(under.strip) - under.at.distance(through) - around
        outer = strip_length(over.strip) - over.at.distance(leaves)
        left = (
            strip_length(over.strip)
            + strip_length(under.strip)
            - over.at.distance(leaves)
            - under.at.distance(through)
            - around
        )
        at_side = spare > 100.0 and outer > 100.0
        lying = wrapped(garment.lying) if garment.lying is not None else None
        if lying is not None:  # how long things are is told by the cloth, not by how it is seen on a body
            left, at_side = lying.left, lying.knot is not None
        knot = over.at.lerp(leaves, 0.45) if at_side else None
        return Wrapped(over, under, leaves, through, knot, left)
    return None


def ties_behind(garment: Assembled) -> Iterator[Item]:
    """Ties that are not tied: they hang from where they are sewn on, under the cloth."""
    if wrapped(garment) is None:
        met = [end for pair in _meeting(garment) for end in pair]
        for end in tie_ends(garment):
            if end in met:
                continue
            yield from strip_along(_hanging(end), end.strip, slant=slant_of(end.strip, garment.pattern))


def _meeting(garment: Assembled) -> list[tuple[TieEnd, TieEnd]]:
    """Ties on what lies uppermost that come out of two edges towards each other: they are tied there."""
    ends = [end for end in tie_ends(garment) if end.flat.near]
    found: list[tuple[TieEnd, TieEnd]] = []
    for number, one in enumerate(ends):
        for two in ends[number + 1 :]:
            across = two.at - one.at
            near = across.length < _MEET and abs(across.y) < _LEVEL
            if one.flat is not two.flat and near and one.out.dot(two.out) < -0.9 and one.out.dot(across) >= -1.0:
                found.append((one, two))
    return found


def _hanging(end: TieEnd) -> Chain:
    """A spine from where a tie is sewn on, out of the garment and down, as long as the tie."""
    long = strip_length(end.strip)
    side = 1.0 if end.out.x >= 0 else -1.0
    start = end.at - end.out * 12.0
    if abs(end.out.y) > abs(end.out.x):
        return [start, start + end.out * long]
    bend = start + Vector(side * min(long * 0.1, 40.0), 0.0)
    low = bend + Vector(side * min(long * 0.12, 60.0), -long * 0.3)
    spine = Cubic(start, bend, low, low - Vector(0.0, long * 0.62)).points(_FINE)
    return list(spine)


def ties_over(garment: Assembled) -> Iterator[Item]:
    """Ties that are tied, over all that lies there."""
    tied = wrapped(garment)
    if tied is None:
        for one, two in _meeting(garment):
            left = strip_length(one.strip) + strip_length(two.strip) - one.at.distance(two.at)
            slants = (slant_of(one.strip, garment.pattern), slant_of(two.strip, garment.pattern))
            yield from strip_along([one.at, two.at], one.strip) if one.at.distance(two.at) > 1.0 else ()
            yield from bow(one.at.mid(two.at), one.strip, left, slants)
        return
    strip = tied.over.strip
    slants = (slant_of(tied.over.strip, garment.pattern), slant_of(tied.under.strip, garment.pattern))
    if garment.view == "front":
        yield from strip_along([tied.over.at - tied.over.out * _wide(strip), tied.leaves], strip)
        yield from _edge_of(tied, garment)
        if tied.knot is not None:
            yield from bow(tied.knot, strip, tied.left, slants)
        return
    yield from strip_along([tied.through, tied.leaves], strip)
    if tied.knot is None:
        yield from bow(tied.through.mid(tied.leaves), strip, tied.left, slants)


def _edge_of(tied: Wrapped, garment: Assembled) -> Iterator[Item]:
    """The tie underneath where it comes out of its opening: it goes round the side at once."""
    inward = 1.0 if tied.leaves.x > tied.through.x else -1.0
    strip = tied.under.strip
    yield from strip_along([tied.through - Vector(inward * 3.0, 0.0), tied.through + Vector(inward * 1.0, 0.0)], strip)


# ---- belts -------------------------------------------------------------------------------------------------


def loops(garment: Assembled) -> Iterator[tuple[Point, Item, Item]]:
    """Loops sewn over a seam by now: the middle of each, and what is drawn of it."""
    pattern = garment.pattern
    for op in attached(garment, "belt_loop"):
        strip = pattern.strip(op.name)
        long, run = op.length(pattern), op.seam
        for flat in garment.of(run.piece):
            for side in flat.sides if run.side is None else [s for s in flat.sides if s == run.side]:
                (top, _), (low, _) = (flat.place(pattern, run, float(op.at) + far, side) for far in (0.0, long))
                if top.distance(low) < 1.0:
                    continue
                way = (low - top).unit().left() * (_wide(strip) / 2)
                ring = drawn([top - way, low - way, low + way, top + way], True)
                name = strip.name
                yield top.mid(low), Fill(ring, strip_cloth(strip), name), Stroke(ring, "edge", closed=True, name=name)


def belts(garment: Assembled) -> list[Strip]:
    """The strips that are worn loose."""
    return [strip for strip in garment.pattern.strips if strip.loose]


def belted(garment: Assembled) -> Iterator[Item]:
    """A loose belt round the body at its loops, or at the waist where there are none, tied in front."""
    for strip in belts(garment):
        level = _level(garment)
        if level is None:
            continue
        reach = garment.widest(level, 0.0)
        around = _around(garment, level)
        if reach is None or around is None or strip_length(strip) < around * 0.8:
            continue
        yield from strip_along([Point(reach[0], level), Point(reach[1], level)], strip)
        if garment.view == "front":
            left = strip_length(strip) - around
            slants = (slant_of(strip, garment.pattern), 0.0)  # a belt is slanted at one of its ends
            yield from bow(Point((reach[0] + reach[1]) / 2, level), strip, left, slants)


def _around(garment: Assembled, level: float) -> float | None:
    """mm all round the garment at the level of a belt."""
    lying = garment.lying or garment
    at = level if lying is garment else _level(lying)
    reach = None if at is None else lying.widest(at, 0.0)
    return None if reach is None else 2 * (reach[1] - reach[0])


def _level(garment: Assembled) -> float | None:
    """The height a belt lies at."""
    heights = [middle.y for middle, _, _ in loops(garment)]
    if heights:
        return sum(heights) / len(heights)
    for flat in garment.near:
        waist = flat.piece.guide_of("waist_line")
        if waist is not None:
            return flat.put(waist.start).y
    return None


def bow(at: Point, strip: Strip, left: float, slants: tuple[float, float] = (0.0, 0.0)) -> Iterator[Item]:
    """A bow, or a knot with two ends where less is left: `left` mm of both ends together are to be tied; each of the
    two is slanted by so many mm."""
    wide = _wide(strip)
    reach = max(_LOOP, wide * 2.2)
    spare = left - _KNOT
    tied = spare > max(_BOW, 4 * reach + 160.0)
    tail = max((spare - (4 * reach if tied else 0.0)) / 2, wide * 1.5)
    for side, slant in zip((-1.0, 1.0), slants, strict=True):
        yield from _tail(at, side, tail, strip, slant)
    if tied:
        for side in (-1.0, 1.0):
            yield from _loop(at, side, reach, wide, strip)
    half, high = wide * 0.42 + 3.0, wide * 0.62
    ring = [
        Point(at.x + half * _soft(math.cos(a)), at.y + high * _soft(math.sin(a)))
        for a in (i * math.tau / 36 for i in range(36))
    ]
    yield Fill(drawn(ring, True), strip_cloth(strip), strip.name)
    yield Stroke(drawn(ring, True), "edge", closed=True, name=strip.name)


def _soft(value: float) -> float:
    """Makes a circle a box with round corners."""
    return math.copysign(abs(value) ** 0.6, value)


def _tail(at: Point, side: float, long: float, strip: Strip, slant: float) -> Iterator[Item]:
    """An end that hangs from the knot."""
    aside = min(long * 0.22, 60.0)
    end = at + Vector(side * aside, -math.sqrt(max(long * long - aside * aside, 1.0)))
    spine = Cubic(at, at + Vector(side * aside * 0.9, -long * 0.2), end + Vector(0.0, long * 0.3), end).points(_FINE)
    yield from strip_along(list(spine), strip, slant=slant)


def _loop(at: Point, side: float, reach: float, wide: float, strip: Strip) -> Iterator[Item]:
    """One loop of a bow, seen from in front."""
    tip = at + Vector(side * reach, wide * 0.25)
    up, down = wide * 0.95, wide * 0.75
    upper = Cubic(at, at + Vector(side * reach * 0.3, up * 1.3), tip + Vector(-side * 4.0, up * 0.9), tip).points(_FINE)
    lower = Cubic(tip, tip + Vector(side * 4.0, -down), at + Vector(side * reach * 0.35, -down * 1.3), at).points(_FINE)
    ring = [*upper, *lower[1:-1]]
    yield Fill(drawn(ring, True), strip_cloth(strip), strip.name)
    yield Stroke(drawn(ring, True), "edge", closed=True, name=strip.name)
    fold = [at + Vector(side * wide * 0.4, wide * 0.1), at + Vector(side * reach * 0.62, wide * 0.18)]
    yield Stroke(drawn(fold), "kept", name=f"{strip.name} fold")


def named(garment: Assembled) -> set[str]:
    """The strips that are seen: sewn on, or worn loose."""
    pattern, found = garment.pattern, set[str]()
    for op in of_kind(pattern, "attach_handle", "attach_strip", "belt_loop"):
        if _lies(op, garment):
            found.add(op.name)
    return found | {strip.name for strip in belts(garment)}


def _lies(op: Any, garment: Assembled) -> bool:
    if garment.of(op.runs()[0].piece):
        return True
    return op.kind == "attach_strip" and any(True for _ in _on_bands(op, garment))
