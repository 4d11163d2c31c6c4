"""SVG, DXF and JSON for other programs, read back by readers that are not ours: svgpathtools, ezdxf, jsonschema."""

from __future__ import annotations

import json
import math
import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from io import StringIO
from pathlib import Path as FilePath
from typing import Any

import ezdxf
import numpy as np
import pytest
import shapely
import svgpathtools
from ezdxf.math import Matrix44

from kit.geometry import Cubic, Line, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.paper.dxf_file import BOUNDARY, CURVE, DRILL, GRAIN, INTERNAL, LAYERS, MIRROR, NOTCH, SEW, TURN, dxf_text
from kit.paper.export import pattern_json, pattern_schema
from kit.paper.nested import Nest, lay_nest, nest
from kit.paper.papers import A0
from kit.paper.sheet import Sheet
from kit.paper.svg_file import svg_text
from kit.piece.allowance import cut_line
from kit.piece.corner import Corner, Declared
from kit.piece.darts_and_pleats import Dart, Pleat
from tests.example import EXAMPLE, notebook_names
from tests.near import near

SVG = "{http://www.w3.org/2000/svg}"
SIZES = ("W3", "W8")


@pytest.fixture(scope="module")
def patterns() -> list[Pattern]:
    lesson = notebook_names(EXAMPLE)["lesson"]
    return [lesson.work(body=lesson.sizes[size], values={}) for size in SIZES]


@pytest.fixture(scope="module")
def one(patterns: list[Pattern]) -> tuple[Nest, Sheet]:
    made = nest(patterns[:1])
    return made, lay_nest(made, (A0,))


@pytest.fixture(scope="module")
def two(patterns: list[Pattern]) -> tuple[Nest, Sheet]:
    made = nest(patterns)
    return made, lay_nest(made, (A0,))


def ring(points: Any) -> shapely.LinearRing:
    return shapely.LinearRing([(p.x, p.y) for p in points])


# ---- SVG ----------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def svg(one: tuple[Nest, Sheet]) -> str:
    return svg_text(*one)


def paths_in(text: str, group: str) -> list[svgpathtools.Path]:
    root = ET.fromstring(text)
    (found,) = (element for element in root.iter(f"{SVG}g") if element.get("id") == group)
    return [svgpathtools.parse_path(path.get("d")) for path in found.iter(f"{SVG}path") if path.get("stroke")]


def test_svg_is_measured_in_millimetres(svg: str, one: tuple[Nest, Sheet]) -> None:
    root = ET.fromstring(svg)
    wide, high = (float(root.get(key, "").removesuffix("mm")) for key in ("width", "height"))
    assert [float(part) for part in root.get("viewBox", "").split()] == [0.0, 0.0, wide, high]
    assert wide >= one[1].width - 0.01 and high == pytest.approx(one[1].height + 120, abs=0.01)
    (square,) = paths_in(svg, "test-square")
    assert [segment.length() for segment in square] == pytest.approx([100.0] * 4)


def test_svg_outlines_are_the_cut_lines(svg: str, one: tuple[Nest, Sheet]) -> None:
    made, laid = one
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        name = each.piece.name.replace("_", "-")
        drawn = [*paths_in(svg, f"size-W3-{name}-cut-line")]
        if each.piece.fold:
            drawn += paths_in(svg, f"size-W3-{name}-fold")
        read = shapely.union_all(
            [
                shapely.LineString([(p.real, laid.height - p.imag) for p in map(segment.point, np.linspace(0, 1, 60))])
                for path in drawn
                for segment in path
                if segment.length() > 1e-6
            ]
        )  # fmt: skip
        meant = ring(placement.motion(p) for p in cut_line(each.piece).points(0.005))
        assert near(read, meant, 0.05)


def test_svg_curves_are_curves(svg: str, one: tuple[Nest, Sheet]) -> None:
    for each in one[0].pieces:
        curves = cut_line(each.piece).curves
        bent = sum(not isinstance(curve, Line) for curve in curves)
        paths = paths_in(svg, f"size-W3-{each.piece.name.replace('_', '-')}-cut-line")
        segments = [segment for path in paths for segment in path]
        assert sum(isinstance(s, svgpathtools.CubicBezier | svgpathtools.Arc) for s in segments) >= bent > 0
        assert len(segments) <= 3 * len(curves)  # not hundreds of sampled points


