"""Outlines from drawing files: written by ezdxf and svgpathtools, read back, to 0.05 mm; and what is refused.

Outside the kit: ezdxf (https://ezdxf.mozman.at) writes every DXF here and flattens curves for comparison;
svgpathtools (https://github.com/mathandy/svgpathtools) makes the path data and reads the same files again. The
size of a CSS pixel, 1/96 inch, is from CSS Values and Units 3, section 6.2."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from pathlib import Path as FilePath
from typing import Any

import ezdxf
import pytest
import svgpathtools
from ezdxf import units
from ezdxf.math import rational_bspline_from_arc
from ezdxf.path import make_path

from kit import Lesson, Traced, bodice_block, cm, inch, mm, read_traced, workshop_chart
from kit.errors import KitError
from kit.geometry import Arc, Cubic, Line, Path, Point
from kit.proof import prove

BODY = workshop_chart()["W4"]
FRONT, BACK = bodice_block(BODY)
EDGES = {
    "centre": (1, 2),
    "neck": (2, 3),
    "shoulder": (3, 4),
    "armhole": (4, 5),
    "side": (5, 6),
    "hip": (6, 1),
}
NEAR = 0.05
WAIST = 205 * mm  # the block's waist_to_hip for W4, checked below


def svg(folder: FilePath, body: str, head: str = 'width="700mm" height="900mm" viewBox="0 0 700 900"') -> FilePath:
    file = folder / "top.svg"
    file.write_text(
        f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" {head}>{body}</svg>'
    )
    return file


def d_of(paths: Iterable[Path], factor: float = 1.0, dx: float = 0.0) -> str:
    """Path data as svgpathtools writes it, y down."""

    def at(p: Point) -> complex:
        return complex(p.x * factor + dx, -p.y * factor)

    found = []
    for path in paths:
        for curve in path.curves:
            if isinstance(curve, Line):
                found.append(svgpathtools.Line(at(curve.start), at(curve.end)))
            else:
                assert isinstance(curve, Cubic)
                found.append(svgpathtools.CubicBezier(at(curve.start), at(curve.c1), at(curve.c2), at(curve.end)))
    return str(svgpathtools.Path(*found).d())


def front_d(factor: float = 1.0, dx: float = 0.0) -> str:
    return d_of([edge.path for edge in FRONT.edges], factor, dx)


def same(piece: Any, wanted: Any) -> None:
    """Every edge within 0.05 mm of the block's, both ways."""
    assert {edge.name for edge in piece.edges} == {edge.name for edge in wanted.edges}
    for edge in wanted.edges:
        read = piece.edge(edge.name).path
        assert read.start.distance(edge.path.start) < NEAR
        assert read.end.distance(edge.path.end) < NEAR
        assert read.length == pytest.approx(edge.path.length, abs=NEAR)
        for k in range(41):
            assert read.distance_to(edge.path.at(edge.path.length * k / 40)) < NEAR
            assert edge.path.distance_to(read.at(read.length * k / 40)) < NEAR


# ---- SVG ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("head", "factor", "options"),
    [
        ('width="700mm" height="900mm" viewBox="0 -600 700 900"', 1.0, {}),
        ('width="70cm" height="90cm" viewBox="0 -6000 7000 9000"', 10.0, {}),
        ('width="20in" height="20in" viewBox="0 -1000 2000 2000"', 100 / 25.4, {}),
        ('width="2646" height="3402" viewBox="0 -2000 2646 3402"', 96 / 25.4, {}),
        ('width="2646px" height="3402px"', 96 / 25.4, {}),
        ("", 72 / 25.4, {"dpi": 72}),
        ('viewBox="0 -600 700 900"', 1.0, {"unit": "mm"}),
        ('width="700mm" viewBox="0 -600 700 900"', 1.0, {}),
        ('height="90cm" viewBox="0,-600,700,900"', 1.0, {}),
    ],
)
def test_svg_round_trip(tmp_path: FilePath, head: str, factor: float, options: dict[str, Any]) -> None:
    file = svg(tmp_path, f'<path d="{front_d(factor)}" fill="none"/>', head)
    drawn = read_traced(file, **options)
    top = drawn.top("Shell", {"front": EDGES}, waist=WAIST, size="W4")
    (front,) = top(BODY)
    same(front, FRONT)
    assert {type(c) for c in front.edge("armhole").path.curves} == {Cubic}
    assert set(dict(front.points)) >= {"centre_neck", "neck_point", "shoulder_tip", "underarm_point", "side_hip"}
    assert front.fold == "centre"


