"""DXF drawings, R12 to 2018, as strokes in millimetres, through ezdxf.

Lines, arcs, circles, ellipses, polylines with bulges and splines of the model space are read, block references
taken apart; arcs stay arcs and plain cubic splines are exact. Units: header variable $INSUNITS (DXF reference,
HEADER section); R12 has none.
"""

from __future__ import annotations

import math
import struct
from collections.abc import Iterator
from pathlib import Path as FilePath
from typing import Any

from kit.blocks.strokes import UNITS, Sketch, SketchStroke, ellipse, ended, finite
from kit.errors import KitError
from kit.geometry import Arc, Cubic, Curve, Line, Path, Point, Vector

_CURVES = {"LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE", "SPLINE"}
_FINE = 8
"""A spline that is no plain cubic is halved so often between two of its knots: 0.0001 mm off on an arc 5 cm round (each
halving less brings four times that), and some hundred curves for an edge."""
_MM = 4
_DAMAGED = (
    OSError,
    ValueError,
    LookupError,
    TypeError,
    AttributeError,
    ArithmeticError,
    StopIteration,
    RuntimeError,  # also what a generator makes of StopIteration, and RecursionError
    AssertionError,
    struct.error,
)
"""What reading a damaged file may end in, besides ezdxf's own errors."""


def read_dxf(path: FilePath, *, unit: str = "") -> Sketch:
    """The strokes of the DXF file at `path`, in the unit it names, else in `unit`. Raises `KitError` for a file
    that is no DXF, names no unit when none is given, or refers to another drawing."""
    import ezdxf

    doc = _document(path)
    factor, messages = _factor(doc, path.name, unit)
    try:
        return _sketch(doc, path.name, factor, messages)
    except KitError:
        raise
    except (ezdxf.DXFError, *_DAMAGED):
        raise _unsound(path) from None


def _sketch(doc: Any, file: str, factor: float, messages: list[str]) -> Sketch:
    hidden = {layer.dxf.name for layer in doc.layers if layer.is_off() or layer.is_frozen()}
    strokes: list[SketchStroke] = []
    skipped: dict[str, int] = {}
    left = 0
    for entity in _flat(doc, file):
        layer = entity.dxf.get("layer", "0")
        if layer in hidden or entity.dxf.get("invisible", 0):
            left += 1
            continue
        kind = entity.dxftype()
        if kind not in _CURVES:
            skipped[kind] = skipped.get(kind, 0) + 1
            continue
        curves = [c for c in _curves(entity, factor, file) if c.length > 1e-6]
        if curves:
            strokes.append(SketchStroke((layer,), _joined(curves)))
    if left:
        messages.append(f"{left} lines on layers that are switched off are left out.")
    if skipped:
        messages.append(
            "Left out, as they are not lines: " + ", ".join(f"{n} {kind}" for kind, n in sorted(skipped.items())) + "."
        )
    return Sketch(file, tuple(strokes), tuple(messages))


def _document(path: FilePath) -> Any:
    import ezdxf
    from ezdxf import recover

    try:
        return ezdxf.readfile(path)
    except (ezdxf.DXFError, *_DAMAGED):
        pass
    try:
        doc, audit = recover.readfile(path)
        sound = not audit.has_errors and bool(list(doc.modelspace()))
    except (ezdxf.DXFError, *_DAMAGED):
        sound = False
    if not sound:
        raise _unsound(path)
    return doc


def _unsound(path: FilePath) -> KitError:
    return KitError(
        "this is not a sound DXF file, or nothing is drawn in it.",
        where=path.name,
        do="Open it in the drawing program and save it as DXF, version R12 to 2018.",
    )


def _factor(doc: Any, file: str, unit: str) -> tuple[float, list[str]]:
    from ezdxf import units
    from ezdxf.enums import InsertUnits

    code = int(doc.header.get("$INSUNITS", 0) or 0)
    known = 0.0
    if code:
        try:
            known = units.conversion_factor(InsertUnits(code), InsertUnits(_MM))
        except (ValueError, KeyError, IndexError, TypeError):
            known = 0.0
    if unit:
        if known and abs(known / UNITS[unit] - 1) > 1e-6:
            return UNITS[unit], [f"The file says its unit is {units.unit_name(code)}; it is read in {unit} as asked."]
        return UNITS[unit], []
    if not known:
        raise KitError(
            "the drawing does not say in what unit it is.",
            where=file,
            do="Give it: unit='mm', unit='cm' or unit='inch'.",
        )
    return known, []


