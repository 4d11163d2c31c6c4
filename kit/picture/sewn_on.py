"""Pins, clips, and what is sewn on that is no cut piece: zips, buttons, fasteners, eyelets, elastic, cord, binding."""

from __future__ import annotations

import math

from kit.geometry import Arc, Curve, Line, Path, Point, Vector, beside
from kit.lesson.pattern import Pattern
from kit.picture.chains import whole_steps
from kit.picture.cloth_items import edges_off_fold
from kit.picture.drawing import Dot, Fill, Item, Stroke
from kit.picture.fastener_signs import SIGNS, sign
from kit.picture.place import polyline
from kit.picture.placed import Box, PlacedLayer, find
from kit.picture.scene_signs import seen_part
from kit.sewing.places import inside
from kit.sewing.run import Run
from kit.sewing.scene import Thing
from kit.sewing.spans import path_of

_PINS = 5
_APART = 0.06  # of the picture from pin to pin at least
_STIFF = ("buttonhole", *SIGNS)  # worked or sewn on a spot
BODKIN = "bodkin"
"""The name of what is pushed through a tunnel."""
_TEETH = 0.12  # of a zip's width from its middle to the edge of its teeth


def pin_items(run: Run, placed: list[PlacedLayer], pattern: Pattern, extent: float, window: Box) -> list[Item]:
    """Pins across a run, where the picture shows it, their heads outside the edge."""
    p = find(placed, run, None)
    if p is None:
        return []
    path = p.shown(path_of(pattern, run))
    out: list[Item] = []
    lies = p.lay(path, run.side)
    part = seen_part(lies, window) or (0.0, lies.length)
    low, high = (at / lies.length * path.length for at in part)
    count = min(max(int((part[1] - part[0]) / (extent * _APART)), 1), _PINS)
    for number in range(count):
        at = low + (high - low) * (number + 0.5) / count
        foot = p.point(path.at(at), run.side)
        if not (window[0] < foot.x < window[2] and window[1] < foot.y < window[3]):
            continue
        inward = path.normal_at(at)
        if not p.piece.outline.contains(path.at(at) + inward * 2.0):
            inward = inward * -1.0
        way = (p.point(path.at(at) + inward * 2.0, run.side) - foot).unit()
        head = foot - way * (extent * 0.012)
        out.append(Stroke((Line(head, foot + way * (extent * 0.03)),), "pin", name="pin"))
        out.append(Dot(head, "mark"))
    return out


def thing_items(thing: Thing, placed: list[PlacedLayer], pattern: Pattern) -> list[Item]:
    """The thing where it lies on the uppermost layer of its piece."""
    p = find(placed, thing.run, None)
    if p is None:
        return []
    line = _straight(p, thing) if thing.kind in _STIFF else p.lay(thing.line, thing.run.side)
    name = f"{thing.kind} on {thing.run.piece}"
    if thing.kind in SIGNS:
        shapes = sign(thing.kind, line, thing.width)
        ground = [Fill(shapes[0][0], "paper", name)] if thing.kind in ("snap", "socket", "eyelet") else []
        return [*ground, *(Stroke(curves, "symbol", closed=closed, name=name) for curves, closed in shapes)]
    if thing.kind == "caught":
        return [Stroke(_band(line, thing.width), "hidden", closed=True, name=name)]
    if thing.kind == "threaded":
        return _threaded(line, thing.width, name)
    if thing.kind == "tie":
        ring = _band(line, thing.width)
        return [Fill(ring, "strip", thing.of), Stroke(ring, "edge", closed=True, name=name)]
    if thing.kind == "gap":
        opened = [q.layer.on for q in placed if q.base is p and q.layer.how == "open"]
        if not any(on is not None and set(on.edges) & set(thing.run.edges) for on in opened):
            return []  # at the edge of a bag that lies flat nothing stands open
        ring = _hole(line, thing.width)
        return [Fill(ring, "paper", name), Stroke(ring, "crease", closed=True, name=name)]
    if thing.kind == "button":
        return _button(line.start, thing.width / 2, name)
    if thing.kind == "buttonhole":
        return _buttonhole(line, thing.width, name)
    if thing.kind == "cut":
        return [Stroke(line.curves, "cut", name=name)]
    if thing.kind == "tower":
        return _tower(line, thing.width, name)
    if thing.kind == "cord":
        return [Stroke(line.curves, "symbol", name=name, thickness=max(thing.width, 2.0))]
    if thing.kind in ("clips", "wedges"):
        return _snips(line, _into(p, thing), thing, name)
    if thing.kind == "zip_tape":
        return _tape(line, p.inward(thing.line), thing.width, name)
    band = _band(line, thing.width)
    items: list[Item] = [
        Fill(band, "strip" if thing.kind == "binding" else "paper", name),
        *edges_off_fold(p, band, name),
    ]
    if thing.kind == "zip":
        items += _teeth(line, thing.width * _TEETH, name)
    if thing.kind == "elastic":
        items += [Stroke((tick,), "symbol") for tick in _ticks(line, thing.width * 0.8, 6.0)]
    return items