def test_svg_agrees_with_svgpathtools_under_transforms(tmp_path: FilePath) -> None:
    move = "translate(120 40) rotate(-12) scale(1.5)"
    body = f'<g transform="{move}"><path id="front" d="{front_d(1 / 1.5)}"/></g>'
    file = svg(tmp_path, body, 'width="900mm" height="900mm" viewBox="0 0 900 900"')
    (outline,) = read_traced(file).outlines
    doc = svgpathtools.Document(str(file))
    (other,) = doc.paths()
    for k in range(200):
        p = other.point((k + 0.5) / 200)
        assert outline.path.distance_to(Point(p.real, -p.imag)) < NEAR
    assert outline.path.length == pytest.approx(other.length(), abs=NEAR)
    top = read_traced(file).top("Shell", {"front": EDGES}, waist=WAIST)
    same(top(BODY)[0], FRONT)
    assert any("turned by 12.0°" in message for message in top.messages)


def test_arcs_stay_arcs_and_other_shapes_are_read(tmp_path: FilePath) -> None:
    body = (
        '<path id="arc" d="M 0 0 L 100 0 A 50 50 0 0 1 100 100 L 0 100 Z"/>'
        '<rect id="box" x="200" y="0" width="50" height="80"/>'
        '<ellipse id="egg" cx="400" cy="0" rx="60" ry="40"/>'
        '<path id="quad" d="M 0 -200 Q 50 -300 100 -200 Z"/>'
    )
    drawn = read_traced(svg(tmp_path, body))
    arc = drawn.outline("arc").path
    (bow,) = [c for c in arc.curves if isinstance(c, Arc)]
    assert bow.radius == pytest.approx(50)
    assert bow.length == pytest.approx(50 * math.pi)
    assert bow.point(0.5).x == pytest.approx(150)
    assert drawn.outline("box").path.length == pytest.approx(260)
    egg = drawn.outline("egg").path
    for p in egg.points(0.001):
        assert ((p.x - 400) / 60) ** 2 + (p.y / 40) ** 2 == pytest.approx(1, abs=1e-5)
    top = max(p.y for p in drawn.outline("quad").path.points(0.001))
    assert top == pytest.approx(250, abs=0.01)


def test_front_and_back_by_name_and_by_number(tmp_path: FilePath) -> None:
    back = d_of([edge.path for edge in BACK.edges], dx=300)
    body = f'<g id="front"><path d="{front_d()}"/></g><g id="back"><path d="{back}"/></g>'
    drawn = read_traced(svg(tmp_path, body))
    top = drawn.top("Shell", {"front": EDGES, "back": EDGES}, waist=WAIST)
    same(top(BODY)[0], FRONT)
    same(top(BODY)[1], BACK)
    swapped = drawn.top("Shell", {"back": EDGES, "front": EDGES}, waist=WAIST, outlines={"front": 1, "back": 2})
    same(swapped(BODY)[1], FRONT)
    with pytest.raises(KitError, match=r"no closed outline is called 'frnt'.*outlines="):
        drawn.top("Shell", {"frnt": EDGES}, waist=WAIST)
    with pytest.raises(KitError, match="outline 1 is 'front' already"):
        drawn.top("Shell", {"front": EDGES, "back": EDGES}, waist=WAIST, outlines={"back": 1})


