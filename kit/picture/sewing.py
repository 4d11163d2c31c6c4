"""Sewing pictures: the real pieces, laid as the scene says, with the rows of stitching and what is turned.

Every layer is moved rigidly, never bent: `together` lays a piece on another so that the two runs coincide, `open`
lays it beside the seam, `flat` leaves it in its draft place. Each layer above another is slid a little towards
the inside so that both edges show. A picture of one run is cropped around it and carries a small plan of the
whole; the cross-section of the seam stands in the corner above it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise

from kit.geometry import Curve, Line, Motion, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Drawing, Fill, FillRole, Item, Label, Stroke, StrokeRole
from kit.picture.place import (
    Scaling,
    flat_motion,
    fold_mirror,
    layer_line,
    moved_curves,
    polyline,
    rectangle,
    strip_outline,
    whole_outline,
    widths_of,
)
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene, Section
from kit.sewing.walk import path_of
from kit.units import System

_SLIDE = 0.014
_FILLS: dict[tuple[str, str], FillRole] = {
    ("main", "right"): "right_side",
    ("main", "wrong"): "wrong_side",
    ("facing", "right"): "facing",
    ("facing", "wrong"): "facing",
    ("interfacing", "right"): "interfacing",
    ("interfacing", "wrong"): "interfacing",
    ("strip", "right"): "strip",
    ("strip", "wrong"): "strip",
}
_OTHER = {"right": "wrong", "wrong": "right"}
Box = tuple[float, float, float, float]


@dataclass
class _Placed:
    """One layer where it lies: `motion` takes the draft of its half to the picture."""

    layer: Layer
    piece: Piece
    side: Side
    motion: Motion
    outline: tuple[Curve, ...] = ()
    flaps: list[tuple[Curve, ...]] = field(default_factory=list)
    opened: set[str] = field(default_factory=set)

    @property
    def inside(self) -> float:
        """+1 when the piece lies to the left of its edges as they run in the draft."""
        return 1.0 if self.piece.outline.area > 0 else -1.0

    def inward(self, path: Path) -> Vector:
        """Into the piece, square to the middle of `path` (draft coordinates, run as named), in the picture."""
        middle = path.at(path.length / 2)
        step = path.normal_at(path.length / 2)
        if not self.piece.outline.contains(middle + step * 2.0):
            step = step * -1.0
        return self.motion.vector(step)


def scene_drawing(scene: Scene, pattern: Pattern, system: System = "cm", title: str = "", alt: str = "") -> Drawing:
    """The picture of one scene. `alt` is the alternative text (without it, one is made from the layers)."""
    placed = _place_all(scene, pattern)
    paths = {id(p): path_of(pattern, p.layer.run) for p in placed}
    window, whole = _windows(scene, pattern, placed)
    extent = max(window[2] - window[0], window[3] - window[1])
    _slide(placed, paths, extent)
    items: list[Item] = []
    for number, p in enumerate(placed):
        items.extend(_layer_items(p, placed[:number], extent))
    for row in scene.rows:
        items.extend(_row_items(row, placed, pattern, extent))
    for run, way in scene.arrows:
        items.extend(_arrow_items(run, way, placed, pattern, extent))
    items.extend(_names(placed, window, extent))
    if scene.strip:
        extra, window = _strip_items(scene, pattern, window if placed else None)
        items.extend(extra)
        whole = window if not placed else whole
    bounds = window
    locate = scene.focus is not None and placed and _area(window) < 0.6 * _area(whole)
    if scene.section is not None or locate:
        extra, bounds = _panel(scene.section, placed if locate else [], window, whole)
        items.extend(extra)
    return Drawing(tuple(items), alt=alt or _alt(scene, placed, pattern), title=title, bounds=bounds)


# ---- laying -----------------------------------------------------------------------------------------------


def _sides(layer: Layer, piece: Piece) -> tuple[Side, ...]:
    if layer.run.side is not None:
        return (layer.run.side,)
    return ("right",) if piece.fold else piece.sides


def _place_all(scene: Scene, pattern: Pattern) -> list[_Placed]:
    placed: list[_Placed] = []
    for layer in scene.layers:
        piece = pattern.piece(layer.run.piece)
        for side in _sides(layer, piece):
            base = _find(placed, layer.on, side) if layer.on is not None else None
            if base is None or layer.on is None:
                motion = flat_motion(piece, side, layer.up == "wrong")
            elif layer.how == "flat":
                motion = base.motion
            else:
                motion = _laid(layer, piece, layer.on, base, pattern)
                if layer.how == "open":
                    base.opened.update(layer.on.edges)
            new = _Placed(layer, piece, side, motion)
            if layer.how == "open" and base is not None:
                new.opened.update(layer.run.edges)
            placed.append(new)
    for p in placed:
        _outline(p)
    return placed


def _find(placed: list[_Placed], run: Run, side: Side | None) -> _Placed | None:
    """The topmost layer of the run's piece, on the run's own side or else on `side`."""
    wanted = run.side or side
    same = [p for p in placed if p.piece.name == run.piece]
    return next((p for p in reversed(same) if p.side == wanted), same[-1] if same else None)


def _half_motion(p: _Placed, side: Side | None) -> Motion:
    """The motion of one half: the other half of a piece on the fold is its mirror image."""
    if p.piece.fold and side is not None and side != p.side:
        return fold_mirror(p.piece).then(p.motion)
    return p.motion


def _laid(layer: Layer, piece: Piece, on: Run, base: _Placed, pattern: Pattern) -> Motion:
    """The motion that lays the layer's run along the run `on` of `base`."""
    own, under = path_of(pattern, layer.run), path_of(pattern, on)
    home = _half_motion(base, on.side)
    target = under.moved(home)
    if own.start.distance(own.end) < 1.0 or target.start.distance(target.end) < 1.0:
        return home
    middle = target.at(target.length / 2)
    into = target.normal_at(target.length / 2)
    if not base.piece.outline.contains(home.inverse()(middle + into * 2.0)):
        into = into * -1.0
    best: tuple[float, Motion] | None = None
    for flip in (False, True):
        for a, b, turned in ((target.start, target.end, False), (target.end, target.start, True)):
            motion = Motion.matching(own.start, own.end, a, b, flip)
            side = 1.0 if piece.outline.contains(motion.inverse()(middle + into * 2.0)) else -1.0
            if layer.how == "open":
                side = -side
            other = target.reversed() if turned else target
            misfit = sum(
                motion(own.at(own.length * s)).distance(other.at(other.length * s)) for s in (0.0, 0.25, 0.5, 0.75, 1.0)
            )
            usual = (flip != home.flips) == (layer.how == "open")
            cost = misfit + (0.0 if usual else target.length * 0.3) + (0.0 if side > 0 else target.length * 10)
            if best is None or cost < best[0]:
                best = (cost, motion)
    assert best is not None
    return best[1]


