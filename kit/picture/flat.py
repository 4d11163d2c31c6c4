"""The garment laid flat, for the cover: the finished pieces on one another as they lie on a table.

Seen from in front, the wearer's left is at the viewer's right, the back lies undermost with its wrong side showing
inside the neck, and the right front laps over the left. What a pattern has besides fronts and backs (collar, cuffs,
pockets, strips that no sewing step attaches) lies beside the garment. A pattern without fronts and backs shows its
pieces next to one another.
"""

from __future__ import annotations

from typing import Any, Literal

from kit.geometry import Cubic, Curve, Motion, Path, Point, Vector, parallel
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Drawing, Fill, FillRole, Item, Label, Stroke
from kit.picture.laid import Placed, box_of, half_motion
from kit.picture.place import (
    flat_motion,
    is_back,
    is_facing,
    layer_line,
    moved_curves,
    polyline,
    rectangle,
    strip_outline,
    whole_outline,
)
from kit.piece.allowance import hem_edges
from kit.piece.piece import Piece, Side, Strip
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.scene import Layer
from kit.sewing.spans import path_of
from kit.units import System, both
from kit.wording.lists import strung

View = Literal["front", "back"]
_ON_TOP = ("pocket", "flap")


def laid_flat(pattern: Pattern, view: View = "front", measured: System | None = None) -> Drawing:
    """The finished garment laid flat, seen from the front or the back. `measured` draws how wide and how long it lies,
    in that system first."""
    shown = [piece for piece in pattern.pieces if piece.cut.cloth == "main" and not is_facing(piece)]
    body = [piece for piece in shown if _is_body(piece)]
    items: list[Item] = []
    placed: list[Placed] = []
    attached: set[str] = set()
    if body:
        placed = _stack(body, view)
        for p in placed:
            items.extend(_ties(p, pattern, view, attached))
            items.extend(_piece(p, pattern))
            items.extend(_sewn_on(p, pattern, attached))
        items.extend(_loops(placed, pattern, attached))
    loose = [piece for piece in shown if piece not in body and piece.name not in attached]
    strips = [strip for strip in pattern.strips if strip.name not in attached]
    beside = _beside(loose, strips, box_of(tuple(c for p in placed for c in p.outline)) if placed else None)
    items.extend(beside)
    across = _across(placed, measured) if measured and placed else []
    items.extend(across)
    names = [piece.title for piece in body] or [piece.title for piece in shown]
    alt = [say(f"picture.flat_{view}", title=pattern.lesson.title, pieces=strung(names))]
    if across:
        alt.append(say("picture.flat_measured", width=across[0].text, length=across[1].text))
    if attached:
        titles = {piece.name: piece.title for piece in pattern.pieces}
        titles |= {strip.name: strip.title for strip in pattern.strips}
        alt.append(say("picture.flat_with", pieces=strung([titles[name] for name in sorted(attached)])))
    if loose or strips:
        parts = [piece.title for piece in loose] + [strip.title for strip in strips]
        alt.append(say("picture.flat_beside", pieces=strung(parts)))
    return Drawing(tuple(items), alt=" ".join(alt), title=pattern.lesson.title)


def _across(placed: list[Placed], system: System) -> list[Dimension]:
    """How wide and how long the body of the garment lies, without what hangs from it."""
    x0, y0, x1, y1 = box_of(tuple(c for p in placed for c in p.outline))
    away = (y1 - y0) * 0.09
    wide, long = (both(size, system, "finished") for size in (x1 - x0, y1 - y0))
    return [
        Dimension(Point(x0, y0), Point(x1, y0), wide, -away, name="width as it lies"),
        Dimension(Point(x1, y0), Point(x1, y1), long, -away, name="length as it lies"),
    ]


def _is_body(piece: Piece) -> bool:
    """Whether a piece lies where the body is: it is worn at the front or back, in two halves, and sewn on nothing."""
    return bool(piece.worn) and piece.role not in _ON_TOP and bool(piece.fold or piece.cut.mirrored)


def _stack(body: list[Piece], view: View) -> list[Placed]:
    """The layers from the bottom up, neck points on one another."""
    backs = [piece for piece in body if is_back(piece)]
    fronts = [piece for piece in body if not is_back(piece)]
    far, near = (backs, fronts) if view == "front" else (fronts, backs)
    order: tuple[Side, Side] = ("left", "right") if view == "front" else ("right", "left")
    out: list[Placed] = []
    for group, wrong in ((far, True), (near, False)):
        for piece in group:
            sides: tuple[Side, ...] = ("right",) if piece.fold else order
            for side in sides:
                motion = flat_motion(piece, side, wrong)
                shift = _neck_shift(piece, body)
                motion = motion.then(Motion.translation(Vector(0.0, shift)))
                layer = Layer(Run(piece.name, (piece.edges[0].name,), side), up="wrong" if wrong else "right")
                p = Placed(layer, piece, side, motion)
                line = layer_line(piece, {edge.name: 0.0 for edge in piece.edges})
                p.outline = moved_curves(whole_outline(piece, line), motion)
                out.append(p)
    return out