def test_a_piece_drawn_the_other_way_is_turned_over(tmp_path: FilePath) -> None:
    body = f'<path transform="scale(-1 1) translate(-500 0)" d="{front_d()}"/>'
    drawn = read_traced(svg(tmp_path, body))
    (outline,) = drawn.outlines
    # Clockwise from the lowest left corner: the hip's side end comes first.
    edges = {"side": (1, 2), "armhole": (2, 3), "shoulder": (3, 4), "neck": (4, 5), "centre": (5, 6), "hip": (6, 1)}
    top = drawn.top("Shell", {"front": edges}, waist=WAIST)
    same(top(BODY)[0], FRONT)
    assert any("turned over" in message for message in top.messages)
    assert len(outline.corners) == 6


def test_placing_by_corners_edges_and_keyword(tmp_path: FilePath) -> None:
    drawn = read_traced(svg(tmp_path, f'<path d="{front_d(dx=100)}"/>'))
    hip = drawn.top("Shell", {"front": EDGES}, waist="hip")(BODY)[0]
    assert hip.edge("hip").path.start.y == pytest.approx(0, abs=1e-6)
    corner = drawn.top("Shell", {"front": EDGES}, waist=5, centre=(1, 2))(BODY)[0]
    assert dict(corner.points)["underarm_point"].y == pytest.approx(0, abs=1e-6)
    as_drawn = drawn.top("Shell", {"front": EDGES}, waist="drawn", centre="drawn")(BODY)[0]
    assert dict(as_drawn.points)["centre_hip"].x == pytest.approx(100)
    by_piece = drawn.top("Shell", {"front": EDGES}, waist={"front": WAIST}, points={"front": {"low": 6}})(BODY)[0]
    assert dict(by_piece.points)["low"].y == pytest.approx(-205)
    one = drawn.top("Shell", {"front": EDGES}, waist=WAIST, centre=1)(BODY)[0]
    same(one, FRONT)
    for options, words in [
        ({}, "not said where the waistline"),
        ({"waist": "hem"}, "'hem' does not say"),
        ({"waist": WAIST, "centre": "middle"}, "no edge 'middle'"),
        ({"waist": WAIST, "centre": "neck"}, "'neck' is not straight"),
        ({"waist": WAIST, "centre": "hip"}, "lies across the page"),
        ({"waist": 9}, "no corner 9"),
    ]:
        with pytest.raises(KitError, match=words):
            drawn.top("Shell", {"front": EDGES}, **options)


def test_edges_may_run_either_way_and_over_corners(tmp_path: FilePath) -> None:
    drawn = read_traced(svg(tmp_path, f'<path d="{front_d()}"/>'))
    against = {name: (b, a) for name, (a, b) in EDGES.items()}
    same(drawn.top("Shell", {"front": against}, waist=WAIST)(BODY)[0], FRONT)
    wide = {"centre": (1, 2), "top": (2, 4), "armhole": (4, 5), "side": (5, 6), "hip": (6, 1)}
    top = drawn.top("Shell", {"front": wide}, waist=WAIST)(BODY)[0].edge("top").path
    assert top.length == pytest.approx(FRONT.edge("neck").path.length + FRONT.edge("shoulder").path.length, abs=NEAR)
    # The side seam cut at a place that is no corner: the block's side waist, x 218.8 mm.
    side = dict(FRONT.points)["side_waist"]
    spot = (side.x * mm, side.y * mm)
    cut = {name: pair for name, pair in EDGES.items() if name != "side"} | {"upper": (5, spot), "lower": (spot, 6)}
    piece = drawn.top("Shell", {"front": cut}, waist=WAIST)(BODY)[0]
    assert piece.edge("upper").path.end.distance(side) < NEAR
    for edges, words in [
        (
            {k: v for k, v in EDGES.items() if k != "side"},
            r"no edge runs from the end of 'armhole'.*'hip' \(corner 5\)",
        ),
        (EDGES | {"neck": (2, 4)}, "'neck' and 'shoulder' overlap"),
        (EDGES | {"neck": (2, 12)}, "there is no corner 12"),
        (EDGES | {"neck": 2}, "does not say where the edge begins"),
        (EDGES | {"neck": (2, (1 * cm, 1 * cm))}, "off the outline"),
    ]:
        with pytest.raises(KitError, match=words):
            drawn.top("Shell", {"front": edges}, waist=WAIST)  # type: ignore[dict-item]