def _outline(p: _Placed) -> None:
    widths = widths_of(p.piece)
    changes = {name: 0.0 for name in p.opened}
    for name, depth in p.layer.turn:
        changes[name] = widths[name] - depth
    line = layer_line(p.piece, changes)
    p.outline = moved_curves(whole_outline(p.piece, line), p.motion)
    for name, depth in p.layer.turn:
        inner = layer_line(p.piece, changes | {name: widths[name] - 2 * depth}).edge(name)
        outer = line.edge(name)
        back = inner.reversed()
        flap = (*outer.curves, Line(outer.end, back.start), *back.curves, Line(back.end, outer.start))
        halves = [p.motion, fold_mirror(p.piece).then(p.motion)] if p.piece.fold else [p.motion]
        p.flaps.extend(moved_curves(flap, motion) for motion in halves)


def _slide(placed: list[_Placed], paths: dict[int, Path], extent: float) -> None:
    """Each layer laid on another is slid a little inwards, so that the edges below show."""
    for number, p in enumerate(placed):
        if p.layer.on is None or p.layer.how == "open" or number == 0:
            continue
        by = p.inward(paths[id(p)]) * (extent * _SLIDE)
        shift = Motion.translation(by)
        p.motion = p.motion.then(shift)
        p.outline = moved_curves(p.outline, shift)
        p.flaps = [moved_curves(flap, shift) for flap in p.flaps]


# ---- the window -------------------------------------------------------------------------------------------


def _box(curves: tuple[Curve, ...]) -> Box:
    boxes = [c.bounds() for c in curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def _area(box: Box) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


def _grown(box: Box, by: float) -> Box:
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)


