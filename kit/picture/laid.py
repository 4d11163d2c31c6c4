"""Laying the layers of a sewing scene: which way each piece lies, and what the picture shows of them.

Every layer is moved rigidly, never bent. Two pieces opened out along a seam of several edges cannot both lie flat
along all of it; they are laid along its straightest edge, and the picture is centred there.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from kit.geometry import Curve, Line, Motion, Path, Point, Vector, parallel
from kit.lesson.pattern import Pattern
from kit.picture.place import flat_motion, fold_mirror, layer_line, moved_curves, polyline, whole_outline, widths_of
from kit.picture.turned_part import folded_along
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Scene
from kit.sewing.spans import path_of, spans

SLIDE = 0.014
_FAR = 5000.0
_FLAT = 1.2
Box = tuple[float, float, float, float]


@dataclass
class Placed:
    """One layer where it lies: `motion` takes the draft of its half to the picture. Of edges in `parts` only the
    stretch given for each half (mm along the edge as drafted) is turned or opened out."""

    layer: Layer
    piece: Piece
    side: Side
    motion: Motion
    outline: tuple[Curve, ...] = ()
    flaps: list[tuple[Curve, ...]] = field(default_factory=list)
    opened: set[str] = field(default_factory=set)
    parts: dict[str, dict[Side, tuple[float, float]]] = field(default_factory=dict)
    shift: Motion = field(default_factory=Motion.identity)

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


# ---- laying -----------------------------------------------------------------------------------------------


def _sides(layer: Layer, piece: Piece) -> tuple[Side, ...]:
    if layer.run.side is not None:
        return (layer.run.side,)
    return ("right",) if piece.fold else piece.sides


def place_all(scene: Scene, pattern: Pattern) -> list[Placed]:
    placed: list[Placed] = []
    for layer in scene.layers:
        piece = pattern.piece(layer.run.piece)
        for side in _sides(layer, piece):
            base = find(placed, layer.on, side) if layer.on is not None else None
            if base is None or layer.on is None:
                motion = flat_motion(piece, side, layer.up == "wrong")
            elif layer.how == "flat":
                motion = base.motion
            else:
                own, under = layer.run, layer.on
                if layer.how == "open":
                    own, under = straightest(own, pattern), straightest(under, pattern)
                motion = _laid(layer, piece, own, under, base, pattern)
                if layer.how == "open":
                    motion = motion.then(_closed_up(own, under, motion, base, pattern))
                    base.opened.update(layer.on.edges)
                    base.parts.update(parts_of(pattern, layer.on))
            new = Placed(layer, piece, side, motion, parts=parts_of(pattern, layer.run))
            if layer.how == "open" and base is not None:
                new.opened.update(layer.run.edges)
            placed.append(new)
    for p in placed:
        _outline(p)
        for run, depth in p.layer.back:
            _turn_back(p, run, depth, pattern)
    return placed


def parts_of(pattern: Pattern, run: Run) -> dict[str, dict[Side, tuple[float, float]]]:
    """{edge: {half: (start, end)}} of the edges of which the run takes a part, mm along each as drafted."""
    piece = pattern.piece(run.piece)
    found: dict[str, dict[Side, tuple[float, float]]] = {}
    for each in along_line(run, pattern):
        for side in (each.side,) if each.side else piece.sides:
            for span in spans(pattern, replace(each, side=side)):
                found.setdefault(span.edge, {})[side] = (span.start, span.end)
    return {
        name: parts for name, parts in found.items() if any(_partial(piece, name, *part) for part in parts.values())
    }


def _partial(piece: Piece, edge: str, start: float, end: float) -> bool:
    return end - start < piece.edge(edge).path.length - 0.5


def along_line(run: Run, pattern: Pattern) -> tuple[Run, ...]:
    """The run, and what goes on from it on the same cloth where it is one of a line (`left.top + right.top`)."""
    if run.chain is None or run not in run.chain.runs:
        return (run,)
    one_cloth = bool(pattern.piece(run.piece).fold)
    others = (each for each in run.chain.runs if each.piece == run.piece and (one_cloth or each.side == run.side))
    return (run, *(each for each in others if each != run))


def straightest(run: Run, pattern: Pattern) -> Run:
    """The part of a run along which two pieces opened out lie flat: the run itself when it is nearly straight, else
    the middle of its longest and straightest edge, as much of it as bends less than a stitch line is wide."""
    path = path_of(pattern, run)
    if _sag(path) < _FLAT:
        return run
    if len(run.edges) > 1:

        def worth(name: str) -> float:
            edge = path_of(pattern, Run(run.piece, (name,)))
            return edge.start.distance(edge.end) ** 3 / max(edge.length, 1e-6) ** 2

        run = replace(run, edges=(max(run.edges, key=worth),), start=None, end=None)
        path = path_of(pattern, run)
    offset = run.start or 0.0
    for share in (1.0, 0.7, 0.5, 0.35, 0.25, 0.15):
        low, high = path.length * (0.5 - share / 2), path.length * (0.5 + share / 2)
        if _sag(path.between(low, high)) < _FLAT:
            break
    return run if share == 1.0 else replace(run, start=offset + low, end=offset + high)


def _sag(path: Path) -> float:
    """How far a path bends away from its chord, mm (seen at five places)."""
    chord = path.end - path.start
    if chord.length < 1e-6:
        return path.length
    along = chord.unit()
    return max(abs(along.cross(path.at(path.length * s) - path.start)) for s in (0.15, 0.3, 0.5, 0.7, 0.85))


def find(placed: list[Placed], run: Run, side: Side | None) -> Placed | None:
    """The topmost layer of the run's piece, on the run's own side or else on `side`."""
    wanted = run.side or side
    same = [p for p in placed if p.piece.name == run.piece]
    return next((p for p in reversed(same) if p.side == wanted), same[-1] if same else None)


def half_motion(p: Placed, side: Side | None) -> Motion:
    """The motion of one half: the other half of a piece on the fold is its mirror image."""
    if p.piece.fold and side is not None and side != p.side:
        return fold_mirror(p.piece).then(p.motion)
    return p.motion


def _laid(layer: Layer, piece: Piece, run: Run, on: Run, base: Placed, pattern: Pattern) -> Motion:
    """The motion that lays `run` of the layer along the run `on` of `base`."""
    own, under = path_of(pattern, run), path_of(pattern, on)
    home = half_motion(base, on.side)
    target = under.moved(home)
    if own.start.distance(own.end) < 1.0 or target.start.distance(target.end) < 1.0:
        return home
    middle = target.at(target.length / 2)
    into = target.normal_at(target.length / 2)
    if not base.piece.outline.contains(home.inverse()(middle + into * 2.0)):
        into = into * -1.0
    # Four ways to lay one line on another: ends matched straight or crossed, the piece as it is or turned over. The
    # lines must lie on each other (misfit at five places), the piece on the right side of the seam (inside when laid
    # together, outside when opened out; ten lengths weigh more than any misfit), and last it should be turned over or
    # not as that way of laying usually is (a third of a length).
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


def _closed_up(run: Run, on: Run, motion: Motion, base: Placed, pattern: Pattern) -> Motion:
    """The small slide that makes two slightly curved edges touch at their middles instead of gaping there."""
    own, under = path_of(pattern, run), path_of(pattern, on)
    target = half_motion(base, on.side)(under.at(under.length / 2))
    return Motion.translation(target - motion(own.at(own.length / 2)))


def _outline(p: Placed) -> None:
    """The layer's outline and its turned edges: a hem folds on its stitch line, and an allowance pressed open, seen
    from the wrong side, lies back on its own piece."""
    widths = widths_of(p.piece)
    turns = dict(p.layer.turn)
    if p.layer.up == "wrong":
        order = [edge.name for edge in p.piece.edges if edge.name in p.opened]  # a set has an order of its own
        turns |= {name: widths[name] for name in order if widths[name] > 0}
    some = {name: part for name, part in p.parts.items() if name in turns or name in p.opened}
    whole = [name for name in (*p.opened, *turns) if name not in some]
    changes = dict.fromkeys(whole, 0.0)
    line = layer_line(p.piece, changes)
    draft = whole_outline(p.piece, line)
    for name, parts in some.items():
        for side, part in parts.items():
            if side != p.side and not p.piece.fold:
                continue
            mirrored = side != p.side
            draft, over = folded_along(p.piece, draft, name, part, turns.get(name, 0.0), widths[name], mirrored)
            p.flaps.extend(moved_curves(flap, p.motion) for flap in over)
    if p.layer.fold is not None:
        draft, over = folded_over(draft, p.layer.fold)
        p.flaps.extend(moved_curves(part, p.motion) for part in over)
    p.outline = moved_curves(draft, p.motion)
    for name, depth in turns.items():
        if name in some:
            continue
        inner = layer_line(p.piece, changes | {name: -depth}).edge(name)
        outer = _as_wide(line.edge(name), inner)
        back = inner.reversed()
        flap = (*outer.curves, Line(outer.end, back.start), *back.curves, Line(back.end, outer.start))
        halves = [p.motion, fold_mirror(p.piece).then(p.motion)] if p.piece.fold else [p.motion]
        p.flaps.extend(moved_curves(flap, motion) for motion in halves)


def _turn_back(p: Placed, run: Run, depth: float, pattern: Pattern) -> None:
    """The allowance along a part of an edge is clipped at both ends and folded to the wrong side: the outline loses it,
    and from the wrong side it is seen lying `depth` mm inside the stitch line."""
    from shapely.geometry import Polygon

    path, inward = path_of(pattern, run), p.inward(path_of(pattern, run))
    motion = half_motion(p, run.side)
    left = p.motion.vector(path.normal_at(path.length / 2)).dot(inward) > 0
    width = max(widths_of(p.piece)[name] for name in run.edges) + 1.0

    def band(distance: float) -> tuple[Curve, ...]:
        """What lies between the stitch line and its parallel that far inside (below zero: outside)."""
        other = parallel(path, distance if left else -distance).reversed()
        ring = (*path.curves, Line(path.end, other.start), *other.curves, Line(other.end, path.start))
        return moved_curves(ring, motion)

    def cloth(ring: tuple[Curve, ...]) -> Polygon:
        return Polygon([(q.x, q.y) for curve in ring for q in list(curve.points(0.2))[:-1]]).buffer(0)

    rest = cloth(p.outline).difference(cloth(band(-width)))
    if isinstance(rest, Polygon):
        p.outline = polyline([Point(x, y) for x, y in rest.exterior.coords])
    if p.layer.up == "wrong":
        p.flaps.append(band(depth))


def folded_over(outline: tuple[Curve, ...], fold: Path) -> tuple[tuple[Curve, ...], list[tuple[Curve, ...]]]:
    """A closed outline folded along a straight line: what lies left of it stays, what lies right of it is turned over.
    Gives the outline that stays and the parts turned over, as lines at most 0.2 mm off the curves; the outline itself
    and nothing when the fold misses it."""
    from shapely.geometry import LineString, Polygon
    from shapely.ops import split

    points = [q for curve in outline for q in list(curve.points(0.2))[:-1]]
    cloth = Polygon([(q.x, q.y) for q in points]).buffer(0)
    way = (fold.end - fold.start).unit()
    a, b = fold.start - way * _FAR, fold.end + way * _FAR
    stays: list[tuple[Curve, ...]] = []
    over: list[tuple[Curve, ...]] = []
    mirror = Motion.reflection(fold.start, fold.end)
    for part in split(cloth, LineString([(a.x, a.y), (b.x, b.y)])).geoms:
        if not isinstance(part, Polygon):
            continue
        inside = part.representative_point()
        ring = polyline([Point(x, y) for x, y in part.exterior.coords])
        if way.cross(Point(inside.x, inside.y) - fold.start) > 0:
            stays.append(ring)
        else:
            over.append(moved_curves(ring, mirror))
    if not stays or not over:
        return outline, []
    stays.sort(key=lambda ring: -area_of(box_of(ring)))
    return stays[0], over + stays[1:]


def _as_wide(outer: Path, inner: Path) -> Path:
    """`outer` carried on straight at its ends as far as `inner` reaches."""
    curves = list(outer.curves)
    after = (inner.end - outer.end).dot(outer.end_tangent)
    before = (outer.start - inner.start).dot(outer.start_tangent)
    if after > 0.05:
        curves.append(Line(outer.end, outer.end + outer.end_tangent * after))
    if before > 0.05:
        curves.insert(0, Line(outer.start - outer.start_tangent * before, outer.start))
    return Path(tuple(curves))


def slide(placed: list[Placed], paths: dict[int, Path], extent: float) -> None:
    """Each layer laid on another is slid a little inwards, so that the edges below show."""
    for number, p in enumerate(placed):
        if p.layer.on is None or p.layer.how == "open" or number == 0:
            continue
        by = p.inward(paths[id(p)]) * (extent * SLIDE)
        shift = Motion.translation(by)
        p.shift = shift
        p.motion = p.motion.then(shift)
        p.outline = moved_curves(p.outline, shift)
        p.flaps = [moved_curves(flap, shift) for flap in p.flaps]


# ---- the window -------------------------------------------------------------------------------------------


def box_of(curves: tuple[Curve, ...]) -> Box:
    boxes = [c.bounds() for c in curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def area_of(box: Box) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


def grown(box: Box, by: float) -> Box:
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)


def _work_box(scene: Scene, placed: list[Placed]) -> Box | None:
    """What the lines of the work itself take up, where it follows lines of the draft and not a run."""
    lines = [(row.run, row.line) for row in scene.rows if row.line is not None and row.ink == "new"]
    lines += [(thing.run, thing.line) for thing in scene.things if thing.kind != "caught"]  # the seam is the work there
    boxes = []
    for run, line in lines:
        p = find(placed, run, None)
        if p is not None:
            boxes.append(line.moved(half_motion(p, run.side)).bounds())
    return _around_all(boxes) if boxes else None


def _around_all(boxes: list[Box]) -> Box:
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def windows(scene: Scene, pattern: Pattern, placed: list[Placed]) -> tuple[Box, Box]:
    """What the picture shows, and the whole of the cloth."""
    if not placed:
        return (0.0, 0.0, 100.0, 60.0), (0.0, 0.0, 100.0, 60.0)
    whole = box_of(tuple(c for p in placed for part in (p.outline, *p.flaps) for c in part))
    size = max(whole[2] - whole[0], whole[3] - whole[1])
    whole = grown(whole, size * 0.05)
    if scene.focus is None:
        return whole, whole
    p = find(placed, scene.focus, None)
    if p is None:
        return whole, whole
    focus = straightest(scene.focus, pattern) if any(layer.how == "open" for layer in scene.layers) else scene.focus
    lines = along_line(focus, pattern)
    boxes = [path_of(pattern, run).moved(half_motion(p, run.side)).bounds() for run in lines]
    box = (_work_box(scene, placed) if len(lines) == 1 else None) or _around_all(boxes)
    long = max(box[2] - box[0], box[3] - box[1])
    box = grown(box, max(long * 0.22, 90.0 if scene.strip else 45.0 if focus is scene.focus else 35.0))
    wide, high = box[2] - box[0], box[3] - box[1]
    # A long narrow window would be shown small on a page; it is grown to a shape that a picture's frame takes well. One
    # that comes to most of the cloth shows all of it: a crop that hides a corner only puzzles.
    if wide < high * 0.8:
        box = (box[0] - (high * 0.8 - wide) / 2, box[1], box[2] + (high * 0.8 - wide) / 2, box[3])
    elif high < wide * 0.55:
        box = (box[0], box[1] - (wide * 0.55 - high) / 2, box[2], box[3] + (wide * 0.55 - high) / 2)
    if area_of(box) > 0.7 * area_of(whole):
        return whole, whole
    return box, whole