def test_a_lesson_starts_from_it(tmp_path: FilePath) -> None:
    drawn = read_traced(svg(tmp_path, f'<path d="{front_d()}"/>'))
    top = drawn.top("Shell", {"front": EDGES}, waist=WAIST, size="W4")
    assert isinstance(top, Traced)
    assert "fits size W4 alone" in top.note
    lesson = Lesson("From a drawing", start=top, units="cm")

    def lower(front: Any) -> None:
        """Mark a lower neck."""
        front.mark(low=front.centre_neck.down(2 * cm))

    lesson.step("Lower the neck")(lower)
    pattern = lesson.work(BODY, {})
    marked = next(piece for piece in pattern.pieces if piece.name == "front")
    assert dict(marked.points)["low"].y == pytest.approx(FRONT.edge("neck").path.start.y - 20, abs=NEAR)


# ---- gaps, doubles, what is open --------------------------------------------------------------------------


def pieces_of(lift: float) -> str:
    """The front as six separate paths; the shoulder lifted by `lift` mm."""
    found = ""
    for edge in FRONT.edges:
        shift = f' transform="translate(0 {-lift})"' if edge.name == "shoulder" else ""
        found += f'<path id="{edge.name}"{shift} d="{d_of([edge.path])}"/>'
    return found


def test_small_gaps_are_closed_with_a_message(tmp_path: FilePath) -> None:
    drawn = read_traced(svg(tmp_path, pieces_of(0.4)))
    closed = [message for message in drawn.messages if "gap of 0.40 mm" in message]
    assert len(closed) == 2
    top = drawn.top("Shell", {"front": EDGES}, waist=WAIST)
    assert closed[0] in repr(top)
    told = [f.what for f in prove(Lesson("From a drawing", start=top).work(BODY, {})) if f.code == "start"]
    assert told[0] == top.note
    assert closed[0] in told
    shoulder = FRONT.edge("shoulder").path.start
    assert any(f"{shoulder.x:.1f} mm across" in message for message in closed)
    piece = drawn.top("Shell", {"front": EDGES}, waist=WAIST)(BODY)[0]
    assert piece.edge("shoulder").path.start.distance(shoulder) == pytest.approx(0.2, abs=0.01)
    whole = read_traced(svg(tmp_path, pieces_of(0.0)))
    assert not [message for message in whole.messages if "gap" in message]


@pytest.mark.parametrize(("slip", "told"), [(0.4, True), (0.03, False)])
def test_a_path_that_closes_beside_its_beginning_has_no_extra_corner(
    tmp_path: FilePath, slip: float, told: bool
) -> None:
    box = f"M 0 0 H 200 V 300 H {slip} V {slip} Z"
    drawn = read_traced(svg(tmp_path, f'<path d="{box}"/>'))
    assert len(drawn.outlines[0].corners) == 4
    assert any("gap of" in message for message in drawn.messages) == told

    def draw(space: Any) -> None:
        space.add_lwpolyline([(0, 0), (200, 0), (200, 300), (0, 300), (0, 0.03)], close=True)

    assert len(read_traced(dxf(tmp_path, "R2010", units.MM, draw)).outlines[0].corners) == 4