def _windows(scene: Scene, pattern: Pattern, placed: list[_Placed]) -> tuple[Box, Box]:
    """What the picture shows, and the whole of the cloth."""
    if not placed:
        return (0.0, 0.0, 100.0, 60.0), (0.0, 0.0, 100.0, 60.0)
    whole = _box(tuple(c for p in placed for c in p.outline))
    size = max(whole[2] - whole[0], whole[3] - whole[1])
    whole = _grown(whole, size * 0.05)
    if scene.focus is None:
        return whole, whole
    p = _find(placed, scene.focus, None)
    if p is None:
        return whole, whole
    run = path_of(pattern, scene.focus).moved(_half_motion(p, scene.focus.side))
    box = run.bounds()
    long = max(box[2] - box[0], box[3] - box[1])
    box = _grown(box, max(long * 0.22, 45.0))
    wide, high = box[2] - box[0], box[3] - box[1]
    if wide < high * 0.8:
        box = (box[0] - (high * 0.8 - wide) / 2, box[1], box[2] + (high * 0.8 - wide) / 2, box[3])
    elif high < wide * 0.55:
        box = (box[0], box[1] - (wide * 0.55 - high) / 2, box[2], box[3] + (wide * 0.55 - high) / 2)
    if _area(box) > 0.7 * _area(whole):
        return whole, whole
    return box, whole


# ---- painting ---------------------------------------------------------------------------------------------


def _layer_items(p: _Placed, below: list[_Placed], extent: float) -> list[Item]:
    layer = p.layer
    items: list[Item] = [
        Fill(p.outline, _FILLS[layer.stuff, layer.up], name=p.piece.name),
        Stroke(p.outline, "edge", closed=True, name=f"{p.piece.name}.{p.side}"),
    ]
    for flap in p.flaps:
        items.append(Fill(flap, _FILLS[layer.stuff, _OTHER[layer.up]], name=f"{p.piece.name}.turned"))
        items.append(Stroke(flap, "edge", closed=True))
    if layer.on is not None and layer.how != "open":
        for under in below:
            items.append(Stroke(under.outline, "hidden", closed=True))
    return items


def _row_items(row: Row, placed: list[_Placed], pattern: Pattern, extent: float) -> list[Item]:
    items: list[Item] = []
    role: StrokeRole = "row" if row.ink == "new" else "old_row"
    same = [p for p in placed if p.piece.name == row.run.piece]
    tops: dict[Side, _Placed] = {}
    for p in same:
        tops[p.side] = p
    for p in tops.values():
        sides: tuple[Side | None, ...] = (row.run.side,)
        if row.run.side is None:
            sides = p.piece.sides if p.piece.fold else (p.side,)
        elif row.run.side != p.side and not p.piece.fold:
            continue
        path = path_of(pattern, row.run)
        inward = p.inward(path)
        for side in sides:
            motion = _half_motion(p, side)
            left = p.motion.vector(path.normal_at(path.length / 2)).dot(inward) > 0
            line = path.parallel(row.inset if left else -row.inset) if row.inset else path
            for part in _gapped(line, row.gap, path.length):
                if row.zigzag:
                    curves = _zigzag(part.moved(motion), extent * 0.006)
                else:
                    curves = part.moved(motion).curves
                items.append(Stroke(curves, role, name=row.run.said))
    return items


def _gapped(path: Path, gap: tuple[float, float] | None, whole: float) -> list[Path]:
    if gap is None:
        return [path]
    scale = path.length / whole
    low, high = max(gap[0], 0.0) * scale, min(gap[1], whole) * scale
    out = []
    if low > 0.5:
        out.append(path.between(0.0, low))
    if high < path.length - 0.5:
        out.append(path.between(high, path.length))
    return out


def _zigzag(path: Path, half: float) -> tuple[Curve, ...]:
    count = max(int(path.length / (half * 2)), 2)
    points = []
    for i in range(count + 1):
        d = path.length * i / count
        points.append(path.at(d) + path.normal_at(d) * (half if i % 2 else -half))
    return tuple(Line(a, b) for a, b in pairwise(points))


