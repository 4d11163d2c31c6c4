"""Rules that a finished sewing picture must keep, as programs over its strokes and fills.

They know the garment's state only from the sewing order (`state_before`), never from the code that drew the picture.
Reasons and numbers: a picture grammar of twenty rules, made by looking at every picture of the booklets; common
practice, no source.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from shapely.geometry import LineString, Polygon, box

from kit.geometry import Curve, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dot, Drawing, Fill, Stroke
from kit.picture.sewing import scene_drawing
from kit.picture.theme import THEME
from kit.sewing.before import state_before
from kit.sewing.in_work import shown_scenes
from kit.sewing.operation import Operation
from kit.sewing.scene import Scene
from kit.sewing.state import State

RIGHT, WRONG = {"right_side", "facing", "strip", "lining"}, {"wrong_side", "interfacing"}
NEW = {"row", "baste", "hand"}
LEAST = 3.0  # mm of a line that count as seen


@dataclass(frozen=True)
class Picture:
    """One finished picture: where it comes from, the scene, what was drawn, the picture of the operation before it."""

    key: str
    number: int
    operation: Operation
    scene: Scene
    drawing: Drawing
    state: State
    pattern: Pattern
    before: Picture | None

    @property
    def bounds(self) -> Any:
        """The part that shows cloth: without the column of cross-section and plan."""
        assert self.drawing.bounds is not None
        x0, y0, x1, y1 = self.drawing.bounds
        frames = [item for item in self.drawing.items if isinstance(item, Stroke) and item.role == "page"]
        boxes = [around(item.curves) for item in frames]
        left = [b for b in boxes if abs(b[0] - x0) < 0.02 * (x1 - x0) + 1.0]
        if left:
            x0, y0, x1, y1 = max(left, key=lambda b: (b[2] - b[0]) * (b[3] - b[1]))
        return box(x0, y0, x1, y1)

    def strokes(self, *roles: str) -> list[Stroke]:
        return [item for item in self.drawing.items if isinstance(item, Stroke) and item.role in roles]

    def seen(self, stroke: Stroke) -> Any:
        """What of a line is in the part that shows cloth."""
        return LineString(points(stroke.curves)).intersection(self.bounds)

    def fills(self) -> list[Fill]:
        return [item for item in self.drawing.items if isinstance(item, Fill) and item.name]


def points(curves: tuple[Curve, ...]) -> list[tuple[float, float]]:
    found = [(curves[0].start.x, curves[0].start.y)]
    for curve in curves:
        found += [(p.x, p.y) for p in list(curve.points(0.3))[1:]]
    return found


def around(curves: tuple[Curve, ...]) -> tuple[float, float, float, float]:
    boxes = [c.bounds() for c in curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def shape(fill: Fill) -> Any:
    return Polygon(points(fill.curves)).buffer(0)


def pictures(
    pattern: Pattern, lesson: str, scenes: Callable[[Pattern, Operation], tuple[Scene, ...]] = shown_scenes
) -> Iterator[Picture]:
    """Every sewing picture of a pattern, in order."""
    for record in pattern.sewing:
        counts: Counter[str] = Counter()
        for operation in record.operations:
            counts[operation.kind] += 1
            state = state_before(pattern, operation)
            before: Picture | None = None
            for number, scene in enumerate(scenes(pattern, operation)):
                if scene.recut is not None or scene.worn or not scene.layers:
                    continue
                drawing = scene_drawing(scene, pattern)
                key = f"{lesson} {record.key} {operation.kind} {counts[operation.kind]}"
                before = Picture(key, number, operation, scene, drawing, state, pattern, before)
                yield before


# ---- 4: the picture remembers what is sewn --------------------------------------------------------------------


def closed_before(picture: Picture, name: str) -> bool:
    """Whether the edge that a stroke is named after ("front.right.hem") was wholly closed before this step."""
    parts = name.split(".")
    if len(parts) != 3 or parts[0] not in {piece.name for piece in picture.pattern.pieces}:
        return False
    piece = picture.pattern.piece(parts[0])
    if parts[2] not in {edge.name for edge in piece.edges}:
        return False
    done = [each for each in picture.state.on((parts[0], parts[1], parts[2])) if each.how != "finished"]  # type: ignore[arg-type]
    waits = picture.state.touches(("unpressed", *parts))  # its allowances stand flat until they are pressed
    return bool(done) and not waits and not picture.state.raw(piece, parts[1], parts[2])  # type: ignore[arg-type]


def cut_edges_of_sewn_cloth(picture: Picture) -> Iterator[str]:
    """No edge that was sewn before is drawn as a cut edge. What this operation itself goes on with may be."""
    if not picture.operation.begins:
        return
    for stroke in picture.strokes("edge"):
        if closed_before(picture, stroke.name) and picture.seen(stroke).length > LEAST:
            yield stroke.name


def partners_missing(picture: Picture) -> Iterator[str]:
    """Where an edge that was sewn to another piece is seen, that piece is in the picture too, unless it lies inside."""
    there = {fill.name for fill in picture.fills()}
    faced = picture.state.edges("faced")
    near = {layer.run.piece for layer in picture.scene.layers if not layer.ring}  # of a far side one sees an edge
    for stroke in picture.strokes("crease"):
        parts = stroke.name.split(".")
        if parts[0] not in near or not closed_before(picture, stroke.name) or picture.seen(stroke).length < 2 * LEAST:
            continue
        key = (parts[0], parts[1], parts[2])
        others = {k[0] for seam in picture.state.seams if key in seam for k in seam if k != key}
        if not others or others & there - {parts[0]} or (others == {parts[0]}):
            continue
        up = next((fill.role for fill in reversed(picture.fills()) if fill.name == parts[0]), "")
        if key in faced and up in RIGHT:
            continue
        yield f"{stroke.name} without {', '.join(sorted(others))}"


def bands_unfolded(picture: Picture, names: set[str]) -> Iterator[str]:
    """A band that has been folded is not drawn deeper than half of what was cut and an allowance."""
    for fill in picture.fills():
        if fill.name not in names:
            continue
        piece = picture.pattern.piece(fill.name)
        x0, y0, x1, y1 = piece.outline.bounds()
        allowance = max(float(edge.allowance or 0.0) for edge in piece.edges)
        cloth = shape(fill)
        deep = cloth.area / (cloth.length / 2)  # a ribbon: its area by its length
        if deep > min(x1 - x0, y1 - y0) / 2 + allowance + 1.0:
            yield f"{fill.name} {deep:.0f} mm deep"


def folded_before(picture: Picture) -> set[str]:
    """Bands that were turned out or closed before."""
    return {fact[1] for fact in picture.state.facts if fact[0] in ("turned_out", "end_stitched")} & {
        run.piece for hung in picture.state.hung for run in hung.band
    }


# ---- 6, 7: sides and layers -----------------------------------------------------------------------------------


def _faces(picture: Picture) -> list[tuple[str, str]]:
    """(piece, role of its fill) of each layer of cloth, in painting order; interfacing laid on is none."""
    names = {piece.name for piece in picture.pattern.pieces}
    fills = [(fill.name, fill.role) for fill in picture.fills() if fill.name in names]
    rings = [layer for layer in picture.scene.layers if layer.ring]
    rest = [layer for layer in picture.scene.layers if not layer.ring]
    stuffs = ["main"] * len(rings) + [layer.stuff for layer in rest]
    return [each for each, stuff in zip(fills, stuffs, strict=False) if stuff != "interfacing"]


def turn_signs(picture: Picture) -> Iterator[str]:
    """Where the piece on top shows its other face than in the picture before, a sign says so; nowhere else."""
    sign = any(item.name == "turn over" for item in picture.drawing.items if isinstance(item, Stroke))
    flips = False
    if picture.before is not None:
        one, two = dict(_faces(picture.before)), _faces(picture)
        folded = folded_before(picture)  # a folded band has the same face on both sides
        both = [(name, role) for name, role in reversed(two) if name in one]
        top = next((each for each in both if each[0] not in folded), both[0] if both else None)
        if top is not None:
            roles = {one[top[0]], top[1]}
            flips = {role in RIGHT for role in roles} == {True, False}
    if flips and not sign:
        yield "turned without a sign"
    if sign and not flips:
        yield "a sign, and nothing is turned"


def layers_out_of_order(picture: Picture) -> Iterator[str]:
    """Cloth is painted in the order in which it lies, and of every lower layer something is seen."""
    names = [piece.name for piece in picture.pattern.pieces]
    painted = [fill.name for fill in picture.fills() if fill.name in names]
    under = sorted(layer.run.piece for layer in picture.scene.layers if layer.ring)
    over = [layer.run.piece for layer in picture.scene.layers if not layer.ring]
    each = len(painted) // max(len(under) + len(over), 1)  # a mirrored pair may be laid with both its halves
    wanted = [name for name in (*under, *over) for _ in range(each)]
    painted = sorted(painted[: len(under)]) + painted[len(under) :]
    if painted != wanted:
        yield f"{painted} for {wanted}"
    fills = [fill for fill in picture.fills() if fill.name in names]
    for number, fill in enumerate(fills[:-1]):
        left = shape(fill).intersection(picture.bounds)
        if left.area < 25.0:
            continue
        for other in fills[number + 1 :]:
            left = left.difference(shape(other))
        dashed = any(s.name == f"below {fill.name}" for s in picture.strokes("hidden"))
        if left.area < 10.0 and not dashed:
            yield f"nothing is seen of {fill.name}"


# ---- 9, 10: arrows and rows -----------------------------------------------------------------------------------


def ways(picture: Picture) -> list[Vector]:
    """The directions of the pressing arrows."""
    return [
        (s.curves[-1].end - s.curves[0].start).unit() for s in picture.strokes("press") if s.name.startswith("press")
    ]


def arrows_astray(picture: Picture) -> Iterator[str]:
    """Pressing arrows start at stitching or a fold, lie whole in the picture, and go the way the seam is pressed."""
    arrows = [s for s in picture.strokes("press") if s.name.startswith("press")]
    lines = [LineString(points(s.curves)) for s in picture.strokes("crease", "row", "old_row")]
    lines += [LineString(points(s.curves)) for s in picture.strokes("edge")] if not lines else []
    for arrow in arrows if picture.operation.kind != "turn_out" else ():  # there they pull cloth through a gap
        start, tip = arrow.curves[0].start, arrow.curves[-1].end
        spot = LineString([(start.x, start.y), (start.x + 1e-6, start.y)])
        if not any(line.distance(spot) < 1.5 for line in lines):
            yield "starts off the stitching"
        if not picture.bounds.buffer(0.01).contains(LineString([(start.x, start.y), (tip.x, tip.y)])):
            yield "leaves the picture"
    press = getattr(picture.operation.entire, "press", "")
    opened = press == "open" or (picture.operation.kind == "press" and getattr(picture.operation, "way", "") == "open")
    both = any(a.dot(b) < -0.5 for a in ways(picture) for b in ways(picture))
    if arrows and opened and not both:
        yield "pressed open, and all arrows go one way"
    if arrows and press and press not in ("open", "later") and both:
        yield "pressed to one side, and arrows go apart"


def rows_without_signs(picture: Picture) -> Iterator[str]:
    """Every row of this step has a dot at its start, where that is in the picture; no row but a box is closed."""
    dots = [item.at for item in picture.drawing.items if isinstance(item, Dot) and item.name == "row start"]
    goes_on = {row.run.said for row in picture.scene.rows if row.goes_on}
    for stroke in picture.strokes(*NEW):
        name = stroke.name
        if not name or name in goes_on or name.startswith("dart") or stroke.curves[0].length > 1e4:
            continue
        start, end = stroke.curves[0].start, stroke.curves[-1].end
        boxed = any(row.style == "box" and row.run.said == name for row in picture.scene.rows)
        if boxed:
            continue
        if start.distance(end) < 0.5:
            yield f"{name} is closed"
        inside = picture.bounds.contains(LineString([(start.x, start.y), (start.x + 1e-6, start.y)]))
        zigzag = 6.0  # its first stitch lies beside its line
        if inside and not any(dot.distance(start) < zigzag for dot in dots):
            yield f"{name} has no start"
        if picture.seen(stroke).length > 20.0 and not any(s.name == "row way" for s in picture.strokes("row_sign")):
            yield f"{name} has no direction"


# ---- 1, 11, 16: framing, dashes, cross-sections -----------------------------------------------------------------


def work_too_small(picture: Picture) -> Iterator[str]:
    """The rows, arrows and new things of the step take up two fifths of the picture's width or height."""
    signs = ("turn over", "cut mark", "place of the work")  # the last stands in the small garment beside
    work = [s.curves for s in picture.strokes(*NEW, "new", "press", "symbol", "pin") if s.name and s.name not in signs]
    laid_on = [layer.run.piece for layer in picture.scene.layers if layer.stuff == "interfacing"]
    work += [fill.curves for fill in picture.fills() if fill.name in laid_on]
    strips = {strip.name for strip in picture.pattern.strips}
    work += [fill.curves for fill in picture.fills() if fill.name in strips]
    work += [fill.curves for fill in picture.fills() if fill.name.startswith("elastic on")]
    if not work:
        return
    lines = [LineString(points(curves)).intersection(picture.bounds) for curves in work]
    boxes = [line.bounds for line in lines if not line.is_empty]
    if not boxes:
        yield "nothing of the work is seen"
        return
    x0, y0, x1, y1 = picture.bounds.bounds
    wide = (max(b[2] for b in boxes) - min(b[0] for b in boxes)) / (x1 - x0)
    high = (max(b[3] for b in boxes) - min(b[1] for b in boxes)) / (y1 - y0)
    if max(wide, high) < 0.4:
        yield f"{max(wide, high):.2f}"