def test_an_open_outline_is_refused_and_the_place_said(tmp_path: FilePath) -> None:
    without = pieces_of(0.0).replace('<path id="neck"', '<path display="none" id="neck"')
    with pytest.raises(KitError) as caught:
        read_traced(svg(tmp_path, without))
    start, end = FRONT.edge("neck").path.start, FRONT.edge("neck").path.end
    for word in (
        f"{start.distance(end):.1f} mm apart",
        f"{start.x:.1f} mm across and {-start.y:.1f} mm down",
        f"{end.x:.1f} mm across and {-end.y:.1f} mm down",
        "Join the ends",
    ):
        assert word in str(caught.value)
    with pytest.raises(KitError, match="no outline is closed"):
        read_traced(svg(tmp_path, pieces_of(3.0)))
    assert read_traced(svg(tmp_path, pieces_of(3.0)), gap=4 * mm).outlines


def test_doubles_open_lines_and_specks(tmp_path: FilePath) -> None:
    body = f'{pieces_of(0)}<path d="{d_of([FRONT.edge("hip").path])}"/><path id="grain" d="M 50 0 L 50 200"/>'
    drawn = read_traced(svg(tmp_path, f'{body}<circle cx="60" cy="0" r="3"/>'))
    told = " ".join(drawn.messages)
    assert len(drawn.outlines) == 1
    assert "drawn twice" in told
    assert "'grain' is open" in told
    assert "1 closed shapes smaller than 2 cm" in told
    crossing = f'{pieces_of(0)}<path d="M 0 {-FRONT.edge("neck").path.start.y} L 100 0"/>'
    with pytest.raises(KitError, match=r"three lines or more meet .* layer="):
        read_traced(svg(tmp_path, crossing))
    apart = f'<g id="outline">{pieces_of(0)}</g><path d="M 0 {-FRONT.edge("neck").path.start.y} L 100 0"/>'
    assert len(read_traced(svg(tmp_path, apart), layer="outline").outlines) == 1


# ---- the known line ---------------------------------------------------------------------------------------


def test_the_known_line(tmp_path: FilePath) -> None:
    line = '<path id="test_line" d="M 400 0 L 500 0"/>'
    file = svg(tmp_path, f'<path d="{front_d()}"/>{line}')
    assert len(read_traced(file, check=("test_line", 10 * cm)).outlines) == 1
    centre = FRONT.edge("centre").path.length
    read_traced(file, check=((1, 2), centre * mm))
    read_traced(file, check=((1, 1, 2), centre * mm))
    with pytest.raises(KitError, match=r"'test_line' measures 10 cm in the drawing and should be 12 cm.*scale=1.2"):
        read_traced(file, check=("test_line", 12 * cm))
    with pytest.raises(KitError, match=r"from corner 1 to corner 2 measures"):
        read_traced(file, check=((1, 2), 40 * cm))
    with pytest.raises(KitError, match=r"no lines are called 'testline'.*'test_line'"):
        read_traced(file, check=("testline", 10 * cm))
    grown = read_traced(file, scale=1.2, check=("test_line", 12 * cm))
    assert grown.outlines[0].path.length == pytest.approx(1.2 * FRONT.outline.perimeter, abs=NEAR)


def test_a_wrong_dpi_is_recognised(tmp_path: FilePath) -> None:
    line = '<path id="test_line" d="M 0 0 H 283.4646"/>'  # 100 mm at 72 to the inch
    file = svg(tmp_path, f'<path d="{front_d(72 / 25.4)}"/>{line}', "")
    with pytest.raises(KitError, match="dpi=72"):
        read_traced(file, check=("test_line", 10 * cm))
    same(
        read_traced(file, dpi=72, check=("test_line", 10 * cm)).top("S", {"front": EDGES}, waist=WAIST)(BODY)[0], FRONT
    )


# ---- DXF --------------------------------------------------------------------------------------------------


def dxf(folder: FilePath, version: str, unit: int, draw: Callable[[Any], None]) -> FilePath:
    doc = ezdxf.new(version)
    doc.units = unit
    draw(doc.modelspace())
    file = folder / f"top-{version}.dxf"
    doc.saveas(file)
    return file