def _arrow_items(run: Run, way: str, placed: list[_Placed], pattern: Pattern, extent: float) -> list[Item]:
    p = _find(placed, run, None)
    if p is None:
        return []
    path = path_of(pattern, run)
    inward = p.inward(path)
    motion = _half_motion(p, run.side)
    if run.side is not None and motion is not p.motion:
        inward = motion.vector(p.motion.inverse().vector(inward))
    out: list[Item] = []
    for share in (0.3, 0.5, 0.7):
        foot = motion(path.at(path.length * share))
        tip = foot + inward * (extent * (0.09 if way == "in" else -0.09))
        start = foot - inward * (extent * (0.03 if way == "in" else -0.03))
        out.append(Stroke((Line(start, tip),), "press", arrow="end", name=f"press {way}"))
    return out


def _names(placed: list[_Placed], window: Box, extent: float) -> list[Item]:
    """Each layer's name and face where it shows."""
    from shapely import box, unary_union
    from shapely.geometry import Polygon
    from shapely.ops import polylabel

    if not placed:
        return []
    view = box(*_grown(window, -extent * 0.04))
    shapes = []
    for p in placed:
        points = [q for c in p.outline for q in c.points(1.0)[:-1]]
        shapes.append(Polygon([(q.x, q.y) for q in points]).buffer(0))
    items: list[Item] = []
    counts: dict[str, int] = {}
    for p in placed:
        counts[p.piece.name] = counts.get(p.piece.name, 0) + 1
    for number, p in enumerate(placed):
        shown = shapes[number].intersection(view)
        over = [s for q, s in zip(placed[number + 1 :], shapes[number + 1 :], strict=True) if q.layer.how != "open"]
        if over:
            shown = shown.difference(unary_union(over))
        parts = [g for g in getattr(shown, "geoms", [shown]) if g.geom_type == "Polygon" and g.area > 1.0]
        if not parts:
            continue
        widest = max(parts, key=lambda g: g.area)
        spot = polylabel(widest, 1.0)
        if spot.distance(widest.exterior) < extent * 0.02:
            continue
        at = Point(spot.x, spot.y)
        title = p.piece.title if counts[p.piece.name] == 1 else f"{p.piece.title}, {p.side}"
        face = "interfacing" if p.layer.stuff == "interfacing" else f"{p.layer.up} side"
        items.append(Label(title, at, "name"))
        items.append(Label(face, at + Vector(0.0, -extent * 0.045), "small"))
    return items


# ---- strips, cross-section, plan --------------------------------------------------------------------------


def _strip_items(scene: Scene, pattern: Pattern, window: Box | None) -> tuple[list[Item], Box]:
    """The strip itself: laid at the focus, or on its own when no piece is shown."""
    strip = pattern.strip(scene.strip)
    if window is None:
        cut = strip_outline(strip, Point(0.0, 0.0), Vector(1.0, 0.0), False)
        made = strip_outline(strip, Point(0.0, -strip.width * 1.6 - 40.0), Vector(1.0, 0.0), True)
        items: list[Item] = [
            Fill(cut, "wrong_side", strip.name),
            Stroke(cut, "edge", closed=True, name=strip.name),
            Fill(made, "strip", strip.name),
            Stroke(made, "edge", closed=True),
        ]
        quarters = (-0.25, 0.0, 0.25) if strip.fold == "in_four" else (0.0,)
        for share in quarters:
            y = share * strip.width
            items.append(Stroke((Line(Point(0.0, y), Point(strip.length, y)),), "fold"))
        down = Point(strip.length / 2, -strip.width * 0.5 - 12.0)
        items.append(Stroke((Line(down, down + Vector(0.0, -24.0)),), "press", arrow="end"))
        items.append(Label(f"{strip.title}, as cut", Point(strip.length * 0.2, 0.0), "name"))
        items.append(Label("folded and stitched", Point(strip.length * 0.2, -strip.width * 2.1 - 55.0), "name"))
        box = _grown(_box(cut + made), max(strip.length * 0.05, 20.0))
        return items, box
    if scene.focus is None:
        return [], window
    return [], window