def test_svg_groups_are_named_and_ids_single(two: tuple[Nest, Sheet]) -> None:
    text = svg_text(*two)
    root = ET.fromstring(text)
    ids = [element.get("id") for element in root.iter() if element.get("id")]
    assert len(ids) == len(set(ids)) and all(re.fullmatch(r"[A-Za-z][\w.-]*", each or "") for each in ids)
    top = {group.get("id"): group for group in root.findall(f"{SVG}g")}
    assert {"test-square", "size-W3", "size-W8", "all-sizes", "text"} <= set(top)
    for group in root.iter(f"{SVG}g"):
        title = group.find(f"{SVG}title")
        assert group.get("aria-label") and title is not None and title.text == group.get("aria-label")
    assert text.count("xmlns") == 1  # no program's private names
    for name in ("size-W8-front-cut-line", "size-W8-front-stitch-line", "size-W3-back-notches", "all-sizes-front"):
        assert name in ids


def test_svg_escapes_what_a_lesson_says(one: tuple[Nest, Sheet]) -> None:
    made, laid = one
    first = made.patterns[0]
    odd = replace(first, lesson=replace(first.lesson, title='<script>"&'))
    text = svg_text(replace(made, patterns=(odd,)), laid)
    assert "<script>" not in text and ET.fromstring(text).find(f"{SVG}title").text.startswith('<script>"&')  # type: ignore[union-attr]


# ---- DXF ----------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def dxf(two: tuple[Nest, Sheet]) -> Any:
    return ezdxf.read(StringIO(dxf_text(*two)))


def block_lines(block: Any, layer: str) -> list[Any]:
    return [
        shapely.LineString([(v.dxf.location.x, v.dxf.location.y) for v in e.vertices] + ([
            (e.vertices[0].dxf.location.x, e.vertices[0].dxf.location.y)] if e.is_closed else []))
        for e in block if e.dxftype() == "POLYLINE" and e.dxf.layer == layer
    ]  # fmt: skip


def test_dxf_is_clean_metric_and_layered(dxf: Any) -> None:
    audit = dxf.audit()
    assert not audit.has_errors and not audit.has_fixes
    assert dxf.units == ezdxf.units.MM and dxf.header["$MEASUREMENT"] == 1
    # Layer numbers of ASTM D6673 (from memory, agreeing with a published summary of the 2010 edition).
    assert {"1", "2", "3", "4", "6", "7", "8", "13", "14", "15"} == set(LAYERS)
    used = {e.dxf.layer for block in dxf.blocks for e in block}
    assert used <= set(LAYERS) and {BOUNDARY, TURN, CURVE, NOTCH, MIRROR, GRAIN, INTERNAL, SEW} <= used
    assert all(layer in dxf.layers for layer in LAYERS)


def test_dxf_outlines_are_the_cut_lines(dxf: Any, two: tuple[Nest, Sheet]) -> None:
    made, laid = two
    inserts = {insert.dxf.name: insert for insert in dxf.modelspace().query("INSERT")}
    assert len(inserts) == len(made.pieces) * len(SIZES)
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        for size, piece in enumerate(each.pieces):
            assert piece is not None
            insert = inserts[f"{piece.name}_{SIZES[size]}".upper()]
            matrix: Matrix44 = insert.matrix44()
            (outline,) = block_lines(dxf.blocks[insert.dxf.name], BOUNDARY)
            placed = shapely.LineString([tuple(matrix.transform((x, y, 0)))[:2] for x, y in outline.coords])
            motion = each.motions[size].then(placement.motion)
            meant = ring(motion(p) for p in cut_line(piece).points(0.005))
            assert near(placed, meant, 0.05)
            sewn = shapely.union_all(block_lines(dxf.blocks[insert.dxf.name], SEW))
            stitch = shapely.MultiLineString(
                [[(p.x, p.y) for p in e.path.points(0.005)] for e in piece.edges if e.allowance]
            )
            assert near(sewn, stitch, 0.05)


def test_dxf_vertices_are_turn_points_or_curve_points(dxf: Any, two: tuple[Nest, Sheet]) -> None:
    piece = next(each.pieces[0] for each in two[0].pieces if each.piece.name == "front")
    assert piece is not None
    block = dxf.blocks["FRONT_W3"]
    places: dict[str, set[tuple[float, float]]] = {TURN: set(), CURVE: set()}
    for point in block.query("POINT"):
        if point.dxf.layer in places:
            places[point.dxf.layer].add((round(point.dxf.location.x, 4), round(point.dxf.location.y, 4)))
    (outline,) = block_lines(block, BOUNDARY)
    vertices = {(round(x, 4), round(y, 4)) for x, y in outline.coords}
    assert vertices <= places[TURN] | places[CURVE]
    sharp = 0
    points = list(outline.coords)[:-1]
    for i, here in enumerate(points):
        before, after = points[i - 1], points[(i + 1) % len(points)]
        turn = math.atan2(after[1] - here[1], after[0] - here[0]) - math.atan2(here[1] - before[1], here[0] - before[0])
        if abs(math.remainder(turn, 2 * math.pi)) > math.radians(25):
            sharp += 1
            assert (round(here[0], 4), round(here[1], 4)) in places[TURN]
    assert sharp >= 6 and places[CURVE]