def _threaded(line: Path, width: float, name: str) -> list[Item]:
    """What lies in a tunnel, seen through the cloth, and the bodkin that is pushed ahead of it to the line's end."""
    ends = max(line.length - 1.2 * width, 0.4 * line.length)
    cloth, eye, point = line.between(0.0, ends), line.at(max(ends - 0.5 * width, 0.0)), line.end
    side, way = line.end_tangent.left() * (width * 0.14), line.end_tangent * (width * 0.35)
    bodkin = polyline([eye + side, point - way + side, point, point - way - side, eye - side, eye + side])
    return [
        Stroke(_band(cloth, width), "hidden", closed=True, name=name),
        *(Stroke((tick,), "hidden") for tick in _ticks(cloth, width * 0.7, 9.0)),
        Fill(bodkin, "paper", BODKIN),
        Stroke(bodkin, "symbol", closed=True, name=BODKIN),
    ]


def _straight(p: PlacedLayer, thing: Thing) -> Path:
    """The line of something worked on a small spot: straight and as long as it is drafted, where the cloth round it is
    drawn bent along the edge it is sewn to."""
    start, end = p.point(thing.line.start, thing.run.side), p.point(thing.line.end, thing.run.side)
    if not thing.line.is_straight or start.distance(end) < 1e-6:
        return p.lay(thing.line, thing.run.side)
    middle, half = start.mid(end), (end - start).unit() * (thing.line.length / 2)
    return Path.line(middle - half, middle + half)


def bound_items(p: PlacedLayer, pattern: Pattern) -> list[Item]:
    """The bindings that a layer's edges are shut in by now."""
    items: list[Item] = []
    for run, wide in p.layer.bound:
        thing = Thing("binding", run, inside(pattern, run, wide / 2), wide)
        items += thing_items(thing, [p], pattern)
    return items


def _button(at: Point, radius: float, name: str) -> list[Item]:
    ring = _circle(at, radius)
    holes: list[Item] = [Dot(at + Vector(way * radius * 0.3, 0.0), "mark") for way in (-1.0, 1.0)]
    return [Fill(ring, "paper", name), Stroke(ring, "new", closed=True, name=name), *holes]


def _circle(at: Point, radius: float) -> tuple[Curve, ...]:
    return (Arc(at, radius, 0.0, math.pi), Arc(at, radius, math.pi, math.pi))


def _buttonhole(line: Path, width: float, name: str) -> list[Item]:
    half = max(width / 2, 1.5)
    ends = []
    for at in (0.0, line.length):
        across = line.normal_at(at) * half
        ends.append(Line(line.at(at) - across, line.at(at) + across))
    return [Stroke(line.curves, "new", name=name), *(Stroke((end,), "new") for end in ends)]


def _tower(line: Path, width: float, name: str) -> list[Item]:
    """A tower folded and laid down, which ends in a point; or unfolded, as its line goes round it."""
    if line.start.distance(line.end) < 0.1:
        return [Fill(line.curves, "wrong_side", name), Stroke(line.curves, "edge", closed=True, name=name)]
    side, shoulder = line.start_tangent.left() * (width / 2), line.end - line.end_tangent * (width / 2)
    shape = polyline(
        [line.start + side, line.start - side, shoulder - side, line.end, shoulder + side, line.start + side]
    )
    return [Fill(shape, "right_side", name), Stroke(shape, "crease", closed=True, name=name)]


