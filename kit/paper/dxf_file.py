"""The pattern as a DXF drawing with the layer numbers of ASTM D6673, through ezdxf.

ASTM D6673 ("Sewn Products Pattern Data Interchange, Data Format") numbers the layers of a pattern's lines. The numbers
below are from memory and agree with a published summary of the 2010 edition (piece boundary 1, turn points 2, curve
points 3, notches 4, mirror line 6, grain line 7, internal lines 8, drill holes 13, sew lines 14, annotation 15; one
block for each piece). The wording of the texts ("Piece Name:", "Size:", "Quantity:", "Material:", "Units:") and a notch
as a point whose elevation is its depth are from memory alone. The standard builds on DXF release 13; ezdxf writes the
next one it knows, 2000 (AC1015), with the old polylines of release 13.

Every piece of every size is a block in its own millimetres, y up, placed on the model space as it lies on the sheet; a
piece that is the same in several sizes is one block. Curves become polylines within 0.03 mm; their corners stand as
points on layer 2, the places along curves on layer 3.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from io import StringIO
from typing import Any

from kit.errors import KitError
from kit.geometry import Curve, Line, Motion, Point
from kit.paper.nested import Nest, NestedPiece
from kit.paper.sheet import Sheet
from kit.picture.dart import DRILL as HOLE
from kit.picture.piece_sheet import cut_text
from kit.piece.allowance import cut_line, has_allowances, notch_lines
from kit.piece.dart import darts_lying, fold_line, legs
from kit.piece.piece import Piece

BOUNDARY, TURN, CURVE, NOTCH, MIRROR, GRAIN, INTERNAL, DRILL, SEW, TEXT = (
    "1", "2", "3", "4", "6", "7", "8", "13", "14", "15"
)  # fmt: skip
LAYERS = {
    BOUNDARY: "Piece boundary",
    TURN: "Turn points",
    CURVE: "Curve points",
    NOTCH: "Notches",
    MIRROR: "Mirror line",
    GRAIN: "Grain line",
    INTERNAL: "Internal lines",
    DRILL: "Drill holes",
    SEW: "Sew lines",
    TEXT: "Annotation text",
}
_FINE = 0.03
_SHARP = math.radians(3.0)
_HIGH = 4.0


def dxf_text(made: Nest, laid: Sheet) -> str:
    """The sheet as a DXF document (text). Raises `KitError` for what `cut_line` refuses."""
    import ezdxf
    from ezdxf import options, units

    kept = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True  # no clock and no random number: the same pattern, the same bytes
    try:
        doc = ezdxf.new("R2000", setup=False, units=units.MM)
        doc.header["$MEASUREMENT"] = 1
        for name in LAYERS:
            doc.layers.add(name, color=7)
        space = doc.modelspace()
        _style(space, made, laid)
        for each, placement in zip(made.pieces, laid.placements, strict=True):
            for sizes in _alike(each):
                piece = each.pieces[sizes[0]]
                assert piece is not None
                block = doc.blocks.new(_block_name(piece, [made.sizes[size] for size in sizes], len(made.sizes)))
                _piece(block, piece, made, sizes)
                _insert(space, block.name, each.motions[sizes[0]].then(placement.motion))
        trouble = doc.audit()
        if trouble.has_errors:
            raise KitError(
                f"the DXF file would be unsound ({trouble.errors[0].message}).", do="Use the SVG file instead."
            )
        target = StringIO()
        doc.write(target)
        return target.getvalue()
    finally:
        options.write_fixed_meta_data_for_testing = kept


def _alike(each: NestedPiece) -> list[tuple[int, ...]]:
    """The sizes of a piece, those with the same paper together."""
    groups: dict[Any, list[int]] = {}
    for size, piece in enumerate(each.pieces):
        if piece is not None:
            key = (piece, each.motions[size]) if not each.alike else piece.name
            groups.setdefault(key, []).append(size)
    return [tuple(group) for group in groups.values()]


def _block_name(piece: Piece, names: Sequence[str], every: int) -> str:
    size = names[0] if len(names) == 1 else "ALL" if len(names) == every else "_".join(names)
    return re.sub(r"[^A-Z0-9_-]", "_", f"{piece.name}_{size}".upper())


def _insert(space: Any, name: str, motion: Motion) -> None:
    attribs = {"layer": BOUNDARY, "rotation": math.degrees(motion.angle)}
    if motion.flips:
        attribs["yscale"] = -1.0
    space.add_blockref(name, (motion.dx, motion.dy), dxfattribs=attribs)


def _style(space: Any, made: Nest, laid: Sheet) -> None:
    """What is said of the whole pattern, under the sheet."""
    lesson = made.pattern.lesson
    lines = [
        f"Style Name: {lesson.title}",
        f"Edition: {lesson.edition}",
        *([f"Creation Date: {lesson.date}"] if lesson.date else []),
        *([f"Author: {lesson.author}"] if lesson.author else []),
        f"Sample Size: {made.sizes[len(made.sizes) // 2]}",
        "Units: METRIC",
    ]
    for row, line in enumerate(lines, 1):
        _text(space, line, Point(0.0, -row * _HIGH * 2.0), BOUNDARY)


def _piece(block: Any, piece: Piece, made: Nest, sizes: Sequence[int]) -> None:
    names = [made.sizes[size] for size in sizes]
    boundary = (
        cut_line(piece).curves if has_allowances(piece) else [c for edge in piece.edges for c in edge.path.curves]
    )
    _polyline(block, boundary, BOUNDARY, closed=True)
    for edge in piece.edges:
        if edge.name == piece.fold:
            block.add_line(_xy(edge.path.start), _xy(edge.path.end), dxfattribs={"layer": MIRROR})
        elif edge.allowance or edge.extra:
            _polyline(block, edge.path.curves, SEW)
    for notch in notch_lines(piece) if has_allowances(piece) else ():
        # A point that carries its depth as third coordinate, and a line for whoever only looks at the drawing.
        for line in notch.lines:
            block.add_point((*_xy(line.start), line.length), dxfattribs={"layer": NOTCH})
            block.add_line(_xy(line.start), _xy(line.end), dxfattribs={"layer": NOTCH})
    if piece.grain is not None:
        block.add_line(_xy(piece.grain.start), _xy(piece.grain.end), dxfattribs={"layer": GRAIN})
    for dart in darts_lying(piece):
        for leg in legs(piece, dart):
            _polyline(block, leg.curves, SEW)
        fold = fold_line(piece, dart)
        _polyline(block, fold.curves, INTERNAL)
        if fold.length > 2 * HOLE:
            block.add_point(_xy(fold.at(HOLE)), dxfattribs={"layer": DRILL})
    for pleat in piece.pleats:
        for path in pleat.lines:
            _polyline(block, path.curves, INTERNAL)
    for mark in piece.marks:
        if mark.path is not None:
            _polyline(block, mark.path.curves, INTERNAL)
            _text(block, mark.label, mark.path.at(mark.path.length / 2), TEXT)
        elif mark.point is not None:
            block.add_point(_xy(mark.point), dxfattribs={"layer": DRILL if mark.kind == "drill" else INTERNAL})
            _text(block, mark.label, mark.point, TEXT)
        elif piece.has_edge(mark.edge):
            path = piece.edge(mark.edge).path
            for distance in {mark.start, mark.end}:
                at = path.at(min(max(distance, 0.0), path.length))
                block.add_point(_xy(at), dxfattribs={"layer": INTERNAL})
    middle = piece.outline.label_point()
    said = [
        f"Piece Name: {piece.title}",
        *([f"Piece Number: {piece.number}"] if piece.number else []),
        f"Size: {', '.join(names)}",
        f"Quantity: {piece.cut.count}",
        f"Material: {piece.cut.cloth}",
        f"Annotation: {cut_text(piece.cut)}",
    ]
    for row, words in enumerate(said):
        _text(block, words, Point(middle.x, middle.y - row * _HIGH * 1.6), BOUNDARY)


def _polyline(block: Any, curves: Sequence[Curve], layer: str, closed: bool = False) -> None:
    """A run of curves as one polyline, with its turn points and curve points."""
    places = list(_vertices(curves, closed))
    if len(places) < 2:
        return
    vertices = [_xy(point) for point, _ in places]
    block.add_polyline2d(vertices, close=closed, dxfattribs={"layer": layer})
    for point, turns in places:
        block.add_point(_xy(point), dxfattribs={"layer": TURN if turns else CURVE})


def _vertices(curves: Sequence[Curve], closed: bool) -> Iterable[tuple[Point, bool]]:
    """The vertices of a run of curves and whether the line turns there; a corner, a loose end, or where two straight
    lines meet."""
    runs = [curve for curve in curves if curve.length > _FINE / 10]
    for place, curve in enumerate(runs):
        before = runs[place - 1] if place or closed else None
        yield curve.start, before is None or _turns(before, curve)
        yield from ((point, False) for point in curve.points(_FINE)[1:-1])
    if runs and not closed:
        yield runs[-1].end, True


def _turns(before: Curve, after: Curve) -> bool:
    if isinstance(before, Line) and isinstance(after, Line):
        return True
    one, other = before.tangent(1.0), after.tangent(0.0)
    return abs(math.atan2(one.cross(other), one.dot(other))) > _SHARP


def _text(block: Any, text: str, at: Point, layer: str) -> None:
    plain = " ".join(text.split())
    block.add_text(plain, height=_HIGH, dxfattribs={"layer": layer, "insert": (at.x, at.y)})


def _xy(point: Point) -> tuple[float, float]:
    return round(point.x, 6), round(point.y, 6)