def test_dxf_says_what_each_piece_is(dxf: Any) -> None:
    texts = [text.dxf.text for text in dxf.blocks["FRONT_FACING_W8"].query("TEXT")]
    assert {"Piece Name: Front facing", "Size: W8", "Quantity: 2", "Material: main"} <= set(texts)
    style = [text.dxf.text for text in dxf.modelspace().query("TEXT")]
    assert "Style Name: Tideline wrap top" in style and "Units: METRIC" in style
    notches = [e for e in dxf.blocks["FRONT_W3"].query("POINT") if e.dxf.layer == NOTCH]
    assert notches and all(0 < e.dxf.location.z <= 6 for e in notches)
    assert len([e for e in dxf.blocks["BACK_W3"].query("LINE") if e.dxf.layer == MIRROR]) == 1


def test_dxf_is_the_same_every_time(two: tuple[Nest, Sheet]) -> None:
    assert dxf_text(*two) == dxf_text(*two)


def test_dxf_darts_have_legs_to_sew_and_a_hole(garment: Pattern) -> None:
    front = replace(
        garment.pieces[1], darts=(Dart("side_dart", "side", Point(150, -30), 110.0, 130.0),), marks=(), notches=()
    )
    made = nest([replace(garment, pieces=(front,))])
    block = ezdxf.read(StringIO(dxf_text(made, lay_nest(made)))).blocks["FRONT_W4"]
    apex = shapely.Point(150, -30)
    assert sum(line.distance(apex) < 0.01 for line in block_lines(block, SEW)) == 2
    (hole,) = (e.dxf.location for e in block.query("POINT") if e.dxf.layer == DRILL)
    assert apex.distance(shapely.Point(hole.x, hole.y)) == pytest.approx(10.0, abs=0.01)


# ---- JSON ---------------------------------------------------------------------------------------------------


def with_everything(pattern: Pattern) -> Pattern:
    back = pattern.pieces[0]
    hem = back.edge("hem").path
    a, b = hem.at(40.0), hem.at(60.0)
    one, two = (Path((Cubic(p, p + Vector(0, 10), p + Vector(0, 20), p + Vector(0, 30)),)) for p in (a, b))
    full = replace(
        back,
        pleats=(Pleat("pleat", "hem", 40.0, 60.0, (one, two), "tuck", 20.0),),
        corners=(Corner("side", "hem", "turned", "hem", (0.0, 10.0)),),
        declared=(Declared("side", "hem", "a slit"),),
    )
    return replace(pattern, pieces=(full, *pattern.pieces[1:]))


def test_the_schema_is_sound_and_the_pattern_keeps_to_it(patterns: list[Pattern]) -> None:
    jsonschema = pytest.importorskip("jsonschema")
    schema = pattern_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    check = jsonschema.Draft202012Validator(schema)
    for pattern in (*patterns, with_everything(patterns[0])):
        data = json.loads(json.dumps(pattern_json(pattern)))
        assert not [error.message for error in check.iter_errors(data)]
    broken = json.loads(json.dumps(pattern_json(patterns[0])))
    broken["pieces"][0]["edges"][0]["allowance"] = "1 cm"
    broken["pieces"][1]["colour"] = "red"
    del broken["strips"][0]["grain"]
    assert len(list(check.iter_errors(broken))) == 3


def test_pleats_and_corners_are_in_the_data(patterns: list[Pattern]) -> None:
    back = pattern_json(with_everything(patterns[0]))["pieces"][0]
    assert back["pleats"][0]["kind"] == "tuck" and back["pleats"][0]["sewn"] == 20.0
    assert len(back["pleats"][0]["lines"]) == 2
    assert back["corners"][0]["folds"] == [0.0, 10.0] and back["corners"][0]["turned"] == "hem"
    assert back["declared"] == [{"before": "side", "after": "hem", "why": "a slit"}]
    assert back["grain_kind"] == "lengthwise" and back["grain_one_way"] is False
    strip = pattern_json(patterns[0])["strips"][0]
    assert strip["grain"] == "lengthwise" and strip["joins"] == 0


def test_the_schema_ships_beside_the_code(root: FilePath) -> None:
    assert (root / "kit" / "paper" / "pattern.schema.json").is_file()