def too_many_dashes(picture: Picture) -> Iterator[str]:
    """At most four families of dashes."""
    found = {THEME.lines[s.role].dash for s in picture.drawing.items if isinstance(s, Stroke) and s.role in THEME.lines}
    if len(found - {()}) > 4:
        yield str(sorted(found - {()}))


def section_without_mark(picture: Picture) -> Iterator[str]:
    """Where a cross-section stands beside the picture, a mark shows where it is taken."""
    if picture.scene.section is None or picture.scene.focus is None:
        return
    if not any(s.name == "cut mark" and picture.seen(s).length > 1.0 for s in picture.strokes("symbol")):
        yield "no mark"


Rule = Callable[[Picture], Iterator[str]]
STRICT: dict[str, Rule] = {
    "4 cut edges of sewn cloth": cut_edges_of_sewn_cloth,
    "4 partners": partners_missing,
    "4 bands folded": lambda picture: bands_unfolded(picture, folded_before(picture)),
    "6 turn signs": turn_signs,
    "7 order of layers": layers_out_of_order,
    "9 pressing arrows": arrows_astray,
    "10 rows": rows_without_signs,
}
"""Rules that, broken, make a picture say something false."""
LOOSE: dict[str, Rule] = {
    "1 framing": work_too_small,
    "11 dashes": too_many_dashes,
    "16 cut marks": section_without_mark,
}