def _panel(section: Section | None, placed: list[_Placed], window: Box, whole: Box) -> tuple[list[Item], Box]:
    """A column at the right with the cross-section above and the plan of the whole below."""
    high = window[3] - window[1]
    wide = max((window[2] - window[0]) * 0.3, high * 0.36)
    left, right = window[2], window[2] + wide
    items: list[Item] = [Fill(rectangle(left, window[1] - high, right + wide, window[3] + high), "frame")]
    gap = wide * 0.05
    middle = (window[1] + window[3]) / 2 if section is not None and placed else None
    if section is not None:
        low = middle + gap / 2 if middle is not None else window[3] - min(high, wide * 0.8)
        items.extend(_section_items(section, (left + gap, low, right, window[3])))
    if placed:
        top = middle - gap / 2 if middle is not None else window[3]
        items.extend(_plan_items(placed, (left + gap, window[1], right, top), window, whole))
    items.append(Stroke(rectangle(*window), "page", closed=True))
    return items, (window[0], window[1], right, window[3])


def _section_items(section: Section, frame: Box) -> list[Item]:
    xs = [x for _, points in section.plies for x, _ in points]
    ys = [y for _, points in section.plies for _, y in points]
    ys += [y for _, a, b in section.stitches for y in (a, b)]
    x0, x1, y0, y1 = min(xs) - 1.0, max(xs) + 1.0, min(ys) - 1.0, max(ys) + 1.0
    scale = min((frame[2] - frame[0]) * 0.9 / (x1 - x0), (frame[3] - frame[1]) * 0.7 / (y1 - y0))
    cx, cy = (frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2
    ox, oy = cx - (x0 + x1) / 2 * scale, cy - (y0 + y1) / 2 * scale

    def at(x: float, y: float) -> Point:
        return Point(ox + x * scale, oy + y * scale)

    items: list[Item] = [Stroke(rectangle(*frame), "page", closed=True)]
    roles: dict[str, StrokeRole] = {
        "main": "ply_main",
        "facing": "ply_facing",
        "interfacing": "ply_interfacing",
        "strip": "ply_strip",
    }
    for stuff, points in section.plies:
        curves = polyline([at(x, y) for x, y in points])
        items.append(Stroke(curves, roles.get(stuff, "ply_main"), thickness=0.72 * scale, name=f"section {stuff}"))
    for x, a, b in section.stitches:
        items.append(Stroke((Line(at(x, a), at(x, b)),), "needle"))
    foot = Point(cx, frame[1] + (frame[3] - frame[1]) * 0.08)
    items.append(Label("cut through", foot, "small"))
    return items


def _plan_items(placed: list[_Placed], frame: Box, window: Box, whole: Box) -> list[Item]:
    """All layers small, with a frame around the part the picture shows."""
    wide, high = whole[2] - whole[0], whole[3] - whole[1]
    scale = min((frame[2] - frame[0]) * 0.86 / wide, (frame[3] - frame[1]) * 0.86 / high)
    centre = Point((frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2)
    to = Point(centre.x - (whole[0] + whole[2]) / 2 * scale, centre.y - (whole[1] + whole[3]) / 2 * scale)
    small = Scaling(scale, to)
    items: list[Item] = [Stroke(rectangle(*frame), "page", closed=True)]
    for p in placed:
        curves = small.curves(p.outline)
        items.append(Fill(curves, "paper"))
        items.append(Stroke(curves, "kept", closed=True))
    low, far = small.point(Point(window[0], window[1])), small.point(Point(window[2], window[3]))
    items.append(Stroke(rectangle(low.x, low.y, far.x, far.y), "press", closed=True))
    return items


def _alt(scene: Scene, placed: list[_Placed], pattern: Pattern) -> str:
    parts = []
    for p in placed:
        how = {
            "together": "laid on it so that the edges meet",
            "open": "opened out beside it",
            "flat": "laid flat",
        }[p.layer.how if p.layer.on is not None else "flat"]
        face = "interfacing" if p.layer.stuff == "interfacing" else f"{p.layer.up} side up"
        parts.append(f"{p.piece.title}, {p.side}, {face}, {how}")
    text = f"From the bottom up: {'; '.join(parts)}." if parts else ""
    new = [row.run.said for row in scene.rows if row.ink == "new"]
    if new:
        text += f" Stitched along: {', '.join(new)}."
    if scene.strip:
        text += f" Strip: {pattern.strip(scene.strip).title}."
    return text.strip() or "Sewing picture."