def _flat(doc: Any, file: str) -> Iterator[Any]:
    """The model space's entities, block references taken apart."""
    from ezdxf.disassemble import recursive_decompose

    outside = {b.name for b in doc.blocks if b.block is not None and (b.block.is_xref or b.block.is_xref_overlay)}
    for insert in doc.modelspace().query("INSERT"):
        if insert.dxf.name in outside:
            other = doc.blocks.get(insert.dxf.name).block.dxf.get("xref_path", insert.dxf.name)
            raise KitError(
                f"part of the drawing lies in another file, '{other}'. Nothing is fetched.",
                where=file,
                do="Bind that drawing into this one in the drawing program and save it again.",
            )
    yield from recursive_decompose(doc.modelspace())


def _curves(entity: Any, factor: float, file: str) -> list[Curve]:
    def point(p: Any) -> Point:
        return finite(p.x * factor, p.y * factor)

    kind = entity.dxftype()
    if kind in ("LWPOLYLINE", "POLYLINE"):
        if kind == "POLYLINE" and (entity.is_polygon_mesh or entity.is_poly_face_mesh):
            return []
        return [c for part in entity.virtual_entities() for c in _curves(part, factor, file)]
    if kind == "LINE":
        return [Line(point(entity.dxf.start), point(entity.dxf.end))]
    if kind == "SPLINE":
        return [Cubic(*(point(p) for p in four)) for four in _beziers(entity)]
    # Circles, arcs and ellipses are told in a plane of their own. One that faces down (extrusion 0, 0, -1) is seen from
    # behind, so that its arcs run the other way round; any other plane would be seen foreshortened.
    up = entity.dxf.extrusion
    if math.hypot(up.x, up.y) > 1e-6:
        raise KitError(
            f"a curve on layer '{entity.dxf.layer}' does not lie flat on the page.",
            where=file,
            do="Flatten the drawing in the drawing program.",
        )
    if kind == "ELLIPSE":
        tool = entity.construction_tool()
        u, v = (Vector(axis.x * factor, axis.y * factor) for axis in (tool.major_axis, tool.minor_axis))
        sweep = tool.param_span
        return list(ellipse(point(tool.center), u, v, tool.start_param, sweep))
    centre = point(entity.ocs().to_wcs(entity.dxf.center))
    if kind == "CIRCLE":
        return [Arc(centre, entity.dxf.radius * factor, 0.0, 2 * math.pi)]
    start = point(entity.start_point) - centre
    sweep = math.radians((entity.dxf.end_angle - entity.dxf.start_angle) % 360) or 2 * math.pi
    return [Arc(centre, start.length, start.angle, math.copysign(sweep, up.z))]


def _beziers(entity: Any) -> Iterator[Any]:
    """Cubic Bezier points of a spline: exact where it is a plain cubic, else very near."""
    tool = entity.construction_tool()
    if tool.degree == 3 and not tool.is_rational and tool.is_clamped:
        yield from tool.bezier_decomposition()
        return
    for curve in tool.cubic_bezier_approximation(level=_FINE):
        yield curve.control_points


def _joined(curves: list[Curve]) -> Path:
    """One entity's curves in order of travel (a polyline's arcs are given in their own)."""
    if len(curves) > 1 and min(curves[0].start.distance(p) for p in (curves[1].start, curves[1].end)) < min(
        curves[0].end.distance(p) for p in (curves[1].start, curves[1].end)
    ):
        curves = [curves[0].reversed(), *curves[1:]]
    found = [curves[0]]
    for curve in curves[1:]:
        if curve.end.distance(found[-1].end) < curve.start.distance(found[-1].end):
            curve = curve.reversed()
        if found[-1].end.distance(curve.start) > 1e-9:
            found[-1] = ended(found[-1], curve.start)
        found.append(curve)
    return Path(tuple(found))