def _neck_shift(piece: Piece, body: list[Piece]) -> float:
    """How far up a piece moves so that its neck point lies as high as the first piece's."""
    first, own = body[0].point_of("neck_point"), piece.point_of("neck_point")
    return first.y - own.y if first is not None and own is not None else 0.0


def _piece(p: Placed, pattern: Pattern) -> list[Item]:
    items: list[Item] = [
        Fill(p.outline, "right_side" if p.layer.up == "right" else "wrong_side", name=p.piece.name),
        Stroke(p.outline, "edge", closed=True, name=f"{p.piece.name}.{p.side}"),
    ]
    for run, inset in _rows(p.piece, pattern):
        path = path_of(pattern, run)
        inward = p.inward(path)
        left = p.motion.vector(path.normal_at(path.length / 2)).dot(inward) > 0
        row = parallel(path, inset if left else -inset)
        halves: tuple[Side, ...] = p.piece.sides if p.piece.fold else (p.side,)
        for side in halves:
            if run.side in (None, side):
                items.append(Stroke(row.moved(half_motion(p, side)).curves, "old_row", name=run.said))
    return items


def _operations(pattern: Pattern, kind: str) -> list[Any]:
    return [op for _, op in operations(pattern) if op.kind == kind]


def _rows(piece: Piece, pattern: Pattern) -> list[tuple[Run, float]]:
    """Rows that show on the right side: hems and topstitching, (run, mm inside the stitch line)."""
    found: list[tuple[Run, float]] = []
    for kind in ("hem", "topstitch"):
        for op in _operations(pattern, kind):
            scene = op.scene(pattern)
            insets = [row.inset for row in scene.rows if row.inset > 0]
            for run in op.runs():
                if run.piece == piece.name:
                    found.extend((run, inset) for inset in insets[:1])
    if not pattern.sewing:
        for name in hem_edges(piece):
            allowance = float(piece.edge(name).allowance or 0.0)
            if allowance > 3.0:
                found.append((Run(piece.name, (name,)), allowance - 2.0))
    return found


# ---- bands and pockets ------------------------------------------------------------------------------------


def _sewn_on(p: Placed, pattern: Pattern, attached: set[str]) -> list[Item]:
    """Bands, cuffs and waistbands along the edges of this half, as wide as they are finished, and its patch pockets."""
    items: list[Item] = []
    stuff: FillRole = "right_side" if p.layer.up == "right" else "wrong_side"
    for op in _operations(pattern, "set_band"):
        (name, *_) = dict.fromkeys(run.piece for run in op.a)
        wide = _band_width(pattern.piece(name), pattern)
        for run in op.b:
            if run.piece != p.piece.name:
                continue
            attached.update(other.piece for other in op.a)
            attached.update(inner for inner in _inner_bands(name, pattern))
            band = _beyond(path_of(pattern, run), wide, p.piece)
            for side in p.piece.sides if p.piece.fold else (p.side,):
                if run.side in (None, side):
                    outline = moved_curves(band, half_motion(p, side))
                    items += [Fill(outline, stuff, name), Stroke(outline, "edge", closed=True, name=name)]
    for op in _operations(pattern, "patch_pocket"):
        if op.at.piece != p.piece.name or op.at.mark.path is None:
            continue
        attached.update(run.piece for run in op.edges)
        if p.layer.up == "wrong" or op.at.side not in (None, p.side):
            continue
        for side in p.piece.sides if p.piece.fold else (p.side,):
            outline = moved_curves(op.at.mark.path.curves, half_motion(p, side))
            name = op.edges[0].piece
            items += [Fill(outline, "right_side", name), Stroke(outline, "edge", closed=True, name=name)]
    return items


def _beyond(path: Path, wide: float, piece: Piece) -> tuple[Curve, ...]:
    """The outline of a band `wide` mm along the outside of an edge, as lines at most 0.3 mm off."""
    from shapely.geometry import LineString, Polygon

    own = Polygon([(q.x, q.y) for curve in piece.outline.curves for q in list(curve.points(0.3))[:-1]]).buffer(0)
    around = LineString([(q.x, q.y) for q in path.points(0.3)]).buffer(wide, cap_style="flat")
    left = around.difference(own)
    largest = max(getattr(left, "geoms", [left]), key=lambda part: part.area)
    return polyline([Point(x, y) for x, y in largest.exterior.coords])


def _inner_bands(name: str, pattern: Pattern) -> list[str]:
    """The pieces that a band is seamed to: its inner half, where it is two."""
    found = []
    for op in _operations(pattern, "seam_band"):
        names = [run.piece for run in op.runs()]
        if name in names:
            found += names
    return found