def draw_front(space: Any, factor: float, splines: bool) -> None:
    """The front as lines and splines, or where splines are unknown (R12) as polylines within 0.005 mm."""

    def at(p: Point) -> tuple[float, float]:
        return p.x * factor, p.y * factor

    for edge in FRONT.edges:
        for curve in edge.path.curves:
            if isinstance(curve, Line):
                space.add_line(at(curve.start), at(curve.end), dxfattribs={"layer": "front"})
            elif splines:
                assert isinstance(curve, Cubic)
                points = [(*at(p), 0.0) for p in (curve.start, curve.c1, curve.c2, curve.end)]
                space.add_open_spline(points, dxfattribs={"layer": "front"})
            else:
                space.add_polyline2d([at(p) for p in curve.points(0.005)], dxfattribs={"layer": "front"})


@pytest.mark.parametrize("version", ["R12", "R2000", "R2010", "R2018"])
@pytest.mark.parametrize(("code", "name", "factor"), [(units.MM, "mm", 1.0), (units.IN, "inch", 1 / 25.4)])
def test_dxf_round_trip(tmp_path: FilePath, version: str, code: int, name: str, factor: float) -> None:
    splines = version != "R12"
    file = dxf(tmp_path, version, code, lambda space: draw_front(space, factor, splines))
    if version == "R12" and not ezdxf.readfile(file).header.get("$INSUNITS", 0):
        with pytest.raises(KitError, match=r"does not say in what unit.*unit='mm'"):
            read_traced(file)
        drawn = read_traced(file, unit=name)
    else:
        drawn = read_traced(file)
    (front,) = drawn.top("Shell", {"front": EDGES}, waist=WAIST)(BODY)
    same(front, FRONT)
    if splines:
        assert {type(c) for c in front.edge("armhole").path.curves} == {Cubic}
    # ezdxf's own flattening of the same file.
    for entity in ezdxf.readfile(file).modelspace():
        for p in make_path(entity).flattening(0.001 * factor):
            assert drawn.outlines[0].path.distance_to(Point(p.x / factor, p.y / factor)) < NEAR


@pytest.mark.parametrize("version", ["R12", "R2000", "R2010", "R2018"])
def test_dxf_bulges_arcs_and_blocks(tmp_path: FilePath, version: str) -> None:
    def draw(space: Any) -> None:
        corners = [(0, 0, 0.0), (100, 0, 1.0), (100, 80, 0.0), (0, 80, 0.3)]
        if version == "R12":
            space.add_polyline2d(corners, format="xyb", close=True, dxfattribs={"layer": "poly"})
        else:
            space.add_lwpolyline(corners, format="xyb", close=True, dxfattribs={"layer": "poly"})
        space.add_circle((300, 0), 50, dxfattribs={"layer": "ring"})
        block = space.doc.blocks.new("HALF")
        block.add_line((0, 0), (80, 0), dxfattribs={"layer": "half"})
        block.add_arc((40, 0), 40, 0, 180, dxfattribs={"layer": "half"})
        space.add_blockref("HALF", (0, 300))
        space.add_blockref("HALF", (200, 300), dxfattribs={"xscale": -1, "rotation": 30})

    drawn = read_traced(dxf(tmp_path, version, units.MM, draw), unit="mm")
    poly = drawn.outline("poly").path
    bows = sorted((c for c in poly.curves if isinstance(c, Arc)), key=lambda c: c.radius)
    assert [b.radius for b in bows] == pytest.approx([40, 40 * (1 + 0.3**2) / (2 * 0.3)])  # r = c (1 + b2) / 4b
    assert max(p.x for p in poly.points(0.001)) == pytest.approx(140, abs=0.01)
    assert drawn.outline("ring").path.length == pytest.approx(100 * math.pi)
    halves = [o for o in drawn.outlines if "half" in o.names]
    assert len(halves) == 2
    for half in halves:
        assert half.path.length == pytest.approx(80 + 40 * math.pi)
        assert sum(isinstance(c, Arc) for c in half.path.curves) == 1
    # The mirrored one runs from (200, 300) toward 210 degrees, its arc above that line in mirror image.
    (x0, _, x1, _) = next(h for h in halves if h.path.bounds()[2] > 150).path.bounds()
    chord = Point(200 - 80 * math.cos(math.radians(30)), 300 - 80 * math.sin(math.radians(30)))
    assert x0 == pytest.approx((200 + chord.x) / 2 - 40, abs=0.01)
    assert x1 == pytest.approx(200, abs=0.01)