def _tape(line: Path, inward: Vector, width: float, name: str) -> list[Item]:
    """One side of an open zip: its coil on the line, its tape outside."""
    outward = -1.0 if line.normal_at(line.length / 2).dot(inward) > 0 else 1.0
    far = beside(line, outward * width).reversed()
    band = (*line.curves, *polyline([line.end, far.start]), *far.curves, *polyline([far.end, line.start]))
    coil = [(line.at(d), line.at(d) - line.normal_at(d) * (outward * 2.0)) for d in _steps(line.length, 3.0)]
    return [
        Fill(band, "paper", name),
        Stroke(band, "edge", closed=True, name=name),
        *(Stroke((Line(a, b),), "symbol") for a, b in coil),
    ]


def _into(p: PlacedLayer, thing: Thing) -> Vector:
    """The direction into the piece, in the picture, from the middle of a line in its allowance."""
    middle, step = thing.line.at(thing.line.length / 2), thing.line.normal_at(thing.line.length / 2)
    for reach in (thing.width, 2 * thing.width):
        for way in (step, step * -1.0):
            if p.piece.outline.contains(middle + way * reach):
                return p.point(middle + way * reach, thing.run.side) - p.point(middle, thing.run.side)
    return p.inward(thing.line)


def _snips(line: Path, inward: Vector, thing: Thing, name: str) -> list[Item]:
    """Cuts across an allowance: single ones, or two that meet near the stitch line with the wedge between them gone."""
    out = -1.0 if line.normal_at(line.length / 2).dot(inward) > 0 else 1.0
    found: list[Item] = []
    for at in _steps(line.length, thing.apart)[1:-1]:
        across = line.normal_at(at) * (out * thing.width / 2)
        foot, top = line.at(at) - across, line.at(at) + across
        wide = line.tangent_at(at) * (thing.width * 0.3 if thing.kind == "wedges" else 0.0)
        cuts = polyline([top - wide, foot, top + wide])
        found += [Fill(cuts, "paper", name)] if thing.kind == "wedges" else []
        found.append(Stroke(cuts, "new" if thing.ink == "new" else "symbol", name=name))
    return found


def _steps(length: float, apart: float) -> list[float]:
    count = max(whole_steps(length, apart), 2)
    return [length * number / count for number in range(count + 1)]


def _band(line: Path, width: float) -> tuple[Curve, ...]:
    left, right = beside(line, width / 2), beside(line, -width / 2).reversed()
    return (*left.curves, *polyline([left.end, right.start]), *right.curves, *polyline([right.end, left.start]))


def _hole(line: Path, width: float) -> tuple[Curve, ...]:
    """A slit held open: two edges that part in the middle."""
    count = 24
    one, two = [], []
    for number in range(count + 1):
        at = line.length * number / count
        out = line.normal_at(at) * (width / 2 * math.sin(math.pi * number / count))
        one.append(line.at(at) + out)
        two.append(line.at(at) - out)
    return polyline([*one, *two[::-1][1:]])


def _teeth(line: Path, half: float, name: str) -> list[Item]:
    count = max(whole_steps(line.length, half * 1.2), 4)
    points = []
    for number in range(count + 1):
        at = line.length * number / count
        points.append(line.at(at) + line.normal_at(at) * (half if number % 2 else -half))
    start = line.start
    along = line.start_tangent
    pull = polyline([start, start + along * half * 4])
    return [Stroke(polyline(points), "symbol", name=name), Stroke(pull, "symbol", name="zip pull", thickness=half)]


def _ticks(line: Path, width: float, apart: float) -> list[Line]:
    count = max(whole_steps(line.length, apart), 2)
    out = []
    for number in range(1, count):
        at = line.length * number / count
        across = line.normal_at(at) * (width / 2)
        out.append(Line(line.at(at) - across, line.at(at) + across))
    return out