def counted(found: list[Picture]) -> tuple[dict[str, int], list[str]]:
    """How many pictures break each rule, and each with what is wrong."""
    counts = dict.fromkeys((*STRICT, *LOOSE), 0)
    told: list[str] = []
    for picture in found:
        for name, rule in (STRICT | LOOSE).items():
            wrong = list(rule(picture))
            counts[name] += bool(wrong)
            told += [f"{name}: {picture.key} {picture.number}: {each}" for each in wrong]
    return counts, told


# ---- labels -----------------------------------------------------------------------------------------------------


def against(picture: Picture, label: dict[str, Any]) -> Iterator[str]:
    """What of a label the picture does not show."""
    cloth = {fill.name for fill in picture.fills() if shape(fill).intersection(picture.bounds).area > 20.0}
    for name in label.get("cloth", ()):
        if name not in cloth:
            yield f"no {name}"
    for name in label.get("without", ()):
        if name in cloth:
            yield f"{name} is seen"
    for name, face in label.get("up", {}).items():
        role = next((fill.role for fill in reversed(picture.fills()) if fill.name == name), "")
        if role not in (RIGHT if face == "right" else WRONG):
            yield f"{name} shows {role}"
    cut = {
        (n := s.name.split("."))[0] + "." + n[-1]
        for s in picture.strokes("edge")
        if s.name.count(".") == 2 and picture.seen(s).length > LEAST
    }
    folded = {
        (n := s.name.split("."))[0] + "." + n[-1]
        for s in picture.strokes("crease")
        if s.name.count(".") == 2 and picture.seen(s).length > LEAST
    }
    for name in label.get("closed", ()):
        if name in cut:
            yield f"{name} is a cut edge"
    for name in label.get("turned", ()):
        if name not in folded or not any(fill.name == f"{name.split('.')[0]}.turned" for fill in picture.fills()):
            yield f"{name} is not turned"
    for name in label.get("old", ()):
        if not any(s.name == f"held {name}" and picture.seen(s).length > LEAST for s in picture.strokes("old_row")):
            yield f"no row along {name}"
    if "darts" in label:
        yield from _darts(picture, label["darts"])
    if "row" in label:
        yield from _row_shape(picture, label["row"])
    if "arrows" in label:
        yield from _arrows(picture, label["arrows"])
    if label.get("ring") and not any(s.name.startswith("below ") for s in picture.strokes("hidden")):
        yield "no far side of a tube"
    yield from bands_unfolded(picture, set(label.get("folded", ())))
    for name in label.get("trimmed", ()):
        if not any(s.name == f"trimmed {name}" and picture.seen(s).length > LEAST for s in picture.strokes("removed")):
            yield f"nothing falls away of {name}"
    if label.get("trimmed") and not any(s.name.startswith("trim ") for s in picture.strokes("new")):
        yield "no new cut"
    for name in label.get("notches", ()):
        if not any(s.name == f"notch {name}" and picture.seen(s).length > 0.5 for s in picture.strokes("notch")):
            yield f"no notch on {name}"
    flaps = {fill.name for fill in picture.fills() if fill.name.endswith(".turned")}
    for name in label.get("over_seam", ()):
        if flaps != {f"{name.split('.')[0]}.turned"}:
            yield f"the allowances lie over {sorted(flaps)}"
    if label.get("over") and not any(s.name == "turn over" for s in picture.strokes("symbol")):
        yield "no sign that it is turned over"