def test_dxf_ellipses_and_rational_splines(tmp_path: FilePath) -> None:
    def draw(space: Any) -> None:
        space.add_ellipse((0, 0), (60, 0), 2 / 3, 0, math.tau, dxfattribs={"layer": "egg"})
        arc = rational_bspline_from_arc((200, 0), 50, 0, 180)
        space.add_spline(dxfattribs={"layer": "bow"}).apply_construction_tool(arc)
        space.add_line((150, 0), (250, 0), dxfattribs={"layer": "bow"})

    drawn = read_traced(dxf(tmp_path, "R2010", units.MM, draw))
    assert max(abs((p.x / 60) ** 2 + (p.y / 40) ** 2 - 1) for p in drawn.outline("egg").path.points(0.001)) < 1e-5
    bow = drawn.outline("bow").path
    assert len(bow.curves) < 1000
    assert bow.length == pytest.approx(100 + 50 * math.pi, abs=NEAR)
    round_it = [math.hypot(p.x - 200, p.y) for p in bow.points(0.001) if abs(p.y) >= 1e-6]
    assert len(round_it) > 50 and max(abs(radius - 50) for radius in round_it) < NEAR


def test_dxf_layers_off_text_and_units(tmp_path: FilePath) -> None:
    def draw(space: Any) -> None:
        draw_front(space, 1.0, True)
        space.doc.layers.add("notes").off()
        space.add_line((0, 0), (50, 50), dxfattribs={"layer": "notes"})
        space.add_text("front")

    told = " ".join(read_traced(dxf(tmp_path, "R2010", units.MM, draw)).messages)
    assert "1 lines on layers that are switched off" in told
    assert "1 TEXT" in told
    unitless = dxf(tmp_path, "R2018", 0, draw)
    with pytest.raises(KitError, match="does not say in what unit"):
        read_traced(unitless)
    grown = read_traced(unitless, unit="inch", scale=1 / 25.4)
    assert grown.outlines[0].path.length == pytest.approx(FRONT.outline.perimeter, abs=NEAR)
    with pytest.raises(KitError, match=r"640.5 cm across.*unit="):
        read_traced(dxf(tmp_path, "R2010", units.CM, draw))
    small = dxf(tmp_path, "R2010", units.MM, lambda space: draw_front(space, 0.1, True))
    with pytest.raises(KitError, match=r"measures 5.7 cm in .* should be 56.5 cm.*unit='cm'.*scale=10"):
        read_traced(small, check=((1, 2), FRONT.edge("centre").path.length * mm))
    other = read_traced(dxf(tmp_path, "R2010", units.CM, draw), unit="mm")
    assert any("says its unit" in message for message in other.messages)


# ---- files that are refused -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "text", "words"),
    [
        ("a.svg", "not a drawing", "not a sound SVG file"),
        ("a.svg", "", "not a sound SVG file"),
        ("a.svg", "<html/>", "begins with 'html'"),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"/>', "no line is drawn"),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"><text>hi</text></svg>', "no line is drawn"),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"><path d="M 0 0 H 9 V 9 Z"/></svg>', "only 2.4 mm"),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"><path d="M 0 0 H 99999 V 9 Z"/></svg>', "Check the unit"),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg"><path d="M 0 0 H 1e400 V 9 Z"/></svg>', "stray points"),
        (
            "a.svg",
            '<svg xmlns="http://www.w3.org/2000/svg"><g id="a"><use href="#a"/><path d="M 0 0 H 9 V 9 Z"/></g></svg>',
            "no end",
        ),
        ("a.svg", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 0 0" width="5cm"/>', "makes no sense"),
        ("a.dxf", "not a drawing", "not a sound DXF"),
        ("a.dxf", "", "not a sound DXF"),
        ("a.pdf", "", "'.pdf' cannot be read"),
        ("a", "", "'nothing' cannot be read"),
    ],
)
def test_bad_files(tmp_path: FilePath, name: str, text: str, words: str) -> None:
    file = tmp_path / name
    file.write_text(text)
    with pytest.raises(KitError) as caught:
        read_traced(file)
    assert words in str(caught.value)
    assert name in str(caught.value)