def _band_width(piece: Piece, pattern: Pattern) -> float:
    """How wide a band is finished: its height, or half of it when it is one piece folded lengthwise."""
    x0, y0, x1, y1 = piece.outline.bounds()
    return min(x1 - x0, y1 - y0) / (1.0 if _inner_bands(piece.name, pattern) else 2.0)


# ---- strips -----------------------------------------------------------------------------------------------


def _ties(p: Placed, pattern: Pattern, view: View, attached: set[str]) -> list[Item]:
    """Strips stitched to an edge of this half: they hang from it, under its cloth."""
    items: list[Item] = []
    for op in _operations(pattern, "attach_strip"):
        run: Run = op.to
        if run.piece != p.piece.name or (run.side not in (None, p.side) and not p.piece.fold):
            continue
        attached.add(op.name)
        strip = pattern.strip(op.name)
        path = path_of(pattern, run)
        at = min(max(float(op.at), 0.0), path.length)
        sides: tuple[Side, ...] = (run.side or p.side,) if not p.piece.fold else (p.piece.sides)
        for side in sides:
            motion = half_motion(p, side)
            inward = p.inward(path)
            if motion is not p.motion:
                inward = motion.vector(p.motion.inverse().vector(inward))
            items.extend(_hanging(strip, motion(path.at(at)), inward * -1.0))
    return items


def _hanging(strip: Strip, at: Point, out: Vector) -> list[Item]:
    """A strip from `at` outwards and hanging down, its length kept within a few hundredths."""
    long, half = strip.finished_length or strip.length, (strip.finished_width or strip.width) / 2
    side = 1.0 if out.x >= 0 else -1.0
    start = at - Vector(side * 12.0, 0.0)
    bend = start + Vector(side * long * 0.42, long * 0.02)
    low = start + Vector(side * long * 0.50, -long * 0.16)
    end = start + Vector(side * long * 0.47, -long * 0.71)
    spine = Cubic(start, bend, low, end)
    left, right = Path(spine.parallel(half)), Path(spine.parallel(-half)).reversed()
    outline: tuple[Curve, ...] = (
        *left.curves,
        *polyline([left.end, right.start]),
        *right.curves,
        *polyline([right.end, left.start]),
    )
    return [Fill(outline, "strip", strip.name), Stroke(outline, "edge", closed=True, name=strip.name)]


def _loops(placed: list[Placed], pattern: Pattern, attached: set[str]) -> list[Item]:
    """Loops stitched over a seam, where that half lies uppermost with its right side up."""
    items: list[Item] = []
    for op in _operations(pattern, "belt_loop"):
        attached.add(op.name)
        strip = pattern.strip(op.name)
        run: Run = op.seam
        for p in placed:
            if p.piece.name != run.piece or p.layer.up == "wrong":
                continue
            path = path_of(pattern, run)
            at = min(max(float(op.at), 0.0), path.length)
            for side in p.piece.sides if p.piece.fold else (p.side,):
                if run.side not in (None, side):
                    continue
                motion = half_motion(p, side)
                along = motion.vector(path.tangent_at(at))
                outline = strip_outline(strip, motion(path.at(at)), along, True)
                items.append(Fill(outline, "strip", strip.name))
                items.append(Stroke(outline, "edge", closed=True, name=strip.name))
    return items


# ---- what lies beside -------------------------------------------------------------------------------------


def _beside(pieces: list[Piece], strips: list[Strip], garment: tuple[float, float, float, float] | None) -> list[Item]:
    items: list[Item] = []
    x = 0.0 if garment is None else garment[2] + (garment[2] - garment[0]) * 0.08
    top = None if garment is None else garment[3]
    for piece in pieces:
        line = layer_line(piece, {edge.name: 0.0 for edge in piece.edges})
        outline = whole_outline(piece, line)
        box = box_of(outline)
        down = (top - box[3]) if top is not None else -box[3]
        outline = moved_curves(outline, Motion.translation(Vector(x - box[0], down)))
        items.append(Fill(outline, "right_side", name=piece.name))
        items.append(Stroke(outline, "edge", closed=True, name=piece.name))
        middle = Point(x + (box[2] - box[0]) / 2, down + box[1] - (box[3] - box[1]) * 0.06 - 8.0)
        items.append(Label(piece.title, middle, "name"))
        x += (box[2] - box[0]) * 1.15 + 20.0
    for strip in strips:
        long, wide = strip.finished_length or strip.length, strip.finished_width or strip.width
        high = top if top is not None else 0.0
        outline = rectangle(x, high - long, x + wide, high)
        items.append(Fill(outline, "strip", name=strip.name))
        items.append(Stroke(outline, "edge", closed=True, name=strip.name))
        items.append(Label(strip.title, Point(x + wide / 2, high - long - 16.0), "name"))
        x += wide + 70.0
    return items