def _darts(picture: Picture, count: int) -> Iterator[str]:
    seams = [s for s in picture.strokes("row", "old_row") if s.name.startswith("dart ") and picture.seen(s).length > 20]
    halves = {s.name for s in seams}
    if len(halves) != count:
        yield f"{len(halves)} darts"
    for seam in seams:
        top = seam.curves[0].start
        near = [s for s in picture.strokes("edge") if s.name.count(".") == 2]
        edge = min(
            near,
            key=lambda s: LineString(points(s.curves)).distance(LineString([(top.x, top.y), (top.x, top.y + 1e-6)])),
        )
        line = LineString(points(edge.curves))
        at = line.project(_spot(top))
        a, b, c, d = (line.interpolate(at + step) for step in (-14.0, -4.0, 4.0, 14.0))
        turn = math.atan2(d.y - c.y, d.x - c.x) - math.atan2(b.y - a.y, b.x - a.x)
        turn = (turn + math.pi) % (2 * math.pi) - math.pi
        if abs(math.degrees(turn)) > 10.0:
            yield f"the edge turns by {math.degrees(turn):.0f} degrees at a dart"


def _spot(p: Point) -> Any:
    from shapely.geometry import Point as Spot

    return Spot(p.x, p.y)


def _row_shape(picture: Picture, wanted: str) -> Iterator[str]:
    rows = [s for s in picture.strokes(*NEW) if picture.seen(s).length > LEAST]
    if not rows:
        yield "no row"
        return
    ends = [s.curves[0].start.distance(s.curves[-1].end) for s in rows]
    long = [sum(c.length for c in s.curves) for s in rows]
    if wanted == "box":
        crossed = [s for s in rows if len(s.curves) >= 5]
        if not crossed:
            yield "no box"
    elif wanted == "open U":
        if len(rows) != 1 or ends[0] < 10.0 or long[0] < 2.5 * ends[0]:
            yield "no open U"
    elif any(end < 0.5 for end in ends):
        yield "a closed row"


def _arrows(picture: Picture, wanted: str) -> Iterator[str]:
    found = ways(picture)
    if not found:
        yield "no arrows"
        return
    apart = any(a.dot(b) < -0.5 for a in found for b in found)
    if wanted == "apart" and not apart:
        yield "all arrows go one way"
    if wanted == "one way" and apart:
        yield "arrows go apart"
    if wanted == "in":
        cloth = [shape(fill) for fill in picture.fills()]
        for stroke in picture.strokes("press"):
            if not stroke.name.startswith("press"):
                continue  # the frame of the plan beside the picture
            tip = stroke.curves[-1].end
            if not any(each.contains(_spot(tip)) for each in cloth):
                yield "an arrow ends beside the cloth"


__all__ = ["LOOSE", "STRICT", "Picture", "against", "counted", "pairwise", "pictures"]