def test_an_arc_without_a_radius_is_a_line(tmp_path: FilePath) -> None:
    """SVG 1.1, appendix F.6.2."""
    drawn = read_traced(svg(tmp_path, '<path d="M 0 0 H 100 V 100 A 0 0 0 0 1 0 0 Z"/>'))
    assert drawn.outlines[0].path.length == pytest.approx(200 + 100 * math.sqrt(2))


def test_bad_options(tmp_path: FilePath) -> None:
    file = svg(tmp_path, f'<path d="{front_d()}"/>')
    with pytest.raises(KitError, match="no such file"):
        read_traced(tmp_path / "missing.svg")
    with pytest.raises(KitError, match="unit 'feet'"):
        read_traced(file, unit="feet")
    with pytest.raises(KitError, match="dpi=0"):
        read_traced(file, dpi=0)
    with pytest.raises(KitError, match="gap of 20 mm"):
        read_traced(file, gap=2 * cm)
    with pytest.raises(KitError, match="nothing is drawn on 'outlin'"):
        read_traced(file, layer="outlin")
    with pytest.raises(KitError, match="not a known line"):
        read_traced(file, check=10 * inch)  # type: ignore[arg-type]


def test_nothing_outside_is_fetched(tmp_path: FilePath) -> None:
    secret = tmp_path / "secret.txt"
    secret.write_text("M 0 0 H 100 V 100 Z")
    file = tmp_path / "a.svg"
    head = f'<!DOCTYPE svg [<!ENTITY stolen SYSTEM "{secret.as_uri()}">]>'
    file.write_text(f'{head}<svg xmlns="http://www.w3.org/2000/svg"><path d="&stolen;"/></svg>')
    with pytest.raises(KitError, match=r"entity 'stolen'.*Nothing is fetched"):
        read_traced(file)
    use = '<use xlink:href="other.svg#front"/>'
    with pytest.raises(KitError, match=r"another file, 'other.svg#front'"):
        read_traced(svg(tmp_path, use))
    photo = f'<image href="http://example.invalid/a.png" width="9" height="9"/><path d="{front_d()}"/>'
    assert any("example.invalid" in m for m in read_traced(svg(tmp_path, photo)).messages)
    laughs = "".join(f'<!ENTITY l{i} "{f"&l{i - 1};" * 20}">' for i in range(1, 9))
    file.write_text(
        f'<!DOCTYPE svg [<!ENTITY l0 "ha">{laughs}]><svg xmlns="http://www.w3.org/2000/svg"><text>&l8;</text></svg>'
    )
    with pytest.raises(KitError, match="not a sound SVG"):
        read_traced(file)

    def draw(space: Any) -> None:
        space.doc.add_xref_def("other.dxf", "OTHER")
        space.add_blockref("OTHER", (0, 0))

    with pytest.raises(KitError, match=r"'other.dxf'.*Nothing is fetched"):
        read_traced(dxf(tmp_path, "R2010", units.MM, draw))


def test_it_prints_its_corners(tmp_path: FilePath) -> None:
    said = repr(read_traced(svg(tmp_path, f'<path id="front" d="{front_d()}"/>')))
    assert "outline 1 ('front', 26 cm × 64 cm)" in said
    assert "corner 6: x 26 cm, y -20.5 cm" in said
